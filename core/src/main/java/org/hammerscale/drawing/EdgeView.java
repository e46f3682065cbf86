package org.hammerscale.drawing;

import org.hammerscale.fastening.Countersink;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;

/**
 * A leaf seen from its edge, the pin's centre on a level: the barrel as it is rolled, and the plate
 * on the side of it that it lies on, its outer face straight.
 */
final class EdgeView {
  private final Pen pen;
  private final Scale scale;
  private final Stretches stretches;
  private final double level;

  /** Where the straight face lies below the level of the pin, or the middle of a centred plate. */
  private final double face;

  /** The part of the thickness that lies above the straight line: none, half or all of it. */
  private final double above;

  /** The view with all of it below a level. */
  EdgeView(Pen pen, Scale scale, Stretches stretches, double below, boolean proud) {
    this.pen = pen;
    this.scale = scale;
    this.stretches = stretches;
    double radius =
        stretches.barrel().map(barrel -> scale.of(barrel.outsideDiameter()) / 2).orElse(0.0);
    boolean centred =
        stretches.barrel().map(Barrel::isCentred).orElse(stretches.isAboutItsMiddle());
    this.face = centred ? 0 : proud ? radius : -radius;
    this.above = centred ? 0.5 : proud ? 1 : 0;
    this.level = below + Math.max(radius, above * stretches.thickest() - face);
  }

  /** Where the pin's centre lies, or the straight face of what has none. */
  double level() {
    return level;
  }

  double top(double x) {
    return level + face - above * stretches.thicknessAt(x);
  }

  double bottom(double x) {
    return level + face + (1 - above) * stretches.thicknessAt(x);
  }

  void draw(boolean proud) {
    stretches.barrel().ifPresent(barrel -> barrel(barrel, proud));
    double thick = 0;
    for (double[] edge : stretches.edges()) {
      Path upper = new Path();
      Path lower = new Path();
      for (int i = 0; i < edge.length; i += 2) {
        double top = level + face - above * edge[i + 1];
        double bottom = level + face + (1 - above) * edge[i + 1];
        if (i == 0) {
          upper.from(edge[0], top);
          lower.from(edge[0], bottom);
        } else {
          upper.to(edge[i], top);
          lower.to(edge[i], bottom);
        }
      }
      pen.draw(Line.WIDE, "face", upper);
      pen.draw(Line.WIDE, "face", lower);
      if (thick != 0 && thick != edge[1]) {
        end(edge[0], Math.max(thick, edge[1]));
      }
      thick = edge[edge.length - 1];
    }
    if (!stretches.barrel().isPresent()) {
      end(0, stretches.edges().get(0)[1]);
    }
    end(stretches.end(), thick);
  }

  private void end(double x, double thick) {
    pen.line(
        Line.WIDE, "end", x, level + face - above * thick, x, level + face + (1 - above) * thick);
  }

  /**
   * The curl: from the top of the pin all round, to where its end meets the leaf; upside down where
   * the barrel stands proud above the plate.
   */
  private void barrel(Barrel barrel, boolean proud) {
    double outer = scale.of(barrel.outsideDiameter()) / 2;
    double inner = scale.of(barrel.insideDiameter()) / 2;
    double open = Math.toRadians(barrel.closing().uncovered().getValue());
    pen.cross("pin", 0, level, outer + 2);
    if (barrel.isCentred()) {
      pen.draw(
          Line.WIDE, "barrel", new Path().arc(0, level, outer, open / 2, 2 * Math.PI - open / 2));
      pen.circle(Line.WIDE, "bore", 0, level, inner);
    } else if (open == 0) {
      pen.circle(Line.WIDE, "barrel", 0, level, outer);
      pen.circle(Line.WIDE, "bore", 0, level, inner);
    } else {
      double side = proud ? 1 : -1; // of the plate, y downwards
      double from = side * Math.PI / 2;
      double to = from + side * (2 * Math.PI - open);
      pen.draw(
          Line.WIDE,
          "barrel",
          new Path()
              .arc(0, level, outer, from, to)
              .to(inner * Math.cos(to), level + inner * Math.sin(to))
              .arc(0, level, inner, to, from));
    }
  }

  /** A countersunk hole, hidden in the plate; the head goes in on the upper side. */
  void hole(double x, Countersink sink) {
    double head = scale.of(sink.diameter()) / 2;
    double hole = scale.of(sink.hole()) / 2;
    double top = top(x);
    double bottom = bottom(x);
    double deep = Math.min(top + scale.of(sink.depth()), bottom);
    pen.line(Line.NARROW, "axis", x, top - 2, x, bottom + 2);
    for (int side = -1; side <= 1; side += 2) {
      pen.draw(
          Line.HIDDEN,
          "sink",
          new Path()
              .from(x + side * head, top)
              .to(x + side * hole, deep)
              .to(x + side * hole, bottom));
    }
  }
}
