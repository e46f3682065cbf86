package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class TaperTest {
  private static final Section BAR = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final Taper TAPER = Taper.between(BAR, TIP, inches(6));

  @Test
  void usesLessBarThanItIsLong() {
    assertEquals(Estimate.exact(inches(3.5)), TAPER.stock(BAR));
    assertEquals(inches(6), TAPER.reach());
    assertEquals(BAR, TAPER.start());
    assertEquals(TIP, TAPER.end());
    assertEquals("taper", TAPER.name());
    assertTrue(TAPER.metalLost().isNone());
    assertTrue(TAPER.cautions().isEmpty());
  }

  @Test
  void mayEndStandingOnEdge() {
    Section edge = Section.onEdge(inches("1/8"), inches("1/4"));
    // Width alone tapers, from 1 1/2 to 1/8: the mean width is 13/16.
    assertEquals(
        6 * 13 / 16d * 0.25,
        Taper.between(BAR, edge, inches(6)).metalKept().likely().getValue(),
        1e-15);
  }

  @Test
  void showsItsWorking() {
    Workings.check(TAPER.working(), TAPER.metalKept().likely());
    Taper metric =
        Taper.between(
            Section.round(millimetres(16)), Section.round(inches("1/4")), millimetres(150));
    Workings.check(metric.working(), metric.metalKept().likely());
    assertEquals(
        "6 in taper from 1 1/2 in × 1/4 in flat to 3/4 in × 1/8 in flat", TAPER.toString());
  }

  @Test
  void refusesUnlikeSections() {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> Taper.between(BAR, Section.round(inches("1/4")), inches(3)))
            .getMessage();
    assertEquals(
        "taper must lead between similar sections, was from 1 1/2 in × 1/4 in flat to 1/4 in round;"
            + " forge the change of shape as a stretch of its own",
        message);
    assertThrows(IllegalArgumentException.class, () -> Taper.between(BAR, TIP, inches(0)));
    assertThrows(NullPointerException.class, () -> Taper.between(BAR, null, inches(1)));
  }
}
