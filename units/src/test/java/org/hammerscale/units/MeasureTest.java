package org.hammerscale.units;

import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.seconds;
import static org.hammerscale.units.ShopUnits.FOOT;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.KILOGRAM;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.hammerscale.units.ShopUnits.SECOND;
import static org.hammerscale.units.ShopUnits.SQUARE_INCH;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import javax.measure.MetricPrefix;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Length;
import javax.measure.quantity.Speed;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;

/** What a measure is made of, and its algebra. */
class MeasureTest {
  @Test
  void isANumberOfUnits() {
    Measure<Length> bore = Measure.of(0.5, INCH);

    assertEquals(0.5, bore.getValue());
    assertSame(INCH, bore.getUnit());
    assertEquals(Scale.ABSOLUTE, bore.getScale());
    assertEquals(0.5, bore.in(INCH));
  }

  @Test
  void takesAnybodysQuantityInItsOwnUnit() {
    Measure<Length> taken = Measure.from(Quantities.getQuantity(new BigDecimal("2.25"), INCH));

    assertEquals(2.25, taken.getValue());
    assertSame(INCH, taken.getUnit());
  }

  @Test
  void takesAMeasureAsItIs() {
    Measure<Length> bore = inches(0.5);

    assertSame(bore, Measure.from(bore));
    assertSame(bore, bore.to(INCH));
  }

  @Test
  void convertsExactlyWhereTheDefinitionIsExact() {
    assertEquals(25.4, inches(1).in(MILLIMETRE));
    assertEquals(1.0, millimetres(25.4).in(INCH));
    assertEquals(12.0, feet(1).in(INCH));
    assertEquals(0.3048, feet(1).in(METRE));
    assertSame(MILLIMETRE, inches(1).to(MILLIMETRE).getUnit());
  }

  @Test
  void keepsTheUnitOfTheLeftOperand() {
    assertEquals(inches(3), inches(2).add(millimetres(25.4)));
    assertEquals(millimetres(50.8), millimetres(25.4).add(inches(1)));
    assertEquals(inches(11), inches(12).subtract(millimetres(25.4)));
    assertEquals(feet(1.5), feet(2).subtract(inches(6)));
  }

  @Test
  void scalesByPlainNumbers() {
    assertEquals(inches(4.5), inches(1.5).multiply(3));
    assertEquals("38.1 mm", inches("1/2").multiply(3).to(ShopUnits.MILLIMETRE).toString());
    assertEquals(inches(4.5), inches(1.5).multiply(new BigDecimal("3")));
    assertEquals(inches(0.5), inches(1.5).divide(3));
    assertEquals(inches(0.5), inches(1.5).divide(Integer.valueOf(3)));
    assertEquals(inches(-1.5), inches(1.5).negate());
    assertEquals(inches(7), inches(1.5).withValue(7));
  }

  @Test
  void multipliesAndDividesUnitsToo() {
    assertEquals(
        area(inches(2), inches(3)).in(SQUARE_INCH), inches(2).multiply(inches(3)).getValue());
    assertEquals(INCH.multiply(INCH), inches(2).multiply(inches(3)).getUnit());
    assertEquals(1.5, metres(3).divide(seconds(2)).getValue());
    assertEquals(METRE.divide(SECOND), metres(3).divide(seconds(2)).getUnit());
    assertEquals(0.25, seconds(4).inverse().getValue());
    assertEquals(SECOND.inverse(), seconds(4).inverse().getUnit());
  }

  @Test
  void takesARatioAcrossUnits() {
    assertEquals(4.0, inches(2).ratio(inches(0.5)));
    assertEquals(2.0, inches(2).ratio(millimetres(25.4)));
    assertEquals(12.0, feet(1).ratio(inches(1)));
    assertEquals(0.5, inches(1).divide(inches(2)).asType(Dimensionless.class).in(AbstractUnit.ONE));
  }

  @Test
  void goesUnderAnotherTypeOfTheSameDimensionOnly() {
    Measure<Speed> speed = metres(3).divide(seconds(2)).asType(Speed.class);
    assertEquals(1.5, speed.getValue());

    ClassCastException refused =
        assertThrows(ClassCastException.class, () -> inches(2).asType(Energy.class));
    assertEquals("2 in is a length, not Energy", refused.getMessage());
  }

  @Test
  void knowsWhichUnitsItCanBeReadIn() {
    assertTrue(inches(1).hasDimensionOf(METRE));
    assertTrue(inches(1).hasDimensionOf(FOOT));
    assertFalse(inches(1).hasDimensionOf(KILOGRAM));
    assertFalse(inches(1).hasDimensionOf(SQUARE_INCH));
    assertFalse(kilograms(1).hasDimensionOf(METRE));
  }

