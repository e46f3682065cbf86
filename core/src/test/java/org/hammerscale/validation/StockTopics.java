package org.hammerscale.validation;

import java.util.List;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/** Sections, materials, bars. */
final class StockTopics {
  private StockTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Areas and circumferences", "sections.csv", StockTopics::section),
        new ValidationTopic("Weights of bars", "bar_weights.csv", StockTopics::weight));
  }

  private static double section(ValidationCase c) {
    Section section = c.section("section");
    return c.text("quantity").equals("area")
        ? section.area().in(ShopUnits.SQUARE_INCH)
        : section.perimeter().in(ShopUnits.INCH);
  }

  private static double weight(ValidationCase c) {
    Material material =
        Material.of("metal", density(c.text("density")), Source.computed("as the table says"));
    Bar bar = Bar.of(c.section("section"), material);
    return switch (c.text("unit")) {
      case "lb/ft" -> bar.massPerLength().in(ShopUnits.POUND_PER_FOOT);
      case "kg/m" -> bar.massPerLength().in(ShopUnits.KILOGRAM_PER_METRE);
      case "lb" -> bar.mass(c.length("length")).in(ShopUnits.POUND);
      default -> throw new IllegalArgumentException(c.text("unit"));
    };
  }

  private static Measure<Density> density(String text) {
    String[] words = text.split(" ", 2);
    double value = Double.parseDouble(words[0]);
    return words[1].equals("lb/ft³")
        ? Measures.poundsPerCubicFoot(value)
        : Measures.kilogramsPerCubicMetre(value);
  }
}
