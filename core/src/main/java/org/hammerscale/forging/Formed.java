package org.hammerscale.forging;

import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/** A solid whose sides are not straight from its widest section to its end, with its own look. */
record Formed(Solid metal, BiFunction<Silhouette, Measure<Length>, Silhouette> look)
    implements Solid {
  private static final int STEPS = 48;

  /** One that is round throughout, its radius by the height, both in the unit of its height. */
  static Solid round(Solid metal, Measure<Length> height, DoubleUnaryOperator radius) {
    return new Formed(metal, (before, at) -> turned(before, at, height, radius));
  }

  private static Silhouette turned(
      Silhouette before, Measure<Length> at, Measure<Length> height, DoubleUnaryOperator radius) {
    Silhouette look = before;
    double high = height.getValue();
    for (int i = 0; i <= STEPS; i++) {
      double z = high * (1 - Math.cos(Math.PI * i / STEPS)) / 2; // closer where a ball is steep
      double half = radius.applyAsDouble(z);
      Section section =
          half > 1e-9 * high
              ? Section.round(height.withValue(2 * half))
              : Section.round(height).point();
      look = look.to(at.add(height.withValue(z)), section);
    }
    return look;
  }

  @Override
  public double volume(Notes n, Unit<Length> unit) {
    return metal.volume(n, unit);
  }

  @Override
  public Silhouette led(
      Silhouette before, Measure<Length> at, Section widest, Section end, Measure<Length> height) {
    return look.apply(before, at);
  }
}
