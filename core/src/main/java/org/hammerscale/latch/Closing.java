package org.hammerscale.latch;

/** Which way a door's closing edge lies, seen from the side that its latch bar is on. */
public enum Closing {
  /** The edge is on the left, the hinges on the right. */
  LEFT("closing on the left", -1),
  /** The edge is on the right, the hinges on the left. */
  RIGHT("closing on the right", 1);

  private final String words;
  private final int sign;

  Closing(String words, int sign) {
    this.words = words;
    this.sign = sign;
  }

  /** Plus one to the right, minus one to the left. */
  int sign() {
    return sign;
  }

  /** In words. */
  @Override
  public String toString() {
    return words;
  }
}
