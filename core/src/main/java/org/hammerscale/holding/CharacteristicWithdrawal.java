package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * What a smooth nail or spike holds by the Eurocode, pulled out of side grain: its {@index
 * "characteristic withdrawal"}, which nineteen of twenty reach. F = 20 · 10⁻⁶ ρₖ² d t in newtons
 * and millimetres, in full from a depth of 12 d on, times t / (4 d) − 2 from 8 d on, nothing below.
 *
 * <pre>{@code
 * Spike spike = Spike.of(Section.square(millimetres(6)));
 * CharacteristicWithdrawal hold = CharacteristicWithdrawal.of(spike, TimberClass.C24.characteristicDensity());
 * hold.force(millimetres(80))   // 1176 N
 * hold.force(millimetres(60))   // 441 N  not 12 sides deep
 * }</pre>
 *
 * <p>Not yet divided and multiplied by the partial factors of the standard and its annex. Exact as
 * the rule states it. Source: EN 1995-1-1, 8.3.2 (from memory).
 */
public final class CharacteristicWithdrawal {
  private static final Source RULE =
      Source.fromMemory("EN 1995-1-1", "8.3.2, smooth nails, 20 · 10⁻⁶ ρₖ²");
  private static final double ROUNDING = 1e-9;

  private final WoodFastener nail;
  private final Measure<Density> density;

  private CharacteristicWithdrawal(WoodFastener nail, Measure<Density> density) {
    this.nail = nail;
    this.density = density;
  }

  /**
   * A smooth nail or spike in side grain.
   *
   * @param nail the nail
   * @param density ρₖ, the characteristic density of the timber, more than zero
   * @return what it holds
   * @throws IllegalArgumentException if the fastener is no nail, or the density not more than zero
   */
  public static CharacteristicWithdrawal of(WoodFastener nail, Quantity<Density> density) {
    if (Objects.requireNonNull(nail, "nail").kind() != WoodFastener.Kind.NAIL) {
      throw new IllegalArgumentException(
          "nail must be a smooth nail for this rule, was a "
              + HoldingLaw.words(nail)
              + "; take ReferenceWithdrawal for screws");
    }
    return new CharacteristicWithdrawal(nail, Arguments.positiveDensity("density", density));
  }

  /**
   * The characteristic value of one nail.
   *
   * @param inWood t, its depth in the member that receives the point, more than zero
   * @return the force, in newtons; zero for less than 8 d
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Measure<Force> force(Quantity<Length> inWood) {
    return Measure.of(force(Notes.NONE, PullOut.checked(inWood)), ShopUnits.NEWTON);
  }

  /**
   * What to know before trusting it.
   *
   * @param inWood its depth in the wood, more than zero
   * @return cautions of depth, and of what a characteristic value is
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public List<Caution> cautions(Quantity<Length> inWood) {
    List<Caution> cautions = new ArrayList<>();
    if (share(Notes.NONE, PullOut.checked(inWood)) == 0) {
      cautions.add(
          Caution.danger(
              "less than 8 diameters in the wood count for nothing: take a longer nail, or clench it"));
    }
    cautions.addAll(HoldCautions.REFERENCE);
    return List.copyOf(cautions);
  }

  /**
   * How it was found.
   *
   * @param inWood its depth in the wood, more than zero
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> depth = PullOut.checked(inWood);
    return Notes.taken(
            "characteristic withdrawal of a " + HoldingLaw.words(nail),
            ShopUnits.MILLIMETRE,
            n -> force(n, depth))
        .withSource(RULE)
        .withCautions(cautions(depth));
  }

  private double force(Notes n, Measure<Length> inWood) {
    double q = share(n, inWood);
    double rho = density.in(ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    n.value("ρ", "characteristic density", "", rho, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    String formula = "20 ρ² / 1000000";
    double f =
        n.value("f", "withdrawal strength", formula, 20 * (rho * rho) / 1e6, ShopUnits.MEGAPASCAL);
    double d = nail.diameter().in(ShopUnits.MILLIMETRE);
    double t = inWood.in(ShopUnits.MILLIMETRE);
    return n.value("F", "characteristic withdrawal", "q f d t", q * f * d * t, ShopUnits.NEWTON);
  }

  private double share(Notes n, Measure<Length> inWood) {
    double d = n.given("d", "diameter", nail.diameter().in(ShopUnits.MILLIMETRE));
    double t = n.given("t", "depth in the wood", inWood.in(ShopUnits.MILLIMETRE));
    if (t >= 12 * d * (1 - ROUNDING)) {
      return n.number("q", "share at this depth: full", "", 1);
    }
    return t < 8 * d * (1 - ROUNDING)
        ? n.number("q", "share at so small a depth", "", 0)
        : n.number("q", "share at this depth", "t / (4 d) − 2", Math.max(0, t / (4 * d) - 2));
  }

  /** The nail and the density. */
  @Override
  public String toString() {
    return "characteristic withdrawal of a " + HoldingLaw.words(nail) + " in timber of " + density;
  }
}
