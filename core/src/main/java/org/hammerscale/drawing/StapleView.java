package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.StaplePlate;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** A staple in its plane, standing in the wood, and from above. */
final class StapleView implements LatchDrawing.Kind {
  private static final double OFF = 9;

  private final Staple staple;

  StapleView(Staple staple) {
    this.staple = staple;
  }

  @Override
  public String title() {
    return "staple " + staple.insideWidth() + " wide inside, of " + staple.rod().section();
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("width of the staple", staple.legCentres());
    draft.scale.size("height of the staple", staple.heightOverAll());
    draft.row(this::both);
  }

  @Override
  public List<String> notes(Draft draft) {
    return List.of(
        "points "
            + draft.text(staple.pointLength())
            + " long, drawn from the rod; bore for the legs at the crosses",
        staple.isClenched()
            ? "legs are turned over "
                + draft.text(staple.clench())
                + " behind the board; drawn so in the sheet, turn them over across the grain"
            : "legs are driven " + draft.text(staple.inWood()) + " into the wood");
  }

  /** The same, what is in the wood hidden by it. */
  static void sized(Draft d, double x, double y, Staple staple) {
    sized(d, x, y, staple, Line.HIDDEN);
  }

  /** In its plane with its sizes, its middle on the face of the wood. */
  static void sized(Draft d, double x, double y, Staple staple, Line legsLine) {
    standing(d, Turned.level(x, y), staple, "standing", legsLine);
    double inner = d.of(staple.insideWidth()) / 2;
    double legs = d.of(staple.legCentres()) / 2;
    double outer = 2 * legs - inner;
    double top = y - d.of(staple.heightOverAll());
    double under = y - d.of(staple.insideHeight());
    double aside = outer + 12;
    double deep = y + d.of(staple.inWood());
    if (staple.isClenched()) {
      deep = y + d.of(staple.holdingLength());
      aside = Math.max(aside, legs + DrivenIron.leg(d, staple).extent()[2] + 6);
      d.pen.line(Line.WIDE, "back", x - aside, deep, x + aside, deep);
    }
    d.pen.line(Line.WIDE, "wood", x - aside, y, x + aside, y);
    double over = Math.min(top, d.pen.box().top());
    String wide = d.text(staple.insideWidth()) + " inside";
    d.sizes.across(x - inner, x + inner, over - OFF, under, under, wide);
    String apart = d.text(staple.legCentres()) + " centres";
    double below = staple.isClenched() ? deep + 2 * (outer - legs) : deep;
    d.sizes.across(x - legs, x + legs, below + OFF, below, below, apart);
    List<Callout> levels =
        List.of(
            new Callout(x, under, d.text(staple.insideHeight()) + " inside"),
            new Callout(x, top, d.text(staple.heightOverAll())),
            staple.isClenched()
                ? new Callout(x - aside, deep, d.text(staple.holdingLength()))
                : new Callout(x - legs, deep, d.text(staple.inWood())));
    double left = Math.min(d.pen.box().left(), x - aside) - 6;
    d.sizes.runningDown(new Callout(x - aside, y, "wood"), levels, left);
  }

  /** In its plane, and below that from above, with the holes that its legs are bored for. */
  private void both(Draft d, double x, double y) {
    sized(d, x, y, staple);
    double half = d.of(staple.rod().section().width()) / 2;
    double level = d.pen.box().bottom() + OFF + half;
    above(d, Turned.level(x, level), staple, "crown");
  }

  /** Crown and legs above the wood, and what is hidden in it; the middle between the legs. */
  static void standing(Draft d, Turned at, Staple staple, String part) {
    standing(d, at, staple, part, Line.HIDDEN);
  }

  private static void standing(Draft d, Turned at, Staple staple, String part, Line legsLine) {
    crown(d, at, staple, part);
    double legs = d.of(staple.legCentres()) / 2;
    DrivenIron leg = DrivenIron.leg(d, staple);
    for (int side = -1; side <= 1; side += 2) {
      double[] outer = beside(leg.side(1), side * legs, side);
      double[] inner = beside(leg.side(-1), side * legs, side);
      d.pen.draw(legsLine, "leg", Draft.band(at, inner, outer));
    }
  }

