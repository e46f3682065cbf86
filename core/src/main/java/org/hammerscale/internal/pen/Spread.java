package org.hammerscale.internal.pen;

/** Moves labels apart that would lie over one another, as little as can be. */
final class Spread {
  private Spread() {}

  /**
   * The places nearest to those wanted, in their order, in the sense of least squares, so that each
   * label of a width keeps a gap from the next. With what lies before a place taken off, they need
   * only rise; where they would fall, neighbours are pooled to their mean.
   *
   * @param wanted the middles in rising order
   * @param widths of the labels
   * @param gap between two
   * @return the middles
   */
  static double[] apart(double[] wanted, double[] widths, double gap) {
    int n = wanted.length;
    double[] before = new double[n];
    for (int i = 1; i < n; i++) {
      before[i] = before[i - 1] + (widths[i - 1] + widths[i]) / 2 + gap;
    }
    double[] mean = new double[n];
    int[] count = new int[n];
    int pools = 0;
    for (int i = 0; i < n; i++) {
      mean[pools] = wanted[i] - before[i];
      count[pools] = 1;
      pools++;
      while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
        int both = count[pools - 2] + count[pools - 1];
        mean[pools - 2] =
            (mean[pools - 2] * count[pools - 2] + mean[pools - 1] * count[pools - 1]) / both;
        count[pools - 2] = both;
        pools--;
      }
    }
    double[] places = new double[n];
    int i = 0;
    for (int pool = 0; pool < pools; pool++) {
      for (int k = 0; k < count[pool]; k++, i++) {
        places[i] = mean[pool] + before[i];
      }
    }
    return places;
  }

  /** The farthest that a label was moved. */
  static double farthest(double[] wanted, double[] places) {
    double farthest = 0;
    for (int i = 0; i < wanted.length; i++) {
      farthest = Math.max(farthest, Math.abs(places[i] - wanted[i]));
    }
    return farthest;
  }
}
