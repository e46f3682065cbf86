package org.hammerscale.benchmarks;

import static org.hammerscale.units.Measures.millimetres;

import javax.measure.quantity.Length;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.units.Measure;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;

/**
 * What it costs to place holes between seams, and how that grows: 12 holes and 20 seams must take
 * at most 50 µs, 200 holes and 500 closed stretches at most 5 ms.
 */
public class HoleLayoutBenchmark extends SteadyBenchmark {
  /** Holes, closed stretches, and how many of the holes are fixed. */
  @Param({"12 20 0", "12 20 4", "25 60 0", "50 125 0", "100 250 0", "200 500 0", "200 500 20"})
  private String size = "12 20 0";

  private HoleRow row = HoleRow.along(millimetres(1));
  private HoleRow nearest = row;
  private HoleRow staggered = row;

  /** Closed stretches of uneven width, unevenly spread, so that no two of them are alike. */
  @Setup
  public void layOut() {
    String[] numbers = size.split(" ", -1);
    int holes = Integer.parseInt(numbers[0]);
    int seams = Integer.parseInt(numbers[1]);
    int fixed = Integer.parseInt(numbers[2]);
    double length = 100.0 * holes;
    row =
        HoleRow.along(millimetres(length))
            .holes(holes)
            .startingFrom(millimetres(20))
            .endingBefore(millimetres(20));
    double pitch = length / (seams + 1);
    for (int i = 1; i <= seams; i++) {
      double centre = pitch * (i + 0.3 * Math.sin(7.0 * i));
      double clear = pitch * (0.15 + 0.05 * Math.cos(5.0 * i));
      row = row.missing(ClosedStretch.seamAt(millimetres(centre)).clear(millimetres(clear)));
    }
    for (int i = 1; i <= fixed; i++) {
      row = row.usingAnyway(millimetres(length * i / (fixed + 1.0)));
    }
    Measure<Length> most = row.widestSpacing();
    nearest = row.leastSpacing(most.multiply(0.9)).nearestToEven();
    staggered = row.inTwoRows(millimetres(30));
  }

  @Benchmark
  public HoleLayout widestSpacing() {
    return row.layout();
  }

  @Benchmark
  public HoleLayout nearestToEven() {
    return nearest.layout();
  }

  @Benchmark
  public HoleLayout inTwoRows() {
    return staggered.layout();
  }

  @Benchmark
  public boolean feasible() {
    return nearest.isFeasible();
  }
}
