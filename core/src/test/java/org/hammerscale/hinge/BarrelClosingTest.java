package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BarrelClosingTest {
  private static final Section STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Barrel EYE = Barrel.around(inches("1/2"), STRAP);
  private static final BarrelEnd SCARF = BarrelEnd.scarfedTo(inches("1/8")).over(inches("5/8"));
  private static final BarrelEnd LEAST = BarrelEnd.scarfedTo(inches("1/32"));
  private static final BarrelEnd WELD = BarrelEnd.forgeWelded(WeldAllowance.ONE_THICKNESS);

  private static List<Barrel> all() {
    Barrel metric = Barrel.around(millimetres(12.5), Section.flat(inches(1), millimetres(5)));
    Barrel half = Barrel.around(inches("1/2"), Section.halfRound(inches("3/4")));
    return List.of(
        EYE,
        EYE.endedWith(SCARF),
        EYE.endedWith(LEAST),
        EYE.endedWith(BarrelEnd.tucked()),
        EYE.endedWith(WELD),
        EYE.centred(),
        EYE.centred().endedWith(WELD),
        metric.endedWith(BarrelEnd.scarfedTo(millimetres(1))),
        metric.centred(),
        half,
        half.endedWith(WELD),
        Barrel.around(millimetres(12), Section.round(millimetres(8))));
  }

  @Test
  void showsItsWorkings() {
    for (Barrel barrel : all()) {
      BarrelClosing closing = barrel.closing();
      Workings.check(closing.uncoveredWorking(), closing.uncovered());
      Workings.check(closing.stripWorking(), closing.stripLength());
      Workings.check(closing.cutWorking(), closing.cutLength());
      Workings.check(closing.leastThinnedWorking(), closing.leastThinned());
      Workings.check(closing.stripFromWorking(inches(2)), closing.stripFrom(inches(2)));
      Workings.check(closing.cutForWorking(inches(2)), closing.cutFor(inches(2)));
      assertTrue(closing.stripFrom(closing.cutFor(inches(2))).isEquivalentTo(inches(2)));
      assertTrue(closing.cutFor(closing.stripLength()).isEquivalentTo(closing.cutLength()));
      Workings.check(closing.slotFloorWorking(inches(2)), closing.slotFloorFromMark(inches(2)));
      Workings.check(barrel.working(), closing.cutLength());
      assertEquals(barrel.cautions().size(), barrel.working().cautions().size());
    }
    Workings.check(
        EYE.closing().leastScarfWorking(inches("1/32")), EYE.closing().leastScarf(inches("1/32")));
  }

  @Test
  void namesItsEndInTheWorking() {
    assertTrue(EYE.working().title().contains("rolled barrel, square-cut end"));
    assertTrue(EYE.working().toString().contains("L = π m = π × 0.75 = 2.3562 in"));
    assertTrue(
        EYE.endedWith(SCARF).working().title().endsWith("straight scarf to 1/8 in over 5/8 in"));
    assertEquals("straight scarf to 1/32 in", LEAST.toString());
    assertEquals(SCARF, EYE.endedWith(SCARF).closing().end());
    assertEquals("centred barrel, square-cut end", EYE.centred().working().title());
    assertEquals("tucked scarf", BarrelEnd.tucked().toString());
    assertEquals(
        "rolled barrel, square-cut end: strip of 1.9635 in (1.7135 in to 2.2135 in)",
        EYE.closing().toString());
  }

  @Test
  void theStockIsThatOfItsEndAThicknessEitherWay() {
    Estimate<Length> stock = EYE.stock(STRAP);
    assertEquals(EYE.closing().stripLength(), stock.likely());
    assertEquals(stock.likely().subtract(inches("1/4")), stock.low());
    assertEquals(stock.likely().add(inches("1/4")), stock.high());
    // What one may cut, in front of the leaf, is a full turn.
    assertEquals(EYE.developedLength(), EYE.mostToCut(STRAP));
    assertEquals(Trimming.BEFORE_WORK, EYE.trimming());
    // A scarf takes less bar than a square end: what is cut before it is thinned.
    Estimate<Length> scarfed = EYE.endedWith(SCARF).stock(STRAP);
    assertEquals(EYE.endedWith(SCARF).closing().cutLength(), scarfed.likely());
    Barrel welded = EYE.endedWith(WELD);
    assertEquals(welded.stock(STRAP).high(), welded.mostToCut(STRAP));
    assertEquals(EYE.endedWith(SCARF).closing().strip(), scarfed);
  }

  @Test
  void aWeldClosesAFullRingAndTakesItsOwn() {
    Barrel welded = EYE.endedWith(WELD);
    assertTrue(welded.metalKept().isExact());
    assertEquals(EYE.developedLength(), welded.closing().stripLength());
    assertEquals(0, welded.closing().uncovered().getValue());
    // One thickness beyond the full turn; half of one less than it, to one and a half more.
    Estimate<Length> stock = welded.stock(STRAP);
    double full = Math.PI * 0.75;
    assertEquals(full + 0.25, stock.likely().in(ShopUnits.INCH), 1e-14);
    assertEquals(full - 0.5 * 0.25, stock.low().in(ShopUnits.INCH), 1e-14);
    assertEquals(full + 0.375, stock.high().in(ShopUnits.INCH), 1e-14);
    Section wide = Section.flat(inches(3), inches("1/4"));
    assertEquals((full + 0.25) / 2, welded.stock(wide).likely().in(ShopUnits.INCH), 1e-12);
    assertTrue(welded.cautions().get(0).isDanger());
    // Centred, the ring ends at the chord of the neck: the segment beyond it is the leaf's.
    Barrel centred = welded.centred();
    double neck = centred.leafStart().in(ShopUnits.INCH);
    double segment = 0.25 * Math.asin(0.25) - 0.125 * neck;
    assertEquals(full - segment / 0.25, centred.closing().stripLength().getValue(), 1e-14);
  }

  @Test
  void aCentredBarrelReachesFromItsTopToTheNeck() {
    Barrel centred = EYE.centred();
    assertTrue(centred.isCentred());
    assertFalse(EYE.isCentred());
    assertEquals("centred barrel", centred.name());
    assertEquals(inches(0), EYE.leafStart());
    // √(1/4 − 1/64)
    assertEquals(Math.sqrt(15) / 8, centred.leafStart().getValue(), 1e-15);
    assertEquals(0.5 + Math.sqrt(15) / 8, centred.reach().getValue(), 1e-15);
    assertEquals(
        "centred barrel with a bore of 1/2 in in 1 1/2 in × 1/4 in flat", centred.toString());
  }

  @Test
  void slotsAreMarkedFromTheLeaf() {
    BarrelClosing closing = EYE.closing();
    assertEquals(inches("1/2"), closing.slotFloorFromMark(inches("1/2")));
    assertEquals(closing.strip().add(inches("1/2")), closing.slotFloorFromEnd(inches("1/2")));
    BarrelClosing centred = EYE.centred().closing();
    double beyond = 0.5 - Math.sqrt(15) / 8;
    assertEquals(beyond, centred.slotFloorFromMark(inches("1/2")).getValue(), 1e-15);
    assertEquals(
        centred.stripLength().getValue() + beyond,
        centred.slotFloorFromEnd(inches("1/2")).likely().getValue(),
        1e-15);
    // A scarf is rolled as it is after thinning.
    BarrelClosing scarfed = EYE.endedWith(SCARF).closing();
    assertEquals(
        scarfed.stripLength().add(inches("1/2")), scarfed.slotFloorFromEnd(inches("1/2")).likely());
  }

  @Test
  void aLengthClosesOnTheBoreItWasCutFor() {
    for (Barrel barrel : all()) {
      Measure<javax.measure.quantity.Length> cut = barrel.stock(barrel.section()).likely();
      Barrel back = barrel.using(cut);
      assertTrue(
          back.insideDiameter().isWithin(barrel.insideDiameter(), inches(1e-11)), barrel::toString);
      assertEquals(barrel.isCentred(), back.isCentred());
      assertEquals(barrel.closing().end(), back.closing().end());
    }
  }

  @Test
  void cautionsOfItsEnd() {
    assertTrue(EYE.cautions().get(0).text().contains("may gall the pin"));
    assertTrue(EYE.endedWith(BarrelEnd.tucked()).cautions().isEmpty());
    assertTrue(EYE.endedWith(LEAST).cautions().isEmpty());
    Barrel heel = EYE.endedWith(BarrelEnd.scarfedTo(inches("1/32")).over(inches("1/4")));
    assertEquals(
        "a scarf of 1/4 in bears on its heel and stands off at its tip: thin at least 0.4834 in",
        heel.cautions().get(0).text());
    Barrel half = Barrel.around(inches("1/2"), Section.halfRound(inches("3/4")));
    assertTrue(half.cautions().get(1).text().contains("reckoned through its middle"));
  }

  @Test
  void refusesEndsThatCannotBe() {
    refused(
        "end of a centred barrel must be cut square or forge-welded, was tucked scarf; no rule is"
            + " known for another, so trim it to fit, or roll the barrel to one face",
        () -> EYE.centred().endedWith(BarrelEnd.tucked()));
    refused("end of a centred barrel must be", () -> EYE.endedWith(SCARF).centred());
    refused(
        "end of a centred barrel must be", () -> EYE.centred().closing().leastScarf(inches(.1)));
    Barrel round = Barrel.around(inches("1/2"), Section.round(inches("1/4")));
    refused(
        "section of the barrel must be a flat or a square for a centred barrel or a scarf",
        round::centred);
    refused(
        "section of the barrel must be a flat or a square",
        () -> round.endedWith(BarrelEnd.tucked()));
    refused(
        "edge thickness of the barrel end must be less than the strap's thickness of 1/4 in, was 1/4 in; thin the"
            + " scarf more, or leave the end square",
        () -> EYE.endedWith(BarrelEnd.scarfedTo(inches("1/4"))));
    refused("edge thickness must be more than zero", () -> BarrelEnd.scarfedTo(inches(0)));
    refused("scarf length must be more than zero", () -> SCARF.over(inches(0)));
    refused(
        "end must be a straight scarf to have a length, was square-cut end; begin with"
            + " BarrelEnd.scarfedTo",
        () -> BarrelEnd.squareCut().over(inches(1)));
    refused(
        "scarf of the barrel end must leave some of the barrel at full thickness, was 2 in round a bore of"
            + " 1/2 in; shorten the scarf or leave its edge thicker",
        () -> EYE.endedWith(SCARF.over(inches(2))));
    refused(
        "scarf of the barrel end must leave",
        () -> EYE.endedWith(BarrelEnd.scarfedTo(inches(1e-4))));
    refused(
        "depth of notch must reach the neck at 0.4841 in behind the pin, was 1/4 in; cut the notch"
            + " deeper",
        () -> EYE.centred().closing().slotFloorFromMark(inches("1/4")));
    refused("cut must lie between 0.5892 in and", () -> EYE.using(inches("1/2")));
    refused("cut must be more than zero", () -> EYE.closing().stripFrom(inches(0)));
    refused("strip must be more than zero", () -> EYE.closing().cutFor(inches(0)));
    BarrelEnd scarf = BarrelEnd.scarfedTo(inches("1/8")).over(inches("5/8"));
    refused(
        "strip must be longer than its scarf of 5/8 in, was 1/2 in",
        () -> EYE.endedWith(scarf).closing().cutFor(inches("1/2")));
    assertThrows(NullPointerException.class, () -> BarrelEnd.forgeWelded(null));
  }

  private static void refused(String message, Executable call) {
    String text = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(text.startsWith(message), text);
  }
}
