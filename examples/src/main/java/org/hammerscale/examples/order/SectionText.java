package org.hammerscale.examples.order;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;

/** A section as a smith writes it: {@code 40 mm x 6 mm flat}, {@code 1/2 in round}. */
public final class SectionText {
  public static final String ACCEPTED =
      "two sizes and flat, or one and square, round, hexagon, octagon or half round, as 40 mm x 6 mm"
          + " flat";

  private static final Pattern SHAPE =
      Pattern.compile("(.+?) +(flat|square|half round|round|hexagon|octagon)");

  private SectionText() {}

  /**
   * Reads it.
   *
   * @throws IllegalArgumentException if it is no section
   */
  public static Section parse(String text) {
    Matcher matcher = SHAPE.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      throw new IllegalArgumentException("\"" + text + "\" is no section");
    }
    String[] sizes = matcher.group(1).split(" *[x×] *", -1);
    String shape = matcher.group(2);
    if (sizes.length != (shape.equals("flat") ? 2 : 1)) {
      throw new IllegalArgumentException("\"" + text + "\" has " + sizes.length + " sizes");
    }
    var first = Measures.length(sizes[0]);
    return switch (shape) {
      case "flat" -> Section.flat(first, Measures.length(sizes[1]));
      case "square" -> Section.square(first);
      case "round" -> Section.round(first);
      case "hexagon" -> Section.hexagon(first);
      case "octagon" -> Section.octagon(first);
      default -> Section.halfRound(first);
    };
  }
}
