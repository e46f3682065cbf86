package org.hammerscale.spacing;

/**
 * How far holes stay apart along the strap in a trial, and how far they may lie from the wanted
 * place.
 *
 * <p>Of two rows b apart, a spacing d and the step from row to row along the strap, √(d² − b²), do
 * not tell one another well: where d is b, the last bit of d is a hundred-millionth of the step. So
 * a pace keeps both, and trials go by the <em>advance</em>: above zero it is the step from row to
 * row; at zero and below, neighbours may lie abreast and holes of one row keep b + advance. In one
 * row it is the spacing.
 *
 * @param straight from a hole to the next but one, which is in the same row: the spacing itself
 * @param diagonal from a hole to the next, which is in the other row if there are two
 * @param reach how far a hole may lie from its wanted place
 */
record Pace(double straight, double diagonal, double reach) {
  /**
   * The pace of a spacing; one that noise alone makes wider than the rows are apart is no wider.
   */
  static Pace of(double spacing, double apart, double slack) {
    if (apart == 0) {
      return new Pace(spacing, spacing, 0);
    }
    boolean abreast = spacing - apart <= slack;
    return new Pace(spacing, abreast ? 0 : Math.sqrt((spacing - apart) * (spacing + apart)), 0);
  }

  static Pace atAdvance(double advance, double apart) {
    return advance > 0 ? ofDiagonal(advance, apart) : new Pace(apart + advance, 0, 0);
  }

  static Pace ofDiagonal(double diagonal, double apart) {
    return apart == 0
        ? new Pace(diagonal, diagonal, 0)
        : new Pace(Math.sqrt(diagonal * diagonal + apart * apart), diagonal, 0);
  }

  double advance(double apart) {
    return diagonal > 0 ? diagonal : straight - apart;
  }

  /** The same for holes that may move so far from where they are wanted. */
  Pace within(double newReach) {
    return new Pace(straight, diagonal, newReach);
  }

  /** The length of so many steps. */
  double length(int diagonals, int straights) {
    return diagonals * diagonal + straights * straight;
  }

  /** The earliest place for the hole after a last one. */
  Spot after(Spot last) {
    Spot other = last.previous();
    return last.x() + diagonal >= other.x() + straight
        ? step(last, 1, 0, last)
        : step(other, 0, 1, last);
  }

  private Spot step(Spot from, int diagonals, int straights, Spot last) {
    int m = from.diagonals() + diagonals;
    int n = from.straights() + straights;
    double x = from.anchor() + from.sign() * reach + m * diagonal + n * straight;
    return new Spot(x, from.anchor(), from.sign(), m, n, last.stretch(), false, last);
  }
}
