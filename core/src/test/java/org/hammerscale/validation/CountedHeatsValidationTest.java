package org.hammerscale.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The default of hammer work against heats that were counted. */
class CountedHeatsValidationTest {
  @Test
  void everyCountLiesInsideAndMostAreLikely() {
    List<CountedHeats> counts = CountedHeats.all();
    assertEquals(7, counts.size());
    for (CountedHeats count : counts) {
      assertTrue(count.inside(), () -> count.row() + " " + count.heats());
    }
    assertEquals(6, counts.stream().filter(CountedHeats::isLikely).count());
  }
}
