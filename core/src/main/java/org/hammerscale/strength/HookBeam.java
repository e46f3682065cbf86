package org.hammerscale.strength;

import java.util.Objects;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Pin;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;

/** The calculations of {@link HingeHook}: its pin and its shank as cantilevers. */
record HookBeam(
    Pin pin,
    Measure<Length> barrelWidth,
    Section shank,
    Measure<Length> projection,
    Measure<Length> lift) {

  HookBeam {
    Objects.requireNonNull(pin, "pin");
  }

  HookBeam lifted(Measure<Length> stack) {
    return new HookBeam(pin, barrelWidth, shank, projection, stack);
  }

  /** Whether the section modulus of a shank is known here. */
  static boolean knows(Section shank) {
    return shank.isRound()
        || (!shank.isTube()
            && shank.area().isEquivalentTo(Measures.area(shank.width(), shank.thickness())));
  }

  double pinBending(Notes n, StressUnits units, Measure<Force> force) {
    double f = units.givenForce(n, "level force", force);
    double w = units.given(n, "w", "width of the barrel", barrelWidth);
    double g = units.given(n, "g", "washers under it", lift);
    double d = units.given(n, "d", "diameter of the pin", pin.diameter());
    double m = units.moment(n, "M", "bending moment", "F (g + w / 2)", f * (g + w / 2));
    String formula = "32 M / (π d³)";
    return units.pressure(n, "σ", "bending stress", formula, 32 * m / (Math.PI * (d * d * d)));
  }

  double shankBending(Notes n, StressUnits units, Measure<Force> weight) {
    double f = units.givenForce(n, "weight on the hook", weight);
    double p = units.given(n, "p", "post's face to pin's centre", projection);
    double h = shankHeight(n, units);
    double z = modulus(n, units, h);
    return units.pressure(n, "σ", "bending stress at the post's face", "F p / Z", f * p / z);
  }

  double shankPull(Notes n, StressUnits units, Measure<Force> pull) {
    double f = units.givenForce(n, "pull away from the post", pull);
    double w = units.given(n, "w", "width of the barrel", barrelWidth);
    double g = units.given(n, "g", "washers under it", lift);
    double h = shankHeight(n, units);
    double z = modulus(n, units, h);
    double a =
        shank.isRound()
            ? n.area("A", "section of the shank", "π h² / 4", Math.PI * (h * h) / 4)
            : n.area("A", "section of the shank", "b h", shank.width().in(units.length()) * h);
    double m =
        units.moment(n, "M", "bending moment", "F (h / 2 + g + w / 2)", f * (h / 2 + g + w / 2));
    return units.pressure(n, "σ", "stress at its top", "M / Z + F / A", m / z + f / a);
  }

  private double shankHeight(Notes n, StressUnits units) {
    return units.given(n, "h", "height of the shank", shank.thickness());
  }

  private double modulus(Notes n, StressUnits units, double h) {
    String meaning = "section modulus";
    if (shank.isRound()) {
      return n.volume("Z", meaning, "π h³ / 32", Math.PI * (h * h * h) / 32);
    }
    double b = units.given(n, "b", "width of the shank", shank.width());
    return n.volume("Z", meaning, "b h² / 6", b * (h * h) / 6);
  }

  double inverted(Notes n, Measure<Length> centres) {
    double c = n.given("C", "centres of the straps", centres.getValue());
    double w = n.given("w", "width of the barrel", barrelWidth.in(centres.getUnit()));
    double g = n.given("g", "washers on a shoulder", lift.in(centres.getUnit()));
    double h = n.given("h", "height of the shank", shank.thickness().in(centres.getUnit()));
    return n.length("S", "from shank to shank", "C + w + 2 g + h", c + w + 2 * g + h);
  }
}
