package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A flat spring, held at its root and pressed at its tip, that drives a latch home: how far it
 * gives, and what that asks of its metal. It may taper in width towards the tip. Other names:
 * {@index "leaf spring"}, {@index "flat spring"}, {@index "feather spring"}.
 *
 * <pre>{@code
 * LatchSpring leaf = LatchSpring.of(millimetres(150), millimetres(16), millimetres(2));
 * leaf.deflection(newtons(25))                      // 12.8 mm    a plain strip
 * leaf.stress(newtons(25))                          // 351.6 MPa  at its root
 * leaf.taperedTo(0).deflection(newtons(25))         // 19.2 mm    cut to a point it gives half as much again
 * leaf.mostTravel(megapascals(600))                 // 21.84 mm   what the metal may be asked for
 * leaf.forceAt(millimetres(10), millimetres(4))     // 27.34 N    on a latch that travels 10 from a set of 4
 * }</pre>
 *
 * <p>f = K P L³/(Y b t³) with Young's modulus Y and K from 4 for a strip to 6 for a triangle,
 * stress 6 P L/(b t²). Exact by beam theory for a root that does not give and a deflection of less
 * than a fifth of the length; a clamped strip measured elsewhere gave half as much again, by slip
 * at its root. The limit of stress is the caller's. With its foot, its set and the latch's travel
 * it is a {@link FittedSpring}. Source: statics of a cantilever; factors 4, 5.22 and 6 as printed
 * after Machinery's Handbook.
 */
public final class LatchSpring {
  private static final Source BEAM = Source.computed("integral of bending along a tapering leaf");
  private static final double STEEL = 206_000;
  private static final double SMALL = 0.2;

  private final Measure<Length> length;
  private final Measure<Length> width;
  private final Measure<Length> thickness;
  private final double tip;
  private final Measure<Pressure> modulus;
  private final Unit<Length> unit;

  private LatchSpring(
      Measure<Length> length,
      Measure<Length> width,
      Measure<Length> thickness,
      double tip,
      Measure<Pressure> modulus) {
    this.length = length;
    this.width = width;
    this.thickness = thickness;
    this.tip = tip;
    this.modulus = modulus;
    this.unit = length.getUnit();
  }

  /**
   * A plain strip of steel.
   *
   * @param length from its root to where it is pressed, more than zero
   * @param width at the root, more than zero
   * @param thickness more than zero
   * @return the spring
   * @throws IllegalArgumentException if one of them is not more than zero
   */
  public static LatchSpring of(
      Quantity<Length> length, Quantity<Length> width, Quantity<Length> thickness) {
    return new LatchSpring(
        Arguments.positive("length", length),
        Arguments.positive("width", width),
        Arguments.positive("thickness", thickness),
        1,
        Measure.of(STEEL, ShopUnits.MEGAPASCAL));
  }

  /**
   * The same tapering in width.
   *
   * @param tipOfRoot the width at the tip as a share of that at the root, 0 (a triangle) to 1
   * @return the spring
   * @throws IllegalArgumentException if the share is out of range
   */
  public LatchSpring taperedTo(double tipOfRoot) {
    if (!(tipOfRoot >= 0 && tipOfRoot <= 1)) {
      throw new IllegalArgumentException(
          "tipOfRoot must be from 0 to 1, was "
              + tipOfRoot
              + "; give the width at the tip as a share of the root's");
    }
    return new LatchSpring(length, width, thickness, tipOfRoot, modulus);
  }

  /**
   * The same tapering in width.
   *
   * @param tipWidth the width at the tip, more than zero, at most that at the root
   * @return the spring
   * @throws IllegalArgumentException if the width is out of range
   */
  public LatchSpring taperedTo(Quantity<Length> tipWidth) {
    Measure<Length> narrow = Arguments.positive("tipWidth", tipWidth);
    Arguments.atMost(
        "tipWidth", narrow, "the width at the root", width, "measure root and tip the right way");
    return taperedTo(narrow.ratio(width));
  }

  /**
   * The same of another metal than steel, 206 GPa.
   *
   * @param modulus Young's modulus, more than zero
   * @return the spring
   * @throws IllegalArgumentException if it is not more than zero
   */
  public LatchSpring ofModulus(Quantity<Pressure> modulus) {
    Measure<Pressure> stiff = Arguments.positivePressure("modulus", modulus);
    return new LatchSpring(length, width, thickness, tip, stiff);
  }

  /** {@return from its root to where it is pressed} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return the width at the root} */
  public Measure<Length> width() {
    return width;
  }

  /** {@return the width at the tip, in the unit of that at the root} */
  public Measure<Length> tipWidth() {
    return width.multiply(tip);
  }

  /** {@return the thickness, the same throughout} */
  public Measure<Length> thickness() {
    return thickness;
  }

