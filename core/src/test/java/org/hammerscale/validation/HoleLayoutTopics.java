package org.hammerscale.validation;

import static org.hammerscale.units.Measures.millimetres;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Where the holes of a leaf go. */
final class HoleLayoutTopics {
  private HoleLayoutTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Holes along a leaf", "hole_layouts.csv", HoleLayoutTopics::layout));
  }

  private static double layout(ValidationCase c) {
    HoleRow row = row(c);
    String quantity = c.text("quantity");
    if (quantity.startsWith("hole ")) {
      int hole = Integer.parseInt(quantity.substring("hole ".length()));
      return millimetresOf(row.layout().positions().get(hole - 1));
    }
    return switch (quantity) {
      case "widest spacing" -> millimetresOf(row.widestSpacing());
      case "largest move" -> millimetresOf(row.nearestToEven().layout().largestMove());
      case "most holes" -> row.mostHoles();
      default -> throw new IllegalArgumentException(quantity);
    };
  }

  private static double millimetresOf(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static HoleRow row(ValidationCase c) {
    HoleRow row =
        HoleRow.along(length(c.text("leaf")))
            .holes(Integer.parseInt(c.text("holes")))
            .startingFrom(length(c.text("start")))
            .endingBefore(length(c.text("end")));
    for (String stretch : parts(c, "closed")) {
      String[] ends = stretch.split("-", 2);
      row = row.missing(ClosedStretch.between(length(ends[0]), length(ends[1])));
    }
    for (String fixed : parts(c, "fixed")) {
      row = row.using(length(fixed));
    }
    for (String least : parts(c, "least")) {
      row = row.leastSpacing(length(least));
    }
    for (String mirror : parts(c, "mirror")) {
      row = row.symmetricAbout(length(mirror));
    }
    for (String apart : parts(c, "rows")) {
      row = row.inTwoRows(length(apart));
    }
    return row;
  }

  private static List<String> parts(ValidationCase c, String column) {
    String text = c.text(column);
    return text.isEmpty() ? List.of() : List.of(text.split(";", -1));
  }

  private static Measure<Length> length(String number) {
    return millimetres(Double.parseDouble(number));
  }
}
