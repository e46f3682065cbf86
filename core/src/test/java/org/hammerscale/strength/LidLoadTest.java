package org.hammerscale.strength;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class LidLoadTest {
  private static final LidLoad LID = LidLoad.pressing(newtons(200), millimetres(600));

  @Test
  void restsOnItsFrontEdge() {
    assertEquals(newtons(100), LID.shut());
    assertEquals(newtons(150), LID.withMiddleAt(millimetres(150)).shut());
    assertEquals(poundsForce(10), LidLoad.weighing(pounds(20), inches(24)).shut());
  }

  @Test
  void staysLoadTheHingesBeyondTheWeight() {
    LidLoad.OnStay held = LID.onStay(millimetres(250), degrees(30));
    assertTrue(held.hinges().isGreaterThan(newtons(400)));
    assertTrue(held.cautions().get(0).text().contains("more than the lid's 200 N"));
    assertTrue(held.cautions().get(1).isDanger());
    assertEquals(1, LID.cautions().size());
  }

  @Test
  void uprightTheStayCarriesNothing() {
    LidLoad.OnStay upright = LID.raisedTo(degrees(90)).onStay(millimetres(250), degrees(60));
    LidLoad.OnStay past = LID.raisedTo(degrees(110)).onStay(millimetres(250), degrees(60));
    assertEquals(0, upright.stay().in(ShopUnits.NEWTON), 1e-12);
    assertEquals(200, upright.hinges().in(ShopUnits.NEWTON), 1e-12);
    assertTrue(past.stay().getValue() < 0);
  }

  @Test
  void aStayAtTheMiddleSquareToALevelLidTakesAllOfIt() {
    LidLoad.OnStay level = LID.onStay(millimetres(300), degrees(90));
    assertEquals(200, level.stay().in(ShopUnits.NEWTON), 1e-12);
    assertEquals(0, level.hinges().in(ShopUnits.NEWTON), 1e-12);
  }

  @Test
  void balancesAtAnyAngle() {
    // The hinge's force, the stay's and the weight must add up to nothing, seen from outside.
    for (int raised = 0; raised < 180; raised += 7) {
      for (int slope = 5; slope < 180; slope += 13) {
        LidLoad.OnStay held =
            LID.raisedTo(degrees(raised)).onStay(millimetres(180), degrees(slope));
        double push = held.stay().in(ShopUnits.NEWTON);
        double aim = Math.toRadians(raised + slope);
        double across = push * Math.cos(aim);
        double up = push * Math.sin(aim) - 200;
        assertEquals(Math.hypot(across, up), held.hinges().in(ShopUnits.NEWTON), 1e-8);
        double moment = push * 180 * Math.sin(Math.toRadians(slope));
        assertEquals(200 * 300 * Math.cos(Math.toRadians(raised)), moment, 1e-7);
      }
    }
  }

  @Test
  void showsItsWorkings() {
    Workings.check(LID.shutWorking(), LID.shut());
    LidLoad.OnStay held = LID.raisedTo(degrees(35)).onStay(inches(10), degrees(40));
    Workings.check(held.working(), held.hinges());
    assertEquals(
        "lid of 200 N, 600 mm deep, raised 35°, on a stay 10 in from the pin at 40°",
        held.toString());
  }

  @Test
  void refusesWhatCannotBe() {
    assertTrue(refusal(() -> LID.onStay(millimetres(700), degrees(9))).startsWith("fromPin"));
    assertTrue(refusal(() -> LID.onStay(millimetres(0), degrees(9))).startsWith("fromPin"));
    assertTrue(refusal(() -> LID.onStay(millimetres(1), degrees(0))).startsWith("toLid"));
    assertTrue(refusal(() -> LID.onStay(millimetres(1), degrees(180))).startsWith("toLid"));
    assertTrue(refusal(() -> LID.raisedTo(degrees(181))).startsWith("angle"));
    assertTrue(refusal(() -> LidLoad.weighing(kilograms(0), inches(9))).startsWith("lid"));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
