package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.bending.NeutralLine;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
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
    assertEquals(
        0.883573 * 5 / 6 + 0.25 * 0.375, EYE.metalKept().high().in(ShopUnits.CUBIC_INCH), 5e-7);
    // A sixth of the full turn is left off: 60° of it.
    assertEquals(0.883573 * 5 / 6, EYE.metalKept().likely().in(ShopUnits.CUBIC_INCH), 5e-7);
    assertEquals(Losses.NONE, EYE.metalLost());
    assertEquals("rolled barrel", EYE.name());
    assertEquals(STRAP, EYE.start());
    assertEquals(STRAP, EYE.end());
    assertEquals(STRAP, EYE.section());
  }

  @Test
  void showsItsWorkings() {
    Workings.check(EYE.developedWorking(), EYE.developedLength());
    Workings.check(EYE.ruleOfThreeWorking(), EYE.lengthByRuleOfThree());
    Barrel metric = Barrel.around(millimetres(14.5), Section.flat(millimetres(40), millimetres(6)));
    Workings.check(metric.developedWorking(), metric.developedLength());
    Workings.check(metric.ruleOfThreeWorking(), metric.lengthByRuleOfThree());
    assertEquals(Source.Kind.READ, EYE.developedWorking().sources().get(0).kind());
    assertTrue(EYE.developedWorking().toString().contains("L = π m = π × 0.75 = 2.3562 in"));
  }

  @Test
  void benchRuleTellsItsError() {
    Barrel long1 = Barrel.around(inches("3/8"), Section.flat(inches(1), inches("3/16")));
    assertEquals(1.75 - 1.7671, long1.ruleOfThreeError().getValue(), 5e-5);
    assertTrue(
        long1.ruleOfThreeWorking().cautions().get(0).text().contains("short of a full turn"));
    Barrel rounded = Barrel.around(inches("7/16"), Section.flat(inches(1), inches("1/8")));
    assertTrue(rounded.lengthByRuleOfThree().isLessThan(rounded.developedLength()));
    Barrel generous = Barrel.around(inches("1/4"), Section.flat(inches(1), inches("3/32")));
    assertTrue(generous.ruleOfThreeError().getValue() > 0, generous.ruleOfThreeError().toString());
    assertTrue(generous.ruleOfThreeWorking().cautions().isEmpty());
  }

  @Test
  void cautionsWhereTheCurlIsTighterThanTheStrapIsThick() {
    Barrel tight = Barrel.around(inches("3/16"), STRAP);
    assertEquals(2, tight.cautions().size());
    assertTrue(tight.working().toString().contains("Caution: the bore of 3/16 in is less"));
    assertEquals(1, EYE.cautions().size());
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
    assertThrows(NullPointerException.class, () -> Barrel.around((Bore) null, STRAP));
    assertThrows(NullPointerException.class, () -> Barrel.around(inches(1), null));
  }

  @Test
  void turnsByAnotherLineToo() {
    // 2 π (R + K t) with K = 0.4; by DIN 6935 k = 0.65 + lg(1)/2, of half the thickness.
    assertEquals(
        2 * Math.PI * 0.35, EYE.developedLength(NeutralLine.kFactor(0.4)).getValue(), 1e-14);
    Measure<Length> din = EYE.developedLength(NeutralLine.DIN_6935);
    assertEquals(2 * Math.PI * (0.25 + 0.65 * 0.125), din.getValue(), 1e-14);
    Workings.check(EYE.developedWorking(NeutralLine.DIN_6935), din);
    assertTrue(
        EYE.developedWorking(NeutralLine.DIN_6935).cautions().get(0).text().contains("cold sheet"));
    assertTrue(EYE.developedLength(NeutralLine.MEAN_LINE).isEquivalentTo(EYE.developedLength()));
  }

  @Test
  void aHalfRoundTurnsOnTheLineThroughItsCentres() {
    Barrel half = Barrel.around(inches("1/2"), Section.halfRound(inches("3/4")));
    double mean = 0.5 + 2 * (2 * 0.75 / (3 * Math.PI));
    assertEquals(Math.PI * mean, half.developedLength().getValue(), 1e-14);
    assertEquals(mean, half.meanDiameter().getValue(), 1e-15);
    assertEquals(inches("1 1/4"), half.outsideDiameter());
    Workings.check(half.developedWorking(), half.developedLength());
    Workings.check(half.ruleOfThreeWorking(), half.lengthByRuleOfThree());
  }

  @Test
  void tellsHowFlushTwoLeavesLie() {
    Barrel thinner = Barrel.around(inches("1/2"), Section.flat(inches(1), inches("3/16")));
    Barrel wider = Barrel.around(inches("9/16"), STRAP);
    assertEquals(inches("1/16"), EYE.faceStepTo(thinner));
    assertEquals(inches("-1/16"), thinner.faceStepTo(EYE));
    assertEquals(inches("-1/32"), EYE.faceStepTo(wider));
    assertEquals(inches(0), EYE.faceStepTo(EYE));
    // Centred leaves lie half a thickness above the pin, whatever the bore.
    assertEquals(inches(0), EYE.centred().faceStepTo(wider.centred()));
    assertEquals(inches("1/32"), EYE.centred().faceStepTo(thinner.centred()));
    assertEquals(inches("3/8"), EYE.faceStepTo(EYE.centred()));
    Barrel metric = Barrel.around(millimetres(12.7), Section.flat(millimetres(40), millimetres(6)));
    Workings.check(metric.faceStepWorking(EYE), metric.faceStepTo(EYE));
    assertEquals(-0.35, metric.faceStepTo(EYE).getValue(), 1e-12);
    Workings.check(EYE.faceStepWorking(EYE.centred()), EYE.faceStepTo(EYE.centred()));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Quantity<Length> smuggled() {
    return (Quantity) kilograms(3);
  }

  @Test
  void tellsTheRuleOfThreeBeforeItIsRounded() {
    assertEquals(EYE.meanDiameter().multiply(3), EYE.threeMeanDiameters());
    assertTrue(EYE.lengthByRuleOfThree().isGreaterThanOrEqualTo(EYE.threeMeanDiameters()));
  }
}
