package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.holding.PenetrationRule;
import org.hammerscale.holding.ScrewSeries;
import org.hammerscale.holding.StrapScrews;
import org.hammerscale.units.Measure;

/** Screws chosen for a strap. */
final class ScrewTopics {
  private static final Map<String, ScrewSeries> SERIES =
      Map.of(
          "WOOD_SCREWS",
          ScrewSeries.WOOD_SCREWS,
          "METRIC_WOOD_SCREWS",
          ScrewSeries.METRIC_WOOD_SCREWS);

  private ScrewTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Lengths of screws", "screw_lengths.csv", ScrewTopics::length));
  }

  private static double length(ValidationCase c) {
    PenetrationRule rule = PenetrationRule.valueOf(c.text("rule"));
    Fastener screw = Fastener.of(Kind.WOOD_SCREW, c.length("diameter"));
    Measure<Length> least = rule.leastLength(c.length("fixed"), screw);
    Measure<Length> stocked = SERIES.get(c.text("series")).lengthAtLeast(least);
    return switch (c.text("quantity")) {
      case "least length" -> least.in(c.lengthUnit());
      case "stocked length" -> stocked.in(c.lengthUnit());
      case "point stays in the wood" ->
          StrapScrews.through(c.length("fixed"))
                  .into(c.length("receiver"), Wood.named("white oak"))
                  .keepsPoint(stocked)
              ? 1
              : 0;
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }
}