  /**
   * How much more its taper lets it give: K of f = K P L³/(Y b t³).
   *
   * @return from 4 for a strip to 6 for a triangle, exact
   */
  public double factor() {
    return SpringTaper.factor(1, 1 - tip);
  }

  /**
   * The taper that has a given factor.
   *
   * @param factor from 4 to 6
   * @return the tip's width as a share of the root's, 1 to 0, to 1e-12
   * @throws IllegalArgumentException if the factor is out of range
   */
  public static double taperOf(double factor) {
    if (!(factor >= 4 && factor <= 6)) {
      throw new IllegalArgumentException(
          "factor must be from 4 to 6, was " + factor + "; 4 is a strip, 6 a triangle");
    }
    return SpringTaper.of(factor);
  }

  /**
   * How far its tip gives under a force.
   *
   * @param force zero or more
   * @return the deflection, exact for small ones, in the length's unit
   * @throws IllegalArgumentException if the force is negative
   */
  public Measure<Length> deflection(Quantity<Force> force) {
    Measure<Force> press = Arguments.notNegativeForce("force", force);
    return Measure.of(deflection(Notes.NONE, press), unit);
  }

  /**
   * How far it gives at a place along it under a force at its tip: the line that it bends to.
   *
   * @param fromRoot the place, from zero at the root to the length
   * @param force at the tip, zero or more
   * @return the deflection there, exact for small ones, in the length's unit
   * @throws IllegalArgumentException if the place does not lie on the spring, or the force is
   *     negative
   */
  public Measure<Length> deflectionAt(Quantity<Length> fromRoot, Quantity<Force> force) {
    Measure<Length> place = Arguments.notNegative("fromRoot", fromRoot);
    Arguments.atMost("fromRoot", place, "the length", length, "measure from the root to the tip");
    double share = SpringTaper.factor(Math.min(place.ratio(length), 1), 1 - tip) / factor();
    return deflection(force).multiply(share);
  }

  /**
   * How the deflection was found.
   *
   * @param force zero or more
   * @return the working of {@link #deflection}
   * @throws IllegalArgumentException if the force is negative
   */
  public Working working(Quantity<Force> force) {
    Measure<Force> press = Arguments.notNegativeForce("force", force);
    return Notes.taken("deflection of a flat spring", unit, n -> deflection(n, press))
        .withSource(BEAM)
        .withCautions(cautions(deflection(press)));
  }

  /**
   * The force at the tip that gives it a deflection.
   *
   * @param deflection zero or more
   * @return the force, exact for small deflections, in newtons
   * @throws IllegalArgumentException if the deflection is negative
   */
  public Measure<Force> force(Quantity<Length> deflection) {
    Measure<Length> given = Arguments.notNegative("deflection", deflection);
    return Measure.of(force(Notes.NONE, given), ShopUnits.NEWTON);
  }

  /**
   * How the force was found.
   *
   * @param deflection zero or more
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the deflection is negative
   */
  public Working forceWorking(Quantity<Length> deflection) {
    Measure<Length> given = Arguments.notNegative("deflection", deflection);
    return Notes.taken("force of a flat spring", unit, n -> force(n, given))
        .withSource(BEAM)
        .withCautions(cautions(given));
  }

  /**
   * The force when the latch has travelled, on a spring that was set when at rest.
   *
   * @param travel of the latch where the spring presses, zero or more
   * @param set how far it is pressed before that, zero or more
   * @return the force, in newtons
   * @throws IllegalArgumentException if either is negative
   */
  public Measure<Force> forceAt(Quantity<Length> travel, Quantity<Length> set) {
    Measure<Length> moved = Arguments.notNegative("travel", travel);
    return force(moved.add(Arguments.notNegative("set", set)));
  }

  /**
   * The bending stress at its root under a force: 6 P L/(b t²).
   *
   * @param force zero or more
   * @return the stress, exact, in megapascals
   * @throws IllegalArgumentException if the force is negative
   */
  public Measure<Pressure> stress(Quantity<Force> force) {
    Measure<Force> press = Arguments.notNegativeForce("force", force);
    return Measure.of(stress(Notes.NONE, press), ShopUnits.MEGAPASCAL);
  }

  /**
   * How the stress was found.
   *
   * @param force zero or more
   * @return the working of {@link #stress}
   * @throws IllegalArgumentException if the force is negative
   */
  public Working stressWorking(Quantity<Force> force) {
    Measure<Force> press = Arguments.notNegativeForce("force", force);
    return Notes.taken("stress of a flat spring", ShopUnits.MILLIMETRE, n -> stress(n, press))
        .withSource(BEAM);
  }

