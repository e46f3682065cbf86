package org.hammerscale.holding;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * How deep a fastener must stand in the wood to carry its full load across, in diameters, and how
 * deep to carry any; between the two the load goes with the depth.
 */
final class LateralDepth {
  /** At the least depth the load falls to nothing, and that no rounding may decide. */
  private static final double ROUNDING = 1e-9;

  private static final double END_GRAIN = 2 / 3d;
  private static final Source SOURCE =
      Source.fromMemory("USDA Wood Handbook, FPL-GTR-190", "ch. 8, depth of penetration");

  private final WoodFastener fastener;
  private final double full;
  private final double least;

  private LateralDepth(WoodFastener fastener, double full, double least) {
    this.fastener = fastener;
    this.full = full;
    this.least = least;
  }

  /** Full depth first. */
  static LateralDepth of(WoodFastener fastener, double full, double least) {
    return new LateralDepth(fastener, full, least);
  }

  /** F = K Dᵖ, less where the fastener is short or in end grain. */
  double force(Notes n, double k, double power, Measure<Length> inWood, boolean endGrain) {
    Unit<Length> unit = HoldingLaw.lengthUnit(fastener);
    double d = n.given("D", "diameter", fastener.diameter().in(unit));
    String formula = "K " + HoldingLaw.power("D", power);
    double value =
        n.value(
            "P",
            "load in side grain at full depth",
            formula,
            k * Math.pow(d, power),
            HoldingLaw.forceUnit(fastener));
    double depth = n.given("t", "depth in the wood", inWood.in(unit));
    double q;
    if (isTooShort(inWood)) {
      q = n.number("q", "share at so small a depth", "", 0);
    } else if (inWood.isLessThan(depth(full))) {
      double m = n.number("m", "diameters deep for the full load", "", full);
      q = n.number("q", "share at this depth", "t / (m D)", depth / (m * d));
    } else {
      q = n.number("q", "share at this depth: full", "", 1);
    }
    double e =
        endGrain
            ? n.number("e", "share that end grain holds", "2 / 3", END_GRAIN)
            : n.number("e", "share that side grain holds", "", 1);
    return n.value("F", "load across", "e q P", e * q * value, HoldingLaw.forceUnit(fastener));
  }

  List<Caution> cautions(Measure<Length> inWood) {
    List<Caution> cautions = new ArrayList<>();
    if (isTooShort(inWood)) {
      cautions.add(
          Caution.danger(
              inWood
                  + " in the wood is less than "
                  + depth(least)
                  + ", the least for a load across: the "
                  + HoldingLaw.words(fastener)
                  + " counts for nothing; take a longer one"));
    } else if (inWood.isLessThan(depth(full))) {
      cautions.add(
          Caution.limit(
              "the full load across wants "
                  + depth(full)
                  + " in the wood; "
                  + inWood
                  + " carries its share of it",
              SOURCE));
    }
    return cautions;
  }

  private boolean isTooShort(Measure<Length> inWood) {
    return inWood.isLessThan(depth(least * (1 - ROUNDING)));
  }

  private Measure<Length> depth(double diameters) {
    return fastener.diameter().multiply(diameters);
  }
}