  /** What stands above the wood or a plate. */
  private static void crown(Draft d, Turned at, Staple staple, String part) {
    MeanLine line = staple.bend().meanLine();
    Measure<Length> half = staple.rod().section().thickness().divide(2);
    double legs = d.of(staple.legCentres()) / 2;
    double thick = d.of(half);
    double shank = d.of(staple.inWood().subtract(staple.pointLength()));
    for (int side = -1; side <= 1; side += 2) {
      double[] points = d.points(line, half.multiply(side));
      double inner = legs - side * thick;
      Path path = at.from(-inner, 0);
      for (int i = 2; i < points.length - 2; i += 2) {
        double up = points[i] - shank;
        if (up > 0) {
          at.to(path, points[i + 1] - legs, up);
        }
      }
      at.to(path, inner, 0);
      d.pen.draw(Line.WIDE, part, path);
    }
  }

  /** A leg's points, which lie down and aside by turns, as along and up. */
  private static double[] beside(double[] points, double middle, int side) {
    double[] turned = new double[points.length];
    for (int i = 0; i < points.length; i += 2) {
      turned[i] = middle + side * points[i + 1];
      turned[i + 1] = -points[i];
    }
    return turned;
  }

  /** The crown seen from above, along the thing that it is turned with, and its legs' holes. */
  static void above(Draft d, Turned at, Staple staple, String part) {
    double legs = d.of(staple.legCentres()) / 2;
    double outer = legs + d.of(staple.rod().section().thickness()) / 2;
    double half = d.of(staple.rod().section().width()) / 2;
    if (staple.rod().section().isRound()) {
      Path path = at.from(-legs, half);
      at.to(path, legs, half);
      double[] right = at.point(legs, 0);
      double[] left = at.point(-legs, 0);
      double turn = at.direction(Math.PI / 2);
      path.arc(right[0], right[1], half, turn, turn + Math.PI);
      at.to(path, -legs, -half);
      path.arc(left[0], left[1], half, turn + Math.PI, turn + 2 * Math.PI);
      d.pen.draw(Line.WIDE, part, path.close());
    } else {
      Path path = at.path(-outer, half, outer, half, outer, -half, -outer, -half);
      d.pen.draw(Line.WIDE, part, path.close());
    }
    for (int side = -1; side <= 1; side += 2) {
      double[] hole = at.point(side * legs, 0);
      d.pen.cross("hole", hole[0], hole[1], half + 2);
    }
  }

  /** From the side, its crown across the sight, as square on top as it counts. */
  static void edgeOn(Draft d, double near, double far, double base, Staple staple) {
    double top = base - d.of(staple.heightOverAll());
    d.pen.draw(Line.WIDE, "staple", Path.through(near, base, near, top, far, top, far, base));
    legEdgeOn(d, near, far, base, staple);
  }

  /** A leg in the wood from the side. */
  static void legEdgeOn(Draft d, double near, double far, double base, Staple staple) {
    if (staple.isClenched()) {
      double over = base + d.of(staple.holdingLength().add(staple.rod().section().thickness()));
      d.pen.draw(Line.HIDDEN, "leg", Path.through(near, base, near, over, far, over, far, base));
      return;
    }
    double shank = base + d.of(staple.inWood().subtract(staple.pointLength()));
    double deep = base + d.of(staple.inWood());
    double middle = (near + far) / 2;
    d.pen.draw(
        Line.HIDDEN,
        "leg",
        Path.through(near, base, near, shank, middle, deep, far, shank, far, base));
  }

  /** A long edge of what runs under staples: drawn but where one covers it, in rising order. */
  static void edge(Draft d, Turned at, String part, double[] ends, double up, double[][] covers) {
    Path path = new Path();
    double from = ends[0];
    for (double[] cover : covers) {
      if (cover[0] > from && cover[0] < ends[1]) {
        led(path, at, from, cover[0], up);
      }
      from = Math.max(from, cover[1]);
    }
    if (ends[1] > from) {
      led(path, at, from, ends[1], up);
    }
    d.pen.draw(Line.WIDE, part, path);
  }

