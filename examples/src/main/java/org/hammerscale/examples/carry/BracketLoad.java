package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
    Optional<AngleBracket.Brace> brace,
    Optional<SignWind> wind) {
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

  /** The load under which arm and brace begin to yield, by the safety, the wind growing with it. */
  Measure<Force> ofIron() {
    return load.divide(use());
  }

  /** How much of what arm and brace may bear is used up; more than one is too much. */
  private double use() {
    double most = Math.max(bent() + pulled() + aside(), pushed());
    return most / permissible().tension().in(ShopUnits.MEGAPASCAL);
  }

  /** The stress of the arm from the wind. */
  private double aside() {
    return wind.map(it -> it.arm().stress(it.force()).in(ShopUnits.MEGAPASCAL)).orElse(0.0);
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
              + " may carry"
              + (wind.isPresent() ? " with the wind in proportion" : "")
              + ", was "
              + LoadText.of(load)
              + (iron
                  ? "; take a thicker bar, or brace it nearer the load"
                  : "; take longer or thicker screws, or a longer plate"));
    }
  }

  void write(SheetText sheet, WallScrews screws, Function<Measure<Length>, String> told) {
    sheet.entry("Carries", "%s asked, %s from the wall", LoadText.of(load), told.apply(out));
    String bar = "first yield ÷ " + safety;
    if (wind.isEmpty()) {
      sheet.entry("", "at most %s by the bar, %s", LoadText.down(ofIron()), bar);
      sheet.entry(
          "", "at most %s by the top screw, %s", LoadText.down(screws.mayCarry()), pull(screws));
    }
    wind.ifPresent(
        it -> {
          sheet.entry("", "its top screw %s", pull(screws));
          it.write(sheet, told);
          sheet.entry("", "it pulls each screw by %s more", LoadText.up(screws.windPull()));
          sheet.entry(
              "Used",
              "by weight and wind together %s of the bar, %s, and %s of the top screw",
              percent(use()),
              bar,
              percent(screws.use()));
        });
    stayed()
        .ifPresent(
            it ->
                sheet.entry(
                    "",
                    "the brace is pushed by %s; whether it buckles, and what its joints hold, is not"
                        + " reckoned",
                    LoadText.up(it.stay())));
  }

  private static String pull(WallScrews screws) {
    return "pulled by "
        + LoadText.up(screws.pull())
        + ", by "
        + LoadText.up(screws.worstPull())
        + " if the plate gives";
  }

  private static String percent(double use) {
    return (int) Math.ceil(100 * use) + " %";
  }

  /** Tells how the stresses of an arm come together, which no working does. */
  void more(SheetText sheet) {
    if (brace.isEmpty() && wind.isEmpty()) {
      return;
    }
    StringBuilder text = new StringBuilder(stress("arm %.1f MPa of bending", bent()));
    stayed()
        .ifPresent(
            it ->
                text.append(", as an arm of ")
                    .append(it.bendingLever())
                    .append(stress(", %.1f MPa of pull along it", pulled())));
    if (wind.isPresent()) {
      text.append(stress(", %.1f MPa sideways by the wind", aside()));
    }
    if (brace.isPresent()) {
      text.append(stress("; brace %.1f MPa of push", pushed()));
    }
    sheet.entry("Stress", "%s", text);
  }

  private static String stress(String format, double megapascals) {
    return String.format(Locale.ROOT, format, megapascals);
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
    wind.ifPresent(
        it -> {
          all.add(it.arm().stressWorking(it.force()));
          all.add(it.sideways().working(1));
        });
    ScrewChoice top = screws.top();
    all.add(top.working(top.governing()));
    all.add(screws.countersink().working());
    all.add(screws.pilot().threadHoleWorking());
    return all;
  }
}
