package org.hammerscale.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Student's distribution against its closed forms and against the area under its curve; printed
 * tables are among the check values of the next cut.
 */
class StudentTTest {
  @Test
  void closedFormsOfOneAndTwoDegreesOfFreedom() {
    for (double p : new double[] {0.5, 0.501, 0.6, 0.75, 0.9, 0.95, 0.99, 0.9999}) {
      double one = Math.tan(Math.PI * (p - 0.5));
      assertEquals(one, StudentT.quantile(1, p), 1e-11 * (1 + one), "p " + p);
      double two = (2 * p - 1) * Math.sqrt(2 / (4 * p * (1 - p)));
      assertEquals(two, StudentT.quantile(2, p), 1e-11 * (1 + two), "p " + p);
    }
  }

  @Test
  void areaUnderTheCurve() {
    Random random = new Random(20);
    for (int i = 0; i < 300; i++) {
      double freedom = Math.exp(random.nextDouble() * Math.log(5000));
      double p = 0.5 + random.nextDouble() * 0.4999;
      double t = StudentT.quantile(freedom, p);
      assertEquals(p, 0.5 + area(freedom, t), 1e-9, freedom + " " + p);
      assertEquals(p, StudentT.probability(freedom, t), 1e-12, freedom + " " + p);
      assertEquals(1 - p, StudentT.probability(freedom, -t), 1e-12, freedom + " " + p);
    }
  }

  @Test
  void fallsWithEachDegreeOfFreedomTowardsTheNormal() {
    for (double p : new double[] {0.6, 0.95, 0.9999}) {
      double before = Double.POSITIVE_INFINITY;
      for (double freedom = 1; freedom < 3000; freedom *= 1.07) {
        double t = StudentT.quantile(freedom, p);
        assertTrue(t < before, freedom + " " + p);
        before = t;
      }
    }
    assertEquals(1.6448536, StudentT.quantile(1e5, 0.95), 3e-5);
  }

  /**
   * From nothing to t: Simpson's rule on θ with t = √ν tan θ, where the curve is a cosine's power.
   */
  private static double area(double freedom, double t) {
    double end = Math.atan(t / Math.sqrt(freedom));
    int steps = 4000;
    double sum = 0;
    double half = 0; // to a right angle, which is one half of the whole
    double right = Math.PI / 2;
    for (int i = 0; i <= steps; i++) {
      double weight = i == 0 || i == steps ? 1 : i % 2 == 0 ? 2 : 4;
      sum += weight * Math.pow(Math.cos(end * i / steps), freedom - 1);
      half += weight * Math.pow(Math.max(Math.cos(right * i / steps), 0), freedom - 1);
    }
    // Between one and two degrees the curve leaves the right angle too steeply for Simpson.
    return freedom < 3
        ? sum * end / steps / 3 * gammaRatio(freedom)
        : 0.5 * sum * end / (half * right);
  }

  /** Γ((ν + 1)/2) / (Γ(ν/2) √π), by Stirling's series far out and the recurrence back. */
  private static double gammaRatio(double freedom) {
    double factor = 1;
    double at = freedom;
    while (at < 60) {
      factor *= at / (at + 1); // the ratio at ν is that at ν + 2 times ν/(ν + 1)
      at += 2;
    }
    double x = at / 2;
    double half = 1 / (8 * x);
    double ratio =
        Math.sqrt(x)
            * (1 - half + half * half / 2 + 5 * Math.pow(half, 3) / 2 - 21 * Math.pow(half, 4) / 8);
    return factor * ratio / Math.sqrt(Math.PI);
  }
}
