package org.hammerscale.spacing;

import static org.hammerscale.units.Graduation.EIGHTH;
import static org.hammerscale.units.Graduation.HALF;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PicketRowTest {
  private static final PicketRow FENCE =
      PicketRow.across(inches(72)).of(inches("1/2")).stopping(GuardCode.IRC_SPHERE);

  @Test
  void sphereThatJustFitsPasses() {
    // 84 in with 16 pickets of 1 in: 17 gaps of exactly 4 in.
    PicketRow row = PicketRow.across(inches(84)).of(inches(1));
    assertEquals(17, row.stopping(inches(4)).layout().pickets());
    assertEquals(16, row.openingsUpTo(inches(4)).layout().pickets());
    assertEquals(17, row.openingsUpTo(inches(4)).withTolerance(inches("1/64")).layout().pickets());
    // The same in mixed units: 101.6 mm is 4 in.
    assertEquals(17, row.stopping(millimetres(101.6)).layout().pickets());
    assertEquals(16, row.openingsUpTo(millimetres(101.6)).layout().pickets());
    PicketRow metric = PicketRow.across(millimetres(84 * 25.4)).of(inches(1));
    assertEquals(17, metric.stopping(inches(4)).layout().pickets());
    assertEquals(16, metric.openingsUpTo(inches(4)).layout().pickets());
  }

  @Test
  void narrowSpanNeedsNone() {
    PicketRow narrow = PicketRow.across(inches(3)).of(inches("1/2")).stopping(inches(4));
    assertEquals(0, narrow.layout().pickets());
    assertEquals(inches(3), narrow.layout().on(SIXTEENTH).widestGap());
    assertEquals("0 pickets, 3 in apart", narrow.layout().toString());
    assertEquals(List.of(), narrow.layout().edges());
  }

  @Test
  void gapsAndPicketsAddUpToTheSpan() {
    Random random = new Random(18);
    for (int i = 0; i < 3000; i++) {
      double a = (1 + random.nextInt(12)) / 8d;
      double b = (1 + random.nextInt(12)) / 8d;
      double span = 20 + random.nextInt(1000) / 8d;
      PicketLayout layout =
          PicketRow.across(inches(span)).of(inches(a), inches(b)).stopping(inches(4)).layout();
      int n = layout.pickets();
      int firsts = (n + 1) / 2;
      double widths = firsts * a + (n - firsts) * b;
      assertEquals(span, widths + (n + 1) * layout.gap().getValue(), 1e-9);
      List<Measure<Length>> edges = layout.edges();
      assertEquals(
          span, edges.get(n - 1).getValue() + (n % 2 == 1 ? a : b) + layout.gap().getValue(), 1e-9);
      double gaps = layout.gaps().stream().mapToDouble(Measure::getValue).sum();
      assertEquals(span, widths + gaps, 1e-9);
      assertEquals(layout.farEdges().get(0).getValue(), edges.get(0).getValue() + a, 1e-12);
      // Fewest: with one fewer the sphere passes.
      double fewer = widths - (n % 2 == 1 ? a : b);
      assertTrue(layout.gap().getValue() < 4 && (span - fewer) / n >= 4);
    }
  }

  /** Every placing on marks of small rows, tried by brute force. */
  @Test
  void noPlacingOnMarksHasANarrowerWidestGap() {
    Random random = new Random(500);
    int withMore = 0;
    for (int i = 0; i < 4000; i++) {
      double step = new double[] {0.25, 0.5, 1}[random.nextInt(3)];
      double span = 4 + random.nextInt(80) / 8d;
      double a = (1 + random.nextInt(10)) / 8d;
      double b = random.nextBoolean() ? a : (1 + random.nextInt(10)) / 8d;
      double limit = 2 + random.nextInt(16) / 8d;
      PicketRow row =
          PicketRow.across(inches(span)).of(inches(a), inches(b)).stopping(inches(limit));
      Graduation<Length> rule = Graduation.of(inches(step));
      int n = 0;
      while (widest(span, step, n, a, b, 0, 0) >= limit && n < 6) {
        n++;
      }
      if (n == 6 || n < row.layout().pickets()) {
        continue; // too many to try, or equal gaps need more than these
      }
      PicketLayout marked = row.layout().on(rule);
      assertEquals(n, marked.pickets(), () -> row + " on " + rule);
      assertEquals(
          widest(span, step, n, a, b, 0, 0), marked.widestGap().getValue(), 1e-9, row::toString);
      assertTrue(marked.edges().stream().allMatch(rule::isOnMark));
      withMore += n > row.layout().pickets() ? 1 : 0;
    }
    assertTrue(withMore > 100, "rows that a rule costs a picket: " + withMore);
  }

  /** The least widest gap of the pickets from one on, the last having ended at a place. */
  private static double widest(
      double span, double step, int n, double a, double b, int picket, double from) {
    if (picket == n) {
      return span <= from ? Double.POSITIVE_INFINITY : span - from;
    }
    double least = Double.POSITIVE_INFINITY;
    double width = picket % 2 == 0 ? a : b;
    for (double edge = (Math.floor(from / step) + 1) * step; edge + width < span; edge += step) {
      double rest = widest(span, step, n, a, b, picket + 1, edge + width);
      least = Math.min(least, Math.max(edge - from, rest));
    }
    return least;
  }

  @Test
  void fiveHundredOnARule() {
    PicketLayout row =
        PicketRow.across(inches(2205)).of(inches("1/2")).stopping(inches(4)).pickets(500).layout();
    PicketLayout marked = row.on(SIXTEENTH);
    double worst = 0;
    for (int i = 0; i < 500; i++) {
      double even = row.edges().get(i).getValue();
      worst = Math.max(worst, Math.abs(marked.edges().get(i).getValue() - even));
    }
    assertTrue(worst <= 1 / 32d + 1e-9, "no edge off by more than half a mark: " + worst);
    assertTrue(
        marked.widestGap().subtract(marked.narrowestGap()).isLessThanOrEqualTo(inches("1/8")));
  }

  @Test
  void rakedRailsKeepTheLevelGap() {
    PicketLayout level = FENCE.layout();
    PicketLayout stairs = FENCE.raked(degrees(60)).layout();
    assertEquals(level.gap(), stairs.gap());
    assertEquals(level.pickets(), stairs.pickets());
    // 1 / cos 60° = 2.
    for (int i = 0; i < level.pickets(); i++) {
      assertEquals(2 * level.edges().get(i).getValue(), stairs.edges().get(i).getValue(), 1e-11);
      assertEquals(
          2 * level.centres().get(i).getValue(), stairs.centres().get(i).getValue(), 1e-11);
      double near = stairs.edges().get(i).getValue();
      assertEquals(near + 2 * 0.5, stairs.farEdges().get(i).getValue(), 1e-11);
    }
    assertEquals(144, stairs.railLength().in(ShopUnits.INCH), 1e-9);
    assertEquals(60, stairs.rake().in(ShopUnits.DEGREE), 1e-9);
    assertEquals(degrees(0), level.rake());
    PicketLayout marked = stairs.on(EIGHTH);
    assertTrue(marked.edges().stream().allMatch(EIGHTH::isOnMark));
    assertTrue(marked.widestGap().isLessThan(inches(4)));
    assertEquals(level.edges(), FENCE.raked(degrees(0)).layout().edges());
  }

  @Test
  void patternsRepeatAndCanBeWhole() {
    PicketRow row =
        PicketRow.across(millimetres(1500))
            .of(millimetres(16), millimetres(12), millimetres(12))
            .stopping(millimetres(100));
    assertEquals(13, row.layout().pickets());
    PicketLayout whole = row.inWholePatterns().layout();
    assertEquals(15, whole.pickets());
    // 5 × 40 mm of pickets, 16 gaps; three pickets and three gaps from one to the next like it.
    assertEquals(1300 / 16d, whole.gap().getValue());
    assertEquals(40 + 3 * 1300 / 16d, whole.pitch().getValue());
    assertEquals(0, whole.on(MILLIMETRE).pickets() % 3);
    assertEquals(whole.edges().get(0).add(millimetres(8)), whole.centres().get(0));
    Workings.check(whole.working(), whole.gap());
    Workings.check(FENCE.layout().working(), FENCE.layout().gap());
  }

  @Test
  void numberOfTheCallersOwnHasACaution() {
    PicketLayout few = FENCE.pickets(15).layout();
    assertTrue(few.cautions().get(0).isDanger());
    assertTrue(few.cautions().get(0).text().contains("4 1/32 in is not less than the 4 in"));
    assertEquals(15, few.on(SIXTEENTH).pickets());
    assertFalse(FENCE.layout().cautions().toString().contains("child"));
    PicketLayout plain = PicketRow.across(inches(40)).of(inches(1)).pickets(3).layout();
    assertEquals(1, plain.cautions().size());
    assertTrue(plain.cautions().get(0).text().contains("local codes govern"));
    PicketLayout coarse = FENCE.layout().on(HALF);
    assertTrue(coarse.pickets() > 16);
    assertTrue(coarse.cautions().toString().contains("where equal gaps take 16"));
    assertEquals(coarse.edges(), FENCE.layout().on(SIXTEENTH).on(HALF).edges());
  }

  @Test
  void namesTheCodes() {
    assertTrue(GuardCode.IBC_2000_LOW_SPHERE.cautions().get(0).text().contains("superseded"));
    assertTrue(GuardCode.GERMANY_WIDTH.source().toString().contains("from memory"));
    assertTrue(GuardCode.IRC_SPHERE.source().toString().contains("(read)"));
    assertEquals(
        "Scotland, Technical Handbook, sphere: 100 mm", GuardCode.SCOTLAND_SPHERE.toString());
    String message = refusal(() -> FENCE.stopping(GuardCode.IRC_HEIGHT));
    assertTrue(message.contains("name one of the spheres"), message);
  }

  @Test
  void refusesWhatHasNoAnswer() {
    PicketRow bare = PicketRow.across(inches(72));
    assertThrows(IllegalStateException.class, bare::layout);
    PicketRow unlimited = bare.of(inches(1));
    assertThrows(IllegalStateException.class, unlimited::layout);
    assertTrue(refusal(() -> unlimited.pickets(73).layout()).contains("73 in of pickets"));
    assertTrue(refusal(() -> bare.of(inches(80)).stopping(inches(4)).layout()).contains("no gap"));
    assertTrue(
        refusal(() -> unlimited.withTolerance(inches(1))).contains("tell the opening first"));
    assertTrue(refusal(() -> unlimited.pickets(-1)).startsWith("count must be from 0"));
    assertTrue(refusal(() -> unlimited.raked(degrees(80))).startsWith("angle must lie"));
    assertTrue(refusal(bare::of).startsWith("number of widths"));
    PicketRow tight = unlimited.pickets(70);
    String message = refusal(() -> tight.layout().on(HALF));
    assertTrue(message.contains("take a finer rule"), message);
    Quantity<Length> none = inches(0);
    assertTrue(refusal(() -> PicketRow.across(none)).startsWith("clear span"));
    assertEquals("pickets of 1/2 in across 72 in, gaps of less than 4 in", FENCE.toString());
    assertEquals(
        "pickets of 1 in across 72 in, gaps of at most 4 in",
        unlimited.openingsUpTo(inches(4)).toString());
    assertEquals(
        "1 picket, 10 in to 10 in apart on 1/16 in steps",
        PicketRow.across(inches(21)).of(inches(1)).pickets(1).layout().on(SIXTEENTH).toString());
    assertEquals(ShopUnits.INCH, FENCE.layout().narrowestGap().getUnit());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
