package org.hammerscale.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A measured amount, or {@index quantity}: a number and its unit, such as {@code 1 1/2 in} or
 * {@code 7850 kg/m³}.
 *
 * <p>This is the fast {@link Quantity} of this library. It never changes, never holds NaN or an
 * infinity, and costs one small object. Every method that takes a quantity takes anybody's; every
 * one that gives a quantity gives a {@code Measure}, <em>in the unit of the left operand</em>. Two
 * measures in the same unit are combined without any conversion, so sums of inch fractions are
 * exact.
 *
 * <pre>{@code
 * Measure<Length> bore = inches("1/2");
 * bore.add(millimetres(3))                  // 0.6181 in  in the unit of what stands left
 * bore.add(millimetres(3)).upTo(SIXTEENTH)  // 5/8 in     on the marks of a rule
 * bore.in(ShopUnits.MILLIMETRE)             // 12.7       the way out to a bare number names its unit
 * bore.isEquivalentTo(millimetres(12.7))    // true       the same length, whatever its unit
 * fahrenheit(1652).to(ShopUnits.CELSIUS)    // 900 °C     a temperature is a point
 * }</pre>
 *
 * <p>Temperatures are points, not amounts: they convert and compare, but arithmetic on them is
 * refused with an {@link UnsupportedOperationException}, since {@code 900 °C − 20 °C} has two
 * possible meanings. This departs from JSR 385, which adds points on the absolute scale in kelvins
 * and has {@code 2 °C + 1 °C = 274.15 °C}: right by its rule, and never what a smith means. A
 * quantity on the {@linkplain javax.measure.Quantity.Scale#RELATIVE relative scale} is refused as
 * an argument.
 *
 * <p>{@link #equals} is strict, as elsewhere in JSR 385: same unit, same value. Use {@link
 * #compareTo} or {@link #isEquivalentTo} to compare {@code 1 in} with {@code 25.4 mm}.
 *
 * <p>It can be serialized, as the quantities of the reference implementation can: as its value and
 * the symbol of its unit. A unit that is none of the {@linkplain ShopUnits shop's} goes along
 * itself, if it can.
 *
 * @param <Q> what is measured, such as {@link javax.measure.quantity.Length}
 */
@SuppressWarnings("ComparableType") // any quantity can be compared with, as in the JSR's own types
public final class Measure<Q extends Quantity<Q>>
    implements Quantity<Q>, Comparable<Quantity<Q>>, Serializable {
  private static final long serialVersionUID = 1;

  /** Relative difference that {@link #isEquivalentTo} forgives: the noise of a few roundings. */
  private static final double EQUIVALENT = 1e-12;

  private final transient double value;
  private final transient UnitScale<Q> scale;

  /**
   * Takes a value that cannot be −0.0, as sums and differences of folded values cannot; all others
   * go through {@link #folded}. A refusal names the argument that is to blame.
   */
  private Measure(double value, UnitScale<Q> scale, String name) {
    this.value = scale.finite(value, name);
    this.scale = scale;
  }

  /** Refuses a temperature below absolute zero. */
  private static <Q extends Quantity<Q>> Measure<Q> possible(
      double value, UnitScale<Q> scale, String name) {
    Measure<Q> measure = folded(value, scale, name);
    if (scale.isTooCold(value)) {
      throw new IllegalArgumentException(
          name
              + " must not lie below absolute zero, was "
              + measure
              + "; give a temperature that there can be");
    }
    return measure;
  }

  /** Makes 0.0 of −0.0, so that equal amounts are equal objects. */
  static <Q extends Quantity<Q>> Measure<Q> folded(double value, UnitScale<Q> scale, String name) {
    return new Measure<>(value + 0.0, scale, name);
  }

  /**
   * A number of units.
   *
   * @param value any finite number
   * @param unit any JSR 385 unit that is a plain multiple of an SI unit, or a temperature scale
   * @param <Q> what is measured
   * @return the measure, exact
   * @throws IllegalArgumentException if the value is NaN or infinite, a temperature below absolute
   *     zero, or the unit is logarithmic
   */
  public static <Q extends Quantity<Q>> Measure<Q> of(double value, Unit<Q> unit) {
    return possible(value, UnitScales.of(unit), "value");
  }

  /**
   * The same amount in the same unit, taken from anybody's quantity.
   *
   * @param quantity a JSR 385 quantity on the absolute scale
   * @param <Q> what is measured
   * @return the measure; the argument itself if it is one already
   * @throws IllegalArgumentException if the quantity is on the relative scale or not finite
   */
  public static <Q extends Quantity<Q>> Measure<Q> from(Quantity<Q> quantity) {
    return from("quantity", quantity);
  }

  /** The same for the argument of that name. */
  static <Q extends Quantity<Q>> Measure<Q> from(String name, Quantity<Q> quantity) {
    if (quantity instanceof Measure<Q> measure) {
      return measure;
    }
    return possible(foreignValue(name, quantity), UnitScales.of(quantity.getUnit()), name);
  }

  /**
   * The bare number of units, the one way out of the typed world.
   *
   * @param unit the unit to count in
   * @return the number; exact if the unit is this measure's own, else correct to a rounding or two
   * @throws IllegalArgumentException if the unit measures something else, which an unchecked cast
   *     can bring about, or the number is too large for a double
   */
  public double in(Unit<Q> unit) {
    if (scale.unit == unit) {
      return value;
    }
    return scale.convertLarge(value, UnitScales.of(unit));
  }

  /**
   * The same amount in another unit.
   *
   * @throws IllegalArgumentException if the unit measures something else
   */
  @Override
  public Measure<Q> to(Unit<Q> unit) {
    return scale.unit == unit ? this : inScale(UnitScales.of(unit));
  }

  /**
   * Another number of the same units.
   *
   * @param newValue any finite number
   * @return the measure, in this one's unit
   */
  public Measure<Q> withValue(double newValue) {
    return folded(newValue, scale, "newValue");
  }

  /**
   * The sum, in this measure's unit.
   *
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<Q> add(Quantity<Q> addend) {
    return plus("addend", addend);
  }

  /** The sum; a refusal names the argument to blame. */
  Measure<Q> plus(String name, Quantity<Q> addend) {
    return new Measure<>(amount() + read(name, addend), scale, name);
  }

  /** Another quantity in this measure's unit; a refusal names the argument to blame. */
  Measure<Q> like(String name, Quantity<Q> other) {
    return other instanceof Measure<Q> measure && measure.scale == scale
        ? measure
        : folded(read(name, other), scale, name);
  }

  /**
   * The difference, in this measure's unit.
   *
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<Q> subtract(Quantity<Q> subtrahend) {
    return new Measure<>(amount() - read("subtrahend", subtrahend), scale, "subtrahend");
  }

  /**
   * A multiple, in this measure's unit.
   *
   * @param factor any finite number
   * @return this measure {@code factor} times
   * @throws UnsupportedOperationException for temperatures
   */
  public Measure<Q> multiply(double factor) {
    return folded(amount() * factor, scale, "factor");
  }

  /** The same for any kind of number, read as a double. */
  @Override
  public Measure<Q> multiply(Number factor) {
    return multiply(Objects.requireNonNull(factor, "factor").doubleValue());
  }

  /**
   * The product with any other quantity. For lengths, areas and masses the named products of {@link
   * Measures} are faster and keep their type.
   *
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<?> multiply(Quantity<?> factor) {
    Measure<?> other = from("factor", factor);
    double product = amount() * other.amount();
    return folded(product, UnitScales.of(scale.unit.multiply(other.scale.unit)), "factor");
  }

  /**
   * A part, in this measure's unit.
   *
   * @param divisor any finite number but zero
   * @return this measure divided by it
   * @throws IllegalArgumentException if the divisor is zero, NaN or infinite
   * @throws UnsupportedOperationException for temperatures
   */
  public Measure<Q> divide(double divisor) {
    if (divisor == 0) {
      throw new IllegalArgumentException("divisor must not be zero; divide by what there is");
    }
    if (!(Math.abs(divisor) <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "divisor must be a finite number, was " + divisor + "; divide by what there is");
    }
    return folded(amount() / divisor, scale, "divisor");
  }

  /** The same for any kind of number, read as a double. */
  @Override
  public Measure<Q> divide(Number divisor) {
    return divide(Objects.requireNonNull(divisor, "divisor").doubleValue());
  }

  /**
   * The quotient with any other quantity.
   *
   * @throws IllegalArgumentException if the divisor is zero
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<?> divide(Quantity<?> divisor) {
    Measure<?> other = from("divisor", divisor);
    double dividend = amount();
    if (other.amount() == 0) {
      throw new IllegalArgumentException(
          "divisor must not be zero, was " + other + "; divide by what there is");
    }
    UnitScale<?> quotient = UnitScales.of(scale.unit.divide(other.scale.unit));
    return folded(dividend / other.value, quotient, "divisor");
  }

  /**
   * How many times another quantity of the same kind goes into this one.
   *
   * @param other a quantity that is not zero
   * @return the plain ratio
   * @throws IllegalArgumentException if the other is zero
   * @throws UnsupportedOperationException for temperatures
   */
  public double ratio(Quantity<Q> other) {
    double dividend = amount();
    double divisor = read("other", other);
    if (divisor == 0) {
      throw new IllegalArgumentException(
          "other must not be zero, was " + from(other) + "; compare with what there is");
    }
    return UnitScales.of(ShopUnits.ONE).finite(dividend / divisor, "other");
  }

  /**
   * One divided by this measure.
   *
   * @throws IllegalArgumentException if this measure is zero
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<?> inverse() {
    if (amount() == 0) {
      throw new IllegalArgumentException(
          "cannot take the inverse of zero, was " + this + "; invert what there is");
    }
    return folded(1 / value, UnitScales.of(scale.unit.inverse()), "measure");
  }

  /**
   * The same amount with the other sign.
   *
   * @throws UnsupportedOperationException for temperatures
   */
  @Override
  public Measure<Q> negate() {
    return folded(-amount(), scale, "measure");
  }

  /**
   * This measure under another quantity type of the same dimension.
   *
   * @throws ClassCastException if the dimension is another one
   */
  @Override
  @SuppressWarnings("unchecked") // the dimension was just compared
  public <T extends Quantity<T>> Measure<T> asType(Class<T> type) {
    long dimension = Dimensions.of(Objects.requireNonNull(type, "type"));
    if (dimension != scale.dimension) {
      throw new ClassCastException(
          this + " is " + Dimensions.name(scale.dimension) + ", not " + type.getSimpleName());
    }
    return (Measure<T>) this;
  }

  /**
   * Rounds up to the next mark of a rule; a value that lies on a mark stays there.
   *
   * @param graduation the rule
   * @return the mark, in this measure's unit
   * @see Graduation#upTo
   */
  public Measure<Q> upTo(Graduation<Q> graduation) {
    return Objects.requireNonNull(graduation, "graduation").upTo(this);
  }

  /**
   * Rounds down to the last mark of a rule; a value that lies on a mark stays there.
   *
   * @param graduation the rule
   * @return the mark, in this measure's unit
   * @see Graduation#downTo
   */
  public Measure<Q> downTo(Graduation<Q> graduation) {
    return Objects.requireNonNull(graduation, "graduation").downTo(this);
  }

  /**
   * Rounds to the nearest mark of a rule, half-way values away from zero.
   *
   * @param graduation the rule
   * @return the mark, in this measure's unit
   * @see Graduation#nearest
   */
  public Measure<Q> nearest(Graduation<Q> graduation) {
    return Objects.requireNonNull(graduation, "graduation").nearest(this);
  }

  /**
   * Whether this measure could be read in a unit: false where an unchecked cast has smuggled a mass
   * in for a length.
   *
   * @param unit any unit
   * @return whether both have the same dimension
   */
  public boolean hasDimensionOf(Unit<?> unit) {
    return UnitScales.of(unit).dimension == scale.dimension;
  }

  /** The number of units, as a {@link Double}. */
  @Override
  public Double getValue() {
    return value;
  }

  /** The unit that the number counts. */
  @Override
  public Unit<Q> getUnit() {
    return scale.unit;
  }

  /** Always {@link javax.measure.Quantity.Scale#ABSOLUTE}. */
  @Override
  public Scale getScale() {
    return Scale.ABSOLUTE;
  }

  /**
   * Whether both are the same amount, whatever their units, but for rounding: they may differ by
   * one part in 10¹². The relation is symmetric.
   */
  @Override
  public boolean isEquivalentTo(Quantity<Q> that) {
    double a = si();
    double b = comparable("that", that).si();
    return Math.abs(a - b) <= EQUIVALENT * Math.max(Math.abs(a), Math.abs(b));
  }

  /**
   * Whether this measure is no further from another than a tolerance, the limit included.
   *
   * @param other what it should be
   * @param tolerance the greatest difference allowed, not negative
   * @return whether it is that close
   * @throws IllegalArgumentException if the tolerance is negative
   * @throws UnsupportedOperationException for temperatures
   */
  public boolean isWithin(Quantity<Q> other, Quantity<Q> tolerance) {
    double own = amount();
    double allowed = read("tolerance", tolerance);
    if (allowed < 0) {
      throw new IllegalArgumentException(
          "tolerance must not be negative, was " + from(tolerance) + "; give zero or more");
    }
    double wanted = read("other", other);
    double noise = EQUIVALENT * Math.max(Math.abs(own), Math.abs(wanted));
    return Math.abs(own - wanted) <= allowed + noise;
  }

  /**
   * Whether this is more than another, by {@link #compareTo}.
   *
   * @param that a quantity of the same kind
   * @return whether it is
   */
  public boolean isGreaterThan(Quantity<Q> that) {
    return compareTo(that) > 0;
  }

  /**
   * Whether this is at least as much as another, by {@link #compareTo}.
   *
   * @param that a quantity of the same kind
   * @return whether it is
   */
  public boolean isGreaterThanOrEqualTo(Quantity<Q> that) {
    return compareTo(that) >= 0;
  }

  /**
   * Whether this is less than another, by {@link #compareTo}.
   *
   * @param that a quantity of the same kind
   * @return whether it is
   */
  public boolean isLessThan(Quantity<Q> that) {
    return compareTo(that) < 0;
  }

  /**
   * Whether this is at most as much as another, by {@link #compareTo}.
   *
   * @param that a quantity of the same kind
   * @return whether it is
   */
  public boolean isLessThanOrEqualTo(Quantity<Q> that) {
    return compareTo(that) <= 0;
  }

  /**
   * Compares amounts whatever their units, by their size in SI. This order is consistent in itself
   * but finer than {@link #isEquivalentTo} and coarser than {@link #equals}.
   */
  @Override
  public int compareTo(Quantity<Q> that) {
    return Double.compare(si(), comparable("that", that).si());
  }

  /**
   * Strict equality by the rule of the JSR's reference implementation: an equal unit, scale and
   * value, where the value is a {@link Double}.
   */
  @Override
  public boolean equals(@Nullable Object other) {
    if (this == other) {
      return true;
    }
    if (other instanceof Measure<?> measure) {
      return value == measure.value
          && (scale == measure.scale || scale.unit.equals(measure.scale.unit));
    }
    return other instanceof Quantity<?> quantity
        && scale.unit.equals(quantity.getUnit())
        && quantity.getScale() == Scale.ABSOLUTE
        && Objects.equals(value, quantity.getValue());
  }

  @Override
  public int hashCode() {
    // As Objects.hash(unit, scale, value) of the reference implementation.
    return 31 * (31 * (31 + scale.hash) + Scale.ABSOLUTE.hashCode()) + Double.hashCode(value);
  }

  /**
   * The amount as a smith would write it: an inch value that lies on a sixty-fourth as a fraction,
   * anything else as a decimal of at least four significant digits. Lengths in the shop's units can
   * be read back by {@link LengthFormat}.
   */
  @Override
  public String toString() {
    return LengthFormat.isFractional(scale)
        ? LengthFormat.inches(value)
        : scale.label(Decimals.text(value, scale.decimals));
  }

  UnitScale<Q> scale() {
    return scale;
  }

  private Measure<Q> inScale(UnitScale<Q> other) {
    return folded(scale.convertLarge(value, other), other, "unit");
  }

  /** The value, for arithmetic: refused for temperature points. */
  double amount() {
    if (scale.points) {
      throw new UnsupportedOperationException(
          "arithmetic on a temperature point such as "
              + this
              + " is not defined; convert or compare it, or take numbers out with in(unit)");
    }
    return value;
  }

  /**
   * Another quantity's value in this measure's unit. Callers ask {@link #amount} of this measure
   * first: what is no temperature here cannot be one there.
   */
  double read(String name, Quantity<Q> other) {
    if (other instanceof Measure<Q> measure) {
      return measure.scale.convert(measure.value, scale, name);
    }
    double value = foreignValue(name, other);
    return scale.finite(UnitScales.of(other.getUnit()).convert(value, scale, name), name);
  }

  private double si() {
    return scale.toSi(value);
  }

  /** Another quantity of the same kind; a refusal names the argument to blame. */
  Measure<Q> comparable(String name, Quantity<Q> other) {
    Measure<Q> measure = from(name, other);
    if (measure.scale.dimension != scale.dimension) {
      throw measure.scale.mismatch(measure.value, scale, name);
    }
    return measure;
  }

  /** {@return what is written instead: numbers and the symbols of units} */
  private Object writeReplace() {
    return new SerialForm.OfMeasure(value, scale);
  }

  /**
   * Refuses a stream that holds the thing itself.
   *
   * @param stream whatever it is
   * @throws InvalidObjectException always
   */
  private void readObject(ObjectInputStream stream) throws InvalidObjectException {
    throw SerialForm.required();
  }

  private static double foreignValue(String name, Quantity<?> quantity) {
    Objects.requireNonNull(quantity, name);
    if (quantity.getScale() != Scale.ABSOLUTE) {
      throw new IllegalArgumentException(
          name
              + " must be on the absolute scale, was "
              + quantity
              + " on the relative scale; give the point or the amount itself");
    }
    return UnitScales.of(quantity.getUnit()).finite(quantity.getValue().doubleValue(), name);
  }
}
