package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithinUlps;
import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.length;
import static org.hammerscale.units.Measures.mass;
import static org.hammerscale.units.Measures.massPerLength;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsForce;
import static org.hammerscale.units.Measures.poundsPerCubicFoot;
import static org.hammerscale.units.Measures.seconds;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;

/** The short factories, and the products that keep their type. */
class MeasuresTest {
  static Stream<Arguments> factories() {
    return Stream.of(
        Arguments.of(inches(2.5), ShopUnits.INCH),
        Arguments.of(feet(2.5), ShopUnits.FOOT),
        Arguments.of(millimetres(2.5), ShopUnits.MILLIMETRE),
        Arguments.of(metres(2.5), ShopUnits.METRE),
        Arguments.of(kilograms(2.5), ShopUnits.KILOGRAM),
        Arguments.of(pounds(2.5), ShopUnits.POUND),
        Arguments.of(kilogramsPerCubicMetre(2.5), ShopUnits.KILOGRAM_PER_CUBIC_METRE),
        Arguments.of(poundsPerCubicFoot(2.5), ShopUnits.POUND_PER_CUBIC_FOOT),
        Arguments.of(newtons(2.5), ShopUnits.NEWTON),
        Arguments.of(poundsForce(2.5), ShopUnits.POUND_FORCE),
        Arguments.of(megapascals(2.5), ShopUnits.MEGAPASCAL),
        Arguments.of(celsius(2.5), ShopUnits.CELSIUS),
        Arguments.of(fahrenheit(2.5), ShopUnits.FAHRENHEIT),
        Arguments.of(seconds(2.5), ShopUnits.SECOND),
        Arguments.of(minutes(2.5), ShopUnits.MINUTE),
        Arguments.of(degrees(2.5), ShopUnits.DEGREE));
  }

