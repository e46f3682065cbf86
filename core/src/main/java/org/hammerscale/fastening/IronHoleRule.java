package org.hammerscale.fastening;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * Rules for how near holes in the iron may lie to its end, its edges and one another, from centre
 * to edge and centre to centre: {@index "end distance"}, {@index "edge distance"}, {@index pitch}.
 * The Eurocode reckons with the hole d0, the others with the fastener d.
 *
 * <pre>{@code
 * IronHole hole = IronHole.drilled(millimetres(5.5)).clearing(millimetres(5));
 * IronHoleRule.EN_1993_1_8.leastEnd(hole)               // 6.6 mm   from the end that it may tear out of
 * IronHoleRule.EN_1993_1_8.leastSpacing(hole)           // 12.1 mm  from the next hole
 * IronHoleRule.EN_1993_1_8.mostSpacing(millimetres(6))  // 84 mm    beyond which a 6 mm strap gapes
 * IronHoleRule.RIVET_PRACTICE.leastEdge(hole)           // 7.5 mm   from the edge, as riveters have it
 * }</pre>
 *
 * <p>Exact as rules, in the unit of the hole. They keep iron from tearing; what the wood behind it
 * asks for is another, as a rule larger, distance.
 */
public final class IronHoleRule {
  /**
   * EN 1993-1-8, table 3.3 (read): 1.2 d0 to end and edge, 2.2 d0 along the pull, 2.4 d0 across.
   */
  public static final IronHoleRule EN_1993_1_8 =
      new IronHoleRule(
          "EN 1993-1-8",
          new Factor("1.2", 1.2),
          new Factor("2.2", 2.2),
          new Factor("2.4", 2.4),
          Source.read("EN 1993-1-8", "table 3.3"));

  /**
   * AISC 360, table J3.4 to end and edge, 2 2/3 d between holes, 3 d preferred (read). The table
   * begins with 1/2 in; smaller fasteners are taken as 1.5 d, as its first row is, and those
   * between two rows in proportion.
   */
  public static final IronHoleRule AISC_360 =
      new IronHoleRule(
          "AISC 360",
          new Factor("1.5", 1.5),
          new Factor("8 / 3", 8 / 3d),
          new Factor("8 / 3", 8 / 3d),
          Source.read("AISC 360-16", "table J3.4, sec. J3.3"));

  /** Rivet practice (read): 1.5 d to end and edge, 3 d from rivet to rivet. */
  public static final IronHoleRule RIVET_PRACTICE =
      new IronHoleRule(
          "rivet practice",
          new Factor("1.5", 1.5),
          new Factor("3", 3),
          new Factor("3", 3),
          Source.read(
              "Rose, Modern Machine-Shop Practice; Cyclopedia of Architecture, Carpentry and Building",
              "edge 1.5 d; vol. V, pitch 3 d"));

  private record Factor(String text, double value) {}

  private static final Factor STAGGERED = new Factor("1.2", 1.2);
  private static final Factor SLOTTED = new Factor("1.5", 1.5);
  private static final Factor PREFERRED = new Factor("3", 3);
  private static final String END = "least distance to the end";
  private static final String EDGE = "least distance to the edge";
  private static final String SPACING = "least spacing along the pull";
  private static final String ACROSS = "least spacing across the pull";
  private static final String MOST_EDGE = "most distance to the edge";
  private static final String MOST_SPACING = "most spacing";

  private final String words;
  private final Factor edge;
  private final Factor spacing;
  private final Factor across;
  private final Source source;

  private IronHoleRule(String words, Factor edge, Factor spacing, Factor across, Source source) {
    this.words = words;
    this.edge = edge;
    this.spacing = spacing;
    this.across = across;
    this.source = source;
  }

  /** {@return where its distances come from} */
  public Source source() {
    return source;
  }

  /**
   * The least distance from a hole's centre to the end of the strap, in the direction of the pull.
   *
   * @param hole the hole
   * @return the distance e1, in the unit of its diameter
   */
  public Measure<Length> leastEnd(IronHole hole) {
    return answer(hole, n -> edge(n, hole, END));
  }

  /**
   * The least distance from a hole's centre to the edge of the strap, across the pull.
   *
   * @param hole the hole
   * @return the distance e2, in the unit of its diameter
   */
  public Measure<Length> leastEdge(IronHole hole) {
    return answer(hole, n -> edge(n, hole, EDGE));
  }

