package org.hammerscale.spacing;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * A row of holes to be placed on a line, in bare numbers of one unit: how many, where they may lie,
 * which are fixed, and how far two rows lie apart. The half of a mirrored row is a strip too, whose
 * last hole minds its own mirror image.
 */
final class Strip {
  private final Places places;
  private final int holes;
  private final double[] fixed;
  private final double apart;
  private final End end;
  private final double centre;

  /** What stands at the far end. */
  enum End {
    /** Nothing. */
    OPEN,
    /** The mirror line, with no hole on it. */
    MIRROR,
    /** A fixed hole on the mirror line, the last of the half. */
    MIRROR_HOLE
  }

  private Strip(Places places, int holes, double[] fixed, double apart, End end, double centre) {
    this.places = places;
    this.holes = holes;
    this.fixed = fixed;
    this.apart = apart;
    this.end = end;
    this.centre = centre;
  }

  static Strip of(Places places, int holes, double[] fixed, double apart) {
    return new Strip(places, holes, fixed, apart, End.OPEN, Double.NaN);
  }

  /** Where holes may lie. */
  Places places() {
    return places;
  }

  /** How many, fixed ones included. */
  int holes() {
    return holes;
  }

  /** The fixed holes in rising order, which may lie outside the places. */
  double[] fixed() {
    return fixed;
  }

  /** The distance between two rows, 0 for one row. */
  double apart() {
    return apart;
  }

  End end() {
    return end;
  }

  /** The mirror line, of a half. */
  double centre() {
    return centre;
  }

  double slack() {
    return places.slack();
  }

  /**
   * The half before a mirror line, for so many holes on the whole; null if a hole must lie on the
   * line and cannot. The fixed holes must be mirror images of one another. A fixed hole on the line
   * of an even row is one of two above one another, which takes two rows.
   */
  @Nullable Strip half(double line, int wholeRow) {
    Places both = places.and(places.mirrored(2 * line)).upTo(line);
    boolean odd = wholeRow % 2 == 1;
    int kept = 0;
    while (kept < fixed.length && fixed[kept] < line - slack()) {
      kept++;
    }
    boolean fixedOnLine = kept < fixed.length && fixed[kept] <= line + slack();
    boolean onLine = odd || fixedOnLine;
    boolean asFixed = odd && fixedOnLine;
    if (onLine && !asFixed && !(places.contains(line) && (odd || apart > 0))) {
      return null;
    }
    double[] half = Arrays.copyOf(fixed, onLine ? kept + 1 : kept);
    if (onLine) {
      half[kept] = line;
    }
    End mirror = odd ? End.MIRROR_HOLE : End.MIRROR;
    return new Strip(both, (wholeRow + 1) / 2, half, apart, mirror, line);
  }

  /** The strip looked at from its other side: x becomes sum − x. */
  Strip mirrored(double sum) {
    return of(places.mirrored(sum), holes, reversed(fixed, sum), apart);
  }

  /** The two ends of the line added up: the mirror line twice, if it is to fall on itself. */
  double sum() {
    return places.isEmpty() ? fixed[0] + fixed[fixed.length - 1] : places.first() + places.last();
  }

  /** Which of two images comes first; 0 if they are alike. */
  int compareTo(Strip image) {
    int order = places.compareTo(image.places);
    for (int i = 0; i < fixed.length && order == 0; i++) {
      order = places.compare(fixed[i], image.fixed[i]);
    }
    return order;
  }

  static double[] reversed(double[] values, double sum) {
    double[] mirrored = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      mirrored[i] = sum - values[values.length - 1 - i];
    }
    return mirrored;
  }

  /** The whole row from the places of its half. */
  double[] unfolded(double[] half, int wholeRow) {
    if (end == End.OPEN) {
      return half;
    }
    double[] whole = new double[wholeRow];
    for (int i = 0; i < half.length; i++) {
      whole[i] = half[i];
      whole[wholeRow - 1 - i] = i == wholeRow - 1 - i ? half[i] : 2 * centre - half[i];
    }
    return whole;
  }
}
