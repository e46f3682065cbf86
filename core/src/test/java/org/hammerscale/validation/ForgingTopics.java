package org.hammerscale.validation;

import java.util.List;
import org.hammerscale.forging.DrawOut;
import org.hammerscale.forging.Spread;
import org.hammerscale.forging.SpreadLaw;
import org.hammerscale.forging.Taper;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Change of section. */
final class ForgingTopics {
  private ForgingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Tapers", "tapers.csv", ForgingTopics::taper),
        new ValidationTopic("Drawing out", "drawing.csv", ForgingTopics::drawing),
        new ValidationTopic("Spread", "spread.csv", ForgingTopics::spread));
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
