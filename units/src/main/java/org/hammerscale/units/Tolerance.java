package org.hammerscale.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How far an actual value may lie from an expected one, for tests of any tool in any test
 * framework.
 *
 * <pre>{@code
 * Tolerance<Length> half = Tolerance.absolute(millimetres(0.5));
 * half.check(inches(1), millimetres(25.8)).isMet()  // true  0.4 mm off
 * half.check(inches(1), millimetres(26)).message()  // "expected 1 in, was 26 mm: 0.02362 in more, allowed 0.01969 in"
 * Tolerance.graduation(SIXTEENTH).check(inches(2), inches(2.03)).isMet()  // true  within half a mark
 * }</pre>
 *
 * <p>A difference of just the allowance is within it, in spite of floating-point noise.
 * Temperatures cannot be checked: they are points, and a difference of points is no temperature.
 *
 * @param <Q> what is compared
 */
public final class Tolerance<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1;

  /** The same for every value; null for one in proportion. */
  private final transient @Nullable Measure<Q> allowance;

  /** The allowance as a fraction of the expected value; zero beside a fixed one. */
  private final transient double fraction;

  private Tolerance(@Nullable Measure<Q> allowance, double fraction) {
    this.allowance = allowance;
    this.fraction = fraction;
  }

  /**
   * The same allowance for every value.
   *
   * @param allowance the greatest difference, not negative
   * @param <Q> what is compared
   * @return the tolerance
   * @throws IllegalArgumentException if the allowance is negative
   */
  public static <Q extends Quantity<Q>> Tolerance<Q> absolute(Quantity<Q> allowance) {
    Measure<Q> measure = Measure.from("allowance", allowance);
    if (measure.amount() < 0) {
      throw new IllegalArgumentException(
          "allowance must not be negative, was " + measure + "; give the greatest difference");
    }
    return new Tolerance<>(measure, 0);
  }

  /**
   * An allowance in proportion to the expected value.
   *
   * @param fraction the greatest difference as a fraction of the expected value, such as 0.01 for
   *     one part in a hundred; not negative
   * @param <Q> what is compared
   * @return the tolerance
   * @throws IllegalArgumentException if the fraction is negative, NaN or infinite
   */
  public static <Q extends Quantity<Q>> Tolerance<Q> relative(double fraction) {
    if (!(fraction >= 0 && fraction <= Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "fraction must be a number of zero or more, was " + fraction + "; give 0.01 for 1 %");
    }
    return new Tolerance<>(null, fraction + 0.0);
  }

  /**
   * As close as a rule can show: half a step of it.
   *
   * @param graduation the rule
   * @param <Q> what is compared
   * @return the tolerance
   */
  public static <Q extends Quantity<Q>> Tolerance<Q> graduation(Graduation<Q> graduation) {
    return absolute(Objects.requireNonNull(graduation, "graduation").step().divide(2));
  }

  /**
   * Compares two values.
   *
   * @param expected what it should be
   * @param actual what it is
   * @return the verdict, with a message that shows both values, the difference and the allowance
   * @throws UnsupportedOperationException for temperatures
   */
  public Verdict check(Quantity<Q> expected, Quantity<Q> actual) {
    Measure<Q> wanted = Measure.from("expected", expected);
    Measure<Q> found = Measure.from("actual", actual);
    Measure<Q> measured = wanted.like("actual", found);
    Measure<Q> allowed = allowed(wanted);
    Measure<Q> difference = measured.plus("actual", wanted.negate());
    boolean met = measured.isWithin(wanted, allowed);
    double off = difference.getValue();
    String size =
        off == 0 ? "no difference" : told(difference.withValue(Math.abs(off))) + side(off);
    return new Verdict(
        met, "expected " + wanted + ", was " + found + ": " + size + ", allowed " + told(allowed));
  }

  /** The greatest difference allowed, in the unit of the expected value. */
  private Measure<Q> allowed(Measure<Q> expected) {
    return allowance == null
        ? Measure.folded(Math.abs(expected.amount()) * fraction, expected.scale(), "expected")
        : expected.like("expected", allowance);
  }

  /** As it prints, but for what is too little to show there, which is told in full. */
  private static String told(Measure<?> allowance) {
    Measure<?> none = allowance.withValue(0);
    return allowance.toString().equals(none.toString())
        ? allowance.scale().label(Decimals.text(allowance.amount(), 0))
        : allowance.toString();
  }

  private static String side(double off) {
    return off < 0 ? " less" : " more";
  }

  /** Same allowance, by {@link Measure#equals}, or same fraction. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Tolerance<?> tolerance
        && Objects.equals(allowance, tolerance.allowance)
        && fraction == tolerance.fraction;
  }

  @Override
  public int hashCode() {
    return Objects.hash(allowance, fraction);
  }

  /** The tolerance in words, such as {@code ± 0.5 mm}. */
  @Override
  public String toString() {
    return "± " + (allowance == null ? Decimals.text(fraction * 100, 0) + " %" : allowance);
  }

  /** {@return what is written instead: numbers and the symbols of units} */
  private Object writeReplace() {
    return new SerialForm.OfTolerance<>(allowance, fraction);
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

  /** What came of a comparison. */
  public static final class Verdict {
    private final boolean met;
    private final String message;

    private Verdict(boolean met, String message) {
      this.met = met;
      this.message = Objects.requireNonNull(message, "message");
    }

    /** {@return whether the actual value lies within the tolerance} */
    public boolean isMet() {
      return met;
    }

    /** {@return both values, their difference and the allowance, for a test's failure message} */
    public String message() {
      return message;
    }

    /**
     * Fails as any assertion does, without a test framework.
     *
     * @throws AssertionError with the message if the tolerance is not met
     */
    public void orThrow() {
      if (!met) {
        throw new AssertionError(message);
      }
    }

    /** The verdict and the message. */
    @Override
    public String toString() {
      return (met ? "met: " : "not met: ") + message;
    }
  }
}
