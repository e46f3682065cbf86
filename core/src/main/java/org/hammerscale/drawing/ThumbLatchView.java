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
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * A thumb latch in a section through the door, its outer side to the left; and its bar from inside.
 */
final class ThumbLatchView implements LatchDrawing.Kind {
  private static final double OFF = 9;

  /** How much door is shown above the slot and below the handle, on the paper. */
  private static final double DOOR = 16;

  private final ThumbLatch latch;

  ThumbLatchView(ThumbLatch latch) {
    this.latch = latch;
  }

  @Override
  public String title() {
    return (latch.hasBackPlate() ? "Norfolk" : "Suffolk")
        + " latch through a door of "
        + latch.door();
  }

  @Override
  public void draw(Draft draft) {
    draft.scale.size("thickness of the door", latch.door());
    draft.scale.size("length of the bar", latch.length());
    draft.scale.size("length of the handle", latch.grip());
    draft.row(this::section);
    draft.row(this::front);
  }

  @Override
  public List<String> notes(Draft draft) {
    List<String> notes = new ArrayList<>();
    notes.add(
        "above: through the door, at rest; pressed in dashes and dots; set the handle where the"
            + " thumb reaches the lever");
    notes.add(
        "below: the bar from inside; it lifts "
            + draft.text(latch.lift())
            + " at the catch where "
            + draft.text(latch.liftNeeded())
            + " is needed");
    notes.add("the lever turns by " + latch.leverAngle() + ", the bar by " + latch.barAngle());
    return notes;
  }

  /** The pivot's level at the door's outer face. */
  private void section(Draft d, double x, double y) {
    Section lever = latch.thumbPiece().bar().section();
    double thick = d.of(lever.thickness());
    double door = d.of(latch.door());
    double thumb = d.of(latch.thumbFromPivot());
    double pivot = x - d.of(latch.pivotOut());
    double slot = d.of(latch.slotHeight()) - thick;
    double end = d.of(latch.thumbPiece().features().get(0).reach()) - thumb;
    double pressed = latch.leverAngle().in(ShopUnits.RADIAN);
    Turned rest = Turned.level(pivot, y);
    Turned turned = new Turned(pivot, y, pressed, false);
    double[] corners = {-thumb, 0, end, 0, end, -thick, -thumb, -thick};
    d.pen.draw(Line.WIDE, "lever", rest.path(corners).close());
    d.pen.draw(Line.MOVED, "pressed", turned.path(corners).close());
    d.pen.cross("pivot", pivot, y, 3);
    bar(d, x + door, y);
    double low = handle(d, x, y + thick) + DOOR;
    double high = Math.min(y - slot, d.pen.box().top()) - DOOR;
    wood(d, x, x + door, high, y - slot);
    wood(d, x, x + door, low, y + thick);
    sectionSizes(d, x, y, high, low);
  }

  /** The latch bar where the lever lifts it, at rest and lifted. */
  private void bar(Draft d, double face, double y) {
    double out = face + d.of(latch.bar().bar().section().thickness());
    double depth = d.of(latch.bar().bar().section().width());
    d.pen.draw(Line.WIDE, "bar", Path.rectangle(new Box(face, y - depth, out, y)));
    d.pen.hatch("bar", true, new double[] {face, y, out, y, out, y - depth, face, y - depth});
    double low = y - d.of(latch.liftAtContact());
    double high = low - depth / Math.cos(latch.barAngle().in(ShopUnits.RADIAN));
    d.pen.draw(Line.MOVED, "lifted", Path.rectangle(new Box(face, high, out, low)));
  }

  /** The handle from its upper end on; gives back where its lower end is. */
  private double handle(Draft d, double face, double top) {
    Section section = latch.handle().bar().section();
    Measure<Length> half = section.thickness().divide(2);
    double plate = plate(d);
    MeanLine line = latch.handleLine();
    if (plate > 0) {
      double high = d.of(backPlate().features().get(0).reach());
      d.pen.draw(Line.WIDE, "plate", Path.rectangle(new Box(face - plate, top, face, top + high)));
    }
    Turned at = new Turned(face - plate - d.of(half), top, -Math.PI / 2, false);
    Path path = Draft.band(at, d.points(line, half), d.points(line, half.negate()));
    d.pen.draw(Line.WIDE, "handle", path.close());
    double leg = top + d.of(latch.handle().features().get(0).reach()) + 3 * d.of(half);
    double left = d.pen.box().left();
    double grip = d.of(latch.grip());
    d.sizes.upright(leg, leg + grip, left - 4, left, left, d.text(latch.grip()));
    return d.pen.box().bottom();
  }

  /** The last of the pieces, if there is one. */
  private Piece backPlate() {
    return latch.pieces().get(latch.pieces().size() - 1);
  }

  /** How thick the plate under the handle is, if it has one. */
  private double plate(Draft d) {
    return latch.hasBackPlate() ? d.of(backPlate().bar().section().thickness()) : 0;
  }

  /** A stretch of the door, cut across, that goes on beyond the picture at one end. */
  private static void wood(Draft d, double left, double right, double open, double slot) {
    double[] corners = {left, open, left, slot, right, slot, right, open};
    d.pen.draw(Line.WIDE, "door", Path.through(corners));
    d.pen.hatch("door", false, corners);
  }

