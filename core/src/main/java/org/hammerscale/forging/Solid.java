package org.hammerscale.forging;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;

/**
 * The shape of a head or swelling: calculates its volume in the cube of a unit, telling the steps.
 * The shapes are those of solid geometry.
 */
@FunctionalInterface
interface Solid {
  double volume(Notes n, Unit<Length> unit);

  /**
   * How it looks on what lies before it: a step to its widest section, and straight to its end.
   *
   * @param before what lies before it, as far as it begins
   * @param at where it begins
   * @param widest its widest section
   * @param end the section where it ends
   * @param height how far it reaches
   */
  default Silhouette led(
      Silhouette before, Measure<Length> at, Section widest, Section end, Measure<Length> height) {
    return before.to(at, widest).to(at.add(height), end);
  }

  /** One section throughout: V = A h. */
  static Solid prism(Section section, Measure<Length> height) {
    return (n, unit) -> {
      double a = n.givenArea("A₁", "section of it", section.area().in(square(unit)));
      double h = n.given("h", "height", height.in(unit));
      return n.volume("V", "metal in it", "A₁ h", a * h);
    };
  }

  /** The prism that a length of bar gives: h = s A₀ / A₁. */
  static Solid jumped(Measure<Length> stock, Section bar, Section section) {
    return (n, unit) -> {
      Unit<Area> square = square(unit);
      double h = jumpedHeight(n, stock.in(unit), bar.area().in(square), section.area().in(square));
      return n.volume("V", "metal in it", "A₁ h", section.area().in(square) * h);
    };
  }

  static double jumpedHeight(Notes n, double stock, double before, double after) {
    n.given("s", "bar used", stock);
    n.givenArea("A₀", "section before", before);
    n.givenArea("A₁", "section of it", after);
    return n.length("h", "height", "s A₀ / A₁", stock * before / after);
  }

  static Unit<Area> square(Unit<Length> unit) {
    Measure<Length> one = Measure.of(1, unit);
    return Measures.area(one, one).getUnit();
  }

  /** Straight from one section to another: V = A h with the prismoidal mean A. */
  static Solid between(Section from, Section to, Measure<Length> height) {
    Solid metal = metalBetween(from, to, height);
    return new Formed(metal, (before, at) -> before.to(at, from).to(at.add(height), to));
  }

  private static Solid metalBetween(Section from, Section to, Measure<Length> height) {
    return (n, unit) -> {
      double a = Prismoid.between(from, to, unit).meanArea(n);
      double h = n.given("h", "height", height.in(unit));
      return n.volume("V", "metal in it", "A h", a * h);
    };
  }

  /** A spherical segment on a circle of diameter D: V = π h (3 a² + h²) / 6, with a = D / 2. */
  static Solid dome(Measure<Length> diameter, Measure<Length> height) {
    double h = height.getValue();
    double half = diameter.in(height.getUnit()) / 2;
    double radius = (half * half + h * h) / (2 * h);
    return Formed.round(domeMetal(diameter, height), height, z -> circle(radius, z + radius - h));
  }

  private static Solid domeMetal(Measure<Length> diameter, Measure<Length> height) {
    return (n, unit) -> {
      double d = n.given("D", "diameter", diameter.in(unit));
      double a = n.length("a", "half of it", "D / 2", d / 2);
      double h = n.given("h", "height", height.in(unit));
      return n.volume(
          "V", "metal in it", "π h (3 a² + h²) / 6", Math.PI * h * (3 * (a * a) + h * h) / 6);
    };
  }

  /**
   * A ball of diameter D, less the cap that the bar of diameter d takes: V = π h² (3 R − h) / 3.
   */
  static Solid ball(Measure<Length> diameter, Measure<Length> neck) {
    double radius = diameter.getValue() / 2;
    double high = ballHeight(Notes.NONE, radius, neck.in(diameter.getUnit()));
    return Formed.round(
        ballMetal(diameter, neck),
        diameter.withValue(high),
        z -> circle(radius, z + radius - high));
  }

