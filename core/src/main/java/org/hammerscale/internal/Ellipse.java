package org.hammerscale.internal;

/**
 * The way round an ellipse, 4 a E(e²), by the arithmetic-geometric mean. Commons Math 3 has no
 * elliptic integrals; this mean doubles its digits at each step and needs no series, so that it is
 * right to the last digits whatever the proportions.
 */
public final class Ellipse {
  private static final int MOST_STEPS = 40;

  private Ellipse() {}

  /**
   * The perimeter.
   *
   * @param length one axis, from end to end, more than zero
   * @param width the other axis, more than zero
   * @return the way round, in their unit
   */
  public static double perimeter(double length, double width) {
    double a = length / 2;
    double b = width / 2;
    double sum = (a * a + b * b) / 2;
    double weight = 1;
    for (int i = 0; i < MOST_STEPS && Math.abs(a - b) > Math.ulp(a); i++) {
      double half = (a - b) / 2;
      double mean = (a + b) / 2;
      b = Math.sqrt(a * b);
      a = mean;
      sum -= weight * half * half;
      weight *= 2;
    }
    return 2 * Math.PI * sum / a;
  }
}
