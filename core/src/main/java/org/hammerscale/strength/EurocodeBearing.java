package org.hammerscale.strength;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/** The two factors of EN 1993-1-8, table 3.4, for the iron ahead of a fastener and beside it. */
final class EurocodeBearing {
  private static final double MOST_K1 = 2.5;

  private EurocodeBearing() {}

  /** αb: e₁/(3 d₀) to the end, p₁/(3 d₀) − 1/4 to the next hole, at most 1. */
  static double ahead(Notes n, double distance, double d0, boolean end) {
    double a = end ? distance / (3 * d0) : distance / (3 * d0) - 0.25;
    if (a >= 1) {
      return n.value("αb", "share for the distance ahead, at most 1", "", 1, ShopUnits.ONE);
    }
    n.given(end ? "e₁" : "p₁", end ? "end distance" : "spacing", distance);
    String formula = end ? "e₁ / (3 d₀)" : "p₁ / (3 d₀) − 0.25";
    return n.number("αb", "share for the distance ahead", formula, a);
  }

  /**
   * k₁: the lesser of 2.8 e₂/d₀ − 1.7 and 1.4 p₂/d₀ − 1.7, at most 2.5.
   *
   * @param p2 the spacing across, infinite if there is no hole beside
   */
  static double beside(Notes n, double d0, double e2, double p2) {
    double byEdge = 2.8 * e2 / d0 - 1.7;
    double byHole = 1.4 * p2 / d0 - 1.7;
    double k = Math.min(byEdge, byHole);
    String meaning = "factor for the iron beside";
    if (k >= MOST_K1) {
      return n.value("k₁", meaning + ", at most 2.5", "", MOST_K1, ShopUnits.ONE);
    }
    if (!(k > 0)) {
      throw new IllegalArgumentException(
          "hole of the bearing must have iron beside it for EN 1993-1-8, 1.2 d0 to the edge and 2.4 d0 to a hole"
              + " beside, was "
              + (byEdge <= byHole ? e2 / d0 + " d0 to the edge" : p2 / d0 + " d0 to a hole")
              + "; take a smaller hole or a wider strap");
    }
    if (byEdge <= byHole) {
      n.given("e₂", "edge distance", e2);
      return n.number("k₁", meaning, "2.8 e₂ / d₀ − 1.7", byEdge);
    }
    n.given("p₂", "spacing across", p2);
    return n.number("k₁", meaning, "1.4 p₂ / d₀ − 1.7", byHole);
  }
}
