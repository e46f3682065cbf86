package org.hammerscale.spacing;

import org.jspecify.annotations.Nullable;

/**
 * Pickets with their near edges on the marks of a rule, laid with its zero at the post: the widest
 * gap as narrow as the marks allow, then each edge on the mark nearest to where equal gaps put it.
 * Lengths along the rail.
 */
final class PicketMarks {
  /** A place nearer to a mark than this part of a step is on it. */
  private static final double NOISE = 1e-9;

  private final double step;
  private final double span;
  private final double[] widths;
  private final double[] even;

  PicketMarks(PicketPlan plan, int pickets, double step) {
    this.step = step;
    this.span = plan.span() * plan.slope();
    this.even = plan.even(pickets);
    this.widths = new double[pickets];
    for (int i = 0; i < pickets; i++) {
      widths[i] = plan.width(i) * plan.slope();
    }
  }

  /** Null if they do not stand apart on these marks. */
  double @Nullable [] edges() {
    if (even.length == 0) {
      return even;
    }
    double[] best = placed(widestOf(nearest()));
    if (best == null) {
      return placed(span);
    }
    while (true) { // each time narrower, by what two marks and a width can differ
      double widest = widestOf(best);
      double[] next = placed(widest - 2 * NOISE * step);
      if (next == null || !(widestOf(next) < widest)) {
        return best;
      }
      best = next;
    }
  }

  private double[] nearest() {
    double[] edges = new double[even.length];
    for (int i = 0; i < edges.length; i++) {
      edges[i] = nearest(even[i]);
    }
    return edges;
  }

  private double widestOf(double[] edges) {
    double widest = 0;
    double free = 0;
    for (int i = 0; i < edges.length; i++) {
      widest = Math.max(widest, edges[i] - free);
      free = edges[i] + widths[i];
    }
    return Math.max(widest, span - free);
  }

  /**
   * Each edge as near as can be to its even place, with gaps of more than nothing and at most the
   * widest; null if there is no such row. From behind the marks are found from which the rest can
   * still be placed: they are all those between an earliest and a latest.
   */
  private double @Nullable [] placed(double widest) {
    int n = even.length;
    double[] earliest = new double[n];
    double[] latest = new double[n];
    double first = span;
    double last = span;
    for (int i = n - 1; i >= 0; i--) {
      first = up(first - widest - widths[i]);
      last = before(last - widths[i]);
      earliest[i] = first;
      latest[i] = last;
    }
    double[] edges = new double[n];
    double free = 0;
    for (int i = 0; i < n; i++) {
      double least = Math.max(earliest[i], beyond(free));
      double most = Math.min(latest[i], down(free + widest));
      if (least > most + NOISE * step) {
        return null;
      }
      edges[i] = Math.max(least, Math.min(most, nearest(even[i])));
      free = edges[i] + widths[i];
    }
    double rest = span - free;
    return rest > NOISE * step && rest <= widest + NOISE * step ? edges : null;
  }

  private double nearest(double x) {
    return Math.rint(x / step) * step;
  }

  /** The first mark farther than a place. */
  private double beyond(double x) {
    return (Math.floor(x / step + NOISE) + 1) * step;
  }

  /** The last mark before a place. */
  private double before(double x) {
    return (Math.ceil(x / step - NOISE) - 1) * step;
  }

  private double down(double x) {
    return Math.floor(x / step + NOISE) * step;
  }

  private double up(double x) {
    return Math.ceil(x / step - NOISE) * step;
  }
}
