package org.hammerscale.stock;

/** When a feature at the end of a piece can be cut to its length. */
public enum Trimming {
  /** Once it is worked: what is too long is cut off its free end. */
  AFTER_WORK("after it is worked"),
  /** Before it is worked, since its end then meets the piece: a rolled barrel, a turned eye. */
  BEFORE_WORK("before it is worked"),
  /** Never: it has no free end, as a ring has none. */
  NEVER("never");

  private final String words;

  Trimming(String words) {
    this.words = words;
  }

  /** When, in words. */
  @Override
  public String toString() {
    return words;
  }
}
