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
import org.hammerscale.holding.DrivenStaple;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.UltimateWithdrawal;
import org.hammerscale.latch.Staple;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many staples that a ring, a hasp or a rope pulls at. */
public final class StapleOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of("depth", StapleItem.DEPTH, "load", StapleItem.LOAD, "drills", SetItem.BAR);

  private final Staple staple;
  private final boolean isSquare;
  private final Spike leg;
  private final Wood wood;
  private final Measure<Force> load;
  private final PilotHole hole;
  private final Measure<Length> drill;
  private final Part part;

  private StapleOrder(OrderColumn job) {
    super(job, "staple", "staples");
    Bar rod = job.bar(SetItem.BAR);
    this.leg = Spike.of(rod.section());
    this.isSquare = job.as(Boolean.class, StapleItem.CROWN);
    this.wood = job.as(Wood.class, SetItem.WOOD);
    this.load = job.measure(StapleItem.LOAD, Force.class);
    this.staple = staple(job, rod).on(graduation());
    this.part = Part.of("staple", staple.piece(), count(), graduation());
    this.hole = PilotHole.pulledOut(leg, wood);
    this.drill = hole.drill(toolSteps());
    DriveText.require(load, held().reference(staple.holdingLength()), "one staple");
    if (!staple.isClenched()) {
      DriveText.requireDepth(leg.diameter(), staple.holdingLength(), staple.inWood());
    }
  }

  private Staple staple(OrderColumn job, Bar rod) {
    Staple bent =
        Staple.inside(job.length(StapleItem.WIDTH), rod).standing(job.length(StapleItem.HEIGHT));
    Measure<Length> timber = job.length(StapleItem.TIMBER);
    Optional<Measure<Length>> depth = job.lengthIfAny(StapleItem.DEPTH);
    depth.ifPresent(deep -> DriveText.requireWithin(timber, graduation().upTo(deep)));
    Staple driven = depth.isPresent() ? bent.driven(depth.get()) : bent.clenchedThrough(timber);
    return isSquare ? driven.withSquareCrown() : driven;
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made, or does not hold what is asked
   */
  public static StapleOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new StapleOrder(job));
  }

  private DrivenStaple held() {
    return DrivenStaple.of(leg, wood);
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, part, "the end of a point");
    sheet.entry(
        "Points",
        "draw the last %s at either end to a point of %s",
        told(part.marked().reference()),
        told(staple.pointLength()));
    sheet.entry("Bend", "%s, both legs as long", crown());
    sheet.entry(
        "Check",
        "cold, %s clear inside; from under the crown to the tips %s",
        told(staple.insideWidth()),
        told(staple.insideHeight().add(staple.inWood())));
    DriveText.bore(
        sheet,
        drill,
        "two holes "
            + told(staple.legCentres())
            + " apart in the middle, across the grain, "
            + (staple.isClenched()
                ? "right through"
                : down(staple.holdingLength()) + " deep into side grain"),
        calliper(hole.mostThreadHole()));
    sheet.entry(
        "Drive",
        "on a block under the crown, until it stands %s clear of the wood inside%s",
        told(staple.insideHeight()),
        staple.isClenched()
            ? "; hold a sledge against the crown and turn the last "
                + told(staple.clench())
                + " of each leg over, across the grain, the tip back into the wood"
            : "");
    DriveText.keep(sheet, leg.diameter(), this::up);
    DriveText.asked(sheet, load, "on each, straight out");
    DriveText.holds(
        sheet,
        held().reference(staple.holdingLength()).to(load.getUnit()),
        "by both legs, " + down(staple.holdingLength()) + " of full rod each",
        held().ultimate(staple.holdingLength()));
    if (staple.isClenched()) {
      sheet.entry("", "(not counting the clench)");
    }
  }

  private String crown() {
    if (isSquare) {
      return "both corners square, " + told(staple.insideWidth()) + " apart inside";
    }
    return staple.insideHeight().isLessThan(staple.insideWidth().divide(2))
        ? "both corners round a mandrel of " + told(staple.insideHeight().multiply(2))
        : "half round a mandrel of " + told(staple.insideWidth());
  }

  @Override
  protected List<Working> workings() {
    Measure<Length> each = staple.holdingLength();
    List<Working> workings = new ArrayList<>(DriveText.keepWorkings(leg.diameter()));
    workings.addAll(
        List.of(
            staple.working(),
            hole.mostThreadHoleWorking(),
            ReferenceWithdrawal.of(leg, wood).working(each),
            held().working(each),
            UltimateWithdrawal.of(leg, wood).working(each)));
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> cautions =
        DriveText.dangersFirst(
            staple.cautions(), ReferenceWithdrawal.of(leg, wood).cautions(staple.holdingLength()));
    // Of its legs what the staple itself has not said.
    leg.cautions().stream().filter(caution -> !caution.isDanger()).forEach(cautions::add);
    return cautions;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return DrivenDrawing.of(staple).inHole(drill).on(graduation()).reducedTo(reduction).drawing();
  }
}
