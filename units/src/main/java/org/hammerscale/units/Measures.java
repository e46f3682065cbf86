package org.hammerscale.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * Short ways to write measures, meant for static import, and the products that keep their type.
 *
 * <pre>{@code
 * inches("1 1/2")             // 1 1/2 in   as it stands on the rule
 * millimetres(40)             // 40 mm      or as a number
 * length("3' 6 1/2\"")        // 42 1/2 in  or as it was written
 * area(inches(2), inches(3))  // 6 in²      a product that knows what it is
 * }</pre>
 */
public final class Measures {
  private Measures() {}

  /**
   * Inches as a smith writes them: {@code 1 1/2}, {@code 1-1/2}, {@code 3/16}, {@code 0.375}. The
   * inch mark may stand behind.
   *
   * @param text a number of inches, whole, fractional or decimal
   * @return the length in inches, exact for fractions of powers of two
   * @throws IllegalArgumentException if the text is anything else, or in another unit
   */
  public static Measure<Length> inches(String text) {
    Objects.requireNonNull(text, "text");
    Measure<Length> read = read(text, LengthFormat.standard().withDefaultUnit(ShopUnits.INCH));
    if (read.getUnit() != ShopUnits.INCH) {
      throw new IllegalArgumentException(
          "text must be a number of inches, was \"" + text + "\"; use length(text) for any unit");
    }
    return read;
  }

  /**
   * A length with its unit: {@code 1 1/2 in}, {@code 3' 6"}, {@code 40 mm}.
   *
   * @param text a length as {@link LengthFormat} reads it
   * @return the length in the unit written; inches for feet and inches together
   * @throws IllegalArgumentException if the text is not such a length, with the reason and place
   */
  public static Measure<Length> length(String text) {
    Objects.requireNonNull(text, "text");
    return read(text, LengthFormat.standard());
  }

  private static Measure<Length> read(String text, LengthFormat format) {
    try {
      return format.parse(text);
    } catch (MeasurementParseException e) {
      throw new IllegalArgumentException("text " + e.getMessage(), e);
    }
  }

  /**
   * A length in inches.
   *
   * @param value the number of inches; 1 in = 25.4 mm, finite
   * @return the length in inches
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Length> inches(double value) {
    return Measure.of(value, ShopUnits.INCH);
  }

  /**
   * A length in feet.
   *
   * @param value the number of feet; 1 ft = 12 in, finite
   * @return the length in feet
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Length> feet(double value) {
    return Measure.of(value, ShopUnits.FOOT);
  }

  /**
   * A length in millimetres.
   *
   * @param value the number of millimetres, finite
   * @return the length in millimetres
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Length> millimetres(double value) {
    return Measure.of(value, ShopUnits.MILLIMETRE);
  }

  /**
   * A length in metres.
   *
   * @param value the number of metres, finite
   * @return the length in metres
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Length> metres(double value) {
    return Measure.of(value, ShopUnits.METRE);
  }

  /**
   * A mass in kilograms.
   *
   * @param value the number of kilograms, finite
   * @return the mass in kilograms
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Mass> kilograms(double value) {
    return Measure.of(value, ShopUnits.KILOGRAM);
  }

  /**
   * A mass in pounds.
   *
   * @param value the number of pounds avoirdupois; 1 lb = 0.453 592 37 kg, finite
   * @return the mass in pounds
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Mass> pounds(double value) {
    return Measure.of(value, ShopUnits.POUND);
  }

  /**
   * A density in SI units.
   *
   * @param value the number of kilograms per cubic metre, finite
   * @return the density in kg/m³
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Density> kilogramsPerCubicMetre(double value) {
    return Measure.of(value, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
  }

  /**
   * A density as bar tables state it.
   *
   * @param value the number of pounds per cubic foot, finite
   * @return the density in lb/ft³
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Density> poundsPerCubicFoot(double value) {
    return Measure.of(value, ShopUnits.POUND_PER_CUBIC_FOOT);
  }

  /**
   * A temperature point in degrees Celsius.
   *
   * @param value degrees Celsius
   * @return the point, in °C
   * @throws IllegalArgumentException below absolute zero, −273.15 °C
   */
  public static Measure<Temperature> celsius(double value) {
    return Measure.of(value, ShopUnits.CELSIUS);
  }

  /**
   * A temperature point in degrees Fahrenheit.
   *
   * @param value degrees Fahrenheit
   * @return the point, in °F
   * @throws IllegalArgumentException below absolute zero, −459.67 °F
   */
  public static Measure<Temperature> fahrenheit(double value) {
    return Measure.of(value, ShopUnits.FAHRENHEIT);
  }

