package org.hammerscale.bending;

import java.util.function.DoubleUnaryOperator;
import org.hammerscale.internal.Inverse;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;

/**
 * A spiral by its radii and turns, all in one unit: its length in closed form and both inverses.
 */
abstract class Spiral {
  final double inner;
  final double outer;
  final double turns;

  Spiral(double inner, double outer, double turns) {
    this.inner = inner;
    this.outer = outer;
    this.turns = turns;
  }

  abstract String word();

  abstract double length(Notes n);

  /** The same spiral from the same start, as far as a length goes. */
  abstract Spiral followed(double length);

  /** A spiral of the same kind between the same radii, with the turns that a length gives. */
  abstract Spiral wound(double length);

  /** The same spiral drawn larger or smaller. */
  abstract Spiral scaled(double factor);

  /** A point some part of all turns from the start, and the normal to the left there. */
  abstract double[] point(double share);

  /** The same by the radius there, and by how much it grows in a radian. */
  final double[] point(double share, double r, double across) {
    double angle = 2 * Math.PI * turns * share;
    double tx = across * Math.cos(angle) - r * Math.sin(angle);
    double ty = across * Math.sin(angle) + r * Math.cos(angle);
    double slope = Math.hypot(tx, ty);
    return new double[] {r * Math.cos(angle), r * Math.sin(angle), -ty / slope, tx / slope};
  }

  /** The least distance between the middles of neighbouring coils. */
  abstract double closestCoils();

  final double r0(Notes n) {
    return n.given("r₀", "inner radius, middle of the bar", inner);
  }

  final double r1(Notes n) {
    return n.given("r₁", "outer radius, middle of the bar", outer);
  }

  final double turns(Notes n) {
    return n.number("N", "turns", "", turns);
  }

  /** Evenly spaced coils: the radius grows by 2 π b in a turn. */
  static final class Archimedean extends Spiral {
    Archimedean(double inner, double outer, double turns) {
      super(inner, outer, turns);
    }

    @Override
    String word() {
      return "Archimedean";
    }

    @Override
    double[] point(double share) {
      double grown = outer - inner;
      return point(share, inner + grown * share, grown / (2 * Math.PI * turns));
    }

    @Override
    double closestCoils() {
      return (outer - inner) / turns;
    }

    @Override
    Archimedean scaled(double factor) {
      return new Archimedean(inner * factor, outer * factor, turns);
    }

    /**
     * The usual closed form (F(r₁) − F(r₀)) / 2 b loses digits where the radii are nearly the same;
     * its differences are taken here by hand, so that even a circle comes out right.
     */
    @Override
    double length(Notes n) {
      double r0 = r0(n);
      double r1 = r1(n);
      double count = turns(n);
      double b =
          n.length(
              "b",
              "growth of the radius in a radian",
              "(r₁ − r₀) / (2 π N)",
              (r1 - r0) / (2 * Math.PI * count));
      double s0 = n.length("s₀", "slant at the start", "√(r₀² + b²)", Math.sqrt(r0 * r0 + b * b));
      double s1 = n.length("s₁", "slant at the end", "√(r₁² + b²)", Math.sqrt(r1 * r1 + b * b));
      double g =
          n.length(
              "g",
              "length round the centre",
              "π N (r₀ + r₁) (r₀² + r₁² + b²) / (r₀ s₀ + r₁ s₁)",
              Math.PI * count * (r0 + r1) * (r0 * r0 + r1 * r1 + b * b) / (r0 * s0 + r1 * s1));
      double q =
          n.number(
              "q",
              "ratio for the length outwards",
              "(r₁ − r₀) (r₀ + r₁) / (r₀ s₁ + r₁ s₀)",
              (r1 - r0) * (r0 + r1) / (r0 * s1 + r1 * s0));
      return n.length(
          "L",
          "length of the spiral",
          "g + b ln(q + √(q² + 1)) / 2",
          g + b * Math.log(q + Math.sqrt(q * q + 1)) / 2);
    }

    @Override
    Archimedean followed(double length) {
      double b = (outer - inner) / (2 * Math.PI * turns);
      if (b == 0) {
        return new Archimedean(inner, outer, length / (2 * Math.PI * inner));
      }
      // Every piece of the spiral is longer than its way round or outwards, shorter than both.
      double ways = inner + b;
      double low = length / (Math.PI * (ways + Math.sqrt(ways * ways + 2 * b * length)));
      double high = length / (2 * Math.PI * Math.max(b, inner));
      double found = solve(x -> grown(b, x).length(Notes.NONE), low, high, length);
      return grown(b, found);
    }

