package org.hammerscale.heat;

import org.hammerscale.stock.Material;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/** A metal of which only mean values are known, the same at every temperature up to its solidus. */
record MeanValueCurve(Material material) implements HeatCurve {
  private static final double[] NO_CUTS = {};

  /** As hot as this library goes for a metal whose melting is not known. */
  private static final double UNKNOWN_SOLIDUS = 1200;

  @Override
  public String name() {
    return "mean values of " + material.name();
  }

  @Override
  public double hottest() {
    return material.has(Property.SOLIDUS)
        ? material.solidus().in(ShopUnits.CELSIUS)
        : UNKNOWN_SOLIDUS;
  }

  @Override
  public double elongation(Notes n, double t) {
    double a = n.number("α", "linear expansion, 1/K", "", material.expansionPerKelvin());
    return n.number("e", "elongation, mm per m", "1000 α (θ − 20)", 1000 * a * (t - 20));
  }

  @Override
  public double specificHeat(double t) {
    return material.specificHeatInJoulesPerKilogramKelvin();
  }

  @Override
  public double heatContent(double t) {
    return specificHeat(t) * (t - 20);
  }

  @Override
  public double conductivity(double t) {
    throw new IllegalArgumentException(
        "metal must have a known conductivity, was "
            + material
            + "; for a steel of your own use HotMetal.carbonSteel or HotMetal.austenitic");
  }

  @Override
  public boolean conducts() {
    return false;
  }

  @Override
  public double[] cuts() {
    return NO_CUTS;
  }

  @Override
  public Source source() {
    return material.source(
        material.has(Property.EXPANSION) ? Property.EXPANSION : Property.SPECIFIC_HEAT);
  }

  @Override
  public Source specificHeatSource() {
    return material.source(Property.SPECIFIC_HEAT);
  }
}
