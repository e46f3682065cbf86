package org.hammerscale.cutting;

/**
 * A reason why bars cannot hold the pieces, in whole numbers: give every kind of piece a worth; no
 * bar can hold more worth than its best filling, so bars whose best fillings together are worth
 * less than all pieces are too few. (Farkas' lemma; with lengths as worths it says that the metal
 * must suffice.)
 */
final class Certificate {
  private final long[] worth;
  private final long[] best;

  /**
   * Worths, and the most worth by room.
   *
   * @param best of a {@link Knapsack} of all the job's pieces with these worths
   */
  Certificate(long[] worth, long[] best) {
    this.worth = worth;
    this.best = best;
  }

  /** The most worth that a bar of this room can hold. */
  long best(int room) {
    return best[room];
  }

  /** How much worth finds no room in these bars; more than zero proves that the pieces do not. */
  long missing(int[] counts, int[] rooms) {
    long missing = worth(counts);
    for (int room : rooms) {
      missing -= best[room];
    }
    return missing;
  }

  /** The same with so many bars of each room. */
  long missing(int[] counts, int[] rooms, int[] bars) {
    long missing = worth(counts);
    for (int t = 0; t < rooms.length; t++) {
      missing -= bars[t] * best[rooms[t]];
    }
    return missing;
  }

  /** What these pieces are worth. */
  long worth(int[] counts) {
    long all = 0;
    for (int i = 0; i < worth.length; i++) {
      all += counts[i] * worth[i];
    }
    return all;
  }
}
