package org.hammerscale.strength;

import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * What {@link BarrelOpening} reckons and rests on: an open curl as a beam that bears F rₘ and F, in
 * one set of units of stress at a time.
 */
record OpenCurl(Measure<Length> bore, Measure<Length> thickness, Measure<Length> width) {
  private static final int MOST_SLENDER = 1000;

  static final Source SPRING_EYE =
      Source.fromMemory("SAE manual on leaf springs", "stress in an open eye");
  static final Source CURVED =
      Source.read(
          "curved beam of Winkler and Bach", "public pages; Timoshenko, Strength of Materials");
  static final Source PLASTIC =
      Source.computed("a rectangular section yields throughout at M / Mₚ + (N / Nₚ)² = 1");
  static final Source CANTILEVER = Source.computed("bending of a straight cantilever");
  static final Caution OPEN_CURL =
      Caution.limit(
          "this holds for an open curl on a loose pin; a forge-welded barrel does not open so, and"
              + " the strength of a forge weld cannot be reckoned: proof-test it",
          Source.commonPractice("a weld is proved by a test load"));
  static final Caution OFF_FACE =
      Caution.limit(
          "a pull off the face also bends the leaf from the pin to its first fixing, mostly more"
              + " than the curl: see leafBending, and set the first fixing close to the barrel",
          CANTILEVER);
  static final Caution RESERVE =
      Caution.limit(
          "the plastic limit is the last reserve: the barrel has opened for good before; design on"
              + " first yield",
          PLASTIC);

  /**
   * Refuses a bend so wide that its neutral line cannot be told from its middle: the stress is
   * worked out from their distance, about t² / (12 r).
   */
  static void requireBent(String name, Measure<Length> inside, Measure<Length> thickness) {
    Measure<Length> most = thickness.multiply(MOST_SLENDER);
    if (inside.isGreaterThan(most)) {
      throw new IllegalArgumentException(
          name
              + " must be at most "
              + MOST_SLENDER
              + " times the "
              + thickness
              + " of metal across the bend, was "
              + inside
              + "; so wide a bend is a straight beam: ask BracketArm");
    }
  }

  double straight(Notes n, StressUnits units, Measure<Force> force) {
    double f = units.givenForce(n, "pull on the leaf", force);
    double d = d(n, units);
    double t = t(n, units);
    double w = w(n, units);
    return units.pressure(
        n,
        "σ",
        "stress at the inside, straight beam",
        "3 F (d + t) / (w t²) + F / (w t)",
        3 * f * (d + t) / (w * (t * t)) + f / (w * t));
  }

  double curved(Notes n, StressUnits units, Measure<Force> force) {
    double q = perForce(n, units);
    double f = units.givenForce(n, "pull on the leaf", force);
    return units.pressure(n, "σ", "stress at the inside, curved beam", "F q", f * q);
  }

  double curvedOutside(Notes n, StressUnits units, Measure<Force> force) {
    double d = d(n, units);
    double t = t(n, units);
    double w = w(n, units);
    double outer = n.length("r₂", "outside radius", "d / 2 + t", d / 2 + t);
    double middle = mean(n, d, t);
    double neutral = neutral(n, d / 2, outer, t, "t / ln(2 r₂ / d)");
    double e = n.length("e", "from there to the mean radius", "rₘ − r₀", middle - neutral);
    double f = units.givenForce(n, "pull on the leaf", force);
    return units.pressure(
        n,
        "σ",
        "stress at the outside, curved beam; negative in compression",
        "F / (w t) − F rₘ (r₂ − r₀) / (w t e r₂)",
        f / (w * t) - f * middle * (outer - neutral) / (w * t * e * outer));
  }

  private static double neutral(Notes n, double inner, double outer, double t, String formula) {
    return n.length("r₀", "radius of the neutral line", formula, t / Math.log(outer / inner));
  }

  double firstYield(Notes n, StressUnits units, Measure<Pressure> strength) {
    double q = perForce(n, units);
    double y = units.givenStress(n, "Y", "yield strength", strength);
    return units.force(n, "F₁", "pull at first yield", "Y / q", y / q);
  }

  double safe(Notes n, StressUnits units, PermissibleStress permissible) {
    double q = perForce(n, units);
    double sigma = permissible.noted(n, units);
    return units.force(n, "F", "pull to design for", "σ / q", sigma / q);
  }

  double plastic(Notes n, StressUnits units, Measure<Pressure> strength) {
    double y = units.givenStress(n, "Y", "yield strength", strength);
    double d = d(n, units);
    double t = t(n, units);
    double w = w(n, units);
    double m = mean(n, d, t);
    String formula = "Y w t² / (4 rₘ)";
    return units.force(n, "F₂", "plastic limit in bending", formula, y * w * (t * t) / (4 * m));
  }

  double plasticWithPull(Notes n, StressUnits units, Measure<Pressure> strength) {
    double y = units.givenStress(n, "Y", "yield strength", strength);
    double d = d(n, units);
    double t = t(n, units);
    double w = w(n, units);
    double m = mean(n, d, t);
    double moment = units.moment(n, "Mₚ", "plastic moment", "Y w t² / 4", y * w * (t * t) / 4);
    double pull = units.force(n, "Nₚ", "yield all through in tension", "Y w t", y * w * t);
    double g = units.perForce(n, "g", "moment of each unit of force", "rₘ / Mₚ", m / moment);
    return units.force(
        n,
        "F₂",
        "plastic limit, from F g + (F / Nₚ)² = 1",
        "2 / (g + √(g² + 4 / Nₚ²))",
        2 / (g + Math.sqrt(g * g + 4 / (pull * pull))));
  }

  /** The stress at the inside of the curved beam for each unit of force. */
  private double perForce(Notes n, StressUnits units) {
    double d = d(n, units);
    double t = t(n, units);
    double w = w(n, units);
    double inner = n.length("r₁", "inside radius", "d / 2", d / 2);
    double outer = n.length("r₂", "outside radius", "r₁ + t", inner + t);
    double middle = mean(n, d, t);
    double neutral = neutral(n, inner, outer, t, "t / ln(r₂ / r₁)");
    double e = n.length("e", "from there to the mean radius", "rₘ − r₀", middle - neutral);
    return units.stressPerForce(
        n,
        "q",
        "stress at the inside for each unit of force",
        "rₘ (r₀ − r₁) / (w t e r₁) + 1 / (w t)",
        middle * (neutral - inner) / (w * t * e * inner) + 1 / (w * t));
  }

  private static double mean(Notes n, double d, double t) {
    return n.length("rₘ", "mean radius, from the pin's centre", "(d + t) / 2", (d + t) / 2);
  }

  private double d(Notes n, StressUnits units) {
    return units.given(n, "d", "bore", bore);
  }

  private double t(Notes n, StressUnits units) {
    return units.given(n, "t", "thickness of the strap", thickness);
  }

  private double w(Notes n, StressUnits units) {
    return units.given(n, "w", "width of the knuckles of this leaf, added up", width);
  }
}
