package org.hammerscale.units;

import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.length;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import javax.measure.format.MeasurementParseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a mark leaves over, printed behind it and read back. */
class LengthRemainderTest {
  private final LengthFormat format = LengthFormat.to(SIXTEENTH).withRemainder();

  @Test
  void isPrintedWithItsSign() {
    assertEquals("1 3/4 in − 0.017", format.format(inches(1.733)));
    assertEquals("1 3/4 in + 0.017", format.format(inches(1.767)));
    assertEquals("-1 3/4 in − 0.017", format.format(inches(-1.767)));
    assertEquals("-1 3/4 in + 0.017", format.format(inches(-1.733)));
    assertEquals("0 in + 0.02", format.format(inches(0.02)));
    assertEquals("1' 0\" − 0.016", format.withFeet().format(inches("11 63/64")));
    assertEquals("25 mm + 0.4", metric().format(inches(1)));
    assertEquals("12 mm − 0.34", metric().format(millimetres(11.66)));
  }

  private static LengthFormat metric() {
    return LengthFormat.to(Graduation.MILLIMETRE).withRemainder();
  }

  @Test
  void isLeftOutWhereThereIsNone() {
    assertEquals("1 3/4 in", format.format(inches(1.75)));
    assertEquals("1 3/4 in", format.format(inches(1.7504)));
    assertEquals("1 3/4 in", format.format(inches(1.7496)));
    assertEquals("12 mm", metric().format(millimetres(12.004)));
  }

  @Test
  void isReadBack() {
    assertEquals(inches(1.733), length("1 3/4 in − 0.017"));
    assertEquals(inches(11.75), length("1' 0\" − 0.25"));
    assertEquals(millimetres(11.75), length("12 mm - .25"));
  }

  @Test
  void needsARule() {
    assertEquals(
        "a remainder is printed behind a mark; start with LengthFormat.to(SIXTEENTH)",
        assertThrows(IllegalStateException.class, () -> LengthFormat.standard().withRemainder())
            .getMessage());
    assertEquals("lengths in 1/16 in steps with the remainder", format.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"3' - 6", "3' - 6\"", "3 ft - 6", "3 ft - 6 in", "3' − 6 1/2\""})
  void neverTakesTheInchesBehindFeetForOne(String text) {
    // 3 ft 6 in as architects write it, with or without the inch mark; minus three feet to nobody.
    assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"3 - 6", "1 - 1/2", "3 − 6", "2 + 2"})
  void neverTakesARangeForOne(String text) {
    // Three to six, in words; a bare number has no unit for a remainder to stand behind.
    LengthFormat bare = LengthFormat.standard().withDefaultUnit(ShopUnits.INCH);
    assertThrows(MeasurementParseException.class, () -> bare.parse(text));
    assertThrows(IllegalArgumentException.class, () -> inches(text));
  }
}
