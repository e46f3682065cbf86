package org.hammerscale.piece;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * A size in which the pieces of a {@link MatchedSet} shall agree: its name, how much two of them
 * may differ before the eye or the fit is offended, and, if it is known, how much it varies from
 * piece to piece. The length over all is one, how flush a hinge lies another.
 *
 * <pre>{@code
 * MatchedSize.of("length", inches("1/16")).varyingBy(inches("1/32")).expectedRange(5)   // 0.07269 in
 * }</pre>
 */
public final class MatchedSize {
  private static final int MOST = 1000;

  private final String name;
  private final Measure<Length> within;
  private final Optional<Measure<Length>> deviation;

  private MatchedSize(String name, Measure<Length> within, Optional<Measure<Length>> deviation) {
    this.name = name;
    this.within = within;
    this.deviation = deviation;
  }

  /**
   * A size to match.
   *
   * @param name what it is
   * @param within how much two pieces may differ in it, more than zero
   * @return the size, its variation not known
   * @throws IllegalArgumentException if the name is blank or the length is not more than zero
   */
  public static MatchedSize of(String name, Quantity<Length> within) {
    return new MatchedSize(
        Arguments.text("name", name), Arguments.positive("within", within), Optional.empty());
  }

  /**
   * The same size with what it varies by.
   *
   * @param standardDeviation from piece to piece, not negative: what {@link EndTrials#spread} tells
   *     of a shop, turned into the finished section
   * @return the size
   * @throws IllegalArgumentException if it is negative
   */
  public MatchedSize varyingBy(Quantity<Length> standardDeviation) {
    return new MatchedSize(
        name, within, Optional.of(Arguments.notNegative("standardDeviation", standardDeviation)));
  }

  /** {@return what it is} */
  public String name() {
    return name;
  }

  /** {@return how much two pieces may differ in it} */
  public Measure<Length> within() {
    return within;
  }

  /**
   * How far the largest of some pieces is expected to lie above the smallest, if they vary
   * normally: σ ∫ (1 − Φⁿ − (1 − Φ)ⁿ) dx.
   *
   * @param pieces how many, 2 to 1000
   * @return the expected range, in the unit of the standard deviation
   * @throws IllegalArgumentException if there are fewer, or it is not known what the size varies by
   */
  public Measure<Length> expectedRange(int pieces) {
    Arguments.count("pieces", pieces, 2, MOST, "a single piece has none to match");
    return deviation
        .map(own -> own.multiply(Ranges.expected(pieces)))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "expected range must have a variation, was of a "
                        + name
                        + " without; tell it with varyingBy(…)"));
  }

  boolean isVarying() {
    return deviation.isPresent();
  }

  /** Same name, same allowance and same variation, each by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof MatchedSize size
        && name.equals(size.name)
        && within.equals(size.within)
        && deviation.equals(size.deviation);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, within, deviation);
  }

  /** Name, and how much two pieces may differ. */
  @Override
  public String toString() {
    return name + " within " + within + deviation.map(own -> ", varying by " + own).orElse("");
  }
}
