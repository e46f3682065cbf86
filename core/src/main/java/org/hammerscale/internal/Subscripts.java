package org.hammerscale.internal;

/** Numbers as they stand behind a symbol. */
public final class Subscripts {
  private Subscripts() {}

  /**
   * A number in subscript digits.
   *
   * @param number the number, not negative
   * @return its digits, such as {@code ₁₂}
   */
  public static String of(int number) {
    StringBuilder digits = new StringBuilder();
    for (char digit : Integer.toString(number).toCharArray()) {
      digits.append((char) ('₀' + digit - '0'));
    }
    return digits.toString();
  }
}
