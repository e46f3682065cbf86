package org.hammerscale.latch;

import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/** Whether the parts of a thumb latch fit each other; what does not is refused. */
final class LatchFit {
  private LatchFit() {}

  /** Checks all of it, with the lift that takes the bar over its nose. */
  static void check(ThumbLatchBuilder asked, LatchMotion motion, Measure<Length> needed) {
    lever(asked, motion);
    bar(asked, Measure.of(motion.lift(Notes.NONE), asked.unit), needed);
    handle(asked);
  }

  private static void lever(ThumbLatchBuilder asked, LatchMotion motion) {
    Measure<Length> depth = asked.bar.section().width().to(asked.unit);
    if (!asked.travel.isLessThan(asked.thumb)) {
      throw new IllegalArgumentException(
          "travel must be less than the thumb's distance from the pivot, "
              + asked.thumb
              + ", was "
              + asked.travel
              + "; make the thumb piece longer");
    }
    if (!(asked.pivotOut.add(asked.door).getValue() > 0)) {
      throw new IllegalArgumentException(
          "pivotOut must leave door behind the pivot, was "
              + asked.pivotOut
              + " for a door of "
              + asked.door
              + "; set the pivot farther out");
    }
    Arguments.atMost(
        "edgeBelow", asked.edgeBelow, "the bar's depth", depth, "set the pivot into the bar");
    Arguments.atMost(
        "contact", asked.contact, "the catch's place", asked.catchAt, "lift the bar before it");
    // Where the lever would have to lift the edge past the pivot's own circle it never meets it.
    double below = asked.edgeBelow.in(asked.unit);
    double up = motion.atContact(Notes.NONE) - below;
    if (!(below < Math.hypot(asked.contact.in(asked.unit), up))) {
      throw new IllegalArgumentException(
          "contact must lie farther from the pivot than the bar's edge is below it, "
              + asked.edgeBelow
              + ", was "
              + asked.contact
              + "; lift the bar farther out");
    }
    double turn = motion.turn(Notes.NONE);
    if (!(turn < Math.PI / 3)) {
      throw new IllegalArgumentException(
          "contact must let the bar turn by less than 60°, was "
              + asked.contact
              + " with a turn of "
              + Measure.of(turn, ShopUnits.RADIAN).to(ShopUnits.DEGREE)
              + "; lift the bar farther out, or less");
    }
  }

  private static void bar(ThumbLatchBuilder asked, Measure<Length> lift, Measure<Length> needed) {
    if (!asked.catchAt.isLessThan(asked.length)) {
      throw new IllegalArgumentException(
          "catchAt must lie short of the bar's tip at "
              + asked.length
              + ", was "
              + asked.catchAt
              + "; lengthen the bar");
    }
    if (!asked.rise.isLessThan(asked.nose.lostAtRise())) {
      throw new IllegalArgumentException(
          "rise must be less than "
              + asked.nose.lostAtRise()
              + ", at which the bar is lost, was "
              + asked.rise
              + "; raise the nose");
    }
    if (needed.isGreaterThan(lift) && !needed.isEquivalentTo(lift)) {
      throw new IllegalArgumentException(
          "lift must be at least "
              + needed
              + " to clear the nose, was "
              + lift
              + "; let the thumb travel farther, or lower the nose");
    }
  }

  private static void handle(ThumbLatchBuilder asked) {
    Measure<Length> t = asked.handle.section().thickness().to(asked.unit);
    if (!asked.fingers.isGreaterThan(t.multiply(2)) || !asked.grip.isGreaterThan(t)) {
      throw new IllegalArgumentException(
          "fingers must have more room than two thicknesses of the handle, "
              + t.multiply(2)
              + ", was "
              + asked.fingers
              + " behind a grip of "
              + asked.grip
              + "; bend the handle wider or of thinner stock");
    }
  }
}
