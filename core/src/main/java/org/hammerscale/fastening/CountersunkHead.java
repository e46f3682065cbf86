package org.hammerscale.fastening;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * A flat head with a conical underside, as far as the iron feels it. A caller's own screw, measured
 * with a calliper, can be one.
 */
public interface CountersunkHead {
  /** {@return the diameter D of the shank below the head, where the cone ends} */
  Measure<Length> diameter();

  /** {@return the diameter A that the head has with a sharp edge, the most that it can be} */
  Measure<Length> headDiameter();

  /** {@return the included angle of the cone} */
  Measure<Angle> headAngle();

  /** {@return the hole through the iron that lets the shank pass} */
  Measure<Length> clearanceHole();

  /**
   * The countersink that this head wants in a plate.
   *
   * @param plate the thickness of the iron where it sits, more than zero
   * @return the countersink, with lengths in the plate's unit
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  default Countersink countersinkIn(Quantity<Length> plate) {
    return Countersink.under(this, plate);
  }
}
