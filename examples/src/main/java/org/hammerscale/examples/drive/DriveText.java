package org.hammerscale.examples.drive;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.LoadText;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.WoodSpacing;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** What the fronts of all that is driven say alike. */
final class DriveText {
  private DriveText() {}

  /** What one may count on, told apart from the load at which it comes out. */
  static void holds(
      SheetText sheet, Measure<Force> reference, String by, Estimate<Force> ultimate) {
    Unit<Force> unit = reference.getUnit();
    sheet.entry(
        "Holds",
        "%s %s: the reference value, before the code's adjustments",
        LoadText.down(reference),
        by);
    sheet.entry("", "%s", comesOut(ultimate, unit));
  }

  /** The load of tests, which is no working load. */
  static String comesOut(Estimate<Force> ultimate, Unit<Force> unit) {
    return "comes out at about "
        + LoadText.down(ultimate.likely().to(unit))
        + " ("
        + LoadText.down(ultimate.low().to(unit))
        + " to "
        + LoadText.up(ultimate.high().to(unit))
        + "): no working load";
  }

  /** The hole for it, and how far the drill at hand is from what the rule allows. */
  static void bore(SheetText sheet, Measure<Length> drill, String how, Measure<Length> most) {
    sheet.entry("Bore", "%s, %s (the rule allows up to %s)", drill, how, most);
  }

  /**
   * How far to stay from where it would split the timber: of prebored nails, from the edge of
   * bolts, which stay farther from it.
   */
  static void keep(
      SheetText sheet, Measure<Length> diameter, Function<Measure<Length>, String> up) {
    sheet.entry(
        "Keep",
        "%s from the timber's end and from the next one along the grain, %s from its edge",
        up.apply(nails(diameter).loadedEnd()),
        up.apply(bolts(diameter).loadedEdge()));
  }

  /** How those distances were found. */
  static List<Working> keepWorkings(Measure<Length> diameter) {
    return List.of(nails(diameter).loadedEndWorking(), bolts(diameter).loadedEdgeWorking());
  }

  private static WoodSpacing nails(Measure<Length> diameter) {
    return WoodSpacing.by(SpacingRule.WOOD_MEMBER_PREBORED, diameter);
  }

  private static WoodSpacing bolts(Measure<Length> diameter) {
    return WoodSpacing.by(SpacingRule.BOLT_IN_SOFTWOOD, diameter);
  }

  /** What is asked of it. */
  static void asked(SheetText sheet, Measure<Force> load, String how) {
    sheet.entry("Pull", "%s asked %s", LoadText.of(load), how);
  }

  /**
   * Refuses to hold more than one may count on.
   *
   * @throws IllegalArgumentException if more is asked
   */
  static void require(Measure<Force> load, Measure<Force> reference, String who) {
    if (load.isGreaterThan(reference)) {
      throw new IllegalArgumentException(
          "load must be at most the "
              + LoadText.down(reference.to(load.getUnit()))
              + " that one may count on of "
              + who
              + ", was "
              + LoadText.of(load)
              + "; drive it deeper, take a thicker bar or more of them");
    }
  }

  /**
   * Refuses so short a hold that no rule counts it.
   *
   * @throws IllegalArgumentException if less than six diameters of full shank are in the wood
   */
  static void requireDepth(
      Measure<Length> diameter, Measure<Length> holding, Measure<Length> depth) {
    Measure<Length> least = diameter.multiply(6);
    if (holding.isLessThan(least)) {
      throw new IllegalArgumentException(
          "depth must be at least "
              + least.add(depth.subtract(holding)).to(depth.getUnit())
              + " with the point, for six diameters of full shank in the wood, was "
              + depth
              + "; drive it deeper, take a thinner bar, or clench it");
    }
  }

  /**
   * Refuses what would come out behind.
   *
   * @throws IllegalArgumentException if it is deeper than its timber is thick
   */
  static void requireWithin(Measure<Length> timber, Measure<Length> depth) {
    if (depth.isGreaterThan(timber)) {
      throw new IllegalArgumentException(
          "depth must be at most the timber of "
              + timber
              + ", was "
              + depth
              + "; drive it less deep, or write clenched");
    }
  }

  /** The first danger of each, then all of them. */
  @SafeVarargs
  static List<Caution> dangersFirst(List<Caution>... all) {
    Set<Caution> first = new LinkedHashSet<>();
    for (List<Caution> cautions : all) {
      cautions.stream().filter(Caution::isDanger).findFirst().ifPresent(first::add);
    }
    for (List<Caution> cautions : all) {
      first.addAll(cautions);
    }
    return new ArrayList<>(first);
  }
}
