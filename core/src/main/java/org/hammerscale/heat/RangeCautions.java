package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Temperature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** Where a metal is worked too hot or too cold. */
final class RangeCautions {
  /** How far a heat judged by eye may be off, in kelvins; see {@link HeatColour}. */
  private static final double BY_EYE = 100;

  /** Metal that melts below this shows no colour to warn of it, in °C. */
  private static final double FIRST_SEEN = 600;

  private static final double BLUE_FROM = 200;
  private static final double BLUE_TO = 350;

  private static final Source BLUE =
      Source.commonPractice("iron and steel are brittle at about 200 to 350 °C");
  private static final Source EYE =
      Source.commonPractice("a heat judged by eye may be 100 °C off either way");

  private final Material material;
  private final Measure<Temperature> heat;
  private final List<Caution> cautions = new ArrayList<>();

  private RangeCautions(CoolingCase given) {
    this.material = given.bar().material();
    this.heat = given.heat();
  }

  static List<Caution> of(CoolingCase given) {
    RangeCautions all = new RangeCautions(given);
    if (all.material.has(Property.SOLIDUS)) {
      all.aboutMelting(all.material.solidus());
    }
    if (all.material.has(Property.FORGING_RANGE)) {
      all.aboutTheRange(given.finish().likely());
    }
    if (given.hasFinish() && all.material.has(Property.COLD_WORK)) {
      all.aboutColdWork(given.finish().likely());
    }
    if (given.metal().isCarbonSteel()
        && given.hasFinish()
        && given.finish().likely().in(ShopUnits.CELSIUS) < BLUE_TO
        && celsius(all.heat) > BLUE_FROM) {
      all.warn(
          "iron and steel are brittle at blue heat: between "
              + all.inUnitOfHeat(BLUE_FROM)
              + " and "
              + all.inUnitOfHeat(BLUE_TO)
              + " neither hammer nor bend",
          BLUE);
    }
    return all.cautions;
  }

  private void aboutMelting(Measure<Temperature> solidus) {
    if (celsius(heat) > celsius(solidus) - BY_EYE) {
      warn(
          "the heat of "
              + heat
              + " is near the solidus of "
              + material.name()
              + ", "
              + solidus.to(heat.getUnit())
              + ", and the eye may be 100 °C (180 °F) off: burnt metal crumbles",
          EYE);
    }
    if (celsius(solidus) < FIRST_SEEN) {
      warn(
          material.name() + " melts before it glows: measure its heat, do not look for it",
          material.source(Property.SOLIDUS));
    }
  }

  private void aboutTheRange(Measure<Temperature> finish) {
    Source range = material.source(Property.FORGING_RANGE);
    Measure<Temperature> hottest = material.forgingStart().likely();
    Measure<Temperature> coldest = material.forgingFinish().likely();
    if (heat.isGreaterThan(hottest)) {
      warn(
          "the heat of "
              + heat
              + " is too hot to forge "
              + material.name()
              + ", whose range begins at "
              + hottest.to(heat.getUnit())
              + ": its grain coarsens; let it cool to that before the first blow",
          range);
    }
    if (finish.isLessThan(coldest) && !material.has(Property.COLD_WORK)) {
      warn(
          "below "
              + coldest.to(heat.getUnit())
              + " "
              + material.name()
              + " is too cold to forge: it cracks or splits; from there to "
              + finish.to(heat.getUnit())
              + " at most true it gently",
          range);
    }
  }

  /** A metal that does not crack below its range, but hardens. */
  private void aboutColdWork(Measure<Temperature> finish) {
    Measure<Temperature> hardens = material.hardensBelow();
    if (finish.isLessThan(hardens)) {
      warn(
          "below "
              + hardens.to(heat.getUnit())
              + " "
              + material.name()
              + " hardens under the hammer: bend and true it on within reason, do not draw it out,"
              + " and heat it again before it stiffens and cracks",
          material.source(Property.COLD_WORK));
    }
  }

  private void warn(String text, Source source) {
    cautions.add(Caution.limit(text, source));
  }

  private Measure<Temperature> inUnitOfHeat(double celsius) {
    return Measures.celsius(celsius).to(heat.getUnit());
  }

  private static double celsius(Measure<Temperature> point) {
    return point.in(ShopUnits.CELSIUS);
  }
}
