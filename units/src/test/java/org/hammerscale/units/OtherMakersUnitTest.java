package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Proxy;
import java.util.Map;
import javax.measure.Dimension;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.MultiplyConverter;

/** Units of a maker who knows nothing of the reference implementation: as little as we may ask. */
class OtherMakersUnitTest {
  private static final Unit<Length> METRE = unit("m", 1, null);
  private static final Unit<Length> INCH = unit("zoll", 0.0254, METRE);

  @Test
  void areReadLikeAnyOther() {
    Measure<Length> length = Measure.of(2, INCH);
    assertEquals(50.8, length.in(ShopUnits.MILLIMETRE));
    assertTrue(length.isEquivalentTo(inches(2)));
    assertEquals(inches(3), inches(1).add(length));
    assertEquals(Measure.of(3, INCH), length.add(millimetres(25.4)));
    assertEquals("2 in", length.toString());
  }

  @Test
  void areReadByTheirBaseUnits() {
    Unit<Area> square = other("sq", Map.of("m", 2));
    assertTrue(Measure.of(1, square).hasDimensionOf(ShopUnits.SQUARE_INCH));
    Unit<Area> strange = other("?", Map.of("furlong", 2));
    String message =
        assertThrows(IllegalArgumentException.class, () -> Measure.of(1, strange)).getMessage();
    assertTrue(message.startsWith("unit must be made of the seven SI base units"), message);
  }

  @SuppressWarnings("unchecked")
  private static Unit<Length> unit(String symbol, double size, Unit<Length> system) {
    return (Unit<Length>)
        proxy(
            (self, method, arguments) ->
                switch (method.getName()) {
                  case "getSystemUnit" -> system == null ? self : system;
                  case "getConverterTo" -> MultiplyConverter.of(size);
                  case "getBaseUnits" -> null;
                  default -> answer(symbol, self, method.getName(), arguments);
                });
  }

  /** A system unit made of base units to given powers. */
  @SuppressWarnings("unchecked")
  private static Unit<Area> other(String symbol, Map<String, Integer> powers) {
    return (Unit<Area>)
        proxy(
            (self, method, arguments) ->
                switch (method.getName()) {
                  case "getSystemUnit" -> self;
                  case "getConverterTo" -> (UnitConverter) MultiplyConverter.identity();
                  case "getBaseUnits" -> {
                    Map.Entry<String, Integer> only = powers.entrySet().iterator().next();
                    yield Map.of(unit(only.getKey(), 1, null), only.getValue());
                  }
                  default -> answer(symbol, self, method.getName(), arguments);
                });
  }

  private static Object answer(String symbol, Object self, String method, Object[] arguments) {
    return switch (method) {
      case "getSymbol", "toString" -> symbol;
      case "getDimension" ->
          Proxy.newProxyInstance(
              OtherMakersUnitTest.class.getClassLoader(),
              new Class<?>[] {Dimension.class},
              (dimension, asked, none) -> null);
      case "hashCode" -> System.identityHashCode(self);
      case "equals" -> self == arguments[0];
      default -> throw new UnsupportedOperationException(method);
    };
  }

  private static Unit<?> proxy(InvocationHandler handler) {
    return (Unit<?>)
        Proxy.newProxyInstance(
            OtherMakersUnitTest.class.getClassLoader(), new Class<?>[] {Unit.class}, handler);
  }
}
