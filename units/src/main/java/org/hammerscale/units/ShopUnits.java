package org.hammerscale.units;

import java.util.ArrayList;
import java.util.List;
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
import javax.measure.spi.SystemOfUnits;
import org.hammerscale.units.UnitScale.Family;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/**
 * The units of a forge: those of its rulers, its scales and its bar tables.
 *
 * <p>Every definition stands in the source as an exact fraction of an SI unit. Sources: the
 * international yard and pound agreement of 1959 for the inch (25.4 mm) and the pound (0.453 592 37
 * kg), as in NIST SP 811, appendix B (from memory); the kelvin, Celsius and Fahrenheit scales as in
 * NIST SP 811, appendix B.
 *
 * <pre>{@code
 * Measure.of(36, ShopUnits.KSI).to(ShopUnits.MEGAPASCAL)  // 248.2 MPa  an American mill sheet, read elsewhere
 * ShopUnits.system().getUnit("lb/ft")                     // lb/ft  found by its symbol, from a file
 * ShopUnits.symbol(ShopUnits.POUND_PER_FOOT)              // "lb/ft"  for the file
 * }</pre>
 *
 * <p>Nothing is registered anywhere: using these units changes how no other unit is read or
 * printed.
 */
public final class ShopUnits {
  private static final List<UnitScale<?>> SCALES = new ArrayList<>();

  /** Metre, the SI unit of length. */
  public static final Unit<Length> METRE = metric(Units.METRE, "m", Dimensions.LENGTH, 1, 1, 5);

  /** Centimetre, 1/100 m. */
  public static final Unit<Length> CENTIMETRE =
      metric(MetricPrefix.CENTI(METRE), "cm", Dimensions.LENGTH, 1, 100, 3);

  /** Millimetre, 1/1000 m. */
  public static final Unit<Length> MILLIMETRE =
      metric(MetricPrefix.MILLI(METRE), "mm", Dimensions.LENGTH, 1, 1000, 2);

  /** Inch, exactly 25.4 mm: 127/5000 m. */
  public static final Unit<Length> INCH = customary("in", METRE, Dimensions.LENGTH, 127, 5000, 4);

  /** Foot, exactly 12 in: 381/1250 m. */
  public static final Unit<Length> FOOT = customary("ft", METRE, Dimensions.LENGTH, 381, 1250, 4);

  /** Thousandth of an inch, also called a mil: 127/5 000 000 m. */
  public static final Unit<Length> THOU =
      customary("thou", METRE, Dimensions.LENGTH, 127, 5_000_000, 2);

  /** Square metre. */
  public static final Unit<Area> SQUARE_METRE =
      metric(Units.SQUARE_METRE, "m²", Dimensions.AREA, 1, 1, 0);

  /** Square millimetre, 10⁻⁶ m². */
  public static final Unit<Area> SQUARE_MILLIMETRE =
      metric(square(MILLIMETRE), "mm²", Dimensions.AREA, 1, 1e6, 0);

  /** Square inch, (127/5000 m)². */
  public static final Unit<Area> SQUARE_INCH =
      add(square(INCH), "in²", Dimensions.AREA, 127 * 127, 5000 * 5000, Family.CUSTOMARY, 4);

  /** Square centimetre, 10⁻⁴ m². */
  public static final Unit<Area> SQUARE_CENTIMETRE =
      metric(square(CENTIMETRE), "cm²", Dimensions.AREA, 1, 1e4, 0);

  /** Square foot, 144 in². */
  public static final Unit<Area> SQUARE_FOOT =
      add(square(FOOT), "ft²", Dimensions.AREA, 381 * 381, 1250 * 1250, Family.CUSTOMARY, 4);

  /** Cubic metre. */
  public static final Unit<Volume> CUBIC_METRE =
      metric(Units.CUBIC_METRE, "m³", Dimensions.VOLUME, 1, 1, 0);

  /** Cubic millimetre, 10⁻⁹ m³. */
  public static final Unit<Volume> CUBIC_MILLIMETRE =
      metric(cube(MILLIMETRE), "mm³", Dimensions.VOLUME, 1, 1e9, 0);

  /** Cubic inch, (127/5000 m)³. */
  public static final Unit<Volume> CUBIC_INCH =
      add(cube(INCH), "in³", Dimensions.VOLUME, 127 * 127 * 127, 125e9, Family.CUSTOMARY, 4);

  /** Cubic centimetre, 10⁻⁶ m³. */
  public static final Unit<Volume> CUBIC_CENTIMETRE =
      metric(cube(CENTIMETRE), "cm³", Dimensions.VOLUME, 1, 1e6, 0);

  /** Cubic foot, 1728 in³. */
  public static final Unit<Volume> CUBIC_FOOT =
      add(
          cube(FOOT),
          "ft³",
          Dimensions.VOLUME,
          381 * 381 * 381,
          1250d * 1250 * 1250,
          Family.CUSTOMARY,
          4);

