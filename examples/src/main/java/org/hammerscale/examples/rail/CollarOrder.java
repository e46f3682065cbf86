package org.hammerscale.examples.rail;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Collar;
import org.hammerscale.drawing.BentDrawing;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many collars, each round bars that lie side by side. */
public final class CollarOrder extends PartsOrder {
  /** How the ends of a collar meet. */
  enum Ends {
    BUTTED,
    LAPPED,
    SCARFED
  }

  private static final Map<String, OrderItem> ITEMS =
      Map.of("bar", CollarItem.EACH, "count", CollarItem.BARS, "thickness", SetItem.BAR);

  private final Collar collar;
  private final Ends ends;
  private final int bars;
  private final Section each;
  private final Section strip;
  private final Part part;

  private CollarOrder(OrderColumn job, Collar collar) {
    super(job, "collar", "collars");
    this.collar = collar;
    this.ends = job.as(Ends.class, CollarItem.ENDS);
    this.bars = job.count(CollarItem.BARS);
    this.each = job.as(Section.class, CollarItem.EACH);
    Bar bar = job.bar(SetItem.BAR);
    this.strip = bar.section();
    Piece piece = Piece.of(bar, Plain.of(strip, cut(collar)));
    this.part = Part.of("collar", piece, count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if no collar goes round such bars
   */
  public static CollarOrder from(OrderColumn job) {
    return new CollarOrder(job, Blame.by(ITEMS, SetItem.BAR, () -> collar(job)));
  }

  private static Collar collar(OrderColumn job) {
    Collar butted =
        Collar.aroundBars(
            job.count(CollarItem.BARS),
            job.as(Section.class, CollarItem.EACH),
            job.bar(SetItem.BAR).section().thickness());
    return switch (job.as(Ends.class, CollarItem.ENDS)) {
      case BUTTED -> butted;
      case LAPPED -> butted.lapped();
      case SCARFED -> butted.scarfed();
    };
  }

  /** By the rule for square corners; round bars stretch nothing, so there by the middle line. */
  private Measure<Length> cut(Collar asked) {
    Measure<Length> rule = asked.cutLength().likely();
    return each.isRound() ? rule.subtract(asked.closingError()).add(lap()) : rule;
  }

  /** What ends that lie over one another take more than butted ones, by the bench rule. */
  private Measure<Length> lap() {
    Measure<Length> half = strip.thickness().divide(2);
    return ends == Ends.BUTTED ? half.withValue(0) : half;
  }

  /** The first is cut as long as any rule has it: what is over can be taken off. */
  private String trial() {
    Estimate<Length> rule = collar.cutLength();
    Measure<Length> most = cut(collar).add(rule.high().subtract(rule.likely()));
    return ends == Ends.BUTTED ? "cut one" : "cut one " + up(most) + " long";
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    Measure<Length> wide = each.width().multiply(bars);
    Measure<Length> high = each.thickness();
    Measure<Length> twice = strip.thickness().multiply(2);
    sheet.entry(
        "Round", "%s%s", bars == 1 ? "one bar of " : bars + " bars, side by side, of ", each);
    sheet.entry(
        "Trial",
        "%s, close it on the bars, write down what is over or wants; cut the others after it",
        trial());
    sheet.entry(
        "Bend",
        "%s, joint %s, ends %s",
        each.isRound() ? "round the bars themselves" : "sharp round the bars themselves",
        each.isRound() && bars == 1 ? "anywhere" : "in the middle of a long side",
        ends.name().toLowerCase(Locale.ROOT));
    sheet.entry(
        "Check",
        "closed it is %s × %s outside, %s × %s inside",
        told(wide.add(twice)),
        told(high.add(twice)),
        told(wide),
        told(high));
  }

  @Override
  protected List<Working> workings() {
    return each.isRound()
        ? List.of(collar.closingWorking())
        : List.of(collar.working(), collar.closingWorking());
  }

  @Override
  protected List<Caution> warnings() {
    return collar.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return BentDrawing.of(collar.line(), strip).reducedTo(reduction).drawing();
  }
}
