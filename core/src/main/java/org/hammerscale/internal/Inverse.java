package org.hammerscale.internal;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.hammerscale.units.Measure;

/**
 * Finds the input that gives a wanted answer, for relations that only rise or only fall. An answer
 * out of reach is refused with the range that can be reached.
 */
public final class Inverse {
  private static final double RELATIVE = 1e-14;
  private static final double ABSOLUTE = 1e-300;
  private static final double VALUE = 1e-300;
  private static final int MOST_STEPS = 200;

  private Inverse() {}

  /**
   * Solves {@code relation(x) = wanted} for x between two bounds.
   *
   * @param name what is wanted, for the message
   * @param relation a continuous relation that only rises or only falls between the bounds
   * @param low the lower bound of x
   * @param high the upper bound of x
   * @param wanted the answer wanted
   * @param print how an answer is printed in the message, with its unit
   * @return the x, to a relative 1e-14
   * @throws IllegalArgumentException if the answer cannot be reached, with the reachable range
   */
  public static double solve(
      String name,
      DoubleUnaryOperator relation,
      double low,
      double high,
      double wanted,
      DoubleFunction<Measure<?>> print) {
    double atLow = relation.applyAsDouble(low);
    double atHigh = relation.applyAsDouble(high);
    double least = Math.min(atLow, atHigh);
    double most = Math.max(atLow, atHigh);
    if (!(wanted >= least && wanted <= most)) {
      throw new IllegalArgumentException(
          name
              + " must lie between "
              + print.apply(least)
              + " and "
              + print.apply(most)
              + " to be reached here, was "
              + print.apply(wanted)
              + "; ask for one in that range, or change the other sizes");
    }
    if (wanted == atLow) {
      return low;
    }
    if (wanted == atHigh) {
      return high;
    }
    return new BrentSolver(RELATIVE, ABSOLUTE, VALUE)
        .solve(MOST_STEPS, x -> relation.applyAsDouble(x) - wanted, low, high);
  }
}
