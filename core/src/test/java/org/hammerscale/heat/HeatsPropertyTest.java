package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;

/** What must hold for the heats of any work. */
class HeatsPropertyTest {
  @Property(tries = 200)
  void theHeatsHoldTheWorkAndOneFewerWouldNot(
      @ForAll @DoubleRange(min = 3, max = 60) @Scale(2) double diameter,
      @ForAll @DoubleRange(min = 900, max = 1200) @Scale(1) double heat,
      @ForAll @DoubleRange(min = 1, max = 900) @Scale(2) double work,
      @ForAll @DoubleRange(min = 1, max = 900) @Scale(2) double more) {
    Cooling cooling =
        Cooling.from(
            celsius(heat), Bar.of(Section.round(millimetres(diameter)), Material.MILD_STEEL));
    Heats heats = Heats.forWork(seconds(work), cooling);
    double window = cooling.window().likely().in(ShopUnits.SECOND);
    double count = heats.count().likely().getValue();
    assertTrue(count >= 1 && count * window >= work * (1 - 1e-8));
    assertTrue((count - 1) * window < work);

    Heats both = heats.and(seconds(more));
    assertEquals(
        count + Heats.forWork(seconds(more), cooling).count().likely().getValue(),
        both.count().likely().getValue());
    assertTrue(both.count().low().getValue() >= heats.count().low().getValue());
  }

  @Property(tries = 100)
  void aHotterHeatAndAThickerBarNeverTakeMore(
      @ForAll @DoubleRange(min = 3, max = 60) @Scale(2) double diameter,
      @ForAll @DoubleRange(min = 850, max = 1150) @Scale(1) double heat) {
    double count = count(diameter, heat);
    assertTrue(count(diameter * 1.1, heat) <= count);
    assertTrue(count(diameter, heat + 50) <= count);
  }

  private static double count(double diameter, double heat) {
    Bar bar = Bar.of(Section.round(millimetres(diameter)), Material.MILD_STEEL);
    return Heats.forWork(seconds(300), Cooling.from(celsius(heat), bar)).count().high().getValue();
  }
}
