package org.hammerscale.checking;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import org.hammerscale.units.Density;
import org.hammerscale.units.LinearDensity;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;
import org.junit.jupiter.api.Test;

/** What a check value tells of itself, and what it refuses. */
class CheckValueTest {
  private static final CheckValue RING =
      new CheckValue(
          "hinge/rings",
          List.of(
              "ring of 2 in stock, length",
              "length",
              "bore = 5 in; thickness = 2 in; turns = 1.5; end = square; film = 10 W/(m² K)",
              "21.990",
              "in",
              "0.0005",
              "Ilgen, Forge Work, 1912",
              "sec. 111",
              "read",
              "a note"));

  private static CheckValue expecting(String number, String unit) {
    return new CheckValue(
        "room/matter", List.of("a", "b", "", number, unit, "0.5", "c", "", "computed", ""));
  }

  @Test
  void tellsItsColumns() {
    assertEquals("hinge/rings", RING.topic());
    assertEquals("ring of 2 in stock, length", RING.id());
    assertEquals("length", RING.question());
    assertEquals(List.of("bore", "thickness", "turns", "end", "film"), RING.inputs());
    assertEquals(21.99, RING.expected());
    assertEquals("in", RING.unit());
    assertEquals(0.0005, RING.tolerance());
    assertEquals("Ilgen, Forge Work, 1912", RING.source());
    assertEquals("sec. 111", RING.locator());
    assertEquals(Source.Kind.READ, RING.kind());
    assertEquals("a note", RING.note());
    assertEquals("ring of 2 in stock, length: 21.990 in ± 0.0005", RING.toString());
    assertEquals("a: 3 ± 0.5", expecting("3", "1").toString());
    assertEquals(List.of(), expecting("3", "1").inputs());
  }

  @Test
  void givesMeasures() {
    assertEquals(inches(5), RING.input("bore", Length.class));
    assertEquals(1.5, RING.input("turns", Dimensionless.class).getValue());
    assertEquals(inches(21.99), RING.expected(Length.class));
    assertTrue(
        RING.tolerance(Length.class).check(RING.expected(Length.class), inches(21.9904)).isMet());
    assertFalse(
        RING.tolerance(Length.class).check(RING.expected(Length.class), inches(21.991)).isMet());
    assertEquals(celsius(900), expecting("900", "°C").expected(Temperature.class));
    assertEquals(Measures.degrees(60), expecting("60", "°").expected(Angle.class));
    assertEquals(
        Measures.poundsPerCubicFoot(480), expecting("480", "lb/ft³").expected(Density.class));
    assertEquals("3.4 lb/ft", expecting("3.4", "lb/ft").expected(LinearDensity.class).toString());
  }

  @Test
  void givesBareNumbersAndWords() {
    assertEquals("5 in", RING.text("bore"));
    assertEquals("square", RING.text("end"));
    assertEquals(5, RING.number("bore"));
    assertEquals(10, RING.number("film"));
    assertTrue(RING.has("film"));
    assertFalse(RING.has("width"));
  }

  private static String refusal(Runnable call) {
    return assertThrows(IllegalArgumentException.class, call::run).getMessage();
  }

  @Test
  void refusesWhatIsNotThere() {
    assertEquals(
        "name must be that of an input, was width; give one of [bore, thickness, turns, end, film]",
        refusal(() -> RING.text("width")));
    assertEquals(
        "name must be that of a number, was end = square; take its text",
        refusal(() -> RING.number("end")));
    assertEquals(
        "type must be that of a value in in, was Mass; give what it measures",
        refusal(() -> RING.expected(Mass.class)));
    assertEquals(
        "type must have a unit of the shop, was Dimensionless in W/(m² K); take the bare number",
        refusal(() -> RING.input("film", Dimensionless.class)));
    assertEquals(
        "type must be that of a value in 1, was Length; give what it measures",
        refusal(() -> RING.input("turns", Length.class)));
  }

  @Test
  void differencesOfTemperaturesAreNone() {
    CheckValue heat = expecting("900", "°C");
    assertThrows(UnsupportedOperationException.class, () -> heat.tolerance(Temperature.class));
  }

  @Test
  @SuppressWarnings("NullAway") // to see it refused
  void nullIsRefusedByName() {
    for (Runnable call :
        List.<Runnable>of(
            () -> RING.has(null),
            () -> RING.text(null),
            () -> RING.number(null),
            () -> RING.input(null, Length.class))) {
      assertEquals("name", assertThrows(NullPointerException.class, call::run).getMessage());
    }
    for (Runnable call :
        List.<Runnable>of(
            () -> RING.input("bore", null),
            () -> RING.expected(null),
            () -> RING.tolerance(null))) {
      assertEquals("type", assertThrows(NullPointerException.class, call::run).getMessage());
    }
  }
}
