package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The tables of heat colours as published, and the questions asked of them. */
class HeatColourValidationTest {
  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "heat_colours.csv", useHeadersInDisplayName = true)
  void everyRowStandsAsPublished(
      String source, String colour, double from, Double to, String unit, String kind) {
    List<HeatColour> rows =
        HeatColour.all().stream()
            .filter(row -> row.name().equals(colour) && row.source().title().equals(source))
            .toList();
    assertEquals(1, rows.size(), "once and no more");
    HeatColour row = rows.get(0);
    assertEquals(from, row.from().in(ShopUnits.CELSIUS));
    if (to != null) {
      assertEquals(to, row.to().in(ShopUnits.CELSIUS));
    }
    assertEquals("°C", unit);
    assertEquals(kind, row.source().kind().toString());
  }

  @Test
  void noRowIsOurOwn() {
    assertEquals(46, HeatColour.all().size());
  }

  @Test
  void oneWordMeansDifferentHeats() {
    assertEquals(
        List.of("orange", "deep orange", "clear orange", "dull orange", "bright orange"),
        HeatColour.named("Orange").stream().map(HeatColour::name).limit(5).toList());
    assertTrue(HeatColour.named("mauve").isEmpty());
    assertThrows(IllegalArgumentException.class, () -> HeatColour.named(" "));
  }

  @Test
  void oneHeatHasANameInEachTable() {
    List<HeatColour> names = HeatColour.at(celsius(850));
    assertEquals("cherry red", names.get(0).name());
    assertEquals(
        names.size(), names.stream().map(HeatColour::source).distinct().count(), "one a table");
    assertEquals(names, HeatColour.at(fahrenheit(1562)));
    assertEquals("white", HeatColour.at(celsius(2000)).get(0).name());
    assertTrue(HeatColour.at(celsius(20)).isEmpty());
  }

  @Test
  void tellsRangesFromPointsAndThatTheEyeErrs() {
    HeatColour range = HeatColour.named("very dark red").get(0);
    assertFalse(range.isPoint());
    assertEquals(
        "very dark red, 594 °C to 704 °C, Chapman, Workshop Technology, part 1, 5th ed., 1972",
        range.toString());
    HeatColour point = HeatColour.named("dull red").get(0);
    assertTrue(point.isPoint());
    assertTrue(HeatColour.all().get(8).toString().startsWith("white, 1315 °C and more"));
    assertEquals(range, HeatColour.named("very dark red").get(0));
    assertEquals(range.hashCode(), HeatColour.named("very dark red").get(0).hashCode());
    assertFalse(range.equals(point));
    assertTrue(HeatColour.caution().text().contains("50 to 100 °C"));
  }
}
