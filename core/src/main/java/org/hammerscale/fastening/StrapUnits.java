package org.hammerscale.fastening;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * The units that a strap's loads are reckoned in, such that stress × length² is the force.
 *
 * @param length inches or millimetres
 * @param stress psi or megapascals
 * @param force pounds-force or newtons
 */
record StrapUnits(Unit<Length> length, Unit<Pressure> stress, Unit<Force> force) {
  private static final StrapUnits CUSTOMARY =
      new StrapUnits(ShopUnits.INCH, ShopUnits.PSI, ShopUnits.POUND_FORCE);
  private static final StrapUnits METRIC =
      new StrapUnits(ShopUnits.MILLIMETRE, ShopUnits.MEGAPASCAL, ShopUnits.NEWTON);

  /** Customary for a strap whose width is in thousandths of an inch, inches, feet or yards. */
  static StrapUnits of(Section strap) {
    double thousandths = Measure.of(1, strap.width().getUnit()).in(ShopUnits.INCH) * 1000;
    return Math.abs(thousandths - Math.rint(thousandths)) < 1e-6 ? CUSTOMARY : METRIC;
  }

  Measure<Force> force(double value) {
    return Measure.of(value, force);
  }
}
