package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class BarrelTest {
  private static final Section STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Barrel EYE = Barrel.around(inches("1/2"), STRAP);

  @Test
  void knowsItsDiameters() {
    assertEquals(inches("1/2"), EYE.insideDiameter());
    assertEquals(inches("3/4"), EYE.meanDiameter());
    assertEquals(inches(1), EYE.outsideDiameter());
    assertEquals(inches("1/2"), EYE.reach());
  }

  @Test
  void readsAsASmithWould() {
    assertEquals("2.3562 in", EYE.developedLength().toString());
    assertEquals("2 3/8 in", EYE.developedLength().upTo(Graduation.SIXTEENTH).toString());
    assertEquals("barrel with a bore of 1/2 in in 1 1/2 in × 1/4 in flat", EYE.toString());
  }

  @Test
  void speaksTheBoresUnit() {
    Barrel mixed = Barrel.around(millimetres(12.7), STRAP);
    assertEquals("25.4 mm", mixed.outsideDiameter().toString());
    assertTrue(mixed.developedLength().isEquivalentTo(EYE.developedLength()));
  }

  @Test
  void keepsItsMetalAndLosesNone() {
    // 2.3562 in of 1 1/2 × 1/4 in: π × 0.75 × 0.375 by hand.
    assertTrue(
        EYE.metalKept().likely().in(org.hammerscale.units.ShopUnits.CUBIC_INCH) - 0.883573 < 5e-7);
    assertEquals(Losses.NONE, EYE.metalLost());
    assertEquals("rolled barrel", EYE.name());
    assertEquals(STRAP, EYE.start());
    assertEquals(STRAP, EYE.end());
    assertEquals(STRAP, EYE.section());
  }

  @Test
  void showsItsWorkings() {
    Workings.check(EYE.working(), EYE.developedLength());
    Workings.check(EYE.benchWorking(), EYE.benchLength());
    Barrel metric = Barrel.around(millimetres(14.5), Section.flat(millimetres(40), millimetres(6)));
    Workings.check(metric.working(), metric.developedLength());
    Workings.check(metric.benchWorking(), metric.benchLength());
    assertEquals(Source.Kind.READ, EYE.working().sources().get(0).kind());
    assertTrue(EYE.working().toString().contains("L = π m = π × 0.75 = 2.3562 in"));
  }

  @Test
  void benchRuleTellsItsError() {
    Barrel long1 = Barrel.around(inches("3/8"), Section.flat(inches(1), inches("3/16")));
    assertEquals(1.75 - 1.7671, long1.benchError().getValue(), 5e-5);
    assertTrue(long1.benchWorking().cautions().get(0).text().contains("short of a full turn"));
    Barrel rounded = Barrel.around(inches("7/16"), Section.flat(inches(1), inches("1/8")));
    assertTrue(rounded.benchLength().isLessThan(rounded.developedLength()));
    Barrel generous = Barrel.around(inches("1/4"), Section.flat(inches(1), inches("3/32")));
    assertTrue(generous.benchError().getValue() > 0, generous.benchError().toString());
    assertTrue(generous.benchWorking().cautions().isEmpty());
  }

  @Test
  void cautionsWhereTheCurlIsTighterThanTheStrapIsThick() {
    Barrel tight = Barrel.around(inches("3/16"), STRAP);
    assertEquals(1, tight.cautions().size());
    assertTrue(tight.working().toString().contains("Caution: the bore of 3/16 in is less"));
    assertTrue(EYE.cautions().isEmpty());
  }

  @Test
  void refusesWhatIsNoBore() {
    assertEquals(
        "bore must be more than zero, was 0 in; give the finished cold size",
        assertThrows(IllegalArgumentException.class, () -> Barrel.around(inches(0), STRAP))
            .getMessage());
    assertEquals(
        "bore must be a length, was 3 kg; give it in inches or millimetres",
        assertThrows(IllegalArgumentException.class, () -> Barrel.around(smuggled(), STRAP))
            .getMessage());
    assertThrows(NullPointerException.class, () -> Barrel.around(null, STRAP));
    assertThrows(NullPointerException.class, () -> Barrel.around(inches(1), null));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Quantity<Length> smuggled() {
    return (Quantity) kilograms(3);
  }
}
