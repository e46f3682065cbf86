package org.hammerscale.spacing;

import static org.hammerscale.units.Measures.millimetres;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * A small row in whole millimetres, from which the library's row is made, and which can be answered
 * by trying every layout on the millimetre grid. The grid holds an optimum where the row was made
 * for it: see {@link #ofPoints} and {@link #ofStretches}.
 */
record TrialRow(
    int length,
    int start,
    int end,
    List<int[]> keepOuts,
    int holes,
    List<Integer> fixed,
    int apart,
    double centre,
    List<Integer> wanted,
    int least) {

  /** Holes may lie on a few whole millimetres only: single points between touching keep-outs. */
  static TrialRow ofPoints(Random random) {
    int length = 8 + random.nextInt(17);
    double centre =
        random.nextInt(3) == 0 ? (length / 2 + random.nextInt(5) - 2) / 1.0 : Double.NaN;
    if (random.nextBoolean()) {
      centre += 0.5;
    }
    List<int[]> keepOuts = new ArrayList<>();
    int points = 3 + random.nextInt(7);
    for (int i = 0; i < length; i++) {
      boolean forbidden = i > 0 && random.nextInt(length) >= points;
      keepOuts.add(forbidden ? new int[] {i - 1, i + 1} : new int[] {i, i + 1});
    }
    return filled(random, length, 0, length, keepOuts, 1 + random.nextInt(5), centre, 1);
  }

  /**
   * Edges on multiples of six, up to four holes, one row: the widest spacing is a difference of
   * edges over at most three, the least move half a difference of even numbers.
   */
  static TrialRow ofStretches(Random random) {
    int length = 6 * (5 + random.nextInt(6));
    double centre = random.nextInt(3) == 0 ? length / 2 + 3 * (random.nextInt(5) - 2) : Double.NaN;
    List<int[]> keepOuts = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      int from = 6 * random.nextInt(length / 6);
      keepOuts.add(new int[] {from, from + 6 * random.nextInt(3)});
    }
    int start = 6 * random.nextInt(2);
    int end = length - 6 * random.nextInt(2);
    return filled(random, length, start, end, keepOuts, 1 + random.nextInt(4), centre, 6);
  }

  private static TrialRow filled(
      Random random,
      int length,
      int start,
      int end,
      List<int[]> keepOuts,
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
    int apart = step == 1 && random.nextInt(2) == 0 ? 1 + random.nextInt(6) : 0;
    int least = 2 * (1 + random.nextInt(step + 2));
    return new TrialRow(length, start, end, keepOuts, holes, fixed, apart, centre, wanted, least);
  }

  TrialRow mirrored() {
    return new TrialRow(
        length,
        length - end,
        length - start,
        keepOuts.stream().map(k -> new int[] {length - k[1], length - k[0]}).toList(),
        holes,
        fixed.stream().map(f -> length - f).toList(),
        apart,
        length - centre,
        IntStream.range(0, holes).mapToObj(i -> length - wanted.get(holes - 1 - i)).toList(),
        least);
  }

  /** The row without its aim, in millimetres. */
  HoleRow row() {
    return row(x -> millimetres(x));
  }

  HoleRow row(DoubleFunction<Measure<Length>> unit) {
    HoleRow row =
        HoleRow.along(unit.apply(length))
            .holes(holes)
            .startingFrom(unit.apply(start))
            .endingBefore(unit.apply(length - end));
    for (int[] k : keepOuts) {
      row = row.missing(KeepOut.between(unit.apply(k[0]), unit.apply(k[1])));
    }
    for (int f : fixed) {
      row = row.usingAnyway(unit.apply(f));
    }
    row = Double.isNaN(centre) ? row : row.symmetricAbout(unit.apply(centre));
    return apart == 0 ? row : row.inTwoRows(unit.apply(apart));
  }

  HoleRow nearest(DoubleFunction<Measure<Length>> unit) {
    return row(unit)
        .leastSpacing(unit.apply(least))
        .nearestTo(wanted.stream().map(t -> unit.apply(t)).toList());
  }

  HoleRow nearest() {
    return nearest(x -> millimetres(x));
  }

  /** Whether a hole may lie there, the fixed ones apart. */
  boolean allows(double x) {
    return x >= start && x <= end && keepOuts.stream().noneMatch(k -> k[0] < x && x < k[1]);
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

  double move(double[] x) {
    double most = 0;
    for (int i = 0; i < x.length; i++) {
      most = Math.max(most, Math.abs(x[i] - wanted.get(i)));
    }
    return most;
  }

  /** Tries all layouts on the grid with a number of holes: the widest spacing and least move. */
  Best best(int number) {
    Best best = new Best();
    double[] points =
        DoubleStream.concat(
                IntStream.rangeClosed(0, length).mapToDouble(i -> i).filter(this::allows),
                fixed.stream().mapToDouble(f -> f))
            .sorted()
            .distinct()
            .toArray();
    extend(new double[number], 0, points, 0, best);
    return best;
  }

  private void extend(double[] x, int placed, double[] points, int from, Best best) {
    if (placed == x.length) {
      consider(x, best);
      return;
    }
    for (int i = from; i < points.length; i++) {
      x[placed] = points[i];
      // A fixed hole may not be passed over, and only fixed ones may lie in a keep-out.
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
      if (here == 0 || (here > 1 && !allows(f))) {
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
    if (x.length == holes && spacing >= least && move(x) < best.move) {
      best.move = move(x);
    }
  }

  static final class Best {
    boolean found;
    double spacing;
    double move = Double.POSITIVE_INFINITY;
  }
}
