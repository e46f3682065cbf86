package org.hammerscale.piece;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Laws of a log of trials. */
class TrialLogPropertyTest {
  private static final double INCH = 25.4;

  /** A plain stretch and a shoulder, an estimate, in millimetres or in inches. */
  private static Layout layout(boolean inches) {
    Section bar =
        inches
            ? Section.flat(Measures.inches(25 / INCH), Measures.inches(6 / INCH))
            : Section.flat(Measures.millimetres(25), Measures.millimetres(6));
    Section tip =
        inches ? Section.round(Measures.inches(8 / INCH)) : Section.round(Measures.millimetres(8));
    return Piece.of(
            Bar.of(bar, Material.MILD_STEEL),
            Plain.of(bar, Measures.millimetres(100)),
            Shoulder.between(bar, tip, Measures.millimetres(120)))
        .layout();
  }

  private static Trial trial(double off, boolean inches) {
    return inches
        ? Trial.cut(Measures.inches(180 / INCH)).off(PieceEnd.LAST, Measures.inches(off / INCH))
        : Trial.cut(Measures.millimetres(180)).off(PieceEnd.LAST, Measures.millimetres(off));
  }

  private static List<Trial> trials(int count, long seed, boolean inches) {
    Random random = new Random(seed);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      trials.add(trial(60 + 40 * random.nextDouble(), inches));
    }
    return trials;
  }

  @Property
  void aTrialThatTurnsOutAsExpectedNeverRaisesTheBound(
      @ForAll @IntRange(max = 30) int count,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(4) double odds,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(2) double meanWorth,
      @ForAll @DoubleRange(min = 1, max = 100) @Scale(2) double spreadWorth) {
    TrialLog log =
        TrialLog.of(layout(false))
            .with(trials(count, seed, false))
            .withMeanWorth(meanWorth)
            .withSpreadWorth(spreadWorth)
            .withSpread(Measures.millimetres(3));
    EndTrials before = log.at(PieceEnd.LAST);
    Trial expected = Trial.cut(before.next().likely()).off(PieceEnd.LAST, Measures.millimetres(0));
    EndTrials after = log.with(expected).at(PieceEnd.LAST);
    assertEquals(
        before.next().likely().in(ShopUnits.MILLIMETRE),
        after.next().likely().in(ShopUnits.MILLIMETRE),
        1e-9);
    assertTrue(
        after.bound(odds).in(ShopUnits.MILLIMETRE)
            <= before.bound(odds).in(ShopUnits.MILLIMETRE) + 1e-9,
        () -> before + " then " + after);
  }

  @Property
  void theOrderOfTheTrialsDoesNotMatter(
      @ForAll @IntRange(min = 2, max = 40) int count, @ForAll long seed) {
    List<Trial> trials = trials(count, seed, false);
    EndTrials one = TrialLog.of(layout(false)).with(trials).at(PieceEnd.LAST);
    Collections.shuffle(trials, new Random(~seed));
    EndTrials other = TrialLog.of(layout(false)).with(trials).at(PieceEnd.LAST);
    assertEquals(one.bound(0.95), other.bound(0.95));
    assertEquals(one.classicalBound(0.95), other.classicalBound(0.95));
    assertEquals(one.next(), other.next());
  }

  @Property
  void inchesAndMillimetresAgree(
      @ForAll @IntRange(min = 2, max = 20) int count,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(4) double odds) {
    EndTrials metric =
        TrialLog.of(layout(false)).with(trials(count, seed, false)).at(PieceEnd.LAST);
    for (boolean inchLog : new boolean[] {true, false}) {
      EndTrials imperial =
          TrialLog.of(layout(true)).with(trials(count, seed, inchLog)).at(PieceEnd.LAST);
      assertEquals(ShopUnits.INCH, imperial.bound(odds).getUnit());
      assertEquals(
          metric.bound(odds).in(ShopUnits.MILLIMETRE),
          imperial.bound(odds).in(ShopUnits.MILLIMETRE),
          1e-9);
      assertEquals(
          metric.classicalBound(odds).in(ShopUnits.MILLIMETRE),
          imperial.classicalBound(odds).in(ShopUnits.MILLIMETRE),
          1e-9);
      assertEquals(metric.chance(), imperial.chance(), 1e-9);
    }
  }

  @Property
  void oddsAreTheInverseOfTheBound(
      @ForAll @IntRange(max = 20) int count,
      @ForAll long seed,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(4) double odds) {
    EndTrials end = TrialLog.of(layout(false)).with(trials(count, seed, false)).at(PieceEnd.LAST);
    assertEquals(odds, end.odds(end.bound(odds)), 1e-9);
  }
}
