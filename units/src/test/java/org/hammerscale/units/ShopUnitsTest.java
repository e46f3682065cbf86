package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithinUlps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

/** The units of the shop: their definitions, their symbols, and what Indriya makes of them. */
class ShopUnitsTest {
  /** Every public unit, by the name of its constant. */
  static Stream<Arguments> units() {
    return Arrays.stream(ShopUnits.class.getFields())
        .filter(field -> Modifier.isStatic(field.getModifiers()))
        .filter(field -> Unit.class.isAssignableFrom(field.getType()))
        .map(field -> Arguments.of(field.getName(), valueOf(field)));
  }

  private static Object valueOf(Field field) {
    try {
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(e);
    }
  }

  private static <Q extends Quantity<Q>> double one(Unit<Q> unit, Unit<Q> in) {
    return Measure.of(1, unit).in(in);
  }

  @Test
  void lengthsAreDefinedExactly() {
    assertEquals(25.4, one(ShopUnits.INCH, ShopUnits.MILLIMETRE));
    assertEquals(0.0254, one(ShopUnits.INCH, ShopUnits.METRE));
    assertEquals(2.54, one(ShopUnits.INCH, ShopUnits.CENTIMETRE));
    assertEquals(12, one(ShopUnits.FOOT, ShopUnits.INCH));
    assertEquals(304.8, one(ShopUnits.FOOT, ShopUnits.MILLIMETRE));
    assertEquals(1000, one(ShopUnits.INCH, ShopUnits.THOU));
    assertEquals(0.0254, one(ShopUnits.THOU, ShopUnits.MILLIMETRE));
    assertEquals(1000, one(ShopUnits.METRE, ShopUnits.MILLIMETRE));
    assertEquals(10, one(ShopUnits.CENTIMETRE, ShopUnits.MILLIMETRE));
  }

  @Test
  void areasAndVolumesFollowFromThem() {
    assertEquals(645.16, one(ShopUnits.SQUARE_INCH, ShopUnits.SQUARE_MILLIMETRE));
    assertEquals(0.00064516, one(ShopUnits.SQUARE_INCH, ShopUnits.SQUARE_METRE));
    assertEquals(1e6, one(ShopUnits.SQUARE_METRE, ShopUnits.SQUARE_MILLIMETRE));
    assertEquals(16387.064, one(ShopUnits.CUBIC_INCH, ShopUnits.CUBIC_MILLIMETRE));
    assertEquals(0.000016387064, one(ShopUnits.CUBIC_INCH, ShopUnits.CUBIC_METRE));
    assertEquals(1e9, one(ShopUnits.CUBIC_METRE, ShopUnits.CUBIC_MILLIMETRE));
  }

  @Test
  void massesAreDefinedExactly() {
    assertEquals(0.45359237, one(ShopUnits.POUND, ShopUnits.KILOGRAM));
    assertEquals(16, one(ShopUnits.POUND, ShopUnits.OUNCE));
    assertEquals(28.349523125, one(ShopUnits.OUNCE, ShopUnits.GRAM));
    assertEquals(1000, one(ShopUnits.KILOGRAM, ShopUnits.GRAM));
  }

  @Test
  void densitiesAreQuotientsOfTheDefinitions() {
    // 0.45359237/0.3048³ and 0.45359237/0.3048; the quotients do not end, so a rounding or two.
    assertWithinUlps(
        0.45359237 / (0.3048 * 0.3048 * 0.3048),
        one(ShopUnits.POUND_PER_CUBIC_FOOT, ShopUnits.KILOGRAM_PER_CUBIC_METRE),
        4);
    assertWithinUlps(
        0.45359237 / 0.3048, one(ShopUnits.POUND_PER_FOOT, ShopUnits.KILOGRAM_PER_METRE), 2);
  }

  @Test
  void forcesAndPressuresFollowFromStandardGravity() {
    // 1 lbf is a pound times 9.80665 m/s², 1 psi that over a square inch.
    assertEquals(4.4482216152605, one(ShopUnits.POUND_FORCE, ShopUnits.NEWTON));
    assertWithinUlps(4.4482216152605 / 0.00064516, one(ShopUnits.PSI, ShopUnits.PASCAL), 2);
    assertEquals(1000, one(ShopUnits.KSI, ShopUnits.PSI));
    assertEquals(1000, one(ShopUnits.KILONEWTON, ShopUnits.NEWTON));
    assertEquals(1e6, one(ShopUnits.MEGAPASCAL, ShopUnits.PASCAL));
  }

  @Test
  void timesAndAnglesAreDefinedExactly() {
    assertEquals(60, one(ShopUnits.MINUTE, ShopUnits.SECOND));
    assertEquals(3600, one(ShopUnits.HOUR, ShopUnits.SECOND));
    assertEquals(60, one(ShopUnits.HOUR, ShopUnits.MINUTE));
    assertEquals(Math.PI, Measure.of(180, ShopUnits.DEGREE).in(ShopUnits.RADIAN));
    assertEquals(90, Measure.of(Math.PI / 2, ShopUnits.RADIAN).in(ShopUnits.DEGREE));
  }

