package org.hammerscale.heat;

import javax.measure.quantity.Temperature;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Between what a bar can cool. */
final class CoolingLimits {
  private CoolingLimits() {}

  /** Refuses a heat that the bar cannot have, or that the room already has. */
  static void checkHeat(Measure<Temperature> heat, Bar bar, HotMetal metal, Air air) {
    boolean melts = bar.material().has(Property.SOLIDUS);
    Measure<Temperature> hottest =
        melts ? bar.material().solidus() : Measures.celsius(metal.curve().hottest());
    if (!isAboveRoom(heat, air) || heat.isGreaterThan(hottest)) {
      throw new IllegalArgumentException(
          "heat must lie between the room at "
              + air.temperature().to(heat.getUnit())
              + " and "
              + hottest.to(heat.getUnit())
              + " for "
              + bar.material().name()
              + ", was "
              + heat
              + (melts ? "; hotter metal melts" : "; give its solidus with withSolidus"));
    }
  }

  /** A lower end in °C, if it lies between the room and the heat. */
  static double end(Measure<Temperature> lower, Measure<Temperature> heat, Air air) {
    if (!isAboveRoom(lower, air) || lower.isGreaterThan(heat)) {
      throw new IllegalArgumentException(
          "lower end must lie between the room at "
              + air.temperature().to(heat.getUnit())
              + " and the heat of "
              + heat
              + ", was "
              + lower.to(heat.getUnit())
              + "; heat it hotter, or give another end with to(…)");
    }
    return lower.in(ShopUnits.CELSIUS);
  }

  private static boolean isAboveRoom(Measure<Temperature> point, Air air) {
    return point.in(ShopUnits.CELSIUS) > air.temperature().in(ShopUnits.CELSIUS) + CoolingLaw.COLD;
  }
}
