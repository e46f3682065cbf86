package org.hammerscale.examples.drive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import org.hammerscale.hinge.Pin;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.strength.DoorLoad;
import org.hammerscale.strength.HingeHook;
import org.hammerscale.strength.HookPin;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** So many pairs of pintles that a door hangs on, driven into a wooden post. */
public final class PintleOrder extends PartsOrder {
  private static final Map<String, OrderItem> ITEMS =
      Map.of(
          "shank", SetItem.BAR,
          "half", PintleItem.PROJECTION,
          "projection", PintleItem.PROJECTION,
          "pin", PintleItem.PIN,
          "depth", PintleItem.DEPTH,
          "drills", SetItem.BAR);

  private final HingeHook hook;
  private final Spike tail;
  private final PintleLoad bearing;
  private final PilotHole hole;
  private final Measure<Length> drill;
  private final Measure<Length> centres;
  private final Part part;

  private PintleOrder(OrderColumn job) {
    super(job, "pair of pintles", "pairs of pintles");
    Bar bar = job.bar(SetItem.BAR);
    HookPin pin =
        HookPin.of(Pin.of(job.length(PintleItem.PIN)), job.length(PintleItem.BARREL))
            .onWashers(job.length(PintleItem.WASHERS));
    this.hook = HingeHook.of(pin, bar.section(), job.length(PintleItem.PROJECTION));
    this.tail =
        Spike.of(bar.section())
            .withPoint(Taper.toPoint(bar.section(), job.length(PintleItem.POINT)))
            .driven(job.length(PintleItem.DEPTH));
    this.part = Part.of("pintle", hook.piece(Material.MILD_STEEL, tail), 2 * count(), graduation());
    Wood wood = job.as(Wood.class, SetItem.WOOD);
    this.centres = job.length(PintleItem.CENTRES);
    DoorLoad door =
        DoorLoad.pressing(
                job.measure(PintleItem.DOOR, Force.class), job.length(PintleItem.DOOR_WIDTH))
            .hungAt(centres.withValue(0), centres);
    int safety = job.count(PintleItem.SAFETY);
    this.bearing =
        new PintleLoad(hook, tail, wood, door, PermissibleStress.of(Material.MILD_STEEL, safety));
    this.hole = PilotHole.pulledOut(tail, wood);
    this.drill = hole.drill(toolSteps());
  }

  /**
   * The job in a column of an order file.
   *
   * @throws Blame if it cannot be made or cannot bear the door
   */
  public static PintleOrder from(OrderColumn job) {
    checkHeat(job, SetItem.BAR);
    return Blame.by(ITEMS, SetItem.BAR, () -> new PintleOrder(job));
  }

  @Override
  protected List<Part> parts() {
    return List.of(part);
  }

  @Override
  protected void work(SheetText sheet) {
    marks(sheet, part, "where the pin ends");
    boolean isDrawn = part.isEstimated();
    sheet.entry(
        "Pin",
        isDrawn
            ? "draw it round to %s, %s from the shoulder to its top; file the shoulder flat"
            : "of the bar itself, %2$s from the shank to its top",
        hook.pin().diameter(),
        told(hook.pin().height()));
    sheet.entry("Corner", "bend it square between the marks, sharp outside");
    sheet.entry(
        "Tail",
        "draw the last %s to a point of %s",
        told(part.lastStretch()),
        told(tail.point().reach()));
    sheet.entry(
        "Check",
        "cold, from the pin's middle: %s to a chalk mark, the post's face, %s to the tip",
        told(hook.projection()),
        told(hook.projection().add(tail.inWood())));
    DriveText.bore(
        sheet,
        drill,
        down(tail.boringDepth()) + " deep into side grain of the post",
        calliper(hole.mostThreadHole()));
    sheet.entry(
        "Drive", "on the corner in line with the shank, never on the pin, up to the chalk mark");
    sheet.entry(
        "Places",
        "shanks %s apart in the middle, for straps %s apart; the upper one upside down and driven"
            + " last, with the door on the lower one",
        told(hook.shankCentresWithOneInverted(centres)),
        told(centres));
    DriveText.keep(sheet, tail.diameter(), this::up);
    bearing.write(
        sheet,
        down(tail.holdingLength())
            + " of full shank ("
            + up(bearing.leastHold())
            + " are needed, in sound wood)");
  }

  @Override
  protected List<Working> workings() {
    List<Working> workings = new ArrayList<>();
    workings.add(hook.invertedWorking(centres));
    workings.add(hole.mostThreadHoleWorking());
    workings.add(tail.boringWorking());
    workings.addAll(DriveText.keepWorkings(tail.diameter()));
    workings.addAll(bearing.workings());
    return workings;
  }

  @Override
  protected List<Caution> warnings() {
    ReferenceWithdrawal hold = ReferenceWithdrawal.of(tail, bearing.wood());
    return DriveText.dangersFirst(
        hook.cautions(),
        tail.cautions(),
        hold.cautions(tail.holdingLength()),
        bearing.door().cautions());
  }

  @Override
  protected Drawing drawing(int reduction) {
    return DrivenDrawing.of(hook, tail)
        .inHole(drill)
        .on(graduation())
        .reducedTo(reduction)
        .drawing();
  }
}
