package org.hammerscale.cutting;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Tries every way to pack the pieces into given bars. The longest piece left must go somewhere: it
 * is tried on each kind of bar, with every filling that no further piece fits into and that wastes
 * no more than all bars together may. What failed once is not tried again.
 */
final class Completion {
  private static final int MOST_DEPTH = 2_000;
  private static final int MOST_REMEMBERED = 200_000;

  private final Job job;
  private final int[] rooms;
  private final List<Certificate> certificates;
  private final Work work;
  private final long end;
  private final int[] left;
  private final int[] bars;
  private final int[][] chosen;
  private final int[] chosenRoom;
  private final Set<String> failed = new HashSet<>();
  private int depth;
  private boolean gaveUp;

  Completion(
      Job job, int[] rooms, int[] bars, List<Certificate> certificates, Work work, long end) {
    this.job = job;
    this.rooms = rooms;
    this.bars = bars.clone();
    this.certificates = certificates;
    this.work = work;
    this.end = end;
    this.left = job.count.clone();
    int all = 0;
    for (int n : bars) {
      all += n;
    }
    chosen = new int[all][];
    chosenRoom = new int[all];
  }

  /** Whether there is a way; if not, it is certain unless it {@linkplain #gaveUp gave up}. */
  boolean succeeds() {
    // Each bar goes as deep as there are kinds of pieces: a long list would overflow the stack.
    gaveUp = (long) chosen.length * left.length > MOST_DEPTH;
    return !gaveUp && place();
  }

  boolean gaveUp() {
    return gaveUp;
  }

  /** How many bars were used. */
  int used() {
    return depth;
  }

  /** The room of a used bar. */
  int room(int bar) {
    return rooms[chosenRoom[bar]];
  }

  int[] pattern(int bar) {
    return chosen[bar];
  }

  private boolean place() {
    int longest = 0;
    while (longest < left.length && left[longest] == 0) {
      longest++;
    }
    if (longest == left.length) {
      return true;
    }
    if (work.isOver(end)) {
      gaveUp = true;
      return false;
    }
    long slack = -job.taken(left);
    for (int t = 0; t < rooms.length; t++) {
      slack += (long) bars[t] * rooms[t];
    }
    work.add(left.length + 1L);
    if (slack < 0 || isRefuted()) {
      return false;
    }
    String state = state();
    if (failed.contains(state)) {
      return false;
    }
    for (int t = 0; t < rooms.length && !gaveUp; t++) {
      if (bars[t] > 0 && rooms[t] >= job.size[longest]) {
        Filling filling = new Filling(job.size, left, rooms[t], work);
        int[] pattern = new int[left.length];
        bars[t]--;
        if (fill(
            filling, t, longest, longest, rooms[t], (int) Math.min(slack, rooms[t]), pattern)) {
          return true;
        }
        bars[t]++;
      }
    }
    if (!gaveUp && failed.size() < MOST_REMEMBERED) {
      failed.add(state);
    }
    return false;
  }

  private boolean isRefuted() {
    for (Certificate certificate : certificates) {
      if (certificate.missing(left, rooms, bars) > 0) {
        return true;
      }
    }
    return false;
  }

  private String state() {
    StringBuilder state = new StringBuilder(left.length + bars.length);
    for (int n : left) {
      state.append((char) n);
    }
    for (int n : bars) {
      state.append((char) n);
    }
    return state.toString();
  }

  /** Chooses how many of one kind go on the bar, then of the shorter ones, then goes on. */
  private boolean fill(
      Filling filling, int t, int longest, int kind, int room, int slack, int[] pattern) {
    if (kind == left.length) {
      return isFull(pattern, room) && next(t, pattern);
    }
    work.add(1);
    int least = kind == longest ? 1 : 0;
    for (int n = Math.min(left[kind], room / job.size[kind]); n >= least && !gaveUp; n--) {
      int rest = room - n * job.size[kind];
      if (rest - filling.most(kind + 1, rest) <= slack) {
        pattern[kind] = n;
        if (fill(filling, t, longest, kind + 1, rest, slack, pattern)) {
          return true;
        }
      }
    }
    pattern[kind] = 0;
    return false;
  }

  private boolean isFull(int[] pattern, int rest) {
    for (int i = left.length - 1; i >= 0 && job.size[i] <= rest; i--) {
      if (left[i] > pattern[i]) {
        return false;
      }
    }
    return true;
  }

  private boolean next(int t, int[] pattern) {
    chosen[depth] = pattern.clone();
    chosenRoom[depth++] = t;
    for (int i = 0; i < left.length; i++) {
      left[i] -= pattern[i];
    }
    if (place()) {
      return true;
    }
    for (int i = 0; i < left.length; i++) {
      left[i] += pattern[i];
    }
    depth--;
    return false;
  }
}
