package org.hammerscale.units;

import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.length;
import static org.hammerscale.units.Measures.massPerLength;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsPerCubicFoot;
import static org.hammerscale.units.Measures.seconds;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** How a measure prints: as a smith would write it. */
class MeasureTextTest {
  static Stream<Arguments> texts() {
    return Stream.of(
        Arguments.of("0 in", inches(0)),
        Arguments.of("1 in", inches(1)),
        Arguments.of("1/2 in", inches(0.5)),
        Arguments.of("63/64 in", inches(0.984375)),
        Arguments.of("1 1/2 in", inches(1.5)),
        Arguments.of("-1 1/2 in", inches(-1.5)),
        Arguments.of("42 1/2 in", length("3' 6 1/2\"")),
        // π × 3/4 lies on no sixty-fourth.
        Arguments.of("2.3562 in", inches(Math.PI * 0.75)),
        Arguments.of("0.1 in", inches(0.1)),
        Arguments.of("0.3333 in", inches(1 / 3.0)),
        Arguments.of("10000000000000 in", inches(1e13)),
        Arguments.of("1000000000000000000000 mm", millimetres(1e21)),
        Arguments.of("3.5 ft", feet(3.5)),
        Arguments.of("12.7 mm", millimetres(12.7)),
        Arguments.of("0.0254 m", inches(1).to(ShopUnits.METRE)),
        Arguments.of("2.54 cm", inches(1).to(ShopUnits.CENTIMETRE)),
        Arguments.of("1000 thou", inches(1).to(ShopUnits.THOU)),
        Arguments.of("5 mm", metres(0.005).to(ShopUnits.MILLIMETRE)),
        Arguments.of("6 in²", area(inches(2), inches(3))),
        Arguments.of("6 mm²", area(millimetres(2), millimetres(3))),
        Arguments.of("24 in³", volume(inches(4), area(inches(2), inches(3)))),
        Arguments.of("1.5 lb", pounds(1.5)),
        Arguments.of("0.25 kg", kilograms(0.25)),
        Arguments.of("250 g", kilograms(0.25).to(ShopUnits.GRAM)),
        Arguments.of("24 oz", pounds(1.5).to(ShopUnits.OUNCE)),
        Arguments.of("7850 kg/m³", kilogramsPerCubicMetre(7850)),
        Arguments.of("489.6 lb/ft³", poundsPerCubicFoot(489.6)),
        // The bar tables' 3.4 lb for a foot of inch-square steel at 489.6 lb/ft³.
        Arguments.of(
            "3.4 lb/ft", massPerLength(area(inches(1), inches(1)), poundsPerCubicFoot(489.6))),
        Arguments.of(
            "0.785 kg/m",
            massPerLength(area(millimetres(10), millimetres(10)), kilogramsPerCubicMetre(7850))),
        Arguments.of("45°", degrees(45)),
        Arguments.of("30 s", seconds(30)),
        Arguments.of("1.5 min", minutes(1.5)),
        Arguments.of("0.5 h", minutes(30).to(ShopUnits.HOUR)),
        Arguments.of("0.5", inches(1).divide(inches(2))));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("texts")
  void prints(String expected, Measure<?> measure) {
    assertEquals(expected, measure.toString());
  }

  @Test
  void keepsFourSignificantDigitsAndEveryWholeOne() {
    assertEquals("123457°", degrees(123456.7).toString());
    assertEquals("1235°", degrees(1234.567).toString());
    assertEquals("12.35°", degrees(12.34567).toString());
    assertEquals("0.00001235 mm", millimetres(0.0000123456).toString());
    assertEquals("-0.00001235 mm", millimetres(-0.0000123456).toString());
  }

  @Test
  void printsInchesOfOtherMakersAsFractionsToo() {
    assertEquals("3/8 in", Measure.of(0.375, ShopUnits.METRE.multiply(0.0254)).toString());
  }

  @Test
  void isReadBack() {
    List<Measure<Length>> lengths =
        List.of(
            inches("1 1/2"),
            inches(-0.1),
            inches(1 / 3.0),
            metres(Math.PI),
            inches(1e15),
            inches(Double.MAX_VALUE),
            feet(2.25),
            millimetres(12.7),
            millimetres(1e-9),
            metres(3.048),
            inches(1).to(ShopUnits.CENTIMETRE),
            inches(0.017).to(ShopUnits.THOU));
    for (Measure<Length> length : lengths) {
      Measure<Length> back = length(length.toString());
      assertEquals(length.getUnit(), back.getUnit());
      // Printed to four significant digits at least: half a unit of the fourth.
      double off = Math.abs(back.in(length.getUnit()) - length.getValue());
      assertTrue(off <= 5e-4 * Math.abs(length.getValue()), length + " was read back as " + back);
    }
  }
}
