package org.hammerscale.hinge;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.working.Notes;

/**
 * The tip of the shorter leaf against the other leaf's face, of leaves that fold flat with room
 * between: past 180° they lean together. Leaves without a length are long: they stop at 180°.
 */
final class Tips implements Stop {
  private final double length;
  private final double tip;
  private final double face;

  private Tips(double length, double tip, double face) {
    this.length = length;
    this.tip = tip;
    this.face = face;
  }

  static Tips of(LeafProfile one, LeafProfile other, Unit<Length> unit) {
    double first = Math.hypot(one.lengthIn(unit), one.faceAbovePin().in(unit));
    double second = Math.hypot(other.lengthIn(unit), other.faceAbovePin().in(unit));
    LeafProfile shorter = first <= second ? one : other;
    LeafProfile longer = first <= second ? other : one;
    return new Tips(
        shorter.lengthIn(unit), shorter.faceAbovePin().in(unit), longer.faceAbovePin().in(unit));
  }

  @Override
  public Contact contact() {
    return Contact.TIPS;
  }

  @Override
  public double angle(Notes n) {
    if (Double.isInfinite(length)) {
      return Stop.inDegrees(n, "180", Math.PI);
    }
    double l = n.given("L", "length of the shorter leaf from the pin", length);
    double s = n.given("s", "its face above the pin", tip);
    double f = n.given("f", "the other's face above the pin", face);
    double p =
        n.length(
            "p",
            "from the pin along the other's face to the tip",
            "√(L² + (s − f) (s + f))",
            Math.sqrt(l * l + (s - f) * (s + f)));
    return Stop.inDegrees(
        n, "(atan2(L, s) + atan2(p, f)) × 180 / π", Math.atan2(l, s) + Math.atan2(p, f));
  }
}