  /**
   * The least distance to end and edge of a slotted hole, 1.5 d0, which the Eurocode has.
   *
   * @param slot its round end, as a hole as wide as the slot
   * @return the distance e3 and e4, in the unit of its diameter
   * @throws IllegalArgumentException if the rule has no slots
   */
  public Measure<Length> leastEdgeOfSlot(IronHole slot) {
    Objects.requireNonNull(slot, "slot");
    checkEurocode("slotted holes");
    return answer(slot, n -> times(n, slot, SLOTTED, EDGE));
  }

  /**
   * The least spacing of holes one behind the other in the direction of the pull.
   *
   * @param hole the larger of the two holes
   * @return the distance p1 from centre to centre, in the unit of its diameter
   */
  public Measure<Length> leastSpacing(IronHole hole) {
    return answer(hole, n -> times(n, hole, spacing, SPACING));
  }

  /**
   * The spacing that the rule prefers: 3 d by AISC, else the least.
   *
   * @param hole the larger of the two holes
   * @return the distance from centre to centre, in the unit of its diameter
   */
  public Measure<Length> preferredSpacing(IronHole hole) {
    Factor factor = this == AISC_360 ? PREFERRED : spacing;
    return answer(hole, n -> times(n, hole, factor, SPACING));
  }

  /**
   * The least spacing of holes side by side, across the pull.
   *
   * @param hole the larger of the two holes
   * @return the distance p2 from centre to centre, in the unit of its diameter
   */
  public Measure<Length> leastSpacingAcross(IronHole hole) {
    return answer(hole, n -> times(n, hole, across, ACROSS));
  }

  /**
   * The least distance of two rows whose holes are staggered: 1.2 d0 by the Eurocode, if no two
   * holes are nearer than 2.4 d0 from centre to centre.
   *
   * @param hole the larger of the two holes
   * @return the distance of the rows, in the unit of its diameter
   * @throws IllegalArgumentException if the rule has no staggered rows of its own
   */
  public Measure<Length> leastSpacingOfStaggeredRows(IronHole hole) {
    checkEurocode("staggered rows");
    return answer(hole, n -> times(n, hole, STAGGERED, ACROSS));
  }

  /**
   * The most that a hole's centre may lie from the edge, so that plates stay close: 4 t + 40 mm in
   * the weather by the Eurocode, 12 t and at most 6 in by AISC.
   *
   * @param plate the thinner outer plate t, more than zero
   * @return the distance, in the plate's unit
   * @throws IllegalArgumentException if the thickness is not more than zero, or the rule has no
   *     such limit
   */
  public Measure<Length> mostEdge(Quantity<Length> plate) {
    Measure<Length> t = Arguments.positive("plate", plate);
    return t.withValue(mostEdge(Notes.NONE, t));
  }

  /**
   * The most that holes may lie apart, so that plates stay close: 14 t and at most 200 mm by the
   * Eurocode, 24 t and at most 12 in by AISC (sec. J3.5, from memory).
   *
   * @param plate the thinner outer plate t, more than zero
   * @return the distance, in the plate's unit
   * @throws IllegalArgumentException if the thickness is not more than zero, or the rule has no
   *     such limit
   */
  public Measure<Length> mostSpacing(Quantity<Length> plate) {
    Measure<Length> t = Arguments.positive("plate", plate);
    return t.withValue(mostSpacing(Notes.NONE, t));
  }

  /**
   * Where the rule is stretched.
   *
   * @param hole the hole
   * @return a caution for a fastener that the AISC table does not list
   */
  public List<Caution> cautions(IronHole hole) {
    Objects.requireNonNull(hole, "hole");
    return this == AISC_360 && !AiscEdge.isListed(hole.fastenerDiameter())
        ? List.of(
            Caution.limit(
                "the table lists 1/2 in to 1 1/4 in by eighths, not "
                    + hole.fastenerDiameter()
                    + ": a smaller one is taken as 1.5 d, one between two rows in proportion",
                source))
        : List.of();
  }

  /**
   * How the least distance to the end was found.
   *
   * @param hole the hole
   * @return the working of {@link #leastEnd}
   */
  public Working endWorking(IronHole hole) {
    return working(END, hole, n -> edge(n, hole, END)).withCautions(cautions(hole));
  }

  /**
   * How the least distance to the edge was found.
   *
   * @param hole the hole
   * @return the working of {@link #leastEdge}
   */
  public Working edgeWorking(IronHole hole) {
    return working(EDGE, hole, n -> edge(n, hole, EDGE)).withCautions(cautions(hole));
  }

