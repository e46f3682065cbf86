package org.hammerscale.latch;

import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/** Whether a slide bolt reaches its keeper and its handle finds room; what does not is refused. */
final class BoltFit {
  private BoltFit() {}

  /** Checks it, with its least engagement and the distance of its staples on the rule. */
  static void check(SlideBoltBuilder asked, Measure<Length> engagement, Measure<Length> apart) {
    reach(asked, engagement);
    handle(asked, apart);
  }

  private static void reach(SlideBoltBuilder asked, Measure<Length> engagement) {
    if (!(engagement.getValue() > 0)) {
      throw new IllegalArgumentException(
          "travel must be more than "
              + asked.gap.add(asked.setBack).add(asked.shrinkage)
              + " to reach into the keeper, was "
              + asked.travel
              + "; throw the bolt farther, or set it back less");
    }
  }

  private static void handle(SlideBoltBuilder asked, Measure<Length> apart) {
    Measure<Length> width = asked.bar.section().width().to(asked.unit);
    Measure<Length> thickness = asked.bar.section().thickness().to(asked.unit);
    Measure<Length> wires = asked.staples.section().width().to(asked.unit).multiply(2);
    if (asked.tail) {
      Arguments.atLeast(
          "standing",
          asked.handleHeight,
          "the tail's own bend",
          thickness.multiply(1.5),
          "let the tail stand higher");
      Arguments.atLeast("apart", apart, "both staples", wires, "set them farther apart");
      return;
    }
    Measure<Length> run = apart.subtract(wires);
    Measure<Length> needed = asked.travel.add(asked.knob);
    if (run.isLessThan(needed) && !run.isEquivalentTo(needed)) {
      throw new IllegalArgumentException(
          "apart must be at least "
              + needed.add(wires)
              + " for the knob to travel between the staples, was "
              + apart
              + "; set the staples farther apart, or turn up a tail");
    }
    Arguments.atMost(
        "diameter", asked.knob, "half the bolt's width", width.divide(2), "take a thinner knob");
    Arguments.atLeast(
        "standing",
        asked.handleHeight,
        "half the bolt's thickness",
        thickness.divide(2),
        "let the knob stand above the bolt");
  }
}