  @Test
  void siUnitsAreTheReferenceImplementationsOwn() {
    assertSame(Units.METRE, ShopUnits.METRE);
    assertSame(Units.KILOGRAM, ShopUnits.KILOGRAM);
    assertSame(Units.SECOND, ShopUnits.SECOND);
    assertSame(Units.KELVIN, ShopUnits.KELVIN);
    assertSame(Units.CELSIUS, ShopUnits.CELSIUS);
    assertSame(Units.RADIAN, ShopUnits.RADIAN);
  }

  @Test
  void squaresAndCubesAreThoseOfTheirLength() {
    assertEquals(ShopUnits.SQUARE_INCH, ShopUnits.INCH.multiply(ShopUnits.INCH).asType(Area.class));
    assertEquals(ShopUnits.CUBIC_INCH, ShopUnits.INCH.pow(3).asType(Volume.class));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("units")
  <Q extends Quantity<Q>> void convertAsIndriyaDoes(String name, Unit<Q> unit) {
    // Two independent paths: our fractions, and the converter that the unit itself carries.
    Unit<Q> si = unit.getSystemUnit();
    UnitConverter indriya = unit.getConverterTo(si);
    for (double value : new double[] {0, 1, -1, 1.5, 64, 1e-3, 1234.5678}) {
      if (unit.equals(ShopUnits.KELVIN) && value < 0) {
        continue; // no temperature lies below absolute zero
      }
      // Temperatures are shifted by hundreds of degrees, which costs bits of a small number.
      double slack =
          4 * Math.ulp(Math.abs(indriya.convert(value)) + Math.abs(indriya.convert(0.0)));
      assertEquals(indriya.convert(value), Measure.of(value, unit).in(si), slack);
      assertEquals(
          value, Measure.of(indriya.convert(value), si).in(unit), back(unit, value, slack));
    }
  }

  /** The slack of an SI value as one in the unit. */
  private static <Q extends Quantity<Q>> double back(Unit<Q> unit, double value, double slack) {
    UnitConverter toSi = unit.getConverterTo(unit.getSystemUnit());
    return 2 * slack / (toSi.convert(1.0) - toSi.convert(0.0)) + 4 * Math.ulp(value);
  }

  static Stream<Arguments> symbols() {
    return Stream.of(
        Arguments.of("in", ShopUnits.INCH),
        Arguments.of("ft", ShopUnits.FOOT),
        Arguments.of("thou", ShopUnits.THOU),
        Arguments.of("mm", ShopUnits.MILLIMETRE),
        Arguments.of("cm", ShopUnits.CENTIMETRE),
        Arguments.of("m", ShopUnits.METRE),
        Arguments.of("in²", ShopUnits.SQUARE_INCH),
        Arguments.of("mm²", ShopUnits.SQUARE_MILLIMETRE),
        Arguments.of("in³", ShopUnits.CUBIC_INCH),
        Arguments.of("mm³", ShopUnits.CUBIC_MILLIMETRE),
        Arguments.of("lb", ShopUnits.POUND),
        Arguments.of("oz", ShopUnits.OUNCE),
        Arguments.of("kg", ShopUnits.KILOGRAM),
        Arguments.of("g", ShopUnits.GRAM),
        Arguments.of("lb/ft³", ShopUnits.POUND_PER_CUBIC_FOOT),
        Arguments.of("kg/m³", ShopUnits.KILOGRAM_PER_CUBIC_METRE),
        Arguments.of("lb/ft", ShopUnits.POUND_PER_FOOT),
        Arguments.of("kg/m", ShopUnits.KILOGRAM_PER_METRE),
        Arguments.of("°", ShopUnits.DEGREE),
        Arguments.of("°F", ShopUnits.FAHRENHEIT),
        Arguments.of("N", ShopUnits.NEWTON),
        Arguments.of("kN", ShopUnits.KILONEWTON),
        Arguments.of("lbf", ShopUnits.POUND_FORCE),
        Arguments.of("Pa", ShopUnits.PASCAL),
        Arguments.of("MPa", ShopUnits.MEGAPASCAL),
        Arguments.of("psi", ShopUnits.PSI),
        Arguments.of("ksi", ShopUnits.KSI),
        Arguments.of("min", ShopUnits.MINUTE),
        Arguments.of("h", ShopUnits.HOUR));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("symbols")
  void printUnderTheirSymbol(String symbol, Unit<?> unit) {
    assertEquals(symbol, unit.toString());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("units")
  <Q extends Quantity<Q>> void measuresPrintASymbolAndNoFormula(String name, Unit<Q> unit) {
    String text = Measure.of(1, unit).toString();
    // ISO 80000-1: no space before the sign of a plane angle.
    String pattern =
        unit == ShopUnits.ONE ? "1" : unit == ShopUnits.DEGREE ? "1°" : "1 [a-zA-Z°²³/]+";
    assertTrue(text.matches(pattern), text);
  }
}
