package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.text.ParsePosition;
import javax.measure.Unit;
import javax.measure.format.MeasurementParseException;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How {@link LengthFormat} reads in odd places; the texts themselves stand in the grammar test. */
class LengthReadingTest {
  @Test
  @SuppressWarnings("unchecked") // what a caller's unchecked cast can bring about
  void refusesAUnitOfMassAsTheDefault() {
    Unit<Length> mass = (Unit<Length>) (Unit<?>) ShopUnits.KILOGRAM;
    assertThrows(
        IllegalArgumentException.class,
        () -> LengthFormat.standard().withDefaultUnit(mass).parse("3"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"1", " ", "-", "1/", "½", "'", "x", "(", "１"})
  void refusesTenThousandCharactersAtOnce(String character) {
    String text = character.repeat(10_000).substring(0, 10_000);
    MeasurementParseException refused =
        assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse(text));

    String message = refused.getMessage();
    assertTrue(message.startsWith("a length must be at most"), message);
    assertTrue(message.endsWith("was 10000; give one length at a time"), message);
    assertTrue(refused.getPosition() >= 0 && refused.getPosition() <= text.length());
  }

  @Test
  void refusesANumberThatNoDoubleHolds() {
    String digits = "9".repeat(350);
    for (String text : new String[] {digits + " in", digits + "/1 in", digits + "' 1\""}) {
      MeasurementParseException refused =
          assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse(text));
      assertTrue(refused.getMessage().contains("a number that a double can hold"));
    }
  }

  @Test
  void readsALengthOutOfALongerText() {
    ParsePosition position = new ParsePosition(4);
    assertEquals(inches(1.5), LengthFormat.standard().parse("bar 1 1/2 in by 40 mm", position));
    assertEquals(12, position.getIndex());

    position.setIndex(16);
    assertEquals(millimetres(40), LengthFormat.standard().parse("bar 1 1/2 in by 40 mm", position));
    assertEquals(21, position.getIndex());
  }

  @Test
  void refusesToReadFromOutsideTheText() {
    for (int index : new int[] {-1, 5}) {
      assertEquals(
          "position must lie in the text of 4 characters, was " + index + "; begin with 0",
          assertThrows(
                  IllegalArgumentException.class,
                  () -> LengthFormat.standard().parse("1 in", new ParsePosition(index)))
              .getMessage());
    }
    ParsePosition end = new ParsePosition(4);
    assertThrows(MeasurementParseException.class, () -> LengthFormat.standard().parse("1 in", end));
    assertEquals(4, end.getIndex());
  }
}
