package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** What limits the trust in a cooling time. */
final class CoolingCautions {
  private static final double GREATEST_BIOT = 0.1;
  private static final double ARREST = 800;
  private static final Caution CONTACT =
      Caution.limit(
          "anvil, hammer and tongs take heat too: count on the window, not on the time in the air",
          WorkingShare.SOURCE);

  private CoolingCautions() {}

  static List<Caution> of(Cooling cooling) {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(CONTACT);
    HotMetal metal = cooling.metal();
    HeatCurve curve = metal.curve();
    if (cooling.celsius() > curve.hottest()) {
      cautions.add(
          Caution.limit(
              "the curve for "
                  + curve.name()
                  + " ends at "
                  + Measures.celsius(curve.hottest()).to(cooling.heat().getUnit())
                  + ", below the heat of "
                  + cooling.heat()
                  + "; its last specific heat is held beyond",
              curve.source()));
    }
    if (metal.isCarbonSteel() && cooling.finish().likely().in(ShopUnits.CELSIUS) < ARREST) {
      cautions.add(
          Caution.limit(
              "below 800 °C the time is least to be trusted: the curve's peak at 735 °C is that of"
                  + " heating, and comes lower on the way down",
              curve.source()));
    }
    if (!curve.conducts()) {
      cautions.add(
          Caution.limit(
              "the conductivity of "
                  + metal.material().name()
                  + " is not known here, so it was not checked that the bar is one temperature"
                  + " throughout; thin bars are",
              Source.computed("Biot's number")));
    } else if (cooling.biot() > GREATEST_BIOT) {
      cautions.add(
          Caution.limit(
              "Biot's number is "
                  + Measure.of(cooling.biot(), ShopUnits.ONE)
                  + ", more than 0.1: the skin of so thick a bar is cold long before its heart, and"
                  + " the time holds for neither",
              Source.fromMemory("Incropera and DeWitt, Fundamentals of Heat Transfer", "lumped")));
    }
    return List.copyOf(cautions);
  }
}
