package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Plain;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A hook that holds a door open at an angle, its own eye on the wall and its tip in an eye on the
 * door. Other names: {@index "door hook"}, {@index "gate stay"}, {@index "hold-open hook"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(10)), Material.MILD_STEEL);
 * CabinHookBuilder asked = CabinHook.betweenEyes(millimetres(700), millimetres(-250), rod);
 * CabinHook hook = asked.off(millimetres(20), millimetres(20)).heldOpen(degrees(100)).hook();
 * hook.length()                      // 674.71 mm  from seat to seat
 * hook.leverArm()                    // 249.95 mm  how far its line passes the pin
 * hook.play(millimetres(2))          // 0.4584°    what 2 mm of slack let the door swing
 * hook.pull(newtons(100), millimetres(400))   // 160 N  wind on the door's middle, in the hook
 * hook.shutEye(millimetres(20))      // 1374.71 mm  from the pin, where it also holds the door shut
 * }</pre>
 *
 * <p>The pin is the origin, the shut door lies along it and opens toward the side that {@code off}
 * counts to. Lengths between seats: where iron presses on iron, in the middle of the eye's wire.
 * Exact as plane geometry, in the unit of the place on the door. A hook whose line passes near the
 * pin holds nothing. Source: two circles, one about the pin and one about the eye on the wall.
 */
public final class CabinHook {
  private static final Source CIRCLES =
      Source.computed("circles about the pin and about the eye on the wall meet at the door's eye");
  private static final double USELESS = 0.1;

  private final Bar rod;
  private final Bar eyes;
  private final Unit<Length> unit;
  private final EyeCircles circles;
  private final Measure<Length> doorAlong;
  private final Measure<Length> doorOut;
  private final Measure<Length> wallAlong;
  private final Measure<Length> wallOut;
  private final Measure<Length> standOff;
  private final Measure<Length> inside;
  private final Measure<Length> bore;
  private final Measure<Length> shank;
  private final boolean driven;
  private final Measure<Length> length;
  private final Measure<Angle> opening;

  CabinHook(CabinHookBuilder asked) {
    this.rod = asked.rod;
    this.eyes = asked.eyes;
    this.unit = asked.unit;
    this.circles = new EyeCircles(asked);
    this.doorAlong = asked.doorAlong;
    this.doorOut = asked.doorOut;
    this.wallAlong = asked.wallAlong;
    this.wallOut = asked.wallOut;
    this.standOff = asked.standOff;
    this.shank = asked.shank;
    this.driven = asked.driven;
    Graduation<Length> rule = asked.rule;
    Measure<Length> wide = thickness().add(asked.clearance);
    Measure<Length> own = wire().add(asked.clearance);
    this.inside = rule == null ? wide : rule.upTo(wide).to(unit);
    this.bore = rule == null ? own : rule.upTo(own).to(unit);
    Measure<Length> exact =
        Measure.of(circles.distance(Notes.NONE, asked.opening.in(ShopUnits.RADIAN)), unit);
    if (rule == null) {
      this.length = exact;
      this.opening = asked.opening;
    } else {
      this.length = onRule(rule, exact).to(unit);
      this.opening = circles.near(asked.opening, length);
    }
    checkRoom();
  }

  /** The nearest mark at which the hook still reaches: at its farthest and nearest it just does. */
  private Measure<Length> onRule(Graduation<Length> rule, Measure<Length> exact) {
    Measure<Length> nearest = rule.nearest(exact);
    if (circles.reach(nearest)) {
      return nearest;
    }
    return nearest.isGreaterThan(exact) ? rule.downTo(exact) : rule.upTo(exact);
  }

  /**
   * Begins a description.
   *
   * @param onDoor how far the seat on the door lies from the pin, along the door; more than zero;
   *     its unit is that of the answers
   * @param onWall how far the seat on the wall lies from the pin, along the shut door's line;
   *     negative beyond the pin, as usual
   * @param rod what the hook is made of
   * @return a builder that is told the rest
   * @throws IllegalArgumentException if the place on the door is not more than zero
   */
  public static CabinHookBuilder betweenEyes(
      Quantity<Length> onDoor, Quantity<Length> onWall, Bar rod) {
    return new CabinHookBuilder(onDoor, onWall, rod);
  }

  /** {@return how far the seat on the door lies from the pin, along the shut door} */
  public Measure<Length> onDoor() {
    return doorAlong;
  }

  /** {@return how far the seat on the door lies off the pin's line, the door shut} */
  public Measure<Length> doorOff() {
    return doorOut;
  }

  /** {@return how far the seat on the wall lies from the pin, along the shut door; signed} */
  public Measure<Length> onWall() {
    return wallAlong;
  }

  /** {@return how far the seat on the wall lies off the pin's line} */
  public Measure<Length> wallOff() {
    return wallOut;
  }