  private void sectionSizes(Draft d, double x, double y, double high, double low) {
    double pivot = x - d.of(latch.pivotOut());
    double thumb = pivot - d.of(latch.thumbFromPivot());
    double door = x + d.of(latch.door());
    double travel = d.of(latch.thumbTravel());
    d.sizes.upright(
        y, y + travel, d.pen.box().left() - 5, thumb, thumb, d.text(latch.thumbTravel()));
    String reach = d.text(latch.thumbFromPivot()) + " thumb";
    double over = d.pen.box().top() - 4;
    d.sizes.running(new Callout(pivot, y, "pivot"), List.of(new Callout(thumb, y, reach)), over);
    double out = door + d.of(latch.bar().bar().section().thickness());
    String lift = d.text(latch.liftAtContact()) + " lift";
    List<Callout> levels = List.of(new Callout(out, y - d.of(latch.liftAtContact()), lift));
    double right = d.pen.box().right() + 5;
    d.sizes.runningDown(new Callout(out, y, "rest"), levels, right);
    double slot =
        y - d.of(latch.slotHeight()) + d.of(latch.thumbPiece().bar().section().thickness());
    d.sizes.leader(door, slot, right, high + 4, d.text(latch.slotHeight()) + " slot");
    d.sizes.across(x, door, low + OFF, low, low, d.text(latch.door()) + " door");
    double wood = x - plate(d);
    double room = wood - d.of(latch.fingers());
    String fingers = d.text(latch.fingers()) + " for fingers";
    d.sizes.across(room, wood, low + 2 * OFF, low - DOOR, low - DOOR, fingers);
  }

  /** The bar's pivot at the point, seen from its side of the door. */
  private void front(Draft d, double x, double y) {
    boolean left = latch.places().get(0).getValue() < 0;
    Turned rest = new Turned(x, y, 0, left);
    double turn = latch.barAngle().in(ShopUnits.RADIAN);
    Turned lifted = new Turned(x, y, left ? -turn : turn, left);
    double depth = d.of(latch.bar().bar().section().width());
    double low = -d.of(latch.pivotAboveEdge());
    double high = low + depth;
    double tip = d.of(latch.length());
    double[] places = latch.places().stream().mapToDouble(p -> Math.abs(d.of(p))).toArray();
    double nose = d.of(latch.bar().bar().section().thickness());
    double floor = low - d.of(latch.nose().clearance());
    double over = floor + d.of(latch.nose().nose());
    Staple guide = latch.guide();
    double half = d.of(guide.rod().section().width()) / 2;
    double[] guided = {places[1] - half, places[1] + half};
    double[] caught = {places[2], places[2] + nose};
    double[] ends = {-depth, tip};
    StapleView.edge(d, rest, "bar", ends, low, new double[][] {guided, caught});
    double[][] above = over > high ? new double[][] {guided, caught} : new double[][] {guided};
    StapleView.edge(d, rest, "bar", ends, high, above);
    d.pen.draw(Line.WIDE, "bar", rest.path(-depth, low, -depth, high));
    d.pen.draw(Line.WIDE, "bar", rest.path(tip, low, tip, high));
    d.pen.draw(
        Line.MOVED, "lifted", lifted.path(-depth, low, tip, low, tip, high, -depth, high).close());
    d.pen.cross("pivot", x, y, 3);
    double wide = d.of(latch.thumbPiece().bar().section().width()) / 2;
    double under = low - d.of(latch.thumbPiece().bar().section().thickness());
    double from = places[0] - wide;
    double to = places[0] + wide;
    d.pen.draw(Line.WIDE, "lever", rest.path(from, low, to, low, to, under, from, under).close());
    double middle = low - d.of(latch.room()) + d.of(guide.insideWidth()) / 2;
    double[] at = rest.point(places[1], middle);
    StapleView.above(d, new Turned(at[0], at[1], Math.PI / 2, false), guide, "guide");
    double far = places[2] + nose;
    d.pen.draw(
        Line.WIDE,
        "catch",
        rest.path(places[2], floor, places[2], over, far, over, far, floor).close());
    frontSizes(d, rest, y - low, left);
  }

  private void frontSizes(Draft d, Turned rest, double edge, boolean left) {
    Box over = d.pen.box();
    double x = rest.x();
    double bottom = over.bottom();
    String[] names = {" lever", " guide", " catch"};
    List<Callout> along = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      Measure<Length> place = latch.places().get(i);
      along.add(new Callout(x + d.of(place), bottom, d.place(place) + names[i]));
    }
    double tip = rest.point(d.of(latch.length()), 0)[0];
    along.add(new Callout(tip, bottom, d.text(latch.length()) + " tip"));
    d.sizes.running(new Callout(x, bottom, "pivot"), along, bottom + OFF);
    double at = x + d.of(latch.places().get(2));
    List<Callout> lifts =
        List.of(
            new Callout(
                at, edge - d.of(latch.liftNeeded()), d.text(latch.liftNeeded()) + " needed"),
            new Callout(at, edge - d.of(latch.lift()), d.text(latch.lift()) + " there is"));
    double line = left ? over.left() - 5 : over.right() + 5;
    d.sizes.runningDown(new Callout(at, edge, "rest"), lifts, line);
  }
}
