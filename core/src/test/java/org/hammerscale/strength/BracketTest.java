package org.hammerscale.strength;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BracketTest {
  private static final Bracket.Unscrewed BARE = Bracket.carrying(newtons(200), millimetres(150));
  private static final Bracket SHELF = BARE.screwedAt(millimetres(200), millimetres(40));

  @Test
  void screwsBalanceTheMoment() {
    double about = 0;
    double pulls = 0;
    double[] heights = {200, 40};
    for (int i = 1; i <= 2; i++) {
      about += SHELF.pull(i).getValue() * heights[i - 1];
      pulls += SHELF.pull(i).getValue();
    }
    assertEquals(200 * 150, about, 1e-9);
    assertEquals(pulls, SHELF.footPush().getValue(), 1e-12);
    assertEquals(newtons(100), SHELF.shear());
    assertEquals(Math.hypot(SHELF.pull(1).getValue(), 100), SHELF.resultant(1).getValue(), 1e-12);
  }

  @Test
  void knowsWhereItsScrewsAndItsLoadAre() {
    Bracket bracket = BARE.screwedAt(millimetres(200), millimetres(40));
    assertEquals(newtons(200), bracket.load());
    assertEquals(millimetres(150), bracket.distance());
    assertEquals(List.of(millimetres(200), millimetres(40)), bracket.heights());
    assertEquals(millimetres(0), bracket.turningHeight());
    assertEquals(millimetres(40), bracket.turningOnLowest().turningHeight());
  }

  @Test
  void softWallTurnsItOnItsLowestScrew() {
    Bracket soft = SHELF.turningOnLowest();
    assertEquals(newtons(0), soft.pull(2));
    assertEquals(30_000 / 160d, soft.pull(1).getValue(), 1e-12);
    assertTrue(soft.pull(1).isGreaterThan(SHELF.pull(1)));
    Workings.check(soft.working(1), soft.pull(1));
  }

  @Test
  void windBlowsASignAside() {
    // 0.5 kPa on 0.3 m² at 450 mm, on a screw 90 mm from the edge that it turns about.
    Bracket sign =
        Bracket.blownOn(
                megapascals(0.0005), Measure.of(0.3, ShopUnits.SQUARE_METRE), millimetres(450))
            .screwedAt(millimetres(90));
    assertEquals(750, sign.pull(1).in(ShopUnits.NEWTON), 1e-9);
    Workings.check(sign.working(1), sign.pull(1));
    assertTrue(sign.working(1).toString().startsWith("pull by the wind on screw 1\n"));
    assertTrue(sign.working(1).toString().contains("from its side, screw 1"));
    assertTrue(sign.resultantWorking(1).toString().contains("share along the wall"));
    assertEquals("bracket blown on by 150 N at 450 mm, 1 screw", sign.toString());
    assertTrue(sign.cautions().get(0).text().contains("the local code asks for"));
    assertEquals(
        "bracket blown on by 150 N at 450 mm, not screwed yet",
        Bracket.blownOn(
                megapascals(0.0005), Measure.of(0.3, ShopUnits.SQUARE_METRE), millimetres(450))
            .toString());
    Bracket customary =
        Bracket.blownOn(
                Measure.of(0.1, ShopUnits.PSI), Measure.of(100, ShopUnits.SQUARE_INCH), inches(10))
            .screwedAt(inches(5));
    assertEquals(20, customary.pull(1).in(ShopUnits.POUND_FORCE), 1e-9);
    assertEquals(ShopUnits.POUND_FORCE, customary.pull(1).getUnit());
  }

  @Test
  void armSagsAsACantilever() {
    BracketArm arm = BracketArm.of(Section.round(inches("1/2")), inches(10));
    // F L³ / (3 E π d⁴/64) with 30458 ksi: 10 lbf × 1000 / (3 × 30.458e6 × 0.00306796).
    assertEquals(0.035673, arm.sag(poundsForce(10)).in(ShopUnits.INCH), 2e-6);
    assertEquals(
        arm.sag(poundsForce(10)).getValue() * 3 / 8,
        arm.sagSpread(poundsForce(10)).getValue(),
        1e-12);
    // 32 F L / (π d³) = 32 × 100 / 0.392699.
    assertEquals(8148.7, arm.stress(poundsForce(10)).in(ShopUnits.PSI), 0.05);
    BracketArm flat = BracketArm.of(Section.onEdge(millimetres(8), millimetres(25)), metres(0.25));
    for (BracketArm each : new BracketArm[] {arm, flat}) {
      Workings.check(each.stressWorking(newtons(50)), each.stress(newtons(50)));
      assertEquals(
          each.sag(newtons(50)).in(ShopUnits.MILLIMETRE),
          each.sagWorking(newtons(50)).result().getValue(),
          1e-12);
      assertEquals(
          each.sagSpread(newtons(50)).in(ShopUnits.MILLIMETRE),
          each.sagSpreadWorking(newtons(50)).result().getValue(),
          1e-12);
    }
    assertEquals(ShopUnits.METRE, flat.sag(newtons(50)).getUnit());
    assertTrue(flat.cautions().get(0).text().contains("half as much again"));
    assertEquals(
        2 * flat.sag(newtons(50)).getValue(),
        flat.withModulus(megapascals(105_000)).sag(newtons(50)).getValue(),
        1e-12);
    assertTrue(
        refusal(() -> BracketArm.of(Section.hexagon(inches(1)), inches(9))).contains("section"));
  }

  @Test
  void stayHoldsTheArm() {
    StayedArm sign =
        StayedArm.carrying(newtons(400), millimetres(600))
            .heldAt(millimetres(500), degrees(Math.toDegrees(Math.atan2(400, 500))));
    double s = sign.stay().getValue();
    double sine = 400 / Math.hypot(500, 400);
    // Moments about the pin; level; upright.
    assertEquals(400 * 600, s * sine * 500, 1e-5);
    assertEquals(s * Math.sqrt(1 - sine * sine), sign.thrust().getValue(), 1e-9);
    assertEquals(400, s * sine + sign.pinForce().getValue(), 1e-9);
    Workings.check(sign.working(), sign.stay());
    Workings.check(sign.thrustWorking(), sign.thrust());
    Workings.check(sign.pinWorking(), sign.pinForce());
    // Beyond the stay the load bends the arm over it; before it, as a beam on two supports.
    assertEquals(millimetres(100), sign.bendingLever());
    Workings.check(sign.leverWorking(), sign.bendingLever());
    StayedArm inside =
        StayedArm.carrying(newtons(400), millimetres(200)).heldAt(millimetres(500), degrees(40));
    assertEquals(400 * 200 * 300 / 500d, 400 * inside.bendingLever().getValue(), 1e-9);
    Workings.check(inside.leverWorking(), inside.bendingLever());
    assertEquals(
        millimetres(0),
        StayedArm.carrying(newtons(4), millimetres(500))
            .heldAt(millimetres(500), degrees(40))
            .bendingLever());
    assertTrue(sign.cautions().get(0).text().contains("buckling"));
    assertEquals("arm under 400 N at 600 mm, held at 500 mm, 38.66°", sign.toString());
    StayedArm.Unheld loose = StayedArm.carrying(newtons(400), millimetres(600));
    assertEquals("arm under 400 N at 600 mm, not held yet", loose.toString());
    assertTrue(refusal(() -> loose.heldAt(millimetres(5), degrees(0))).startsWith("angle must"));
    assertTrue(refusal(() -> loose.heldAt(millimetres(5), degrees(90))).startsWith("angle must"));
  }

  @Test
  void refusesWhatHasNoAnswer() {
    assertEquals("bracket under 200 N at 150 mm, not screwed yet", BARE.toString());
    assertTrue(refusal(() -> SHELF.pull(3)).startsWith("screw must be from 1 to 2"));
    assertTrue(refusal(BARE::screwedAt).startsWith("number of heights"));
    Bracket level = BARE.screwedAt(millimetres(9), millimetres(9));
    assertTrue(refusal(level::turningOnLowest).contains("heights must differ"));
    Workings.check(SHELF.resultantWorking(1), SHELF.resultant(1));
    Workings.check(SHELF.working(2), SHELF.pull(2));
    assertTrue(SHELF.cautions().get(0).text().contains("thin plate"));
    assertEquals("bracket under 200 N at 150 mm, 2 screws", SHELF.toString());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
