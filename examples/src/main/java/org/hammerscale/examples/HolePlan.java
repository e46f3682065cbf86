package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Countersink;
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
  private final Screw screw;
  private final Countersink countersink;
  private final PilotHole pilot;
  private final List<Caution> cautions;

  private HolePlan(
      HoleLayout layout,
      Screw screw,
      Countersink countersink,
      PilotHole pilot,
      List<Caution> cautions) {
    this.layout = layout;
    this.screw = screw;
    this.countersink = countersink;
    this.pilot = pilot;
    this.cautions = cautions;
  }

  /**
   * The holes of a leaf of a pair.
   *
   * @throws IllegalArgumentException if so many do not find room
   */
  static HolePlan of(OrderColumn job, HingePair pair, Leaf leaf) {
    Screw screw = job.screw();
    Wood wood = job.wood();
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
              .wide(job.lengthOrZero(OrderItem.SEAM_WIDTH))
              .clear(clear.pulledTowards()));
    }
    Measure<Length> edge = screw.head().headDiameter();
    HoleLayout layout =
        HoleRow.along(pair.lengthFromPin(leaf))
            .holes(job.count(holesOf(leaf)))
            .startingFrom(pair.notchDepth().add(edge))
            .endingBefore(edge)
            .leastSpacing(spacing.acrossGrain())
            .missing(seams.toArray(new ClosedStretch[0]))
            .nearestToEven()
            .layout()
            .on(job.graduation());
    Countersink countersink = screw.head().countersinkIn(pair.barrel().section().thickness());
    PilotHole pilot = PilotHole.acrossLoad(screw.shank(), wood);
    List<Caution> cautions = new ArrayList<>(countersink.cautions());
    cautions.addAll(layout.cautions());
    cautions.addAll(wood.cautions());
    return new HolePlan(layout, screw, countersink, pilot, List.copyOf(cautions));
  }

  private static OrderItem seamsOf(Leaf leaf) {
    return leaf == Leaf.FIRST ? OrderItem.POST_SEAMS : OrderItem.DOOR_SEAMS;
  }

  private static OrderItem holesOf(Leaf leaf) {
    return leaf == Leaf.FIRST ? OrderItem.POST_HOLES : OrderItem.DOOR_HOLES;
  }

  HoleLayout layout() {
    return layout;
  }

  Screw screw() {
    return screw;
  }

  Countersink countersink() {
    return countersink;
  }

  PilotHole pilot() {
    return pilot;
  }

  List<Caution> cautions() {
    return cautions;
  }
}
