package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithinUlps;
import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.length;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Laws of lengths in every unit of the shop. */
class MeasurePropertyTest {
  @Provide
  Arbitrary<Unit<Length>> units() {
    return Arbitraries.of(
        ShopUnits.METRE,
        ShopUnits.CENTIMETRE,
        ShopUnits.MILLIMETRE,
        ShopUnits.INCH,
        ShopUnits.FOOT,
        ShopUnits.THOU);
  }

  @Provide
  Arbitrary<Measure<Length>> lengths() {
    Arbitrary<Double> values = Arbitraries.doubles().between(-1e6, 1e6).ofScale(9);
    return Combinators.combine(values, units()).as(Measure::of);
  }

  @Property
  void conversionThereAndBackGivesTheSame(
      @ForAll("lengths") Measure<Length> length, @ForAll("units") Unit<Length> unit) {
    // There and back: two roundings each way.
    assertWithinUlps(length.getValue(), length.to(unit).to(length.getUnit()).getValue(), 4);
  }

  @Property
  void conversionKeepsTheAmount(
      @ForAll("lengths") Measure<Length> length, @ForAll("units") Unit<Length> unit) {
    assertTrue(length.isEquivalentTo(length.to(unit)));
    assertTrue(length.to(unit).isEquivalentTo(length));
    assertSame(unit, length.to(unit).getUnit());
  }

  @Property
  void sumsAreTheSameInEitherOrder(
      @ForAll("lengths") Measure<Length> first, @ForAll("lengths") Measure<Length> second) {
    Measure<Length> sum = first.add(second);
    Measure<Length> swapped = second.add(first);

    assertSame(first.getUnit(), sum.getUnit());
    assertSame(second.getUnit(), swapped.getUnit());
    // Cancelling leaves the rounding of the larger term, so that is what the slack is taken from.
    Measure<Length> larger = absolute(first).isGreaterThan(absolute(second)) ? first : second;
    assertTrue(sum.isWithin(swapped, absolute(larger).multiply(1e-14)));
  }

  private static Measure<Length> absolute(Measure<Length> length) {
    return length.getValue() < 0 ? length.negate() : length;
  }

  @Property
  void subtractionIsAdditionOfTheNegative(
      @ForAll("lengths") Measure<Length> first, @ForAll("lengths") Measure<Length> second) {
    assertEquals(first.subtract(second), first.add(second.negate()));
    assertEquals(first.withValue(0), first.subtract(first));
  }

  @Property
  void comparisonIsAntisymmetric(
      @ForAll("lengths") Measure<Length> first, @ForAll("lengths") Measure<Length> second) {
    assertEquals(Integer.signum(first.compareTo(second)), -Integer.signum(second.compareTo(first)));
    assertEquals(first.isGreaterThan(second), second.isLessThan(first));
    assertEquals(first.isEquivalentTo(second), second.isEquivalentTo(first));
  }

  @Property
  void ratioUndoesAMultiple(
      @ForAll("lengths") Measure<Length> length,
      @ForAll("units") Unit<Length> unit,
      @ForAll @IntRange(min = 1, max = 1000) int times) {
    if (length.getValue() != 0) {
      assertWithinUlps(times, length.multiply(times).to(unit).ratio(length), 6);
    }
  }

  @Property
  void equalMeasuresHaveEqualHashes(@ForAll("lengths") Measure<Length> length) {
    Measure<Length> twin = Measure.of(length.getValue(), length.getUnit());
    assertEquals(length, twin);
    assertEquals(length.hashCode(), twin.hashCode());
  }

  @Property
  void volumeOverAreaGivesTheLengthBackExactlyInInches(
      @ForAll @IntRange(min = 1, max = 64 * 240) int long64,
      @ForAll @IntRange(min = 1, max = 64 * 4) int wide64,
      @ForAll @IntRange(min = 1, max = 64 * 4) int thick64) {
    Measure<Length> bar = inches(long64 / 64.0);
    var section = area(inches(wide64 / 64.0), inches(thick64 / 64.0));

    assertEquals(bar, length(volume(bar, section), section));
  }

  @Property
  void volumeOverAreaGivesTheLengthBackInMillimetres(
      @ForAll @IntRange(min = 1, max = 60_000) int longTenths,
      @ForAll @IntRange(min = 1, max = 1000) int wideTenths,
      @ForAll @IntRange(min = 1, max = 1000) int thickTenths) {
    Measure<Length> bar = millimetres(longTenths / 10.0);
    var section = area(millimetres(wideTenths / 10.0), millimetres(thickTenths / 10.0));

    // One rounding in the product and one in the quotient.
    assertWithinUlps(bar.getValue(), length(volume(bar, section), section).getValue(), 1);
  }

  @Property
  void metricAndInchInputGiveTheSameArea(
      @ForAll("lengths") Measure<Length> first,
      @ForAll("lengths") Measure<Length> second,
      @ForAll("units") Unit<Length> unit) {
    assertTrue(area(first, second).isEquivalentTo(area(first.to(unit), second.to(unit))));
  }
}
