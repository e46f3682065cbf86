package org.hammerscale.units;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The marks of a rule (a {@index ruler}, a {@index "rounding grid"}): a step, counted from zero,
 * that measures are rounded to.
 *
 * <p>A value that lies on a mark but for floating-point noise stays on it: up to a billionth of a
 * step, or eight units in the last place of the count of steps if that is more, is taken for noise.
 * So {@code 0.1 + 0.2} on a rule of tenths is three tenths, not four.
 *
 * <pre>{@code
 * SIXTEENTH.upTo(inches(1.7671))                       // 1 13/16 in  to cut: enough bar
 * SIXTEENTH.nearest(inches(1.7671))                    // 1 3/4 in  to mark
 * SIXTEENTH.downTo(millimetres(44.9))                  // 44.45 mm  to sink, no deeper, with an inch tool
 * Graduation.of(millimetres(5)).upTo(millimetres(42))  // 45 mm  any other rule
 * }</pre>
 *
 * <p>Bench practice, as read in J. L. Bacon, <cite>Forge-Practice</cite>, 1908, p. 76: lengths to
 * be bent are laid off to the nearest sixteenth, sizes to be flattened to the nearest
 * thirty-second.
 *
 * @param <Q> what the rule measures
 */
public final class Graduation<Q extends Quantity<Q>> implements Serializable {
  private static final long serialVersionUID = 1;

  /** Halves of an inch. */
  public static final Graduation<Length> HALF = of(1 / 2d, ShopUnits.INCH);

  /** Quarters of an inch. */
  public static final Graduation<Length> QUARTER = of(1 / 4d, ShopUnits.INCH);

  /** Eighths of an inch. */
  public static final Graduation<Length> EIGHTH = of(1 / 8d, ShopUnits.INCH);

  /** Sixteenths of an inch. */
  public static final Graduation<Length> SIXTEENTH = of(1 / 16d, ShopUnits.INCH);

  /** Thirty-seconds of an inch. */
  public static final Graduation<Length> THIRTY_SECOND = of(1 / 32d, ShopUnits.INCH);

  /** Sixty-fourths of an inch. */
  public static final Graduation<Length> SIXTY_FOURTH = of(1 / 64d, ShopUnits.INCH);

  /** Whole millimetres. */
  public static final Graduation<Length> MILLIMETRE = of(1, ShopUnits.MILLIMETRE);

  /** Half millimetres. */
  public static final Graduation<Length> HALF_MILLIMETRE = of(0.5, ShopUnits.MILLIMETRE);

  /** Tenths of a millimetre. */
  public static final Graduation<Length> TENTH_MILLIMETRE = of(0.1, ShopUnits.MILLIMETRE);

  private static final double NOISE = 1e-9;

  /** In its own unit; nobody can draw a finer one. */
  private static final double FINEST = 1e-18;

  private final transient Measure<Q> step;

  /**
   * Steps in a unit if that is a whole number, so that a tenth is 1/10 and not a double near it.
   */
  private final transient int perUnit;

  private Graduation(Measure<Q> step) {
    this.step = step;
    double inverse = 1 / step.getValue();
    double whole = Math.rint(inverse);
    boolean even = whole >= 1 && whole <= 1e6 && 1 / whole == step.getValue();
    this.perUnit = even ? (int) whole : 0;
  }

  /**
   * A rule with marks a step apart.
   *
   * @param step the distance from mark to mark, more than zero
   * @param <Q> what the rule measures; not a temperature
   * @return the rule
   * @throws IllegalArgumentException if the step is not more than zero
   */
  public static <Q extends Quantity<Q>> Graduation<Q> of(Quantity<Q> step) {
    Measure<Q> measure = Measure.from("step", step);
    if (!(measure.amount() >= FINEST)) {
      throw new IllegalArgumentException(
          "step must be more than zero, was " + measure + "; give the distance from mark to mark");
    }
    return new Graduation<>(measure);
  }

  private static <Q extends Quantity<Q>> Graduation<Q> of(double step, Unit<Q> unit) {
    return of(Measure.of(step, unit));
  }

  /**
   * The first mark that is not below a value.
   *
   * @param value any measure of the rule's kind
   * @return the mark, in the value's unit
   */
  public Measure<Q> upTo(Quantity<Q> value) {
    Measure<Q> measure = Measure.from("value", value);
    double count = count(measure);
    double near = Math.rint(count);
    return mark("value", measure, isNoise(count, near) ? near : Math.ceil(count));
  }

  /**
   * The last mark that is not above a value.
   *
   * @param value any measure of the rule's kind
   * @return the mark, in the value's unit
   */
  public Measure<Q> downTo(Quantity<Q> value) {
    Measure<Q> measure = Measure.from("value", value);
    double count = count(measure);
    double near = Math.rint(count);
    return mark("value", measure, isNoise(count, near) ? near : Math.floor(count));
  }

  /**
   * The nearest mark. A value half-way between two goes away from zero: 5/32 in to sixteenths is
   * 3/16 in.
   *
   * @param value any measure of the rule's kind
   * @return the mark, in the value's unit
   */
  public Measure<Q> nearest(Quantity<Q> value) {
    return nearest("value", value);
  }

  /** The same; a refusal names the argument to blame. */
  Measure<Q> nearest(String name, Quantity<Q> value) {
    Measure<Q> measure = Measure.from(name, value);
    return mark(name, measure, nearestCount(measure));
  }

  /**
   * Whether a value lies on a mark, but for noise.
   *
   * @param value any measure of the rule's kind
   * @return whether rounding would leave it where it is
   */
  public boolean isOnMark(Quantity<Q> value) {
    double count = count(Measure.from("value", value));
    return isNoise(count, Math.rint(count));
  }

  /** {@return the distance from mark to mark} */
  public Measure<Q> step() {
    return step;
  }

  /** Same step, by {@link Measure#equals}: twenty-fifths of an inch are no millimetres. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Graduation<?> graduation && step.equals(graduation.step);
  }

  @Override
  public int hashCode() {
    return step.hashCode();
  }

  /** The rule in words, such as {@code 1/16 in steps}. */
  @Override
  public String toString() {
    return step + " steps";
  }

  /** The number of the nearest mark, negative below zero. */
  double nearestCount(Measure<Q> measure) {
    double count = count(measure);
    double size = Math.abs(count);
    double floor = Math.floor(size);
    double above = size - floor;
    double whole = above > 0.5 || isNoise(above, 0.5) ? floor + 1 : floor;
    return Math.copySign(whole, count);
  }

  /** How many steps make one unit of {@link #step()}; 0 if that is not a whole number. */
  int perUnit() {
    return perUnit;
  }

  private double count(Measure<Q> measure) {
    measure.amount(); // refuses a temperature
    double units = step.read("value", measure);
    return perUnit > 0 ? units * perUnit : units / step.getValue();
  }

  private Measure<Q> mark(String name, Measure<Q> like, double count) {
    double units = perUnit > 0 ? count / perUnit : count * step.getValue();
    return like.like(name, Measure.folded(units, step.scale(), name));
  }

  /** {@return what is written instead: numbers and the symbols of units} */
  private Object writeReplace() {
    return new SerialForm.OfGraduation<>(step);
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

  private static boolean isNoise(double count, double near) {
    return Math.abs(count - near) <= Math.max(NOISE, 8 * Math.ulp(count));
  }
}
