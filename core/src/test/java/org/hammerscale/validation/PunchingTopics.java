package org.hammerscale.validation;

import java.util.List;
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
        new ValidationTopic("punching/slits", PunchingTopics::slit),
        new ValidationTopic("punching/holes", PunchingTopics::hole));
  }

  private static double slit(ValidationCase c) {
    Measure<Length> length =
        switch (c.question()) {
          case "half the way round" -> Slit.halfWayRound(hole(c, "hole")).length();
          case "shop rule" -> Slit.byShopRule(hole(c, "hole")).length();
          case "round hole from the slit" -> Slit.of(c.length("slit")).roundHole().length();
          case "square hole from the slit" -> Slit.of(c.length("slit")).squareHole().length();
          case "slot when straightened" -> Slit.of(c.length("slit")).straightened().likely();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }

  private static double hole(ValidationCase c) {
    Section bar = c.section("bar");
    Hole hole = hole(c, "hole");
    return switch (c.question()) {
      case "full slug" -> PunchedHole.through(bar, hole).fullSlug().in(c.volumeUnit());
      case "slug a third as thick as the bar" ->
          PunchedHole.through(bar, hole).slug().likely().in(c.volumeUnit());
      case "width over the eye, drifted" ->
          DriftedHole.through(bar, hole).widthOverEye().in(c.lengthUnit());
      case "metal of a flat eye" -> eye(c, bar, hole).metalKept().likely().in(c.volumeUnit());
      case "disc before slitting" -> eye(c, bar, hole).discBefore().likely().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  /** An eye as thick as the bar that it ends. */
  private static FlatEye eye(ValidationCase c, Section bar, Hole hole) {
    return FlatEye.drifted(c.length("outside"), bar.thickness(), hole);
  }

  private static Hole hole(ValidationCase c, String name) {
    return switch (c.text(name)) {
      case "round" -> Hole.round(c.length(name + " across"));
      case "square" -> Hole.square(c.length(name + " across"));
      case "mortise" -> Hole.mortise(c.length(name + " length"), c.length(name + " width"));
      case "oval" -> Hole.oval(c.length(name + " length"), c.length(name + " width"));
      default -> throw new IllegalArgumentException("no shape " + c.text(name));
    };
  }
}
