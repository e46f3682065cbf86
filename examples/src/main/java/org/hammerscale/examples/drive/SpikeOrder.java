package org.hammerscale.examples.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.DrivenDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.Wood;
import org.hammerscale.forging.Taper;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.UltimateWithdrawal;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many spikes that fix something on timber. */
public final class SpikeOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "base", SpikeItem.HEAD_ACROSS,
          "widest", SpikeItem.HEAD_ACROSS,
          "height", SpikeItem.HEAD_HIGH,
          "section", SpikeItem.POINT,
          "depth", SpikeItem.DEPTH,
          "load", SpikeItem.LOAD,
          "length", SpikeItem.POINT_LENGTH,
          "drills", SetItem.BAR);

  private final Spike spike;
  private final SpikeHead head;
  private final boolean isChisel;
  private final Wood wood;
  private final Measure<Force> load;
  private final PilotHole hole;
  private final Measure<Length> drill;
  private final Part part;

  private SpikeOrder(OrderColumn job) {
    super(job, "spike", "spikes");
    Section shank = job.bar(SetItem.BAR).section();
    this.head = job.as(SpikeHead.class, SpikeItem.HEAD);
    this.isChisel = job.as(Boolean.class, SpikeItem.POINT);
    this.wood = job.as(Wood.class, SetItem.WOOD);
    this.load = job.measure(SpikeItem.LOAD, Force.class);
    this.spike = spike(job, Spike.of(shank));
    this.part =
        Part.of("spike", spike.piece(job.bar(SetItem.BAR).material()), count(), graduation());
    this.hole = PilotHole.pulledOut(spike, wood);
    this.drill = hole.drill(toolSteps());
    DriveText.require(load, reference().force(spike.holdingLength()), "one spike");
    if (!spike.isClenched()) {
      DriveText.requireDepth(spike.diameter(), spike.holdingLength(), spike.inWood());
    }
  }

  private Spike spike(OrderColumn job, Spike bare) {
    Section shank = bare.shank();
    Measure<Length> pointed = job.length(SpikeItem.POINT_LENGTH);
    Spike made =
        bare.withHead(
                head.of(shank, job.length(SpikeItem.HEAD_ACROSS), job.length(SpikeItem.HEAD_HIGH)))
            .withPoint(isChisel ? Taper.toEdge(shank, pointed) : Taper.toPoint(shank, pointed));
    for (Measure<Length> thickness : job.lengths(SpikeItem.THROUGH)) {
      made = made.through(thickness);
    }
    Measure<Length> timber = job.length(SpikeItem.TIMBER);
    Optional<Measure<Length>> depth = job.lengthIfAny(SpikeItem.DEPTH);
    depth.ifPresent(deep -> DriveText.requireWithin(timber, deep));
    return depth.isPresent() ? made.driven(depth.get()) : made.clenchedThrough(timber);
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made, or does not hold what is asked
   */
  public static SpikeOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new SpikeOrder(job));
  }

  private ReferenceWithdrawal reference() {
    return ReferenceWithdrawal.of(spike, wood);
  }

  private UltimateWithdrawal ultimate() {
    return UltimateWithdrawal.of(spike, wood);
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
        "jump up the first %s in a header to a %s head %s across and %s high",
        told(part.marks().get(0)),
        head,
        told(spike.head().widest().width()),
        told(spike.head().reach()));
    sheet.entry(
        "Point",
        "draw the last %s to %s of %s%s",
        told(part.lastStretch()),
        isChisel ? "a chisel" : "a point",
        told(spike.point().reach()),
        isChisel ? ", its edge as wide as the shank" : "");
    sheet.entry("Check", "cold, %s under the head", told(spike.length()));
    DriveText.bore(
        sheet,
        drill,
        spike.isClenched()
            ? "right through"
            : down(spike.boringDepth()) + " deep from the first face, into side grain",
        calliper(hole.mostThreadHole()));
    sheet.entry(
        "Drive",
        "%s%s",
        isChisel ? "the chisel's edge across the grain; " : "",
        spike.isClenched()
            ? "hold a sledge against the head and turn the last "
                + told(spike.clench())
                + " over, across the grain, the tip back into the wood"
            : "the head down on the first face");
    DriveText.keep(sheet, spike.diameter(), this::up);
    DriveText.asked(sheet, load, "on each, straight out");
    DriveText.holds(
        sheet,
        reference().force(spike.holdingLength()).to(load.getUnit()),
        "by " + down(spike.holdingLength()) + " of full shank",
        ultimate().force(spike.holdingLength()));
    if (spike.isClenched()) {
      sheet.entry("", "(not counting the clench)");
    }
  }

  @Override
  protected List<Working> workings() {
    List<Working> workings = new ArrayList<>(DriveText.keepWorkings(spike.diameter()));
    workings.addAll(
        List.of(
            spike.working(),
            hole.mostThreadHoleWorking(),
            spike.boringWorking(),
            reference().working(spike.holdingLength()),
            ultimate().working(spike.holdingLength())));
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    return DriveText.dangersFirst(spike.cautions(), reference().cautions(spike.holdingLength()));
  }

  @Override
  protected Drawing drawing(int reduction) {
    return DrivenDrawing.of(spike).inHole(drill).on(graduation()).reducedTo(reduction).drawing();
  }
}
