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
  private final List<Case> cases = new ArrayList<>();
  private Draft best;
  private long bound;

  /** Bars of one choice, the last of which is to leave the leftover, and the most it might. */
  private static final class Case {
    final int[] stock;
    final int most;

    Case(int[] stock, int most) {
      this.stock = stock;
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
    this.best = plan;
    for (int[] choice : choices) {
      addCases(stock, choice);
    }
    cases.sort(Comparator.comparingInt((Case c) -> -c.most));
    this.bound = value();
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

  private void addCases(StockChoice choices, int[] choice) {
    int offcuts = choice[job.fresh.length];
    for (int t = 0; t < job.fresh.length; t++) {
      if (choice[t] > 0) {
        addCase(lastOf(choices.stock(choice), t));
      }
    }
    for (int o = 0; o < job.offcutRooms.length && offcuts > 0; o++) {
      if (o == 0 || job.offcutRooms[o] != job.offcutRooms[o - 1]) {
        int[] stock = choices.stock(choice);
        if (o >= offcuts) {
          stock[stock.length - 1] = -1 - o; // instead of the shortest of them
        }
        addCase(lastOf(stock, -1 - o));
      }
    }
  }

  /** The same bars, one of this stock last. */
  private static int[] lastOf(int[] stock, int last) {
    for (int bar = 0; bar < stock.length; bar++) {
      if (stock[bar] == last) {
        stock[bar] = stock[stock.length - 1];
        stock[stock.length - 1] = last;
        return stock;
      }
    }
    throw new IllegalStateException("no bar of stock " + last);
  }

  private void addCase(int[] stock) {
    int room = Draft.room(job, stock[stock.length - 1]);
    int low = 0;
    int high = room - job.kerf - job.size[job.size.length - 1];
    while (low < high) {
      int middle = low + (high - low + 1) / 2;
      if (packer.isRefuted(rooms(stock, middle))) {
        high = middle - 1;
      } else {
        low = middle;
      }
    }
    cases.add(new Case(stock, low));
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
    Packer.Outcome outcome = packer.quickly(rooms(c.stock, leftover));
    return outcome.isPacked() && isTaken(c, outcome.patterns);
  }

  private boolean isTaken(Case c, int[][] patterns) {
    Draft draft = new Draft(job, c.stock, patterns);
    // If a bar stayed empty the material was not the least after all: that is no leftover.
    boolean better =
        draft.stock.length == c.stock.length && draft.value(Aim.LONGEST_LEFTOVER) > value();
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
      Packer.Outcome outcome = packer.pack(rooms(c.stock, middle));
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
