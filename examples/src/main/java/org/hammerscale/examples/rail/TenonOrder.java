package org.hammerscale.examples.rail;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Tenon;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many bars, each with a tenon on one end that is riveted through another bar. */
public final class TenonOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "tenon", TenonItem.TENON,
          "section", SetItem.CLEARANCE,
          "thickness", TenonItem.THROUGH,
          "base", TenonItem.HEAD_ACROSS,
          "height", TenonItem.HEAD_HIGH);

  private final Tenon tenon;
  private final Measure<Length> straight;
  private final Measure<Length> across;
  private final Measure<Length> high;
  private final Part part;

  private TenonOrder(OrderColumn job, Tenon tenon) {
    super(job, "bar with a tenon", "bars with a tenon");
    this.tenon = tenon;
    this.straight = job.length(TenonItem.LENGTH);
    this.across = job.length(TenonItem.HEAD_ACROSS);
    this.high = job.length(TenonItem.HEAD_HIGH);
    Bar bar = job.bar(SetItem.BAR);
    Piece piece = Piece.of(bar, Plain.of(bar.section(), straight), tenon);
    this.part = Part.of("bar", piece, count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if there is no such tenon on the bar
   */
  public static TenonOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return new TenonOrder(job, Blame.by(ITEMS, SetItem.BAR, () -> tenon(job)));
  }

  private static Tenon tenon(OrderColumn job) {
    Section peg = job.as(Section.class, TenonItem.TENON);
    Section head = Section.round(job.length(TenonItem.HEAD_ACROSS));
    Tenon closed =
        Tenon.between(job.bar(SetItem.BAR).section(), peg)
            .through(
                job.length(TenonItem.THROUGH),
                Head.dome(peg, head, job.length(TenonItem.HEAD_HIGH)));
    Tenon tenon = closed.inHole(hole(peg, job.length(SetItem.CLEARANCE)));
    if (!(tenon.shoulderWidth().getValue() > 0)) {
      throw new IllegalArgumentException(
          "tenon must leave a shoulder round its hole of "
              + tenon.hole()
              + ", was "
              + peg
              + "; make it smaller");
    }
    if (!head.width().isGreaterThan(tenon.hole().width())) {
      throw new IllegalArgumentException(
          "base must be wider than the hole of "
              + tenon.hole()
              + ", was "
              + head.width()
              + "; make the head wider");
    }
    return tenon;
  }

  /** As a punch or a drill has it, no less than asked. */
  private static Section hole(Section peg, Measure<Length> clearance) {
    Graduation<Length> tools = Order.toolSteps(peg.width().getUnit().equals(ShopUnits.INCH));
    Measure<Length> wide = tools.upTo(peg.width().add(clearance));
    if (peg.isRound()) {
      return Section.round(wide);
    }
    if (peg.isTube() || !peg.area().isEquivalentTo(Measures.area(peg.width(), peg.thickness()))) {
      throw new IllegalArgumentException(
          "tenon must be round, square or flat, was " + peg + "; take one of these");
    }
    Measure<Length> thick = tools.upTo(peg.thickness().add(clearance));
    if (wide.equals(thick)) {
      return Section.square(wide);
    }
    return wide.isLessThan(thick) ? Section.onEdge(wide, thick) : Section.flat(wide, thick);
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, part, "the far end");
    sheet.entry(
        "Tenon",
        "set it down to %s; file the shoulder square, %s of it all round",
        tenon.section(),
        down(tenon.shoulderWidth()));
    sheet.entry(
        "",
        "cut it %s from the shoulder: %s stand out of the other bar",
        up(tenon.length()),
        up(tenon.lengthBeyond()));
    sheet.entry("Hole", "in the other bar %s", tenon.hole());
    sheet.entry("Head", "rivet it hot to a dome %s across and %s high", across, high);
    sheet.entry("Check", "%s from the far end to the shoulder", told(straight));
  }

  @Override
  protected List<Working> workings() {
    return List.of(tenon.working());
  }

  @Override
  protected List<Caution> warnings() {
    return new ArrayList<>(tenon.cautions());
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LeafDrawing.of(part.piece()).on(graduation()).reducedTo(reduction).drawing();
  }
}
