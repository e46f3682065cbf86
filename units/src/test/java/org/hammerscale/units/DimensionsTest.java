package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.LuminousIntensity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.BaseUnit;
import tech.units.indriya.unit.UnitDimension;
import tech.units.indriya.unit.Units;

/** Kinds of quantities: told apart, and named in messages. */
class DimensionsTest {
  static Stream<Arguments> kinds() {
    return Stream.of(
        arguments("a plain number or angle", ShopUnits.DEGREE, Angle.class),
        arguments("a plain number or angle", Units.PERCENT, Dimensionless.class),
        arguments("a length", ShopUnits.FOOT, Length.class),
        arguments("an area", ShopUnits.SQUARE_INCH, Area.class),
        arguments("a volume", ShopUnits.CUBIC_MILLIMETRE, Volume.class),
        arguments("a mass", ShopUnits.POUND, Mass.class),
        arguments("a time", ShopUnits.MINUTE, Time.class),
        arguments("a temperature", ShopUnits.KELVIN, Temperature.class),
        arguments("a density", ShopUnits.POUND_PER_CUBIC_FOOT, Density.class),
        arguments("a mass per length", ShopUnits.POUND_PER_FOOT, LinearDensity.class),
        arguments("a force", Units.NEWTON, Force.class),
        arguments("a pressure", Units.PASCAL, Pressure.class),
        arguments("a quantity of another kind", Units.JOULE, Energy.class),
        arguments("a quantity of another kind", Units.WATT, Power.class),
        arguments("a quantity of another kind", Units.KILOMETRE_PER_HOUR, Speed.class),
        arguments("a quantity of another kind", Units.AMPERE, ElectricCurrent.class),
        arguments("a quantity of another kind", Units.MOLE, AmountOfSubstance.class),
        arguments("a quantity of another kind", Units.CANDELA, LuminousIntensity.class));
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void namesTheKindInTheMessage(String kind, Unit<Q> unit, Class<Q> type) {
    Measure<Q> measure = Measure.of(2, unit);
    Unit<Q> wrong = smuggled(kind.equals("a length") ? ShopUnits.POUND : ShopUnits.INCH);

    String message =
        assertThrows(IllegalArgumentException.class, () -> measure.in(wrong)).getMessage();
    assertTrue(
        message.endsWith(kind + " is not " + (kind.equals("a length") ? "a mass" : "a length")),
        message);
    assertFalse(measure.hasDimensionOf(wrong));
    assertTrue(measure.hasDimensionOf(unit));
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Unit<Q> smuggled(Unit<?> unit) {
    return (Unit<Q>) unit;
  }

  @ParameterizedTest(name = "{1}")
  @MethodSource("kinds")
  <Q extends Quantity<Q>> void goesUnderItsOwnTypeAndNoOther(
      String kind, Unit<Q> unit, Class<Q> type) {
    Measure<?> measure = Measure.of(2, unit);
    assertSame(measure, measure.asType(type));
    if (type != Length.class) {
      assertThrows(ClassCastException.class, () -> measure.asType(Length.class));
      assertThrows(ClassCastException.class, () -> inches(1).asType(type));
    }
  }

  @Test
  void tellsApartDimensionsThatCancel() {
    // A mass per volume by a volume is a mass again, and so on round the circle.
    Measure<?> mass =
        Measure.of(2, ShopUnits.KILOGRAM_PER_CUBIC_METRE)
            .multiply(Measure.of(3, ShopUnits.CUBIC_METRE));
    assertEquals(6, mass.asType(Mass.class).in(ShopUnits.KILOGRAM));
    Measure<?> none = mass.divide(Measure.of(2, ShopUnits.KILOGRAM));
    assertEquals(3, none.asType(Dimensionless.class).getValue());
    Measure<?> speed = metres(6).divide(Measures.seconds(2));
    assertEquals(3, speed.asType(Speed.class).getValue());
    assertThrows(ClassCastException.class, () -> speed.inverse().asType(Speed.class));
  }

  @Test
  void refusesATypeThatNobodyKnows() {
    assertEquals(
        "no unit is known for the quantity type " + Unknown.class.getName(),
        assertThrows(ClassCastException.class, () -> inches(1).asType(Unknown.class)).getMessage());
  }

  /** A quantity type of a caller's own. */
  private interface Unknown extends Quantity<Unknown> {}

  @Test
  void refusesUnitsOutsideTheSevenBaseDimensions() {
    Unit<Length> bit = new BaseUnit<>("bit", UnitDimension.parse('B'));
    String message =
        assertThrows(IllegalArgumentException.class, () -> Measure.of(1, bit)).getMessage();
    assertTrue(
        message.startsWith("unit must be made of the seven SI base dimensions, was "), message);
  }
}
