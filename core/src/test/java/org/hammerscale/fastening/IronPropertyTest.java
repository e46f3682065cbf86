package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for every head and hole. */
class IronPropertyTest {
  private static final double INCH = 25.4;

  @Property
  void aWiderHoleMakesAShallowerCountersink(
      @ForAll @IntRange(min = 0, max = 10) int number,
      @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(6) double plate,
      @ForAll @DoubleRange(min = 0.001, max = 0.999) @Scale(6) double share) {
    WoodScrew screw = WoodScrew.number(number);
    Countersink sink = screw.countersinkIn(inches(plate)).withHole(screw.diameter());
    Measure<Length> room = screw.headDiameter().subtract(screw.diameter());
    Countersink wide = sink.withHole(screw.diameter().add(room.multiply(share)));
    assertTrue(wide.depth().isLessThan(sink.depth()));
    assertEquals(sink.headDepth(), wide.headDepth());
    // Plate and land, or what stands proud, always add up to the depth.
    assertEquals(
        plate, wide.depth().add(wide.land()).subtract(wide.standsProud()).getValue(), 1e-12);
    assertEquals(sink.fits(), sink.entersWood().getValue() <= plate * 1e-12);
    assertTrue(wide.diameterAtBack().isGreaterThanOrEqualTo(wide.hole()));
  }

  @Property
  void aLargerScrewSinksDeeper(@ForAll @IntRange(min = 0, max = 9) int number) {
    // Odd numbers above ten, and the heads of 14 and 18, are not in step.
    assertTrue(
        WoodScrew.number(number + 1)
            .countersinkIn(inches(1))
            .headDepth()
            .isGreaterThan(WoodScrew.number(number).countersinkIn(inches(1)).headDepth()));
  }

  @Property
  void metricAndInchInputGiveTheSameAnswer(
      @ForAll @DoubleRange(min = 0.05, max = 0.9) @Scale(6) double hole,
      @ForAll @DoubleRange(min = 0.02, max = 1) @Scale(6) double t) {
    Section inch = Section.flat(inches(1), inches(t));
    Section metric = Section.flat(millimetres(INCH), millimetres(INCH * t));
    IronHole a = IronHole.drilled(inches(hole));
    IronHole b = IronHole.drilled(millimetres(INCH * hole));
    close(a.netWidth(inch), b.netWidth(metric));
    assertEquals(1 - hole, a.netWidth(inch).getValue(), 1e-15);
    for (IronHoleRule rule :
        List.of(IronHoleRule.EN_1993_1_8, IronHoleRule.AISC_360, IronHoleRule.RIVET_PRACTICE)) {
      close(rule.leastEnd(a), rule.leastEnd(b));
      close(rule.leastEdge(a), rule.leastEdge(b));
      close(rule.leastSpacing(a), rule.leastSpacing(b));
      close(rule.leastSpacingAcross(a), rule.leastSpacingAcross(b));
    }
    close(
        IronHoleRule.EN_1993_1_8.mostEdge(inches(t)),
        IronHoleRule.EN_1993_1_8.mostEdge(millimetres(INCH * t)));
    close(Rivet.byUnwin(inches(t)).hole(), Rivet.byUnwin(millimetres(INCH * t)).hole());
  }

  private static void close(Measure<Length> inch, Measure<Length> metric) {
    double expected = metric.in(ShopUnits.INCH);
    assertEquals(expected, inch.in(ShopUnits.INCH), 1e-11 * expected);
  }
}
