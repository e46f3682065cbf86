package org.hammerscale.validation;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.checking.ScoredFile;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Heats that a book counts of named pieces, and what the library says of them. */
record CountedHeats(ScoredFile.Row row, int counted, Estimate<Dimensionless> heats) {
  static List<CountedHeats> all() {
    return ScoredFile.read("counted_heats.csv").stream().map(CountedHeats::of).toList();
  }

  private static CountedHeats of(ScoredFile.Row row) {
    Bar bar = Bar.of(section(row.text("section")), Material.MILD_STEEL);
    Heats heats =
        Heats.forStretches(
            Integer.parseInt(row.text("operations")), Cooling.from(celsius(row.text("heat")), bar));
    return new CountedHeats(row, Integer.parseInt(row.text("counted")), heats.count());
  }

  /** Written as {@code square 1 in} or {@code flat 1 in 1/2 in}. */
  private static Section section(String text) {
    List<Measure<Length>> sizes =
        Stream.of(text.substring(text.indexOf(' ')).split("(?<= in)", -1))
            .filter(size -> !size.isBlank())
            .map(size -> Measures.length(size.strip()))
            .toList();
    return switch (text.substring(0, text.indexOf(' '))) {
      case "square" -> Section.square(sizes.get(0));
      case "round" -> Section.round(sizes.get(0));
      case "flat" -> Section.flat(sizes.get(0), sizes.get(1));
      default -> throw new IllegalArgumentException("no shape: " + text);
    };
  }

  private static Measure<Temperature> celsius(String text) {
    return Measures.celsius(Double.parseDouble(text.replace(" °C", "")));
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
    ScoredFile.remarks("counted_heats.csv").forEach(r -> page.append(r).append("\n"));
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
