package org.hammerscale.units;

import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.ShopUnits.CELSIUS;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tech.units.indriya.function.ExpConverter;
import tech.units.indriya.function.LogConverter;
import tech.units.indriya.quantity.Quantities;

/** What a measure refuses, and in which words. */
class MeasureRefusalTest {
  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  /** What an unchecked cast somewhere in a caller's code can bring about. */
  @SuppressWarnings("unchecked")
  private static Quantity<Length> smuggledAsLength(Quantity<?> other) {
    return (Quantity<Length>) other;
  }

  @SuppressWarnings("unchecked")
  private static Unit<Length> smuggledAsLength(Unit<?> other) {
    return (Unit<Length>) other;
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesWhatIsNoNumber(double value) {
    assertEquals(notFinite("value", value + " in"), refusal(() -> Measure.of(value, INCH)));
    assertEquals(notFinite("value", value + " in"), refusal(() -> inches(value)));
    assertEquals(notFinite("newValue", value + " in"), refusal(() -> inches(1).withValue(value)));
    assertEquals(notFinite("factor", value + " in"), refusal(() -> inches(1).multiply(value)));
    assertEquals(
        notFinite("factor", value + " in"),
        refusal(() -> inches(1).multiply(Double.valueOf(value))));
  }

  private static String notFinite(String name, String value) {
    return name
        + " must give a finite number, was "
        + value
        + "; keep to sizes that can be measured";
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void refusesADivisorThatIsNoNumber(double divisor) {
    assertTrue(refusal(() -> inches(1).divide(divisor)).contains("finite"));
  }

  @Test
  void refusesOverflow() {
    Measure<Length> largest = inches(Double.MAX_VALUE);
    String infinite = "Infinity in";

    assertEquals(notFinite("addend", infinite), refusal(() -> largest.add(largest)));
    assertEquals(
        notFinite("subtrahend", "-Infinity in"), refusal(() -> largest.negate().subtract(largest)));
    assertEquals(notFinite("factor", infinite), refusal(() -> largest.multiply(2)));
    assertEquals(notFinite("divisor", infinite), refusal(() -> largest.divide(0.5)));
    assertEquals(notFinite("unit", "Infinity mm"), refusal(() -> largest.to(MILLIMETRE)));
    assertTrue(refusal(() -> largest.multiply(largest)).startsWith("factor must give a finite"));
    assertTrue(refusal(() -> inches(Double.MIN_VALUE).inverse()).contains("finite"));
    BigDecimal beyond = new BigDecimal("1e400");
    assertEquals(notFinite("factor", infinite), refusal(() -> inches(1).multiply(beyond)));
    assertEquals(
        notFinite("quantity", infinite),
        refusal(() -> Measure.from(Quantities.getQuantity(beyond, INCH))));
  }

  @Test
  void neverReadsAnAmountAsInfinite() {
    // The one way out to a bare number must not turn a large amount into no number.
    assertTrue(refusal(() -> metres(1e308).in(MILLIMETRE)).contains("finite"));
    assertTrue(refusal(() -> inches(1e300).ratio(inches(1e-300))).contains("finite"));
  }

  @Test
  void convertsLargeAmountsThatAnotherUnitCanHold() {
    // 1 ft = 0.3048 m, so the result is smaller than what went in.
    assertEquals(3.048e305, feet(1e306).in(METRE), 1e291);
  }

  @Test
  void comparesLargeAmountsToo() {
    Measure<Length> large = feet(1e306);

    assertTrue(large.isEquivalentTo(large), "an amount is equivalent to itself");
    assertTrue(large.isGreaterThan(feet(9e305)));
  }

  @Test
  void refusesDivisionByZero() {
    String advice = "; divide by what there is";
    assertEquals("divisor must not be zero" + advice, refusal(() -> inches(1).divide(0)));
    assertEquals(
        "divisor must not be zero" + advice, refusal(() -> inches(1).divide(Integer.valueOf(0))));
    assertEquals(
        "divisor must not be zero, was 0 mm" + advice,
        refusal(() -> inches(1).divide(millimetres(0))));
    assertEquals(
        "other must not be zero, was 0 mm; compare with what there is",
        refusal(() -> inches(1).ratio(millimetres(0))));
    assertEquals(
        "cannot take the inverse of zero, was 0 in; invert what there is",
        refusal(() -> inches(0).inverse()));
  }

  @Test
  void refusesAMassSmuggledInAsALength() {
    Quantity<Length> mass = smuggledAsLength(kilograms(2));
    Quantity<Length> foreign = smuggledAsLength(Quantities.getQuantity(2, ShopUnits.KILOGRAM));
    Map<Executable, String> calls =
        Map.ofEntries(
            Map.entry(() -> inches(1).add(mass), "addend"),
            Map.entry(() -> inches(1).add(foreign), "addend"),
            Map.entry(() -> inches(1).subtract(mass), "subtrahend"),
            Map.entry(() -> inches(1).ratio(mass), "other"),
            Map.entry(() -> inches(1).compareTo(mass), "that"),
            Map.entry(() -> inches(1).isGreaterThan(mass), "that"),
            Map.entry(() -> inches(1).isEquivalentTo(foreign), "that"),
            Map.entry(() -> inches(1).isWithin(mass, inches(1)), "other"),
            Map.entry(() -> inches(1).isWithin(inches(1), mass), "tolerance"),
            Map.entry(() -> Measure.from(mass).in(INCH), "unit"),
            Map.entry(() -> Measure.from(foreign).to(INCH), "unit"),
            Map.entry(() -> Graduation.SIXTEENTH.upTo(mass), "value"),
            Map.entry(() -> area(inches(1), mass), "second"));
    calls.forEach(
        (call, name) -> assertEquals(name + unlike("2 kg", "in", "mass", "length"), refusal(call)));
  }

  private static String unlike(String value, String unit, String kind, String asked) {
    return " must measure the same kind: a value of "
        + value
        + " cannot be read in "
        + unit
        + "; a "
        + kind
        + " is not "
        + (asked.startsWith("a") ? "an " : "a ")
        + asked;
  }

  @Test
  void namesBothKindsWhenAUnitIsSmuggledIn() {
    assertEquals(
        "unit" + unlike("1 in", "kg", "length", "mass"),
        refusal(() -> inches(1).in(smuggledAsLength(ShopUnits.KILOGRAM))));
    assertEquals(
        "unit" + unlike("1 in", "in²", "length", "area"),
        refusal(() -> inches(1).to(smuggledAsLength(ShopUnits.SQUARE_INCH))));
    assertEquals(
        "unit" + unlike("1 in", "°C", "length", "temperature"),
        refusal(() -> inches(1).in(smuggledAsLength(CELSIUS))));
  }

  @Test
  void refusesAProductOfWhatIsNoLength() {
    assertEquals(
        "first must be a length, was a mass in kg; give it in inches or millimetres",
        refusal(() -> area(smuggledAsLength(kilograms(2)), smuggledAsLength(kilograms(2)))));
  }

  @Test
  void refusesTheRelativeScale() {
    Quantity<Length> difference = Quantities.getQuantity(2.5, INCH, Scale.RELATIVE);
    Quantity<Temperature> rise = Quantities.getQuantity(10, CELSIUS, Scale.RELATIVE);

    Map<Executable, String> calls =
        Map.of(
            () -> Measure.from(difference), "quantity",
            () -> inches(1).add(difference), "addend",
            () -> inches(1).compareTo(difference), "that",
            () -> inches(1).isWithin(difference, inches(1)), "other",
            () -> Measure.from(rise), "quantity");
    calls.forEach(
        (call, name) -> {
          String message = refusal(call);
          assertTrue(message.startsWith(name + " must be on the absolute scale, was "), message);
        });
  }

  static Stream<Arguments> oddUnits() {
    return Stream.of(
        Arguments.of("logarithmic", METRE.transform(new LogConverter(10))),
        Arguments.of("exponential", METRE.transform(new ExpConverter(10))),
        // Like a gauge pressure: amounts counted from elsewhere than zero do not add up.
        Arguments.of("shifted", METRE.shift(1)),
        Arguments.of("negative", METRE.multiply(-1)),
        Arguments.of("beyond a double", METRE.multiply(1e300).multiply(1e300)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource
  void oddUnits(String name, Unit<Length> unit) {
    String message = refusal(() -> Measure.of(1, unit));
    assertTrue(message.startsWith("unit must be a plain multiple of an SI unit"), message);
  }

  @Test
  void doesNotTakeTheRootOfALengthForALength() {
    Unit<Length> root = smuggledAsLength(METRE.root(2));

    assertThrows(IllegalArgumentException.class, () -> metres(1).add(Measure.of(4, root)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void refusesWhatIsNoNumberFromOthersToo(double value) {
    // The reference implementation never holds such a value, but a third party's quantity may.
    Quantity<Length> foreign = new OtherQuantity(value, MILLIMETRE);
    for (Executable call :
        List.<Executable>of(
            () -> Measure.from(foreign),
            () -> inches(1).add(foreign),
            () -> inches(1).compareTo(foreign),
            () -> inches(1).isEquivalentTo(foreign),
            () -> inches(1).multiply(foreign),
            () -> Graduation.SIXTEENTH.upTo(foreign),
            () -> area(inches(1), foreign),
            () -> inches(1).ratio(foreign),
            () -> inches(1).isWithin(foreign, inches(1)),
            () -> inches(1).isWithin(inches(1), foreign))) {
      assertTrue(refusal(call).contains("finite"));
    }
  }

  @Test
  void refusesANegativeTolerance() {
    assertEquals(
        "tolerance must not be negative, was -1/2 in; give zero or more",
        refusal(() -> inches(1).isWithin(inches(1), inches(-0.5))));
    assertFalse(inches(1).isWithin(inches(2), inches(0)));
  }
}
