package org.hammerscale.scale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.random.Well19937c;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class WeighingTest {
  private static final Bar ROD = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
  private static final HeatPlan PLAN = HeatPlan.soaking(celsius(1150), minutes(2)).inHeats(5);

  /** What a kilogram leaves in a fire that takes a multiple of clean air. */
  private static Weighing taking(double factor) {
    double share = ScaleLoss.of(ROD, PLAN).share().likely().in(ShopUnits.ONE);
    return Weighing.of(ROD, PLAN, kilograms(1), kilograms(1 - factor * share));
  }

  /** Of a round the way round over the area is 4 / d. */
  @Test
  void theFactorIsWhatIsLostOverWhatCleanAirTakes() {
    double depth = ScaleLoss.of(ROD, PLAN).perSurface().likely().getValue();
    Weighing weighing = Weighing.of(ROD, PLAN, kilograms(0.36), kilograms(0.324));
    assertEquals(0.1 / (4 * depth / 12), weighing.factor().in(ShopUnits.ONE), 1e-12);
    assertEquals(0.036, weighing.lost().in(ShopUnits.KILOGRAM), 1e-12);
    assertEquals(PLAN, weighing.plan());
    Workings.check(weighing.working(), weighing.factor());
    assertTrue(weighing.toString().startsWith("0.036 kg of 0.36 kg lost in 5 heats of 2 min"));
  }

  @Test
  void inchesAndPoundsSayTheSame() {
    Bar inch = Bar.of(Section.round(inches(12 / 25.4)), Material.MILD_STEEL);
    HeatPlan plan = HeatPlan.soaking(fahrenheit(2102), minutes(2)).inHeats(5);
    Weighing metric = Weighing.of(ROD, PLAN, kilograms(0.4), kilograms(0.37));
    Weighing imperial = Weighing.of(inch, plan, pounds(0.8), pounds(0.74));
    assertEquals(metric.factor().in(ShopUnits.ONE), imperial.factor().in(ShopUnits.ONE), 1e-12);
    Workings.check(imperial.working(), imperial.factor());
    assertEquals(ShopUnits.POUND, imperial.lost().getUnit());
    Weighing mixed = Weighing.of(ROD, PLAN, kilograms(0.4), kilograms(0.37).to(ShopUnits.POUND));
    assertEquals(metric.factor().in(ShopUnits.ONE), mixed.factor().in(ShopUnits.ONE), 1e-12);
  }

  /**
   * By hand, of factors 1/2 and 1: with a = ln 2 the prior is S₀ = 4 a² / (2.1318² · 2); ȳ = −a/2,
   * Σ (y − ȳ)² = a²/2, 2 (a/2)²/3 = a²/6; t for 4 degrees is 2.1318, for 6 it is 1.9432 in the
   * usual tables; the middle is −a/3.
   */
  @Test
  void theShopsOwnFireIsThePosterior() {
    double a = Math.log(2);
    double s = 4 * a * a / (2.1318 * 2.1318 * 2) + a * a / 2 + a * a / 6;
    double reach = 1.9432 * Math.sqrt(s / 6 * (1 + 1 / 3d));
    Atmosphere mine = Atmosphere.FORGE_FIRE.weighed(taking(0.5), taking(1));
    assertEquals(Math.exp(-a / 3), mine.factor().likely().in(ShopUnits.ONE), 1e-9);
    assertEquals(Math.exp(-a / 3 + reach), mine.factor().high().in(ShopUnits.ONE), 1e-4);
    assertEquals(Math.exp(-a / 3 - reach), mine.factor().low().in(ShopUnits.ONE), 1e-4);
    assertEquals("forge fire, weighed 2 times", mine.name());
    assertEquals(
        "weighed 2 times in the shop, beside what is judged of the forge fire elsewhere (common"
            + " practice)",
        mine.source().toString());
    assertEquals("forge fire, weighed once", Atmosphere.FORGE_FIRE.weighed(taking(1)).name());
    assertEquals(
        mine.factor().likely().in(ShopUnits.ONE),
        Atmosphere.FORGE_FIRE.weighed(taking(1), taking(0.5)).factor().likely().in(ShopUnits.ONE),
        1e-15,
        "in any order");
    assertEquals(Atmosphere.BLAST.supply(), blown().supply());
  }

  private static Atmosphere blown() {
    HeatPlan plan = PLAN.in(Atmosphere.BLAST);
    return Atmosphere.BLAST.weighed(Weighing.of(ROD, plan, kilograms(1), kilograms(0.9)));
  }

  @Test
  void theSpreadShrinksAsWeighingsComeIn() {
    double before = 2;
    for (int n = 1; n <= 30; n++) {
      Weighing[] alike = new Weighing[n];
      Arrays.fill(alike, taking(0.7));
      Estimate<Dimensionless> factor = Atmosphere.FORGE_FIRE.weighed(alike).factor();
      double spread = factor.high().ratio(factor.likely());
      assertTrue(spread < before, n + " weighings spread " + spread);
      before = spread;
    }
    assertTrue(before < 1.2);
  }

  /** Shops and their pieces drawn from the prior: nine of ten of the next pieces lie inside. */
  @Test
  void nineOfTenOfTheNextPiecesLieInside() {
    SplittableRandom seeds = new SplittableRandom(20_480_611);
    Well19937c random = new Well19937c(seeds.nextLong());
    ChiSquaredDistribution chi = new ChiSquaredDistribution(random, 4);
    Estimate<Dimensionless> judged = Atmosphere.FORGE_FIRE.factor();
    double t0 = 2.131846786; // Student's t, 4 degrees of freedom, one side 95 %
    double squares = 4 * Math.pow(Math.log(2) / t0, 2) / 2;
    int shops = 10_000;
    for (int n : new int[] {1, 3, 8}) {
      int inside = 0;
      for (int shop = 0; shop < shops; shop++) {
        double deviation = Math.sqrt(squares / chi.sample());
        double mean = deviation * random.nextGaussian();
        double[] logs = new double[n];
        for (int i = 0; i < n; i++) {
          logs[i] = mean + deviation * random.nextGaussian();
        }
        double next = Math.exp(mean + deviation * random.nextGaussian());
        inside += WeighedFactor.of(judged, logs).covers(Measure.of(next, ShopUnits.ONE)) ? 1 : 0;
      }
      assertEquals(0.9, inside / (double) shops, 0.01, n + " weighings");
    }
  }

  @Test
  void refusesWhatCannotBe() {
    refused("after must be less than before, 1 kg", () -> weighed(1, 1));
    refused("after must be less than before", () -> weighed(1, 1.1));
    refused("after must not be negative", () -> weighed(1, -1));
    refused("after must be less than before, 0 kg", () -> weighed(0, 0));
    refused(
        "pieces must tell more alike",
        () -> Atmosphere.FORGE_FIRE.weighed(taking(1e-5), taking(5)));
    refused(
        "plan must have heats that make scale",
        () ->
            Weighing.of(
                ROD, HeatPlan.soaking(celsius(1150), minutes(0)), kilograms(1), kilograms(0.9)));
    refused(
        "plan must have heats that can take as much as was weighed, was 1 heat of 1 min at 20 °C",
        () ->
            Weighing.of(
                ROD, HeatPlan.soaking(celsius(20), minutes(1)), kilograms(1), kilograms(0.9)));
    assertTrue(
        Weighing.of(ROD, PLAN, kilograms(Double.MIN_VALUE), kilograms(0)).factor().getValue() > 1);
    refused("pieces must be at least one", () -> Atmosphere.FORGE_FIRE.weighed());
    refused(
        "pieces must be heated in the still air of the shop, was in the forge fire",
        () -> Atmosphere.STILL_AIR.weighed(taking(1)));
    Atmosphere own =
        Atmosphere.of("mine", Atmosphere.FORGE_FIRE.factor(), Source.commonPractice("told"));
    refused("pieces must be heated in the mine", () -> own.weighed(taking(1)));
  }

  private static void weighed(double before, double after) {
    Weighing.of(ROD, PLAN, kilograms(before), kilograms(after));
  }

  private static void refused(String beginning, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.startsWith(beginning), message);
  }
}
