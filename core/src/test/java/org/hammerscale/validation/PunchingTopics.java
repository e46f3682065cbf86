package org.hammerscale.validation;

import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.FlatEye;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.punching.Slit;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** Opening the bar. */
final class PunchingTopics {
  private PunchingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Slits for drifted holes", "slits.csv", PunchingTopics::slit),
        new ValidationTopic("Holes in the bar", "holes.csv", PunchingTopics::hole));
  }

  private static double slit(ValidationCase c) {
    Measure<Length> length =
        switch (c.text("quantity")) {
          case "half the way round" -> Slit.halfWayRound(hole(c, "hole")).length();
          case "shop rule" -> Slit.byShopRule(hole(c, "hole")).length();
          case "round hole from the slit" -> Slit.of(c.length("slit")).roundHole().length();
          case "square hole from the slit" -> Slit.of(c.length("slit")).squareHole().length();
          case "slot when straightened" -> Slit.of(c.length("slit")).straightened().likely();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return length.in(c.lengthUnit());
  }

  private static double hole(ValidationCase c) {
    Section bar = c.section("bar");
    Hole hole = hole(c, "hole");
    return switch (c.text("quantity")) {
      case "full slug" -> PunchedHole.through(bar, hole).fullSlug().in(c.volumeUnit());
      case "slug a third as thick as the bar" ->
          PunchedHole.through(bar, hole).slug().likely().in(c.volumeUnit());
      case "width over the eye, drifted" ->
          DriftedHole.through(bar, hole).widthOverEye().in(c.lengthUnit());
      case "metal of a flat eye" -> eye(c, bar, hole).metalKept().likely().in(c.volumeUnit());
      case "disc before slitting" -> eye(c, bar, hole).discBefore().likely().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  /** An eye as thick as the bar that it ends. */
  private static FlatEye eye(ValidationCase c, Section bar, Hole hole) {
    return FlatEye.drifted(c.length("outside"), bar.thickness(), hole);
  }

  /** A hole written as {@code round 1/2 in} or {@code mortise 3/4 in 1/4 in}. */
  private static Hole hole(ValidationCase c, String column) {
    String text = c.text(column);
    String shape = text.substring(0, text.indexOf(' '));
    // A hole is written as a section is: the sizes one behind the other.
    Quantity<Length> first = sizes(text).width();
    return switch (shape) {
      case "round" -> Hole.round(first);
      case "square" -> Hole.square(first);
      case "mortise" -> Hole.mortise(first, sizes(text).thickness());
      case "oval" -> Hole.oval(first, sizes(text).thickness());
      default -> throw new IllegalArgumentException("no shape " + shape);
    };
  }

  private static Section sizes(String text) {
    String[] words = text.split(" ", 2);
    String kind = words[0].equals("mortise") || words[0].equals("oval") ? "flat" : words[0];
    return new ValidationCase(Map.of("sizes", kind + " " + words[1])).section("sizes");
  }
}