  /** Kilogram, the SI unit of mass. */
  public static final Unit<Mass> KILOGRAM = metric(Units.KILOGRAM, "kg", Dimensions.MASS, 1, 1, 3);

  /** Gram, 1/1000 kg. */
  public static final Unit<Mass> GRAM = metric(Units.GRAM, "g", Dimensions.MASS, 1, 1000, 0);

  /** Pound avoirdupois, exactly 0.453 592 37 kg. */
  public static final Unit<Mass> POUND =
      customary("lb", KILOGRAM, Dimensions.MASS, 45_359_237, 100_000_000, 3);

  /** Ounce avoirdupois, 1/16 lb. */
  public static final Unit<Mass> OUNCE =
      customary("oz", KILOGRAM, Dimensions.MASS, 45_359_237, 1_600_000_000, 2);

  /** Kilogram per cubic metre. */
  public static final Unit<Density> KILOGRAM_PER_CUBIC_METRE =
      metric(ShopUnits.<Density>per(KILOGRAM, CUBIC_METRE), "kg/m³", Dimensions.DENSITY, 1, 1, 0);

  /** Pound per cubic foot, as bar tables state the weight of iron. */
  public static final Unit<Density> POUND_PER_CUBIC_FOOT =
      add(
          ShopUnits.<Density>per(POUND, CUBIC_FOOT),
          "lb/ft³",
          Dimensions.DENSITY,
          45_359_237d * 1250 * 1250 * 1250,
          1e8 * 381 * 381 * 381,
          Family.CUSTOMARY,
          1);

  /** Kilogram per metre. */
  public static final Unit<LinearDensity> KILOGRAM_PER_METRE =
      metric(
          ShopUnits.<LinearDensity>per(KILOGRAM, METRE),
          "kg/m",
          Dimensions.LINEAR_DENSITY,
          1,
          1,
          3);

  /** Pound per foot. */
  public static final Unit<LinearDensity> POUND_PER_FOOT =
      add(
          ShopUnits.<LinearDensity>per(POUND, FOOT),
          "lb/ft",
          Dimensions.LINEAR_DENSITY,
          45_359_237d * 1250,
          1e8 * 381,
          Family.CUSTOMARY,
          3);

  /** Newton, the SI unit of force. */
  public static final Unit<Force> NEWTON = metric(Units.NEWTON, "N", Dimensions.FORCE, 1, 1, 0);

  /** Kilonewton, 1000 N. */
  public static final Unit<Force> KILONEWTON =
      metric(MetricPrefix.KILO(NEWTON), "kN", Dimensions.FORCE, 1000, 1, 0);

  /** Pound-force: one pound under standard gravity, 9.806 65 m/s². */
  public static final Unit<Force> POUND_FORCE =
      customary("lbf", NEWTON, Dimensions.FORCE, 8_896_443_230_521L, 2_000_000_000_000L, 0);

  /** Pascal, the SI unit of pressure and stress. */
  public static final Unit<Pressure> PASCAL =
      metric(Units.PASCAL, "Pa", Dimensions.PRESSURE, 1, 1, 0);

  /** Megapascal, 10⁶ Pa: one newton per square millimetre. */
  public static final Unit<Pressure> MEGAPASCAL =
      metric(MetricPrefix.MEGA(PASCAL), "MPa", Dimensions.PRESSURE, 1e6, 1, 0);

  /** Pound-force per square inch: 8 896 443 230 521/1 290 320 000 Pa. */
  public static final Unit<Pressure> PSI =
      customary("psi", PASCAL, Dimensions.PRESSURE, 8_896_443_230_521L, 1_290_320_000L, 0);

  /** Thousand pound-force per square inch. */
  public static final Unit<Pressure> KSI =
      customary("ksi", PASCAL, Dimensions.PRESSURE, 8_896_443_230_521L, 1_290_320L, 1);

  /** Second, the SI unit of time. */
  public static final Unit<Time> SECOND = metric(Units.SECOND, "s", Dimensions.TIME, 1, 1, 0);

  /** Minute, 60 s. */
  public static final Unit<Time> MINUTE = metric(Units.MINUTE, "min", Dimensions.TIME, 60, 1, 0);

  /** Hour, 3600 s. */
  public static final Unit<Time> HOUR = metric(Units.HOUR, "h", Dimensions.TIME, 3600, 1, 0);

  /** One, the unit of a plain number. */
  public static final Unit<Dimensionless> ONE =
      metric(AbstractUnit.ONE, "", Dimensions.NONE, 1, 1, 0);

  /** Radian, the SI unit of plane angle. */
  public static final Unit<Angle> RADIAN = metric(Units.RADIAN, "rad", Dimensions.NONE, 1, 1, 0);

  /** Degree of plane angle, π/180 rad. */
  public static final Unit<Angle> DEGREE =
      metric(
          named("°", RADIAN, RADIAN.multiply(Math.PI).divide(180)),
          "°",
          Dimensions.NONE,
          Math.PI,
          180,
          0);

