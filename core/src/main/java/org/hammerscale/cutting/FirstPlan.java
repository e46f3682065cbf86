package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A plan at once: bars filled one after the other, by several simple rules, the best of them. */
final class FirstPlan {
  private FirstPlan() {}

  /** The best; null if no rule cuts all pieces from the bars there are. */
  static @Nullable Draft of(Job job, List<Aim> aims, Work work) {
    Draft without = completed(job, aims, new int[0], new int[0][], work);
    int[] offcuts = new int[job.offcutRooms.length];
    Arrays.setAll(offcuts, n -> n - offcuts.length); // the shortest first
    int[][] patterns = new int[offcuts.length][];
    int[] left = job.count.clone();
    for (int n = 0; n < offcuts.length; n++) {
      patterns[n] = cut(job, offcuts[n], left, work);
    }
    Draft with = completed(job, aims, offcuts, patterns, work);
    return better(without, with, aims);
  }

  /** The best plan that begins with these bars and cuts what is left out from new ones. */
  static @Nullable Draft completed(
      Job job, List<Aim> aims, int[] stock, int[][] patterns, Work work) {
    Draft best = null;
    for (int preferred = 0; preferred < Math.max(1, job.fresh.length); preferred++) {
      best = better(best, completed(job, preferred, stock, patterns, work), aims);
    }
    return best;
  }

  private static @Nullable Draft better(@Nullable Draft a, @Nullable Draft b, List<Aim> aims) {
    return a == null || (b != null && b.isBetterThan(a, aims)) ? b : a;
  }

  private static @Nullable Draft completed(
      Job job, int preferred, int[] stock, int[][] patterns, Work work) {
    List<Integer> bars = new ArrayList<>();
    List<int[]> cuts = new ArrayList<>(List.of(patterns));
    int[] left = job.count.clone();
    int[] taken = new int[job.fresh.length];
    for (int bar = 0; bar < stock.length; bar++) {
      bars.add(stock[bar]);
      if (stock[bar] >= 0) {
        taken[stock[bar]]++;
      }
      for (int i = 0; i < left.length; i++) {
        left[i] -= patterns[bar][i];
      }
    }
    while (Arrays.stream(left).anyMatch(n -> n > 0)) {
      int next = next(job, preferred, left, taken);
      if (next < 0) {
        return null;
      }
      taken[next]++;
      bars.add(next);
      cuts.add(cut(job, next, left, work));
    }
    return new Draft(
        job, bars.stream().mapToInt(Integer::intValue).toArray(), cuts.toArray(new int[0][]));
  }

  /** The preferred length if there is one left that takes the longest piece, else any that does. */
  private static int next(Job job, int preferred, int[] left, int[] taken) {
    int longest = 0;
    while (left[longest] == 0) {
      longest++;
    }
    int found = -1;
    for (int t = 0; t < job.fresh.length; t++) {
      boolean serves = taken[t] < job.fresh[t].most && job.fresh[t].room >= job.size[longest];
      if (serves && (found < 0 || t == preferred)) {
        found = t;
      }
    }
    return found;
  }

  /** Fills a bar and takes the pieces from those that are left. */
  private static int[] cut(Job job, int from, int[] left, Work work) {
    int[] pattern =
        new Filling(job.size, left, Draft.room(job, from), work).fullest(1, new Filling.Chance(1));
    for (int i = 0; i < left.length; i++) {
      left[i] -= pattern[i];
    }
    return pattern;
  }
}
