package org.hammerscale.scale;

import javax.measure.quantity.Dimensionless;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * From where to where the metal lost in all heats may lie, in millimetres: round the likely value,
 * by factors of the fire, of the time and of the number of heats, which err apart. Beyond that it
 * holds what every published law says of the same heat, fed alike.
 */
record ScaleSpread(double low, double high) {
  static ScaleSpread of(ScaleLaw law, HeatPlan plan, boolean fed) {
    double likely = once(law, plan, plan.each(), fed);
    double heats = plan.growth(plan.heats());
    if (likely == 0) {
      double longest = once(law, plan, plan.longest(), fed);
      return new ScaleSpread(
          0, longest * value(plan.atmosphere().factor().high()) * plan.growth(plan.most()));
    }
    double c = value(plan.atmosphere().factor().likely());
    double low =
        c
            * likely
            / apart(
                c / value(plan.atmosphere().factor().low()),
                likely / once(law, plan, plan.shortest(), fed),
                heats / plan.growth(plan.fewest()));
    double high =
        c
            * likely
            * apart(
                value(plan.atmosphere().factor().high()) / c,
                once(law, plan, plan.longest(), fed) / likely,
                plan.growth(plan.most()) / heats);
    for (ScaleLaw other : ScaleLaw.ALL) {
      double loss = c * once(other, plan, plan.each(), fed);
      low = Math.min(low, loss);
      high = Math.max(high, loss);
    }
    return new ScaleSpread(low * heats, high * heats);
  }

  /** What one heat of a history takes in clean air; of scale that is kept, its even part. */
  private static double once(ScaleLaw law, HeatPlan plan, FireHistory heat, boolean fed) {
    return fed ? OxygenSupply.metal(law, plan, heat) : law.metalLoss(heat).getValue();
  }

  /** Factors that err apart: the squares of their logarithms add. */
  private static double apart(double fire, double time, double heats) {
    return Math.exp(Math.hypot(Math.hypot(Math.log(fire), Math.log(time)), Math.log(heats)));
  }

  private static double value(Measure<Dimensionless> share) {
    return share.in(ShopUnits.ONE);
  }
}
