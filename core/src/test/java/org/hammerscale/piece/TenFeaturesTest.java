package org.hammerscale.piece;

import static org.hammerscale.units.Measures.degrees;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.bending.Twist;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

/** A latch bar that has something of every room: ten features, none like another. */
class TenFeaturesTest {
  private static Piece latchBar(DoubleFunction<Measure<Length>> length) {
    Section bar = Section.flat(length.apply(1.5), length.apply(0.25));
    Section tenon = Section.flat(length.apply(0.75), length.apply(0.25));
    Section tip = Section.flat(length.apply(0.5), length.apply(0.125));
    return Piece.of(
        Bar.of(bar, Material.WROUGHT_IRON),
        Barrel.around(length.apply(0.5), bar),
        Plain.of(bar, length.apply(2)),
        DriftedHole.through(bar, Hole.round(length.apply(0.5))),
        Twist.of(1, length.apply(8), bar),
        PunchedHole.through(bar, Hole.round(length.apply(0.375))),
        Bend.of(degrees(90), length.apply(0.25), bar),
        SquareCorner.of(bar),
        Shoulder.between(bar, tenon, length.apply(1)),
        Taper.between(tenon, tip, length.apply(6)),
        Taper.toPoint(tip, length.apply(1)));
  }

  @Test
  void usesTheBarThatAnyoneCanReckonByHand() {
    Layout layout = latchBar(x -> Measures.inches(x)).layout();
    double[] stock = {
      Math.PI * 0.75 * 5
          / 6, // barrel: 300° of the mean circle, where its square end meets the leaf
      2,
      Math.PI / 4, // drifted hole: half the way round
      8, // twist: its own length
      0.375, // punched hole: its own length
      Math.PI / 2 * 0.375, // bend: quarter of the mean circle
      0.25, // square corner: one thickness
    };
    double position = 0;
    for (int i = 0; i < stock.length; i++) {
      position += stock[i];
      assertEquals(position, inches(layout.marks().get(i).position().likely()), 1e-12);
    }
    // The shoulder is half the bar's section, and the hand makes an estimate of it.
    Estimate<Length> shoulder = layout.marks().get(7).position();
    assertTrue(inches(shoulder.low()) > position + 0.5 - 0.25, "the curl may close 1/4 in sooner");
    assertTrue(shoulder.high().isGreaterThan(shoulder.likely()));
    // Taper from 3/4 × 1/4 to 1/2 × 1/8 in and its point, by the formulas of the prismoid.
    double taper = 6 / 6d * (2 * 0.75 * 0.25 + 0.75 * 0.125 + 0.5 * 0.25 + 2 * 0.5 * 0.125) / 0.375;
    double point = 0.5 * 0.125 / 3 / 0.375;
    assertEquals(
        inches(shoulder.likely()) + taper + point, inches(layout.cutLength().likely()), 1e-12);
    Workings.check(layout.working(), layout.cutLength().likely());
  }

  @Test
  void isTheSameInMillimetres() {
    Layout inch = latchBar(x -> Measures.inches(x)).layout();
    Layout metric = latchBar(x -> Measures.millimetres(25.4 * x)).layout();
    assertEquals(10, metric.marks().size());
    for (int i = 0; i < 10; i++) {
      Estimate<Length> a = inch.marks().get(i).position();
      Estimate<Length> b = metric.marks().get(i).position();
      assertEquals(ShopUnits.MILLIMETRE, b.likely().getUnit());
      assertTrue(a.low().isEquivalentTo(b.low()) && a.likely().isEquivalentTo(b.likely()));
      assertTrue(a.high().isEquivalentTo(b.high()));
    }
    assertTrue(inch.mass().isEquivalentTo(metric.mass()));
    assertTrue(inch.finishedLength().isEquivalentTo(metric.finishedLength()));
  }

  @Test
  void volumeInIsVolumeOut() {
    Piece piece = latchBar(x -> Measures.inches(x));
    double out = 0;
    for (Feature feature : piece.features()) {
      out += feature.metalLost().addedTo(feature.metalKept()).likely().in(ShopUnits.CUBIC_INCH);
      Workings.check(feature.working(), feature.working().result());
    }
    Measure<Length> cut = piece.layout().cutLength().likely();
    assertEquals(piece.bar().volume(cut).in(ShopUnits.CUBIC_INCH), out, 1e-12 * out);
  }

  private static double inches(Measure<Length> length) {
    return length.in(ShopUnits.INCH);
  }
}
