package org.hammerscale.latch;

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

/**
 * The slot against the staple as a polygon, turned about the pin by small steps as it is seen from
 * the hasp that opens, and cut by the hasp's two faces. It knows no circles.
 */
class HaspSweepTest {
  private static final double STEP = Math.toRadians(0.05);
  private static final int ARC = 90;

  @Test
  void slotIsWhatThePolygonSweepsOutOfTheStrap() {
    Random random = new Random(4);
    for (int i = 0; i < 1500; i++) {
      boolean round = random.nextBoolean();
      double t = 2 + random.nextInt(5);
      double wire = 4 + random.nextInt(5);
      double width = 10 + random.nextInt(16);
      double high = round ? Math.max(width / 2, t) + random.nextInt(20) : t + random.nextInt(30);
      double[] heights = {-6, 0, t / 2, t, t + 5, high / 2, high + wire, high + wire + 8};
      double u = heights[random.nextInt(heights.length)];
      double x1 = Math.max(Math.abs(u), 20) + 5 + random.nextInt(60);
      Staple staple =
          Staple.inside(
                  millimetres(width), Bar.of(Section.round(millimetres(wire)), Material.MILD_STEEL))
              .standing(millimetres(high));
      Bar strap = Bar.of(Section.flat(millimetres(80), millimetres(t)), Material.MILD_STEEL);
      HaspBuilder asked =
          Hasp.of(strap, staple)
              .stapledAt(millimetres(x1))
              .pinAbove(millimetres(u))
              .hungOn(millimetres(4));
      Hasp hasp = (round ? asked.inLine() : asked).hasp();
      double length = round ? width + 2 * wire : wire;
      double[] swept = swept(outline(x1, length, high + wire, round), u, t);
      double from = hasp.slotFrom().in(ShopUnits.MILLIMETRE);
      double to = hasp.slotTo().in(ShopUnits.MILLIMETRE);
      String which = i + ": u " + u + " t " + t + " x " + x1 + " H " + (high + wire) + round;
      assertTrue(from <= swept[0] + 1e-6 && to >= swept[1] - 1e-6, which);
      assertEquals(swept[0], from, 0.03, which);
      assertEquals(swept[1], to, 0.03, which);
    }
  }

  private static double[][] outline(double x, double length, double high, boolean round) {
    if (!round) {
      return new double[][] {{x, 0}, {x + length, 0}, {x + length, high}, {x, high}};
    }
    double r = length / 2;
    double[][] points = new double[ARC + 3][];
    points[0] = new double[] {x, 0};
    points[1] = new double[] {x + length, 0};
    for (int i = 0; i <= ARC; i++) {
      double at = Math.PI * i / ARC;
      points[i + 2] = new double[] {x + r + r * Math.cos(at), high - r + r * Math.sin(at)};
    }
    return points;
  }

  /** Least and most x of the polygon between the levels 0 and t, over a whole opening. */
  private static double[] swept(double[][] polygon, double u, double t) {
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (double turn = 0; turn < Math.PI; turn += STEP) {
      double sine = Math.sin(-turn);
      double cosine = Math.cos(-turn);
      double[][] turned = new double[polygon.length][];
      boolean above = false;
      for (int i = 0; i < polygon.length; i++) {
        double x = polygon[i][0];
        double y = polygon[i][1] - u;
        turned[i] = new double[] {x * cosine - y * sine, x * sine + y * cosine + u};
        above |= turned[i][1] > 0;
      }
      if (!above) {
        break;
      }
      for (int i = 0; i < turned.length; i++) {
        double[] a = turned[i];
        double[] b = turned[(i + 1) % turned.length];
        for (double level : new double[] {0, t, a[1]}) {
          double[] hit = at(a, b, level, t);
          if (hit.length > 0) {
            least = Math.min(least, hit[0]);
            most = Math.max(most, hit[0]);
          }
        }
      }
    }
    return new double[] {least, most};
  }

  /** Where an edge passes a level between the faces; nothing if it does not. */
  private static double[] at(double[] a, double[] b, double level, double t) {
    if (level < 0 || level > t || (a[1] - level) * (b[1] - level) > 0) {
      return new double[0];
    }
    return a[1] == b[1]
        ? new double[] {a[0]}
        : new double[] {a[0] + (b[0] - a[0]) * (level - a[1]) / (b[1] - a[1])};
  }

  @Test
  void inchesAndMillimetresAgree() {
    Random random = new Random(5);
    for (int i = 0; i < 1000; i++) {
      double x = 2 + 3 * random.nextDouble();
      double high = 0.5 + random.nextDouble();
      double u = random.nextDouble() - 0.3;
      Hasp inch = hasp(x, high, u, 1, true);
      Hasp metric = hasp(x, high, u, 25.4, false);
      assertEquals(ShopUnits.INCH, inch.slotTo().getUnit());
      assertTrue(inch.slotTo().isWithin(metric.slotTo(), millimetres(1e-9)));
      assertTrue(inch.slotFrom().isWithin(metric.slotFrom(), millimetres(1e-9)));
    }
  }

  private static Hasp hasp(double x, double high, double u, double scale, boolean inch) {
    java.util.function.DoubleFunction<org.hammerscale.units.Measure<javax.measure.quantity.Length>>
        of = v -> inch ? inches(v * scale) : millimetres(v * scale);
    Bar strap = Bar.of(Section.flat(of.apply(2), of.apply(0.2)), Material.MILD_STEEL);
    Bar rod = Bar.of(Section.round(of.apply(0.3)), Material.MILD_STEEL);
    Staple staple = Staple.inside(of.apply(0.5), rod).standing(of.apply(high));
    return Hasp.of(strap, staple).stapledAt(of.apply(x)).pinAbove(of.apply(u)).hasp();
  }
}
