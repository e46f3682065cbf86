package org.hammerscale.examples.json;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Piece;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.LinearDensity;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written as JSON, and what comes back. */
class HammerscaleModuleTest {
  private static final ObjectMapper JSON =
      new ObjectMapper().registerModule(new HammerscaleModule());

  record Order(Measure<Length> width, List<Measure<Length>> holes, Measure<Temperature> heat) {}

  static Set<? extends Unit<?>> units() {
    return ShopUnits.system().getUnits();
  }

  private static <Q extends Quantity<Q>> Measure<Q> measure(double value, Unit<Q> unit) {
    return Measure.of(value, unit);
  }

  @ParameterizedTest
  @MethodSource("units")
  void measuresOfEveryUnitComeBack(Unit<?> unit) throws JsonProcessingException {
    for (double value : new double[] {0, 1 / 3d, 1e-9, 123456.789}) {
      Measure<?> before = measure(value, unit);
      assertEquals(before, JSON.readValue(JSON.writeValueAsString(before), Measure.class));
      Estimate<?> exact = Estimate.exact(before);
      assertEquals(exact, JSON.readValue(JSON.writeValueAsString(exact), Estimate.class));
    }
  }

  @Test
  void measuresAndEstimatesReadPlainly() throws JsonProcessingException {
    assertEquals("{\"value\":14.46,\"unit\":\"in\"}", JSON.writeValueAsString(inches(14.46)));
    assertEquals(
        "{\"value\":3.4,\"unit\":\"lb/ft\"}",
        JSON.writeValueAsString(Measure.of(3.4, ShopUnits.POUND_PER_FOOT)));
    assertEquals(
        "{\"low\":1.0,\"likely\":1.25,\"high\":2.0,\"unit\":\"in\"}",
        JSON.writeValueAsString(Estimate.of(inches(1), inches("1 1/4"), inches(2))));
    assertEquals(
        "{\"value\":900.0,\"unit\":\"°C\"}", JSON.writeValueAsString(Measures.celsius(900)));
  }

  @Test
  void estimatesComeBackWithTheirSpread() throws JsonProcessingException {
    Estimate<Length> cut = Estimate.of(inches(1), inches("1 1/4"), inches(2));
    assertEquals(
        cut,
        JSON.readValue(JSON.writeValueAsString(cut), new TypeReference<Estimate<Length>>() {}));
  }

  @Test
  void whatIsAskedForIsHeldToItsKind() throws JsonProcessingException {
    Order order =
        JSON.readValue(
            """
            {"width": "1 1/2 in",
             "holes": [{"value": 40, "unit": "mm"}, "3' 6\\""],
             "heat": {"unit": "°F", "value": 1652}}
            """,
            Order.class);
    assertEquals(
        new Order(inches("1 1/2"), List.of(millimetres(40), inches(42)), Measures.fahrenheit(1652)),
        order);
    assertEquals(
        Measure.of(3.4, ShopUnits.POUND_PER_FOOT),
        JSON.readValue(
            "{\"value\":3.4,\"unit\":\"lb/ft\"}", new TypeReference<Measure<LinearDensity>>() {}));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{'value':1,'unit':'kg'}       | unit must measure Length, was kg; give one that does",
        "{'value':1,'unit':'furlong'}  | unit must be one of the shop's, was \"furlong\"; give in, mm or kg",
        "{'value':1}                   | unit must be one of the shop's, was ; give in, mm or kg",
        "{'value':'1','unit':'in'}     | value must be a number, was \"1\"; give it beside its unit",
        "{'value':1e999,'unit':'in'}   | value must give a finite number, was Infinity in; keep to sizes that can be measured",
        "14.46                         | unit must be one of the shop's, was ; give in, mm or kg",
        "'1 1/2 inchs'                 | expected",
        "[]                            | unit must be one of the shop's, was ; give in, mm or kg"
      })
  void refusalsSayWhereAndWhy(String width, String message) {
    String text = "{\"width\": " + width.replace('\'', '"') + "}";
    JsonMappingException refusal =
        assertThrows(JsonMappingException.class, () -> JSON.readValue(text, Order.class));
    assertTrue(refusal.getOriginalMessage().contains(message), refusal::getOriginalMessage);
    assertEquals("width", refusal.getPath().get(0).getFieldName());
  }

  @Test
  void highBelowLowIsRefused() {
    JsonMappingException refusal =
        assertThrows(
            JsonMappingException.class,
            () ->
                JSON.readValue(
                    "{\"low\":3,\"likely\":2,\"high\":1,\"unit\":\"in\"}", Estimate.class));
    assertTrue(
        refusal.getOriginalMessage().startsWith("estimate must have low ≤ likely ≤ high"),
        refusal::getOriginalMessage);
  }

  @Test
  void answersAreReadableObjects() {
    Section flat = Section.flat(inches("1 1/2"), inches("1/4"));
    Barrel eye = Barrel.around(inches("1/2"), flat);
    Piece piece = Piece.of(Bar.of(flat, Material.MILD_STEEL), eye, Plain.of(flat, inches(9)));
    JsonNode layout = JSON.valueToTree(piece.layout());
    assertEquals(
        piece.layout().cutLength().likely().getValue(),
        layout.at("/cutLength/likely").doubleValue());
    assertEquals("rolled barrel | plain stretch", layout.at("/marks/0/label").asText());
    assertEquals("in", layout.at("/marks/1/position/unit").asText());
    assertEquals("lb", layout.at("/mass/unit").asText());

    JsonNode working = JSON.valueToTree(eye.developedWorking());
    assertEquals("π m", working.at("/steps/3/formula").asText());
    assertEquals("mean diameter", working.at("/steps/2/meaning").asText());
    assertEquals(2.356194490192345, working.at("/result/value").doubleValue());
    assertEquals("read", working.at("/sources/0/kind").asText());
    assertTrue(working.at("/cautions/0/text").asText().startsWith("a square-cut end"));

    JsonNode holes =
        JSON.valueToTree(
            HoleRow.along(inches(12))
                .holes(3)
                .startingFrom(inches(1))
                .endingBefore(inches(1))
                .missing(ClosedStretch.seamAt(inches(6)))
                .layout());
    assertEquals(3, holes.at("/positions").size());
    assertEquals(2, holes.at("/spacings").size());
    assertTrue(!holes.at("/governedBy").asText().isEmpty());
    List<String> names = new ArrayList<>();
    holes.fieldNames().forEachRemaining(names::add);
    assertEquals(List.of("positions", "spacings", "governedBy", "cautions"), names);
  }
}
