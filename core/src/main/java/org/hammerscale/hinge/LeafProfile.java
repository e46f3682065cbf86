package org.hammerscale.hinge;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * A hinge leaf (strap, band) seen along the pin, at the joint: how its plate lies to the pin, how
 * far it is cut back for the other leaf's barrel, and how far it reaches. Two of them make a {@link
 * Swing}. The depth of its notch behind the pin is the {@index setback} of formulas.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Barrel barrel = Barrel.around(inches("1/2"), strap);
 * LeafProfile leaf = LeafProfile.tangent(barrel).notchedBehindPin(inches("5/8"));
 * leaf.faceAbovePin()                          // 1/2 in   the face is level with the barrel's top
 * leaf.turnedOver().faceAbovePin()             // -1/4 in  laid on its face, the barrel stands proud
 * LeafProfile.centred(barrel).faceAbovePin()   // 1/8 in   half a thickness: the pin lies in the leaf
 * }</pre>
 *
 * <p>"Above" is the side of the face that the plate turns to when the hinge opens past flat. A
 * tangent leaf is rolled up from one face, so that its plate lies flush with the top of its barrel,
 * and the barrel hangs below: face R, back R − t above the pin, with the barrel's outside radius R
 * and the thickness t. A centred (joggled) leaf has t/2 above and below. Lengths are exact, in the
 * barrel's unit. Source: plane geometry.
 */
public final class LeafProfile {
  private final Measure<Length> outside;
  private final Measure<Length> face;
  private final Measure<Length> back;
  private final @Nullable Measure<Length> notch;
  private final @Nullable Measure<Length> length;
  private final @Nullable Board board;
  private final @Nullable Board boardBehind;

  private LeafProfile(
      Measure<Length> outside,
      Measure<Length> face,
      Measure<Length> back,
      @Nullable Measure<Length> notch,
      @Nullable Measure<Length> length,
      @Nullable Board board,
      @Nullable Board boardBehind) {
    this.outside = outside;
    this.face = face;
    this.back = back;
    this.notch = notch;
    this.length = length;
    this.board = board;
    this.boardBehind = boardBehind;
  }

  private static LeafProfile of(Barrel barrel, Measure<Length> face, Measure<Length> back) {
    return new LeafProfile(barrel.outsideDiameter(), face, back, null, null, null, null);
  }

  /**
   * A leaf whose barrel is rolled up from one face, with that face up: its plate lies between R − t
   * and R above the pin. {@link #turnedOver} is the same leaf with the barrel proud above.
   *
   * @param barrel its barrel
   * @return the leaf, cut back no more than the other's barrel needs
   */
  public static LeafProfile tangent(Barrel barrel) {
    Objects.requireNonNull(barrel, "barrel");
    Measure<Length> radius = barrel.outsideDiameter().divide(2);
    return of(barrel, radius, radius.subtract(barrel.section().thickness()));
  }

  /**
   * A leaf joggled so that the pin lies in the middle of its plate, t/2 above and below.
   *
   * @param barrel its barrel
   * @return the leaf, cut back no more than the other's barrel needs
   */
  public static LeafProfile centred(Barrel barrel) {
    Objects.requireNonNull(barrel, "barrel");
    Measure<Length> half = thickness(barrel).divide(2);
    return of(barrel, half, half.negate());
  }

  /**
   * A leaf joggled to any other height.
   *
   * @param barrel its barrel
   * @param faceAbovePin the upper face's height above the pin's centre, from −(R − t) to R: the
   *     plate lies within the height of the barrel
   * @return the leaf, cut back no more than the other's barrel needs
   * @throws IllegalArgumentException if the plate would lie beyond the barrel
   */
  public static LeafProfile offset(Barrel barrel, Quantity<Length> faceAbovePin) {
    Objects.requireNonNull(barrel, "barrel");
    Measure<Length> t = thickness(barrel);
    Measure<Length> radius = barrel.outsideDiameter().divide(2);
    Measure<Length> least = t.subtract(radius);
    Measure<Length> face = Arguments.length("face above pin", faceAbovePin).to(t.getUnit());
    if (face.isLessThan(least) || face.isGreaterThan(radius)) {
      throw new IllegalArgumentException(
          "face above pin must lie between "
              + least
              + " and "
              + radius
              + " for the plate to lie within the height of its barrel, was "
              + face
              + "; joggle the leaf less, or roll a larger barrel");
    }
    return of(barrel, face, face.subtract(t));
  }

