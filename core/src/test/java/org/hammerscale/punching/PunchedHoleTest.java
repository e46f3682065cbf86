package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PunchedHoleTest {
  private static final Section BAR = Section.flat(inches(1), inches("1/4"));
  private static final Hole SQUARE = Hole.square(inches("1/2"));
  private static final PunchedHole HOLE = PunchedHole.through(BAR, SQUARE);

  @Test
  void losesASlugBetweenNothingAndTheWholeHole() {
    // 1/2 × 1/2 × 1/4 in is a sixteenth of a cubic inch.
    assertEquals("0.0625 in³", HOLE.fullSlug().toString());
    assertEquals(0, HOLE.slug().low().getValue());
    assertEquals(1 / 48d, HOLE.slug().likely().getValue(), 1e-16);
    assertEquals(HOLE.fullSlug(), HOLE.slug().high());
    assertTrue(HOLE.metalLost().toString().startsWith("slug "));
    assertEquals(HOLE.slug(), HOLE.metalLost().total());
  }

  /** Of 3/8 in through 1/4 in: π/4 × 9/64 × 1/4. */
  @Test
  void aRoundHoleHasARoundSlug() {
    PunchedHole hole = PunchedHole.through(BAR, Hole.round(inches("3/8")));
    assertEquals(Math.PI / 4 * 9 / 64 / 4, hole.fullSlug().getValue(), 1e-16);
    assertEquals("3/8 in", hole.stock(BAR).toString());
  }

  @Test
  void takesASlugThatWasMeasured() {
    PunchedHole measured = HOLE.withSlugThickness(inches("1/16"));
    assertEquals("0.01563 in³", measured.slug().toString());
    assertEquals(1 / 64d, measured.slug().likely().getValue());
    assertTrue(measured.metalKept().isExact());
    assertEquals(1 / 8d - 1 / 64d, measured.metalKept().likely().getValue());
    // Drilled: all of it goes, nothing swells.
    PunchedHole drilled = HOLE.withSlugThickness(inches("1/4"));
    assertEquals(drilled.fullSlug(), drilled.slug().likely());
    assertEquals(Estimate.exact(inches(1)), drilled.widthOverEye());
  }

  @Test
  void usesTheStretchThatIsPunched() {
    assertEquals(Estimate.exact(inches("1/2")), HOLE.stock(BAR));
    assertEquals(inches("1/2"), HOLE.reach());
    Section twice = Section.flat(inches(1), inches("1/2"));
    assertEquals(Estimate.exact(inches("1/4")), HOLE.stock(twice));
    assertEquals(1 / 8d - 1 / 48d, HOLE.metalKept().likely().getValue(), 1e-16);
    assertEquals(1 / 16d, HOLE.metalKept().low().getValue());
    assertEquals(1 / 8d, HOLE.metalKept().high().getValue());
    assertEquals("punched hole", HOLE.name());
    assertEquals(BAR, HOLE.start());
    assertEquals(BAR, HOLE.end());
    assertEquals(SQUARE, HOLE.hole());
    assertEquals(SQUARE, HOLE.punch());
  }

  @Test
  void swellsByWhatIsNotSlug() {
    Estimate<?> width = HOLE.widthOverEye();
    assertEquals(inches(1), width.low());
    // Two thirds of a half-inch opening, evenly.
    assertEquals(1 + 1 / 3d, width.likely().getValue(), 1e-15);
    assertEquals(inches("1 1/2"), width.high());
    // A round hole swells less evenly over its stretch than at its widest: π/4.
    Estimate<?> round = PunchedHole.through(BAR, Hole.round(inches("1/2"))).widthOverEye();
    assertEquals(1 + Math.PI / 4 / 3, round.likely().getValue(), 1e-15);
    assertEquals(inches("1 1/2"), round.high());
  }

  @Test
  void isDriftedFromASmallerPunch() {
    Hole round = Hole.round(inches("1/2"));
    Hole slot = Hole.mortise(inches("5/8"), inches("1/8"));
    PunchedHole eye = PunchedHole.through(BAR, round).withPunch(slot);
    assertEquals(slot, eye.punch());
    assertEquals(inches("7/16"), eye.narrowerCheek());
    assertEquals(5 / 256d, eye.fullSlug().getValue());
    assertEquals(inches("1 3/8"), eye.widthOverEye().low());
    assertEquals(inches("1 1/2"), eye.widthOverEye().high());
    assertEquals(Estimate.exact(inches("5/8")), eye.stock(BAR));
    assertEquals(inches("1/2"), eye.reach());
    assertTrue(eye.cautions().isEmpty(), eye.cautions().toString());
    assertEquals(
        "1/2 in round hole drifted from a 5/8 in × 1/8 in mortise in 1 in × 1/4 in flat",
        eye.toString());
    PunchedHole tooLong = eye.withPunch(Hole.mortise(inches(1), inches("1/8")));
    assertTrue(tooLong.cautions().get(0).text().contains("is longer than half the way round"));
    PunchedHole tooSmall = eye.withPunch(Hole.round(inches("1/4")));
    assertTrue(tooSmall.cautions().get(0).text().contains("stretch by more than a seventh"));
  }

  @Test
  void keepsWhatWasSaidBefore() {
    PunchedHole hole =
        HOLE.offCentre(inches("1/8"))
            .withSlugThickness(inches("1/8"))
            .withPunch(Hole.square(inches("1/4")));
    assertEquals(inches("1/4"), hole.narrowerCheek());
    assertEquals(inches("1/2"), hole.widerCheek());
    assertEquals(1 / 128d, hole.slug().likely().getValue());
  }

  @Test
  void cautionsWhereTheSidesAreThin() {
    assertTrue(HOLE.cautions().isEmpty());
    PunchedHole off = HOLE.offCentre(inches("1/8"));
    assertTrue(off.cautions().get(0).text().startsWith("the width left beside the hole, 1/8 in"));
    assertEquals(off.cautions(), off.working().cautions());
  }

  @Test
  void showsItsWorkings() {
    List<Hole> holes =
        List.of(
            SQUARE,
            Hole.round(millimetres(10)),
            Hole.mortise(inches("3/4"), millimetres(6)),
            Hole.oval(millimetres(20), millimetres(12)).turned());
    for (Hole shape : holes) {
      PunchedHole hole = PunchedHole.through(BAR, shape);
      for (PunchedHole h : List.of(hole, hole.withSlugThickness(inches("1/16")))) {
        Workings.check(h.working(), h.metalKept().likely());
        Workings.check(h.slugWorking(), h.fullSlug());
        Workings.check(h.widthWorking(), h.widthOverEye().likely());
      }
    }
    assertTrue(HOLE.working().toString().contains("q = t / 3 = 0.25 / 3 = 0.08333 in"));
    assertTrue(HOLE.working().toString().contains("an assumption: no published figure is known"));
    assertEquals("1/2 in square hole punched in 1 in × 1/4 in flat", HOLE.toString());
  }

  @Test
  void refusesWhatBreaksTheBar() {
    assertEquals(
        "width of the hole must be less than the 1 in of the bar, was 1 in; take a wider bar, or"
            + " slit and drift the hole",
        refusal(() -> PunchedHole.through(BAR, Hole.round(inches(1)))));
    assertEquals(
        "offset of the hole must be less than 1/4 in, so that the bar is whole on both sides, was 1/4 in; set"
            + " the hole nearer to the middle",
        refusal(() -> HOLE.offCentre(inches("1/4"))));
    assertEquals(
        "slug thickness must be at most the 1/4 in that the hole goes through, was 3/8 in; give the"
            + " thickness of the bar for a hole that is drilled",
        refusal(() -> HOLE.withSlugThickness(inches("3/8"))));
    assertEquals(
        "slug thickness must not be negative, was -1 in; give zero if there is none",
        refusal(() -> HOLE.withSlugThickness(inches(-1))));
    assertEquals(
        "punch must be no wider and no larger than the 1/2 in square hole, was a 5/8 in round hole;"
            + " take a smaller punch",
        refusal(() -> HOLE.withPunch(Hole.round(inches("5/8")))));
    assertThrows(
        IllegalArgumentException.class,
        () -> HOLE.withPunch(Hole.mortise(inches(2), inches("1/4"))));
    Section round = Section.round(inches(1));
    assertEquals(
        "hole must leave metal on both sides of the 1 in round, was a 0.9 in square hole; flatten"
            + " the bar, or slit and drift the hole",
        refusal(() -> PunchedHole.through(round, Hole.square(inches(0.9)))));
    assertFalse(PunchedHole.through(round, Hole.round(inches(0.9))).cautions().isEmpty());
    assertThrows(NullPointerException.class, () -> PunchedHole.through(null, SQUARE));
    assertThrows(NullPointerException.class, () -> PunchedHole.through(BAR, null));
    assertThrows(NullPointerException.class, () -> HOLE.withPunch(null));
    assertThrows(NullPointerException.class, () -> HOLE.withSlugThickness(null));
  }

  @Test
  void mixesUnits() {
    PunchedHole mixed = PunchedHole.through(BAR, Hole.square(millimetres(12.7)));
    assertEquals(HOLE.widthOverEye().low(), mixed.widthOverEye().low());
    assertTrue(mixed.fullSlug().isEquivalentTo(HOLE.fullSlug()));
    assertTrue(mixed.metalKept().likely().isEquivalentTo(HOLE.metalKept().likely()));
    Measure<?> left = mixed.narrowerCheek();
    assertEquals("1/4 in", left.toString());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
