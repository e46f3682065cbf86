package org.hammerscale.examples.drive;

import java.util.List;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.Wood;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.UltimateWithdrawal;
import org.hammerscale.strength.DoorLoad;
import org.hammerscale.strength.HingeHook;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Working;

/** What a door does to two pintles of which the upper is set upside down, and what they bear. */
record PintleLoad(
    HingeHook hook, Spike tail, Wood wood, DoorLoad door, PermissibleStress permissible) {

  /**
   * The same.
   *
   * @throws IllegalArgumentException if iron or wood cannot bear so much
   */
  PintleLoad {
    Measure<Pressure> most = permissible.tension();
    String rule = " by yield ÷ " + Math.round(permissible.safety());
    if (hook.shankBending(door.weight()).isGreaterThan(most)
        || hook.shankStressUnder(door.pull(2)).isGreaterThan(most)) {
      throw new IllegalArgumentException(
          "shank must be thick enough to bear the door"
              + rule
              + ", was "
              + hook.shank()
              + " at "
              + hook.projection()
              + " from the post; take a thicker bar, or let the pin stand nearer the post");
    }
    if (hook.pin().bending(door.pull(2)).isGreaterThan(most)) {
      throw new IllegalArgumentException(
          "pin must be thick enough to bear the pull of "
              + LoadText.up(door.pull(2))
              + rule
              + ", was "
              + hook.pin().diameter()
              + "; take a thicker pin, or a narrower barrel");
    }
    Measure<Length> least = ReferenceWithdrawal.of(tail, wood).leastLength(door.pull(2));
    if (tail.holdingLength().isLessThan(least)) {
      throw new IllegalArgumentException(
          "depth must be at least "
              + least.add(tail.point().reach())
              + " with the point, for the full shank to hold a pull of "
              + LoadText.up(door.pull(2))
              + " by its reference value and stand six diameters deep, was "
              + tail.inWood()
              + "; drive it deeper");
    }
  }

  private ReferenceWithdrawal reference() {
    return ReferenceWithdrawal.of(tail, wood);
  }

  private UltimateWithdrawal ultimate() {
    return UltimateWithdrawal.of(tail, wood);
  }

  void write(SheetText sheet, String shank) {
    sheet.entry(
        "Door",
        "%s; it pulls the upper pintle out by %s and presses the lower one in; the lower one bears"
            + " the weight",
        LoadText.of(door.weight()),
        LoadText.up(door.pull(2)));
    DriveText.holds(
        sheet,
        reference().force(tail.holdingLength()).to(door.weight().getUnit()),
        "by " + shank,
        ultimate().force(tail.holdingLength()));
    sheet.entry(
        "Stress",
        "one at a time, not added: shank %s by the weight and %s by the pull, pin %s by the pull; at"
            + " most %s, yield ÷ %d",
        up(hook.shankBending(door.weight())),
        up(hook.shankStressUnder(door.pull(2))),
        up(hook.pin().bending(door.pull(2))),
        down(permissible.tension().to(hook.shankBending(door.weight()).getUnit())),
        Math.round(permissible.safety()));
  }

  /** As deep as the pull and the rule of six diameters ask of the full shank. */
  Measure<Length> leastHold() {
    return reference().leastLength(door.pull(2));
  }

  private static Measure<Pressure> up(Measure<Pressure> stress) {
    return steps(stress).upTo(stress);
  }

  private static Measure<Pressure> down(Measure<Pressure> stress) {
    return steps(stress).downTo(stress);
  }

  private static Graduation<Pressure> steps(Measure<Pressure> stress) {
    boolean isMetric = stress.getUnit().equals(ShopUnits.MEGAPASCAL);
    return Graduation.of(stress.withValue(isMetric ? 1 : 100));
  }

  List<Working> workings() {
    return List.of(
        door.working(2),
        reference().lengthWorking(door.pull(2)),
        reference().working(tail.holdingLength()),
        ultimate().working(tail.holdingLength()),
        hook.shankWorking(door.weight()),
        hook.shankPullWorking(door.pull(2)),
        hook.pin().bendingWorking(door.pull(2)),
        permissible.working());
  }
}