  /**
   * A time in seconds.
   *
   * @param value the number of seconds, finite
   * @return the time in seconds
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Time> seconds(double value) {
    return Measure.of(value, ShopUnits.SECOND);
  }

  /**
   * A time in minutes.
   *
   * @param value the number of minutes, finite
   * @return the time in minutes
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Time> minutes(double value) {
    return Measure.of(value, ShopUnits.MINUTE);
  }

  /**
   * A force in newtons.
   *
   * @param value the number of newtons, finite
   * @return the force in newtons
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Force> newtons(double value) {
    return Measure.of(value, ShopUnits.NEWTON);
  }

  /**
   * A force in pounds-force.
   *
   * @param value the number of pounds-force, 4.448 221 615 260 5 N each, finite
   * @return the force in pounds-force
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Force> poundsForce(double value) {
    return Measure.of(value, ShopUnits.POUND_FORCE);
  }

  /**
   * A strength or stress in megapascals, the same as newtons per square millimetre.
   *
   * @param value the number of megapascals, finite
   * @return the stress in megapascals
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Pressure> megapascals(double value) {
    return Measure.of(value, ShopUnits.MEGAPASCAL);
  }

  /**
   * A plane angle in degrees.
   *
   * @param value the number of degrees, π/180 rad each, finite
   * @return the angle in degrees
   * @throws IllegalArgumentException if the value is NaN or infinite
   */
  public static Measure<Angle> degrees(double value) {
    return Measure.of(value, ShopUnits.DEGREE);
  }

  /**
   * Length × length, in the square of the first one's unit.
   *
   * @param first a length; its unit squared is the unit of the result
   * @param second a length in any unit
   * @return the area
   */
  public static Measure<Area> area(Quantity<Length> first, Quantity<Length> second) {
    Measure<Length> side = Measure.from("first", first);
    double across = side.read("second", second);
    return Measure.folded(side.amount() * across, side.scale().square("first"), "second");
  }

  /**
   * Length × area, in the cube of the length's unit.
   *
   * @param length a length; its unit cubed is the unit of the result
   * @param area an area in any unit
   * @return the volume
   */
  public static Measure<Volume> volume(Quantity<Length> length, Quantity<Area> area) {
    Measure<Length> side = Measure.from("length", length);
    double base = valueIn("area", area, side.scale().square("length"));
    return Measure.folded(side.amount() * base, side.scale().cube("length"), "area");
  }

  /**
   * Volume ÷ area, in the unit that the volume is the cube of; metres if it is not a cube of the
   * shop's units.
   *
   * @param volume a volume
   * @param area an area that is not zero, in any unit
   * @return the length over which the area would hold the volume
   * @throws IllegalArgumentException if the area is zero
   */
  public static Measure<Length> length(Quantity<Volume> volume, Quantity<Area> area) {
    UnitScale<Length> side = Measure.from("volume", volume).scale().side();
    double whole = valueIn("volume", volume, side.cube("volume"));
    double base = valueIn("area", area, side.square("area"));
    if (base == 0) {
      throw new IllegalArgumentException(
          "area must not be zero; give one that can hold the volume");
    }
    return Measure.folded(whole / base, side, "area");
  }

  /**
   * Volume × density: pounds for a volume in cubic inches or feet, kilograms for any other.
   *
   * @param volume a volume
   * @param density a density in any unit
   * @return the mass
   */
  public static Measure<Mass> mass(Quantity<Volume> volume, Quantity<Density> density) {
    double kilograms =
        valueIn("volume", volume, ShopUnits.CUBIC_METRE)
            * valueIn("density", density, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    return Measure.folded(kilograms, UnitScales.of(ShopUnits.KILOGRAM), "density")
        .to(isCustomary(volume) ? ShopUnits.POUND : ShopUnits.KILOGRAM);
  }

  /**
   * Area × density: pounds per foot for an area in square inches, kilograms per metre for any
   * other.
   *
   * @param area the area of a section
   * @param density a density in any unit
   * @return the mass per length
   */
  public static Measure<LinearDensity> massPerLength(
      Quantity<Area> area, Quantity<Density> density) {
    double kilogramsPerMetre =
        valueIn("area", area, ShopUnits.SQUARE_METRE)
            * valueIn("density", density, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    return Measure.folded(kilogramsPerMetre, UnitScales.of(ShopUnits.KILOGRAM_PER_METRE), "density")
        .to(isCustomary(area) ? ShopUnits.POUND_PER_FOOT : ShopUnits.KILOGRAM_PER_METRE);
  }

  private static boolean isCustomary(Quantity<?> quantity) {
    return UnitScales.of(quantity.getUnit()).family == UnitScale.Family.CUSTOMARY;
  }

  private static <Q extends Quantity<Q>> double valueIn(
      String name, Quantity<Q> quantity, Unit<Q> unit) {
    return valueIn(name, quantity, UnitScales.of(unit));
  }

  private static <Q extends Quantity<Q>> double valueIn(
      String name, Quantity<Q> quantity, UnitScale<Q> scale) {
    Measure<Q> measure = Measure.from(name, quantity);
    return measure.scale().convert(measure.amount(), scale, name);
  }
}
