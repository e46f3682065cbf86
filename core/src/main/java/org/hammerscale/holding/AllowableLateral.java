package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The load across a wood screw that handbooks used to allow: F = C D², with C by the group of
 * species. A working load before the code's adjustments, three quarters of {@link LateralHold}.
 * Present codes reckon with the yield of screw, iron and wood instead; take it for a first size.
 *
 * <pre>{@code
 * WoodScrew screw = WoodScrew.number(10);
 * AllowableLateral hold = AllowableLateral.of(screw, AllowableLateral.Group.II);
 * hold.force(inches("1 1/2"))               // 143 lbf   for a first size, 1 1/2 in deep in the wood
 * hold.inEndGrain().force(inches("1 1/2"))  // 95.3 lbf  in a board's end
 * }</pre>
 *
 * <p>Full from 7 diameters in the wood on, in proportion down to 4, nothing below. End grain has
 * two thirds. A screw in inches is answered in pounds-force, any other in newtons.
 *
 * <p>Exact as the rule states it. Source: civil engineering formulas, wood screws, 6.37 ff. (the
 * NDS of the time); depths from memory.
 */
public final class AllowableLateral {
  private static final Source RULE =
      Source.read(
          "civil engineering formulas (after the NDS of the time)", "wood screws, 6.37 ff.");

  /** The groups of species that the rule distinguishes, from the densest to the lightest. */
  public enum Group {
    /** Dense hardwoods such as oak, ash, beech: C = 4800. */
    I(4800),
    /** Such as Douglas fir, southern pine: C = 3960. */
    II(3960),
    /** Such as hemlock, Norway pine: C = 3240. */
    III(3240),
    /** Light softwoods such as cedar, white pine, spruce: C = 2520. */
    IV(2520);

    private final double constant;

    Group(double constant) {
      this.constant = constant;
    }

    /** The group's number. */
    @Override
    public String toString() {
      return "group " + name();
    }
  }

  private final WoodFastener screw;
  private final Group group;
  private final boolean endGrain;

  private AllowableLateral(WoodFastener screw, Group group, boolean endGrain) {
    this.screw = screw;
    this.group = Objects.requireNonNull(group, "group");
    this.endGrain = endGrain;
  }

  /**
   * A wood screw in side grain.
   *
   * @param screw the wood screw
   * @param group the group of its wood
   * @return what was allowed
   * @throws IllegalArgumentException if the fastener is no wood screw
   */
  public static AllowableLateral of(WoodFastener screw, Group group) {
    Objects.requireNonNull(screw, "screw");
    if (screw.kind() != WoodFastener.Kind.WOOD_SCREW) {
      throw new IllegalArgumentException(
          "screw must be a wood screw for this rule, was a "
              + HoldingLaw.words(screw)
              + "; take LateralHold for it");
    }
    return new AllowableLateral(screw, group, false);
  }

  /** {@return the same screw driven into end grain, along the fibres} */
  public AllowableLateral inEndGrain() {
    return new AllowableLateral(screw, group, true);
  }

  /**
   * The load of one screw.
   *
   * @param inWood depth of the screw in the wood that receives its point, more than zero
   * @return the force, in pounds-force if the diameter is in inches, else in newtons
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Measure<Force> force(Quantity<Length> inWood) {
    return Measure.of(force(Notes.NONE, checked(inWood)), HoldingLaw.forceUnit(screw));
  }

  /**
   * What to know before trusting it.
   *
   * @param inWood depth in the wood, more than zero
   * @return cautions of depth, and of what a reference value is
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public List<Caution> cautions(Quantity<Length> inWood) {
    List<Caution> cautions = new ArrayList<>(depth().cautions(checked(inWood)));
    cautions.addAll(HoldCautions.REFERENCE);
    return List.copyOf(cautions);
  }

  /**
   * How it was found.
   *
   * @param inWood depth in the wood, more than zero
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> depth = checked(inWood);
    return Notes.taken(
            "load across a " + HoldingLaw.words(screw) + " by the old rule, " + group,
            HoldingLaw.lengthUnit(screw),
            n -> force(n, depth))
        .withSource(RULE)
        .withCautions(cautions(depth));
  }

  private double force(Notes n, Measure<Length> inWood) {
    double k = HoldingLaw.constant(n, "K", screw, group.constant, 2);
    return depth().force(n, k, 2, inWood, endGrain);
  }

  private LateralDepth depth() {
    return LateralDepth.of(screw, 7, 4);
  }

  private static Measure<Length> checked(Quantity<Length> inWood) {
    return Arguments.positive("depth in the wood", inWood);
  }

  /** Screw, grain and group. */
  @Override
  public String toString() {
    return "load once allowed across a "
        + HoldingLaw.words(screw)
        + (endGrain ? " in end grain, " : " in side grain, ")
        + group;
  }
}
