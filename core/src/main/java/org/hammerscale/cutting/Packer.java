package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Packs all pieces of a job into given bars, or proves that they do not fit, or gives up when its
 * share of the work is done. Four means, the cheapest first: certificates, filling bar after bar
 * with repairs, the {@link Relaxation}, and trying every way.
 */
final class Packer {
  private static final long REPAIR = 6_000_000;
  private static final long RELAX = 400_000_000;
  private static final long TRY_ALL = 150_000_000;
  private static final long TRY_FEW = 300_000;
  private static final int FEW_PIECES = 30;
  private static final int MOST_CERTIFICATES = 30;
  private static final long SEED = 0x9E3779B97F4A7C15L;

  private final Job job;
  private final Work work;
  private final List<Certificate> certificates = new ArrayList<>();

  /** The bars of a question: each by itself, and how many of each different room. */
  private static final class Bars {
    final int[] rooms;
    final int[] different;
    final int[] number;

    Bars(int[] rooms) {
      this.rooms = rooms;
      different = Arrays.stream(rooms).distinct().toArray();
      number = new int[different.length];
      for (int t = 0; t < different.length; t++) {
        int room = different[t];
        number[t] = (int) Arrays.stream(rooms).filter(r -> r == room).count();
      }
    }
  }

  /** What came of it. */
  enum Verdict {
    PACKED,
    IMPOSSIBLE,
    UNKNOWN
  }

  /** For each bar in the order asked, its pieces: all if packed, some if that is unknown. */
  static final class Outcome {
    final Verdict verdict;
    final int[][] patterns;

    private Outcome(Verdict verdict, int[][] patterns) {
      this.verdict = verdict;
      this.patterns = patterns;
    }

    boolean isPacked() {
      return verdict == Verdict.PACKED;
    }

    private boolean isUnknown() {
      return verdict == Verdict.UNKNOWN;
    }
  }

  Packer(Job job, Work work) {
    this.job = job;
    this.work = work;
    long[] lengths = Arrays.stream(job.size).asLongStream().toArray();
    Knapsack fullest = new Knapsack(job.size, job.count, lengths, job.longestRoom(), work);
    certificates.add(new Certificate(lengths, fullest.best()));
  }

  /** All that is proved so far. */
  List<Certificate> certificates() {
    return certificates;
  }

  boolean isRefuted(int[] rooms) {
    return certificates.stream().anyMatch(c -> c.missing(job.count, rooms) > 0);
  }

  /** Only tries what is quick. */
  Outcome quickly(int[] rooms) {
    return quickly(new Bars(rooms));
  }

  private Outcome quickly(Bars bars) {
    if (isRefuted(bars.rooms)) {
      return outcome(Verdict.IMPOSSIBLE);
    }
    // A short list is decided sooner by trying every way than by anything cleverer.
    if (job.pieces() <= FEW_PIECES) {
      Outcome outcome = everyWay(bars, TRY_FEW);
      if (!outcome.isUnknown()) {
        return outcome;
      }
    }
    return repaired(bars.rooms, new int[bars.rooms.length][job.size.length], 1);
  }

  /** Packs, or proves. */
  Outcome pack(int[] rooms) {
    Bars bars = new Bars(rooms);
    Outcome quick = quickly(bars);
    if (!quick.isUnknown()) {
      return quick;
    }
    Relaxation relaxed =
        new Relaxation(job, bars.different, bars.number, work, work.done() + RELAX);
    Certificate certificate = relaxed.certificate();
    if (certificate != null) {
      if (certificates.size() == MOST_CERTIFICATES) {
        certificates.remove(1); // the oldest but the lengths
      }
      certificates.add(certificate);
      return outcome(Verdict.IMPOSSIBLE);
    }
    Outcome rounded = repaired(rooms, rounded(bars, relaxed), 4);
    if (!rounded.isUnknown()) {
      return rounded;
    }
    Outcome every = everyWay(bars, TRY_ALL);
    return every.isUnknown() ? rounded : every;
  }

  private Outcome everyWay(Bars bars, long steps) {
    Completion all =
        new Completion(job, bars.different, bars.number, certificates, work, work.done() + steps);
    if (all.succeeds()) {
      return new Outcome(Verdict.PACKED, placed(bars.rooms, all));
    }
    return outcome(all.gaveUp() ? Verdict.UNKNOWN : Verdict.IMPOSSIBLE);
  }

  private static Outcome outcome(Verdict verdict) {
    return new Outcome(verdict, new int[0][]);
  }

