package org.hammerscale.validation;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.Coil;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.Joggle;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.Oval;
import org.hammerscale.bending.Scroll;
import org.hammerscale.bending.Twist;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Change of direction along curves; how {@link BendingTopics} answers for them. */
final class CurveTopics {
  private CurveTopics() {}

  static double linkOrOval(ValidationCase c) {
    Section section = c.section("section");
    Measure<Length> length =
        c.text("form").equals("link")
            ? Link.inside(c.length("length"), c.length("width"), section).developedLength()
            : Oval.inside(c.length("length"), c.length("width"), section).developedLength();
    return length.in(c.lengthUnit());
  }

  static double scroll(ValidationCase c) {
    Section section = Section.square(Measures.inches("1/8"));
    if (c.text("curve").equals("quarters")) {
      return c.value().inputs().stream()
          .filter(name -> name.startsWith("radius "))
          .map(name -> c.length(name).subtract(Measures.inches(1 / 16d)))
          .map(inside -> Bend.of(Measures.degrees(90), inside, section).developedLength())
          .mapToDouble(length -> length.in(ShopUnits.INCH))
          .sum();
    }
    double turns = c.number("turns");
    Scroll scroll =
        switch (c.text("curve")) {
          case "archimedean" ->
              Scroll.archimedean(c.length("inner"), c.length("outer"), turns, section);
          case "logarithmic" ->
              Scroll.logarithmic(c.length("inner"), c.length("outer"), turns, section);
          case "involute" -> Scroll.involute(c.length("inner"), turns, section);
          default -> throw new IllegalArgumentException(c.text("curve"));
        };
    return switch (c.question()) {
      case "length" -> scroll.developedLength().in(ShopUnits.INCH);
      case "mean radius length" -> scroll.meanRadiusLength().in(ShopUnits.INCH);
      case "outer radius" -> scroll.outerRadius().in(ShopUnits.INCH);
      case "growth" -> growth(scroll);
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double growth(Scroll scroll) {
    return scroll.working().steps().stream()
        .filter(step -> step.symbol().equals("k"))
        .findFirst()
        .orElseThrow()
        .value()
        .getValue();
  }

  static double twist(ValidationCase c) {
    Twist twist = Twist.of(c.number("turns"), c.length("length"), c.section("section"));
    return switch (c.question()) {
      case "pitch" -> twist.pitch().in(c.lengthUnit());
      case "corner radius" -> twist.cornerRadius().in(c.lengthUnit());
      case "corner length" -> twist.cornerLength().in(c.lengthUnit());
      case "corner angle" -> twist.cornerAngle().in(ShopUnits.DEGREE);
      case "corner stretch" -> twist.cornerStretch();
      case "length if fibres keep theirs" -> orMinusOne(c, twist.lengthIfFibresKept());
      case "length if corners keep theirs" -> orMinusOne(c, twist.lengthIfCornersKept());
      case "shortening" -> twist.developedLength().subtract(twist.reach()).in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double orMinusOne(ValidationCase c, Optional<Measure<Length>> length) {
    return length.map(measure -> measure.in(c.lengthUnit())).orElse(-1.0);
  }

  static double other(ValidationCase c) {
    Section section = c.section("section");
    Measure<Length> length =
        switch (c.text("form") + ", " + c.question()) {
          case "hook, length" ->
              Hook.open(c.length("inside"), section).withTip(c.length("tip")).developedLength();
          case "hook, tip of 6 in" ->
              Hook.open(c.length("inside"), section).using(Measures.inches(6)).tip();
          case "coil, length" -> coil(c, section).developedLength();
          case "joggle, length" -> joggle(c, section).developedLength();
          case "joggle, run" -> joggle(c, section).reach();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }

  private static Coil coil(ValidationCase c, Section section) {
    return Coil.around(c.length("mandrel"), c.number("turns"), c.length("pitch"), section);
  }

  private static Joggle joggle(ValidationCase c, Section section) {
    return Joggle.by(c.length("offset"), c.angle("angle"), c.length("inside radius"), section);
  }
}
