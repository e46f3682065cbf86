package org.hammerscale.examples.carry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.CountersunkHoles;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodSpacing;
import org.hammerscale.holding.ScrewChoice;
import org.hammerscale.holding.ScrewSeries;
import org.hammerscale.holding.StrapScrews;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * The screws of a bracket, one above another in upright wood: where, and what the top one holds.
 */
record WallScrews(
    Screw screw,
    Bracket bracket,
    Optional<SignWind> wind,
    Countersink countersink,
    Wood wood,
    StrapScrews hold) {
  /**
   * Uses grow with the load, so that so small a part of it tells them where all of it is refused.
   */
  private static final double PART = 1e-6;

  /**
   * Screws in a plate.
   *
   * @throws IllegalArgumentException if they do not find room, or do not hold in so thick a wall
   */
  static WallScrews of(
      Screw screw,
      Bracket bracket,
      Optional<SignWind> wind,
      Bar bar,
      Measure<Length> straight,
      Wood wood,
      Measure<Length> wall,
      int safety) {
    requireRoom(screw, bracket, bar, straight);
    Piece plate = Piece.of(bar, Plain.of(bar.section(), straight));
    Countersink sunk = CountersunkHoles.of(screw.head(), plate).at(straight.divide(2));
    StrapScrews hold =
        StrapScrews.through(bar.section().thickness())
            .into(wall, wood)
            .withSafety(safety)
            .atMost(1);
    WallScrews screws = new WallScrews(screw, bracket, wind, sunk, wood, hold);
    screws.under(PART);
    return screws;
  }

  /** The hole for the thread, which is pulled. */
  PilotHole pilot() {
    return PilotHole.pulledOut(screw.shank(), wood);
  }

  /** The top screw under a part of the load. */
  private ScrewChoice under(double part) {
    return hold.pulledOff(worstPull().add(windPull()).multiply(part))
        .pushedAcross(across().multiply(part))
        .bestOf(ScrewSeries.of("ordered", List.of(screw.shank()), List.of(screw.length())));
  }

  /** The top screw under a load that it may carry. */
  ScrewChoice top() {
    return under(1);
  }

  private static void requireRoom(Screw screw, Bracket bracket, Bar bar, Measure<Length> straight) {
    Measure<Length> head = screw.head().headDiameter();
    if (head.isGreaterThan(bar.section().width())) {
      throw new IllegalArgumentException(
          "screw must have a head no wider than the bar, "
              + bar.section().width()
              + ", was "
              + head
              + "; take a thinner screw or a wider bar");
    }
    // Upright wood: the load runs along its grain. Holes are drilled first.
    Measure<Length> least =
        WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, screw.shank().diameter())
            .pulledAt(Measures.degrees(0))
            .steelToTimber()
            .alongGrain();
    Measure<Length> before = null;
    for (Measure<Length> height : sorted(bracket)) {
      if (height.isLessThan(head) || height.isGreaterThan(straight.subtract(head))) {
        throw new IllegalArgumentException(
            "height of each screw must be "
                + head
                + " to "
                + straight.subtract(head)
                + ", a head from the foot and from the bend, was "
                + height
                + "; move it");
      }
      if (before != null && height.subtract(before).isLessThan(least)) {
        throw new IllegalArgumentException(
            "height of each screw must be "
                + least
                + " from the next, was "
                + height.subtract(before)
                + "; move it or take fewer");
      }
      before = height;
    }
  }

  private static List<Measure<Length>> sorted(Bracket bracket) {
    List<Measure<Length>> heights = new ArrayList<>(bracket.heights());
    heights.sort(Comparator.comparingDouble(each -> each.in(bracket.distance().getUnit())));
    return heights;
  }

  /** The top one, by its number in the bracket. */
  int highest() {
    return bracket.heights().indexOf(sorted(bracket).get(bracket.heights().size() - 1)) + 1;
  }

  /** The bracket as a thin plate or a soft wall has it, its top screw pulled most. */
  Bracket worst() {
    return bracket.heights().size() > 1 ? bracket.turningOnLowest() : bracket;
  }

  /** The pull on the top screw if the plate is stiff. */
  Measure<Force> pull() {
    return bracket.pull(highest());
  }

  /** The pull on the top screw at worst. */
  Measure<Force> worstPull() {
    return worst().pull(highest());
  }

  /** The pull of the wind on each screw. */
  Measure<Force> windPull() {
    Measure<Force> none = bracket.load().withValue(0);
    return wind.map(it -> none.add(it.sideways().pull(1))).orElse(none);
  }

  /** What each bears across itself: weight down, and wind along the wall. */
  private Measure<Force> across() {
    Measure<Force> down = bracket.shear();
    double aside = wind.map(it -> it.sideways().shear().in(down.getUnit())).orElse(0.0);
    return down.withValue(Math.hypot(down.getValue(), aside));
  }

  /** How much of what the top screw may bear is used up; more than one is too much. */
  double use() {
    ScrewChoice top = under(PART);
    return top.use(top.governing()) / PART;
  }

  /** The load under which the top screw is used up, the wind growing with it. */
  Measure<Force> mayCarry() {
    return bracket.load().divide(use());
  }

  /** Their heights from the foot, the lowest first. */
  String places(Function<Measure<Length>, String> told) {
    return sorted(bracket).stream().map(told).collect(Collectors.joining(", "));
  }
}
