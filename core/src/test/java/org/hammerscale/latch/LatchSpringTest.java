package org.hammerscale.latch;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class LatchSpringTest {
  private static final LatchSpring LEAF =
      LatchSpring.of(millimetres(150), millimetres(16), millimetres(2));

  /** The leaf cut into slices, each turning the rest by its bending. */
  @Test
  void factorIsThatOfALeafCutIntoSlices() {
    int slices = 200_000;
    for (double tip : new double[] {0, 1e-6, 0.01, 0.2, 0.4999, 0.5, 0.5001, 0.9, 0.9999, 1}) {
      double sum = 0;
      for (int i = 0; i < slices; i++) {
        double u = (i + 0.5) / slices;
        sum += 12 * u * u / (tip + (1 - tip) * u) / slices;
      }
      assertEquals(sum, LEAF.taperedTo(tip).factor(), 1e-8);
      assertEquals(tip, LatchSpring.taperOf(LEAF.taperedTo(tip).factor()), 1e-10);
    }
  }

  /** The bending of each slice turns what lies beyond it: a sum over slices from root to tip. */
  @Test
  void bendsToTheLineOfALeafCutIntoSlices() {
    int slices = 20_000;
    double step = 150.0 / slices;
    for (double tip : new double[] {0, 1e-6, 0.2, 0.4999, 0.5, 0.5001, 0.9, 1}) {
      LatchSpring leaf = LEAF.taperedTo(tip);
      double slope = 0;
      double down = 0;
      for (int i = 0; i < slices; i++) {
        double from = (i + 0.5) * step;
        double wide = 16 * (1 - (1 - tip) * from / 150);
        double turn = 12 * 10 * (150 - from) / (206_000 * wide * 8) * step;
        down += slope * step + turn * step / 2;
        slope += turn;
        if ((i + 1) % 500 == 0) {
          assertEquals(
              down,
              leaf.deflectionAt(millimetres((i + 1) * step), newtons(10)).getValue(),
              1e-6,
              "tip " + tip + " at " + (i + 1) * step);
        }
      }
      assertEquals(millimetres(0), leaf.deflectionAt(millimetres(0), newtons(10)));
      assertEquals(leaf.deflection(newtons(10)), leaf.deflectionAt(millimetres(150), newtons(10)));
    }
    // A strip: x² (3 L − x)/(2 L³) of the tip's; a triangle: (x/L)².
    double strip = LEAF.deflection(newtons(7)).getValue();
    double triangle = LEAF.taperedTo(0).deflection(newtons(7)).getValue();
    assertEquals(
        strip * 2500 * 400 / (2 * 3_375_000.0),
        LEAF.deflectionAt(millimetres(50), newtons(7)).getValue(),
        1e-12);
    assertEquals(
        triangle / 9,
        LEAF.taperedTo(0).deflectionAt(millimetres(50), newtons(7)).getValue(),
        1e-12);
    assertTrue(
        refusal(() -> LEAF.deflectionAt(millimetres(151), newtons(1)))
            .startsWith("fromRoot must be at most the length of 150 mm, was 151 mm"));
  }

  @Test
  void tapersToAWidth() {
    LatchSpring leaf = LEAF.taperedTo(millimetres(4));
    assertEquals(LEAF.taperedTo(0.25).factor(), leaf.factor());
    assertEquals(millimetres(4), leaf.tipWidth());
    assertEquals(millimetres(16), leaf.width());
    assertEquals(millimetres(2), leaf.thickness());
    assertEquals(millimetres(150), leaf.length());
    assertTrue(
        refusal(() -> LEAF.taperedTo(millimetres(17)))
            .startsWith("tipWidth must be at most the width at the root of 16 mm, was 17 mm"));
  }

  @Test
  void forceIsTheInverseOfDeflectionInEitherSystem() {
    LatchSpring inch =
        LatchSpring.of(inches(150 / 25.4), inches(16 / 25.4), inches(2 / 25.4)).taperedTo(0.3);
    LatchSpring metric = LEAF.taperedTo(0.3);
    assertEquals(ShopUnits.INCH, inch.deflection(newtons(5)).getUnit());
    assertTrue(
        inch.deflection(newtons(5)).isWithin(metric.deflection(newtons(5)), millimetres(1e-9)));
    assertEquals(5, inch.force(inch.deflection(newtons(5))).getValue(), 1e-12);
    assertEquals(metric.force(millimetres(7)), metric.forceAt(millimetres(4), millimetres(3)));
    // At the travel that a stress allows, the stress is that one.
    double at =
        metric.stress(metric.force(metric.mostTravel(megapascals(500)))).in(ShopUnits.MEGAPASCAL);
    assertEquals(500, at, 1e-9);
  }

  @Test
  void workingsAreTheAnswers() {
    LatchSpring brass = LEAF.taperedTo(0.4).ofModulus(megapascals(100_000));
    Workings.check(brass.working(newtons(3)), brass.deflection(newtons(3)));
    Workings.check(brass.forceWorking(millimetres(7)), brass.force(millimetres(7)));
    Workings.check(brass.stressWorking(newtons(3)), brass.stress(newtons(3)));
    Workings.check(brass.mostTravelWorking(megapascals(200)), brass.mostTravel(megapascals(200)));
    assertEquals(1, brass.cautions(millimetres(30)).size());
    assertTrue(brass.cautions(millimetres(31)).get(0).text().contains("a fifth"));
  }

  @Test
  void refusesWhatIsNoSpring() {
    assertTrue(refusal(() -> LEAF.taperedTo(1.1)).startsWith("tipOfRoot"));
    assertTrue(refusal(() -> LatchSpring.taperOf(6.1)).startsWith("factor"));
    assertTrue(refusal(() -> LEAF.force(millimetres(-1))).startsWith("deflection"));
    assertEquals("flat spring 150 mm long, 16 mm × 2 mm", LEAF.toString());
    assertTrue(LEAF.taperedTo(0.25).toString().endsWith("tapering to 0.25 of its width"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
