package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;

/** One order over all lengths, whatever their units. */
class ComparisonTest {
  /** The sixty-fourths of 48 in. */
  private static final int PAIRS = 3072;

  private static int sign(Measure<Length> first, Measure<Length> second) {
    return Integer.signum(first.compareTo(second));
  }

  @Test
  void isAntisymmetricOverSixtyFourthsAndTheirMillimetres() {
    // Comparing in the unit of the left operand breaks hundreds of these pairs by the last bit.
    for (int n = 1; n <= PAIRS; n++) {
      Measure<Length> inch = inches(n / 64.0);
      Measure<Length> millimetre = millimetres(n * 25.4 / 64);
      Measure<Length> converted = inch.to(MILLIMETRE);

      assertEquals(sign(inch, millimetre), -sign(millimetre, inch), inch + " and " + millimetre);
      assertEquals(sign(inch, converted), -sign(converted, inch), inch + " and " + converted);
    }
  }

  @Test
  void isEquivalentBothWaysOverSixtyFourthsAndTheirMillimetres() {
    for (int n = 1; n <= PAIRS; n++) {
      Measure<Length> inch = inches(n / 64.0);
      Measure<Length> millimetre = millimetres(n * 25.4 / 64);
      Measure<Length> longer = millimetre.multiply(1 + 1e-11);

      assertTrue(inch.isEquivalentTo(millimetre) && millimetre.isEquivalentTo(inch), inch + "");
      assertTrue(!inch.isEquivalentTo(longer) && !longer.isEquivalentTo(inch), inch + "");
    }
  }

  @Test
  void isTransitive() {
    // Near misses are where an order breaks: every length in three units, and its neighbours.
    List<Measure<Length>> lengths = new ArrayList<>();
    for (int n = 1; n <= 64; n++) {
      Measure<Length> inch = inches(n / 64.0);
      for (Measure<Length> same : List.of(inch, inch.to(MILLIMETRE), inch.to(METRE))) {
        lengths.add(same);
        lengths.add(same.withValue(Math.nextUp(same.getValue())));
        lengths.add(same.withValue(Math.nextDown(same.getValue())));
      }
    }
    lengths.sort(Comparator.naturalOrder());

    // Were the order not transitive, some pair far apart in the sorted list would disagree with it.
    int rank = 0;
    int[] ranks = new int[lengths.size()];
    for (int i = 1; i < ranks.length; i++) {
      rank += sign(lengths.get(i), lengths.get(i - 1));
      ranks[i] = rank;
    }
    for (int i = 0; i < ranks.length; i++) {
      for (int j = 0; j < ranks.length; j++) {
        int expected = Integer.compare(ranks[i], ranks[j]);
        assertEquals(expected, sign(lengths.get(i), lengths.get(j)));
      }
    }
  }

  @Test
  void isFinerThanEquivalenceAndCoarserThanEquality() {
    Measure<Length> inch = inches(1);
    Measure<Length> next = inch.withValue(1 + 1e-13);
    assertTrue(inch.isEquivalentTo(next));
    assertTrue(inch.isLessThan(next));

    assertEquals(0, inch.compareTo(millimetres(25.4)));
    assertEquals(1.0, millimetres(25.4).in(INCH));
    assertTrue(!inch.equals(millimetres(25.4)));
  }

  @Test
  void hasAWordForEachSideAndForTheLimit() {
    Measure<Length> inch = inches(1);
    assertTrue(inch.isGreaterThanOrEqualTo(millimetres(25.4)));
    assertTrue(inch.isLessThanOrEqualTo(millimetres(25.4)));
    assertTrue(inch.isGreaterThanOrEqualTo(millimetres(25)));
    assertTrue(inch.isLessThanOrEqualTo(millimetres(26)));
    assertTrue(!inch.isGreaterThanOrEqualTo(millimetres(26)));
    assertTrue(!inch.isLessThanOrEqualTo(millimetres(25)));
    assertTrue(!inch.isGreaterThan(millimetres(25.4)) && !inch.isLessThan(millimetres(25.4)));
  }
}
