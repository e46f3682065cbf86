package org.hammerscale.refusal;

import java.io.StringWriter;
import java.lang.reflect.Array;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.text.ParsePosition;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.hammerscale.checking.CheckTopic;
import org.hammerscale.checking.CheckValue;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/**
 * Makes arguments of every type: numbers and quantities from lists, the library's own things from
 * what its methods have given so far.
 */
final class Supply {
  private static final double[] LIKELY = {0.1, 0.25, 0.5, 0.5, 1, 1, 1.5, 2, 3, 5, 10, 25};
  private static final double[] HOSTILE = {
    0, -0.0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 1e300, 1e-300, 1e9
  };
  private static final int[] HOSTILE_COUNTS = {
    -1, 0, 1000, 5000, 100_000, 60_000_000, Integer.MAX_VALUE, Integer.MIN_VALUE
  };
  private static final String[] TEXTS = {
    "White oak", "1 1/2 in", "1/2", "16", "x", "4 + 3", "40 mm", "in", "3' 6\""
  };
  private static final String[] HOSTILE_TEXTS = {
    "", " ", "1e999 m", "-1", "1/0", "\u2692", "9".repeat(500), "mm", "\u0661\u0662 mm"
  };
  private static final int KEPT = 30;
  private static final int DEPTH = 4;

  private final Random random;
  private final Map<Want, List<Object>> store = new LinkedHashMap<>();
  private final Map<Want, List<Want>> serving = new HashMap<>();
  private final Map<Class<?>, List<Method>> makers = new HashMap<>();

  Supply(Random random) {
    this.random = random;
    for (Class<?> owner : PublicMethods.CLASSES) {
      if (owner.isEnum()) {
        List.of(owner.getEnumConstants()).forEach(each -> keep(Want.plain(owner), each));
      }
      for (Field constant : PublicMethods.constants(owner)) {
        try {
          keep(Want.from(constant.getGenericType(), Map.of()), constant.get(null));
        } catch (IllegalAccessException e) {
          throw new AssertionError(e);
        }
      }
    }
    // Only a stream gives these, and a stream is not asked for what it holds.
    for (CheckTopic topic : CheckTopic.all()) {
      keep(Want.plain(CheckValue.class), topic.values().findFirst().orElseThrow());
    }
    for (Executable each : PublicMethods.ALL) {
      if (each instanceof Method method && isOurs(method.getReturnType())) {
        makers.computeIfAbsent(method.getReturnType(), key -> new ArrayList<>()).add(method);
      }
    }
  }

  /** A call with its receiver and arguments; null if nothing can be asked yet. */
  Call call(Executable method, double hostility) {
    return call(method, hostility, DEPTH);
  }

  private Call call(Executable method, double hostility, int depth) {
    Map<TypeVariable<?>, Want> known = new HashMap<>();
    Object receiver = null;
    if (method instanceof Method && !Modifier.isStatic(method.getModifiers())) {
      TypeVariable<?>[] variables = method.getDeclaringClass().getTypeParameters();
      for (TypeVariable<?> variable : variables) {
        known.put(variable, Want.plain(Kind.any(random).type()));
      }
      List<Want> of = List.of(variables).stream().map(known::get).toList();
      receiver = thing(new Want(method.getDeclaringClass(), of), depth);
      if (receiver == null) {
        return null;
      }
    }
    for (TypeVariable<?> variable : method.getTypeParameters()) {
      known.put(variable, Want.plain(Kind.any(random).type()));
    }
    List<Object> arguments = new ArrayList<>();
    for (Type type : method.getGenericParameterTypes()) {
      Object argument = argument(Want.from(type, known), hostility, depth);
      if (argument == null) {
        return null;
      }
      arguments.add(argument);
    }
    return new Call(method, receiver, arguments, known);
  }

  /** Takes what a call has given into the store. */
  void keep(Call call, Object answer) {
    if (isSmuggling(call)) {
      return;
    }
    if (call.method() instanceof Method method) {
      keep(Want.from(method.getGenericReturnType(), call.known()), answer);
    } else {
      keep(Want.plain(answer.getClass()), answer);
    }
  }

  /**
   * Whether an unchecked cast has brought a mass for a length: what comes of it lies about its
   * type.
   */
  private boolean isSmuggling(Call call) {
    for (int i = 0; i < call.arguments().size(); i++) {
      Want want = Want.from(call.method().getGenericParameterTypes()[i], call.known());
      if (call.arguments().get(i) instanceof Quantity<?> quantity
          && !want.of().isEmpty()
          && !quantity.getUnit().getDimension().equals(kind(want).units().get(0).getDimension())) {
        return true;
      }
    }
    return false;
  }

  private void keep(Want want, Object thing) {
    if (thing instanceof List<?> list && !list.isEmpty() && !want.of().isEmpty()) {
      keep(want.of().get(0), list.get(random.nextInt(list.size())));
    } else if (thing != null && isOurs(thing.getClass())) {
      Want exact = new Want(thing.getClass(), want.of());
      List<Object> kept =
          store.computeIfAbsent(
              exact,
              key -> {
                serving.clear();
                return new ArrayList<>();
              });
      if (kept.size() < KEPT) {
        kept.add(thing);
      } else {
        kept.set(random.nextInt(KEPT), thing);
      }
    }
  }

