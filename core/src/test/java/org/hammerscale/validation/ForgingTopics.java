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
import org.hammerscale.units.ShopUnits;

/** Change of section. */
final class ForgingTopics {
  private ForgingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("forging/tapers", ForgingTopics::taper),
        new ValidationTopic("forging/drawing", ForgingTopics::drawing),
        new ValidationTopic("forging/spread", ForgingTopics::spread),
        new ValidationTopic("forging/ends", ForgingTopics::end),
        new ValidationTopic("forging/upsetting", UpsetTopics::upset),
        new ValidationTopic("forging/rivets", UpsetTopics::rivet));
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
    return switch (c.question()) {
      case "coefficient" -> law.coefficient(bar);
      case "width" -> spread.width().likely().in(ShopUnits.MILLIMETRE);
      case "times wider" -> spread.width().likely().ratio(bar.width());
      case "times longer" -> spread.timesLonger();
      case "volume after ÷ before" ->
          spread.timesLonger() * spread.section().area().ratio(bar.area());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double end(ValidationCase c) {
    Feature end = madeEnd(c, c.section("neck"));
    return c.question().equals("length")
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
      case "measured" -> End.measured(neck, widths(c));
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

  /** The width at each station, a distance from the neck. */
  private static Map<Measure<Length>, Measure<Length>> widths(ValidationCase c) {
    Map<Measure<Length>, Measure<Length>> widths = new HashMap<>();
    for (int station = 1; c.value().has("station " + station); station++) {
      widths.put(c.length("station " + station), c.length("width " + station));
    }
    return widths;
  }

  private static Section flat(ValidationCase c, String width, String thickness) {
    return Section.flat(c.length(width), c.length(thickness));
  }

  /** As in other topics, and {@code sharp} for a chisel edge. */
  private static Section section(ValidationCase c, String name) {
    return c.text(name).equals("sharp")
        ? Section.square(c.length(name + " across")).edge()
        : c.section(name);
  }
}
