package org.hammerscale.piece;

/** One of the two ends of a piece. */
public enum PieceEnd {
  /** Where its first feature begins: the end that the features are told from. */
  FIRST("first end"),
  /** Where its last feature ends. */
  LAST("last end");

  private final String words;

  PieceEnd(String words) {
    this.words = words;
  }

  /** {@return the other end} */
  public PieceEnd other() {
    return this == FIRST ? LAST : FIRST;
  }

  /** The end in words. */
  @Override
  public String toString() {
    return words;
  }
}