  private static Solid ballMetal(Measure<Length> diameter, Measure<Length> neck) {
    return (n, unit) -> {
      double r = n.given("R", "radius of the ball", diameter.in(unit) / 2);
      double h = ballHeight(n, r, neck.in(unit));
      return n.volume(
          "V", "metal in it", "π h² (3 R − h) / 3", Math.PI * (h * h) * (3 * r - h) / 3);
    };
  }

  /** Half the width of a circle so far from its middle. */
  private static double circle(double radius, double off) {
    return Math.sqrt(Math.max(radius * radius - off * off, 0));
  }

  /** From the circle where the ball sits on its neck to its far side. */
  static double ballHeight(Notes n, double r, double neck) {
    double a = n.given("a", "radius of the bar", neck / 2);
    return n.length("h", "height above the bar", "R + √(R² − a²)", r + Math.sqrt(r * r - a * a));
  }

  /** Barrelled by a parabola between two equal ends: V = π h (2 D² + D d + 0.75 d²) / 15. */
  static Solid barrel(Measure<Length> middle, Measure<Length> end, Measure<Length> height) {
    double h = height.getValue();
    double big = middle.in(height.getUnit()) / 2;
    double small = end.in(height.getUnit()) / 2;
    return Formed.round(
        barrelMetal(middle, end, height),
        height,
        z -> small + (big - small) * (1 - (2 * z / h - 1) * (2 * z / h - 1)));
  }

  private static Solid barrelMetal(
      Measure<Length> middle, Measure<Length> end, Measure<Length> height) {
    return (n, unit) -> {
      double big = n.given("D", "diameter at the middle", middle.in(unit));
      double d = n.given("d", "diameter at the ends", end.in(unit));
      double h = n.given("h", "height", height.in(unit));
      return n.volume(
          "V",
          "metal in it",
          "π h (2 D² + D d + 0.75 d²) / 15",
          Math.PI * h * (2 * (big * big) + big * d + 0.75 * (d * d)) / 15);
    };
  }

  /** A cone from the head's diameter down to the shank's: V = π h (D² + D d + d²) / 12. */
  static Solid countersunk(Measure<Length> diameter, Measure<Length> shank, double degrees) {
    Solid metal = (n, unit) -> cone(n, "V", diameter.in(unit), shank.in(unit), degrees);
    double depth =
        countersunkDepth(Notes.NONE, diameter.getValue(), shank.in(diameter.getUnit()), degrees);
    Section face = Section.round(diameter);
    return new Formed(metal, (before, at) -> before.to(at.add(diameter.withValue(depth)), face));
  }

  /** The same, less the shank within it, which the grip has counted already. */
  static Solid countersunkWithin(Measure<Length> diameter, Measure<Length> shank, double degrees) {
    return (n, unit) -> {
      double big = diameter.in(unit);
      double d = shank.in(unit);
      double cone = cone(n, "V₁", big, d, degrees);
      double h = countersunkDepth(Notes.NONE, big, d, degrees);
      double s = n.volume("V₂", "shank within it", "π d² h / 4", Math.PI * (d * d) * h / 4);
      return n.volume("V", "metal beyond the grip", "V₁ − V₂", cone - s);
    };
  }

  private static double cone(Notes n, String symbol, double big, double d, double degrees) {
    n.given("D", "diameter of the head", big);
    n.given("d", "diameter of the shank", d);
    double h = countersunkDepth(n, big, d, degrees);
    return n.volume(
        symbol,
        "metal in the cone",
        "π h (D² + D d + d²) / 12",
        Math.PI * h * (big * big + big * d + d * d) / 12);
  }

  static double countersunkDepth(Notes n, double big, double d, double degrees) {
    double w = n.number("α", "included angle, degrees", "", degrees);
    return n.length(
        "h", "depth", "(D − d) / 2 / tan(π α / 360)", (big - d) / 2 / Math.tan(Math.PI * w / 360));
  }
}
