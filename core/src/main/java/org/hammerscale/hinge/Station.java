package org.hammerscale.hinge;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Stops.Stop;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * A section through the knuckle of one leaf, behind which the other leaf is cut back: the notched
 * leaf and the through leaf. All in one unit of length.
 *
 * <p>The corner (−c, s) of the notch meets the through leaf's face, f + g from the pin, when that
 * leaf has turned by θ: c sin θ + s cos θ = f + g. As a sum of two angles at the pin, with p from
 * the pin along the face to the corner, θ = atan2(c, s) + atan2(p, f + g), where p² = c² + s² − (f
 * + g)². Just behind the barrel p is a small difference of squares and the angle steep in it; so p²
 * is put together of three parts that are never negative: what the notch is deeper than the barrel
 * needs, what the face lies below the barrel's top, and what the corner lies off the nearest point.
 */
final class Station implements Stop {
  /** Rounding of a depth that was carried from one unit to another. */
  private static final double ROUNDING = 1e-12;

  private final double depth;
  private final double upper;
  private final double lower;
  private final double radius;
  private final double face;
  private final double gap;

  private Station(LeafProfile notched, LeafProfile through, double gap, Unit<Length> unit) {
    this.depth = notched.notchIn(unit);
    this.upper = notched.faceAbovePin().in(unit);
    this.lower = notched.backAbovePin().in(unit);
    this.radius = through.outsideDiameter().in(unit) / 2;
    this.face = through.faceAbovePin().in(unit);
    this.gap = gap;
  }

  private Station(Station other, double depth) {
    this.depth = depth;
    this.upper = other.upper;
    this.lower = other.lower;
    this.radius = other.radius;
    this.face = other.face;
    this.gap = other.gap;
  }

  /** The same with a deeper notch. */
  Station deepenedBy(double more) {
    return new Station(this, depth(Notes.NONE) + more);
  }

  /** The same with no more notch than the barrel needs. */
  Station cutForTheBarrel() {
    return new Station(this, Double.NaN);
  }

  boolean hasGap() {
    return gap > 0;
  }

  /** Whether its depth is not given but what the barrel needs with a gap. */
  boolean isCutForTheGap() {
    return hasGap() && Double.isNaN(depth) && needsBarrelRoom();
  }

  /** Refuses a notch that does not clear the barrel, and leaves that do not reach past it. */
  static Station of(
      LeafProfile notched, LeafProfile through, Measure<Length> gap, Unit<Length> unit) {
    Station station = new Station(notched, through, gap.in(unit), unit);
    double least = station.barrelNotch();
    double depth = station.depth;
    if (depth < least * (1 - ROUNDING)) {
      throw new IllegalArgumentException(
          "depth of notch must be at least "
              + Measure.of(least, unit)
              + " for the leaf to clear the other's barrel"
              + (station.gap > 0 ? " by " + gap : "")
              + ", was "
              + Measure.of(depth, unit)
              + "; cut the notch deeper");
    }
    double corner = Math.hypot(Double.isNaN(depth) ? least : depth, notched.extentIn(unit));
    double shorter = Math.min(notched.lengthIn(unit), through.lengthIn(unit));
    if (shorter <= corner) {
      throw new IllegalArgumentException(
          "length from pin must be more than "
              + Measure.of(corner, unit)
              + " to reach past the notch, was "
              + Measure.of(shorter, unit)
              + "; make the leaf longer or the notch less deep");
    }
    return station;
  }

  /** The distance of the notched plate's nearest level from the pin. */
  private double nearest() {
    return lower > 0 ? lower : Math.max(-upper, 0);
  }

  private boolean needsBarrelRoom() {
    return nearest() < radius + gap;
  }

  double barrelNotch() {
    return barrelNotch(Notes.NONE);
  }

  /** The least depth that clears the barrel with the gap. */
  double barrelNotch(Notes n) {
    double r = n.given("R", "outside radius of the other leaf's barrel", radius);
    double g = n.given("g", "running gap", gap);
    double d = n.given("d", "least distance of the plate's level from the pin", nearest());
    String meaning = "depth of notch that clears the barrel";
    return needsBarrelRoom()
        ? n.length("c", meaning, "√((R + g − d) (R + g + d))", Math.sqrt((r + g - d) * (r + g + d)))
        : n.length("c", "no notch: the plate passes the barrel", "0", 0);
  }

