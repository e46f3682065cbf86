package org.hammerscale.heat;

import javax.measure.quantity.Temperature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Opens the inner formulas of this package to the validation tests. */
public final class Kernels {
  private static final double ROOM = 293.15;

  private Kernels() {}

  public static double cylinder(double rayleigh, double prandtl) {
    return Convection.cylinder(rayleigh, prandtl);
  }

  public static double upright(double rayleigh, double prandtl) {
    return Convection.upright(rayleigh, prandtl);
  }

  public static double acrossDraught(double reynolds, double prandtl) {
    return Convection.acrossDraught(reynolds, prandtl);
  }

  public static double rayleigh(Section round, Measure<Temperature> surface) {
    return Convection.rayleigh(round.width().in(ShopUnits.METRE), kelvins(surface), ROOM);
  }

  public static double airDensity(Measure<Temperature> air) {
    return Convection.density(kelvins(air));
  }

  public static double airViscosity(Measure<Temperature> air) {
    return Convection.viscosity(kelvins(air));
  }

  public static double airConductivity(Measure<Temperature> air) {
    return Convection.conductivity(kelvins(air));
  }

  public static double convection(Air air, Section section, Measure<Temperature> surface) {
    return air.coefficient(Body.endless(section), kelvins(surface), ROOM);
  }

  public static double radiation(double emissivity, Measure<Temperature> surface) {
    return Radiation.coefficient(emissivity, kelvins(surface), ROOM);
  }

  public static double depth(Section section) {
    return Body.endless(section).depth();
  }

  private static double kelvins(Measure<Temperature> temperature) {
    return temperature.in(ShopUnits.CELSIUS) + 273.15;
  }
}
