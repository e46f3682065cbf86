package org.hammerscale.spacing;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where holes may lie on a line: closed stretches in rising order, of which some may be single
 * points. What is forbidden is open, so that a hole may lie on the edge of a closed stretch, also
 * on the single point where two of them touch.
 *
 * <p>On the marks of a rule a hole may lie on the marks only; then stretches begin and end on
 * marks, and one without a mark is left out.
 *
 * <p>Everything here is in bare numbers of one unit. Two values closer than the slack are the same
 * place: that is noise of the arithmetic, not a distance.
 */
final class Places {
  private final double[] low;
  private final double[] high;
  private final double slack;
  private final @Nullable Marks marks;

  private Places(double[] low, double[] high, int size, double slack, @Nullable Marks marks) {
    this.low = Arrays.copyOf(low, size);
    this.high = Arrays.copyOf(high, size);
    this.slack = slack;
    this.marks = marks;
  }

  /**
   * What is left of a line from start to end. Each forbidden stretch is a pair of its ends; they
   * may overlap and reach beyond the line.
   */
  static Places between(double start, double end, List<double[]> forbidden, double slack) {
    double[][] sorted = forbidden.toArray(new double[0][]);
    Arrays.sort(sorted, Comparator.comparingDouble(stretch -> stretch[0]));
    double[] low = new double[sorted.length + 1];
    double[] high = new double[sorted.length + 1];
    int size = 0;
    double from = start;
    for (double[] stretch : sorted) {
      if (stretch[0] >= end) {
        break;
      }
      if (stretch[1] - stretch[0] <= slack || stretch[1] <= from) {
        continue;
      }
      if (stretch[0] >= from - slack) {
        low[size] = from;
        high[size++] = Math.max(from, stretch[0]);
      }
      from = stretch[1];
    }
    if (from <= end + slack) {
      low[size] = Math.min(from, end);
      high[size++] = end;
    }
    return new Places(low, high, size, slack, null);
  }

  /** The places that lie on marks. */
  Places on(Marks newMarks) {
    double[] from = new double[low.length];
    double[] to = new double[low.length];
    int size = 0;
    for (int i = 0; i < low.length; i++) {
      from[size] = newMarks.up(low[i]);
      to[size] = newMarks.down(high[i]);
      size += from[size] <= to[size] + slack ? 1 : 0;
    }
    return new Places(from, to, size, slack, newMarks);
  }

  boolean isEmpty() {
    return low.length == 0;
  }

  /** How many stretches there are. */
  int size() {
    return low.length;
  }

  double first() {
    return low[0];
  }

  double last() {
    return high[high.length - 1];
  }

  double slack() {
    return slack;
  }

  /** How far the hole that landed could have come without landing further on. */
  double last(Spot landed) {
    return marks == null ? high[landed.stretch()] : landed.x();
  }

  boolean contains(double x) {
    return stretchWith(x) >= 0 && (marks == null || marks.has(x));
  }

  /** The number of the stretch that a place lies in, or −1. */
  int stretchWith(double x) {
    int i = stretchEndingAt(x);
    return i < low.length && low[i] <= x + slack ? i : -1;
  }

  /** Both ends of a stretch. */
  double[] stretch(int i) {
    return new double[] {low[i], high[i]};
  }

  /** The first place not before an earliest one, or null if the line ends before. */
  @Nullable Spot land(Spot earliest) {
    double x = earliest.x();
    int i = earliest.stretch();
    while (i < high.length && high[i] < x - slack) {
      i++;
    }
    if (i == high.length) {
      return null;
    }
    if (x < low[i]) {
      return Spot.at(low[i], i, earliest.before());
    }
    if (marks != null) {
      return Spot.at(Math.min(marks.up(x), high[i]), i, earliest.before());
    }
    return x > high[i] ? Spot.at(high[i], i, earliest.before()) : earliest.in(i);
  }

  /** The place nearest to a wanted one between a place and a limit; of two the former. */
  double nearest(double wanted, double from, double to) {
    double x = Math.max(from, Math.min(wanted, to));
    int i = stretchEndingAt(x);
    boolean within = i < low.length && low[i] <= x;
    if (within && marks == null) {
      return Math.min(x, high[i]);
    }
    double before = Double.NEGATIVE_INFINITY;
    double after = Double.POSITIVE_INFINITY;
    if (within && marks != null) {
      before = Math.max(marks.down(x), low[i]);
      after = Math.min(marks.up(x), high[i]);
    } else {
      before = i > 0 ? high[i - 1] : before;
      after = i < low.length ? low[i] : after;
    }
    double best = before >= from - slack ? before : from;
    return after <= to + slack && after - wanted < wanted - best - slack ? after : best;
  }

  /** A value that noise has moved off a mark or the edge of a stretch, put back on it. */
  double onEdge(double x) {
    if (marks != null && marks.has(x)) {
      return marks.up(x);
    }
    int i = stretchEndingAt(x);
    if (i < low.length && Math.abs(high[i] - x) <= slack) {
      return high[i];
    }
    return i < low.length && Math.abs(low[i] - x) <= slack ? low[i] : x;
  }

  /** The line looked at from its other side: x becomes sum − x. */
  Places mirrored(double sum) {
    int size = low.length;
    double[] from = new double[size];
    double[] to = new double[size];
    for (int i = 0; i < size; i++) {
      from[i] = sum - high[size - 1 - i];
      to[i] = sum - low[size - 1 - i];
    }
    return new Places(from, to, size, slack, marks == null ? null : marks.mirrored(sum));
  }

  /** What both allow, as two fingers walk along them; an edge they share keeps this one's value. */
  Places and(Places other) {
    double[] from = new double[low.length + other.low.length];
    double[] to = new double[from.length];
    int size = 0;
    for (int i = 0, j = 0; i < low.length && j < other.low.length; ) {
      double start = Math.max(low[i], other.low[j] - slack <= low[i] ? low[i] : other.low[j]);
      double end = Math.min(high[i], other.high[j] + slack >= high[i] ? high[i] : other.high[j]);
      if (start <= end + slack) {
        from[size] = Math.min(start, end);
        to[size++] = end;
      }
      if (high[i] < other.high[j]) {
        i++;
      } else {
        j++;
      }
    }
    Places both = new Places(from, to, size, slack, null);
    return marks == null ? both : both.on(marks);
  }

  /** What is not beyond a limit. */
  Places upTo(double limit) {
    int size = 0;
    while (size < low.length && low[size] <= limit + slack) {
      size++;
    }
    Places cut = new Places(low, high, size, slack, null);
    if (size > 0) {
      cut.high[size - 1] = Math.max(low[size - 1], Math.min(high[size - 1], limit));
    }
    return marks == null ? cut : cut.on(marks);
  }

  /** Which of two lines comes first when read from the given ends; 0 if they are alike. */
  int compareTo(Places other) {
    for (int i = 0; i < low.length; i++) {
      int order = compare(low[i] - low[0], other.low[i] - other.low[0]);
      order = order == 0 ? compare(high[i] - low[0], other.high[i] - other.low[0]) : order;
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }

  /** Compares two values; 0 if only noise parts them. */
  int compare(double a, double b) {
    return Math.abs(a - b) <= 4 * slack ? 0 : Double.compare(a, b);
  }

  /** The first stretch that does not end before a place. */
  private int stretchEndingAt(double x) {
    int from = 0;
    int to = high.length;
    while (from < to) {
      int middle = (from + to) >>> 1;
      if (high[middle] < x - slack) {
        from = middle + 1;
      } else {
        to = middle;
      }
    }
    return from;
  }
}
