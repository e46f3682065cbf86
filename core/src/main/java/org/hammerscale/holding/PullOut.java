package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * What pulls a fastener out of wood: F = e C Gᵖ Dᑫ L, whatever the basis of G and the meaning of F,
 * which the two public types keep apart.
 */
final class PullOut {
  /** Constant in inches and pounds, power of the gravity, power of the diameter. */
  record Law(double constant, double gravity, double diameter) {}

  private static final double LAG_IN_END_GRAIN = 0.75;
  private static final Source END_GRAIN =
      Source.read(
          "USDA Wood Handbook (lag screws); civil engineering formulas, 6.37 ff. (wood screws)",
          "end grain");

  final WoodFastener fastener;
  final Wood wood;
  final boolean endGrain;
  private final Law law;

  PullOut(WoodFastener fastener, Wood wood, boolean endGrain, Law law) {
    this.fastener = Objects.requireNonNull(fastener, "fastener");
    this.wood = Objects.requireNonNull(wood, "wood");
    this.endGrain = endGrain;
    this.law = law;
  }

  PullOut inEndGrain() {
    return new PullOut(fastener, wood, true, law);
  }

  static Measure<Length> checked(Quantity<Length> inWood) {
    return Arguments.positive("length in the wood", inWood);
  }

  /** The force in the fastener's unit of force. */
  double force(Notes n, String basis, double gravity, Measure<Length> thread) {
    double c = HoldingLaw.constant(n, "C", fastener, law.constant(), law.diameter() + 1);
    double g = n.number("G", "specific gravity, " + basis, "", gravity);
    double d = n.given("D", "diameter", fastener.diameter().in(HoldingLaw.lengthUnit(fastener)));
    double l = n.given("L", lengthMeaning(), thread.in(HoldingLaw.lengthUnit(fastener)));
    String formula =
        "C "
            + HoldingLaw.power("G", law.gravity())
            + " "
            + HoldingLaw.power("D", law.diameter())
            + " L";
    double side = c * Math.pow(g, law.gravity()) * Math.pow(d, law.diameter()) * l;
    if (!endGrain) {
      return n.value("F", "force of withdrawal", formula, side, HoldingLaw.forceUnit(fastener));
    }
    n.value("S", "the same in side grain", formula, side, HoldingLaw.forceUnit(fastener));
    double e = n.number("e", "share that end grain holds", "", endShare());
    return n.value(
        "F", "force of withdrawal from end grain", "e S", e * side, HoldingLaw.forceUnit(fastener));
  }

  Measure<Force> measure(double force) {
    return Measure.of(force, HoldingLaw.forceUnit(fastener));
  }

  private String lengthMeaning() {
    return fastener.kind() == WoodFastener.Kind.NAIL
        ? "length of the nail in the wood"
        : "length of thread in the wood, without the tip";
  }

  private double endShare() {
    return fastener.kind() == WoodFastener.Kind.LAG_SCREW ? LAG_IN_END_GRAIN : 0;
  }

  /** The least length in the wood that may be relied on. */
  static double leastDiameters(WoodFastener fastener) {
    return fastener.kind() == WoodFastener.Kind.LAG_SCREW ? 4 : 6;
  }

  /** What the grain, the length in the wood and the wood itself do to it. */
  List<Caution> cautions(Measure<Length> thread) {
    List<Caution> cautions = new ArrayList<>();
    if (endGrain && endShare() == 0) {
      cautions.add(
          Caution.danger(
              "a "
                  + HoldingLaw.words(fastener)
                  + " must not be loaded in withdrawal from end grain and counts for nothing there:"
                  + " turn it into side grain, take a lag screw, or bolt through"));
    } else if (endGrain) {
      cautions.add(
          Caution.limit(
              "end grain holds a lag screw three quarters as well as side grain", END_GRAIN));
    }
    double least = leastDiameters(fastener);
    if (thread.isLessThan(fastener.diameter().multiply(least))) {
      cautions.add(
          Caution.limit(
              thread
                  + " in the wood is less than "
                  + Math.round(least)
                  + " diameters ("
                  + fastener.diameter().multiply(least)
                  + "): so short a hold is not to be relied on; take a longer fastener",
              Source.fromMemory("ANSI/AWC NDS 2015", "12.1, least penetration")));
    }
    cautions.addAll(wood.cautions());
    return List.copyOf(cautions);
  }

  String words() {
    return HoldingLaw.words(fastener) + (endGrain ? " in end grain of " : " in side grain of ");
  }
}
