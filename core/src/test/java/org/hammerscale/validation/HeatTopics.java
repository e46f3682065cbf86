package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.hammerscale.heat.Air;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.heat.Kernels;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/** What the fire does. */
final class HeatTopics {
  private static final Source GIVEN = Source.computed("as the table says");

  private HeatTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("heat/steel_in_the_fire", HeatTopics::steel),
        new ValidationTopic("heat/contraction", HeatTopics::contraction),
        new ValidationTopic("heat/cooling_times", HeatTopics::cooling),
        new ValidationTopic("heat/convection", HeatTopics::convection),
        new ValidationTopic("heat/biot", HeatTopics::biot));
  }

  private static double steel(ValidationCase c) {
    HotMetal metal = HotMetal.of(metal(c));
    Measure<Temperature> heat = c.temperature("heat");
    return switch (c.question()) {
      case "elongation" -> metal.elongation(heat);
      case "specific heat" -> metal.specificHeatInJoulesPerKilogramKelvin(heat);
      case "conductivity" -> metal.conductivityInWattsPerMetreKelvin(heat);
      case "heat content" -> metal.heatContentInJoulesPerKilogram(heat);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double contraction(ValidationCase c) {
    Contraction contraction = Contraction.from(c.temperature("heat"), metal(c));
    return switch (c.question()) {
      case "elongation" -> contraction.elongation();
      case "shrinkage" -> contraction.shrinkage();
      case "cold length of 1000 mm hot" ->
          contraction.cold(millimetres(1000)).in(ShopUnits.MILLIMETRE);
      case "growth of 1000 mm cold" ->
          contraction.hot(millimetres(1000)).in(ShopUnits.MILLIMETRE) - 1000;
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double cooling(ValidationCase c) {
    Material metal =
        c.text("specific heat").isEmpty() // the curve
            ? Material.MILD_STEEL
            : Material.of("metal", Measures.kilogramsPerCubicMetre(7850), GIVEN)
                .withSpecificHeatInJoulesPerKilogramKelvin(c.number("specific heat"), GIVEN);
    return Cooling.from(c.temperature("from"), Bar.of(c.section("section"), metal))
        .to(c.temperature("to"))
        .in(air(c))
        .withEmissivity(share(c.number("emissivity")))
        .time()
        .likely()
        .in(ShopUnits.SECOND);
  }

  private static double convection(ValidationCase c) {
    return switch (c.question()) {
      case "horizontal cylinder" ->
          Kernels.cylinder(c.number("Rayleigh number"), c.number("Prandtl number"));
      case "vertical plate" ->
          Kernels.upright(c.number("Rayleigh number"), c.number("Prandtl number"));
      case "draught" ->
          Kernels.acrossDraught(c.number("Reynolds number"), c.number("Prandtl number"));
      case "Rayleigh" -> Kernels.rayleigh(c.section("section"), c.temperature("surface"));
      case "Nusselt" ->
          Kernels.cylinder(Kernels.rayleigh(c.section("section"), c.temperature("surface")), 0.70);
      case "coefficient" ->
          Kernels.convection(Air.STILL, c.section("section"), c.temperature("surface"));
      case "air density" -> Kernels.airDensity(c.temperature("surface"));
      case "air viscosity" -> Kernels.airViscosity(c.temperature("surface"));
      case "air conductivity" -> Kernels.airConductivity(c.temperature("surface"));
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double biot(ValidationCase c) {
    Measure<Temperature> heat = c.temperature("heat");
    Section section = c.section("section");
    double radiation = Kernels.radiation(0.8, heat);
    double convection = Kernels.convection(air(c), section, heat);
    return switch (c.question()) {
      case "radiation" -> radiation;
      case "convection" -> convection;
      case "depth" -> 1000 * Kernels.depth(section);
      case "conductivity" ->
          HotMetal.of(Material.MILD_STEEL).conductivityInWattsPerMetreKelvin(heat);
      case "Biot" ->
          Cooling.from(heat, Bar.of(section, Material.MILD_STEEL))
              .in(air(c))
              .withEmissivity(share(0.8))
              .biot();
      case "share of convection" -> convection / (convection + radiation);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  /** Air that is still, or takes so much from each square metre of the bar. */
  private static Air air(ValidationCase c) {
    return c.text("air").equals("still") ? Air.STILL : Air.taking(c.number("film"));
  }

  private static Estimate<Dimensionless> share(double value) {
    return Estimate.exact(Measure.of(value, ShopUnits.ONE));
  }

  private static Material metal(ValidationCase c) {
    return Stream.of(Material.MILD_STEEL, Material.STAINLESS_304)
        .filter(material -> material.name().equals(c.text("metal")))
        .findFirst()
        .orElseThrow();
  }
}
