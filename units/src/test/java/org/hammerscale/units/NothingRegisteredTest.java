package org.hammerscale.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.spi.ServiceProvider;
import org.junit.jupiter.api.Test;
import tech.units.indriya.format.SimpleUnitFormat;
import tech.units.indriya.unit.Units;

/**
 * Using the shop's units changes nothing for anybody else in the same JVM.
 *
 * <p>Labels of units are kept JVM-wide, and other tests load libraries that do register theirs. So
 * the looking is done in a class loader of its own, where nobody has been before.
 */
class NothingRegisteredTest {
  @Test
  void theGlobalUnitFormatIsAsItWas() throws Exception {
    List<URL> path =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(NothingRegisteredTest::url)
            .toList();
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    try (URLClassLoader fresh =
        new URLClassLoader(path.toArray(URL[]::new), ClassLoader.getPlatformClassLoader())) {
      // Indriya finds its services through the context class loader.
      thread.setContextClassLoader(fresh);
      Class<?> looking = Class.forName(Looking.class.getName(), true, fresh);
      assertNotSame(Looking.class, looking, "the fresh loader has to load its own classes");
      Object seen = ((Callable<?>) looking.getDeclaredConstructor().newInstance()).call();

      String[] halves = seen.toString().split("\n---\n", -1);
      assertEquals(halves[0], halves[1]);
      assertTrue(halves[0].contains("in: unknown"), "nobody has been here before");
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  private static URL url(String path) {
    try {
      return Path.of(path).toUri().toURL();
    } catch (MalformedURLException e) {
      throw new AssertionError(e);
    }
  }

  /** What the world looks like before and after all that registers would have registered. */
  public static final class Looking implements Callable<String> {
    @Override
    public String call() {
      String before = look();
      Measure<?> area = Measures.area(Measures.inches(2), Measures.millimetres(3));
      Measure<?> cooling = Measures.fahrenheit(70).to(ShopUnits.CELSIUS);
      String used = area + " " + cooling + " " + Measures.length("3' 6\"") + ShopUnits.DEGREE;
      return used.isEmpty() ? "" : before + "\n---\n" + look();
    }

    private static String look() {
      StringBuilder seen = new StringBuilder();
      for (Unit<?> unit :
          List.of(
              Units.METRE.multiply(0.0254),
              Units.METRE.multiply(127).divide(5000),
              Units.METRE.multiply(0.3048),
              Units.KILOGRAM.multiply(0.45359237),
              Units.RADIAN.multiply(Math.PI).divide(180),
              Units.KELVIN.multiply(5).divide(9).shift(459.67))) {
        seen.append(SimpleUnitFormat.getInstance().format(unit)).append('\n');
        seen.append(SimpleUnitFormat.getInstance(SimpleUnitFormat.Flavor.ASCII).format(unit));
        seen.append('\n');
      }
      for (String symbol : List.of("in", "ft", "thou", "lb", "oz", "lb/ft", "in²", "°", "°F")) {
        seen.append(symbol).append(": ").append(parsed(symbol)).append('\n');
      }
      seen.append(Units.getInstance().getUnits().size()).append(" units, ");
      seen.append(ServiceProvider.available().size()).append(" providers");
      return seen.toString();
    }

    private static String parsed(String symbol) {
      try {
        return SimpleUnitFormat.getInstance().parse(symbol).toString();
      } catch (MeasurementParseException e) {
        return "unknown";
      }
    }
  }
}
