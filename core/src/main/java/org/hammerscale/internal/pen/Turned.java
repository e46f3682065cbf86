package org.hammerscale.internal.pen;

/**
 * Where a thing lies on the paper that is turned about a point: its own coordinates run along it
 * from that point and up from it, in millimetres, upwards positive.
 */
public record Turned(double x, double y, double radians, boolean mirrored) {
  /** One that lies level. */
  public static Turned level(double x, double y) {
    return new Turned(x, y, 0, false);
  }

  /** The point of the paper. */
  public double[] point(double along, double up) {
    double a = mirrored ? -along : along;
    double cos = Math.cos(radians);
    double sin = Math.sin(radians);
    return new double[] {x + a * cos - up * sin, y - a * sin - up * cos};
  }

  /** A direction of the thing, counted from along it towards up, as one of the paper. */
  public double direction(double angle) {
    return mirrored ? angle - Math.PI - radians : -angle - radians;
  }

  /** A path that begins at a point. */
  public Path from(double along, double up) {
    double[] point = point(along, up);
    return new Path().from(point[0], point[1]);
  }

  /** A path led on to a point. */
  public void to(Path path, double along, double up) {
    double[] point = point(along, up);
    path.to(point[0], point[1]);
  }

  /** Corners told along and up by turns, as numbers on the paper. */
  public double[] corners(double... corners) {
    double[] on = new double[corners.length];
    for (int i = 0; i < corners.length; i += 2) {
      double[] point = point(corners[i], corners[i + 1]);
      on[i] = point[0];
      on[i + 1] = point[1];
    }
    return on;
  }

  /** The path through corners told along and up by turns. */
  public Path path(double... corners) {
    return Path.through(corners(corners));
  }
}
