package org.hammerscale.validation;

import static org.hammerscale.units.Measures.inches;

import java.util.List;
import java.util.function.Function;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.Ring;
import org.hammerscale.forging.DrawOut;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.RivetBlank;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.forging.Upset;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/** What the printed pieces are made of: a bar and the features that a caller would name. */
record PrintedShapes(Section section, List<Feature> features) {
  private static final Section QUARTER = Section.round(inches("1/4"));
  private static final Section FIVE_16 = Section.round(inches("5/16"));
  private static final Section THREE_EIGHTHS = Section.round(inches("3/8"));
  private static final Section SEVEN_16 = Section.round(inches("7/16"));
  private static final Section HALF = Section.round(inches("1/2"));
  private static final Section ONE_SQUARE = Section.square(inches(1));
  private static final Section HALF_FLAT = Section.flat(inches(1), inches("1/2"));

  /** The bar for it, each feature with its allowance. */
  Estimate<Length> bar(Function<Feature, HandAllowance> hand) {
    Feature[] byHand =
        features.stream()
            .map(feature -> with(hand.apply(feature), feature))
            .toArray(Feature[]::new);
    return Piece.of(Bar.of(section, Material.WROUGHT_IRON), byHand).layout().cutLength();
  }

  private static Feature with(HandAllowance hand, Feature feature) {
    return feature instanceof Shoulder shoulder ? shoulder.by(hand) : hand.on(feature);
  }

  private static PrintedShapes shape(Section section, Feature... features) {
    return new PrintedShapes(section, List.of(features));
  }

  private static Plain plain(Section section, double length) {
    return Plain.of(section, inches(length));
  }

  private static Taper point(Section section, double length) {
    return Taper.toPoint(section, inches(length));
  }

  private static Taper taper(Section from, Section to, double length) {
    return Taper.between(from, to, inches(length));
  }

  private static Shoulder shoulder(Section bar, Section setDown, double length) {
    return Shoulder.between(bar, setDown, inches(length));
  }

  /** A link by its length and width outside. */
  private static Link outside(double length, double width, Section rod) {
    double d = rod.width().getValue();
    return Link.inside(inches(length - 2 * d), inches(width - 2 * d), rod);
  }

