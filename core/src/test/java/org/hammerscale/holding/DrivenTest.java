package org.hammerscale.holding;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilogramsPerCubicMetre;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.fastening.ClenchedNail;
import org.hammerscale.fastening.PilotHole;
import org.hammerscale.fastening.Spike;
import org.hammerscale.fastening.TimberClass;
import org.hammerscale.fastening.Wood;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DrivenTest {
  private static final Wood OAK = Wood.named("white oak");
  private static final Spike ROUND = Spike.of(Section.round(inches("1/4")));
  private static final Spike SQUARE = Spike.of(Section.square(inches("9/16")));

  @Test
  void spikeIsANailOfItsSide() {
    assertEquals(WoodFastener.Kind.NAIL, SQUARE.kind());
    assertEquals(inches("9/16"), SQUARE.diameter());
    assertEquals(inches("9/16"), SQUARE.rootDiameter());
    assertEquals(Section.square(inches("9/16")), SQUARE.shank());
    assertTrue(SQUARE.cautions().get(1).text().contains("chisel point across the grain"));
    assertEquals(3, ROUND.cautions().size());
    assertTrue(ROUND.cautions().get(1).isDanger());
    // At most 0.9 of it in wood of more than 0.6, 0.75 in other.
    assertEquals(inches(0.225), PilotHole.pulledOut(ROUND, OAK).mostThreadHole());
    assertEquals("spike of 9/16 in square", SQUARE.toString());
    assertTrue(refusal(() -> Spike.of(Section.flat(inches(1), inches("1/4")))).contains("square"));
  }

  @Test
  void earlyPullTestsAreOfThatOrder() {
    // Means of tests of 9/16 in square track spikes 4 1/4 in deep: 857 lb in dry cedar.
    double cedar =
        UltimateWithdrawal.of(SQUARE, Wood.named("Western redcedar"))
            .force(inches("4 1/4"))
            .likely()
            .in(ShopUnits.POUND_FORCE);
    assertTrue(cedar > 857 / 1.5 && cedar < 857 * 1.5, "" + cedar);
  }

  @Test
  void tailMustBeDeepEnough() {
    ReferenceWithdrawal hold = ReferenceWithdrawal.of(ROUND, OAK);
    // 1380 × 0.73^2.5 × 0.25 = 157.08 lb an inch.
    assertEquals(3.1831, hold.leastLength(poundsForce(500)).in(ShopUnits.INCH), 1e-4);
    assertEquals(
        500, hold.force(hold.leastLength(poundsForce(500))).in(ShopUnits.POUND_FORCE), 1e-9);
    assertEquals(inches(1.5), hold.leastLength(poundsForce(5)), "6 diameters at least");
    Workings.check(hold.lengthWorking(poundsForce(500)), hold.leastLength(poundsForce(500)));
    Workings.check(hold.lengthWorking(newtons(5)), hold.leastLength(newtons(5)));
    String message = refusal(() -> hold.inEndGrain().leastLength(newtons(5)));
    assertTrue(message.contains("must pull at side grain"), message);
    ReferenceWithdrawal screw = ReferenceWithdrawal.of(WoodScrew.number(10), OAK);
    Workings.check(screw.lengthWorking(poundsForce(400)), screw.leastLength(poundsForce(400)));
  }

  @Test
  void driftBoltGoesIntoATighterHole() {
    DriftBolt bolt = DriftBolt.of(inches("3/4"), OAK);
    assertEquals(inches("5/8"), bolt.hole());
    assertEquals(millimetres(16.8), DriftBolt.of(millimetres(20), OAK).hole());
    // By hand: 6600 × 0.68² × 0.75 × 10.
    assertEquals(22_888.8, bolt.ultimate(inches(10)).likely().in(ShopUnits.POUND_FORCE), 1e-6);
    assertEquals(
        0.8355 * 0.8355,
        bolt.ultimate(inches(10)).low().ratio(bolt.ultimate(inches(10)).likely()),
        1e-9);
    Workings.check(bolt.working(inches(10)), bolt.ultimate(inches(10)).likely());
    DriftBolt metric = DriftBolt.of(millimetres(19.05), OAK);
    assertEquals(
        bolt.ultimate(inches(10)).likely().in(ShopUnits.NEWTON),
        metric.ultimate(millimetres(254)).likely().in(ShopUnits.NEWTON),
        1e-6);
    assertTrue(bolt.cautions().toString().contains("do not mix them"));
    assertTrue(refusal(() -> DriftBolt.of(millimetres(6), OAK)).contains("reckon it as a Spike"));
    assertEquals("3/4 in drift bolt in White oak", bolt.toString());
  }

  /** Its metal: a snap head takes 1.125 D by BS 275, its end is eased over a diameter. */
  @Test
  void driftBoltIsARodWithAnEasedEnd() {
    Spike rod = DriftBolt.of(millimetres(20), OAK).rod();
    assertEquals(20, rod.point().reach().in(ShopUnits.MILLIMETRE), 1e-12);
    // Three quarters of 16.8, so that it enters.
    assertEquals(12.6, rod.point().end().width().in(ShopUnits.MILLIMETRE), 1e-9);
    Spike driven = rod.through(millimetres(100)).driven(millimetres(200));
    assertEquals(millimetres(300), driven.boringDepth(), "to its blunt end");
    double eased = 20 * (1 + 0.63 + 0.63 * 0.63) / 3;
    double used = driven.piece(Material.MILD_STEEL).layout().cutLength().likely().getValue();
    assertEquals(1.125 * 20 + 280 + eased, used, 0.02);
    // Of the thinnest there is the end still enters its hole.
    Spike thin = DriftBolt.of(millimetres(6.1), OAK).rod();
    assertTrue(thin.point().end().width().isLessThan(DriftBolt.of(millimetres(6.1), OAK).hole()));
  }

  @Test
  void stapleHoldsAsTwoNails() {
    DrivenStaple staple = DrivenStaple.of(ROUND, OAK);
    assertEquals(
        ReferenceWithdrawal.of(ROUND, OAK).force(inches(2)).multiply(2),
        staple.reference(inches(2)));
    assertEquals(
        UltimateWithdrawal.of(ROUND, OAK).force(inches(2)).multiply(2), staple.ultimate(inches(2)));
    Workings.check(staple.working(inches(2)), staple.reference(inches(2)));
    assertTrue(staple.cautions().get(0).text().contains("split"));
    assertEquals("staple of 1/4 in round in White oak", staple.toString());
  }

  @Test
  void eurocodeCountsFromEightDiameters() {
    Spike six = Spike.of(Section.square(millimetres(6)));
    CharacteristicWithdrawal hold =
        CharacteristicWithdrawal.of(six, TimberClass.C24.characteristicDensity());
    assertEquals(newtons(0), hold.force(millimetres(47)));
    assertEquals(newtons(0), hold.force(millimetres(48)));
    assertTrue(hold.force(millimetres(49)).getValue() > 0);
    // At 12 d both branches give 20e-6 × 350² × 6 × 72.
    assertEquals(1058.4, hold.force(millimetres(72)).getValue(), 1e-9);
    assertEquals(1058.4, hold.force(millimetres(71.999999)).getValue(), 1e-3);
    for (double depth : new double[] {40, 60, 90}) {
      Workings.check(hold.working(millimetres(depth)), hold.force(millimetres(depth)));
    }
    assertTrue(hold.cautions(millimetres(40)).get(0).isDanger());
    assertEquals(2, hold.cautions(millimetres(50)).size());
    WoodScrew screw = WoodScrew.number(10);
    assertTrue(
        refusal(() -> CharacteristicWithdrawal.of(screw, kilogramsPerCubicMetre(350)))
            .contains("must be a smooth nail"));
    assertEquals(
        "characteristic withdrawal of a nail of 6 mm in timber of 350 kg/m³", hold.toString());
  }

  @Test
  void classOfTimberIsAWood() {
    assertTrue(TimberClass.D30.wood().isHardwood());
    assertFalse(TimberClass.C16.wood().isHardwood());
    assertEquals("C16", TimberClass.C16.wood().name());
    assertTrue(TimberClass.C16.source().toString().startsWith("EN 338:2016"));
  }

  @Test
  void clenchOfThreeDiametersCounts() {
    ClenchedNail nail = ClenchedNail.of(Section.square(inches("3/16")));
    assertEquals(inches("9/16"), nail.leastClench());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
