package org.hammerscale.validation;

import javax.measure.quantity.Length;
import org.hammerscale.forging.BoltHead;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.RivetBlank;
import org.hammerscale.forging.Upset;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** What is jumped up: swellings, heads, rivets. */
final class UpsetTopics {
  private UpsetTopics() {}

  static double upset(ValidationCase c) {
    Section bar = c.section("bar");
    if (c.text("shape").equals("coach")) {
      // A plain square neck of a bar's thickness, less the round shank that it stands on.
      double neck = c.length("neck").in(c.lengthUnit());
      double square = Section.square(bar.width()).area().ratio(bar.area()) * neck;
      return Head.dome(bar, c.section("base"), c.length("height")).stockLength().in(c.lengthUnit())
          + square
          - neck;
    }
    Upset upset = made(c, bar);
    return switch (c.question()) {
      case "bar used" -> upset.stockLength().in(c.lengthUnit());
      case "bar used up to 1/8 in" ->
          upset.stockLength().upTo(Graduation.EIGHTH).in(c.lengthUnit());
      case "least bar" -> upset.stock(bar).low().in(c.lengthUnit());
      case "most bar" -> upset.stock(bar).high().in(c.lengthUnit());
      case "length" -> upset.reach().in(c.lengthUnit());
      case "width" -> upset.widest().width().in(c.lengthUnit());
      case "volume" -> upset.metalKept().likely().in(c.volumeUnit());
      case "longest free" -> upset.longestFree().in(c.lengthUnit());
      case "longest beyond the die" -> upset.longestBeyondDie().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Upset made(ValidationCase c, Section bar) {
    return switch (c.text("shape")) {
      case "jumped" -> Upset.using(c.length("bar length"), bar, c.section("to"));
      case "prism" -> Upset.to(bar, c.section("section"), c.length("length"));
      case "flare" -> Upset.flared(bar, c.section("end"), c.length("length"));
      case "barrel" -> Upset.barrelled(bar, c.section("middle"), c.length("length"));
      case "dome" -> Head.dome(bar, c.section("base"), c.length("height"));
      case "ball" -> Head.ball(bar, c.length("diameter"));
      case "tapered" -> Head.tapered(bar, c.section("base"), c.section("top"), c.length("height"));
      case "rose" ->
          Head.tapered(bar, c.section("base"), c.section("base").point(), c.length("height"));
      case "countersunk" -> Head.countersunk(bar, c.length("diameter"), c.angle("angle"));
      case "overgrip" -> Head.countersunkOverGrip(bar, c.length("diameter"), c.angle("angle"));
      case "snap" -> Head.snap(bar);
      case "pan" -> Head.pan(bar);
      case "nail" -> Head.nail(bar);
      case "square half" -> BoltHead.HALF_WIDTH.square(bar);
      case "square shank" -> BoltHead.SHANK_DIAMETER.square(bar);
      case "hexagon shank" -> BoltHead.SHANK_DIAMETER.hexagon(bar);
      default -> throw new IllegalArgumentException(c.text("shape"));
    };
  }

  static double rivet(ValidationCase c) {
    Section shank = Section.round(c.length("diameter"));
    Upset head =
        switch (c.text("head")) {
          case "snap" -> Head.snap(shank);
          case "countersunk" ->
              Head.countersunk(shank, shank.width().multiply(1.5), Measures.degrees(90));
          case "overgrip" ->
              Head.countersunkOverGrip(shank, shank.width().multiply(1.5), Measures.degrees(90));
          default -> throw new IllegalArgumentException(c.text("head"));
        };
    RivetBlank tight = RivetBlank.through(c.length("grip"), head);
    Measure<Length> answer =
        switch (c.question()) {
          case "length" -> tight.inHole(c.length("hole")).length();
          case "hole filling" -> tight.inHole(c.length("hole")).length().subtract(tight.length());
          case "1.5 d rule" -> RivetBlank.Rule.ONE_AND_A_HALF.length(c.length("grip"), shank);
          case "1.5 d rule less grip" ->
              RivetBlank.Rule.ONE_AND_A_HALF
                  .length(c.length("grip"), shank)
                  .subtract(c.length("grip"));
          case "1.1 s + 1.3 d rule" -> RivetBlank.Rule.FILLED_HOLE.length(c.length("grip"), shank);
          default -> throw new IllegalArgumentException(c.question());
        };
    return answer.in(c.lengthUnit());
  }
}
