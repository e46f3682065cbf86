package org.hammerscale.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.apache.commons.math3.special.Erf;
import org.jspecify.annotations.Nullable;

/**
 * What cannot be known exactly before the fire is lit: a low, a likely and a high value. Nine of
 * ten outcomes lie between low and high. What geometry alone decides is an {@linkplain #isExact()
 * exact} estimate, with all three the same. Other names: {@index range}, {@index "prediction
 * interval"}.
 *
 * <pre>{@code
 * Estimate<Length> taper = Estimate.of(inches(3), inches("3 1/4"), inches("3 3/4"));
 * Estimate<Length> eye = Estimate.of(inches("1 3/4"), inches(2), inches("2 3/8"));
 * taper.addDependent(eye)        // 5 1/4 in (4 3/4 in to 6 1/8 in)  if what spoils one spoils the other
 * taper.addIndependent(eye)      // 5 1/4 in (4.8964 in to 5 7/8 in)  if each goes wrong on its own
 * taper.bound(0.99)              // 3.9572 in  enough 99 times in 100
 * taper.odds(inches("3 3/4"))    // 0.95  how often so much is enough
 * }</pre>
 *
 * <p>Between and beyond its three values it is spread as two halves of normal distributions that
 * meet at the likely value: each as wide as its own side. {@link #low} and {@link #high} are the
 * bounds of 5 and of 95 in 100.
 *
 * @param <Q> what is estimated
 */
