package org.hammerscale.holding;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.TwelvePercentGravity;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class HoldTest {
  private static final Fastener SCREW = Fastener.of(Kind.WOOD_SCREW, inches(0.25));
  private static final Fastener LAG = Fastener.of(Kind.LAG_SCREW, inches("1/2"));
  private static final Fastener NAIL = Fastener.of(Kind.NAIL, inches("1/8"));
  private static final Wood FIR = Wood.named("Douglas-fir coast");
  private static final Wood OAK = Wood.named("White oak");

  private static String refused(org.junit.jupiter.api.function.Executable bad) {
    return assertThrows(IllegalArgumentException.class, bad).getMessage();
  }

  private static boolean says(List<Caution> cautions, String text) {
    return cautions.stream().anyMatch(caution -> caution.text().contains(text));
  }

  @Test
  void eachBasisTakesItsOwnGravity() {
    // 2850 × 0.50² × 0.25 and 15700 × 0.48² × 0.25, by hand.
    assertEquals(178.125, lbf(ReferenceWithdrawal.of(SCREW, FIR).force(inches(1))), 1e-12);
    Estimate<Force> ultimate = UltimateWithdrawal.of(SCREW, FIR).force(inches(1));
    assertEquals(904.32, lbf(ultimate.likely()), 1e-10);
    // A square law: gravity 16.45 % less and more.
    assertEquals(904.32 * 0.8355 * 0.8355, lbf(ultimate.low()), 1e-9);
    assertEquals(904.32 * 1.1645 * 1.1645, lbf(ultimate.high()), 1e-9);
  }

  private static double lbf(Measure<Force> force) {
    assertEquals("lbf", force.getUnit().toString());
    return force.getValue();
  }

  @Test
  void answersInTheFastenersSystem() {
    ReferenceWithdrawal metric =
        ReferenceWithdrawal.of(Fastener.of(Kind.WOOD_SCREW, millimetres(6.35)), FIR);
    assertEquals("N", metric.force(inches(1)).getUnit().toString());
    assertTrue(metric.force(millimetres(25.4)).isEquivalentTo(poundsForce(178.125)));
    ReferenceWithdrawal thou =
        ReferenceWithdrawal.of(Fastener.of(Kind.WOOD_SCREW, Measure.of(250, ShopUnits.THOU)), FIR);
    assertEquals(178.125, lbf(thou.force(millimetres(25.4))), 1e-12);
    ReferenceWithdrawal feet =
        ReferenceWithdrawal.of(
            Fastener.of(Kind.WOOD_SCREW, Measure.of(0.25 / 12, ShopUnits.FOOT)), FIR);
    assertEquals(178.125, lbf(feet.force(inches(1))), 1e-12);
  }

  @Test
  void endGrainHoldsOnlyLagScrews() {
    for (Fastener fastener : new Fastener[] {SCREW, NAIL}) {
      ReferenceWithdrawal end = ReferenceWithdrawal.of(fastener, FIR).inEndGrain();
      assertEquals(poundsForce(0), end.force(inches(2)));
      assertTrue(end.cautions(inches(2)).get(0).isDanger());
      assertTrue(says(end.cautions(inches(2)), "counts for nothing"));
      assertTrue(UltimateWithdrawal.of(fastener, FIR).inEndGrain().force(inches(2)).isExact());
    }
    ReferenceWithdrawal lag = ReferenceWithdrawal.of(LAG, FIR);
    assertEquals(0.75 * lbf(lag.force(inches(2))), lbf(lag.inEndGrain().force(inches(2))), 1e-12);
    assertTrue(says(lag.inEndGrain().cautions(inches(2)), "three quarters"));
    LateralHold across = LateralHold.of(SCREW, FIR);
    assertEquals(
        lbf(across.force(inches(2)).likely()) * 2 / 3,
        lbf(across.inEndGrain().force(inches(2)).likely()),
        1e-12);
  }

  @Test
  void shortHoldIsToldOrReduced() {
    ReferenceWithdrawal out = ReferenceWithdrawal.of(SCREW, FIR);
    assertTrue(says(out.cautions(inches("1 1/4")), "less than 6 diameters (1 1/2 in)"));
    assertTrue(!says(out.cautions(inches("1 1/2")), "diameters"));
    assertTrue(says(ReferenceWithdrawal.of(LAG, FIR).cautions(inches(1)), "4 diameters (2 in)"));

    LateralHold across = LateralHold.of(SCREW, FIR);
    double full = lbf(across.force(inches("1 3/4")).likely());
    assertEquals(5280 / 16d, full, 1e-12);
    assertEquals(full, lbf(across.force(inches(5)).likely()), 1e-12);
    assertEquals(full * 5 / 7, lbf(across.force(inches("1 1/4")).likely()), 1e-12);
    assertTrue(says(across.cautions(inches("1 1/4")), "wants 1 3/4 in"));
    assertEquals(poundsForce(0), across.force(inches("7/8")).likely());
    assertTrue(across.cautions(inches("7/8")).get(0).isDanger());
    assertEquals(full * 4 / 7, lbf(across.force(inches(1)).likely()), 1e-12);
  }

  @Test
  void fullDepthFollowsFastenerAndWood() {
    assertFullAt(SCREW, OAK, 7);
    assertFullAt(LAG, OAK, 7);
    assertFullAt(LAG, FIR, 11);
    assertFullAt(NAIL, OAK, 10);
    assertFullAt(NAIL, FIR, 14);
  }

  private static void assertFullAt(Fastener fastener, Wood wood, double diameters) {
    LateralHold hold = LateralHold.of(fastener, wood);
    Measure<Length> depth = fastener.diameter().multiply(diameters);
    Estimate<Force> full = hold.force(fastener.diameter().multiply(50));
    assertEquals(full, hold.force(depth));
    assertEquals(lbf(full.likely()) * 0.9, lbf(hold.force(depth.multiply(0.9)).likely()), 1e-11);
  }

  @Test
  void woodOffTheTableIsToldOrRefused() {
    Wood dense = Wood.hardwood("lignum vitae", TwelvePercentGravity.of(1.1));
    LateralHold hold = LateralHold.of(SCREW, dense);
    assertEquals(400, lbf(hold.force(inches(2)).likely()), 1e-12);
    assertTrue(says(hold.cautions(inches(2)), "denser than the table, which ends at 0.74"));
    assertTrue(!says(LateralHold.of(SCREW, OAK).cautions(inches(2)), "denser"));
    assertEquals(
        "wood must have a gravity at 12 % of at least 0.33 for the table of lateral loads, was"
            + " specific gravity 0.15 at 12 % (balsa); bolt through such light wood",
        refused(
            () -> LateralHold.of(SCREW, Wood.hardwood("balsa", TwelvePercentGravity.of(0.15)))));
    // Between two classes the hundredth decides.
    Wood edge = Wood.softwood("edge", OvenDryGravity.of(0.50));
    assertEquals(4320 / 16d, lbf(LateralHold.of(SCREW, edge).force(inches(2)).likely()), 1e-12);
  }

  @Test
  void cautionsBelongToEveryFigure() {
    List<Caution> reference = ReferenceWithdrawal.of(SCREW, OAK).cautions(inches(2));
    assertTrue(says(reference, "adjustments of the local code"));
    assertTrue(says(reference, "licensed engineer"));
    assertTrue(says(reference, "eats bare iron"));
    assertTrue(says(UltimateWithdrawal.of(SCREW, OAK).cautions(inches(2)), "no working load"));
    assertTrue(says(LateralHold.of(LAG, OAK).cautions(inches(9)), "pull along the grain"));
    assertTrue(says(LateralHold.of(SCREW, OAK).cautions(inches(9)), "three quarters of it"));
    AllowableLateral old = AllowableLateral.of(SCREW, AllowableLateral.Group.I);
    assertTrue(says(old.cautions(inches(1)), "carries its share"));
  }

  @Test
  void onlyWoodScrewsHadTheOldRule() {
    assertEquals(
        "screw must be a wood screw for this rule, was a lag screw of 1/2 in; take LateralHold for"
            + " it",
        refused(() -> AllowableLateral.of(LAG, AllowableLateral.Group.I)));
  }

  @Test
  void everyForceShowsItsWorking() {
    Fastener metric = Fastener.of(Kind.LAG_SCREW, millimetres(8));
    for (Fastener fastener : new Fastener[] {SCREW, LAG, NAIL, metric}) {
      for (Wood wood : new Wood[] {FIR, OAK}) {
        for (double depth : new double[] {0.2, 1.2, 9}) {
          check(fastener, wood, inches(depth));
        }
      }
    }
    AllowableLateral old = AllowableLateral.of(SCREW, AllowableLateral.Group.IV);
    Workings.check(old.working(inches(1)), old.force(inches(1)));
    Workings.check(old.inEndGrain().working(inches(1)), old.inEndGrain().force(inches(1)));
  }

  private static void check(Fastener fastener, Wood wood, Measure<Length> depth) {
    ReferenceWithdrawal reference = ReferenceWithdrawal.of(fastener, wood);
    Workings.check(reference.working(depth), reference.force(depth));
    Workings.check(reference.inEndGrain().working(depth), reference.inEndGrain().force(depth));
    UltimateWithdrawal ultimate = UltimateWithdrawal.of(fastener, wood);
    Workings.check(ultimate.working(depth), ultimate.force(depth).likely());
    LateralHold across = LateralHold.of(fastener, wood);
    Workings.check(across.working(depth), across.force(depth).likely());
    Workings.check(across.inEndGrain().working(depth), across.inEndGrain().force(depth).likely());
  }

  @Test
  void rowsShareUnequally() {
    FastenerRow row = FastenerRow.pulledOut(5);
    Workings.check(row.working(), row.effectiveNumber().likely());
    assertEquals(5, row.count());
    Estimate<Force> held = row.holds(newtons(100));
    assertEquals(newtons(500), held.high());
    assertEquals(100 * Math.pow(5, 0.8), held.low().getValue(), 1e-10);
    Estimate<Force> first = row.mostLoaded(newtons(500));
    assertEquals(newtons(100), first.low());
    assertTrue(first.likely().isGreaterThan(newtons(100)));
    assertTrue(first.high().isGreaterThan(first.likely()));
    Estimate<Force> spread = Estimate.of(newtons(50), newtons(100), newtons(200));
    assertEquals(newtons(1000), row.holds(spread).high());
    assertEquals(0.5 * held.low().getValue(), row.holds(spread).low().getValue(), 1e-10);
    assertTrue(row.cautions().get(0).text().startsWith("the first fastener by the eye"));
    assertTrue(row.holds(newtons(0)).isExact());
  }

  @Test
  void oneAloneCarriesAll() {
    for (FastenerRow one :
        List.of(
            FastenerRow.pulledOut(1),
            FastenerRow.acrossGrain(1),
            FastenerRow.alongGrain(1, LAG, inches(2)))) {
      assertEquals(Estimate.exact(poundsForce(80)), one.mostLoaded(poundsForce(80)));
      assertTrue(one.cautions().isEmpty());
      Workings.check(one.working(), one.effectiveNumber().likely());
    }
  }

  @Test
  void rowsAlongTheGrainFeelTheirSpacing() {
    for (double spacing : new double[] {0.1, 1, 3, 100}) {
      FastenerRow row = FastenerRow.alongGrain(4, LAG, inches(spacing));
      Workings.check(row.working(), row.effectiveNumber().likely());
      assertEquals(spacing < 2 ? 2 : 1, row.cautions().size());
    }
    // 4^0.9 × (2.5 / (13 × 5/16))^(1/4) by hand.
    LagScrew lag = LagScrew.of(inches("5/16"));
    Estimate<Dimensionless> four =
        FastenerRow.alongGrain(4, lag, inches("2 1/2")).effectiveNumber();
    double byHand = Math.pow(4, 0.9) * Math.pow(2.5 / 4.0625, 0.25);
    assertEquals(byHand, four.likely().getValue(), 1e-12);
    FastenerRow far = FastenerRow.alongGrain(4, LAG, inches(100));
    assertTrue(far.effectiveNumber().isExact());
    assertEquals(
        1, FastenerRow.alongGrain(2, LAG, inches("1/4")).effectiveNumber().likely().getValue());
  }

  @Test
  void badInputIsRefusedByName() {
    assertEquals(
        "number of fasteners must be at least 1, was 0; count those of the row",
        refused(() -> FastenerRow.pulledOut(0)));
    assertTrue(
        refused(() -> FastenerRow.alongGrain(2, LAG, inches(0))).startsWith("spacing must be"));
    FastenerRow row = FastenerRow.pulledOut(2);
    assertTrue(refused(() -> row.mostLoaded(newtons(0))).startsWith("load must be"));
    assertTrue(refused(() -> row.holds(newtons(-1))).startsWith("force of one must not"));
    ReferenceWithdrawal out = ReferenceWithdrawal.of(SCREW, FIR);
    assertTrue(refused(() -> out.force(inches(0))).startsWith("length in the wood must be"));
    LateralHold across = LateralHold.of(SCREW, FIR);
    assertTrue(refused(() -> across.force(inches(0))).startsWith("depth in the wood must be"));
    assertThrows(NullPointerException.class, () -> ReferenceWithdrawal.of(null, FIR));
    assertThrows(NullPointerException.class, () -> UltimateWithdrawal.of(SCREW, null));
    assertThrows(NullPointerException.class, () -> LateralHold.of(null, FIR));
    assertThrows(NullPointerException.class, () -> AllowableLateral.of(SCREW, null));
  }

  @Test
  void referenceNeedsTheGravityAlone() {
    WoodScrew screw = WoodScrew.number(10);
    ReferenceWithdrawal bare = ReferenceWithdrawal.of(screw, OvenDryGravity.of(0.5));
    Wood named = Wood.hardwood("any", OvenDryGravity.of(0.5));
    assertEquals(ReferenceWithdrawal.of(screw, named).force(inches(1)), bare.force(inches(1)));
    assertTrue(bare.toString().contains("specific gravity 0.5 oven-dry"), bare.toString());
  }

  @Test
  void aRowIsComparedWithAnotherNumber() {
    FastenerRow five = FastenerRow.pulledOut(5);
    assertEquals(FastenerRow.pulledOut(8).effectiveNumber(), five.withCount(8).effectiveNumber());
  }
}
