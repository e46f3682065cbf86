package org.hammerscale.latch;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Upset;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A staple's loop riveted on a plate that is screwed down, where wood is too thin to drive into or
 * is pulled too hard: of a hasp, a hook, a bolt. Other names: {@index "eye plate"}, {@index "plate
 * staple"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(6)), Material.MILD_STEEL);
 * Bar flat = Bar.of(Section.flat(millimetres(25), millimetres(4)), Material.MILD_STEEL);
 * StaplePlate eye = StaplePlate.under(Staple.inside(millimetres(13), rod), flat, millimetres(9));
 * eye.length()                            // 61 mm  of plate
 * eye.screwHoles().get(0)                 // 9 mm   from its end, one at either end
 * eye.legHoles().get(0)                   // 21 mm  from its end
 * eye.loop().layout().cutLength()         // 39.6 mm  of rod, both its rivets in it
 * }</pre>
 *
 * <p>The legs go through the plate and are headed over behind it, flush in a countersink of 90°
 * half as wide again as the rod. A screw's head stays half its width clear of the loop, its middle
 * a head from the plate's end: our own judgement. Heights count from the face of the plate. Lengths
 * come out in the staple's unit. Source: plane geometry; volume is conserved.
 */
public final class StaplePlate {
  private static final Source PLACES =
      Source.commonPractice("half a head clear of the loop, a head from the end");
  private static final double RIVET = 1.5;

  private final Staple staple;
  private final Bar flat;
  private final Measure<Length> screwHead;
  private final Measure<Length> length;
  private final Unit<Length> unit;

  private StaplePlate(Staple staple, Bar flat, Measure<Length> screwHead, Measure<Length> length) {
    this.staple = staple;
    this.flat = flat;
    this.screwHead = screwHead;
    this.length = length;
    this.unit = length.getUnit();
  }

  /**
   * A loop on its plate, two screws beside it.
   *
   * @param staple whose loop it is, of round rod; how deep it would be driven does not matter
   * @param flat what the plate is cut from, its length across the loop
   * @param screwHead the diameter of a screw's head, more than zero
   * @return the loop and its plate
   * @throws IllegalArgumentException if the rod is not round, or the plate too narrow or too thin
   *     for heads and rivets
   */
  public static StaplePlate under(Staple staple, Bar flat, Quantity<Length> screwHead) {
    Objects.requireNonNull(staple, "staple");
    Section plate = Objects.requireNonNull(flat, "flat").section();
    Section.requireArea("flat", plate);
    Unit<Length> unit = staple.insideWidth().getUnit();
    Measure<Length> head = Arguments.positive("screwHead", screwHead).to(unit);
    Section rod = staple.rod().section();
    if (!rod.isRound()) {
      throw new IllegalArgumentException(
          "staple must be of round rod to be riveted, was " + rod + "; take round rod");
    }
    Measure<Length> rivet = rod.width().multiply(RIVET);
    Measure<Length> wide = plate.width().to(unit);
    String wider = "take a wider flat";
    Arguments.atLeast("flat", wide, "a screw's head", head, wider);
    Arguments.atLeast("flat", wide, "a rivet", rivet.to(unit), wider);
    Measure<Length> deep = rivet.subtract(rod.width()).divide(2);
    Arguments.atLeast(
        "flat", plate.thickness().to(unit), "a countersink", deep.to(unit), "take a thicker one");
    Measure<Length> long1 = Measure.of(length(Notes.NONE, staple, head, unit), unit);
    return new StaplePlate(staple, flat, head, long1);
  }

  /**
   * The same on the marks of a rule: its length up, the holes kept about its middle.
   *
   * @param rule the rule
   * @return the loop and its plate
   */
  public StaplePlate on(Graduation<Length> rule) {
    Objects.requireNonNull(rule, "rule");
    return new StaplePlate(staple, flat, screwHead, rule.upTo(length).to(unit));
  }

  /** {@return the staple whose loop it is} */
  public Staple staple() {
    return staple;
  }

  /** {@return how long the plate is: C + d + 4 h} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return how the plate's length was found, before a rule} */
  public Working working() {
    return Notes.taken("plate under a staple", unit, n -> length(n, staple, screwHead, unit))
        .withSource(PLACES)
        .withCautions(cautions());
  }

  /** {@return where the holes for the legs are, from the plate's end; exact} */
  public List<Measure<Length>> legHoles() {
    return about(staple.legCentres().divide(2));
  }

  /** {@return where the holes for the screws are, from the plate's end; exact} */
  public List<Measure<Length>> screwHoles() {
    return about(staple.legCentres().add(rod()).divide(2).add(screwHead));
  }

  private List<Measure<Length>> about(Measure<Length> off) {
    Measure<Length> middle = length.divide(2);
    return List.of(middle.subtract(off), middle.add(off));
  }

  /** {@return what the legs' holes are countersunk to behind the plate, at 90°} */
  public Measure<Length> rivetCountersink() {
    return rod().multiply(RIVET);
  }

  /**
   * The loop as it is forged: a rivet's metal, the bend, a rivet's metal.
   *
   * @return the piece, trimmed at both ends
   */
  public Piece loop() {
    Section rod = staple.rod().section();
    Measure<Length> leg = staple.heightOverAll().add(flat.section().thickness().to(unit));
    Upset rivet = Head.countersunkOverGrip(rod, rivetCountersink(), Measures.degrees(90));
    return Piece.of(staple.rod(), rivet.reversed(), staple.bend().withLegs(leg, leg), rivet)
        .withReferenceAfter(1)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** {@return the plate, to be drilled} */
  public Piece plate() {
    return Piece.of(flat, Plain.of(flat.section(), length));
  }

  /** {@return both pieces: the loop and its plate} */
  public List<Piece> pieces() {
    return List.of(loop(), plate());
  }

  /** {@return how it is riveted, and what holds it} */
  public List<Caution> cautions() {
    return List.of(
        Caution.danger(
            "rivet the legs hot and file them flush behind; wear eye protection: a head that is"
                + " hammered cold chips"),
        Caution.limit(
            "a plate holds as its screws do: reckon them in their wood, and take bolts right through"
                + " where somebody pulls",
            PLACES));
  }

  private Measure<Length> rod() {
    return staple.rod().section().width().to(unit);
  }

  private static double length(
      Notes n, Staple staple, Measure<Length> screwHead, Unit<Length> unit) {
    double c = n.given("C", "between the middles of the legs", staple.legCentres().in(unit));
    double d = n.given("d", "rod", staple.rod().section().width().in(unit));
    double h = n.given("h", "head of a screw", screwHead.in(unit));
    return n.length("L", "length of the plate", "C + d + 4 h", c + d + 4 * h);
  }

  /** Loop and plate. */
  @Override
  public String toString() {
    return staple.rod().section()
        + " loop, "
        + staple.insideWidth()
        + " × "
        + staple.insideHeight()
        + " inside, on "
        + length
        + " of "
        + flat.section();
  }
}
