package org.hammerscale.validation;

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
    return List.of(new ValidationTopic("spacing/hole_layouts", HoleLayoutTopics::layout));
  }

  private static double layout(ValidationCase c) {
    HoleRow row = row(c);
    String quantity = c.question();
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
        HoleRow.along(c.length("leaf"))
            .holes(c.count("holes"))
            .startingFrom(c.length("start"))
            .endingBefore(c.length("end"));
    for (int i = 1; c.value().has("closed " + i + " from"); i++) {
      Measure<Length> from = c.length("closed " + i + " from");
      row = row.missing(ClosedStretch.between(from, c.length("closed " + i + " to")));
    }
    for (int i = 1; c.value().has("fixed " + i); i++) {
      row = row.using(c.length("fixed " + i));
    }
    row = c.value().has("least") ? row.leastSpacing(c.length("least")) : row;
    row = c.value().has("mirror") ? row.symmetricAbout(c.length("mirror")) : row;
    return c.value().has("rows apart") ? row.inTwoRows(c.length("rows apart")) : row;
  }
}
