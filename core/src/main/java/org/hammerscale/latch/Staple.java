package org.hammerscale.latch;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.bending.UBend;
import org.hammerscale.forging.Taper;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A staple with two pointed legs, driven into the wood or through it and clenched: what a bolt
 * slides in, a hasp shuts over, a hook drops into. Other names: {@index keeper}, {@index "bolt
 * staple"}, {@index "staple eye"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(6)), Material.MILD_STEEL);
 * Staple staple = Staple.inside(millimetres(13), rod).standing(millimetres(13)).driven(millimetres(40));
 * staple.legCentres()                // 19 mm  between the holes that are bored for it
 * staple.piece().layout().cutLength()   // 106.85 mm  of the rod, both points drawn from it
 * Staple through = staple.clenchedThrough(millimetres(30));
 * through.inWood()                   // 48 mm  the board, and three diameters to turn over
 * }</pre>
 *
 * <p>Exact as geometry on the mean line; each point is two thicknesses long, which is our own
 * judgement. What tears it out is a question to the wood, see {@code UltimateWithdrawal}: it has
 * two legs. Lengths come out in the inside width's unit. Source: plane geometry; at least three
 * diameters beyond the member for a clench, NDS.
 */
public final class Staple {
  private static final Source NDS =
      Source.fromMemory("National Design Specification for Wood Construction", "clinched nails");
  private static final Source GEOMETRY = Source.computed("plane geometry of a bent rod");
  private static final double POINT = 2;
  private static final double CLENCH = 3;

  private final Bar rod;
  private final Measure<Length> width;
  private final Measure<Length> height;
  private final Measure<Length> depth;
  private final @Nullable Measure<Length> board;
  private final boolean square;
  private final Unit<Length> unit;

  private Staple(
      Bar rod,
      Measure<Length> width,
      Measure<Length> height,
      Measure<Length> depth,
      @Nullable Measure<Length> board,
      boolean square) {
    this.rod = rod;
    this.width = width;
    this.height = height;
    this.depth = depth;
    this.board = board;
    this.square = square;
    this.unit = width.getUnit();
  }

  /**
   * A staple with a half-round crown that stands half its width high, driven eight thicknesses
   * deep, until it is told more.
   *
   * @param width the inside width between the legs, more than zero
   * @param rod what it is bent from
   * @return the staple
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Staple inside(Quantity<Length> width, Bar rod) {
    Objects.requireNonNull(rod, "rod");
    Measure<Length> between = Arguments.positive("width", width);
    Measure<Length> t = rod.section().thickness().to(between.getUnit());
    return new Staple(rod, between, between.divide(2), t.multiply(8), null, false);
  }

  /**
   * The same standing off the wood so far; its crown is flat with round corners once that is less
   * than half the width.
   *
   * @param height the clear inside height above the wood, more than zero
   * @return the staple
   * @throws IllegalArgumentException if the height is not more than zero
   */
  public Staple standing(Quantity<Length> height) {
    Measure<Length> clear = Arguments.positive("height", height).to(unit);
    return new Staple(rod, width, clear, depth, board, square);
  }

  /**
   * The same with both corners of its crown forged square, as for a flat bolt.
   *
   * @return the staple
   */
  public Staple withSquareCrown() {
    return new Staple(rod, width, height, depth, board, true);
  }

  /**
   * The same driven into the wood and not through it.
   *
   * @param depth how deep its points reach, at least the length of a point
   * @return the staple
   * @throws IllegalArgumentException if it is less than a point is long
   */
  public Staple driven(Quantity<Length> depth) {
    Measure<Length> deep = Arguments.positive("depth", depth).to(unit);
    Arguments.atLeast(
        "depth", deep, "the point", pointLength(), "drive it deeper, or take a thinner rod");
    return new Staple(rod, width, height, deep, null, square);
  }

  /**
   * The same driven through a board and turned over behind it, three diameters at least.
   *
   * @param board the thickness of the wood, more than zero
   * @return the staple
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public Staple clenchedThrough(Quantity<Length> board) {
    Measure<Length> thick = Arguments.positive("board", board).to(unit);
    Measure<Length> turned = thickness().multiply(CLENCH);
    return new Staple(rod, width, height, thick.add(turned), thick, square);
  }

  /**
   * The same on the marks of a rule: width, height and depth up, so that what passes through still
   * does and the hold is not less.
   *
   * @param rule the rule
   * @return the staple
   */
  public Staple on(Graduation<Length> rule) {
    Objects.requireNonNull(rule, "rule");
    Measure<Length> wide = rule.upTo(width);
    Measure<Length> high = rule.upTo(height).to(wide.getUnit());
    Measure<Length> deep = rule.upTo(depth).to(wide.getUnit());
    return new Staple(rod, wide, high, deep, board, square);
  }