public final class Estimate<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1;

  private static final double LEAST_ODDS = 0.5;
  private static final double MOST_ODDS = 0.9999;

  /**
   * The quantile z(0.95) of the normal distribution over √2: the error function is that of a
   * variance of one half. A literal, so that an estimate which nobody asks for odds loads no
   * tables.
   */
  private static final double NINETEEN_IN_TWENTY = 1.6448536269514722 / Math.sqrt(2);

  private final transient Measure<Q> low;
  private final transient Measure<Q> likely;
  private final transient Measure<Q> high;

  private Estimate(Measure<Q> low, Measure<Q> likely, Measure<Q> high) {
    this.low = low;
    this.likely = likely;
    this.high = high;
  }

  /**
   * An estimate by its three values, kept in the unit of the likely one.
   *
   * @param low nineteen outcomes of twenty are not below it
   * @param likely the middle: as many outcomes above as below
   * @param high nineteen outcomes of twenty are not above it
   * @param <Q> what is estimated
   * @return the estimate
   * @throws IllegalArgumentException unless low ≤ likely ≤ high
   */
  public static <Q extends Quantity<Q>> Estimate<Q> of(
      Quantity<Q> low, Quantity<Q> likely, Quantity<Q> high) {
    Measure<Q> middle = Measure.from("likely", likely);
    Measure<Q> least = middle.like("low", low);
    Measure<Q> most = middle.like("high", high);
    if (least.isGreaterThan(middle) || most.isLessThan(middle)) {
      throw new IllegalArgumentException(
          "estimate must have low ≤ likely ≤ high, was "
              + least
              + ", "
              + middle
              + ", "
              + most
              + "; name them in this order");
    }
    return new Estimate<>(least, middle, most);
  }

  /**
   * A value that is known exactly.
   *
   * @param value the value
   * @param <Q> what is known
   * @return an estimate without spread
   */
  public static <Q extends Quantity<Q>> Estimate<Q> exact(Quantity<Q> value) {
    Measure<Q> measure = Measure.from("value", value);
    return new Estimate<>(measure, measure, measure);
  }

  /** {@return the value that nineteen outcomes of twenty do not fall below} */
  public Measure<Q> low() {
    return low;
  }

  /** {@return the value in the middle of the outcomes} */
  public Measure<Q> likely() {
    return likely;
  }

  /** {@return the value that nineteen outcomes of twenty do not exceed} */
  public Measure<Q> high() {
    return high;
  }

  /** {@return whether low, likely and high are the same} */
  public boolean isExact() {
    Unit<Q> unit = likely.getUnit();
    return low.in(unit) == high.in(unit);
  }

  /**
   * The sum of two estimates that err together, as two stretches forged by the same hand do: lows
   * add to lows and highs to highs.
   *
   * @param other an estimate of the same kind
   * @return the sum, in this estimate's unit
   */
  public Estimate<Q> addDependent(Estimate<Q> other) {
    if (Objects.requireNonNull(other, "other").isExact() && isExact()) {
      return exact(likely.plus("other", other.likely)); // one object instead of three equal ones
    }
    return new Estimate<>(
        low.plus("other", other.low),
        likely.plus("other", other.likely),
        high.plus("other", other.high));
  }

  /**
   * The sum of two estimates that err apart: the distances from likely to low, and from likely to
   * high, add as root of the sum of squares.
   *
   * @param other an estimate of the same kind
   * @return the sum, in this estimate's unit
   */
  public Estimate<Q> addIndependent(Estimate<Q> other) {
    Unit<Q> unit = likely.getUnit();
    Measure<Q> middle = likely.plus("other", Objects.requireNonNull(other, "other").likely);
    double below =
        Math.hypot(likely.in(unit) - low.in(unit), other.likely.in(unit) - other.low.in(unit));
    double above =
        Math.hypot(high.in(unit) - likely.in(unit), other.high.in(unit) - other.likely.in(unit));
    return new Estimate<>(
        Measure.folded(middle.in(unit) - below, middle.scale(), "other"),
        middle,
        Measure.folded(middle.in(unit) + above, middle.scale(), "other"));
  }

  /**
   * This estimate shifted by a known amount.
   *
   * @param known what is added to all three values
   * @return the sum, in this estimate's unit
   */
  public Estimate<Q> add(Quantity<Q> known) {
    return new Estimate<>(
        low.plus("known", known), likely.plus("known", known), high.plus("known", known));
  }

  /**
   * The same estimate with the other sign: high becomes low. To subtract an estimate, add its
   * negative as dependent or independent.
   *
   * @return the negative
   */
  public Estimate<Q> negate() {
    return new Estimate<>(high.negate(), likely.negate(), low.negate());
  }

  /**
   * The same estimate in another unit.
   *
   * @param unit the unit
   * @return the estimate
   */
  public Estimate<Q> to(Unit<Q> unit) {
    return new Estimate<>(low.to(unit), likely.to(unit), high.to(unit));
  }

  /**
   * Whether a value lies between low and high, both included.
   *
   * @param value a value of the same kind
   * @return whether it is one of the outcomes that the estimate covers
   */
  public boolean covers(Quantity<Q> value) {
    Measure<Q> measure = likely.comparable("value", value);
    return low.compareTo(measure) <= 0 && high.compareTo(measure) >= 0;
  }

  /**
   * All three values times a number.
   *
   * @param factor a number that is not negative
   * @return the multiple
   * @throws IllegalArgumentException if the factor is negative, which would turn low into high
   */
  public Estimate<Q> multiply(double factor) {
    if (!(factor >= 0)) {
      throw new IllegalArgumentException(
          "factor must not be negative, was " + factor + "; use negate() to change the sign");
    }
    return new Estimate<>(low.multiply(factor), likely.multiply(factor), high.multiply(factor));
  }

  /**
   * The value that is enough with given odds: M + (high − M) z(p)/z(0.95), with M the likely value
   * and z the quantile of the normal distribution. Of a sum, ask the sum: the sum of two bounds is
   * as dear as if all went wrong at once, which it is only for errors that {@linkplain
   * #addDependent go together}.
   *
   * @param odds p, how many outcomes of one shall not exceed it, 0.5 to 0.9999: 0.95 for 19 times
   *     in 20
   * @return the bound, in the estimate's unit; the value itself if it is exact
   * @throws IllegalArgumentException if the odds are out of range
   */
  public Measure<Q> bound(double odds) {
    if (!(odds >= LEAST_ODDS && odds <= MOST_ODDS)) {
      throw new IllegalArgumentException(
          "odds must lie between "
              + LEAST_ODDS
              + " and "
              + MOST_ODDS
              + ", was "
              + odds
              + "; give 0.95 for what is enough 19 times in 20");
    }
    if (odds == 0.95 || isExact()) {
      return high;
    }
    double share = Erf.erfInv(2 * odds - 1) / NINETEEN_IN_TWENTY;
    double middle = likely.amount();
    return likely.withValue(middle + share * (high.in(likely.getUnit()) - middle));
  }

  /**
   * How often a value is enough: the odds that the outcome does not exceed it.
   *
   * @param value a value of the same kind
   * @return the odds, 0 to 1; of an exact estimate 1 or 0
   */
  public double odds(Quantity<Q> value) {
    Unit<Q> unit = likely.getUnit();
    double middle = likely.amount();
    double above = likely.like("value", value).getValue() - middle;
    double half = above < 0 ? middle - low.in(unit) : high.in(unit) - middle;
    if (half == 0) {
      return above < 0 ? 0 : isExact() || above > 0 ? 1 : 0.5;
    }
    return (1 + Erf.erf(above / half * NINETEEN_IN_TWENTY)) / 2;
  }

  /** Same likely value and same spread, each by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Estimate<?> estimate
        && low.equals(estimate.low)
        && likely.equals(estimate.likely)
        && high.equals(estimate.high);
  }

  @Override
  public int hashCode() {
    return Objects.hash(low, likely, high);
  }

  /** The likely value, with its spread behind it if there is one. */
  @Override
  public String toString() {
    return isExact() ? likely.toString() : likely + " (" + low + " to " + high + ")";
  }

  /** {@return what is written instead: numbers and the symbols of units} */
  private Object writeReplace() {
    return new SerialForm.OfEstimate<>(low, likely, high);
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
}
