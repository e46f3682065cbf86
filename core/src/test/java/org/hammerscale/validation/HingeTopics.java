package org.hammerscale.validation;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/** Barrels and what turns in them. */
final class HingeTopics {
  private HingeTopics() {}

  static List<ValidationTopic> all() {
    return List.of(
        new ValidationTopic("Eyes, rings and barrels", "barrels.csv", HingeTopics::barrel));
  }

  private static double barrel(ValidationCase c) {
    Barrel barrel = Barrel.around(c.length("bore"), Section.square(c.length("thickness")));
    Measure<Length> length =
        switch (c.text("quantity")) {
          case "mean diameter" -> barrel.meanDiameter();
          case "outside diameter" -> barrel.outsideDiameter();
          case "developed length" -> barrel.developedLength();
          case "developed length up to 1/8 in" -> barrel.developedLength().upTo(Graduation.EIGHTH);
          case "bench length" -> barrel.benchLength();
          default -> throw new IllegalArgumentException(c.text("quantity"));
        };
    return length.in(c.lengthUnit());
  }
}
