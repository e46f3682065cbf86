package org.hammerscale.cutting;

import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
