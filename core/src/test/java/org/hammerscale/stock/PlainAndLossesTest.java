package org.hammerscale.stock;

import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import javax.measure.quantity.Volume;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class PlainAndLossesTest {
  private static final Section BAR = Section.flat(inches(1), inches("1/4"));

  private static Measure<Volume> cubicInches(double value) {
    return volume(inches(value), area(inches(1), inches(1)));
  }

  @Test
  void ofTheParentsSectionUsesItsOwnLength() {
    Plain plain = Plain.of(BAR, millimetres(77.7));
    assertEquals(Estimate.exact(millimetres(77.7)), plain.stock(BAR));
    assertEquals(millimetres(77.7), plain.reach());
  }

  @Test
  void drawnDownUsesLessThanItsLength() {
    Plain drawn = Plain.of(Section.flat(inches("3/4"), inches("1/4")), inches(8));
    assertEquals(Estimate.exact(inches(6)), drawn.stock(BAR));
    Workings.check(drawn.working(), drawn.metalKept().likely());
    assertEquals("8 in of 3/4 in × 1/4 in flat", drawn.toString());
    assertEquals(drawn.section(), drawn.start());
    assertEquals(drawn.section(), drawn.end());
    assertTrue(drawn.cautions().isEmpty());
    assertTrue(drawn.metalLost().isNone());
  }

  @Test
  void refusesNegativeLength() {
    assertThrows(IllegalArgumentException.class, () -> Plain.of(BAR, inches(-1)));
    assertEquals(inches(0), Plain.of(BAR, inches(0)).stock(BAR).likely());
  }

  @Test
  void lossesAddToTheMetalKept() {
    Estimate<Volume> kept = Estimate.exact(cubicInches(2));
    Losses losses =
        Losses.NONE
            .and("slug", Estimate.exact(cubicInches(0.5)))
            .and("trim", Estimate.of(cubicInches(0), cubicInches(0.25), cubicInches(1)));
    assertEquals(
        Estimate.of(cubicInches(2.5), cubicInches(2.75), cubicInches(3.5)), losses.addedTo(kept));
    assertEquals(
        Estimate.of(cubicInches(0.5), cubicInches(0.75), cubicInches(1.5)), losses.total());
    assertEquals("slug 0.5 in³, trim 0.25 in³ (0 in³ to 1 in³)", losses.toString());
    assertFalse(losses.isNone());
    assertEquals(kept, Losses.NONE.addedTo(kept));
    assertEquals(0, Losses.NONE.total().likely().getValue());
    assertEquals("nothing lost", Losses.NONE.toString());
  }

  @Test
  void equalLossesAreOneInASet() {
    Losses slug = Losses.NONE.and("slug", Estimate.exact(cubicInches(0.5)));
    Losses same = Losses.NONE.and("slug", Estimate.exact(cubicInches(0.5)));
    assertEquals(Set.of(slug), Set.copyOf(List.of(slug, same)));
    assertEquals(2, Set.of(slug, Losses.NONE.and("saw", Estimate.exact(cubicInches(0.5)))).size());
  }

  @Test
  void negativeLossesAreRefused() {
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> Losses.NONE.and("slug", Estimate.exact(cubicInches(-1))))
            .getMessage();
    assertTrue(message.startsWith("metal lost as slug must not be negative"), message);
    // At its low end it may be: a hollow point comes out of less bar than a full one.
    Losses hollow =
        Losses.NONE.and("hand", Estimate.of(cubicInches(-0.1), cubicInches(0), cubicInches(0.2)));
    Estimate<Volume> kept = Estimate.exact(cubicInches(1));
    assertEquals(cubicInches(0.9), hollow.addedTo(kept).low());
  }
}
