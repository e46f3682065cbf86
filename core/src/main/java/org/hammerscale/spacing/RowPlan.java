package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * What a {@link HoleRow} has been told, in its unit. Filled in while a row is made, and never
 * changed afterwards.
 */
final class RowPlan {
  /** Two places closer than this part of the leaf are the same: noise of the arithmetic. */
  private static final double NOISE = 0x1p-40;

  /** More holes than any shop drills in a row; what takes no more is answered at once. */
  static final int MOST_HOLES = 1000;

  /** Of closed stretches, which no leaf has. */
  private static final int MOST_CLOSED = 2000;

  final Unit<Length> unit;
  final double length;

  /** Length of the shortest leaf that shares the row. */
  double shortest;

  double start = Double.NaN;
  double end = Double.NaN;
  int holes;
  double least;
  double apart;
  double centre = Double.NaN;
  boolean nearest;
  double @Nullable [] places;
  List<ClosedStretch> closed = List.of();
  List<Double> fixed = List.of();

  /** The rule whose marks the holes are to lie on, the fixed ones apart. */
  @Nullable Graduation<Length> rule;

  /** Those of the fixed holes that may lie in a closed stretch. */
  List<Double> anyway = List.of();

  RowPlan(Unit<Length> unit, double length) {
    this.unit = unit;
    this.length = length;
    this.shortest = length;
  }

  RowPlan copy() {
    RowPlan copy = new RowPlan(unit, length);
    copy.shortest = shortest;
    copy.start = start;
    copy.end = end;
    copy.holes = holes;
    copy.least = least;
    copy.apart = apart;
    copy.centre = centre;
    copy.nearest = nearest;
    copy.places = places;
    copy.closed = closed;
    copy.fixed = fixed;
    copy.anyway = anyway;
    copy.rule = rule;
    return copy;
  }

  boolean isMirrored() {
    return !Double.isNaN(centre);
  }

  /** Whether the widest spacing is the aim; one hole has none. */
  boolean isForWidest() {
    return !nearest && holes > 1;
  }

  double slack() {
    return length * NOISE;
  }

  Measure<Length> measure(double value) {
    return Measure.of(value, unit);
  }

  /** The spacing at which a chain just fits. */
  double spacing(Chain chain) {
    return chain.pace(apart, slack()).straight();
  }

  /** Misses these too; one that two leaves share is missed once. */
  void close(List<ClosedStretch> more) {
    Set<ClosedStretch> all = new LinkedHashSet<>(closed);
    all.addAll(more);
    Arguments.count("closed stretches", all.size(), 0, MOST_CLOSED, "join those that overlap");
    closed = List.copyOf(all);
  }

  /** Where the holes are wanted: as asked, or evenly from end to end. */
  double[] wanted() {
    if (places != null) {
      return places;
    }
    if (holes == 1) {
      return new double[] {isMirrored() ? centre : length / 2};
    }
    if (!isMirrored()) {
      return Targets.even(start, end, holes);
    }
    double half = Math.min(centre - start, end - centre);
    return Targets.even(centre - half, centre + half, holes);
  }

  Places free() {
    List<double[]> forbidden = new ArrayList<>(closed.size());
    for (ClosedStretch stretch : closed) {
      forbidden.add(new double[] {stretch.from().in(unit), stretch.to().in(unit)});
    }
    return Places.between(start, end, forbidden, slack());
  }

  /** The number of holes in each open stretch, checked; one number stands for all. */
  int[] boardByBoard(int[] counts) {
    checkEndsTold();
    Places free = free();
    int[] each = counts.clone();
    if (counts.length == 1) {
      each = new int[free.size()];
      Arrays.fill(each, counts[0]);
    }
    if (each.length != free.size() || Arrays.stream(each).anyMatch(count -> count < 0)) {
      throw new IllegalArgumentException(
          "counts must be one of 0 or more for each open stretch, which are "
              + RowNames.stretches(this, free)
              + ", were "
              + Arrays.stream(counts).mapToObj(String::valueOf).collect(Collectors.joining(", "))
              + "; count them from the pin on");
    }
    return each;
  }

  /** The problem in bare numbers, checked. */
  Strip strip() {
    checkTold();
    Places free = free();
    double[] checked = checkedFixed(free);
    return Strip.of(rule == null ? free : free.on(marks(rule)), holes, checked, apart);
  }

  Marks marks(Graduation<Length> ofRule) {
    return Marks.of(ofRule, measure(slack()));
  }

  /** The same on the marks of a rule. */
  RowPlan on(Graduation<Length> newRule) {
    RowPlan marked = copy();
    marked.rule = newRule;
    return marked;
  }

  /** Whether the image of each mark in the mirror line is a mark. */
  boolean hasImagesOn(Graduation<Length> ofRule) {
    return marks(ofRule).has(2 * centre);
  }

