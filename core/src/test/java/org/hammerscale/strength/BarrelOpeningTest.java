package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.BarrelEnd;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.BarrelOpening.Direction;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BarrelOpeningTest {
  private static final Barrel EYE =
      Barrel.around(millimetres(10), Section.flat(millimetres(30), millimetres(6)));
  private static final BarrelOpening OPENING = BarrelOpening.of(EYE);
  private static final PermissibleStress STEEL = PermissibleStress.of(megapascals(235), 3);

  @Test
  void yieldsLongBeforeItsPlasticLimit() {
    assertTrue(
        OPENING
            .firstYield(STEEL.strength())
            .isLessThan(OPENING.plasticLimitWithPull(STEEL.strength())));
    assertTrue(
        OPENING
            .plasticLimitWithPull(STEEL.strength())
            .isLessThan(OPENING.plasticLimit(STEEL.strength())));
    assertEquals(
        OPENING.firstYield(STEEL.strength()).getValue() / 3,
        OPENING.safePull(STEEL).getValue(),
        1e-9);
    assertTrue(OPENING.plasticWorking(STEEL.strength()).toString().contains("the last reserve"));
  }

  @Test
  void showsItsWorkings() {
    PermissibleStress ksi = PermissibleStress.of(Measure.of(36, ShopUnits.KSI), 2);
    for (PermissibleStress stress : new PermissibleStress[] {STEEL, ksi}) {
      Workings.check(
          OPENING.firstYieldWorking(stress.strength()), OPENING.firstYield(stress.strength()));
      Workings.check(OPENING.safePullWorking(stress), OPENING.safePull(stress));
      Workings.check(
          OPENING.plasticWorking(stress.strength()), OPENING.plasticLimit(stress.strength()));
      Workings.check(
          OPENING.plasticWithPullWorking(stress.strength()),
          OPENING.plasticLimitWithPull(stress.strength()));
    }
    Workings.check(OPENING.straightWorking(newtons(2000)), OPENING.straightStress(newtons(2000)));
    Workings.check(OPENING.curvedWorking(poundsForce(450)), OPENING.curvedStress(poundsForce(450)));
    Workings.check(
        OPENING.outsideWorking(poundsForce(450)), OPENING.outsideStress(poundsForce(450)));
    Workings.check(
        OPENING.leafBendingWorking(newtons(100), inches(1)),
        OPENING.leafBending(newtons(100), inches(1)));
    String working = OPENING.curvedWorking(newtons(2000)).toString();
    assertTrue(working.contains("pull in the plane of the leaf"), working);
    assertTrue(working.contains("forge-welded"), working);
    assertTrue(working.contains("licensed engineer"), working);
  }

  /**
   * Sections stay plane, so that the stress runs as a + b / r. Through the two at the edges its sum
   * over the section is the pull, and its moment about the middle the pull times the mean radius.
   */
  @Test
  void bothEdgesTogetherCarryThePullAndItsMoment() {
    double inside = OPENING.curvedStress(newtons(2000)).in(ShopUnits.MEGAPASCAL);
    double outside = OPENING.outsideStress(newtons(2000)).in(ShopUnits.MEGAPASCAL);
    assertTrue(outside < 0 && -outside < inside, () -> "" + outside);
    double b = (inside - outside) / (1 / 5d - 1 / 11d);
    double a = inside - b / 5;
    double log = Math.log(11 / 5d);
    double pull = 30 * (a * 6 + b * log);
    double moment = 30 * (a * (121 - 25) / 2 + b * 6 - 8 * (a * 6 + b * log));
    assertEquals(2000, pull, 1e-8);
    assertEquals(-2000 * 8, moment, 1e-8);
  }

  @Test
  void speaksTheCallersUnits() {
    PermissibleStress psi = PermissibleStress.of(Measure.of(36000, ShopUnits.PSI), 1);
    assertEquals(ShopUnits.POUND_FORCE, OPENING.firstYield(psi.strength()).getUnit());
    assertEquals(ShopUnits.NEWTON, OPENING.firstYield(STEEL.strength()).getUnit());
    assertEquals(ShopUnits.PSI, OPENING.curvedStress(poundsForce(1)).getUnit());
    assertEquals(ShopUnits.MEGAPASCAL, OPENING.curvedStress(newtons(1)).getUnit());
    assertTrue(
        OPENING
            .safePullWorking(PermissibleStress.of(Material.WROUGHT_IRON, 1))
            .toString()
            .contains("low yield strength of wrought iron"));
  }

  @Test
  void countsTheKnucklesOfOneLeaf() {
    BarrelOpening half = OPENING.withKnuckles(millimetres(15));
    assertEquals(
        2 * OPENING.curvedStress(newtons(2000)).getValue(),
        half.curvedStress(newtons(2000)).getValue(),
        1e-9);
    assertEquals(
        OPENING.leafBending(newtons(50), millimetres(40)),
        half.leafBending(newtons(50), millimetres(40)));
    assertTrue(half.toString().contains("knuckles 15 mm"));
    // 6 × 50 × 40 ÷ (30 × 6²)
    assertEquals(
        12000 / 1080.0, OPENING.leafBending(newtons(50), millimetres(40)).getValue(), 1e-12);
  }

  @Test
  void tellsTheDirectionsApart() {
    BarrelOpening push = OPENING.under(Direction.PUSH);
    assertEquals(OPENING.firstYield(STEEL.strength()), push.firstYield(STEEL.strength()));
    assertEquals(Direction.PUSH, push.direction());
    assertEquals(Direction.PULL, OPENING.direction());
    BarrelOpening off = OPENING.under(Direction.OFF_THE_FACE);
    assertEquals(OPENING.firstYield(STEEL.strength()), off.firstYield(STEEL.strength()));
    assertTrue(says(off, "see leafBending"));
    assertFalse(says(push, "see leafBending"));
    assertTrue(
        refused(() -> OPENING.under(Direction.TOWARDS_THE_BARREL))
            .startsWith("pull must load the curl, was a pull square to the leaf, towards"));
    assertEquals(EYE, off.barrel());
  }

  /**
   * The statics of the Javadoc, by going round the curl: its mean line starts at the top, where the
   * leaf comes from the right, and turns left. The pin's force acts through the centre, and bears
   * on the bore opposite to the pull. No section of the loaded arc carries more than F rₘ.
   */
  @Test
  void carriesNoMoreThanForceTimesMeanRadius() {
    assertEquals(1, greatestLever(0), 1e-9); // a pull in the plane
    assertEquals(1, greatestLever(180), 1e-9); // a push
    assertEquals(1, greatestLever(90), 1e-9); // off the face
    assertEquals(1, greatestLever(35), 1e-9);
    assertEquals(1, greatestLever(220), 1e-9); // a push towards the side of the barrel
    assertEquals(0, greatestLever(-90), 1e-9); // towards the barrel
    assertEquals(Math.cos(Math.toRadians(40)), greatestLever(-40), 1e-9);
  }

  private static double greatestLever(int pull) {
    double greatest = 0;
    int bears = 180 + pull;
    for (int at = 90; at <= bears; at++) {
      double x = Math.cos(Math.toRadians(at));
      double y = Math.sin(Math.toRadians(at));
      double lever =
          Math.abs(x * Math.sin(Math.toRadians(pull)) - y * Math.cos(Math.toRadians(pull)));
      greatest = Math.max(greatest, lever);
    }
    return greatest;
  }

  @Test
  void refusesWhatCannotBe() {
    assertTrue(refused(() -> OPENING.curvedStress(newtons(0))).startsWith("force must"));
    assertTrue(refused(() -> OPENING.straightStress(newtons(-1))).startsWith("force must"));
    assertTrue(
        refused(() -> OPENING.leafBending(newtons(1), millimetres(0))).startsWith("fixing must"));
    assertEquals(
        "summed width must be at most the strap's 30 mm, was 40 mm; add up the knuckles of one leaf"
            + " only",
        refused(() -> OPENING.withKnuckles(millimetres(40))));
    assertTrue(refused(() -> OPENING.withKnuckles(millimetres(0))).startsWith("summed width"));
    assertThrows(NullPointerException.class, () -> BarrelOpening.of(null));
    assertThrows(NullPointerException.class, () -> OPENING.under(null));
  }

  private static boolean says(BarrelOpening opening, String words) {
    return opening.cautions().stream().anyMatch(caution -> caution.text().contains(words));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  @Test
  void aWeldedBarrelIsNoOpenCurl() {
    Barrel welded =
        Barrel.around(millimetres(10), Section.flat(millimetres(30), millimetres(6)))
            .endedWith(BarrelEnd.forgeWelded(org.hammerscale.bending.WeldAllowance.ONE_THICKNESS));
    String message =
        assertThrows(IllegalArgumentException.class, () -> BarrelOpening.of(welded)).getMessage();
    assertTrue(message.contains("proof-test it"), message);
  }

  @Test
  void aCentredBarrelOpensUnderAPullToEitherSide() {
    Barrel centred =
        Barrel.around(millimetres(10), Section.flat(millimetres(30), millimetres(6))).centred();
    BarrelOpening pulled = BarrelOpening.of(centred);
    assertEquals(
        pulled.under(BarrelOpening.Direction.OFF_THE_FACE).plasticLimit(megapascals(235)),
        pulled.under(BarrelOpening.Direction.TOWARDS_THE_BARREL).plasticLimit(megapascals(235)));
  }
}
