package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.heat.Contraction;
import org.hammerscale.stock.Material;
import org.hammerscale.units.ShopUnits;

/** What must hold for any drift and swage. */
class DriftPropertyTest {
  @Property
  void theDriftLeavesItsBore(
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(6) double bore,
      @ForAll @DoubleRange(min = 20, max = 1200) @Scale(3) double heat,
      @ForAll @DoubleRange(min = 20, max = 700) @Scale(3) double warm) {
    Contraction work = Contraction.from(celsius(heat), Material.MILD_STEEL);
    Contraction tool = Contraction.from(celsius(warm), Material.MEDIUM_CARBON_STEEL);
    Drift drift = Drift.leaving(millimetres(bore), work).withTool(tool);
    assertEquals(bore, drift.boreLeftBy(drift.diameter()).getValue(), 1e-14 * bore);
    assertTrue(drift.boreLeftByEye(drift.diameter()).covers(drift.boreLeftBy(drift.diameter())));
    Swage swage = Swage.truing(millimetres(bore), work).withTool(tool);
    assertEquals(bore, swage.outsideLeftBy(swage.groove()).getValue(), 1e-14 * bore);
    assertEquals(drift.diameter(), swage.groove());
    // As cold the heat gives it: what the tool measures hot is what the work measures hot.
    assertEquals(drift.hotBore().getValue(), tool.hot(drift.diameter()).getValue(), 1e-14 * bore);
    Drift inch = Drift.leaving(inches(bore / 25.4), work).withTool(tool);
    assertEquals(
        drift.diameter().getValue(), inch.diameter().in(ShopUnits.MILLIMETRE), 1e-13 * bore);
  }
}
