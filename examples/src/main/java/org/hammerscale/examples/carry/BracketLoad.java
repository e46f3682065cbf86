package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.holding.ScrewChoice;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.strength.AngleBracket;
import org.hammerscale.strength.BracketArm;
import org.hammerscale.strength.PermissibleStress;
import org.hammerscale.strength.StayedArm;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Working;

/** What a bracket of a bar may carry: by its arm, its brace if there is one, and its screws. */
record BracketLoad(
    Bar bar,
    Measure<Force> load,
    Measure<Length> out,
    int safety,
    Optional<AngleBracket.Brace> brace) {
  private PermissibleStress permissible() {
    return PermissibleStress.of(Material.MILD_STEEL, safety);
  }

  /** A cantilever that is bent as the arm is. */
  private Optional<BracketArm> arm() {
    Measure<Length> lever = stayed().map(StayedArm::bendingLever).orElse(out);
    return lever.getValue() > 0
        ? Optional.of(BracketArm.of(bar.section(), lever))
        : Optional.empty();
  }

  private Optional<StayedArm> stayed() {
    return brace.map(it -> StayedArm.carrying(load, out).heldAt(it.out(), it.angleToArm()));
  }

  /** The load under which arm and brace begin to yield, by the safety. */
  Measure<Force> ofIron() {
    double most = Math.max(bent() + pulled(), pushed());
    return load.multiply(permissible().tension().in(ShopUnits.MEGAPASCAL) / most);
  }

  /** The stress of the arm from bending, in megapascals as those below. */
  private double bent() {
    return arm().map(it -> it.stress(load).in(ShopUnits.MEGAPASCAL)).orElse(0.0);
  }

  /** The stress of the arm along itself. */
  private double pulled() {
    return stayed().map(it -> along(it.thrust())).orElse(0.0);
  }

  /** The stress of the brace along itself. */
  private double pushed() {
    return stayed().map(it -> along(it.stay())).orElse(0.0);
  }

  /** The stress of a force along the bar. */
  private double along(Measure<Force> force) {
    double area = bar.section().area().in(ShopUnits.SQUARE_METRE) * 1e6;
    return force.in(ShopUnits.NEWTON) / area;
  }

  /**
   * Refuses a load that is too much.
   *
   * @throws IllegalArgumentException if it is
   */
  void require(WallScrews screws) {
    boolean iron = ofIron().isLessThan(screws.mayCarry());
    Measure<Force> most = iron ? ofIron() : screws.mayCarry();
    if (load.isGreaterThan(most)) {
      throw new IllegalArgumentException(
          "load must be at most the "
              + LoadText.down(most)
              + " that "
              + (iron ? "its bar" : "its top screw")
              + " may carry, was "
              + LoadText.of(load)
              + (iron
                  ? "; take a thicker bar, or brace it nearer the load"
                  : "; take longer or thicker screws, or a longer plate"));
    }
  }

  void write(SheetText sheet, WallScrews screws, Function<Measure<Length>, String> told) {
    sheet.entry("Carries", "%s asked, %s from the wall", LoadText.of(load), told.apply(out));
    sheet.entry("", "at most %s by the bar, first yield ÷ %d", LoadText.down(ofIron()), safety);
    sheet.entry(
        "",
        "at most %s by the top screw, pulled by %s, by %s if the plate gives",
        LoadText.down(screws.mayCarry()),
        LoadText.up(screws.pull()),
        LoadText.up(screws.worstPull()));
    stayed()
        .ifPresent(
            it ->
                sheet.entry(
                    "",
                    "the brace is pushed by %s; whether it buckles, and what its joints hold, is not"
                        + " reckoned",
                    LoadText.up(it.stay())));
  }

  /** Tells how the stresses of a braced bracket come together, which no working does. */
  void more(SheetText sheet) {
    stayed()
        .ifPresent(
            it ->
                sheet.entry(
                    "Stress",
                    "arm %.1f MPa of bending, as an arm of %s, and %.1f MPa of pull along it; brace %.1f"
                        + " MPa of push",
                    bent(),
                    it.bendingLever(),
                    pulled(),
                    pushed()));
  }

  List<Working> workings(WallScrews screws) {
    List<Working> all = new ArrayList<>();
    all.add(permissible().working());
    arm().ifPresent(it -> all.add(it.stressWorking(load)));
    if (brace.isEmpty()) {
      all.add(BracketArm.of(bar.section(), out).sagWorking(load));
    }
    stayed()
        .ifPresent(it -> all.addAll(List.of(it.leverWorking(), it.working(), it.thrustWorking())));
    all.add(screws.bracket().working(screws.highest()));
    all.add(screws.worst().working(screws.highest()));
    ScrewChoice top = screws.top();
    all.add(top.working(top.governing()));
    all.add(screws.countersink().working());
    all.add(screws.pilot().threadHoleWorking());
    return all;
  }
}
