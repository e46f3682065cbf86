package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Measure;

/**
 * A slide bolt from the front, the door to the left of its edge; and from the edge, looking along
 * it.
 */
final class SlideBoltView implements LatchDrawing.Kind {
  private static final double OFF = 9;

  private final SlideBolt bolt;

  SlideBoltView(SlideBolt bolt) {
    this.bolt = bolt;
  }

  @Override
  public String title() {
    return "slide bolt of " + bolt.bar().section() + ", thrown " + bolt.travel();
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("travel of the bolt", bolt.travel());
    draft.scale.size("thickness of the bolt", bolt.bar().section().thickness());
    draft.scale.size("distance of the staples", bolt.staplesApart());
    draft.row(this::front);
    draft.row(
        (d, x, y) -> along(d, x, y, bolt.staple(), true),
        (d, x, y) -> along(d, x, y, bolt.keeper(), false));
  }

  @Override
  public List<String> notes(Draft draft) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "above: from the front, thrown; drawn back in dashes and dots; crosses: bore for legs");
    notes.add(
        "places count from the door's edge to the middle of each staple; in the keeper "
            + draft.text(bolt.engagement())
            + ", at least "
            + draft.text(bolt.leastEngagement())
            + " once the door has shrunk");
    notes.add(
        "room in the staples "
            + bolt.clearance()
            + " once all is finished: the bolt cocks by "
            + bolt.tilt()
            + ", its tip by "
            + bolt.tipShift());
    return notes;
  }

  private Measure<Length> length() {
    Measure<Length> length = bolt.travel().withValue(0);
    for (Feature each : bolt.bolt().features()) {
      length = length.add(each.reach());
    }
    return length;
  }

  private void front(Draft d, double x, double y) {
    double half = d.of(bolt.bar().section().width()) / 2;
    double tip = x + d.of(bolt.gap().add(bolt.engagement()));
    double end = tip - d.of(length());
    double back = d.of(bolt.travel());
    List<double[]> covers = new ArrayList<>();
    List<Measure<Length>> places = bolt.places();
    for (int i = 0; i < places.size(); i++) {
      boolean onFrame = i == places.size() - 1;
      Staple each = onFrame ? bolt.keeper() : bolt.staple();
      double at = x - d.of(places.get(i));
      StapleView.above(
          d, new Turned(at, y, Math.PI / 2, false), each, onFrame ? "keeper" : "staple");
      double wire = d.of(each.rod().section().width()) / 2;
      covers.add(new double[] {at - wire, at + wire});
    }
    covers.sort((one, other) -> Double.compare(one[0], other[0]));
    for (int side = -1; side <= 1; side += 2) {
      double[][] in = covers.toArray(new double[0][]);
      StapleView.edge(d, Turned.level(0, y), "bolt", new double[] {end, tip}, side * half, in);
    }
    d.pen.line(Line.WIDE, "tip", tip, y - half, tip, y + half);
    d.pen.line(Line.WIDE, "end", end, y - half, end, y + half);
    d.pen.draw(
        Line.MOVED,
        "drawn",
        Path.through(end, y - half, end - back, y - half, end - back, y + half, end, y + half));
    d.pen.line(Line.MOVED, "drawn", tip - back, y - half, tip - back, y + half);
    handle(d, y, tip, end, back);
    Box over = d.pen.box();
    // The bolt lies on the edge of the door and hides it.
    d.pen.line(Line.WIDE, "edge", x, over.top() - 4, x, y - half);
    d.pen.line(Line.WIDE, "edge", x, y + half, x, over.bottom() + 4);
    frontSizes(d, x, y, half, tip);
  }

  /** The knob from above, or the tail's end, thrown and drawn back. */
  private void handle(Draft d, double y, double tip, double end, double back) {
    if (!bolt.hasTail()) {
      double at = tip - d.of(bolt.knobPlace());
      double radius = d.of(bolt.knob().bar().section().width()) / 2;
      d.pen.circle(Line.WIDE, "knob", at, y, radius);
      d.pen.cross("knob", at, y, radius + 2);
      d.pen.circle(Line.MOVED, "drawn", at - back, y, radius);
      return;
    }
    double thick = d.of(bolt.bar().section().thickness());
    double half = d.of(bolt.bar().section().width()) / 2;
    if (bolt.bar().section().isRound()) {
      d.pen.circle(Line.WIDE, "tail", end + half, y, half);
    } else {
      d.pen.line(Line.WIDE, "tail", end + thick, y - half, end + thick, y + half);
    }
  }

  private void frontSizes(Draft d, double x, double y, double half, double tip) {
    Box over = d.pen.box();
    List<Callout> toTip = new ArrayList<>();
    String in = d.text(bolt.engagement()) + " in the keeper";
    toTip.add(new Callout(x + d.of(bolt.gap()), y - half, in));
    toTip.add(new Callout(x - d.of(bolt.setBack()), y - half, d.text(bolt.travel()) + " thrown"));
    toTip.add(new Callout(tip - d.of(length()), y - half, d.text(length()) + " bolt"));
    if (!bolt.hasTail()) {
      String knob = d.text(bolt.knobPlace()) + " to the knob";
      toTip.add(new Callout(tip - d.of(bolt.knobPlace()), y - half, knob));
    }
    // The shortest next to the bolt, so that no line to a longer one crosses a text.
    toTip.sort((one, other) -> Double.compare(other.x(), one.x()));
    double level = over.top() - 2;
    for (Callout each : toTip) {
      d.sizes.across(each.x(), tip, level, each.y(), each.y(), each.text());
      level -= OFF + 2;
    }
    List<Callout> sizes = new ArrayList<>();
    for (Measure<Length> place : bolt.places()) {
      sizes.add(new Callout(x - d.of(place), over.bottom(), d.place(place)));
    }
    d.sizes.running(new Callout(x, over.bottom(), "edge"), sizes, over.bottom() + OFF);
  }

  /** Looking along the bolt: its end in the opening, legs in the wood, the handle behind. */
  private void along(Draft d, double x, double y, Staple staple, boolean isOnDoor) {
    String where = isOnDoor ? "staple on the door, " + bolt.clearance() + " clear" : "keeper";
    double half = d.of(bolt.bar().section().width()) / 2;
    double thick = d.of(bolt.bar().section().thickness());
    if (bolt.bar().section().isRound()) {
      d.pen.circle(Line.WIDE, "section", x, y - thick / 2, half);
    } else {
      d.pen.draw(Line.WIDE, "section", Path.rectangle(new Box(x - half, y - thick, x + half, y)));
    }
    double stands = thick / 2 + d.of(bolt.handleHeight());
    double crown = d.of(staple.heightOverAll());
    if (isOnDoor && stands > crown) {
      double wide = bolt.hasTail() ? half : d.of(bolt.knob().bar().section().width()) / 2;
      double[] handle = {
        x - wide, y - crown, x - wide, y - stands, x + wide, y - stands, x + wide, y - crown
      };
      d.pen.draw(Line.WIDE, "handle", Path.through(handle));
    }
    StapleView.sized(d, x, y, staple);
    d.pen.middle(where, x, d.pen.box().bottom() + 5);
  }
}
