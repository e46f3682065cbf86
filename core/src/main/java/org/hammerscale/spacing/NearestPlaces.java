package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hammerscale.spacing.Strip.End;
import org.jspecify.annotations.Nullable;

/**
 * The layout whose holes lie as near to wanted places as a spacing allows: the greatest move is as
 * small as can be, then each hole goes as near as the others let it.
 *
 * <p>The test for one reach r puts each hole as early as spacing, places and wanted place − r let
 * it, and fails if that is beyond wanted place + r. With fixed holes it does so from each fixed
 * hole and each number that this hole may have in the row, and notes which numbers the next fixed
 * hole can get. The higher the number that a fixed hole starts with, the fewer holes stand behind
 * it up to a given one, and the earlier that one can lie; so each number of the next is tried from
 * the highest number before it only. That is a step for each hole and each fixed hole at most,
 * beside the stretches.
 *
 * <p>Halving finds the least reach. There, a chain of holes is tight between two edges, fixed holes
 * or ends of a reach, so the least reach is one of (place + steps − place), whole or half; the last
 * trial tells which, as in {@link WidestSpacing}.
 */
final class NearestPlaces {
  private final Strip strip;
  private final Targets targets;
  private final Pace pace;
  private final double slack;
  private final int holes;

  NearestPlaces(Strip strip, Targets targets, Pace pace) {
    this.strip = strip;
    this.targets = targets;
    this.pace = pace;
    this.slack = strip.slack();
    this.holes = strip.holes();
  }

  /** The least reach at which the holes fit; NaN if they do not fit at all. */
  double leastReach() {
    double lo = 0;
    double hi = 0;
    for (int i = 0; i < holes; i++) {
      hi = Math.max(hi, furthest(targets.late(i)));
      hi = Math.max(hi, furthest(targets.early(i)));
    }
    if (!fits(hi)) {
      return Double.NaN;
    }
    if (fits(0)) {
      return 0;
    }
    while (hi - lo > slack / 8) {
      double middle = (lo + hi) / 2;
      if (middle <= lo || middle >= hi) {
        break;
      }
      if (fits(middle)) {
        hi = middle;
      } else {
        lo = middle;
      }
    }
    return snapped(hi);
  }

  private double furthest(double target) {
    double most = 0;
    if (!strip.places().isEmpty()) {
      most = Math.max(strip.places().last() - target, target - strip.places().first());
    }
    for (double f : strip.fixed()) {
      most = Math.max(most, Math.abs(f - target));
    }
    return most;
  }

  private boolean fits(double reach) {
    return trial(reach, null) != null;
  }

  private double snapped(double near) {
    List<Double> reaches = new ArrayList<>();
    trial(near, reaches);
    double least = Double.POSITIVE_INFINITY;
    for (double reach : reaches) {
      if (Math.abs(reach - near) <= 4 * slack && reach < least && fits(reach)) {
        least = reach;
      }
    }
    if (least == Double.POSITIVE_INFINITY) {
      throw new IllegalStateException("no chain of holes is tight at a reach of " + near);
    }
    return least;
  }

  /** The layout at a reach that fits. */
  double[] within(double reach) {
    Spot last = trial(reach, null);
    if (last == null) {
      throw new IllegalArgumentException("no layout within a reach of " + reach);
    }
    Spot[] early = new Spot[holes];
    for (int i = holes - 1; i >= 0; i--) {
      early[i] = last;
      last = last.previous();
    }
    return settled(early, reach);
  }

  /** From the last hole back, each as near as those behind it and the early ones before it let. */
  private double[] settled(Spot[] early, double reach) {
    double[] x = new double[holes];
    for (int i = holes - 1; i >= 0; i--) {
      if (early[i].fixed()) {
        x[i] = early[i].x();
        continue;
      }
      double limit = targets.early(i) + reach;
      if (i + 1 < holes) {
        limit = Math.min(limit, x[i + 1] - pace.diagonal());
      }
      if (i + 2 < holes) {
        limit = Math.min(limit, x[i + 2] - pace.straight());
      }
      limit = Math.min(limit, mirrorLimit(i, early, x));
      double from = early[i].x();
      x[i] = strip.places().nearest(targets.middle(i), from, Math.max(from, limit));
    }
    return x;
  }

  /** The last of a half may not come too close to its own image, and that of the one before. */
  private double mirrorLimit(int i, Spot[] early, double[] x) {
    double c = strip.centre();
    if (strip.end() == End.MIRROR && i == holes - 1) {
      double before = i > 0 ? early[i - 1].x() : Double.NEGATIVE_INFINITY;
      return Math.min(c - pace.diagonal() / 2, 2 * c - pace.straight() - before);
    }
    if (strip.end() == End.MIRROR && i == holes - 2) {
      return 2 * c - pace.straight() - x[holes - 1];
    }
    return strip.end() == End.MIRROR_HOLE && i == holes - 2
        ? c - pace.straight() / 2
        : Double.POSITIVE_INFINITY;
  }

