package org.hammerscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.StringWriter;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.text.ParsePosition;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Dimension;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.UnitDimension;

/** Rules for all that callers can see, so that a new class or method is held to them too. */
class PublicApiTest {
  /** Something of every public type, to print and to call. */
  private static final Map<Class<?>, Object> SAMPLES =
      Map.of(
          Measure.class, Measures.inches(1.5),
          Estimate.class, Estimate.of(Measures.inches(1), Measures.inches(2), Measures.inches(3)),
          Graduation.class, Graduation.SIXTEENTH,
          LengthFormat.class, LengthFormat.to(Graduation.SIXTEENTH),
          Gauge.class, Gauge.IMPERIAL_WIRE,
          Tolerance.class, Tolerance.absolute(Measures.inches(1)),
          Tolerance.Verdict.class,
              Tolerance.absolute(Measures.inches(1)).check(Measures.inches(1), Measures.feet(1)));

  /** Classes that only hold what is static. */
  private static final Set<Class<?>> HOLDERS = Set.of(ShopUnits.class, Measures.class);

  static List<Class<?>> publicTypes() {
    List<Class<?>> types = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("org.hammerscale.units")) {
      Class<?> reflected = type.reflect();
      if (Modifier.isPublic(reflected.getModifiers())) {
        types.add(reflected);
      }
    }
    return types;
  }

  @ParameterizedTest
  @MethodSource("publicTypes")
  void areFinalAndMadeByFactories(Class<?> type) {
    if (!type.isInterface()) {
      assertTrue(Modifier.isFinal(type.getModifiers()), type + " is final");
      for (Constructor<?> constructor : type.getDeclaredConstructors()) {
        assertFalse(Modifier.isPublic(constructor.getModifiers()), constructor + " is hidden");
        assertFalse(Modifier.isProtected(constructor.getModifiers()), constructor + " is hidden");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("publicTypes")
  void printSomethingThatASmithCanRead(Class<?> type) throws NoSuchMethodException {
    if (type.isInterface() || HOLDERS.contains(type)) {
      assertFalse(SAMPLES.containsKey(type));
      return;
    }
    Object sample = SAMPLES.get(type);
    assertInstanceOf(type, sample, () -> "give this test a sample of " + type);
    assertEquals(type, type.getMethod("toString").getDeclaringClass(), "a toString of its own");
    assertFalse(sample.toString().matches(".*[@\\[].*"), sample.toString());
  }

  @Test
  void constantsPrintSomethingThatASmithCanRead() throws IllegalAccessException {
    for (Class<?> type : publicTypes()) {
      for (var field : type.getDeclaredFields()) {
        if (!Modifier.isPublic(field.getModifiers()) || field.isSynthetic()) {
          continue; // what coverage puts into a class is synthetic
        }
        String text = String.valueOf(field.get(null));
        assertFalse(text.matches(".*[@\\[].*|null"), field + " prints " + text);
      }
    }
  }

  /** Every public method, once for every argument that may be null. */
  static Stream<Arguments> argumentsThatMayBeNull() {
    return publicTypes().stream()
        .filter(type -> !type.isInterface())
        .flatMap(type -> Arrays.stream(type.getDeclaredMethods()))
        .filter(method -> Modifier.isPublic(method.getModifiers()))
        .filter(method -> !method.isBridge() && !method.isSynthetic())
        .filter(method -> !method.getName().equals("equals"))
        .flatMap(
            method ->
                Stream.iterate(0, i -> i < method.getParameterCount(), i -> i + 1)
                    .filter(i -> !method.getParameterTypes()[i].isPrimitive())
                    .map(i -> Arguments.of(describe(method), method, i)));
  }

  private static String describe(Executable method) {
    return method.getDeclaringClass().getSimpleName()
        + "."
        + method.getName()
        + Arrays.stream(method.getParameterTypes()).map(Class::getSimpleName).toList();
  }

  @ParameterizedTest(name = "{0} argument {2}")
  @MethodSource("argumentsThatMayBeNull")
  void refuseNullAtOnce(String name, Method method, int which) {
    Object[] arguments =
        Arrays.stream(method.getParameters()).map(PublicApiTest::argument).toArray();
    arguments[which] = null;
    InvocationTargetException refused =
        assertThrows(
            InvocationTargetException.class,
            () -> method.invoke(SAMPLES.get(method.getDeclaringClass()), arguments));
    assertInstanceOf(NullPointerException.class, refused.getCause());
  }

  private static Object argument(Parameter parameter) {
    Map<Class<?>, Object> plain =
        Map.of(
            double.class,
            1.0,
            int.class,
            1,
            Number.class,
            2,
            String.class,
            "1 in",
            CharSequence.class,
            "1 in",
            Unit.class,
            ShopUnits.INCH,
            Class.class,
            Length.class,
            Dimension.class,
            UnitDimension.LENGTH,
            ParsePosition.class,
            new ParsePosition(0),
            Appendable.class,
            new StringWriter());
    Class<?> type = parameter.getType();
    Object found =
        type == Quantity.class
            ? quantity(parameter.getParameterizedType().getTypeName())
            : plain.getOrDefault(type, SAMPLES.get(type));
    if (found == null) {
      throw new AssertionError("give this test an argument of " + type);
    }
    return found;
  }

  /** A quantity of the kind that is named between the angle brackets; else a length. */
  private static Quantity<?> quantity(String type) {
    Map<String, Unit<?>> units =
        Map.of(
            "Area", ShopUnits.SQUARE_INCH,
            "Volume", ShopUnits.CUBIC_INCH,
            "Mass", ShopUnits.POUND,
            "Density", ShopUnits.POUND_PER_CUBIC_FOOT,
            "LinearDensity", ShopUnits.POUND_PER_FOOT);
    String kind = type.replaceAll(".*\\.(\\w+)>", "$1");
    return one(units.getOrDefault(kind, ShopUnits.INCH));
  }

  private static <Q extends Quantity<Q>> Measure<Q> one(Unit<Q> unit) {
    return Measure.of(1, unit);
  }
}
