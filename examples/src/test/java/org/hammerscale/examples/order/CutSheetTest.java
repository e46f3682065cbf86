package org.hammerscale.examples.order;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
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
import org.junit.jupiter.api.Test;

class CutSheetTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);
  private static final Bar ROD = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);

  private static String text(CutSheet sheet) {
    SheetText text = new SheetText(80);
    sheet.write(text);
    return text.toString();
  }

  @Test
  void chalksTheBarsOfTheRack() {
    Rack rack =
        Rack.empty()
            .buying(STRAP, metres(3), new BigDecimal("17.25"))
            .offcuts(STRAP, millimetres(1000), 1);
    CutSheet sheet =
        new CutSheet(rack)
            .add(new Cut(STRAP, "door leaf", millimetres(950), 2, millimetres(1), MILLIMETRE))
            .add(new Cut(STRAP, "post leaf", millimetres(600), 2, millimetres(2), MILLIMETRE));
    assertEquals(
        """
        ========================================================================
        Cut list of the whole order: the saw's kerf counted, bars taken as square-ended
        ------------------------------------------------------------------------
        Cut from 40 mm × 6 mm flat, mild steel
        1 × 1000 mm offcut
                  950 mm  door leaf, 950 mm
                   48 mm  left over
        1 × 3 m
                  950 mm  door leaf, 950 mm
                 1552 mm  post leaf, 600 mm
                 2154 mm  post leaf, 600 mm
                  844 mm  left over
        Buy 1 × 3 m, together 17.25 for the new bars.
        There is no cheaper way, nor one with less new bar for the money.
        The pieces are 3100 mm long together, 5.84 kg.
        """,
        text(sheet));
  }

  @Test
  void assumesUsualBarsOfWhatTheRackHasNot() {
    String text =
        text(
            new CutSheet(Rack.empty())
                .add(new Cut(ROD, "pin", inches("5 1/4"), 2, inches(0), SIXTEENTH))
                .add(new Cut(STRAP, "leaf", millimetres(500), 1, inches(0), MILLIMETRE)));
    assertTrue(text.contains("The rack has none of it; bars of 20 ft are assumed.\n"), text);
    assertTrue(text.contains("The rack has none of it; bars of 6 m are assumed.\n"), text);
    assertTrue(text.contains("10 1/2 in  pin, 5 1/4 in\n"), text);
  }

  @Test
  void saysWhatCannotBeCut() {
    CutSheet sheet =
        new CutSheet(Rack.empty())
            .add(new Cut(STRAP, "long strap", metres(7), 1, millimetres(2), MILLIMETRE));
    assertTrue(text(sheet).contains("! length of long strap must fit a bar, was 7 m"));
  }
}
