package org.hammerscale.units;

import static org.hammerscale.units.ShopUnits.CENTIMETRE;
import static org.hammerscale.units.ShopUnits.FOOT;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.hammerscale.units.ShopUnits.THOU;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What {@link LengthFormat} reads and what it refuses, text by text. */
class LengthGrammarTest {
  static Stream<Arguments> accepted() {
    return Stream.of(
        // whole numbers, fractions, mixed numbers
        arguments("1 in", 1, INCH),
        arguments("1/4 in", 0.25, INCH),
        arguments("1 1/4 in", 1.25, INCH),
        arguments("1-1/4\"", 1.25, INCH),
        arguments("12/16 in", 0.75, INCH),
        arguments("3/2 in", 1.5, INCH),
        arguments("0/4 in", 0, INCH),
        arguments("5⁄8 in", 0.625, INCH),
        arguments("2 63/64 in", 2.984375, INCH),
        arguments("1/3 in", 1 / 3.0, INCH),
        // decimals
        arguments("0.375 in", 0.375, INCH),
        arguments(".5 in", 0.5, INCH),
        arguments("1.50 in", 1.5, INCH),
        arguments("007 mm", 7, MILLIMETRE),
        arguments("3.5 ft", 3.5, FOOT),
        // feet and inches
        arguments("3' 6 1/2\"", 42.5, INCH),
        arguments("3'6-1/2\"", 42.5, INCH),
        arguments("3'-6\"", 42, INCH),
        arguments("3′ 6½″", 42.5, INCH),
        arguments("3’ 6”", 42, INCH),
        arguments("3 ft 6 in", 42, INCH),
        arguments("3 feet 6 inches", 42, INCH),
        arguments("1 foot 1 inch", 13, INCH),
        arguments("3' .5\"", 36.5, INCH),
        arguments("3' 1/2\"", 36.5, INCH),
        arguments("1/2' 3\"", 9, INCH),
        arguments("1' 0\"", 12, INCH),
        arguments("3'", 3, FOOT),
        arguments("½ ft", 0.5, FOOT),
        // a remainder behind the mark, in the last unit before it
        arguments("1 3/4 in − 0.017", 1.733, INCH),
        arguments("1 3/4\" - 0.017", 1.733, INCH),
        arguments("-1 3/4 in + 0.25", -1.5, INCH),
        arguments("1' 0\" − 0.5", 11.5, INCH),
        arguments("12 mm + .25", 12.25, MILLIMETRE),
        // signs
        arguments("+1 in", 1, INCH),
        arguments("-1 1/4 in", -1.25, INCH),
        arguments("-1-1/4 in", -1.25, INCH),
        arguments("−3' 6\"", -42, INCH),
        arguments("-0 in", 0, INCH),
        // units, with and without a space
        arguments("32mm", 32, MILLIMETRE),
        arguments("1 millimetre", 1, MILLIMETRE),
        arguments("2 millimetres", 2, MILLIMETRE),
        arguments("1 millimeter", 1, MILLIMETRE),
        arguments("2 millimeters", 2, MILLIMETRE),
        arguments("2.5 cm", 2.5, CENTIMETRE),
        arguments("1 centimetre", 1, CENTIMETRE),
        arguments("2 centimetres", 2, CENTIMETRE),
        arguments("1 centimeter", 1, CENTIMETRE),
        arguments("2 centimeters", 2, CENTIMETRE),
        arguments("2 m", 2, METRE),
        arguments("1 metre", 1, METRE),
        arguments("2 metres", 2, METRE),
        arguments("1 meter", 1, METRE),
        arguments("2 meters", 2, METRE),
        arguments("12 thou", 12, THOU),
        arguments("1 inch", 1, INCH),
        arguments("2 inches", 2, INCH),
        arguments("2″", 2, INCH),
        arguments("2”", 2, INCH),
        arguments("2'", 2, FOOT),
        arguments("2′", 2, FOOT),
        arguments("2’", 2, FOOT),
        arguments("2 foot", 2, FOOT),
        arguments("2 feet", 2, FOOT));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @MethodSource
  void accepted(String text, double value, Unit<Length> unit) {
    assertEquals(Measure.of(value, unit), LengthFormat.standard().parse(text));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @CsvSource({
    "½, 1, 2", "⅓, 1, 3", "⅔, 2, 3", "¼, 1, 4", "¾, 3, 4", "⅕, 1, 5", "⅖, 2, 5", "⅗, 3, 5",
    "⅘, 4, 5", "⅙, 1, 6", "⅚, 5, 6", "⅛, 1, 8", "⅜, 3, 8", "⅝, 5, 8", "⅞, 7, 8"
  })
  void readsVulgarFractions(String vulgar, double above, double below) {
    LengthFormat format = LengthFormat.standard();
    assertEquals(Measures.inches(above / below), format.parse(vulgar + " in"));
    assertEquals(Measures.inches(above / below), format.parse(vulgar + "″"));
    assertEquals(Measures.inches(2 + above / below), format.parse("2" + vulgar + " in"));
    assertEquals(Measures.inches(36 + above / below), format.parse("3' " + vulgar + "\""));
  }

  static Stream<Arguments> bareNumbers() {
    return Stream.of(
        arguments("1 1/2", INCH, 1.5, INCH),
        arguments("1½", INCH, 1.5, INCH),
        arguments("-3/16", INCH, -0.1875, INCH),
        arguments("12.5", MILLIMETRE, 12.5, MILLIMETRE),
        // A unit that is written out counts more than the default.
        arguments("40 mm", INCH, 40, MILLIMETRE),
        arguments("1 1/2 in", MILLIMETRE, 1.5, INCH),
        arguments("3' 6\"", MILLIMETRE, 42, INCH));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @MethodSource
  void bareNumbers(String text, Unit<Length> standing, double value, Unit<Length> unit) {
    assertEquals(
        Measure.of(value, unit), LengthFormat.standard().withDefaultUnit(standing).parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 6", "3 6 in", "3-6 in", "3 6\"", "3 ft 6", "3 6 mm"})
  void aDefaultUnitNeverStandsInForTheFootMark(String text) {
    // "3-6 in" is a range to one reader and 3 ft 6 in to nobody.
    LengthFormat feet = LengthFormat.standard().withDefaultUnit(FOOT);
    assertThrows(MeasurementParseException.class, () -> feet.parse(text));
  }

  static Stream<Arguments> refused() {
    return Stream.of(
        arguments("", 0, "expected a number"),
        arguments("   ", 3, "expected a number"),
        arguments("abc", 0, "expected a number"),
        arguments("in", 0, "expected a number"),
        arguments("-", 1, "expected a number"),
        arguments("--1 in", 1, "expected a number"),
        arguments("/2 in", 0, "expected a number"),
        arguments("'", 0, "expected a number"),
        arguments("NaN in", 0, "expected a number"),
        arguments("Infinity mm", 0, "expected a number"),
        arguments("∞ mm", 0, "expected a number"),
        // other people's digits
        arguments("١ mm", 0, "expected a number"),
        arguments("５ mm", 0, "expected a number"),
        // no unit
        arguments("1", 1, "a unit such as in, ft or mm"),
        arguments("1 1/2", 5, "a unit such as in, ft or mm"),
        arguments("3' 6", 4, "a unit such as in, ft or mm"),
        arguments("1\0in", 1, "a unit such as in, ft or mm"),
        arguments("1 1/2 1/2 in", 6, "a unit such as in, ft or mm"),
        arguments("1.5 1/2 in", 4, "a unit such as in, ft or mm"),
        arguments("1.5.2 in", 3, "a unit such as in, ft or mm"),
        arguments("½½ in", 1, "a unit such as in, ft or mm"),
        arguments("1⅓/2 in", 2, "a unit such as in, ft or mm"),
        arguments("1 -1/2 in", 2, "a unit such as in, ft or mm"),
        // another unit
        arguments("5 kg", 2, "one of the units in, ft, thou, mm, cm, m"),
        arguments("5 IN", 2, "one of the units in, ft, thou, mm, cm, m"),
        arguments("5 MM", 2, "one of the units in, ft, thou, mm, cm, m"),
        arguments("5 inn", 2, "one of the units in, ft, thou, mm, cm, m"),
        arguments("1e3 mm", 1, "one of the units in, ft, thou, mm, cm, m"),
        arguments("0x10 mm", 1, "one of the units in, ft, thou, mm, cm, m"),
        arguments("3' 6 mm", 5, "an inch mark after feet and inches"),
        // commas
        arguments("1,5 in", 1, "a decimal point instead of the comma"),
        arguments("1,000 mm", 1, "a decimal point instead of the comma"),
        arguments("1.000,5 mm", 5, "a decimal point instead of the comma"),
        arguments("1/2,5 in", 3, "a unit after the fraction"),
        // broken numbers
        arguments("1. in", 2, "a digit after the decimal point"),
        arguments(". in", 1, "a digit after the decimal point"),
        arguments("1/ in", 2, "the lower number of the fraction"),
        arguments("1/-2 in", 2, "the lower number of the fraction"),
        arguments("1/0 in", 2, "not zero"),
        arguments("1 1/0 in", 4, "not zero"),
        arguments("1/2/3 in", 3, "a unit after the fraction"),
        arguments("1 1/2.5 in", 5, "a unit after the fraction"),
        arguments("1 3/2 in", 2, "a fraction less than one after the whole number"),
        arguments("1-4/4 in", 2, "a fraction less than one after the whole number"),
        // more than a length
        arguments("1 in - 0.5 mm", 11, "the end of the length"),
        arguments("1 in -0.5", 5, "the end of the length"),
        arguments("1 in- 0.5", 4, "the end of the length"),
        arguments("1 in - 0,5", 8, "a decimal point instead of the comma"),
        arguments("1 in - 0.5 - 0.5", 11, "the end of the length"),
        arguments("1 in -", 5, "the end of the length"),
        arguments("1 in x", 5, "the end of the length"),
        arguments("1 in 2", 5, "the end of the length"),
        arguments("1 in, 2 in", 4, "the end of the length"),
        arguments("1 in²", 4, "the end of the length"),
        arguments("1''", 2, "the end of the length"),
        arguments("1\" 2'", 3, "the end of the length"),
        arguments("1 in\n", 4, "the end of the length"),
        // could be meant as a difference
        arguments("3' -6\"", 3, "expected"));
  }

  @ParameterizedTest(name = "[{index}] {0}")
  @MethodSource
  void refused(String text, int position, String tellingPart) {
    MeasurementParseException refused =
        assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse(text));

    assertTrue(refused.getMessage().contains(tellingPart), refused.getMessage());
    assertTrue(refused.getMessage().contains("\"" + text + "\""), refused.getMessage());
    assertTrue(refused.getMessage().contains("at position " + position), refused.getMessage());
    assertEquals(position, refused.getPosition());
    assertEquals(text, refused.getParsedString());
  }

  @Test
  void saysWhatItFound() {
    assertEquals(
        "\"1 1/2 inn\" is not a length: expected one of the units in, ft, thou, mm, cm, m"
            + " at position 6, found 'i'",
        assertThrows(
                MeasurementParseException.class, () -> LengthFormat.standard().parse("1 1/2 inn"))
            .getMessage());
    assertEquals(
        "\"12\" is not a length: expected a unit such as in, ft or mm at position 2, found the end",
        assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse("12"))
            .getMessage());
  }
}
