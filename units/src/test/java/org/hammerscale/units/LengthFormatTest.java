package org.hammerscale.units;

import static javax.measure.MetricPrefix.KILO;
import static org.hammerscale.units.Graduation.EIGHTH;
import static org.hammerscale.units.Graduation.HALF_MILLIMETRE;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.QUARTER;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Graduation.SIXTY_FOURTH;
import static org.hammerscale.units.Graduation.TENTH_MILLIMETRE;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import systems.uom.common.USCustomary;
import tech.units.indriya.quantity.Quantities;

/** What {@link LengthFormat} prints, and how it behaves in odd places. */
class LengthFormatTest {
  private static LengthFormat feetTo(Graduation<Length> rule) {
    return LengthFormat.to(rule).withFeet();
  }

  static Stream<Arguments> printed() {
    LengthFormat sixteenths = LengthFormat.to(SIXTEENTH);
    return Stream.of(
        arguments("0 in", sixteenths, inches(0)),
        arguments("1/16 in", sixteenths, inches(0.0625)),
        arguments("1/2 in", sixteenths, inches(0.5)),
        arguments("1 3/4 in", sixteenths, inches(1.7671)),
        arguments("-1 1/2 in", sixteenths, inches(-1.5)),
        // 100 mm are 3.937 in; 3 15/16 in are 3.9375.
        arguments("3 15/16 in", sixteenths, millimetres(100)),
        arguments("42 1/2 in", sixteenths, feet(3.5416666666666665)),
        // Nothing is left of a length below half a mark, not even its sign.
        arguments("0 in", sixteenths, inches(-0.01)),
        // 31/32 lies half-way, and carries into the whole inch.
        arguments("1 in", sixteenths, inches(0.96875)),
        arguments("12 in", sixteenths, inches("11 63/64")),
        arguments("11 63/64 in", LengthFormat.to(SIXTY_FOURTH), inches("11 63/64")),
        arguments("1/4 in", LengthFormat.to(QUARTER), inches(0.3)),
        arguments("3 in", LengthFormat.to(Graduation.of(inches(1))), inches(2.5)),
        // with feet
        arguments("1' 0\"", feetTo(SIXTEENTH), inches("11 63/64")),
        arguments("2' 0\"", feetTo(SIXTEENTH), inches("23 31/32")),
        arguments("1' 1 1/16\"", feetTo(SIXTEENTH), inches("13 1/16")),
        arguments("3' 6 1/2\"", feetTo(SIXTEENTH), inches(42.5)),
        arguments("-3' 6 1/2\"", feetTo(SIXTEENTH), inches(-42.5)),
        arguments("11 1/2 in", feetTo(SIXTEENTH), inches(11.5)),
        arguments("0 in", feetTo(EIGHTH), inches(0)),
        arguments("1' 0\"", feetTo(Graduation.of(inches("1/16"))), inches("11 63/64")),
        arguments("2' 0\"", feetTo(Graduation.of(inches(1))), inches(23.5)),
        arguments("3' 3 3/8\"", feetTo(EIGHTH), metres(1)),
        // millimetre rules
        arguments("25.4 mm", LengthFormat.to(TENTH_MILLIMETRE), inches(1)),
        arguments("12.3 mm", LengthFormat.to(TENTH_MILLIMETRE), millimetres(12.34)),
        arguments("12.5 mm", LengthFormat.to(HALF_MILLIMETRE), millimetres(12.34)),
        arguments("-12 mm", LengthFormat.to(Graduation.MILLIMETRE), millimetres(-12.34)),
        arguments(
            "12.35 mm", LengthFormat.to(Graduation.of(millimetres(0.05))), millimetres(12.34)),
        arguments("12340 mm", LengthFormat.to(Graduation.MILLIMETRE), metres(12.34)),
        arguments("3 ft", LengthFormat.to(Graduation.of(feet(1))), inches(40)),
        // without a rule
        arguments("1 1/2 in", LengthFormat.standard(), inches(1.5)),
        arguments("12.34 mm", LengthFormat.standard(), millimetres(12.34)),
        arguments(
            "1 1/2 in", LengthFormat.standard(), Quantities.getQuantity(1.5, ShopUnits.INCH)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource
  void printed(String expected, LengthFormat format, Quantity<?> length) throws IOException {
    assertEquals(expected, format.format(length));

    StringBuilder page = new StringBuilder("cut ");
    assertSame(page, format.format(length, page));
    assertEquals("cut " + expected, page.toString());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.001, 0.0005})
  void printsToAFineStepToo(double step) {
    LengthFormat format = LengthFormat.to(Graduation.of(millimetres(step)));

    assertEquals("1234.565 mm", format.format(millimetres(1234.565)));
    assertEquals("100.005 mm", format.format(millimetres(100.005)));
  }

  @Test
  void neverPrintsAnotherLengthForOneTooLargeToCount() {
    // 10¹⁸ sixteenths and more do not fit the counter of a fraction; whole inches they are anyhow.
    for (Measure<Length> large : List.of(inches(1e18), inches(1e30), inches(-1e300))) {
      String text = LengthFormat.to(SIXTEENTH).format(large);
      assertEquals(large, LengthFormat.standard().parse(text), text);
    }
  }

  @Test
  void printsFeetOnInchRulesOnly() {
    String expected =
        "feet are printed on a rule in fractions of an inch; start with LengthFormat.to(SIXTEENTH)";
    for (LengthFormat format :
        new LengthFormat[] {
          LengthFormat.standard(),
          LengthFormat.to(TENTH_MILLIMETRE),
          LengthFormat.to(Graduation.of(inches(0.001)))
        }) {
      assertEquals(
          expected, assertThrows(IllegalStateException.class, format::withFeet).getMessage());
    }
  }

  @Test
  void refusesToPrintAMassAsALength() {
    assertEquals(
        "quantity must be a length, was 1 kg; print it by its toString",
        assertThrows(
                IllegalArgumentException.class,
                () -> LengthFormat.to(SIXTEENTH).format(kilograms(1)))
            .getMessage());
  }

  @Test
  void readsBackLengthsInUnitsOfOtherMakers() {
    for (Unit<Length> unit : List.of(KILO(ShopUnits.METRE), USCustomary.YARD)) {
      String text = LengthFormat.standard().format(Measure.of(2, unit));
      assertTrue(LengthFormat.standard().parse(text).isEquivalentTo(Measure.of(2, unit)), text);
    }
  }

  @Test
  void isDescribedInWords() {
    assertEquals("lengths", LengthFormat.standard().toString());
    assertEquals(
        "lengths in 1/16 in steps with feet, a bare number in mm",
        feetTo(SIXTEENTH).withDefaultUnit(ShopUnits.MILLIMETRE).toString());
  }

  @Test
  void keepsItsRuleUnderADefaultUnit() {
    LengthFormat format = LengthFormat.to(EIGHTH).withDefaultUnit(ShopUnits.INCH).withFeet();
    assertEquals("1' 1 1/8\"", format.format(inches(13.13)));
    assertEquals(inches(7), format.parse("7"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "ar-EG-u-nu-arab", "fr-CH", "hi-IN-u-nu-deva", "tr-TR"})
  void doesNotAskTheDefaultLocale(String tag) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(tag));
    try {
      assertEquals(millimetres(1234.5), LengthFormat.standard().parse("1234.5 mm"));
      assertThrows(
          MeasurementParseException.class, () -> LengthFormat.standard().parse("1234,5 mm"));
      assertEquals("1234.5 mm", millimetres(1234.5).toString());
      assertEquals("1234.5 mm", LengthFormat.to(TENTH_MILLIMETRE).format(millimetres(1234.5)));
      assertEquals("3' 6 1/2\"", feetTo(SIXTEENTH).format(inches(42.5)));
      assertEquals("3.3333 in", inches(10 / 3.0).toString());
      assertEquals(inches(2), LengthFormat.standard().parse("2 inches"));
      assertTrue(
          assertThrows(IllegalArgumentException.class, () -> inches("1234,5"))
              .getMessage()
              .contains("at position 4"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void doesNotTakeEveryInchRuleForFractions() {
    // Thirds of an inch are on no ruler.
    Graduation<Length> thirds = Graduation.of(inches(1 / 3.0));
    assertFalse(LengthFormat.to(thirds).format(inches(0.34)).contains("/"));
  }

  @Test
  void equalByWhatItDoes() {
    LengthFormat plain = LengthFormat.to(SIXTEENTH);
    assertEquals(plain, LengthFormat.to(SIXTEENTH));
    assertEquals(plain.withFeet().hashCode(), LengthFormat.to(SIXTEENTH).withFeet().hashCode());
    assertNotEquals(plain, LengthFormat.to(MILLIMETRE));
    assertNotEquals(plain, plain.withFeet());
    assertNotEquals(plain, plain.withRemainder());
    assertNotEquals(plain, plain.withDefaultUnit(ShopUnits.INCH));
    assertNotEquals(plain, LengthFormat.standard());
    assertFalse(plain.equals(null));
  }
}
