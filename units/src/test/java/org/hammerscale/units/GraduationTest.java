package org.hammerscale.units;

import static org.hammerscale.units.Graduation.HALF_MILLIMETRE;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.QUARTER;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Graduation.TENTH_MILLIMETRE;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Rounding to the marks of a rule. */
class GraduationTest {
  static Stream<Arguments> rules() {
    return Stream.of(
        arguments(Graduation.HALF, "1/2 in steps", inches(0.5)),
        arguments(Graduation.QUARTER, "1/4 in steps", inches(0.25)),
        arguments(Graduation.EIGHTH, "1/8 in steps", inches(0.125)),
        arguments(Graduation.SIXTEENTH, "1/16 in steps", inches(0.0625)),
        arguments(Graduation.THIRTY_SECOND, "1/32 in steps", inches(0.03125)),
        arguments(Graduation.SIXTY_FOURTH, "1/64 in steps", inches(0.015625)),
        arguments(Graduation.MILLIMETRE, "1 mm steps", millimetres(1)),
        arguments(Graduation.HALF_MILLIMETRE, "0.5 mm steps", millimetres(0.5)),
        arguments(Graduation.TENTH_MILLIMETRE, "0.1 mm steps", millimetres(0.1)));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource
  void rules(Graduation<Length> rule, String words, Measure<Length> step) {
    assertEquals(step, rule.step());
    assertEquals(words, rule.toString());
  }

  /** Values in inches; the marks were counted off by hand. */
  @ParameterizedTest
  @CsvSource({
    // value, up, down, nearest
    "2.3562,  2.375,   2.3125,  2.375",
    "0.01,    0.0625,  0,       0",
    "0.05,    0.0625,  0,       0.0625",
    "-0.01,   0,       -0.0625, 0",
    "-0.05,   0,       -0.0625, -0.0625",
    "-2.3562, -2.3125, -2.375,  -2.375",
    "0,       0,       0,       0",
    "1.5,     1.5,     1.5,     1.5",
    "-1.5,    -1.5,    -1.5,    -1.5",
    // half-way: away from zero
    "0.15625,  0.1875,  0.125,   0.1875",
    "-0.15625, -0.125,  -0.1875, -0.1875",
    "0.03125,  0.0625,  0,       0.0625",
    // a hair off half-way
    "0.15624,  0.1875,  0.125,   0.125",
    "-0.15624, -0.125,  -0.1875, -0.125"
  })
  void roundsToSixteenths(double value, double up, double down, double nearest) {
    assertEquals(inches(up), SIXTEENTH.upTo(inches(value)));
    assertEquals(inches(down), SIXTEENTH.downTo(inches(value)));
    assertEquals(inches(nearest), SIXTEENTH.nearest(inches(value)));
    // The same asked of the measure.
    assertEquals(inches(up), inches(value).upTo(SIXTEENTH));
    assertEquals(inches(down), inches(value).downTo(SIXTEENTH));
    assertEquals(inches(nearest), inches(value).nearest(SIXTEENTH));
  }

  @Test
  void keepsTheUnitOfTheValue() {
    // 12 mm are 7.56 sixteenths; eight are 12.7 mm, seven 11.1125 mm.
    assertEquals(millimetres(12.7), SIXTEENTH.upTo(millimetres(12)));
    assertEquals(millimetres(11.1125), SIXTEENTH.downTo(millimetres(12)));
    assertEquals(millimetres(12.7), SIXTEENTH.nearest(millimetres(12)));
    assertEquals(feet(0.0625), QUARTER.upTo(feet(0.06)));
    assertEquals(26 / 25.4, MILLIMETRE.upTo(inches(1)).in(ShopUnits.INCH), Math.ulp(1.0));

    Unit<Length> theirs = Units.METRE.multiply(0.0254);
    assertSame(theirs, SIXTEENTH.upTo(Quantities.getQuantity(0.3, theirs)).getUnit());
    assertEquals(0.3125, SIXTEENTH.upTo(Quantities.getQuantity(0.3, theirs)).getValue());
  }

  @Test
  void roundsOtherThanLengths() {
    assertEquals(degrees(45), Graduation.of(degrees(5)).nearest(degrees(43)));
    assertEquals(kilograms(2.5), Graduation.of(kilograms(0.5)).upTo(kilograms(2.1)));
  }

  @Test
  void roundsToStepsThatDoNotDivideTheUnit() {
    Graduation<Length> rule = Graduation.of(millimetres(0.3));
    assertEquals(millimetres(3), rule.nearest(millimetres(3.1)));
    assertEquals(3.3, rule.upTo(millimetres(3.1)).getValue(), Math.ulp(3.3));
    assertEquals(millimetres(50), Graduation.of(millimetres(25)).upTo(millimetres(25.1)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.2, 0.3, 0.7, 1.1, 2.3, 19.9, 1234.7, -0.3, -2.3})
  void leavesADecimalOnItsMarkAlone(double value) {
    // A tenth is no binary fraction; stepping by it would leave 0.30000000000000004.
    assertEquals(millimetres(value), TENTH_MILLIMETRE.upTo(millimetres(value)));
    assertEquals(millimetres(value), TENTH_MILLIMETRE.downTo(millimetres(value)));
    assertEquals(millimetres(value), TENTH_MILLIMETRE.nearest(millimetres(value)));
    assertTrue(TENTH_MILLIMETRE.isOnMark(millimetres(value)));
    // A rule made by the caller is as good as the standing one.
    assertEquals(millimetres(value), Graduation.of(millimetres(0.1)).upTo(millimetres(value)));
  }

  @Test
  void takesNoiseForNothing() {
    Measure<Length> noisy = millimetres(0.1).add(millimetres(0.2));
    assertTrue(noisy.isGreaterThan(millimetres(0.3)), "0.1 + 0.2 is a hair more than 0.3");

    assertEquals(millimetres(0.3), TENTH_MILLIMETRE.upTo(noisy));
    assertEquals(millimetres(0.3), TENTH_MILLIMETRE.downTo(noisy));
    assertEquals(inches(0.5), SIXTEENTH.upTo(millimetres(12.7).to(ShopUnits.INCH)));
  }

  @Test
  void takesUpToABillionthOfAStepForNoise() {
    Measure<Length> within = millimetres(3 + 0.9e-9);
    Measure<Length> beyond = millimetres(3 + 1.1e-9);
    assertEquals(millimetres(3), MILLIMETRE.upTo(within));
    assertEquals(millimetres(4), MILLIMETRE.upTo(beyond));
    assertTrue(MILLIMETRE.isOnMark(within));
    assertFalse(MILLIMETRE.isOnMark(beyond));

    assertEquals(millimetres(3), MILLIMETRE.downTo(millimetres(3 - 0.9e-9)));
    assertEquals(millimetres(2), MILLIMETRE.downTo(millimetres(3 - 1.1e-9)));
    // Of a step, not of the unit: a sixteenth is shorter than an inch.
    assertEquals(inches(0.5), SIXTEENTH.upTo(inches(0.5 + 0.9e-9 / 16)));
    assertEquals(inches(0.5625), SIXTEENTH.upTo(inches(0.5 + 1.1e-9 / 16)));
  }

  @Test
  void takesEightUnitsInTheLastPlaceForNoiseInLargeCounts() {
    // At 10⁹ steps the last place of a double is worth more than a billionth of a step.
    double last = Math.ulp(1e9);
    assertEquals(millimetres(1e9), MILLIMETRE.upTo(millimetres(1e9 + 7 * last)));
    assertEquals(millimetres(1e9 + 1), MILLIMETRE.upTo(millimetres(1e9 + 9 * last)));
  }

  @Test
  void roundsHalfWayAwayFromZeroInSpiteOfNoise() {
    // 0.35 is no double; the nearest one lies a hair below.
    assertEquals(millimetres(0.4), TENTH_MILLIMETRE.nearest(millimetres(0.35)));
    assertEquals(millimetres(-0.4), TENTH_MILLIMETRE.nearest(millimetres(-0.35)));
    assertEquals(millimetres(1.2), TENTH_MILLIMETRE.nearest(millimetres(1.15)));
    assertEquals(millimetres(0.5), HALF_MILLIMETRE.nearest(millimetres(0.25)));
    // 5/32 in, written in millimetres
    assertEquals(millimetres(4.7625), SIXTEENTH.nearest(millimetres(3.96875)));
  }

  @Test
  void refusesAStepThatIsNotMoreThanZero() {
    assertEquals(
        "step must be more than zero, was 0 in; give the distance from mark to mark",
        assertThrows(IllegalArgumentException.class, () -> Graduation.of(inches(0))).getMessage());
    assertEquals(
        "step must be more than zero, was -1/16 in; give the distance from mark to mark",
        assertThrows(IllegalArgumentException.class, () -> Graduation.of(inches(-0.0625)))
            .getMessage());
  }

  @Test
  void equalByItsStep() {
    assertEquals(SIXTEENTH, Graduation.of(inches(0.0625)));
    assertEquals(SIXTEENTH.hashCode(), Graduation.of(inches(0.0625)).hashCode());
    assertNotEquals(SIXTEENTH, Graduation.of(inches(0.0626)));
    assertNotEquals(SIXTEENTH, Graduation.of(millimetres(25.4 / 16)));
    assertFalse(SIXTEENTH.equals(null));
  }
}
