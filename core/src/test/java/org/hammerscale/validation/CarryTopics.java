package org.hammerscale.validation;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsForce;

import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
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
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Hooks, brackets and chains that carry. */
final class CarryTopics {
  private CarryTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Hooks as curved beams", "curved_beams.csv", CarryTopics::hook),
        new ValidationTopic("Proportions of old hooks", "hook_proportions.csv", CarryTopics::towne),
        new ValidationTopic("Brackets", "brackets.csv", CarryTopics::bracket),
        new ValidationTopic("Chains", "chains.csv", CarryTopics::chain));
  }

  private static double hook(ValidationCase c) {
    Unit<Length> unit = c.text("length").equals("in") ? ShopUnits.INCH : ShopUnits.MILLIMETRE;
    double[] sizes =
        Arrays.stream(c.text("section").replace("round ", "").split(" ", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
    Measure<Length> one = Measure.of(1, unit);
    HookSection section =
        sizes.length == 1
            ? HookSection.of(Section.round(one.withValue(sizes[0])))
            : HookSection.narrowing(
                one.withValue(sizes[0]), one.withValue(sizes[1]), one.withValue(sizes[2]));
    CarryingHook hook =
        CarryingHook.of(section, one.withValue(number(c, "inside")))
            .withLoadBeyondCentre(one.withValue(number(c, "beyond")));
    return switch (c.text("quantity")) {
      case "neutral radius" -> hook.neutralRadius().in(c.lengthUnit());
      case "eccentricity" -> hook.centroidRadius().subtract(hook.neutralRadius()).in(unit);
      case "stress inside" ->
          (c.text("couple").isEmpty()
                  ? hook.innerStress(load(c))
                  : hook.innerStressOfCouple(newtons(0.12), Measures.metres(1)))
              .in(c.pressureUnit());
      case "stress outside" -> hook.outerStress(load(c)).in(c.pressureUnit());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static Measure<Force> load(ValidationCase c) {
    String[] words = c.text("load").split(" ", -1);
    double value = Double.parseDouble(words[0]);
    return words[1].equals("N") ? newtons(value) : poundsForce(value);
  }

  private static double towne(ValidationCase c) {
    HookProportions hook = HookProportions.forCapacity(pounds(2000 * number(c, "tons")));
    String quantity = c.text("quantity");
    return (quantity.equals("stock")
            ? hook.stock()
            : hook.size(HookProportions.Size.valueOf(quantity.substring("size ".length()))))
        .in(c.lengthUnit());
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static double bracket(ValidationCase c) {
    String[] given = c.text("given").split(";", -1);
    double first = Double.parseDouble(given[0]);
    double second = Double.parseDouble(given[1]);
    return switch (c.text("quantity")) {
      case "pull", "resultant", "foot" -> {
        Quantity<Length>[] heights =
            Arrays.stream(given[2].split(" ", -1))
                .map(text -> millimetres(Double.parseDouble(text)))
                .toArray(Quantity[]::new);
        Bracket bracket = Bracket.carrying(newtons(first), millimetres(second)).screwedAt(heights);
        yield (c.text("quantity").equals("pull")
                ? bracket.pull(1)
                : c.text("quantity").equals("foot") ? bracket.footPush() : bracket.resultant(1))
            .in(ShopUnits.NEWTON);
      }
      case "wind" ->
          Bracket.blownOn(
                  megapascals(first / 1000),
                  Measure.of(second, ShopUnits.SQUARE_METRE),
                  millimetres(Double.parseDouble(given[2])))
              .screwedAt(Measures.metres(1))
              .pull(1)
              .in(ShopUnits.NEWTON);
      case "group" ->
          FastenerGroup.at(millimetres(-40), millimetres(-30))
              .and(millimetres(-40), millimetres(30))
              .and(millimetres(40), millimetres(-30))
              .and(millimetres(40), millimetres(30))
              .mostLoaded(newtons(first), millimetres(second))
              .in(ShopUnits.KILONEWTON);
      case "sag" -> arm(given).sag(newtons(first)).in(c.lengthUnit());
      case "sag spread" -> arm(given).sagSpread(newtons(first)).in(c.lengthUnit());
      case "stress" -> arm(given).stress(newtons(first)).in(c.pressureUnit());
      case "stay" -> stayed(given).stay().in(ShopUnits.NEWTON);
      case "thrust" -> stayed(given).thrust().in(ShopUnits.NEWTON);
      case "pin" -> stayed(given).pinForce().in(ShopUnits.NEWTON);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static BracketArm arm(String[] given) {
    Measure<Length> wide = millimetres(at(given, 2));
    Measure<Length> high = millimetres(at(given, 3));
    Section section =
        high.isGreaterThan(wide) ? Section.onEdge(wide, high) : Section.flat(wide, high);
    return BracketArm.of(section, millimetres(at(given, 1)))
        .withModulus(megapascals(1000 * at(given, 4)));
  }

  private static StayedArm stayed(String[] given) {
    return StayedArm.carrying(newtons(at(given, 0)), millimetres(at(given, 1)))
        .heldAt(
            millimetres(at(given, 2)),
            degrees(Math.toDegrees(Math.atan2(at(given, 3), at(given, 2)))));
  }

  private static double at(String[] given, int i) {
    return Double.parseDouble(given[i]);
  }

  private static double chain(ValidationCase c) {
    Measure<Length> d = c.length("diameter");
    if (c.text("rule").isEmpty()) {
      ChainPattern pattern =
          c.text("stud").isEmpty() ? ChainPattern.SHORT_LINK : ChainPattern.STUD_LINK;
      Measure<Length> size =
          switch (c.text("pattern")) {
            case "length" -> pattern.outsideLength(d);
            case "width" -> pattern.outsideWidth(d);
            case "inside" -> pattern.leastInsideWidth(d);
            case "five links" -> pattern.lengthOf(5, d);
            default -> throw new IllegalArgumentException(c.text("pattern"));
          };
      return size.in(c.lengthUnit());
    }
    double kilograms = HandbookLoad.valueOf(c.text("rule")).load(d).in(ShopUnits.KILOGRAM);
    return switch (c.text("unit")) {
      case "kN" -> kilograms * 9.80665 / 1000;
      case "t" -> kilograms / 1000;
      case "short ton" -> kilograms / 0.45359237 / 2000;
      case "ton (2240 lb)" -> kilograms / 0.45359237 / 2240;
      case "cwt (112 lb)" -> kilograms / 0.45359237 / 112;
      default -> throw new IllegalArgumentException(c.text("unit"));
    };
  }

  private static double number(ValidationCase c, String column) {
    return Double.parseDouble(c.text(column));
  }
}
