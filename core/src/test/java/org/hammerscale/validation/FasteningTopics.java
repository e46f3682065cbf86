package org.hammerscale.validation;

import java.util.List;

/** Fasteners, their holes, and what they hold. */
final class FasteningTopics {
  private FasteningTopics() {}

  static List<ValidationTopic> all() {
    return List.of();
  }
}
