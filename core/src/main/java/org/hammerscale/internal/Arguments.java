package org.hammerscale.internal;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * Checks an argument and gives it back as a {@link Measure}. Every refusal names the parameter, the
 * value with its unit, the rule and what to do.
 */
public final class Arguments {
  /** No length of a shop is longer, in metres. */
  private static final double MOST_LENGTH = 1e5;

  /** No length that must be more than zero is shorter, in metres: less is noise of arithmetic. */
  private static final double LEAST_LENGTH = 1e-13;

  /** The most and the least of anything else, in SI. */
  private static final double MOST = 1e15;

  private static final double LEAST = 1e-18;

  /**
   * Numbers between these are no matter of bounds in any unit of a shop: no need to convert them.
   */
  private static final double PLAIN_LEAST = 1e-6;

  private static final double PLAIN_MOST = 1e4;

  /** Less is none: a part, a share, a number of turns. */
  private static final double LEAST_NUMBER = 1e-15;

  private Arguments() {}

  /**
   * A length of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param length its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Length> positive(String name, Quantity<Length> length) {
    return positive(
        name,
        length,
        ShopUnits.METRE,
        "a length",
        "inches or millimetres",
        "give the finished cold size");
  }

  /**
   * A density of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param density its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Density> positiveDensity(String name, Quantity<Density> density) {
    return positive(
        name,
        density,
        ShopUnits.KILOGRAM_PER_CUBIC_METRE,
        "a density",
        "kg/m³ or lb/ft³",
        "give the finished cold value");
  }

  /**
   * A pressure or strength of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param pressure its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Pressure> positivePressure(String name, Quantity<Pressure> pressure) {
    return positive(
        name,
        pressure,
        ShopUnits.PASCAL,
        "a pressure",
        "MPa or ksi",
        "give the finished cold value");
  }

  /**
   * A force of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param force its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Force> positiveForce(String name, Quantity<Force> force) {
    return positive(
        name,
        force,
        ShopUnits.NEWTON,
        "a force",
        "newtons or pounds-force",
        "give the force that acts");
  }

  /**
   * A force of zero or more.
   *
   * @param name the parameter's name, for the message
   * @param force its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Force> notNegativeForce(String name, Quantity<Force> force) {
    return notNegative(name, force, ShopUnits.NEWTON, "a force", "newtons or pounds-force");
  }

  /**
   * An area of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param area its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Area> positiveArea(String name, Quantity<Area> area) {
    return positive(
        name, area, ShopUnits.SQUARE_METRE, "an area", "in² or mm²", "give the finished cold size");
  }

  /**
   * A volume of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param volume its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Volume> positiveVolume(String name, Quantity<Volume> volume) {
    return positive(
        name,
        volume,
        ShopUnits.CUBIC_METRE,
        "a volume",
        "in³ or mm³",
        "give the finished cold size");
  }

  /**
   * A temperature point.
   *
   * @param name the parameter's name, for the message
   * @param temperature its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Temperature> temperature(String name, Quantity<Temperature> temperature) {
    return measured(name, temperature, ShopUnits.KELVIN, "a temperature", "°C or °F");
  }

  /**
   * A time of more than zero.
   *
   * @param name the parameter's name, for the message
   * @param time its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Time> positiveTime(String name, Quantity<Time> time) {
    return positive(
        name, time, ShopUnits.SECOND, "a time", "seconds or minutes", "give the time it takes");
  }

  /**
   * A time of zero or more.
   *
   * @param name the parameter's name, for the message
   * @param time its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Time> notNegativeTime(String name, Quantity<Time> time) {
    return notNegative(name, time, ShopUnits.SECOND, "a time", "seconds or minutes");
  }

  /**
   * A length of zero or more.
   *
   * @param name the parameter's name, for the message
   * @param length its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Length> notNegative(String name, Quantity<Length> length) {
    return notNegative(name, length, ShopUnits.METRE, "a length", "inches or millimetres");
  }

  /**
   * A mass of zero or more.
   *
   * @param name the parameter's name, for the message
   * @param mass its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Mass> notNegativeMass(String name, Quantity<Mass> mass) {
    return notNegative(name, mass, ShopUnits.KILOGRAM, "a mass", "pounds or kilograms");
  }

  /**
   * A volume of zero or more.
   *
   * @param name the parameter's name, for the message
   * @param volume its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Volume> notNegativeVolume(String name, Quantity<Volume> volume) {
    return notNegative(name, volume, ShopUnits.CUBIC_METRE, "a volume", "in³ or mm³");
  }

  /**
   * Any length.
   *
   * @param name the parameter's name, for the message
   * @param length its value
   * @return the value
   * @throws IllegalArgumentException if it is no length
   */
  public static Measure<Length> length(String name, Quantity<Length> length) {
    return measured(name, length, ShopUnits.METRE, "a length", "inches or millimetres");
  }

