package org.hammerscale.spacing;

import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * What a row of pickets is asked for, in bare numbers of the span's unit, level. A gap that noise
 * parts from the limit is the limit.
 *
 * @param unit of the span
 * @param span the clear span S between the posts, level
 * @param widths of the pickets, one pattern of them
 * @param limit the opening that is asked for, less the tolerance; 0 if none was told
 * @param strict whether the limit itself is too wide
 * @param count of pickets if the caller told it; else −1
 * @param whole whether only whole patterns will do
 * @param slope what a level length becomes along the raked rail
 */
record PicketPlan(
    Unit<Length> unit,
    double span,
    List<Double> widths,
    double limit,
    boolean strict,
    int count,
    boolean whole,
    double slope) {
  /** No rail of a shop has more. */
  static final int MOST = 5000;

  private static final double NOISE = 1e-11;

  PicketPlan withWidths(List<Double> all) {
    return new PicketPlan(unit, span, all, limit, strict, count, whole, slope);
  }

  PicketPlan withLimit(double opening, boolean tooWide) {
    return new PicketPlan(unit, span, widths, opening, tooWide, count, whole, slope);
  }

  PicketPlan withCount(int pickets, boolean patterns) {
    return new PicketPlan(unit, span, widths, limit, strict, pickets, patterns, slope);
  }

  PicketPlan withSlope(double raked) {
    return new PicketPlan(unit, span, widths, limit, strict, count, whole, raked);
  }

  /** Equal gaps between so many. */
  double gap(int pickets) {
    return (span - sum(pickets)) / (pickets + 1);
  }

  /** The widths of the first so many, added up. */
  double sum(int pickets) {
    double pattern = 0;
    for (double width : widths) {
      pattern += width;
    }
    int patterns = pickets / widths.size();
    double sum = pattern * patterns;
    for (int i = 0; i < pickets % widths.size(); i++) {
      sum += widths.get(i);
    }
    return sum;
  }

  double width(int picket) {
    return widths.get(picket % widths.size());
  }

  /** Whether an opening is narrow enough. */
  boolean stops(double opening) {
    return strict ? opening < limit * (1 - NOISE) : opening <= limit * (1 + NOISE);
  }

  /** The least number whose equal gaps are narrow enough, or −1 if pickets fill the span first. */
  int least() {
    int step = whole ? widths.size() : 1;
    for (int n = 0; n <= MOST; n += step) {
      if (gap(n) < 0) {
        return -1;
      }
      if (stops(gap(n))) {
        return n;
      }
    }
    return -1;
  }

  /** The near edges of so many with equal gaps, along the rail. */
  double[] even(int pickets) {
    double[] edges = new double[pickets];
    double gap = gap(pickets);
    double before = 0;
    for (int i = 0; i < pickets; i++) {
      edges[i] = slope * (gap * (i + 1) + before);
      before += width(i);
    }
    return edges;
  }

  Measure<Length> measure(double value) {
    return Measure.of(value, unit);
  }

  /** The edges on the marks of a rule, or null if so many do not stand apart on them. */
  double @Nullable [] onMarks(int pickets, Graduation<Length> rule) {
    return new PicketMarks(this, pickets, rule.step().in(unit)).edges();
  }
}
