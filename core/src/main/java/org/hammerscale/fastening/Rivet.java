package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.RivetBlank;
import org.hammerscale.forging.Upset;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A rivet through iron: its diameter, chosen or by Unwin's rule d = 1.2 √t in inches (6.05 √t in
 * millimetres), its hole d + d/12, and the shank that a second head takes.
 *
 * <pre>{@code
 * Rivet.byUnwin(inches("3/8")).diameter()            // 0.7348 in  for 3/8 in plate, by the boilermaker's rule
 * Rivet rivet = Rivet.of(inches("3/8")).joining(inches("1/4"));
 * rivet.hole()                                       // 13/32 in  to drill or punch
 * rivet.countersinkIn(inches("1/4")).land()          // 11/64 in  iron left below a flush head
 * rivet.withCountersunkHead(inches("1/2")).length()  // 0.6415 in  shank to close it through 1/2 in of iron
 * rivet.withSnapHead(inches("1/2")).length()         // 1.0086 in  shank for a round head instead
 * }</pre>
 *
 * <p>Unwin's rule was made for boiler plate. In thin plate it gives rivets more than twice as thick
 * as the plate: an upper starting value, no check of strength. Cold rivets want a hole at most 1/32
 * in wider than themselves.
 *
 * <p>Source: Cyclopaedia article "Diameter and pitch of rivets" for rule and hole (read); 1.5 d of
 * shank for a round head, of a smithing page (read).
 */
public final class Rivet {
  private static final Source UNWIN =
      Source.read("chestofbooks.com Cyclopaedia", "Diameter and pitch of rivets, Unwin's rule");
  private static final Source CHOSEN = Source.commonPractice("a diameter that the smith chose");
  private static final Source HOLE =
      Source.read("chestofbooks.com Cyclopaedia", "Diameter and pitch of rivets: hole d + d/12");
  private static final Source COLD = Source.read("jmodela.coffeecup.com", "rivet holes");
  private static final Source WADDELL = Source.read("Waddell, De Pontibus", "p. 165");
  private static final Source HEAD_STOCK =
      Source.read("a smithing page; jmodela.coffeecup.com", "1.5 d of shank for a round head");
  private static final Measure<Length> INCH = Measures.inches(1);
  private static final Measure<Length> COLD_CLEARANCE = Measures.inches(1 / 32d);
  private static final double HEAD = 1.5;

  private record FlushHead(
      Measure<Length> diameter,
      Measure<Length> headDiameter,
      Measure<Angle> headAngle,
      Measure<Length> clearanceHole)
      implements CountersunkHead {}

  private final @Nullable Measure<Length> chosen;
  private final @Nullable Measure<Length> plate;
  private final Unit<Length> unit;

  private Rivet(
      @Nullable Measure<Length> chosen, @Nullable Measure<Length> plate, Unit<Length> unit) {
    this.chosen = chosen;
    this.plate = plate;
    this.unit = unit;
  }

  /**
   * A rivet of a chosen diameter.
   *
   * @param diameter more than zero
   * @return the rivet
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Rivet of(Quantity<Length> diameter) {
    Measure<Length> d = Arguments.positive("diameter", diameter);
    return new Rivet(d, null, d.getUnit());
  }

  /**
   * A rivet by Unwin's rule, d = 1.2 √t in inches. Round the diameter to what is sold, and make
   * that rivet with {@link #of}.
   *
   * @param plate the thickest plate that it goes through, more than zero
   * @return the rivet, with lengths in the plate's unit
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public static Rivet byUnwin(Quantity<Length> plate) {
    Measure<Length> t = Arguments.positive("plate", plate);
    return new Rivet(null, t, t.getUnit());
  }

  /**
   * The same rivet with the thickest plate that it goes through, so that it can caution.
   *
   * @param thickestPlate more than zero
   * @return the rivet of the same diameter
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Rivet joining(Quantity<Length> thickestPlate) {
    return new Rivet(diameter(), Arguments.positive("thickestPlate", thickestPlate), unit);
  }

  /** {@return the diameter d of its shank} */
  public Measure<Length> diameter() {
    return Measure.of(diameter(Notes.NONE), unit);
  }

  /** {@return its shank} */
  public Section shank() {
    return Section.round(diameter());
  }

  /** {@return the diameter of its hole, d + d/12} */
  public Measure<Length> hole() {
    return Measure.of(hole(Notes.NONE), unit);
  }

  /** {@return the shank that a round head takes by the bench's rule, 1.5 d} */
  public Measure<Length> headStock() {
    return Measure.of(headStock(Notes.NONE), unit);
  }

