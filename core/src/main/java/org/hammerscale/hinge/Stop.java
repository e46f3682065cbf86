package org.hammerscale.hinge;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/** What can end a swing: one part of a leaf against one of the other. */
interface Stop {
  /** What meets what. */
  Contact contact();

  /** The angle past flat, in degrees, at which it ends. */
  double angle(Notes n);

  /** Notes an angle found in radians as degrees, with its formula for degrees. */
  static double inDegrees(Notes n, String formula, double radians) {
    return n.value("θ", "opening past flat", formula, radians * 180 / Math.PI, ShopUnits.DEGREE);
  }
}
