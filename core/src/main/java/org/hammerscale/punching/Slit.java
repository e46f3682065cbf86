package org.hammerscale.punching;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A slit along the bar, cut with a thin chisel to be opened by a drift without losing metal. Its
 * two lips become the rim of the hole, so a slit of half the way round suits exactly: s = π d/2 for
 * a round hole, 2 a for a square one. Smiths cut it shorter, since the lips stretch when they are
 * drifted: three radii for a round hole, two sides less a twentieth for a square one, half the way
 * round less about a twentieth for any other.
 *
 * <pre>{@code
 * Hole hole = Hole.round(inches("1/2"));
 * Slit.halfWayRound(hole).length()                  // 0.7854 in  to cut, if the lips kept their length
 * Slit.byShopRule(hole).length()                    // 3/4 in  to cut, since they stretch
 * Slit.of(millimetres(30)).roundHole()              // 19.1 mm round hole  what a slit of 30 mm opens to
 * Slit.of(inches("1 3/4")).straightened().likely()  // 2 in  what it measures once the lips are straight
 * }</pre>
 *
 * <p>The first rule is exact as geometry, the second a rule of the trade that is good to a mark of
 * the rule; nobody slits to a thousandth. Take the next mark below.
 *
 * <p>Source: half perimeter, plane geometry; three radii and two sides less a twentieth, common
 * practice in smiths' manuals; growth of a straightened slot, Ilgen, <cite>Forge Work</cite>, 1912,
 * sec. 73.
 */
public final class Slit {
  private static final Source HALF_WAY =
      Source.computed("the lips become the rim: half the perimeter of the hole");
  private static final Source SHOP_RULE =
      Source.commonPractice(
          "slit of three radii for a round hole, of half the way round less about a twentieth for"
              + " others; the lips stretch");
  private static final Source MARKED = Source.commonPractice("slit between the smith's marks");

  /** A slot marked 1 3/4 in long and finished 2 in long. */
  static final Source STRAIGHTENED = Source.read("Ilgen, Forge Work, 1912", "sec. 73");

  private final Measure<Length> length;
  private final String title;
  private final Source source;
  private final Notes.Calculation calculation;

  private Slit(String title, Source source, Unit<Length> unit, Notes.Calculation calculation) {
    this.title = title;
    this.source = source;
    this.calculation = calculation;
    this.length = Measure.of(calculation.calculate(Notes.NONE), unit);
  }

  /**
   * The slit whose lips are just half the way round the hole: s = P / 2.
   *
   * @param hole the hole it is drifted to
   * @return the slit, exact as geometry, in the unit of the hole's length
   */
  public static Slit halfWayRound(Hole hole) {
    Objects.requireNonNull(hole, "hole");
    return new Slit("slit for a " + hole, HALF_WAY, hole.unit(), hole::halfWayRound);
  }

  /**
   * The shorter slit of the shop rules: s = 3 d/2 for a round hole, 0.95 × 2 a for a square one,
   * 0.95 P / 2 for a mortise or an oval.
   *
   * @param hole the hole it is drifted to
   * @return the slit, in the unit of the hole's length
   */
  public static Slit byShopRule(Hole hole) {
    Objects.requireNonNull(hole, "hole");
    return new Slit(
        "slit for a " + hole + " by the shop rule", SHOP_RULE, hole.unit(), hole::shopSlit);
  }

  /**
   * A slit of a length that is already marked.
   *
   * @param length from end to end, more than zero
   * @return the slit
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static Slit of(Quantity<Length> length) {
    Measure<Length> marked = Arguments.positive("length", length);
    return new Slit(
        "slit between its marks",
        MARKED,
        marked.getUnit(),
        n -> n.given("s", "slit between its marks", marked.getValue()));
  }

  /** {@return the length from end to end, cold, along the bar} */
  public Measure<Length> length() {
    return length;
  }

  /**
   * The round hole whose rim is as long as both lips: d = 2 s/π.
   *
   * @return the hole, exact as geometry; by the shop rule, which lets the lips stretch, it is two
   *     thirds of the slit and so 5 % larger
   */
  public Hole roundHole() {
    return Hole.round(length.withValue(2 * length.getValue() / Math.PI));
  }

  /**
   * The square hole whose rim is as long as both lips: a = s/2.
   *
   * @return the hole, exact as geometry; by the shop rule, which lets the lips stretch, its side is
   *     5 % larger
   */
  public Hole squareHole() {
    return Hole.square(length.divide(2));
  }

  /**
   * How long a slot becomes when its sides, bent in opening, are hammered straight again. A single
   * published observation, marks 1 3/4 in apart and a slot finished 2 in long, is taken as the
   * likely growth of a seventh; no growth as the low and twice that growth as the high.
   *
   * @return the finished length of the slot, an estimate by one observation; try it on the first
   *     piece
   */
  public Estimate<Length> straightened() {
    return Estimate.of(length, length.withValue(straightened(Notes.NONE)), length.multiply(9 / 7d));
  }

  private double straightened(Notes n) {
    double s = length(n);
    return n.length("L", "slot when its sides are straight, likely", "8 s / 7", 8 * s / 7);
  }

  /** The length, in its unit. */
  double length(Notes n) {
    return calculation.calculate(n);
  }

  Source source() {
    return source;
  }

  /** {@return how the length was found} */
  public Working working() {
    return Notes.taken(title, length.getUnit(), calculation).withSource(source);
  }

  /** {@return how the likely length of the straightened slot was found} */
  public Working straightenedWorking() {
    return Notes.taken("slot opened from a slit", length.getUnit(), this::straightened)
        .withSource(source)
        .withSource(STRAIGHTENED);
  }

  /** Its length. */
  @Override
  public String toString() {
    return length + " slit";
  }
}
