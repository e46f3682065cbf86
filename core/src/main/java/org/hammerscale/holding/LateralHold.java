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
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The load across a screw, lag screw or nail up to which the joint springs back, on average of
 * tests: at the proportional limit. Other names: {@index "lateral load"}, {@index shear}. F = K D²,
 * of a nail K D^1.5, with K by the class of wood. No working load; {@link AllowableLateral} gives
 * an old one for wood screws.
 *
 * <pre>{@code
 * WoodScrew screw = WoodScrew.number(10);
 * LateralHold hold = LateralHold.of(screw, Wood.named("Douglas-fir coast"));
 * hold.force(inches("1 1/2"))                  // 190.6 lbf (134.2 lbf to 247 lbf)  deep enough to hold in full
 * hold.force(inches(1)).likely()               // 143.3 lbf  less deep
 * hold.inEndGrain().force(inches(2)).likely()  // 127.1 lbf  in a board's end, however deep
 * }</pre>
 *
 * <p>The full value wants a depth in the wood: 7 diameters of a wood screw; 7 of a lag screw in
 * dense hardwood, 11 in other wood; 10 and 14 of a nail. With less the load falls in proportion, on
 * the safe side; below 4 diameters (a nail: a third of the full depth) it counts for nothing. End
 * grain has two thirds. K of wood denser than the table is that of its densest class.
 *
 * <p>A fastener in inches is answered in pounds-force, any other in newtons. The spread is that of
 * the crushing strength of a species along the grain, whose coefficient of variation is 18 %: nine
 * of ten lie within 30 %. Source: USDA <cite>Wood Handbook</cite>, FPL-GTR-190, ch. 8 and table 8-4
 * (K from memory).
 */
public final class LateralHold {
  private static final Source HANDBOOK =
      Source.fromMemory("USDA Wood Handbook, FPL-GTR-190", "ch. 8, table 8-4");
  private static final Source SPREAD =
      Source.fromMemory(
          "USDA Wood Handbook, FPL-GTR-190",
          "table 5-6, crushing strength along the grain varies by 18 % within a species");

  /** Nine of ten: 1.645 times the coefficient of variation. */
  private static final double SPREAD_OF_STRENGTH = 1.645 * 0.18;

  private final WoodFastener fastener;
  private final Wood wood;
  private final LateralClass woodClass;
  private final boolean endGrain;

  private LateralHold(WoodFastener fastener, Wood wood, LateralClass woodClass, boolean endGrain) {
    this.fastener = Objects.requireNonNull(fastener, "fastener");
    this.wood = wood;
    this.woodClass = woodClass;
    this.endGrain = endGrain;
  }

  /**
   * A fastener in side grain, in its proper {@linkplain PilotHole pilot hole}.
   *
   * @param fastener the screw or nail
   * @param wood what it is in; hardwood or softwood and its gravity at 12 % count, at least 0.33 or
   *     0.29
   * @return what it holds
   * @throws IllegalArgumentException if the wood is lighter than the table knows
   */
  public static LateralHold of(WoodFastener fastener, Wood wood) {
    Objects.requireNonNull(wood, "wood");
    return new LateralHold(fastener, wood, LateralClass.of(wood), false);
  }

  /** {@return the same fastener driven into end grain, along the fibres} */
  public LateralHold inEndGrain() {
    return new LateralHold(fastener, wood, woodClass, true);
  }

  /**
   * The load of one fastener.
   *
   * @param inWood depth of the fastener in the wood that receives its point, more than zero
   * @return the force, an estimate, in pounds-force if the diameter is in inches, else in newtons
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Estimate<Force> force(Quantity<Length> inWood) {
    double likely = force(Notes.NONE, checked(inWood));
    return Estimate.of(
        measure(likely * (1 - SPREAD_OF_STRENGTH)),
        measure(likely),
        measure(likely * (1 + SPREAD_OF_STRENGTH)));
  }

  /**
   * What to know before trusting it.
   *
   * @param inWood depth in the wood, more than zero
   * @return cautions of depth, grain and wood, and of what this load is
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public List<Caution> cautions(Quantity<Length> inWood) {
    List<Caution> cautions = new ArrayList<>(depth().cautions(checked(inWood)));
    if (woodClass.isBelow(wood)) {
      cautions.add(
          Caution.limit(
              wood.name()
                  + " is denser than the table, which ends at "
                  + woodClass.densest()
                  + "; its densest class was taken",
              HANDBOOK));
    }
    if (fastener.kind() == WoodFastener.Kind.LAG_SCREW) {
      cautions.add(
          Caution.limit(
              "K of lag screws is for a pull along the grain; across it one of more than 3/16 in"
                  + " holds less, of 1/2 in about 0.65 and of 1 in half as much",
              HANDBOOK));
    }
    cautions.addAll(wood.cautions());
    cautions.addAll(HoldCautions.PROPORTIONAL);
    return List.copyOf(cautions);
  }

  /**
   * How the likely value was found.
   *
   * @param inWood depth in the wood, more than zero
   * @return the working of {@link #force}
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public Working working(Quantity<Length> inWood) {
    Measure<Length> depth = checked(inWood);
    return Notes.taken(
            "lateral load at the proportional limit, " + words(),
            HoldingLaw.lengthUnit(fastener),
            n -> force(n, depth))
        .withSource(HANDBOOK)
        .withSource(SPREAD)
        .withCautions(cautions(depth));
  }

  private double force(Notes n, Measure<Length> inWood) {
    boolean nail = fastener.kind() == WoodFastener.Kind.NAIL;
    double power = nail ? 1.5 : 2;
    double k = HoldingLaw.constant(n, "K", fastener, woodClass.k(fastener.kind()), power);
    return depth().force(n, k, power, inWood, endGrain);
  }

  private LateralDepth depth() {
    return switch (fastener.kind()) {
      case WOOD_SCREW -> LateralDepth.of(fastener, 7, 4);
      case LAG_SCREW -> LateralDepth.of(fastener, woodClass.isDense() ? 7 : 11, 4);
      case NAIL ->
          woodClass.isDense()
              ? LateralDepth.of(fastener, 10, 10 / 3d)
              : LateralDepth.of(fastener, 14, 14 / 3d);
    };
  }

  private static Measure<Length> checked(Quantity<Length> inWood) {
    return Arguments.positive("depth in the wood", inWood);
  }

  private Measure<Force> measure(double force) {
    return Measure.of(force, HoldingLaw.forceUnit(fastener));
  }

  private String words() {
    return HoldingLaw.words(fastener)
        + (endGrain ? " in end grain of " : " in side grain of ")
        + wood.name();
  }

  /** Fastener, grain and wood. */
  @Override
  public String toString() {
    return "proportional limit across a " + words();
  }
}