  /** The same without its symmetry, its holes wanted where they were. */
  RowPlan unsymmetric() {
    RowPlan free = copy();
    free.places = wanted();
    free.centre = Double.NaN;
    return free;
  }

  /** Refuses to answer before everything has been told. */
  void checkTold() {
    told(holes > 0, "holes", "how many there are to be", "holes(5)");
    checkEndsTold();
    if (nearest && !(least > 0)) {
      told(false, "least spacing", "how close holes may come", "leastSpacing(…)");
    }
    double[] wanted = places;
    if (wanted != null && wanted.length != holes) {
      throw new IllegalArgumentException(
          "places must be as many as the holes, "
              + holes
              + ", were "
              + wanted.length
              + "; name one for each hole");
    }
  }

  void checkEndsTold() {
    told(!Double.isNaN(start), "start", "how far from the pin the row begins", "startingFrom(…)");
    told(!Double.isNaN(end), "end", "how far before the tip the row ends", "endingBefore(…)");
  }

  private static void told(boolean told, String what, String meaning, String step) {
    if (!told) {
      throw new IllegalStateException(
          what + " must be given: say " + meaning + " with " + step + " before asking");
    }
  }

  private double[] checkedFixed(Places free) {
    String contradiction = contradiction(free);
    if (contradiction != null) {
      throw new IllegalArgumentException(contradiction);
    }
    return sortedFixed();
  }

  /** The fixed holes in rising order. */
  double[] sortedFixed() {
    return fixed.stream().mapToDouble(Double::doubleValue).sorted().toArray();
  }

  /** What is wrong with the fixed holes, or null. */
  @Nullable String contradiction(Places free) {
    double[] sorted = sortedFixed();
    if (sorted.length > holes) {
      return "fixed holes must be no more than the holes, "
          + holes
          + ", were "
          + sorted.length
          + "; ask for more holes";
    }
    for (int i = 0; i < sorted.length; i++) {
      double f = sorted[i];
      if (i > 0 && f - sorted[i - 1] <= slack()) {
        return "fixed hole at " + measure(f) + " is named twice; name it once";
      }
      if (f > shortest + slack()) {
        return "fixed hole must lie on every leaf of a shared row, the shortest "
            + measure(shortest)
            + " long, was at "
            + measure(f)
            + "; leave it out, or lengthen that leaf";
      }
      if (!free.contains(f) && anyway.stream().noneMatch(x -> Math.abs(x - f) <= slack())) {
        return "fixed hole must not lie in a closed stretch, was at "
            + measure(f)
            + " in the "
            + RowNames.inTheWay(this, f)
            + "; move it, or keep it with usingAnyway";
      }
      if (isMirrored() && !hasImage(sorted, f)) {
        return "fixed holes of a symmetric row must be mirror images, was one at "
            + measure(f)
            + " with none at "
            + measure(2 * centre - f)
            + "; add its image, or give up the symmetry";
      }
    }
    return null;
  }

  /** This row, minding also what another minds. */
  RowPlan and(RowPlan other) {
    RowPlan both = copy();
    both.shortest = Math.min(shortest, other.measure(other.shortest).in(unit));
    both.start = Math.max(start, other.measure(other.start).in(unit));
    both.end = Math.min(end, other.measure(other.end).in(unit));
    both.least = Math.max(least, other.measure(other.least).in(unit));
    both.close(other.closed);
    both.fixed = merged(fixed, other, other.fixed);
    both.anyway = merged(anyway, other, other.anyway);
    return both;
  }

  /** With more holes; two that are the same but for rounding are one. */
  private List<Double> merged(List<Double> own, RowPlan other, List<Double> more) {
    List<Double> all = new ArrayList<>(own);
    for (double place : more) {
      double x = other.measure(place).in(unit);
      if (all.stream().noneMatch(y -> Math.abs(x - y) <= slack())) {
        all.add(x);
      }
    }
    return checked(all);
  }

  private static List<Double> checked(List<Double> fixed) {
    Arguments.count(
        "fixed holes", fixed.size(), 0, MOST_HOLES, "divide the leaf into several rows");
    return List.copyOf(fixed);
  }

  /** Uses one hole more. */
  void fix(double place, boolean inClosed) {
    List<Double> all = new ArrayList<>(fixed);
    all.add(place);
    fixed = checked(all);
    if (inClosed) {
      List<Double> more = new ArrayList<>(anyway);
      more.add(place);
      anyway = List.copyOf(more);
    }
  }

  private boolean hasImage(double[] sorted, double f) {
    return Arrays.stream(sorted).anyMatch(x -> Math.abs(2 * centre - f - x) <= 4 * slack());
  }
}
