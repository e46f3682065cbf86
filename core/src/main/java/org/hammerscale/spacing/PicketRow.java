package org.hammerscale.spacing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * Pickets or balusters between two posts: the least number whose equal gaps stop a sphere, and
 * where they stand. {@link #layout} answers it. Other names: {@index baluster}, {@index picket},
 * {@index spindle}, {@index railing}.
 *
 * <pre>{@code
 * PicketRow row = PicketRow.across(inches(72)).of(inches("1/2")).stopping(GuardCode.IRC_SPHERE);
 * PicketLayout fence = row.layout();
 * fence.pickets()                      // 16
 * fence.gap()                          // 3.7647 in
 * fence.on(SIXTEENTH).edges().get(1)   // 8 in  the second's near edge from the post
 * fence.on(SIXTEENTH).widestGap()      // 3 13/16 in
 * row.pickets(15).layout().gap()       // 4 1/32 in  with one fewer a sphere of 4 in passes
 * }</pre>
 *
 * <p>Of n pickets of width w in a clear span S the n + 1 gaps are (S − n w) / (n + 1). Codes say
 * that the sphere shall not pass, so that a gap must be less than it: {@link #stopping}; where an
 * opening of just that size is allowed, {@link #openingsUpTo}. The width is the narrowest that a
 * picket has between the rails: a basket does not help elsewhere. Exact, in the span's unit.
 * Source: arithmetic.
 */
public final class PicketRow {
  private static final double STEEPEST = 75;

  private final PicketPlan plan;

  private PicketRow(PicketPlan plan) {
    this.plan = plan;
  }

  /**
   * A row between two posts.
   *
   * @param clearSpan from post to post, level, more than zero; answers are in its unit
   * @return the row, of which pickets and opening must still be told
   * @throws IllegalArgumentException if the span is not more than zero
   */
  public static PicketRow across(Quantity<Length> clearSpan) {
    Measure<Length> span = Arguments.positive("clear span", clearSpan);
    return new PicketRow(
        new PicketPlan(span.getUnit(), span.getValue(), List.of(), 0, true, -1, false, 1));
  }

  /**
   * The same of pickets of one width, or of several that follow one another in a pattern and begin
   * anew.
   *
   * @param widths across the picket where it is narrowest, one to a hundred, each more than zero
   * @return the row
   * @throws IllegalArgumentException if there is none, or one is not more than zero
   */
  @SafeVarargs
  @SuppressWarnings("varargs")
  public final PicketRow of(Quantity<Length>... widths) {
    Objects.requireNonNull(widths, "widths");
    Arguments.count("number of widths", widths.length, 1, 100, "name one pattern of pickets");
    List<Double> all = new ArrayList<>();
    for (Quantity<Length> width : widths) {
      all.add(Arguments.positive("width", width).in(plan.unit()));
    }
    return new PicketRow(plan.withWidths(List.copyOf(all)));
  }

  /**
   * The same with gaps that a sphere does not pass: less than its diameter.
   *
   * @param sphere its diameter, more than zero
   * @return the row
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public PicketRow stopping(Quantity<Length> sphere) {
    return limited(Arguments.positive("sphere", sphere).in(plan.unit()), true);
  }

  /**
   * The same with gaps that the sphere of a building code does not pass.
   *
   * @param code a code's sphere or clear width
   * @return the row
   * @throws IllegalArgumentException if the code's number is a height
   */
  public PicketRow stopping(GuardCode code) {
    if (!Objects.requireNonNull(code, "code").isSphere()) {
      throw new IllegalArgumentException(
          "code must be a sphere that is not to pass, was " + code + "; name one of the spheres");
    }
    return stopping(code.size());
  }

  /**
   * The same with gaps of so much at most, just that much allowed.
   *
   * @param opening the widest gap, more than zero
   * @return the row
   * @throws IllegalArgumentException if the opening is not more than zero
   */
  public PicketRow openingsUpTo(Quantity<Length> opening) {
    return limited(Arguments.positive("opening", opening).in(plan.unit()), false);
  }

  /**
   * The same with something taken off the opening, for what pickets bend and holes are drilled off.
   *
   * @param tolerance of building, less than the opening, which must have been told
   * @return the row
   * @throws IllegalArgumentException if the tolerance is negative or not less than the opening
   */
  public PicketRow withTolerance(Quantity<Length> tolerance) {
    double off = Arguments.notNegative("tolerance", tolerance).in(plan.unit());
    if (!(off < plan.limit())) {
      throw new IllegalArgumentException(
          "tolerance must be less than the opening of "
              + plan.measure(plan.limit())
              + ", was "
              + plan.measure(off)
              + "; tell the opening first, and give what the work may be out");
    }
    return limited(plan.limit() - off, plan.strict());
  }

  private PicketRow limited(double limit, boolean strict) {
    return new PicketRow(plan.withLimit(limit, strict));
  }

  /**
   * The same with a number of the caller's own, whatever opening that leaves; the layout has a
   * caution if the sphere passes.
   *
   * @param count of pickets, 0 to 5000
   * @return the row
   * @throws IllegalArgumentException if the count lies outside that range
   */
  public PicketRow pickets(int count) {
    Arguments.count("count", count, 0, PicketPlan.MOST, "count the pickets between the posts");
    return new PicketRow(plan.withCount(count, plan.whole()));
  }

  /** {@return the same with whole patterns only, so that the last picket ends one} */
  public PicketRow inWholePatterns() {
    return new PicketRow(plan.withCount(plan.count(), true));
  }

  /**
   * The same under raked rails, as along stairs, with upright pickets. Gaps are still measured
   * level, from picket to picket; the places are those along the rail, 1 / cos of the rake farther.
   *
   * @param angle of the rails from level, 0° to 75°
   * @return the row
   * @throws IllegalArgumentException if the angle lies outside that range
   */
  public PicketRow raked(Quantity<Angle> angle) {
    Measure<Angle> rake =
        Arguments.angle("angle", angle, STEEPEST, "give the angle of the rail from level");
    double slope = rake.getValue() == 0 ? 1 : 1 / Math.cos(rake.in(ShopUnits.RADIAN));
    return new PicketRow(plan.withSlope(slope));
  }

  /**
   * Places the pickets with equal gaps: the least number that stops the sphere, or the number that
   * was told.
   *
   * @return the layout; {@link PicketLayout#on} puts it on the marks of a rule
   * @throws IllegalArgumentException if so many do not fit, or the pickets fill the span before the
   *     gaps are narrow enough
   * @throws IllegalStateException if the pickets, or both opening and number, have not been told
   */
  public PicketLayout layout() {
    if (plan.widths().isEmpty()) {
      throw new IllegalStateException("width of the pickets must be told; say it with of(…)");
    }
    if (plan.count() < 0 && !(plan.limit() > 0)) {
      throw new IllegalStateException(
          "opening must be told; say it with stopping(…), or a number with pickets(…)");
    }
    int count = plan.count() < 0 ? plan.least() : plan.count();
    if (count < 0 || plan.gap(count) < 0) {
      throw new IllegalArgumentException(
          "clear span must have room for the pickets, was "
              + plan.measure(plan.span())
              + (count < 0
                  ? ": more than " + PicketPlan.MOST + " or no gap would be left"
                  : " for " + plan.measure(plan.sum(count)) + " of pickets")
              + "; take fewer or narrower ones");
    }
    return PicketLayout.even(plan, count);
  }

  /** Span, widths and opening. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("pickets");
    for (int i = 0; i < plan.widths().size(); i++) {
      text.append(i == 0 ? " of " : ", ").append(plan.measure(plan.widths().get(i)));
    }
    text.append(" across ").append(plan.measure(plan.span()));
    if (plan.limit() > 0) {
      text.append(plan.strict() ? ", gaps of less than " : ", gaps of at most ")
          .append(plan.measure(plan.limit()));
    }
    return text.toString();
  }
}
