package org.hammerscale.cutting;

/**
 * A cutting job in whole steps, as the search sees it. The rule of the saw: pieces fit a bar if
 * their lengths and the kerfs between them are not longer than the bar less its trim. A piece and a
 * kerf are one size, the bar has one kerf more in its room, and Σ size ≤ room says the same.
 *
 * <p>Sizes fall and differ; of equal lengths there is one kind. Offcuts are sorted, longest first.
 */
final class Job {
  final int kerf;
  final int[] size;
  final int[] count;
  final Stock[] fresh;
  final int[] offcutRooms;

  /** New bars of one length. */
  static final class Stock {
    final int length;
    final int room;
    final long price;
    final int most;

    Stock(int length, int room, long price, int most) {
      this.length = length;
      this.room = room;
      this.price = price;
      this.most = most;
    }

    long cost(Aim aim) {
      return switch (aim) {
        case LEAST_MONEY -> price;
        case LEAST_NEW_STOCK -> length;
        default -> 1;
      };
    }
  }

  Job(int kerf, int[] size, int[] count, Stock[] fresh, int[] offcutRooms) {
    this.kerf = kerf;
    this.size = size;
    this.count = count;
    this.fresh = fresh;
    this.offcutRooms = offcutRooms;
  }

  int pieces() {
    int pieces = 0;
    for (int c : count) {
      pieces += c;
    }
    return pieces;
  }

  /** Of all bars there are. */
  int longestRoom() {
    int longest = 0;
    for (Stock stock : fresh) {
      longest = Math.max(longest, stock.room);
    }
    return offcutRooms.length == 0 ? longest : Math.max(longest, offcutRooms[0]);
  }

  /** The room that these pieces take. */
  long taken(int[] pattern) {
    long taken = 0;
    for (int i = 0; i < size.length; i++) {
      taken += (long) pattern[i] * size[i];
    }
    return taken;
  }

  /** What is left over of a room after the last cut. */
  int leftover(int room, int[] pattern) {
    return (int) Math.max(0, room - kerf - taken(pattern));
  }
}
