package org.hammerscale.hinge;

/**
 * Which of the two leaves of a hinge: they take turns with their knuckles along the pin.
 *
 * <pre>{@code
 * Leaf.FIRST.other()    // second leaf
 * }</pre>
 */
public enum Leaf {
  /** The leaf that has the knuckle at the edge measured from; of an odd number it has both ends. */
  FIRST("first leaf"),
  /** The leaf that has the next one. */
  SECOND("second leaf");

  private final String words;

  Leaf(String words) {
    this.words = words;
  }

  /** {@return the leaf that it turns against} */
  public Leaf other() {
    return this == FIRST ? SECOND : FIRST;
  }

  /** The leaf in words. */
  @Override
  public String toString() {
    return words;
  }
}