  /**
   * How the least spacing along the pull was found.
   *
   * @param hole the hole
   * @return the working of {@link #leastSpacing}
   */
  public Working spacingWorking(IronHole hole) {
    return working(SPACING, hole, n -> times(n, hole, spacing, SPACING));
  }

  /**
   * How the least spacing across the pull was found.
   *
   * @param hole the hole
   * @return the working of {@link #leastSpacingAcross}
   */
  public Working acrossWorking(IronHole hole) {
    return working(ACROSS, hole, n -> times(n, hole, across, ACROSS));
  }

  private Working working(String title, IronHole hole, Notes.Calculation kernel) {
    Unit<Length> unit = Objects.requireNonNull(hole, "hole").diameter().getUnit();
    return Notes.taken(title + ", " + words, unit, kernel).withSource(source);
  }

  private static Measure<Length> answer(IronHole hole, Notes.Calculation kernel) {
    return Objects.requireNonNull(hole, "hole").diameter().withValue(kernel.calculate(Notes.NONE));
  }

  private double edge(Notes n, IronHole hole, String meaning) {
    return this == AISC_360
        ? AiscEdge.distance(n, hole.fastenerDiameter(), hole.diameter().getUnit(), meaning)
        : times(n, hole, edge, meaning);
  }

  private double times(Notes n, IronHole hole, Factor factor, String meaning) {
    Unit<Length> unit = hole.diameter().getUnit();
    boolean byHole = this == EN_1993_1_8;
    String symbol = byHole ? "d₀" : "d";
    double d =
        byHole
            ? n.given(symbol, "diameter of the hole", hole.diameter().in(unit))
            : n.given(symbol, "diameter of the fastener", hole.fastenerDiameter().in(unit));
    return n.length("a", meaning, factor.text() + " " + symbol, factor.value() * d);
  }

  private double mostEdge(Notes n, Measure<Length> plate) {
    checkLimits();
    double t = n.given("t", "thinner outer plate", plate.getValue());
    if (this == EN_1993_1_8) {
      double c = n.given("c", "forty millimetres", Measures.millimetres(40).in(plate.getUnit()));
      return n.length("a", MOST_EDGE, "4 t + c", 4 * t + c);
    }
    return lesser(n, MOST_EDGE, 12 * t, "12 t", Measures.inches(6).in(plate.getUnit()));
  }

  private double mostSpacing(Notes n, Measure<Length> plate) {
    checkLimits();
    double t = n.given("t", "thinner outer plate", plate.getValue());
    Unit<Length> unit = plate.getUnit();
    return this == EN_1993_1_8
        ? lesser(n, MOST_SPACING, 14 * t, "14 t", Measures.millimetres(200).in(unit))
        : lesser(n, MOST_SPACING, 24 * t, "24 t", Measures.inches(12).in(unit));
  }

  private static double lesser(Notes n, String meaning, double a, String formula, double most) {
    return a <= most ? n.length("a", meaning, formula, a) : n.given("a", meaning, most);
  }

  private void checkEurocode(String what) {
    if (this != EN_1993_1_8) {
      throw new IllegalArgumentException(
          "rule must be EN_1993_1_8 for " + what + ", was " + words + "; ask that one");
    }
  }

  private void checkLimits() {
    if (this == RIVET_PRACTICE) {
      throw new IllegalArgumentException(
          "rule must be EN_1993_1_8 or AISC_360 for the most that holes may lie apart, was "
              + words
              + "; ask one of them");
    }
  }

  /**
   * How the most distance to the edge was found.
   *
   * @param plate the thinner outer plate, more than zero
   * @return the working of {@link #mostEdge}
   * @throws IllegalArgumentException as {@link #mostEdge} does
   */
  public Working mostEdgeWorking(Quantity<Length> plate) {
    Measure<Length> t = Arguments.positive("plate", plate);
    return Notes.taken(MOST_EDGE + ", " + words, t.getUnit(), n -> mostEdge(n, t))
        .withSource(source);
  }

  /**
   * How the most spacing was found.
   *
   * @param plate the thinner outer plate, more than zero
   * @return the working of {@link #mostSpacing}
   * @throws IllegalArgumentException as {@link #mostSpacing} does
   */
  public Working mostSpacingWorking(Quantity<Length> plate) {
    Measure<Length> t = Arguments.positive("plate", plate);
    return Notes.taken(MOST_SPACING + ", " + words, t.getUnit(), n -> mostSpacing(n, t))
        .withSource(this == AISC_360 ? Source.fromMemory("AISC 360-16", "sec. J3.5") : source);
  }

  /** The rule's name. */
  @Override
  public String toString() {
    return words;
  }
}
