package org.hammerscale.holding;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.OvenDryGravity;
import org.hammerscale.fastening.TwelvePercentGravity;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/** What must hold for the hold of any fastener in any wood. */
class HoldPropertyTest {
  @Property
  void holdGrowsWithGravityDiameterAndLength(
      @ForAll Kind kind,
      @ForAll @DoubleRange(min = 0.33, max = 0.7) @Scale(4) double gravity,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(4) double diameter,
      @ForAll @DoubleRange(min = 0.1, max = 8) @Scale(4) double length,
      @ForAll @DoubleRange(min = 1.001, max = 1.8) @Scale(4) double more) {
    Measure<Force> base = reference(kind, gravity, inches(diameter), inches(length));
    assertTrue(
        reference(kind, gravity * more, inches(diameter), inches(length)).isGreaterThan(base));
    assertTrue(
        reference(kind, gravity, inches(diameter * more), inches(length)).isGreaterThan(base));
    Measure<Force> longer = reference(kind, gravity, inches(diameter), inches(length * more));
    assertEquals(more, longer.ratio(base), 1e-12);

    Wood light = Wood.softwood("light", TwelvePercentGravity.of(gravity));
    Wood dense = Wood.softwood("dense", TwelvePercentGravity.of(gravity * more));
    Fastener fastener = Fastener.of(kind, inches(diameter));
    Measure<Length> depth = fastener.diameter().multiply(20);
    assertTrue(
        LateralHold.of(fastener, dense)
            .force(depth)
            .likely()
            .isGreaterThanOrEqualTo(LateralHold.of(fastener, light).force(depth).likely()));
    Estimate<Force> ultimate = UltimateWithdrawal.of(fastener, light).force(inches(length));
    assertTrue(ultimate.low().isLessThan(ultimate.likely()));
    assertTrue(ultimate.low().isGreaterThan(base), "no reference value comes near the least");
  }

  private static Measure<Force> reference(
      Kind kind, double gravity, Measure<Length> diameter, Measure<Length> length) {
    return ReferenceWithdrawal.of(
            Fastener.of(kind, diameter), Wood.softwood("any", OvenDryGravity.of(gravity)))
        .force(length);
  }

  @Property
  void inchAndMetricAgree(
      @ForAll Kind kind,
      @ForAll boolean endGrain,
      @ForAll @DoubleRange(min = 0.33, max = 0.7) @Scale(4) double gravity,
      @ForAll @DoubleRange(min = 0.05, max = 1) @Scale(4) double diameter,
      @ForAll @DoubleRange(min = 0.1, max = 8) @Scale(4) double length) {
    Wood wood = Wood.hardwood("any", OvenDryGravity.of(gravity * 1.06));
    Fastener inch = Fastener.of(kind, inches(diameter));
    Fastener metric = Fastener.of(kind, millimetres(25.4 * diameter));
    assertSame(
        turned(ReferenceWithdrawal.of(inch, wood), endGrain).force(inches(length)),
        turned(ReferenceWithdrawal.of(metric, wood), endGrain).force(millimetres(25.4 * length)));
    assertSame(
        UltimateWithdrawal.of(inch, wood).force(inches(length)).high(),
        UltimateWithdrawal.of(metric, wood).force(millimetres(25.4 * length)).high());
    // A depth that is not just at a bound, where a rounding would decide.
    double deep = diameter * 20 / 3;
    assertSame(
        LateralHold.of(inch, wood).force(inches(deep)).likely(),
        LateralHold.of(metric, wood).force(millimetres(25.4 * deep)).likely());
  }

  private static ReferenceWithdrawal turned(ReferenceWithdrawal hold, boolean endGrain) {
    return endGrain ? hold.inEndGrain() : hold;
  }

  private static void assertSame(Measure<Force> inch, Measure<Force> metric) {
    assertEquals("lbf", inch.getUnit().toString());
    assertEquals("N", metric.getUnit().toString());
    assertTrue(inch.isEquivalentTo(metric), () -> inch + " is not " + metric);
  }

  @Property
  void noRowHoldsMoreThanAll(
      @ForAll @IntRange(min = 1, max = 40) int count,
      @ForAll @DoubleRange(min = 0.5, max = 40) @Scale(3) double diameters) {
    Fastener bolt = Fastener.of(Kind.LAG_SCREW, inches("3/8"));
    FastenerRow along = FastenerRow.alongGrain(count, bolt, bolt.diameter().multiply(diameters));
    for (FastenerRow row :
        new FastenerRow[] {along, FastenerRow.pulledOut(count), FastenerRow.acrossGrain(count)}) {
      Estimate<Dimensionless> number = row.effectiveNumber();
      assertTrue(number.low().getValue() >= 1 - 1e-12);
      assertEquals(count, number.high().getValue());
    }
    double fewer = FastenerRow.pulledOut(count).effectiveNumber().likely().getValue();
    double more = FastenerRow.pulledOut(count + 1).effectiveNumber().likely().getValue();
    assertTrue(more > fewer && more < fewer + 1);
    assertTrue(
        along
            .effectiveNumber()
            .likely()
            .isLessThanOrEqualTo(
                FastenerRow.alongGrain(count, bolt, bolt.diameter().multiply(diameters + 1))
                    .effectiveNumber()
                    .likely()));
  }
}
