package org.hammerscale.drawing;

/**
 * Where a leaf lies on the paper that turns about a pin: its own coordinates run along it from the
 * pin and up from it, in millimetres.
 */
record Turned(double x, double y, double radians, boolean mirrored) {
  double[] point(double along, double up) {
    double a = mirrored ? -along : along;
    double cos = Math.cos(radians);
    double sin = Math.sin(radians);
    return new double[] {x + a * cos - up * sin, y - a * sin - up * cos};
  }

  /** A direction of the leaf, counted from along it towards up, as one of the paper. */
  double direction(double angle) {
    return mirrored ? angle - Math.PI - radians : -angle - radians;
  }

  Path from(double along, double up) {
    double[] point = point(along, up);
    return new Path().from(point[0], point[1]);
  }

  void to(Path path, double along, double up) {
    double[] point = point(along, up);
    path.to(point[0], point[1]);
  }

  /** Corners told along and up by turns, as numbers on the paper. */
  double[] corners(double... corners) {
    double[] on = new double[corners.length];
    for (int i = 0; i < corners.length; i += 2) {
      double[] point = point(corners[i], corners[i + 1]);
      on[i] = point[0];
      on[i + 1] = point[1];
    }
    return on;
  }
}
