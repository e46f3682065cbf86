package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.fastening.IronHoleRule;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What the iron bears of a fastener that is pulled against the side of its hole, before it tears
 * out towards the end of the strap or the next hole. Other name: {@index tear-out}. By AISC 360,
 * J3.10, nominal: R = 1.2 lc t Fu, at most 2.4 d t Fu, with lc the clear distance. By EN 1993-1-8,
 * table 3.4, design: F = k1 αb fu d t / γM2.
 *
 * <pre>{@code
 * Section strap = Section.flat(millimetres(40), millimetres(5));
 * IronHole hole = IronHole.drilled(millimetres(7)).clearing(millimetres(6));
 * Bearing bearing = Bearing.towardsEnd(strap, hole, millimetres(10));
 * bearing.nominalByAisc(megapascals(360))      // 14040 N  before a safety factor
 * bearing.designByEurocode(megapascals(360))   // 10286 N  with the standard's own
 * Countersink flush = MetricWoodScrew.din97(millimetres(6)).countersinkIn(millimetres(5));
 * bearing.under(flush).nominalByAisc(megapascals(360))     // 10881 N  the cone takes its part
 * }</pre>
 *
 * <p>The fastener is taken to be no softer than the strap, and deformation of the hole to matter.
 * This is the strength of the iron alone; the wood under it as a rule gives way long before.
 *
 * <p>Source: AISC 360, J3.10, read; EN 1993-1-8 from memory, its form read.
 */
public final class Bearing {
  private static final Source AISC =
      Source.read("AISC 360", "sec. J3.10, as public pages quote it");
  private static final Source EUROCODE =
      Source.fromMemory("EN 1993-1-8", "table 3.4, γM2 = 1.25; its form was read");
  private static final Caution NOMINAL =
      Caution.limit(
          "a nominal strength carries no factor of safety: AISC takes 0.75 of it, or divides by 2",
          AISC);
  private static final double GAMMA_M2 = 1.25;

  private final Section strap;
  private final IronHole hole;
  private final Measure<Length> distance;
  private final boolean end;
  private final @Nullable Measure<Length> beside;
  private final Measure<Length> thickness;
  private final StressUnits units;

  private Bearing(
      Section strap,
      IronHole hole,
      Measure<Length> distance,
      boolean end,
      @Nullable Measure<Length> beside,
      Measure<Length> thickness) {
    this.strap = strap;
    this.hole = hole;
    this.distance = distance;
    this.end = end;
    this.beside = beside;
    this.thickness = thickness;
    this.units = StressUnits.ofStrap(strap);
  }

  /**
   * A fastener that pulls towards the end of the strap.
   *
   * @param strap a flat or square bar
   * @param hole its hole, with the fastener that it clears
   * @param endDistance e1, from the hole's centre to the end; more than half the hole
   * @return what bears it
   * @throws IllegalArgumentException if the hole reaches the end or does not lie within the strap
   */
  public static Bearing towardsEnd(Section strap, IronHole hole, Quantity<Length> endDistance) {
    Objects.requireNonNull(hole, "hole");
    return towards("endDistance", strap, hole, endDistance, true);
  }

  /**
   * A fastener that pulls towards another hole of the same size.
   *
   * @param strap a flat or square bar
   * @param hole its hole, with the fastener that it clears
   * @param spacing p1, from centre to centre; more than the hole
   * @return what bears it
   * @throws IllegalArgumentException if the holes meet or do not lie within the strap
   */
  public static Bearing towardsHole(Section strap, IronHole hole, Quantity<Length> spacing) {
    Objects.requireNonNull(hole, "hole");
    return towards("spacing", strap, hole, spacing, false);
  }

  private static Bearing towards(
      String name, Section strap, IronHole hole, Quantity<Length> distance, boolean end) {
    hole.requireWithin(strap);
    Measure<Length> far = Arguments.positive(name, distance);
    Measure<Length> least = end ? hole.diameter().divide(2) : hole.diameter();
    if (!far.isGreaterThan(least)) {
      throw new IllegalArgumentException(
          name
              + " must be more than "
              + least
              + " to leave iron in front of the fastener, was "
              + far
              + "; set the hole farther away");
    }
    return new Bearing(strap, hole, far, end, null, strap.thickness());
  }