  private Object argument(Want want, double hostility, int depth) {
    boolean hostile = random.nextDouble() < hostility;
    Class<?> raw = want.raw();
    if (raw == double.class || raw == Number.class) {
      return pick(hostile ? HOSTILE : LIKELY);
    } else if (raw == int.class) {
      return hostile
          ? HOSTILE_COUNTS[random.nextInt(HOSTILE_COUNTS.length)]
          : random.nextInt(random.nextBoolean() ? 5 : 25);
    } else if (raw == boolean.class) {
      return random.nextBoolean();
    } else if (raw == String.class || raw == CharSequence.class) {
      String[] texts = hostile ? HOSTILE_TEXTS : TEXTS;
      return texts[random.nextInt(texts.length)];
    } else if (raw == Quantity.class) {
      return hostile ? kind(want).hostile(random) : kind(want).likely(random);
    } else if (raw == Measure.class) {
      return hostile ? Measure.of(0, kind(want).unit(random)) : kind(want).likelyMeasure(random);
    } else if (raw == Unit.class) {
      return (hostile ? Kind.any(random) : kind(want)).unit(random);
    } else if (raw == Class.class) {
      return want.of().get(0).raw();
    } else if (raw == Dimension.class) {
      return Kind.any(random).unit(random).getDimension();
    } else if (raw == Appendable.class) {
      return new StringWriter();
    } else if (raw == ParsePosition.class) {
      return new ParsePosition(hostile ? -1 : 0);
    } else if (raw == Function.class) {
      Quantity<?> fixed = kind(want.of().get(1)).likely(random);
      return hostile ? (Function<Object, Object>) x -> fixed : Function.identity();
    } else if (raw == Notes.Calculation.class) {
      return (Notes.Calculation) notes -> notes.given("x", "a thing", pick(LIKELY));
    } else if (raw == ToDoubleFunction.class) {
      return (ToDoubleFunction<Object>) x -> pick(LIKELY);
    } else if (raw.isArray() || raw == List.class || raw == Map.class) {
      return several(want, hostile, depth);
    }
    return thing(want, depth);
  }

  private Object several(Want want, boolean hostile, int depth) {
    int count = random.nextInt(4);
    List<Object> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Object each = argument(want.of().get(0), hostile ? 0.3 : 0, depth);
      if (each == null) {
        return null;
      }
      all.add(each);
    }
    if (hostile && count > 0 && random.nextInt(3) == 0) {
      all = new ArrayList<>(Collections.nCopies(random.nextBoolean() ? 1000 : 5000, all.get(0)));
    }
    if (want.raw() == List.class) {
      return all;
    } else if (want.raw() == Map.class) {
      Map<Object, Object> map = new LinkedHashMap<>();
      all.forEach(each -> map.put(each, argument(want.of().get(1), 0, depth)));
      return map;
    }
    Object array = Array.newInstance(want.raw().getComponentType(), all.size());
    for (int i = 0; i < all.size(); i++) {
      Array.set(array, i, all.get(i));
    }
    return array;
  }

  /** One of the library's own things. */
  private Object thing(Want want, int depth) {
    if (want.raw() == Measure.class && !want.of().isEmpty()) {
      return kind(want).likelyMeasure(random);
    }
    List<Want> found = serving.get(want);
    if (found == null) {
      found = store.keySet().stream().filter(each -> each.serves(want)).toList();
      serving.put(want, found);
    }
    if (!found.isEmpty() && random.nextInt(5) > 0) {
      List<Object> things = store.get(found.get(random.nextInt(found.size())));
      return things.get(random.nextInt(things.size()));
    }
    List<Method> ways = makers.getOrDefault(want.raw(), List.of());
    for (int i = 0; i < 5 && depth > 0 && !ways.isEmpty(); i++) {
      Method way = ways.get(random.nextInt(ways.size()));
      Call call = call(way, 0, depth - 1);
      Object answer = call == null ? null : call.outcome().answer();
      if (answer != null) {
        keep(call, answer);
        if (Want.from(way.getGenericReturnType(), call.known()).serves(want)) {
          return answer;
        }
      }
    }
    return found.isEmpty() ? null : store.get(found.get(0)).get(0);
  }

  private Kind kind(Want want) {
    Class<?> asked = want.of().isEmpty() ? want.raw() : want.of().get(0).raw();
    return Kind.ALL.stream()
        .filter(kind -> kind.type() == asked)
        .findFirst()
        .orElseGet(() -> Kind.any(random));
  }

  private double pick(double[] numbers) {
    return numbers[random.nextInt(numbers.length)];
  }

  private static boolean isOurs(Class<?> type) {
    return type.getName().startsWith("org.hammerscale");
  }
}