  static PrintedShapes of(String name) {
    return switch (name) {
      case "draw spike: open eye" -> shape(QUARTER, Eye.turned(inches("3/4"), QUARTER));
      case "open link" -> shape(QUARTER, outside(1.875, 1.25, QUARTER));
      case "chain link" -> shape(THREE_EIGHTHS, outside(2.375, 1.5, THREE_EIGHTHS));
      case "link of 3/8 round" ->
          shape(THREE_EIGHTHS, Link.inside(inches(2), inches("3/4"), THREE_EIGHTHS));
      case "chain ring" -> shape(SEVEN_16, Ring.inside(inches(2), SEVEN_16));
      case "gate hook: eye" -> shape(FIVE_16, Eye.turned(inches("1/2"), FIVE_16));
      case "small gate hook: eye" -> shape(QUARTER, Eye.turned(inches("7/16"), QUARTER));
      case "scratch awl: eye" -> {
        // 1 1/2 in of 3/16 square is 2 1/4 in of the round.
        double d = Math.sqrt(Math.pow(3 / 16d, 2) * 1.5 / 2.25 * 4 / Math.PI);
        Section drawn = Section.round(inches(d));
        yield shape(drawn, Eye.turned(inches("1/2"), drawn));
      }
      case "hay hook: handle" -> shape(SEVEN_16, Plain.of(SEVEN_16, inches(10.5831)));
      case "ring of 10 in inside" -> shape(ONE_SQUARE, Ring.inside(inches(10), ONE_SQUARE));
      case "draw spike: stem with point" ->
          shape(QUARTER, plain(QUARTER, 4.5 - 0.87), point(QUARTER, 0.87));
      case "S-hook blank" ->
          shape(
              QUARTER, point(QUARTER, 1.125).reversed(), plain(QUARTER, 4), point(QUARTER, 1.125));
      case "crowbar handle" ->
          shape(
              Section.square(inches("3/4")),
              plain(Section.octagon(inches("3/4")), 4),
              taper(Section.round(inches("3/4")), Section.round(inches("1/2")), 15));
      case "centre punch" ->
          shape(
              Section.octagon(inches("3/8")),
              taper(Section.octagon(inches(0.27)), Section.octagon(inches("3/8")), 0.5),
              plain(Section.octagon(inches("3/8")), 2.5),
              taper(THREE_EIGHTHS, Section.round(inches(0.19)), 1.5));
      case "hand punch" ->
          shape(
              Section.octagon(inches("5/8")),
              taper(Section.octagon(inches("1/2")), Section.octagon(inches("5/8")), 0.75),
              plain(Section.octagon(inches("5/8")), 6),
              taper(Section.round(inches("5/8")), QUARTER, 3.25));
      case "drawer handle blank" ->
          shape(
              THREE_EIGHTHS,
              taper(Section.round(inches("3/16")), THREE_EIGHTHS, 1.5),
              plain(THREE_EIGHTHS, 2),
              taper(THREE_EIGHTHS, Section.round(inches("3/16")), 1.5));
      case "staple: point" ->
          shape(QUARTER, taper(QUARTER, Section.square(inches("1/4")).edge(), 1.75));
      case "hay hook" ->
          // Centre lines of handle and hook, less the point of 2.4 in, which holds a third.
          shape(SEVEN_16, plain(SEVEN_16, 18.1909 - 0.8), point(SEVEN_16, 2.4));
      case "angle bracket" ->
          shape(
              HALF_FLAT,
              taper(Section.flat(inches("3/4"), inches("1/4")), HALF_FLAT, 4.75),
              taper(HALF_FLAT, Section.flat(inches(1), inches("7/8")), 0.75),
              taper(Section.flat(inches(1), inches("7/8")), HALF_FLAT, 0.75),
              taper(HALF_FLAT, Section.flat(inches("3/4"), inches("1/4")), 4.75));
      case "chain swivel: arm" -> {
        // From the centre of the eye, whose disc is the 1 x 1 in block.
        double arm = 3.5 - Math.sqrt(1 / Math.PI);
        yield shape(HALF_FLAT, shoulder(HALF_FLAT, SEVEN_16, arm));
      }
      case "hardy" -> {
        Section flat = Section.flat(inches(2), inches("7/8"));
        Section shank = Section.square(inches("7/8"));
        yield shape(flat, plain(flat, 1.5), shoulder(flat, shank, 1.875));
      }
      case "flat tongs: lip" ->
          shape(
              Section.square(inches("7/8")),
              taper(
                  Section.flat(inches("1 1/8"), inches("1/2")),
                  Section.flat(inches("1 1/16"), inches("1/4")),
                  1.5));
      case "hasp: middle" -> {
        Section flat = Section.flat(inches(1), inches("3/16"));
        yield shape(flat, shoulder(flat, DrawOut.edging(flat, inches("5/8")).finished(), 3));
      }
      case "gate hook: end for the eye" -> {
        Section square = Section.square(inches("3/8"));
        yield shape(square, shoulder(square, FIVE_16, 2.5));
      }
      case "heavy tongs: rivet" -> {
        // A rivet's blank is no feature: its length is that of a plain stretch.
        Measure<Length> blank =
            RivetBlank.through(inches("1 1/8"), Head.snap(THREE_EIGHTHS)).length();
        yield shape(THREE_EIGHTHS, Plain.of(THREE_EIGHTHS, blank));
      }
      case "bolt with welded head: rod" -> shape(HALF, plain(HALF, 7));
      case "bolt with welded head: head" ->
          shape(HALF, Upset.to(HALF, Section.square(inches("7/8")), inches("1/2")));
      case "bolt: upset end" ->
          shape(HALF, Upset.to(HALF, Section.round(inches("3/4")), inches(1)));
      default -> throw new IllegalArgumentException(name);
    };
  }
}
