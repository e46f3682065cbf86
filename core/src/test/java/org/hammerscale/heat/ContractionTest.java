package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Material;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class ContractionTest {
  private static final Contraction STEEL = Contraction.from(celsius(1150), Material.MILD_STEEL);

  @Test
  void showsItsWorkingOnEveryBranchOfTheCurve() {
    for (double heat : new double[] {400, 800, 1000}) {
      Contraction c = Contraction.from(celsius(heat), Material.WROUGHT_IRON);
      Workings.check(c.coldWorking(inches(3)), c.cold(inches(3)));
      Workings.check(c.hotWorking(inches(3)), c.hot(inches(3)));
    }
    for (Material metal : new Material[] {Material.STAINLESS_304, Material.COPPER}) {
      Contraction c = Contraction.from(celsius(870), metal);
      Workings.check(c.coldWorking(millimetres(70)), c.cold(millimetres(70)));
      Workings.check(c.hotWorking(millimetres(70)), c.hot(millimetres(70)));
    }
    assertEquals(
        "mild steel from 1150 °C: 16.52 mm shorter for each metre measured hot", STEEL + "");
  }

  @Test
  void followsTheStandardOverItsDownwardStep() {
    double below = Contraction.from(celsius(749.999), Material.MILD_STEEL).elongation();
    double above = Contraction.from(celsius(750), Material.MILD_STEEL).elongation();
    assertTrue(below > above);
    assertEquals(0.011, above, 0);
    assertEquals(above, Contraction.from(celsius(860), Material.MILD_STEEL).elongation(), 0);
  }

  @Test
  void nothingShrinksFromRoomTemperature() {
    for (Material metal : new Material[] {Material.MILD_STEEL, Material.STAINLESS_304}) {
      assertEquals(0, Contraction.from(fahrenheit(68), metal).elongation(), 1e-16);
    }
  }

  @Test
  void aHeatJudgedByEyeGivesASpread() {
    var cold = STEEL.coldByEye(millimetres(1000));
    assertEquals(STEEL.cold(millimetres(1000)), cold.likely());
    // At 1050 °C 14.8 mm, and 18.8 mm at 1250 °C: the curve rises by 2 mm for each 100 °C.
    assertEquals(1000 / 1.0188, cold.low().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(1000 / 1.0148, cold.high().in(ShopUnits.MILLIMETRE), 1e-9);
    var hot = Contraction.from(celsius(760), Material.MILD_STEEL).hotByEye(millimetres(100));
    assertTrue(hot.low().isLessThan(hot.likely()) && hot.covers(millimetres(101.1)));
  }

  @Test
  void otherMetalsGrowByTheirMeanWithACaution() {
    Contraction brass = Contraction.from(celsius(800), Material.NAVAL_BRASS);
    assertEquals(21.2e-6 * 780, brass.elongation(), 1e-15);
    assertEquals(1, brass.cautions().size());
    assertTrue(STEEL.cautions().isEmpty());
    assertTrue(brass.cautions().get(0).text().contains("stretched here to 800 °C"));
  }

  /**
   * Mild steel is forged from 1250 °C (2300 °F is 1260 °C), where the standard's curve has ended.
   */
  @Test
  void steelGoesOnPastTheEndOfItsCurveWithACaution() {
    Contraction start = Contraction.from(celsius(1250), Material.MILD_STEEL);
    // The standard's last branch: 20 mm per m and 1000 °C, less 6.2 mm per m.
    assertEquals(0.0188, start.elongation(), 1e-15);
    assertEquals(
        "the curve for carbon steel of EN 1993-1-2 ends at 1200 °C, below the heat of 1250 °C; it"
            + " is carried on as it rises there",
        start.cautions().get(0).text());
    Workings.check(start.coldWorking(inches(3)), start.cold(inches(3)));
    Contraction inch = Contraction.from(fahrenheit(2300), Material.MILD_STEEL);
    assertEquals(0.0190, inch.elongation(), 1e-15);
    assertTrue(inch.cautions().toString().contains("ends at 2192 °F"));
    Contraction iron = Contraction.from(celsius(1225), Material.WROUGHT_IRON);
    assertEquals(1, iron.cautions().size());
    assertTrue(Contraction.from(celsius(1200), Material.MILD_STEEL).cautions().isEmpty());
  }

  @Test
  void aSteelOfOnesOwnFollowsTheCurveItIsGiven() {
    Material spring =
        Material.of("5160", Measures.kilogramsPerCubicMetre(7850), Source.computed("mill sheet"));
    assertEquals(
        STEEL.elongation(),
        Contraction.from(celsius(1150), HotMetal.carbonSteel(spring)).elongation());
    assertEquals(
        Contraction.from(celsius(900), Material.STAINLESS_304).elongation(),
        Contraction.from(celsius(900), HotMetal.austenitic(spring)).elongation());
    String message = refused(() -> Contraction.from(celsius(900), spring));
    assertTrue(message.contains("withExpansionPerKelvin"), message);
    assertTrue(refused(() -> HotMetal.of(spring).emissivity()).contains("withEmissivity"));
  }

  @Test
  void refusesHeatsOutsideTheCurveWithItsRange() {
    assertEquals(
        "heat must lie between 20 °C and 1480 °C for carbon steel of EN 1993-1-2, was 1490 °C;"
            + " no value is published beyond",
        refused(() -> Contraction.from(celsius(1490), Material.MILD_STEEL)));
    assertTrue(
        refused(() -> Contraction.from(fahrenheit(50), Material.STAINLESS_304))
            .contains("between 68 °F and 2552 °F"));
    assertTrue(refused(() -> Contraction.from(celsius(1100), Material.COPPER)).contains("1065 °C"));
    assertTrue(refused(() -> STEEL.cold(millimetres(-1))).startsWith("hot must not be negative"));
    assertTrue(refused(() -> STEEL.hot(millimetres(-1))).startsWith("cold must not be negative"));
    assertThrows(NullPointerException.class, () -> Contraction.from(null, Material.COPPER));
  }

  @Test
  void conductivityIsKnownForSteelOnly() {
    Measure<javax.measure.quantity.Temperature> heat = celsius(700);
    assertFalse(HotMetal.of(Material.COPPER).curve().conducts());
    assertTrue(
        refused(() -> HotMetal.of(Material.COPPER).conductivityInWattsPerMetreKelvin(heat))
            .contains("HotMetal.carbonSteel"));
  }

  private static String refused(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
