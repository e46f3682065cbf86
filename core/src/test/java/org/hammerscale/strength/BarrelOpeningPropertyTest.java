package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for any barrel that a pull would open. */
class BarrelOpeningPropertyTest {
  @Property
  void aBarrelOpensAlikeInPoundsAndNewtons(
      @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double diameter,
      @ForAll @DoubleRange(min = 1, max = 1e5) @Scale(2) double force,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(6) double thickness) {
    Measure<javax.measure.quantity.Force> metric = newtons(force);
    Measure<javax.measure.quantity.Force> pounds = metric.to(ShopUnits.POUND_FORCE);
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
}
