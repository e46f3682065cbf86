package org.hammerscale.drawing;

/** Lines of one kind that belong together, and what they show: a path, or a circle. */
record Stroke(Line line, String part, String path, double x, double y, double radius, Box box) {
  static Stroke of(Line line, String part, Path path) {
    return new Stroke(line, part, path.text(), 0, 0, 0, path.box());
  }

  static Stroke circle(Line line, String part, double x, double y, double radius) {
    Box box = new Box(x - radius, y - radius, x + radius, y + radius);
    return new Stroke(line, part, "", x, y, radius, box);
  }

  boolean isCircle() {
    return radius > 0;
  }
}
