package org.hammerscale.units;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What arithmetic needs to know of a unit, worked out once: its dimension and its size in SI.
 *
 * <p>The size is kept as a fraction, {@code numerator ÷ denominator} SI units, so that the shop's
 * units stay exact: one inch is 127/5000 m, and 25.4 mm come out as one inch to the last bit. The
 * zero of a temperature scale is kept in hundredths of its own degree for the same reason.
 *
 * @param <Q> what the unit measures
 */
final class UnitScale<Q extends Quantity<Q>> {
  /** Which way the shop prints and pairs a unit. */
  enum Family {
    /** Metric and everything not known to the shop. */
    METRIC,
    /** Inches, feet and what derives from them; they weigh in pounds. */
    CUSTOMARY
  }

  private static final double LARGE = 1e200;

  final Unit<Q> unit;
  final String symbol;
  final long dimension;
  final double numerator;
  final double denominator;

  /** Hundredths of a degree from absolute zero to the scale's own zero; 0 but for temperatures. */
  final double zero;

  /** Whether values are points on a scale, which cannot be added: temperatures. */
  final boolean points;

  final Family family;

  /** Decimals that a printed value keeps at least. */
  final int decimals;

  /** The hash of the unit, which Indriya works out anew at every call. */
  final int hash;

  // Filled on first use for foreign lengths. A race only does the same work twice: what it finds is
  // equal. Side is set for the shop's own units alone, before anybody can see them.
  private @Nullable UnitScale<Area> square;
  private @Nullable UnitScale<Volume> cube;
  private @Nullable UnitScale<Length> side;

  UnitScale(
      Unit<Q> unit,
      String symbol,
      long dimension,
      double numerator,
      double denominator,
      double zero,
      Family family,
      int decimals) {
    this.unit = unit;
    this.symbol = symbol;
    this.dimension = dimension;
    this.numerator = numerator;
    this.denominator = denominator;
    this.zero = zero;
    this.points = dimension == Dimensions.TEMPERATURE;
    this.family = family;
    this.decimals = decimals;
    this.hash = unit.hashCode();
  }

  /** The same size and habits under another unit object. */
  <R extends Quantity<R>> UnitScale<R> under(Unit<R> other) {
    UnitScale<R> scale =
        new UnitScale<>(other, symbol, dimension, numerator, denominator, zero, family, decimals);
    scale.side = side;
    return scale;
  }

  /** Reads a value on this scale as one on {@code to}; a refusal names the argument to blame. */
  double convert(double value, UnitScale<?> to, String name) {
    if (this == to) {
      return value;
    }
    if (dimension != to.dimension) {
      throw mismatch(value, to, name);
    }
    double up = numerator * to.denominator;
    double down = denominator * to.numerator;
    if (zero == to.zero) {
      return up == down ? value : value * up / down;
    }
    return ((hundredths(value) + zero) * up / down - to.zero) / 100;
  }

  /** The same where the product on the way may overflow though the result does not. */
  double convertLarge(double value, UnitScale<?> to) {
    double result = convert(value, to, "unit");
    return Math.abs(result) <= Double.MAX_VALUE
        ? result
        : to.finite(value / (denominator * to.numerator) * (numerator * to.denominator), "unit");
  }

  /** Gives a value of this unit back if it is a number; a refusal names the argument to blame. */
  double finite(double value, String name) {
    if (!(Math.abs(value) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          name
              + " must give a finite number, was "
              + label(Double.toString(value))
              + "; keep to sizes that can be measured");
    }
    return value;
  }

  /** Hundredths of a degree; whole where the value was written with two decimals. */
  private static double hundredths(double value) {
    double near = Math.rint(value * 100);
    return near / 100 == value ? near : value * 100;
  }

  /** Whether a value lies below absolute zero. */
  boolean isTooCold(double value) {
    return points && hundredths(value) + zero < 0;
  }

  double toSi(double value) {
    if (Math.abs(value) > LARGE) {
      return value / denominator * numerator; // where the product would overflow
    }
    return zero == 0
        ? value * numerator / denominator
        : (hundredths(value) + zero) * numerator / denominator / 100;
  }

  IllegalArgumentException mismatch(double value, UnitScale<?> to, String name) {
    return new IllegalArgumentException(
        name
            + " must measure the same kind: a value of "
            + label(Decimals.text(value, decimals))
            + " cannot be read in "
            + to.symbol
            + "; "
            + Dimensions.name(dimension)
            + " is not "
            + Dimensions.name(to.dimension));
  }

  /** A printed number with this unit's symbol behind it. */
  String label(String number) {
    return symbol.isEmpty() || symbol.equals("°") ? number + symbol : number + " " + symbol;
  }

  /** For a unit of length: the unit of area that goes with it. The argument so named is in it. */
  UnitScale<Area> square(String name) {
    UnitScale<Area> found = square;
    if (found == null) {
      checkLength(name);
      found = UnitScales.of(unit.multiply(unit).asType(Area.class));
      square = found;
    }
    return found;
  }

  /** For a unit of length: the unit of volume that goes with it. */
  UnitScale<Volume> cube(String name) {
    UnitScale<Volume> found = cube;
    if (found == null) {
      checkLength(name);
      found = UnitScales.of(unit.multiply(unit).multiply(unit).asType(Volume.class));
      cube = found;
    }
    return found;
  }

  private void checkLength(String name) {
    if (dimension != Dimensions.LENGTH) {
      throw new IllegalArgumentException(
          name
              + " must be a length, was "
              + Dimensions.name(dimension)
              + " in "
              + symbol
              + "; give it in inches or millimetres");
    }
  }

  /** For the shop's areas and volumes: the length they are made from; for all others the metre. */
  UnitScale<Length> side() {
    UnitScale<Length> found = side;
    return found != null ? found : UnitScales.of(ShopUnits.METRE);
  }

  /** Makes in² and in³ know the inch, and the inch know them. */
  static void relate(UnitScale<Length> length, UnitScale<Area> square, UnitScale<Volume> cube) {
    length.square = square;
    length.cube = cube;
    square.side = length;
    cube.side = length;
  }
}