  /** Kelvin, the SI unit of temperature, counted from absolute zero. */
  public static final Unit<Temperature> KELVIN =
      metric(Units.KELVIN, "K", Dimensions.TEMPERATURE, 1, 1, 0);

  /**
   * Degree Celsius; its zero is 273.15 K. The unit is Indriya's, which prints {@code ℃} by itself;
   * measures in it print {@code °C}.
   */
  public static final Unit<Temperature> CELSIUS = temperature(Units.CELSIUS, "°C", 1, 1, 27_315);

  /** Degree Fahrenheit, 5/9 K; its zero lies 459.67 °F above absolute zero. */
  public static final Unit<Temperature> FAHRENHEIT =
      temperature(
          named("°F", KELVIN, KELVIN.multiply(5).divide(9).shift(459.67)), "°F", 5, 9, 45_967);

  static {
    relate(METRE, SQUARE_METRE, CUBIC_METRE);
    relate(MILLIMETRE, SQUARE_MILLIMETRE, CUBIC_MILLIMETRE);
    relate(CENTIMETRE, SQUARE_CENTIMETRE, CUBIC_CENTIMETRE);
    relate(INCH, SQUARE_INCH, CUBIC_INCH);
    relate(FOOT, SQUARE_FOOT, CUBIC_FOOT);
  }

  private ShopUnits() {}

  /**
   * All these units as a JSR 385 system of units. Its unit of a quantity type is the SI unit.
   *
   * @return the system
   */
  public static SystemOfUnits system() {
    return ShopSystem.INSTANCE;
  }

  /**
   * A unit as measures print it, for a file or a message; {@link #system()} finds each of these
   * units by it.
   *
   * @param unit any unit that a measure can have
   * @return its symbol, such as {@code lb/ft} or {@code °C}; empty for a plain number
   * @throws IllegalArgumentException if no measure can have the unit
   */
  public static String symbol(Unit<?> unit) {
    return UnitScales.of(unit).symbol;
  }

  /** All of them, for the table that finds a unit's scale. */
  static List<UnitScale<?>> scales() {
    return SCALES;
  }

  private static <Q extends Quantity<Q>> Unit<Q> metric(
      Unit<Q> unit,
      String symbol,
      long dimension,
      double numerator,
      double denominator,
      int decimals) {
    return add(unit, symbol, dimension, numerator, denominator, Family.METRIC, decimals);
  }

  private static <Q extends Quantity<Q>> Unit<Q> customary(
      String symbol, Unit<Q> si, long dimension, long numerator, long denominator, int decimals) {
    Unit<Q> unit = named(symbol, si, si.multiply((double) numerator).divide((double) denominator));
    return add(
        unit,
        symbol,
        dimension,
        (double) numerator,
        (double) denominator,
        Family.CUSTOMARY,
        decimals);
  }

  /** A unit under a symbol of its own; it prints so without a label registered for all the JVM. */
  private static <Q extends Quantity<Q>> Unit<Q> named(String symbol, Unit<Q> si, Unit<Q> unit) {
    return new TransformedUnit<>(symbol, si, si, unit.getConverterTo(si));
  }

  private static Unit<Temperature> temperature(
      Unit<Temperature> unit, String symbol, double numerator, double denominator, double zero) {
    SCALES.add(
        new UnitScale<>(
            unit, symbol, Dimensions.TEMPERATURE, numerator, denominator, zero, Family.METRIC, 0));
    return unit;
  }

  private static <Q extends Quantity<Q>> Unit<Q> add(
      Unit<Q> unit,
      String symbol,
      long dimension,
      double numerator,
      double denominator,
      Family family,
      int decimals) {
    SCALES.add(
        new UnitScale<>(unit, symbol, dimension, numerator, denominator, 0, family, decimals));
    return unit;
  }

  private static Unit<Area> square(Unit<Length> side) {
    return side.multiply(side).asType(Area.class);
  }

  private static Unit<Volume> cube(Unit<Length> side) {
    return side.multiply(side).multiply(side).asType(Volume.class);
  }

  /**
   * A quotient as a unit of our own quantity types, which JSR 385 cannot check by {@code asType}:
   * it knows the dimension of its own types only.
   */
  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> Unit<Q> per(Unit<?> above, Unit<?> below) {
    return (Unit<Q>) above.divide(below);
  }

  private static void relate(Unit<Length> side, Unit<Area> square, Unit<Volume> cube) {
    UnitScale.relate(scaleOf(side), scaleOf(square), scaleOf(cube));
  }

  @SuppressWarnings("unchecked")
  private static <Q extends Quantity<Q>> UnitScale<Q> scaleOf(Unit<Q> unit) {
    for (UnitScale<?> scale : SCALES) {
      if (scale.unit == unit) {
        return (UnitScale<Q>) scale;
      }
    }
    throw new IllegalStateException("no scale for " + unit);
  }
}
