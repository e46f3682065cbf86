package org.hammerscale.holding;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.ClenchedNail;
import org.hammerscale.fastening.Fastener;
import org.hammerscale.fastening.LagScrew;
import org.hammerscale.fastening.OldBritishWoodScrew;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener.Kind;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.holding.ScrewChoice.Limit;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class StrapScrewsTest {
  private static final Wood FIR = Wood.named("Douglas-fir coast");
  private static final StrapScrews STRAP =
      StrapScrews.through(inches("3/16")).into(inches("1 1/2"), FIR);
  private static final StrapScrews LOADED =
      STRAP.pulledOff(poundsForce(36)).pushedAcross(poundsForce(70));

  private static ScrewSeries only(int number, Quantity<Length> length) {
    return ScrewSeries.of("box", List.of(WoodScrew.number(number)), List.of(length));
  }

  @Test
  void usesOfTwoTens() {
    ScrewChoice two = LOADED.bestOf(only(10, inches("1 1/2")));
    assertEquals(2, two.count());
    assertEquals(inches(1.3125), two.penetration());
    // By hand: 2850 × 0.5² × 0.19 × 1 in of thread = 135.375 lbf; 3960 × 0.19² × 1.3125/1.33 =
    // 141.075 lbf, not 7 diameters deep; two count for 1.86607.
    assertEquals(36 / (1.86607 * 135.375), two.use(Limit.WITHDRAWAL), 1e-5);
    assertEquals(70 / (1.86607 * 141.075), two.use(Limit.LATERAL), 1e-5);
    // W Z / (W cos² α + Z sin² α) at the angle of 36 out of 70, against √(36² + 70²) = 78.715.
    double cos2 = 70 * 70 / (36 * 36 + 70 * 70d);
    double both = 135.375 * 141.075 / (135.375 * cos2 + 141.075 * (1 - cos2));
    assertEquals(78.7147 / (1.86607 * both), two.use(Limit.COMBINED), 1e-5);
    // 36 lbf on π × 0.385 × 0.1875 in² of iron at 35969 psi (248 MPa) ÷ 2 ÷ √3.
    assertEquals(
        36 / (1.86607 * Math.PI * 0.385 * 0.1875 * 35_969 / 2 / Math.sqrt(3)),
        two.use(Limit.HEAD),
        1e-4 * two.use(Limit.HEAD));
    assertEquals(Limit.COMBINED, two.governing());
    assertEquals(
        "2 × no. 10 wood screw, 0.19 in, 1 1/2 in long; both together 30.2 %", two.toString());
  }

  @Test
  void showsItsWorkings() {
    for (ScrewSeries series : List.of(ScrewSeries.WOOD_SCREWS, ScrewSeries.LAG_SCREWS)) {
      ScrewChoice choice = LOADED.bestOf(series);
      for (Limit limit : Limit.values()) {
        Workings.check(choice.working(limit), Measure.of(choice.use(limit), ShopUnits.ONE));
      }
    }
    ScrewChoice metric = STRAP.pushedAcross(newtons(400)).bestOf(ScrewSeries.METRIC_WOOD_SCREWS);
    Workings.check(metric.working(Limit.SCREW), Measure.of(metric.use(Limit.SCREW), ShopUnits.ONE));
    assertEquals(0, metric.use(Limit.WITHDRAWAL));
    assertEquals(Limit.LATERAL, metric.governing());
    for (PenetrationRule rule : PenetrationRule.values()) {
      LagScrew lag = LagScrew.of(inches("1/2"));
      Workings.check(rule.working(inches(1), lag), rule.leastLength(inches(1), lag));
    }
  }

  @Test
  void countsTheTipOfALagScrewOut() {
    LagScrew lag = LagScrew.of(inches("1/2"));
    assertEquals(
        inches(1 + 2 + 5 / 16d),
        PenetrationRule.FOUR_DIAMETERS_AND_TIP.leastLength(inches(1), lag));
    assertEquals(inches(4), PenetrationRule.SIX_DIAMETERS.leastLength(inches(1), lag));
    assertEquals(
        inches(5 + 5 / 16d), PenetrationRule.EIGHT_DIAMETERS_AND_TIP.leastLength(inches(1), lag));
    assertEquals(inches(5), PenetrationRule.TWO_THIRDS_OF_THICKNESS.leastLength(inches(3), lag));
    assertEquals("two thirds of the screw", PenetrationRule.TWO_THIRDS_OF_SCREW.toString());
    StrapScrews post = StrapScrews.through(inches("1/4")).into(inches(4), FIR);
    StrapScrews pulled = post.pulledOff(poundsForce(900)).pushedAcross(poundsForce(1));
    ScrewSeries half = ScrewSeries.of("half-inch lags", List.of(lag), List.of(inches(4)));
    // Thread 2 1/2 in less the tip of 5/16 in holds 378 lbf an inch by the table.
    assertEquals(
        900 / (Math.pow(2, 0.9) * 2.1875 * 378),
        pulled.atMost(3).bestOf(half).use(Limit.WITHDRAWAL),
        2e-3);
    // 5050 psi of the low proportional limit; across the grain 0.65 of it.
    double across = 4280 * 0.25 * (1 - 1.645 * 0.18) * 0.65 * (3.4375 / 5.5);
    assertEquals(
        1 / (Math.pow(pulled.bestOf(half).count(), 0.9) * across),
        pulled.bestOf(half).use(Limit.LATERAL),
        1e-9);
  }

  @Test
  void thinIronAndThinWoodAreRespected() {
    ScrewSeries tens = only(10, inches("1 1/2"));
    StrapScrews thin = StrapScrews.through(inches("1/16")).into(inches("1 1/2"), FIR);
    String message = refusal(() -> thin.pulledOff(poundsForce(5)).choices(tens));
    assertTrue(message.contains("some heads are deeper than 1/16 in of iron"), message);
    ScrewChoice round = thin.pulledOff(poundsForce(5)).withHeadsOnTheIron().bestOf(tens);
    assertTrue(round.cautions().toString().contains("heads stand on the iron"));
    StrapScrews board = StrapScrews.through(inches("3/16")).into(inches(1), FIR);
    assertFalse(board.keepsPoint(inches("1 1/2")));
    assertTrue(board.keepsPoint(inches("1 3/16")));
    message = refusal(() -> board.pulledOff(poundsForce(5)).choices(tens));
    assertTrue(message.contains("stand deeper than 1 in of wood"), message);
    StrapScrews plated =
        StrapScrews.through(inches("3/16"))
            .andThrough(inches("5/16"))
            .into(inches(1), FIR)
            .pulledOff(poundsForce(5));
    assertEquals(inches("1/2"), plated.fixed());
    assertEquals(inches(1), plated.bestOf(only(6, inches("1 1/2"))).penetration());
    message = refusal(() -> LOADED.pulledOff(poundsForce(5000)).atMost(3).choices(tens));
    assertTrue(message.contains("some would need more than 3"), message);
  }

  @Test
  void oneScrewOnlyWhereThereIsRoomForOne() {
    ScrewSeries twelves = only(12, inches("1 1/2"));
    assertEquals(2, LOADED.bestOf(twelves).count());
    ScrewChoice one = LOADED.atMost(1).bestOf(twelves);
    assertEquals(1, one.count());
    assertFalse(one.cautions().toString().contains("share unequally"));
  }

  @Test
  void choosesAsTryingAllDoes() {
    Random random = new Random(20261128);
    Quantity<Force> none = newtons(0);
    for (int i = 0; i < 2000; i++) {
      double pull = random.nextInt(4) == 0 ? 0 : random.nextInt(200);
      double across = pull == 0 ? 1 + random.nextInt(200) : random.nextInt(300);
      StrapScrews asked =
          StrapScrews.through(inches((2 + random.nextInt(4)) / 16d))
              .into(inches((6 + random.nextInt(10)) / 8d), FIR)
              .pulledOff(pull == 0 ? none : poundsForce(pull))
              .pushedAcross(poundsForce(across))
              .atMost(2 + random.nextInt(8));
      List<String> expected = new ArrayList<>();
      for (int count = 1; count <= 100; count++) {
        for (int number : new int[] {6, 8, 10, 12}) {
          tried(asked, number, count, pull, across, expected);
        }
      }
      if (expected.isEmpty()) {
        assertTrue(refusal(() -> asked.choices(series())).startsWith("series must hold"));
      } else {
        List<String> found =
            asked.choices(series()).stream()
                .map(c -> c.count() + " " + ((WoodScrew) c.screw()).number() + " " + c.length())
                .toList();
        assertEquals(expected, found, asked::toString);
      }
    }
  }

  private static ScrewSeries series() {
    return ScrewSeries.of(
        "four sizes",
        List.of(
            WoodScrew.number(6), WoodScrew.number(8), WoodScrew.number(10), WoodScrew.number(12)),
        List.of(inches("3/4"), inches(1), inches("1 1/4"), inches("1 1/2"), inches(2)));
  }

  /** The shortest of one size in so many, by the rules written out anew, in pounds and inches. */
  private static void tried(
      StrapScrews asked, int number, int count, double pull, double across, List<String> expected) {
    if (expected.stream().anyMatch(e -> e.split(" ", 3)[1].equals("" + number))
        || count > asked.most()
        || count < 2) {
      return;
    }
    WoodScrew screw = WoodScrew.number(number);
    double d = 0.06 + 0.013 * number;
    double iron = asked.fixed().in(ShopUnits.INCH);
    double cone = (screw.headDiameter().in(ShopUnits.INCH) - d) / 2 / Math.tan(Math.toRadians(41));
    for (double length : new double[] {0.75, 1, 1.25, 1.5, 2}) {
      double deep = length - iron;
      if (cone > iron || deep < 6 * d - 1e-9 || !asked.keepsPoint(inches(length))) {
        continue;
      }
      double row = Math.pow(count, 0.9);
      double w = row * 2850 * 0.25 * d * Math.min(deep, length * 2 / 3);
      double z = row * 3960 * d * d * Math.min(1, deep / (7 * d));
      double r = Math.hypot(pull, across);
      double both = w * z / (w * across * across / r / r + z * pull * pull / r / r);
      if (pull <= w
          && across <= z
          && r <= both
          && screwBears(screw, length, iron, pull, across, row)) {
        expected.add(count + " " + number + " " + inches(length));
        return;
      }
    }
  }

  private static boolean screwBears(
      WoodScrew screw, double length, double iron, double pull, double across, double row) {
    double root = screw.rootDiameter().in(ShopUnits.INCH);
    double there = length / 3 < iron ? root : screw.diameter().in(ShopUnits.INCH);
    double f = pull / row / (Math.PI / 4 * root * root);
    double v = across / row / (Math.PI / 4 * there * there);
    return Math.sqrt(f * f + 3 * v * v)
        <= Material.MILD_STEEL.yieldStrength().low().in(ShopUnits.PSI) / 2;
  }

  @Test
  void moreWoodNeverAsksForMoreScrews() {
    int before = 100;
    for (int eighths = 6; eighths < 24; eighths++) {
      int count =
          StrapScrews.through(inches("3/16"))
              .into(inches(eighths / 8d), FIR)
              .pulledOff(poundsForce(300))
              .atMost(100)
              .bestOf(ScrewSeries.WOOD_SCREWS)
              .count();
      assertTrue(count <= before, eighths + " eighths");
      before = count;
    }
  }

  @Test
  void inchAndMetricAgree() {
    ScrewChoice inch = LOADED.bestOf(ScrewSeries.WOOD_SCREWS);
    ScrewChoice metric =
        StrapScrews.through(millimetres(4.7625))
            .into(millimetres(38.1), FIR)
            .pulledOff(newtons(36 * 4.4482216152605))
            .pushedAcross(newtons(70 * 4.4482216152605))
            .bestOf(ScrewSeries.WOOD_SCREWS);
    assertEquals(inch.count(), metric.count());
    assertEquals(inch.screw(), metric.screw());
    assertEquals(inch.use(Limit.COMBINED), metric.use(Limit.COMBINED), 1e-12);
  }

  @Test
  void strongerIronFactorUsesMore() {
    ScrewSeries tens = only(10, inches("1 1/2"));
    assertEquals(
        2 * LOADED.bestOf(tens).use(Limit.SCREW),
        LOADED.withSafety(4).bestOf(tens).use(Limit.SCREW),
        1e-12);
  }

  @Test
  void tellsItsSeries() {
    assertEquals(inches("1 1/4"), ScrewSeries.WOOD_SCREWS.lengthAtLeast(inches(1.1715)));
    assertEquals(24, ScrewSeries.WOOD_SCREWS.lengths().size() + 4);
    assertEquals(millimetres(220), ScrewSeries.METRIC_WOOD_SCREWS.lengthAtLeast(millimetres(201)));
    assertEquals(inches(9), ScrewSeries.LAG_SCREWS.lengthAtLeast(inches("8 1/4")));
    assertEquals(7, ScrewSeries.LAG_SCREWS.screws().size());
    assertTrue(ScrewSeries.LAG_SCREWS.source().toString().contains("common practice"));
    assertEquals("box, 1 size, 1 in to 1 in", only(8, inches(1)).toString());
    assertTrue(refusal(() -> ScrewSeries.WOOD_SCREWS.lengthAtLeast(inches(7))).contains("longest"));
    assertTrue(
        refusal(
                () ->
                    ScrewSeries.of(
                        "x", List.of(WoodScrew.number(8)), List.of(inches(2), inches(1))))
            .contains("must rise"));
    ClenchedNail nail = ClenchedNail.of(Section.square(inches("1/4")));
    assertTrue(
        refusal(() -> ScrewSeries.of("x", List.of(nail), List.of(inches(2)))).contains("nail"));
    assertEquals(inches(2), nail.threadLength(inches(2)));
    assertEquals(inches(0), nail.tip());
    assertEquals(inches(2), Fastener.of(Kind.WOOD_SCREW, inches("1/4")).threadLength(inches(3)));
  }

  @Test
  void takesScrewsOfAnyKind() {
    ScrewSeries mixed =
        ScrewSeries.of(
            "found",
            List.of(OldBritishWoodScrew.number(8), Fastener.of(Kind.LAG_SCREW, inches("3/16"))),
            List.of(inches("1 1/2")));
    assertEquals(2, LOADED.choices(mixed).size());
    ScrewSeries thick =
        ScrewSeries.of(
            "thick", List.of(Fastener.of(Kind.LAG_SCREW, inches(1.25))), List.of(inches(8)));
    StrapScrews post = StrapScrews.through(inches("1/2")).into(inches(12), FIR);
    double thin = post.pushedAcross(poundsForce(1)).bestOf(thick).use(Limit.LATERAL);
    assertTrue(thin > 0 && thin < 0.01);
  }

  @Test
  void refusesWhatHasNoAnswer() {
    assertEquals(
        "screws through 3/16 in into 1 1/2 in of Douglas-fir coast\n  pulled off by 36 lbf,"
            + " pushed across by 70 lbf",
        LOADED.toString());
    assertEquals(
        "screws through 1 in, into nothing yet", StrapScrews.through(inches(1)).toString());
    ScrewChoice idle = STRAP.bestOf(only(10, inches("1 1/2")));
    assertEquals(2, idle.count(), "without a load two hold the strap");
    assertEquals(0, idle.use(idle.governing()));
    Workings.check(idle.working(Limit.COMBINED), Measure.of(0, ShopUnits.ONE));
    assertTrue(refusal(() -> STRAP.withSafety(0.5)).startsWith("factor must lie between"));
    assertTrue(refusal(() -> STRAP.atMost(0)).startsWith("count must be from 1 to 100"));
    assertTrue(refusal(() -> STRAP.pulledOff(newtons(-1))).startsWith("force must not"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
