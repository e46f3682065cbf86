package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How a barrel closes: how much strip it takes with the end that it has, what of the bore stays
 * open, and where its slots lie on the flat bar. A strip cut square closes before it has gone a
 * full turn; the full turn that smiths cut leaves something to trim before it is rolled.
 *
 * <pre>{@code
 * Barrel eye = Barrel.around(inches("3/8"), Section.flat(inches(1), inches("3/16")));
 * eye.closing().uncovered()                        // 60°  a square end leaves so much of the bore open
 * eye.closing().leastThinned()                     // 0.2945 in  to thin at least, to close it all round
 * BarrelEnd scarf = BarrelEnd.scarfedTo(inches("3/32")).over(inches("1/2"));
 * BarrelClosing scarfed = eye.endedWith(scarf).closing();
 * scarfed.cutLength()                              // 1.3601 in  to cut before it is thinned
 * scarfed.stripLength()                            // 1.4851 in  to roll afterwards
 * eye.closing().slotFloorFromMark(inches("7/16"))  // 7/16 in  where the saw stops, told from the leaf
 * }</pre>
 *
 * <p>With r the inside, R the outside, ρ = (r + R)/2 the middle radius, t the thickness, e the edge
 * and l the length of a scarf, the strip of a tangent barrel is ρ (2 π − α) with α = acos(r/R) cut
 * square; that and r² (tan α − α)/(2 t) tucked; ρ (2 π − α − D) + l with α = acos(r/(r + e)) and D
 * = l/(r + (t + e)/4) scarfed straight. Beyond the neck of a centred one it is ρ (2 π − α) + t (π −
 * α)/4 with α = 2 asin(t/(2 R)), its joggle being sharp. Strip is measured from the pin's centre on
 * a tangent barrel, from the neck on a centred one: where the leaf begins.
 *
 * <p>Exact as geometry of hot work that keeps the section; the hand is good for about a thickness
 * either way, so mark from the leaf and trim the curl. A section that is neither flat nor square is
 * reckoned through its middle. Source: plane geometry.
 */
public final class BarrelClosing {
  private static final Source GEOMETRY =
      Source.computed("plane geometry of a strap rolled round a circle, its section kept");
  private static final Source THINNING =
      Source.computed("conservation of volume at constant width");
  private static final Source FULL_TURN =
      Source.commonPractice(
          "cut a full turn on the mean line, then cut the strip to this before rolling");
  private static final Source HAND =
      Source.commonPractice("the hand closes a curl to about a thickness either way");

  private static final Source TIGHT =
      Source.commonPractice("mean line holds for curls of a thickness inside or more");

  private final Section section;
  private final boolean centred;
  private final BarrelEnd end;
  private final Unit<Length> unit;
  private final double bore;
  private final Curl curl;

  BarrelClosing(Measure<Length> bore, Section section, boolean centred, BarrelEnd end) {
    this.section = section;
    this.centred = centred;
    this.end = end;
    this.unit = bore.getUnit();
    this.bore = bore.in(unit);
    this.curl = new Curl(section, centred, end, unit);
  }

  /** {@return how the strip ends} */
  public BarrelEnd end() {
    return end;
  }

  /**
   * How much of the bore the strap leaves uncovered: the angle short of a full turn at which the
   * end meets the leaf, or which the neck of a centred barrel takes.
   *
   * @return the angle, exact, in degrees; zero for a tucked scarf or a weld
   */
  public Measure<Angle> uncovered() {
    return Measure.of(curl.uncovered(Notes.NONE, bore), ShopUnits.DEGREE);
  }

  /**
   * The strip that closes on the bore with this end, as it is rolled: its end is thinned already.
   * Of a tucked scarf it is the strip of full thickness with the same metal, since how far it is
   * thinned is left to the hand.
   *
   * @return the length on the mean line, exact as geometry, in the bore's unit
   */
  public Measure<Length> stripLength() {
    return measure(curl.strip(Notes.NONE, bore));
  }

  /**
   * The strip before its end is thinned: for a straight scarf shorter by l (1 − e/t)/2, else the
   * same. A weld's loss comes on top.
   *
   * @return the length, exact as geometry, in the bore's unit
   */
  public Measure<Length> cutLength() {
    return measure(curl.cut(Notes.NONE, bore));
  }

  /**
   * The strip that the hand closes on the bore with this end: the exact one, a thickness either
   * way. A full turn is what one may cut, not what one may roll: the longer strip closes on a
   * larger bore. A weld closes a full ring, which is exact.
   *
   * @return the length before thinning, an estimate, in the bore's unit
   */
  public Estimate<Length> strip() {
    return byHand(curl.cut(Notes.NONE, bore));
  }

