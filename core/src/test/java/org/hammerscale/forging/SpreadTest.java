package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class SpreadTest {
  private static final Section BAR = Section.square(millimetres(25));
  private static final SpreadLaw LAW = SpreadLaw.tomlinsonStringer(millimetres(12.5));
  private static final Spread SPREAD = Spread.thinning(BAR, millimetres(20), LAW);

  @Test
  void withoutSpreadTheLengthTakesAll() {
    Spread none = Spread.thinning(BAR, millimetres(20), SpreadLaw.NONE);
    assertEquals(Estimate.exact(millimetres(25)), none.width());
    assertEquals(1.25, none.timesLonger());
    assertTrue(SPREAD.timesLonger() < none.timesLonger());
    assertTrue(none.cautions().isEmpty());
  }

  @Test
  void withAllSpreadTheWidthTakesAll() {
    Spread all = Spread.thinning(BAR, millimetres(20), SpreadLaw.measured(1));
    assertEquals(Estimate.exact(millimetres(31.25)), all.width());
    assertEquals(1, all.timesLonger());
    assertEquals(Section.flat(millimetres(31.25), millimetres(20)), all.section());
  }

  @Test
  void aLawFromMemoryGivesAnEstimateAndAShopTrialDoesNot() {
    assertTrue(SPREAD.width().low().isLessThan(SPREAD.width().likely()));
    assertTrue(SPREAD.width().high().isGreaterThan(SPREAD.width().likely()));
    Section after = Section.flat(millimetres(27), millimetres(20));
    Spread trial = Spread.thinning(BAR, millimetres(20), SpreadLaw.measured(BAR, after));
    assertTrue(trial.width().isExact());
    assertTrue(trial.width().likely().isEquivalentTo(millimetres(27)));
  }

  @Test
  void showsItsWorkings() {
    Workings.check(SPREAD.widthWorking(), SPREAD.width().likely());
    for (SpreadLaw law :
        List.of(
            SpreadLaw.NONE,
            LAW,
            SpreadLaw.measured(0.4),
            SpreadLaw.tomlinsonStringer(millimetres(60)),
            SpreadLaw.wusatowski(inches(2)))) {
      Spread spread = Spread.thinning(BAR, millimetres(20), law);
      Workings.check(spread.widthWorking(), spread.width().likely());
      Workings.check(spread.longerWorking(), Measure.of(spread.timesLonger(), ShopUnits.ONE));
    }
    assertEquals(
        "25 mm square spread to a thickness of 20 mm, Tomlinson and Stringer's spread",
        SPREAD.toString());
  }

  @Test
  void countsThePassesAtASqueezeLimit() {
    assertEquals(1, SPREAD.passes(1.3));
    assertEquals(1, SPREAD.passes(1.25));
    assertEquals(2, SPREAD.passes(1.2));
    assertEquals(3, Spread.thinning(BAR, millimetres(12.5), LAW).passes(1.3));
    assertEquals(
        "squeeze must be more than 1, was 1.0; give thickness before ÷ after a pass",
        assertThrows(IllegalArgumentException.class, () -> SPREAD.passes(1)).getMessage());
  }

  @Test
  void isAPlainStretchOfAPiece() {
    assertEquals(millimetres(100), SPREAD.over(millimetres(100)).reach());
    assertEquals(SPREAD.section(), SPREAD.over(millimetres(100)).start());
    Spread onEdge =
        Spread.thinning(
            Section.onEdge(millimetres(5), millimetres(30)), millimetres(20), SpreadLaw.NONE);
    assertEquals(Section.onEdge(millimetres(5), millimetres(20)), onEdge.section());
  }

  @Test
  void cautionsBeyondTheLimitsOfTheLaw() {
    assertTrue(SPREAD.cautions().isEmpty());
    SpreadLaw broad = SpreadLaw.tomlinsonStringer(millimetres(60));
    assertEquals(
        SpreadLaw.tomlinsonStringer(millimetres(50)).coefficient(BAR), broad.coefficient(BAR));
    assertEquals(
        "the bite of 60 mm is more than twice the width of 25 mm: the law of spread is held at its"
            + " value for twice; measure a trial piece",
        Spread.thinning(BAR, millimetres(20), broad).cautions().get(0).text());
    assertEquals(
        "the bite of 8 mm is less than a third of the thickness of 25 mm: so narrow a bite works"
            + " only the skin; take a broader face",
        Spread.thinning(BAR, millimetres(20), SpreadLaw.tomlinsonStringer(millimetres(8)))
            .cautions()
            .get(0)
            .text());
    assertEquals(
        "from 25 mm to 10 mm is more than 1.3 times thinner: take about 4 passes, or laps may close"
            + " in the sides",
        Spread.thinning(BAR, millimetres(10), SpreadLaw.NONE).cautions().get(0).text());
    assertEquals(
        1,
        Spread.thinning(BAR, millimetres(20), SpreadLaw.wusatowski(millimetres(100)))
            .cautions()
            .size());
  }

  @Test
  void refusesWhatIsNoSpreading() {
    assertEquals(
        "thickness must be less than the 25 mm of the bar, was 25 mm; spreading makes a bar thinner",
        assertThrows(
                IllegalArgumentException.class, () -> Spread.thinning(BAR, millimetres(25), LAW))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> Spread.thinning(Section.round(millimetres(25)), millimetres(20), LAW));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.measured(1.01));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.measured(-0.1));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.measured(Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.tomlinsonStringer(millimetres(0)));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.wusatowski(millimetres(-1)));
    assertThrows(IllegalArgumentException.class, () -> SpreadLaw.measured(BAR, BAR));
  }
}
