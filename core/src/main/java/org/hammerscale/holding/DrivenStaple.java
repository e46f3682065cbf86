package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.Wood;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A staple driven into wood with both its legs, as for a hasp, a bolt or a hook's eye: it holds as
 * two nails of a leg's size. Other name: {@index "driven staple"}; how it is bent tells {@link
 * org.hammerscale.bending.UBend}.
 *
 * <pre>{@code
 * Spike leg = Spike.of(Section.round(inches("1/4")));
 * DrivenStaple staple = DrivenStaple.of(leg, Wood.named("white oak"));
 * staple.reference(inches(2))   // 628.3 lbf  that one may count on
 * staple.ultimate(inches(2))    // 2993 lbf (1910 lbf to 4380 lbf)  at which it lets go
 * }</pre>
 *
 * <p>Straight out of side grain, both legs alike. Source: {@link ReferenceWithdrawal} and {@link
 * UltimateWithdrawal} of nails, twice (from memory).
 */
public final class DrivenStaple {
  private static final Source TWICE =
      Source.fromMemory("USDA Wood Handbook, FPL-GTR-190", "ch. 8, staples hold as two nails");

  private final Spike leg;
  private final Wood wood;

  private DrivenStaple(Spike leg, Wood wood) {
    this.leg = leg;
    this.wood = wood;
  }

  /**
   * A staple in side grain.
   *
   * @param leg one of its legs
   * @param wood what it is in
   * @return the staple
   */
  public static DrivenStaple of(Spike leg, Wood wood) {
    return new DrivenStaple(
        Objects.requireNonNull(leg, "leg"), Objects.requireNonNull(wood, "wood"));
  }

  /**
   * The reference value of both legs, before the code's adjustments.
   *
   * @param inWood how deep each leg stands in the wood, more than zero
   * @return the force, in pounds-force if the leg is in inches, else in newtons
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Measure<Force> reference(Quantity<Length> inWood) {
    return ReferenceWithdrawal.of(leg, wood).force(inWood).multiply(2);
  }

  /**
   * The load that draws it out, on average of tests.
   *
   * @param inWood how deep each leg stands in the wood, more than zero
   * @return the force, an estimate
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Estimate<Force> ultimate(Quantity<Length> inWood) {
    return UltimateWithdrawal.of(leg, wood).force(inWood).multiply(2);
  }

  /** {@return of splitting, of a slanting pull, of wood, and that the value is a reference} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "both legs in one line of the grain split it: set the staple askew or across, bore for the"
                + " legs, and clench them where they come through",
            Source.commonPractice("two points in one fibre split it")));
    cautions.addAll(leg.cautions());
    cautions.addAll(wood.cautions());
    cautions.addAll(HoldCautions.REFERENCE);
    return List.copyOf(cautions);
  }

  /**
   * How the reference value was found.
   *
   * @param inWood how deep each leg stands in the wood, more than zero
   * @return the working of {@link #reference}
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Force> one = ReferenceWithdrawal.of(leg, wood).force(inWood);
    return Notes.taken(
            "reference withdrawal of a " + this, HoldingLaw.lengthUnit(leg), n -> both(n, one))
        .withSource(TWICE)
        .withCautions(cautions());
  }

  private static double both(Notes n, Measure<Force> one) {
    double w = n.value("W", "reference value of one leg", "", one.getValue(), one.getUnit());
    return n.value("F", "of both legs", "2 W", 2 * w, one.getUnit());
  }

  /** Leg and wood. */
  @Override
  public String toString() {
    return "staple of " + leg.shank() + " in " + wood.name();
  }
}
