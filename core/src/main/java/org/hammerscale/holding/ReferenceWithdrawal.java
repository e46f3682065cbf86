package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The reference design value of the NDS for pulling a fastener out along its length. Other names:
 * {@index withdrawal}, {@index "holding power"}, {@index "pull-out"}. It is a working load before
 * the code's adjustments, about a fifth of what {@link UltimateWithdrawal} says the wood gives on
 * average before it lets go; the two are not to be confused, nor their gravities.
 *
 * <pre>{@code
 * WoodScrew screw = WoodScrew.number(10);
 * ReferenceWithdrawal hold = ReferenceWithdrawal.of(screw, Wood.named("Douglas-fir coast"));
 * hold.force(inches(1))               // 135.4 lbf  by an inch of thread in the wood
 * hold.inEndGrain().force(inches(1))  // 0 lbf      in a board's end: not to be relied on
 * }</pre>
 *
 * <p>W per inch of thread, in pounds: wood screw 2850 G² D, lag screw (coach screw) 1800 G^1.5
 * D^0.75, nail 1380 G^2.5 D, with the oven-dry gravity G and the diameter D in inches. A fastener
 * in inches is answered in pounds-force, any other in newtons. In end grain a lag screw has 0.75 of
 * that; wood screws and nails nothing, since the NDS does not let them be loaded so.
 *
 * <p>Exact as the rule states it. Source: ANSI/AWC NDS 2015, 12.2.1 to 12.2.3 and table 12.2A; the
 * nail as public pages quote it, the end grain of nails from memory.
 */
public final class ReferenceWithdrawal {
  private static final Source NDS =
      Source.read("ANSI/AWC NDS 2015", "12.2, reference withdrawal design values");
  private static final Source NDS_NAIL =
      Source.read("ANSI/AWC NDS 2015", "12.2.3, 1380 G^2.5 D, as public pages quote it");
  private static final String BASIS = "oven-dry weight and volume";

  private final PullOut pull;

  private ReferenceWithdrawal(PullOut pull) {
    this.pull = pull;
  }

  /**
   * A fastener in side grain, in its proper {@linkplain PilotHole pilot hole}.
   *
   * @param fastener the screw or nail
   * @param wood what it is in; its oven-dry gravity counts
   * @return what it holds
   */
  public static ReferenceWithdrawal of(WoodFastener fastener, Wood wood) {
    Objects.requireNonNull(fastener, "fastener");
    PullOut.Law law =
        switch (fastener.kind()) {
          case WOOD_SCREW -> new PullOut.Law(2850, 2, 1);
          case LAG_SCREW -> new PullOut.Law(1800, 1.5, 0.75);
          case NAIL -> new PullOut.Law(1380, 2.5, 1);
        };
    return new ReferenceWithdrawal(new PullOut(fastener, wood, false, law));
  }

  /**
   * The same in wood of which only the gravity is known, as for a row of the standard's own table.
   *
   * @param fastener the screw or nail
   * @param gravity the oven-dry gravity of the wood
   * @return what it holds
   */
  public static ReferenceWithdrawal of(WoodFastener fastener, OvenDryGravity gravity) {
    return of(fastener, Wood.softwood("wood of " + gravity, gravity));
  }

  /** {@return the same fastener driven into end grain, along the fibres} */
  public ReferenceWithdrawal inEndGrain() {
    return new ReferenceWithdrawal(pull.inEndGrain());
  }

  /**
   * The reference value of one fastener.
   *
   * @param inWood length of thread in the wood without the tip, of a nail its length in the wood;
   *     more than zero
   * @return the force, in pounds-force if the diameter is in inches, else in newtons
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Measure<Force> force(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    return pull.measure(force(Notes.NONE, length));
  }

  /**
   * How long it must stand in the wood to hold a force: L = F ÷ (W of one unit of length), and no
   * less than 6 diameters, of a lag screw 4. A driven pintle must be so deep beyond any decayed or
   * split wood.
   *
   * @param force along its length, more than zero
   * @return the length of thread without the tip, of a nail its length in the wood; in inches if
   *     the diameter is in inches, else in millimetres
   * @throws IllegalArgumentException if the force is not more than zero, or the grain holds nothing
   */
  public Measure<Length> leastLength(Quantity<Force> force) {
    return Measure.of(least(Notes.NONE, checkedForce(force)), HoldingLaw.lengthUnit(pull.fastener));
  }

  /**
   * How that length was found.
   *
   * @param force along its length, more than zero
   * @return the working of {@link #leastLength}
   * @throws IllegalArgumentException if the force is not more than zero, or the grain holds nothing
   */
  public Working lengthWorking(Quantity<Force> force) {
    Measure<Force> checked = checkedForce(force);
    return Notes.taken(
            "least length in the wood, " + pull.words() + pull.wood.name(),
            HoldingLaw.lengthUnit(pull.fastener),
            n -> least(n, checked))
        .withSource(pull.fastener.kind() == WoodFastener.Kind.NAIL ? NDS_NAIL : NDS)
        .withCautions(cautions(leastLength(checked)));
  }

  private Measure<Force> checkedForce(Quantity<Force> force) {
    Measure<Force> checked = Arguments.positiveForce("force", force);
    if (force(Notes.NONE, unitLength()) == 0) {
      throw new IllegalArgumentException(
          "force must pull at side grain, was "
              + checked
              + " on a "
              + pull.words()
              + pull.wood.name()
              + "; turn the fastener into side grain, take a lag screw, or bolt through");
    }
    return checked;
  }

  private Measure<Length> unitLength() {
    return Measure.of(1, HoldingLaw.lengthUnit(pull.fastener));
  }

  private double least(Notes n, Measure<Force> force) {
    Unit<Force> unit = HoldingLaw.forceUnit(pull.fastener);
    double one =
        n.value("W", "force on a unit of length", "", force(Notes.NONE, unitLength()), unit);
    double f = n.value("F", "force to hold", "", force.in(unit), unit);
    double u = n.given("u", "that unit", 1);
    double enough = n.length("l", "length that holds it", "F u / W", f * u / one);
    double d =
        n.given("d", "diameter", pull.fastener.diameter().in(HoldingLaw.lengthUnit(pull.fastener)));
    double least = PullOut.leastDiameters(pull.fastener);
    return enough >= least * d
        ? n.length("L", "least length in the wood", "l", enough)
        : n.length("L", "least that may be relied on", Math.round(least) + " d", least * d);
  }

  /**
   * What to know before trusting it.
   *
   * @param inWood length of thread in the wood, more than zero
   * @return cautions of grain, length and wood, and of what a reference value is
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public List<Caution> cautions(Quantity<Length> inWood) {
    List<Caution> all = new ArrayList<>(pull.cautions(PullOut.checked(inWood)));
    all.addAll(HoldCautions.REFERENCE);
    return List.copyOf(all);
  }

  /**
   * How it was found.
   *
   * @param inWood length of thread in the wood, more than zero
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    return Notes.taken(
            "NDS reference withdrawal, " + pull.words() + pull.wood.name(),
            HoldingLaw.lengthUnit(pull.fastener),
            n -> force(n, length))
        .withSource(pull.fastener.kind() == WoodFastener.Kind.NAIL ? NDS_NAIL : NDS)
        .withCautions(cautions(length));
  }

  private double force(Notes n, Measure<Length> length) {
    return pull.force(n, BASIS, pull.wood.ovenDry().value(), length);
  }

  /** Fastener, grain and wood. */
  @Override
  public String toString() {
    return "NDS reference withdrawal of a " + pull.words() + pull.wood.name();
  }
}
