package org.hammerscale.latch;

import org.hammerscale.working.Notes;

/**
 * The slot that a staple cuts out of a hasp as it lifts: each point of the staple describes a
 * circle about the pin, seen from the strap. All in one unit.
 *
 * @param x from the pin to the near side of the staple
 * @param l how much of the hasp's length the staple takes up
 * @param u the pin above the underside of the strap
 * @param h the top of the staple above it
 * @param t the thickness of the strap
 * @param c working clearance at either end
 * @param isRound whether the staple is seen with a round top, else with a square one
 */
record HaspSlot(double x, double l, double u, double h, double t, double c, boolean isRound) {
  /** Near end: the least circle that the staple describes, where it leaves the underside. */
  double near(Notes n) {
    n.given("x", "near side of the staple", x);
    n.given("u", "pin above the underside", u);
    n.given("H", "top of the staple", h);
    n.given("c", "working clearance", c);
    if (u < 0) {
      return n.length("p", "slot begins", "x − c", x - c);
    }
    double least;
    double r = l / 2;
    if (isRound && h - r < u) {
      n.given("r", "radius of the crown", r);
      double m = n.length("m", "middle of the staple", "x + r", x + r);
      double up = n.length("v", "pin above the crown's middle", "u − (H − r)", u - (h - r));
      least = n.length("ρ", "nearest point", "√(m² + v²) − r", Math.sqrt(m * m + up * up) - r);
    } else if (h < u) {
      double up = n.length("v", "pin above the staple", "u − H", u - h);
      least = n.length("ρ", "nearest point", "√(x² + v²)", Math.sqrt(x * x + up * up));
    } else {
      least = n.length("ρ", "nearest point", "x", x);
    }
    return n.length("p", "slot begins", "√(ρ² − u²) − c", Math.sqrt(least * least - u * u) - c);
  }

  /**
   * Far end: the largest circle that the staple describes, where the strap is nearest to the pin.
   */
  double far(Notes n) {
    n.given("x", "near side of the staple", x);
    n.given("l", "staple along the hasp", l);
    n.given("u", "pin above the underside", u);
    n.given("H", "top of the staple", h);
    n.given("t", "thickness of the hasp", t);
    n.given("c", "working clearance", c);
    double level = u < 0 ? -u : Math.max(0, u - t);
    String how = u < 0 ? "0 − u" : u > t ? "u − t" : "0 u";
    double y = n.length("y", "level of the strap nearest to the pin", how, level);
    double most;
    if (isRound) {
      double r = n.length("r", "radius of the crown", "l / 2", l / 2);
      if (h - r < Math.min(u, t)) {
        // What stands over the strap is narrower than what stands in it.
        return n.length("p", "slot ends", "x + l + c", x + l + c);
      }
      double v = n.length("v", "crown's middle above the pin", "H − r − u", h - r - u);
      double m = n.length("m", "middle of the staple", "x + r", x + r);
      most =
          v >= 0
              ? n.length("ρ", "farthest point", "√(m² + v²) + r", Math.sqrt(m * m + v * v) + r)
              : n.length(
                  "ρ", "farthest point", "√((x + l)² + v²)", Math.sqrt((x + l) * (x + l) + v * v));
    } else {
      double v = n.length("v", "top above the pin", "H − u", h - u);
      double corner = Math.sqrt((x + l) * (x + l) + v * v);
      most = n.length("ρ", "farthest point", "√((x + l)² + v²)", corner);
    }
    double swung = Math.sqrt(most * most - y * y);
    return swung >= x + l
        ? n.length("p", "slot ends", "√(ρ² − y²) + c", swung + c)
        : n.length("p", "slot ends", "x + l + c", x + l + c);
  }
}
