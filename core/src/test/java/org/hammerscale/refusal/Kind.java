package org.hammerscale.refusal;

import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Random;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.hammerscale.units.Density;
import org.hammerscale.units.LinearDensity;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** A kind of quantity: its sizes in a shop, and the units that people state them in. */
record Kind(Class<?> type, List<Double> sizes, List<Unit<?>> units) {
  static final List<Kind> ALL =
      List.of(
          of(
              Length.class,
              List.of(
                  3.0, 6.0, 6.0, 10.0, 12.0, 12.0, 25.0, 25.0, 40.0, 75.0, 150.0, 300.0, 600.0,
                  1000.0),
              ShopUnits.MILLIMETRE,
              ShopUnits.INCH,
              ShopUnits.INCH,
              ShopUnits.METRE,
              Units.METRE.multiply(0.0254),
              MetricPrefix.MICRO(Units.METRE)),
          of(
              Area.class,
              List.of(50.0, 100.0, 200.0, 500.0, 1000.0, 20_000.0),
              ShopUnits.SQUARE_MILLIMETRE,
              ShopUnits.SQUARE_INCH,
              Units.SQUARE_METRE.divide(10_000)),
          of(
              Volume.class,
              List.of(100.0, 1000.0, 5000.0, 20_000.0, 200_000.0),
              ShopUnits.CUBIC_MILLIMETRE,
              ShopUnits.CUBIC_INCH,
              Units.LITRE),
          of(
              Mass.class,
              List.of(1.0, 10.0, 40.0, 100.0),
              ShopUnits.KILOGRAM,
              ShopUnits.POUND,
              Units.GRAM),
          of(
              Time.class,
              List.of(10.0, 60.0, 300.0, 1200.0),
              ShopUnits.SECOND,
              ShopUnits.MINUTE,
              Units.HOUR),
          of(
              Temperature.class,
              List.of(293.15, 900.0, 1100.0, 1173.15, 1273.15, 1373.15, 1473.15),
              ShopUnits.KELVIN,
              ShopUnits.CELSIUS,
              ShopUnits.FAHRENHEIT),
          of(
              Angle.class,
              List.of(30.0, 45.0, 60.0, 60.0, 90.0, 90.0, 120.0, 180.0, 270.0, 360.0),
              ShopUnits.DEGREE,
              ShopUnits.RADIAN),
          of(
              Force.class,
              List.of(10.0, 100.0, 500.0, 2000.0),
              ShopUnits.NEWTON,
              ShopUnits.POUND_FORCE,
              MetricPrefix.KILO(Units.NEWTON)),
          of(
              Pressure.class,
              List.of(2.0, 80.0, 160.0, 235.0, 400.0),
              ShopUnits.MEGAPASCAL,
              ShopUnits.KSI,
              Units.PASCAL.multiply(1000)),
          of(
              Density.class,
              List.of(450.0, 700.0, 7850.0, 8500.0),
              ShopUnits.KILOGRAM_PER_CUBIC_METRE,
              ShopUnits.POUND_PER_CUBIC_FOOT),
          of(
              LinearDensity.class,
              List.of(0.5, 2.0, 5.0),
              ShopUnits.KILOGRAM_PER_METRE,
              ShopUnits.POUND_PER_FOOT),
          of(Dimensionless.class, List.of(0.1, 0.5, 1.0, 2.0), ShopUnits.ONE, Units.PERCENT));

  private static final double[] HOSTILE = {
    0, -0.0, -1, 1e-300, 1e300, -1e300, 1e-12, 1e12, Double.MIN_VALUE, Double.MAX_VALUE
  };

  private static final double[] NO_NUMBERS = {
    Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
  };

  /** Sizes in the first of the units. */
  private static Kind of(Class<?> type, List<Double> sizes, Unit<?>... units) {
    return new Kind(type, sizes, List.of(units));
  }

  static Kind of(Class<?> type) {
    return ALL.stream().filter(kind -> kind.type == type).findFirst().orElseThrow();
  }

  static Kind any(Random random) {
    return ALL.get(random.nextInt(ALL.size()));
  }

  Unit<?> unit(Random random) {
    return units.get(random.nextInt(units.size()));
  }

  /** A size that a shop knows, in anybody's unit and class. */
  @SuppressWarnings({"unchecked", "rawtypes"}) // the units of one kind fit one another
  Quantity<?> likely(Random random) {
    Measure size = Measure.of(sizes.get(random.nextInt(sizes.size())), (Unit) units.get(0));
    Measure<?> stated = size.to(unit(random));
    return random.nextInt(4) == 0
        ? Quantities.getQuantity(stated.getValue(), (Unit) stated.getUnit())
        : stated;
  }

  /** The same as one of ours. */
  Measure<?> likelyMeasure(Random random) {
    return Measure.from(likely(random));
  }

  /** What no shop has, or what is no size at all. */
  @SuppressWarnings({"unchecked", "rawtypes"}) // as an unchecked cast would
  Quantity<?> hostile(Random random) {
    Unit unit = unit(random);
    double value = HOSTILE[random.nextInt(HOSTILE.length)];
    return switch (random.nextInt(6)) {
      case 0 -> any(random).likely(random);
      case 1 -> Quantities.getQuantity(sizes.get(0), unit, Quantity.Scale.RELATIVE);
      case 2 -> stranger(NO_NUMBERS[random.nextInt(NO_NUMBERS.length)], unit);
      case 3 -> Quantities.getQuantity(value, unit);
      default ->
          type == Temperature.class && value < 0
              ? Measure.of(0, ShopUnits.KELVIN)
              : Measure.of(value, unit);
    };
  }

  /** A quantity by a third party that takes any number for a value. */
  private static Quantity<?> stranger(double value, Unit<?> unit) {
    return (Quantity<?>)
        Proxy.newProxyInstance(
            Kind.class.getClassLoader(),
            new Class<?>[] {Quantity.class},
            (proxy, method, arguments) ->
                switch (method.getName()) {
                  case "getValue" -> value;
                  case "getUnit" -> unit;
                  case "getScale" -> Quantity.Scale.ABSOLUTE;
                  case "toString" -> value + " " + unit + " by a stranger";
                  case "hashCode" -> System.identityHashCode(proxy);
                  case "equals" -> proxy == arguments[0];
                  default -> throw new UnsupportedOperationException(method.getName());
                });
  }
}
