package org.hammerscale.drawing;

import javax.measure.quantity.Length;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * A drawing in the making: pen and sizes, at a scale, with the rule that sizes are read on; and
 * views that are set in rows, so that none lies over another.
 */
final class Draft {
  /** One view, drawn about a point of the paper; the draft that it is given holds nothing else. */
  interface View {
    void draw(Draft draft, double x, double y);
  }

  private static final double BETWEEN = 14;

  final Pen pen = new Pen();
  final Dimensions sizes = new Dimensions(pen);
  final Scale scale;
  private final @Nullable Graduation<Length> rule;

  Draft(Scale scale, @Nullable Graduation<Length> rule) {
    this.scale = scale;
    this.rule = rule;
  }

  /** A distance on the paper. */
  double of(Measure<Length> length) {
    return scale.of(length);
  }

  /** Points of a line that runs beside a middle, along and up by turns, on the paper. */
  double[] points(MeanLine line, Measure<Length> distance) {
    double[] points = line.points(distance, ShopUnits.MILLIMETRE);
    for (int i = 0; i < points.length; i++) {
      points[i] /= scale.reduction();
    }
    return points;
  }

  /** Both faces of a bent bar and its end, from its beginning out and back. */
  static Path band(Turned at, double[] one, double[] other) {
    Path path = at.path(one);
    double[] back = at.corners(other);
    for (int i = back.length - 2; i >= 0; i -= 2) {
      path.to(back[i], back[i + 1]);
    }
    return path;
  }

  /** How far off a place is, whichever way it counts. */
  String place(Measure<Length> place) {
    return text(place.getValue() < 0 ? place.negate() : place);
  }

  /** A size as it is written beside the thing. */
  String text(Measure<Length> size) {
    return rule == null ? size.toString() : LengthFormat.to(rule).format(size);
  }

  /** Views side by side below all that is drawn, their points on one level. */
  void row(View... views) {
    double left = pen.box().left();
    double above = 0;
    Box[] rooms = new Box[views.length];
    for (int i = 0; i < views.length; i++) {
      Draft trial = new Draft(scale, rule); // to see how much room it takes
      views[i].draw(trial, 0, 0);
      rooms[i] = trial.pen.box();
      above = Math.max(above, -rooms[i].top());
    }
    boolean first = pen.box().height() < 0;
    double level = first ? 0 : pen.box().bottom() + BETWEEN + above;
    double x = first ? 0 : left - rooms[0].left();
    for (int i = 0; i < views.length; i++) {
      Draft own = new Draft(scale, rule);
      views[i].draw(own, x, level);
      pen.take(own.pen);
      if (i + 1 < views.length) {
        x += rooms[i].right() + BETWEEN - rooms[i + 1].left();
      }
    }
  }
}
