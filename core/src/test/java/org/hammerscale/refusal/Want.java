package org.hammerscale.refusal;

import java.lang.reflect.GenericArrayType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** A type with its type arguments filled in, such as a measure of length. */
record Want(Class<?> raw, List<Want> of) {
  static Want plain(Class<?> raw) {
    return new Want(raw, List.of());
  }

  /** What a declared type asks for where its variables are known. */
  static Want from(Type type, Map<TypeVariable<?>, Want> known) {
    if (type instanceof Class<?> raw) {
      return raw.isArray() ? new Want(raw, List.of(plain(raw.getComponentType()))) : plain(raw);
    } else if (type instanceof ParameterizedType generic) {
      List<Want> arguments =
          Stream.of(generic.getActualTypeArguments()).map(each -> from(each, known)).toList();
      return new Want((Class<?>) generic.getRawType(), arguments);
    } else if (type instanceof GenericArrayType array) {
      Want element = from(array.getGenericComponentType(), known);
      return new Want(element.raw().arrayType(), List.of(element));
    } else if (type instanceof WildcardType wildcard) {
      return from(wildcard.getUpperBounds()[0], known);
    }
    Want bound = known.get(type);
    return bound != null ? bound : plain(Object.class);
  }

  /** Whether this thing can stand where the other is asked for. */
  boolean serves(Want asked) {
    return asked.raw.isAssignableFrom(raw) && (of.equals(asked.of) || asked.of.isEmpty());
  }
}
