package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.Staple;
import org.hammerscale.units.Measure;

/** A hasp over its staple, from the side and from above, its pin to the left. */
final class HaspView implements LatchDrawing.Kind {
  private static final double OFF = 9;

  /** How far the slot's ends are followed beyond the top of the staple, on the paper. */
  private static final double BEYOND = 3;

  private final Hasp hasp;

  HaspView(Hasp hasp) {
    this.hasp = hasp;
  }

  @Override
  public String title() {
    return "hasp of " + hasp.strap().section() + ", over its staple";
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("length of the hasp", hasp.length());
    draft.scale.size("thickness of the hasp", hasp.strap().section().thickness());
    draft.row(this::side);
    draft.row(this::plan);
  }

  @Override
  public List<String> notes(Draft draft) {
    return List.of(
        "above: from the side, shut; the arcs are those of the slot's ends as it lifts: the staple"
            + " stands clear between them",
        "below: from above; slot "
            + draft.text(hasp.slotLength())
            + " × "
            + draft.text(hasp.slotWidth())
            + ", from the pin's middle "
            + draft.text(hasp.slotFrom())
            + " to "
            + draft.text(hasp.slotTo()),
        "staple: " + hasp.staple(),
        hasp.hanger().map(hanger -> "hung on a " + hanger).orElse("hung on a pin"));
  }

  /** The pin at the point, the strap to the right of it. */
  private void side(Draft d, double x, double y) {
    double thick = d.of(hasp.strap().section().thickness());
    double low = -d.of(hasp.pinAbove());
    double high = low + thick;
    double from = d.of(hasp.slotFrom());
    double to = d.of(hasp.slotTo());
    double end = d.of(hasp.length());
    double bore = d.of(hasp.bore()) / 2;
    Turned shut = Turned.level(x, y);
    strap(d, shut, Line.WIDE, low, high);
    double[][] parts = {{edge(bore + thick, Math.max(low, Math.min(high, 0))), from}, {to, end}};
    for (double[] part : parts) {
      d.pen.hatch(
          "strap", true, shut.corners(part[0], low, part[1], low, part[1], high, part[0], high));
    }
    d.pen.circle(Line.WIDE, "eye", x, y, bore + thick);
    d.pen.circle(Line.WIDE, "bore", x, y, bore);
    d.pen.cross("pin", x, y, bore + thick + 2);
    double base = y - low;
    hasp.hanger().ifPresent(hanger -> hung(d, x, y, base, hanger));
    Staple staple = hasp.staple();
    double near = x + d.of(hasp.stapledAt());
    double far = near + d.of(hasp.stapleLength());
    double top = base - d.of(staple.heightOverAll());
    Measure<Length> depth = staple.isClenched() ? staple.holdingLength() : staple.inWood();
    double deep = base + d.of(depth);
    if (hasp.isInLine()) {
      StapleView.standing(d, Turned.level((near + far) / 2, base), staple, "staple");
    } else {
      StapleView.edgeOn(d, near, far, base, staple);
    }
    // An eye that reaches below the underside is let into the wood.
    double wood = -low < bore + thick ? x + edge(bore + thick, low) : x - bore - thick - 6;
    d.pen.line(Line.WIDE, "wood", wood, base, x + end + 6, base);
    if (staple.isClenched()) {
      d.pen.line(Line.WIDE, "back", wood, deep, x + end + 6, deep);
    }
    double lifted = sweep(d, x, y, low, high, base - top);
    strap(d, new Turned(x, y, lifted, false), Line.MOVED, low, high);
    Box over = d.pen.box();
    List<Callout> levels =
        List.of(
            new Callout(far, base - d.of(staple.insideHeight()), text(d, staple)),
            new Callout(far, top, d.text(staple.heightOverAll())),
            new Callout(staple.isClenched() ? x + end + 6 : far, deep, d.text(depth)));
    d.sizes.runningDown(new Callout(x + end + 6, base, "base"), levels, over.right() + 5);
    d.sizes.running(
        new Callout(x, y, "pin"),
        List.of(new Callout(near, base, d.text(hasp.stapledAt()) + " staple")),
        d.pen.box().bottom() + 5);
  }