  private int[][] placed(int[] rooms, Completion all) {
    int[][] patterns = new int[rooms.length][job.size.length];
    boolean[] used = new boolean[rooms.length];
    for (int bar = 0; bar < all.used(); bar++) {
      int at = 0;
      while (used[at] || rooms[at] != all.room(bar)) {
        at++;
      }
      used[at] = true;
      patterns[at] = all.pattern(bar);
    }
    return patterns;
  }

  /** Whole shares as they are, then the greatest fractions, as far as bars and pieces go. */
  private int[][] rounded(Bars bars, Relaxation relaxed) {
    int[] rooms = bars.rooms;
    int[][] patterns = new int[rooms.length][job.size.length];
    int[] left = job.count.clone();
    boolean[] used = new boolean[rooms.length];
    List<Relaxation.Share> shares = new ArrayList<>(relaxed.shares());
    for (Relaxation.Share share : shares) {
      for (int n = 0; n < (int) (share.times + 1e-6); n++) {
        put(share.pattern, bars.different[share.room], rooms, patterns, used, left);
      }
    }
    shares.sort(Comparator.comparingDouble(share -> Math.floor(share.times) - share.times));
    for (Relaxation.Share share : shares) {
      put(share.pattern, bars.different[share.room], rooms, patterns, used, left);
    }
    return patterns;
  }

  private static void put(
      int[] pattern, int room, int[] rooms, int[][] patterns, boolean[] used, int[] left) {
    for (int at = 0; at < rooms.length; at++) {
      if (!used[at] && rooms[at] == room) {
        used[at] = true;
        for (int i = 0; i < left.length; i++) {
          patterns[at][i] = Math.min(pattern[i], left[i]);
          left[i] -= patterns[at][i];
        }
        return;
      }
    }
  }

  /**
   * Fills what is empty, then again and again takes a few bars apart and fills them anew, never for
   * the worse.
   */
  private Outcome repaired(int[] rooms, int[][] start, int patience) {
    Filling.Chance chance = new Filling.Chance(SEED);
    long began = work.done();
    int[][] patterns = start;
    int[] left = job.count.clone();
    for (int[] pattern : patterns) {
      subtract(left, pattern);
    }
    for (int at = 0; at < rooms.length; at++) {
      int[] more =
          new Filling(job.size, left, rooms[at] - (int) job.taken(patterns[at]), work)
              .fullest(1, chance);
      subtract(left, more);
      for (int i = 0; i < more.length; i++) {
        patterns[at][i] += more[i];
      }
    }
    long out = job.taken(left);
    long end = work.done() + patience * Math.max(REPAIR, 4 * (work.done() - began));
    while (out > 0 && rooms.length > 1 && !work.isOver(end)) {
      int[] some = some(rooms, patterns, chance);
      int[] pool = left.clone();
      for (int at : some) {
        add(pool, patterns[at]);
      }
      int[][] anew = new int[some.length][];
      double greed = 0.5 + 0.5 * chance.next();
      for (int k = 0; k < some.length; k++) {
        anew[k] = new Filling(job.size, pool, rooms[some[k]], work).fullest(greed, chance);
        subtract(pool, anew[k]);
      }
      long then = job.taken(pool);
      if (then <= out) {
        out = then;
        left = pool;
        for (int k = 0; k < some.length; k++) {
          patterns[some[k]] = anew[k];
        }
      }
    }
    return new Outcome(out == 0 ? Verdict.PACKED : Verdict.UNKNOWN, patterns);
  }

  /** A few bars by lot, in an order by lot; one that is not full is among them. */
  private int[] some(int[] rooms, int[][] patterns, Filling.Chance chance) {
    int[] order = new int[rooms.length];
    work.add(rooms.length);
    for (int i = 0; i < order.length; i++) {
      int j = chance.next(i + 1);
      order[i] = order[j];
      order[j] = i;
    }
    int several = Math.min(order.length, 2 + chance.next(6));
    for (int i = 0; i < order.length; i++) {
      work.add(job.size.length / 4);
      if (job.taken(patterns[order[i]]) < rooms[order[i]]) {
        if (i >= several) {
          order[0] = order[i];
        }
        break;
      }
    }
    return Arrays.copyOf(order, several);
  }

  private static void add(int[] counts, int[] more) {
    for (int i = 0; i < counts.length; i++) {
      counts[i] += more[i];
    }
  }

  private static void subtract(int[] counts, int[] some) {
    for (int i = 0; i < counts.length; i++) {
      counts[i] -= some[i];
    }
  }
}
