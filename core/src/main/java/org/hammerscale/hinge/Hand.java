package org.hammerscale.hinge;

/**
 * Which side of the door its hinges are on, seen from the side that it opens toward.
 *
 * <pre>{@code
 * Hand.LEFT.other()    // right hand
 * }</pre>
 */
public enum Hand {
  /** The hinges are on the left. */
  LEFT("left hand"),
  /** The hinges are on the right. */
  RIGHT("right hand");

  private final String words;

  Hand(String words) {
    this.words = words;
  }

  /** {@return the hand of the other leaf of a double door} */
  public Hand other() {
    return this == LEFT ? RIGHT : LEFT;
  }

  /** The hand in words. */
  @Override
  public String toString() {
    return words;
  }
}
