package org.hammerscale.validation;

import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.piece.EndTrials;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialLog;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** What finished pieces tell of the next. */
final class TrialTopics {
  private static final Section BAR =
      Section.flat(Measures.millimetres(25), Measures.millimetres(6));

  private TrialTopics() {}

  static List<ValidationTopic> all() {
    return List.of(new ValidationTopic("piece/next_cut", TrialTopics::answer));
  }

  private static double answer(ValidationCase c) {
    double odds = c.number("odds");
    return switch (c.question()) {
      case "Student's t" -> student(c.count("freedom"), odds);
      case "bound by the pieces alone" ->
          took(TrialLog.of(Piece.of(steel(), Plain.of(BAR, c.length("piece 1"))).layout()), c)
              .classicalBound(odds)
              .in(c.lengthUnit());
      case "bound by the pieces and the book" ->
          took(
                  TrialLog.of(Piece.of(steel(), Plain.of(BAR, c.length("book"))).layout())
                      .withMeanWorth(c.number("mean worth"))
                      .withSpreadWorth(c.number("spread worth"))
                      .withSpread(c.length("book spread")),
                  c)
              .bound(odds)
              .in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.question());
    };
  }

  private static Bar steel() {
    return Bar.of(BAR, Material.MILD_STEEL);
  }

  /** The pieces are written down in the unit of the case. */
  private static EndTrials took(TrialLog log, ValidationCase c) {
    TrialLog filled = log;
    for (int i = 1; !c.text("piece " + i).isEmpty(); i++) {
      filled = filled.with(took(c.length("piece " + i)));
    }
    return filled.at(PieceEnd.LAST);
  }

  private static Trial took(Measure<Length> length) {
    return Trial.cut(length).off(PieceEnd.LAST, length.withValue(0));
  }

  /**
   * Of n = ν + 1 pieces all but one take 400 mm and that one √n mm more: their standard deviation
   * is 1 mm, their mean 400 mm + 1/√n, and the bound lies t √(1 + 1/n) above it.
   */
  private static double student(int freedom, double odds) {
    Unit<Length> unit = ShopUnits.MILLIMETRE;
    int n = freedom + 1;
    TrialLog log =
        TrialLog.of(Piece.of(steel(), Plain.of(BAR, Measure.of(400, unit))).layout())
            .with(took(Measure.of(400 + Math.sqrt(n), unit)));
    for (int i = 1; i < n; i++) {
      log = log.with(took(Measure.of(400, unit)));
    }
    double above = log.at(PieceEnd.LAST).classicalBound(odds).in(unit) - (400 + 1 / Math.sqrt(n));
    return above / Math.sqrt(1 + 1.0 / n);
  }
}
