package org.hammerscale.refusal;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Everything that a caller of the library can see, in a fixed order. */
final class PublicMethods {
  static final List<Class<?>> CLASSES =
      new ClassFileImporter()
              .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
              .importPackages("org.hammerscale")
              .stream()
              .filter(each -> !each.getPackageName().startsWith("org.hammerscale.internal"))
              .sorted(Comparator.comparing(JavaClass::getName))
              .<Class<?>>map(JavaClass::reflect)
              .filter(PublicMethods::isSeen)
              .toList();

  /** Methods and constructors, but for those that every object has. */
  static final List<Executable> ALL =
      CLASSES.stream()
          .flatMap(PublicMethods::of)
          .filter(each -> !isOfEveryObject(each))
          .filter(Executable::trySetAccessible) // some are inherited from what is not public itself
          .toList();

  private PublicMethods() {}

  /** The constants of a class. */
  static List<Field> constants(Class<?> owner) {
    return Stream.of(owner.getFields())
        .filter(field -> Modifier.isStatic(field.getModifiers()))
        .filter(field -> field.getDeclaringClass() == owner)
        .toList();
  }

  /** What can be asked of an object without an argument. */
  static List<Method> getters(Class<?> owner) {
    List<Method> found = new ArrayList<>();
    for (Method method : owner.getMethods()) {
      if (!Modifier.isStatic(method.getModifiers())
          && method.getParameterCount() == 0
          && isOurs(method)
          && method.trySetAccessible()) {
        found.add(method);
      }
    }
    found.sort(Comparator.comparing(Method::getName));
    return found;
  }

  private static Stream<Executable> of(Class<?> owner) {
    Stream<Method> methods =
        Stream.of(owner.getMethods())
            .filter(PublicMethods::isOurs)
            .sorted(Comparator.comparing(Method::toGenericString));
    Stream<Constructor<?>> constructors = Stream.of(owner.getConstructors());
    return Stream.concat(methods, constructors);
  }

  private static boolean isOurs(Method method) {
    return method.getDeclaringClass().getName().startsWith("org.hammerscale")
        && !method.isSynthetic();
  }

  private static boolean isOfEveryObject(Executable method) {
    return List.of("equals", "hashCode", "toString", "valueOf", "values")
        .contains(method.getName());
  }

  private static boolean isSeen(Class<?> type) {
    return Modifier.isPublic(type.getModifiers())
        && (type.getEnclosingClass() == null || isSeen(type.getEnclosingClass()));
  }
}
