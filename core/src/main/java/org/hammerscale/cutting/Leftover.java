package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The longest leftover that the same material allows. A bar that is to leave so much is a bar with
 * so much less room; whether the pieces still fit is a question for the {@link Packer}. What fits
 * with a longer leftover fits with a shorter one, so the answer is found by halving.
 */
final class Leftover {
  private static final int MOST_HALVINGS = 8;

  private final Job job;
  private final Packer packer;
  private final Work work;
  private final StockChoice stock;
  private final List<Case> cases = new ArrayList<>();
  private Draft best;
  private long bound;

  /** A choice of bars, which stock of it is to leave the leftover, and the most it might. */
  private static final class Case {
    final int[] choice;
    final int last;
    final int most;

    Case(int[] choice, int last, int most) {
      this.choice = choice;
      this.last = last;
      this.most = most;
    }
  }

  /**
   * Searches.
   *
   * @param plan the best of the material so far
   * @param choices all that cost the same
   */
  Leftover(Job job, Packer packer, Work work, Draft plan, StockChoice stock, List<int[]> choices) {
    this.job = job;
    this.packer = packer;
    this.work = work;
    this.stock = stock;
    this.best = plan;
    choices.forEach(this::addCases);
    cases.sort(Comparator.comparingInt((Case c) -> -c.most));
    // Of choices left out only this is known: a leftover is shorter than the longest bar.
    this.bound = stock.leftSomeOut() ? most(job.longestRoom()) : value();
    cases.forEach(this::search);
  }

  Draft best() {
    return best;
  }

  /** No plan of this material leaves more. */
  long bound() {
    return bound;
  }

  private long value() {
    return best.value(Aim.LONGEST_LEFTOVER);
  }

  private void addCases(int[] choice) {
    for (int t = 0; t < job.fresh.length; t++) {
      if (choice[t] > 0) {
        addCase(choice, t);
      }
    }
    for (int o = 0; o < job.offcutRooms.length && choice[job.fresh.length] > 0; o++) {
      if (o == 0 || job.offcutRooms[o] != job.offcutRooms[o - 1]) {
        addCase(choice, -1 - o);
      }
    }
  }

  /** The bars of a choice, one of this stock last. */
  private int[] stock(int[] choice, int last) {
    int[] bars = stock.stock(choice);
    if (-1 - last >= choice[job.fresh.length]) {
      bars[bars.length - 1] = last; // an offcut instead of the shortest of those that are taken
    }
    for (int bar = 0; bar < bars.length; bar++) {
      if (bars[bar] == last) {
        bars[bar] = bars[bars.length - 1];
        bars[bars.length - 1] = last;
        return bars;
      }
    }
    throw new IllegalStateException("no bar of stock " + last);
  }

  private int most(int room) {
    return Math.max(0, room - job.kerf - job.size[job.size.length - 1]);
  }

  private void addCase(int[] choice, int last) {
    int[] bars = stock(choice, last);
    int low = 0;
    int high = most(Draft.room(job, last));
    while (low < high) {
      int middle = low + (high - low + 1) / 2;
      work.add(bars.length);
      if (packer.isRefuted(rooms(bars, middle))) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    cases.add(new Case(choice, last, low));
  }

  private int[] rooms(int[] stock, int leftover) {
    int[] rooms = Draft.rooms(job, stock);
    rooms[rooms.length - 1] -= leftover > 0 ? job.kerf + leftover : 0;
    return rooms;
  }

  private void search(Case c) {
    int high = c.most;
    if (high > value() && !isQuick(c, high)) {
      halve(c, high);
      high = prove(c, high);
    }
    bound = Math.max(bound, high);
  }

  private boolean isQuick(Case c, int leftover) {
    Packer.Outcome outcome = packer.quickly(rooms(stock(c.choice, c.last), leftover));
    return outcome.isPacked() && isTaken(c, outcome.patterns);
  }

  private boolean isTaken(Case c, int[][] patterns) {
    int[] bars = stock(c.choice, c.last);
    Draft draft = new Draft(job, bars, patterns);
    // If a bar stayed empty the material was not the least after all: that is no leftover.
    boolean better =
        draft.stock.length == bars.length && draft.value(Aim.LONGEST_LEFTOVER) > value();
    best = better ? draft : best;
    return better;
  }

  private void halve(Case c, int most) {
    int high = most;
    while (high - value() > 1 && !work.isOver()) {
      int middle = (int) (value() + (high - value()) / 2);
      if (!isQuick(c, middle)) {
        high = middle;
      }
    }
  }

  /** The most that is not proved to be too much. */
  private int prove(Case c, int most) {
    int high = most;
    int middle = (int) value() + 1;
    int open = middle;
    for (int n = 0; n < MOST_HALVINGS && high > value() && !work.isOver(); n++) {
      Packer.Outcome outcome = packer.pack(rooms(stock(c.choice, c.last), middle));
      if (outcome.verdict == Packer.Verdict.IMPOSSIBLE) {
        high = middle - 1;
      } else if (!outcome.isPacked() || !isTaken(c, outcome.patterns)) {
        open = middle;
      }
      open = Math.max(open, (int) value() + 1);
      middle = outcome.isPacked() ? open : open + (high - open + 1) / 2;
    }
    return Math.max(high, (int) value());
  }
}
