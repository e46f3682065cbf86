package org.hammerscale.fastening;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/** AISC 360-16, table J3.4: least distance to the edge, for fasteners in inches. */
final class AiscEdge {
  private static final double[] DIAMETERS = {0.5, 0.625, 0.75, 0.875, 1, 1.125, 1.25};
  private static final double[] EDGES = {0.75, 0.875, 1, 1.125, 1.25, 1.5, 1.625};
  private static final double SLACK = 1e-9;

  private AiscEdge() {}

  static boolean isListed(Measure<Length> fastener) {
    double inches = fastener.in(ShopUnits.INCH);
    return inches > DIAMETERS[DIAMETERS.length - 1] || row(inches) >= 0;
  }

  /** The row of a diameter, −1 if there is none. */
  private static int row(double inches) {
    for (int i = 0; i < DIAMETERS.length; i++) {
      if (Math.abs(inches - DIAMETERS[i]) < SLACK) {
        return i;
      }
    }
    return -1;
  }

  static double distance(Notes n, Measure<Length> fastener, Unit<Length> unit, String meaning) {
    double inches = fastener.in(ShopUnits.INCH);
    double e = Measures.inches(1).in(unit);
    double d = n.given("d", "diameter of the fastener", fastener.in(unit));
    int row = row(inches);
    if (row >= 0) {
      return n.given("a", meaning + ", by the table", EDGES[row] * e);
    }
    if (inches < DIAMETERS[0]) {
      return n.length("a", meaning, "1.5 d", 1.5 * d);
    }
    if (inches > DIAMETERS[DIAMETERS.length - 1]) {
      return n.length("a", meaning, "1.25 d", 1.25 * d);
    }
    int i = 0;
    while (DIAMETERS[i + 1] < inches) {
      i++;
    }
    double d1 = n.given("d₁", "next smaller fastener", DIAMETERS[i] * e);
    double d2 = n.given("d₂", "next larger fastener", DIAMETERS[i + 1] * e);
    double a1 = n.given("a₁", "distance for the smaller", EDGES[i] * e);
    double a2 = n.given("a₂", "distance for the larger", EDGES[i + 1] * e);
    double a = a1 + (d - d1) * (a2 - a1) / (d2 - d1);
    return n.length("a", meaning, "a₁ + (d − d₁) (a₂ − a₁) / (d₂ − d₁)", a);
  }
}
