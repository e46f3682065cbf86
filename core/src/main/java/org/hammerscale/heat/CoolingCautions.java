package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** What limits the trust in a cooling time, and the work that may be done in it. */
final class CoolingCautions {
  private static final double GREATEST_BIOT = 0.1;
  private static final double ARREST = 800;
  private static final Caution CONTACT =
      Caution.limit(
          "anvil, hammer and tongs take heat too: count on the window, not on the time in the air",
          WorkingShare.SOURCE);

  private final CoolingCase given;
  private final HotMetal metal;
  private final HeatCurve curve;
  private final List<Caution> cautions = new ArrayList<>();

  private CoolingCautions(CoolingCase given) {
    this.given = given;
    this.metal = given.metal();
    this.curve = metal.curve();
  }

  static List<Caution> of(CoolingCase given, Body body) {
    CoolingCautions all = new CoolingCautions(given);
    all.cautions.add(CONTACT);
    all.aboutTheCurve();
    all.aboutThickness(body);
    all.cautions.addAll(RangeCautions.of(given));
    if (body.section().isTube()) {
      all.cautions.add(FireCautions.CLOSED_TUBE);
    }
    return List.copyOf(all.cautions);
  }

  private void aboutTheCurve() {
    if (given.heat().in(ShopUnits.CELSIUS) > curve.hottest()) {
      warn(
          "the curve for "
              + curve.name()
              + " ends at "
              + inUnitOfHeat(curve.hottest())
              + ", below the heat of "
              + given.heat()
              + "; its last specific heat is held beyond",
          curve.source());
    }
    if (metal.isCarbonSteel()
        && given.hasFinish()
        && given.finish().likely().in(ShopUnits.CELSIUS) < ARREST) {
      warn(
          "below "
              + inUnitOfHeat(ARREST)
              + " the time is least to be trusted: the curve's peak at "
              + inUnitOfHeat(735)
              + " is that of heating, and comes lower on the way down",
          curve.source());
    }
  }

  private void aboutThickness(Body body) {
    if (!curve.conducts()) {
      warn(
          "the conductivity of "
              + metal.material().name()
              + " is not known here, so it was not checked that the bar is one temperature"
              + " throughout; thin bars are",
          Source.computed("Biot's number"));
    } else if (given.biot(body) > GREATEST_BIOT) {
      warn(
          "Biot's number is "
              + Measure.of(given.biot(body), ShopUnits.ONE)
              + ", more than 0.1: the skin of so thick a bar is cold long before its heart, and"
              + " the time holds for neither",
          Source.fromMemory("Incropera and DeWitt, Fundamentals of Heat Transfer", "lumped"));
    }
  }

  private void warn(String text, Source source) {
    cautions.add(Caution.limit(text, source));
  }

  private Measure<?> inUnitOfHeat(double celsius) {
    return Measures.celsius(celsius).to(given.heat().getUnit());
  }
}
