package org.hammerscale.examples.service;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.Module;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hammerscale.units.Measure;

/** What the service can be asked, and what it says of a question that it cannot read. */
final class Questions {
  private static final Map<String, Question> ALL =
      new TreeMap<>(
          Map.of(
              "/leaf", reading(Leaf.class, Leaf::answer),
              "/holes", reading(Holes.class, Holes::answer),
              "/pair", reading(Pair.class, Pair::answer),
              "/cut-list", reading(Cuts.class, Cuts::answer)));

  private Questions() {}

  /** Takes a JSON object, gives what can be written as one. */
  interface Question {
    Object answer(JsonNode asked, ObjectMapper json) throws JsonProcessingException;
  }

  private static <T> Question reading(Class<T> type, Function<T, Object> answer) {
    return (asked, json) -> {
      if (!asked.isObject()) {
        throw new Refused(400, "", "body must be a JSON object; see /openapi.yaml");
      }
      return answer.apply(json.treeToValue(asked, type));
    };
  }

  static Question at(String path) {
    Question found = ALL.get(path);
    if (found == null) {
      throw new Refused(
          404, "", "there is no " + path + "; ask " + String.join(", ", ALL.keySet()));
    }
    return found;
  }

  /** Names and values in turn, which come out in this order. */
  static Map<String, Object> object(Object... pairs) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      object.put((String) pairs[i], pairs[i + 1]);
    }
    return object;
  }

  /** Reads strictly: what is misspelt, doubled or of another kind is told, not guessed at. */
  static ObjectMapper reader(Module things) {
    return JsonMapper.builder()
        .addModule(things)
        .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
        .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .build();
  }

  /** What is said of a field that cannot be read. */
  static Refused refused(JsonMappingException e) {
    StringBuilder field = new StringBuilder();
    for (JsonMappingException.Reference step : e.getPath()) {
      if (step.getFieldName() == null) {
        field.append('[').append(step.getIndex()).append(']');
      } else {
        field.append(field.isEmpty() ? "" : ".").append(step.getFieldName());
      }
    }
    return field.isEmpty()
        ? new Refused(400, "", "body must be one JSON object, each field once; see /openapi.yaml")
        : new Refused(422, field.toString(), message(e));
  }

  private static String message(JsonMappingException e) {
    if (e instanceof UnrecognizedPropertyException unknown) {
      return unknown.getPropertyName()
          + " is no field here; take one of "
          + new TreeSet<>(unknown.getKnownPropertyIds());
    } else if (e instanceof MismatchedInputException other && other.getTargetType() != null) {
      Class<?> type = other.getTargetType();
      return type == Measure.class ? other.getOriginalMessage() : "must be " + kind(type);
    }
    return e.getOriginalMessage();
  }

  private static String kind(Class<?> type) {
    if (type == int.class) {
      return "a whole number; count the pieces";
    } else if (type.isEnum()) {
      String names =
          Stream.of(type.getEnumConstants())
              .map(each -> ((Enum<?>) each).name().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining(", "));
      return "one of " + names + "; write one of them";
    } else if (Collection.class.isAssignableFrom(type)) {
      return "a list; put brackets round it";
    }
    return type == String.class ? "a text; put quotes round it" : "an object; see /openapi.yaml";
  }
}
