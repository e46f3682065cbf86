package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.heat.Contraction;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.BarrelOpening;
import org.hammerscale.strength.Fork;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.strength.PinLoad;
import org.hammerscale.strength.PinSize;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for any pin, drift and barrel. */
class PinAndDriftPropertyTest {
  private static final Fork FORK =
      Fork.around(millimetres(30)).cheeks(millimetres(12)).gap(millimetres(1));

  @Property
  void aThickerPinBearsLess(
      @ForAll @DoubleRange(min = 3, max = 50) @Scale(4) double diameter,
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(4) double more,
      @ForAll @DoubleRange(min = 1, max = 1e5) @Scale(2) double force) {
    PinLoad thin = PinLoad.on(Pin.of(millimetres(diameter)), newtons(force));
    PinLoad thick = PinLoad.on(Pin.of(millimetres(diameter + more)), newtons(force));
    for (PinLoad.Shear shear : PinLoad.Shear.values()) {
      assertTrue(thick.meanShear(shear).isLessThan(thin.meanShear(shear)));
      assertTrue(thick.peakShear(shear).isGreaterThan(thick.meanShear(shear)));
    }
    assertTrue(thick.bending(FORK).isLessThan(thin.bending(FORK)));
    assertTrue(thick.bearing(millimetres(30)).isLessThan(thin.bearing(millimetres(30))));
  }

  @Property
  void theChosenPinCarriesAndTheNextSmallerDoesNot(
      @ForAll @DoubleRange(min = 50, max = 15000) @Scale(2) double force,
      @ForAll @DoubleRange(min = 60, max = 400) @Scale(1) double strength,
      @ForAll @DoubleRange(min = 1, max = 4) @Scale(2) double safety) {
    PermissibleStress stress = PermissibleStress.of(megapascals(strength), safety);
    PinSize size = PinSize.inFork(newtons(force), FORK, stress);
    for (BarSizes series : List.of(PinSize.METRIC_SIZES, PinSize.INCH_SIZES)) {
      List<Measure<Length>> sizes = series.sections().stream().map(Section::width).toList();
      int chosen = sizes.indexOf(size.from(series).diameter());
      assertTrue(carries(sizes.get(chosen), force, stress));
      assertTrue(chosen == 0 || !carries(sizes.get(chosen - 1), force, stress));
    }
  }

  private static boolean carries(Measure<Length> diameter, double force, PermissibleStress stress) {
    PinLoad load = PinLoad.on(Pin.of(diameter), newtons(force));
    return load.peakShear(PinLoad.Shear.DOUBLE).isLessThanOrEqualTo(stress.shear())
        && load.bending(FORK).isLessThanOrEqualTo(stress.tension())
        && load.bearing(FORK.middle()).isLessThanOrEqualTo(stress.tension())
        && load.bearing(FORK.cheek().multiply(2)).isLessThanOrEqualTo(stress.tension());
  }

  @Property
  void theLeastPinJustBears(
      @ForAll @DoubleRange(min = 1, max = 1e6) @Scale(2) double force,
      @ForAll @DoubleRange(min = 10, max = 1000) @Scale(1) double strength) {
    PermissibleStress stress = PermissibleStress.of(megapascals(strength), 2);
    Pin pin = Pin.of(PinSize.inSingleShear(newtons(force), stress).leastDiameter());
    assertEquals(
        stress.shear().getValue(),
        PinLoad.on(pin, newtons(force)).peakShear(PinLoad.Shear.SINGLE).getValue(),
        1e-12 * strength);
  }

  @Property
  void poundsAndInchesAgreeWithNewtonsAndMillimetres(
      @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double diameter,
      @ForAll @DoubleRange(min = 1, max = 1e5) @Scale(2) double force,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double thickness) {
    Measure<javax.measure.quantity.Force> metric = newtons(force);
    Measure<javax.measure.quantity.Force> pounds = metric.to(ShopUnits.POUND_FORCE);
    Pin inch = Pin.of(inches(diameter));
    Pin millimetre = Pin.of(millimetres(25.4 * diameter));
    same(
        PinLoad.on(inch, pounds).bending(FORK).in(ShopUnits.MEGAPASCAL),
        PinLoad.on(millimetre, metric).bending(FORK).getValue());
    Barrel eye = Barrel.around(inches(diameter), Section.flat(inches(1.5), inches(thickness)));
    Barrel metricEye =
        Barrel.around(
            millimetres(25.4 * diameter),
            Section.flat(millimetres(38.1), millimetres(25.4 * thickness)));
    double stress = BarrelOpening.of(metricEye).curvedStress(metric).getValue();
    assertEquals(
        stress,
        BarrelOpening.of(eye).curvedStress(pounds).in(ShopUnits.MEGAPASCAL),
        1e-10 * stress);
    PermissibleStress mpa = PermissibleStress.of(megapascals(235), 2);
    PermissibleStress psi = PermissibleStress.of(megapascals(235).to(ShopUnits.PSI), 2);
    same(
        BarrelOpening.of(eye).plasticLimitWithPull(psi.strength()).in(ShopUnits.NEWTON),
        BarrelOpening.of(metricEye).plasticLimitWithPull(mpa.strength()).getValue());
  }

