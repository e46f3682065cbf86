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