  /**
   * A countersunk head of 1.5 d and 90°: the whole cone takes 0.396 d of shank, for a shank
   * reckoned over the grip less its depth of d/4.
   *
   * @return the head
   */
  public Upset countersunkHead() {
    return Head.countersunk(shank(), diameter().multiply(HEAD), Measures.degrees(90));
  }

  /**
   * The shank under the first head for a snap head through a grip, swelling to fill the hole.
   *
   * @param grip the thickness of all it holds together, more than zero
   * @return the blank
   * @throws IllegalArgumentException if the grip is not more than zero
   */
  public RivetBlank withSnapHead(Quantity<Length> grip) {
    return RivetBlank.through(grip, Head.snap(shank())).inHole(hole());
  }

  /**
   * The shank under the first head for a flush head of 1.5 d and 90°, swelling to fill the hole: it
   * takes 0.146 d beyond the grip. The hole is filled over the full grip, cone and all, which
   * leaves a trifle to file off.
   *
   * @param grip the thickness of all it holds together, more than zero
   * @return the blank, reckoned over the full grip
   * @throws IllegalArgumentException if the grip is not more than zero
   */
  public RivetBlank withCountersunkHead(Quantity<Length> grip) {
    Upset head = Head.countersunkOverGrip(shank(), diameter().multiply(HEAD), Measures.degrees(90));
    return RivetBlank.through(grip, head).inHole(hole());
  }

  /**
   * The countersink for a flush head of 1.5 d and 90°. Bridge builders of the 1890s countersank no
   * plate of less than 7/16 in (Waddell, De Pontibus, p. 165, read); smiths do it in thinner iron.
   *
   * @param outerPlate the thickness of the iron where it sits, more than zero
   * @return the countersink
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Countersink countersinkIn(Quantity<Length> outerPlate) {
    Measure<Length> d = diameter();
    return new FlushHead(d, d.multiply(HEAD), Measures.degrees(90), hole())
        .countersinkIn(outerPlate);
  }

  /**
   * Where the rules are stretched.
   *
   * @return cautions for Unwin's rule in plate thinner than half the rivet, for a rivet thinner
   *     than the thickest plate, and for a hole too wide for a cold rivet
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    Measure<Length> d = diameter();
    Measure<Length> t = plate;
    if (t != null && chosen == null && d.isGreaterThan(t.multiply(2))) {
      cautions.add(
          Caution.limit(
              "the rivet of "
                  + d
                  + " is more than twice as thick as the plate of "
                  + t
                  + ": the rule was made for boiler plate; take it as the most, and choose a"
                  + " thinner one",
              UNWIN));
    }
    if (t != null && d.isLessThan(t)) {
      cautions.add(
          Caution.limit(
              "the rivet of " + d + " is thinner than the plate of " + t + "; take a thicker one",
              WADDELL));
    }
    Measure<Length> clearance = hole().subtract(d);
    if (clearance.isGreaterThan(COLD_CLEARANCE) && !clearance.isEquivalentTo(COLD_CLEARANCE)) {
      cautions.add(
          Caution.limit(
              "the hole is "
                  + clearance
                  + " wider than the rivet, more than 1/32 in: set it hot, or drill "
                  + d.add(COLD_CLEARANCE)
                  + " for a cold one",
              COLD));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the diameter was found} */
  public Working working() {
    return Notes.taken("rivet", unit, this::diameter)
        .withSource(chosen == null ? UNWIN : CHOSEN)
        .withCautions(cautions());
  }

  /** {@return how the hole was found} */
  public Working holeWorking() {
    return Notes.taken("hole of a rivet", unit, this::hole)
        .withSource(HOLE)
        .withCautions(cautions());
  }

  /** {@return how the shank for a round head was found} */
  public Working headWorking() {
    return Notes.taken("shank for a round head", unit, this::headStock).withSource(HEAD_STOCK);
  }

  private double diameter(Notes n) {
    if (chosen != null) {
      return n.given("d", "diameter of the rivet", chosen.in(unit));
    }
    double t = n.given("t", "thickest plate", Objects.requireNonNull(plate, "plate").in(unit));
    double e = n.given("e", "an inch", INCH.in(unit));
    return n.length("d", "diameter of the rivet", "1.2 √(t e)", 1.2 * Math.sqrt(t * e));
  }

  private double hole(Notes n) {
    double d = diameter(n);
    return n.length("D", "diameter of the hole", "d + d / 12", d + d / 12);
  }

  private double headStock(Notes n) {
    double d = diameter(n);
    return n.length("h", "shank for a round head", "1.5 d", 1.5 * d);
  }

  /** The diameter. */
  @Override
  public String toString() {
    return diameter() + " rivet";
  }
}
