package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.Arrays;
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
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** What stands along a rail and goes round its bars. */
final class RailTopics {
  private RailTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Pickets between posts", "pickets.csv", RailTopics::pickets),
        new ValidationTopic("Codes of guards", "guard_codes.csv", RailTopics::code),
        new ValidationTopic("Collars", "collars.csv", RailTopics::collar),
        new ValidationTopic("Riveted tenons", "tenons.csv", RailTopics::tenon),
        new ValidationTopic("Bundles and baskets", "baskets.csv", RailTopics::basket));
  }

  private static double pickets(ValidationCase c) {
    PicketRow bare = PicketRow.across(c.length("span")).of(c.length("width"));
    Measure<Length> opening = c.length("opening");
    PicketRow row =
        c.text("rule").equals("less") ? bare.stopping(opening) : bare.openingsUpTo(opening);
    PicketLayout layout = row.layout();
    return switch (c.text("quantity")) {
      case "pickets" -> layout.pickets();
      case "gap" -> layout.gap().in(c.lengthUnit());
      case "pitch" -> layout.pitch().in(c.lengthUnit());
      case "gap with one fewer" ->
          row.pickets(layout.pickets() - 1).layout().gap().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double code(ValidationCase c) {
    return GuardCode.valueOf(c.text("constant")).size().in(c.lengthUnit());
  }

  private static double collar(ValidationCase c) {
    int bars = Integer.parseInt(c.text("bars"));
    Collar collar = Collar.aroundBars(bars, c.section("bar"), c.length("thickness"));
    Measure<Length> answer =
        switch (c.text("quantity")) {
          case "butted" -> collar.cutLength().likely();
          case "lapped" -> collar.lapped().cutLength().likely();
          case "mean line" -> collar.meanLine();
          case "full corners" -> collar.fullCorners();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return answer.in(c.lengthUnit());
  }

  private static double tenon(ValidationCase c) {
    List<Measure<Length>> given = given(c, " " + c.text("length"));
    Section round = Section.round(given.get(0));
    Section square = Section.square(given.get(0));
    Section twice = Section.square(given.get(0).multiply(2));
    return switch (c.text("quantity")) {
      case "snap head" -> Head.snap(round).stockLength().in(c.lengthUnit());
      case "one and a half" ->
          RivetBlank.Rule.ONE_AND_A_HALF.length(given.get(1), round).in(c.lengthUnit());
      case "beyond", "tenon" -> {
        Upset head = Head.dome(square, Section.round(given.get(2)), given.get(3));
        Tenon tenon = Tenon.between(twice, square).through(given.get(1), head);
        yield (c.text("quantity").equals("tenon") ? tenon.length() : tenon.lengthBeyond())
            .in(c.lengthUnit());
      }
      case "filling" -> {
        Tenon tenon = Tenon.between(twice, round).through(given.get(1), Head.snap(round));
        yield tenon
            .inHole(Section.round(given.get(2)))
            .lengthBeyond()
            .subtract(tenon.lengthBeyond())
            .in(c.lengthUnit());
      }
      case "bar" ->
          Shoulder.between(square, Section.round(given.get(1)), millimetres(1))
              .by(HandAllowance.NONE)
              .stock(square)
              .likely()
              .in(ShopUnits.MILLIMETRE);
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double basket(ValidationCase c) {
    String[] given = c.text("given").split(";", -1);
    double turns = Double.parseDouble(given[1]);
    List<Measure<Length>> sizes = given(c, " mm");
    Section square = Section.square(sizes.get(0));
    return switch (c.text("quantity")) {
      case "corner" -> Twist.of(turns, sizes.get(2), square).cornerLength().in(c.lengthUnit());
      case "angle" -> Twist.of(turns, sizes.get(2), square).cornerAngle().in(ShopUnits.DEGREE);
      case "pitch" -> Twist.of(turns, sizes.get(2), square).pitch().in(c.lengthUnit());
      case "bundle" -> Basket.inBundle(square, sizes.get(2), turns).in(c.lengthUnit());
      case "rod" -> basket(sizes, turns).rodLength(sizes.get(3)).in(c.lengthUnit());
      case "bulge" -> basket(sizes, turns).bulge(sizes.get(3)).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static Basket basket(List<Measure<Length>> sizes, double turns) {
    return Basket.ofFour(Section.round(millimetres(8)), sizes.get(0), turns)
        .withWeldRadius(sizes.get(2));
  }

  private static List<Measure<Length>> given(ValidationCase c, String unit) {
    return Arrays.stream(c.text("given").split(";", -1))
        .map(text -> Measures.length(text + unit))
        .toList();
  }
}
