package org.hammerscale.validation;

import java.util.List;
import org.hammerscale.forging.Taper;

/** Change of section. */
final class ForgingTopics {
  private ForgingTopics() {}

  static List<ValidationTopic> all() {
    return List.of(new ValidationTopic("Tapers", "tapers.csv", ForgingTopics::taper));
  }

  private static double taper(ValidationCase c) {
    Taper taper = Taper.between(c.section("from"), c.section("to"), c.length("length"));
    return taper.metalKept().likely().in(c.volumeUnit());
  }
}
