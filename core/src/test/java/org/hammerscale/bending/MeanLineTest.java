package org.hammerscale.bending;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class MeanLineTest {
  private static final Measure<Length> MIDDLE = millimetres(0);
  private static final Section FLAT = Section.flat(millimetres(20), millimetres(5));

  private static final List<Bent> WORK =
      List.of(
          Bend.of(degrees(75), millimetres(12), FLAT),
          Hook.open(millimetres(40), FLAT).withTip(millimetres(15)),
          Hook.cabin(millimetres(4), FLAT).withTip(millimetres(30)),
          Ring.inside(millimetres(50), FLAT),
          Eye.turned(inches(1), Section.round(inches("3/8"))),
          Link.inside(millimetres(60), millimetres(25), FLAT),
          Oval.inside(millimetres(80), millimetres(50), FLAT),
          UBend.inside(millimetres(50), FLAT)
              .withCorners(millimetres(10))
              .withLegs(millimetres(60), millimetres(45)),
          UBend.inside(millimetres(50), FLAT).withSquareCorners(),
          Joggle.by(millimetres(20), degrees(40), millimetres(10), FLAT),
          Scroll.archimedean(millimetres(8), millimetres(60), 2.25, FLAT),
          Scroll.archimedean(millimetres(0), millimetres(60), 3, FLAT),
          Scroll.logarithmic(millimetres(8), millimetres(90), 2, FLAT),
          Scroll.involute(millimetres(5), 2, FLAT),
          Course.from(millimetres(0), millimetres(0), FLAT)
              .to(millimetres(20), millimetres(10))
              .to(millimetres(20), millimetres(10))
              .to(millimetres(60), millimetres(15)),
          Coil.around(millimetres(40), 0.75, millimetres(0), FLAT),
          SquareCorner.of(FLAT),
          Twist.of(1, millimetres(150), FLAT));

  private static double walked(double[] points) {
    double sum = 0;
    for (int i = 2; i < points.length; i += 2) {
      sum += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
    }
    return sum;
  }

  /** The line that is drawn is as long as the formula says: two ways to one length. */
  @Test
  void isAsLongAsTheBarThatIsBent() {
    for (Bent work : WORK) {
      double asked = work.stock(work.start()).likely().in(ShopUnits.MILLIMETRE);
      MeanLine line = work.meanLine();
      double drawn = walked(line.points(MIDDLE, ShopUnits.MILLIMETRE));
      assertEquals(asked, drawn, asked * 2e-4, work + ": chords a little short of the arcs");
      assertEquals(asked, line.length().in(ShopUnits.MILLIMETRE), asked * 1e-9, work.toString());
    }
  }

  @Test
  void facesLieHalfAThicknessOff() {
    for (Bent work : WORK) {
      MeanLine line = work.meanLine();
      double[] middle = line.points(MIDDLE, ShopUnits.MILLIMETRE);
      double half = work.start().thickness().in(ShopUnits.MILLIMETRE) / 2;
      double[] face = line.points(work.start().thickness().divide(2), ShopUnits.MILLIMETRE);
      double[] back = line.points(work.start().thickness().divide(-2), ShopUnits.MILLIMETRE);
      for (int i = 0; i < middle.length; i += 2) {
        double across = Math.hypot(face[i] - middle[i], face[i + 1] - middle[i + 1]);
        assertTrue(across >= half - 1e-9, work.toString());
        assertEquals(2 * middle[i], face[i] + back[i], 1e-9);
      }
    }
  }

  @Test
  void circlesAreRound() {
    Ring ring = Ring.inside(millimetres(50), FLAT);
    MeanLine line = ring.meanLine();
    assertTrue(line.isClosed());
    assertFalse(Coil.around(millimetres(40), 0.5, millimetres(0), FLAT).meanLine().isClosed());
    assertTrue(Coil.around(millimetres(40), 5, millimetres(9), FLAT).meanLine().isClosed());
    double[] inside = line.points(millimetres(2.5), ShopUnits.MILLIMETRE);
    double[] outside = line.points(millimetres(-2.5), ShopUnits.MILLIMETRE);
    for (int i = 0; i < inside.length; i += 2) {
      assertEquals(25, Math.hypot(inside[i], inside[i + 1] - 27.5), 1e-9);
      assertEquals(30, Math.hypot(outside[i], outside[i + 1] - 27.5), 1e-9);
    }
    assertEquals("mean line 172.79 mm long, closed", line.toString());
  }

  @Test
  void spiralsEndAtTheirRadii() {
    for (Scroll scroll :
        List.of(
            Scroll.archimedean(millimetres(8), millimetres(60), 2.25, FLAT),
            Scroll.logarithmic(millimetres(8), millimetres(60), 2.25, FLAT),
            Scroll.involute(millimetres(5), 2, FLAT))) {
      double[] points = scroll.meanLine().points(MIDDLE, ShopUnits.MILLIMETRE);
      int n = points.length;
      assertEquals(scroll.innerRadius().getValue(), Math.hypot(points[0], points[1]), 1e-9);
      assertEquals(scroll.outerRadius().getValue(), Math.hypot(points[n - 2], points[n - 1]), 1e-9);
    }
  }

  @Test
  void isLedOnByACallersOwnWork() {
    MeanLine crook =
        MeanLine.straight(inches(6)).bentLeft(inches(1), degrees(180)).straightOn(inches(2));
    double[] points = crook.points(MIDDLE, ShopUnits.INCH);
    int n = points.length;
    assertEquals(4, points[n - 2], 1e-12);
    assertEquals(2, points[n - 1], 1e-12);
    assertArrayEquals(new double[] {6, 0, 6, 2}, crook.joints(MIDDLE, ShopUnits.INCH), 1e-12);
    assertEquals("mean line 11.1416 in long, from end to end 4.4721 in", crook.toString());
    MeanLine corner =
        MeanLine.straight(inches(2)).bentRight(inches(0), degrees(90)).straightOn(inches(1));
    double[] outer = corner.points(inches("1/8"), ShopUnits.INCH);
    assertArrayEquals(new double[] {0, 0.125, 2.125, 0.125, 2.125, -1}, outer, 1e-12);
    MeanLine back =
        MeanLine.straight(inches(2)).bentLeft(inches(0), degrees(180)).straightOn(inches(1));
    assertEquals(1, back.points(MIDDLE, ShopUnits.INCH)[4], 1e-12, "folded on itself");
    assertEquals(inches(2), MeanLine.straight(inches(2)).straightOn(inches(0)).length());
    assertEquals(
        "radius must not be negative, was -1 in; give zero if there is none",
        assertThrows(IllegalArgumentException.class, () -> crook.bentLeft(inches(-1), degrees(90)))
            .getMessage());
  }
}
