package org.hammerscale.holding;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * The units in which wood holds. Published constants are for inches and pounds-force; a fastener in
 * inches is answered in pounds-force, any other in newtons, with the constant turned into newtons
 * and millimetres.
 */
final class HoldingLaw {
  private static final double NEWTONS_PER_POUND = 4.4482216152605;
  private static final double MILLIMETRES_PER_INCH = 25.4;

  private HoldingLaw() {}

  private static boolean isInInches(Measure<Length> length) {
    Measure<Length> one = length.withValue(1);
    return one.isEquivalentTo(Measures.inches(1))
        || one.isEquivalentTo(Measures.feet(1))
        || one.isEquivalentTo(Measure.of(1, ShopUnits.THOU));
  }

  /** The unit of length that a fastener's kernels work in. */
  static Unit<Length> lengthUnit(WoodFastener fastener) {
    return isInInches(fastener.diameter()) ? ShopUnits.INCH : ShopUnits.MILLIMETRE;
  }

  /** The unit of force that a fastener is answered in. */
  static Unit<Force> forceUnit(WoodFastener fastener) {
    return isInInches(fastener.diameter()) ? ShopUnits.POUND_FORCE : ShopUnits.NEWTON;
  }

  /**
   * A published constant, noted in the fastener's own units.
   *
   * @param inchPound the constant as printed
   * @param lengths the power of the lengths that it is multiplied with
   */
  static double constant(
      Notes n, String symbol, WoodFastener fastener, double inchPound, double lengths) {
    return isInInches(fastener.diameter())
        ? n.number(symbol, "constant for pounds and inches", "", inchPound)
        : n.number(
            symbol,
            "constant for newtons and millimetres, in inch and pound " + Math.round(inchPound),
            "",
            inchPound * NEWTONS_PER_POUND / Math.pow(MILLIMETRES_PER_INCH, lengths));
  }

  /** A power as a formula writes it. */
  static String power(String symbol, double exponent) {
    if (exponent == 1) {
      return symbol;
    }
    return exponent == 2 ? symbol + "²" : "pow(" + symbol + ", " + exponent + ")";
  }

  /** A fastener in words. */
  static String words(WoodFastener fastener) {
    String kind =
        switch (fastener.kind()) {
          case WOOD_SCREW -> "wood screw";
          case LAG_SCREW -> "lag screw";
          case NAIL -> "nail";
        };
    return kind + " of " + fastener.diameter();
  }
}
