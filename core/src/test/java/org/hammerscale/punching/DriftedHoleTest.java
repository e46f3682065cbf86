package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class DriftedHoleTest {
  private static final Section BAR = Section.square(inches(1));
  private static final Hole ROUND = Hole.round(inches("1/2"));
  private static final DriftedHole EYE = DriftedHole.through(BAR, ROUND);

  @Test
  void swellsByTheHoleAndDrawsIn() {
    assertEquals(inches("1 1/2"), EYE.widthOverEye());
    assertEquals(inches("1/2"), EYE.narrowerCheek());
    assertEquals(inches("1/2"), EYE.widerCheek());
    assertEquals(Math.PI / 4 - 0.5, EYE.shortening().getValue(), 1e-15);
    assertEquals(inches("1/2"), EYE.reach());
    assertTrue(EYE.cautions().isEmpty(), EYE.cautions().toString());
  }

  @Test
  void losesNothing() {
    assertEquals(Losses.NONE, EYE.metalLost());
    assertEquals(Estimate.exact(EYE.slit().length()), EYE.stock(BAR));
    assertEquals(Math.PI / 4, EYE.metalKept().likely().getValue(), 1e-15);
    // From a bar of twice the section, half the length.
    Section twice = Section.flat(inches(2), inches(1));
    assertEquals(Math.PI / 8, EYE.stock(twice).likely().getValue(), 1e-15);
    assertEquals("drifted hole", EYE.name());
    assertEquals(BAR, EYE.start());
    assertEquals(BAR, EYE.end());
    assertEquals(ROUND, EYE.hole());
  }

  @Test
  void takesAnotherSlit() {
    DriftedHole shop = EYE.withSlit(Slit.byShopRule(ROUND));
    assertEquals(Estimate.exact(inches("3/4")), shop.stock(BAR));
    assertEquals(inches("1/4"), shop.shortening());
    assertEquals(EYE.widthOverEye(), shop.widthOverEye());
    assertTrue(shop.cautions().isEmpty());
  }

  @Test
  void liesOffCentre() {
    DriftedHole off = EYE.offCentre(inches("1/8"));
    assertEquals(inches("3/8"), off.narrowerCheek());
    assertEquals(inches("5/8"), off.widerCheek());
    assertEquals(1, off.cautions().size());
    assertTrue(off.cautions().get(0).text().startsWith("the cheek of 3/8 in is less than half"));
    assertEquals(
        "offset of the hole must be less than 1/2 in, so that the bar is whole on both sides, was 1/2 in; set"
            + " the hole nearer to the middle",
        assertThrows(IllegalArgumentException.class, () -> EYE.offCentre(inches("1/2")))
            .getMessage());
    assertEquals(
        "offset must not be negative, was -1 in; give zero if there is none",
        assertThrows(IllegalArgumentException.class, () -> EYE.offCentre(inches(-1))).getMessage());
  }

  @Test
  void cautionsWhereTheBarIsAskedForTooMuch() {
    DriftedHole wide = DriftedHole.through(BAR, Hole.round(inches("1 1/4")));
    assertTrue(
        wide.cautions()
            .get(0)
            .text()
            .startsWith("the hole of 1 1/4 in is wider than the bar (1 in)"));
    DriftedHole thin =
        DriftedHole.through(Section.onEdge(inches("1/4"), inches(1)), Hole.round(inches("1/8")));
    assertTrue(thin.cautions().get(0).text().contains("less than half as wide"));
    DriftedHole longSlit = EYE.withSlit(Slit.of(inches(1)));
    assertTrue(longSlit.cautions().get(0).text().contains("is longer than half the way round"));
    DriftedHole shortSlit = EYE.withSlit(Slit.of(inches("5/8")));
    assertTrue(shortSlit.cautions().get(0).text().contains("stretch by more than a seventh"));
    DriftedHole mortise = DriftedHole.through(BAR, Hole.mortise(inches(1), inches("1/4")));
    assertTrue(mortise.cautions().get(0).text().contains("one marked 1 3/4 in finished 2 in"));
    assertTrue(DriftedHole.through(BAR, Hole.square(inches("1/2"))).cautions().isEmpty());
  }

  @Test
  void showsItsWorkings() {
    for (Hole hole :
        new Hole[] {ROUND, Hole.square(millimetres(10)), Hole.mortise(inches(1), inches("1/4"))}) {
      DriftedHole eye = DriftedHole.through(BAR, hole);
      Workings.check(eye.working(), eye.metalKept().likely());
      Workings.check(eye.widthWorking(), eye.widthOverEye());
      assertEquals(eye.cautions(), eye.working().cautions());
    }
    assertEquals("1/2 in round hole drifted from a 0.7854 in slit in 1 in square", EYE.toString());
  }

  @Test
  void speaksTheBarsUnitAcrossAndTheHolesAlong() {
    DriftedHole mixed = DriftedHole.through(BAR, Hole.round(millimetres(12.7)));
    assertEquals(inches("1 1/2"), mixed.widthOverEye());
    assertEquals("12.7 mm", mixed.reach().toString());
    assertTrue(mixed.stock(BAR).likely().isEquivalentTo(EYE.stock(BAR).likely()));
  }

  @Test
  void refusesATube() {
    Section tube = Section.roundTube(inches(1), inches("1/8"));
    assertEquals(
        "section must be a solid bar, was " + tube + "; drill holes in a tube",
        assertThrows(IllegalArgumentException.class, () -> DriftedHole.through(tube, ROUND))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> PunchedHole.through(tube, ROUND));
  }

  @Test
  void refusesNull() {
    assertThrows(NullPointerException.class, () -> DriftedHole.through(null, ROUND));
    assertThrows(NullPointerException.class, () -> DriftedHole.through(BAR, null));
    assertThrows(NullPointerException.class, () -> EYE.withSlit(null));
    assertThrows(NullPointerException.class, () -> EYE.offCentre(null));
  }
}
