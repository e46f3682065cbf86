package org.hammerscale.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Prints numbers as a shop reads them: four significant digits, never an exponent. */
final class Decimals {
  private static final int SIGNIFICANT = 4;

  private Decimals() {}

  /**
   * The value with at least {@code decimals} decimals kept, more if four significant digits need
   * them; trailing zeros dropped, whole digits never rounded.
   */
  static String text(double value, int decimals) {
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    int leading = exact.precision() - exact.scale();
    int kept = Math.max(decimals, SIGNIFICANT - leading);
    return plain(exact.setScale(Math.max(kept, 0), RoundingMode.HALF_UP));
  }

  /** The value rounded to a number of decimals, trailing zeros dropped. */
  static String rounded(double value, int decimals) {
    return plain(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
  }

  private static String plain(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
  }
}
