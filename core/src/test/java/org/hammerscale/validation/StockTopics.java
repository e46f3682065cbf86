package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Density;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/** Sections, materials, bars. */
final class StockTopics {
  private static final List<Material> METALS =
      List.of(
          Material.WROUGHT_IRON,
          Material.MILD_STEEL,
          Material.MEDIUM_CARBON_STEEL,
          Material.STAINLESS_304,
          Material.COPPER,
          Material.NAVAL_BRASS,
          Material.SILICON_BRONZE,
          Material.ALUMINIUM_6061);

  private StockTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("stock/sections", StockTopics::section),
        new ValidationTopic("stock/bar_weights", StockTopics::weight),
        new ValidationTopic("stock/materials", StockTopics::material));
  }

  private static double section(ValidationCase c) {
    Section section = c.section("section");
    return switch (c.question()) {
      case "area" -> section.area().in(c.areaUnit());
      case "perimeter" -> section.perimeter().in(c.lengthUnit());
      case "width" -> section.width().in(c.lengthUnit());
      case "thickness" -> section.thickness().in(c.lengthUnit());
      case "to centre" -> section.toCentre().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double weight(ValidationCase c) {
    Material material =
        Material.of(
            "metal",
            c.value().input("density", Density.class),
            Source.computed("as the table says"));
    Bar bar = Bar.of(c.section("section"), material);
    return switch (c.unit()) {
      case "lb/ft" -> bar.massPerLength().in(ShopUnits.POUND_PER_FOOT);
      case "kg/m" -> bar.massPerLength().in(ShopUnits.KILOGRAM_PER_METRE);
      case "lb" -> bar.mass(c.length("length")).in(ShopUnits.POUND);
      default -> throw new IllegalArgumentException(c.unit());
    };
  }

  private static double material(ValidationCase c) {
    Material metal =
        METALS.stream()
            .filter(material -> material.name().equals(c.text("metal")))
            .findFirst()
            .orElseThrow();
    return switch (c.question()) {
      case "density" -> metal.density().in(c.value().expected(Density.class).getUnit());
      case "forging start" ->
          certain(metal.forgingStart()).in(c.value().expected(Temperature.class).getUnit());
      case "forging start, low" ->
          metal.forgingStart().low().in(c.value().expected(Temperature.class).getUnit());
      case "forging start, high" ->
          metal.forgingStart().high().in(c.value().expected(Temperature.class).getUnit());
      case "forging finish" ->
          certain(metal.forgingFinish()).in(c.value().expected(Temperature.class).getUnit());
      case "forging finish, low" ->
          metal.forgingFinish().low().in(c.value().expected(Temperature.class).getUnit());
      case "forging finish, high" ->
          metal.forgingFinish().high().in(c.value().expected(Temperature.class).getUnit());
      case "solidus" -> metal.solidus().in(c.value().expected(Temperature.class).getUnit());
      case "yield strength" ->
          certain(metal.yieldStrength()).in(c.value().expected(Pressure.class).getUnit());
      case "yield strength, low" ->
          metal.yieldStrength().low().in(c.value().expected(Pressure.class).getUnit());
      case "yield strength, high" ->
          metal.yieldStrength().high().in(c.value().expected(Pressure.class).getUnit());
      case "expansion" -> metal.expansionPerKelvin() * 1e6 / kelvins(c);
      case "specific heat" -> metal.specificHeatInJoulesPerKilogramKelvin() / joules(c);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static <Q extends Quantity<Q>> Measure<Q> certain(Estimate<Q> value) {
    assertTrue(value.isExact(), value::toString);
    return value.likely();
  }

  /** How many times an expansion in the case's unit goes into one per kelvin. */
  private static double kelvins(ValidationCase c) {
    return c.unit().equals("10⁻⁶/°F") ? 1.8 : 1;
  }

  /** Joules per kilogram and kelvin in the case's unit; the Btu of the international table. */
  private static double joules(ValidationCase c) {
    return c.unit().equals("Btu/(lb °F)") ? 4186.8 : 1;
  }
}
