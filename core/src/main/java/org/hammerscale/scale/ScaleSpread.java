package org.hammerscale.scale;

import javax.measure.quantity.Dimensionless;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * From where to where the metal lost in all heats may lie, in millimetres. Fire, time and number of
 * heats err apart, each by a factor; beyond that it holds what every published law says of the same
 * heat, and what still air can feed.
 */
record ScaleSpread(double low, double high) {
  static ScaleSpread of(ScaleLaw law, HeatPlan plan, boolean fed) {
    double likely = law.metalLoss(plan.each()).getValue();
    double least = law.metalLoss(plan.shortest()).getValue();
    double most = law.metalLoss(plan.longest()).getValue();
    Estimate<Dimensionless> factor = plan.atmosphere().factor();
    double c = value(factor.likely());
    double heats = plan.growth(plan.heats());
    double fewer = heats / plan.growth(plan.fewest());
    double more = plan.growth(plan.most()) / heats;
    double low =
        likely == 0
            ? 0
            : c
                * (fed ? fed(law, plan) : likely)
                / apart(c / value(factor.low()), likely / least, fewer);
    double high =
        likely == 0
            ? c * most * more
            : c * likely * apart(value(factor.high()) / c, most / likely, more);
    for (ScaleLaw other : ScaleLaw.ALL) {
      double loss = c * other.metalLoss(plan.each()).getValue();
      low = Math.min(low, c * fed(other, plan));
      high = Math.max(high, loss);
    }
    return new ScaleSpread(low * heats, high * heats);
  }

  private static double fed(ScaleLaw law, HeatPlan plan) {
    return OxygenSupply.metal(law, plan.each(), OxygenSupply.STILL_AIR);
  }

  /** Factors that err apart: the squares of their logarithms add. */
  private static double apart(double fire, double time, double heats) {
    return Math.exp(Math.hypot(Math.hypot(Math.log(fire), Math.log(time)), Math.log(heats)));
  }

  private static double value(Measure<Dimensionless> share) {
    return share.in(ShopUnits.ONE);
  }
}
