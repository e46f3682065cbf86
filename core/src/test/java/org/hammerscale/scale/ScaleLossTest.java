package org.hammerscale.scale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Air;
import org.hammerscale.heat.Kernels;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class ScaleLossTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
  private static final HeatPlan FIVE_MINUTES =
      HeatPlan.soaking(celsius(1150), minutes(5)).in(Atmosphere.STILL_AIR);

  private static ScaleLoss loss(Section section) {
    return ScaleLoss.of(Bar.of(section, Material.MILD_STEEL), FIVE_MINUTES).by(ScaleLaw.MI).unfed();
  }

  /**
   * In a heat of minutes the air cannot feed the parabola: x² / k + x / l = t, with l the 1 µm/s
   * that still air brings; its root by hand.
   */
  @Test
  void theLikelyValueIsWhatTheAirCanFeed() {
    double l = 0.001;
    double k = 0.18017877 * 0.18017877 / 300;
    double fed = k / l * (Math.sqrt(1 + 4 * l * l * 300 / k) - 1) / 2;
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES);
    assertEquals(fed, loss.perSurface().likely().getValue(), 1e-9);
    assertEquals(2 * fed, loss.perSurface().high().getValue(), 1e-9);
    assertEquals(fed / 2, loss.perSurface().low().getValue(), 1e-9);
    assertEquals(
        3 * fed,
        ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(3)).perSurface().likely().getValue(),
        1e-9);
    // Kept on, the scale of twelve heats grows as one of an hour.
    double hour = k / l * (Math.sqrt(1 + 4 * l * l * 3600 / k) - 1) / 2;
    ScaleLoss kept = ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(12).withScaleKept());
    assertEquals(hour, kept.perSurface().likely().getValue(), 1e-9);
    Workings.check(kept.working(), kept.perSurface().likely());
    Workings.check(loss.working(), loss.perSurface().likely());
    assertFalse(texts(loss.cautions()).contains("lacks oxygen"));
  }

  /** Of 25 × 6 mm: the way round 62 mm, the area 150 mm², the metal 1.1775 kg/m. */
  @Test
  void takesTheSameFromEachSurface() {
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES).by(ScaleLaw.MI).unfed();
    double x = 0.18017877; // published, for 1150 °C and 5 min
    assertEquals(x, loss.perSurface().likely().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(x / 2, loss.perSurface().low().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(x * 2, loss.perSurface().high().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(x * 62 / 150, loss.share().likely().in(ShopUnits.ONE), 1e-9);
    assertEquals(
        1.1775 * x * 62 / 150, loss.mass(millimetres(1000)).likely().in(ShopUnits.KILOGRAM), 1e-9);
    assertEquals(25 - 2 * x, loss.width().likely().in(ShopUnits.MILLIMETRE), 1e-8);
    assertEquals(6 - 4 * x, loss.thickness().low().in(ShopUnits.MILLIMETRE), 1e-8);
    assertEquals(6 - x, loss.thickness().high().in(ShopUnits.MILLIMETRE), 1e-8);
    assertEquals(10 + 2 * x, loss.bore(millimetres(10)).likely().in(ShopUnits.MILLIMETRE), 1e-8);
    // Dense wüstite is 1.763 times as thick as the metal that it ate.
    assertEquals(1.763240637 * x, loss.scale().likely().in(ShopUnits.MILLIMETRE), 1e-8);
    assertEquals(STRAP, loss.bar());
    assertEquals(ScaleLaw.MI, loss.law());
    assertEquals(FIVE_MINUTES, loss.plan());
  }

  /** 1.1775 kg/m × 0.4 m, and x × 62 / 150 of it, x being what the air can feed. */
  @Test
  void weighsWhatALengthLoses() {
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES);
    double x = loss.perSurface().likely().in(ShopUnits.MILLIMETRE);
    double mass = loss.mass(millimetres(400)).likely().in(ShopUnits.KILOGRAM);
    assertEquals(1.1775 * 0.4 * x * 62 / 150, mass, 1e-9);
  }

  @Test
  void aPlanIsOneHeatInAForgeFireUnlessToldOtherwise() {
    HeatPlan plan =
        HeatPlan.soaking(fahrenheit(2100), Estimate.of(minutes(3), minutes(4), minutes(6)));
    assertEquals(1, plan.heats());
    assertFalse(plan.isScaleKept());
    assertTrue(plan.withScaleKept().in(Atmosphere.STILL_AIR).isScaleKept());
  }

  @Test
  void aTubeScalesInsideToo() {
    ScaleLoss tube = loss(Section.roundTube(millimetres(30), millimetres(3)));
    double x = 0.18017877;
    assertEquals(3 - 2 * x, tube.wall().likely().in(ShopUnits.MILLIMETRE), 1e-8);
    // π (30 + 24) round, π × 3 × 27 of metal.
    assertEquals(x * 54 / 81, tube.share().likely().in(ShopUnits.ONE), 1e-9);
    assertThrows(
        IllegalArgumentException.class,
        () -> ScaleLoss.of(STRAP, FIVE_MINUTES).by(ScaleLaw.MI).unfed().wall());
  }

  /** A hexagon across its corners loses 2/√3 as much as across its flats. */
  @Test
  void aHexagonStaysAHexagon() {
    ScaleLoss loss = loss(Section.hexagon(millimetres(20)));
    Measure<Length> flats = loss.thickness().likely();
    assertEquals(
        Section.hexagon(flats).width().getValue(), loss.width().likely().getValue(), 1e-12);
    // Area ∝ s²: its share is 4 x / s to first order.
    assertEquals(4 * 0.18017877 / 20, loss.share().likely().in(ShopUnits.ONE), 1e-9);
  }

  @Test
  void knockedOffAddsAndKeptGrowsAsOne() {
    double once = 0.18017877;
    assertEquals(
        3 * once,
        ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(3))
            .by(ScaleLaw.MI)
            .unfed()
            .perSurface()
            .likely()
            .getValue(),
        1e-8);
    ScaleLoss kept =
        ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(12).withScaleKept()).by(ScaleLaw.MI).unfed();
    // Twelve heats of five minutes are an hour: published, 0.6241575682 mm.
    assertEquals(0.6241575682, kept.perSurface().likely().getValue(), 1e-9);
    assertEquals(1.100539988, kept.scale().likely().getValue(), 1e-9);
    assertEquals(
        once * 1.763240637,
        ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(3))
            .by(ScaleLaw.MI)
            .unfed()
            .scale()
            .likely()
            .getValue(),
        1e-8);
  }

  @Test
  void neverTakesMoreThanThereIs() {
    Bar leaf = Bar.of(Section.flat(millimetres(20), millimetres(1)), Material.WROUGHT_IRON);
    ScaleLoss loss =
        ScaleLoss.of(leaf, HeatPlan.soaking(celsius(1250), minutes(60)).inHeats(2))
            .by(ScaleLaw.MI)
            .unfed();
    assertEquals(1, loss.share().likely().in(ShopUnits.ONE));
    assertEquals(millimetres(0), loss.thickness().likely());
    assertEquals(leaf.mass(millimetres(100)), loss.mass(millimetres(100)).high());
    assertTrue(texts(loss.cautions()).contains("more than a quarter of 20 mm × 1 mm flat"));
    Workings.check(loss.shareWorking(), loss.share().likely());
  }

  @Test
  void showsItsWorking() {
    Bar inch = Bar.of(Section.square(inches("1/2")), Material.MILD_STEEL);
    FireHistory ramps = FireHistory.from(celsius(20)).to(celsius(1100), minutes(4));
    for (ScaleLaw law : ScaleLaw.ALL) {
      for (HeatPlan plan : List.of(FIVE_MINUTES, HeatPlan.of(ramps).inHeats(2).withScaleKept())) {
        for (Bar bar : List.of(STRAP, inch)) {
          ScaleLoss loss = ScaleLoss.of(bar, plan).by(law).unfed();
          Workings.check(loss.working(), loss.perSurface().likely());
          Workings.check(loss.shareWorking(), loss.share().likely());
          Feature taper = Taper.toPoint(bar.section(), millimetres(100));
          Workings.check(loss.allowanceWorking(taper), loss.allowance(taper).likely());
          assertEquals(bar.section().width().getUnit(), loss.perSurface().low().getUnit());
        }
      }
    }
    String text = ScaleLoss.of(STRAP, FIVE_MINUTES).by(ScaleLaw.MI).unfed().working().toString();
    assertTrue(text.contains("k = 534 / exp(20319 / T)"), text);
    assertTrue(text.contains("Mi, Fujinawa and Bergthorson"), text);
  }

  @Test
  void barIsAddedWhereTheSectionChangesOnly() {
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES).by(ScaleLaw.MI).unfed();
    Plain plain = Plain.of(STRAP.section(), millimetres(200));
    assertEquals(Estimate.exact(millimetres(0)), loss.allowance(plain));
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> loss.allowanceWorking(plain))
            .getMessage()
            .startsWith("feature must be forged to another section"));
    // Plain or not, the fire takes the bar's share of its 200 mm.
    assertEquals(
        loss.mass(millimetres(200)).likely().getValue(),
        loss.taken(plain).likely().getValue(),
        1e-12);

    // 300 mm of 12.5 × 6 mm from 150 mm of bar: 150 × 62 mm² before, 300 × 37 mm² after.
    Plain drawn = Plain.of(Section.flat(millimetres(12.5), millimetres(6)), millimetres(300));
    double surface = (150 * 62 + 300 * 37) / 2d;
    assertEquals(
        0.18017877 * surface / 150, loss.allowance(drawn).likely().in(ShopUnits.MILLIMETRE), 1e-7);
    assertEquals(
        0.18017877 * surface * 7.85e-6, loss.taken(drawn).likely().in(ShopUnits.KILOGRAM), 1e-9);
  }

  @Test
  void aStraightTaperHasTheSurfaceOfItsMiddle() {
    Section square = Section.square(millimetres(20));
    ScaleLoss loss = loss(square);
    Taper point = Taper.toPoint(square, millimetres(300));
    // 100 mm of bar with 80 mm round; 300 mm of point with 40 mm round in the middle.
    double surface = (100 * 80 + 300 * 40) / 2d;
    assertEquals(0.18017877 * surface / 400, loss.allowance(point).likely().getValue(), 1e-7);
  }

  @Test
  void cautionsWhereTheFireTakesMuchOfATip() {
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(3)).by(ScaleLaw.MI).unfed();
    Section tip = Section.flat(millimetres(10), millimetres(3));
    List<Caution> thin = loss.cautions(Taper.between(STRAP.section(), tip, millimetres(100)));
    assertEquals(1, thin.size());
    assertTrue(texts(thin).contains("of the 3 mm at the thin end of the taper"), texts(thin));
    assertTrue(loss.cautions(Plain.of(STRAP.section(), millimetres(9))).isEmpty());
    assertTrue(loss.cautions(Taper.toPoint(STRAP.section(), millimetres(100))).isEmpty());
    Section tube = Section.roundTube(millimetres(30), millimetres(2));
    assertTrue(loss(tube).cautions(Plain.of(tube, millimetres(9))).isEmpty());
    assertEquals(
        1,
        ScaleLoss.of(STRAP, FIVE_MINUTES.inHeats(3))
            .by(ScaleLaw.MI)
            .unfed()
            .cautions(Plain.of(tube, millimetres(9)))
            .size());
  }

  /** A 2 mm strap that a bad fire may eat up is told so even if it is likely to come through. */
  @Test
  void noThinStrapIsEatenUpWithoutAWord() {
    Section strap = Section.flat(millimetres(25), millimetres(2));
    Bar bar = Bar.of(strap, Material.MILD_STEEL);
    for (double time = 0.1; time < 20; time *= 1.1) {
      for (int heats = 1; heats <= 8; heats++) {
        HeatPlan plan = HeatPlan.soaking(celsius(1100), minutes(time)).inHeats(heats);
        for (Atmosphere fire : List.of(Atmosphere.FORGE_FIRE, Atmosphere.BLAST)) {
          ScaleLoss loss = ScaleLoss.of(bar, plan.in(fire));
          String said = texts(loss.cautions());
          assertEquals(
              loss.share().likely().in(ShopUnits.ONE) > 0.25
                  || loss.share().high().in(ShopUnits.ONE) > 0.5,
              said.contains("fewer or shorter heats"),
              said);
        }
      }
    }
    HeatPlan guessed =
        HeatPlan.soaking(celsius(1100), Estimate.of(minutes(1), minutes(3), minutes(90)));
    ScaleLoss worst = ScaleLoss.of(bar, guessed);
    assertTrue(worst.share().likely().in(ShopUnits.ONE) < 0.25);
    assertEquals(
        "in a bad fire 25 mm × 2 mm flat may lose more than half of itself: plan fewer or shorter"
            + " heats, and keep it deep in the fire",
        worst.cautions().get(0).text());
    assertTrue(
        texts(ScaleLoss.of(bar, guessed.inHeats(2)).cautions()).contains("fewer or shorter heats"));
    Section thin = Section.flat(millimetres(12), millimetres(1.5));
    List<Caution> tip = worst.cautions(Taper.between(strap, thin, millimetres(100)));
    assertTrue(texts(tip).contains("the fire may take"), texts(tip));
  }

  /** Where the blast blows on the iron a short heat scales nearly by the bare parabola. */
  @Test
  void theBlastBringsMoreOxygen() {
    HeatPlan minute = HeatPlan.soaking(celsius(1150), minutes(1));
    double deep = ScaleLoss.of(STRAP, minute).perSurface().likely().getValue();
    double blown =
        ScaleLoss.of(STRAP, minute.in(Atmosphere.BLAST)).perSurface().likely().getValue();
    // x² / k + x / l = t with 4 µm/s for l.
    double l = 0.004;
    double k = 0.18017877 * 0.18017877 / 300;
    assertEquals(k / l * (Math.sqrt(1 + 4 * l * l * 60 / k) - 1) / 2, blown, 1e-9);
    assertTrue(blown > 1.4 * deep && blown < ScaleLaw.MI.metalLoss(minute.each()).getValue());
    assertFalse(Atmosphere.BLAST.equals(Atmosphere.FORGE_FIRE));
    assertEquals(
        "under the blast, scale × 1 (0.5 to 2), 4 times as much oxygen as still air",
        Atmosphere.BLAST.toString());
    // A draught of 5 m/s carries heat, and so oxygen, four times as well as still air does.
    Section round = Section.round(millimetres(20));
    double draught =
        Kernels.convection(Air.moving(millimetres(5000), seconds(1)), round, celsius(1150));
    assertEquals(4, draught / Kernels.convection(Air.STILL, round, celsius(1150)), 0.1);
  }

  @Test
  void theMeasuredTubeLiesInside() {
    FireHistory history =
        FireHistory.from(celsius(20))
            .to(celsius(1000), minutes(196))
            .hold(minutes(15))
            .to(celsius(20), minutes(196));
    Bar tube = Bar.of(Section.roundTube(millimetres(30), millimetres(5)), Material.MILD_STEEL);
    for (Atmosphere air :
        List.of(Atmosphere.LABORATORY_AIR, Atmosphere.STILL_AIR, Atmosphere.FORGE_FIRE)) {
      Estimate<Length> scale =
          ScaleLoss.of(tube, HeatPlan.of(history).in(air)).by(ScaleLaw.MI).unfed().scale();
      assertTrue(scale.covers(millimetres(0.401)), scale::toString);
      assertTrue(scale.covers(millimetres(0.4213330265)), scale::toString);
      assertTrue(scale.covers(millimetres(0.3797396249)), scale::toString);
    }
  }

  @Test
  void saysWhereALawIsStretched() {
    ScaleLoss loss =
        ScaleLoss.of(STRAP, FIVE_MINUTES.in(Atmosphere.FORGE_FIRE)).by(ScaleLaw.MI).unfed();
    assertTrue(
        texts(loss.by(ScaleLaw.STANLEY).unfed().cautions())
            .contains("measured from 500 °C to 900 °C and is extrapolated to 1150 °C"));
    assertTrue(texts(loss.cautions()).contains("a heat as short as 5 min at 1150 °C lacks oxygen"));
    HeatPlan hour = HeatPlan.soaking(celsius(1100), minutes(60)).in(Atmosphere.LABORATORY_AIR);
    Bar stout = Bar.of(Section.round(millimetres(40)), Material.MILD_STEEL);
    assertTrue(ScaleLoss.of(stout, hour).by(ScaleLaw.MI).unfed().cautions().isEmpty());
    HeatPlan longer = HeatPlan.soaking(celsius(1100), minutes(90)).in(Atmosphere.LABORATORY_AIR);
    assertTrue(
        texts(ScaleLoss.of(stout, longer).by(ScaleLaw.MI).unfed().cautions())
            .contains("take still air of the shop"));
    assertTrue(
        texts(
                ScaleLoss.of(stout, HeatPlan.soaking(celsius(1300), minutes(60)))
                    .by(ScaleLaw.MI)
                    .unfed()
                    .cautions())
            .contains("compare the other laws"));
    assertTrue(
        texts(
                ScaleLoss.of(stout, HeatPlan.soaking(fahrenheit(1200), minutes(60)))
                    .by(ScaleLaw.MI)
                    .unfed()
                    .cautions())
            .contains("so little scale grows there"));
  }

  @Test
  void isForIronAndPlainSteel() {
    for (Material other :
        List.of(Material.STAINLESS_304, Material.COPPER, Material.ALUMINIUM_6061)) {
      String message =
          assertThrows(
                  IllegalArgumentException.class,
                  () ->
                      ScaleLoss.of(Bar.of(STRAP.section(), other), FIVE_MINUTES)
                          .by(ScaleLaw.MI)
                          .unfed())
              .getMessage();
      assertTrue(message.startsWith("material must be wrought iron or plain steel"), message);
      assertTrue(message.contains(other.name()), message);
    }
    Material own =
        Material.of("S355", kilogramsPerCubicMetre(7850), Source.commonPractice("nominal"));
    ScaleLoss loss =
        ScaleLoss.of(Bar.of(STRAP.section(), own), FIVE_MINUTES).by(ScaleLaw.MI).unfed();
    assertTrue(texts(loss.cautions()).contains("S355 is taken as such"));
  }

  @Test
  void aFireOfTheSmithsOwnCarriesItsFactor() {
    Estimate<Dimensionless> weighed = Estimate.of(ratio(0.5), ratio(0.6), ratio(0.8));
    Atmosphere own = Atmosphere.of("my forge", weighed, Source.commonPractice("weighed"));
    ScaleLoss loss = ScaleLoss.of(STRAP, FIVE_MINUTES.in(own)).by(ScaleLaw.MI).unfed();
    assertEquals(0.6 * 0.18017877, loss.perSurface().likely().getValue(), 1e-9);
    assertEquals(0.8 * 0.18017877, loss.perSurface().high().getValue(), 1e-9);
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> Atmosphere.of("x", Estimate.exact(ratio(0)), Source.computed("x")))
            .getMessage()
            .startsWith("factor must be more than zero"));
    assertThrows(
        IllegalArgumentException.class, () -> Atmosphere.of(" ", weighed, Source.computed("x")));
    assertEquals(own, Atmosphere.of("my forge", weighed, Source.commonPractice("weighed")));
    assertEquals(
        own.hashCode(),
        Atmosphere.of("my forge", weighed, Source.commonPractice("weighed")).hashCode());
    assertFalse(own.equals(Atmosphere.FORGE_FIRE));
    assertEquals("my forge", own.name());
  }

  /** The time may be half or twice, that is √2 in the metal; the shop's air a factor of two. */
  @Test
  void aGuessedTimeWidensTheSpreadAsErringApart() {
    HeatPlan plan =
        HeatPlan.soaking(celsius(1150), Estimate.of(minutes(5), minutes(10), minutes(20)))
            .in(Atmosphere.STILL_AIR);
    Estimate<Length> lost = ScaleLoss.of(STRAP, plan).by(ScaleLaw.MI).unfed().perSurface();
    double factor = Math.exp(Math.hypot(Math.log(2), Math.log(2) / 2));
    assertEquals(0.2548112602 * factor, lost.high().getValue(), 1e-8);
    assertEquals(0.2548112602 / factor, lost.low().getValue(), 1e-8);
    // One heat, or two or four: once more a factor of two.
    HeatPlan heats = plan.inHeats(Estimate.of(ratio(1), ratio(2), ratio(4)));
    double three = Math.exp(Math.hypot(Math.log(factor), Math.log(2)));
    assertEquals(
        2 * 0.2548112602 * three,
        ScaleLoss.of(STRAP, heats).by(ScaleLaw.MI).unfed().perSurface().high().getValue(),
        1e-8);
    assertEquals(
        2 * 0.2548112602 / three,
        ScaleLoss.of(STRAP, heats).by(ScaleLaw.MI).unfed().perSurface().low().getValue(),
        1e-8);
    assertThrows(
        IllegalArgumentException.class,
        () -> plan.inHeats(Estimate.of(ratio(0), ratio(2), ratio(4))));
    assertEquals(2, heats.heats());
    HeatPlan maybe =
        HeatPlan.soaking(celsius(1150), Estimate.of(minutes(0), minutes(10), minutes(20)));
    assertEquals(
        0, ScaleLoss.of(STRAP, maybe).by(ScaleLaw.MI).unfed().perSurface().low().getValue());
  }

  @Test
  void noTimeTakesNothing() {
    ScaleLoss loss =
        ScaleLoss.of(STRAP, HeatPlan.soaking(celsius(1150), seconds(0))).by(ScaleLaw.MI).unfed();
    assertEquals(Estimate.exact(millimetres(0)), loss.perSurface());
    assertEquals(millimetres(6), loss.thickness().high());
    assertTrue(loss.cautions().isEmpty());
  }

  @Test
  void plansAreCheckedAndPrinted() {
    assertThrows(IllegalArgumentException.class, () -> FIVE_MINUTES.inHeats(0));
    HeatPlan plan = HeatPlan.soaking(celsius(1150), minutes(4)).inHeats(3);
    assertEquals("3 heats of 4 min at 1150 °C, forge fire, scale knocked off", plan.toString());
    assertEquals(3, plan.heats());
    assertEquals(Atmosphere.FORGE_FIRE, plan.atmosphere());
    assertFalse(plan.isScaleKept());
    assertTrue(plan.withScaleKept().toString().endsWith("scale kept"));
    assertEquals(FireHistory.soak(celsius(1150), minutes(4)), plan.each());
  }

  private static Measure<Dimensionless> ratio(double value) {
    return Measure.of(value, ShopUnits.ONE);
  }

  private static String texts(List<Caution> cautions) {
    return cautions.toString();
  }

  @Test
  void anotherLawIsStillFedByTheAir() {
    HeatPlan brief = HeatPlan.soaking(celsius(1150), seconds(30));
    ScaleLoss fed = ScaleLoss.of(STRAP, brief).by(ScaleLaw.STANLEY);
    assertTrue(fed.perSurface().likely().isLessThan(fed.unfed().perSurface().likely()));
    assertEquals(ScaleLaw.STANLEY, fed.unfed().law());
  }
}
