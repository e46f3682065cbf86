package org.hammerscale.examples.latch;

import javax.measure.quantity.Length;
import org.hammerscale.examples.order.Screw;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.CountersunkHoles;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodSpacing;
import org.hammerscale.piece.Piece;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** The screws in a foot of a handle: where they go, what to drill. */
record FootScrews(Screw screw, HoleLayout layout, Countersink countersink, PilotHole pilot) {
  /**
   * So many in a foot.
   *
   * @throws IllegalArgumentException if they do not find room
   */
  static FootScrews of(
      Screw screw,
      int count,
      Bar handle,
      Measure<Length> foot,
      Wood wood,
      Graduation<Length> rule) {
    // The handle stands along the grain of upright boards; holes are drilled first.
    WoodSpacing spacing =
        WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, screw.shank().diameter())
            .pulledAt(Measures.degrees(0))
            .steelToTimber();
    Measure<Length> edge = screw.head().headDiameter();
    HoleLayout layout =
        HoleRow.along(foot)
            .holes(count)
            .startingFrom(edge)
            .endingBefore(edge)
            .leastSpacing(spacing.alongGrain())
            .nearestToEven()
            .layout()
            .on(rule);
    Piece iron = Piece.of(handle, Plain.of(handle.section(), foot));
    Countersink sunk = CountersunkHoles.of(screw.head(), iron).at(foot.divide(2));
    return new FootScrews(screw, layout, sunk, PilotHole.acrossLoad(screw.shank(), wood));
  }
}
