package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hammerscale.examples.order.Reasons;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.HeatColour;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/** The back of a hinge's sheet: each estimate, each working once, every caution. */
final class BackSheet {
  private final SheetText sheet;
  private final HingeOrder order;
  private final HingePair pair;
  private final Reasons reasons;
  private final Set<Estimate<?>> windows = new HashSet<>();

  BackSheet(SheetText sheet, HingeOrder order) {
    this.sheet = sheet;
    this.order = order;
    this.pair = order.pair();
    this.reasons = new Reasons(sheet, order.isInches());
  }

  void write() {
    estimates();
    workings();
    String colours =
        HeatColour.at(order.contraction().heat()).stream()
            .map(colour -> colour.name() + " [" + reasons.number(colour.source()) + "]")
            .collect(Collectors.joining(", "));
    sheet.wrapped(
        "",
        2,
        Reasons.ONCE
            + " Tapers: "
            + order.taperWork()
            + ", a hand's breadth at a time. Weights: "
            + pair.strap().material()
            + ". "
            + order.contraction().heat()
            + " is "
            + colours
            + " in published tables.");
    reasons.sources();
    reasons.cautions(cautions(), order.cautions());
  }

  private void estimates() {
    reasons.estimates(order.name());
    for (Leaf leaf : HingeOrder.LEAVES) {
      Working working = order.leaf(leaf).bar().layout().working();
      String called = HingeOrder.called(leaf);
      reasons.estimate(
          "bar used by the " + called, order.leaf(leaf).bar().layout().cutLength(), working);
      reasons.estimate(
          "of it, scale takes", order.leaf(leaf).bar().layout().scaleAllowance(), working);
      order.leaf(leaf).taperHeats().ifPresent(heats -> heats("taper of the " + called, heats));
    }
    heats("barrel", order.barrelHeats());
    reasons.estimate(
        "bore left by the drift",
        order.drift().boreLeftByEye(order.driftChoice().size()),
        order.drift().boreWorking(order.driftChoice().size()));
    reasons.estimate(
        "barrel left by the swage",
        order.swage().outsideLeftByEye(order.swageChoice().size()),
        order.swage().outsideWorking(order.swageChoice().size()));
    reasons.estimate(
        "pin to cut", order.pinLength(), order.pin().lengthWorking(pair.knuckles().width()));
  }

  private void heats(String part, Heats heats) {
    reasons.estimate("heats, " + part, heats.count(), heats.working());
    if (windows.add(heats.cooling().window())) {
      reasons.estimate("window in each", heats.cooling().window(), heats.cooling().windowWorking());
    }
  }

  private void workings() {
    reasons.working(pair.bore().working());
    reasons.working(pair.barrel().working());
    reasons.working(pair.swing().openingWorking());
    // The rule is the same for both leaves: it is told of the first that is tapered.
    HingeOrder.LEAVES.stream()
        .flatMap(leaf -> pair.leaf(leaf).features().stream())
        .filter(Taper.class::isInstance)
        .findFirst()
        .ifPresent(taper -> reasons.working(taper.working()));
    for (Leaf leaf : HingeOrder.LEAVES) {
      reasons.working(order.leaf(leaf).bar().layout().working());
    }
    reasons.working(order.drift().working());
    reasons.working(order.swage().working());
    reasons.working(order.barrelHeats().working());
    HingeOrder.LEAVES.forEach(
        leaf -> order.leaf(leaf).taperHeats().ifPresent(heats -> reasons.working(heats.working())));
    reasons.working(order.leaf(Leaf.SECOND).holes().thinnest().working());
    reasons.working(order.leaf(Leaf.SECOND).holes().pilot().threadHoleWorking());
  }

  private List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(pair.cautions());
    for (Leaf leaf : HingeOrder.LEAVES) {
      cautions.addAll(order.leaf(leaf).bar().layout().cautions());
      cautions.addAll(order.leaf(leaf).bar().cautions());
      cautions.addAll(order.leaf(leaf).holes().cautions());
      order.leaf(leaf).taperHeats().ifPresent(heats -> cautions.addAll(heats.cautions()));
    }
    cautions.addAll(order.barrelHeats().cautions());
    return cautions;
  }
}
