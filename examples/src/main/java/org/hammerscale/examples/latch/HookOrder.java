package org.hammerscale.examples.latch;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Angle;
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
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.CabinHookBuilder;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many cabin hooks, each with its two eyes. */
public final class HookOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "onDoor", HookItem.EYE_ON_DOOR,
          "onWall", HookItem.EYE_ON_WALL,
          "seatToSeat", HookItem.EYE_ON_WALL,
          "opening", HookItem.HELD_OPEN,
          "height", HookItem.STANDING_OFF,
          "depth", HookItem.EYE_DEPTH);
  private static final Graduation<Angle> WHOLE_DEGREE = Graduation.of(Measures.degrees(1));

  private final CabinHook hook;
  private final Measure<Length> depth;
  private final Part bar;
  private final Part eye;

  private HookOrder(OrderColumn job, CabinHook hook) {
    super(job, "cabin hook", "cabin hooks");
    this.hook = hook;
    this.depth = job.length(HookItem.EYE_DEPTH);
    this.bar = Part.of("hook", hook.hook(), count(), graduation());
    this.eye = Part.of(hook.hasStaples() ? "staple" : "eye", hook.eye(), 2 * count(), graduation());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if the eyes leave no room for a hook
   */
  public static HookOrder from(OrderColumn job) {
    checkHeat(job, SetItem.WIRE);
    return new HookOrder(job, Blame.by(ITEMS, HookItem.EYE_ON_WALL, () -> hook(job)));
  }

  private static CabinHook hook(OrderColumn job) {
    Bar wire = job.bar(SetItem.WIRE);
    CabinHookBuilder asked =
        CabinHook.betweenEyes(
                job.length(HookItem.EYE_ON_DOOR), job.length(HookItem.EYE_ON_WALL), wire)
            .off(job.length(HookItem.DOOR_EYE_OFF), job.length(HookItem.WALL_EYE_OFF))
            .heldOpen(job.measure(HookItem.HELD_OPEN, Angle.class))
            .standingOff(job.length(HookItem.STANDING_OFF))
            .clearing(clearance(job))
            .on(job.graduation());
    Measure<Length> depth = job.length(HookItem.EYE_DEPTH);
    return (job.as(Boolean.class, HookItem.EYES)
            ? asked.withStaples(wire, depth)
            : asked.withScrewEyes(wire, depth))
        .hook();
  }

  /** A coat lies on both sides of the wire and on both sides of the eye. */
  private static Measure<Length> clearance(OrderColumn job) {
    return job.length(SetItem.CLEARANCE).add(job.length(SetItem.COAT).multiply(4));
  }

  /** What is forged. */
  public CabinHook hook() {
    return hook;
  }

  @Override
  protected List<Part> parts() {
    return List.of(bar, eye);
  }

  @Override
  protected List<Part> marked() {
    return List.of(bar);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, bar, "the eye's end");
    sheet.entry(
        "Eye",
        "close the first %s over a mandrel of %s, its middle in line with the shank",
        told(bar.marks().get(0)),
        told(hook.eyeInside()));
    sheet.entry(
        "End",
        "turn it down square, close round a rod of the wire; tip %s long",
        told(eye.bar().section().width().multiply(3)));
    if (hook.hasStaples()) {
      sheet.entry(
          "Staples",
          "%s wide inside; draw %s at either end to a point",
          told(hook.eyeInside()),
          told(eye.marks().get(0)));
    } else {
      sheet.entry(
          "Eyes",
          "close the first %s over a mandrel of %s; %s of shank, cut a thread or barb it",
          told(eye.marks().get(0)),
          told(hook.eyeInside()),
          told(depth));
    }
    sheet.entry(
        "Check",
        "%s inside, from the far side of its eye to the turned-down end",
        told(hook.insideLength()));
    sheet.entry(
        "",
        "the wire turns in its eyes with %s of room, the finish counted",
        calliper(hook.eyeInside().subtract(eye.bar().section().width()).subtract(coats())));
    places(sheet);
    sheet.entry(
        "Holds",
        "the door open by %s; its line passes the pin by %s",
        WHOLE_DEGREE.nearest(hook.opening()),
        down(hook.leverArm()));
    sheet.entry(
        "", "%s are left between the hook and the faces of door and wall", down(hook.clearance()));
  }

  private Measure<Length> coats() {
    return coat().multiply(4);
  }

  private void places(SheetText sheet) {
    boolean beyond = hook.onWall().getValue() < 0;
    sheet.entry(
        "Places",
        "seat on the door %s from the pin, %s off its line; seat on the wall %s %s the pin, %s off",
        told(hook.onDoor()),
        told(hook.doorOff()),
        told(beyond ? hook.onWall().negate() : hook.onWall()),
        beyond ? "beyond" : "before",
        told(hook.wallOff()));
    if (!hook.hasStaples()) {
      Measure<Length> apart = hook.length().add(hook.seatToShank().multiply(2));
      sheet.entry(
          "",
          "bore for the shanks behind the seats: %s from middle to middle, the door held open",
          told(apart));
    }
  }

  @Override
  protected List<Working> workings() {
    return List.of(hook.working(), hook.leverArmWorking());
  }

  @Override
  protected List<Caution> warnings() {
    return hook.cautions();
  }

  @Override
  protected Drawing drawing(int reduction) {
    return LatchDrawing.of(hook).on(graduation()).reducedTo(reduction).drawing();
  }
}
