package org.hammerscale.validation;

import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.WeldAllowance;
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