  /**
   * How far it may give before its root reaches a stress: (K/6) S L²/(Y t).
   *
   * @param limit the stress that the hardened and tempered metal may bear, more than zero
   * @return the travel, exact for small ones, in the length's unit
   * @throws IllegalArgumentException if the limit is not more than zero
   */
  public Measure<Length> mostTravel(Quantity<Pressure> limit) {
    Measure<Pressure> most = Arguments.positivePressure("limit", limit);
    return Measure.of(travel(Notes.NONE, most), unit);
  }

  /**
   * How the most travel was found.
   *
   * @param limit the stress that the metal may bear, more than zero
   * @return the working of {@link #mostTravel}
   * @throws IllegalArgumentException if the limit is not more than zero
   */
  public Working mostTravelWorking(Quantity<Pressure> limit) {
    Measure<Pressure> most = Arguments.positivePressure("limit", limit);
    return Notes.taken("travel of a flat spring", unit, n -> travel(n, most)).withSource(BEAM);
  }

  /**
   * What to know of it at a deflection.
   *
   * @param deflection zero or more
   * @return that the theory ends where it gives a fifth of its length, and how a spring fails
   * @throws IllegalArgumentException if the deflection is negative
   */
  public List<Caution> cautions(Quantity<Length> deflection) {
    Measure<Length> given = Arguments.notNegative("deflection", deflection);
    List<Caution> cautions = new ArrayList<>();
    if (given.ratio(length) > SMALL) {
      cautions.add(
          Caution.limit(
              "a deflection of "
                  + given
                  + " is more than a fifth of the length, where the rule for small ones ends; make"
                  + " the spring longer and thinner",
              BEAM));
    }
    cautions.add(
        Caution.danger(
            "a spring snaps if its temper is wrong: try it behind a guard, with eye protection,"
                + " farther than the latch will press it"));
    return List.copyOf(cautions);
  }

  private double deflection(Notes n, Measure<Force> force) {
    double k = n.number("K", "factor of the taper", "", factor());
    double p = n.value("P", "force", "", force.in(ShopUnits.NEWTON), ShopUnits.NEWTON);
    double l = n.given("L", "length", length.in(unit));
    double e = modulus(n);
    double b = n.given("b", "width at the root", width.in(unit));
    double t = n.given("t", "thickness", thickness.in(unit));
    double bent = k * p * (l * l * l) / (e * b * (t * t * t));
    return n.length("f", "deflection", "K P L³ / (Y b t³)", bent);
  }

  private double force(Notes n, Measure<Length> deflection) {
    double k = n.number("K", "factor of the taper", "", factor());
    double f = n.given("f", "deflection", deflection.in(unit));
    double l = n.given("L", "length", length.in(unit));
    double e = modulus(n);
    double b = n.given("b", "width at the root", width.in(unit));
    double t = n.given("t", "thickness", thickness.in(unit));
    double force = f * e * (b * (t * t * t)) / (k * (l * l * l));
    return n.value("P", "force", "f Y b t³ / (K L³)", force, ShopUnits.NEWTON);
  }

  private double stress(Notes n, Measure<Force> force) {
    Unit<Length> mm = ShopUnits.MILLIMETRE;
    double p = n.value("P", "force", "", force.in(ShopUnits.NEWTON), ShopUnits.NEWTON);
    double l = n.given("L", "length", length.in(mm));
    double b = n.given("b", "width at the root", width.in(mm));
    double t = n.given("t", "thickness", thickness.in(mm));
    double bent = 6 * p * l / (b * (t * t));
    return n.value("S", "stress at the root", "6 P L / (b t²)", bent, ShopUnits.MEGAPASCAL);
  }

  private double travel(Notes n, Measure<Pressure> limit) {
    double k = n.number("K", "factor of the taper", "", factor());
    double s = n.value("S", "stress", "", limit.in(ShopUnits.MEGAPASCAL), ShopUnits.MEGAPASCAL);
    double l = n.given("L", "length", length.in(unit));
    double e =
        n.value("Y", "Young's modulus", "", modulus.in(ShopUnits.MEGAPASCAL), ShopUnits.MEGAPASCAL);
    double t = n.given("t", "thickness", thickness.in(unit));
    return n.length("f", "travel", "(K / 6) S L² / (Y t)", k / 6 * s * (l * l) / (e * t));
  }

  /** In newtons on the square of the length's unit, so that the deflection comes out in it. */
  private double modulus(Notes n) {
    double mm = Measure.of(1, unit).in(ShopUnits.MILLIMETRE);
    double e = modulus.in(ShopUnits.MEGAPASCAL) * (mm * mm);
    return n.value("Y", "Young's modulus", "", e, ShopUnits.NEWTON.divide(unit.multiply(unit)));
  }

  /** Its sizes. */
  @Override
  public String toString() {
    return "flat spring "
        + length
        + " long, "
        + width
        + " × "
        + thickness
        + (tip == 1 ? "" : ", tapering to " + Measure.of(tip, ShopUnits.ONE) + " of its width");
  }
}