  private static void led(Path path, Turned at, double from, double to, double up) {
    double[] begin = at.point(from, up);
    path.from(begin[0], begin[1]);
    at.to(path, to, up);
  }

  /** A loop riveted on its plate, from the side and from above. */
  static final class OnPlate implements LatchDrawing.Kind {
    private final StaplePlate eye;

    OnPlate(StaplePlate eye) {
      this.eye = eye;
    }

    @Override
    public String title() {
      return "staple "
          + eye.staple().insideWidth()
          + " wide inside, of "
          + eye.staple().rod().section()
          + ", on a plate";
    }

    @Override
    public void draw(Draft draft) {
      draft.scale.size("length of the plate", eye.length());
      draft.scale.size("thickness of the plate", flat().thickness());
      draft.scale.size("height of the staple", eye.staple().heightOverAll());
      draft.row(this::side);
      draft.row(this::plan);
    }

    @Override
    public List<String> notes(Draft draft) {
      return List.of(
          "drill the plate for the legs "
              + eye.staple().rod().section().width()
              + ", sunk behind 90° to "
              + eye.rivetCountersink()
              + "; rivet them flush",
          "the screws' holes are at the crosses near its ends; heights count from its face");
    }

    private Section flat() {
      return eye.plate().bar().section();
    }

    /** The plate cut along its middle, its face at the point. */
    private void side(Draft d, double x, double y) {
      Staple loop = eye.staple();
      double half = d.of(eye.length()) / 2;
      double thick = d.of(flat().thickness());
      double leg = d.of(loop.legCentres()) / 2;
      double rod = d.of(loop.rod().section().width()) / 2;
      double sunk = d.of(eye.rivetCountersink()) / 2;
      crown(d, Turned.level(x, y), loop, "loop");
      d.pen.draw(
          Line.WIDE,
          "plate",
          Path.through(x - half, y, x + half, y, x + half, y + thick, x - half, y + thick).close());
      for (int side = -1; side <= 1; side += 2) {
        double at = x + side * leg;
        double cone = y + thick - (sunk - rod);
        d.pen.draw(
            Line.HIDDEN, "rivet", Path.through(at - rod, y, at - rod, cone, at - sunk, y + thick));
        d.pen.draw(
            Line.HIDDEN, "rivet", Path.through(at + rod, y, at + rod, cone, at + sunk, y + thick));
      }
      double under = y - d.of(loop.insideHeight());
      double top = y - d.of(loop.heightOverAll());
      double inner = d.of(loop.insideWidth()) / 2;
      String wide = d.text(loop.insideWidth()) + " inside";
      d.sizes.across(x - inner, x + inner, top - OFF, under, under, wide);
      List<Callout> levels =
          List.of(
              new Callout(x, under, d.text(loop.insideHeight()) + " inside"),
              new Callout(x, top, d.text(loop.heightOverAll())),
              new Callout(x - half, y + thick, flat().thickness().toString()));
      d.sizes.runningDown(new Callout(x - half, y, "face"), levels, x - half - OFF);
    }

    private void plan(Draft d, double x, double y) {
      double half = d.of(eye.length()) / 2;
      double wide = d.of(flat().width()) / 2;
      d.pen.draw(
          Line.WIDE,
          "plan",
          Path.through(
                  x - half, y - wide, x + half, y - wide, x + half, y + wide, x - half, y + wide)
              .close());
      above(d, Turned.level(x, y), eye.staple(), "crown");
      List<Callout> places = new ArrayList<>();
      for (Measure<Length> hole : eye.screwHoles()) {
        double at = x - half + d.of(hole);
        d.pen.cross("screw", at, y, 3);
        places.add(new Callout(at, y + wide, d.text(hole)));
      }
      for (Measure<Length> hole : eye.legHoles()) {
        places.add(new Callout(x - half + d.of(hole), y + wide, d.text(hole)));
      }
      places.add(new Callout(x + half, y + wide, d.text(eye.length())));
      double below = d.pen.box().bottom() + OFF;
      d.sizes.running(new Callout(x - half, y + wide, "end"), places, below);
      String across = flat().width().toString();
      double left = x - half - OFF;
      d.sizes.upright(y - wide, y + wide, left, x - half, x - half, across);
    }
  }
}
