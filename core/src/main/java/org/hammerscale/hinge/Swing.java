package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Stops.Stop;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How far a hinge opens: the turn of two leaves about one pin until iron meets iron, or wood wood.
 * Other names: {@index "opening angle"}, {@index throw}; past flat, {@index throw-back}.
 *
 * <pre>{@code
 * LeafProfile leaf = LeafProfile.tangent(Barrel.around(inches("1/2"), Section.flat(inches("1 1/2"), inches("1/4"))));
 * Swing swing = Swing.of(leaf);
 * swing.opening()                        // 60°  past flat, and no farther
 * swing.contact()                        // back corner of the notch
 * swing.leastNotch(degrees(120))         // 0.866 in  to cut behind the pin, for 120°
 * Swing deep = Swing.of(leaf.notchedBehindPin(inches("7/8")));
 * deep.opening(Hanging.JOINT)            // 300.5°  from shut, hung in the joint
 * deep.withBoards(Board.of(inches(1)).edgeFromPin(inches(1))).opening()   // 67.38°  if boards are in the way
 * }</pre>
 *
 * <p><b>Sense.</b> Angles count from flat, the leaves in line. {@link #opening} turns the moving
 * leaf toward the side of the upper faces: for a tangent leaf the flush side, away from the barrel.
 * {@link #backSwing} turns it the other way, and {@link #turnedOver} is the same hinge with the two
 * ways exchanged, so that every question can be asked of either. {@link Hanging} counts from shut.
 *
 * <p><b>Rule.</b> In a section through a knuckle of one leaf, a corner of the other leaf's notch, c
 * behind the pin and s above it, meets the face, f above the pin, when c sin θ + s cos θ = f + g.
 * With both knuckles looked at, θ is the lesser. Equal tangent leaves give 2 atan(c/R) from c = R
 * on, where it is 90°. Leaves with room between them fold flat, and past 180° until their tips
 * meet, or an edge of a notch would lose its gap. The barrel, being round, never limits the angle,
 * but asks for a notch of √((R + g)² − d²), where d is the least distance of the plate's level from
 * the pin.
 *
 * <p>Angles are in degrees, lengths in the fixed leaf's unit; both are exact as plane geometry, to
 * 1e-9°. Behind the barrel the angle is steep in the depth of the notch: a file stroke opens it by
 * many degrees, and {@link #cautions} says so. Not counted: play of the pin, taper of the leaves,
 * the rounding where a rolled leaf runs into its barrel. Source: plane geometry.
 */
public final class Swing {
  private static final Source GEOMETRY =
      Source.computed("plane geometry of a corner that turns about the pin");

  private final LeafProfile fixed;
  private final LeafProfile moving;
  private final Measure<Length> gap;
  private final Unit<Length> unit;
  private final Stops stops;

  private Swing(LeafProfile fixed, LeafProfile moving, Measure<Length> gap) {
    this.fixed = fixed;
    this.moving = moving;
    this.gap = gap;
    this.unit = fixed.outsideDiameter().getUnit();
    this.stops = new Stops(fixed, moving, gap, unit);
  }

  /**
   * The swing of two equal leaves, without a gap.
   *
   * @param leaf either of them
   * @return the swing
   * @throws IllegalArgumentException if the leaf's notch does not clear the barrel, or the leaf
   *     does not reach past it
   */
  public static Swing of(LeafProfile leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return between(leaf, leaf);
  }

  /**
   * The swing of two leaves that may differ in everything, without a gap.
   *
   * @param fixed the leaf on the frame
   * @param moving the leaf on the door
   * @return the swing
   * @throws IllegalArgumentException if a notch does not clear the other's barrel, or a leaf does
   *     not reach past the notch
   */
  public static Swing between(LeafProfile fixed, LeafProfile moving) {
    Objects.requireNonNull(moving, "moving");
    Objects.requireNonNull(fixed, "fixed");
    return new Swing(fixed, moving, fixed.outsideDiameter().withValue(0));
  }

  /**
   * The same with a running gap ("paint clearance") kept between the edge of each notch and the
   * other's barrel and face, also past 180°. Tips and boards meet without one. A leaf whose notch
   * was not given is taken as cut back for barrel and gap, so that a gap opens it further; {@link
   * #cautions} says so.
   *
   * @param runningGap zero or more
   * @return the swing
   * @throws IllegalArgumentException if the gap is negative, or a notch does not leave it
   */
  public Swing withGap(Quantity<Length> runningGap) {
    return new Swing(fixed, moving, Arguments.notNegative("running gap", runningGap));
  }

  /**
   * The same with a board on the upper face of either leaf. For boards that differ, or on one side
   * only, see {@link LeafProfile#onBoard}.
   *
   * @param each the board
   * @return the swing
   */
  public Swing withBoards(Board each) {
    Objects.requireNonNull(each, "each");
    LeafProfile one = fixed.onBoard(each);
    return new Swing(one, fixed == moving ? one : moving.onBoard(each), gap);
  }

  /**
   * The same hinge the other way up: its opening is this one's back swing.
   *
   * @return the swing
   */
  public Swing turnedOver() {
    LeafProfile one = fixed.turnedOver();
    return new Swing(one, fixed == moving ? one : moving.turnedOver(), gap);
  }

  /**
   * The same hinge with the leaves exchanged, so that {@link #leastNotch} speaks of the other one.
   * It opens as far.
   *
   * @return the swing
   */
  public Swing exchanged() {
    return new Swing(/* fixed= */ moving, /* moving= */ fixed, gap);
  }

  /** {@return the leaf on the post, which stays} */
  public LeafProfile fixed() {
    return fixed;
  }

  /** {@return the leaf that turns} */
  public LeafProfile moving() {
    return moving;
  }

  /**
   * The opening past flat toward the side of the upper faces.
   *
   * @return the angle from flat, exact, in degrees
   */
  public Measure<Angle> opening() {
    return Measure.of(stops.angle(), ShopUnits.DEGREE);
  }

  /** {@return what meets at the full opening} */
  public Contact contact() {
    return stops.first().contact();
  }

  /**
   * How far the leaves turn at the knuckles of the moving leaf, where the fixed one is notched,
   * whatever stops the hinge elsewhere; ask the swing {@link #exchanged} for the fixed leaf's
   * knuckles. It tells which notch to file deeper.
   *
   * @return the angle from flat, exact, in degrees; 180° and more if the faces pass each other
   */
  public Measure<Angle> notchOpening() {
    return Measure.of(stops.atMoving().angle(Notes.NONE), ShopUnits.DEGREE);
  }

  /** {@return how the opening at the knuckles of the moving leaf was found} */
  public Working notchOpeningWorking() {
    Stop stop = stops.atMoving();
    return Notes.taken("opening at the fixed leaf's notch", unit, stop::angle).withSource(GEOMETRY);
  }

  /** {@return how the opening was found} */
  public Working openingWorking() {
    Stop stop = stops.first();
    return Notes.taken("opening past flat, to the " + stop.contact(), unit, stop::angle)
        .withSource(GEOMETRY)
        .withCautions(cautions());
  }

  /**
   * The swing from flat the other way, toward the barrels of tangent leaves: {@link #opening} of
   * the hinge {@link #turnedOver}, which also tells the contact and the working.
   *
   * @return the angle from flat, exact, in degrees
   */
  public Measure<Angle> backSwing() {
    return turnedOver().opening();
  }

  /**
   * The opening from shut of a door that opens toward the side of the upper faces.
   *
   * @param hanging how the door hangs
   * @return the folding when shut and the opening past flat, exact, in degrees
   */
  public Measure<Angle> opening(Hanging hanging) {
    Objects.requireNonNull(hanging, "hanging");
    return hanging.fromShut(opening());
  }

  /**
   * Whether the leaves fold back far enough for the door to shut.
   *
   * @param hanging how the door hangs
   * @return whether {@link #backSwing} reaches {@link Hanging#folded}
   */
  public boolean shuts(Hanging hanging) {
    Objects.requireNonNull(hanging, "hanging");
    return turnedOver().clears(hanging.folded());
  }

  /**
   * Whether the hinge opens past flat by an angle, but for rounding of the last digits.
   *
   * @param pastFlat the angle from flat, 0° to 360°
   * @return whether nothing stops it
   * @throws IllegalArgumentException if the angle lies outside its range
   */
  public boolean clears(Quantity<Angle> pastFlat) {
    return stops.clear(Arguments.angle("opening past flat", pastFlat, Stops.MOST));
  }

  /**
   * The least depth of notch, of the fixed leaf, with which the other's barrel turns: √((R + g)² −
   * d²), √(2 R t − t²) for equal tangent leaves without gap and R for centred ones.
   *
   * @return the depth behind the pin, exact, in the fixed leaf's unit; zero if the plate passes the
   *     barrel
   */
  public Measure<Length> barrelNotch() {
    return Measure.of(stops.atMoving().barrelNotch(), unit);
  }

  /** {@return how the notch for the barrel was found} */
  public Working barrelNotchWorking() {
    return Notes.taken("notch that clears the barrel", unit, stops.atMoving()::barrelNotch)
        .withSource(GEOMETRY);
  }

  /**
   * The least depth of notch, of the fixed leaf, for a wanted opening past flat, whatever notch it
   * has now: the greater of (f + g − s cos θ) / sin θ for its two corners, and what the barrel
   * needs. Equal tangent leaves beyond 90° need R tan(θ/2). The moving leaf needs the same if it is
   * equal; else ask the swing {@link #exchanged}.
   *
   * @param pastFlat the opening from flat, from 0° to less than 180°, or up to where the tips meet
   *     for leaves that fold with room between
   * @return the depth behind the pin, exact, in the fixed leaf's unit
   * @throws IllegalArgumentException if no notch lets the leaves or their boards open so far
   */
  public Measure<Length> leastNotch(Quantity<Angle> pastFlat) {
    double wanted = stops.reachable(pastFlat);
    return Measure.of(stops.leastNotch(Notes.NONE, wanted), unit);
  }

  /**
   * What decides the least notch for an opening.
   *
   * @param pastFlat the opening from flat, as for {@link #leastNotch}
   * @return the barrel or a corner of the notch
   * @throws IllegalArgumentException as {@link #leastNotch}
   */
  public Contact leastNotchContact(Quantity<Angle> pastFlat) {
    double wanted = stops.reachable(pastFlat);
    return stops.notchContact(wanted);
  }

  /**
   * How the least notch for an opening is found.
   *
   * @param pastFlat the opening from flat, as for {@link #leastNotch}
   * @return the working
   * @throws IllegalArgumentException as {@link #leastNotch}
   */
  public Working leastNotchWorking(Quantity<Angle> pastFlat) {
    double wanted = stops.reachable(pastFlat);
    return Notes.taken("least notch for an opening", unit, n -> stops.leastNotch(n, wanted))
        .withSource(GEOMETRY);
  }

  /**
   * The room between the leaves when they are folded back on each other, toward their lower faces:
   * the sum of the backs' heights above the pin, 2 (R − t) for equal tangent leaves.
   *
   * @return the room, exact, in the fixed leaf's unit; negative if the leaves meet before they are
   *     parallel
   */
  public Measure<Length> roomWhenFolded() {
    return Measure.of(roomWhenFolded(Notes.NONE), unit);
  }

  /** {@return how the room between the folded leaves was found} */
  public Working roomWhenFoldedWorking() {
    return Notes.taken("room between folded leaves", unit, this::roomWhenFolded)
        .withSource(GEOMETRY);
  }

  private double roomWhenFolded(Notes n) {
    double one =
        n.given("a", "back of the fixed leaf above the pin", fixed.backAbovePin().in(unit));
    double other =
        n.given("b", "back of the moving leaf above the pin", moving.backAbovePin().in(unit));
    return n.length("k", "room between the folded leaves", "a + b", one + other);
  }

  /**
   * A caution where the opening is steep in the depth of the notch, with what a sixty-fourth of an
   * inch more would give; and one where a notch that was not given is cut for the gap.
   *
   * @return the cautions, or none
   */
  public List<Caution> cautions() {
    return stops.cautions(GEOMETRY);
  }

  /** The two leaves and the gap. */
  @Override
  public String toString() {
    return (fixed == moving
            ? "swing, each a " + fixed
            : "swing of a " + fixed + "\n  and a " + moving)
        + (gap.getValue() > 0 ? "\n  gap " + gap : "");
  }
}
