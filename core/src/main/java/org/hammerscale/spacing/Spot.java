package org.hammerscale.spacing;

import org.jspecify.annotations.Nullable;

/**
 * A hole in a trial, and how it came to lie where it does: so many steps after an anchor. The
 * anchor is an edge or a fixed hole (sign 0), or the earliest place that a wanted place allows when
 * holes may move by a reach r: anchor − r (sign −1).
 */
record Spot(
    double x,
    double anchor,
    int sign,
    int diagonals,
    int straights,
    int stretch,
    boolean fixed,
    @Nullable Spot before) {
  /** Stands before the first hole of a row. */
  static final Spot NONE =
      new Spot(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, 0, 0, 0, 0, false, null);

  /** A hole on an edge of a stretch. */
  static Spot at(double x, int stretch, @Nullable Spot before) {
    return new Spot(x, x, 0, 0, 0, stretch, false, before);
  }

  /** A fixed hole. */
  static Spot fixed(double x, Spot before) {
    return new Spot(x, x, 0, 0, 0, before.stretch, true, before);
  }

  /** A hole as early as its wanted place allows. */
  static Spot early(double wanted, double reach, Spot before) {
    return new Spot(wanted - reach, wanted, -1, 0, 0, before.stretch, false, before);
  }

  Spot in(int newStretch) {
    return new Spot(x, anchor, sign, diagonals, straights, newStretch, false, before);
  }

  /** The hole before. */
  Spot previous() {
    return before == null ? NONE : before;
  }

  int steps() {
    return diagonals + straights;
  }
}
