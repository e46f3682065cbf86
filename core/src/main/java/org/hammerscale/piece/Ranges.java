package org.hammerscale.piece;

import org.apache.commons.math3.special.Erf;

/** How far apart the largest and the smallest of some normal outcomes lie. */
final class Ranges {
  /**
   * Simpson's rule over so many deviations on either side; beyond it 1000 outcomes have nothing.
   */
  private static final double REACH = 9;

  private static final int STEPS = 720;

  private Ranges() {}

  /** The expected range of n outcomes, in standard deviations: ∫ (1 − Φⁿ − (1 − Φ)ⁿ) dx. */
  static double expected(int n) {
    double step = REACH / STEPS; // the integrand is even: half of it, twice
    double sum = 0;
    for (int i = 0; i <= STEPS; i++) {
      double below = Erf.erfc(-i * step / Math.sqrt(2)) / 2;
      double value = 1 - Math.pow(below, n) - Math.pow(1 - below, n);
      sum += (i == 0 || i == STEPS ? 1 : i % 2 == 0 ? 2 : 4) * value;
    }
    return 2 * sum * step / 3;
  }
}
