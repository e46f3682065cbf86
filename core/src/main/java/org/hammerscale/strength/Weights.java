package org.hammerscale.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What a mass presses down with, in the caller's system: pounds press in pounds-force. */
final class Weights {
  /** Standard gravity, m/s². */
  private static final double GRAVITY = 9.80665;

  private Weights() {}

  static Measure<Force> of(String name, Quantity<Mass> mass) {
    Measure<Mass> measure = Arguments.notNegativeMass(name, mass);
    if (measure.getValue() == 0) {
      throw new IllegalArgumentException(
          name + " must be more than zero, was " + measure + "; weigh it or reckon it by volume");
    }
    boolean customary =
        measure.getUnit().equals(ShopUnits.POUND) || measure.getUnit().equals(ShopUnits.OUNCE);
    return customary
        ? Measure.of(measure.in(ShopUnits.POUND), ShopUnits.POUND_FORCE)
        : Measure.of(measure.in(ShopUnits.KILOGRAM) * GRAVITY, ShopUnits.NEWTON);
  }
}
