package org.hammerscale.stock;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MaterialTest {
  private static final Source SHOP = Source.commonPractice("measured in the shop");
  private static final Material BELL =
      Material.of("bell bronze", kilogramsPerCubicMetre(8700), SHOP);
  private static final List<Material> METALS =
      List.of(
          Material.WROUGHT_IRON,
          Material.MILD_STEEL,
          Material.MEDIUM_CARBON_STEEL,
          Material.STAINLESS_304,
          Material.COPPER,
          Material.NAVAL_BRASS,
          Material.SILICON_BRONZE,
          Material.ALUMINIUM_6061);

  private static Estimate<Pressure> strength(double value) {
    return Estimate.exact(Measure.of(value, ShopUnits.MEGAPASCAL));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  @ParameterizedTest
  @EnumSource(value = Property.class, names = "COLD_WORK", mode = EnumSource.Mode.EXCLUDE)
  void everyMetalHasEveryPropertyWithASource(Property property) {
    for (Material metal : METALS) {
      assertTrue(metal.has(property), metal + ": " + property);
      assertFalse(metal.source(property).title().isBlank(), metal::toString);
    }
  }

  @Test
  void metalsAreForgedBelowWhereTheyMelt() {
    for (Material metal : METALS) {
      assertTrue(metal.forgingStart().high().isLessThan(metal.solidus()), metal::toString);
      assertTrue(
          metal.forgingFinish().high().isLessThan(metal.forgingStart().low()), metal::toString);
    }
  }

  @Test
  void aRangeInTheSourceIsAnEstimate() {
    assertEquals("190 MPa (159 MPa to 221 MPa)", Material.WROUGHT_IRON.yieldStrength().toString());
    assertEquals(celsius(1150), Material.WROUGHT_IRON.forgingStart().low());
    assertEquals(celsius(900), Material.WROUGHT_IRON.forgingFinish().high());
    assertTrue(Material.MILD_STEEL.yieldStrength().isExact());
  }

  @Test
  void whatIsNotKnownIsRefused() {
    assertFalse(BELL.has(Property.SOLIDUS));
    assertTrue(BELL.has(Property.DENSITY));
    assertEquals(
        "material must have a known solidus, was bell bronze, 8700 kg/m³; give it with withSolidus",
        refusal(BELL::solidus));
    assertTrue(refusal(BELL::forgingStart).endsWith("give it with withForgingRange"));
    assertTrue(refusal(BELL::forgingFinish).contains("forging range"));
    assertTrue(refusal(BELL::expansionPerKelvin).contains("expansion"));
    assertTrue(refusal(BELL::specificHeatInJoulesPerKilogramKelvin).contains("specific heat"));
    assertTrue(refusal(BELL::yieldStrength).contains("yield strength"));
    assertTrue(refusal(() -> BELL.source(Property.EXPANSION)).contains("expansion"));
  }

  @Test
  void theCallerTellsMore() {
    Material known =
        BELL.withForgingRange(fahrenheit(1300), celsius(600), SHOP)
            .withSolidus(celsius(798), SHOP)
            .withExpansionPerKelvin(19e-6, SHOP)
            .withSpecificHeatInJoulesPerKilogramKelvin(380, SHOP)
            .withYieldStrength(strength(120), SHOP);
    assertEquals(Estimate.exact(fahrenheit(1300)), known.forgingStart());
    assertEquals(Estimate.exact(celsius(600)), known.forgingFinish());
    assertEquals(celsius(798), known.solidus());
    assertEquals(19e-6, known.expansionPerKelvin());
    assertEquals(380, known.specificHeatInJoulesPerKilogramKelvin());
    assertEquals(strength(120), known.yieldStrength());
    assertEquals(SHOP, known.source(Property.YIELD_STRENGTH));
    assertEquals("bell bronze, 8700 kg/m³", known.toString());
    assertNotEquals(BELL, known);
    assertEquals(known.solidus(), known.withDensity(kilogramsPerCubicMetre(8600)).solidus());
    assertEquals("forging range", Property.FORGING_RANGE.toString());
  }

  /** Copper is soft far below its hot working range; brass and wrought iron split when cold. */
  @Test
  void metalsBearColdWorkOrNot() {
    assertEquals(celsius(375), Material.COPPER.hardensBelow());
    assertTrue(Material.COPPER.hardensBelow().isEquivalentTo(fahrenheit(707)));
    assertEquals(Material.MILD_STEEL.forgingFinish().likely(), Material.MILD_STEEL.hardensBelow());
    for (Material brittle : List.of(Material.WROUGHT_IRON, Material.NAVAL_BRASS)) {
      assertFalse(brittle.has(Property.COLD_WORK));
      assertTrue(refusal(brittle::hardensBelow).contains("withColdWork"));
    }
    assertEquals(celsius(300), BELL.withColdWork(celsius(300), SHOP).hardensBelow());
  }

  @Test
  void badValuesAreRefused() {
    assertEquals(
        "finish must lie below the start of 600 °C, was 900 °C; name the hottest point first",
        refusal(() -> BELL.withForgingRange(celsius(600), celsius(900), SHOP)));
    assertEquals(
        "solidus must lie above the start of the forging range, 900 °C, was 798 °C; metal that"
            + " melts while it is forged crumbles",
        refusal(
            () ->
                BELL.withForgingRange(celsius(900), celsius(600), SHOP)
                    .withSolidus(celsius(798), SHOP)));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            BELL.withSolidus(celsius(798), SHOP)
                .withForgingRange(celsius(798), celsius(600), SHOP));
    assertEquals(
        "perKelvin must be more than zero and less than 0.001, was 11.7; give the part of the"
            + " length for each kelvin, such as 11.7e-6",
        refusal(() -> BELL.withExpansionPerKelvin(11.7, SHOP)));
    assertThrows(
        IllegalArgumentException.class, () -> BELL.withExpansionPerKelvin(Double.NaN, SHOP));
    assertEquals(
        "joules must lie between 50 and 5000, was 0.486; give joules per kilogram and kelvin, such"
            + " as 486",
        refusal(() -> BELL.withSpecificHeatInJoulesPerKilogramKelvin(0.486, SHOP)));
    assertEquals(
        "strength must be more than zero, was 0 MPa; give the finished cold value",
        refusal(() -> BELL.withYieldStrength(strength(0), SHOP)));
    assertThrows(NullPointerException.class, () -> BELL.withSolidus(celsius(798), null));
  }

  @Test
  void aLengthIsNoTemperature() {
    @SuppressWarnings({"unchecked", "rawtypes"}) // what a caller's unchecked cast can bring about
    Quantity<Temperature> smuggled = (Quantity) Measure.<Length>from(Measures.millimetres(3));
    assertEquals(
        "solidus must be a temperature, was 3 mm; give it in °C or °F",
        refusal(() -> BELL.withSolidus(smuggled, SHOP)));
  }
}