  /** {@return how far the middle of the hook stands off the faces of door and wall} */
  public Measure<Length> standOff() {
    return standOff;
  }

  /** {@return what it is made of} */
  public Bar rod() {
    return rod;
  }

  /** {@return what its two eyes are made of} */
  public Bar eyeRod() {
    return eyes;
  }

  /** {@return the clear inside of its own eye} */
  public Measure<Length> bore() {
    return bore;
  }

  /** {@return how far it holds the door open, from shut} */
  public Measure<Angle> opening() {
    return opening;
  }

  /** {@return from seat to seat; exact, or on the rule that was asked for} */
  public Measure<Length> length() {
    return length;
  }

  /**
   * How the distance of the seats was found, at the opening that the hook holds.
   *
   * @return the working; its result is the {@link #length} but for the last digits that a rule
   *     costs
   */
  public Working working() {
    return Notes.taken(
            "cabin hook from seat to seat",
            unit,
            n -> circles.distance(n, opening.in(ShopUnits.RADIAN)))
        .withSource(CIRCLES)
        .withCautions(cautions());
  }

  /**
   * The opening at which a hook of another length between the same eyes holds the door, on the same
   * side of the line from the pin to the eye on the wall.
   *
   * @param seatToSeat its length, more than zero
   * @return the angle from shut, exact, in degrees; −180° to 180°, 0° to 270° where it can
   * @throws IllegalArgumentException if a hook of this length does not reach, or is too long
   */
  public Measure<Angle> openingWith(Quantity<Length> seatToSeat) {
    Measure<Length> told = Arguments.positive("seatToSeat", seatToSeat);
    return circles.near(opening, told);
  }

  /**
   * The other opening that the same length gives, on the far side of the line from the pin to the
   * eye on the wall: no place to stand, but where the door strikes if the hook is put in there.
   *
   * @return the angle from shut, exact, in degrees, from −180° to 180°
   */
  public Measure<Angle> otherOpening() {
    return circles.acrossFrom(opening, length);
  }

  /** {@return how far the hook's line passes the pin, exact: what it holds by} */
  public Measure<Length> leverArm() {
    return Measure.of(arm(Notes.NONE), unit);
  }

  /** {@return how the lever arm was found} */
  public Working leverArmWorking() {
    return Notes.taken("lever arm of a cabin hook", unit, this::arm).withSource(CIRCLES);
  }

  /**
   * How far the door can swing with some slack in the hook's seats: slack ÷ arm, for a small slack.
   *
   * @param slack zero or more
   * @return the angle, in degrees
   * @throws IllegalArgumentException if the slack is negative
   */
  public Measure<Angle> play(Quantity<Length> slack) {
    double loose = Arguments.notNegative("slack", slack).in(unit);
    return Measure.of(loose / arm(Notes.NONE), ShopUnits.RADIAN).to(ShopUnits.DEGREE);
  }

  /**
   * What the hook and both its eyes bear when something pushes on the door: F a ÷ arm.
   *
   * @param push square to the door, more than zero
   * @param fromPin how far from the pin, zero or more
   * @return the pull along the hook, exact
   * @throws IllegalArgumentException if an argument is out of range
   */
  public Measure<Force> pull(Quantity<Force> push, Quantity<Length> fromPin) {
    Measure<Force> force = Arguments.positiveForce("push", push);
    double out = Arguments.notNegative("fromPin", fromPin).in(unit);
    return force.multiply(out / arm(Notes.NONE));
  }

  /**
   * Where another eye goes for the same hook, turned over on the door, to hold it shut: on the
   * frame beyond the closing edge.
   *
   * @param out how far its seat lies off the pin's line, as the others do
   * @return how far from the pin along the shut door, exact
   * @throws IllegalArgumentException if the hook does not reach so far out
   */
  public Measure<Length> shutEye(Quantity<Length> out) {
    double l = length.in(unit);
    double up = Arguments.length("out", out).in(unit) - doorOut.in(unit);
    if (!(Math.abs(up) <= l)) {
      throw new IllegalArgumentException(
          "out must lie within the hook's length of "
              + length
              + " from the door's eye, was "
              + Measure.of(up, unit)
              + " beyond it; set the eye closer to the door's face");
    }
    return doorAlong.add(Measure.of(Math.sqrt(l * l - up * up), unit));
  }

  /**
   * The least room between the hook and the faces of door and wall, as if both faces went on.
   *
   * @return the room, exact; negative if the hook would have to pass through one
   */
  public Measure<Length> clearance() {
    double angle = opening.in(ShopUnits.RADIAN);
    double x = wallAlong.in(unit);
    double y = wallOut.in(unit);
    double overDoor = y * Math.cos(angle) - x * Math.sin(angle) - doorOut.in(unit);
    double r = doorAlong.in(unit);
    double n = doorOut.in(unit);
    double overWall = r * Math.sin(angle) + n * Math.cos(angle) - y;
    double least = Math.min(0, Math.min(overDoor, overWall));
    return standOff.add(Measure.of(least, unit)).subtract(thickness().divide(2));
  }

