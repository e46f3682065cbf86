package org.hammerscale.bending;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** What goes round a bar: collars, baskets, chains, and the proportions of hooks. */
class RoundABarTest {
  @Test
  void aCollarsLineIsAsLongAsItsMiddle() {
    List<Collar> collars =
        List.of(
            Collar.around(Section.flat(inches(1), inches("1/2")), inches("1/8")),
            Collar.around(Section.round(millimetres(16)), millimetres(3)),
            Collar.aroundBars(3, Section.flat(millimetres(12), millimetres(5)), millimetres(3)),
            Collar.aroundBars(4, Section.round(millimetres(10)), millimetres(2)).lapped());
    for (Collar collar : collars) {
      MeanLine line = collar.line();
      assertEquals(collar.meanLine().getValue(), line.length().getValue(), 1e-9);
      double[] points = line.points(millimetres(0), ShopUnits.MILLIMETRE);
      int n = points.length;
      assertEquals(0, Math.hypot(points[n - 2] - points[0], points[n - 1] - points[1]), 1e-9);
    }
    assertEquals(
        "bundle must be round, square or flat to have its line laid out, was 1 in hexagon; give"
            + " its bars to aroundBars(…), or try the collar on the bundle",
        refusal(() -> Collar.around(Section.hexagon(inches(1)), inches("1/8")).line()));
  }

