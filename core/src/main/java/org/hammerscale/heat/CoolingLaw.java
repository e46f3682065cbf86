package org.hammerscale.heat;

import java.util.function.DoubleUnaryOperator;
import org.hammerscale.internal.Inverse;
import org.hammerscale.internal.Quadrature;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * How fast a body of one temperature throughout cools: t = ρ r ∫ c dθ / q. Temperatures in °C,
 * density in kg/m³, times in seconds.
 *
 * <p>The time is an explicit integral over the temperature. It is taken by quadrature, cut at the
 * jumps of the specific heat, not by stepping a differential equation across them.
 */
record CoolingLaw(HotMetal metal, double density, Air air) {
  private static final double ZERO_CELSIUS = 273.15;

  /** How far one piece of an integral reaches on from the room's temperature. */
  private static final double REACH = 3;

  /** Cooler than this above the room a bar is as cold as the room, in kelvins. */
  static final double COLD = 0.01;

  double room() {
    return air.temperature().in(ShopUnits.CELSIUS);
  }

  /** The time from one temperature down to another, by a share of a black body's radiation. */
  double seconds(Body body, double share, double lower, double upper) {
    return seconds(Notes.NONE, body, share, lower, upper);
  }

  /** Works in millimetres and seconds; the integral in s m²/kg. The temperatures are noted. */
  double seconds(Notes n, Body body, double share, double lower, double upper) {
    double e = n.number("ε", "emissivity", "", share);
    double r = body.noted(n);
    double rho = n.value("ρ", "density", "", density, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    double i =
        n.number(
            "I",
            "∫ c dθ / q from θ₂ to θ₁, q = ε σ (T⁴ − Tₐ⁴) + h (T − Tₐ), in s m²/kg",
            "",
            integral(body, e, lower, upper));
    return n.value("t", "time in the air", "ρ r I / 1000", rho * r * i / 1000, ShopUnits.SECOND);
  }

  private double integral(Body body, double share, double lower, double upper) {
    HeatCurve curve = metal.curve();
    double room = room() + ZERO_CELSIUS;
    DoubleUnaryOperator integrand =
        t -> {
          double surface = t + ZERO_CELSIUS;
          return curve.specificHeat(t)
              / (coefficient(body, share, surface, room) * (surface - room));
        };
    return Quadrature.integrate(integrand, lower, upper, curve.cuts(), room(), REACH);
  }

  /** Where it is a time after a heat; the room's temperature if it has gone cold. */
  double temperatureAfter(double seconds, Body body, double share, double heat) {
    double coldest = room() + COLD;
    return seconds(body, share, coldest, heat) <= seconds
        ? room()
        : Inverse.solve(
            "time",
            lower -> seconds(body, share, lower, heat),
            coldest,
            heat,
            seconds,
            Measures::seconds);
  }

  /** How much better the metal conducts than its surface sheds. */
  double biot(Body body, double share, double heat) {
    double h = coefficient(body, share, heat + ZERO_CELSIUS, room() + ZERO_CELSIUS);
    return h * body.depth() / metal.curve().conductivity(heat);
  }

  /** What a surface sheds to radiation and air, in W/(m² K) between temperatures in kelvins. */
  private double coefficient(Body body, double share, double surface, double room) {
    return Radiation.coefficient(share, surface, room) + air.coefficient(body, surface, room);
  }
}
