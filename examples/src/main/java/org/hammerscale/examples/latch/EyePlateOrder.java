package org.hammerscale.examples.latch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.LatchDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.PilotText;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.CountersunkHoles;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Wood;
import org.hammerscale.holding.ScrewChoice;
import org.hammerscale.holding.ScrewSeries;
import org.hammerscale.holding.StrapScrews;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.StaplePlate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many loops, each riveted on a plate that two screws hold. */
public final class EyePlateOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "screwHead", SetItem.SCREW,
          "screw", SetItem.SCREW,
          "series", SetItem.SCREW,
          "flat", SetItem.BAR,
          "staple", SetItem.WIRE);

  private final StaplePlate eye;
  private final Screw screw;
  private final Wood wood;
  private final Measure<Force> load;
  private final Countersink sunk;
  private final ScrewChoice hold;
  private final Part loop;
  private final Part plate;

  private EyePlateOrder(OrderColumn job) {
    super(job, "eye on a plate", "eyes on plates");
    this.screw = job.as(Screw.class, SetItem.SCREW);
    this.wood = job.as(Wood.class, SetItem.WOOD);
    this.load = job.measure(EyePlateItem.LOAD, Force.class);
    Staple staple =
        Staple.inside(job.length(EyePlateItem.WIDTH), job.bar(SetItem.WIRE))
            .standing(job.length(EyePlateItem.HEIGHT));
    this.eye =
        StaplePlate.under(staple, job.bar(SetItem.BAR), screw.head().headDiameter())
            .on(graduation());
    this.loop = Part.of("loop", eye.loop(), count(), graduation());
    this.plate = Part.of("plate", eye.plate(), count(), graduation());
    this.sunk = CountersunkHoles.of(screw.head(), eye.plate()).at(eye.screwHoles().get(0));
    this.hold =
        StrapScrews.through(job.bar(SetItem.BAR).section().thickness())
            .into(job.length(EyePlateItem.TIMBER), wood)
            .pulledOff(load)
            .atMost(2)
            .bestOf(ScrewSeries.of("ordered", List.of(screw.shank()), List.of(screw.length())));
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made, or two such screws do not hold what is asked
   */
  public static EyePlateOrder from(OrderColumn job) {
    checkHeat(job, SetItem.WIRE);
    return Blame.by(ITEMS, SetItem.BAR, () -> new EyePlateOrder(job));
  }

  @Override
  protected List<Part> parts() {
    return List.of(loop, plate);
  }

  @Override
  protected void work(SheetText sheet) {
    Staple staple = eye.staple();
    boolean isLow = staple.insideHeight().isLessThan(staple.insideWidth().divide(2));
    sheet.entry(
        "Bend",
        "%s a mandrel of %s, both legs as long: they stand %s out behind the plate",
        isLow ? "both corners round" : "the middle half round",
        told(isLow ? staple.insideHeight().multiply(2) : staple.insideWidth()),
        calliper(proud()));
    sheet.entry(
        "Plate",
        "for the legs %s, %s apart about its middle, sunk behind 90° to %s",
        toolSteps().upTo(staple.rod().section().width()),
        up(staple.legCentres()),
        calliper(eye.rivetCountersink()));
    sheet.entry(
        "",
        "for the screws %s, %s from either end, sunk on its face %s to %s",
        toolSteps().upTo(sunk.hole()),
        told(eye.screwHoles().get(0)),
        sunk.angle(),
        calliper(sunk.diameter()));
    sheet.entry("Rivet", "both legs hot into their sinkings, and file them flush behind");
    sheet.entry(
        "Check",
        "%s wide and %s high inside, from the plate's face",
        told(staple.insideWidth()),
        told(staple.insideHeight()));
    sheet.entry("Screw", "%s, 2 for each", screw);
    sheet.entry("Wood", "drill %s", PilotText.of(screw, wood, toolSteps()));
    sheet.entry("Pull", "%s asked on each, straight out", LoadText.of(load));
    sheet.entry(
        "Used",
        "by that %s %% of what both screws may bear",
        (int) Math.ceil(100 * hold.use(hold.governing())));
  }

  /** What is left of a leg for its rivet, with what the rule adds to the bar. */
  private Measure<Length> proud() {
    Measure<Length> bent = loop.piece().features().get(1).stock(loop.bar().section()).likely();
    return loop.length().subtract(bent).divide(2);
  }

  /** A rivet is no stretch to mark: it is what the legs are too long. */
  @Override
  protected List<Part> marked() {
    return List.of();
  }

  @Override
  protected List<Working> workings() {
    return List.of(
        eye.working(),
        hold.working(hold.governing()),
        sunk.working(),
        PilotHole.pulledOut(screw.shank(), wood).threadHoleWorking());
  }

  @Override
  protected List<Caution> warnings() {
    List<Caution> cautions = new ArrayList<>(eye.cautions());
    cautions.addAll(hold.cautions());
    return cautions;
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LatchDrawing.of(eye).on(graduation()).reducedTo(reduction).drawing();
  }

  @Override
  public Map<Screw, Integer> screws() {
    return Map.of(screw, 2 * count());
  }
}
