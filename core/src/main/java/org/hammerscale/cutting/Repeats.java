package org.hammerscale.cutting;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Cuts the same bars in fewer ways: from the pieces divided by a number, as great as can be, one
 * bar is filled and repeated that often, as long as all bars together waste no more than they may.
 */
final class Repeats {
  private static final int TRIES = 24;
  private static final long SHARE = 30_000_000;

  private final Job job;
  private final Work work;

  Repeats(Job job, Work work) {
    this.job = job;
    this.work = work;
  }

  /**
   * No plan has fewer patterns: with a single one, all bars are alike and their number divides
   * every count.
   *
   * @param choices all bars that might be taken
   */
  static long bound(Job job, int bars, List<int[]> choices) {
    boolean divides = Arrays.stream(job.count).allMatch(n -> n % bars == 0);
    return divides && choices.stream().anyMatch(choice -> areAlike(job, choice, bars)) ? 1 : 2;
  }

  /** Whether so many of the bars, new ones or offcuts, may have one and the same room. */
  private static boolean areAlike(Job job, int[] choice, int bars) {
    Map<Integer, Integer> alike = new TreeMap<>();
    for (int t = 0; t < job.fresh.length; t++) {
      alike.merge(job.fresh[t].room, choice[t], Integer::sum);
    }
    Map<Integer, Integer> offcuts = new TreeMap<>();
    Arrays.stream(job.offcutRooms).forEach(room -> offcuts.merge(room, 1, Integer::sum));
    offcuts.forEach(
        (room, n) -> alike.merge(room, Math.min(n, choice[job.fresh.length]), Integer::sum));
    return alike.values().stream().anyMatch(n -> n >= bars);
  }

  /**
   * The best plan of these bars.
   *
   * @param plan what it must be better than
   * @param rooms of the bars, or less for one that is to leave something over
   */
  Draft improve(Draft plan, int[] stock, int[] rooms, List<Aim> aims) {
    Draft best = plan;
    Filling.Chance chance = new Filling.Chance(TRIES);
    long end = work.done() + SHARE;
    for (int n = 0; n < TRIES && !work.isOver(end); n++) {
      int[][] patterns = repeated(rooms, n == 0 ? 1 : 0.6 + 0.4 * chance.next(), chance, end);
      if (patterns.length == rooms.length) {
        Draft draft = new Draft(job, stock, patterns);
        best = draft.isBetterThan(best, aims) ? draft : best;
      }
    }
    return best;
  }

  /** A pattern for each bar; none if pieces are left out. */
  private int[][] repeated(int[] rooms, double greed, Filling.Chance chance, long end) {
    int[] left = job.count.clone();
    int[][] patterns = new int[rooms.length][];
    long slack = Arrays.stream(rooms).asLongStream().sum() - job.taken(left);
    Map<Integer, Integer> bars = new TreeMap<>(Comparator.reverseOrder());
    Arrays.stream(rooms).forEach(room -> bars.merge(room, 1, Integer::sum));
    while (!bars.isEmpty()) {
      int room = mostOf(bars);
      int times = bars.getOrDefault(room, 0);
      int[] pattern = part(left, times, room, greed, chance);
      while (times * (room - job.taken(pattern)) > slack) {
        times--;
        if (times == 0 || work.isOver(end)) {
          return new int[0][];
        }
        pattern = part(left, times, room, greed, chance);
      }
      slack -= times * (room - job.taken(pattern));
      int cut = times;
      bars.computeIfPresent(room, (r, n) -> n == cut ? null : n - cut);
      for (int bar = 0; bar < rooms.length && times > 0; bar++) {
        if (patterns[bar] == null && rooms[bar] == room) {
          patterns[bar] = pattern;
          times--;
        }
      }
      for (int i = 0; i < left.length; i++) {
        left[i] -= cut * pattern[i];
      }
    }
    return patterns;
  }

  private static int mostOf(Map<Integer, Integer> bars) {
    int room = 0;
    int most = 0;
    for (Map.Entry<Integer, Integer> entry : bars.entrySet()) {
      if (entry.getValue() > most) {
        room = entry.getKey();
        most = entry.getValue();
      }
    }
    return room;
  }

  private int[] part(int[] left, int times, int room, double greed, Filling.Chance chance) {
    int[] part = Arrays.stream(left).map(all -> all / times).toArray();
    return new Filling(job.size, part, room, work).fullest(greed, chance);
  }
}
