package org.hammerscale.internal;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/**
 * Student's distribution for any number of degrees of freedom from one upward, whole or not: what a
 * mean of few pieces leaves unknown.
 *
 * <p>The quantile begins with G. W. Hill's expansion (Algorithm 396, Communications of the ACM 13,
 * 1970, quoted from memory) and is then improved by Newton's method on the exact probability, so
 * that the beginning decides the speed and not the answer.
 */
public final class StudentT {
  private static final int MOST_STEPS = 20;
  private static final double CLOSE = 1e-13;

  private StudentT() {}

  /**
   * The probability of a value at most t.
   *
   * @param freedom degrees of freedom, 1 or more
   * @param t the value
   * @return the probability, 0 to 1
   */
  public static double probability(double freedom, double t) {
    double tail = tail(freedom, Math.abs(t));
    return t < 0 ? tail : 1 - tail;
  }

  /**
   * The value that is not exceeded with a probability.
   *
   * @param freedom degrees of freedom, 1 or more
   * @param probability 0.5 or more, less than 1
   * @return the value, not negative
   */
  public static double quantile(double freedom, double probability) {
    double wanted = 1 - probability;
    if (wanted == 0.5) {
      return 0;
    }
    double scale =
        Math.exp(Gamma.logGamma((freedom + 1) / 2) - Gamma.logGamma(freedom / 2))
            / Math.sqrt(freedom * Math.PI);
    double t = beginning(freedom, wanted);
    for (int i = 0; i < MOST_STEPS; i++) {
      double density = scale * Math.exp(-(freedom + 1) / 2 * Math.log1p(t * t / freedom));
      double step = (tail(freedom, t) - wanted) / density;
      t = Math.max(t + step, t / 2);
      if (Math.abs(step) <= CLOSE * (1 + t)) {
        break;
      }
    }
    return t;
  }

  /** The probability of more than t, itself not negative. */
  private static double tail(double freedom, double t) {
    double square = t * t;
    // The nearer of the two shares is the one that keeps its digits.
    return square < freedom
        ? (1 - Beta.regularizedBeta(square / (freedom + square), 0.5, freedom / 2)) / 2
        : Beta.regularizedBeta(freedom / (freedom + square), freedom / 2, 0.5) / 2;
  }

  private static double beginning(double freedom, double tail) {
    double both = 2 * tail;
    if (freedom < 2) {
      return 1 / Math.tan(both * Math.PI / 2);
    }
    double a = 1 / (freedom - 0.5);
    double b = 48 / (a * a);
    double c = ((20700 * a / b - 98) * a - 16) * a + 96.36;
    double d = ((94.5 / (b + c) - 3) / b + 1) * Math.sqrt(a * Math.PI / 2) * freedom;
    double y = Math.pow(d * both, 2 / freedom);
    if (y <= 0.05 + a) {
      y =
          ((1 / (((freedom + 6) / (freedom * y) - 0.089 * d - 0.822) * (freedom + 2) * 3)
                              + 0.5 / (freedom + 4))
                          * y
                      - 1)
                  * (freedom + 1)
                  / (freedom + 2)
              + 1 / y;
      return Math.sqrt(freedom * Math.max(y, 0));
    }
    // Near the middle Hill goes by the normal quantile; its logistic likeness begins as well.
    return Math.max(Math.log((1 - tail) / tail) / 1.7, 1e-3);
  }
}
