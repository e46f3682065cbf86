package org.hammerscale.validation;

import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.apache.commons.math3.stat.StatUtils;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.checking.ScoredFile;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

/** The allowances for the hand against the printed pieces, and how they are fitted to them. */
class PrintedPiecesValidationTest {
  /** Three printed digits of each allowance. */
  private static final double LAST_DIGIT = 5e-4;

  @Test
  void nineOfTenLieInsideAndNoIntervalIsWiderThanItsFit() {
    List<PrintedPieces.Asked> pieces = PrintedPieces.asked();
    assertTrue(PrintedPieces.inside(pieces) >= 0.9 * pieces.size());
    assertTrue(PrintedPieces.medianError(pieces) <= 0.05);
    assertTrue(PrintedPieces.meanWidth(pieces) <= 0.35);
  }

  @Test
  void eachAllowanceIsThePredictionIntervalOfItsPieces() {
    for (String kind : PrintedPieces.KINDS.keySet()) {
      PrintedPieces.Fit fit = PrintedPieces.fit(kind);
      HandAllowance hand = PrintedPieces.KINDS.get(kind);
      Estimate<Length> inch =
          hand.on(Plain.of(Section.round(inches(1)), inches(1))).stock(Section.round(inches(1)));
      assertEquals(fit.low(), inch.low().in(ShopUnits.INCH), LAST_DIGIT, kind);
      assertEquals(fit.likely(), inch.likely().in(ShopUnits.INCH), LAST_DIGIT, kind);
      assertEquals(fit.high(), inch.high().in(ShopUnits.INCH), LAST_DIGIT, kind);
    }
  }

  /** A piece that was left out of its own fit lies inside as often as can be hoped of so few. */
  @Test
  void piecesLeftOutOfTheFitLieInside() {
    int inside = 0;
    int pieces = 0;
    for (String kind : PrintedPieces.KINDS.keySet()) {
      inside += PrintedPieces.fit(kind).insideLeftOut();
      pieces += PrintedPieces.fit(kind).pieces();
    }
    assertEquals(26, pieces);
    assertTrue(inside >= Math.floor(0.9 * pieces), inside + " of " + pieces);
  }

  /**
   * What the printed rings and links took over their mean line, in thicknesses and as a share:
   * Student's t for 3 degrees of freedom, one side 95 %, is 2.353 in the usual tables.
   */
  @Test
  void theLowEndOfAWeldIsThatOfThePrintedOnes() {
    double[] thicknesses = new double[4];
    double[] shares = new double[4];
    int n = 0;
    for (ScoredFile.Row row : PrintedPieces.rows()) {
      String name = row.text("piece");
      if (List.of("chain link", "link of 3/8 round", "chain ring", "ring of 10 in inside")
          .contains(name)) {
        PrintedShapes shape = PrintedShapes.of(name);
        double line = shape.bar(f -> HandAllowance.NONE).likely().in(ShopUnits.INCH);
        double printed = Double.parseDouble(row.text("printed"));
        thicknesses[n] = (printed - line) / shape.section().thickness().in(ShopUnits.INCH);
        shares[n++] = Math.log(printed / line);
      }
    }
    assertEquals(4, n);
    double reach = 2.353 * Math.sqrt(1.25);
    double low = StatUtils.mean(thicknesses) - reach * deviation(thicknesses);
    double high = StatUtils.mean(thicknesses) + reach * deviation(thicknesses);
    Section inch = Section.square(inches(1));
    Estimate<Length> weld = WeldAllowance.ONE_THICKNESS.on(inch, inches(10));
    assertEquals(low, weld.low().in(ShopUnits.INCH), 0.05);
    assertTrue(high < weld.high().in(ShopUnits.INCH));
    double share = Math.exp(StatUtils.mean(shares) - reach * deviation(shares)) - 1;
    assertEquals(share, WeldAllowance.LINK.on(inch, inches(1)).low().in(ShopUnits.INCH), 0.005);
  }

  private static double deviation(double[] values) {
    return Math.sqrt(StatUtils.variance(values));
  }

  /** The mean line of this link is 6.034 in; it was cut at 6 in and welded. */
  @Test
  void noWeldExcludesTheLinkThatWasCutShorterThanItsMeanLine() {
    Section rod = Section.round(inches("3/8"));
    Link link = Link.inside(inches(2), inches("3/4"), rod);
    assertEquals(6.034, link.developedLength().in(ShopUnits.INCH), 5e-4);
    for (WeldAllowance rule :
        List.of(
            WeldAllowance.ONE_THICKNESS,
            WeldAllowance.THREE_EIGHTHS,
            WeldAllowance.CHAIN_RING,
            WeldAllowance.CUSTOMARY,
            WeldAllowance.LINK)) {
      assertTrue(link.welded(rule).cutLength().covers(inches(6)), rule::toString);
    }
  }
}
