package org.hammerscale.internal.pen;

import java.util.ArrayList;
import java.util.List;

/** Narrow lines at 45° over what is cut or comes off, as ISO 128 hatches. */
final class Hatching {
  private static final double APART = 2.2;

  /** No more lines than an eye tells apart, however large the thing. */
  private static final int MOST = 2000;

  private Hatching() {}

  /**
   * The lines within polygons, holes left out by the even-odd rule.
   *
   * @param polygons corners, x and y by turns
   * @param rising whether the lines rise to the right
   */
  static Path of(List<double[]> polygons, boolean rising) {
    double sign = rising ? 1 : -1;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] polygon : polygons) {
      for (int i = 0; i < polygon.length; i += 2) {
        double level = polygon[i] + sign * polygon[i + 1];
        low = Math.min(low, level);
        high = Math.max(high, level);
      }
    }
    double step = Math.max(APART * Math.sqrt(2), (high - low) / MOST);
    Path path = new Path();
    for (double level = low + step / 2; level < high; level += step) {
      List<Double> along = crossings(polygons, sign, level);
      for (int i = 0; i + 1 < along.size(); i += 2) {
        double from = along.get(i);
        double to = along.get(i + 1);
        path.from((level + from) / 2, sign * (level - from) / 2);
        path.to((level + to) / 2, sign * (level - to) / 2);
      }
    }
    return path;
  }

  private static List<Double> crossings(List<double[]> polygons, double sign, double level) {
    List<Double> along = new ArrayList<>();
    for (double[] polygon : polygons) {
      int n = polygon.length;
      for (int i = 0; i < n; i += 2) {
        double x1 = polygon[i];
        double y1 = sign * polygon[i + 1];
        double x2 = polygon[(i + 2) % n];
        double y2 = sign * polygon[(i + 3) % n];
        double a = x1 + y1 - level;
        double b = x2 + y2 - level;
        if (a < 0 != b < 0) {
          double share = a / (a - b);
          along.add(x1 - y1 + share * (x2 - y2 - x1 + y1));
        }
      }
    }
    along.sort(null);
    return along;
  }
}
