package org.hammerscale.refusal;

import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Temperature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.units.Tolerance;

/** Says what is wrong with the outcome of a call; an empty text if nothing is. */
final class Judge {
  private static final double SLOW = 100;

  /** A hard cut list is searched up to a limit that its Javadoc tells. */
  private static final double SEARCH = 20_000;

  /** What the arithmetic of the units calls its arguments. */
  private static final Set<String> ARITHMETIC =
      Set.of("value", "newValue", "unit", "addend", "subtrahend", "factor", "divisor", "quantity");

  private static final Set<String> SMALL_WORDS = Set.of("with", "to", "of", "in", "by", "at", "on");

  /** What a method's Javadoc announces beside the usual exceptions. */
  private static final Map<String, Class<?>> ANNOUNCED =
      Map.of(
          "asType", ClassCastException.class, // as JSR 385 wants it
          "orThrow", AssertionError.class,
          "withFeet", IllegalStateException.class,
          "withRemainder", IllegalStateException.class);

  /** A row of holes that is not described in full says so, and one hole has no spacing. */
  private static final Set<String> HALF_DESCRIBED =
      Set.of(
          "isFeasible",
          "mostHoles",
          "widestSpacing",
          "boardByBoard",
          "layout",
          "sharedWith",
          "closestSpacing",
          "working");

  private Judge() {}

  /** Of a call without null. */
  static String fault(Call call, Call.Outcome outcome) {
    if (outcome.thrown() != null) {
      return faultOfRefusal(call, outcome.thrown());
    }
    // The first call of a kind pays for loading its classes, and a busy machine for its neighbours.
    double slow = call.method().getName().equals("plan") ? SEARCH : SLOW;
    if (outcome.milliseconds() > slow && call.outcome().milliseconds() > slow) {
      return "slow: " + outcome.milliseconds() + " ms";
    }
    Object answer = outcome.answer();
    if (answer == null) {
      return isAllowedToBeNull(call.method()) ? "" : "null for an answer";
    }
    return isFinite(answer) || isGivenBack(call, answer)
        ? faultOf(answer)
        : "not finite: " + answer;
  }

  /** Of a call with null at one place. */
  static String faultOfNull(Call call, int place, Call.Outcome outcome) {
    String name = call.method().getParameters()[place].getName();
    if (outcome.thrown() instanceof NullPointerException refused) {
      String message = String.valueOf(refused.getMessage());
      boolean named =
          (!message.startsWith("Cannot") && isIn(message, name))
              || call.arguments().contains(message); // the name that it was told

      return named ? "" : "null " + name + " unnamed: " + message;
    }
    return outcome.thrown() == null ? "null " + name + " taken" : "";
  }

  /** What every object must be able to do, and what its getters say. */
  private static String faultOf(Object thing) {
    try {
      String text = thing.toString();
      boolean found = Set.of(thing).contains(thing); // asks for both hash and equality
      boolean mistaken = Stream.of(null, "other").anyMatch(thing::equals);
      if (!found || mistaken || (text.isEmpty() && isOurs(thing.getClass()))) {
        return "equals, hashCode or toString of " + text;
      }
    } catch (RuntimeException e) {
      return "equals, hashCode or toString: " + e;
    }
    if (!isOurs(thing.getClass()) || thing.getClass() == Tolerance.Verdict.class) {
      return "";
    }
    for (Method getter : PublicMethods.getters(thing.getClass())) {
      Call call = new Call(getter, thing, List.of(), Map.of());
      Call.Outcome outcome = call.outcome();
      String fault =
          outcome.thrown() != null
              ? faultOfRefusal(call, outcome.thrown())
              : isFinite(outcome.answer()) ? "" : "not finite: " + outcome.answer();
      if (!fault.isEmpty()) {
        return "of its " + getter.getName() + "(): " + fault;
      }
    }
    return "";
  }

