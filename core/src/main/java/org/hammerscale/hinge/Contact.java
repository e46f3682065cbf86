package org.hammerscale.hinge;

/** What meets what when a {@link Swing} ends, or what decides the depth of a notch. */
public enum Contact {
  /** The edge of the notch and the other leaf's barrel. */
  BARREL("barrel"),
  /** The corner of the notch on the leaf's upper face, and the other leaf's face. */
  FACE_CORNER("face corner of the notch"),
  /** The corner of the notch on the leaf's lower face, and the other leaf's face. */
  BACK_CORNER("back corner of the notch"),
  /** The tip of the shorter leaf and the other leaf's face. */
  TIPS("tips of the leaves"),
  /** A board, and another board or leaf. */
  BOARDS("boards");

  private final String words;

  Contact(String words) {
    this.words = words;
  }

  /** The contact in words. */
  @Override
  public String toString() {
    return words;
  }
}
