package org.hammerscale.heat;

import javax.measure.quantity.Dimensionless;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/** How well scaled surfaces radiate, each range with its source. */
record Emissivity(Estimate<Dimensionless> value, Source source) {
  private static final Emissivity SCALED_STEEL =
      between(
          0.70,
          0.80,
          0.90,
          Source.read(
              "FLIR and Omega emissivity tables",
              "oxidised iron and steel 0.78 to 0.89; EN 1993-1-2 takes 0.7"));
  private static final Emissivity STAINLESS =
      between(
          0.40,
          0.65,
          0.90,
          Source.read(
              "EN 1993-1-2:2005", "annex C, 0.4 for a clean surface; up to that of scaled steel"));
  private static final Emissivity COPPER =
      between(
          0.57,
          0.70,
          0.88,
          Source.read(
              "FLIR and Omega emissivity tables", "copper heated at 600 °C to oxidised black"));
  private static final Emissivity BRASS =
      between(
          0.22,
          0.36,
          0.50,
          Source.read("Omega and Raytek emissivity tables", "dull plate to oxidised"));
  private static final Emissivity ALUMINIUM =
      between(
          0.04,
          0.20,
          0.31,
          Source.read("Omega and Mikron emissivity tables", "polished to heavily oxidised"));

  /** The range for a metal; steels by their curves, others by name. */
  static Emissivity of(HotMetal metal) {
    if (metal.isCarbonSteel()) {
      return SCALED_STEEL;
    }
    if (metal.isAustenitic()) {
      return STAINLESS;
    }
    String name = metal.material().name();
    if (name.equals(Material.COPPER.name())) {
      return COPPER;
    }
    if (name.equals(Material.NAVAL_BRASS.name())) {
      return BRASS;
    }
    if (name.equals(Material.ALUMINIUM_6061.name())) {
      return ALUMINIUM;
    }
    throw new IllegalArgumentException(
        "emissivity must be given for "
            + metal.material().name()
            + ", of which no published value is known here; use Cooling.withEmissivity");
  }

  private static Emissivity between(double low, double likely, double high, Source source) {
    return new Emissivity(Estimate.of(share(low), share(likely), share(high)), source);
  }

  private static Measure<Dimensionless> share(double value) {
    return Measure.of(value, ShopUnits.ONE);
  }
}