  @Test
  void collarTakesTheBundleOrItsBars() {
    Collar outline = Collar.around(Section.flat(inches(1), inches("1/2")), inches("1/8"));
    Collar bars = Collar.aroundBars(2, Section.square(inches("1/2")), inches("1/8"));
    assertEquals(outline.cutLength(), bars.cutLength());
    assertEquals(inches(3.25), bars.cutLength().likely());
    // Two rounds of 1/2 in: a string round them is half a turn at each end and two straights of
    // 1/2.
    Collar rounds = Collar.aroundBars(2, Section.round(inches("1/2")), inches("1/8"));
    assertEquals(Math.PI / 2 + 1 + 0.25, rounds.cutLength().likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(inches(3.375), bars.lapped().cutLength().high(), "3 t by the other page");
    assertEquals(bars.lapped().cutLength(), bars.scarfed().cutLength());
  }

  @Test
  void closingErrorIsRuleLessMeanLine() {
    Collar collar =
        Collar.aroundBars(3, Section.flat(millimetres(12), millimetres(5)), millimetres(3));
    double t = 3;
    assertEquals((2 - Math.PI) * t, collar.closingError().getValue(), 1e-12);
    assertEquals((2.5 - Math.PI) * t, collar.scarfed().closingError().getValue(), 1e-12);
    assertTrue(collar.fullCorners().isGreaterThan(collar.meanLine()));
    Workings.check(collar.working(), collar.cutLength().likely());
    Workings.check(collar.closingWorking(), collar.closingError());
    Collar lapped = collar.lapped();
    Workings.check(lapped.working(), lapped.cutLength().likely());
    Workings.check(lapped.closingWorking(), lapped.closingError());
    assertTrue(collar.cautions().get(1).isDanger());
    assertEquals("butted collar, 3 mm thick, around 3 × 12 mm × 5 mm flat", collar.toString());
    assertTrue(
        refusal(() -> Collar.aroundBars(2, Section.hexagon(inches(1)), inches(1)))
            .contains("around(…)"));
  }

  @Test
  void basketBulgesFromWeldToWeld() {
    Basket basket = Basket.ofFour(Section.round(millimetres(8)), millimetres(120), 1);
    assertEquals(Section.round(millimetres(8)), basket.rod());
    assertEquals(millimetres(120), basket.height());
    assertEquals(1, basket.turns());
    double weld = 8 / Math.sqrt(2);
    assertEquals(weld, basket.radiusAt(millimetres(0), millimetres(30)).getValue(), 1e-12);
    assertEquals(30, basket.radiusAt(millimetres(60), millimetres(30)).getValue(), 1e-12);
    assertEquals(
        weld + (30 - weld) / 2,
        basket.radiusAt(millimetres(20), millimetres(30)).getValue(),
        1e-12);
    assertTrue(
        refusal(() -> basket.radiusAt(millimetres(121), millimetres(30)))
            .startsWith("above must be at most the height of 120 mm, was 121 mm"));
  }

  @Test
  void basketRodFollowsThePolyline() {
    double[][] cases = {{120, 1, 6, 30}, {90, 0, 5, 20}, {200, 2.5, 8, 60}};
    for (double[] c : cases) {
      Basket basket =
          Basket.ofFour(Section.round(millimetres(8)), millimetres(c[0]), c[1])
              .withWeldRadius(millimetres(c[2]));
      double length = 0;
      int steps = 200_000;
      double[] before = point(c, 0);
      for (int i = 1; i <= steps; i++) {
        double[] next = point(c, c[0] * i / steps);
        length +=
            Math.sqrt(
                Math.pow(next[0] - before[0], 2)
                    + Math.pow(next[1] - before[1], 2)
                    + Math.pow(next[2] - before[2], 2));
        before = next;
      }
      assertEquals(length, basket.rodLength(millimetres(c[3])).getValue(), 1e-6 * length);
      assertEquals(c[3], basket.bulge(basket.rodLength(millimetres(c[3]))).getValue(), 1e-8 * c[3]);
      Workings.check(basket.working(millimetres(c[3])), basket.rodLength(millimetres(c[3])));
    }
  }

  private static double[] point(double[] c, double z) {
    double r = c[2] + (c[3] - c[2]) * Math.sin(Math.PI * z / c[0]);
    double phi = 2 * Math.PI * c[1] * z / c[0];
    return new double[] {r * Math.cos(phi), r * Math.sin(phi), z};
  }

  @Test
  void fourRodsLieTogetherAtTheWelds() {
    Basket basket = Basket.ofFour(Section.square(millimetres(8)), millimetres(100), 1);
    // Closed as at the welds: neighbours touch, the rod is a helix.
    assertEquals(0, basket.opening(millimetres(8 / Math.sqrt(2))).getValue(), 1e-12);
    assertEquals(
        Basket.inBundle(Section.square(millimetres(8)), millimetres(100), 1).getValue(),
        basket.rodLength(millimetres(8 / Math.sqrt(2))).getValue(),
        1e-6);
    assertTrue(refusal(() -> basket.rodLength(millimetres(5))).contains("at the welds"));
    assertTrue(refusal(() -> basket.bulge(millimetres(50))).startsWith("rodLength must lie"));
    assertTrue(
        refusal(() -> Basket.ofFour(Section.flat(inches(1), inches("1/4")), inches(4), 1))
            .contains("round or square"));
    assertTrue(
        refusal(() -> Basket.ofFour(Section.round(inches(1)), inches(4), -1)).contains("turns"));
    assertTrue(basket.cautions().get(1).text().contains("proof-test"));
    assertEquals("basket of four rods of 8 mm square, 100 mm high, 1 turn", basket.toString());
  }

  @Test
  void chainIsAsLongAsItsInsides() {
    assertEquals(
        ChainPattern.SHORT_LINK.outsideLength(inches("1/2")),
        ChainPattern.SHORT_LINK.lengthOf(1, inches("1/2")));
    Link link = ChainPattern.SHORT_LINK.link(millimetres(10));
    assertEquals(millimetres(30), link.insideLength());
    assertEquals(millimetres(15), link.insideWidth());
    assertTrue(
        link.insideWidth()
            .isGreaterThan(ChainPattern.SHORT_LINK.leastInsideWidth(millimetres(10))));
    assertEquals("stud link chain", ChainPattern.STUD_LINK.toString());
    assertTrue(ChainPattern.STUD_LINK.source().toString().contains("anchor"));
    assertTrue(ChainPattern.SHORT_LINK.source().toString().contains("short link"));
    assertTrue(
        refusal(() -> ChainPattern.SHORT_LINK.lengthOf(0, inches(1))).startsWith("links must"));
  }

  @Test
  void hookProportionsFollowCapacityAndStock() {
    HookProportions hook = HookProportions.forCapacity(pounds(1500));
    assertEquals(pounds(2000), hook.capacity(), "the next of the table");
    assertEquals(inches(1.0625), hook.stock());
    for (HookProportions.Size size : HookProportions.Size.values()) {
      Workings.check(hook.working(size), hook.size(size));
    }
    assertEquals(
        hook.size(HookProportions.Size.B).getValue() * 0.85 - 0.16,
        hook.size(HookProportions.Size.N).getValue(),
        1e-12);
    assertEquals(
        hook.size(HookProportions.Size.D).getValue() * 0.75,
        hook.size(HookProportions.Size.G).getValue(),
        1e-12);
    assertTrue(hook.cautions().get(0).isDanger());
    assertEquals("hook for 2000 lb after Towne, of 1 1/16 in bar", hook.toString());
    assertTrue(refusal(() -> HookProportions.forCapacity(pounds(20_001))).contains("table ends"));
    assertTrue(refusal(() -> HookProportions.forCapacity(pounds(0))).contains("more than zero"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
