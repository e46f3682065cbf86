package org.hammerscale.units;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.ObjectStreamClass;
import java.io.ObjectStreamConstants;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.lang.reflect.Proxy;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.unit.Units;

/** What is written comes back as an equal, in this class loader and in another. */
class SerialFormTest {
  private static final double NOT_DECIMAL = 1 / 3d;

  static Stream<Object> things() {
    Stream<Object> measures =
        ShopUnits.system().getUnits().stream().map(unit -> measure(NOT_DECIMAL, unit));
    return Stream.concat(
        measures,
        Stream.of(
            Measure.of(2, MetricPrefix.KILO(Units.METRE)),
            inches(3).multiply(Measures.poundsForce(5)),
            inches(3).inverse(),
            Estimate.of(inches(1), inches("1 1/4"), inches(2)),
            Estimate.exact(celsius(900)),
            SIXTEENTH,
            MILLIMETRE,
            Graduation.of(millimetres(5)),
            Tolerance.absolute(millimetres(0.5)),
            Tolerance.graduation(SIXTEENTH),
            Tolerance.<Length>relative(0.01)));
  }

  private static <Q extends Quantity<Q>> Measure<Q> measure(double value, Unit<Q> unit) {
    return Measure.of(value, unit);
  }

  @ParameterizedTest
  @MethodSource("things")
  void comesBackEqual(Object thing) {
    Object read = read(written(thing));
    assertEquals(thing, read);
    assertEquals(thing.hashCode(), read.hashCode());
    assertEquals(thing.toString(), read.toString());
  }

  @Test
  @SuppressWarnings("unchecked") // an operator on bytes there is one here too
  void comesBackFromAnotherClassLoader() throws Exception {
    Thread thread = Thread.currentThread();
    ClassLoader own = thread.getContextClassLoader();
    ClassLoader platform = ClassLoader.getPlatformClassLoader(); // which does not know us
    try (URLClassLoader other = new URLClassLoader(classPath(), platform)) {
      thread.setContextClassLoader(other); // as whoever loads a program there does
      Class<?> echo = Class.forName(Echo.class.getName(), true, other);
      var there = (UnaryOperator<byte[]>) echo.getDeclaredConstructor().newInstance();
      for (Object thing : things().toList()) {
        assertEquals(thing, read(there.apply(written(thing))));
      }
    } finally {
      thread.setContextClassLoader(own);
    }
  }

  /** A measure caught in a lambda, as a job that is sent to other machines catches it. */
  @Test
  void lambdasCatchMeasures() {
    interface Job extends UnaryOperator<Measure<Length>>, Serializable {}
    Measure<Length> kerf = inches("1/8");
    Job job = length -> length.add(kerf);
    Job sent = (Job) read(written(job));
    assertEquals(inches("3 1/8"), sent.apply(inches(3)));
  }

  @Test
  void unitsOfTheShopComeBackAsThemselves() {
    for (Unit<?> unit : ShopUnits.system().getUnits()) {
      Measure<?> read = (Measure<?>) read(written(measure(1, unit)));
      assertSame(unit, read.getUnit());
      assertSame(unit, ShopUnits.system().getUnit(ShopUnits.symbol(unit)));
    }
    assertEquals("°C", ShopUnits.symbol(ShopUnits.CELSIUS));
    assertEquals("", ShopUnits.symbol(ShopUnits.ONE));
  }

  @Test
  void writesNoMoreThanNumberAndSymbol() {
    assertTrue(written(inches(1)).length < 200, () -> "bytes: " + written(inches(1)).length);
  }

  @Test
  void unitThatCannotBeWrittenIsRefused() {
    @SuppressWarnings("unchecked") // a proxy of the interface
    Unit<Length> bare =
        (Unit<Length>)
            Proxy.newProxyInstance(
                SerialFormTest.class.getClassLoader(),
                new Class<?>[] {Unit.class},
                (proxy, method, arguments) ->
                    switch (method.getName()) {
                      case "hashCode" -> 1;
                      case "toString" -> "furlong";
                      default -> method.invoke(ShopUnits.FOOT, arguments);
                    });
    Measure<Length> length = Measure.of(1, bare);
    UncheckedIOException refusal = assertThrows(UncheckedIOException.class, () -> written(length));
    assertEquals(NotSerializableException.class, refusal.getCause().getClass());
  }

  @Test
  void symbolOfNoUnitIsRefused() {
    String text = new String(written(Measures.pounds(1)), StandardCharsets.ISO_8859_1);
    byte[] damaged = text.replace("\u0002lb", "\u0002qq").getBytes(StandardCharsets.ISO_8859_1);
    UncheckedIOException refusal = assertThrows(UncheckedIOException.class, () -> read(damaged));
    assertEquals("unit must be one of the shop's, was qq", refusal.getCause().getMessage());
  }

  @ParameterizedTest
  @ValueSource(classes = {Measure.class, Estimate.class, Graduation.class, Tolerance.class})
  void streamWithTheThingItselfIsRefused(Class<?> type) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeShort(ObjectStreamConstants.STREAM_MAGIC);
    out.writeShort(ObjectStreamConstants.STREAM_VERSION);
    out.writeByte(ObjectStreamConstants.TC_OBJECT);
    out.writeByte(ObjectStreamConstants.TC_CLASSDESC);
    out.writeUTF(type.getName());
    out.writeLong(ObjectStreamClass.lookup(type).getSerialVersionUID());
    out.writeByte(ObjectStreamConstants.SC_SERIALIZABLE);
    out.writeShort(0); // no fields
    out.writeByte(ObjectStreamConstants.TC_ENDBLOCKDATA);
    out.writeByte(ObjectStreamConstants.TC_NULL);
    UncheckedIOException refusal =
        assertThrows(UncheckedIOException.class, () -> read(bytes.toByteArray()));
    assertEquals(InvalidObjectException.class, refusal.getCause().getClass());
  }

  /** Reads and writes again, wherever it is loaded. */
  public static final class Echo implements UnaryOperator<byte[]> {
    @Override
    public byte[] apply(byte[] bytes) {
      Object thing = read(bytes);
      if (!thing.getClass().getClassLoader().equals(Echo.class.getClassLoader())) {
        throw new IllegalStateException(thing + " was not read in this class loader");
      }
      return written(thing);
    }
  }

  private static byte[] written(Object thing) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(thing);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static Object read(byte[] bytes) {
    try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
      return in.readObject();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static URL[] classPath() throws MalformedURLException {
    String path =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<URL> urls = new ArrayList<>();
    for (String entry : path.split(File.pathSeparator, -1)) {
      urls.add(new File(entry).toURI().toURL());
    }
    return urls.toArray(URL[]::new);
  }
}
