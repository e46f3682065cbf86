package org.hammerscale.spacing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

/** Holes on the marks of a rule, against all layouts on those marks. */
class MarkedRowTest {
  private static final double NEAR = 1e-9;

  @Test
  void onMarksItIsAsGoodAsTheBestOfAllLayouts() {
    int ruled = 0;
    for (long seed = 1; seed <= 6000; seed++) {
      Random random = new Random(seed);
      TrialRow trial = TrialRow.ofMarks(random);
      TrialUnit unit = TrialUnit.any(random);
      boolean spaced = random.nextBoolean();
      HoleRow row = trial.row(unit);
      HoleRow widest = spaced ? row.leastSpacing(unit.of(trial.least())) : row;
      ruled += isBest("seed " + seed, trial, unit, widest, true, spaced ? trial.least() : 0);
      ruled += isBest("seed " + seed, trial, unit, trial.nearest(unit), false, trial.least());
    }
    assertTrue(ruled > 3000, "too few rows had a layout on the rule: " + ruled);
  }

  private static int isBest(
      String seed, TrialRow trial, TrialUnit unit, HoleRow row, boolean widest, double least) {
    if (!row.isFeasible()) {
      return 0;
    }
    boolean spacing = widest && trial.holes() > 1;
    double[] aim = widest ? trial.even() : trial.wanted().stream().mapToDouble(t -> t).toArray();
    HoleLayout exact = row.layout();
    Graduation<Length> rule = Graduation.of(unit.of(trial.mark()));
    double[] best = best(trial, aim, spacing, least);
    if (best == null && !Double.isNaN(trial.centre())) {
      best = best(trial.unsymmetric(), aim, spacing, least);
    }
    double loss =
        best == null
            ? Double.POSITIVE_INFINITY
            : spacing
                ? unit.number(exact.closestSpacing()) - best[0]
                : best[1] - unit.number(exact.largestMove());
    String what = seed + (widest ? ", widest: " : ", nearest: ") + trial + ", exact " + exact;
    if (best == null || (loss > trial.mark() + NEAR && movesOutOfItsStretch(trial, unit, exact))) {
      assertThrows(IllegalArgumentException.class, () -> exact.on(rule), what);
      return 0;
    }
    HoleLayout layout = assertDoesNotThrow(() -> exact.on(rule), what);
    String answer = what + ", on the rule " + layout;
    double[] x = unit.positions(layout);
    isOnMarks(trial, x, answer);
    if (spacing) {
      assertEquals(best[0], trial.spacing(x), NEAR, answer);
    }
    assertTrue(x.length < 2 || trial.spacing(x) >= least - NEAR, answer);
    assertEquals(best[1], TrialRow.move(x, aim), NEAR, answer);
    assertEquals(loss, unit.number(layout.lostToRule()), NEAR, answer);
    Workings.check(layout.lostToRuleWorking(), layout.lostToRule());
    return 1;
  }

  /** The widest spacing on the marks and the least move; null if no layout keeps the least. */
  private static double[] best(TrialRow trial, double[] aim, boolean widest, double least) {
    TrialRow.Best best = trial.best(trial.holes());
    boolean none = trial.holes() > 1 && (best.spacing < least || best.spacing == 0);
    if (!best.found || none) {
      return null;
    }
    double move = trial.leastMove(widest ? best.spacing : least, aim);
    return new double[] {best.spacing, move};
  }

  private static void isOnMarks(TrialRow trial, double[] x, String what) {
    for (int i = 0; i < x.length; i++) {
      double place = Math.rint(x[i]);
      assertEquals(place, x[i], NEAR, what);
      boolean fixed = trial.fixed().contains((int) place);
      assertTrue(fixed || (place % trial.mark() == 0 && trial.allows(place)), what);
      assertTrue(i == 0 || trial.apart() > 0 || x[i] > x[i - 1] + NEAR, what);
    }
    for (int f : trial.fixed()) {
      assertTrue(java.util.Arrays.stream(x).anyMatch(y -> Math.abs(y - f) < NEAR), what);
    }
  }

  /** Whether a hole, not a fixed one, lies in a stretch without a mark. */
  private static boolean movesOutOfItsStretch(TrialRow trial, TrialUnit unit, HoleLayout exact) {
    for (double place : unit.positions(exact)) {
      boolean fixed = trial.fixed().stream().anyMatch(f -> Math.abs(f - place) < NEAR);
      boolean marked = false;
      for (int mark = 0; mark <= trial.length(); mark += trial.mark()) {
        marked |= trial.allows(mark) && isOpen(trial, mark, place);
      }
      if (!fixed && !marked) {
        return true;
      }
    }
    return false;
  }

