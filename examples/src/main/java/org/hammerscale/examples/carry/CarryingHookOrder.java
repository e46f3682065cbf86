package org.hammerscale.examples.carry;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.HookProportions;
import org.hammerscale.drawing.Drawing;
import org.hammerscale.drawing.HookDrawing;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Part;
import org.hammerscale.examples.order.PartsOrder;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.heat.Cooling;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.HandbookLoad;
import org.hammerscale.strength.PermissibleStress;
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

  private final Bar bar;
  private final Hook bent;
  private final Eye eye;
  private final Measure<Force> load;
  private final PermissibleStress permissible;
  private final CarryingHook hook;
  private final CarryingHook ring;
  private final HookProportions towne;
  private final Part part;

  private CarryingHookOrder(OrderColumn job) {
    super(job, "carrying hook", "carrying hooks");
    this.bar = job.bar(SetItem.BAR);
    this.load = job.measure(CarryingHookItem.LOAD, Force.class);
    this.permissible =
        PermissibleStress.of(Material.MILD_STEEL, job.count(CarryingHookItem.SAFETY));
    Measure<Length> inside = job.length(CarryingHookItem.INSIDE);
    this.bent = Hook.open(inside, bar.section()).withTip(job.length(CarryingHookItem.TIP));
    this.eye = Eye.turned(job.length(CarryingHookItem.EYE), bar.section());
    this.hook = CarryingHook.of(bent).withLoadBeyondCentre(beyond(job));
    // An eye that is not welded is a hook too: all of the load goes round one side of it.
    this.ring = CarryingHook.of(hook.section(), eye.insideDiameter().divide(2));
    this.towne = HookProportions.forCapacity(LoadText.massOf(load));
    Plain shank = Plain.of(bar.section(), job.length(CarryingHookItem.SHANK));
    this.part = Part.of("hook", Piece.of(bar, eye, shank, bent), count(), graduation());
    if (load.isGreaterThan(mayCarry())) {
      throw new IllegalArgumentException(
          "load must be at most the "
              + LoadText.down(mayCarry())
              + " that "
              + (isRingWeaker() ? "its eye" : "its bend")
              + " may carry, was "
              + LoadText.of(load)
              + "; take a thicker bar or make it smaller");
    }
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot carry what is asked
   */
  public static CarryingHookOrder from(OrderColumn job) {
    Bar bar = job.bar(SetItem.BAR);
    Blame.on(SetItem.HEAT, () -> Cooling.from(job.measure(SetItem.HEAT, Temperature.class), bar));
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

  private boolean isRingWeaker() {
    return ring.safeLoad(permissible).isLessThan(hook.safeLoad(permissible));
  }

  private CarryingHook weaker() {
    return isRingWeaker() ? ring : hook;
  }

  /** First yield of the weaker of bend and eye, by the safety asked. */
  private Measure<Force> mayCarry() {
    return weaker().safeLoad(permissible).to(load.getUnit());
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected List<Part> marked() {
    return parts();
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
    sheet.entry(
        "Carries",
        "%s asked; at most %s, first yield of %s ÷ %d",
        LoadText.of(load),
        LoadText.down(mayCarry()),
        isRingWeaker() ? "its eye, not welded," : "its bend",
        Math.round(permissible.safety()));
    sheet.entry(
        "",
        "begins to open at %s, and the last reserve ends at %s",
        borne(weaker().firstYield(permissible.strength())),
        borne(weaker().plasticLimit(permissible.strength())));
    sheet.entry(
        "Rules",
        "beside it, of other hooks, no rating of this one: D² short tons, %s; 2/3 of that, %s; old"
            + " crane hooks up to %s were of %s round",
        rule(HandbookLoad.HOOK_FIELD),
        rule(HandbookLoad.HOOK_TWO_THIRDS),
        towne.capacity(),
        towne.stock());
  }

  private String borne(Measure<Force> force) {
    return LoadText.down(force.to(load.getUnit()));
  }

  private String rule(HandbookLoad rule) {
    return borne(LoadText.weightOf(rule.load(bar.section().thickness())));
  }

  @Override
  protected List<Working> workings() {
    return List.of(
        weaker().safeWorking(permissible),
        weaker().firstYieldWorking(permissible.strength()),
        weaker().plasticWorking(permissible.strength()),
        HandbookLoad.HOOK_FIELD.working(bar.section().thickness()),
        HandbookLoad.HOOK_TWO_THIRDS.working(bar.section().thickness()),
        towne.working(HookProportions.Size.D));
  }

  @Override
  protected List<Caution> warnings() {
    return hook.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return HookDrawing.of(hook).reducedTo(reduction).drawing();
  }
}
