package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.TimberClass;
import org.hammerscale.fastening.TwelvePercentGravity;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.holding.CharacteristicWithdrawal;
import org.hammerscale.holding.DriftBolt;
import org.hammerscale.holding.DrivenStaple;
import org.hammerscale.holding.PenetrationRule;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.ScrewSeries;
import org.hammerscale.holding.StrapScrews;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;

/** Screws chosen for a strap, driven fasteners, and the timber they go into. */
final class ScrewTopics {
  private static final Map<String, ScrewSeries> SERIES =
      Map.of(
          "wood screws",
          ScrewSeries.WOOD_SCREWS,
          "metric wood screws",
          ScrewSeries.METRIC_WOOD_SCREWS);

  private ScrewTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("holding/screw_lengths", ScrewTopics::length),
        new ValidationTopic("holding/driven", ScrewTopics::driven),
        new ValidationTopic("fastening/timber", ScrewTopics::timber));
  }

  private static double length(ValidationCase c) {
    PenetrationRule rule = c.constant("rule", PenetrationRule.class);
    Fastener screw = Fastener.of(Kind.WOOD_SCREW, c.length("diameter"));
    Measure<Length> least = rule.leastLength(c.length("fixed"), screw);
    Measure<Length> stocked = SERIES.get(c.text("series")).lengthAtLeast(least);
    return switch (c.question()) {
      case "least length" -> least.in(c.lengthUnit());
      case "stocked length" -> stocked.in(c.lengthUnit());
      case "point stays in the wood" ->
          StrapScrews.through(c.length("fixed"))
                  .into(c.length("receiver"), Wood.named("white oak"))
                  .keepsPoint(stocked)
              ? 1
              : 0;
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double driven(ValidationCase c) {
    Spike nail = Spike.of(Section.round(c.length("diameter")));
    Measure<Length> depth = c.length("depth");
    Measure<Force> force =
        switch (c.question()) {
          case "nail, reference" ->
              ReferenceWithdrawal.of(nail, OvenDryGravity.of(c.number("oven-dry gravity")))
                  .force(depth);
          case "drift bolt, ultimate" ->
              DriftBolt.of(nail.diameter(), at12Percent(c.number("gravity at 12 %")))
                  .ultimate(depth)
                  .likely();
          case "staple, ultimate" ->
              DrivenStaple.of(nail, at12Percent(c.number("gravity at 12 %")))
                  .ultimate(depth)
                  .likely();
          case "smooth nail, characteristic" ->
              CharacteristicWithdrawal.of(nail, c.value().input("density", Density.class))
                  .force(depth);
          default -> throw new IllegalArgumentException(c.question());
        };
    return force.in(c.value().expected(Force.class).getUnit());
  }

  private static Wood at12Percent(double gravity) {
    return Wood.softwood("any", TwelvePercentGravity.of(gravity));
  }

  private static double timber(ValidationCase c) {
    String name = c.text("timber");
    return switch (c.question()) {
      case "characteristic density" ->
          TimberClass.valueOf(name)
              .characteristicDensity()
              .in(c.value().expected(Density.class).getUnit());
      case "mean density" ->
          TimberClass.valueOf(name).meanDensity().in(c.value().expected(Density.class).getUnit());
      case "at 12 %" -> TimberClass.valueOf(name).wood().at12Percent().value();
      case "oven-dry" -> TimberClass.valueOf(name).wood().ovenDry().value();
      case "species at 12 %" -> Wood.named(name).at12Percent().value();
      case "species oven-dry" -> Wood.named(name).ovenDry().value();
      default -> throw new IllegalArgumentException(c.question());
    };
  }
}
