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
    return List.of(new ValidationTopic("cutting/bar_jobs", CuttingTopics::plan));
  }

  private static double plan(ValidationCase c) {
    CuttingPlan plan =
        list(c).plan(Aim.FEWEST_BARS, Aim.LEAST_NEW_STOCK, Aim.LEAST_MONEY, Aim.LONGEST_LEFTOVER);
    Aim aim =
        switch (c.question()) {
          case "bars" -> Aim.FEWEST_BARS;
          case "new stock" -> Aim.LEAST_NEW_STOCK;
          case "longest leftover" -> Aim.LONGEST_LEFTOVER;
          default -> throw new IllegalArgumentException(c.question());
        };
    // A value that is right by luck is no answer: a bound that met another one would be wrong.
    return plan.reached(aim).isProven() ? plan.reached(aim).value().doubleValue() : Double.NaN;
  }

  static CutList list(ValidationCase c) {
    Bar bar = Bar.of(Section.square(millimetres(12)), Material.MILD_STEEL);
    CutList list =
        CutList.of(bar, Graduation.MILLIMETRE).kerf(c.length("kerf")).endTrim(c.length("end trim"));
    for (int i = 1; c.value().has("bar " + i); i++) {
      list = list.buying(c.length("bar " + i));
    }
    for (int i = 1; c.value().has("offcut " + i); i++) {
      list = list.offcuts(c.length("offcut " + i), c.count("offcut " + i + " count"));
    }
    for (int i = 1; c.value().has("piece " + i); i++) {
      list = list.pieces("piece", c.length("piece " + i), c.count("piece " + i + " count"));
    }
    return list;
  }
}