  /**
   * The strip that a cut length becomes when its end is thinned to this scarf: C + l (1 − e/t)/2.
   *
   * @param cut the length cut from full thickness, more than zero
   * @return the length after thinning, exact at constant width, in the bore's unit
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Measure<Length> stripFrom(Quantity<Length> cut) {
    double length = Arguments.positive("cut", cut).in(unit);
    return measure(curl.stripFrom(Notes.NONE, length, bore));
  }

  /**
   * What to cut for a given strip, before its end is thinned to this scarf: S − l (1 − e/t)/2. It
   * undoes {@link #stripFrom}.
   *
   * @param strip the length after thinning, more than the scarf gains
   * @return the length to cut from full thickness, exact at constant width, in the bore's unit
   * @throws IllegalArgumentException if the length is not more than the scarf
   */
  public Measure<Length> cutFor(Quantity<Length> strip) {
    return measure(curl.cutFor(Notes.NONE, checkedStrip(strip), bore));
  }

  /**
   * How the cut for a given strip was found.
   *
   * @param strip as for {@link #cutFor}
   * @return the working
   * @throws IllegalArgumentException if the length is not more than the scarf
   */
  public Working cutForWorking(Quantity<Length> strip) {
    double length = checkedStrip(strip);
    return working("cut for a strip, " + end, n -> curl.cutFor(n, length, bore), THINNING);
  }

  private double checkedStrip(Quantity<Length> strip) {
    Measure<Length> whole = Arguments.positive("strip", strip);
    double scarf = end.kind() == BarrelEnd.Kind.SCARF ? curl.scarfLength(bore) : 0;
    if (!(whole.in(unit) > scarf)) {
      throw new IllegalArgumentException(
          "strip must be longer than its scarf of "
              + measure(scarf)
              + ", was "
              + whole
              + "; thin less of it, or take a longer strip");
    }
    return whole.in(unit);
  }

  /**
   * The least straight scarf that seats on its tip; a shorter one bears on its heel and stands off:
   * (t − e)/((r + e) tan α) × (r + (t + e)/4) with α = acos(r/(r + e)).
   *
   * @param edgeThickness how thick the tip is left; more than zero, less than the strap
   * @return the length after thinning, exact, in the bore's unit
   * @throws IllegalArgumentException if the barrel is centred, its section no flat or square, or
   *     the thickness out of range
   */
  public Measure<Length> leastScarf(Quantity<Length> edgeThickness) {
    return measure(curl.leastScarf(Notes.NONE, bore, edge(edgeThickness)));
  }

  /**
   * What must be thinned at least to close the bore all round: ρ α, the part of the middle circle
   * that a square-cut end leaves open.
   *
   * @return a lower bound of the length, in the bore's unit
   */
  public Measure<Length> leastThinned() {
    return measure(curl.leastThinned(Notes.NONE, bore));
  }

  /**
   * Where the floor of a slot lies on the flat bar before rolling, measured from the mark between
   * barrel and leaf towards the leaf. Always set it out from this side, never from the end of the
   * curl, whose length the hand decides.
   *
   * @param notchDepth how far behind the pin's centre the notch goes once rolled; at least as far
   *     as the {@linkplain Barrel#leafStart leaf's beginning}
   * @return c − x with x the leaf's beginning, exact, in the bore's unit
   * @throws IllegalArgumentException if the notch ends within the curl
   */
  public Measure<Length> slotFloorFromMark(Quantity<Length> notchDepth) {
    Measure<Length> depth = depth(notchDepth);
    return measure(floor(Notes.NONE, depth));
  }

  /**
   * How deep a slot is on the flat bar, from the end that is curled, thinned if it is scarfed. It
   * serves to choose the bar and to check, not to mark: the end is as uncertain as the curl.
   *
   * @param notchDepth as for {@link #slotFloorFromMark}
   * @return strip + c − x, an estimate as wide as that of the strip, in the bore's unit
   * @throws IllegalArgumentException if the notch ends within the curl
   */
  public Estimate<Length> slotFloorFromEnd(Quantity<Length> notchDepth) {
    Measure<Length> floor = slotFloorFromMark(notchDepth);
    return byHand(curl.strip(Notes.NONE, bore)).add(floor);
  }

  /** {@return what to know of an end or a curl like this; empty if there is nothing} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (end.kind() == BarrelEnd.Kind.SQUARE) {
      cautions.add(
          Caution.limit(
              "a square-cut end bears on one corner and may gall the pin: ease the corner, or scarf"
                  + " the end",
              GEOMETRY));
    }
    if (end.isWelded()) {
      cautions.add(
          Caution.danger(
              "the strength of a forge weld cannot be computed: proof-test it before it carries a"
                  + " load"));
    }
    Measure<Length> edge = end.edge();
    if (edge != null && measure(curl.scarfLength(bore)).isLessThan(leastScarf(edge))) {
      cautions.add(
          Caution.limit(
              "a scarf of "
                  + measure(curl.scarfLength(bore))
                  + " bears on its heel and stands off at its tip: thin at least "
                  + leastScarf(edge),
              GEOMETRY));
    }
    if (!BarrelEnd.isFlat(section)) {
      cautions.add(
          Caution.limit(
              "the end of a "
                  + section
                  + " is reckoned through its middle, as if it were flat: leave it longer and trim"
                  + " it to fit",
              GEOMETRY));
    }
    if (bore < section.thickness().in(unit)) {
      cautions.add(
          Caution.limit(
              "the bore of "
                  + measure(bore)
                  + " is less than the strap is thick ("
                  + section.thickness()
                  + "): so tight a curl thickens inside and may crack outside; bend it hot, and"
                  + " thin the strap or take a thicker pin if you can",
              TIGHT));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the uncovered angle was found} */
  public Working uncoveredWorking() {
    return working("bore left uncovered by the " + end, n -> curl.uncovered(n, bore), GEOMETRY);
  }

