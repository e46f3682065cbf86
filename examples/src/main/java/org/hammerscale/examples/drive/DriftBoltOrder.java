package org.hammerscale.examples.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.DrivenDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.Wood;
import org.hammerscale.holding.DriftBolt;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many drift bolts that hold one timber on another. */
public final class DriftBoltOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "base", DriftBoltItem.HEAD_ACROSS,
          "height", DriftBoltItem.HEAD_HIGH,
          "depth", DriftBoltItem.DEPTH,
          "load", DriftBoltItem.LOAD);

  /** Of the load at which it comes out a fifth may be allowed. */
  private static final int FIFTH = 5;

  private final DriftBolt bolt;
  private final Spike rod;
  private final Measure<Length> washer;
  private final Measure<Force> load;
  private final Measure<Length> drill;
  private final Part part;

  private DriftBoltOrder(OrderColumn job) {
    super(job, "drift bolt", "drift bolts");
    Bar bar = job.bar(SetItem.BAR);
    Section shank = bar.section();
    if (!shank.isRound()) {
      throw new IllegalArgumentException(
          "bar must be round for a drift bolt, was " + shank + "; order it as a spike");
    }
    this.bolt = DriftBolt.of(shank.width(), job.as(Wood.class, SetItem.WOOD));
    this.washer = job.length(DriftBoltItem.WASHER);
    this.load = job.measure(DriftBoltItem.LOAD, Force.class);
    this.rod = rod(job, shank);
    this.part = Part.of("bolt", rod.piece(bar.material()), count(), graduation());
    this.drill = bolt.hole().downTo(toolSteps());
    DriveText.requireDepth(rod.diameter(), rod.holdingLength(), rod.inWood());
    DriveText.require(load, allowed(), "one bolt, a fifth of what draws it out");
  }

  private Spike rod(OrderColumn job, Section shank) {
    Spike headed =
        bolt.rod()
            .withHead(
                SpikeHead.DOME.of(
                    shank,
                    job.length(DriftBoltItem.HEAD_ACROSS),
                    job.length(DriftBoltItem.HEAD_HIGH)));
    Spike washed = washer.getValue() > 0 ? headed.through(washer) : headed;
    return washed
        .through(job.length(DriftBoltItem.THROUGH))
        .driven(job.length(DriftBoltItem.DEPTH));
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made, or does not hold what is asked
   */
  public static DriftBoltOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new DriftBoltOrder(job));
  }

  private Measure<Force> allowed() {
    return bolt.ultimate(rod.holdingLength()).likely().divide(FIFTH);
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, part, "the head's end");
    sheet.entry(
        "Head",
        "jump up the first %s in a header to a dome head %s across and %s high%s",
        told(part.marks().get(0)),
        told(rod.head().widest().width()),
        told(rod.head().reach()),
        washer.getValue() > 0 ? "; slip a washer of " + told(washer) + " under it" : "");
    sheet.entry(
        "Point",
        "ease the last %s to %s across, %s long, so that it enters the hole",
        told(part.lastStretch()),
        calliper(rod.point().end().width()),
        told(rod.point().reach()));
    sheet.entry("Check", "cold, %s under the head", told(rod.length()));
    sheet.entry(
        "Bore",
        "%s, %s deep through both timbers, into side grain (the rule says %s)",
        drill,
        down(rod.boringDepth().subtract(washer)),
        calliper(bolt.hole()));
    sheet.entry(
        "Drive", "straight, with a sledge, the head down on its seat; never into end grain");
    DriveText.keep(sheet, rod.diameter(), this::up);
    DriveText.asked(sheet, load, "on each, straight out");
    sheet.entry(
        "Holds",
        "%s by %s of full shank, a fifth of what draws it out: no reference value is known to us",
        LoadText.down(allowed().to(load.getUnit())),
        down(rod.holdingLength()));
    sheet.entry("", "%s", DriveText.comesOut(bolt.ultimate(rod.holdingLength()), load.getUnit()));
  }

  @Override
  protected List<Working> workings() {
    List<Working> workings = new ArrayList<>(DriveText.keepWorkings(rod.diameter()));
    workings.addAll(List.of(rod.working(), rod.boringWorking(), bolt.working(rod.holdingLength())));
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    return DriveText.dangersFirst(rod.cautions(), bolt.cautions());
  }

  @Override
  protected Drawing drawing(int reduction) {
    Drawing drawing =
        DrivenDrawing.of(rod).inHole(drill).on(graduation()).reducedTo(reduction).drawing();
    return drawing.titled("drift bolt of " + rod.shank() + ", " + told(rod.length()) + " long");
  }
}