  private static void same(double one, double other) {
    assertEquals(one, other, 1e-12 * Math.abs(one));
  }

  @Property
  void firstYieldIsWhereTheStressIsTheStrength(
      @ForAll @DoubleRange(min = 3, max = 50) @Scale(4) double bore,
      @ForAll @DoubleRange(min = 1, max = 20) @Scale(4) double thickness) {
    BarrelOpening opening = opening(bore, thickness);
    PermissibleStress stress = PermissibleStress.of(Material.MILD_STEEL, 2);
    assertEquals(248, opening.curvedStress(opening.firstYield(stress.strength())).getValue(), 1e-9);
    // The limit with the pull lies on M / Mₚ + (N / Nₚ)² = 1.
    double f = opening.plasticLimitWithPull(stress.strength()).getValue();
    double n = f / (248 * 30 * thickness);
    double m = f / opening.plasticLimit(stress.strength()).getValue();
    assertEquals(1, m + n * n, 1e-12);
  }

  /** In a curl tighter than the strap is thick the stress in its sharp inside rises again. */
  @Property
  void aThickerStrapAndASmallerBoreOpenLater(
      @ForAll @DoubleRange(min = 3, max = 25) @Scale(4) double bore,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(4) double share) {
    double thickness = bore * share;
    Measure<javax.measure.quantity.Force> pull = newtons(1000);
    double stress = opening(bore, thickness).curvedStress(pull).getValue();
    assertTrue(opening(bore * 1.1, thickness).curvedStress(pull).getValue() > stress);
    assertTrue(opening(bore, thickness * 1.1).curvedStress(pull).getValue() < stress);
    assertTrue(opening(bore, thickness).straightStress(pull).getValue() < stress);
  }

  /** A strap that is thin for its curl is as good as straight. */
  @Property
  void theCurvedBeamBecomesStraight(
      @ForAll @DoubleRange(min = 200, max = 1000) @Scale(4) double bore) {
    BarrelOpening thin = opening(bore, 1);
    double ratio = thin.curvedStress(newtons(1)).ratio(thin.straightStress(newtons(1)));
    assertEquals(1, ratio, 1 / bore);
  }

  private static BarrelOpening opening(double bore, double thickness) {
    return BarrelOpening.of(
        Barrel.around(millimetres(bore), Section.flat(millimetres(30), millimetres(thickness))));
  }

  @Property
  void theDriftLeavesItsBore(
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 20, max = 1200) @Scale(3) double heat,
      @ForAll @DoubleRange(min = 20, max = 700) @Scale(3) double warm) {
    Contraction work = Contraction.from(celsius(heat), Material.MILD_STEEL);
    Contraction tool = Contraction.from(celsius(warm), Material.MEDIUM_CARBON_STEEL);
    Drift drift = Drift.leaving(millimetres(bore), work).withTool(tool);
    assertEquals(bore, drift.boreLeftBy(drift.diameter()).getValue(), 1e-14 * bore);
    assertTrue(drift.boreLeftByEye(drift.diameter()).covers(drift.boreLeftBy(drift.diameter())));
    Swage swage = Swage.truing(millimetres(bore), work).withTool(tool);
    assertEquals(bore, swage.outsideLeftBy(swage.groove()).getValue(), 1e-14 * bore);
    assertEquals(drift.diameter(), swage.groove());
    // As cold the heat gives it: what the tool measures hot is what the work measures hot.
    assertEquals(drift.hotBore().getValue(), tool.hot(drift.diameter()).getValue(), 1e-14 * bore);
    Drift inch = Drift.leaving(inches(bore / 25.4), work).withTool(tool);
    assertEquals(
        drift.diameter().getValue(), inch.diameter().in(ShopUnits.MILLIMETRE), 1e-13 * bore);
  }
}
