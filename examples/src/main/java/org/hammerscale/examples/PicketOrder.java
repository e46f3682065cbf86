package org.hammerscale.examples;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.PicketDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.piece.Piece;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many rows of pickets, all alike, each between two posts. */
final class PicketOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "tolerance", PicketItem.TOLERANCE,
          "angle", PicketItem.RAKE,
          "newRule", SetItem.GRADUATION,
          "width", SetItem.BAR);

  /** So many places find room on the front. */
  private static final int MOST_IN_FRONT = 150;

  private final PicketLayout layout;
  private final Measure<Length> span;
  private final Measure<Length> sphere;
  private final Measure<Angle> rake;
  private final Part picket;

  private PicketOrder(OrderColumn job, PicketLayout layout) {
    super(job, "a row of pickets", "rows of pickets");
    this.layout = layout;
    this.span = job.length(PicketItem.SPAN);
    this.sphere = job.length(PicketItem.SPHERE);
    this.rake = job.measure(PicketItem.RAKE, Angle.class);
    Bar bar = job.bar(SetItem.BAR);
    Piece piece = Piece.of(bar, Plain.of(bar.section(), job.length(PicketItem.LENGTH)));
    this.picket = Part.of("picket", piece, layout.pickets() * count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if so many pickets find no room
   */
  static PicketOrder from(OrderColumn job) {
    return new PicketOrder(job, Blame.by(ITEMS, PicketItem.SPAN, () -> needed(layout(job))));
  }

  private static PicketLayout needed(PicketLayout layout) {
    if (layout.pickets() == 0) {
      throw new IllegalArgumentException(
          "span must be more than the sphere, was " + layout.gap() + "; no picket is needed");
    }
    return layout;
  }

  private static PicketLayout layout(OrderColumn job) {
    return PicketRow.across(job.length(PicketItem.SPAN))
        .of(job.bar(SetItem.BAR).section().width())
        .stopping(job.length(PicketItem.SPHERE))
        .withTolerance(job.length(PicketItem.TOLERANCE))
        .raked(job.measure(PicketItem.RAKE, Angle.class))
        .layout()
        .on(job.graduation());
  }

  /** Where they stand. */
  PicketLayout layout() {
    return layout;
  }

  @Override
  protected List<Part> parts() {
    return List.of(picket);
  }

  @Override
  protected void work(SheetText sheet) {
    boolean level = rake.getValue() == 0;
    sheet.entry(
        "Row",
        "%d pickets in %s clear from post to post%s",
        layout.pickets(),
        told(span),
        level ? "" : ", level; the rail rakes " + rake);
    sheet.entry(
        "Gaps",
        "%s to %s; a sphere of %s does not pass",
        told(layout.narrowestGap()),
        told(layout.widestGap()),
        sphere);
    sheet.entry(
        "Mark",
        "near edges, all from one post%s: %s",
        level ? "" : " along the rail",
        layout.pickets() > MOST_IN_FRONT ? "overleaf" : edges());
  }

  @Override
  protected Drawing drawing(int reduction) {
    return PicketDrawing.of(layout).reducedTo(reduction).drawing();
  }

  private String edges() {
    return layout.edges().stream().map(this::told).collect(Collectors.joining(", "));
  }

  @Override
  protected void more(SheetText sheet) {
    if (layout.pickets() > MOST_IN_FRONT) {
      sheet.entry("Mark", "%s", edges());
    }
  }

  @Override
  protected List<Working> workings() {
    return List.of(layout.working());
  }

  @Override
  protected List<Caution> warnings() {
    return layout.cautions();
  }
}
