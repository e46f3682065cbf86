package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.List;

/** The most worth that pieces can bring into a bar, for every room up to the longest. */
final class Knapsack {
  private final int kinds;
  private final long[] best;
  private final List<Bundle> bundles = new ArrayList<>();

  /** Some pieces of a kind, taken or left together; bundles of 1, 2, 4 … make up every number. */
  private static final class Bundle {
    final int kind;
    final int pieces;
    final int size;
    final long[] takenAt;

    Bundle(int kind, int pieces, int size, int room) {
      this.kind = kind;
      this.pieces = pieces;
      this.size = size;
      this.takenAt = new long[(room >> 6) + 1];
    }
  }

  Knapsack(int[] size, int[] count, long[] worth, int room, Work work) {
    kinds = size.length;
    best = new long[room + 1];
    for (int i = 0; i < kinds; i++) {
      int left = worth[i] > 0 ? Math.min(count[i], room / size[i]) : 0;
      for (int some = 1; left > 0; some *= 2) {
        int pieces = Math.min(some, left);
        left -= pieces;
        Bundle bundle = new Bundle(i, pieces, pieces * size[i], room);
        bundles.add(bundle);
        take(bundle, pieces * worth[i]);
        work.add(room - bundle.size);
      }
    }
  }

  private void take(Bundle bundle, long worth) {
    for (int r = best.length - 1; r >= bundle.size; r--) {
      long with = best[r - bundle.size] + worth;
      if (with > best[r]) {
        best[r] = with;
        bundle.takenAt[r >> 6] |= 1L << (r & 63);
      }
    }
  }

  /** By room. */
  long[] best() {
    return best;
  }

  /** The pieces of the best filling. */
  int[] filling(int room) {
    int[] pattern = new int[kinds];
    int left = room;
    for (int b = bundles.size() - 1; b >= 0; b--) {
      Bundle bundle = bundles.get(b);
      if ((bundle.takenAt[left >> 6] >>> (left & 63) & 1) != 0) {
        pattern[bundle.kind] += bundle.pieces;
        left -= bundle.size;
      }
    }
    return pattern;
  }
}
