package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SlotTest {
  private static final Section STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Hole GAP = Hole.mortise(inches(2), inches("1/2"));
  private static final Slot SLOT = Slot.through(STRAP, GAP, inches("1/16"));
  private static final Slot NOTCH = Slot.notch(STRAP, GAP, inches("1/16"));

  @Test
  void isPunchedNarrowerByItsSawCuts() {
    assertEquals(inches("3/8"), SLOT.tongue());
    assertEquals(inches("7/16"), NOTCH.tongue());
    assertEquals(inches("1/2"), SLOT.cheek());
    assertEquals(inches(1), NOTCH.cheek());
    assertEquals(GAP, SLOT.gap());
  }

  @Test
  void losesSlugAndSawdust() {
    assertEquals("2 in", SLOT.stock(STRAP).toString());
    // 2 × 1/4 in of face: 3/8 in of slug, 1/8 in of saw.
    assertEquals("slug 0.1875 in³, saw 0.0625 in³", SLOT.metalLost().toString());
    assertEquals("slug 0.2188 in³, saw 0.03125 in³", NOTCH.metalLost().toString());
    // 2 in of 1 × 1/4 in is left.
    assertEquals(0.5, SLOT.metalKept().likely().getValue());
    assertEquals(SLOT.metalKept(), NOTCH.metalKept());
    assertEquals(Estimate.exact(inches(2)), SLOT.stock(STRAP));
    assertEquals(Estimate.exact(inches(4)), SLOT.stock(Section.flat(inches("3/4"), inches("1/4"))));
    assertEquals(inches(2), SLOT.reach());
    assertEquals(STRAP, SLOT.start());
    assertEquals(STRAP, SLOT.end());
    assertEquals("slot", SLOT.name());
    assertEquals("notch", NOTCH.name());
  }

  @Test
  void showsItsWorkings() {
    Slot mixed = Slot.through(STRAP, Hole.mortise(millimetres(40), inches("3/8")), millimetres(1));
    for (Slot slot : List.of(SLOT, NOTCH, mixed)) {
      Workings.check(slot.working(), slot.metalKept().likely());
      Workings.check(slot.tongueWorking(), slot.tongue());
      assertEquals(slot.cautions(), slot.working().cautions());
    }
    assertTrue(SLOT.tongueWorking().toString().contains("T = b − c k = 0.5 − 2 × 0.0625 = 3/8 in"));
    assertEquals("2 in × 1/2 in slot in 1 1/2 in × 1/4 in flat", SLOT.toString());
  }

  @Test
  void cautionsWhereTheSidesAreThin() {
    assertTrue(SLOT.cautions().isEmpty());
    Slot wide = Slot.through(STRAP, Hole.mortise(inches(2), inches("1 1/4")), inches("1/16"));
    assertTrue(wide.cautions().get(0).text().startsWith("the width left beside the slot, 1/8 in"));
  }

  @Test
  void refusesWhatCannotBeSawnOrPunched() {
    assertEquals(
        "kerf must be less than 1/4 in, so that two cuts leave a tongue to punch in the gap of 1/2"
            + " in, was 1/4 in; take a thinner blade or a wider gap",
        refusal(() -> Slot.through(STRAP, GAP, inches("1/4"))));
    assertEquals(
        "kerf must be less than 1/2 in, so that a cut leaves a tongue to punch in the gap of 1/2"
            + " in, was 1/2 in; take a thinner blade or a wider gap",
        refusal(() -> Slot.notch(STRAP, GAP, inches("1/2"))));
    assertEquals(
        "gap must have straight sides to saw, was a 1/2 in round hole; give a mortise or a square",
        refusal(() -> Slot.through(STRAP, Hole.round(inches("1/2")), inches("1/16"))));
    assertEquals(
        "width of the hole must be less than the 1 1/2 in of the bar, was 2 in; take a wider bar, or"
            + " slit and drift the hole",
        refusal(() -> Slot.through(STRAP, GAP.turned(), inches("1/16"))));
    assertEquals(
        "section must be a flat or square bar, was 1 in round; flatten it first and give the section"
            + " it has then",
        refusal(() -> Slot.through(Section.round(inches(1)), GAP, inches("1/16"))));
    assertEquals(
        "kerf must not be negative, was -1 in; give zero if there is none",
        refusal(() -> Slot.through(STRAP, GAP, inches(-1))));
    assertThrows(NullPointerException.class, () -> Slot.through(null, GAP, inches(0)));
    assertThrows(NullPointerException.class, () -> Slot.notch(STRAP, null, inches(0)));
    assertThrows(NullPointerException.class, () -> Slot.notch(STRAP, GAP, null));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
