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
    assertEquals(inches("33/64"), DRIFT.diameterUpTo(Graduation.SIXTY_FOURTH));
    assertEquals(inches("1/2"), DRIFT.bore());
    assertEquals(
        millimetres(13),
        Drift.leaving(millimetres(12.7), RED).diameterUpTo(Graduation.HALF_MILLIMETRE));
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
    assertEquals(inches("1 1/64"), SWAGE.grooveUpTo(Graduation.SIXTY_FOURTH));
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
}
