package org.hammerscale.benchmarks;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs all benchmarks and prints them as one table: nanoseconds, bytes, and each beside what it
 * must reach. Ratios hold within one run on one machine; single nanoseconds do not.
 */
public final class RatioTable {
  private final Map<String, Double> times = new HashMap<>();
  private final Map<String, Double> bytes = new HashMap<>();

  private RatioTable() {}

  /**
   * Runs the benchmarks and prints the table.
   *
   * @param args none
   * @throws RunnerException if a benchmark fails
   */
  public static void main(String[] args) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include("org.hammerscale.benchmarks")
                    .addProfiler(GCProfiler.class)
                    .build())
            .run();
    RatioTable table = new RatioTable();
    results.forEach(table::add);
    table.print();
  }

  private void add(RunResult result) {
    BenchmarkParams params = result.getParams();
    String name = params.getBenchmark().replaceFirst(".*\\.", "");
    for (String key : params.getParamsKeys()) {
      name += " " + params.getParam(key);
    }
    String row = name;
    times.put(row, result.getPrimaryResult().getScore());
    result
        .getSecondaryResults()
        .forEach(
            (key, secondary) -> {
              if (key.endsWith("gc.alloc.rate.norm")) {
                bytes.put(row, secondary.getScore());
              }
            });
  }

  private void print() {
    System.out.println();
    System.out.println("| benchmark | ns | B | × bare | must reach | |");
    System.out.println("|---|---|---|---|---|---|");
    row("bareDoubles", "the floor", true);
    bare("measure", 4.5);
    bare("measureInchAndMillimetre", 6);
    bare("measureReadOut", 2.5);
    nanoseconds("measureFromIndriya", 15);
    row("barrel", "", true);
    double ahead = time("indriya") / time("measure");
    row("indriya", String.format(Locale.ROOT, "≥ 2000 × measure, is %.0f ×", ahead), ahead >= 2000);
    nanoseconds("foreignInchToMillimetre", 15);
    nanoseconds("productOfTwoLengths", 10);
    row("roundUpToSixteenth", "", true);
    nanoseconds("parseFeetAndInches", 400);
    nanoseconds("formatToSixteenth", 300);
    nanoseconds("tenFeatureLayout", 2000);
    nanoseconds("coolingWindow", 100_000);
    row("coolingWindowOfTip", "", true);
    row("temperatureAfterAMinute", "", true);
    nanoseconds("swingLimit", 100);
    row("swingLimitOfTwoLeaves", "", true);
    row("swingLimitUnequal", "", true);
    row("leastNotch", "", true);
    nanoseconds("hingePair", 20_000);
    nanoseconds("thumbLatch", 20_000);
    nanoseconds("slideBolt", 20_000);
    nanoseconds("wholeJob", 100_000);
    nanoseconds("nextCutOf1000Trials", 20_000);
    nanoseconds("nextPieceOf1000Trials", 20_000);
    nanoseconds("assignmentOf40", 10_000_000);
    nanoseconds("widestSpacing 12 20 0", 50_000);
    nanoseconds("nearestToEven 12 20 0", 50_000);
    nanoseconds("widestSpacing 200 500 0", 5_000_000);
    nanoseconds("nearestToEven 200 500 20", 5_000_000);
    nanoseconds("leafDrawing", 1_000_000);
    nanoseconds("leafOnSheets", 1_000_000);
    nanoseconds("barDrawing", 1_000_000);
    nanoseconds("jointDrawing", 1_000_000);
    nanoseconds("latchDrawing", 1_000_000);
    nanoseconds("picketDrawing", 1_000_000);
  }

  private double time(String name) {
    return times.getOrDefault(name, Double.NaN);
  }

  private void bare(String name, double most) {
    row(name, "≤ " + most + " × bare", time(name) <= most * time("bareDoubles"));
  }

  private void nanoseconds(String name, double most) {
    row(name, "≤ " + most + " ns", time(name) <= most);
  }

  private void row(String name, String goal, boolean reached) {
    System.out.printf(
        Locale.ROOT,
        "| %s | %.2f | %.0f | %.2f | %s | %s |%n",
        name,
        time(name),
        bytes.getOrDefault(name, Double.NaN),
        time(name) / time("bareDoubles"),
        goal,
        reached ? "yes" : "NO");
  }
}
