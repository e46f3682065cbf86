package org.hammerscale.examples.order;

/** How far two words are apart, as a typist goes wrong. */
public final class Typing {
  private static final int LONGEST = 40;

  private Typing() {}

  /** Letters added, left out or taken for others on the way from one word to the other. */
  public static int errors(String typed, String meant) {
    if (typed.length() > LONGEST) {
      return typed.length();
    }
    int[] before = new int[meant.length() + 1];
    for (int j = 0; j < before.length; j++) {
      before[j] = j;
    }
    for (int i = 1; i <= typed.length(); i++) {
      int[] row = new int[before.length];
      row[0] = i;
      for (int j = 1; j < row.length; j++) {
        int other = typed.charAt(i - 1) == meant.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(Math.min(before[j], row[j - 1]) + 1, before[j - 1] + other);
      }
      before = row;
    }
    return before[meant.length()];
  }
}
