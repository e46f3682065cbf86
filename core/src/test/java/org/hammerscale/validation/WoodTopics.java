package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.SeamClearance;
import org.hammerscale.fastening.SpacingRule;
import org.hammerscale.fastening.TwelvePercentGravity;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.fastening.WoodSpacing;
import org.hammerscale.holding.AllowableLateral;
import org.hammerscale.holding.FastenerRow;
import org.hammerscale.holding.LateralHold;
import org.hammerscale.holding.ReferenceWithdrawal;
import org.hammerscale.holding.UltimateWithdrawal;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Fasteners in wood: where they may stand, what to drill, what they hold. */
final class WoodTopics {
  private static final Map<String, Unit<Force>> FORCES =
      Map.of("lbf", ShopUnits.POUND_FORCE, "N", ShopUnits.NEWTON);

  private WoodTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("fastening/specific_gravity", WoodTopics::gravity),
        new ValidationTopic("fastening/wood_spacing", WoodTopics::spacing),
        new ValidationTopic("fastening/pilot_holes", WoodTopics::pilot),
        new ValidationTopic("holding/withdrawal_nds", WoodTopics::reference),
        new ValidationTopic("holding/withdrawal_ultimate", WoodTopics::ultimate),
        new ValidationTopic("holding/lateral_hold", WoodTopics::lateral),
        new ValidationTopic("holding/fastener_rows", WoodTopics::row));
  }

  private static double gravity(ValidationCase c) {
    return switch (c.question()) {
      case "at 12 %" -> dry(c.number("gravity")).at12Percent().value();
      case "oven-dry" -> moist(c.number("gravity")).ovenDry().value();
      case "species at 12 %" -> Wood.named(c.text("species")).at12Percent().value();
      case "species oven-dry" -> Wood.named(c.text("species")).ovenDry().value();
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double spacing(ValidationCase c) {
    WoodSpacing any = WoodSpacing.by(rule(c), c.length("diameter"));
    WoodSpacing at = c.text("angle").isEmpty() ? any : any.pulledAt(c.angle("angle"));
    WoodSpacing spacing = c.text("factor").equals("0.7") ? at.steelToTimber() : at;
    Measure<Length> answer =
        switch (c.question()) {
          case "along the grain" -> spacing.alongGrain();
          case "across the grain" -> spacing.acrossGrain();
          case "rows" -> spacing.betweenRows();
          case "staggered rows" -> spacing.betweenStaggeredRows();
          case "loaded end" -> spacing.loadedEnd();
          case "unloaded end" -> spacing.unloadedEnd();
          case "loaded edge" -> spacing.loadedEdge();
          case "unloaded edge" -> spacing.unloadedEdge();
          case "seam, pulled towards" -> seam(spacing, c).pulledTowards();
          case "seam, pulled away" -> seam(spacing, c).pulledAway();
          default -> throw new IllegalArgumentException(c.question());
        };
    return answer.in(c.lengthUnit());
  }

  private static SeamClearance seam(WoodSpacing spacing, ValidationCase c) {
    return SeamClearance.around(Measures.millimetres(6), spacing).withMargin(c.length("margin"));
  }

  private static SpacingRule rule(ValidationCase c) {
    return Stream.of(SpacingRule.values())
        .filter(rule -> rule.toString().equals(c.text("rule")))
        .findFirst()
        .orElseThrow();
  }

  private static double pilot(ValidationCase c) {
    Fastener fastener = new Fastener(kind(c), c.length("diameter"), c.length("root"));
    Wood wood = Wood.hardwood("any", dry(c.number("G")));
    PilotHole across = PilotHole.acrossLoad(fastener, wood);
    Measure<Length> answer =
        switch (c.question()) {
          case "pulled out" -> PilotHole.pulledOut(fastener, wood).threadHole();
          case "across, thread" -> across.threadHole();
          case "across, shank" -> across.shankHole();
          case "least" -> across.leastThreadHole();
          case "most" -> across.mostThreadHole();
          default -> throw new IllegalArgumentException(c.question());
        };
    return answer.in(c.lengthUnit());
  }

  private static double reference(ValidationCase c) {
    return reference(c, kind(c)).in(forceUnit(c));
  }

  private static Measure<Force> reference(ValidationCase c, Kind kind) {
    Wood wood = Wood.softwood("any", dry(c.number("G")));
    return ReferenceWithdrawal.of(Fastener.of(kind, c.length("diameter")), wood)
        .force(c.length("thread"));
  }

  private static double ultimate(ValidationCase c) {
    Kind kind = kind(c);
    Wood wood = Wood.softwood("any", moist(c.number("G")));
    Measure<Force> ultimate =
        UltimateWithdrawal.of(Fastener.of(kind, c.length("diameter")), wood)
            .force(c.length("thread"))
            .likely();
    return c.question().equals("ultimate over reference")
        ? ultimate.ratio(reference(c, kind))
        : ultimate.in(forceUnit(c));
  }

  private static double lateral(ValidationCase c) {
    Fastener fastener = Fastener.of(kind(c), c.length("diameter"));
    Measure<Length> depth = c.length("depth");
    Measure<Force> force =
        switch (c.question()) {
          case "K" -> {
            TwelvePercentGravity gravity = moist(c.number("G12"));
            Wood wood =
                c.text("class").equals("hardwood")
                    ? Wood.hardwood("any", gravity)
                    : Wood.softwood("any", gravity);
            yield LateralHold.of(fastener, wood).force(depth).likely();
          }
          case "allowable" -> AllowableLateral.of(fastener, group(c)).force(depth);
          case "allowable, end grain" ->
              AllowableLateral.of(fastener, group(c)).inEndGrain().force(depth);
          default -> throw new IllegalArgumentException(c.question());
        };
    return force.in(forceUnit(c));
  }

  private static AllowableLateral.Group group(ValidationCase c) {
    return AllowableLateral.Group.valueOf(c.text("class"));
  }

  private static double row(ValidationCase c) {
    int count = c.count("count");
    FastenerRow row =
        c.question().equals("pulled out")
            ? FastenerRow.pulledOut(count)
            : FastenerRow.alongGrain(
                count, Fastener.of(Kind.LAG_SCREW, c.length("diameter")), c.length("spacing"));
    return row.effectiveNumber().likely().in(ShopUnits.ONE);
  }

  private static Kind kind(ValidationCase c) {
    return switch (c.text("fastener")) {
      case "wood screw" -> Kind.WOOD_SCREW;
      case "lag screw" -> Kind.LAG_SCREW;
      case "nail" -> Kind.NAIL;
      default -> throw new IllegalArgumentException(c.text("fastener"));
    };
  }

  private static OvenDryGravity dry(double gravity) {
    return OvenDryGravity.of(gravity);
  }

  private static TwelvePercentGravity moist(double gravity) {
    return TwelvePercentGravity.of(gravity);
  }

  private static Unit<Force> forceUnit(ValidationCase c) {
    Unit<Force> unit = FORCES.get(c.unit());
    if (unit == null) {
      throw new IllegalArgumentException("no unit of force " + c.unit());
    }
    return unit;
  }
}
