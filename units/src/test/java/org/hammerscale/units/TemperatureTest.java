package org.hammerscale.units;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.ShopUnits.CELSIUS;
import static org.hammerscale.units.ShopUnits.FAHRENHEIT;
import static org.hammerscale.units.ShopUnits.KELVIN;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Temperatures are points: they convert and compare, and nothing else. */
class TemperatureTest {
  /** Whole degrees: t(°F) = 1.8 t(°C) + 32, by definition. */
  @ParameterizedTest
  @CsvSource({"-40, -40", "0, 32", "20, 68", "100, 212", "870, 1598", "1260, 2300"})
  void convertWholeDegreesExactly(double celsius, double fahrenheit) {
    assertEquals(fahrenheit, celsius(celsius).in(FAHRENHEIT));
    assertEquals(celsius, fahrenheit(fahrenheit).in(CELSIUS));
  }

  /** T = t(°C) + 273.15 and T = (t(°F) + 459.67) ÷ 1.8, by definition. */
  @ParameterizedTest
  @CsvSource({
    "-273.15, -459.67, 0",
    "-40,     -40,     233.15",
    "0,       32,      273.15",
    "20,      68,      293.15",
    "100,     212,     373.15",
    "870,     1598,    1143.15"
  })
  void countFromAbsoluteZero(double celsius, double fahrenheit, double kelvin) {
    // No double holds 273.15 or 459.67, so a rounding or two of the number that is shifted by them.
    double slack = 2 * Math.ulp(kelvin + 459.67);
    assertEquals(kelvin, celsius(celsius).in(KELVIN), slack);
    assertEquals(kelvin, fahrenheit(fahrenheit).in(KELVIN), slack);
    assertEquals(celsius, Measure.of(kelvin, KELVIN).in(CELSIUS), slack);
    assertEquals(fahrenheit, Measure.of(kelvin, KELVIN).in(FAHRENHEIT), 2 * slack);
  }

  /** Decimal numbers, shifted and scaled in decimal arithmetic, which loses nothing. */
  @Test
  void convertTwoDecimalsToTheNearestDouble() {
    for (int hundredths = 0; hundredths < 200_000; hundredths++) {
      BigDecimal kelvin = BigDecimal.valueOf(hundredths, 2);
      BigDecimal celsius = kelvin.subtract(BigDecimal.valueOf(27_315, 2));
      Measure<Temperature> point = Measure.of(kelvin.doubleValue(), KELVIN);

      assertEquals(celsius.doubleValue(), point.in(CELSIUS), kelvin + " K");
      assertEquals(kelvin.doubleValue(), celsius(celsius.doubleValue()).in(KELVIN), kelvin + " K");
    }
  }

  @Test
  void comparePointsOnUnlikeScales() {
    assertEquals(0, celsius(100).compareTo(fahrenheit(212)));
    assertTrue(celsius(-40).isEquivalentTo(fahrenheit(-40)));
    assertTrue(celsius(20).isLessThan(fahrenheit(69)));
    assertTrue(celsius(0).isGreaterThan(Measure.of(273, KELVIN)));
    assertTrue(celsius(0).isLessThan(Measure.of(274, KELVIN)));
    assertTrue(Measure.of(274, KELVIN).isGreaterThan(fahrenheit(32)));
  }

  static Stream<Arguments> arithmetic() {
    Measure<Temperature> forging = celsius(900);
    Measure<Temperature> room = celsius(20);
    return Stream.of(
        call("add", () -> forging.add(room)),
        call("subtract", () -> forging.subtract(room)),
        call("subtract on unlike scales", () -> forging.subtract(fahrenheit(68))),
        call("multiply by a number", () -> forging.multiply(2)),
        call("multiply by a length", () -> forging.multiply(inches(2))),
        call("multiply a length", () -> inches(2).multiply(forging)),
        call("divide by a number", () -> forging.divide(2)),
        call("divide by a temperature", () -> forging.divide(room)),
        call("divide by a length", () -> forging.divide(inches(2))),
        call("divide kelvins by a length", () -> forging.to(KELVIN).divide(inches(2))),
        call("divide a length", () -> inches(2).divide(forging)),
        call("ratio", () -> forging.ratio(room)),
        call("ratio on unlike scales", () -> forging.ratio(fahrenheit(68))),
        call("ratio to a zero on another scale", () -> celsius(5).ratio(fahrenheit(32))),
        call("inverse", forging::inverse),
        call("negate", forging::negate),
        call("isWithin", () -> forging.isWithin(room, room)),
        call("isWithin on unlike scales", () -> forging.isWithin(room, fahrenheit(212))),
        call("round up", () -> forging.upTo(degreeSteps())),
        call("step of a rule", TemperatureTest::degreeSteps));
  }

  private static Graduation<Temperature> degreeSteps() {
    return Graduation.of(celsius(1));
  }

  private static Arguments call(String name, Executable call) {
    return Arguments.of(name, call);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource
  void arithmetic(String name, Executable call) {
    UnsupportedOperationException refused =
        assertThrows(UnsupportedOperationException.class, call, name);
    assertTrue(
        refused.getMessage().startsWith("arithmetic on a temperature point such as "),
        refused.getMessage());
  }

  @Test
  void refuseArithmeticWithAWayOut() {
    assertEquals(
        "arithmetic on a temperature point such as 900 °C is not defined; convert or compare it,"
            + " or take numbers out with in(unit)",
        assertThrows(UnsupportedOperationException.class, () -> celsius(900).subtract(celsius(20)))
            .getMessage());
  }

  @Test
  void refuseToLieBelowAbsoluteZero() {
    for (Executable call : List.<Executable>of(() -> celsius(-273.16), () -> fahrenheit(-459.68))) {
      String message = assertThrows(IllegalArgumentException.class, call).getMessage();
      assertTrue(message.startsWith("value must not lie below absolute zero, was -"), message);
    }
    assertEquals(
        "value must not lie below absolute zero, was -300 °C; give a temperature that there can be",
        assertThrows(IllegalArgumentException.class, () -> celsius(-300)).getMessage());
  }

  @Test
  void printWithTheirDegreeSign() {
    assertEquals("900 °C", celsius(900).toString());
    assertEquals("1598 °F", celsius(870).to(FAHRENHEIT).toString());
    assertEquals("1173 K", celsius(900).to(KELVIN).toString());
  }
}
