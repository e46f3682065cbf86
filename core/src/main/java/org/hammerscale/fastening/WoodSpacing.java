package org.hammerscale.fastening;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.SpacingTable.Multiple;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * How near fasteners may stand to one another and to the ends and edges of the wood, centre to
 * centre and centre to edge: {@index spacing}, {@index "end distance"}, {@index "edge distance"}.
 * Along and across the grain are two limits. Each is so many diameters, a = (k + m cos α + n sin α)
 * d, where α is the angle between force and grain.
 *
 * <pre>{@code
 * WoodSpacing spacing = WoodSpacing.by(SpacingRule.EC5_PRE_DRILLED, millimetres(5));
 * WoodSpacing pulled = spacing.pulledAt(degrees(90));
 * pulled.acrossGrain()                  // 20 mm  from screw to screw: a level strap over upright boards
 * pulled.steelToTimber().acrossGrain()  // 14 mm  the same, since iron lies on the wood
 * pulled.loadedEdge()                   // 35 mm  from the edge that they are pulled to
 * pulled.unloadedEdge()                 // 15 mm  from the other
 * spacing.loadedEnd()                   // 60 mm  from a board's end, if nobody knows which way they are pulled
 * }</pre>
 *
 * <p>A <em>loaded</em> end or edge is one that the fastener is pulled towards, the others are
 * unloaded; so a leaf that is pulled both ways has loaded ones on both sides, and a pull along the
 * grain loads no edge. As long as no angle is given each distance is that of its worst angle.
 *
 * <p>Exact as the rule states it, in the diameter's unit. Sources: EN 1995-1-1 table 8.2; NDS
 * Commentary; ICC-ES; NDS for bolts; see {@link SpacingRule}. The NDS itself asks of fasteners
 * below 1/4 in only that the wood does not split.
 */
public final class WoodSpacing {
  private static final double STEEL_TO_TIMBER = 0.7;

  private final SpacingRule rule;
  private final Measure<Length> diameter;
  private final @Nullable Measure<Angle> angle;
  private final double reduction;

  private WoodSpacing(
      SpacingRule rule,
      Measure<Length> diameter,
      @Nullable Measure<Angle> angle,
      double reduction) {
    this.rule = Objects.requireNonNull(rule, "rule");
    this.diameter = diameter;
    this.angle = angle;
    this.reduction = reduction;
  }

  /**
   * The distances of a rule, each at its worst angle to the grain.
   *
   * @param rule the published rule
   * @param diameter nominal diameter d of the fastener, of a square nail its side; more than zero
   * @return the distances
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static WoodSpacing by(SpacingRule rule, Quantity<Length> diameter) {
    return new WoodSpacing(rule, Arguments.positive("diameter", diameter), null, 1);
  }

  /**
   * The same for a known direction of the pull.
   *
   * @param toGrain the angle α between force and grain, from 0° along to 90° across; rules that
   *     count in diameters alone do not feel it
   * @return the distances
   * @throws IllegalArgumentException if the angle lies outside that range
   */
  public WoodSpacing pulledAt(Quantity<Angle> toGrain) {
    Measure<Angle> given =
        Arguments.angle(
            "angle to the grain", toGrain, 90, "give the sharp angle between force and grain");
    return new WoodSpacing(rule, diameter, given, reduction);
  }

  /**
   * The same for iron on wood: the spacings along and across the grain times 0.7, ends and edges as
   * they are.
   *
   * @return the distances
   * @throws IllegalArgumentException if the rule is not one of EN 1995-1-1, which alone knows the
   *     factor
   */
  public WoodSpacing steelToTimber() {
    if (!rule.isEurocode()) {
      throw new IllegalArgumentException(
          "rule must be one of EN 1995-1-1 to be eased for iron on wood, was "
              + rule
              + "; take its distances as they are");
    }
    return new WoodSpacing(rule, diameter, angle, STEEL_TO_TIMBER);
  }

  /** {@return the rule} */
  public SpacingRule rule() {
    return rule;
  }

  /** {@return the diameter of the fastener} */
  public Measure<Length> diameter() {
    return diameter;
  }

  /** {@return a₁, least spacing of fasteners that follow one another along the grain} */
  public Measure<Length> alongGrain() {
    return answer(this::alongGrain);
  }

  /** {@return a₂, least spacing of fasteners that follow one another across the grain} */
  public Measure<Length> acrossGrain() {
    return answer(this::acrossGrain);
  }

  /** {@return least distance of two rows that run along the grain; a₂ if the rule has no other} */
  public Measure<Length> betweenRows() {
    return answer(this::betweenRows);
  }

  /** {@return the same where the fasteners of the two rows alternate} */
  public Measure<Length> betweenStaggeredRows() {
    return answer(this::betweenStaggeredRows);
  }

  /** {@return a₃ₜ, least distance to an end that the fastener is pulled towards} */
  public Measure<Length> loadedEnd() {
    return answer(this::loadedEnd);
  }

