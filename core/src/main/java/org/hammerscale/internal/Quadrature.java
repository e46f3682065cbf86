package org.hammerscale.internal;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Integrals over temperature. Between two cuts the integrands here are smooth, so one fixed Gauss
 * rule on each piece is exact to some ten digits, and costs the same every time; an adaptive rule
 * would spend its steps on finding the jumps that are known beforehand.
 */
public final class Quadrature {
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(16);

  private Quadrature() {}

  /**
   * Integrates a function that is smooth between cuts.
   *
   * @param f the function; it is never asked at a cut or an end
   * @param low the lower end
   * @param high the upper end
   * @param cuts where it jumps, rising
   * @param pole a point below the lower end where the function may have no value
   * @param reach how far a piece may reach, as a multiple of its lower end's distance from the pole
   * @return the integral
   */
  public static double integrate(
      DoubleUnaryOperator f, double low, double high, double[] cuts, double pole, double reach) {
    double sum = 0;
    double from = low;
    int next = 0;
    while (from < high) {
      while (next < cuts.length && cuts[next] <= from) {
        next++;
      }
      double to = Math.min(high, pole + (from - pole) * reach);
      if (next < cuts.length) {
        to = Math.min(to, cuts[next]);
      }
      sum += piece(f, from, to);
      from = to;
    }
    return sum;
  }

  private static double piece(DoubleUnaryOperator f, double from, double to) {
    double middle = (from + to) / 2;
    double half = (to - from) / 2;
    double sum = 0;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      sum += RULE.getWeight(i) * f.applyAsDouble(middle + half * RULE.getPoint(i));
    }
    return sum * half;
  }
}
