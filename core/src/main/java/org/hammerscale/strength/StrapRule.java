package org.hammerscale.strength;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;

/**
 * How far a strap usually reaches across its door, from the pin. The rules differ; none of them is
 * a check of strength.
 *
 * <pre>{@code
 * StrapRule.HALF_TO_TWO_THIRDS.least(inches(36))   // 18 in  for a door of 36 in
 * StrapRule.HALF_TO_TWO_THIRDS.most(inches(36))    // 24 in
 * StrapRule.HALF_TO_TWO_THIRDS.allows(inches(20), inches(36))   // true
 * }</pre>
 */
public final class StrapRule {
  /** A third of the door or gate at least. Source: trade pages. */
  public static final StrapRule AT_LEAST_A_THIRD = of("a third of the width or more", 1 / 3d, 1);

  /** A third or two thirds of the door. Source: a trade page. */
  public static final StrapRule THIRD_TO_TWO_THIRDS =
      of("a third to two thirds of the width", 1 / 3d, 2 / 3d);

  /** For a dummy front without a hinge's work. Source: a trade page. */
  public static final StrapRule DUMMY_FRONT = of("25 to 30 % of the width", 0.25, 0.30);

  /** For forged work that carries. Source: common practice; no page was found. */
  public static final StrapRule HALF_TO_TWO_THIRDS =
      of("half to two thirds of the width", 1 / 2d, 2 / 3d);

  private final String words;
  private final double least;
  private final double most;

  private StrapRule(String words, double least, double most) {
    this.words = words;
    this.least = least;
    this.most = most;
  }

  private static StrapRule of(String words, double least, double most) {
    return new StrapRule(words, least, most);
  }

  /** {@return all of them} */
  public static List<StrapRule> all() {
    return List.of(AT_LEAST_A_THIRD, THIRD_TO_TWO_THIRDS, DUMMY_FRONT, HALF_TO_TWO_THIRDS);
  }

  /**
   * The shortest strap by the rule.
   *
   * @param doorWidth the width of the door, more than zero
   * @return the length from the pin, in the width's unit
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Measure<Length> least(Quantity<Length> doorWidth) {
    return Arguments.positive("doorWidth", doorWidth).multiply(least);
  }

  /**
   * The longest strap by the rule; the whole width if it sets no limit.
   *
   * @param doorWidth the width of the door, more than zero
   * @return the length from the pin, in the width's unit
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Measure<Length> most(Quantity<Length> doorWidth) {
    return Arguments.positive("doorWidth", doorWidth).multiply(most);
  }

  /**
   * Whether a strap keeps to the rule.
   *
   * @param strap its length from the pin
   * @param doorWidth the width of the door, more than zero
   * @return whether it is neither shorter nor longer
   * @throws IllegalArgumentException if either is not more than zero
   */
  public boolean allows(Quantity<Length> strap, Quantity<Length> doorWidth) {
    Measure<Length> length = Arguments.positive("strap", strap);
    return length.isGreaterThanOrEqualTo(least(doorWidth))
        && length.isLessThanOrEqualTo(most(doorWidth));
  }

  /** {@return trade guidance, in its words} */
  public Source source() {
    return Source.commonPractice(words);
  }

  /** The rule in words. */
  @Override
  public String toString() {
    return words;
  }
}
