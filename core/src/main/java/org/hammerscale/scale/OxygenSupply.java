package org.hammerscale.scale;

import org.hammerscale.working.Source;

/**
 * Scale that grows no faster than the air brings oxygen: x² / k + x / l = t at one temperature,
 * where l is the most metal a second that the oxygen can take. On clean hot metal the parabola
 * would begin infinitely fast; this does not. Along a history each small step is taken as of one
 * temperature, for which the law has its closed form.
 */
final class OxygenSupply {
  static final Source SOURCE =
      Source.computed(
          "oxygen carried to a bar as heat is carried from it: at most 1.2 µm of metal a second"
              + " round a 20 mm bar in still air, taken as 1 µm/s");

  /**
   * Still air round a bar of 20 mm brings enough for 1.18 to 1.20 µm/s, round a thicker one less.
   */
  static final double STILL_AIR = 1e-3;

  /** The temperature over which one step may go, in kelvins. */
  private static final double STEP = 5;

  private OxygenSupply() {}

  /** The metal lost in one heat, in millimetres, with a supply in mm/s. */
  static double metal(ScaleLaw law, FireHistory history, double supply) {
    return grownOn(0, law, history, supply);
  }

  /**
   * What the fire of a plan can feed in one heat of a history; of scale that is kept, all heats
   * together over the root of their number.
   */
  static double metal(ScaleLaw law, HeatPlan plan, FireHistory heat) {
    double supply = plan.atmosphere().supply();
    return plan.isScaleKept()
        ? metalKept(law, heat, supply, plan.heats()) / plan.growth(plan.heats())
        : metal(law, heat, supply);
  }

  /** The same in several heats between which the scale is kept, so that it shields the metal. */
  private static double metalKept(ScaleLaw law, FireHistory history, double supply, int heats) {
    double x = 0;
    for (int i = 0; i < heats; i++) {
      x = grownOn(x, law, history, supply);
    }
    return x;
  }

  private static double grownOn(double lost, ScaleLaw law, FireHistory history, double supply) {
    double x = lost;
    for (int i = 1; i < history.points().size(); i++) {
      double from = history.celsius(i - 1);
      double change = history.celsius(i) - from;
      int steps = Math.max(1, (int) Math.ceil(Math.abs(change) / STEP));
      double seconds = history.seconds(i) / steps;
      for (int s = 0; s < steps; s++) {
        x = grown(x, law.metalRate(from + change * (s + 0.5) / steps), supply, seconds);
      }
    }
    return x;
  }

  /** The root x₁ of (x₁² − x²) / k + (x₁ − x) / l = t. */
  private static double grown(double x, double k, double l, double t) {
    double b = k / l;
    double c = x * x + b * x + k * t;
    return c == 0 ? 0 : 2 * c / (b + Math.sqrt(b * b + 4 * c));
  }
}