    private Archimedean grown(double b, double count) {
      return new Archimedean(inner, inner + 2 * Math.PI * b * count, count);
    }

    @Override
    Archimedean wound(double length) {
      double round = Math.PI * (inner + outer);
      double low = (length - (outer - inner)) / round;
      if (inner == outer || !(low > 0)) {
        return new Archimedean(inner, outer, length / round);
      }
      double high = length / round;
      return new Archimedean(
          inner,
          outer,
          solve(x -> new Archimedean(inner, outer, x).length(Notes.NONE), low, high, length));
    }

    private static double solve(
        DoubleUnaryOperator relation, double low, double high, double length) {
      double slack = 1e-9; // keeps the bracket open where the bounds are nearly the answer
      return Inverse.solve(
          "length", relation, low * (1 - slack), high * (1 + slack), length, Measures::metres);
    }
  }

  /** Coils that open in proportion to the radius, r = r₀ exp(k θ). */
  static final class Logarithmic extends Spiral {
    Logarithmic(double inner, double outer, double turns) {
      super(inner, outer, turns);
    }

    @Override
    String word() {
      return "logarithmic";
    }

    @Override
    double[] point(double share) {
      double r = inner * Math.exp(Math.log(outer / inner) * share);
      return point(share, r, r * growth(Notes.NONE));
    }

    @Override
    double closestCoils() {
      return inner * Math.expm1(2 * Math.PI * growth(Notes.NONE));
    }

    @Override
    Logarithmic scaled(double factor) {
      return new Logarithmic(inner * factor, outer * factor, turns);
    }

    @Override
    double length(Notes n) {
      double r0 = r0(n);
      double r1 = r1(n);
      double k = growth(n);
      return n.length(
          "L",
          "length of the spiral",
          "(r₁ − r₀) √(1 + 1 / k²)",
          (r1 - r0) * Math.sqrt(1 + 1 / (k * k)));
    }

    private double growth(Notes n) {
      double count = turns(n);
      return n.number(
          "k",
          "growth: natural logarithm of the radius for a radian",
          "ln(r₁ / r₀) / (2 π N)",
          Math.log(outer / inner) / (2 * Math.PI * count));
    }

    @Override
    Logarithmic followed(double length) {
      double k = growth(Notes.NONE);
      double end = inner + length / Math.sqrt(1 + 1 / (k * k));
      return new Logarithmic(inner, end, Math.log(end / inner) / (2 * Math.PI * k));
    }

    @Override
    Logarithmic wound(double length) {
      double ratio = length / (outer - inner);
      double count = Math.log(outer / inner) * Math.sqrt((ratio - 1) * (ratio + 1)) / (2 * Math.PI);
      return new Logarithmic(inner, outer, count);
    }
  }

  /** The path of the end of a string unwound from a round peg. */
  static final class Involute extends Spiral {
    Involute(double peg, double turns) {
      super(peg, peg * Math.hypot(1, 2 * Math.PI * turns), turns);
    }

    @Override
    String word() {
      return "involute";
    }

    /** The end of the string: off the peg by what is unwound, square to its radius. */
    @Override
    double[] point(double share) {
      double theta = 2 * Math.PI * turns * share;
      double cos = Math.cos(theta);
      double sin = Math.sin(theta);
      return new double[] {inner * (cos + theta * sin), inner * (sin - theta * cos), -sin, cos};
    }

    @Override
    double closestCoils() {
      return 2 * Math.PI * inner;
    }

    @Override
    Involute scaled(double factor) {
      return new Involute(inner * factor, turns);
    }

    @Override
    double length(Notes n) {
      double a = n.given("a", "radius of the peg", inner);
      double count = n.number("N", "turns unwound", "", turns);
      double theta = n.number("θ", "angle unwound, in radians", "2 π N", 2 * Math.PI * count);
      return n.length("L", "length of the involute", "a θ² / 2", a * (theta * theta) / 2);
    }

    @Override
    Involute followed(double length) {
      return new Involute(inner, Math.sqrt(2 * length / inner) / (2 * Math.PI));
    }

    @Override
    Involute wound(double length) {
      throw new IllegalArgumentException(
          "scroll must be Archimedean to be tightened: an involute has one outer radius for its turns; follow it with using(length), or take an"
              + " Archimedean spiral");
    }
  }
}
