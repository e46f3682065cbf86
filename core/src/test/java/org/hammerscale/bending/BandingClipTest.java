package org.hammerscale.bending;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class BandingClipTest {
  /** The way round 1 × 1/2 in is 3 in. */
  @Test
  void goesRoundTheBundleAndAnEighthMore() {
    BandingClip clip = BandingClip.around(Section.flat(inches(1), inches("1/2")));
    assertEquals(inches("3 1/8"), clip.cutLength());
    Workings.check(clip.working(), clip.cutLength());
    assertEquals("banding clip around 1 in × 1/2 in flat", clip.toString());
  }

  @Test
  void isTheSameInMillimetres() {
    BandingClip clip = BandingClip.around(Section.flat(millimetres(25.4), millimetres(12.7)));
    assertTrue(clip.cutLength().isEquivalentTo(inches("3 1/8")));
    Workings.check(clip.working(), clip.cutLength());
  }

  @Test
  void refusesAnOutlineWithoutThickness() {
    Section edge = Section.flat(inches(1), inches("1/2")).edge();
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> BandingClip.around(edge))
            .getMessage()
            .startsWith("thickness of bundle must be more than zero"));
  }
}
