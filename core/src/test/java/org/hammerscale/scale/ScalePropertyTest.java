package org.hammerscale.scale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** What must hold for scale at any heat and time. */
class ScalePropertyTest {
  private static final List<Atmosphere> AIRS =
      List.of(
          Atmosphere.LABORATORY_AIR, Atmosphere.STILL_AIR, Atmosphere.FORGE_FIRE, Atmosphere.BLAST);

  private static double lost(ScaleLaw law, double heat, double time) {
    return law.metalLoss(FireHistory.soak(celsius(heat), minutes(time))).getValue();
  }

  private static ScaleLoss loss(double size, HeatPlan plan) {
    return ScaleLoss.of(Bar.of(Section.square(millimetres(size)), Material.MILD_STEEL), plan)
        .by(ScaleLaw.MI)
        .unfed();
  }

  @Property
  void hotterAndLongerLoseMore(
      @ForAll @DoubleRange(min = 500, max = 1400) @Scale(2) double heat,
      @ForAll @DoubleRange(min = 0.1, max = 120) @Scale(3) double time,
      @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(2) double more) {
    for (ScaleLaw law : ScaleLaw.ALL) {
      assertTrue(lost(law, heat + more, time) > lost(law, heat, time));
      assertTrue(lost(law, heat, time + more) > lost(law, heat, time));
      assertEquals(2 * lost(law, heat, time), lost(law, heat, 4 * time), 1e-13);
    }
  }

  @Property
  void heatsAddWhenScaleIsKnockedOffAndShieldWhenKept(
      @ForAll @DoubleRange(min = 700, max = 1300) @Scale(2) double heat,
      @ForAll @DoubleRange(min = 0.1, max = 30) @Scale(3) double time,
      @ForAll @IntRange(min = 2, max = 12) int heats) {
    HeatPlan one = HeatPlan.soaking(celsius(heat), minutes(time));
    double once = loss(20, one).perSurface().likely().getValue();
    double off = loss(20, one.inHeats(heats)).perSurface().likely().getValue();
    double kept = loss(20, one.inHeats(heats).withScaleKept()).perSurface().likely().getValue();
    double asOne =
        loss(20, HeatPlan.soaking(celsius(heat), minutes(heats * time)))
            .perSurface()
            .likely()
            .getValue();
    assertEquals(heats * once, off, 1e-14 * off);
    assertEquals(asOne, kept, 1e-13 * kept);
    assertTrue(off > asOne);
  }

  @Property
  void aHistoryOfConstantTemperatureIsASoak(
      @ForAll @DoubleRange(min = 500, max = 1400) @Scale(2) double heat,
      @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(3) double first,
      @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(3) double second) {
    FireHistory parts = FireHistory.from(celsius(heat)).hold(minutes(first)).hold(minutes(second));
    FireHistory nearly =
        FireHistory.from(celsius(heat)).to(celsius(heat + 1e-7), minutes(first + second));
    for (ScaleLaw law : ScaleLaw.ALL) {
      double soak = lost(law, heat, first + second);
      assertEquals(soak, law.metalLoss(parts).getValue(), 1e-13 * soak);
      assertEquals(soak, law.metalLoss(nearly).getValue(), 1e-6 * soak);
    }
  }

  /** A ramp cut into two thousand soaks comes to the same, by the law for soaks alone. */
  @Property(tries = 50)
  void aRampIsManySmallSoaks(
      @ForAll @DoubleRange(min = 0, max = 900) @Scale(1) double from,
      @ForAll @DoubleRange(min = 950, max = 1300) @Scale(1) double to) {
    FireHistory ramp = FireHistory.from(celsius(from)).to(celsius(to), minutes(10));
    int steps = 2000;
    for (ScaleLaw law : ScaleLaw.ALL) {
      double sum = 0;
      for (int i = 0; i < steps; i++) {
        double x = lost(law, from + (to - from) * (i + 0.5) / steps, 10d / steps);
        sum += x * x;
      }
      assertEquals(Math.sqrt(sum), law.metalLoss(ramp).getValue(), 1e-5 * Math.sqrt(sum));
      FireHistory down = FireHistory.from(celsius(to)).to(celsius(from), minutes(10));
      assertEquals(
          law.metalLoss(ramp).getValue(), law.metalLoss(down).getValue(), 1e-14 * Math.sqrt(sum));
    }
  }

  @Property
  void theSpreadHoldsEveryPublishedLawFedAlike(
      @ForAll @DoubleRange(min = 500, max = 1400) @Scale(1) double heat,
      @ForAll @DoubleRange(min = 0.2, max = 120) @Scale(2) double time,
      @ForAll @DoubleRange(min = 0, max = 20) @Scale(2) double comingUp) {
    FireHistory history =
        FireHistory.from(celsius(20)).to(celsius(heat), minutes(comingUp)).hold(minutes(time));
    Bar bar = Bar.of(Section.square(millimetres(40)), Material.MILD_STEEL);
    for (Atmosphere air : AIRS) {
      for (ScaleLaw by : ScaleLaw.ALL) {
        ScaleLoss loss = ScaleLoss.of(bar, HeatPlan.of(history).in(air)).by(by);
        Estimate<Length> fed = loss.perSurface();
        Estimate<Length> bare = loss.unfed().perSurface();
        for (ScaleLaw law : ScaleLaw.ALL) {
          assertTrue(bare.covers(law.metalLoss(history)), () -> law + " " + bare);
          double little = OxygenSupply.metal(law, history, air.supply());
          assertTrue(fed.covers(millimetres(little)), () -> law + " " + fed);
        }
      }
    }
  }

