package org.hammerscale.validation;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.pounds;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.hammerscale.bending.Chain;
import org.hammerscale.bending.ChainPattern;
import org.hammerscale.bending.HookProportions;
import org.hammerscale.holding.FastenerGroup;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.Bracket;
import org.hammerscale.strength.BracketArm;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.HandbookLoad;
import org.hammerscale.strength.HookSection;
import org.hammerscale.strength.StayedArm;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Hooks, brackets and chains that carry. */
final class CarryTopics {
  private CarryTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("strength/curved_beams", CarryTopics::hook),
        new ValidationTopic("bending/hook_proportions", CarryTopics::towne),
        new ValidationTopic("strength/brackets", CarryTopics::bracket),
        new ValidationTopic("strength/chains", CarryTopics::chain));
  }

  private static double hook(ValidationCase c) {
    HookSection section =
        c.value().has("section")
            ? HookSection.of(c.section("section"))
            : HookSection.narrowing(
                c.length("width inside"), c.length("width outside"), c.length("depth"));
    CarryingHook hook =
        CarryingHook.of(section, c.length("inside radius"))
            .withLoadBeyondCentre(c.length("load beyond the centre"));
    return switch (c.question()) {
      case "neutral radius" -> hook.neutralRadius().in(c.lengthUnit());
      case "eccentricity" ->
          hook.centroidRadius().subtract(hook.neutralRadius()).in(c.lengthUnit());
      case "stress inside" ->
          (c.value().has("couple arm")
                  ? hook.innerStressOfCouple(force(c, "couple force"), c.length("couple arm"))
                  : hook.innerStress(force(c, "load")))
              .in(stressUnit(c));
      case "stress outside" -> hook.outerStress(force(c, "load")).in(stressUnit(c));
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Measure<Force> force(ValidationCase c, String name) {
    return c.value().input(name, Force.class);
  }

  private static Unit<Pressure> stressUnit(ValidationCase c) {
    return c.value().expected(Pressure.class).getUnit();
  }

  private static double towne(ValidationCase c) {
    HookProportions hook = HookProportions.forCapacity(pounds(2000 * c.number("short tons")));
    String asked = c.question();
    return (asked.equals("stock")
            ? hook.stock()
            : hook.size(HookProportions.Size.valueOf(asked.substring("size ".length()))))
        .in(c.lengthUnit());
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double bracket(ValidationCase c) {
    return switch (c.question()) {
      case "pull", "resultant", "foot" -> {
        Quantity<Length>[] heights =
            c.value().inputs().stream()
                .filter(name -> name.startsWith("height "))
                .map(c::length)
                .toArray(Quantity[]::new);
        Bracket bracket =
            Bracket.carrying(force(c, "load"), c.length("distance")).screwedAt(heights);
        yield (c.question().equals("pull")
                ? bracket.pull(1)
                : c.question().equals("foot") ? bracket.footPush() : bracket.resultant(1))
            .in(ShopUnits.NEWTON);
      }
      case "wind" ->
          Bracket.blownOn(
                  c.value().input("pressure", Pressure.class),
                  c.value().input("area", Area.class),
                  c.length("distance"))
              .screwedAt(c.length("height 1"))
              .pull(1)
              .in(ShopUnits.NEWTON);
      case "group" -> {
        Measure<Length> x = c.length("half the pitch along");
        Measure<Length> y = c.length("half the pitch across");
        yield FastenerGroup.at(x.multiply(-1), y.multiply(-1))
            .and(x.multiply(-1), y)
            .and(x, y.multiply(-1))
            .and(x, y)
            .mostLoaded(force(c, "load"), c.length("distance"))
            .in(ShopUnits.KILONEWTON);
      }
      case "sag" -> arm(c).sag(force(c, "load")).in(c.lengthUnit());
      case "sag spread" -> arm(c).sagSpread(force(c, "load")).in(c.lengthUnit());
      case "stress" -> arm(c).stress(force(c, "load")).in(stressUnit(c));
      case "stay" -> stayed(c).stay().in(ShopUnits.NEWTON);
      case "thrust" -> stayed(c).thrust().in(ShopUnits.NEWTON);
      case "pin" -> stayed(c).pinForce().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static BracketArm arm(ValidationCase c) {
    Measure<Length> wide = c.length("width");
    Measure<Length> high = c.length("height");
    Section section =
        high.isGreaterThan(wide) ? Section.onEdge(wide, high) : Section.flat(wide, high);
    return BracketArm.of(section, c.length("length"))
        .withModulus(c.value().input("modulus", Pressure.class));
  }

  private static StayedArm stayed(ValidationCase c) {
    Measure<Length> along = c.length("stay along");
    double slope = Math.atan2(c.number("stay up"), c.number("stay along"));
    return StayedArm.carrying(force(c, "load"), c.length("distance"))
        .heldAt(along, degrees(Math.toDegrees(slope)));
  }

  private static double chain(ValidationCase c) {
    Measure<Length> d = c.length("diameter");
    if (c.value().has("pattern")) {
      ChainPattern pattern =
          c.text("pattern").equals("short link") ? ChainPattern.SHORT_LINK : ChainPattern.STUD_LINK;
      if (c.question().equals("links that reach it")) {
        return Chain.reaching(c.length("length"), pattern.link(d)).links();
      }
      Measure<Length> size =
          switch (c.question()) {
            case "outside length" -> pattern.outsideLength(d);
            case "outside width" -> pattern.outsideWidth(d);
            case "least inside width" -> pattern.leastInsideWidth(d);
            case "length of five links" -> pattern.lengthOf(5, d);
            default -> throw new IllegalArgumentException(c.question());
          };
      return size.in(c.lengthUnit());
    }
    double kilograms = c.constant("rule", HandbookLoad.class).load(d).in(ShopUnits.KILOGRAM);
    return switch (c.unit()) {
      case "kN" -> kilograms * 9.80665 / 1000;
      case "t" -> kilograms / 1000;
      case "short ton" -> kilograms / 0.45359237 / 2000;
      case "ton (2240 lb)" -> kilograms / 0.45359237 / 2240;
      case "cwt (112 lb)" -> kilograms / 0.45359237 / 112;
      default -> throw new IllegalArgumentException(c.unit());
    };
  }
}
