package org.hammerscale;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.lang.reflect.Executable;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Keeps {@code public-api.txt}, the list of what callers can name, so that each change of it is
 * seen in review. If it is stale the test writes it anew and fails: look at the difference, then
 * commit it.
 */
class PublicApiTest {
  private static final Path LIST = Path.of("src/test/resources/org/hammerscale/public-api.txt");

  @Test
  void listIsUpToDate() throws IOException {
    String expected = String.join("\n", lines()) + "\n";
    String committed = Files.exists(LIST) ? Files.readString(LIST) : "";
    if (!committed.equals(expected)) {
      Files.writeString(LIST, expected);
    }
    assertEquals(expected, committed, "public-api.txt was stale and has been written anew");
  }

  private static List<String> lines() {
    List<String> lines = new ArrayList<>();
    new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.hammerscale")
            .stream()
            .filter(type -> !type.getPackageName().startsWith("org.hammerscale.internal"))
            .map(JavaClass::reflect)
            .filter(PublicApiTest::isVisible)
            .sorted((one, other) -> one.getName().compareTo(other.getName()))
            .forEach(type -> add(lines, type));
    return lines;
  }

  private static boolean isVisible(Class<?> type) {
    return Modifier.isPublic(type.getModifiers())
        && (type.getDeclaringClass() == null || isVisible(type.getDeclaringClass()));
  }

  private static void add(List<String> lines, Class<?> type) {
    lines.add(kind(type) + " " + type.getName().replace('$', '.') + supertypes(type));
    Set<String> members = new TreeSet<>();
    // What a hidden class hands down can be called too.
    for (Class<?> from = type;
        from == type || (from != null && !isVisible(from));
        from = from.getSuperclass()) {
      addMembers(members, from, from == type);
    }
    members.forEach(member -> lines.add("  " + member));
  }

  private static void addMembers(Set<String> members, Class<?> type, boolean own) {
    for (Field field : type.getDeclaredFields()) {
      if (isOffered(field.getModifiers(), field.isSynthetic())) {
        members.add(field.isEnumConstant() ? field.getName() : told(field));
      }
    }
    for (Executable constructor : type.getDeclaredConstructors()) {
      if (own && isOffered(constructor.getModifiers(), constructor.isSynthetic())) {
        members.add("new" + parameters(constructor));
      }
    }
    for (Method method : type.getDeclaredMethods()) {
      if (isOffered(method.getModifiers(), method.isSynthetic())) {
        members.add(told(method));
      }
    }
  }

  private static boolean isOffered(int modifiers, boolean synthetic) {
    return (Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers)) && !synthetic;
  }

  private static String kind(Class<?> type) {
    return type.isEnum()
        ? "enum"
        : type.isInterface() ? "interface" : type.isRecord() ? "record" : "class";
  }

  private static String supertypes(Class<?> type) {
    List<Type> all = new ArrayList<>(List.of(type.getGenericInterfaces()));
    Type parent = type.getGenericSuperclass();
    if (parent != null && parent != Object.class && !type.isEnum() && !type.isRecord()) {
      all.add(0, parent);
    }
    return all.isEmpty()
        ? ""
        : " : " + all.stream().map(PublicApiTest::name).collect(Collectors.joining(", "));
  }

  private static String told(Field field) {
    return prefix(field.getModifiers()) + field.getName() + ": " + name(field.getGenericType());
  }

  private static String told(Method method) {
    return prefix(method.getModifiers())
        + method.getName()
        + parameters(method)
        + ": "
        + name(method.getGenericReturnType());
  }

  private static String prefix(int modifiers) {
    return Modifier.isStatic(modifiers) ? "static " : "";
  }

  private static String parameters(Executable executable) {
    String types =
        Arrays.stream(executable.getGenericParameterTypes())
            .map(PublicApiTest::name)
            .collect(Collectors.joining(", "));
    return "(" + (executable.isVarArgs() ? types.replaceFirst("\\[\\]$", "...") : types) + ")";
  }

  /** A type without its packages. */
  private static String name(Type type) {
    return Stream.of(type.getTypeName().replace('$', '.').split("(?<=[<>, ?])"))
        .map(part -> part.replaceFirst("^(?:[a-z][a-z0-9]*\\.)+(?=[A-Z])", ""))
        .collect(Collectors.joining());
  }
}