  /** The last hole of the earliest layout, or null; tells at which reaches a chain is tight. */
  private @Nullable Spot trial(double reach, @Nullable List<Double> reaches) {
    Pace moving = pace.within(reach);
    // The last fixed hole by the number of holes placed with it, and which numbers there may be.
    @Nullable Spot[] at = new @Nullable Spot[holes + 1];
    @Nullable Spot[] next = new @Nullable Spot[holes + 1];
    at[0] = Spot.NONE;
    int fewest = 0;
    int most = 0;
    for (double fixed : strip.fixed()) {
      int placed = fewest;
      int tried = fewest;
      while (placed <= most) {
        int higher = placed + 1;
        while (higher <= most && at[higher] == null) {
          higher++;
        }
        int until = higher <= most ? higher : holes;
        tried = extended(at, placed, until, fixed, moving, next, reaches);
        placed = higher;
      }
      Arrays.fill(at, fewest, most + 1, null);
      @Nullable Spot[] empty = at;
      at = next;
      next = empty;
      fewest++;
      most = tried;
      while (most >= fewest && at[most] == null) {
        most--;
      }
      while (fewest <= most && at[fewest] == null) {
        fewest++;
      }
      if (fewest > most) {
        return null;
      }
    }
    Spot last = at[most];
    for (int i = most; i < holes && last != null; i++) {
      last = landed(moving.after(last), last, i, Double.POSITIVE_INFINITY, reach, reaches);
    }
    return last != null && minds(last, reaches) ? last : null;
  }

  /**
   * Goes on from a fixed hole with so many placed; notes where the next fixed one can come with
   * numbers up to a higher one, and tells the last number tried.
   */
  private int extended(
      @Nullable Spot[] at,
      int placed,
      int until,
      double fixed,
      Pace moving,
      @Nullable Spot[] next,
      @Nullable List<Double> reaches) {
    double reach = moving.reach();
    Spot last = at[placed];
    int i = placed;
    while (i < until && last != null) {
      Spot spot = moving.after(last);
      noteFixed(reaches, spot, fixed, i);
      if (fixed >= Math.max(spot.x(), targets.late(i) - reach) - slack
          && fixed <= targets.early(i) + reach + slack) {
        next[i + 1] = Spot.fixed(fixed, last);
      }
      last = landed(spot, last, i, fixed, reach, reaches);
      i++;
    }
    return i;
  }

  /** The earliest place for a hole that may lie a step behind the last, before a fixed one. */
  private @Nullable Spot landed(
      Spot stepped, Spot last, int i, double fixed, double reach, @Nullable List<Double> reaches) {
    boolean early = targets.late(i) - reach > stepped.x();
    Spot spot = early ? Spot.early(targets.late(i), reach, last) : stepped;
    Spot landed = strip.places().land(spot);
    if (landed == null) {
      return null;
    }
    noteFree(reaches, spot, landed, i);
    boolean late = landed.x() > targets.early(i) + reach + slack;
    return late || landed.x() + pace.diagonal() > fixed + slack ? null : landed;
  }

  private boolean minds(Spot last, @Nullable List<Double> reaches) {
    if (strip.end() == End.OPEN) {
      return true;
    }
    Spot before = last.previous();
    double twice = 2 * strip.centre();
    if (strip.end() == End.MIRROR_HOLE) {
      note(reaches, 2 * before.sign(), 2 * steps(before) + pace.straight() - twice);
      return twice - before.x() >= before.x() + pace.straight() - slack;
    }
    double both = steps(last) + steps(before);
    note(reaches, 2 * last.sign(), 2 * steps(last) + pace.diagonal() - twice);
    note(reaches, last.sign() + before.sign(), both + pace.straight() - twice);
    return twice - last.x() >= last.x() + pace.diagonal() - slack
        && twice - last.x() >= before.x() + pace.straight() - slack;
  }

  private void noteFixed(@Nullable List<Double> reaches, Spot spot, double fixed, int i) {
    if (reaches != null) {
      note(reaches, spot.sign(), steps(spot) - fixed);
      note(reaches, -1, targets.late(i) - fixed);
      note(reaches, -1, fixed - targets.early(i));
    }
  }

  private void noteFree(@Nullable List<Double> reaches, Spot spot, Spot landed, int i) {
    if (reaches != null) {
      note(reaches, spot.sign(), steps(spot) - strip.places().last(landed));
      note(reaches, landed.sign() - 1, steps(landed) - targets.early(i));
    }
  }

  /** A hole's place but for the reach. */
  private double steps(Spot spot) {
    return spot.anchor() + pace.length(spot.diagonals(), spot.straights());
  }

  /** Notes the reach r at which sign r + rest is zero. */
  private static void note(@Nullable List<Double> reaches, int sign, double rest) {
    if (reaches != null && sign < 0 && rest > Double.NEGATIVE_INFINITY) {
      reaches.add(rest / -sign);
    }
  }
}
