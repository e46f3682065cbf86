package org.hammerscale.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.HashMap;
import java.util.Map;
import org.hammerscale.units.Measure;

/** What every working must hold, for the tests of all packages. */
public final class Workings {
  private Workings() {}

  /**
   * Each formula evaluates to its step's value, and the last step is the answer, to the last bit.
   */
  public static void check(Working working, Measure<?> answer) {
    Map<String, Double> values = new HashMap<>();
    for (Step step : working.steps()) {
      double value = step.value().getValue();
      if (!step.isGiven()) {
        double evaluated = Formula.evaluate(step.formula(), values);
        assertEquals(evaluated, value, 1e-14 * Math.abs(evaluated), step::toString);
      }
      Double earlier = values.put(step.symbol(), value);
      assertEquals(null, earlier, () -> "symbol twice: " + step);
      assertFalse(step.meaning().isBlank(), step::toString);
    }
    assertEquals(answer, working.result(), working::toString);
    assertFalse(working.sources().isEmpty(), working::title);
  }
}
