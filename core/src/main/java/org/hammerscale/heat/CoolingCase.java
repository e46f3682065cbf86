package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What cools, but for its shape: from which heat, of which metal, in which air, down to where.
 * Lower end and emissivity are those of the metal unless the caller gave his own.
 */
record CoolingCase(
    Measure<Temperature> heat,
    Bar bar,
    HotMetal metal,
    Air air,
    @Nullable Estimate<Temperature> ownFinish,
    @Nullable Estimate<Dimensionless> ownEmissivity) {

  CoolingCase {
    CoolingLimits.checkHeat(heat, bar, metal, air);
    if (ownFinish != null) {
      CoolingLimits.end(ownFinish.likely(), heat, air);
    }
  }

  CoolingCase by(HotMetal other) {
    return new CoolingCase(heat, bar, other, air, ownFinish, ownEmissivity);
  }

  CoolingCase in(Air other) {
    return new CoolingCase(heat, bar, metal, other, ownFinish, ownEmissivity);
  }

  CoolingCase to(Measure<Temperature> lower) {
    return new CoolingCase(heat, bar, metal, air, Estimate.exact(lower), ownEmissivity);
  }

  CoolingCase withEmissivity(Estimate<Dimensionless> share) {
    return new CoolingCase(heat, bar, metal, air, ownFinish, share);
  }

  Estimate<Temperature> finish() {
    if (ownFinish != null) {
      return ownFinish;
    }
    Material metal = bar.material();
    return isSoftBelowTheRange() ? Estimate.exact(metal.hardensBelow()) : metal.forgingFinish();
  }

  /** Whether the metal is worked on below its published forging range before it hardens. */
  private boolean isSoftBelowTheRange() {
    Material metal = bar.material();
    return metal.has(Property.COLD_WORK)
        && (!metal.has(Property.FORGING_RANGE)
            || metal.hardensBelow().isLessThan(metal.forgingFinish().likely()));
  }

  /** Whether there is a lower end, asked for or that of the metal. */
  boolean hasFinish() {
    return ownFinish != null || isSoftBelowTheRange() || bar.material().has(Property.FORGING_RANGE);
  }

  /** What sets the lower end, as it stands in a sentence. */
  String finishMeaning() {
    if (ownFinish != null) {
      return "the end asked for";
    }
    String metal = bar.material().name();
    return isSoftBelowTheRange()
        ? "below which " + metal + " hardens"
        : "the coldest that " + metal + " is forged at";
  }

  Estimate<Dimensionless> emissivity() {
    return ownEmissivity == null ? metal.emissivity() : ownEmissivity;
  }

  /** The time in the air; shortest if it radiates best and ends hottest. */
  Estimate<Time> time(Body body) {
    Measure<Time> likely = time(body, emissivity().likely(), finish().likely());
    Measure<Temperature> hottest = finish().high();
    return Estimate.of(
        time(body, emissivity().high(), hottest.isGreaterThan(heat) ? heat : hottest),
        likely,
        time(body, emissivity().low(), finish().low()));
  }

  private Measure<Time> time(Body body, Measure<Dimensionless> share, Measure<Temperature> lower) {
    double end = CoolingLimits.end(lower, heat, air);
    return Measures.seconds(law().seconds(body, share.in(ShopUnits.ONE), end, celsius()));
  }

  /** The seconds of the likely time, noted. */
  double seconds(Notes n, Body body) {
    double upper = n.value("θ₁", "heat", "", celsius(), ShopUnits.CELSIUS);
    double lower = n.value("θ₂", finishMeaning(), "", end(), ShopUnits.CELSIUS);
    return law().seconds(n, body, likelyShare(), lower, upper);
  }

  Measure<Temperature> after(double seconds, Body body, Measure<Dimensionless> share) {
    return point(law().temperatureAfter(seconds, body, share.in(ShopUnits.ONE), celsius()));
  }

  List<Cooling.Moment> curve(Body body, int steps) {
    CoolingLaw law = law();
    double share = likelyShare();
    double end = end();
    double step = (celsius() - end) / steps;
    List<Cooling.Moment> moments = new ArrayList<>(steps + 1);
    moments.add(new Cooling.Moment(Measures.seconds(0), heat));
    double seconds = 0;
    double from = celsius();
    for (int i = 1; i <= steps; i++) {
      double to = i == steps ? end : celsius() - i * step;
      seconds += law.seconds(body, share, to, from);
      moments.add(new Cooling.Moment(Measures.seconds(seconds), point(to)));
      from = to;
    }
    return List.copyOf(moments);
  }

  double biot(Body body) {
    return law().biot(body, likelyShare(), celsius());
  }

  /** A working with the sources of its numbers and of their spread. */
  Working working(String title, Notes.Calculation calculation) {
    Working working =
        Notes.taken(title + " from " + heat, ShopUnits.MILLIMETRE, calculation)
            .withSource(metal.curve().specificHeatSource())
            .withSource(
                ownEmissivity == null
                    ? Emissivity.of(metal).source()
                    : Source.commonPractice("emissivity as given"))
            .withSource(air.source());
    return ownFinish == null
        ? working.withSource(
            bar.material()
                .source(isSoftBelowTheRange() ? Property.COLD_WORK : Property.FORGING_RANGE))
        : working;
  }

  private double celsius() {
    return heat.in(ShopUnits.CELSIUS);
  }

  private double end() {
    return CoolingLimits.end(finish().likely(), heat, air);
  }

  private double likelyShare() {
    return emissivity().likely().in(ShopUnits.ONE);
  }

  private Measure<Temperature> point(double celsius) {
    return celsius == celsius() ? heat : Measures.celsius(celsius).to(heat.getUnit());
  }

  private CoolingLaw law() {
    double density = bar.material().density().in(ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    return new CoolingLaw(metal, density, air);
  }
}
