package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A small row in whole millimetres, from which the library's row is made, and which can be answered
 * by trying every layout on the millimetre grid. The grid holds an optimum where the row was made
 * for it: see {@link #ofPoints} and {@link #ofStretches}.
 */
record TrialRow(
    int length,
    int start,
    int end,
    List<int[]> closed,
    int holes,
    List<Integer> fixed,
    int apart,
    double centre,
    List<Integer> wanted,
    int least,
    int mark) {

  /**
   * Holes may lie on a few whole millimetres only: single points between touching closed stretches.
   */
  static TrialRow ofPoints(Random random) {
    int length = 8 + random.nextInt(17);
    double centre =
        random.nextInt(3) == 0 ? (length / 2 + random.nextInt(5) - 2) / 1.0 : Double.NaN;
    if (random.nextBoolean()) {
      centre += 0.5;
    }
    List<int[]> closed = new ArrayList<>();
    int points = 3 + random.nextInt(7);
    for (int i = 0; i < length; i++) {
      boolean forbidden = i > 0 && random.nextInt(length) >= points;
      closed.add(forbidden ? new int[] {i - 1, i + 1} : new int[] {i, i + 1});
    }
    if (random.nextInt(4) == 0) {
      closed.addAll(closed.stream().map(k -> image(k, length)).toList());
    }
    return filled(random, length, 0, length, closed, 1 + random.nextInt(5), centre, 1);
  }

  /**
   * Edges on multiples of six, up to four holes, one row: the widest spacing is a difference of
   * edges over at most three, the least move half a difference of even numbers.
   */
  static TrialRow ofStretches(Random random) {
    int length = 6 * (5 + random.nextInt(6));
    double centre = random.nextInt(3) == 0 ? length / 2 + 3 * (random.nextInt(5) - 2) : Double.NaN;
    List<int[]> closed = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      int from = 6 * random.nextInt(length / 6);
      closed.add(new int[] {from, from + 6 * random.nextInt(3)});
    }
    int start = 6 * random.nextInt(2);
    int end = length - 6 * random.nextInt(2);
    return filled(random, length, start, end, closed, 1 + random.nextInt(4), centre, 6);
  }

  /** Edges on whole numbers, holes on every second or later one only; mostly one row. */
  static TrialRow ofMarks(Random random) {
    int length = 10 + random.nextInt(21);
    double centre = random.nextInt(3) == 0 ? (length + random.nextInt(5) - 2) / 2.0 : Double.NaN;
    List<int[]> closed = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      int from = random.nextInt(length);
      closed.add(new int[] {from, from + random.nextInt(9)});
    }
    int start = random.nextInt(4);
    int end = length - random.nextInt(4);
    int step = 1 + random.nextInt(2);
    TrialRow row = filled(random, length, start, end, closed, 1 + random.nextInt(4), centre, step);
    return row.onMarks(2 + random.nextInt(4));
  }

  TrialRow onMarks(int newMark) {
    return new TrialRow(
        length, start, end, closed, holes, fixed, apart, centre, wanted, least, newMark);
  }

  TrialRow unsymmetric() {
    return new TrialRow(
        length, start, end, closed, holes, fixed, apart, Double.NaN, wanted, least, mark);
  }

  private static TrialRow filled(
      Random random,
      int length,
      int start,
      int end,
      List<int[]> closed,
      int holes,
      double centre,
      int step) {
    List<Integer> fixed = new ArrayList<>();
    for (int i = random.nextInt(4) - 1; i > 0 && fixed.size() < holes; i--) {
      int place = step * random.nextInt(length / step + 1);
      double image = Double.isNaN(centre) ? place : 2 * centre - place;
      boolean room = image == place || fixed.size() + 2 <= holes;
      if (room && image >= 0 && image <= length && !fixed.contains(place)) {
        fixed.add(place);
        if (image != place) {
          fixed.add((int) image);
        }
      }
    }
    List<Integer> wanted =
        IntStream.generate(() -> 2 * random.nextInt(length / 2 + 1))
            .limit(holes)
            .sorted()
            .boxed()
            .toList();
    int apart = step == 1 && random.nextInt(2) == 0 ? 1 + random.nextInt(9) : 0;
    boolean abreast = apart > 0 && random.nextInt(2) == 0;
    int least = abreast ? apart : 2 * (1 + random.nextInt(step + 2));
    return new TrialRow(length, start, end, closed, holes, fixed, apart, centre, wanted, least, 1);
  }

  /** What it is, told whole. */
  @Override
  public String toString() {
    return holes
        + " holes along "
        + length
        + " from "
        + start
        + " to "
        + end
        + ", closed "
        + closed.stream().map(Arrays::toString).toList()
        + ", fixed "
        + fixed
        + ", rows "
        + apart
        + " apart, mirrored about "
        + centre
        + ", wanted "
        + wanted
        + ", least "
        + least
        + ", marks every "
        + mark;
  }

  private static int[] image(int[] stretch, int length) {
    return new int[] {length - stretch[1], length - stretch[0]};
  }

  TrialRow mirrored() {
    return new TrialRow(
        length,
        length - end,
        length - start,
        closed.stream().map(k -> image(k, length)).toList(),
        holes,
        fixed.stream().map(f -> length - f).toList(),
        apart,
        length - centre,
        IntStream.range(0, holes).mapToObj(i -> length - wanted.get(holes - 1 - i)).toList(),
        least,
        mark);
  }

  /** The row without its aim. */
  HoleRow row(TrialUnit unit) {
    HoleRow row =
        HoleRow.along(unit.of(length))
            .holes(holes)
            .startingFrom(unit.of(start))
            .endingBefore(unit.of(length - end));
    for (int[] k : closed) {
      row = row.missing(ClosedStretch.between(unit.of(k[0]), unit.of(k[1])));
    }
    for (int f : fixed) {
      row = row.usingAnyway(unit.of(f));
    }
    row = Double.isNaN(centre) ? row : row.symmetricAbout(unit.of(centre));
    return apart == 0 ? row : row.inTwoRows(unit.of(apart));
  }

  HoleRow nearest(TrialUnit unit) {
    return row(unit).leastSpacing(unit.of(least)).nearestTo(wanted.stream().map(unit::of).toList());
  }

  HoleRow row() {
    return row(TrialUnit.whole());
  }

  HoleRow nearest() {
    return nearest(TrialUnit.whole());
  }

  /** Where holes may lie, found point by point: runs of halves with nothing closed between. */
  List<double[]> stretches() {
    List<double[]> stretches = new ArrayList<>();
    for (int i = 2 * start; i <= 2 * end; i++) {
      double x = i / 2.0;
      if (allows(x)) {
        if (i > 2 * start && allows(x - 0.25) && allows(x - 0.5)) {
          stretches.get(stretches.size() - 1)[1] = x;
        } else {
          stretches.add(new double[] {x, x});
        }
      }
    }
    return stretches;
  }

  /** Whether no hole may lie between two of the grid's points. */
  boolean onPoints() {
    return IntStream.range(0, length).noneMatch(i -> allows(i + 0.5));
  }

  private boolean isPlace(double x) {
    return x % mark == 0 && allows(x);
  }

  /** Whether a hole may lie there, the fixed ones apart. */
  boolean allows(double x) {
    return x >= start && x <= end && closed.stream().noneMatch(k -> k[0] < x && x < k[1]);
  }

  /** The least distance between two holes, slantwise between the rows. */
  double spacing(double[] x) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < x.length; i++) {
      least = Math.min(least, Math.hypot(x[i] - x[i - 1], apart));
      least = i < 2 ? least : Math.min(least, x[i] - x[i - 2]);
    }
    return least;
  }

  /** The even row from end to end, or about the mirror line; one hole in the middle. */
  double[] even() {
    if (holes == 1) {
      return new double[] {Double.isNaN(centre) ? length / 2.0 : centre};
    }
    double half = Math.min(centre - start, end - centre);
    double from = Double.isNaN(centre) ? start : centre - half;
    double to = Double.isNaN(centre) ? end : centre + half;
    return IntStream.range(0, holes)
        .mapToDouble(i -> from + i * (to - from) / (holes - 1))
        .toArray();
  }

  double move(double[] x) {
    return move(x, wanted.stream().mapToDouble(t -> t).toArray());
  }

  static double move(double[] x, double[] from) {
    double most = 0;
    for (int i = 0; i < x.length; i++) {
      most = Math.max(most, Math.abs(x[i] - from[i]));
    }
    return most;
  }

  /** Tries all layouts on the grid with a number of holes: the widest spacing and least move. */
  Best best(int number) {
    Best best = new Best();
    extend(new double[number], 0, points(), 0, best);
    return best;
  }

  private double[] points() {
    return DoubleStream.concat(
            IntStream.rangeClosed(0, length).mapToDouble(i -> i).filter(this::isPlace),
            fixed.stream().mapToDouble(f -> f))
        .sorted()
        .distinct()
        .toArray();
  }

  /** Tries all layouts on the grid of at least a spacing: the least move from some places. */
  double leastMove(double spacing, double[] from) {
    Best best = new Best();
    best.from = from;
    best.atLeast = spacing;
    extend(new double[holes], 0, points(), 0, best);
    return best.move;
  }

  private void extend(double[] x, int placed, double[] points, int from, Best best) {
    if (placed == x.length) {
      consider(x, best);
      return;
    }
    for (int i = from; i < points.length; i++) {
      x[placed] = points[i];
      // A fixed hole may not be passed over, and only fixed ones may lie in a closed stretch.
      if (placed > 0 && skipsFixed(x[placed - 1], x[placed])) {
        return;
      }
      extend(x, placed + 1, points, i, best);
    }
  }

  private boolean skipsFixed(double from, double to) {
    return fixed.stream().anyMatch(f -> from < f && f < to);
  }

  private void consider(double[] x, Best best) {
    for (int f : fixed) {
      long here = DoubleStream.of(x).filter(y -> y == f).count();
      if (here == 0 || (here > 1 && !isPlace(f))) {
        return;
      }
    }
    for (int i = 0; i < x.length && !Double.isNaN(centre); i++) {
      if (x[i] + x[x.length - 1 - i] != 2 * centre) {
        return;
      }
    }
    best.found = true;
    double spacing = spacing(x);
    if (x.length > 1 && spacing > best.spacing) {
      best.spacing = spacing;
    }
    if (x.length == holes && spacing >= (best.from == null ? least : best.atLeast)) {
      best.move = Math.min(best.move, best.from == null ? move(x) : move(x, best.from));
    }
  }

  static final class Best {
    boolean found;
    double spacing;
    double move = Double.POSITIVE_INFINITY;
    double atLeast;
    double @Nullable [] from;
  }
}
