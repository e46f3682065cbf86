package org.hammerscale.fastening;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
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

  /**
   * The thread of one so long, with its tip: two thirds of it, of a nail all of it, unless its own
   * series says otherwise.
   *
   * @param length under the head or over all, more than zero
   * @return the length of thread, in the length's unit; a rule, so measure the screw in hand
   * @throws IllegalArgumentException if the length is not more than zero
   */
  default Measure<Length> threadLength(Quantity<Length> length) {
    Measure<Length> whole = Arguments.positive("length", length);
    return kind() == Kind.NAIL ? whole : whole.multiply(2).divide(3);
  }

  /** {@return the length of its tip that is not counted on to hold; zero but of a lag screw} */
  default Measure<Length> tip() {
    return diameter().withValue(0);
  }
}
