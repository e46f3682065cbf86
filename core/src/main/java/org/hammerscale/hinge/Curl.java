package org.hammerscale.hinge;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * The geometry of a curl that closes round a bore d, in one unit of length. In section the strap's
 * inside face is a circle of r = d/2, its outside one of R = r + t, its middle one of ρ.
 */
final class Curl {
  private final Section section;
  private final boolean centred;
  private final BarrelEnd end;
  private final Unit<Length> unit;
  private final double t;

  Curl(Section section, boolean centred, BarrelEnd end, Unit<Length> unit) {
    this.section = section;
    this.centred = centred;
    this.end = end;
    this.unit = unit;
    this.t = section.thickness().in(unit);
  }

  /** The diameter of the line that keeps its length; notes d and t. */
  static double mean(Notes n, double bore, Section section, Unit<Length> unit) {
    double d = n.given("d", "bore", bore);
    double t = n.given("t", "strap thickness", section.thickness().in(unit));
    double centre = section.toCentre().in(unit);
    if (2 * centre == t) {
      return n.length("m", "mean diameter", "d + t", d + t);
    }
    double c = n.given("c", "centre of the section above the inside face", centre);
    return n.length("m", "mean diameter, through the centres", "d + 2 c", d + 2 * c);
  }

  static double fullTurn(Notes n, double m) {
    return n.length("L", "developed length", "π m", Math.PI * m);
  }

  /** The bore left uncovered, in degrees. */
  double uncovered(Notes n, double bore) {
    String meaning = "bore left uncovered";
    if (end.kind() == BarrelEnd.Kind.TUCKED || end.isWelded()) {
      return n.value("A", meaning, "", 0, ShopUnits.DEGREE);
    }
    mean(n, bore, section, unit);
    double a =
        end.kind() == BarrelEnd.Kind.SCARF
            ? edgeAngle(n, inside(n, bore), edge(n))
            : openAngle(n, bore);
    return n.value("A", meaning, "180 α / π", 180 * a / Math.PI, ShopUnits.DEGREE);
  }

  /** The strip as it is rolled, its end thinned already. */
  double strip(Notes n, double bore) {
    double m = mean(n, bore, section, unit);
    if (end.isWelded()) {
      double full = fullTurn(n, m);
      return centred ? weldedToNeck(n, full, bore) : full;
    }
    fullTurn(n, m);
    double rho = n.length("ρ", "radius of the middle of the strap", "m / 2", m / 2);
    return switch (end.kind()) {
      case SCARF -> scarfed(n, rho, bore);
      case TUCKED -> tucked(n, rho, bore);
      default -> centred ? squareToNeck(n, rho, bore) : square(n, rho, bore);
    };
  }

  /** The strip before its end is thinned, which is also its volume ÷ the section of the strap. */
  double cut(Notes n, double bore) {
    double s = strip(n, bore);
    if (end.kind() != BarrelEnd.Kind.SCARF) {
      return s;
    }
    double l = scarfLength(Notes.NONE, bore / 2, edge());
    return n.length("C", "cut before thinning", "S − l (1 − e / t) / 2", s - thinned(l));
  }

  /** What a length of strip gains when its end is thinned. */
  double stripFrom(Notes n, double cut, double bore) {
    double c = n.given("C", "cut length", cut);
    if (end.kind() != BarrelEnd.Kind.SCARF) {
      return n.length("S", "strip, no thinner at its end", "C", c);
    }
    double l = scarf(n, bore);
    return n.length("S", "strip after thinning", "C + l (1 − e / t) / 2", c + thinned(l));
  }

  /** What to cut for a length of strip, before its end is thinned. */
  double cutFor(Notes n, double strip, double bore) {
    double s = n.given("S", "strip after thinning", strip);
    if (end.kind() != BarrelEnd.Kind.SCARF) {
      return n.length("C", "cut, no thicker at its end", "S", s);
    }
    double l = scarf(n, bore);
    return n.length("C", "cut before thinning", "S − l (1 − e / t) / 2", s - thinned(l));
  }

  /** The length of the scarf, with all that it follows from. */
  private double scarf(Notes n, double bore) {
    mean(n, bore, section, unit);
    double r = inside(n, bore);
    double e = edge(n);
    edgeAngle(n, r, e);
    return scarfLength(n, r, e);
  }

  /** The length that a square-cut end leaves open, along the middle of the strap. */
  double leastThinned(Notes n, double bore) {
    double m = mean(n, bore, section, unit);
    double rho = n.length("ρ", "radius of the middle of the strap", "m / 2", m / 2);
    double a = openAngle(n, bore);
    return n.length("l", "length to thin, at least", "ρ α", rho * a);
  }

  /** The least straight scarf that seats on its tip. */
  double leastScarf(Notes n, double bore, double edgeThickness) {
    mean(n, bore, section, unit);
    double r = inside(n, bore);
    double e = n.given("e", "thickness of the edge", edgeThickness);
    edgeAngle(n, r, e);
    return leastScarf(n, r, e, true);
  }

