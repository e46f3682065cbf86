package org.hammerscale.punching;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HotCutTest {
  private static final Section BAR = Section.flat(inches(2), inches("1/2"));
  private static final HotCut CUT = HotCut.bevelled(degrees(90), BAR);
  private static final HotCut KNOWN = HotCut.ofKerf(inches("1/8"), BAR);

  @Test
  void costsTheTriangleOfItsBevel() {
    // A right angle is as wide at the face as twice its depth: 1 in, a triangle of 1/4 in².
    assertEquals(0.5, CUT.kerf().getValue(), 1e-15);
    assertEquals(1, CUT.mouth().getValue(), 1e-15);
    assertEquals(0.25, CUT.fromBothFaces().kerf().getValue(), 1e-15);
    assertEquals(0.5, CUT.fromBothFaces().mouth().getValue(), 1e-15);
    // Equilateral: the mouth is 2/√3 of the depth.
    assertEquals(
        0.5 * 2 / Math.sqrt(3), HotCut.bevelled(degrees(60), BAR).mouth().getValue(), 1e-15);
  }

  @Test
  void costsTheKerfThatIsAllowed() {
    assertEquals(inches("1/8"), KNOWN.kerf());
    assertEquals(inches("1/8"), KNOWN.mouth());
    assertEquals(inches("1/8"), KNOWN.fromBothFaces().kerf());
    assertEquals("0.25 in³", KNOWN.metalAlong(inches(4)).toString());
    assertEquals(inches(0), HotCut.ofKerf(inches(0), BAR).kerf());
  }

  @Test
  void isACutAcrossAPiece() {
    assertEquals("hot cut 0.125 in³", KNOWN.metalLost().toString());
    assertEquals(0, KNOWN.metalKept().likely().getValue());
    assertEquals(inches(0), KNOWN.reach());
    assertEquals(Estimate.exact(inches("1/8")), KNOWN.stock(BAR));
    Section half = Section.flat(inches(1), inches("1/2"));
    assertEquals(Estimate.exact(inches("1/4")), KNOWN.stock(half));
    assertEquals(BAR, KNOWN.section());
    assertEquals(BAR, KNOWN.start());
    assertEquals(BAR, KNOWN.end());
    assertEquals("hot cut", KNOWN.name());
  }

  @Test
  void showsItsWorkings() {
    HotCut metric = HotCut.bevelled(degrees(35), Section.square(millimetres(16)));
    for (HotCut cut : List.of(CUT, CUT.fromBothFaces(), KNOWN, metric, metric.fromBothFaces())) {
      Workings.check(cut.working(), cut.kerf());
    }
    assertEquals(Source.Kind.COMMON_PRACTICE, KNOWN.working().sources().get(0).kind());
    assertEquals(Source.Kind.COMPUTED, CUT.working().sources().get(0).kind());
    assertEquals("90° bevel through 2 in × 1/2 in flat", CUT.toString());
    assertEquals(
        "1/8 in kerf from both faces through 2 in × 1/2 in flat", KNOWN.fromBothFaces().toString());
  }

  @Test
  void cautionsOfABluntBevel() {
    assertTrue(CUT.cautions().isEmpty());
    HotCut blunt = HotCut.bevelled(degrees(120), BAR);
    assertTrue(blunt.cautions().get(0).text().startsWith("a bevel of 120° is blunter"));
    assertEquals(blunt.cautions(), blunt.working().cautions());
  }

  @Test
  void refusesWhatIsNoCut() {
    String range =
        "bevel must be more than 0° and less than 180°, was %s; give the whole angle of the"
            + " chisel's edge in degrees";
    assertEquals(range.formatted("0°"), refusal(() -> HotCut.bevelled(degrees(0), BAR)));
    assertEquals(range.formatted("180°"), refusal(() -> HotCut.bevelled(degrees(180), BAR)));
    assertEquals(
        "bevel must be an angle, was 3 kg; give it in degrees",
        refusal(() -> HotCut.bevelled(smuggled(), BAR)));
    assertEquals(
        "kerf must not be negative, was -1 in; give zero if there is none",
        refusal(() -> HotCut.ofKerf(inches(-1), BAR)));
    Section tube = Section.squareTube(inches(1), inches("1/8"));
    assertEquals(
        "section must be a solid bar, was " + tube + "; saw a tube",
        refusal(() -> HotCut.ofKerf(inches(0), tube)));
    assertThrows(IllegalArgumentException.class, () -> CUT.metalAlong(inches(-1)));
    assertThrows(NullPointerException.class, () -> HotCut.bevelled(null, BAR));
    assertThrows(NullPointerException.class, () -> HotCut.ofKerf(inches(0), null));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Quantity<Angle> smuggled() {
    return (Quantity) kilograms(3);
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
