package org.hammerscale.spacing;

import org.hammerscale.working.Notes;

/**
 * Holes that lie as close as they may, one behind the other from one fixed place to another: they
 * decide the widest spacing.
 *
 * @param from the place where it begins: an edge or a fixed hole
 * @param to the place where it ends
 * @param diagonals steps from a hole to its neighbour (in the other row if there are two)
 * @param straights steps from a hole to the next but one, in the same row
 */
record Chain(double from, double to, int diagonals, int straights) {
  /** The spacing at which the chain just fits, in rows so far apart. */
  double spacing(double apart) {
    return apart == 0
        ? (to - from) / (diagonals + straights)
        : staggered(Notes.NONE, to - from, apart);
  }

  /** The same with notes; the names are those of the two ends. */
  double spacing(Notes n, double apart, String fromName, String toName) {
    n.given("a", fromName, from);
    n.given("e", toName, to);
    if (apart == 0) {
      n.number("n", "spacings between the two", "", diagonals);
      return n.length("d", "widest least spacing", "(e − a) / n", spacing(apart));
    }
    double length = n.length("l", "from one to the other", "e − a", to - from);
    n.given("b", "distance between the rows", apart);
    return staggered(n, length, apart);
  }

  /**
   * Solves m √(d² − b²) + n d = l for d; as long as d is less than b, neighbours do not mind one
   * another, and n d = l.
   */
  private double staggered(Notes notes, double l, double b) {
    double m = diagonals;
    double n = straights;
    if (straights > 0 && l / n <= b) {
      notes.number("n", "steps within a row", "", n);
      return notes.length("d", "widest least spacing", "l / n", l / n);
    }
    notes.number("m", "steps from row to row", "", m);
    notes.number("n", "steps within a row", "", n);
    double w =
        notes.length(
            "w",
            "root of √(d² − b²) m + n d = l",
            "√(l² + b² (m² − n²))",
            Math.sqrt(l * l + b * b * (m * m - n * n)));
    return notes.length(
        "d",
        "widest least spacing",
        "(l² + m² b²) / (n l + m w)",
        (l * l + m * m * (b * b)) / (n * l + m * w));
  }
}