  /** {@return a₃꜀, least distance to any other end} */
  public Measure<Length> unloadedEnd() {
    return answer(this::unloadedEnd);
  }

  /** {@return a₄ₜ, least distance to an edge that the fastener is pulled towards} */
  public Measure<Length> loadedEdge() {
    return answer(this::loadedEdge);
  }

  /** {@return a₄꜀, least distance to any other edge} */
  public Measure<Length> unloadedEdge() {
    return answer(this::unloadedEdge);
  }

  /** {@return where the rule is stretched: diameters that it was not made for} */
  public List<Caution> cautions() {
    return rule.cautions(diameter);
  }

  /** {@return how the spacing along the grain was found} */
  public Working alongGrainWorking() {
    return working("spacing along the grain", this::alongGrain);
  }

  /** {@return how the spacing across the grain was found} */
  public Working acrossGrainWorking() {
    return working("spacing across the grain", this::acrossGrain);
  }

  /** {@return how the distance of rows was found} */
  public Working betweenRowsWorking() {
    return working("distance of rows", this::betweenRows);
  }

  /** {@return how the distance of staggered rows was found} */
  public Working betweenStaggeredRowsWorking() {
    return working("distance of staggered rows", this::betweenStaggeredRows);
  }

  /** {@return how the distance to a loaded end was found} */
  public Working loadedEndWorking() {
    return working("distance to a loaded end", this::loadedEnd);
  }

  /** {@return how the distance to an unloaded end was found} */
  public Working unloadedEndWorking() {
    return working("distance to an unloaded end", this::unloadedEnd);
  }

  /** {@return how the distance to a loaded edge was found} */
  public Working loadedEdgeWorking() {
    return working("distance to a loaded edge", this::loadedEdge);
  }

  /** {@return how the distance to an unloaded edge was found} */
  public Working unloadedEdgeWorking() {
    return working("distance to an unloaded edge", this::unloadedEdge);
  }

  private Working working(String question, Notes.Calculation calculation) {
    return Notes.taken(question + ", " + rule, diameter.getUnit(), calculation)
        .withSource(rule.source())
        .withCautions(cautions());
  }

  private Measure<Length> answer(Notes.Calculation calculation) {
    return diameter.withValue(calculation.calculate(Notes.NONE));
  }

  private double alongGrain(Notes n) {
    return distance(n, "least spacing along the grain", table().along(), reduction);
  }

  private double acrossGrain(Notes n) {
    return distance(n, "least spacing across the grain", table().across(), reduction);
  }

  private double betweenRows(Notes n) {
    return distance(n, "least distance of rows", table().rows(), reduction);
  }

  private double betweenStaggeredRows(Notes n) {
    return distance(n, "least distance of staggered rows", table().staggered(), reduction);
  }

  private double loadedEnd(Notes n) {
    return distance(n, "least distance to a loaded end", table().loadedEnd(), 1);
  }

  private double unloadedEnd(Notes n) {
    return distance(n, "least distance to an unloaded end", table().unloadedEnd(), 1);
  }

  private double loadedEdge(Notes n) {
    return distance(n, "least distance to a loaded edge", table().loadedEdge(), 1);
  }

  private double unloadedEdge(Notes n) {
    return distance(n, "least distance to an unloaded edge", table().unloadedEdge(), 1);
  }

  private SpacingTable table() {
    return rule.table(diameter);
  }

  private double distance(Notes n, String meaning, Multiple multiple, double factor) {
    double d = n.given("d", "diameter of the fastener", diameter.getValue());
    double diameters = multiple.fixed();
    if (multiple.along() > 0 || multiple.across() > 0) {
      Measure<Angle> known = angle;
      double alpha =
          known == null
              ? 0
              : n.value(
                  "α", "angle to the grain", "", known.in(ShopUnits.RADIAN), ShopUnits.RADIAN);
      if (multiple.along() > 0) {
        double u =
            known == null
                ? n.number("u", "pull along the grain, at its worst", "", 1)
                : n.number("u", "share of the pull along the grain", "cos(α)", Math.cos(alpha));
        diameters += multiple.along() * u;
      }
      if (multiple.across() > 0) {
        double v =
            known == null
                ? n.number("v", "pull across the grain, at its worst", "", 1)
                : n.number("v", "share of the pull across the grain", "sin(α)", Math.sin(alpha));
        diameters += multiple.across() * v;
      }
    }
    n.number("k", "diameters", multiple.text(), diameters);
    if (factor == 1) {
      return n.length("a", meaning, "k d", diameters * d);
    }
    n.number("f", "factor for iron on wood", "", factor);
    return n.length("a", meaning, "f k d", factor * diameters * d);
  }

  /** Rule, diameter and the spacings. */
  @Override
  public String toString() {
    return rule
        + ", "
        + diameter
        + ": "
        + alongGrain()
        + " along, "
        + acrossGrain()
        + " across the grain";
  }
}
