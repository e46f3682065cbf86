package org.hammerscale.examples.carry;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Hook;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.HookDrawing;
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
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many open hooks that carry, each with a turned eye. */
public final class CarryingHookOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "load", CarryingHookItem.LOAD,
          "capacity", CarryingHookItem.LOAD,
          "beyond", CarryingHookItem.BEYOND_CENTRE);

  private final Hook bent;
  private final Eye eye;
  private final HookLoad bearing;
  private final Part part;

  private CarryingHookOrder(OrderColumn job) {
    super(job, "carrying hook", "carrying hooks");
    Bar bar = job.bar(SetItem.BAR);
    Measure<Length> inside = job.length(CarryingHookItem.INSIDE);
    this.bent = Hook.open(inside, bar.section()).withTip(job.length(CarryingHookItem.TIP));
    this.eye = Eye.turned(job.length(CarryingHookItem.EYE), bar.section());
    this.bearing =
        HookLoad.of(
            CarryingHook.of(bent).withLoadBeyondCentre(beyond(job)),
            eye,
            job.measure(CarryingHookItem.LOAD, Force.class),
            job.count(CarryingHookItem.SAFETY));
    Plain shank = Plain.of(bar.section(), job.length(CarryingHookItem.SHANK));
    this.part = Part.of("hook", Piece.of(bar, eye, shank, bent), count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot carry what is asked
   */
  public static CarryingHookOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new CarryingHookOrder(job));
  }

  private static Measure<Length> beyond(OrderColumn job) {
    Measure<Length> radius = job.length(CarryingHookItem.INSIDE).divide(2);
    Measure<Length> beyond = job.length(CarryingHookItem.BEYOND_CENTRE);
    if (beyond.isGreaterThan(radius)) {
      throw new IllegalArgumentException(
          "beyond the centre the load must hang at most "
              + radius
              + ", within the hook, was "
              + beyond
              + "; make the hook wider inside");
    }
    return beyond;
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, part, "the eye's end");
    sheet.entry(
        "Eye",
        "close the first %s over a mandrel of %s, its middle in line with the shank",
        told(part.marks().get(0)),
        told(eye.insideDiameter()));
    sheet.entry(
        "Bend",
        "half round a mandrel of %s; the last %s stays straight",
        told(bent.insideRadius().multiply(2)),
        told(bent.tip()));
    sheet.entry(
        "Check",
        "cold, %s clear inside; the tip ends %s above the middle of the bend",
        told(bent.insideRadius().multiply(2)),
        told(bent.tip()));
    sheet.entry("Throat", "punch a dot either side of it; from dot to dot, new: ________");
    bearing.write(sheet);
  }

  @Override
  protected List<Working> workings() {
    return bearing.workings();
  }

  @Override
  protected List<Caution> warnings() {
    return bearing.hook().cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return HookDrawing.of(bearing.hook()).reducedTo(reduction).drawing();
  }
}
