package org.hammerscale.internal.pen;

/** A line in the making: straight stretches and arcs of circles, in millimetres, y downwards. */
public final class Path {
  private static final double QUARTER = Math.PI / 2;

  private final StringBuilder text = new StringBuilder();
  private Box box = Box.NONE;

  /** A straight line. */
  public static Path line(double x1, double y1, double x2, double y2) {
    return new Path().from(x1, y1).to(x2, y2);
  }

  /** Straight from point to point, x and y by turns. */
  public static Path through(double... points) {
    Path path = new Path().from(points[0], points[1]);
    for (int i = 2; i < points.length; i += 2) {
      path.to(points[i], points[i + 1]);
    }
    return path;
  }

  public static Path rectangle(Box box) {
    return new Path()
        .from(box.left(), box.top())
        .to(box.right(), box.top())
        .to(box.right(), box.bottom())
        .to(box.left(), box.bottom())
        .close();
  }

  public Path from(double x, double y) {
    return point('M', x, y);
  }

  public Path to(double x, double y) {
    return point('L', x, y);
  }

  /**
   * An arc about a centre, from one direction to another, drawn on from where the path is or begun
   * there. Directions in radians, from the right towards below.
   */
  public Path arc(double cx, double cy, double radius, double from, double to) {
    double x = cx + radius * Math.cos(from);
    double y = cy + radius * Math.sin(from);
    if (text.length() == 0) {
      from(x, y);
    }
    double turn = to - from;
    // A whole circle has no direction as one arc: it is drawn in parts of less than a half.
    int parts = (int) Math.ceil(Math.abs(turn) / (0.9 * Math.PI));
    for (int i = 1; i <= parts; i++) {
      double at = from + turn * i / parts;
      number('A', radius).number(' ', radius).append(" 0 0 ").append(turn > 0 ? '1' : '0');
      point(' ', cx + radius * Math.cos(at), cy + radius * Math.sin(at));
    }
    double low = Math.min(from, to);
    double high = Math.max(from, to);
    for (double q = Math.ceil(low / QUARTER) * QUARTER; q <= high; q += QUARTER) {
      box = box.with(cx + radius * Math.cos(q), cy + radius * Math.sin(q));
    }
    return this;
  }

  public Path close() {
    text.append('Z');
    return this;
  }

  private Path point(char command, double x, double y) {
    number(command, x).number(' ', y);
    box = box.with(x, y);
    return this;
  }

  private Path number(char before, double value) {
    text.append(before);
    Numbers.append(text, value);
    return this;
  }

  private Path append(String more) {
    text.append(more);
    return this;
  }

  private Path append(char more) {
    text.append(more);
    return this;
  }

  public Box box() {
    return box;
  }

  public String text() {
    return text.toString();
  }
}