  private double depth(Notes n) {
    if (Double.isNaN(depth)) {
      return barrelNotch(n);
    }
    n.given("R", "outside radius of the other leaf's barrel", radius);
    n.given("g", "running gap", gap);
    n.given("d", "least distance of the plate's level from the pin", nearest());
    return n.given("c", "depth of notch behind the pin", depth);
  }

  /** What the notch is deeper than the barrel needs: c² − ((R + g)² − d²), without cancellation. */
  private double excess(Notes n, double c) {
    String meaning = "square of the notch beyond the barrel's";
    if (Double.isNaN(depth) && needsBarrelRoom()) {
      return n.area("e", meaning, "0", 0);
    }
    double low = radius + gap - nearest();
    double high = radius + gap + nearest();
    double barrel = low * high;
    double e = Math.fma(c, c, -barrel) - Math.fma(low, high, -barrel);
    return n.area("e", meaning, "c² − (R + g − d) (R + g + d)", Math.max(e, 0));
  }

  /** Whether the far corner of the notch's floor, not the one on the face, meets the other leaf. */
  private boolean farCornerMeets(double c) {
    return lower > 0 && c < face + gap;
  }

  @Override
  public Contact contact() {
    return corner(farCornerMeets(depth(Notes.NONE)));
  }

  private static Contact corner(boolean far) {
    return far ? Contact.BACK_CORNER : Contact.FACE_CORNER;
  }

  @Override
  public double angle(Notes n) {
    double c = depth(n);
    double d = nearest();
    double f = n.given("f", "face of the other leaf above the pin", face);
    double h = n.length("h", "the same with the gap", "f + g", f + gap);
    boolean far = farCornerMeets(c);
    String at = far ? "back corner of the notch above the pin" : "face corner above the pin";
    double s = n.given("s", at, far ? lower : upper);
    double square = excess(n, c) + (radius - f) * (radius + f + 2 * gap) + (s - d) * (s + d);
    double p =
        n.length(
            "p",
            "from the pin along the other's face to the corner",
            "√(e + (R − f) (R + f + 2 g) + (s − d) (s + d))",
            Math.sqrt(square));
    if (!facesMeet()) { // past 180°, where one arc tangent would begin anew
      return Stop.inDegrees(
          n, "(atan2(c, s) + atan2(p, h)) × 180 / π", Math.atan2(c, s) + Math.atan2(p, h));
    }
    // The sum of the two angles in one, of a product of two complex numbers: half the time.
    return Stop.inDegrees(
        n, "atan2(c h + s p, s h − c p) × 180 / π", Math.atan2(c * h + s * p, s * h - c * p));
  }

  /** What decides the least notch for an opening of less than 180°. */
  Contact notchContact(double degrees) {
    double radians = degrees * Math.PI / 180;
    double near = edge(radians, upper);
    double far = edge(radians, lower);
    return Math.max(near, far) > barrelNotch() ? corner(far > near) : Contact.BARREL;
  }

  /** The least depth of notch for an opening past flat, more than 0° and less than 180°. */
  double leastNotch(Notes n, double degrees) {
    Contact contact = degrees > 0 ? notchContact(degrees) : Contact.BARREL;
    if (contact == Contact.BARREL) {
      return barrelNotch(n);
    }
    double wanted = n.value("θ", "opening past flat", "", degrees, ShopUnits.DEGREE);
    double radians =
        n.value("φ", "the same", "θ π / 180", wanted * Math.PI / 180, ShopUnits.RADIAN);
    n.given("f", "face of the other leaf above the pin", face);
    n.given("g", "running gap", gap);
    boolean far = contact == Contact.BACK_CORNER;
    String at = far ? "back corner of the notch above the pin" : "face corner above the pin";
    double s = n.given("s", at, far ? lower : upper);
    return n.length("c", "least depth of notch", "(f + g − s cos(φ)) / sin(φ)", edge(radians, s));
  }

  /** Depth at which a corner meets the face at an angle; nothing if it meets the barrel instead. */
  private double edge(double radians, double s) {
    double cosine = Math.cos(radians);
    double level = face + gap;
    return s >= level * cosine ? (level - s * cosine) / Math.sin(radians) : 0;
  }

  /** Whether the notch lets the other leaf turn by an angle, but for rounding. */
  boolean clears(double degrees) {
    return depth(Notes.NONE) >= leastNotch(Notes.NONE, degrees) * (1 - ROUNDING);
  }

  /** Whether the leaves' faces meet before they fold flat on each other. */
  boolean facesMeet() {
    return upper + face + gap > 0;
  }
}
