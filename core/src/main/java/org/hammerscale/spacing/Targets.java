package org.hammerscale.spacing;

import java.util.Arrays;
import org.hammerscale.spacing.Strip.End;

/**
 * Where the holes are wanted. In the half of a mirrored row each hole stands for two, and is wanted
 * in two places.
 */
final class Targets {
  private final double[] early;
  private final double[] late;

  private Targets(double[] early, double[] late) {
    this.early = early;
    this.late = late;
  }

  static Targets of(double[] wanted) {
    return new Targets(wanted, wanted);
  }

  static double[] even(double first, double last, int holes) {
    double[] even = new double[holes];
    for (int i = 0; i < holes; i++) {
      even[i] = first + i * (last - first) / (holes - 1);
    }
    return even;
  }

  /** So many in each stretch, evenly from end to end of it; one in its middle. */
  static double[] spread(Places places, int[] counts) {
    double[] spread = new double[Arrays.stream(counts).sum()];
    int hole = 0;
    for (int i = 0; i < counts.length; i++) {
      double[] ends = places.stretch(i);
      double[] own =
          counts[i] == 1
              ? new double[] {(ends[0] + ends[1]) / 2}
              : even(ends[0], ends[1], counts[i]);
      System.arraycopy(own, 0, spread, hole, own.length);
      hole += own.length;
    }
    return spread;
  }

  /** What a strip makes of the places wanted for the whole row. */
  static Targets on(Strip strip, double[] wanted) {
    if (strip.end() == End.OPEN) {
      return of(wanted);
    }
    double[] early = new double[strip.holes()];
    double[] late = new double[strip.holes()];
    for (int i = 0; i < early.length; i++) {
      double image = 2 * strip.centre() - wanted[wanted.length - 1 - i];
      early[i] = Math.min(wanted[i], image);
      late[i] = Math.max(wanted[i], image);
    }
    return new Targets(early, late);
  }

  /** The earlier of the two places wanted of a hole. */
  double early(int i) {
    return early[i];
  }

  /** The later of the two. */
  double late(int i) {
    return late[i];
  }

  double middle(int i) {
    return early[i] == late[i] ? early[i] : (early[i] + late[i]) / 2;
  }
}
