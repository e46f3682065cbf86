package org.hammerscale.refusal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Executable;
import java.lang.reflect.Parameter;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Calls everything public with whatever a caller may think of. Each call gives a finite answer at
 * once, or refuses with a message that names the parameter and says what to do.
 *
 * <p>The system property {@code refusal.calls} asks for more calls than those of every build,
 * {@code refusal.seed} for others.
 */
@Timeout(value = 10, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class RefusalTest {
  private static final int CALLS = Integer.getInteger("refusal.calls", 100_000);
  private static final long SEED = Long.getLong("refusal.seed", 1);

  private final Map<String, String> faults = new TreeMap<>();

  @ParameterizedTest
  @CsvSource({"de-DE, 1", "tr-TR, 2", "ar-EG, 3"})
  void everyCallIsAnsweredOrRefusedWithAdvice(String tag, int salt) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(tag));
    try {
      Random random = new Random(SEED + salt);
      Supply supply = new Supply(random);
      for (int i = 0; i < CALLS / 3; i++) {
        Executable method = PublicMethods.ALL.get(random.nextInt(PublicMethods.ALL.size()));
        Call call = supply.call(method, i % 3 == 0 ? 0.5 : i % 3 == 1 ? 0.2 : 0);
        if (call != null) {
          Call.Outcome outcome = call.outcome();
          note(Judge.fault(call, outcome), call);
          if (outcome.answer() != null) {
            supply.keep(call, outcome.answer());
          }
        }
      }
    } finally {
      Locale.setDefault(before);
    }
    report();
  }

  @Test
  void nullIsRefusedByItsParametersName() {
    Supply supply = new Supply(new Random(SEED));
    for (int round = 0; round < 5; round++) {
      for (Executable method : PublicMethods.ALL) {
        Call call = supply.call(method, 0);
        for (int place = 0; call != null && place < method.getParameterCount(); place++) {
          if (!method.getParameterTypes()[place].isPrimitive()) {
            Call withNull = call.with(place, null);
            note(Judge.faultOfNull(withNull, place, withNull.outcome()), withNull);
          }
        }
      }
    }
    report();
  }

  private void note(String fault, Call call) {
    String owner = call.method().getDeclaringClass().getName();
    if (!fault.isEmpty()) {
      String method =
          Stream.of(call.method().getParameters())
              .map(Parameter::getName)
              .collect(Collectors.joining(", ", call.method().getName() + "(", ")"));
      faults.putIfAbsent(owner + "." + method, fault + "\n    " + call);
    }
  }

  private void report() {
    StringBuilder text = new StringBuilder("seed " + SEED + ": " + faults.size() + " faults");
    faults.forEach((method, fault) -> text.append('\n').append(method).append(": ").append(fault));
    System.out.println("calls of everything public, seed " + SEED);
    assertTrue(faults.isEmpty(), text::toString);
  }
}
