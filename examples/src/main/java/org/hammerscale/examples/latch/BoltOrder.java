package org.hammerscale.examples.latch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.LatchDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.SlideBoltBuilder;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many slide bolts, each with its two staples and its keeper. */
public final class BoltOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "bar", SetItem.BAR,
          "travel", BoltItem.THROW,
          "apart", BoltItem.STAPLES_APART,
          "diameter", BoltItem.KNOB,
          "standing", BoltItem.STANDING,
          "depth", BoltItem.STAPLE_DEPTH);

  private final SlideBolt bolt;
  private final Measure<Length> drop;
  private final Measure<Length> shrinkage;
  private final List<Part> parts = new ArrayList<>();

  private BoltOrder(OrderColumn job, SlideBolt bolt) {
    super(job, "slide bolt", "slide bolts");
    this.bolt = bolt;
    this.drop = job.length(BoltItem.DROP);
    this.shrinkage = job.length(BoltItem.SHRINKAGE);
    parts.add(Part.of("bolt", bolt.bolt(), count(), graduation()));
    if (!bolt.hasTail()) {
      parts.add(Part.of("knob", bolt.knob(), count(), graduation()));
    }
    parts.add(Part.of("staple", bolt.staple().piece(), 2 * count(), graduation()));
    parts.add(Part.of("keeper", bolt.keeper().piece(), count(), graduation()));
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if the bolt cannot run or reach its keeper
   */
  public static BoltOrder from(OrderColumn job) {
    checkHeat(job, SetItem.WIRE);
    return new BoltOrder(job, Blame.by(ITEMS, BoltItem.THROW, () -> bolt(job)));
  }

  private static SlideBolt bolt(OrderColumn job) {
    SlideBoltBuilder asked =
        SlideBolt.thrown(job.length(BoltItem.THROW), job.bar(SetItem.BAR))
            .across(job.length(BoltItem.GAP))
            .setBack(job.length(BoltItem.SET_BACK))
            .stapledApart(job.length(BoltItem.STAPLES_APART))
            .fromEdge(job.length(BoltItem.FROM_EDGE))
            .clearing(job.length(SetItem.CLEARANCE))
            .coated(job.length(SetItem.COAT))
            .allowing(job.length(BoltItem.DROP), job.length(BoltItem.SHRINKAGE))
            .inStaplesOf(job.bar(SetItem.WIRE), job.length(BoltItem.STAPLE_DEPTH))
            .on(job.graduation());
    Optional<Measure<Length>> knob = job.lengthIfAny(BoltItem.KNOB);
    Measure<Length> standing = job.length(BoltItem.STANDING);
    return knob.map(wide -> asked.withKnob(wide, standing))
        .orElseGet(() -> asked.withTail(standing))
        .bolt();
  }

  /** What is forged. */
  public SlideBolt bolt() {
    return bolt;
  }

  @Override
  protected List<Part> parts() {
    return parts;
  }

  @Override
  protected List<Part> marked() {
    return bolt.hasTail() ? parts.subList(0, 1) : List.of();
  }

  @Override
  protected void work(SheetText sheet) {
    if (bolt.hasTail()) {
      marks(sheet, parts.get(0), "the tip");
      sheet.entry("Tail", "turned up to stand %s above the bolt's axis", told(bolt.handleHeight()));
    } else {
      sheet.entry(
          "Drill",
          "the knob's hole %s from the tip, %s, and sink it below, 90° to %s",
          told(bolt.knobPlace()),
          toolSteps().upTo(bolt.knob().bar().section().width()),
          calliper(bolt.knobCountersink()));
      sheet.entry(
          "Knob",
          "to stand %s above the bolt's axis; head it over flush below",
          told(bolt.handleHeight()));
    }
    int first = parts.size() - 2;
    boolean isSquare = !bolt.bar().section().isRound();
    StapleText.driven(sheet, parts.get(first), bolt.staple(), isSquare, graduation());
    StapleText.driven(sheet, parts.get(first + 1), bolt.keeper(), isSquare, graduation());
    Measure<Length> wire = bolt.staple().rod().section().width();
    Measure<Length> edge = bolt.places().get(0).subtract(wire.divide(2));
    Measure<Length> keeper = bolt.places().get(2).add(wire.divide(2)).negate();
    sheet.entry(
        "Places",
        "from the door's edge: outer side of the outer staple %s, of the inner one %s; near side of"
            + " the keeper %s beyond it. Bore half a wire behind these lines",
        told(edge),
        told(edge.add(bolt.staplesApart())),
        told(keeper));
    sheet.entry(
        "Check",
        "throws %s: %s in the keeper, %s once the door has drawn away by %s",
        told(bolt.travel()),
        down(bolt.engagement()),
        down(bolt.leastEngagement()),
        told(shrinkage));
    sheet.entry(
        "",
        "runs in its staples with %s of room%s",
        calliper(bolt.clearance()),
        coat().getValue() > 0 ? " over the finish" : "");
    sheet.entry("", "the keeper still takes it with the door's edge %s up or down", told(drop));
  }

  @Override
  protected List<Working> workings() {
    return List.of(
        bolt.working(),
        bolt.tipShiftWorking(),
        bolt.leastApartWorking(0.3),
        bolt.staple().working());
  }

  @Override
  protected List<Caution> warnings() {
    return bolt.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    // Its staples are drawn at their middles, half a wire off the lines that the rule marks.
    boolean onMarks = graduation().isOnMark(bolt.places().get(0));
    Graduation<Length> rule = onMarks ? graduation() : toolSteps();
    return LatchDrawing.of(bolt).on(rule).reducedTo(reduction).drawing();
  }
}
