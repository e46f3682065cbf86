package org.hammerscale.internal.pen;

/** An upright rectangle on the paper, in millimetres, y downwards. */
public record Box(double left, double top, double right, double bottom) {
  /** Holds nothing, and grows by what is added. */
  public static final Box NONE =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  public double width() {
    return right - left;
  }

  public double height() {
    return bottom - top;
  }

  public Box with(double x, double y) {
    return new Box(Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y));
  }

  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(top, other.top),
        Math.max(right, other.right),
        Math.max(bottom, other.bottom));
  }

  public Box grown(double by) {
    return new Box(left - by, top - by, right + by, bottom + by);
  }

  public boolean meets(Box other) {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
}
