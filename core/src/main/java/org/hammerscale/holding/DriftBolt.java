package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.Wood;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Taper;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A long round bolt without thread that is driven into a tighter hole in big timber: {@index "drift
 * bolt"}, {@index driftpin}.
 *
 * <pre>{@code
 * DriftBolt bolt = DriftBolt.of(inches("3/4"), Wood.named("Douglas-fir coast"));
 * bolt.hole()                 // 5/8 in  that the rule presumes
 * bolt.ultimate(inches(10))   // 11405 lbf (7961 lbf to 15466 lbf)  at which it comes out
 * Spike rod = bolt.rod().through(inches("3/16")).through(inches(6)).driven(inches("10 3/4"));
 * rod.piece(Material.MILD_STEEL).layout().cutLength()   // 17.5349 in  its head, through washer and beam, 10 in of full shank and its eased end
 * }</pre>
 *
 * <p>P = 6600 G² D L in pounds and inches, 45.5 in newtons and millimetres, with the gravity at 12
 * %: the average load that draws a round smooth bolt out of the side grain of seasoned timber, in a
 * hole 1/8 in (3.2 mm) under its size. The spread is that of gravity within a species, nine of ten
 * within 16.5 %. It is no working load: allow a fifth. A diameter in inches is answered in
 * pounds-force, any other in newtons.
 *
 * <p>Source: USDA <cite>Wood Handbook</cite>, FPL-GTR-190, eq. 8-9 (its form read, its constant
 * from memory).
 */
public final class DriftBolt {
  private static final Source HANDBOOK =
      Source.fromMemory(
          "USDA Wood Handbook, FPL-GTR-190", "eq. 8-9, drift bolts; form and hole were read");
  private static final Source SPREAD =
      Source.fromMemory(
          "USDA Wood Handbook, FPL-GTR-190",
          "table 5-6, specific gravity varies by 10 % within a species");
  private static final double SPREAD_OF_GRAVITY = 1.645 * 0.10;
  private static final double EASED = 0.75;
  private static final Measure<Length> THINNEST = Measures.millimetres(6);

  private final Spike bolt;
  private final Wood wood;

  private DriftBolt(Spike bolt, Wood wood) {
    this.bolt = bolt;
    this.wood = wood;
  }

  /**
   * A bolt in side grain.
   *
   * @param diameter of the bolt, more than 6 mm
   * @param wood what it is in; its gravity at 12 % counts
   * @return the bolt
   * @throws IllegalArgumentException if it is thinner: the hole of the rule means nothing then
   */
  public static DriftBolt of(Quantity<Length> diameter, Wood wood) {
    Objects.requireNonNull(wood, "wood");
    Measure<Length> across = Arguments.positive("diameter", diameter);
    if (!across.isGreaterThan(THINNEST)) {
      throw new IllegalArgumentException(
          "diameter must be more than "
              + THINNEST
              + " for a hole 3.2 mm under it, was "
              + across
              + "; reckon it as a Spike");
    }
    return new DriftBolt(Spike.of(Section.round(across)), wood);
  }

  /**
   * The hole that the rule presumes: D − 1/8 in, metric D − 3.2 mm.
   *
   * @return the diameter to bore, in the bolt's unit
   */
  public Measure<Length> hole() {
    Measure<Length> under = isCustomary() ? Measures.inches(1 / 8d) : Measures.millimetres(3.2);
    return bolt.diameter().subtract(under);
  }

  /**
   * The rod as it is forged and driven: a snap head, jumped up before it is driven, under which a
   * washer may lie; and an end that is eased over one diameter to three quarters of the hole, so
   * that it enters. That ease is our own judgement.
   *
   * @return the rod, to be led through what it fixes and driven; with another head by {@link
   *     Spike#withHead}
   */
  public Spike rod() {
    Section shank = bolt.shank();
    Section tip = Section.round(hole().multiply(EASED));
    return bolt.withHead(Head.snap(shank)).withPoint(Taper.between(shank, tip, shank.width()));
  }

  /**
   * The load that draws it out.
   *
   * @param inWood its length in the wood, more than zero; of its {@link #rod} the full shank
   * @return the force, an estimate of an average of tests
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Estimate<Force> ultimate(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    Unit<Force> unit = HoldingLaw.forceUnit(bolt);
    return Estimate.of(
        Measure.of(force(Notes.NONE, length, 1 - SPREAD_OF_GRAVITY), unit),
        Measure.of(force(Notes.NONE, length, 1), unit),
        Measure.of(force(Notes.NONE, length, 1 + SPREAD_OF_GRAVITY), unit));
  }

  /** {@return of holes by another basis, of wood, and of what an ultimate load is} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "the NDS bores drift pins only 0 to 1/32 in under size: a tighter hole than that of this"
                + " rule, and another basis; do not mix them. End grain is not to be relied on",
            Source.fromMemory("ANSI/AWC NDS 2015", "12.1.7")));
    cautions.addAll(wood.cautions());
    cautions.addAll(HoldCautions.ULTIMATE);
    return List.copyOf(cautions);
  }

  /**
   * How the likely load was found.
   *
   * @param inWood its length in the wood, more than zero
   * @return the working of {@link #ultimate}
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> length = PullOut.checked(inWood);
    return Notes.taken(
            "ultimate withdrawal of a " + this,
            HoldingLaw.lengthUnit(bolt),
            n -> force(n, length, 1))
        .withSource(HANDBOOK)
        .withSource(SPREAD)
        .withCautions(cautions());
  }

  private double force(Notes n, Measure<Length> length, double share) {
    double c = HoldingLaw.constant(n, "C", bolt, 6600, 2);
    double g = n.number("G", "specific gravity at 12 %", "", wood.at12Percent().value() * share);
    double d = n.given("D", "diameter", bolt.diameter().in(HoldingLaw.lengthUnit(bolt)));
    double l = n.given("L", "length in the wood", length.in(HoldingLaw.lengthUnit(bolt)));
    return n.value(
        "P", "load that draws it out", "C G² D L", c * (g * g) * d * l, HoldingLaw.forceUnit(bolt));
  }

  private boolean isCustomary() {
    return HoldingLaw.forceUnit(bolt).equals(ShopUnits.POUND_FORCE);
  }

  /** Diameter and wood. */
  @Override
  public String toString() {
    return bolt.diameter() + " drift bolt in " + wood.name();
  }
}
