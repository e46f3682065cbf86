package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * An answer of {@link StrapScrews}: so many screws of one size and length, and how far each limit
 * is used. A use of 1 is all that the rule allows.
 *
 * <pre>{@code
 * StrapScrews strap = StrapScrews.through(millimetres(6)).into(millimetres(40), Wood.named("oak"));
 * ScrewChoice choice = strap.pushedAcross(newtons(900)).pulledOff(newtons(500)).bestOf(ScrewSeries.METRIC_WOOD_SCREWS);
 * choice                                        // 2 × 4 mm wood screw, DIN 97, 35 mm long; both together 96.7 %
 * choice.governing()                            // both together
 * choice.penetration()                          // 29 mm
 * choice.use(ScrewChoice.Limit.WITHDRAWAL) < 0.36   // true  little of what the wood holds
 * }</pre>
 *
 * <p>Sources are those of {@link ReferenceWithdrawal} and {@link AllowableLateral}; of a lag screw
 * across it is the low value of {@link LateralHold}, less across the grain as the <cite>Wood
 * Handbook</cite> tells (from memory); both together by NDS 12.4.1 (from memory).
 */
public final class ScrewChoice {
  private static final Source COMBINED =
      Source.fromMemory("ANSI/AWC NDS 2015", "12.4.1, W Z / (W cos² α + Z sin² α)");
  private static final Source WITHDRAWAL =
      Source.read("ANSI/AWC NDS 2015", "12.2, reference withdrawal design values");
  private static final Source LATERAL =
      Source.read(
          "civil engineering formulas (after the NDS of the time)", "wood screws, 6.37 ff.");
  private static final Source LAG =
      Source.fromMemory(
          "USDA Wood Handbook, FPL-GTR-190", "ch. 8, lag screws across; low value, by the grain");
  private static final Source IRON =
      Source.computed("shear round the head; pull and shear at the root (von Mises)");

  /** What a screw is used up by. */
  public enum Limit {
    /** Pulled out of the wood. */
    WITHDRAWAL("withdrawal"),
    /** Pushed across in the wood. */
    LATERAL("across"),
    /** Pulled and pushed at once, by the standard's own rule. */
    COMBINED("both together"),
    /** The iron sheared round the head. */
    HEAD("iron round the head"),
    /** The screw itself, torn and sheared at the root of its thread. */
    SCREW("the screw itself");

    private final String words;

    Limit(String words) {
      this.words = words;
    }

    /** The limit in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  private final ScrewHold hold;
  private final int count;
  private final boolean headsOnTheIron;

  ScrewChoice(ScrewHold hold, int count, boolean headsOnTheIron) {
    this.hold = hold;
    this.count = count;
    this.headsOnTheIron = headsOnTheIron;
  }

  /** {@return how many} */
  public int count() {
    return count;
  }

  /** {@return which} */
  public WoodFastener screw() {
    return hold.screw();
  }

  /** {@return how long, as it is stocked} */
  public Measure<Length> length() {
    return hold.length();
  }

  /** {@return how deep it stands in the wood that receives its point, in the unit of its length} */
  public Measure<Length> penetration() {
    return hold.penetration();
  }

  /**
   * How far a limit is used.
   *
   * @param limit which
   * @return the load on these screws ÷ what they may bear, from 0 to 1
   */
  public double use(Limit limit) {
    return hold.use(Objects.requireNonNull(limit, "limit"), Notes.NONE, count);
  }

  /** {@return the limit that is used most} */
  public Limit governing() {
    Limit most = Limit.WITHDRAWAL;
    for (Limit limit : Limit.values()) {
      // Both together comes to the same as one alone where the other is nothing.
      if (use(limit) > use(most) * (1 + 1e-12)) {
        most = limit;
      }
    }
    return most;
  }

  /**
   * How the use of a limit was found.
   *
   * @param limit which
   * @return the working of {@link #use}
   */
  public Working working(Limit limit) {
    Objects.requireNonNull(limit, "limit");
    Working working =
        Notes.taken(
            count + " × " + screw() + ", " + limit,
            hold.lengthUnit(),
            n -> hold.use(limit, n, count));
    boolean lag = screw().kind() == WoodFastener.Kind.LAG_SCREW;
    Source across = lag ? LAG : LATERAL;
    Working sourced =
        switch (limit) {
          case WITHDRAWAL -> working.withSource(WITHDRAWAL);
          case LATERAL -> working.withSource(across);
          case COMBINED -> working.withSource(WITHDRAWAL).withSource(across).withSource(COMBINED);
          case HEAD, SCREW -> working.withSource(IRON);
        };
    return sourced.withSource(FastenerRow.PULLED_OUT).withCautions(cautions());
  }

  /** {@return what the wood does, what was left out, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (count > 1) {
      cautions.add(
          Caution.limit(
              "screws in a row share unequally: drill the iron to fit, and see that their spacing in"
                  + " wood and iron is kept",
              FastenerRow.PULLED_OUT));
    }
    if (headsOnTheIron) {
      cautions.add(
          Caution.limit(
              "heads stand on the iron: round or square ones, not the flat heads of the series",
              IRON));
    }
    cautions.add(
        Caution.limit(
            "not every length is made in every size: look into the box before drilling",
            Source.commonPractice("stocked sizes differ from shop to shop")));
    cautions.addAll(hold.load().wood().cautions());
    cautions.addAll(HoldCautions.REFERENCE);
    return List.copyOf(cautions);
  }

  /** Number, screw, length, and what is used most. */
  @Override
  public String toString() {
    double percent = Math.ceil(use(governing()) * 1000 - 1e-6) / 10;
    return count
        + " × "
        + screw()
        + ", "
        + length()
        + " long; "
        + governing()
        + " "
        + Measure.of(percent, ShopUnits.ONE)
        + " %";
  }
}