  /**
   * The same with another hole beside, across the pull, which the Eurocode counts.
   *
   * @param spacing p2, from centre to centre; more than the hole
   * @return what bears it
   * @throws IllegalArgumentException if the holes meet
   */
  public Bearing besideHole(Quantity<Length> spacing) {
    Measure<Length> far = Arguments.positive("spacing", spacing);
    if (!far.isGreaterThan(hole.diameter())) {
      throw new IllegalArgumentException(
          "spacing must be more than the "
              + hole.diameter()
              + " of the hole, was "
              + far
              + "; set the holes farther apart");
    }
    return new Bearing(strap, hole, distance, end, far, thickness);
  }

  /**
   * The same under a countersunk head: half the depth of the cone is not counted.
   *
   * @param countersink the countersink in a plate as thick as the strap
   * @return what bears it
   * @throws IllegalArgumentException if the countersink was made for another thickness
   */
  public Bearing under(Countersink countersink) {
    Objects.requireNonNull(countersink, "countersink");
    if (!countersink.plate().isEquivalentTo(strap.thickness())) {
      throw new IllegalArgumentException(
          "countersink must be that of a plate of "
              + strap.thickness()
              + ", was a "
              + countersink
              + "; ask the head for its countersinkIn this strap");
    }
    return new Bearing(strap, hole, distance, end, beside, countersink.bearingThickness());
  }

  /**
   * The iron in front of the fastener: lc = e1 − d0/2 to the end, p1 − d0 to the next hole.
   *
   * @return the clear distance, exact, in the strap's inches or millimetres
   */
  public Measure<Length> clearDistance() {
    return Measure.of(clear(Notes.NONE, d0(Notes.NONE)), units.length());
  }

  /**
   * The nominal strength by AISC: 1.2 lc t Fu for tearing out, at most 2.4 d t Fu for bearing.
   *
   * @param tensileStrength Fu of the strap, more than zero
   * @return the force, without a factor of safety: pounds-force for a strap in inches, else newtons
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Measure<Force> nominalByAisc(Quantity<Pressure> tensileStrength) {
    return units.force(aisc(Notes.NONE, strength(tensileStrength)));
  }

  /**
   * The design resistance by the Eurocode: k1 αb fu d t / γM2 with γM2 = 1.25; αb is e1/(3 d0) to
   * the end, p1/(3 d0) − 1/4 to the next hole, at most 1; k1 is 2.8 e2/d0 − 1.7, or 1.4 p2/d0 − 1.7
   * with a hole beside, at most 2.5.
   *
   * @param tensileStrength fu of the strap, more than zero
   * @return the force: pounds-force for a strap in inches, else newtons
   * @throws IllegalArgumentException if the strength is not more than zero, or so little is left
   *     beside or in front of the hole that the formula gives nothing
   */
  public Measure<Force> designByEurocode(Quantity<Pressure> tensileStrength) {
    return units.force(eurocode(Notes.NONE, strength(tensileStrength)));
  }

  /**
   * How the nominal strength was found.
   *
   * @param tensileStrength Fu of the strap, more than zero
   * @return the working of {@link #nominalByAisc}
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Working aiscWorking(Quantity<Pressure> tensileStrength) {
    Measure<Pressure> fu = strength(tensileStrength);
    return Notes.taken("bearing by AISC 360, nominal", units.length(), n -> aisc(n, fu))
        .withSource(AISC)
        .withCautions(List.of(NOMINAL))
        .withCautions(cautions(IronHoleRule.AISC_360));
  }

  /**
   * How the design resistance was found.
   *
   * @param tensileStrength fu of the strap, more than zero
   * @return the working of {@link #designByEurocode}
   * @throws IllegalArgumentException as {@link #designByEurocode} does
   */
  public Working eurocodeWorking(Quantity<Pressure> tensileStrength) {
    Measure<Pressure> fu = strength(tensileStrength);
    return Notes.taken("bearing by EN 1993-1-8, design", units.length(), n -> eurocode(n, fu))
        .withSource(EUROCODE)
        .withCautions(cautions(IronHoleRule.EN_1993_1_8));
  }

