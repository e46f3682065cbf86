package org.hammerscale.fastening;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/** Any fastener, by its sizes alone. */
public record Fastener(Kind kind, Measure<Length> diameter, Measure<Length> rootDiameter)
    implements WoodFastener {
  /** A fastener whose root does not matter. */
  public static Fastener of(Kind kind, Measure<Length> diameter) {
    return new Fastener(kind, diameter, diameter.multiply(2 / 3d));
  }
}
