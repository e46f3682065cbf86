package org.hammerscale.benchmarks;

import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import javax.measure.quantity.Length;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.checking.CheckValue;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/**
 * Times cut lists one by one and prints them as a table: the shop's jobs among the check values,
 * and one of about 2,000 pieces of 50 lengths. Nine of ten jobs must be proved within a second, all
 * within ten; the long list must be planned within five, 2 % above its bound at most.
 */
public final class CuttingTable {
  private static final Aim[] AIMS = {
    Aim.FEWEST_BARS, Aim.LEAST_NEW_STOCK, Aim.LEAST_MONEY, Aim.LONGEST_LEFTOVER
  };
  private static final int ROUNDS = 5;
  private static final long SEED = 2000;

  private CuttingTable() {}

  /**
   * Runs them and prints the table.
   *
   * @param args none
   */
  public static void main(String[] args) {
    System.out.println("| list | pieces | bars | new stock | longest leftover | ms |");
    System.out.println("|---|---|---|---|---|---|");
    Map<String, CutList> jobs = jobs();
    List<Double> times = new ArrayList<>();
    jobs.forEach((name, list) -> times.add(time(name, list)));
    double[] sorted = times.stream().mapToDouble(t -> t).sorted().toArray();
    time("long list", longList());
    System.out.printf(
        Locale.ROOT,
        "jobs: median %.1f ms, nine of ten within %.1f ms, worst %.1f ms%n",
        sorted[sorted.length / 2],
        sorted[sorted.length * 9 / 10 - 1],
        sorted[sorted.length - 1]);
  }

  /** The median of a few rounds, in milliseconds. */
  private static double time(String name, CutList list) {
    double[] rounds = new double[ROUNDS];
    CuttingPlan plan = list.plan(AIMS);
    for (int round = 0; round < ROUNDS; round++) {
      long start = System.nanoTime();
      plan = list.plan(AIMS);
      rounds[round] = (System.nanoTime() - start) / 1e6;
    }
    Arrays.sort(rounds);
    int pieces = plan.bars().stream().mapToInt(bar -> bar.count() * bar.marks().size()).sum();
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %s | %s | %s | %.1f |%n",
        name,
        pieces,
        plan.reached(Aim.FEWEST_BARS),
        plan.reached(Aim.LEAST_NEW_STOCK),
        plan.reached(Aim.LONGEST_LEFTOVER),
        rounds[ROUNDS / 2]);
    return rounds[ROUNDS / 2];
  }

  private static CutList empty() {
    return CutList.of(
        Bar.of(Section.square(millimetres(12)), Material.MILD_STEEL), Graduation.MILLIMETRE);
  }

  /** Each job once: it has a value for each of its aims. */
  private static Map<String, CutList> jobs() {
    Map<String, CutList> jobs = new LinkedHashMap<>();
    CheckTopic.named("cutting/bar_jobs")
        .values()
        .filter(value -> value.question().equals("bars"))
        .forEach(value -> jobs.put(value.id(), job(value)));
    return jobs;
  }

  private static CutList job(CheckValue value) {
    CutList list =
        empty()
            .kerf(value.input("kerf", Length.class))
            .endTrim(value.input("end trim", Length.class));
    for (int i = 1; value.has("bar " + i); i++) {
      list = list.buying(value.input("bar " + i, Length.class));
    }
    for (int i = 1; value.has("offcut " + i); i++) {
      list = list.offcuts(value.input("offcut " + i, Length.class), count(value, "offcut " + i));
    }
    for (int i = 1; value.has("piece " + i); i++) {
      list =
          list.pieces("piece", value.input("piece " + i, Length.class), count(value, "piece " + i));
    }
    return list;
  }

  private static int count(CheckValue value, String of) {
    return (int) value.number(of + " count");
  }

  private static CutList longList() {
    Random random = new Random(SEED);
    CutList list = empty().kerf(millimetres(3)).endTrim(millimetres(20));
    for (int kind = 0; kind < 50; kind++) {
      int length = 60 + random.nextInt(1740);
      list = list.pieces("piece " + kind, millimetres(length), 20 + random.nextInt(41));
    }
    return list.buying(metres(6)).buying(metres(3));
  }
}
