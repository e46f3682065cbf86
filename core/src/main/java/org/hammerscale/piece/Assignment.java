package org.hammerscale.piece;

import java.util.Arrays;

/**
 * Who goes with whom at the least cost in all, exactly: rows are taken in one after the other, each
 * along the shortest augmenting path under prices that keep every cost not negative (Kuhn's method
 * in the form of Jonker and Volgenant), in the cube of their number.
 */
final class Assignment {
  private Assignment() {}

  /** For each row its column, of a square of costs. */
  static int[] of(double[][] costs) {
    int n = costs.length;
    double[] rowPrice = new double[n + 1];
    double[] columnPrice = new double[n + 1];
    int[] rowOf = new int[n + 1]; // by column from 1; column 0 is where a path begins
    int[] cameFrom = new int[n + 1];
    for (int row = 1; row <= n; row++) {
      rowOf[0] = row;
      double[] slack = new double[n + 1];
      Arrays.fill(slack, Double.POSITIVE_INFINITY);
      boolean[] reached = new boolean[n + 1];
      int column = 0;
      do {
        reached[column] = true;
        int at = rowOf[column];
        double least = Double.POSITIVE_INFINITY;
        int next = 0;
        for (int j = 1; j <= n; j++) {
          if (!reached[j]) {
            double reduced = costs[at - 1][j - 1] - rowPrice[at] - columnPrice[j];
            if (reduced < slack[j]) {
              slack[j] = reduced;
              cameFrom[j] = column;
            }
            if (slack[j] < least) {
              least = slack[j];
              next = j;
            }
          }
        }
        for (int j = 0; j <= n; j++) {
          if (reached[j]) {
            rowPrice[rowOf[j]] += least;
            columnPrice[j] -= least;
          } else {
            slack[j] -= least;
          }
        }
        column = next;
      } while (rowOf[column] != 0);
      while (column != 0) {
        int before = cameFrom[column];
        rowOf[column] = rowOf[before];
        column = before;
      }
    }
    int[] columns = new int[n];
    for (int j = 1; j <= n; j++) {
      columns[rowOf[j] - 1] = j - 1;
    }
    return columns;
  }
}
