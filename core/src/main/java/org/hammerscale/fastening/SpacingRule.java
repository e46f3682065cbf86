package org.hammerscale.fastening;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * A published rule for how far fasteners stand from one another and from the ends and edges of the
 * wood, in diameters of the fastener. {@link WoodSpacing} applies it to a diameter.
 *
 * <pre>{@code
 * SpacingRule.ec5NotPreDrilled(kilogramsPerCubicMetre(380))  // EN 1995-1-1, not pre-drilled, up to 420 kg/m³  for light wood
 * SpacingRule.EC5_PRE_DRILLED.source().locator()  // "table 8.2"  where to look it up
 * }</pre>
 *
 * <p>{@index Pre-drilled} is what the NDS calls {@index prebored}: with a {@linkplain PilotHole
 * lead hole}. The density of EN 1995-1-1 is the characteristic one, which the poorest twentieth
 * falls short of; it is not that of a {@link Wood} on average.
 */
@SuppressWarnings("ImmutableEnumChecker") // a SpacingTable never changes
public enum SpacingRule {
  /** EN 1995-1-1 table 8.2, in holes drilled for the fastener: nails, and screws up to 6 mm. */
  EC5_PRE_DRILLED(
      "EN 1995-1-1, pre-drilled", SpacingTable.EC5_DRILLED, SpacingTable.EC5_DRILLED_THICK),
  /** EN 1995-1-1 table 8.2, without holes, characteristic density up to 420 kg/m³. */
  EC5_UP_TO_420(
      "EN 1995-1-1, not pre-drilled, up to 420 kg/m³",
      SpacingTable.EC5_LIGHT,
      SpacingTable.EC5_LIGHT_THICK),
  /** EN 1995-1-1 table 8.2, without holes, characteristic density over 420, up to 500 kg/m³. */
  EC5_UP_TO_500(
      "EN 1995-1-1, not pre-drilled, 420 to 500 kg/m³",
      SpacingTable.EC5_DENSE,
      SpacingTable.EC5_DENSE_THICK),
  /** NDS Commentary: nails and wood screws through a steel plate, prebored. */
  STEEL_PLATE_PREBORED(
      "NDS Commentary, steel side plate, prebored", SpacingTable.STEEL_PLATE_PREBORED),
  /** NDS Commentary: nails and wood screws through a steel plate, not prebored. */
  STEEL_PLATE_NOT_PREBORED(
      "NDS Commentary, steel side plate, not prebored", SpacingTable.STEEL_PLATE),
  /** NDS Commentary: nails and wood screws through a wooden member, prebored. */
  WOOD_MEMBER_PREBORED(
      "NDS Commentary, wood side member, prebored", SpacingTable.WOOD_MEMBER_PREBORED),
  /** NDS Commentary: nails and wood screws through a wooden member, not prebored. */
  WOOD_MEMBER_NOT_PREBORED(
      "NDS Commentary, wood side member, not prebored", SpacingTable.WOOD_MEMBER),
  /**
   * ICC-ES: structural screws loaded along the grain or to an edge, oven-dry gravity below 0.50.
   */
  STRUCTURAL_SCREW_LIGHT_WOOD("ICC-ES ESR-4948, gravity below 0.50", SpacingTable.STRUCTURAL_LIGHT),
  /** ICC-ES: the same in wood of an oven-dry gravity of 0.50 or more. */
  STRUCTURAL_SCREW_DENSE_WOOD(
      "ICC-ES ESR-4948, gravity 0.50 or more", SpacingTable.STRUCTURAL_DENSE),
  /** ICC-ES: structural screws pulled along their length, in any wood. */
  STRUCTURAL_SCREW_PULLED_OUT("ICC-ES ESR-4948, axial load", SpacingTable.STRUCTURAL_AXIAL),
  /** NDS: bolts and lag screws of 1/4 in and more in softwood, for their full value. */
  BOLT_IN_SOFTWOOD("NDS, bolts and lag screws in softwood", SpacingTable.BOLT_SOFTWOOD),
  /** NDS: bolts and lag screws of 1/4 in and more in hardwood, for their full value. */
  BOLT_IN_HARDWOOD("NDS, bolts and lag screws in hardwood", SpacingTable.BOLT_HARDWOOD);

  private static final double LIGHT = 420;
  private static final double DENSE = 500;
  private static final Measure<Length> THICK = Measures.millimetres(5);
  private static final Measure<Length> SIX = Measures.millimetres(6);
  private static final Measure<Length> QUARTER = Measures.inches(1 / 4d);

  private final String words;
  private final SpacingTable thin;
  private final SpacingTable thick;

  SpacingRule(String words, SpacingTable any) {
    this(words, any, any);
  }

  SpacingRule(String words, SpacingTable thin, SpacingTable thick) {
    this.words = words;
    this.thin = thin;
    this.thick = thick;
  }

  /**
   * The rule of EN 1995-1-1 for fasteners driven without a hole.
   *
   * @param characteristicDensity ρₖ of the strength class, more than zero and at most 500 kg/m³
   * @return {@link #EC5_UP_TO_420} or {@link #EC5_UP_TO_500}
   * @throws IllegalArgumentException if the density is more: such wood must be pre-drilled
   */
  public static SpacingRule ec5NotPreDrilled(Quantity<Density> characteristicDensity) {
    Measure<Density> density =
        Arguments.positiveDensity("characteristic density", characteristicDensity);
    double value = density.in(ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    if (value > DENSE) {
      throw new IllegalArgumentException(
          "characteristic density must be at most 500 kg/m³ to drive fasteners without a hole, was "
              + density
              + "; pre-drill, and take EC5_PRE_DRILLED");
    }
    return value > LIGHT ? EC5_UP_TO_500 : EC5_UP_TO_420;
  }

  /** {@return where its figures come from} */
  public Source source() {
    return thin.source();
  }

  /** Whether it is one of EN 1995-1-1. */
  boolean isEurocode() {
    return thin != thick;
  }

  /** Its figures for a diameter: those of EN 1995-1-1 change at 5 mm. */
  SpacingTable table(Measure<Length> diameter) {
    return diameter.isLessThan(THICK) ? thin : thick;
  }

  /** Where it is stretched: a diameter that it was not made for. */
  List<Caution> cautions(Measure<Length> diameter) {
    List<String> limits = new ArrayList<>();
    boolean bolts = this == BOLT_IN_SOFTWOOD || this == BOLT_IN_HARDWOOD;
    if (isEurocode()) {
      if (diameter.isGreaterThan(SIX)) {
        limits.add("table 8.2 holds for screws up to 6 mm; thicker ones keep those of bolts");
      }
      if (this != EC5_PRE_DRILLED && diameter.isGreaterThanOrEqualTo(SIX)) {
        limits.add("pre-drill for fasteners from 6 mm on");
      }
    } else if (!bolts && diameter.isGreaterThan(QUARTER)) {
      limits.add("the rule is for nails and screws; from 1/4 in on keep the distances of bolts");
    }
    if (bolts && diameter.isLessThan(QUARTER)) {
      limits.add("the rule is for bolts and lag screws of 1/4 in and more");
    }
    if (bolts) {
      limits.add(
          "edges of 1.5 diameters hold for bolts up to six diameters long in the wood; a longer one"
              + " wants half the distance of the rows if that is more");
    }
    return limits.stream()
        .map(text -> Caution.limit(text + "; this one has " + diameter, source()))
        .toList();
  }

  /** Standard and case. */
  @Override
  public String toString() {
    return words;
  }
}
