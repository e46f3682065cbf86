package org.hammerscale.heat;

/**
 * How a body warms the air that passes it: coefficients in W/(m² K). Air has the viscosity and
 * conductivity of the US Standard Atmosphere 1976, the density of an ideal gas at 101 325 Pa and a
 * Prandtl number of 0.70, at the mean of surface and room temperature. Temperatures are in kelvins,
 * lengths in metres.
 */
final class Convection {
  static final double PRANDTL = 0.70;
  private static final double GRAVITY = 9.80665;
  private static final double PRESSURE = 101_325;
  private static final double GAS_CONSTANT_OF_AIR = 287.05;

  private Convection() {}

  static double density(double kelvin) {
    return PRESSURE / (GAS_CONSTANT_OF_AIR * kelvin);
  }

  static double viscosity(double kelvin) {
    return 1.458e-6 * kelvin * Math.sqrt(kelvin) / (kelvin + 110.4);
  }

  static double conductivity(double kelvin) {
    return 2.64638e-3 * kelvin * Math.sqrt(kelvin) / (kelvin + 245.4 * Math.pow(10, -12 / kelvin));
  }

  /** The Rayleigh number of a surface of a given size. */
  static double rayleigh(double size, double surface, double room) {
    double film = (surface + room) / 2;
    double spread = viscosity(film) / density(film);
    return GRAVITY / film * (surface - room) * size * size * size / (spread * spread) * PRANDTL;
  }

  /** Churchill and Chu 1975, horizontal cylinder. */
  static double cylinder(double rayleigh, double prandtl) {
    return churchill(0.60, 0.559, rayleigh, prandtl);
  }

  /** Churchill and Chu 1975, vertical plate. */
  static double upright(double rayleigh, double prandtl) {
    return churchill(0.825, 0.492, rayleigh, prandtl);
  }

  private static double churchill(double start, double limit, double rayleigh, double prandtl) {
    double damping = Math.pow(1 + Math.pow(limit / prandtl, 9 / 16d), 8 / 27d);
    double root = start + 0.387 * Math.sqrt(Math.cbrt(rayleigh)) / damping;
    return root * root;
  }

  /** McAdams, Heat Transmission, 1954: a hot plate facing up; half as much facing down. */
  static double lying(double rayleigh) {
    return 0.54 * Math.sqrt(Math.sqrt(rayleigh));
  }

  /** Churchill and Bernstein 1977, cylinder across a draught. */
  static double acrossDraught(double reynolds, double prandtl) {
    return 0.3
        + 0.62
            * Math.sqrt(reynolds)
            * Math.cbrt(prandtl)
            / Math.pow(1 + Math.pow(0.4 / prandtl, 2 / 3d), 1 / 4d)
            * Math.pow(1 + Math.pow(reynolds / 282_000, 5 / 8d), 4 / 5d);
  }

  /**
   * Still air. A flat or square lies on a wide face in free air: its top and bottom count by half
   * the width, its edges by the thickness, each by its share of the surface. Anything else counts
   * as the round of its perimeter.
   */
  static double still(Body body, double surface, double room) {
    double k = conductivity((surface + room) / 2);
    if (!body.isFlat()) {
      double d = body.diameter();
      return cylinder(rayleigh(d, surface, room), PRANDTL) * k / d;
    }
    double w = body.width();
    double t = body.thickness();
    double top = lying(rayleigh(w / 2, surface, room)) * k / (w / 2);
    double edge = upright(rayleigh(t, surface, room), PRANDTL) * k / t;
    return (w * (top + top / 2) + 2 * t * edge) / (2 * (w + t));
  }

  /** A draught across the bar, taken as the round of its perimeter; never less than still air. */
  static double draught(Body body, double surface, double room, double speed) {
    double film = (surface + room) / 2;
    double d = body.diameter();
    double reynolds = speed * d * density(film) / viscosity(film);
    double forced = acrossDraught(reynolds, PRANDTL) * conductivity(film) / d;
    return Math.max(forced, still(body, surface, room));
  }
}