  private static String faultOfRefusal(Call call, Throwable thrown) {
    String message = String.valueOf(thrown.getMessage());
    if (thrown instanceof MeasurementParseException) {
      return "";
    } else if (thrown instanceof UnsupportedOperationException) {
      return isOfTemperatures(call) ? "" : "unannounced " + thrown;
    } else if (thrown.getClass() == ANNOUNCED.get(call.method().getName())
        || (thrown instanceof IllegalStateException && isHalfDescribed(call.method()))) {
      return "";
    } else if (!(thrown instanceof IllegalArgumentException)) {
      return "unannounced " + thrown;
    } else if (!message.contains("; ") && !message.contains(": ")) {
      return "no advice: " + message;
    }
    return isNamed(call, message) ? "" : "unnamed: " + message;
  }

  private static boolean isHalfDescribed(Executable method) {
    return method.getDeclaringClass().getPackageName().endsWith(".spacing")
        && HALF_DESCRIBED.contains(method.getName());
  }

  /**
   * Whether a refusal's first words name a parameter, a property of what was handed in, the thing
   * that was asked or the question. What arithmetic refuses within a method names none of them.
   */
  private static boolean isNamed(Call call, String message) {
    String subject = message.split(" must |: |; ", 2)[0];
    List<String> names = Stream.of(call.method().getParameters()).map(Parameter::getName).toList();
    if (names.stream().anyMatch(name -> isIn(subject, name)) || isGivenBack(call, subject)) {
      return true;
    } else if (ARITHMETIC.contains(subject)) {
      return false;
    }
    List<Class<?>> things = new ArrayList<>(List.of(call.method().getDeclaringClass()));
    Stream.concat(Stream.ofNullable(call.receiver()), call.arguments().stream())
        .forEach(each -> things.add(each.getClass()));
    return names.isEmpty()
        || saysAll(subject, call.method().getName())
        || things.stream().filter(Judge::isOurs).anyMatch(each -> isOf(subject, each));
  }

  private static boolean isOf(String subject, Class<?> type) {
    return isIn(subject, type.getSimpleName())
        || Stream.of(type.getMethods()).anyMatch(each -> saysAll(subject, each.getName()));
  }

  private static boolean isIn(String subject, String name) {
    return words(name).anyMatch(subject.toLowerCase(Locale.ROOT)::contains);
  }

  private static boolean saysAll(String subject, String name) {
    return words(name)
        .filter(word -> !SMALL_WORDS.contains(word))
        .allMatch(subject.toLowerCase(Locale.ROOT)::contains);
  }

  private static Stream<String> words(String name) {
    return Stream.of(name.split("(?=[A-Z])"))
        .map(word -> word.toLowerCase(Locale.ROOT).replaceFirst("s$", ""));
  }

  private static boolean isFinite(Object answer) {
    if (answer instanceof Double number) {
      return Double.isFinite(number);
    } else if (answer instanceof double[] numbers) {
      return Arrays.stream(numbers).allMatch(Double::isFinite);
    } else if (answer instanceof Collection<?> all) {
      return all.stream().allMatch(Judge::isFinite);
    }
    return true;
  }

  /** A note gives back the value that it is told, whatever it is. */
  private static boolean isGivenBack(Call call, Object answer) {
    return call.arguments().contains(answer);
  }

  private static boolean isOfTemperatures(Call call) {
    return Stream.concat(Stream.ofNullable(call.receiver()), call.arguments().stream())
            .map(each -> each instanceof Estimate<?> estimate ? estimate.likely() : each)
            .anyMatch(Judge::isTemperature)
        || call.known().containsValue(Want.plain(Temperature.class));
  }

  private static boolean isTemperature(Object thing) {
    return thing instanceof Quantity<?> quantity
        && quantity.getUnit().getDimension().equals(ShopUnits.KELVIN.getDimension());
  }

  /** JSR 385 wants null for a unit that a system does not have. */
  private static boolean isAllowedToBeNull(Executable method) {
    return (method instanceof Method asked && asked.getReturnType() == void.class)
        || method.getName().equals("getUnit");
  }

  private static boolean isOurs(Class<?> type) {
    return type.getName().startsWith("org.hammerscale");
  }
}