  @Test
  void foldsNegativeZero() {
    // −0.0 and 0.0 are equal numbers but unlike Doubles: measures would be equal in one sense only.
    Measure<Length> folded = inches(-0.0);

    assertEquals(0.0, folded.getValue());
    assertEquals(inches(0), folded);
    assertEquals(inches(0).hashCode(), folded.hashCode());
    assertEquals(inches(0), inches(0).negate());
    assertEquals(inches(0), inches(5).multiply(-0.0));
    assertEquals("0 in", folded.toString());
  }

  @Test
  void sumsInchFractionsWithoutError() {
    // Every pair of sixty-fourths up to 4 in: the sum and the difference are again sixty-fourths,
    // which a double holds exactly. Adding through metres would miss the last bit in one of four.
    for (int a = 0; a <= 256; a++) {
      for (int b = 0; b <= 256; b++) {
        Measure<Length> first = inches(a / 64.0);
        Measure<Length> second = inches(b / 64.0);
        assertEquals((a + b) / 64.0, first.add(second).in(INCH));
        assertEquals((a - b) / 64.0, first.subtract(second).in(INCH));
      }
    }
  }

  @Test
  void equalsStrictlyByUnitAndValue() {
    assertEquals(inches(1), inches(1));
    assertEquals(inches(1).hashCode(), inches("1").hashCode());
    assertNotEquals(inches(1), inches(2));
    assertNotEquals(inches(1), millimetres(25.4));
    assertNotEquals(inches(1), feet(1));
    assertNotEquals(inches(1), null);
    assertNotEquals(inches(1), (Object) "1 in");
  }

  @Test
  void comparesAcrossUnits() {
    assertEquals(0, inches(1).compareTo(millimetres(25.4)));
    assertTrue(inches(1).isGreaterThan(millimetres(25)));
    assertFalse(inches(1).isGreaterThan(millimetres(25.4)));
    assertTrue(inches(1).isLessThan(millimetres(26)));
    assertFalse(inches(1).isLessThan(millimetres(25.4)));
    assertTrue(inches(-2).isLessThan(inches(1)));
  }

  @Test
  void isEquivalentButForRounding() {
    assertTrue(inches(1).isEquivalentTo(millimetres(25.4)));
    // The slack is one part in 10¹².
    assertTrue(metres(1).isEquivalentTo(metres(1 + 0.9e-12)));
    assertFalse(metres(1).isEquivalentTo(metres(1 + 1.1e-12)));
    assertTrue(inches(0).isEquivalentTo(millimetres(0)));
    assertFalse(inches(0).isEquivalentTo(millimetres(1e-300)));
  }

  @Test
  void isWithinAToleranceInAnyUnitTheLimitIncluded() {
    assertTrue(inches(1).isWithin(inches(1), inches(0)));
    assertTrue(millimetres(40.5).isWithin(millimetres(40), millimetres(0.5)));
    assertTrue(millimetres(39.5).isWithin(millimetres(40), millimetres(0.5)));
    assertFalse(millimetres(40.51).isWithin(millimetres(40), millimetres(0.5)));
    assertFalse(millimetres(39.49).isWithin(millimetres(40), millimetres(0.5)));
    assertTrue(inches(1).isWithin(millimetres(25), inches("1/32")));
    assertFalse(inches(1).isWithin(millimetres(25), inches("1/64")));
    // 0.1 + 0.2 is a hair more than 0.3 in doubles; that is no departure.
    assertTrue(metres(0.1).add(metres(0.2)).isWithin(metres(0.3), metres(0)));
    // The slack for such noise is one part in 10¹² of the larger, be it large or small.
    assertTrue(metres(1e6).isWithin(metres(1e6 + 1e-7), metres(0)));
    assertFalse(metres(1e6).isWithin(metres(1e6 + 1e-5), metres(0)));
    assertFalse(metres(1e-6).isWithin(metres(1e-6 + 1e-17), metres(0)));
  }

  /** A power of ten up to 10²² is a whole double; beyond that it is a rounding off by itself. */
  @Test
  void convertsByEveryPrefixBothWays() {
    for (MetricPrefix prefix : MetricPrefix.values()) {
      Unit<Length> prefixed = METRE.prefix(prefix);
      double size = Double.parseDouble("1e" + prefix.getExponent());
      double count = Double.parseDouble("1e" + -prefix.getExponent());
      double slack = Math.abs(prefix.getExponent()) <= 22 ? 0 : 1;

      assertEquals(count, metres(1).in(prefixed), slack * Math.ulp(count), prefix.getName());
      assertEquals(
          size, Measure.of(1, prefixed).in(METRE), slack * Math.ulp(size), prefix.getName());
    }
  }
}
