package org.hammerscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import javax.measure.spi.SystemOfUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.UnitDimension;
import tech.units.indriya.unit.Units;

/** The units of the shop as a JSR 385 system of units. */
class ShopUnitsSystemTest {
  private static final SystemOfUnits SYSTEM = ShopUnits.system();

  static Stream<Arguments> siUnits() {
    return Stream.of(
        arguments(Length.class, Units.METRE),
        arguments(Area.class, Units.SQUARE_METRE),
        arguments(Volume.class, Units.CUBIC_METRE),
        arguments(Mass.class, Units.KILOGRAM),
        arguments(Time.class, Units.SECOND),
        arguments(Force.class, Units.NEWTON),
        arguments(Pressure.class, Units.PASCAL),
        arguments(Angle.class, Units.RADIAN),
        arguments(Temperature.class, Units.KELVIN),
        arguments(Dimensionless.class, ShopUnits.ONE),
        arguments(Density.class, ShopUnits.KILOGRAM_PER_CUBIC_METRE),
        arguments(LinearDensity.class, ShopUnits.KILOGRAM_PER_METRE));
  }

  @ParameterizedTest
  @MethodSource("siUnits")
  <Q extends Quantity<Q>> void givesTheSiUnitOfAType(Class<Q> type, Unit<Q> unit) {
    assertSame(unit, SYSTEM.getUnit(type));
  }

  @Test
  void hasNoUnitForWhatAForgeDoesNotMeasure() {
    assertNull(SYSTEM.getUnit(ElectricCurrent.class));
    assertNull(SYSTEM.getUnit("A"));
    assertNull(SYSTEM.getUnit("inch"));
    assertTrue(SYSTEM.getUnits(UnitDimension.ELECTRIC_CURRENT).isEmpty());
  }

  @Test
  void findsUnitsByTheirSymbol() {
    assertSame(ShopUnits.INCH, SYSTEM.getUnit("in"));
    assertSame(ShopUnits.POUND_PER_CUBIC_FOOT, SYSTEM.getUnit("lb/ft³"));
    assertSame(ShopUnits.CELSIUS, SYSTEM.getUnit("°C"));
    assertSame(ShopUnits.CELSIUS, SYSTEM.getUnit("℃"));
    assertSame(ShopUnits.DEGREE, SYSTEM.getUnit("°"));
    assertSame(ShopUnits.PSI, SYSTEM.getUnit("psi"));
  }

  @Test
  void listsItsUnits() {
    Set<? extends Unit<?>> all = SYSTEM.getUnits();
    assertEquals(ShopUnitsTest.units().count(), all.size());
    ShopUnitsTest.units().forEach(unit -> assertTrue(all.contains(unit.get()[1]), "" + unit));
    assertThrows(UnsupportedOperationException.class, all::clear);

    assertEquals(
        Set.of(
            ShopUnits.METRE,
            ShopUnits.CENTIMETRE,
            ShopUnits.MILLIMETRE,
            ShopUnits.INCH,
            ShopUnits.FOOT,
            ShopUnits.THOU),
        SYSTEM.getUnits(UnitDimension.LENGTH));
    assertTrue(SYSTEM.getUnits(UnitDimension.TEMPERATURE).contains(ShopUnits.FAHRENHEIT));
  }

  @Test
  void hasAName() {
    assertEquals("Hammerscale shop units", SYSTEM.getName());
    assertEquals("Hammerscale shop units", SYSTEM.toString());
  }
}
