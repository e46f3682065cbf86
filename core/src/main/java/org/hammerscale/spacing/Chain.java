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
  private static final String NAME = "widest least spacing";
  private static final String STEP = "step from row to row, along the leaf";

  /** The pace at which the chain just fits, in rows so far apart. */
  Pace pace(double apart, double slack) {
    return paced(Notes.NONE, Math.max(0, to - from), apart, slack);
  }

  /** By how much more than the chain's length its steps take at a pace. */
  double excess(Pace pace) {
    return pace.length(diagonals, straights) - Math.max(0, to - from);
  }

  /** The spacing with notes; the names are those of the two ends. */
  double spacing(Notes n, double apart, double slack, String fromName, String toName) {
    n.given("a", fromName, from);
    n.given("e", toName, to);
    double l = n.length("l", "from one to the other", "e − a", to - from);
    if (apart > 0) {
      n.given("b", "distance between the rows", apart);
    }
    return paced(n, l, apart, slack).straight();
  }

  /**
   * In one row l / n. In two, solves m t + n √(t² + b²) = l for the step t from row to row, unless
   * the steps within a row alone decide: then neighbours may lie abreast, and n d = l.
   */
  private Pace paced(Notes notes, double l, double b, double slack) {
    if (b == 0) {
      double steps = diagonals + straights;
      notes.number("n", "spacings between the two", "", steps);
      return Pace.ofDiagonal(notes.length("d", NAME, "l / n", l / steps), b);
    }
    double m = diagonals;
    double n = straights;
    if (straights > 0 && l / n - b <= slack) {
      notes.number("n", "steps within a row", "", n);
      return Pace.of(notes.length("d", NAME, "l / n", l / n), b, slack);
    }
    notes.number("m", "steps from row to row", "", m);
    double t;
    if (straights == 0) {
      t = notes.length("t", STEP, "l / m", l / m);
    } else {
      notes.number("n", "steps within a row", "", n);
      double w =
          notes.length(
              "w",
              "root of m t + n √(t² + b²) = l",
              "√(l² + b² (m² − n²))",
              Math.sqrt(l * l + b * b * (m * m - n * n)));
      t =
          notes.length(
              "t",
              STEP,
              "(l − n b) (l + n b) / (l m + n w)",
              (l - n * b) * (l + n * b) / (l * m + n * w));
    }
    Pace pace = Pace.ofDiagonal(t, b);
    notes.length("d", NAME, "√(t² + b²)", pace.straight());
    return pace;
  }
}
