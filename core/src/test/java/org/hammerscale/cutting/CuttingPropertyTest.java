package org.hammerscale.cutting;

import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hammerscale.units.Graduation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every list. */
class CuttingPropertyTest {
  private static final CutList EMPTY = CutList.of(TrialList.ROUND, Graduation.MILLIMETRE);

  /** Some pieces by lot, of few lengths. */
  private static List<Integer> pieces(Random random) {
    List<Integer> pieces = new ArrayList<>();
    int kinds = 1 + random.nextInt(5);
    for (int kind = 0; kind < kinds; kind++) {
      int length = 100 + random.nextInt(1900);
      pieces.addAll(Collections.nCopies(1 + random.nextInt(5), length));
    }
    return pieces;
  }

  private static CutList list(List<Integer> pieces, int kerf) {
    CutList list = EMPTY.kerf(millimetres(kerf)).endTrim(millimetres(20));
    for (int piece : pieces) {
      list = list.pieces("piece " + piece, millimetres(piece), 1);
    }
    return list.buying(millimetres(3000)).buying(millimetres(6000)).buying(millimetres(2100));
  }

  private static long reached(CuttingPlan plan, Aim aim) {
    assertTrue(plan.reached(aim).isProven(), () -> plan.reached(aim).toString());
    return plan.reached(aim).value().longValueExact();
  }

  @Property(tries = 200)
  void oneMoreOffcutBuysNoMoreNewStock(
      @ForAll Random random, @ForAll @IntRange(min = 50, max = 5000) int offcut) {
    CutList list = list(pieces(random), 3);
    long before = reached(list.plan(Aim.LEAST_NEW_STOCK), Aim.LEAST_NEW_STOCK);
    CutList more = list.offcuts(millimetres(offcut), 1);
    assertTrue(reached(more.plan(Aim.LEAST_NEW_STOCK), Aim.LEAST_NEW_STOCK) <= before);
  }

  @Property(tries = 200)
  void moreKerfOrAPieceMoreTakesNoFewerBars(
      @ForAll Random random,
      @ForAll @IntRange(min = 0, max = 30) int kerf,
      @ForAll @IntRange(min = 1, max = 2000) int piece) {
    List<Integer> pieces = pieces(random);
    long before = reached(list(pieces, kerf).plan(Aim.FEWEST_BARS), Aim.FEWEST_BARS);
    CutList wider = list(pieces, kerf + 1 + random.nextInt(10));
    assertTrue(reached(wider.plan(Aim.FEWEST_BARS), Aim.FEWEST_BARS) >= before);
    CutList more = list(pieces, kerf).pieces("more", millimetres(piece), 1);
    assertTrue(reached(more.plan(Aim.FEWEST_BARS), Aim.FEWEST_BARS) >= before);
  }

  @Test
  void moreKerfMayTakeFewerBarsIfNewStockIsTheFirstAim() {
    CutList list = EMPTY;
    for (int length : new int[] {1990, 1500, 1490}) {
      list = list.pieces("piece", millimetres(length), 1);
    }
    for (int length : new int[] {2000, 3000, 6000}) {
      list = list.buying(millimetres(length));
    }
    CuttingPlan thin = list.plan(Aim.LEAST_NEW_STOCK);
    assertEquals(millimetres(5000), thin.newStock());
    assertEquals(2, thin.barCount());
    CuttingPlan wide = list.kerf(millimetres(20)).plan(Aim.LEAST_NEW_STOCK);
    assertEquals(millimetres(6000), wide.newStock());
    assertEquals(1, wide.barCount());
  }

  /**
   * Many uneven lengths on few bars: too hard to be proved at once, so that every means is used.
   */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void noPlanOfAHardListIsBetterThanABoundOfIt(long seed) {
    Random random = new Random(seed);
    CutList list = EMPTY.kerf(millimetres(2));
    for (int kind = 0; kind < 16; kind++) {
      int length = kind % 3 == 0 ? 1000 + random.nextInt(1900) : 60 + random.nextInt(1200);
      list = list.pieces("piece " + kind, millimetres(length), 1 + random.nextInt(12));
    }
    list = list.buying(metres(6)).buying(metres(3)).buying(millimetres(4000 + (int) seed * 211));
    holdsOfAll(list, 200_000_000);
  }

