package org.hammerscale.piece;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class MatchedSetTest {
  private static final MatchedSize LENGTH = MatchedSize.of("length", inches("1/16"));
  private static final MatchedSize FLUSH = MatchedSize.of("flushness", inches("1/64"));

  @Test
  void leftAndRightHands() {
    MatchedSet left =
        MatchedSet.by(LENGTH, FLUSH)
            .with("L1", inches(12), inches("1/64"))
            .with("L2", inches("12 1/8"), inches(0));
    MatchedSet right =
        MatchedSet.by(LENGTH, FLUSH)
            .with("R1", inches("12 1/8"), inches("1/32"))
            .with("R2", inches(12), inches("1/64"));
    List<MatchedPair> pairs = left.pairedWith(right);
    assertEquals(
        "L1 with R2: length differs by 0 in, flushness differs by 0 in", pairs.get(0).toString());
    assertTrue(pairs.get(0).isMatched());
    assertEquals("L2", pairs.get(1).one());
    assertEquals("R1", pairs.get(1).other());
    assertEquals(List.of(inches(0), inches("1/32")), pairs.get(1).differences());
    assertFalse(pairs.get(1).isMatched());
    assertEquals(List.of("L1", "L2"), left.pieces());
    assertEquals(List.of(LENGTH, FLUSH), left.sizes());
    assertEquals(
        "2 pieces to match in length within 1/16 in, flushness within 1/64 in", left.toString());
  }

  @Test
  void whatToMatchFirst() {
    MatchedSet none = MatchedSet.by(LENGTH, FLUSH);
    assertEquals(LENGTH, none.firstToMatch(), "nothing known: the first named");
    MatchedSize loose = FLUSH.varyingBy(inches("1/64"));
    assertEquals(loose, MatchedSet.by(LENGTH.varyingBy(inches("1/64")), loose).firstToMatch());
    MatchedSet two = none.with("a", inches(12), inches(0)).with("b", inches(12), inches("1/64"));
    assertEquals(FLUSH, two.firstToMatch());
    assertEquals(inches("1/64"), two.range(FLUSH));
    assertEquals(
        "length within 1/16 in, varying by 1/64 in", LENGTH.varyingBy(inches("1/64")).toString());
  }

  /** Constants d₂ of control charts, printed to three decimals; quoted from memory. */
  @Test
  void expectedRangeAgainstControlCharts() {
    int[] pieces = {2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 25};
    double[] printed = {
      1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 2.847, 2.970, 3.078, 3.472, 3.735, 3.931
    };
    for (int i = 0; i < pieces.length; i++) {
      assertEquals(
          printed[i],
          LENGTH.varyingBy(millimetres(1)).expectedRange(pieces[i]).in(ShopUnits.MILLIMETRE),
          5e-4,
          "of " + pieces[i]);
    }
    assertEquals(2 / Math.sqrt(Math.PI), Ranges.expected(2), 1e-12);
    assertEquals(3 / Math.sqrt(Math.PI), Ranges.expected(3), 1e-12);
  }

  @Test
  void identicalPiecesGoWithTheirNeighbours() {
    Random random = new Random(5);
    for (int round = 0; round < 2000; round++) {
      int count = 2 * (1 + random.nextInt(4));
      double[] sizes = new double[count];
      MatchedSet set = MatchedSet.by(MatchedSize.of("length", millimetres(1)));
      for (int i = 0; i < count; i++) {
        sizes[i] = random.nextInt(12) / 2.0; // many alike
        set = set.with("p" + i, millimetres(300 + sizes[i]));
      }
      double sum = 0;
      double most = 0;
      for (MatchedPair pair : set.pairs()) {
        double away = pair.differences().get(0).in(ShopUnits.MILLIMETRE);
        sum += away;
        most = Math.max(most, away);
      }
      double[] best = bestOfAll(sizes, 0);
      assertEquals(best[0], sum, 1e-9, Arrays.toString(sizes));
      assertEquals(best[1], most, 1e-9, Arrays.toString(sizes));
    }
  }

  /** The least sum and the least greatest difference over all pairings of what is not taken yet. */
  private static double[] bestOfAll(double[] sizes, int taken) {
    int first = 0;
    while (first < sizes.length && (taken & 1 << first) != 0) {
      first++;
    }
    if (first == sizes.length) {
      return new double[] {0, 0};
    }
    double[] best = {Double.MAX_VALUE, Double.MAX_VALUE};
    for (int with = first + 1; with < sizes.length; with++) {
      if ((taken & 1 << with) == 0) {
        double away = Math.abs(sizes[first] - sizes[with]);
        double[] rest = bestOfAll(sizes, taken | 1 << first | 1 << with);
        best[0] = Math.min(best[0], away + rest[0]);
        best[1] = Math.min(best[1], Math.max(away, rest[1]));
      }
    }
    return best;
  }

  @Test
  void assignmentAgainstEveryPermutation() {
    Random random = new Random(8);
    for (int round = 0; round < 3000; round++) {
      int n = 1 + (round < 60 ? round % 8 : random.nextInt(6));
      double[][] costs = new double[n][n];
      for (double[] row : costs) {
        for (int j = 0; j < n; j++) {
          row[j] = round % 2 == 0 ? random.nextInt(4) : random.nextDouble(); // with ties, without
        }
      }
      int[] found = Assignment.of(costs);
      assertEquals(n, Arrays.stream(found).distinct().count());
      double sum = 0;
      for (int i = 0; i < n; i++) {
        sum += costs[i][found[i]];
      }
      assertEquals(cheapest(costs, 0, 0), sum, 1e-12);
    }
  }

  private static double cheapest(double[][] costs, int row, int taken) {
    if (row == costs.length) {
      return 0;
    }
    double best = Double.MAX_VALUE;
    for (int j = 0; j < costs.length; j++) {
      if ((taken & 1 << j) == 0) {
        best = Math.min(best, costs[row][j] + cheapest(costs, row + 1, taken | 1 << j));
      }
    }
    return best;
  }

  @Test
  void fortyPairsOfOneSizeAreThoseOfTheSortedPieces() {
    // With squares of differences the best pairing of two lots keeps their order.
    Random random = new Random(40);
    MatchedSize size = MatchedSize.of("length", millimetres(1));
    MatchedSet left = MatchedSet.by(size);
    MatchedSet right = MatchedSet.by(size);
    double[] lefts = random.doubles(40, 300, 310).toArray();
    double[] rights = random.doubles(40, 300, 310).toArray();
    for (int i = 0; i < 40; i++) {
      left = left.with("L" + i, millimetres(lefts[i]));
      right = right.with("R" + i, millimetres(rights[i]));
    }
    double sum = 0;
    for (MatchedPair pair : left.pairedWith(right)) {
      sum += Math.pow(pair.differences().get(0).in(ShopUnits.MILLIMETRE), 2);
    }
    Arrays.sort(lefts);
    Arrays.sort(rights);
    double sorted = 0;
    for (int i = 0; i < 40; i++) {
      sorted += Math.pow(lefts[i] - rights[i], 2);
    }
    assertEquals(sorted, sum, 1e-9);
  }

  @Test
  void sizesDescribedTwiceAreTheSame() {
    MatchedSize again = MatchedSize.of("length", inches("1/16"));
    assertEquals(LENGTH, again);
    assertEquals(LENGTH.hashCode(), again.hashCode());
    assertNotEquals(LENGTH, MatchedSize.of("length", inches("1/8")));
    assertNotEquals(LENGTH, MatchedSize.of("width", inches("1/16")));
    assertNotEquals(LENGTH, again.varyingBy(inches("1/64")));
    MatchedSet left = MatchedSet.by(LENGTH).with("L", inches(12));
    MatchedSet right = MatchedSet.by(again).with("R", inches(12));
    assertTrue(left.pairedWith(right).get(0).isMatched());
    assertEquals(inches(0), left.range(again));
  }

  @Test
  void mixedUnits() {
    MatchedSet set =
        MatchedSet.by(LENGTH)
            .with("a", inches(1))
            .with("b", millimetres(25.4))
            .with("c", inches(2));
    assertEquals(inches(1), set.range(LENGTH));
    assertEquals(1, set.with("d", millimetres(50.8)).pairs().get(0).differences().size());
    assertTrue(set.with("d", millimetres(50.8)).pairs().get(1).isMatched());
  }

  @Test
  void refusesWhatCannotBePaired() {
    MatchedSet one = MatchedSet.by(LENGTH).with("a", inches(1));
    assertEquals(
        "pieces must be an even number, was 1; forge another or leave one out",
        message(one::pairs));
    assertEquals(
        "measured must have a length for each of the 1 sizes, was 2; give them in the order of the"
            + " sizes",
        message(() -> one.with("b", inches(1), inches(2))));
    assertEquals(
        "piece must have a name of its own, was a; number the pieces",
        message(() -> one.with("a", inches(1))));
    assertEquals(
        "sizes must have different names, was length twice; rename one",
        message(() -> MatchedSet.by(LENGTH, LENGTH)));
    assertTrue(message(() -> one.pairedWith(MatchedSet.by(FLUSH))).startsWith("others must be as"));
    assertTrue(message(() -> one.range(FLUSH)).startsWith("size must be one"));
    assertEquals(
        "expected range must have a variation, was of a length without; tell it with varyingBy(…)",
        message(() -> LENGTH.expectedRange(3)));
  }

  private static String message(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
