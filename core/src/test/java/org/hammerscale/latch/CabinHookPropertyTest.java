package org.hammerscale.latch;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

/** The hook against two circles that a test of its own intersects, over thousands of doors. */
class CabinHookPropertyTest {
  private static final Bar ROD = Bar.of(Section.round(millimetres(4)), Material.MILD_STEEL);

  @Test
  void twoCirclesMeetWhereTheHookHoldsAndWhereItWouldAlso() {
    Random random = new Random(18);
    int checked = 0;
    while (checked < 4000) {
      double r = 200 + 600 * random.nextDouble();
      double n = random.nextInt(4) == 0 ? 0 : 60 * random.nextDouble() - 20;
      double x = -400 + 300 * random.nextDouble();
      double y = random.nextInt(4) == 0 ? 0 : 60 * random.nextDouble() - 20;
      double at = 20 + 140 * random.nextDouble();
      CabinHook hook =
          CabinHook.betweenEyes(millimetres(r), millimetres(x), ROD)
              .off(millimetres(n), millimetres(y))
              .heldOpen(degrees(at))
              .hook();
      double l = hook.length().in(ShopUnits.MILLIMETRE);
      if (hook.leverArm().in(ShopUnits.MILLIMETRE) < 2) {
        continue;
      }
      checked++;
      // Points common to the circle rho about the pin and l about the wall's eye, by the chord.
      double rho2 = r * r + n * n;
      double w2 = x * x + y * y;
      double along = (rho2 - l * l + w2) / (2 * w2);
      double half = Math.sqrt(Math.max(0, rho2 / w2 - along * along));
      double[] angles = new double[2];
      for (int i = 0; i < 2; i++) {
        double turn = i == 0 ? half : -half;
        double px = along * x - turn * y;
        double py = along * y + turn * x;
        // The angle that turns (r, n) into the point, by dot and cross.
        angles[i] = Math.toDegrees(Math.atan2(r * py - n * px, r * px + n * py));
      }
      double held = hook.opening().in(ShopUnits.DEGREE);
      double other = hook.otherOpening().in(ShopUnits.DEGREE);
      boolean first = apart(angles[0], held) < apart(angles[1], held);
      assertEquals(0, apart(angles[first ? 0 : 1], held), 1e-7);
      assertEquals(0, apart(angles[first ? 1 : 0], other), 1e-7);
      assertTrue(hook.openingWith(hook.length()).isWithin(degrees(at), degrees(1e-6)));
    }
  }

  private static double apart(double one, double other) {
    return Math.abs(Math.IEEEremainder(one - other, 360));
  }

  @Test
  void slackTurnsTheDoorAsALongerHookWould() {
    CabinHook hook =
        CabinHook.betweenEyes(millimetres(700), millimetres(-250), ROD)
            .off(millimetres(20), millimetres(20))
            .heldOpen(degrees(100))
            .hook();
    double more = 1e-4;
    double turned =
        hook.openingWith(hook.length().add(millimetres(more)))
            .subtract(hook.opening())
            .in(ShopUnits.DEGREE);
    assertEquals(-hook.play(millimetres(more)).in(ShopUnits.DEGREE), turned, 1e-9);
  }

  @Test
  void inchesAndMillimetresAgreeAndAMirroredDoorHasTheSameHook() {
    Random random = new Random(7);
    for (int i = 0; i < 2000; i++) {
      double r = 10 + 20 * random.nextDouble();
      double x = -15 + 10 * random.nextDouble();
      double out = random.nextDouble();
      double at = 20 + 140 * random.nextDouble();
      CabinHook inch =
          CabinHook.betweenEyes(inches(r), inches(x), ROD)
              .off(inches(out), inches(out))
              .heldOpen(degrees(at))
              .hook();
      CabinHook metric =
          CabinHook.betweenEyes(millimetres(25.4 * r), millimetres(25.4 * x), ROD)
              .off(millimetres(25.4 * out), millimetres(25.4 * out))
              .heldOpen(degrees(at))
              .hook();
      assertTrue(inch.length().isWithin(metric.length(), millimetres(1e-9)));
      assertTrue(inch.leverArm().isWithin(metric.leverArm(), millimetres(1e-9)));
      // Hung on the other side the door's mirror image turns the other way: y and angle negative.
      double turn = Math.toRadians(-at);
      double px = r * Math.cos(turn) + out * Math.sin(turn);
      double py = r * Math.sin(turn) - out * Math.cos(turn);
      assertEquals(Math.hypot(px - x, py + out), inch.length().in(ShopUnits.INCH), 1e-9);
    }
  }
}