  /** More choices of bars than can be gone through. */
  @Test
  void manyLengthsOfBarHaveABoundToo() {
    CutList list = EMPTY.kerf(millimetres(3));
    for (int n = 0; n < 12; n++) {
      list = list.buying(millimetres(1501 + 397 * n));
      list = list.pieces("piece " + n, millimetres(307 + 71 * n), 10);
    }
    holdsOfAll(list, 10_000_000);
  }

  private static void holdsOfAll(CutList list, long steps) {
    CuttingPlan quick = list.plan(1_000, done -> true, Aim.LEAST_NEW_STOCK);
    CuttingPlan plan = list.plan(steps, done -> true, Aim.LEAST_NEW_STOCK);
    BigDecimal metal = plan.reached(Aim.LEAST_NEW_STOCK).value();
    assertTrue(metal.compareTo(quick.reached(Aim.LEAST_NEW_STOCK).value()) <= 0);
    assertTrue(metal.compareTo(quick.reached(Aim.LEAST_NEW_STOCK).bound()) >= 0);
    assertTrue(metal.compareTo(plan.reached(Aim.LEAST_NEW_STOCK).bound()) >= 0);
    int pieces = plan.bars().stream().mapToInt(bar -> bar.count() * bar.marks().size()).sum();
    double cut =
        plan.bars().stream()
            .flatMap(bar -> bar.marks().stream().map(m -> m.length().multiply(bar.count())))
            .mapToDouble(length -> length.in(millimetres(1).getUnit()))
            .sum();
    assertTrue(pieces > 50 && metal.doubleValue() >= cut, pieces + " pieces of " + cut + " mm");
    assertTrue(plan.reached(Aim.LEAST_NEW_STOCK).gap() < 0.05, plan.toString());
  }

  @Property(tries = 100)
  void theOrderOfTheListChangesNothing(@ForAll Random random) {
    List<Integer> pieces = pieces(random);
    CuttingPlan plan = list(pieces, 2).plan();
    Collections.shuffle(pieces, random);
    CuttingPlan other = list(pieces, 2).plan();
    assertEquals(plan.cutList(), other.cutList());
    assertEquals(plan.toString(), other.toString());
  }

  /** Only the printed text is read, as the smith does. */
  @Property(tries = 200)
  void marksReadBackGiveEveryPieceItsLength(
      @ForAll Random random, @ForAll @IntRange(min = 0, max = 9) int kerf) {
    List<Integer> pieces = pieces(random);
    Map<String, Integer> cut = new TreeMap<>();
    for (String line : list(pieces, kerf).plan().cutList().split("\\n", -1)) {
      if (!line.isEmpty()) {
        read(line, kerf, cut);
      }
    }
    Map<String, Integer> wanted = new TreeMap<>();
    pieces.forEach(piece -> wanted.merge("piece " + piece + ": " + piece, 1, Integer::sum));
    assertEquals(wanted, cut);
  }

  private static void read(String line, int kerf, Map<String, Integer> cut) {
    int bars = Integer.parseInt(line.substring(0, line.indexOf(' ')));
    int from = 20;
    String marks = line.substring(line.indexOf("mark ") + 5, line.indexOf(';'));
    for (String mark : marks.split(", ", -1)) {
      int at = Integer.parseInt(mark.substring(0, mark.indexOf(' ')));
      String name = mark.substring(mark.indexOf('(') + 1, mark.indexOf(')'));
      cut.merge(name + ": " + (at - from), bars, Integer::sum);
      from = at + kerf;
    }
    int bar = Integer.parseInt(line.substring(line.indexOf('×') + 2, line.indexOf(" mm")));
    assertTrue(from - kerf <= bar, line);
  }
}
