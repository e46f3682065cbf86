package org.hammerscale.units;

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
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of estimates: the order holds, and independent errors partly cancel. */
class EstimatePropertyTest {
  /** Relative slack for a difference of sums, which may lose a few last bits. */
  private static final double BITS = 1e-12;

  @Provide
  Arbitrary<Estimate<Length>> estimates() {
    Arbitrary<Double> likely = Arbitraries.doubles().between(-1000, 1000).ofScale(6);
    Arbitrary<Double> widths = Arbitraries.doubles().between(0, 100).ofScale(6);
    Arbitrary<Unit<Length>> units =
        Arbitraries.of(ShopUnits.INCH, ShopUnits.MILLIMETRE, ShopUnits.FOOT);
    return Combinators.combine(likely, widths, widths, units)
        .as(
            (middle, below, above, unit) ->
                Estimate.of(
                    Measure.of(middle - below, unit),
                    Measure.of(middle, unit),
                    Measure.of(middle + above, unit)));
  }

  private static void assertInOrder(Estimate<Length> estimate) {
    assertTrue(estimate.low().compareTo(estimate.likely()) <= 0, estimate::toString);
    assertTrue(estimate.likely().compareTo(estimate.high()) <= 0, estimate::toString);
  }

  private static double below(Estimate<Length> estimate) {
    return estimate.likely().subtract(estimate.low()).in(ShopUnits.MILLIMETRE);
  }

  private static double above(Estimate<Length> estimate) {
    return estimate.high().subtract(estimate.likely()).in(ShopUnits.MILLIMETRE);
  }

  /** A few last bits of the values whose difference was taken. */
  private static double slack(Estimate<Length> sum) {
    return BITS * (Math.abs(sum.likely().in(ShopUnits.MILLIMETRE)) + below(sum) + above(sum) + 1e6);
  }

  @Property
  void dependentSumsKeepTheOrder(
      @ForAll("estimates") Estimate<Length> first, @ForAll("estimates") Estimate<Length> second) {
    Estimate<Length> sum = first.addDependent(second);

    assertInOrder(sum);
    assertEquals(first.low().add(second.low()), sum.low());
    assertEquals(first.likely().add(second.likely()), sum.likely());
    assertEquals(first.high().add(second.high()), sum.high());
    assertSame(first.likely().getUnit(), sum.high().getUnit());
  }

  @Property
  void independentSumsKeepTheOrder(
      @ForAll("estimates") Estimate<Length> first, @ForAll("estimates") Estimate<Length> second) {
    Estimate<Length> sum = first.addIndependent(second);

    assertInOrder(sum);
    assertEquals(first.likely().add(second.likely()), sum.likely());
    assertSame(first.likely().getUnit(), sum.low().getUnit());
  }

  @Property
  void independentErrorsAddUpToLessThanDependentOnesAndMoreThanEither(
      @ForAll("estimates") Estimate<Length> first, @ForAll("estimates") Estimate<Length> second) {
    Estimate<Length> independent = first.addIndependent(second);
    Estimate<Length> dependent = first.addDependent(second);

    double slack = slack(dependent);
    assertTrue(below(independent) <= below(dependent) + slack);
    assertTrue(above(independent) <= above(dependent) + slack);
    assertTrue(below(independent) >= Math.max(below(first), below(second)) - slack);
    assertTrue(above(independent) >= Math.max(above(first), above(second)) - slack);
    // Pythagoras, by another way than the one tested.
    double square = below(first) * below(first) + below(second) * below(second);
    assertEquals(Math.sqrt(square), below(independent), slack);
  }

  @Property
  void theOrderOfAddingDoesNotMatter(
      @ForAll("estimates") Estimate<Length> first, @ForAll("estimates") Estimate<Length> second) {
    Estimate<Length> one = first.addIndependent(second);
    Estimate<Length> other = second.addIndependent(first);
    Measure<Length> slack = Measures.millimetres(slack(one));

    assertTrue(one.low().isWithin(other.low(), slack));
    assertTrue(one.likely().isWithin(other.likely(), slack));
    assertTrue(one.high().isWithin(other.high(), slack));
  }

  @Property
  void multiplesKeepTheOrder(
      @ForAll("estimates") Estimate<Length> estimate,
      @ForAll @DoubleRange(min = 0, max = 1000) @Scale(6) double factor) {
    Estimate<Length> multiple = estimate.multiply(factor);

    assertInOrder(multiple);
    assertEquals(estimate.low().multiply(factor), multiple.low());
    assertEquals(estimate.likely().multiply(factor), multiple.likely());
    assertEquals(estimate.high().multiply(factor), multiple.high());
  }

  @Property
  void aBoundGrowsWithItsOddsAndGivesThemBack(
      @ForAll("estimates") Estimate<Length> estimate,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(6) double odds,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(6) double others) {
    double least = Math.min(odds, others);
    double most = Math.max(odds, others);
    assertTrue(estimate.bound(least).compareTo(estimate.bound(most)) <= 0);
    if (above(estimate) > 1e-3) {
      assertEquals(odds, estimate.odds(estimate.bound(odds)), 1e-6);
    }
  }

  @Property
  void theBoundOfASumIsNoMoreThanTheSumOfBounds(
      @ForAll("estimates") Estimate<Length> first,
      @ForAll("estimates") Estimate<Length> second,
      @ForAll @DoubleRange(min = 0.5, max = 0.9999) @Scale(6) double odds) {
    double both = first.bound(odds).add(second.bound(odds)).in(ShopUnits.MILLIMETRE);
    Estimate<Length> together = first.addDependent(second);
    double slack = slack(together);
    assertEquals(both, together.bound(odds).in(ShopUnits.MILLIMETRE), 4 * slack);
    assertTrue(
        first.addIndependent(second).bound(odds).in(ShopUnits.MILLIMETRE) <= both + 4 * slack);
  }
}
