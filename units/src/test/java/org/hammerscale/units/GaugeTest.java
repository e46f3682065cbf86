package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Gauge series: their numbers, and the way from a thickness to a number. */
class GaugeTest {
  static Stream<Arguments> series() {
    return Stream.of(
        arguments(Gauge.MANUFACTURERS_STANDARD, "3", "38", 36),
        arguments(Gauge.US_STANDARD, "7/0", "38", 45),
        arguments(Gauge.BIRMINGHAM_WIRE, "5/0", "36", 41),
        arguments(Gauge.BIRMINGHAM_SHEET, "15/0", "52", 67),
        arguments(Gauge.IMPERIAL_WIRE, "7/0", "50", 57),
        arguments(Gauge.AMERICAN_WIRE, "4/0", "40", 44),
        arguments(Gauge.WOOD_SCREW, "0", "24", 25));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("series")
  void runsFromItsFirstNumberToItsLast(Gauge gauge, String first, String last, int count) {
    List<String> numbers = gauge.numbers();
    assertEquals(first, numbers.get(0));
    assertEquals(last, numbers.get(numbers.size() - 1));
    assertEquals(count, numbers.size());
    assertTrue(numbers.contains("10") && numbers.contains("20"));
    assertThrows(UnsupportedOperationException.class, () -> numbers.add("99"));
    assertFalse(gauge.name().isBlank());
    assertFalse(gauge.source().isBlank());
    assertEquals(gauge.name() + ", " + first + " to " + last, gauge.toString());
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("series")
  void neverTurnsBack(Gauge gauge, String first, String last, int count) {
    // Thinner with every number, but for screws, which grow.
    int direction = gauge == Gauge.WOOD_SCREW ? 1 : -1;
    List<String> numbers = gauge.numbers();
    for (int i = 1; i < numbers.size(); i++) {
      int step = gauge.size(numbers.get(i)).compareTo(gauge.size(numbers.get(i - 1)));
      assertEquals(direction, Integer.signum(step), numbers.get(i));
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("series")
  void findsEveryNumberByItsSize(Gauge gauge, String first, String last, int count) {
    for (String number : gauge.numbers()) {
      assertEquals(number, gauge.nearest(gauge.size(number)));
    }
  }

  @Test
  void takesNumbersAsTheyAreWritten() {
    assertEquals(Gauge.IMPERIAL_WIRE.size("16"), Gauge.IMPERIAL_WIRE.size(16));
    assertEquals(Gauge.IMPERIAL_WIRE.size(0), Gauge.IMPERIAL_WIRE.size("1/0"));
    assertEquals(inches(0.064), Gauge.IMPERIAL_WIRE.size(16));
  }

  @Test
  void findsTheNumberNearestToAThickness() {
    // 3 mm are 0.1181 in: number 11 is 0.120 in, number 12 0.109 in.
    assertEquals("11", Gauge.BIRMINGHAM_WIRE.nearest(millimetres(3)));
    // 0.114 in lies between them: 0.006 in off the one, 0.005 in off the other.
    assertEquals("12", Gauge.BIRMINGHAM_WIRE.nearest(inches(0.114)));
    // Half-way between number 1, 0.28125 in, and number 2, 0.265625 in: the first in the list.
    assertEquals("1", Gauge.US_STANDARD.nearest(inches(0.2734375)));
    assertEquals("8", Gauge.WOOD_SCREW.nearest(millimetres(4.2)));
  }

  /** From 3/0 on six numbers about halve; before it each is 1/24 in thicker. */
  @Test
  void theSheetGaugeFollowsItsLaw() {
    Gauge sheet = Gauge.BIRMINGHAM_SHEET;
    List<String> numbers = sheet.numbers();
    int half = numbers.indexOf("3/0");
    double sixth = Math.pow(2, 1 / 6d);
    for (int i = 1; i < numbers.size(); i++) {
      String number = numbers.get(i);
      double size = sheet.size(number).in(ShopUnits.INCH);
      if (i > half) {
        double before = sheet.size(numbers.get(i - 1)).in(ShopUnits.INCH);
        assertEquals(sixth, before / size, 0.013, number); // sizes of two or three digits
      } else if (!number.equals("5/0")) { // printed 0.005 in too thick
        assertEquals(0.5 + (half - i) / 24d, size, 0.0001, number);
      }
    }
    assertEquals(inches("1/4"), sheet.size(4));
    assertEquals(inches("1/8"), sheet.size(10));
    assertEquals(inches("1/16"), sheet.size(16));
    assertEquals(inches("1/32"), sheet.size(22));
    assertEquals(inches("1/64"), sheet.size(28));
  }

  @Test
  void refusesANumberOutsideTheSeries() {
    String expected = "number must be one of the Imperial standard wire gauge, 7/0 to 50, was ";
    for (String number : List.of("51", "8/0", "-1", "", "16 ", "2/1", "x")) {
      assertEquals(
          expected + number + "; write 3/0 for 000",
          assertThrows(IllegalArgumentException.class, () -> Gauge.IMPERIAL_WIRE.size(number))
              .getMessage());
    }
    assertThrows(IllegalArgumentException.class, () -> Gauge.WOOD_SCREW.size(25));
    assertThrows(IllegalArgumentException.class, () -> Gauge.MANUFACTURERS_STANDARD.size(2));
  }

  @Test
  void refusesAThicknessOutsideTheSeries() {
    assertEquals(
        "thickness must lie in the Birmingham (Stubs' iron) wire gauge, 0.004 in to 0.5 in,"
            + " was 5/8 in; give the thickness itself",
        assertThrows(
                IllegalArgumentException.class, () -> Gauge.BIRMINGHAM_WIRE.nearest(inches(0.625)))
            .getMessage());
    for (double thickness : new double[] {0, -0.1, 0.0039, 0.5001}) {
      assertThrows(
          IllegalArgumentException.class, () -> Gauge.BIRMINGHAM_WIRE.nearest(inches(thickness)));
    }
  }
}
