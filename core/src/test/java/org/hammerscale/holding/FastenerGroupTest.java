package org.hammerscale.holding;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class FastenerGroupTest {
  @Test
  void sharesBalanceLoadAndMoment() {
    Random random = new Random(57);
    for (int i = 0; i < 500; i++) {
      int count = 2 + random.nextInt(5);
      double[] x = new double[count];
      double[] y = new double[count];
      FastenerGroup group = null;
      for (int k = 0; k < count; k++) {
        x[k] = random.nextInt(20) + 30 * k;
        y[k] = random.nextInt(100);
        group =
            group == null
                ? FastenerGroup.at(millimetres(x[k]), millimetres(y[k]))
                : group.and(millimetres(x[k]), millimetres(y[k]));
      }
      double e = random.nextInt(200);
      double found = group.mostLoaded(newtons(1000), millimetres(e)).getValue();
      assertEquals(independent(x, y, 1000, e), found, 1e-8 * found);
      Workings.check(
          group.working(newtons(1000), millimetres(e)),
          group.mostLoaded(newtons(1000), millimetres(e)));
    }
  }

  /**
   * The plate slides by u and v and turns by t about the corner, not its middle: each fastener
   * bears (u − t y, v + t x), and three sums balance. Solved by Gauss and Jordan.
   */
  private static double independent(double[] x, double[] y, double w, double e) {
    int n = x.length;
    double[][] a = new double[3][4];
    double mean = 0;
    for (int k = 0; k < n; k++) {
      double[][] rows = {{1, 0, -y[k]}, {0, 1, x[k]}, {-y[k], x[k], x[k] * x[k] + y[k] * y[k]}};
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          a[r][c] += rows[r][c];
        }
      }
      mean += x[k] / n;
    }
    a[1][3] = w;
    a[2][3] = w * (mean + e);
    for (int p = 0; p < 3; p++) {
      for (int r = 0; r < 3; r++) {
        double factor = a[r][p] / a[p][p];
        for (int c = 0; c < 4 && r != p; c++) {
          a[r][c] -= factor * a[p][c];
        }
      }
    }
    double u = a[0][3] / a[0][0];
    double v = a[1][3] / a[1][1];
    double t = a[2][3] / a[2][2];
    double most = 0;
    for (int k = 0; k < n; k++) {
      most = Math.max(most, Math.hypot(u - t * y[k], v + t * x[k]));
    }
    return most;
  }

  @Test
  void centredLoadIsSharedAlike() {
    FastenerGroup two = FastenerGroup.at(inches(0), inches(0)).and(inches(4), inches(0));
    assertEquals(poundsForce(50), two.mostLoaded(poundsForce(100), inches(0)));
    // A load over one of two in a row is all its own: 50 + 100 × 2 × 2 / 8.
    assertEquals(poundsForce(100), two.mostLoaded(poundsForce(100), inches(2)));
    assertEquals(2, two.count());
    assertEquals("group of 2 fasteners", two.toString());
    assertTrue(two.cautions().get(0).text().contains("tightest hole"));
    FastenerGroup one = FastenerGroup.at(inches(1), inches(1));
    assertEquals("group of 1 fastener", one.toString());
    String message =
        assertThrows(IllegalArgumentException.class, () -> one.mostLoaded(newtons(9), inches(1)))
            .getMessage();
    assertTrue(message.contains("set them apart"), message);
  }
}
