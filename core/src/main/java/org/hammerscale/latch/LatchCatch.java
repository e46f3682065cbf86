package org.hammerscale.latch;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The catch on the frame that a latch's bar drops into: a nose that keeps the bar, a floor under
 * it, and a ramp that lifts it as the door shuts. Other names: {@index strike}, {@index "latch
 * keeper"}.
 *
 * <pre>{@code
 * LatchCatch nose = LatchCatch.standing(millimetres(12)).under(millimetres(3));
 * nose.engagement(millimetres(0))    // 9 mm   as it is hung
 * nose.engagement(millimetres(2))    // 11 mm  one for one with the drop of the door
 * nose.engagement(millimetres(-9))   // 0 mm   lost, the door has risen too far
 * nose.closingForce(newtons(4), degrees(45), 0.2)   // 6 N  to push the bar up its ramp
 * }</pre>
 *
 * <p>E = min(h, max(0, h − c + s)). Exact, in the nose's unit. Source: plane geometry; a body on a
 * ramp with friction.
 */
public final class LatchCatch {
  private static final Source LEVELS = Source.computed("levels of nose, floor and bar");
  private static final Source RAMP = Source.computed("statics of a body on a ramp with friction");

  private final Measure<Length> nose;
  private final Measure<Length> clearance;
  private final Unit<Length> unit;

  private LatchCatch(Measure<Length> nose, Measure<Length> clearance) {
    this.nose = nose;
    this.clearance = clearance;
    this.unit = nose.getUnit();
  }

  /**
   * A catch whose floor the bar rests on, until it is told more.
   *
   * @param nose the height of its nose over the floor of its notch, more than zero
   * @return the catch
   * @throws IllegalArgumentException if the height is not more than zero
   */
  public static LatchCatch standing(Quantity<Length> nose) {
    Measure<Length> high = Arguments.positive("nose", nose);
    return new LatchCatch(high, high.withValue(0));
  }

  /**
   * The same with its floor below the resting bar, which may then drop with the door.
   *
   * @param clearance between bar and floor, zero or more and less than the nose is high
   * @return the catch
   * @throws IllegalArgumentException if it is out of range
   */
  public LatchCatch under(Quantity<Length> clearance) {
    Measure<Length> free = Arguments.notNegative("clearance", clearance).to(unit);
    if (!free.isLessThan(nose)) {
      throw new IllegalArgumentException(
          "clearance must be less than the nose is high, "
              + nose
              + ", was "
              + free
              + "; else the bar does not catch; raise the floor");
    }
    return new LatchCatch(nose, free);
  }

  /** {@return how high its nose stands over its floor} */
  public Measure<Length> nose() {
    return nose;
  }

  /** {@return how far the floor lies below the resting bar} */
  public Measure<Length> clearance() {
    return clearance;
  }

  /**
   * How deep the bar lies behind the nose once the door has dropped.
   *
   * @param drop of the door's edge; negative if it has risen, or the frame has settled
   * @return the engagement, exact, from nothing to the whole nose
   */
  public Measure<Length> engagement(Quantity<Length> drop) {
    Measure<Length> lower = Arguments.length("drop", drop);
    return Measure.of(engagement(Notes.NONE, lower), unit);
  }

  /**
   * How the engagement was found.
   *
   * @param drop of the door's edge
   * @return the working of {@link #engagement}
   */
  public Working working(Quantity<Length> drop) {
    Measure<Length> lower = Arguments.length("drop", drop);
    return Notes.taken("engagement in a catch", unit, n -> engagement(n, lower)).withSource(LEVELS);
  }

  /** {@return how far the door may rise before the bar is lost; exact} */
  public Measure<Length> lostAtRise() {
    return nose.subtract(clearance);
  }

  /**
   * How far the bar must be lifted to pass over the nose.
   *
   * @param drop of the door's edge
   * @param over the room to pass by, zero or more
   * @return the lift at the catch, exact
   * @throws IllegalArgumentException if the room is negative
   */
  public Measure<Length> liftNeeded(Quantity<Length> drop, Quantity<Length> over) {
    Measure<Length> room = Arguments.notNegative("over", over);
    return engagement(drop).add(room);
  }

  /**
   * How much of the bar's end lies in the catch once the door has shrunk and moved on its hinges.
   *
   * @param mounted the overlap when it was hung, more than zero
   * @param narrower how much narrower the door has become; negative if it has swollen
   * @param play how far it can be pushed out of shut, zero or more
   * @return the overlap left, exact; negative if the bar no longer reaches
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Measure<Length> overlapLeft(
      Quantity<Length> mounted, Quantity<Length> narrower, Quantity<Length> play) {
    return Arguments.positive("mounted", mounted)
        .subtract(Arguments.length("narrower", narrower))
        .subtract(Arguments.notNegative("play", play));
  }

  /**
   * The push on the door that slides the bar up the ramp: N (tan t + μ)/(1 − μ tan t).
   *
   * @param down what presses the bar on to the ramp, zero or more: its own weight there, a spring
   * @param ramp its angle from level, 0° to 89°
   * @param friction of iron on iron, more than 0 and at most 2
   * @return the push, exact
   * @throws IllegalArgumentException if the ramp is so steep that it locks, or an argument is out
   *     of range
   */
  public Measure<Force> closingForce(Quantity<Force> down, Quantity<Angle> ramp, double friction) {
    Measure<Force> press = Arguments.notNegativeForce("down", down);
    double slope = slope(ramp, friction);
    return press.withValue(closing(Notes.NONE, press, slope, friction));
  }

  /**
   * How the push was found.
   *
   * @param down what presses the bar on to the ramp
   * @param ramp its angle from level
   * @param friction of iron on iron
   * @return the working of {@link #closingForce}
   * @throws IllegalArgumentException as {@link #closingForce}
   */
  public Working closingForceWorking(Quantity<Force> down, Quantity<Angle> ramp, double friction) {
    Measure<Force> press = Arguments.notNegativeForce("down", down);
    double slope = slope(ramp, friction);
    return Notes.taken("push that shuts a latch", unit, n -> closing(n, press, slope, friction))
        .withSource(RAMP);
  }

  private static double slope(Quantity<Angle> ramp, double friction) {
    double angle = Arguments.angle("ramp", ramp, 89).in(ShopUnits.RADIAN);
    double mu = Arguments.number("friction", friction, 2, "dry iron on iron is about 0.3");
    if (!(mu * Math.tan(angle) < 1)) {
      throw new IllegalArgumentException(
          "ramp must be less than "
              + Measure.of(Math.toDegrees(Math.atan(1 / mu)), ShopUnits.DEGREE)
              + " steep with a friction of "
              + mu
              + ", was "
              + Measure.from(ramp)
              + "; it locks: make it longer, or grease it");
    }
    return angle;
  }

  private double engagement(Notes n, Measure<Length> drop) {
    double h = n.given("h", "nose over the floor", nose.in(unit));
    double c = n.given("c", "floor under the bar", clearance.in(unit));
    double s = n.given("s", "drop of the door", drop.in(unit));
    double deep = h - c + s;
    if (deep <= 0) {
      return n.length("E", "bar behind the nose", "0 h", 0);
    }
    return deep >= h
        ? n.length("E", "bar behind the nose", "h", h)
        : n.length("E", "bar behind the nose", "h − c + s", deep);
  }

  private static double closing(Notes n, Measure<Force> press, double angle, double friction) {
    double down = n.value("N", "press on the ramp", "", press.getValue(), press.getUnit());
    double t = n.value("t", "ramp from level", "", angle, ShopUnits.RADIAN);
    double mu = n.number("μ", "friction", "", friction);
    double push = down * (Math.tan(t) + mu) / (1 - mu * Math.tan(t));
    return n.value("P", "push", "N (tan(t) + μ) / (1 − μ tan(t))", push, press.getUnit());
  }

  /** Nose and floor. */
  @Override
  public String toString() {
    return "catch with a nose of " + nose + ", its floor " + clearance + " under the bar";
  }
}
