package org.hammerscale.forging;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** Flats that may have come out thicker than wide. */
final class Flats {
  private Flats() {}

  static Section of(Measure<Length> width, Measure<Length> thickness) {
    return width.isLessThan(thickness)
        ? Section.onEdge(width, thickness)
        : Section.flat(width, thickness);
  }
}
