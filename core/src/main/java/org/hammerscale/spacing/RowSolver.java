package org.hammerscale.spacing;

import org.jspecify.annotations.Nullable;

/**
 * Answers a {@link RowPlan}: which spacing, how many holes, and the one layout among equally good
 * ones.
 *
 * <p>The one layout: at the spacing found, holes go as near to the even row as they can. If the
 * line and all that lies on it is its own mirror image, a mirrored layout is taken where it is as
 * good. Otherwise the line is read from that end from which it comes first in a dictionary of
 * lines, so that the mirrored line is read from its other end and gets the mirrored layout. Where a
 * line is its own image and has no mirrored layout that is as good, holes go towards the pin.
 */
final class RowSolver {
  private final RowPlan plan;
  private final Strip whole;
  private final @Nullable Strip strip;

  RowSolver(RowPlan plan) {
    this.plan = plan;
    this.whole = plan.strip();
    this.strip = plan.isMirrored() ? whole.half(plan.centre, plan.holes) : whole;
  }

  /** Whether the holes fit as asked; without a least spacing, no two in the same place. */
  boolean isFeasible() {
    boolean spaced = plan.least > 0 || plan.holes == 1;
    return spaced ? fits(plan.least) : strip != null && new WidestSpacing(strip).fitsApart();
  }

  /** Whether the holes fit at a spacing that was told. */
  boolean fits(double spacing) {
    return fits(told(spacing));
  }

  private boolean fits(Pace pace) {
    return strip != null && new WidestSpacing(strip).fits(pace);
  }

  /**
   * The pace of a spacing that was told. In two rows the last bit of a spacing is more than noise
   * along the strap, so the holes may come closer than told by noise.
   */
  private Pace told(double spacing) {
    Pace pace = Pace.of(spacing, plan.apart, plan.slack());
    return plan.apart == 0 || fits(pace) ? pace : allowingNoise(spacing);
  }

  private Pace allowingNoise(double spacing) {
    double noise = plan.apart == 0 ? 0 : plan.slack();
    return Pace.of(spacing - noise, plan.apart, plan.slack());
  }

  /** The chain that decides the widest spacing; null if there is no room. */
  @Nullable Chain widest() {
    return strip == null ? null : new WidestSpacing(strip).solve();
  }

  /** How many holes fit at a spacing of more than zero. */
  int most(double spacing) {
    Pace pace = allowingNoise(spacing);
    if (!plan.isMirrored()) {
      return new WidestSpacing(whole).most(pace);
    }
    Strip even = whole.half(plan.centre, 2);
    Strip odd = whole.half(plan.centre, 1);
    int most = even == null ? 0 : 2 * new WidestSpacing(even).most(pace);
    return odd == null ? most : Math.max(most, 2 * new WidestSpacing(odd).most(pace) - 1);
  }

  /** The layout as asked for, given what decides the widest spacing; null if there is none. */
  double @Nullable [] layout(@Nullable Chain widest) {
    boolean none = plan.isForWidest() && widest == null;
    if (none || !fits(plan.least)) {
      return null;
    }
    return layout(widest == null ? told(plan.least) : widest.pace(plan.apart, plan.slack()));
  }

  private double[] layout(Pace pace) {
    double[] wanted = plan.wanted();
    if (strip == null) {
      throw new IllegalArgumentException("no layout without a half");
    }
    if (plan.isMirrored()) {
      return onEdges(strip.unfolded(nearest(strip, wanted, pace), plan.holes));
    }
    double sum = whole.sum();
    Strip image = whole.mirrored(sum);
    double[] wantedImage = Strip.reversed(wanted, sum);
    int order = whole.compareTo(image);
    for (int i = 0; i < wanted.length && order == 0; i++) {
      order = whole.places().compare(wanted[i], wantedImage[i]);
    }
    if (order == 0) {
      double[] mirrored = mirrored(wanted, pace, sum / 2);
      if (mirrored != null) {
        return mirrored;
      }
    }
    return order <= 0
        ? nearest(whole, wanted, pace)
        : onEdges(Strip.reversed(nearest(image, wantedImage, pace), sum));
  }

  /** A mirrored layout of a line that is its own image, if it is as good as any. */
  private double @Nullable [] mirrored(double[] wanted, Pace pace, double centre) {
    Strip half = whole.half(centre, plan.holes);
    if (half == null || !new WidestSpacing(half).fits(pace)) {
      return null;
    }
    if (plan.nearest) {
      double best = new NearestPlaces(whole, Targets.of(wanted), pace).leastReach();
      double own = new NearestPlaces(half, Targets.on(half, wanted), pace).leastReach();
      if (!(own <= best + 4 * whole.slack())) {
        return null;
      }
    }
    return onEdges(half.unfolded(nearest(half, wanted, pace), plan.holes));
  }

  private static double[] nearest(Strip strip, double[] wanted, Pace pace) {
    NearestPlaces nearest = new NearestPlaces(strip, Targets.on(strip, wanted), pace);
    return nearest.within(nearest.leastReach());
  }

  /** Puts back on edges and fixed holes what mirroring has moved off by noise. */
  private double[] onEdges(double[] x) {
    for (int i = 0; i < x.length; i++) {
      x[i] = whole.places().onEdge(x[i]);
      for (double f : whole.fixed()) {
        x[i] = Math.abs(f - x[i]) <= whole.slack() ? f : x[i];
      }
    }
    return x;
  }
}
