package org.hammerscale.heat;

import javax.measure.quantity.Dimensionless;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * From where to where the metal lost in one heat may lie, in millimetres. Fire and time err apart,
 * each by a factor; beyond that it holds what every published law says of the same heat, and what
 * still air can feed.
 */
record ScaleSpread(double low, double high) {
  static ScaleSpread of(ScaleLaw law, HeatPlan plan) {
    double likely = law.metalLoss(plan.each()).getValue();
    double least = law.metalLoss(plan.shortest()).getValue();
    double most = law.metalLoss(plan.longest()).getValue();
    Estimate<Dimensionless> factor = plan.atmosphere().factor();
    double c = value(factor.likely());
    double low = likely == 0 ? 0 : c * likely / apart(c / value(factor.low()), likely / least);
    double high =
        likely == 0 ? c * most : c * likely * apart(value(factor.high()) / c, most / likely);
    for (ScaleLaw other : ScaleLaw.ALL) {
      double loss = c * other.metalLoss(plan.each()).getValue();
      double fed = c * OxygenSupply.metal(other, plan.each(), OxygenSupply.STILL_AIR);
      low = Math.min(low, Math.min(loss, fed));
      high = Math.max(high, loss);
    }
    return new ScaleSpread(low, high);
  }

  /** Two factors that err apart: the squares of their logarithms add. */
  private static double apart(double first, double second) {
    return Math.exp(Math.hypot(Math.log(first), Math.log(second)));
  }

  private static double value(Measure<Dimensionless> share) {
    return share.in(ShopUnits.ONE);
  }
}
