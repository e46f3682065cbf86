package org.hammerscale.examples.carry;

import java.util.List;
import javax.measure.quantity.Force;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.HookProportions;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.stock.Material;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.HandbookLoad;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Working;

/** What a hook may carry by its bend and its eye, and what handbooks say beside it. */
record HookLoad(
    CarryingHook hook,
    CarryingHook ring,
    Measure<Force> load,
    PermissibleStress permissible,
    HookProportions towne) {
  /**
   * A hook under its load.
   *
   * @throws IllegalArgumentException if it cannot carry so much
   */
  static HookLoad of(CarryingHook hook, Eye eye, Measure<Force> load, int safety) {
    // An eye that is not welded is a hook too: all of the load goes round one side of it.
    CarryingHook ring = CarryingHook.of(hook.section(), eye.insideDiameter().divide(2));
    HookLoad bearing =
        new HookLoad(
            hook,
            ring,
            load,
            PermissibleStress.of(Material.MILD_STEEL, safety),
            HookProportions.forCapacity(LoadText.massOf(load)));
    if (load.isGreaterThan(bearing.most())) {
      throw new IllegalArgumentException(
          "load must be at most the "
              + LoadText.down(bearing.most())
              + " that "
              + (bearing.isRingWeaker() ? "its eye" : "its bend")
              + " may carry, was "
              + LoadText.of(load)
              + "; take a thicker bar or make it smaller");
    }
    return bearing;
  }

  private boolean isRingWeaker() {
    return ring.safeLoad(permissible).isLessThan(hook.safeLoad(permissible));
  }

  private CarryingHook weaker() {
    return isRingWeaker() ? ring : hook;
  }

  /** First yield of the weaker of bend and eye, by the safety asked. */
  private Measure<Force> most() {
    return weaker().safeLoad(permissible).to(load.getUnit());
  }

  void write(SheetText sheet) {
    sheet.entry(
        "Carries",
        "%s asked; at most %s, first yield of %s ÷ %d",
        LoadText.of(load),
        LoadText.down(most()),
        isRingWeaker() ? "its eye, not welded," : "its bend",
        Math.round(permissible.safety()));
    sheet.entry(
        "",
        "begins to open at %s, and the last reserve ends at %s",
        down(weaker().firstYield(permissible.strength())),
        down(weaker().plasticLimit(permissible.strength())));
    sheet.entry(
        "Rules",
        "beside it, of other hooks, no rating of this one: D² short tons, %s; 2/3 of that, %s; old"
            + " crane hooks up to %s were of %s round",
        rule(HandbookLoad.HOOK_FIELD),
        rule(HandbookLoad.HOOK_TWO_THIRDS),
        towne.capacity(),
        towne.stock());
  }

  private String down(Measure<Force> force) {
    return LoadText.down(force.to(load.getUnit()));
  }

  private String rule(HandbookLoad rule) {
    return down(LoadText.weightOf(rule.load(hook.section().depth())));
  }

  List<Working> workings() {
    return List.of(
        weaker().safeWorking(permissible),
        weaker().firstYieldWorking(permissible.strength()),
        weaker().plasticWorking(permissible.strength()),
        HandbookLoad.HOOK_FIELD.working(hook.section().depth()),
        HandbookLoad.HOOK_TWO_THIRDS.working(hook.section().depth()),
        towne.working(HookProportions.Size.D));
  }
}
