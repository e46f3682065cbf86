package org.hammerscale.heat;

/** What a grey body radiates into a room that surrounds it; temperatures in kelvins. */
final class Radiation {
  /** Stefan and Boltzmann's constant, W/(m² K⁴), CODATA 2018. */
  static final double SIGMA = 5.670374419e-8;

  private Radiation() {}

  /** ε σ (T⁴ − Tₐ⁴) for each kelvin of T − Tₐ, in W/(m² K): ε σ (T² + Tₐ²) (T + Tₐ). */
  static double coefficient(double emissivity, double surface, double room) {
    return emissivity * SIGMA * (surface * surface + room * room) * (surface + room);
  }
}
