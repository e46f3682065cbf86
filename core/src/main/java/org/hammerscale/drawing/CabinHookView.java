package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * A cabin hook in a plan of the door about its pin, shut and held open, and the hook by itself from
 * the side.
 */
final class CabinHookView implements LatchDrawing.Kind {
  private static final double OFF = 9;

  /** How much of door and wall is shown beyond an eye, on the paper. */
  private static final double BEYOND = 14;

  /** How deep the wood is hatched behind its face, on the paper. */
  private static final double WOOD = 4;

  private final CabinHook hook;

  CabinHookView(CabinHook hook) {
    this.hook = hook;
  }

  @Override
  public String title() {
    return "cabin hook of " + hook.rod().section() + ", " + hook.length() + " from seat to seat";
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("length of the hook", hook.length());
    draft.scale.size("thickness of the hook", hook.rod().section().thickness());
    draft.scale.size("place of the eye on the door", hook.onDoor());
    draft.row(this::plan);
    draft.row(this::side);
  }

  @Override
  public List<String> notes(Draft draft) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "above: plan, the door held open at "
            + hook.opening()
            + "; shut in dashes and dots; places count from the pin to the seats, where iron presses"
            + " on iron");
    if (!hook.hasStaples()) {
      notes.add(
          "bore for the shank of either eye "
              + draft.text(hook.seatToShank())
              + " behind its seat, along the hook");
    }
    notes.add(
        "the hook stands "
            + draft.text(hook.standOff())
            + " off both faces, and its line passes the pin at "
            + draft.text(hook.leverArm()));
    return notes;
  }

  private void plan(Draft d, double x, double y) {
    double open = hook.opening().in(ShopUnits.RADIAN);
    Turned shut = Turned.level(x, y);
    Turned held = new Turned(x, y, open, false);
    double[] door = {d.of(hook.onDoor()), d.of(hook.doorOff())};
    double[] wall = {d.of(hook.onWall()), d.of(hook.wallOff())};
    double off = d.of(hook.standOff());
    double[] from = shut.point(wall[0], wall[1]);
    double[] to = held.point(door[0], door[1]);
    double along = Math.atan2(from[1] - to[1], to[0] - from[0]);
    double length = d.of(hook.length());
    double eye = d.of(hook.eyeInside()) + 2 * d.of(hook.eyeRod().section().thickness());
    double end = door[0] + eye + BEYOND;
    d.pen.draw(Line.MOVED, "shut", shut.path(0, door[1] - off, end, door[1] - off));
    face(d, held, 0, end, door[1] - off, "door");
    double beyond = wall[0] - eye - BEYOND;
    face(d, shut, beyond, wall[0] < 0 ? 0 : wall[0] + eye + BEYOND, wall[1] - off, "wall");
    d.pen.cross("pin", x, y, 4);
    d.pen.circle(Line.WIDE, "pin", x, y, 1.5);
    eye(d, shut, wall, wall[1] - off, along + Math.PI, Line.WIDE);
    eye(d, held, door, door[1] - off, along - open, Line.WIDE);
    eye(d, shut, door, door[1] - off, along - open, Line.MOVED);
    Turned hooked = new Turned(from[0], from[1], along, false);
    double half = d.of(hook.rod().section().thickness()) / 2;
    double wire = d.of(hook.eyeRod().section().thickness()) / 2;
    double first = -wire - 2 * half;
    double last = length + wire + 2 * half;
    d.pen.draw(
        Line.WIDE, "hook", hooked.path(first, -half, last, -half, last, half, first, half).close());
    d.pen.draw(Line.CENTRE, "mean", hooked.path(0, 0, length, 0));
    double[] tip = hooked.point(length + wire + half, 0);
    d.pen.circle(Line.HIDDEN, "tip", tip[0], tip[1], half);
    d.pen.cross("seat", from[0], from[1], 3);
    d.pen.cross("seat", to[0], to[1], 3);
    double[] shutSeat = shut.point(door[0], door[1]);
    d.pen.cross("seat", shutSeat[0], shutSeat[1], 3);
    planSizes(d, shut, end, wall, door);
  }

  private void planSizes(Draft d, Turned shut, double end, double[] wall, double[] door) {
    double x = shut.x();
    double y = shut.y();
    double open = hook.opening().in(ShopUnits.RADIAN);
    if (open > 0) {
      d.sizes.angle(x, y, end + 4, 0, open, hook.opening().toString());
    }
    Box over = d.pen.box();
    List<Callout> along =
        List.of(
            new Callout(x + wall[0], over.bottom(), d.place(hook.onWall()) + " wall"),
            new Callout(x + door[0], over.bottom(), d.place(hook.onDoor()) + " door"));
    d.sizes.running(new Callout(x, over.bottom(), "pin"), along, over.bottom() + OFF);
    List<Callout> offs = new ArrayList<>();
    if (hook.wallOff().getValue() != 0) {
      offs.add(new Callout(x + wall[0], y - wall[1], d.place(hook.wallOff()) + " wall"));
    }
    if (hook.doorOff().getValue() != 0) {
      offs.add(new Callout(x, y - door[1], d.place(hook.doorOff()) + " door"));
    }
    if (!offs.isEmpty()) {
      d.sizes.runningDown(new Callout(x, y, "pin"), offs, over.left() - 5);
    }
  }

  /** The face of door or wall, what lies behind it hatched. */
  private static void face(Draft d, Turned at, double from, double to, double up, String part) {
    d.pen.draw(Line.WIDE, part, at.path(from, up, to, up));
    d.pen.hatch(part, true, at.corners(from, up, to, up, to, up - WOOD, from, up - WOOD));
  }

  /**
   * An eye with its seat at a place of door or wall: a staple on it, or a ring on a shank that lies
   * behind the seat as the hook pulls.
   */
  private void eye(Draft d, Turned at, double[] seat, double face, double pull, Line line) {
    double wire = d.of(hook.eyeRod().section().thickness());
    if (hook.hasStaples()) {
      double[] foot = at.point(seat[0], face);
      Turned staple = new Turned(foot[0], foot[1], at.radians(), false);
      if (line == Line.WIDE) {
        StapleView.standing(d, staple, hook.staple(), "eye");
      }
      return;
    }
    double behind = d.of(hook.seatToShank());
    double inside = d.of(hook.eyeInside()) / 2;
    double[] middle = {seat[0] + behind * Math.cos(pull), seat[1] + behind * Math.sin(pull)};
    double[] centre = at.point(middle[0], middle[1]);
    d.pen.circle(line, "eye", centre[0], centre[1], inside);
    d.pen.circle(line, "eye", centre[0], centre[1], inside + wire);
    double foot = middle[1] - Math.sqrt((inside + wire) * (inside + wire) - wire * wire / 4);
    double deep = face - d.of(hook.eye().features().get(1).reach());
    for (int side = -1; side <= 1; side += 2) {
      double across = middle[0] + side * wire / 2;
      if (foot > face) {
        d.pen.draw(line, "shank", at.path(across, foot, across, face));
      }
      if (line == Line.WIDE) {
        d.pen.draw(Line.HIDDEN, "shank", at.path(across, face, across, deep, middle[0], deep));
      }
    }
  }

  /** From the side, its seat in the wall's eye at the point. */
  private void side(Draft d, double x, double y) {
    Measure<Length> thickness = hook.rod().section().thickness();
    double thick = d.of(thickness);
    double wire = d.of(hook.eyeRod().section().thickness());
    double bore = d.of(hook.bore()) / 2;
    double centre = x + bore - wire / 2;
    double outer = bore + thick;
    MeanLine line = hook.shankLine();
    Turned at = Turned.level(centre + outer, y);
    double[] left = d.points(line, thickness.divide(2));
    double[] right = d.points(line, thickness.divide(2).negate());
    double neck = Math.sqrt(outer * outer - thick * thick / 4) - outer;
    left[0] = neck;
    right[0] = neck;
    d.pen.draw(Line.WIDE, "face", Draft.band(at, left, right));
    double angle = Math.asin(thick / 2 / outer);
    d.pen.draw(Line.WIDE, "ring", new Path().arc(centre, y, outer, angle, 2 * Math.PI - angle));
    d.pen.circle(Line.WIDE, "bore", centre, y, bore);
    d.pen.circle(Line.CENTRE, "mean", centre, y, bore + thick / 2);
    d.pen.draw(Line.CENTRE, "mean", at.path(d.points(line, thickness.withValue(0))));
    double length = d.of(hook.length());
    double inner = x - wire / 2;
    Box over = d.pen.box();
    d.sizes.across(
        x,
        x + length,
        over.top() - OFF,
        y - thick / 2,
        y - thick / 2,
        d.text(hook.length()) + " seats");
    d.sizes.across(
        inner,
        inner + d.of(hook.insideLength()),
        over.bottom() + OFF,
        y,
        over.bottom(),
        d.text(hook.insideLength()) + " inside, to check by");
    d.sizes.leader(
        centre - outer * Math.sqrt(0.5),
        y + outer * Math.sqrt(0.5),
        centre - outer - 6,
        y + outer + 6,
        "Ø " + d.text(hook.bore()) + " inside");
  }
}
