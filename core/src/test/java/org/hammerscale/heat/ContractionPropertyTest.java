package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Material;
import org.hammerscale.units.ShopUnits;

/** What must hold for shrinkage from any heat. */
class ContractionPropertyTest {
  private static final List<Material> METALS =
      List.of(Material.WROUGHT_IRON, Material.MILD_STEEL, Material.STAINLESS_304, Material.COPPER);

  @Property
  void hotOfColdIsTheSameAgain(
      @ForAll @DoubleRange(min = 20, max = 1065) @Scale(4) double heat,
      @ForAll @DoubleRange(min = 0.01, max = 5000) @Scale(6) double size) {
    for (Material metal : METALS) {
      Contraction c = Contraction.from(celsius(heat), metal);
      assertEquals(size, c.hot(c.cold(millimetres(size))).getValue(), 4e-16 * size);
      assertEquals(size, c.cold(c.hot(millimetres(size))).getValue(), 4e-16 * size);
      assertTrue(c.coldByEye(millimetres(size)).covers(c.cold(millimetres(size))));
    }
  }

  @Property
  void inchAndMetricFahrenheitAndCelsiusAgree(
      @ForAll @DoubleRange(min = 20, max = 1065) @Scale(4) double heat,
      @ForAll @DoubleRange(min = 0.01, max = 200) @Scale(6) double size) {
    for (Material metal : METALS) {
      Contraction metric = Contraction.from(celsius(heat), metal);
      Contraction inch = Contraction.from(celsius(heat).to(ShopUnits.FAHRENHEIT), metal);
      assertTrue(
          metric
              .cold(millimetres(25.4 * size))
              .isWithin(inch.cold(inches(size)), millimetres(1e-11 * size)));
    }
  }

  /** Over the standard's own step at 750 °C the length falls by 8.4 millionths. */
  @Property
  void theHotterTheLonger(
      @ForAll @DoubleRange(min = 20, max = 1064) @Scale(4) double heat,
      @ForAll @DoubleRange(min = 0.001, max = 100) @Scale(4) double more) {
    double hotter = Math.min(heat + more, 1065);
    for (Material metal : METALS) {
      double gain =
          Contraction.from(celsius(hotter), metal).elongation()
              - Contraction.from(celsius(heat), metal).elongation();
      assertTrue(gain >= (heat < 750 && hotter >= 750 ? -8.41e-6 : 0), metal::toString);
    }
  }

  @Property
  void heatsOffTheCurveAreRefusedByName(
      @ForAll @DoubleRange(min = 1201, max = 5000) @Scale(2) double hot,
      @ForAll @DoubleRange(min = -459, max = 67) @Scale(2) double cold) {
    for (Material metal : METALS) {
      String message =
          assertThrows(
                  IllegalArgumentException.class, () -> Contraction.from(celsius(hot + 400), metal))
              .getMessage();
      assertTrue(message.startsWith("heat must lie between 20 °C"), message);
      assertThrows(IllegalArgumentException.class, () -> Contraction.from(fahrenheit(cold), metal));
    }
  }
}
