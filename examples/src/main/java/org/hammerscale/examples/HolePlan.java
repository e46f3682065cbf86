package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.OrderItem;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.CountersunkHoles;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.SeamClearance;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodSpacing;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;

/** The screw holes of one leaf: where they go over the boards, and what to drill. */
final class HolePlan {
  private final HoleLayout layout;
  private final boolean isClearOfSeams;
  private final Screw screw;
  private final List<Countersink> countersinks;
  private final PilotHole pilot;
  private final List<Caution> cautions;

  private HolePlan(
      HoleLayout layout,
      boolean isClearOfSeams,
      Screw screw,
      List<Countersink> countersinks,
      PilotHole pilot,
      List<Caution> cautions) {
    this.layout = layout;
    this.isClearOfSeams = isClearOfSeams;
    this.screw = screw;
    this.countersinks = countersinks;
    this.pilot = pilot;
    this.cautions = cautions;
  }

  /**
   * The holes of a leaf of a pair.
   *
   * @throws IllegalArgumentException if so many do not find room
   */
  static HolePlan of(OrderColumn job, HingePair pair, Leaf leaf) {
    Screw screw = job.as(Screw.class, SetItem.SCREW);
    Wood wood = job.as(Wood.class, SetItem.WOOD);
    // The strap lies across upright boards and pulls across their grain; holes are drilled first.
    WoodSpacing spacing =
        WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, screw.shank().diameter())
            .pulledAt(Measures.degrees(90))
            .steelToTimber();
    SeamClearance clear = SeamClearance.around(screw.head().headDiameter(), spacing);
    List<ClosedStretch> seams = new ArrayList<>();
    for (Measure<Length> seam : job.lengths(seamsOf(leaf))) {
      seams.add(
          ClosedStretch.seamAt(seam)
              .wide(job.length(HingeItem.SEAM_WIDTH))
              .clear(clear.pulledTowards()));
    }
    // Holes are told from the pin, the iron's thickness from where the leaf leaves the barrel.
    Measure<Length> leafStart = pair.barrel().leafStart();
    Measure<Length> length = pair.lengthFromPin(leaf);
    CountersunkHoles heads = CountersunkHoles.of(screw.head(), pair.leaf(leaf));
    Measure<Length> edge = screw.head().headDiameter();
    Measure<Length> wanted = length.subtract(edge).subtract(leafStart);
    Measure<Length> last = heads.nearestTo(wanted).orElseGet(() -> heads.at(wanted).plate());
    HoleLayout layout =
        HoleRow.along(length)
            .holes(job.count(holesOf(leaf)))
            .startingFrom(pair.notchDepth().add(edge))
            .endingBefore(length.subtract(leafStart).subtract(last))
            .leastSpacing(spacing.acrossGrain())
            .missing(seams.toArray(new ClosedStretch[0]))
            .nearestToEven()
            .layout()
            .on(job.graduation());
    List<Countersink> sunk =
        layout.positions().stream().map(hole -> heads.at(hole.subtract(leafStart))).toList();
    List<Caution> cautions = new ArrayList<>(layout.cautions());
    cautions.addAll(wood.cautions());
    return new HolePlan(
        layout,
        !seams.isEmpty() && layout.largestMove().isGreaterThan(job.graduation().step()),
        screw,
        sunk,
        PilotHole.acrossLoad(screw.shank(), wood),
        List.copyOf(cautions));
  }

  private static OrderItem seamsOf(Leaf leaf) {
    return leaf == Leaf.FIRST ? HingeItem.POST_SEAMS : HingeItem.DOOR_SEAMS;
  }

  static OrderItem holesOf(Leaf leaf) {
    return leaf == Leaf.FIRST ? HingeItem.POST_HOLES : HingeItem.DOOR_HOLES;
  }

  HoleLayout layout() {
    return layout;
  }

  /** Whether joints of the boards have pushed holes from an even row. */
  boolean isClearOfSeams() {
    return isClearOfSeams;
  }

  Screw screw() {
    return screw;
  }

  /** One for each hole, in the iron that lies there. */
  List<Countersink> countersinks() {
    return countersinks;
  }

  /** The one that leaves the least iron. */
  Countersink thinnest() {
    return countersinks.stream().min(Comparator.comparing(Countersink::land)).orElseThrow();
  }

  PilotHole pilot() {
    return pilot;
  }

  List<Caution> cautions() {
    return cautions;
  }
}
