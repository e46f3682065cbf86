package org.hammerscale.validation;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bend;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.NeutralLine;
import org.hammerscale.bending.Ring;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.bending.UBend;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** Change of direction. */
final class BendingTopics {
  private BendingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("bending/bends", BendingTopics::bend),
        new ValidationTopic("bending/u_bends", BendingTopics::uBend),
        new ValidationTopic("bending/rings_and_eyes", BendingTopics::ringOrEye),
        new ValidationTopic("bending/links_and_ovals", CurveTopics::linkOrOval),
        new ValidationTopic("bending/spirals", CurveTopics::scroll),
        new ValidationTopic("bending/twists", CurveTopics::twist),
        new ValidationTopic("bending/hooks_joggles_coils", CurveTopics::other));
  }

  private static double bend(ValidationCase c) {
    Section section = Section.square(c.length("thickness"));
    NeutralLine line = line(c);
    Bend bend = Bend.of(c.angle("angle"), c.length("radius"), section).with(line);
    String quantity = c.question();
    if (quantity.startsWith("legs ")) {
      String[] legs = quantity.split(" ", -1);
      return bend.cutLength(Measures.length(legs[1] + " mm"), Measures.length(legs[2] + " mm"))
          .in(c.lengthUnit());
    }
    if (quantity.startsWith("angle for ")) {
      return bend.using(Measures.length(quantity.substring(10))).angle().in(ShopUnits.DEGREE);
    }
    return switch (quantity) {
      case "length" -> bend.developedLength().in(c.lengthUnit());
      case "deduction" -> bend.deduction().in(c.lengthUnit());
      case "correction" -> -bend.deduction().in(c.lengthUnit());
      case "with 3 1/2 in and 60° round 5/8 in" ->
          bend.developedLength()
              .add(Measures.inches("3 1/2"))
              .add(
                  Bend.of(Measures.degrees(60), Measures.inches("5/8"), section)
                      .with(line)
                      .developedLength())
              .in(c.lengthUnit());
      case "thickness" -> bend.bentThickness().in(c.lengthUnit());
      case "K" -> line.fraction(c.length("radius"), section);
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static NeutralLine line(ValidationCase c) {
    return switch (c.text("rule")) {
      case "mean" -> NeutralLine.MEAN_LINE;
      case "DIN" -> NeutralLine.DIN_6935;
      case "handbook" -> handbook(c.text("factor"));
      case "K-factor" -> NeutralLine.kFactor(c.number("K"));
      default -> throw new IllegalArgumentException(c.text("rule"));
    };
  }

  private static NeutralLine handbook(String factor) {
    return switch (factor) {
      case "0.55" -> NeutralLine.HANDBOOK_SOFT_COPPER;
      case "0.64" -> NeutralLine.HANDBOOK_SOFT_STEEL;
      case "0.71" -> NeutralLine.HANDBOOK_BRONZE;
      default -> throw new IllegalArgumentException(factor);
    };
  }

  private static double uBend(ValidationCase c) {
    Section section = c.section("section");
    UBend round = UBend.inside(c.length("inside"), section);
    UBend bend =
        switch (c.text("corners")) {
          case "round" -> round;
          case "square" -> round.withSquareCorners();
          default -> round.withCorners(c.length("corners"));
        };
    Measure<Length> length =
        switch (c.question()) {
          case "length" ->
              bend.withLegs(c.length("leg one"), c.length("leg two")).developedLength();
          case "leg for 224 mm" -> bend.using(Measures.millimetres(224)).firstLegOverAll();
          case "mark to mark" ->
              bend.outsideWidth().add(SquareCorner.of(section).markAllowance().multiply(2));
          case "corner" -> SquareCorner.of(section).developedLength();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }

  private static double ringOrEye(ValidationCase c) {
    return c.text("form").equals("ring")
        ? ring(c, Ring.inside(c.length("inside"), c.section("section")))
        : eye(c, Eye.turned(c.length("inside"), c.section("section")));
  }

  private static double ring(ValidationCase c, Ring ring) {
    return switch (c.question()) {
      case "annulus" -> ring.annulus().in(ShopUnits.SQUARE_INCH);
      case "mean line" -> ring.developedLength().in(c.lengthUnit());
      case "old tyre rule" -> ring.lengthByTyreRule().in(c.lengthUnit());
      case "weld of three eighths" ->
          WeldAllowance.THREE_EIGHTHS
              .on(ring.section(), ring.developedLength())
              .likely()
              .in(c.lengthUnit());
      case "length of flat 1 1/2 in wide" ->
          ring.weldless()
              .stock(Section.flat(Measures.inches("1 1/2"), ring.section().width()))
              .likely()
              .in(c.lengthUnit());
      case "cut with the chain-ring weld" ->
          ring.welded(WeldAllowance.CHAIN_RING).cutLength().likely().in(c.lengthUnit());
      case "lap of 150 mm" ->
          ring.lapped(Measures.millimetres(150)).developedLength().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static double eye(ValidationCase c, Eye eye) {
    Measure<Length> length =
        switch (c.question()) {
          case "mean line" -> eye.developedLength();
          case "mean line up to 1/8 in" -> eye.developedLength().upTo(Graduation.EIGHTH);
          case "bend mark" -> Eye.scarfed(eye.insideDiameter(), eye.section()).developedLength();
          case "cut with a weld of one thickness" ->
              eye.welded(WeldAllowance.ONE_THICKNESS).cutLength().likely();
          case "cut with the most customary weld" ->
              eye.welded(WeldAllowance.CUSTOMARY).cutLength().high();
          case "outside diameter" -> eye.outsideDiameter();
          default -> throw new IllegalArgumentException(c.question());
        };
    return length.in(c.lengthUnit());
  }
}
