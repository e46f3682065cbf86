package org.hammerscale.examples.latch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.LatchDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Wood;
import org.hammerscale.latch.Closing;
import org.hammerscale.latch.LatchCatch;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.latch.ThumbLatchBuilder;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many thumb latches, each with its handle, guide and catch. */
public final class LatchOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "travel", LatchItem.TRAVEL,
          "lift", LatchItem.TRAVEL,
          "edgeBelow", SetItem.BAR,
          "contact", LatchItem.LIFTED_AT,
          "catchAt", LatchItem.CAUGHT_AT,
          "clearance", LatchItem.FLOOR,
          "rise", LatchItem.RISE,
          "fingers", LatchItem.FINGERS);

  private final ThumbLatch latch;
  private final FootScrews screws;
  private final Measure<Length> room;
  private final Measure<Length> gap;
  private final Measure<Length> drop;
  private final Measure<Length> rise;
  private final List<Part> parts = new ArrayList<>();

  private LatchOrder(OrderColumn job, ThumbLatch latch, FootScrews screws) {
    super(job, "thumb latch", "thumb latches");
    this.latch = latch;
    this.screws = screws;
    this.room = room(job);
    this.gap = job.length(LatchItem.GAP);
    this.drop = job.length(LatchItem.DROP);
    this.rise = job.length(LatchItem.RISE);
    List<String> names = List.of("bar", "thumb piece", "handle", "guide", "catch", "plate");
    for (int i = 0; i < latch.pieces().size(); i++) {
      parts.add(Part.of(names.get(i), latch.pieces().get(i), count(), graduation()));
    }
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if the bar does not clear its catch, or is not caught by it
   */
  public static LatchOrder from(OrderColumn job) {
    checkHeat(job, SetItem.WIRE);
    ThumbLatch latch = Blame.by(ITEMS, LatchItem.TRAVEL, () -> latch(job));
    Blame.on(LatchItem.GAP, () -> guideOnDoor(latch, job.length(LatchItem.GAP)));
    Part handle = Part.of("handle", latch.handle(), 1, job.graduation());
    FootScrews screws =
        Blame.on(
            LatchItem.FOOT_HOLES,
            () ->
                FootScrews.of(
                    job.as(Screw.class, SetItem.SCREW),
                    job.count(LatchItem.FOOT_HOLES),
                    handle.bar(),
                    handle.piece().features().get(0).reach(),
                    job.as(Wood.class, SetItem.WOOD),
                    job.graduation()));
    return new LatchOrder(job, latch, screws);
  }

  private static Measure<Length> guideOnDoor(ThumbLatch latch, Measure<Length> gap) {
    Measure<Length> most = places(latch).get(2).subtract(places(latch).get(1));
    if (!gap.isLessThan(most)) {
      throw new IllegalArgumentException(
          "gap must be less than "
              + most
              + " for the guide to stand on the door, was "
              + gap
              + "; set the catch nearer to its edge");
    }
    return most;
  }

  private static ThumbLatch latch(OrderColumn job) {
    Bar bar = job.bar(SetItem.BAR);
    ThumbLatchBuilder asked =
        ThumbLatch.through(job.length(LatchItem.DOOR), bar, job.length(LatchItem.BAR_LENGTH))
            .closing(job.as(Closing.class, LatchItem.CLOSES))
            .thumbAt(job.length(LatchItem.THUMB), job.length(LatchItem.TRAVEL))
            .lifting(job.length(LatchItem.LIFTED_AT), job.length(LatchItem.CAUGHT_AT))
            .madeOf(bar, job.bar(SetItem.WIRE))
            .into(
                LatchCatch.standing(job.length(LatchItem.NOSE)).under(job.length(LatchItem.FLOOR)),
                job.length(LatchItem.OVER))
            .allowing(job.length(LatchItem.DROP), job.length(LatchItem.RISE))
            .withHandle(bar, job.length(LatchItem.GRIP), job.length(LatchItem.FINGERS))
            .clearing(room(job))
            .on(job.graduation());
    return (job.as(Boolean.class, LatchItem.PATTERN) ? asked.withBackPlate() : asked).latch();
  }

  /** On each side of the bar lies a coat of its own and one of the guide. */
  private static Measure<Length> room(OrderColumn job) {
    return job.length(SetItem.CLEARANCE).add(job.length(SetItem.COAT).multiply(2));
  }

  /** What is forged. */
  public ThumbLatch latch() {
    return latch;
  }

  /** The screws in each foot of its handle. */
  FootScrews footScrews() {
    return screws;
  }

  @Override
  protected List<Part> parts() {
    return parts;
  }

  @Override
  protected void work(SheetText sheet) {
    Measure<Length> pivot = parts.get(0).length().subtract(latch.length());
    sheet.entry(
        "Bar", "drill for its pivot %s from the back end, in the middle of its width", told(pivot));
    sheet.entry(
        "Thumb",
        "%s from the thumb's end to its pivot at the door's outer face; its end lifts the bar",
        told(latch.thumbFromPivot()));
    handle(sheet);
    Part guide = parts.get(3);
    if (latch.guide().inWood().isGreaterThan(latch.door())) {
      StapleText.through(sheet, guide, latch.guide(), latch.door(), graduation());
    } else {
      StapleText.driven(sheet, guide, latch.guide(), true, graduation());
    }
    catchMarks(sheet);
    sheet.entry(
        "Slot", "%s high and %s wide through the door", told(latch.slotHeight()), slotWidth());
    Measure<Length> edge = places(latch).get(2).subtract(gap);
    sheet.entry(
        "Places",
        "from the door's edge, on the %s seen from the bar: the bar's pivot %s, the thumb piece %s,"
            + " the guide %s; the catch's inner face %s beyond it",
        latch.closing() == Closing.LEFT ? "left" : "right",
        told(edge),
        told(edge.subtract(places(latch).get(0))),
        told(edge.subtract(places(latch).get(1))),
        told(gap));
    checks(sheet);
    screws(sheet);
  }

  private void handle(SheetText sheet) {
    Part handle = parts.get(2);
    String marks = handle.marks().stream().map(this::told).collect(Collectors.joining(", "));
    sheet.entry(
        "Handle",
        "punch at %s from one end; bend square from the first to the second, the third to the"
            + " fourth and so on: out, over, back, down",
        marks);
    sheet.entry(
        "",
        "%s clear to grip, %s behind it for the fingers",
        told(latch.grip()),
        told(latch.fingers()));
    if (latch.hasBackPlate()) {
      sheet.entry("Plate", "%s: rivet the handle's feet to it", parts.get(5).bar().section());
    }
  }

  private void catchMarks(SheetText sheet) {
    Part piece = parts.get(4);
    sheet.entry(
        "Catch",
        "leave %s of the bar, draw the rest to a point of %s; nose %s high over its floor",
        told(piece.marks().get(0)),
        told(piece.piece().features().get(1).reach()),
        told(latch.nose().nose()));
    sheet.entry("", "set its floor %s under the resting bar", told(latch.nose().clearance()));
  }

  /** The lever with its room on both sides. */
  private String slotWidth() {
    Measure<Length> lever = parts.get(1).bar().section().width();
    return up(lever.add(room.multiply(2)));
  }

  private void checks(SheetText sheet) {
    sheet.entry(
        "Check",
        "the thumb lifts the bar by %s at the catch; %s clears the nose with the door %s down",
        down(latch.lift()),
        up(latch.liftNeeded()),
        told(drop));
    sheet.entry(
        "",
        "%s behind the nose at rest, %s with the door %s up; %s of the tip in the catch",
        down(latch.nose().engagement(drop.withValue(0))),
        down(latch.nose().engagement(rise.negate())),
        told(rise),
        down(latch.overlap()));
    sheet.entry(
        "",
        "the bar has %s in its guide over, under and behind it, the finish counted",
        calliper(room.subtract(coat().multiply(2))));
  }

  private void screws(SheetText sheet) {
    String places =
        screws.layout().positions().stream().map(this::told).collect(Collectors.joining(", "));
    sheet.entry("Holes", "each foot, from its end: %s", places);
    sheet.entry("Screw", "%s", screws.screw());
    sheet.entry(
        "Iron",
        "drill %s, sink %s to %s; %s is left below",
        toolSteps().upTo(screws.countersink().hole()),
        screws.countersink().angle(),
        calliper(screws.countersink().diameter()),
        calliper(screws.countersink().land()));
    sheet.entry(
        "Wood",
        "drill %s for the thread, %s for the shank",
        toolSteps().nearest(screws.pilot().threadHole()),
        toolSteps().nearest(screws.pilot().shankHole()));
  }

  /** Where lever, guide and catch are along the bar, from its pivot, whichever way it closes. */
  private static List<Measure<Length>> places(ThumbLatch latch) {
    return latch.places().stream()
        .map(place -> place.getValue() < 0 ? place.negate() : place)
        .toList();
  }

  @Override
  protected List<Working> workings() {
    return List.of(
        latch.working(),
        latch.slotWorking(),
        latch.nose().working(drop),
        latch.guide().working(),
        screws.countersink().working(),
        screws.pilot().threadHoleWorking());
  }

  @Override
  protected List<Caution> warnings() {
    return latch.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LatchDrawing.of(latch).on(graduation()).reducedTo(reduction).drawing();
  }

  @Override
  public Map<Screw, Integer> screws() {
    return Map.of(screws.screw(), 2 * screws.layout().positions().size() * count());
  }
}
