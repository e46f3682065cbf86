package org.hammerscale.punching;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.forging.Taper;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SplitTest {
  private static final Section BAR = Section.flat(inches("1 1/4"), inches("1/4"));
  private static final HotCut CUT = HotCut.ofKerf(inches("1/16"), BAR);
  private static final Split FORK = Split.over(inches(4), CUT, inches(1), inches("3/16"));
  private static final Section WIDE = Section.flat(inches(1), inches("1/4"));
  private static final Section THIN = Section.onEdge(inches("3/16"), inches("1/4"));

  @Test
  void makesTinesThatAddUpToTheBar() {
    assertEquals(List.of(WIDE, THIN), FORK.tineSections());
    assertEquals(2, FORK.tines().size());
    assertEquals("plain stretch", FORK.tines().get(0).name());
    assertEquals("hot cut 0.0625 in³", FORK.metalLost().toString());
    assertEquals(4 * 0.25 * (1 + 3 / 16d), FORK.metalKept().likely().getValue(), 1e-15);
    assertEquals(Estimate.exact(inches(4)), FORK.stock(BAR));
    assertEquals(
        Estimate.exact(inches(2)), FORK.stock(Section.flat(inches("1 1/4"), inches("1/2"))));
    assertEquals(inches(4), FORK.reach());
    assertEquals(inches(4), FORK.length());
    assertEquals("split", FORK.name());
    assertEquals(BAR, FORK.start());
    assertEquals(BAR, FORK.end());
  }

  @Test
  void makesEqualTines() {
    Split three = Split.evenly(inches(3), CUT, 3);
    // 1 1/4 less two sixteenths, in three.
    assertEquals(inches("3/8"), three.tineSections().get(2).width());
    assertEquals(3, three.tines().size());
    Split clean = Split.evenly(inches(3), HotCut.ofKerf(inches(0), BAR), 10);
    assertEquals(Losses.NONE, clean.metalLost());
    assertEquals(inches("1/8"), clean.tineSections().get(9).width());
    Workings.check(clean.working(), clean.metalKept().likely());
  }

  @Test
  void aCleanCutCostsNoWidth() {
    Split five = Split.evenly(inches(3), HotCut.ofKerf(inches(0), BAR), 5);
    assertEquals("1/4 in × 1/4 in flat", five.tineSections().get(0).toString());
  }

  @Test
  void countsAMetricTineInAnInchBar() {
    Split mixed = Split.over(inches(4), CUT, millimetres(25.4), inches("3/16"));
    assertTrue(mixed.metalKept().likely().isEquivalentTo(FORK.metalKept().likely()));
  }

  @Test
  void isAsLongAsTheTineThatUsesMost() {
    // The wide tine is drawn to half its width and keeps 3/4 of its stretch: 6 in of 8.
    Taper taper = Taper.between(WIDE, Section.flat(inches("1/2"), inches("1/4")), inches(8));
    Split worked = FORK.worked(taper, Plain.of(THIN, inches(5)));
    assertEquals(6, worked.length().getValue(), 1e-14);
    assertEquals(inches(8), worked.reach());
    assertEquals(List.of(WIDE, THIN), worked.tineSections());
    // 1 in of 3/16 × 1/4 in is trimmed; 6 in of 1/16 × 1/4 in went in the cut.
    assertEquals("hot cut 0.09375 in³, trim 0.04688 in³", worked.metalLost().toString());
    assertEquals(6, worked.stock(BAR).likely().getValue(), 1e-14);
    assertEquals("taper", worked.tines().get(0).name());
    Workings.check(worked.working(), worked.metalKept().likely());
  }

  @Test
  void countsWhatItsTinesLose() {
    PunchedHole hole = PunchedHole.through(WIDE, Hole.round(inches("1/2")));
    Split worked = FORK.worked(hole, Plain.of(THIN, inches("1/2")));
    assertTrue(worked.metalLost().toString().contains("tine 1 "));
    assertFalse(worked.metalKept().isExact());
    assertEquals(0.5, worked.stock(BAR).likely().getValue(), 1e-15);
    assertFalse(worked.stock(BAR).isExact());
  }

  @Test
  void passesCautionsOn() {
    assertTrue(FORK.cautions().isEmpty());
    Split blunt = Split.evenly(inches(3), HotCut.bevelled(degrees(100), BAR), 2);
    assertEquals(1, blunt.cautions().size());
    PunchedHole near = PunchedHole.through(WIDE, Hole.round(inches("3/4")));
    assertEquals(1, FORK.worked(near, Plain.of(THIN, inches("1/2"))).cautions().size());
  }

  @Test
  void showsItsWorking() {
    Workings.check(FORK.working(), FORK.metalKept().likely());
    Split metric =
        Split.evenly(
            millimetres(80), HotCut.bevelled(degrees(30), Section.square(millimetres(20))), 3);
    Workings.check(metric.working(), metric.metalKept().likely());
    assertEquals("4 in split of 1 1/4 in × 1/4 in flat into 1 in, 3/16 in", FORK.toString());
  }

  @Test
  void refusesTinesThatDoNotAddUp() {
    assertEquals(
        "widths of the tines must add up with their cuts to the bar of 1 1/4 in, was 1/2 in + 5/8 in"
            + " and 1 × 1/16 in of kerf, together 1 3/16 in; change a tine by the difference",
        refusal(() -> Split.over(inches(4), CUT, inches("1/2"), inches("5/8"))));
    assertEquals(
        "count of tines must be from 2 to 100, was 1; a bar that is not split is a Plain stretch",
        refusal(() -> Split.over(inches(4), CUT, inches("1 1/4"))));
    assertEquals(
        "count of tines must be from 2 to 100, was 0; a bar that is not split is a Plain stretch",
        refusal(() -> Split.evenly(inches(4), CUT, 0)));
    assertEquals(
        "count must leave metal between the kerfs of 1/16 in in a bar of 1 1/4 in, was 21; take"
            + " fewer tines, a keener chisel or a wider bar",
        refusal(() -> Split.evenly(inches(4), CUT, 21)));
    assertEquals(
        "width of a tine must be more than zero, was 0 in; give the finished cold size",
        refusal(() -> Split.over(inches(4), CUT, inches(0), inches("1 3/16"))));
    assertEquals(
        "length must be more than zero, was 0 in; give the finished cold size",
        refusal(() -> Split.over(inches(0), CUT, inches(1), inches("3/16"))));
    HotCut round = HotCut.ofKerf(inches(0), Section.round(inches(1)));
    assertEquals(
        "section must be a flat or square bar, was 1 in round; flatten it first and give the section"
            + " it has then",
        refusal(() -> Split.evenly(inches(4), round, 2)));
  }

  @Test
  void refusesTinesThatAreNotItsOwn() {
    assertEquals(
        "features must be as many as the 2 tines, was 1; leave a tine as it is with a Plain stretch"
            + " of its section",
        refusal(() -> FORK.worked(Plain.of(WIDE, inches(4)))));
    assertEquals(
        "feature 2 must begin with its tine, 3/16 in × 1/4 in flat, was a plain stretch from 1 in ×"
            + " 1/4 in flat; change the widths of the tines, or work it from this section",
        refusal(() -> FORK.worked(Plain.of(WIDE, inches(4)), Plain.of(WIDE, inches(4)))));
    assertThrows(
        IllegalArgumentException.class,
        () -> FORK.worked(Plain.of(WIDE, inches(0)), Plain.of(THIN, inches(0))));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
