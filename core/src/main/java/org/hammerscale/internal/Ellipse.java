package org.hammerscale.internal;

/**
 * The way round an ellipse, 4 a E(m), by the arithmetic-geometric mean of Gauss and Legendre.
 * Commons Math 3 has no elliptic integrals; this mean doubles its digits at each step and is right
 * to the last digits whatever the proportions.
 */
public final class Ellipse {
  private static final int MOST_STEPS = 40;

  private Ellipse() {}

  /**
   * The perimeter.
   *
   * @param a half of one axis, more than zero
   * @param b half of the other axis, more than zero
   * @return the way round
   */
  public static double perimeter(double a, double b) {
    double mean = a;
    double geometric = b;
    double sum = (a * a + b * b) / 2;
    double weight = 1;
    for (int i = 0; i < MOST_STEPS; i++) {
      double c = (mean - geometric) / 2;
      double next = (mean + geometric) / 2;
      if (next == mean || c * c * weight < Math.ulp(sum) / 4) {
        return 2 * Math.PI * sum / next;
      }
      geometric = Math.sqrt(mean * geometric);
      mean = next;
      sum -= weight * c * c;
      weight *= 2;
    }
    return 2 * Math.PI * sum / mean;
  }
}
