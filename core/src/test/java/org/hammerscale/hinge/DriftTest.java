package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.heat.Contraction;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DriftTest {
  private static final Contraction RED = Contraction.from(celsius(900), Material.MILD_STEEL);
  private static final Contraction WARM = Contraction.from(celsius(300), Material.MILD_STEEL);
  private static final Drift DRIFT = Drift.leaving(inches("1/2"), RED);
  private static final Swage SWAGE = Swage.truing(inches(1), RED);

  @Test
  void isAsLargeAsTheHotBore() {
    // 0.5 × 1.0118.
    assertEquals(0.5059, DRIFT.diameter().getValue(), 1e-15);
    assertEquals(DRIFT.hotBore(), DRIFT.diameter());
    assertEquals(inches("1/2"), DRIFT.bore());
  }

  @Test
  void leavesMoreWhenItHasGrownWarm() {
    assertTrue(DRIFT.withTool(WARM).diameter().isLessThan(DRIFT.diameter()));
    assertTrue(
        DRIFT
            .withTool(WARM)
            .boreLeftBy(inches("1/2"))
            .isGreaterThan(DRIFT.boreLeftBy(inches("1/2"))));
    assertEquals(DRIFT.hotBore(), DRIFT.withTool(WARM).hotBore());
    assertTrue(SWAGE.withTool(WARM).groove().isLessThan(SWAGE.groove()));
  }

  @Test
  void knowsThatTheEyeErrs() {
    Estimate<?> bore = DRIFT.boreLeftByEye(inches("33/64"));
    assertEquals(DRIFT.boreLeftBy(inches("33/64")), bore.likely());
    // 33/64 ÷ 1.0138 at 1000 °C, ÷ 1.011 at 800 °C.
    assertEquals(0.515625 / 1.0138, bore.low().getValue(), 1e-15);
    assertEquals(0.515625 / 1.011, bore.high().getValue(), 1e-15);
    assertEquals(SWAGE.outsideLeftBy(inches(1)), SWAGE.outsideLeftByEye(inches(1)).likely());
  }

  @Test
  void hasABodyAndTwoTapers() {
    assertEquals(inches("1 1/2"), DRIFT.bodyLength(inches("1 1/2")).low());
    assertEquals(1.5 + 0.5059 / 2, DRIFT.bodyLength(inches("1 1/2")).likely().getValue(), 1e-15);
    assertEquals(1.5 + 0.5059, DRIFT.bodyLength(inches("1 1/2")).high().getValue(), 1e-15);
    Estimate<?> enters = DRIFT.enteringTaper(inches("1/4"));
    Estimate<?> struck = DRIFT.struckTaper(inches("1/4"));
    assertEquals(8 * 0.2559, enters.likely().getValue(), 1e-14);
    assertEquals(4 * 0.2559, struck.likely().getValue(), 1e-14);
    assertTrue(enters.low().getValue() >= struck.high().getValue());
    Workings.check(DRIFT.bodyWorking(inches(2)), DRIFT.bodyLength(inches(2)).likely());
    Workings.check(
        DRIFT.enteringWorking(inches("1/4")), DRIFT.enteringTaper(inches("1/4")).likely());
    Workings.check(DRIFT.struckWorking(inches("1/4")), DRIFT.struckTaper(inches("1/4")).likely());
  }

  @Test
  void showsItsWorkings() {
    Drift warm = DRIFT.withTool(WARM);
    Workings.check(DRIFT.working(), DRIFT.diameter());
    Workings.check(warm.working(), warm.diameter());
    Workings.check(warm.boreWorking(millimetres(13)), warm.boreLeftBy(millimetres(13)));
    assertEquals(1, warm.working().sources().size());
    String working = warm.working().toString();
    assertTrue(working.contains("elongation of the work at 900 °C"), working);
    assertTrue(working.contains("elongation of the tool at 300 °C"), working);
    assertTrue(working.contains("knock the drift out"), working);
    Workings.check(SWAGE.working(), SWAGE.groove());
    Swage warmer = SWAGE.withTool(WARM);
    Workings.check(warmer.outsideWorking(inches(1)), warmer.outsideLeftBy(inches(1)));
  }

  @Test
  void cautionsWhereTheExpansionIsStretched() {
    Contraction brass = Contraction.from(celsius(700), Material.NAVAL_BRASS);
    assertEquals(1, Swage.truing(inches(1), brass).cautions().size());
    assertEquals(0, SWAGE.cautions().size());
    Drift drift = Drift.leaving(inches(1), brass).withTool(brass);
    assertEquals(3, drift.cautions().size());
    assertEquals(2, Drift.leaving(inches(1), brass).withTool(WARM).working().sources().size());
  }

  @Test
  void swageMeasuresHotAndCold() {
    assertEquals(1.0118, SWAGE.hotOutside().getValue(), 1e-15);
    assertEquals(SWAGE.hotOutside(), SWAGE.groove());
    assertEquals(inches(1), SWAGE.outside());
    ToolChoice groove = SWAGE.chosenFrom(ToolRack.every(Graduation.SIXTY_FOURTH));
    assertEquals(inches("1 1/64"), groove.size());
    assertEquals(1.015625 / 1.0118, groove.leaves().getValue(), 1e-15);
    assertEquals(inches(1), groove.wanted());
    assertEquals("1 1/64 in, leaves 1.0038 in", groove.toString());
  }

  @Test
  void speaksItsHeatInTheCallersUnit() {
    Contraction heat = Contraction.from(fahrenheit(1652), Material.MILD_STEEL);
    assertEquals(
        "0.5059 in drift at 68 °F, leaving a bore of 1/2 in in work at 1652 °F",
        Drift.leaving(inches("1/2"), heat).toString());
    assertEquals(
        "1.0081 in swage at 300 °C, leaving an outside of 1 in on work at 900 °C",
        SWAGE.withTool(WARM).toString());
  }

  @Test
  void refusesWhatCannotBe() {
    assertTrue(refused(() -> Drift.leaving(inches(0), RED)).startsWith("bore must"));
    assertTrue(refused(() -> DRIFT.boreLeftBy(inches(0))).startsWith("drift must"));
    assertTrue(refused(() -> DRIFT.boreLeftByEye(inches(0))).startsWith("drift must"));
    assertTrue(refused(() -> DRIFT.bodyLength(inches(0))).startsWith("width must"));
    assertEquals(
        "tip must be less than the body of 0.5059 in, was 3/4 in; give the diameter at the thin end"
            + " of the taper",
        refused(() -> DRIFT.enteringTaper(inches("3/4"))));
    assertTrue(refused(() -> DRIFT.struckTaper(inches(1))).startsWith("struck end must"));
    assertTrue(refused(() -> Swage.truing(inches(0), RED)).startsWith("outside must"));
    assertTrue(refused(() -> SWAGE.outsideLeftBy(inches(0))).startsWith("groove must"));
    assertThrows(NullPointerException.class, () -> Drift.leaving(inches(1), null));
    assertThrows(NullPointerException.class, () -> DRIFT.withTool(null));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  /** By hand with e = 1.53 % at 1100 °C: 15 / 1.0153 = 14.77; 14.77 − 14 − 4 × 0.08 = 0.45. */
  @Test
  void isChosenByTheClearanceThatItLeaves() {
    Contraction orange = Contraction.from(celsius(1100), Material.MILD_STEEL);
    Bore bore = Bore.forPin(millimetres(14)).clearing(millimetres(0.5)).coated(millimetres(0.08));
    Drift drift = Drift.leaving(bore.diameter(), orange);
    ToolChoice chosen = drift.chosenFrom(ToolRack.every(Graduation.HALF_MILLIMETRE), bore);
    assertEquals(millimetres(15), chosen.size());
    assertEquals(0.45, bore.clearanceLeftBy(chosen.leaves()).getValue(), 0.005);
    assertEquals(0.45 - 0.5, chosen.over().getValue(), 0.005);
    // The next size up would nearly double it.
    assertEquals(0.94, bore.clearanceLeftBy(drift.boreLeftBy(millimetres(15.5))).getValue(), 0.005);
    ToolRack few = ToolRack.of(millimetres(16), millimetres(12), inches("1/2"));
    assertEquals("sizes of 12 mm, 1/2 in, 16 mm", few.toString());
    String refusal =
        assertThrows(IllegalArgumentException.class, () -> drift.chosenFrom(few, bore))
            .getMessage();
    assertTrue(
        refusal.startsWith(
            "rack must have a drift that leaves the pin 0.25 mm to 0.75 mm of clearance, was sizes"
                + " of 12 mm, 1/2 in, 16 mm, of which 1/2 in leaves -1.81"),
        refusal);
    assertTrue(refusal.contains(" and 16 mm leaves 1.43"), refusal);
    // Of two that will do, 0.45 mm comes nearer to the 0.5 mm asked for than 0.65 mm.
    ToolRack both = ToolRack.of(millimetres(15), millimetres(15.2));
    assertEquals(millimetres(15), drift.chosenFrom(both, bore).size());
    // Told that more will do, the same rack has one.
    assertEquals(
        millimetres(16), drift.chosenFrom(few, bore.upToClearance(millimetres(1.5))).size());
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> DRIFT.chosenFrom(few, bore))
            .getMessage()
            .startsWith("bore must be the one of 1/2 in that the drift leaves, was 14.82 mm"));
  }

  @Test
  void aRackOffersWhatItHas() {
    ToolRack rack = ToolRack.of(inches("1/2"), millimetres(10), inches("5/8"));
    assertEquals(millimetres(10), rack.nearest(inches("1/4")));
    assertEquals(inches("5/8"), rack.nearest(inches(2)));
    assertEquals(inches("1/2"), rack.nearest(inches(0.55)));
    assertEquals(inches("5/8"), rack.nearest(inches("9/16")), "half-way: the larger");
    assertEquals("sizes in 1/64 in steps", ToolRack.every(Graduation.SIXTY_FOURTH).toString());
    assertEquals(inches("1/64"), ToolRack.every(Graduation.SIXTY_FOURTH).nearest(inches(0.0001)));
    assertThrows(IllegalArgumentException.class, () -> ToolRack.of());
  }

  @Test
  void aBoreTellsWhatClearanceWillDo() {
    Bore bore = Bore.forPin(inches("1/2")).clearing(inches("1/64"));
    assertEquals(inches("1/128"), bore.leastClearance());
    assertEquals(inches("3/128"), bore.mostClearance());
    Bore told = bore.fromClearance(inches(0.01)).upToClearance(inches("1/32"));
    assertEquals(inches(0.01), told.leastClearance());
    assertEquals(inches("1/32"), told.coated(inches(0.001)).mostClearance());
    assertThrows(IllegalArgumentException.class, () -> bore.fromClearance(inches("1/32")));
    assertThrows(IllegalArgumentException.class, () -> bore.upToClearance(inches(0.001)));
  }
}