  private static Measure<Length> thickness(Barrel barrel) {
    return barrel.section().thickness().to(barrel.outsideDiameter().getUnit());
  }

  /**
   * The same leaf cut back behind the pin, so that the other leaf's barrel and then its plate can
   * pass. This depth is what formulas call the setback.
   *
   * @param depth from the pin's centre to the floor of the notch or slot, more than zero
   * @return the leaf
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public LeafProfile notchedBehindPin(Quantity<Length> depth) {
    Measure<Length> cut = Arguments.positive("depth of notch", depth);
    return new LeafProfile(outside, face, back, cut, length, board, boardBehind);
  }

  /**
   * The same leaf with a known length. It matters only where leaves fold until their tips meet.
   *
   * @param lengthFromPin from the pin's centre to the tip, more than zero
   * @return the leaf
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public LeafProfile reaching(Quantity<Length> lengthFromPin) {
    Measure<Length> reach = Arguments.positive("length from pin", lengthFromPin);
    return new LeafProfile(outside, face, back, notch, reach, board, boardBehind);
  }

  /**
   * The same leaf with wood on its upper face.
   *
   * @param wood the board
   * @return the leaf
   */
  public LeafProfile onBoard(Board wood) {
    Objects.requireNonNull(wood, "wood");
    return new LeafProfile(outside, face, back, notch, length, wood, boardBehind);
  }

  /**
   * The same leaf the other way up: what was a below the pin is a above.
   *
   * @return the leaf, with any board on the other side
   */
  public LeafProfile turnedOver() {
    return new LeafProfile(
        outside, back.negate(), face.negate(), notch, length, boardBehind, board);
  }

  /** {@return the height of its upper face above the pin's centre; negative if below} */
  public Measure<Length> faceAbovePin() {
    return face;
  }

  /** {@return the height of its lower face above the pin's centre; negative if below} */
  public Measure<Length> backAbovePin() {
    return back;
  }

  /** {@return the thickness of its plate} */
  public Measure<Length> thickness() {
    return face.subtract(back);
  }

  /** {@return the diameter over its barrel} */
  public Measure<Length> outsideDiameter() {
    return outside;
  }

  /** {@return how far it is cut back behind the pin; empty if no more than a barrel needs} */
  public Optional<Measure<Length>> notch() {
    return Optional.ofNullable(notch);
  }

  /** {@return its length from the pin's centre; empty if long beside its barrel} */
  public Optional<Measure<Length>> length() {
    return Optional.ofNullable(length);
  }

  /** {@return the wood on its upper face, if any} */
  public Optional<Board> board() {
    return Optional.ofNullable(board);
  }

  /** Depth of the notch in a unit; not a number if just enough for a barrel. */
  double notchIn(Unit<Length> unit) {
    return notch == null ? Double.NaN : notch.in(unit);
  }

  /** Length from the pin in a unit; infinite if it was not said. */
  double lengthIn(Unit<Length> unit) {
    return length == null ? Double.POSITIVE_INFINITY : length.in(unit);
  }

  /** How far its farther face lies from the level of the pin, in a unit. */
  double extentIn(Unit<Length> unit) {
    return Math.max(Math.abs(face.in(unit)), Math.abs(back.in(unit)));
  }

  boolean hasBoard() {
    return board != null;
  }

  /** Thickness, barrel, and how the plate lies. */
  @Override
  public String toString() {
    return "leaf of "
        + thickness()
        + " on a barrel of "
        + outside
        + ", face "
        + face
        + " above the pin"
        + (notch == null ? "" : ", notched " + notch + " behind it");
  }
}
