package org.hammerscale.internal.pen;

/**
 * A text on the paper: where its base line begins, and whether it is read from the right side of
 * the sheet, running upwards.
 */
public record Label(String text, double x, double y, double size, boolean upwards) {
  public double width() {
    return FontMetric.width(text, size);
  }

  /** The room that it takes. */
  public Box box() {
    double up = FontMetric.ASCENT * size;
    double down = FontMetric.DESCENT * size;
    return upwards
        ? new Box(x - up, y - width(), x + down, y)
        : new Box(x, y - up, x + width(), y + down);
  }
}
