package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class WoodTest {
  private static final Fastener SCREW = new Fastener(Kind.WOOD_SCREW, inches(0.190), inches(0.152));
  private static final Fastener LAG = new Fastener(Kind.LAG_SCREW, inches("1/2"), inches(0.371));
  private static final Fastener NAIL = new Fastener(Kind.NAIL, inches("1/8"), inches("1/8"));
  private static final WoodSpacing DRILLED =
      WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, millimetres(5));

  private static Wood dry(double gravity) {
    return Wood.softwood("deal", OvenDryGravity.of(gravity));
  }

  private static String refused(org.junit.jupiter.api.function.Executable bad) {
    return assertThrows(IllegalArgumentException.class, bad).getMessage();
  }

  @Test
  void gravityKeepsItsBasis() {
    OvenDryGravity dry = OvenDryGravity.of(0.5);
    Workings.check(dry.working(), Measure.of(dry.at12Percent().value(), unit()));
    TwelvePercentGravity moist = TwelvePercentGravity.of(0.5);
    Workings.check(moist.working(), Measure.of(moist.ovenDry().value(), unit()));
    assertTrue(dry.at12Percent().value() < 0.5 && moist.ovenDry().value() > 0.5);
    assertEquals(dry, OvenDryGravity.of(0.5));
    assertEquals(dry.hashCode(), OvenDryGravity.of(0.5).hashCode());
    assertNotEquals(dry, (Object) moist);
    assertEquals(moist, TwelvePercentGravity.of(0.5));
    assertEquals(moist.hashCode(), TwelvePercentGravity.of(0.5).hashCode());
    assertEquals("specific gravity 1.0E-5 oven-dry", OvenDryGravity.of(1e-5).toString());
    assertEquals(1.5, OvenDryGravity.of(1.5).at12Percent().ovenDry().value(), 1e-15);
    assertEquals(
        "oven-dry gravity must be more than 0 and at most 1.5, was 500.0; give it as a plain"
            + " number, such as 0.5",
        refused(() -> OvenDryGravity.of(500)));
    assertTrue(refused(() -> TwelvePercentGravity.of(0)).startsWith("gravity at 12 % must be"));
  }

  private static javax.measure.Unit<javax.measure.quantity.Dimensionless> unit() {
    return org.hammerscale.units.ShopUnits.ONE;
  }

  @Test
  void speciesKeepBothPrintedValues() {
    Wood oak = Wood.named(" white OAK ");
    assertEquals("White oak", oak.name());
    assertTrue(oak.isHardwood() && oak.attacksIron());
    assertEquals(0.73, oak.ovenDry().value());
    assertEquals(0.68, oak.at12Percent().value());
    assertEquals(2, oak.sources().size());
    assertEquals(45, Wood.species().size());
    Wood larch = Wood.named("Western larch");
    assertFalse(larch.isHardwood() || larch.attacksIron());
    assertEquals(TwelvePercentGravity.of(0.52).ovenDry(), larch.ovenDry());
    assertEquals(Source.Kind.READ, larch.sources().get(0).kind());
    String unknown = refused(() -> Wood.named("ironbark"));
    assertTrue(
        unknown.startsWith(
            "species must be one of the table, was ironbark; take one of Douglas-fir coast, "),
        unknown);
    assertTrue(unknown.endsWith(", Douglas fir, or give the gravity of your own"), unknown);
    assertEquals("name must not be blank; say what it is", refused(() -> dryNamed(" ")));
  }

  /** ρ / 1120, and from there 1 / (1 − 0.108 G); printed densities in kg/m³. */
  @Test
  void europeanTimberGoesByItsPlainName() {
    assertEquals("Oak (European)", Wood.named("oak").name());
    assertEquals(0.6805, Wood.named("oak").ovenDry().value(), 5e-5);
    assertEquals(0.6908, Wood.named("Beech (European)").ovenDry().value(), 5e-5);
    assertEquals(0.5586, Wood.named("larch").ovenDry().value(), 5e-5);
    assertEquals(0.4298, Wood.named("SPRUCE").ovenDry().value(), 5e-5);
    assertEquals(0.6805, Wood.named("ash").ovenDry().value(), 5e-5);
    assertEquals(0.5285, Wood.named("sweet chestnut").ovenDry().value(), 5e-5);
    assertEquals(0.4789, Wood.named("pine").ovenDry().value(), 5e-5);
    assertEquals(0.66, Wood.named("elm").ovenDry().value(), 5e-5);
    assertEquals(0.4987, Wood.named("Douglas fir").ovenDry().value(), 5e-5);
    assertTrue(Wood.named("oak").attacksIron() && Wood.named("sweet chestnut").attacksIron());
    assertFalse(Wood.named("larch").isHardwood());
    assertEquals("Sugar maple (hard)", Wood.named("sugar maple").name());
  }

  private static Wood dryNamed(String name) {
    return Wood.hardwood(name, OvenDryGravity.of(0.5));
  }

  @Test
  void oakAndTreatedTimberEatIron() {
    assertEquals(2, Wood.named("White oak").cautions().size());
    assertTrue(Wood.named("White oak").cautions().get(0).text().contains("eats bare iron"));
    Wood deal = dry(0.4);
    assertEquals(1, deal.cautions().size());
    assertTrue(deal.cautions().get(0).text().startsWith("wet, green, treated"));
    assertEquals(2, deal.attackingIron().cautions().size());
    assertEquals(deal.ovenDry(), deal.attackingIron().ovenDry());
  }

  @Test
  void distancesFollowTheAngle() {
    WoodSpacing level = DRILLED.pulledAt(degrees(90));
    assertEquals(millimetres(20), level.alongGrain());
    assertEquals(millimetres(35), DRILLED.unloadedEnd());
    WoodSpacing bolt = WoodSpacing.by(SpacingRule.BOLT_IN_SOFTWOOD, inches("3/8"));
    assertEquals("2 5/8 in", bolt.loadedEnd().toString());
    assertEquals("9/16 in", bolt.betweenRows().toString());
    assertEquals(millimetres(35), level.loadedEdge());
    assertEquals(millimetres(15), DRILLED.pulledAt(degrees(0)).loadedEdge());
    // With no angle each takes its worst.
    assertEquals(level.loadedEdge(), DRILLED.loadedEdge());
    assertEquals(DRILLED.pulledAt(degrees(0)).alongGrain(), DRILLED.alongGrain());
    assertEquals(SpacingRule.EC5_PRE_DRILLED, level.rule());
    assertEquals(millimetres(5), level.diameter());
    assertEquals(
        "angle to the grain must lie between 0° and 90°, was 91°; give the sharp angle between"
            + " force and grain",
        refused(() -> DRILLED.pulledAt(degrees(91))));
    assertEquals(
        "EN 1995-1-1, pre-drilled, 5 mm: 25 mm along, 20 mm across the grain", DRILLED.toString());
  }

  @Test
  void ironOnWoodEasesSpacingsNotEdges() {
    WoodSpacing iron = DRILLED.steelToTimber();
    assertEquals(17.5, iron.alongGrain().getValue(), 1e-14);
    assertEquals(14, iron.acrossGrain().getValue(), 1e-14);
    assertEquals(14, iron.betweenRows().getValue(), 1e-14);
    assertEquals(DRILLED.loadedEnd(), iron.loadedEnd());
    assertEquals(DRILLED.loadedEdge(), iron.loadedEdge());
    assertEquals(iron.alongGrain(), iron.pulledAt(degrees(0)).alongGrain());
    assertEquals(
        "rule must be one of EN 1995-1-1 to be eased for iron on wood, was NDS Commentary, steel"
            + " side plate, prebored; take its distances as they are",
        refused(
            () -> WoodSpacing.by(SpacingRule.STEEL_PLATE_PREBORED, inches("1/4")).steelToTimber()));
  }

  @Test
  void theRuleFollowsTheDensity() {
    assertEquals(
        SpacingRule.EC5_UP_TO_420, SpacingRule.ec5NotPreDrilled(kilogramsPerCubicMetre(420)));
    assertEquals(
        SpacingRule.EC5_UP_TO_500, SpacingRule.ec5NotPreDrilled(kilogramsPerCubicMetre(421)));
    assertEquals(
        "characteristic density must be at most 500 kg/m³ to drive fasteners without a hole, was"
            + " 550 kg/m³; pre-drill, and take EC5_PRE_DRILLED",
        refused(() -> SpacingRule.ec5NotPreDrilled(kilogramsPerCubicMetre(550))));
  }

  @Test
  void rulesAreCautiousOutsideTheirDiameters() {
    assertTrue(DRILLED.cautions().isEmpty());
    assertEquals(1, caution(SpacingRule.EC5_PRE_DRILLED, 8));
    assertEquals(1, caution(SpacingRule.EC5_UP_TO_420, 6));
    assertEquals(2, caution(SpacingRule.EC5_UP_TO_420, 8));
    assertEquals(0, caution(SpacingRule.WOOD_MEMBER_PREBORED, 6));
    assertEquals(1, caution(SpacingRule.WOOD_MEMBER_PREBORED, 7));
    assertEquals(2, caution(SpacingRule.BOLT_IN_HARDWOOD, 6));
    assertEquals(1, caution(SpacingRule.BOLT_IN_HARDWOOD, 7));
  }

  private static int caution(SpacingRule rule, double diameter) {
    return WoodSpacing.by(rule, millimetres(diameter)).cautions().size();
  }

  @Test
  void everyDistanceShowsItsWorking() {
    for (SpacingRule rule : SpacingRule.values()) {
      WoodSpacing worst = WoodSpacing.by(rule, millimetres(4.5));
      check(worst);
      check(worst.pulledAt(degrees(30)));
      if (rule.isEurocode()) {
        check(worst.pulledAt(degrees(30)).steelToTimber());
      }
    }
  }

  private static void check(WoodSpacing spacing) {
    Workings.check(spacing.alongGrainWorking(), spacing.alongGrain());
    Workings.check(spacing.acrossGrainWorking(), spacing.acrossGrain());
    Workings.check(spacing.betweenRowsWorking(), spacing.betweenRows());
    Workings.check(spacing.betweenStaggeredRowsWorking(), spacing.betweenStaggeredRows());
    Workings.check(spacing.loadedEndWorking(), spacing.loadedEnd());
    Workings.check(spacing.unloadedEndWorking(), spacing.unloadedEnd());
    Workings.check(spacing.loadedEdgeWorking(), spacing.loadedEdge());
    Workings.check(spacing.unloadedEdgeWorking(), spacing.unloadedEdge());
  }

  @Test
  void seamsKeepTheWiderOfEdgeAndRim() {
    SeamClearance seam = SeamClearance.around(inches("1/4"), DRILLED.pulledAt(degrees(90)));
    assertEquals(millimetres(35), seam.pulledTowards());
    assertEquals(millimetres(15), seam.pulledAway());
    SeamClearance wide = seam.withMargin(inches("1/2"));
    assertEquals(15.875, wide.pulledAway().getValue(), 1e-14);
    assertEquals("mm", wide.pulledAway().getUnit().toString());
    for (SeamClearance each : new SeamClearance[] {seam, wide}) {
      Workings.check(each.pulledTowardsWorking(), each.pulledTowards());
      Workings.check(each.pulledAwayWorking(), each.pulledAway());
    }
    assertEquals(
        "no hole within 35 mm of a seam it is pulled towards, 15 mm of any other", seam.toString());
    assertEquals(
        "margin must not be negative, was -1 mm; give zero if there is none",
        refused(() -> seam.withMargin(millimetres(-1))));
    assertTrue(
        refused(() -> SeamClearance.around(millimetres(0), DRILLED)).startsWith("hole must"));
  }

  @Test
  void boundariesOfDensityBelongToTheLighterClass() {
    assertEquals(PilotHole.Density.LIGHT, PilotHole.Density.of(OvenDryGravity.of(0.5)));
    assertEquals(PilotHole.Density.MIDDLE, PilotHole.Density.of(OvenDryGravity.of(0.6)));
    assertEquals(PilotHole.Density.DENSE, PilotHole.Density.of(OvenDryGravity.of(0.601)));
    // Fir at 12 % is 0.48, oven-dry 0.50; the oven-dry value decides.
    Wood near = Wood.softwood("near", TwelvePercentGravity.of(0.49));
    assertEquals(PilotHole.Density.MIDDLE, PilotHole.acrossLoad(SCREW, near).density());
  }

  @Test
  void screwsAreDrilledByLoadAndDensity() {
    PilotHole out = PilotHole.pulledOut(SCREW, dry(0.55));
    assertEquals(0.7 * 0.152, out.threadHole().getValue(), 1e-16);
    assertEquals(out.threadHole(), out.leastThreadHole());
    assertEquals(out.threadHole(), out.mostThreadHole());
    assertEquals(inches(0), out.shankHole());
    assertEquals("drill 0.1064 in for the thread", out.toString());
    assertEquals("no pilot hole for the thread", PilotHole.pulledOut(SCREW, dry(0.4)).toString());
    PilotHole across = PilotHole.acrossLoad(SCREW, dry(0.55));
    assertEquals("drill 0.133 in for the thread, 0.1663 in for the shank", across.toString());
  }

  @Test
  void lagScrewsAndNailsHaveARange() {
    PilotHole lag = PilotHole.acrossLoad(LAG, dry(0.55));
    assertEquals(inches(0.3), lag.leastThreadHole());
    assertEquals(inches("3/8"), lag.mostThreadHole());
    assertEquals(0.3375, lag.threadHole().getValue(), 1e-16);
    assertEquals(inches("1/2"), lag.shankHole());
    PilotHole dense = PilotHole.acrossLoad(LAG, Wood.named("white oak"));
    assertEquals("G more than 0.6", dense.density().toString());
    assertEquals("0.325 in", dense.leastThreadHole().toString());
    assertEquals("3/8 in", dense.threadHole().toString());
    PilotHole nail = PilotHole.acrossLoad(NAIL, dry(0.55));
    assertEquals(inches(0), nail.leastThreadHole());
    assertEquals(inches(0.09375), nail.threadHole());
    assertEquals("drill 3/32 in for the nail", nail.toString());
  }

  @Test
  void everyHoleShowsItsWorking() {
    for (Fastener fastener : new Fastener[] {SCREW, LAG, NAIL}) {
      for (double gravity : new double[] {0.4, 0.55, 0.7}) {
        check(PilotHole.pulledOut(fastener, dry(gravity)));
        check(PilotHole.acrossLoad(fastener, dry(gravity)));
      }
    }
  }

  private static void check(PilotHole hole) {
    Workings.check(hole.threadHoleWorking(), hole.threadHole());
    Workings.check(hole.leastThreadHoleWorking(), hole.leastThreadHole());
    Workings.check(hole.mostThreadHoleWorking(), hole.mostThreadHole());
    Workings.check(hole.shankHoleWorking(), hole.shankHole());
  }

  @Test
  void refusesNull() {
    assertThrows(NullPointerException.class, () -> Wood.named(null));
    assertThrows(NullPointerException.class, () -> WoodSpacing.by(null, millimetres(5)));
    assertThrows(NullPointerException.class, () -> SeamClearance.around(millimetres(5), null));
    assertThrows(NullPointerException.class, () -> PilotHole.pulledOut(null, dry(0.5)));
    assertThrows(NullPointerException.class, () -> PilotHole.acrossLoad(SCREW, null));
  }
}
