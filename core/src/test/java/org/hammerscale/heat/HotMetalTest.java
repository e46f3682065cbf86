package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.junit.jupiter.api.Test;

class HotMetalTest {
  @Test
  void theHeatOfAMetalOfMeanValuesGrowsEvenly() {
    HotMetal copper = HotMetal.of(Material.COPPER);
    assertEquals(0, copper.heatContentInJoulesPerKilogram(celsius(20)));
    // 386 J/(kg K) of the copper sheet, over 80 K and over 160 K.
    assertEquals(30880, copper.heatContentInJoulesPerKilogram(celsius(100)), 1e-9);
    assertEquals(61760, copper.heatContentInJoulesPerKilogram(celsius(180)), 1e-9);
  }

  @Test
  void aStainlessBarIsCheckedForOneTemperatureThroughout() {
    Section section = Section.round(millimetres(10));
    assertTrue(unchecked(Material.COPPER, section));
    assertFalse(unchecked(Material.STAINLESS_304, section));
  }

  private static boolean unchecked(Material material, Section section) {
    return Cooling.from(celsius(900), Bar.of(section, material))
        .to(celsius(700))
        .cautions()
        .stream()
        .anyMatch(caution -> caution.text().contains("is not known here"));
  }

  @Test
  void isItsMaterialAndItsCurve() {
    HotMetal steel = HotMetal.of(Material.MILD_STEEL);
    assertEquals(steel, HotMetal.carbonSteel(Material.MILD_STEEL));
    assertEquals(steel.hashCode(), HotMetal.carbonSteel(Material.MILD_STEEL).hashCode());
    assertNotEquals(steel, HotMetal.austenitic(Material.MILD_STEEL));
    assertNotEquals(steel, HotMetal.of(Material.MEDIUM_CARBON_STEEL));
    assertEquals(HotMetal.of(Material.COPPER), HotMetal.of(Material.COPPER));
  }
}
