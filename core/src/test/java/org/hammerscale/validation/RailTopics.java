package org.hammerscale.validation;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.spacing.GuardCode;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.units.Measure;

/** What stands along a rail. */
final class RailTopics {
  private RailTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Pickets between posts", "pickets.csv", RailTopics::pickets),
        new ValidationTopic("Codes of guards", "guard_codes.csv", RailTopics::code));
  }

  private static double pickets(ValidationCase c) {
    PicketRow bare = PicketRow.across(c.length("span")).of(c.length("width"));
    Measure<Length> opening = c.length("opening");
    PicketRow row =
        c.text("rule").equals("less") ? bare.stopping(opening) : bare.openingsUpTo(opening);
    PicketLayout layout = row.layout();
    return switch (c.text("quantity")) {
      case "pickets" -> layout.pickets();
      case "gap" -> layout.gap().in(c.lengthUnit());
      case "pitch" -> layout.pitch().in(c.lengthUnit());
      case "gap with one fewer" ->
          row.pickets(layout.pickets() - 1).layout().gap().in(c.lengthUnit());
      default -> throw new IllegalArgumentException(c.text("quantity"));
    };
  }

  private static double code(ValidationCase c) {
    return GuardCode.valueOf(c.text("constant")).size().in(c.lengthUnit());
  }
}
