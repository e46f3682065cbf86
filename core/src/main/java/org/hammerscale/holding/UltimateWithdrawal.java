package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The load at which wood lets a fastener go, on average of tests: {@index "ultimate withdrawal"} by
 * the Wood Handbook. No working load: {@link ReferenceWithdrawal} is a fifth or so of it.
 *
 * <pre>{@code
 * WoodScrew screw = WoodScrew.number(10);
 * Wood fir = Wood.named("Douglas-fir coast");
 * UltimateWithdrawal.of(screw, fir).force(inches(1))   // 687.3 lbf (479.8 lbf to 932 lbf)  at which it lets go
 * ReferenceWithdrawal.of(screw, fir).force(inches(1))  // 135.4 lbf  that one may count on
 * }</pre>
 *
 * <p>In pounds and inches: wood screw 15 700 G² D L, lag screw (coach screw) 8100 G^1.5 D^0.75 L,
 * nail 7850 G^2.5 D L, with the gravity G by the volume at 12 % moisture; in newtons and
 * millimetres the constants are 108.25, 125.4 and 54.12. A fastener in inches is answered in
 * pounds-force, any other in newtons. In end grain a lag screw has 0.75 of that; wood screws and
 * nails are not to be relied on there and count for nothing.
 *
 * <p>The spread is that of gravity within a species, whose coefficient of variation is 10 %: nine
 * of ten pieces lie within 16.5 % of the mean. Source: USDA <cite>Wood Handbook</cite>,
 * FPL-GTR-190, ch. 8; the formulas of lag screw and nail were read, that of the wood screw is from
 * memory.
 */
public final class UltimateWithdrawal {
  private static final Source LAG = Source.read("USDA Wood Handbook", "ch. 8, lag screws");
  private static final Source NAILS =
      Source.read(
          "USDA Wood Handbook, FPL-GTR-190",
          "ch. 8, nails, 54.12 and 7850, as public pages quote it");
  private static final Source SCREWS =
      Source.fromMemory("USDA Wood Handbook, FPL-GTR-190", "ch. 8, wood screws");
  private static final Source SPREAD =
      Source.fromMemory(
          "USDA Wood Handbook, FPL-GTR-190",
          "table 5-6, specific gravity varies by 10 % within a species");
  private static final String BASIS = "volume at 12 % moisture";

  /** Nine of ten pieces: 1.645 times the coefficient of variation. */
  private static final double SPREAD_OF_GRAVITY = 1.645 * 0.10;

  private final PullOut pull;

  private UltimateWithdrawal(PullOut pull) {
    this.pull = pull;
  }

  /**
   * A fastener in side grain, in its proper {@linkplain PilotHole pilot hole}.
   *
   * @param fastener the screw or nail
   * @param wood what it is in; its gravity at 12 % counts
   * @return what it takes to pull it out
   */
  public static UltimateWithdrawal of(WoodFastener fastener, Wood wood) {
    Objects.requireNonNull(fastener, "fastener");
    PullOut.Law law =
        switch (fastener.kind()) {
          case WOOD_SCREW -> new PullOut.Law(15_700, 2, 1);
          case LAG_SCREW -> new PullOut.Law(8100, 1.5, 0.75);
          case NAIL -> new PullOut.Law(7850, 2.5, 1);
        };
    return new UltimateWithdrawal(new PullOut(fastener, wood, false, law));
  }

  /** {@return the same fastener driven into end grain, along the fibres} */
  public UltimateWithdrawal inEndGrain() {
    return new UltimateWithdrawal(pull.inEndGrain());
  }

  /**
   * The load that pulls one fastener out.
   *
   * @param inWood length of thread in the wood without the tip, of a nail its length in the wood;
   *     more than zero
   * @return the force, an estimate, in pounds-force if the diameter is in inches, else in newtons
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Estimate<Force> force(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    return Estimate.of(
        pull.measure(force(Notes.NONE, length, 1 - SPREAD_OF_GRAVITY)),
        pull.measure(force(Notes.NONE, length, 1)),
        pull.measure(force(Notes.NONE, length, 1 + SPREAD_OF_GRAVITY)));
  }

  /**
   * What to know before trusting it.
   *
   * @param inWood length of thread in the wood, more than zero
   * @return cautions of grain, length and wood, and of what an ultimate load is
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public List<Caution> cautions(Quantity<Length> inWood) {
    List<Caution> all = new ArrayList<>(pull.cautions(PullOut.checked(inWood)));
    all.addAll(HoldCautions.ULTIMATE);
    return List.copyOf(all);
  }

  /**
   * How the likely value was found.
   *
   * @param inWood length of thread in the wood, more than zero
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    return Notes.taken(
            "ultimate withdrawal, " + pull.words() + pull.wood.name(),
            HoldingLaw.lengthUnit(pull.fastener),
            n -> force(n, length, 1))
        .withSource(
            switch (pull.fastener.kind()) {
              case LAG_SCREW -> LAG;
              case NAIL -> NAILS;
              default -> SCREWS;
            })
        .withSource(SPREAD)
        .withCautions(cautions(length));
  }

  private double force(Notes n, Measure<Length> length, double share) {
    return pull.force(n, BASIS, pull.wood.at12Percent().value() * share, length);
  }

  /** Fastener, grain and wood. */
  @Override
  public String toString() {
    return "ultimate withdrawal of a " + pull.words() + pull.wood.name();
  }
}
