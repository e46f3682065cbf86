package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.List;
import org.hammerscale.cutting.Aim;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/** Which bars to take, and what is left over. */
final class CuttingTopics {
  private CuttingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Pieces cut from bars", "bar_jobs.csv", CuttingTopics::plan));
  }

  private static double plan(ValidationCase c) {
    CuttingPlan plan =
        list(c).plan(Aim.FEWEST_BARS, Aim.LEAST_NEW_STOCK, Aim.LEAST_MONEY, Aim.LONGEST_LEFTOVER);
    Aim aim =
        switch (c.text("quantity")) {
          case "bars" -> Aim.FEWEST_BARS;
          case "new stock" -> Aim.LEAST_NEW_STOCK;
          case "longest leftover" -> Aim.LONGEST_LEFTOVER;
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    // A value that is right by luck is no answer: a bound that met another one would be wrong.
    return plan.reached(aim).isProven() ? plan.reached(aim).value().doubleValue() : Double.NaN;
  }

  static CutList list(ValidationCase c) {
    Bar bar = Bar.of(Section.square(millimetres(12)), Material.MILD_STEEL);
    CutList list =
        CutList.of(bar, Graduation.MILLIMETRE)
            .kerf(millimetres(Double.parseDouble(c.text("kerf"))))
            .endTrim(millimetres(Double.parseDouble(c.text("end_trim"))));
    for (String length : c.text("bars").split(" ", -1)) {
      list = list.buying(millimetres(Double.parseDouble(length)));
    }
    for (String offcut : parts(c.text("offcuts"))) {
      String[] numbers = offcut.split("x", 2);
      list =
          list.offcuts(millimetres(Double.parseDouble(numbers[0])), Integer.parseInt(numbers[1]));
    }
    for (String piece : parts(c.text("pieces"))) {
      String[] numbers = piece.split("x", 2);
      list =
          list.pieces(
              "piece", millimetres(Double.parseDouble(numbers[0])), Integer.parseInt(numbers[1]));
    }
    return list;
  }

  private static List<String> parts(String text) {
    return text.isEmpty() ? List.of() : List.of(text.split(" ", -1));
  }
}
