package org.hammerscale.units;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;

/** Low, likely, high: how estimates are made, added and printed. */
class EstimateTest {
  private static Estimate<Length> inchesOf(double low, double likely, double high) {
    return Estimate.of(inches(low), inches(likely), inches(high));
  }

  @Test
  void keepsItsThreeValuesInTheUnitOfTheLikelyOne() {
    Estimate<Length> estimate =
        Estimate.of(millimetres(25.4), inches(2), Quantities.getQuantity(3, ShopUnits.INCH));

    assertEquals(inches(1), estimate.low());
    assertEquals(inches(2), estimate.likely());
    assertEquals(inches(3), estimate.high());
    assertFalse(estimate.isExact());
  }

  @Test
  void isExactWithoutASpread() {
    Estimate<Length> exact = Estimate.exact(inches(2));

    assertTrue(exact.isExact());
    assertEquals(inches(2), exact.low());
    assertEquals(inches(2), exact.likely());
    assertEquals(inches(2), exact.high());
    assertEquals(exact, inchesOf(2, 2, 2));
    assertTrue(inchesOf(2, 2, 2).isExact());
    assertTrue(Estimate.of(inches(1), millimetres(25.4), inches(1)).isExact());
  }

  @Test
  void refusesValuesOutOfOrder() {
    assertEquals(
        "estimate must have low ≤ likely ≤ high, was 3 in, 2 in, 4 in; name them in this order",
        assertThrows(IllegalArgumentException.class, () -> inchesOf(3, 2, 4)).getMessage());
    assertEquals(
        "estimate must have low ≤ likely ≤ high, was 1 in, 2 in, 1 1/2 in; name them in this order",
        assertThrows(IllegalArgumentException.class, () -> inchesOf(1, 2, 1.5)).getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Estimate.of(millimetres(25.5), inches(1), inches(2)));
  }

  @Test
  @SuppressWarnings("unchecked") // what a caller's unchecked cast can bring about
  void refusesAMassAsALength() {
    Quantity<Length> mass = (Quantity<Length>) (Quantity<?>) pounds(1);
    assertEquals(
        "low must measure the same kind: a value of 1 lb cannot be read in in; a mass is not a length",
        assertThrows(IllegalArgumentException.class, () -> Estimate.of(mass, inches(1), inches(2)))
            .getMessage());
  }

  @Test
  void addsDependentErrorsAsTheyAre() {
    Estimate<Length> sum = inchesOf(7, 10, 14).addDependent(inchesOf(16, 20, 21));

    assertEquals(inchesOf(23, 30, 35), sum);
  }

  @Test
  void addsIndependentErrorsAsRootOfTheSumOfSquares() {
    // Half-widths of 3 and 4 make 5.
    assertEquals(inchesOf(25, 30, 35), inchesOf(7, 10, 13).addIndependent(inchesOf(16, 20, 24)));
    // Each side by itself: 3 and 4 below make 5, 5 and 12 above make 13.
    assertEquals(inchesOf(25, 30, 43), inchesOf(7, 10, 15).addIndependent(inchesOf(16, 20, 32)));
  }

  @Test
  void addsAnExactValueWithoutWideningTheSpread() {
    Estimate<Length> exact = Estimate.exact(inches(20));

    assertEquals(inchesOf(27, 30, 34), inchesOf(7, 10, 14).addDependent(exact));
    assertEquals(inchesOf(27, 30, 34), inchesOf(7, 10, 14).addIndependent(exact));
    assertEquals(Estimate.exact(inches(40)), exact.addDependent(exact));
    assertEquals(Estimate.exact(inches(40)), exact.addIndependent(exact));
    assertTrue(exact.addDependent(exact).isExact());
  }

  @Test
  void keepsTheUnitOfTheLeft() {
    Estimate<Length> millimetres =
        Estimate.of(millimetres(25.4), millimetres(50.8), millimetres(76.2));

    assertEquals(inchesOf(2, 4, 6), inchesOf(1, 2, 3).addDependent(millimetres));
    assertSame(ShopUnits.MILLIMETRE, millimetres.addIndependent(inchesOf(1, 2, 3)).low().getUnit());
    // Half-widths of 3 in and of 101.6 mm, which are 4 in.
    assertEquals(
        inchesOf(25, 30, 35),
        inchesOf(7, 10, 13)
            .addIndependent(Estimate.of(millimetres(406.4), millimetres(508), millimetres(609.6))));
  }

  @Test
  void multipliesAllThree() {
    assertEquals(inchesOf(2, 4, 6), inchesOf(1, 2, 3).multiply(2));
    assertEquals(Estimate.exact(inches(0)), inchesOf(1, 2, 3).multiply(0));
  }

  @Test
  void shiftsTurnsAndConverts() {
    assertEquals(inchesOf(2, 3, 5), inchesOf(1, 2, 4).add(millimetres(25.4)));
    assertEquals(inchesOf(-4, -2, -1), inchesOf(1, 2, 4).negate());
    assertEquals(inchesOf(1, 2, 4), inchesOf(1, 2, 4).negate().negate());
    Estimate<Length> metric = inchesOf(1, 2, 4).to(ShopUnits.MILLIMETRE);
    assertEquals(millimetres(25.4), metric.low());
    assertEquals(millimetres(50.8), metric.likely());
    assertEquals(millimetres(101.6), metric.high());
  }

