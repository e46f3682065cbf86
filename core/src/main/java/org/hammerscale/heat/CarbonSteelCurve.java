package org.hammerscale.heat;

import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * EN 1993-1-2:2005, 3.4.1: carbon steel from 20 to 1200 °C. The standard itself jumps: the
 * elongation down at 750 °C, where the steel shrinks on itself; the specific heat at 600 and 900
 * °C; the conductivity at 800 °C. The peak of the specific heat at 735 °C is that of heating; on
 * cooling the arrest comes lower, at about 650 to 700 °C, and is smeared.
 */
final class CarbonSteelCurve implements HeatCurve {
  static final HeatCurve CURVE = new CarbonSteelCurve();

  private static final double[] CUTS = {600, 715, 735, 755, 900};
  private static final Source SOURCE =
      Source.read(
          "EN 1993-1-2:2005",
          "3.4.1, equations 3.1 to 3.3, as two open-source programs of structural design and an article have them");

  private CarbonSteelCurve() {}

  @Override
  public String name() {
    return "carbon steel of EN 1993-1-2";
  }

  @Override
  public double hottest() {
    return 1200;
  }

  @Override
  public double elongation(Notes n, double t) {
    String meaning = "elongation, mm per m";
    if (t < 750) {
      return n.number(
          "e", meaning, "0.012 θ + 0.000004 θ² − 0.2416", 0.012 * t + 0.000004 * (t * t) - 0.2416);
    }
    return t <= 860
        ? n.number("e", meaning + ", held from 750 to 860 °C", "11", 11)
        : n.number("e", meaning, "0.02 θ − 6.2", 0.02 * t - 6.2);
  }

  @Override
  public double specificHeat(double t) {
    if (t < 600) {
      return 425 + t * (0.773 + t * (-1.69e-3 + t * 2.22e-6));
    }
    if (t < 735) {
      return 666 + 13002 / (738 - t);
    }
    return t < 900 ? 545 + 17820 / (t - 731) : 650;
  }

  @Override
  public double heatContent(double t) {
    if (t <= 600) {
      return belowSixHundred(t) - belowSixHundred(20);
    }
    if (t <= 735) {
      return heatContent(600) + 666 * (t - 600) + 13002 * Math.log(138 / (738 - t));
    }
    return t <= 900
        ? heatContent(735) + 545 * (t - 735) + 17820 * Math.log((t - 731) / 4)
        : heatContent(900) + 650 * (t - 900);
  }

  private static double belowSixHundred(double t) {
    return t * (425 + t * (0.773 / 2 + t * (-1.69e-3 / 3 + t * (2.22e-6 / 4))));
  }

  @Override
  public double conductivity(double t) {
    return t < 800 ? 54 - 3.33e-2 * t : 27.3;
  }

  @Override
  public boolean conducts() {
    return true;
  }

  @Override
  public double[] cuts() {
    return CUTS;
  }

  @Override
  public Source source() {
    return SOURCE;
  }
}