  /** {@return how the strip as rolled was found} */
  public Working stripWorking() {
    return working(title(), n -> curl.strip(n, bore), GEOMETRY);
  }

  /** {@return how the strip before thinning was found, the full turn being one of its steps} */
  public Working cutWorking() {
    Working working = working(title(), n -> curl.cut(n, bore), GEOMETRY);
    WeldAllowance weld = end.weld();
    return weld == null
        ? working.withSource(FULL_TURN).withSource(HAND)
        : working.withSource(weld.source());
  }

  /**
   * How the strip after thinning was found.
   *
   * @param cut as for {@link #stripFrom}
   * @return the working
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Working stripFromWorking(Quantity<Length> cut) {
    double length = Arguments.positive("cut", cut).in(unit);
    return working("strip of a cut length, " + end, n -> curl.stripFrom(n, length, bore), THINNING);
  }

  /**
   * How the least scarf was found.
   *
   * @param edgeThickness as for {@link #leastScarf}
   * @return the working
   * @throws IllegalArgumentException as for {@link #leastScarf}
   */
  public Working leastScarfWorking(Quantity<Length> edgeThickness) {
    double edge = edge(edgeThickness);
    return working("straight scarf that seats", n -> curl.leastScarf(n, bore, edge), GEOMETRY);
  }

  /** {@return how the least length to thin was found} */
  public Working leastThinnedWorking() {
    return working("length to thin", n -> curl.leastThinned(n, bore), GEOMETRY);
  }

  /**
   * How the floor of a slot was found.
   *
   * @param notchDepth as for {@link #slotFloorFromMark}
   * @return the working
   * @throws IllegalArgumentException if the notch ends within the curl
   */
  public Working slotFloorWorking(Quantity<Length> notchDepth) {
    Measure<Length> depth = depth(notchDepth);
    return working("floor of a slot on the flat bar", n -> floor(n, depth), GEOMETRY);
  }

  /** The same strap closed round another bore. */
  BarrelClosing of(double otherBore) {
    return new BarrelClosing(Measure.of(otherBore, unit), section, centred, end);
  }

  double cutWithWeld() {
    return stripWithWeld().likely().in(unit);
  }

  Estimate<Length> stripWithWeld() {
    WeldAllowance weld = end.weld();
    return weld == null ? strip() : strip().addDependent(weld.on(section, cutLength()));
  }

  private double floor(Notes n, Measure<Length> depth) {
    double c = n.given("c", "depth of the notch behind the pin", depth.in(unit));
    if (!centred) {
      return n.length("F", "from the mark, which is the pin line, to the slot's floor", "c", c);
    }
    Curl.mean(n, bore, section, unit);
    double x = curl.neck(n, bore);
    return n.length("F", "from the mark, which is the neck, to the slot's floor", "c − x", c - x);
  }

  private Measure<Length> depth(Quantity<Length> notchDepth) {
    Measure<Length> depth = Arguments.notNegative("depth of notch", notchDepth);
    double least = centred ? curl.neck(Notes.NONE, bore) : 0;
    if (depth.in(unit) < least) {
      throw new IllegalArgumentException(
          "depth of notch must reach the neck at "
              + measure(least)
              + " behind the pin, was "
              + depth
              + "; cut the notch deeper");
    }
    return depth;
  }

  private double edge(Quantity<Length> edgeThickness) {
    BarrelEnd.scarfedTo(edgeThickness).checkOn(section, centred);
    return Arguments.positive("edge thickness", edgeThickness).in(unit);
  }

  /** As good as the hand: a thickness either way. */
  private Estimate<Length> byHand(double likely) {
    double t = section.thickness().in(unit);
    return end.isWelded()
        ? Estimate.exact(measure(likely))
        : Estimate.of(measure(likely - t), measure(likely), measure(likely + t));
  }

  private String title() {
    return (centred ? "centred" : "rolled") + " barrel, " + end;
  }

  private Working working(String title, Notes.Calculation calculation, Source source) {
    return Notes.taken(title, unit, calculation).withSource(source).withCautions(cautions());
  }

  private Measure<Length> measure(double value) {
    return Measure.of(value, unit);
  }

  /** The end and the strip. */
  @Override
  public String toString() {
    return title() + ": strip of " + strip();
  }
}
