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
import net.jqwik.api.constraints.IntRange;

/** Laws of rounding, for every rule and values in every unit. */
class GraduationPropertyTest {
  /**
   * What may be taken for noise, in steps: a billionth or eight units in the last place of their
   * count, and as much again for the roundings of this test.
   */
  private static double noise(Measure<Length> length, Graduation<Length> rule) {
    double count = Math.abs(length.ratio(rule.step()));
    return Math.max(1.01e-9, 16 * Math.ulp(count));
  }

  @Provide
  Arbitrary<Graduation<Length>> rules() {
    Arbitrary<Graduation<Length>> standing =
        Arbitraries.of(
            Graduation.HALF,
            Graduation.QUARTER,
            Graduation.EIGHTH,
            Graduation.SIXTEENTH,
            Graduation.THIRTY_SECOND,
            Graduation.SIXTY_FOURTH,
            Graduation.MILLIMETRE,
            Graduation.HALF_MILLIMETRE,
            Graduation.TENTH_MILLIMETRE);
    Arbitrary<Graduation<Length>> others =
        Combinators.combine(Arbitraries.doubles().between(0.01, 100).ofScale(3), units())
            .as((step, unit) -> Graduation.of(Measure.of(step, unit)));
    return Arbitraries.oneOf(standing, others);
  }

  @Provide
  Arbitrary<Unit<Length>> units() {
    return Arbitraries.of(
        ShopUnits.MILLIMETRE, ShopUnits.CENTIMETRE, ShopUnits.INCH, ShopUnits.FOOT);
  }

  @Provide
  Arbitrary<Measure<Length>> lengths() {
    Arbitrary<Double> values =
        Arbitraries.oneOf(
            Arbitraries.doubles().between(-1000, 1000).ofScale(9),
            Arbitraries.integers().between(-64_000, 64_000).map(n -> n / 64.0),
            Arbitraries.integers().between(-10_000, 10_000).map(n -> n / 10.0));
    return Combinators.combine(values, units()).as(Measure::of);
  }

  /** How many steps one length is above another. */
  private static double steps(
      Measure<Length> above, Measure<Length> below, Graduation<Length> rule) {
    return above.subtract(below).ratio(rule.step());
  }

  @Property
  void upToIsTheFirstMarkNotBelow(
      @ForAll("lengths") Measure<Length> length, @ForAll("rules") Graduation<Length> rule) {
    Measure<Length> mark = rule.upTo(length);
    double up = steps(mark, length, rule);
    assertTrue(up >= -noise(length, rule) && up < 1, () -> length + " up to " + mark);
    assertTrue(rule.isOnMark(mark), () -> mark + " on " + rule);
    assertSame(length.getUnit(), mark.getUnit());
  }

  @Property
  void downToIsTheLastMarkNotAbove(
      @ForAll("lengths") Measure<Length> length, @ForAll("rules") Graduation<Length> rule) {
    Measure<Length> mark = rule.downTo(length);
    double down = steps(length, mark, rule);
    assertTrue(down >= -noise(length, rule) && down < 1, () -> length + " down to " + mark);
    assertTrue(rule.isOnMark(mark), () -> mark + " on " + rule);
    assertSame(length.getUnit(), mark.getUnit());
  }

  @Property
  void nearestIsNoFurtherThanHalfAStep(
      @ForAll("lengths") Measure<Length> length, @ForAll("rules") Graduation<Length> rule) {
    Measure<Length> mark = rule.nearest(length);
    double off = Math.abs(steps(length, mark, rule));
    assertTrue(off <= 0.5 + noise(length, rule), () -> length + " nearest " + mark);
    assertTrue(mark.equals(rule.upTo(length)) || mark.equals(rule.downTo(length)));
    assertSame(length.getUnit(), mark.getUnit());
  }

  @Property
  void roundingTwiceIsRoundingOnce(
      @ForAll("lengths") Measure<Length> length, @ForAll("rules") Graduation<Length> rule) {
    assertEquals(rule.upTo(length), rule.upTo(rule.upTo(length)));
    assertEquals(rule.downTo(length), rule.downTo(rule.downTo(length)));
    assertEquals(rule.nearest(length), rule.nearest(rule.nearest(length)));
  }

  @Property
  void belowZeroIsTheMirrorOfAboveZero(
      @ForAll("lengths") Measure<Length> length, @ForAll("rules") Graduation<Length> rule) {
    assertEquals(rule.downTo(length).negate(), rule.upTo(length.negate()));
    assertEquals(rule.nearest(length).negate(), rule.nearest(length.negate()));
  }

  @Property
  void keepsTheOrderOfLengths(
      @ForAll("lengths") Measure<Length> first,
      @ForAll("lengths") Measure<Length> second,
      @ForAll("rules") Graduation<Length> rule) {
    Measure<Length> low = first.isLessThan(second) ? first : second;
    Measure<Length> high = first.isLessThan(second) ? second : first;
    assertNotAbove(rule.upTo(low), rule.upTo(high));
    assertNotAbove(rule.downTo(low), rule.downTo(high));
    assertNotAbove(rule.nearest(low), rule.nearest(high));
  }

  /** The same mark in unlike units may differ by the last bit. */
  private static void assertNotAbove(Measure<Length> low, Measure<Length> high) {
    assertTrue(low.isLessThan(high) || low.isEquivalentTo(high), () -> low + " and " + high);
  }

  @Property
  void anInchFractionOnAMarkStaysTheVerySame(
      @ForAll @IntRange(min = -64_000, max = 64_000) int sixtyFourths) {
    Measure<Length> length = Measures.inches(sixtyFourths / 64.0);
    assertEquals(length, Graduation.SIXTY_FOURTH.upTo(length));
    assertEquals(length, Graduation.SIXTY_FOURTH.downTo(length));
    assertEquals(length, Graduation.SIXTY_FOURTH.nearest(length));
    if (sixtyFourths % 8 == 0) {
      assertEquals(length, Graduation.EIGHTH.upTo(length));
    }
  }

  @Property
  void aMarkStaysWhereItIsThroughMillimetresAndBack(
      @ForAll @IntRange(min = 1, max = 64_000) int sixtyFourths) {
    Measure<Length> length = Measures.inches(sixtyFourths / 64.0);
    Measure<Length> metric = length.to(ShopUnits.MILLIMETRE);
    assertEquals(metric, Graduation.SIXTY_FOURTH.upTo(metric));
    assertEquals(metric, Graduation.SIXTY_FOURTH.downTo(metric));
    assertEquals(length, Graduation.SIXTY_FOURTH.upTo(metric).to(ShopUnits.INCH));
  }
}
