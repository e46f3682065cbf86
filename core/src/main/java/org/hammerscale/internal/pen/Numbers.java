package org.hammerscale.internal.pen;

/** Coordinates as an SVG holds them: to the ten-millionth of a millimetre, no trailing zeros. */
final class Numbers {
  private static final int DECIMALS = 7;
  private static final long WHOLE = 10_000_000;

  private Numbers() {}

  static String text(double value) {
    StringBuilder text = new StringBuilder(12);
    append(text, value);
    return text.toString();
  }

  static void append(StringBuilder text, double value) {
    long count = Math.round(Math.abs(value) * WHOLE);
    if (value < 0 && count > 0) {
      text.append('-');
    }
    text.append(count / WHOLE);
    long rest = count % WHOLE;
    if (rest == 0) {
      return;
    }
    int start = text.length();
    text.append(rest + WHOLE); // its first digit is a one, where the point will stand
    text.setCharAt(start, '.');
    int end = start + DECIMALS;
    while (text.charAt(end) == '0') {
      end--;
    }
    text.setLength(end + 1);
  }
}
