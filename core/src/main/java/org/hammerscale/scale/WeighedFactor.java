package org.hammerscale.scale;

import javax.measure.quantity.Dimensionless;
import org.apache.commons.math3.stat.StatUtils;
import org.hammerscale.internal.StudentT;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * The factor of a fire from what was judged of it and from weighings: a normal distribution of
 * logarithms with a conjugate normal and inverse gamma prior.
 */
final class WeighedFactor {
  private static final double NINETEEN_OF_TWENTY = 0.95;

  /** For how many weighings the judgement counts: for the mean, and for the spread. */
  private static final double MEAN_WEIGHT = 1;

  private static final double SPREAD_WEIGHT = 4;

  /** A fire that may take so many times what clean air takes, or so little, was not weighed. */
  private static final double WILD = 1e4;

  private WeighedFactor() {}

  static Estimate<Dimensionless> of(Estimate<Dimensionless> judged, double[] logs) {
    int n = logs.length;
    double middle = log(judged.likely());
    double half = (log(judged.high()) - log(judged.low())) / 2;
    double t0 = StudentT.quantile(SPREAD_WEIGHT, NINETEEN_OF_TWENTY);
    double squares = SPREAD_WEIGHT * half * half / (t0 * t0 * (1 + 1 / MEAN_WEIGHT));
    double mean = StatUtils.mean(logs);
    double weight = MEAN_WEIGHT + n;
    double freedom = SPREAD_WEIGHT + n;
    double off = mean - middle;
    squares += n * StatUtils.populationVariance(logs, mean) + MEAN_WEIGHT * n / weight * off * off;
    double likely = (MEAN_WEIGHT * middle + n * mean) / weight;
    double reach =
        StudentT.quantile(freedom, NINETEEN_OF_TWENTY)
            * Math.sqrt(squares / freedom * (1 + 1 / weight));
    if (!(Math.abs(likely) + reach < Math.log(WILD))) {
      throw new IllegalArgumentException(
          "pieces must tell more alike, was a factor that may lie "
              + Measure.of(reach / Math.log(10), ShopUnits.ONE)
              + " powers of ten off; weigh again, all scale brushed off");
    }
    return Estimate.of(exp(likely - reach), exp(likely), exp(likely + reach));
  }

  private static double log(Measure<Dimensionless> factor) {
    return Math.log(factor.in(ShopUnits.ONE));
  }

  private static Measure<Dimensionless> exp(double log) {
    return Measure.of(Math.exp(log), ShopUnits.ONE);
  }
}
