package org.hammerscale.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A plan in whole steps: which bars are taken and what is cut from each. Bars that nothing is cut
 * from are left out.
 */
final class Draft {
  private final Job job;

  /** For each bar: the number of its {@link Job#fresh} stock, or −1 − the number of its offcut. */
  final int[] stock;

  final int[][] patterns;

  Draft(Job job, int[] stock, int[][] patterns) {
    this.job = job;
    int[] used =
        IntStream.range(0, stock.length)
            .filter(bar -> Arrays.stream(patterns[bar]).anyMatch(n -> n > 0))
            .toArray();
    this.stock = Arrays.stream(used).map(bar -> stock[bar]).toArray();
    this.patterns = Arrays.stream(used).mapToObj(bar -> patterns[bar]).toArray(int[][]::new);
  }

  int room(int bar) {
    return room(job, stock[bar]);
  }

  static int room(Job job, int stock) {
    return stock >= 0 ? job.fresh[stock].room : job.offcutRooms[-1 - stock];
  }

  static int[] rooms(Job job, int[] stock) {
    return Arrays.stream(stock).map(s -> room(job, s)).toArray();
  }

  /** What it reaches: of the last two aims, a longer leftover and fewer patterns are more. */
  long value(Aim aim) {
    return switch (aim) {
      case LEAST_MONEY, LEAST_NEW_STOCK ->
          Arrays.stream(stock).filter(s -> s >= 0).mapToLong(s -> job.fresh[s].cost(aim)).sum();
      case FEWEST_BARS -> stock.length;
      case LONGEST_LEFTOVER -> {
        long longest = 0;
        for (int bar = 0; bar < stock.length; bar++) {
          longest = Math.max(longest, job.leftover(room(bar), patterns[bar]));
        }
        yield longest;
      }
      case FEWEST_PATTERNS -> {
        // A pattern is what is cut from one length of bar: the stop and the saw do not care whose.
        TreeSet<String> different = new TreeSet<>();
        for (int bar = 0; bar < stock.length; bar++) {
          different.add(room(bar) + Arrays.toString(patterns[bar]));
        }
        yield different.size();
      }
    };
  }

  /** Whether it is better in the first of the aims in which the two differ. */
  boolean isBetterThan(Draft other, List<Aim> aims) {
    for (Aim aim : aims) {
      int order = Long.compare(value(aim), other.value(aim));
      if (order != 0) {
        return aim == Aim.LONGEST_LEFTOVER ? order > 0 : order < 0;
      }
    }
    return false;
  }
}
