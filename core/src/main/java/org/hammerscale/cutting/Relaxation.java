package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The job with bars that may be cut by fractions: it packs the most length into given bars, by a
 * revised simplex that asks a {@link Knapsack} for the next pattern (Gilmore and Gomory 1961). Its
 * prices either give a {@link Certificate} that the pieces do not fit, or its patterns are a start
 * for whole bars.
 *
 * <p>Floating point only proposes: a certificate is built from prices rounded to whole numbers, and
 * patterns are counted anew by whoever uses them.
 */
final class Relaxation {
  private static final double EPS = 1e-7;
  private static final double SCALE = 1 << 20;
  private static final int MOST_ROUNDS = 2_000;

  private final Job job;
  private final int[] rooms;
  private final int[] bars;
  private final int rows;
  private final double[][] inverse;
  private final double[] amount;
  private final List<Column> basis = new ArrayList<>();
  private @Nullable Certificate certificate;
  private boolean packsAll;

  /** A pattern on a room; or, without a pattern, pieces left out or bars left over. */
  private static final class Column {
    final int room;
    final int @Nullable [] pattern;
    final double cost;

    Column(int room, int @Nullable [] pattern, double cost) {
      this.room = room;
      this.pattern = pattern;
      this.cost = cost;
    }
  }

  /** A pattern, on which room it is cut, and how often. */
  static final class Share {
    final int room;
    final int[] pattern;
    final double times;

    Share(int room, int[] pattern, double times) {
      this.room = room;
      this.pattern = pattern;
      this.times = times;
    }
  }

  /**
   * Solves it.
   *
   * @param rooms of the bars, each different
   * @param bars how many of each
   */
  Relaxation(Job job, int[] rooms, int[] bars, Work work, long end) {
    this.job = job;
    this.rooms = rooms;
    this.bars = bars;
    this.rows = job.size.length + rooms.length;
    this.inverse = new double[rows][rows];
    this.amount = new double[rows];
    int kinds = job.size.length;
    for (int i = 0; i < rows; i++) {
      inverse[i][i] = 1;
      amount[i] = i < kinds ? job.count[i] : bars[i - kinds];
      // A length left out costs itself: as a share, so that all prices are of one size.
      basis.add(new Column(-1, null, i < kinds ? (double) job.size[i] / job.size[0] : 0));
    }
    solve(work, end);
  }

  /** The proof that the pieces do not fit, if there is one. */
  @Nullable Certificate certificate() {
    return certificate;
  }

  /** Whether fractions of bars hold all the pieces. */
  boolean packsAll() {
    return packsAll;
  }

  /** The patterns in use. */
  List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      Column column = basis.get(i);
      if (column.pattern != null && amount[i] > EPS) {
        shares.add(new Share(column.room, column.pattern, amount[i]));
      }
    }
    return shares;
  }

  private void solve(Work work, long end) {
    for (int round = 0; round < MOST_ROUNDS && !work.isOver(end); round++) {
      double leftOut = 0;
      for (int i = 0; i < rows; i++) {
        leftOut += basis.get(i).cost * amount[i];
      }
      if (leftOut < EPS) {
        packsAll = true;
        return;
      }
      double[] price = prices();
      long[] worth = new long[job.size.length];
      for (int i = 0; i < worth.length; i++) {
        worth[i] = (long) (Math.max(0, price[i]) * SCALE);
      }
      Knapsack knapsack = new Knapsack(job.size, job.count, worth, job.longestRoom(), work);
      Certificate found = new Certificate(worth, knapsack.best());
      if (found.missing(job.count, rooms, bars) > 0) {
        certificate = found;
        return;
      }
      if (!improve(price, knapsack)) {
        return;
      }
      work.add((long) rows * rows);
    }
  }

  private double[] prices() {
    double[] price = new double[rows];
    for (int i = 0; i < rows; i++) {
      double cost = basis.get(i).cost;
      if (cost != 0) {
        for (int j = 0; j < rows; j++) {
          price[j] += cost * inverse[i][j];
        }
      }
    }
    return price;
  }

  /** Takes the column that promises most into the basis; false if none promises anything. */
  private boolean improve(double[] price, Knapsack knapsack) {
    int kinds = job.size.length;
    double most = EPS;
    int entering = -1;
    for (int i = 0; i < rows; i++) {
      // Below: pieces left out again, or bars left over again. Beyond: a new pattern.
      double gain = price[i] - (i < kinds ? (double) job.size[i] / job.size[0] : 0);
      if (gain > most) {
        most = gain;
        entering = i;
      }
      if (i >= kinds) {
        double pattern = knapsack.best()[rooms[i - kinds]] / SCALE + price[i];
        if (pattern > most) {
          most = pattern;
          entering = rows + i;
        }
      }
    }
    if (entering < 0) {
      return false;
    }
    double[] column = new double[rows];
    Column named;
    if (entering < rows) {
      column[entering] = 1;
      named =
          new Column(-1, null, entering < kinds ? (double) job.size[entering] / job.size[0] : 0);
    } else {
      int room = entering - rows - kinds;
      int[] pattern = knapsack.filling(rooms[room]);
      for (int i = 0; i < kinds; i++) {
        column[i] = pattern[i];
      }
      column[kinds + room] = 1;
      named = new Column(room, pattern, 0);
    }
    return pivot(column, named);
  }

  private boolean pivot(double[] column, Column entering) {
    double[] direction = new double[rows];
    int leaving = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rows; i++) {
      for (int j = 0; j < rows; j++) {
        direction[i] += inverse[i][j] * column[j];
      }
      if (direction[i] > EPS && amount[i] / direction[i] < least) {
        least = amount[i] / direction[i];
        leaving = i;
      }
    }
    if (leaving < 0) {
      return false;
    }
    double pivot = direction[leaving];
    for (int j = 0; j < rows; j++) {
      inverse[leaving][j] /= pivot;
    }
    for (int i = 0; i < rows; i++) {
      if (i != leaving && direction[i] != 0) {
        for (int j = 0; j < rows; j++) {
          inverse[i][j] -= direction[i] * inverse[leaving][j];
        }
        amount[i] = Math.max(0, amount[i] - direction[i] * least);
      }
    }
    amount[leaving] = least;
    basis.set(leaving, entering);
    return true;
  }
}
