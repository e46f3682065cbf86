package org.hammerscale.internal.pen;

/** Lines of one kind that belong together, and what they show: a path, or a circle. */
public record Stroke(
    Line line, String part, String path, double x, double y, double radius, Box box) {
  public static Stroke of(Line line, String part, Path path) {
    return new Stroke(line, part, path.text(), 0, 0, 0, path.box());
  }

  public static Stroke circle(Line line, String part, double x, double y, double radius) {
    Box box = new Box(x - radius, y - radius, x + radius, y + radius);
    return new Stroke(line, part, "", x, y, radius, box);
  }

  public boolean isCircle() {
    return radius > 0;
  }
}