  /** How far round the bore an end of this kind reaches with what it leaves open, in radians. */
  double endAngle(double bore) {
    if (end.kind() != BarrelEnd.Kind.SCARF) {
      return 0;
    }
    double r = bore / 2;
    double e = edge();
    return edgeAngle(Notes.NONE, r, e) + scarfLength(Notes.NONE, r, e) / (r + (t + e) / 4);
  }

  double scarfLength(double bore) {
    return scarfLength(Notes.NONE, bore / 2, edge());
  }

  /** Where a centred leaf leaves the barrel; t must have been noted. */
  double neck(Notes n, double bore) {
    double big = outside(n, inside(n, bore));
    return n.length(
        "x",
        "from the pin's centre to the neck",
        "√(R² − t² / 4)",
        Math.sqrt(big * big - t * t / 4));
  }

  private double square(Notes n, double rho, double bore) {
    double a = openAngle(n, bore);
    return n.length(
        "S", "strip that closes with a square-cut end", "ρ (2 π − α)", rho * (2 * Math.PI - a));
  }

  private double tucked(Notes n, double rho, double bore) {
    double a = openAngle(n, bore);
    double r = bore / 2;
    return n.length(
        "S",
        "strip that closes with a tucked scarf, at full thickness",
        "ρ (2 π − α) + r² (tan(α) − α) / (2 t)",
        rho * (2 * Math.PI - a) + r * r * (Math.tan(a) - a) / (2 * t));
  }

  private double scarfed(Notes n, double rho, double bore) {
    double r = inside(n, bore);
    double e = edge(n);
    double a = edgeAngle(n, r, e);
    double l = scarfLength(n, r, e);
    double turn =
        n.number(
            "D", "turn of the scarf, in radians", "l / (r + (t + e) / 4)", l / (r + (t + e) / 4));
    return n.length(
        "S",
        "strip that closes with this scarf, after thinning",
        "ρ (2 π − α − D) + l",
        rho * (2 * Math.PI - a - turn) + l);
  }

  private double squareToNeck(Notes n, double rho, double bore) {
    double a = openAngle(n, bore);
    return n.length(
        "S",
        "strip beyond the neck that closes with a square-cut end",
        "ρ (2 π − α) + t (π − α) / 4",
        rho * (2 * Math.PI - a) + t * (Math.PI - a) / 4);
  }

  private double weldedToNeck(Notes n, double full, double bore) {
    double a = openAngle(n, bore);
    double big = bore / 2 + t;
    return n.length(
        "S",
        "closed ring beyond the neck, as strip",
        "L − R² (α − sin(α)) / (2 t)",
        full - big * big * (a - Math.sin(a)) / (2 * t));
  }

  private double thinned(double l) {
    return l * (1 - edge() / t) / 2;
  }

  /** The scarf that was asked for, or the least that seats; r, e and ψ must have been noted. */
  private double scarfLength(Notes n, double r, double e) {
    Measure<Length> length = end.length();
    return length == null
        ? leastScarf(n, r, e, false)
        : n.given("l", "length of the scarf", length.in(unit));
  }

  private double leastScarf(Notes n, double r, double e, boolean asked) {
    double a = edgeAngle(Notes.NONE, r, e);
    String meaning = asked ? "least scarf that seats on its tip" : "length of the scarf, the least";
    return n.length(
        "l",
        meaning,
        "(t − e) / ((r + e) tan(α)) × (r + (t + e) / 4)",
        (t - e) / ((r + e) * Math.tan(a)) * (r + (t + e) / 4));
  }

  /** What a square-cut end leaves open: it meets the leaf, or fills the ring up to the neck. */
  private double openAngle(Notes n, double bore) {
    double r = inside(n, bore);
    double big = outside(n, r);
    return centred
        ? n.number(
            "α", "angle of the neck, in radians", "2 asin(t / (2 R))", 2 * Math.asin(t / (2 * big)))
        : n.number(
            "α",
            "short of a full turn where the corner meets the leaf, in radians",
            "acos(r / R)",
            Math.acos(r / big));
  }

  private double edgeAngle(Notes n, double r, double e) {
    String meaning = "short of a full turn where the tip meets the leaf, in radians";
    return n.number("α", meaning, "acos(r / (r + e))", Math.acos(r / (r + e)));
  }

  private static double inside(Notes n, double bore) {
    return n.length("r", "inside radius", "d / 2", bore / 2);
  }

  private double outside(Notes n, double r) {
    return n.length("R", "outside radius", "r + t", r + t);
  }

  private double edge(Notes n) {
    return n.given("e", "thickness of the edge", edge());
  }

  private double edge() {
    Measure<Length> edge = end.edge();
    return edge == null ? t : edge.in(unit);
  }
}