  /**
   * Where the hole lies nearer than a rule allows.
   *
   * @param rule the rule
   * @return cautions for end or spacing, and for the edge
   */
  public List<Caution> cautions(IronHoleRule rule) {
    Objects.requireNonNull(rule, "rule");
    List<Caution> cautions = new ArrayList<>();
    Measure<Length> least = end ? rule.leastEnd(hole) : rule.leastSpacing(hole);
    String to = end ? "end" : "next hole";
    addIfLess(cautions, to, distance, least, rule);
    addIfLess(cautions, "edge", hole.edgeDistance(strap), rule.leastEdge(hole), rule);
    Measure<Length> across = beside;
    if (across != null) {
      addIfLess(cautions, "hole beside", across, rule.leastSpacingAcross(hole), rule);
    }
    return List.copyOf(cautions);
  }

  private static void addIfLess(
      List<Caution> cautions,
      String to,
      Measure<Length> found,
      Measure<Length> least,
      IronHoleRule rule) {
    if (found.isLessThan(least) && !found.isEquivalentTo(least)) {
      cautions.add(
          Caution.limit(
              "the hole's centre is "
                  + found
                  + " from the "
                  + to
                  + ", less than the "
                  + least
                  + " of "
                  + rule
                  + "; set it farther away, or take a smaller fastener",
              rule.source()));
    }
  }

  private static Measure<Pressure> strength(Quantity<Pressure> tensileStrength) {
    return Arguments.positivePressure("tensileStrength", tensileStrength);
  }

  private double aisc(Notes n, Measure<Pressure> strength) {
    double lc = clear(n, d0(n));
    double d = n.given("d", "diameter of the fastener", hole.fastenerDiameter().in(units.length()));
    double t = thickness(n);
    double fu =
        n.value("Fu", "tensile strength", "", strength.in(units.pressure()), units.pressure());
    double tear = 1.2 * lc * t * fu;
    double bear = 2.4 * d * t * fu;
    return tear <= bear
        ? force(n, "tearing out, nominal", "1.2 lc t Fu", tear)
        : force(n, "bearing, nominal", "2.4 d t Fu", bear);
  }

  private double eurocode(Notes n, Measure<Pressure> strength) {
    Unit<Length> unit = units.length();
    double d0 = d0(n);
    double edge = hole.edgeDistance(strap).in(unit);
    double p2 = beside == null ? Double.POSITIVE_INFINITY : beside.in(unit);
    double a = EurocodeBearing.ahead(n, distance.in(unit), d0, end);
    double k = EurocodeBearing.beside(n, d0, edge, p2);
    double d = n.given("d", "diameter of the fastener", hole.fastenerDiameter().in(unit));
    double t = thickness(n);
    double fu =
        n.value("fu", "tensile strength", "", strength.in(units.pressure()), units.pressure());
    double g = n.value("γ", "partial factor γM2", "", GAMMA_M2, ShopUnits.ONE);
    return force(n, "design resistance", "k₁ αb fu d t / γ", k * a * fu * d * t / g);
  }

  private double d0(Notes n) {
    return n.given("d₀", "diameter of the hole", hole.diameter().in(units.length()));
  }

  private double clear(Notes n, double d0) {
    double far = distance.in(units.length());
    if (end) {
      n.given("e", "end distance", far);
      return n.length("lc", "clear distance", "e − d₀ / 2", far - d0 / 2);
    }
    n.given("p", "spacing", far);
    return n.length("lc", "clear distance", "p − d₀", far - d0);
  }

  private double thickness(Notes n) {
    return n.given("t", "thickness that bears", thickness.in(units.length()));
  }

  private double force(Notes n, String meaning, String formula, double value) {
    return n.value("R", meaning, formula, value, units.force());
  }

  /** The hole, the strap and what lies ahead. */
  @Override
  public String toString() {
    return "bearing of a "
        + hole
        + " in "
        + strap
        + ", "
        + distance
        + (end ? " to the end" : " to the next hole");
  }
}
