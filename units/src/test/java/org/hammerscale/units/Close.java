package org.hammerscale.units;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.function.Supplier;

/** Comparing doubles by the number of roundings that may lie between them. */
final class Close {
  private Close() {}

  /**
   * Expects two numbers to be the same but for roundings. Used where a calculation has to divide or
   * multiply by a factor that no double holds exactly; everywhere else tests compare with no slack
   * at all.
   */
  static void assertWithinUlps(double expected, double actual, int ulps, Supplier<String> what) {
    assertTrue(
        Math.abs(expected - actual) <= ulps * Math.ulp(expected),
        () -> what.get() + ": expected " + expected + ", was " + actual);
  }

  static void assertWithinUlps(double expected, double actual, int ulps) {
    assertWithinUlps(expected, actual, ulps, () -> "not within " + ulps + " roundings");
  }

  /** Expects a number to be no further from a printed one than the printed one's tolerance. */
  static void assertWithin(BigDecimal printed, double actual, BigDecimal tolerance) {
    BigDecimal off = new BigDecimal(actual).subtract(printed).abs();
    assertTrue(
        off.compareTo(tolerance) <= 0,
        () -> "printed " + printed + " ± " + tolerance + ", was " + actual + ", off by " + off);
  }
}
