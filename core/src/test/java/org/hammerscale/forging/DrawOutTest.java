package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class DrawOutTest {
  private static final Section BAR = Section.flat(inches(2), inches("3/8"));
  private static final DrawOut DRAW =
      DrawOut.between(BAR, Section.flat(inches("1 1/2"), inches("1/4")));

  @Test
  void answersBothWays() {
    assertEquals(inches(4), DRAW.lengthFrom(inches(2)));
    assertEquals(inches(2), DRAW.stockFor(inches(4)));
    assertEquals(2, DRAW.timesLonger());
    assertEquals(Section.flat(inches("1 1/2"), inches("1/4")), DRAW.finished());
    assertEquals(millimetres(0), DRAW.lengthFrom(millimetres(0)));
  }

  @Test
  void drawsASquareToARound() {
    Section rod = Section.round(inches("1/2"));
    DrawOut draw = DrawOut.between(Section.square(inches("3/4")), rod);
    // (3/4)² of a square over π/4 × (1/2)² of a round: 9 / π.
    assertEquals(9 / Math.PI, draw.timesLonger(), 1e-14);
  }

  @Test
  void showsItsWorkings() {
    Workings.check(DRAW.lengthWorking(millimetres(37)), DRAW.lengthFrom(millimetres(37)));
    Workings.check(DRAW.stockWorking(inches(3)), DRAW.stockFor(inches(3)));
    assertEquals("2 in × 3/8 in flat drawn out to 1 1/2 in × 1/4 in flat", DRAW.toString());
  }

  @Test
  void edgesAStrapNarrowerAtTheSameThickness() {
    DrawOut edged = DrawOut.edging(BAR, inches("1 1/2"));
    assertEquals(Section.flat(inches("1 1/2"), inches("3/8")), edged.finished());
    assertEquals(inches(4), edged.lengthFrom(inches(3)));
    assertEquals(
        Section.onEdge(inches("1/4"), inches("3/8")),
        DrawOut.edging(BAR, inches("1/4")).finished());
    assertThrows(IllegalArgumentException.class, () -> DrawOut.edging(BAR, inches("2 1/16")));
    assertThrows(
        IllegalArgumentException.class,
        () -> DrawOut.edging(Section.round(inches(1)), inches("1/2")));
  }

  @Test
  void refusesWhatIsNotDrawing() {
    assertEquals(
        "finished section must have no more area than the 1/2 in square it is drawn from, was"
            + " 5/8 in round; jump the bar up first, or start from a larger one",
        assertThrows(
                IllegalArgumentException.class,
                () -> DrawOut.between(Section.square(inches("1/2")), Section.round(inches("5/8"))))
            .getMessage());
    assertEquals(
        "finished must have an area, was a point; only a taper or an end may come to a point or an"
            + " edge",
        assertThrows(IllegalArgumentException.class, () -> DrawOut.between(BAR, BAR.point()))
            .getMessage());
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> DRAW.lengthFrom(inches(-1)))
            .getMessage()
            .startsWith("stock must not be negative"));
    assertThrows(IllegalArgumentException.class, () -> DRAW.stockFor(inches(-1)));
  }
}
