package org.hammerscale.examples.order;

import javax.measure.quantity.Length;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Wood;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/** What is drilled in the wood for a screw that is pulled, and bears across besides. */
public final class PilotText {
  private PilotText() {}

  /** Both holes as the nearest drill has them. */
  public static String of(Screw screw, Wood wood, Graduation<Length> drills) {
    Measure<Length> thread = drills.nearest(PilotHole.pulledOut(screw.shank(), wood).threadHole());
    return (thread.getValue() > 0 ? thread + " for the thread" : "nothing for the thread")
        + ", "
        + drills.nearest(PilotHole.acrossLoad(screw.shank(), wood).shankHole())
        + " for the shank";
  }
}
