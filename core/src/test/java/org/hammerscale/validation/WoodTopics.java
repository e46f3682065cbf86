package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
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
        new ValidationTopic(
            "Specific gravity of wood", "specific_gravity.csv", WoodTopics::gravity),
        new ValidationTopic("Distances in wood", "wood_spacing.csv", WoodTopics::spacing),
        new ValidationTopic("Pilot holes", "pilot_holes.csv", WoodTopics::pilot),
        new ValidationTopic(
            "Withdrawal, reference values", "withdrawal_nds.csv", WoodTopics::reference),
        new ValidationTopic(
            "Withdrawal, ultimate loads", "withdrawal_ultimate.csv", WoodTopics::ultimate),
        new ValidationTopic("Loads across fasteners", "lateral_hold.csv", WoodTopics::lateral),
        new ValidationTopic("Fasteners in a row", "fastener_rows.csv", WoodTopics::row));
  }

  private static double gravity(ValidationCase c) {
    String given = c.text("given");
    return switch (c.text("quantity")) {
      case "at 12 %" -> dry(given).at12Percent().value();
      case "oven-dry" -> moist(given).ovenDry().value();
      case "species at 12 %" -> Wood.named(given).at12Percent().value();
      case "species oven-dry" -> Wood.named(given).ovenDry().value();
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double spacing(ValidationCase c) {
    String factor = c.text("factor");
    WoodSpacing any = WoodSpacing.by(SpacingRule.valueOf(c.text("rule")), c.length("diameter"));
    WoodSpacing at =
        c.text("angle").isEmpty()
            ? any
            : any.pulledAt(Measures.degrees(Double.parseDouble(c.text("angle"))));
    WoodSpacing spacing = factor.equals("0.7") ? at.steelToTimber() : at;
    Measure<Length> answer =
        switch (c.text("quantity")) {
          case "along the grain" -> spacing.alongGrain();
          case "across the grain" -> spacing.acrossGrain();
          case "rows" -> spacing.betweenRows();
          case "staggered rows" -> spacing.betweenStaggeredRows();
          case "loaded end" -> spacing.loadedEnd();
          case "unloaded end" -> spacing.unloadedEnd();
          case "loaded edge" -> spacing.loadedEdge();
          case "unloaded edge" -> spacing.unloadedEdge();
          case "seam, pulled towards" -> seam(spacing, factor).pulledTowards();
          case "seam, pulled away" -> seam(spacing, factor).pulledAway();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return answer.in(c.lengthUnit());
  }

  private static SeamClearance seam(WoodSpacing spacing, String margin) {
    return SeamClearance.around(Measures.millimetres(6), spacing)
        .withMargin(Measures.millimetres(Double.parseDouble(margin)));
  }

  private static double pilot(ValidationCase c) {
    Fastener fastener = new Fastener(kind(c), c.length("diameter"), c.length("root"));
    Wood wood = Wood.hardwood("any", dry(c.text("G")));
    PilotHole across = PilotHole.acrossLoad(fastener, wood);
    Measure<Length> answer =
        switch (c.text("quantity")) {
          case "pulled out" -> PilotHole.pulledOut(fastener, wood).threadHole();
          case "across, thread" -> across.threadHole();
          case "across, shank" -> across.shankHole();
          case "least" -> across.leastThreadHole();
          case "most" -> across.mostThreadHole();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return answer.in(c.lengthUnit());
  }

  private static double reference(ValidationCase c) {
    return reference(c, kind(c)).in(forceUnit(c));
  }

  private static Measure<Force> reference(ValidationCase c, Kind kind) {
    Wood wood = Wood.softwood("any", dry(c.text("G")));
    return ReferenceWithdrawal.of(Fastener.of(kind, c.length("diameter")), wood)
        .force(c.length("thread"));
  }

  private static double ultimate(ValidationCase c) {
    Kind kind = kind(c);
    Wood wood = Wood.softwood("any", moist(c.text("G")));
    Measure<Force> ultimate =
        UltimateWithdrawal.of(Fastener.of(kind, c.length("diameter")), wood)
            .force(c.length("thread"))
            .likely();
    return c.text("fastener").endsWith("ratio")
        ? ultimate.ratio(reference(c, kind))
        : ultimate.in(forceUnit(c));
  }

  private static double lateral(ValidationCase c) {
    Fastener fastener = Fastener.of(kind(c), c.length("diameter"));
    Measure<Length> depth = c.length("depth");
    Measure<Force> force =
        switch (c.text("quantity")) {
          case "K" -> {
            TwelvePercentGravity gravity = moist(c.text("G12"));
            Wood wood =
                c.text("class").equals("hardwood")
                    ? Wood.hardwood("any", gravity)
                    : Wood.softwood("any", gravity);
            yield LateralHold.of(fastener, wood).force(depth).likely();
          }
          case "allowable" -> AllowableLateral.of(fastener, group(c)).force(depth);
          case "allowable, end grain" ->
              AllowableLateral.of(fastener, group(c)).inEndGrain().force(depth);
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return force.in(forceUnit(c));
  }

  private static AllowableLateral.Group group(ValidationCase c) {
    return AllowableLateral.Group.valueOf(c.text("class"));
  }

  private static double row(ValidationCase c) {
    int count = Integer.parseInt(c.text("count"));
    FastenerRow row =
        c.text("quantity").equals("pulled out")
            ? FastenerRow.pulledOut(count)
            : FastenerRow.alongGrain(
                count, Fastener.of(Kind.LAG_SCREW, c.length("diameter")), c.length("spacing"));
    return row.effectiveNumber().likely().in(ShopUnits.ONE);
  }

  private static Kind kind(ValidationCase c) {
    String text = c.text("fastener");
    return text.startsWith("wood screw")
        ? Kind.WOOD_SCREW
        : text.startsWith("lag screw") ? Kind.LAG_SCREW : Kind.NAIL;
  }

  private static OvenDryGravity dry(String gravity) {
    return OvenDryGravity.of(Double.parseDouble(gravity));
  }

  private static TwelvePercentGravity moist(String gravity) {
    return TwelvePercentGravity.of(Double.parseDouble(gravity));
  }

  private static Unit<Force> forceUnit(ValidationCase c) {
    Unit<Force> unit = FORCES.get(c.text("unit"));
    if (unit == null) {
      throw new IllegalArgumentException("no unit of force " + c.text("unit"));
    }
    return unit;
  }
}
