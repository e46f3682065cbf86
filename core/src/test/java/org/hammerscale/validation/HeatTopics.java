package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.HotMetal;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What the fire does. */
final class HeatTopics {
  private HeatTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Steel in the fire", "steel_in_the_fire.csv", HeatTopics::steel),
        new ValidationTopic("Shrinkage", "contraction.csv", HeatTopics::contraction));
  }

  private static double steel(ValidationCase c) {
    HotMetal metal = HotMetal.of(metal(c));
    Measure<Temperature> heat = c.temperature("heat");
    return switch (c.text("quantity")) {
      case "elongation" -> metal.elongation(heat);
      case "specific heat" -> metal.specificHeatInJoulesPerKilogramKelvin(heat);
      case "conductivity" -> metal.conductivityInWattsPerMetreKelvin(heat);
      case "heat content" -> metal.heatContentInJoulesPerKilogram(heat);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double contraction(ValidationCase c) {
    Contraction contraction = Contraction.from(c.temperature("heat"), metal(c));
    return switch (c.text("quantity")) {
      case "elongation" -> contraction.elongation();
      case "shrinkage" -> contraction.shrinkage();
      case "cold length of 1000 mm hot" ->
          contraction.cold(millimetres(1000)).in(ShopUnits.MILLIMETRE);
      case "growth of 1000 mm cold" ->
          contraction.hot(millimetres(1000)).in(ShopUnits.MILLIMETRE) - 1000;
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static Material metal(ValidationCase c) {
    return Stream.of(Material.MILD_STEEL, Material.STAINLESS_304)
        .filter(material -> material.name().equals(c.text("metal")))
        .findFirst()
        .orElseThrow();
  }
}