  @ParameterizedTest
  @MethodSource
  void factories(Measure<?> made, Unit<?> unit) {
    assertEquals(2.5, made.getValue());
    assertSame(unit, made.getUnit());
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 1/2", "1-1/2", "1.5", "1½", "3/2", "1 1/2\"", "1 1/2 in"})
  void readsInchesAsASmithWritesThem(String text) {
    assertEquals(inches(1.5), inches(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1 mm", "1 ft", "1'", "40 cm"})
  void refusesOtherUnitsForInches(String text) {
    assertEquals(
        "text must be a number of inches, was \"" + text + "\"; use length(text) for any unit",
        assertThrows(IllegalArgumentException.class, () -> inches(text)).getMessage());
  }

  @Test
  void refusesBadTextAsAnyArgumentIsRefused() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> inches("1/0"));
    assertTrue(refused.getMessage().contains("\"1/0\" is not a length"), refused.getMessage());
    assertTrue(refused.getMessage().contains("not zero at position 2"), refused.getMessage());
    assertInstanceOf(MeasurementParseException.class, refused.getCause());

    String bare = assertThrows(IllegalArgumentException.class, () -> length("40")).getMessage();
    assertTrue(bare.contains("a unit such as in, ft or mm at position 2"), bare);
  }

  @Test
  void readsALengthInTheUnitWritten() {
    assertEquals(millimetres(40), length("40 mm"));
    assertEquals(inches(42.5), length("3' 6 1/2\""));
    assertEquals(feet(3), length("3 ft"));
  }

  @Test
  void areaComesInTheSquareOfTheFirstUnit() {
    assertEquals(Measure.of(6, ShopUnits.SQUARE_INCH), area(inches(2), inches(3)));
    assertEquals(Measure.of(2, ShopUnits.SQUARE_INCH), area(inches(2), millimetres(25.4)));
    assertEquals(Measure.of(6, ShopUnits.SQUARE_MILLIMETRE), area(millimetres(2), millimetres(3)));
    assertEquals(Measure.of(1, ShopUnits.SQUARE_METRE), area(metres(2), millimetres(500)));
    Measure<Area> feet = area(feet(2), inches(6));
    assertEquals(1.0, feet.getValue());
    assertEquals(144.0, feet.in(ShopUnits.SQUARE_INCH));
  }

  @Test
  void volumeComesInTheCubeOfTheLengthsUnit() {
    assertEquals(
        Measure.of(24, ShopUnits.CUBIC_INCH), volume(inches(4), area(inches(2), inches(3))));
    assertEquals(
        Measure.of(2, ShopUnits.CUBIC_INCH), volume(inches(2), area(millimetres(25.4), inches(1))));
    assertEquals(
        Measure.of(24, ShopUnits.CUBIC_MILLIMETRE),
        volume(millimetres(4), area(millimetres(2), millimetres(3))));
    // A cubic foot has 12³ cubic inches.
    Measure<Volume> foot = volume(feet(1), area(feet(1), feet(1)));
    assertWithinUlps(1728, foot.in(ShopUnits.CUBIC_INCH), 4);
  }

  @Test
  void volumeOverAreaIsALengthInTheUnitOfTheVolume() {
    Measure<Volume> inchBlock = volume(inches(4), area(inches(2), inches(3)));
    Measure<Volume> metricBlock = volume(millimetres(4), area(millimetres(2), millimetres(3)));
    Measure<Volume> foot = volume(feet(1), area(feet(1), feet(1)));

    assertEquals(inches(12), length(inchBlock, area(inches(1), inches(2))));
    assertEquals(inches(24), length(inchBlock, area(millimetres(25.4), inches(1))));
    assertEquals(millimetres(12), length(metricBlock, area(millimetres(1), millimetres(2))));
    assertEquals(feet(1), length(foot, area(feet(1), feet(1))));
    // What is no cube of the shop's units gives metres: 1000 cubic yards over a square yard.
    Unit<Length> yard = ShopUnits.FOOT.multiply(3);
    Measure<Length> side = Measure.of(10, yard);
    Measure<Length> metres =
        length(volume(side, area(side, side)), area(Measure.of(1, yard), Measure.of(1, yard)));
    assertSame(ShopUnits.METRE, metres.getUnit());
    assertWithinUlps(914.4, metres.getValue(), 8);
  }

  @Test
  void knowsTheInchBehindCubicInchesOfOtherMakers() {
    Measure<Volume> block =
        volume(Measure.of(4, USCustomary.INCH), area(Measure.of(2, USCustomary.INCH), inches(3)));

    assertEquals(24.0, block.in(ShopUnits.CUBIC_INCH));
    Measure<Length> length = length(block, area(inches(1), inches(2)));
    assertEquals(12.0, length.in(ShopUnits.INCH));
    assertTrue(
        length.getUnit().isEquivalentTo(ShopUnits.INCH), "a caller of inches is given " + length);
  }

  @Test
  void refusesAnAreaOfZero() {
    Measure<Volume> block = volume(inches(4), area(inches(2), inches(3)));
    assertEquals(
        "area must not be zero; give one that can hold the volume",
        assertThrows(
                IllegalArgumentException.class, () -> length(block, area(inches(0), inches(1))))
            .getMessage());
  }

  @Test
  void massComesInPoundsForInchesAndInKilogramsForOthers() {
    // 1728 in³ are a cubic foot.
    Measure<Volume> cubicFoot = volume(inches(12), area(inches(12), inches(12)));
    Measure<Mass> pounds = mass(cubicFoot, poundsPerCubicFoot(490));
    assertSame(ShopUnits.POUND, pounds.getUnit());
    assertWithinUlps(490, pounds.getValue(), 4);

    Measure<Volume> litre = volume(millimetres(100), area(millimetres(100), millimetres(100)));
    Measure<Mass> kilograms = mass(litre, kilogramsPerCubicMetre(7850));
    assertSame(ShopUnits.KILOGRAM, kilograms.getUnit());
    assertWithinUlps(7.85, kilograms.getValue(), 4);
  }

  @Test
  void massPerLengthComesInPoundsPerFootForInchesAndMetricForOthers() {
    // A square inch is 1/144 of a square foot: 489.6/144 = 3.4, the factor of the bar tables.
    Measure<LinearDensity> inch =
        massPerLength(area(inches(1), inches(1)), poundsPerCubicFoot(489.6));
    assertSame(ShopUnits.POUND_PER_FOOT, inch.getUnit());
    assertWithinUlps(3.4, inch.getValue(), 4);

    Measure<LinearDensity> metric =
        massPerLength(area(millimetres(20), millimetres(5)), kilogramsPerCubicMetre(7850));
    assertSame(ShopUnits.KILOGRAM_PER_METRE, metric.getUnit());
    assertWithinUlps(0.785, metric.getValue(), 4);
  }

  @Test
  void takesForeignQuantitiesInEveryProduct() {
    Quantity<Length> two = Quantities.getQuantity(2, USCustomary.INCH);
    Quantity<Area> three = Quantities.getQuantity(3, ShopUnits.SQUARE_INCH);

    assertEquals(6.0, area(two, inches(3)).in(ShopUnits.SQUARE_INCH));
    assertEquals(6.0, volume(inches(2), three).in(ShopUnits.CUBIC_INCH));
    assertEquals(inches(2), length(Measure.of(6, ShopUnits.CUBIC_INCH), three));
  }
}
