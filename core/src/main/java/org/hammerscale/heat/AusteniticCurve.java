package org.hammerscale.heat;

import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/** EN 1993-1-2:2005, annex C.3: austenitic stainless steel from 20 to 1200 °C, without jumps. */
final class AusteniticCurve implements HeatCurve {
  static final HeatCurve CURVE = new AusteniticCurve();

  private static final double[] NO_CUTS = {};
  private static final Source SOURCE =
      Source.read(
          "EN 1993-1-2:2005",
          "annex C.3, as two open-source programs of structural design have it");

  private AusteniticCurve() {}

  @Override
  public String name() {
    return "austenitic stainless steel of EN 1993-1-2";
  }

  @Override
  public double hottest() {
    return 1200;
  }

  @Override
  public double elongation(Notes n, double t) {
    return n.number(
        "e",
        "elongation, mm per m",
        "(16 + 0.00479 θ − 0.000001243 θ²) (θ − 20) / 1000",
        (16 + 0.00479 * t - 0.000001243 * (t * t)) * (t - 20) / 1000);
  }

  @Override
  public double specificHeat(double t) {
    double held = Math.min(t, hottest());
    return 450 + held * (0.280 + held * (-2.91e-4 + held * 1.34e-7));
  }

  @Override
  public double heatContent(double t) {
    return fromZero(t) - fromZero(20);
  }

  private static double fromZero(double t) {
    return t * (450 + t * (0.280 / 2 + t * (-2.91e-4 / 3 + t * (1.34e-7 / 4))));
  }

  @Override
  public double conductivity(double t) {
    return 14.6 + 1.27e-2 * t;
  }

  @Override
  public boolean conducts() {
    return true;
  }

  @Override
  public double[] cuts() {
    return NO_CUTS;
  }

  @Override
  public Source source() {
    return SOURCE;
  }
}
