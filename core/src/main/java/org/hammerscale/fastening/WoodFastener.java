package org.hammerscale.fastening;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * What holds iron to wood: a screw, a lag screw (coach screw) or a nail, as far as the wood feels
 * it.
 */
public interface WoodFastener {
  /** How it grips. */
  enum Kind {
    /** A tapered or parallel wood screw. */
    WOOD_SCREW,
    /** A lag screw, also coach screw. */
    LAG_SCREW,
    /** A smooth nail. */
    NAIL
  }

  /** {@return how it grips} */
  Kind kind();

  /** {@return the nominal diameter D: that of the plain shank} */
  Measure<Length> diameter();

  /** {@return the diameter at the root of the thread; of a nail its diameter} */
  Measure<Length> rootDiameter();
}
