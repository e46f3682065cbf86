package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithinUlps;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.lang.ref.WeakReference;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URL;
import java.net.URLClassLoader;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import tech.units.indriya.unit.Units;

/** What is remembered of foreign units: never a wrong answer, and nothing for ever. */
class ForeignUnitsCacheTest {
  private static final int THREADS = 8;

  /** So many metres, as a unit; far more of them than are remembered at a time. */
  private static List<Unit<Length>> multiplesOfTheMetre(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(Units.METRE::multiply)
        .map(unit -> unit)
        .toList();
  }

  @Test
  void givesEachOfManyUnitsItsOwnAnswer() {
    List<Unit<Length>> units = multiplesOfTheMetre(1000);
    for (int round = 0; round < 3; round++) {
      for (int i = 0; i < units.size(); i++) {
        assertEquals(3.0 * (i + 1), Measure.of(3, units.get(i)).in(ShopUnits.METRE));
      }
    }
  }

  @Test
  void answersManyThreadsAtOnce() throws Exception {
    // All threads start together and fight for the same few places, with units of their own and
    // with shared ones. A place that is read while another thread changes it would show here.
    List<Unit<Length>> shared = multiplesOfTheMetre(200);
    CyclicBarrier start = new CyclicBarrier(THREADS);
    Callable<Integer> work =
        () -> {
          start.await();
          int wrong = 0;
          for (int i = 1; i <= 4000; i++) {
            Unit<Length> fresh = Units.METRE.multiply(i);
            wrong += Measure.of(3, fresh).in(ShopUnits.METRE) == 3.0 * i ? 0 : 1;
            int which = i % shared.size();
            Measure<Length> length = Measure.of(5, shared.get(which));
            wrong += length.in(ShopUnits.METRE) == 5.0 * (which + 1) ? 0 : 1;
          }
          return wrong;
        };
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Future<Integer>> results = new ArrayList<>();
      for (int i = 0; i < THREADS; i++) {
        results.add(threads.submit(work));
      }
      for (Future<Integer> result : results) {
        assertEquals(0, result.get(), "wrong answers");
      }
    } finally {
      threads.shutdownNow();
    }
  }

  @Test
  void letsGoOfAUnit() throws InterruptedException {
    assertForgotten(new WeakReference<>(usedUnit()));
  }

  /** A unit of its own stack frame, so that nothing here holds it when the frame is gone. */
  private static Unit<Length> usedUnit() {
    Unit<Length> unit = Units.METRE.multiply(0.123456789);
    assertWithinUlps(0.246913578, Measure.of(2, unit).in(ShopUnits.METRE), 1);
    return unit;
  }

  @Test
  void letsGoOfTheClassLoaderOfAUnit() throws Exception {
    assertForgotten(new WeakReference<>(loaderOfAUsedUnit()));
  }

  /** A unit whose class belongs to a class loader of its own, as in an unloaded web application. */
  @SuppressWarnings("unchecked")
  private static ClassLoader loaderOfAUsedUnit() throws Exception {
    Unit<Length> real = Units.METRE.multiply(0.5);
    try (URLClassLoader loader = new URLClassLoader(new URL[0], Unit.class.getClassLoader())) {
      Unit<Length> unit =
          (Unit<Length>)
              Proxy.newProxyInstance(
                  loader,
                  new Class<?>[] {Unit.class},
                  (proxy, method, arguments) -> {
                    try {
                      return method.invoke(real, arguments);
                    } catch (InvocationTargetException e) {
                      throw e.getCause();
                    }
                  });
      assertEquals(loader, unit.getClass().getClassLoader());
      assertEquals(1.5, Measure.of(3, unit).in(ShopUnits.METRE));
      return loader;
    }
  }

  private static void assertForgotten(WeakReference<?> reference) throws InterruptedException {
    for (int i = 0; i < 100 && reference.get() != null; i++) {
      System.gc();
      Thread.sleep(10);
    }
    assertNull(reference.get(), "still held after a hundred collections");
  }
}
