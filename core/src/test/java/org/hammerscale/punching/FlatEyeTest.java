package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class FlatEyeTest {
  private static final Section BAR = Section.square(inches("1/2"));
  private static final Hole HOLE = Hole.round(inches(0.6));
  private static final FlatEye DRIFTED = FlatEye.drifted(inches(1), inches("1/8"), HOLE);
  private static final FlatEye PUNCHED = FlatEye.punched(inches(1), inches("1/8"), HOLE);

  @Test
  void isForgedFromASmallerDiscIfNothingIsLost() {
    // 3, 4, 5: the squares of hole and disc make that of the rim.
    assertEquals(0.8, DRIFTED.discBefore().likely().getValue(), 1e-15);
    assertTrue(DRIFTED.discBefore().isExact());
    assertEquals(Losses.NONE, DRIFTED.metalLost());
    assertEquals(Math.PI * 0.02, DRIFTED.metalKept().likely().getValue(), 1e-15);
    assertEquals(Math.PI * 0.08, DRIFTED.stock(BAR).likely().getValue(), 1e-14);
    assertEquals(inches(1), DRIFTED.reach());
    assertEquals(0.2, DRIFTED.rim().getValue(), 1e-15);
  }

  /** π/4 × (1 − 25/256) × 3/16 by hand. */
  @Test
  void keepsTheMetalOfItsDiscLessTheHole() {
    Hole hole = Hole.round(inches("5/16"));
    FlatEye eye = FlatEye.drifted(inches(1), inches("3/16"), hole);
    double kept = Math.PI / 4 * (1 - 25 / 256d) * 3 / 16;
    assertEquals(kept, eye.metalKept().likely().getValue(), 1e-15);
  }

  @Test
  void losesASlugIfPunched() {
    assertEquals(0.8, PUNCHED.discBefore().low().getValue(), 1e-15);
    assertEquals(inches(1), PUNCHED.discBefore().high());
    assertEquals(DRIFTED.metalKept(), PUNCHED.metalKept());
    // From the drifted one's to the whole disc's metal.
    assertEquals(DRIFTED.stock(BAR).likely(), PUNCHED.stock(BAR).low());
    assertEquals(Math.PI / 8, PUNCHED.stock(BAR).high().getValue(), 1e-15);
    FlatEye drilled = PUNCHED.withSlugThickness(inches("1/8"));
    assertEquals(Estimate.exact(inches(1)), drilled.discBefore());
    assertTrue(drilled.stock(BAR).isExact());
  }

  @Test
  void takesAnyHole() {
    Hole oval = Hole.oval(millimetres(16), millimetres(9));
    FlatEye eye = FlatEye.drifted(millimetres(30), millimetres(5), oval).ending(BAR);
    // An oval of 16 × 9 has the area of a round of 12.
    assertEquals(Math.sqrt(900 - 144), eye.discBefore().likely().getValue(), 1e-12);
    assertEquals("10.5 mm", eye.rim().toString());
    assertEquals(oval, eye.hole());
    assertEquals(millimetres(30), eye.outsideDiameter());
    assertEquals(BAR, eye.start());
    assertEquals(BAR, eye.end());
    assertEquals("flat eye", eye.name());
  }

  @Test
  void showsItsWorkings() {
    FlatEye metric = FlatEye.punched(millimetres(30), inches("1/4"), Hole.square(inches("1/2")));
    for (FlatEye eye : List.of(DRIFTED, PUNCHED, metric)) {
      Workings.check(eye.working(), eye.metalKept().likely());
      Workings.check(eye.discWorking(), eye.discBefore().likely());
      assertEquals(eye.cautions(), eye.working().cautions());
    }
    assertEquals("1 in flat eye 1/8 in thick with a 0.6 in round hole", DRIFTED.toString());
  }

  @Test
  void cautionsWhereTheRimIsThin() {
    assertTrue(DRIFTED.cautions().isEmpty());
    FlatEye thin = FlatEye.drifted(inches(1), inches("1/4"), HOLE);
    assertTrue(thin.cautions().get(0).text().startsWith("the rim of 0.2 in is narrower"));
  }

  @Test
  void refusesWhatIsNoEye() {
    assertEquals(
        "thickness must be at most the outside diameter of 1/8 in, was 1 in; name the diameter"
            + " first",
        refusal(() -> FlatEye.drifted(inches("1/8"), inches(1), HOLE)));
    assertEquals(
        "hole must lie inside the outside diameter of 1 in, was a 0.8 in square hole, 1.1314 in at"
            + " its widest; forge a larger eye",
        refusal(() -> FlatEye.punched(inches(1), inches("1/8"), Hole.square(inches(0.8)))));
    assertEquals(
        "outside must be more than zero, was 0 in; give the finished cold size",
        refusal(() -> FlatEye.drifted(inches(0), inches(0), HOLE)));
    assertThrows(IllegalArgumentException.class, () -> PUNCHED.withSlugThickness(inches("1/4")));
    assertThrows(NullPointerException.class, () -> DRIFTED.ending(null));
    assertThrows(NullPointerException.class, () -> FlatEye.punched(inches(1), inches("1/8"), null));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
