package org.hammerscale.validation;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.minutes;

import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.hammerscale.scale.FireHistory;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleKernels;
import org.hammerscale.scale.ScaleLaw;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.scale.ScaleRule;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What the fire takes as scale. */
final class ScaleTopics {
  private static final double IRON_DENSITY = 7.874;

  private ScaleTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("scale/oxides", ScaleTopics::oxide),
        new ValidationTopic("scale/scale_laws", ScaleTopics::law),
        new ValidationTopic("scale/scale_growth", ScaleTopics::growth),
        new ValidationTopic("scale/scale_short_heats", ScaleTopics::fed),
        new ValidationTopic("scale/scale_shares", ScaleTopics::share),
        new ValidationTopic("scale/scale_rules", ScaleTopics::rule));
  }

  private static double oxide(ValidationCase c) {
    return ScaleKernels.oxide(c.text("oxide"), c.question());
  }

  private static double law(ValidationCase c) {
    ScaleLaw law = named(c.text("law"));
    return switch (c.question()) {
      case "prefactor" -> ScaleKernels.prefactor(law);
      case "energy" -> ScaleKernels.energy(law);
      case "tube with ramps" -> micrometres(law.scaleThickness(tube()));
      case "tube soak only" ->
          micrometres(law.scaleThickness(FireHistory.soak(celsius(1000), minutes(15))));
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  /** 5 K a minute up to 1000 °C, a quarter of an hour there, 5 K a minute down. */
  private static FireHistory tube() {
    return FireHistory.from(celsius(20))
        .to(celsius(1000), minutes(196))
        .hold(minutes(15))
        .to(celsius(20), minutes(196));
  }

  private static double growth(ValidationCase c) {
    ScaleLaw law = named(c.text("law"));
    FireHistory soak = soak(c);
    return switch (c.question()) {
      case "scale" -> law.scaleThickness(soak).in(ShopUnits.MILLIMETRE);
      case "metal" -> law.metalLoss(soak).in(ShopUnits.MILLIMETRE);
      case "metal mass" -> law.metalLoss(soak).in(ShopUnits.MILLIMETRE) * IRON_DENSITY;
      case "oxygen" -> ScaleKernels.oxygen(law, soak);
      case "over Stanley" -> law.metalLoss(soak).ratio(ScaleLaw.STANLEY.metalLoss(soak));
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double fed(ValidationCase c) {
    FireHistory soak = soak(c);
    Measure<Length> parabola = ScaleLaw.MI.metalLoss(soak);
    Measure<Length> fed = ScaleKernels.fed(ScaleLaw.MI, soak, c.number("supply"));
    return switch (c.question()) {
      case "parabola" -> parabola.in(ShopUnits.MILLIMETRE);
      case "fed" -> fed.in(ShopUnits.MILLIMETRE);
      case "parabola over fed" -> parabola.ratio(fed);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double share(ValidationCase c) {
    Bar bar = Bar.of(c.section("section"), Material.MILD_STEEL);
    ScaleLoss loss = ScaleLoss.of(bar, HeatPlan.of(soak(c))).by(named(c.text("law"))).unfed();
    return c.question().equals("percent")
        ? percent(loss.share().likely())
        : loss.perSurface().likely().in(ShopUnits.MILLIMETRE);
  }

  private static double rule(ValidationCase c) {
    Estimate<Dimensionless> share =
        ScaleRule.all().stream()
            .filter(rule -> rule.name().equals(c.text("rule")))
            .findFirst()
            .orElseThrow()
            .share(c.count("heats"));
    return switch (c.question()) {
      case "low" -> percent(share.low());
      case "likely" -> percent(share.likely());
      case "high" -> percent(share.high());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double percent(Measure<Dimensionless> share) {
    Unit<Dimensionless> one = ShopUnits.ONE;
    return 100 * share.in(one);
  }

  private static FireHistory soak(ValidationCase c) {
    return FireHistory.soak(c.temperature("heat"), c.time("time"));
  }

  private static double micrometres(Measure<Length> thickness) {
    return 1000 * thickness.in(ShopUnits.MILLIMETRE);
  }

  private static ScaleLaw named(String name) {
    return switch (name) {
      case "Mi" -> ScaleLaw.MI;
      case "Paidassi" -> ScaleLaw.PAIDASSI;
      case "Stanley" -> ScaleLaw.STANLEY;
      default -> throw new IllegalArgumentException(name);
    };
  }
}
