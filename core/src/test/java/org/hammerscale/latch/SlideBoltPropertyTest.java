package org.hammerscale.latch;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every slide bolt. */
class SlideBoltPropertyTest {
  private static SlideBoltBuilder bolt(
      DoubleFunction<Measure<Length>> of, double d, double c, double s, double o) {
    Bar rod = Bar.of(Section.round(of.apply(d)), Material.MILD_STEEL);
    Bar wire = Bar.of(Section.round(of.apply(d / 3)), Material.MILD_STEEL);
    return SlideBolt.thrown(of.apply(d), rod)
        .stapledApart(of.apply(s))
        .fromEdge(of.apply(o))
        .clearing(of.apply(c))
        .inStaplesOf(wire, of.apply(4 * d));
  }

  /** The bolt in cardboard: a strip turned about the origin between the edges of two openings. */
  @Property
  void tiltAndShiftAreThoseOfAStripBetweenTwoOpenings(
      @ForAll @DoubleRange(min = 6, max = 25) @Scale(4) double d,
      @ForAll @DoubleRange(min = 0.01, max = 3) @Scale(4) double c,
      @ForAll @DoubleRange(min = 2.5, max = 12) @Scale(4) double times,
      @ForAll @DoubleRange(min = 0, max = 80) @Scale(4) double o) {
    double s = times * d;
    SlideBolt bolt = bolt(x -> millimetres(x), d, c, s, o).bolt();
    double low = 0;
    double high = Math.PI / 4;
    for (int i = 0; i < 80; i++) {
      double angle = (low + high) / 2;
      if (fits(angle, d, d + c, s)) {
        low = angle;
      } else {
        high = angle;
      }
    }
    double clear = bolt.tilt().in(ShopUnits.RADIAN);
    assertEquals(low, clear, 1e-9);
    // Its middle passes that of the openings, halfway along; the tip lies s/2 + overhang beyond.
    double out = s / 2 + o + d;
    assertEquals(Math.tan(low) * out, bolt.tipShift().in(ShopUnits.MILLIMETRE), 1e-6);
    assertTrue(bolt.entersAfterDrop(millimetres(0)));
  }

  /** Whether a strip d wide, turned about the middle, stays within an opening over the length. */
  private static boolean fits(double angle, double d, double opening, double s) {
    // Upper edge of the strip at either outer face of the staples.
    double atFace = Math.tan(angle) * s / 2 + d / 2 / Math.cos(angle);
    return atFace <= opening / 2;
  }

  @Property
  void inchesAndMillimetresAgree(
      @ForAll @DoubleRange(min = 0.25, max = 1) @Scale(4) double d,
      @ForAll @DoubleRange(min = 0.001, max = 0.1) @Scale(4) double c,
      @ForAll @DoubleRange(min = 3, max = 12) @Scale(4) double times) {
    SlideBolt inch = bolt(x -> inches(x), d, c, times * d, d).bolt();
    SlideBolt metric = bolt(x -> millimetres(25.4 * x), d, c, times * d, d).bolt();
    assertEquals(ShopUnits.INCH, inch.tipShift().getUnit());
    assertTrue(inch.tilt().isWithin(metric.tilt(), degrees(1e-9)));
    assertTrue(inch.tipShift().isWithin(metric.tipShift(), millimetres(1e-8)));
    assertTrue(inch.engagement().isEquivalentTo(metric.engagement()));
    for (int i = 0; i < inch.pieces().size(); i++) {
      assertTrue(
          inch.pieces()
              .get(i)
              .layout()
              .cutLength()
              .likely()
              .isWithin(metric.pieces().get(i).layout().cutLength().likely(), millimetres(1e-7)));
    }
  }

  @Property
  void aRuleNeverMakesItTighter(
      @ForAll @DoubleRange(min = 6, max = 25) @Scale(3) double d,
      @ForAll @DoubleRange(min = 0, max = 2) @Scale(3) double c,
      @ForAll @DoubleRange(min = 0, max = 6) @Scale(3) double drop) {
    SlideBolt bolt =
        bolt(x -> millimetres(x), d, c, 4 * d, 5)
            .allowing(millimetres(drop), millimetres(0))
            .on(Graduation.MILLIMETRE)
            .bolt();
    assertTrue(bolt.clearance().in(ShopUnits.MILLIMETRE) >= c - 1e-9);
    assertTrue(bolt.clearance().in(ShopUnits.MILLIMETRE) < c + 1 + 1e-9);
    assertTrue(bolt.entersAfterDrop(millimetres(drop)));
    assertTrue(bolt.entersAfterDrop(millimetres(-drop)));
  }
}
