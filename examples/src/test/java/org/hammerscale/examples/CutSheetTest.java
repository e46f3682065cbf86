package org.hammerscale.examples;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.hammerscale.cutting.Rack;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.junit.jupiter.api.Test;

class CutSheetTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);
  private static final Bar ROD = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);

  @Test
  void chalksTheBarsOfTheRack() {
    Rack rack =
        Rack.empty()
            .buying(STRAP, metres(3), new BigDecimal("17.25"))
            .offcuts(STRAP, millimetres(1000), 1);
    String text =
        new CutSheet(rack, millimetres(2), millimetres(20))
            .add(STRAP, "door leaf", millimetres(950), 2, Graduation.MILLIMETRE)
            .add(STRAP, "post leaf", millimetres(600), 2, Graduation.MILLIMETRE)
            .text();
    assertEquals(
        """
        ========================================================================
        Cut from 40 mm × 6 mm flat, mild steel
        ------------------------------------------------------------------------
        1 × 1000 mm offcut, trim 20 mm first
                  970 mm  door leaf, 950 mm
                   28 mm  left over
        1 × 3 m, trim 20 mm first
                  970 mm  door leaf, 950 mm
                 1572 mm  post leaf, 600 mm
                 2174 mm  post leaf, 600 mm
                  824 mm  left over
        ------------------------------------------------------------------------
        1 × 3 m
        together 17.25 for the new bars
        There is no cheaper way, nor one with less new bar for the money.
        """,
        text);
  }

  @Test
  void assumesUsualBarsOfWhatTheRackHasNot() {
    String text =
        new CutSheet(Rack.empty(), inches(0), inches(0))
            .add(ROD, "pin", inches("5 1/4"), 2, Graduation.SIXTEENTH)
            .add(STRAP, "leaf", millimetres(500), 1, Graduation.MILLIMETRE)
            .text();
    assertTrue(text.contains("The rack has none of it; bars of 20 ft are assumed.\n"), text);
    assertTrue(text.contains("The rack has none of it; bars of 6 m are assumed.\n"), text);
    assertTrue(text.contains("10 1/2 in  pin, 5 1/4 in\n"), text);
  }

  @Test
  void saysWhatCannotBeCut() {
    String text =
        new CutSheet(Rack.empty(), millimetres(2), millimetres(20))
            .add(STRAP, "long strap", metres(7), 1, Graduation.MILLIMETRE)
            .text();
    assertTrue(text.contains("! length of long strap must fit a bar, was 7 m"), text);
  }
}
