package org.hammerscale.heat;

import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * A metal's values against its temperature θ in °C. Where a curve jumps, the value at the jump is
 * that of the hotter side, unless the source says otherwise.
 */
interface HeatCurve {
  /** Whose curve it is, as it stands in a sentence. */
  String name();

  /** The hottest that the source gives values for; the coldest is 20 °C. */
  double hottest();

  /** How much longer than at 20 °C, in millimetres per metre. */
  double elongation(Notes n, double celsius);

  /** Specific heat in J/(kg K); beyond the hottest point the last value is held. */
  double specificHeat(double celsius);

  /** The integral of the specific heat from 20 °C, in J/kg. */
  double heatContent(double celsius);

  /** Thermal conductivity in W/(m K). */
  double conductivity(double celsius);

  /** Whether the conductivity is known. */
  boolean conducts();

  /**
   * Where an integral of the specific heat has to be cut: at its jumps, and so near its peaks that
   * a polynomial follows it between two cuts. Rising.
   */
  double[] cuts();

  /** Where the curve comes from. */
  Source source();

  /** Where its specific heat comes from. */
  default Source specificHeatSource() {
    return source();
  }
}
