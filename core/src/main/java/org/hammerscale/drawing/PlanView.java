package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.KnuckleSlot;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.units.Measure;

/**
 * A leaf seen on its wide side, its barrel to the left: the middle line of the leaf on a level, and
 * what the other leaf's knuckles take out of the barrel.
 */
final class PlanView {
  private static final double BEYOND = 5;

  private final Pen pen;
  private final Scale scale;
  private final Stretches stretches;
  private final double middle;
  private final double width;

  /** From the far edge on, by turns the level of an edge across and how far left iron reaches. */
  private final List<double[]> comb = new ArrayList<>();

  PlanView(Pen pen, Scale scale, Stretches stretches, double width) {
    this.pen = pen;
    this.scale = scale;
    this.stretches = stretches;
    this.width = width;
    this.middle = width / 2;
  }

  /** An undivided barrel, or none. */
  void whole() {
    stretches.barrel().ifPresent(b -> comb.add(new double[] {0, width, -radius(b)}));
    draw();
    stretches.barrel().ifPresent(barrel -> bore(barrel, 0, width));
  }

  /** Knuckles, and slots for those of the other leaf. */
  void divided(HingePair pair, Leaf leaf) {
    boolean fromFar = pair.markedFrom(leaf).startsWith("far");
    double notch = scale.of(pair.notchDepth());
    double left = -radius(pair.barrel());
    double level = 0;
    List<KnuckleSlot> slots = pair.slotsOf(leaf);
    for (int i = 0; i < slots.size(); i++) {
      KnuckleSlot slot = slots.get(fromFar ? i : slots.size() - 1 - i);
      double one = across(slot.start(), fromFar);
      double other = across(slot.end(), fromFar);
      if (Math.min(one, other) > level) {
        comb.add(new double[] {level, Math.min(one, other), left});
      }
      comb.add(new double[] {Math.min(one, other), Math.max(one, other), notch});
      level = Math.max(one, other);
    }
    if (level < width) {
      comb.add(new double[] {level, width, left});
    }
    draw();
    for (double[] tooth : comb) {
      if (tooth[2] < 0) {
        bore(pair.barrel(), tooth[0], tooth[1]);
        if (pair.hasProudBarrels() || pair.barrel().isCentred()) {
          double right = radius(pair.barrel());
          pen.line(Line.NARROW, "proud", right, tooth[0], right, tooth[1]);
        }
      }
    }
  }

  /** Across the leaf on the paper, from the edge that slots are marked from. */
  double across(Measure<Length> fromEdge, boolean fromFar) {
    double distance = scale.of(fromEdge);
    return fromFar ? distance : width - distance;
  }

  private double radius(Barrel barrel) {
    return scale.of(barrel.outsideDiameter()) / 2;
  }

  private void bore(Barrel barrel, double top, double bottom) {
    double half = scale.of(barrel.insideDiameter()) / 2;
    pen.draw(
        Line.HIDDEN,
        "bore",
        new Path().from(-half, top).to(-half, bottom).from(half, top).to(half, bottom));
  }

  private void draw() {
    barrelEnd();
    double[] above = null;
    for (List<double[]> rims : stretches.rims()) {
      double[] rim = rims.get(0);
      int half = rim.length / 2;
      sides(rim, half);
      if (above != null) {
        step(above, rim);
      }
      for (double[] beside : rims.subList(1, rims.size())) {
        closed("tine", beside);
      }
      above = rim;
    }
    if (above != null) {
      int half = above.length / 2;
      pen.line(
          Line.WIDE, "tip", above[half - 2], y(above[half - 1]), above[half], y(above[half + 1]));
    }
    stretches.openings().forEach(opening -> closed("opening", opening));
    if (stretches.barrel().isPresent()) {
      pen.line(Line.CENTRE, "pin", 0, -BEYOND, 0, width + BEYOND);
    }
  }

  /** Round knuckles and slots, or straight across. */
  private void barrelEnd() {
    if (comb.isEmpty()) {
      double[] rim = stretches.rims().get(0).get(0);
      pen.line(Line.WIDE, "end", 0, y(rim[1]), 0, y(-rim[1]));
      return;
    }
    double start = stretches.all().isEmpty() ? 0 : stretches.all().get(0).from();
    Path end = new Path().from(Math.max(start, comb.get(0)[2]), 0);
    for (double[] tooth : comb) {
      end.to(tooth[2], tooth[0]).to(tooth[2], tooth[1]);
    }
    double last = comb.get(comb.size() - 1)[2];
    pen.draw(Line.WIDE, "end", end.to(Math.max(start, last), width));
  }

  /** How far left iron reaches at the far edge of the leaf, and at the near one. */
  private double left(int tooth) {
    return comb.isEmpty() ? 0 : comb.get(tooth < 0 ? comb.size() - 1 : tooth)[2];
  }

  /** Both long sides, but where a notch has taken them. */
  private void sides(double[] rim, int half) {
    Path near = new Path();
    Path far = new Path();
    for (int i = 2; i < half; i += 2) {
      side(near, rim[i - 2], rim[i - 1], rim[i], rim[i + 1], left(-1));
      int j = rim.length - i;
      side(far, rim[j], rim[j + 1], rim[j - 2], rim[j - 1], left(0));
    }
    pen.draw(Line.WIDE, "side", far);
    pen.draw(Line.WIDE, "side", near);
  }

  private void side(Path path, double x1, double a1, double x2, double a2, double notch) {
    if (x2 <= notch) {
      return;
    }
    double from = Math.max(x1, notch);
    double share = x2 == x1 ? 0 : (from - x1) / (x2 - x1);
    if (path.box().width() < 0 || from > x1) {
      path.from(from, y(a1 + share * (a2 - a1)));
    }
    path.to(x2, y(a2));
  }

  /** Where one stretch ends and the next begins: a fine line, and wide ones where it steps. */
  private void step(double[] before, double[] next) {
    int half = before.length / 2;
    double x = next[0];
    double ended = before[half - 1];
    double begins = next[1];
    double least = Math.min(ended, begins);
    pen.line(Line.NARROW, "joint", x, y(least), x, y(-least));
    if (ended != begins) {
      pen.draw(
          Line.WIDE,
          "step",
          new Path().from(x, y(ended)).to(x, y(begins)).from(x, y(-ended)).to(x, y(-begins)));
    }
  }

  private void closed(String part, double[] rim) {
    Path path = new Path().from(rim[0], y(rim[1]));
    for (int i = 2; i < rim.length; i += 2) {
      path.to(rim[i], y(rim[i + 1]));
    }
    pen.draw(Line.WIDE, part, path.close());
  }

  private double y(double across) {
    return middle + across;
  }
}