  /**
   * The hook itself: its eye, the shank, the end turned down and its tip, three wires long.
   *
   * @return the piece, trimmed at the tip
   */
  public Piece hook() {
    return Piece.of(
        rod,
        Eye.turned(bore, rod.section()),
        Plain.of(rod.section(), straight()),
        Hook.cabin(wire().divide(2), rod.section()).withTip(wire().multiply(3)));
  }

  /**
   * The line of the hook's middle from where its eye ends to its tip, to lay the hot rod on.
   *
   * @return the shank, the end turned down and the tip
   */
  public MeanLine shankLine() {
    Measure<Length> round = wire().add(thickness()).divide(2);
    return MeanLine.straight(straight())
        .bentRight(round, Measures.degrees(90))
        .straightOn(wire().multiply(3));
  }

  /**
   * From the far inside of the hook's own eye to the inside of its turned-down end: the length to
   * check the finished hook by.
   *
   * @return the seats' distance and one wire, exact
   */
  public Measure<Length> insideLength() {
    return length.add(wire());
  }

  /** {@return the clear inside of either eye} */
  public Measure<Length> eyeInside() {
    return inside;
  }

  /**
   * One of the two eyes: a screw eye, or a driven staple.
   *
   * @return the piece
   */
  public Piece eye() {
    if (driven) {
      return staple().piece();
    }
    return Piece.of(eyes, Eye.turned(inside, eyes.section()), Plain.of(eyes.section(), shank));
  }

  /**
   * How far the middle of a screw eye's shank lies behind its seat: the holes in the wood are so
   * much farther apart at either end. Nothing for a staple, whose crown is the seat.
   *
   * @return the length, exact
   */
  public Measure<Length> seatToShank() {
    return driven ? inside.withValue(0) : inside.add(wire()).divide(2);
  }

  /** {@return whether its eyes are driven staples; else they are screw eyes} */
  public boolean hasStaples() {
    return driven;
  }

  /**
   * One of the two eyes, if they are staples.
   *
   * @return the staple
   * @throws IllegalArgumentException if they are screw eyes
   */
  public Staple staple() {
    if (!driven) {
      throw new IllegalArgumentException("staple must be there, was a screw eye; ask for the eye");
    }
    Measure<Length> high = standOff.subtract(wire().divide(2));
    Measure<Length> least = inside.isLessThan(high) ? high : inside;
    return Staple.inside(inside, eyes).standing(least).driven(shank);
  }

  /** {@return all pieces to forge: the hook and its two eyes} */
  public List<Piece> pieces() {
    Piece one = eye();
    return List.of(hook(), one, one);
  }

  /** {@return what is not safe about it, and where it holds badly} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (leverArm().ratio(doorAlong) < USELESS) {
      cautions.add(
          Caution.limit(
              "the hook's line passes the pin at "
                  + leverArm()
                  + " only: it holds the door badly; move the eye on the wall farther from the pin",
              CIRCLES));
    }
    if (clearance().getValue() < 0) {
      cautions.add(
          Caution.limit(
              "the hook would pass "
                  + clearance().negate()
                  + " into the face of door or wall; let the eyes stand farther off",
              CIRCLES));
    }
    cautions.add(
        Caution.danger(
            "wind on a door held open pulls its eyes out: compare the pull with what they hold in"
                + " the wood; a door that comes loose strikes, and a hook is no lock"));
    return List.copyOf(cautions);
  }

  private Measure<Length> thickness() {
    return rod.section().thickness().to(unit);
  }

  private Measure<Length> wire() {
    return eyes.section().thickness().to(unit);
  }

  private Measure<Length> straight() {
    return insideLength().subtract(bore).subtract(thickness()).subtract(wire().divide(2));
  }

  private void checkRoom() {
    if (!(straight().getValue() > 0)) {
      throw new IllegalArgumentException(
          "onWall must leave room for a hook of more than "
              + length.subtract(straight())
              + " from seat to seat, was "
              + length
              + "; set the eyes farther apart, or take a thinner rod");
    }
    if (!(arm(Notes.NONE) > 1e-9 * doorAlong.getValue())) {
      throw new IllegalArgumentException(
          "onWall must not lie in one line with the pin and the door's eye, was "
              + wallAlong
              + "; move the eye on the wall off that line");
    }
  }

  private double arm(Notes n) {
    return circles.arm(n, opening.in(ShopUnits.RADIAN));
  }

  /** Its length, opening and rod. */
  @Override
  public String toString() {
    return "cabin hook of "
        + rod.section()
        + ", "
        + length
        + " from seat to seat, holds the door at "
        + opening;
  }
}
