package org.hammerscale.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/**
 * The section of a hook where it is bent hardest, with its inside first: round, a flat or square
 * whose thickness lies across the bend, or drawn to a {@index trapezium}, wide inside and narrower
 * outside.
 *
 * <pre>{@code
 * HookSection drawn = HookSection.narrowing(millimetres(30), millimetres(12), millimetres(40));
 * drawn.depth()   // 40 mm  from the inside of the bend to its outside
 * CarryingHook.of(drawn, millimetres(30)).centroidRadius()   // 47.14 mm
 * }</pre>
 */
public final class HookSection {
  private final Measure<Length> inner;
  private final Measure<Length> outer;
  private final Measure<Length> depth;
  private final boolean round;

  private HookSection(
      Measure<Length> inner, Measure<Length> outer, Measure<Length> depth, boolean round) {
    this.inner = inner;
    this.outer = outer;
    this.depth = depth;
    this.round = round;
  }

  /**
   * A bar as it comes.
   *
   * @param bar round, square or flat; its thickness lies across the bend
   * @return the section
   * @throws IllegalArgumentException if the bar is of another shape
   */
  public static HookSection of(Section bar) {
    Section.requireArea("bar", bar);
    if (!HookBeam.knows(bar)) {
      throw new IllegalArgumentException(
          "bar must be round, square or flat, was " + bar + "; forge it to one of these");
    }
    return new HookSection(bar.width(), bar.width(), bar.thickness(), bar.isRound());
  }

  /**
   * A section drawn narrower towards the outside of the bend.
   *
   * @param inner width at the inside of the bend, more than zero
   * @param outer width at the outside, more than zero and at most the inner one
   * @param depth from inside to outside, more than zero
   * @return the section
   * @throws IllegalArgumentException if a size lies outside its range
   */
  public static HookSection narrowing(
      Quantity<Length> inner, Quantity<Length> outer, Quantity<Length> depth) {
    Measure<Length> wide = Arguments.positive("inner", inner);
    Measure<Length> narrow =
        Arguments.atMost(
            "outer",
            Arguments.positive("outer", outer),
            "the inner width",
            wide,
            "the wide side lies inside the bend");
    return new HookSection(wide, narrow, Arguments.positive("depth", depth), false);
  }

  /** {@return how wide it is at the inside of the bend, or its diameter} */
  public Measure<Length> innerWidth() {
    return inner;
  }

  /** {@return how wide it is at the outside of the bend, or its diameter} */
  public Measure<Length> outerWidth() {
    return outer;
  }

  /** {@return whether it is round} */
  public boolean isRound() {
    return round;
  }

  /** {@return how deep it is, from the inside of the bend to its outside} */
  public Measure<Length> depth() {
    return depth;
  }

  /** What a curved beam asks of a section: its radii and its area. */
  record Radii(double inner, double outer, double centroid, double neutral, double area) {}

  /** Notes all of them for an inside radius. */
  Radii radii(Notes n, StressUnits units, Measure<Length> inside) {
    double ri = units.given(n, "r₁", "inside radius", inside);
    double h = units.given(n, "h", "depth", depth);
    double ro = n.length("r₂", "outside radius", "r₁ + h", ri + h);
    if (round) {
      double rc = n.length("r", "radius of the middle", "r₁ + h / 2", ri + h / 2);
      double area = n.area("A", "section", "π h² / 4", Math.PI * (h * h) / 4);
      double rn =
          n.length(
              "r₀",
              "radius of the neutral line",
              "(r + √(r₁ r₂)) / 2",
              (rc + Math.sqrt(ri * ro)) / 2);
      return new Radii(ri, ro, rc, rn, area);
    }
    double bi = units.given(n, "b", "width inside", inner);
    double bo = units.given(n, "c", "width outside", outer);
    double area = n.area("A", "section", "h (b + c) / 2", h * (bi + bo) / 2);
    double rc =
        n.length(
            "r",
            "radius of the centroid",
            "r₁ + h (b + 2 c) / (3 (b + c))",
            ri + h * (bi + 2 * bo) / (3 * (bi + bo)));
    double rn =
        n.length(
            "r₀",
            "radius of the neutral line",
            "A / (c − b + (b r₂ − c r₁) / h × ln(r₂ / r₁))",
            area / (bo - bi + (bi * ro - bo * ri) / h * Math.log(ro / ri)));
    return new Radii(ri, ro, rc, rn, area);
  }

  /** The area from the inside to a radius, without notes. */
  double areaTo(StressUnits units, Radii radii, double x) {
    if (round) {
      double half = (radii.outer - radii.inner) / 2;
      double t = Math.max(-1, Math.min(1, (x - radii.centroid) / half));
      return half * half * (Math.asin(t) + t * Math.sqrt(1 - t * t) + Math.PI / 2);
    }
    double y = x - radii.inner;
    double b = inner.in(units.length());
    return b * y - slope(units) * y * y / 2;
  }

  /** Its first moment about the centroid, which is positive. */
  double momentTo(StressUnits units, Radii radii, double x) {
    if (round) {
      double half = (radii.outer - radii.inner) / 2;
      double t = Math.max(-1, Math.min(1, (x - radii.centroid) / half));
      return 2 / 3d * half * half * half * Math.pow(1 - t * t, 1.5);
    }
    double y = x - radii.inner;
    double b = inner.in(units.length());
    double c = radii.centroid - radii.inner;
    double s = slope(units);
    return c * b * y - (b + c * s) * y * y / 2 + s * y * y * y / 3;
  }

  private double slope(StressUnits units) {
    return (inner.in(units.length()) - outer.in(units.length())) / depth.in(units.length());
  }

  /** Its sizes. */
  @Override
  public String toString() {
    if (round) {
      return depth + " round";
    }
    return inner.equals(outer)
        ? inner + " × " + depth + " deep"
        : inner + " inside, " + outer + " outside, " + depth + " deep";
  }
}