  /** Whether nothing is closed between two places. */
  private static boolean isOpen(TrialRow trial, double a, double b) {
    return trial.closed().stream()
        .noneMatch(
            k -> k[0] < k[1] && Math.min(a, b) <= k[0] + NEAR && k[1] <= Math.max(a, b) + NEAR);
  }

  private static String refused(HoleLayout layout, Graduation<Length> rule) {
    return assertThrows(IllegalArgumentException.class, () -> layout.on(rule)).getMessage();
  }

  private static HoleRow row(double length, int holes, double start, double end) {
    return HoleRow.along(millimetres(length))
        .holes(holes)
        .startingFrom(millimetres(start))
        .endingBefore(millimetres(end));
  }

  @Test
  void aStretchWithoutAMarkIsNamed() {
    HoleRow narrow = row(300, 4, 20, 10);
    for (double seam = 10.7; seam < 291; seam += 69.3) {
      narrow = narrow.missing(ClosedStretch.seamAt(millimetres(seam)).clear(millimetres(34.5)));
    }
    assertEquals(
        "rule must have marks for these holes, was one of 1 mm steps: the stretch from 45.2 mm to"
            + " 45.5 mm, where hole 1 goes, holds none; take 0.1 mm steps",
        refused(narrow.layout(), Graduation.MILLIMETRE));
    HoleLayout middle =
        row(240, 3, 20, 20)
            .missing(ClosedStretch.between(millimetres(30), millimetres(119.3)))
            .missing(ClosedStretch.between(millimetres(119.7), millimetres(210)))
            .layout();
    assertTrue(
        refused(middle, Graduation.MILLIMETRE)
            .endsWith("to 119.7 mm, where hole 2 goes, holds none; take 0.5 mm steps"));
    HoleLayout half = middle.on(Graduation.HALF_MILLIMETRE);
    assertEquals(millimetres(119.5), half.positions().get(1));
    assertEquals(millimetres(0.2).getValue(), half.lostToRule().getValue(), NEAR);
    HoleLayout point =
        row(240, 3, 20, 20)
            .missing(ClosedStretch.between(millimetres(20), millimetres(100.05)))
            .missing(ClosedStretch.between(millimetres(100.05), millimetres(220)))
            .layout();
    assertTrue(
        refused(point, Graduation.MILLIMETRE)
            .endsWith(
                "the one place at 100.05 mm, where hole 2 goes, holds none; no finer rule of the"
                    + " shop has them: measure these holes off, or move a closed stretch"));
  }

  @Test
  void aHoleMayGoToAnotherStretchIfThatCostsNoMoreThanAStep() {
    // 99.3 to 99.7 lies nearest to the middle, 101 to 102 is nearly as good.
    HoleLayout exact =
        row(199, 3, 0, 0)
            .missing(ClosedStretch.between(millimetres(0), millimetres(99.3)))
            .missing(ClosedStretch.between(millimetres(99.7), millimetres(100)))
            .missing(ClosedStretch.between(millimetres(101), millimetres(199)))
            .layout();
    assertEquals(millimetres(99.5), exact.positions().get(1));
    HoleLayout ruled = exact.on(Graduation.MILLIMETRE);
    assertEquals(millimetres(100), ruled.positions().get(1));
    assertEquals(millimetres(0.5), ruled.lostToRule());
    assertEquals(millimetres(0), exact.lostToRule());
    // From a layout on a coarse rule to a finer one: nothing is lost twice.
    assertEquals(exact.positions(), ruled.on(Graduation.HALF_MILLIMETRE).positions());
  }

  @Test
  void aSymmetricRowStaysSoWhereTheMarksAllowIt() {
    HoleRow row =
        HoleRow.along(inches(10)).holes(4).startingFrom(inches(1)).endingBefore(inches(1.1));
    HoleLayout ruled = row.symmetric().layout().on(Graduation.SIXTEENTH);
    assertEquals(List.of(), ruled.cautions());
    assertEquals(
        List.of(inches("1 1/8"), inches("3 11/16"), inches("6 5/16"), inches("8 7/8")),
        ruled.positions());
  }

  @Test
  void aLongStrapOnAFineRuleTakesNoTime() {
    HoleRow row = row(10_000, 200, 20, 20);
    for (int i = 1; i <= 100; i++) {
      ClosedStretch seam = ClosedStretch.seamAt(millimetres(97.31 * i));
      row = row.missing(seam.clear(millimetres(15)));
    }
    HoleLayout layout = row.layout();
    Measure<Length> lost = layout.on(Graduation.TENTH_MILLIMETRE).lostToRule();
    assertTrue(lost.getValue() >= 0 && lost.getValue() <= 0.1 + NEAR, lost::toString);
  }
}
