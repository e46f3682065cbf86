package org.hammerscale.fastening;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How far from the joint between two boards no hole may be centred: a seam's closed stretch, beyond
 * the edge of the board. Boards stand upright and the strap lies level across them, so the seam is
 * an edge along the grain, not an end: on either side the larger of the wood's edge distance and
 * half the hole with a margin to spare, a = max(a₄, h / 2 + m).
 *
 * <pre>{@code
 * WoodSpacing spacing = WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, millimetres(5));
 * SeamClearance seam = SeamClearance.around(millimetres(6), spacing.pulledAt(degrees(90)));
 * seam.pulledTowards()                           // 35 mm  where the screw is pulled to the seam
 * seam.pulledAway()                              // 15 mm  where it is pulled away
 * seam.withMargin(millimetres(16)).pulledAway()  // 19 mm  if 16 mm are to stay clear of the hole's edge
 * }</pre>
 *
 * <p>Which side is which: where the strap pulls its screws to the right, those left of the seam are
 * pulled towards it and keep {@link #pulledTowards}; those right of it keep {@link #pulledAway}.
 * The hinge's reactions tell the direction; if it can turn, keep {@link #pulledTowards} on both
 * sides. A seam of width 2 j at x then shuts out centres between x − j − a and x + j + a, the two
 * bounds themselves allowed.
 *
 * <p>Exact as the rule states it, in the unit of the spacing's diameter. Source: edge distance of
 * the {@link SpacingRule}; the margin is common practice.
 */
public final class SeamClearance {
  private static final Source MARGIN =
      Source.commonPractice("the rim of a hole keeps clear of the joint between boards");

  private final Measure<Length> hole;
  private final WoodSpacing spacing;
  private final Measure<Length> margin;

  private SeamClearance(Measure<Length> hole, WoodSpacing spacing, Measure<Length> margin) {
    this.hole = hole;
    this.spacing = spacing;
    this.margin = margin;
  }

  /**
   * The closed stretch without a margin.
   *
   * @param hole diameter of the hole in the iron, or of the head if that is to clear the seam; more
   *     than zero
   * @param spacing the distances that the wood asks for
   * @return the closed stretch
   * @throws IllegalArgumentException if the hole is not more than zero
   */
  public static SeamClearance around(Quantity<Length> hole, WoodSpacing spacing) {
    Objects.requireNonNull(spacing, "spacing");
    return new SeamClearance(
        Arguments.positive("hole", hole), spacing, spacing.diameter().withValue(0));
  }

  /**
   * The same with a margin between the rim of the hole and the seam, for the eye or for boards that
   * move.
   *
   * @param margin not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the margin is negative
   */
  public SeamClearance withMargin(Quantity<Length> margin) {
    return new SeamClearance(hole, spacing, Arguments.notNegative("margin", margin));
  }

  /**
   * For holes whose screw is pulled towards the seam, a loaded edge.
   *
   * @return the least distance of their centre from the edge of the board
   */
  public Measure<Length> pulledTowards() {
    return spacing.diameter().withValue(pulledTowards(Notes.NONE));
  }

  /**
   * For holes whose screw is pulled away from the seam, an unloaded edge.
   *
   * @return the least distance of their centre from the edge of the board
   */
  public Measure<Length> pulledAway() {
    return spacing.diameter().withValue(pulledAway(Notes.NONE));
  }

  /** {@return how the distance on the loaded side was found} */
  public Working pulledTowardsWorking() {
    return working("seam that the screw is pulled towards", this::pulledTowards);
  }

  /** {@return how the distance on the unloaded side was found} */
  public Working pulledAwayWorking() {
    return working("seam that the screw is pulled away from", this::pulledAway);
  }

  private Working working(String title, Notes.Calculation calculation) {
    return Notes.taken(title, unit(), calculation)
        .withSource(spacing.rule().source())
        .withSource(MARGIN)
        .withCautions(spacing.cautions());
  }

  private double pulledTowards(Notes n) {
    return widest(n, "edge distance of the wood, loaded", spacing.loadedEdge());
  }

  private double pulledAway(Notes n) {
    return widest(n, "edge distance of the wood, unloaded", spacing.unloadedEdge());
  }

  private double widest(Notes n, String meaning, Measure<Length> edge) {
    double e = n.given("e", meaning, edge.in(unit()));
    double h = n.given("h", "diameter of the hole", hole.in(unit()));
    double m = n.given("m", "margin", margin.in(unit()));
    double r = n.length("r", "rim and margin", "h / 2 + m", h / 2 + m);
    return n.length(
        "a",
        "closed stretch beyond the board's edge, the larger",
        e >= r ? "e" : "r",
        Math.max(e, r));
  }

  private Unit<Length> unit() {
    return spacing.diameter().getUnit();
  }

  /** Both distances. */
  @Override
  public String toString() {
    return "no hole within "
        + pulledTowards()
        + " of a seam it is pulled towards, "
        + pulledAway()
        + " of any other";
  }
}
