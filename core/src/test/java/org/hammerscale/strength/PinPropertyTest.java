package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.hinge.Pin;
import org.hammerscale.stock.BarSizes;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for any pin under load. */
class PinPropertyTest {
  private static final Fork FORK =
      Fork.around(millimetres(30)).cheeks(millimetres(12)).gap(millimetres(1));

  @Property
  void aThickerPinBearsLess(
      @ForAll @DoubleRange(min = 3, max = 50) @Scale(4) double diameter,
      @ForAll @DoubleRange(min = 0.01, max = 20) @Scale(4) double more,
      @ForAll @DoubleRange(min = 1, max = 1e5) @Scale(2) double force) {
    PinLoad thin = PinLoad.on(Pin.of(millimetres(diameter)), newtons(force));
    PinLoad thick = PinLoad.on(Pin.of(millimetres(diameter + more)), newtons(force));
    for (PinLoad.Shear shear : PinLoad.Shear.values()) {
      assertTrue(thick.meanShear(shear).isLessThan(thin.meanShear(shear)));
      assertTrue(thick.peakShear(shear).isGreaterThan(thick.meanShear(shear)));
    }
    assertTrue(thick.bending(FORK).isLessThan(thin.bending(FORK)));
    assertTrue(thick.bearing(millimetres(30)).isLessThan(thin.bearing(millimetres(30))));
  }

  @Property
  void theChosenPinCarriesAndTheNextSmallerDoesNot(
      @ForAll @DoubleRange(min = 50, max = 15000) @Scale(2) double force,
      @ForAll @DoubleRange(min = 60, max = 400) @Scale(1) double strength,
      @ForAll @DoubleRange(min = 1, max = 4) @Scale(2) double safety) {
    PermissibleStress stress = PermissibleStress.of(megapascals(strength), safety);
    PinSize size = PinSize.inFork(newtons(force), FORK, stress);
    for (BarSizes series : List.of(PinSize.METRIC_SIZES, PinSize.INCH_SIZES)) {
      List<Measure<Length>> sizes = series.sections().stream().map(Section::width).toList();
      int chosen = sizes.indexOf(size.from(series).diameter());
      assertTrue(carries(sizes.get(chosen), force, stress));
      assertTrue(chosen == 0 || !carries(sizes.get(chosen - 1), force, stress));
    }
  }

  private static boolean carries(Measure<Length> diameter, double force, PermissibleStress stress) {
    PinLoad load = PinLoad.on(Pin.of(diameter), newtons(force));
    return load.peakShear(PinLoad.Shear.DOUBLE).isLessThanOrEqualTo(stress.shear())
        && load.bending(FORK).isLessThanOrEqualTo(stress.tension())
        && load.bearing(FORK.middle()).isLessThanOrEqualTo(stress.tension())
        && load.bearing(FORK.cheek().multiply(2)).isLessThanOrEqualTo(stress.tension());
  }

  @Property
  void theLeastPinJustBears(
      @ForAll @DoubleRange(min = 1, max = 1e6) @Scale(2) double force,
      @ForAll @DoubleRange(min = 10, max = 1000) @Scale(1) double strength) {
    PermissibleStress stress = PermissibleStress.of(megapascals(strength), 2);
    Pin pin = Pin.of(PinSize.inSingleShear(newtons(force), stress).leastDiameter());
    assertEquals(
        stress.shear().getValue(),
        PinLoad.on(pin, newtons(force)).peakShear(PinLoad.Shear.SINGLE).getValue(),
        1e-12 * strength);
  }

  @Property
  void poundsAndInchesAgreeWithNewtonsAndMillimetres(
      @ForAll @DoubleRange(min = 0.1, max = 2) @Scale(6) double diameter,
      @ForAll @DoubleRange(min = 1, max = 1e5) @Scale(2) double force) {
    Measure<javax.measure.quantity.Force> metric = newtons(force);
    Measure<javax.measure.quantity.Force> pounds = metric.to(ShopUnits.POUND_FORCE);
    Pin inch = Pin.of(inches(diameter));
    Pin millimetre = Pin.of(millimetres(25.4 * diameter));
    same(
        PinLoad.on(inch, pounds).bending(FORK).in(ShopUnits.MEGAPASCAL),
        PinLoad.on(millimetre, metric).bending(FORK).getValue());
  }

  private static void same(double one, double other) {
    assertEquals(one, other, 1e-12 * Math.abs(one));
  }
}