  /** {@return what it is bent from} */
  public Bar rod() {
    return rod;
  }

  /** {@return the clear width between its legs} */
  public Measure<Length> insideWidth() {
    return width;
  }

  /** {@return the clear height above the wood, at the middle of the crown} */
  public Measure<Length> insideHeight() {
    return height;
  }

  /** {@return how far it stands off the wood over all, exact} */
  public Measure<Length> heightOverAll() {
    return height.add(thickness());
  }

  /** {@return how much of each leg is in the wood, or beyond the face of it; with the clench} */
  public Measure<Length> inWood() {
    return depth;
  }

  /** Whether the crown is a half round on both its sides, so that its top is round. */
  boolean hasRoundCrown() {
    return !square && !height.isLessThan(width.divide(2));
  }

  /** How much of the crown's inside is straight: a half round has nothing of it. */
  Measure<Length> straightCrown() {
    Measure<Length> corners = height.multiply(2);
    return square
        ? width
        : corners.isLessThan(width) ? width.subtract(corners) : width.withValue(0);
  }

  /** {@return whether its points are turned over behind the board} */
  public boolean isClenched() {
    return board != null;
  }

  /** {@return what is turned over of each leg; zero if it is not clenched} */
  public Measure<Length> clench() {
    return board == null ? depth.withValue(0) : depth.subtract(board);
  }

  /**
   * How much full leg is in the wood: the depth less the point, or the board that it is clenched
   * through. A point is left out of what holds, which is on the safe side.
   *
   * @return the length of each leg to reckon what it holds with, exact
   */
  public Measure<Length> holdingLength() {
    return board == null ? depth.subtract(pointLength()) : board.to(depth.getUnit());
  }

  /** {@return from the middle of one leg to that of the other, exact: the holes for it} */
  public Measure<Length> legCentres() {
    return Measure.of(centres(Notes.NONE), unit);
  }

  /** {@return how the centres of the legs were found} */
  public Working working() {
    return Notes.taken("centres of a staple's legs", unit, this::centres)
        .withSource(GEOMETRY)
        .withCautions(cautions());
  }

  /** {@return how long either point is; the legs are of the full rod before it} */
  public Measure<Length> pointLength() {
    return thickness().multiply(POINT);
  }

  /** {@return the crown and both legs as far as the points, to lay the hot rod on} */
  public UBend bend() {
    Measure<Length> leg = heightOverAll().add(depth).subtract(pointLength());
    UBend bend = UBend.inside(width, rod.section());
    Measure<Length> half = width.divide(2);
    if (square) {
      bend = bend.withSquareCorners();
    } else if (height.isLessThan(half)) {
      bend = bend.withCorners(height);
    }
    return bend.withLegs(leg, leg);
  }

  /**
   * The staple as it is forged: a point, the bend, a point.
   *
   * @return the piece, trimmed at both points
   */
  public Piece piece() {
    Taper tip = Taper.toPoint(rod.section(), pointLength());
    return Piece.of(rod, tip.reversed(), bend(), tip)
        .withReferenceAfter(1)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** {@return how it is set, and what the wood decides} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.danger(
            "wear eye protection when driving a staple; bore for its legs, and where both stand in"
                + " one line of the grain bore them full depth and keep off the board's end, or the"
                + " wood splits"));
    if (isClenched()) {
      cautions.add(
          Caution.limit(
              "a clench turns over at least three diameters, across the grain; a leg that breaks"
                  + " in bending is drawn and replaced, not hammered flat",
              NDS));
    }
    return List.copyOf(cautions);
  }

  private Measure<Length> thickness() {
    return rod.section().thickness().to(unit);
  }

  private double centres(Notes n) {
    double w = n.given("w", "inside width", width.in(unit));
    double t = n.given("t", "thickness of the rod", rod.section().thickness().in(unit));
    return n.length("C", "between the middles of the legs", "w + t", w + t);
  }

  /** Inside sizes, rod and depth. */
  @Override
  public String toString() {
    return "staple "
        + width
        + " wide and "
        + height
        + " high inside, of "
        + rod.section()
        + ", "
        + depth
        + (isClenched() ? " with its clench" : " into the wood");
  }
}
