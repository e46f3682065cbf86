package org.hammerscale.validation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Length;
import org.hammerscale.forging.DrawOut;
import org.hammerscale.forging.End;
import org.hammerscale.forging.Spread;
import org.hammerscale.forging.SpreadLaw;
import org.hammerscale.forging.Taper;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Change of section. */
final class ForgingTopics {
  private ForgingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Tapers", "tapers.csv", ForgingTopics::taper),
        new ValidationTopic("Drawing out", "drawing.csv", ForgingTopics::drawing),
        new ValidationTopic("Spread", "spread.csv", ForgingTopics::spread),
        new ValidationTopic("Decorative ends", "ends.csv", ForgingTopics::end),
        new ValidationTopic("Upsetting and heads", "upsetting.csv", UpsetTopics::upset),
        new ValidationTopic("Rivets", "rivets.csv", UpsetTopics::rivet));
  }

  private static double taper(ValidationCase c) {
    Section from = section(c, "from");
    Section to = c.text("to").equals("point") ? from.point() : section(c, "to");
    return Taper.between(from, to, c.length("length")).metalKept().likely().in(c.volumeUnit());
  }

  private static double drawing(ValidationCase c) {
    return DrawOut.between(section(c, "from"), section(c, "to"))
        .lengthFrom(c.length("stock"))
        .in(c.lengthUnit());
  }

  private static double spread(ValidationCase c) {
    Section bar = flat(c, "width", "before");
    SpreadLaw law =
        switch (c.text("law")) {
          case "tomlinson" -> SpreadLaw.tomlinsonStringer(c.length("tool"));
          case "wusatowski" -> SpreadLaw.wusatowski(c.length("tool"));
          case "measured" -> SpreadLaw.measured(bar, flat(c, "tool", "after"));
          default -> throw new IllegalArgumentException(c.text("law"));
        };
    Spread spread = Spread.thinning(bar, c.length("after"), law);
    return switch (c.text("quantity")) {
      case "coefficient" -> law.coefficient(bar);
      case "width" -> spread.width().likely().in(ShopUnits.MILLIMETRE);
      case "times wider" -> spread.width().likely().ratio(bar.width());
      case "times longer" -> spread.timesLonger();
      case "volume after ÷ before" ->
          spread.timesLonger() * spread.section().area().ratio(bar.area());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double end(ValidationCase c) {
    Feature end = madeEnd(c, c.section("neck"));
    return c.text("quantity").equals("length")
        ? end.reach().in(c.lengthUnit())
        : end.metalKept().likely().in(c.volumeUnit());
  }

  private static Feature madeEnd(ValidationCase c, Section neck) {
    return switch (c.text("end")) {
      case "penny" -> End.penny(neck, c.length("width"));
      case "bean" -> End.bean(neck, c.length("width"), c.length("length"));
      case "spear" -> End.spear(neck, c.length("width"), c.length("length"));
      case "fishtail" -> End.fishtail(neck, c.length("width"), c.length("length"));
      case "rat-tail" -> End.ratTail(neck, c.length("length"));
      case "measured" -> End.measured(neck, widths(c.text("widths")));
      case "parabola" ->
          End.along(
              neck,
              c.length("length"),
              x -> c.length("width").multiply(1 - Math.pow(x.ratio(c.length("length")), 2)));
      case "sine" ->
          End.along(
              neck,
              c.length("length"),
              x -> c.length("width").multiply(Math.sin(Math.PI * x.ratio(c.length("length")))));
      case "penny function" -> pennyFunction(neck, c.length("width").divide(2));
      default -> throw new IllegalArgumentException(c.text("end"));
    };
  }

  /** The chord of a disc of radius R at a distance x from the neck. */
  private static End pennyFunction(Section neck, Measure<Length> radius) {
    double r = radius.getValue();
    double before = Math.sqrt(r * r - Math.pow(neck.width().in(radius.getUnit()) / 2, 2));
    return End.along(
        neck,
        radius.withValue(r + before),
        x -> {
          double off = x.getValue() - before;
          return radius.withValue(2 * Math.sqrt(Math.max(0, r * r - off * off)));
        });
  }

  /** Written as {@code 20 mm: 50 mm; 60 mm: 44 mm}, distance first. */
  private static Map<Measure<Length>, Measure<Length>> widths(String text) {
    Map<Measure<Length>, Measure<Length>> widths = new HashMap<>();
    for (String pair : text.split("; ", -1)) {
      String[] sizes = pair.split(": ", 2);
      widths.put(Measures.length(sizes[0]), Measures.length(sizes[1]));
    }
    return widths;
  }

  private static Section flat(ValidationCase c, String width, String thickness) {
    return Section.flat(c.length(width), c.length(thickness));
  }

  /** As in other files, and {@code sharp 1 in} for a chisel edge of that width. */
  private static Section section(ValidationCase c, String column) {
    String[] words = c.text(column).split(" ", 2);
    return words[0].equals("sharp")
        ? Section.square(Measures.length(words[1])).edge()
        : c.section(column);
  }
}
