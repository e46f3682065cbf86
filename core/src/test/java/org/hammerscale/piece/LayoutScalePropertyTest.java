package org.hammerscale.piece;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.forging.Taper;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every layout with planned heats. Sizes are drawn in inches. */
class LayoutScalePropertyTest {
  private static Piece leaf(DoubleFunction<Measure<Length>> length, double t, double taper) {
    Section strap = Section.flat(length.apply(4 * t), length.apply(t));
    Section tip = Section.flat(length.apply(t), length.apply(t / 2));
    return Piece.of(
        Bar.of(strap, Material.MILD_STEEL),
        Plain.of(strap, length.apply(5)),
        Taper.between(strap, tip, length.apply(taper)),
        Plain.of(tip, length.apply(1)));
  }

  private static Layout planned(Piece piece, double heat, int heats) {
    return piece.layout(HeatPlan.soaking(celsius(heat), minutes(2)).inHeats(heats));
  }

  @Property
  void metricAndInchAgree(
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(4) double t,
      @ForAll @DoubleRange(min = 0.1, max = 40) @Scale(4) double taper,
      @ForAll @DoubleRange(min = 700, max = 1250) @Scale(1) double heat) {
    Layout inch = planned(leaf(x -> inches(x), t, taper), heat, 2);
    Layout metric = planned(leaf(x -> millimetres(25.4 * x), t, taper), heat, 2);
    for (int i = 0; i < inch.marks().size(); i++) {
      assertEquals(
          inch.marks().get(i).position().high().in(ShopUnits.MILLIMETRE),
          metric.marks().get(i).position().high().in(ShopUnits.MILLIMETRE),
          1e-9);
    }
    assertEquals(
        inch.scaleLoss().low().in(ShopUnits.KILOGRAM),
        metric.scaleLoss().low().in(ShopUnits.KILOGRAM),
        1e-12);
    assertEquals(ShopUnits.MILLIMETRE, metric.scaleAllowance().low().getUnit());
  }

  @Property
  void moreAndHotterHeatsNeedMoreBar(
      @ForAll @DoubleRange(min = 0.1, max = 1) @Scale(4) double t,
      @ForAll @DoubleRange(min = 0.1, max = 40) @Scale(4) double taper,
      @ForAll @DoubleRange(min = 700, max = 1200) @Scale(1) double heat,
      @ForAll @IntRange(min = 1, max = 8) int heats) {
    Piece piece = leaf(x -> inches(x), t, taper);
    Layout layout = planned(piece, heat, heats);
    assertTrue(
        planned(piece, heat, heats + 1)
            .scaleAllowance()
            .likely()
            .isGreaterThan(layout.scaleAllowance().likely()));
    assertTrue(
        planned(piece, heat + 10, heats)
            .cutLength()
            .likely()
            .isGreaterThan(layout.cutLength().likely()));
    assertEquals(
        layout.cutLength().likely().in(ShopUnits.INCH),
        piece
            .layout()
            .cutLength()
            .likely()
            .add(layout.scaleAllowance().likely())
            .in(ShopUnits.INCH),
        1e-12);
    double before = 0;
    for (Mark mark : layout.marks()) {
      assertTrue(mark.position().likely().in(ShopUnits.INCH) >= before);
      before = mark.position().likely().in(ShopUnits.INCH);
    }
  }
}
