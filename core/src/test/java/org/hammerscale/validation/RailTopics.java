package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Basket;
import org.hammerscale.bending.Collar;
import org.hammerscale.bending.Twist;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.RivetBlank;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Tenon;
import org.hammerscale.forging.Upset;
import org.hammerscale.spacing.GuardCode;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What stands along a rail and goes round its bars. */
final class RailTopics {
  private RailTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("spacing/pickets", RailTopics::pickets),
        new ValidationTopic("spacing/guard_codes", RailTopics::code),
        new ValidationTopic("bending/collars", RailTopics::collar),
        new ValidationTopic("forging/tenons", RailTopics::tenon),
        new ValidationTopic("bending/baskets", RailTopics::basket));
  }

  private static double pickets(ValidationCase c) {
    PicketRow bare = PicketRow.across(c.length("span")).of(c.length("width"));
    Measure<Length> opening = c.length("opening");
    PicketRow row =
        c.text("rule").equals("less") ? bare.stopping(opening) : bare.openingsUpTo(opening);
    PicketLayout layout = row.layout();
    return switch (c.question()) {
      case "pickets" -> layout.pickets();
      case "gap" -> layout.gap().in(c.lengthUnit());
      case "pitch" -> layout.pitch().in(c.lengthUnit());
      case "gap with one fewer" ->
          row.pickets(layout.pickets() - 1).layout().gap().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double code(ValidationCase c) {
    return c.constant("rule", GuardCode.class).size().in(c.lengthUnit());
  }

  private static double collar(ValidationCase c) {
    int bars = c.count("bars");
    Collar collar = Collar.aroundBars(bars, c.section("bar"), c.length("thickness"));
    Measure<Length> answer =
        switch (c.question()) {
          case "butted" -> collar.cutLength().likely();
          case "lapped" -> collar.lapped().cutLength().likely();
          case "mean line" -> collar.meanLine();
          case "full corners" -> collar.fullCorners();
          default -> throw new IllegalArgumentException(c.question());
        };
    return answer.in(c.lengthUnit());
  }

  private static double tenon(ValidationCase c) {
    return switch (c.question()) {
      case "snap head" ->
          Head.snap(Section.round(c.length("diameter"))).stockLength().in(c.lengthUnit());
      case "one and a half" ->
          RivetBlank.Rule.ONE_AND_A_HALF
              .length(c.length("grip"), Section.round(c.length("diameter")))
              .in(c.lengthUnit());
      case "beyond", "tenon" -> {
        Section square = Section.square(c.length("side"));
        Upset head =
            Head.dome(square, Section.round(c.length("head diameter")), c.length("head height"));
        Tenon tenon = Tenon.between(twice(c, "side"), square).through(c.length("plate"), head);
        yield (c.question().equals("tenon") ? tenon.length() : tenon.lengthBeyond())
            .in(c.lengthUnit());
      }
      case "filling" -> {
        Section round = Section.round(c.length("diameter"));
        Tenon tenon =
            Tenon.between(twice(c, "diameter"), round).through(c.length("grip"), Head.snap(round));
        yield tenon
            .inHole(Section.round(c.length("hole")))
            .lengthBeyond()
            .subtract(tenon.lengthBeyond())
            .in(c.lengthUnit());
      }
      case "bar" -> {
        Section square = Section.square(c.length("side"));
        yield Shoulder.between(square, Section.round(c.length("tenon")), millimetres(1))
            .by(HandAllowance.NONE)
            .stock(square)
            .likely()
            .in(ShopUnits.MILLIMETRE);
      }
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Section twice(ValidationCase c, String size) {
    return Section.square(c.length(size).multiply(2));
  }

  private static double basket(ValidationCase c) {
    double turns = c.number("turns");
    return switch (c.question()) {
      case "corner" -> twist(c).cornerLength().in(c.lengthUnit());
      case "angle" -> twist(c).cornerAngle().in(ShopUnits.DEGREE);
      case "pitch" -> twist(c).pitch().in(c.lengthUnit());
      case "bundle" ->
          Basket.inBundle(Section.square(c.length("square")), c.length("length"), turns)
              .in(c.lengthUnit());
      case "rod" -> opened(c).rodLength(c.length("radius at the belly")).in(c.lengthUnit());
      case "bulge" -> opened(c).bulge(c.length("rod")).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Twist twist(ValidationCase c) {
    return Twist.of(c.number("turns"), c.length("length"), Section.square(c.length("square")));
  }

  private static Basket opened(ValidationCase c) {
    return Basket.ofFour(Section.round(millimetres(8)), c.length("height"), c.number("turns"))
        .withWeldRadius(c.length("radius at the weld"));
  }
}
