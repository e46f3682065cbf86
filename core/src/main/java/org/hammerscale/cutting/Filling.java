package org.hammerscale.cutting;

/**
 * Which lengths can be made up of the pieces at hand: for each kind, the sums of that kind and all
 * shorter ones, as a set of bits. From it a bar is filled as full as can be.
 */
final class Filling {
  private final int[] size;
  private final int[] count;
  private final long[][] sums;
  private final int room;

  Filling(int[] size, int[] count, int room, Work work) {
    this.size = size;
    this.count = count;
    this.room = room;
    int kinds = size.length;
    sums = new long[kinds + 1][];
    sums[kinds] = new long[(room >> 6) + 1];
    sums[kinds][0] = 1;
    for (int i = kinds - 1; i >= 0; i--) {
      int left = Math.min(count[i], room / size[i]);
      if (left == 0) {
        sums[i] = sums[i + 1];
        continue;
      }
      sums[i] = sums[i + 1].clone();
      for (int some = 1; left > 0; some *= 2) {
        int taken = Math.min(some, left);
        addShifted(sums[i], taken * size[i]);
        left -= taken;
        work.add(sums[i].length);
      }
    }
  }

  private static void addShifted(long[] bits, int by) {
    int words = by >> 6;
    int rest = by & 63;
    for (int i = bits.length - 1; i >= words; i--) {
      long moved = bits[i - words] << rest;
      if (rest > 0 && i > words) {
        moved |= bits[i - words - 1] >>> (64 - rest);
      }
      bits[i] |= moved;
    }
  }

  /** Whether pieces of this kind and shorter ones can make up just this. */
  boolean makes(int kind, int sum) {
    return (sums[kind][sum >> 6] >>> (sum & 63) & 1) != 0;
  }

  /**
   * The longest sum up to a limit that pieces of this kind and shorter ones make up; 0 at least.
   */
  int most(int kind, int limit) {
    int word = limit >> 6;
    long bits = sums[kind][word] & (-1L >>> (63 - (limit & 63)));
    while (bits == 0) {
      bits = sums[kind][--word]; // the empty sum ends it
    }
    return (word << 6) + 63 - Long.numberOfLeadingZeros(bits);
  }

  /** The longest sum that fits a bar. */
  int most() {
    return most(0, room);
  }

  /**
   * The fullest bar. Long pieces are taken first, but each time only with this chance if fewer of
   * them would do as well.
   */
  int[] fullest(double greed, Chance chance) {
    int[] pattern = new int[size.length];
    int sum = most();
    for (int i = 0; i < size.length; i++) {
      for (int n = Math.min(count[i], sum / size[i]); n >= 0; n--) {
        if (makes(i + 1, sum - n * size[i])) {
          pattern[i] = n;
          if (greed >= 1 || chance.next() < greed) {
            break;
          }
        }
      }
      sum -= pattern[i] * size[i];
    }
    return pattern;
  }

  /** Numbers as if by lot, the same for every run (Marsaglia's xorshift). */
  static final class Chance {
    private long state;

    Chance(long seed) {
      state = seed;
    }

    double next() {
      state ^= state << 13;
      state ^= state >>> 7;
      state ^= state << 17;
      return (state >>> 11) * 0x1p-53;
    }

    int next(int below) {
      return (int) (next() * below);
    }
  }
}