  /** The crown that the eye turns on, cut across, and a leg behind it in the wood. */
  private static void hung(Draft d, double x, double y, double base, Staple hanger) {
    double half = d.of(hanger.rod().section().thickness()) / 2;
    d.pen.circle(Line.WIDE, "crown", x, y, half);
    StapleView.legEdgeOn(d, x - half, x + half, base, hanger);
  }

  private static String text(Draft d, Staple staple) {
    return d.text(staple.insideHeight()) + " inside";
  }

  /** Both parts of the strap, before the slot and behind it, cut along the middle. */
  private void strap(Draft d, Turned at, Line line, double low, double high) {
    double outer = d.of(hasp.bore()) / 2 + high - low;
    double from = d.of(hasp.slotFrom());
    double to = d.of(hasp.slotTo());
    double end = d.of(hasp.length());
    Path before = at.path(edge(outer, low), low, from, low, from, high, edge(outer, high), high);
    d.pen.draw(line, "strap", before);
    d.pen.draw(line, "strap", at.path(to, low, end, low, end, high, to, high).close());
    Path through = at.path(from, high, to, high);
    d.pen.draw(Line.NARROW, "through", through);
  }

  /** Where a face of the strap leaves the eye. */
  private static double edge(double outer, double level) {
    return Math.abs(level) < outer ? Math.sqrt(outer * outer - level * level) : 0;
  }

  /**
   * The arcs of the slot's near end, at its underside, and of its far end, where it is nearest to
   * the pin: from shut to where both are above the staple; gives back how far that is.
   */
  private double sweep(Draft d, double x, double y, double low, double high, double height) {
    double nearest = Math.max(low, Math.min(high, 0));
    double top = low + height + BEYOND;
    double[][] points = {
      {d.of(hasp.slotFrom()), low}, {d.of(hasp.slotTo()), nearest},
    };
    double lifted = 0;
    for (double[] point : points) {
      double radius = Math.hypot(point[0], point[1]);
      double up = Math.asin(Math.max(-1, Math.min(1, top / radius)));
      lifted = Math.max(lifted, up - Math.atan2(point[1], point[0]));
    }
    for (double[] point : points) {
      double radius = Math.hypot(point[0], point[1]);
      double start = Math.atan2(point[1], point[0]);
      d.pen.draw(Line.NARROW, "sweep", new Path().arc(x, y, radius, -start, -start - lifted));
    }
    return lifted;
  }

  private void plan(Draft d, double x, double y) {
    double half = d.of(hasp.strap().section().width()) / 2;
    double thick = d.of(hasp.strap().section().thickness());
    double bore = d.of(hasp.bore()) / 2;
    double end = x + d.of(hasp.length());
    double from = x + d.of(hasp.slotFrom());
    double to = x + d.of(hasp.slotTo());
    double wide = d.of(hasp.slotWidth()) / 2;
    double left = x - bore - thick;
    d.pen.draw(Line.WIDE, "plan", Path.rectangle(new Box(left, y - half, end, y + half)));
    for (int side = -1; side <= 1; side += 2) {
      double at = x + side * bore;
      d.pen.line(Line.HIDDEN, "bore", at, y - half, at, y + half);
    }
    d.pen.line(Line.CENTRE, "pin", x, y - half - 4, x, y + half + 4);
    d.pen.draw(Line.WIDE, "slot", Path.rectangle(new Box(from, y - wide, to, y + wide)));
    double middle = x + d.of(hasp.stapledAt().add(hasp.stapleLength().divide(2)));
    double turn = hasp.isInLine() ? 0 : Math.PI / 2;
    StapleView.above(d, new Turned(middle, y, turn, false), hasp.staple(), "crown");
    hasp.hanger()
        .ifPresent(
            hanger -> StapleView.above(d, new Turned(x, y, Math.PI / 2, false), hanger, "hanger"));
    List<Callout> across = new ArrayList<>();
    across.add(new Callout(from, y + half, d.text(hasp.slotFrom())));
    across.add(new Callout(to, y + half, d.text(hasp.slotTo())));
    across.add(new Callout(end, y + half, d.text(hasp.length())));
    d.sizes.running(new Callout(x, y + half, "pin"), across, d.pen.box().bottom() + OFF);
    double right = end + OFF;
    d.sizes.upright(y - wide, y + wide, right, to, to, d.text(hasp.slotWidth()));
    double out = left - OFF;
    String width = d.text(hasp.strap().section().width());
    d.sizes.upright(y - half, y + half, out, left, left, width);
  }
}
