package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;

/** What must hold for whatever is drawn or spread. */
class DrawingPropertyTest {
  @Property
  void aTaperOfTheStockItUsesIsTheSameTaper(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double side,
      @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(6) double share,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length) {
    Section bar = Section.square(inches(side));
    for (Section tip :
        new Section[] {
          Section.square(inches(side * share)),
          Section.round(inches(side * share)),
          bar.point(),
          bar.edge()
        }) {
      Taper taper = Taper.between(bar, tip, inches(length));
      Taper back = Taper.using(taper.stock(bar).likely(), bar, tip);
      assertEquals(length, back.reach().in(ShopUnits.INCH), 1e-12 * length, taper::toString);
    }
  }

  @Property
  void aBluntedTaperUsesJustTheStock(
      @ForAll @DoubleRange(min = 0.1, max = 3) @Scale(6) double side,
      @ForAll @DoubleRange(min = 0.334, max = 1) @Scale(6) double share,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double length) {
    Section bar = Section.round(millimetres(side));
    Taper point = Taper.toPoint(bar, millimetres(length));
    double stock = Math.max(point.stock(bar).likely().in(ShopUnits.MILLIMETRE), share * length);
    Taper blunt = point.bluntedFor(millimetres(stock));
    assertEquals(stock, blunt.stock(bar).likely().in(ShopUnits.MILLIMETRE), 1e-10 * length);
  }

  @Property
  void drawingOutAndBackIsTheSameLength(
      @ForAll @DoubleRange(min = 0.5, max = 3) @Scale(6) double side,
      @ForAll @DoubleRange(min = 0.1, max = 0.5) @Scale(6) double after,
      @ForAll @DoubleRange(min = 0, max = 100) @Scale(6) double stock) {
    DrawOut draw =
        DrawOut.between(Section.square(inches(side)), Section.hexagon(millimetres(25.4 * after)));
    double back = draw.stockFor(draw.lengthFrom(inches(stock))).in(ShopUnits.INCH);
    assertEquals(stock, back, 1e-12 * stock);
    double metric = draw.lengthFrom(millimetres(stock * 25.4)).in(ShopUnits.INCH);
    assertEquals(draw.lengthFrom(inches(stock)).in(ShopUnits.INCH), metric, 1e-12 * metric);
  }

  @Property
  void spreadingKeepsTheMetal(
      @ForAll @DoubleRange(min = 5, max = 50) @Scale(6) double width,
      @ForAll @DoubleRange(min = 0.1, max = 0.99) @Scale(6) double thinner,
      @ForAll @DoubleRange(min = 1, max = 200) @Scale(6) double bite) {
    Section bar = Section.square(millimetres(width));
    Spread spread =
        Spread.thinning(
            bar, millimetres(width * thinner), SpreadLaw.tomlinsonStringer(millimetres(bite)));
    double after = spread.section().area().in(ShopUnits.SQUARE_MILLIMETRE) * spread.timesLonger();
    assertEquals(width * width, after, 1e-12 * after);
    Spread inch =
        Spread.thinning(
            Section.square(inches(width / 25.4)),
            inches(width * thinner / 25.4),
            SpreadLaw.tomlinsonStringer(inches(bite / 25.4)));
    assertTrue(inch.width().likely().isWithin(spread.width().likely(), millimetres(1e-9)));
  }

  @Property
  void aWiderBiteSpreadsMore(
      @ForAll @DoubleRange(min = 1, max = 200) @Scale(6) double bite,
      @ForAll @DoubleRange(min = 1, max = 5) @Scale(6) double more) {
    Section bar = Section.square(millimetres(25));
    double less = SpreadLaw.tomlinsonStringer(millimetres(bite)).coefficient(bar);
    assertTrue(SpreadLaw.tomlinsonStringer(millimetres(bite * more)).coefficient(bar) >= less);
    assertTrue(less >= 0.14 && less <= 0.644 + 1e-12);
  }

  @Property
  void aTrialPieceIsForetoldByItsOwnCoefficient(
      @ForAll @DoubleRange(min = 0.3, max = 0.95) @Scale(6) double thinner,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(6) double s) {
    Section bar = Section.square(millimetres(20));
    double width = 20 * Math.pow(1 / thinner, s);
    Section after = Section.flat(millimetres(width), millimetres(20 * thinner));
    SpreadLaw law = SpreadLaw.measured(bar, after);
    assertEquals(s, law.coefficient(bar), 1e-9);
    Estimate<javax.measure.quantity.Length> again =
        Spread.thinning(bar, millimetres(20 * thinner), law).width();
    assertTrue(again.likely().isWithin(millimetres(width), millimetres(1e-9)));
  }
}
