package org.hammerscale.validation;

import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;

/** Heats that a book counts of named pieces, and what the library says of them. */
record CountedHeats(ValidationCase row, int counted, Estimate<Dimensionless> heats) {
  static List<CountedHeats> all() {
    return ValidationFile.read("counted_heats.csv").stream().map(CountedHeats::of).toList();
  }

  private static CountedHeats of(ValidationCase row) {
    Bar bar = Bar.of(row.section("section"), Material.MILD_STEEL);
    Heats heats =
        Heats.forStretches(
            Integer.parseInt(row.text("operations")), Cooling.from(row.temperature("heat"), bar));
    return new CountedHeats(row, Integer.parseInt(row.text("counted")), heats.count());
  }

  /** A count that goes on, or stops with the page, is no more than the low end. */
  boolean inside() {
    boolean enough = counted <= heats.high().in(ShopUnits.ONE);
    return row.text("count").equals("at least")
        ? enough
        : enough && counted >= heats.low().in(ShopUnits.ONE);
  }

  boolean isLikely() {
    return counted == heats.likely().in(ShopUnits.ONE);
  }

  /** The table for the page. */
  static String page() {
    StringBuilder page = new StringBuilder("\n## Heats counted\n\n");
    ValidationFile.remarks("counted_heats.csv").forEach(r -> page.append(r).append("\n"));
    page.append("\n| piece | operations | bar | heat | counted | we say | inside | source |\n")
        .append("|---|--:|---|---|---|---|---|---|\n");
    for (CountedHeats c : all()) {
      page.append(
          String.join(
              " | ",
              "| " + c.row.text("piece"),
              c.row.text("operations"),
              c.row.text("section"),
              c.row.text("heat"),
              (c.row.text("count").equals("exact") ? "" : c.row.text("count") + " ") + c.counted,
              c.heats.toString(),
              c.inside() ? "yes" : "**no**",
              c.row.text("source") + ", " + c.row.text("locator") + " |\n"));
    }
    page.append("\nNotes:\n\n");
    for (CountedHeats c : all()) {
      page.append("- *").append(c.row.text("piece")).append("*: ").append(c.row.text("note"));
      page.append("\n");
    }
    return page.toString();
  }
}