  /**
   * Fire, time and number of heats err apart: the logarithms of their factors add as squares, each
   * way, round the likely value and not round the bare parabola.
   */
  @Property
  void factorsThatErrApartAddAsSquares(
      @ForAll @DoubleRange(min = 900, max = 1200) @Scale(1) double heat,
      @ForAll @DoubleRange(min = 0.5, max = 10) @Scale(2) double time,
      @ForAll @DoubleRange(min = 1, max = 3) @Scale(2) double longer,
      @ForAll @IntRange(min = 1, max = 6) int heats,
      @ForAll @IntRange(min = 0, max = 6) int more) {
    Estimate<Time> spread =
        Estimate.of(minutes(time / longer), minutes(time), minutes(time * longer));
    HeatPlan plan =
        HeatPlan.soaking(celsius(heat), spread)
            .inHeats(Estimate.of(number(heats), number(heats), number(heats + more)));
    Bar bar = Bar.of(Section.square(millimetres(40)), Material.MILD_STEEL);
    Estimate<Length> lost = ScaleLoss.of(bar, plan).perSurface();
    double likely = OxygenSupply.metal(ScaleLaw.MI, plan.each(), 1e-3);
    double most = OxygenSupply.metal(ScaleLaw.MI, plan.longest(), 1e-3);
    double squares =
        Math.pow(Math.log(2), 2)
            + Math.pow(Math.log(most / likely), 2)
            + Math.pow(Math.log((heats + more) / (double) heats), 2);
    assertEquals(heats * likely, lost.likely().getValue(), 1e-12);
    assertEquals(
        heats * likely * Math.exp(Math.sqrt(squares)), lost.high().getValue(), 1e-12 * heats);
    assertTrue(lost.high().getValue() < 2 * most * (heats + more) + 1e-12);
  }

  private static Measure<Dimensionless> number(int value) {
    return Measure.of(value, ShopUnits.ONE);
  }

  @Property
  void airFeedsLessThanTheParabolaButNearlyItInTheEnd(
      @ForAll @DoubleRange(min = 800, max = 1250) @Scale(1) double heat,
      @ForAll @DoubleRange(min = 0.1, max = 60) @Scale(2) double time) {
    FireHistory soak = FireHistory.soak(celsius(heat), minutes(time));
    FireHistory parts =
        FireHistory.from(celsius(heat)).hold(minutes(time / 3)).hold(minutes(time * 2 / 3));
    double parabola = ScaleLaw.MI.metalLoss(soak).getValue();
    double fed = OxygenSupply.metal(ScaleLaw.MI, soak, 1e-3);
    assertTrue(fed < parabola && fed < 1e-3 * 60 * time);
    assertEquals(fed, OxygenSupply.metal(ScaleLaw.MI, parts, 1e-3), 1e-12 * fed);
    assertEquals(parabola, OxygenSupply.metal(ScaleLaw.MI, soak, 1e6), 1e-6 * parabola);
  }

  @Property
  void metricAndInchCelsiusAndFahrenheitAgree(
      @ForAll @DoubleRange(min = 700, max = 1300) @Scale(2) double heat,
      @ForAll @DoubleRange(min = 0.1, max = 30) @Scale(3) double time,
      @ForAll @DoubleRange(min = 0.2, max = 3) @Scale(4) double size) {
    Section metric = Section.flat(millimetres(50.8 * size), millimetres(25.4 * size));
    Section inch = Section.flat(inches(2 * size), inches(size));
    ScaleLoss one =
        ScaleLoss.of(
                Bar.of(metric, Material.WROUGHT_IRON),
                HeatPlan.soaking(celsius(heat), minutes(time)))
            .by(ScaleLaw.MI)
            .unfed();
    ScaleLoss other =
        ScaleLoss.of(
                Bar.of(inch, Material.WROUGHT_IRON),
                HeatPlan.soaking(celsius(heat).to(ShopUnits.FAHRENHEIT), seconds(60 * time)))
            .by(ScaleLaw.MI)
            .unfed();
    assertEquals(ShopUnits.INCH, other.perSurface().likely().getUnit());
    assertEquals(
        one.perSurface().likely().getValue(),
        other.perSurface().likely().in(ShopUnits.MILLIMETRE),
        1e-12);
    assertEquals(
        one.share().high().in(ShopUnits.ONE), other.share().high().in(ShopUnits.ONE), 1e-12);
    assertEquals(
        one.mass(millimetres(254)).low().in(ShopUnits.KILOGRAM),
        other.mass(inches(10)).low().in(ShopUnits.KILOGRAM),
        1e-12);
  }

  @Property
  void aThinSectionLosesTheLargerPart(
      @ForAll @DoubleRange(min = 5, max = 100) @Scale(2) double size,
      @ForAll @DoubleRange(min = 0.1, max = 100) @Scale(2) double more,
      @ForAll @DoubleRange(min = 700, max = 1200) @Scale(2) double heat) {
    HeatPlan plan = HeatPlan.soaking(celsius(heat), minutes(5));
    assertTrue(
        loss(size, plan).share().likely().isGreaterThan(loss(size + more, plan).share().likely()));
    assertEquals(
        loss(size, plan).perSurface(), loss(size + more, plan).perSurface(), "but no deeper");
  }
}