  @Test
  void coversWhatLiesBetweenLowAndHigh() {
    assertTrue(inchesOf(1, 2, 4).covers(inches(1)));
    assertTrue(inchesOf(1, 2, 4).covers(millimetres(50)));
    assertTrue(inchesOf(1, 2, 4).covers(millimetres(101.6)));
    assertFalse(inchesOf(1, 2, 4).covers(inches(0.999)));
    assertFalse(inchesOf(1, 2, 4).covers(millimetres(101.7)));
  }

  @Test
  void refusesAFactorThatWouldTurnItOver() {
    assertEquals(
        "factor must not be negative, was -1.0; use negate() to change the sign",
        assertThrows(IllegalArgumentException.class, () -> inchesOf(1, 2, 3).multiply(-1))
            .getMessage());
    for (double factor : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      String message =
          assertThrows(IllegalArgumentException.class, () -> inchesOf(1, 2, 3).multiply(factor))
              .getMessage();
      assertTrue(message.contains("was " + factor), message);
    }
  }

  @Test
  void refusesToAddTemperatures() {
    var heat = Estimate.of(celsius(850), celsius(900), celsius(950));
    assertThrows(UnsupportedOperationException.class, () -> heat.addDependent(heat));
    assertThrows(UnsupportedOperationException.class, () -> heat.addIndependent(heat));
    assertThrows(UnsupportedOperationException.class, () -> heat.multiply(2));
    assertEquals("900 °C (850 °C to 950 °C)", heat.toString());
  }

  @Test
  void equalsByAllThree() {
    assertEquals(inchesOf(1, 2, 3), inchesOf(1, 2, 3));
    assertEquals(inchesOf(1, 2, 3).hashCode(), inchesOf(1, 2, 3).hashCode());
    assertNotEquals(inchesOf(1, 2, 3).hashCode(), inchesOf(2, 3, 4).hashCode());
    assertNotEquals(inchesOf(1, 2, 3), inchesOf(0, 2, 3));
    assertNotEquals(inchesOf(1, 2, 3), inchesOf(1, 2.5, 3));
    assertNotEquals(inchesOf(1, 2, 3), inchesOf(1, 2, 4));
    assertNotEquals(inchesOf(1, 2, 3), null);
    assertNotEquals(Estimate.exact(inches(1)), (Object) inches(1));
  }

  @Test
  void printsTheSpreadIfThereIsOne() {
    assertEquals("2 in (1 1/2 in to 3 in)", inchesOf(1.5, 2, 3).toString());
    assertEquals("2 in", Estimate.exact(inches(2)).toString());
  }

  /** Quantiles of the normal distribution, as every table of it has them (from memory). */
  @Test
  void boundsFollowTheNormalDistributionOnEachSide() {
    Estimate<Length> spread =
        Estimate.of(millimetres(-1.644854), millimetres(0), millimetres(2 * 1.644854));
    assertEquals(0, spread.bound(0.5).getValue());
    assertEquals(2 * 0.253347, spread.bound(0.6).getValue(), 2e-6);
    assertEquals(2 * 1.281552, spread.bound(0.9).getValue(), 2e-6);
    assertEquals(spread.high(), spread.bound(0.95));
    assertEquals(2 * 1.959964, spread.bound(0.975).getValue(), 2e-6);
    assertEquals(2 * 2.326348, spread.bound(0.99).getValue(), 2e-6);
    assertEquals(2 * 3.719016, spread.bound(0.9999).getValue(), 4e-6);
    assertEquals(0.95, spread.odds(spread.high()), 1e-12);
    assertEquals(0.05, spread.odds(spread.low()), 1e-12);
    assertEquals(0.5, spread.odds(millimetres(0)));
    assertEquals(0.025, spread.odds(millimetres(-1.959964)), 1e-7);
    assertEquals(0.975, spread.odds(millimetres(2 * 1.959964)), 1e-7);
  }

  @Test
  void whatIsExactIsEnoughOrNot() {
    Estimate<Length> exact = Estimate.exact(inches(3));
    assertEquals(inches(3), exact.bound(0.99));
    assertEquals(1, exact.odds(inches(3)));
    assertEquals(0, exact.odds(inches(2.999)));
    Estimate<Length> onlyMore = Estimate.of(inches(3), inches(3), inches(4));
    assertEquals(0, onlyMore.odds(inches(2.999)));
    assertEquals(0.5, onlyMore.odds(inches(3)));
    Estimate<Length> onlyLess = Estimate.of(inches(2), inches(3), inches(3));
    assertEquals(inches(3), onlyLess.bound(0.99));
    assertEquals(1, onlyLess.odds(inches(3.001)));
  }

  @Test
  void refusesOddsThatNobodyCanAskFor() {
    Estimate<Length> spread = Estimate.of(inches(2), inches(3), inches(4));
    for (double odds : new double[] {0.4999, 0.99991, 1, 0, -1, Double.NaN}) {
      IllegalArgumentException refused =
          assertThrows(IllegalArgumentException.class, () -> spread.bound(odds));
      assertEquals(
          "odds must lie between 0.5 and 0.9999, was "
              + odds
              + "; give 0.95 for what is enough 19 times in 20",
          refused.getMessage());
    }
  }
}
