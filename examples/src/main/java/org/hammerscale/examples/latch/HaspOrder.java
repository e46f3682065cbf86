package org.hammerscale.examples.latch;

import java.util.List;
import java.util.Map;
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
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.HaspBuilder;
import org.hammerscale.latch.Staple;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many hasps, each with its staple. */
public final class HaspOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "fromPin", HaspItem.STAPLE_AT,
          "staple", HaspItem.SHACKLE_ROOM,
          "strap", SetItem.BAR,
          "depth", HaspItem.STAPLE_DEPTH,
          "hanger", HaspItem.HUNG_ON);

  private final Hasp hasp;
  private final Measure<Length> shackle;
  private final Part strap;
  private final Part staple;
  private final Part hanger;

  private HaspOrder(OrderColumn job, Hasp hasp) {
    super(job, "hasp", "hasps");
    this.hasp = hasp;
    this.shackle = job.length(HaspItem.SHACKLE);
    this.strap = Part.of("strap", hasp.hasp(), count(), graduation());
    this.staple = Part.of("staple", hasp.staple().piece(), count(), graduation());
    this.hanger = Part.of("hanger", hasp.hanger().orElseThrow().piece(), count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if staple and slot do not fit the strap
   */
  public static HaspOrder from(OrderColumn job) {
    checkHeat(job, SetItem.WIRE);
    Measure<Length> shackle = job.length(HaspItem.SHACKLE);
    Measure<Length> wide = job.length(HaspItem.STAPLE_WIDTH);
    Hasp hasp = Blame.by(ITEMS, SetItem.BAR, () -> hasp(job));
    Blame.on(
        HaspItem.STAPLE_WIDTH,
        () -> {
          if (wide.isLessThan(shackle)) {
            throw new IllegalArgumentException(
                "staple must be at least as wide inside as the shackle, "
                    + shackle
                    + ", was "
                    + wide
                    + "; bend it wider");
          }
          return hasp;
        });
    return new HaspOrder(job, hasp);
  }

  private static Hasp hasp(OrderColumn job) {
    Bar strap = job.bar(SetItem.BAR);
    Measure<Length> coat = job.length(SetItem.COAT);
    // The strap has two coats, the staple one on its inside and one that the padlock rubs.
    Measure<Length> high =
        Hasp.leastInside(
            strap.section().thickness(),
            job.length(HaspItem.SHACKLE),
            job.length(HaspItem.SHACKLE_ROOM).add(coat.multiply(4)));
    Staple staple =
        Staple.inside(job.length(HaspItem.STAPLE_WIDTH), job.bar(SetItem.WIRE))
            .standing(high)
            .driven(job.length(HaspItem.STAPLE_DEPTH))
            .on(job.graduation());
    Measure<Length> play = play(job);
    Staple hanger =
        Hasp.hanger(strap, job.bar(HaspItem.HUNG_ON), play)
            .driven(job.length(HaspItem.STAPLE_DEPTH))
            .on(job.graduation());
    HaspBuilder asked =
        Hasp.of(strap, staple)
            .stapledAt(job.length(HaspItem.STAPLE_AT))
            .hungOn(hanger, play)
            .clearing(job.length(SetItem.CLEARANCE).add(coat.multiply(2)))
            .reachingBeyond(job.length(HaspItem.BEYOND))
            .on(job.graduation());
    return (job.as(Boolean.class, HaspItem.LEGS) ? asked.inLine() : asked).hasp();
  }

  /** A coat lies on both sides of the crown and of the bore, of the legs and of the strap. */
  private static Measure<Length> play(OrderColumn job) {
    return job.length(SetItem.CLEARANCE).add(job.length(SetItem.COAT).multiply(4));
  }

  /** What is forged. */
  public Hasp hasp() {
    return hasp;
  }

  @Override
  protected List<Part> parts() {
    return List.of(strap, staple, hanger);
  }

  @Override
  protected List<Part> marked() {
    return List.of(strap);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, strap, "where the eye ends");
    sheet.entry(
        "Eye",
        "roll it up over a mandrel of %s, flush with the underside; file its end to meet the strap",
        toolSteps().upTo(hasp.bore()));
    sheet.entry(
        "Slot",
        "from %s to %s from the eye's centre, %s wide; drift and file to these lines",
        told(hasp.slotFrom()),
        told(hasp.slotTo()),
        told(hasp.slotWidth()));
    StapleText.driven(sheet, staple, hasp.staple(), false, graduation());
    StapleText.driven(sheet, hanger, hasp.hanger().orElseThrow(), true, graduation());
    sheet.entry("", "bend its second corner when it is through the eye");
    sheet.entry(
        "Places",
        "near side of the staple %s from the middle of the hanger, legs %s the hasp",
        told(hasp.stapledAt()),
        hasp.isInLine() ? "in line along" : "across");
    sheet.entry(
        "Check",
        "swings over the staple, the slot %s longer than it is",
        told(hasp.slotLength().subtract(hasp.stapleLength())));
    sheet.entry(
        "",
        "a padlock's shackle of %s goes in; it lets the hasp lift by %s",
        told(shackle),
        up(hasp.play(shackle)));
  }

  @Override
  protected List<Working> workings() {
    return List.of(
        hasp.slotFromWorking(),
        hasp.slotToWorking(),
        hasp.staple().working(),
        hasp.hanger().orElseThrow().working());
  }

  @Override
  protected List<Caution> warnings() {
    return hasp.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LatchDrawing.of(hasp).on(graduation()).reducedTo(reduction).drawing();
  }
}
