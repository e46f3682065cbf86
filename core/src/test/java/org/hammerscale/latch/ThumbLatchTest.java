package org.hammerscale.latch;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ThumbLatchTest {
  private static final Bar BAR =
      Bar.of(Section.flat(millimetres(20), millimetres(6)), Material.MILD_STEEL);

  private static ThumbLatchBuilder asked() {
    return ThumbLatch.through(millimetres(44), BAR, millimetres(200))
        .thumbAt(millimetres(30), millimetres(8))
        .lifting(millimetres(60), millimetres(180))
        .into(LatchCatch.standing(millimetres(15)).under(millimetres(4)), millimetres(2))
        .allowing(millimetres(4), millimetres(6));
  }

  @Test
  void partsFitByHandArithmetic() {
    ThumbLatch latch = asked().on(MILLIMETRE).latch();
    assertEquals(millimetres(17), latch.liftNeeded()); // 15 − 4 + 4 + 2
    assertEquals(millimetres(20), latch.overlap());
    // 6 + 44 × 8/√(30² − 8²) + 1 = 19.17, up
    assertEquals(millimetres(20), latch.slotHeight());
    assertEquals(List.of(millimetres(60), millimetres(120), millimetres(180)), latch.places());
    assertEquals(
        List.of(millimetres(-60), millimetres(-120), millimetres(-180)),
        asked().closing(Closing.LEFT).latch().places());
    assertEquals(Closing.RIGHT, latch.closing());
    assertEquals(millimetres(220), latch.bar().layout().cutLength().likely());
    assertEquals(millimetres(86), latch.thumbPiece().layout().cutLength().likely()); // 30 + 50 + 6
    assertEquals(millimetres(7), latch.guide().insideHeight());
    assertEquals(5, latch.pieces().size());
    assertFalse(latch.hasBackPlate());
    ThumbLatch norfolk = asked().withBackPlate().latch();
    assertEquals(6, norfolk.pieces().size());
    assertTrue(norfolk.hasBackPlate() && norfolk.toString().startsWith("Norfolk"));
    assertEquals(
        List.of(millimetres(44), millimetres(0), millimetres(30), millimetres(8), millimetres(200)),
        List.of(
            latch.door(),
            latch.pivotOut(),
            latch.thumbFromPivot(),
            latch.thumbTravel(),
            latch.length()));
    assertEquals(
        List.of(millimetres(10), millimetres(1), millimetres(45), millimetres(110)),
        List.of(latch.pivotAboveEdge(), latch.room(), latch.fingers(), latch.grip()));
    assertEquals(
        latch.handle().layout().cutLength().likely().in(ShopUnits.MILLIMETRE),
        latch.handleLine().length().in(ShopUnits.MILLIMETRE),
        1e-9);
    // Grip 110, legs 45 + 6 over all, feet 40, radius 3: straights and four bends on the mean line.
    double used = latch.handle().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(2 * 40 + 2 * (45 - 12) + 110 - 6 + 4 * Math.PI / 2 * 6, used, 1e-9);
    // 3 × 6 + 1 and a third of 60
    assertEquals(
        39, latch.catchPiece().layout().cutLength().likely().in(ShopUnits.MILLIMETRE), 1e-9);
    // 220 × 120 mm² × 7850 kg/m³, its middle 90 from the pivot; 90/60 × 50/30
    double weight = 0.22 * 0.00012 * 7850 * 9.80665;
    assertEquals(weight * 1.5 * 50 / 30, latch.thumbForce().in(ShopUnits.NEWTON), 1e-9);
    assertEquals(millimetres(15), latch.nose().nose());
    assertEquals(millimetres(4), latch.nose().clearance());
  }

  /** Lever and bar as polygons: the bar's edge is put on the lever's far end by halving. */
  @Test
  void barRestsOnTheLeverAndPassesGuideAndNoseOverTheWholeMotion() {
    Random random = new Random(12);
    for (int i = 0; i < 3000; i++) {
      double a = 25 + 20 * random.nextDouble();
      double s = random.nextInt(10) == 0 ? 0.001 : a * 0.4 * random.nextDouble() + 0.01;
      double door = 30 + 30 * random.nextDouble();
      double x = 60 + 60 * random.nextDouble();
      double at = x * (1 + random.nextDouble());
      double u = random.nextInt(5) == 0 ? 0 : 20 * random.nextDouble();
      ThumbLatchBuilder of =
          ThumbLatch.through(millimetres(door), BAR, millimetres(at + 20))
              .thumbAt(millimetres(a), millimetres(s))
              .lifting(millimetres(x), millimetres(at))
              .pivotAboveEdge(millimetres(u))
              .into(LatchCatch.standing(millimetres(1e-4)), millimetres(0));
      ThumbLatch latch = of.latch();
      for (int step = 0; step <= 4; step++) {
        double phi = Math.asin(s * step / 4 / a);
        double y = (door + 6) * Math.tan(phi);
        double turned = turnOnto(x, y, u);
        // Lower edge at the catch and at both sides of the guide; upper edge too.
        double guideAt = (x + at) / 2;
        double rest = -u;
        double lower = edge(guideAt + 10, turned, -u) - rest;
        double upper = edge(guideAt + 10, turned, 20 - u) - rest;
        double inside = latch.guide().insideWidth().in(ShopUnits.MILLIMETRE);
        assertTrue(upper + 1 <= inside - 1 + 1e-6, "guide " + i);
        assertTrue(lower >= -1e-6);
        if (step == 4) {
          double lift = edge(at, turned, -u) - rest;
          assertEquals(lift, latch.lift().in(ShopUnits.MILLIMETRE), 1e-6);
          assertEquals(Math.toDegrees(turned), latch.barAngle().in(ShopUnits.DEGREE), 1e-7);
        }
        double slot = latch.slotHeight().in(ShopUnits.MILLIMETRE);
        assertTrue(6 + door * Math.tan(phi) + 1 <= slot + 1e-9);
      }
    }
  }

  /** Height over the bar's pivot, straight above x, of the line that lay at a level at rest. */
  private static double edge(double x, double turned, double level) {
    double ax = -level * Math.sin(turned);
    double ay = level * Math.cos(turned);
    double bx = ax + 1000 * Math.cos(turned);
    double by = ay + 1000 * Math.sin(turned);
    return ay + (by - ay) * (x - ax) / (bx - ax);
  }

  private static double turnOnto(double x, double y, double u) {
    double low = 0;
    double high = 1.2;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (edge(x, middle, -u) < y - u) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  @Test
  void workingsAreTheAnswers() {
    ThumbLatch latch = asked().latch();
    Workings.check(latch.working(), latch.lift());
    Workings.check(latch.slotWorking(), latch.slotHeight());
    Workings.check(
        latch.thumbForceWorking(newtons(4), millimetres(90)),
        latch.thumbForce(newtons(4), millimetres(90)));
    assertEquals(2, latch.cautions().size());
    ThumbLatch tight = asked().withHandle(BAR, millimetres(100), millimetres(30)).latch();
    assertTrue(tight.cautions().get(0).text().contains("at least 45 mm"));
  }

  @Test
  void inchesAndMillimetresAgree() {
    Bar inch = Bar.of(Section.flat(inches(20 / 25.4), inches(6 / 25.4)), Material.MILD_STEEL);
    ThumbLatch latch =
        ThumbLatch.through(inches(44 / 25.4), inch, inches(200 / 25.4))
            .thumbAt(inches(30 / 25.4), inches(8 / 25.4))
            .lifting(inches(60 / 25.4), inches(180 / 25.4))
            .pivotOut(inches(0))
            .madeOf(inch, inch)
            .clearing(millimetres(1))
            .into(LatchCatch.standing(inches(0.5)), inches(0))
            .latch();
    assertEquals(ShopUnits.INCH, latch.lift().getUnit());
    assertTrue(latch.lift().isWithin(asked().latch().lift(), millimetres(1e-9)));
    assertTrue(
        latch
            .guide()
            .insideWidth()
            .isWithin(asked().latch().guide().insideWidth(), millimetres(1e-9)));
  }

  @Test
  void refusesWhatDoesNotOpenOrCatch() {
    assertTrue(
        refusal(() -> asked().allowing(millimetres(40), millimetres(0)).latch())
            .startsWith("lift must be at least 53 mm"));
    assertTrue(
        refusal(() -> asked().allowing(millimetres(0), millimetres(11)).latch())
            .startsWith("rise must be less than 11 mm"));
    assertTrue(
        refusal(() -> asked().thumbAt(millimetres(30), millimetres(30)).latch())
            .startsWith("travel"));
    assertTrue(refusal(() -> asked().pivotOut(millimetres(-44)).latch()).startsWith("pivotOut"));
    assertTrue(
        refusal(() -> asked().pivotAboveEdge(millimetres(21)).latch()).startsWith("edgeBelow"));
    assertTrue(
        refusal(() -> asked().lifting(millimetres(60), millimetres(50)).latch())
            .startsWith("contact"));
    assertTrue(
        refusal(() -> asked().lifting(millimetres(60), millimetres(200)).latch())
            .startsWith("catchAt"));
    assertTrue(
        refusal(() -> asked().lifting(millimetres(3), millimetres(180)).latch())
            .startsWith("contact"));
    assertTrue(
        refusal(() -> asked().withHandle(BAR, millimetres(100), millimetres(12)).latch())
            .startsWith("fingers"));
    assertTrue(asked().toString().endsWith("through a door of 44 mm"));
    assertEquals("closing on the left", Closing.LEFT.toString());
  }

  @Test
  void engagementFallsOneForOneWithTheDoor() {
    LatchCatch nose = LatchCatch.standing(millimetres(12)).under(millimetres(3));
    Measure<Length> before = nose.engagement(millimetres(-9));
    assertEquals(millimetres(0), before);
    for (int rise = -8; rise <= 3; rise++) {
      Measure<Length> deep = nose.engagement(millimetres(rise));
      assertEquals(1, deep.subtract(before).in(ShopUnits.MILLIMETRE), 1e-12);
      before = deep;
      Workings.check(nose.working(millimetres(rise)), deep);
    }
    assertEquals(millimetres(12), nose.engagement(millimetres(4)));
    Workings.check(nose.working(millimetres(4)), millimetres(12));
    Workings.check(nose.working(millimetres(-20)), millimetres(0));
    assertEquals(millimetres(9), nose.lostAtRise());
    assertEquals(millimetres(11), nose.liftNeeded(millimetres(0), millimetres(2)));
    assertEquals(millimetres(6), nose.overlapLeft(millimetres(15), millimetres(7), millimetres(2)));
    Workings.check(
        nose.closingForceWorking(newtons(4), degrees(30), 0.2),
        nose.closingForce(newtons(4), degrees(30), 0.2));
    assertTrue(refusal(() -> nose.closingForce(newtons(4), degrees(80), 0.2)).contains("it locks"));
    assertTrue(refusal(() -> nose.under(millimetres(12))).startsWith("clearance"));
    assertTrue(nose.toString().startsWith("catch with a nose of 12 mm"));
  }

  @Test
  void rulesOfHandlesHaveOneOrTwoBounds() {
    assertEquals(18, HandleRule.all().size());
    assertTrue(HandleRule.ADA_HEIGHT.allows(millimetres(1000)));
    assertFalse(
        HandleRule.ADA_HEIGHT.allows(inches(49)) || HandleRule.ADA_HEIGHT.allows(inches(33)));
    assertEquals("height of door hardware at most 48 in", HandleRule.ADA_1991_HEIGHT.toString());
    assertEquals(inches(0), HandleRule.ADA_1991_HEIGHT.least());
    assertEquals("height of door hardware", HandleRule.ADA_HEIGHT.item());
    assertFalse(HandleRule.BS_8300_BACKSET.hasMost());
    assertTrue(refusal(HandleRule.BS_8300_BACKSET::most).contains("ask the least"));
    assertEquals("404.2.7", HandleRule.ADA_HEIGHT.source().locator());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