  /**
   * An angle from zero up to a limit.
   *
   * @param name the parameter's name, for the message
   * @param angle its value
   * @param most the most allowed, in degrees
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Angle> angle(String name, Quantity<Angle> angle, double most) {
    return angle(name, angle, most, "give the angle turned through from straight");
  }

  /**
   * The same with advice of its own.
   *
   * @param name the parameter's name, for the message
   * @param angle its value
   * @param most the most allowed, in degrees
   * @param advice what to do, for the message
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static Measure<Angle> angle(
      String name, Quantity<Angle> angle, double most, String advice) {
    Measure<Angle> measure = measured(name, angle, ShopUnits.RADIAN, "an angle", "degrees");
    double degrees = measure.in(ShopUnits.DEGREE);
    if (!(degrees >= 0 && degrees <= most) || (degrees > 0 && degrees < LEAST)) {
      throw new IllegalArgumentException(
          name
              + " must lie between "
              + Measure.of(0, ShopUnits.DEGREE)
              + " and "
              + Measure.of(most, ShopUnits.DEGREE)
              + ", was "
              + measure
              + "; "
              + advice);
    }
    return measure;
  }

  /**
   * A plain number of more than zero, up to a limit.
   *
   * @param name the parameter's name, for the message
   * @param number its value
   * @param most the most allowed
   * @param advice what to do, for the message
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static double number(String name, double number, double most, String advice) {
    if (!(number > 0 && number <= most)) {
      throw new IllegalArgumentException(
          name + " must be more than 0 and at most " + most + ", was " + number + "; " + advice);
    } else if (number < LEAST_NUMBER) {
      throw new IllegalArgumentException(
          name + " must be at least " + LEAST_NUMBER + ", was " + number + "; " + advice);
    }
    return number;
  }

  /**
   * A count.
   *
   * @param name what is counted, for the message
   * @param count its value
   * @param least the fewest allowed
   * @param most the most allowed
   * @param advice what to do, for the message
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static int count(String name, int count, int least, int most, String advice) {
    if (count < least || count > most) {
      throw new IllegalArgumentException(
          name + " must be from " + least + " to " + most + ", was " + count + "; " + advice);
    }
    return count;
  }

  /**
   * A text that says something.
   *
   * @param name the parameter's name, for the message
   * @param text its value
   * @return the value
   * @throws IllegalArgumentException if it is anything else
   */
  public static String text(String name, String text) {
    if (Objects.requireNonNull(text, name).isBlank()) {
      throw new IllegalArgumentException(name + " must not be blank; say what it is");
    }
    return text;
  }

  /**
   * A length that has another for its least.
   *
   * @param name the parameter's name, for the message
   * @param length its value
   * @param whose what the least is, for the message, such as {@code the width}
   * @param least the least allowed
   * @param advice what to do, for the message
   * @return the value
   * @throws IllegalArgumentException if it is less
   */
  public static Measure<Length> atLeast(
      String name, Measure<Length> length, String whose, Measure<Length> least, String advice) {
    if (length.isLessThan(least)) {
      throw new IllegalArgumentException(
          name + " must be at least " + whose + " of " + least + ", was " + length + "; " + advice);
    }
    return length;
  }

  /**
   * A length that has another for its most.
   *
   * @param name the parameter's name, for the message
   * @param length its value
   * @param whose what the most is, for the message, such as {@code the width}
   * @param most the most allowed
   * @param advice what to do, for the message
   * @return the value
   * @throws IllegalArgumentException if it is more
   */
  public static Measure<Length> atMost(
      String name, Measure<Length> length, String whose, Measure<Length> most, String advice) {
    if (length.isGreaterThan(most)) {
      throw new IllegalArgumentException(
          name + " must be at most " + whose + " of " + most + ", was " + length + "; " + advice);
    }
    return length;
  }

  private static <Q extends Quantity<Q>> Measure<Q> positive(
      String name, Quantity<Q> quantity, Unit<Q> kind, String what, String units, String advice) {
    Measure<Q> measure = measured(name, quantity, kind, what, units);
    if (!(measure.getValue() > 0)) {
      throw new IllegalArgumentException(
          name + " must be more than zero, was " + measure + "; " + advice);
    }
    double number = measure.getValue();
    if (number < PLAIN_LEAST && size(measure, kind) < (isLength(kind) ? LEAST_LENGTH : LEAST)) {
      throw outOfBounds(name, "more than next to nothing", measure);
    }
    return measure;
  }

  private static <Q extends Quantity<Q>> Measure<Q> notNegative(
      String name, Quantity<Q> quantity, Unit<Q> kind, String what, String units) {
    Measure<Q> measure = measured(name, quantity, kind, what, units);
    if (measure.getValue() < 0) {
      throw new IllegalArgumentException(
          name + " must not be negative, was " + measure + "; give zero if there is none");
    }
    return measure;
  }

  private static <Q extends Quantity<Q>> Measure<Q> measured(
      String name, Quantity<Q> quantity, Unit<Q> kind, String what, String units) {
    Measure<Q> measure = taken(name, quantity);
    if (!measure.hasDimensionOf(kind)) {
      throw new IllegalArgumentException(
          name + " must be " + what + ", was " + measure + "; give it in " + units);
    }
    double number = Math.abs(measure.getValue());
    if (number > PLAIN_MOST && !(size(measure, kind) <= (isLength(kind) ? MOST_LENGTH : MOST))) {
      throw outOfBounds(name, "at most " + (isLength(kind) ? "100 km" : "10¹⁵ in SI"), measure);
    }
    return measure;
  }

  private static boolean isLength(Unit<?> kind) {
    return kind.equals(ShopUnits.METRE);
  }

  private static IllegalArgumentException outOfBounds(
      String name, String rule, Measure<?> measure) {
    return new IllegalArgumentException(
        name
            + " must be "
            + rule
            + ", was "
            + measure.getValue()
            + " "
            + measure.getUnit()
            + "; look at the number and its unit");
  }

  /** How large it is in SI, infinite where SI cannot count it. */
  private static <Q extends Quantity<Q>> double size(Measure<Q> measure, Unit<Q> kind) {
    double value = Math.abs(measure.getValue());
    return value > MOST * MOST ? Double.POSITIVE_INFINITY : Math.abs(measure.in(kind));
  }

  /** A measure of anybody's quantity, whose refusal names the parameter. */
  private static <Q extends Quantity<Q>> Measure<Q> taken(String name, Quantity<Q> quantity) {
    Objects.requireNonNull(quantity, name);
    try {
      return Measure.from(quantity);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(name + ": " + e.getMessage(), e);
    }
  }
}
