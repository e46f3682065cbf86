package org.hammerscale.strength;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.kilograms;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.pounds;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class DoorLoadTest {
  private static final DoorLoad DOOR =
      DoorLoad.pressing(newtons(500), metres(0.9)).hungAt(metres(0.2), metres(1.5), metres(1.8));

  @Test
  void pullsTheUpperHingesAndPushesTheLower() {
    assertTrue(DOOR.pull(1).getValue() < 0);
    assertTrue(DOOR.pull(3).getValue() > DOOR.pull(2).getValue());
    assertEquals(3, DOOR.hinges());
  }

  @Test
  void pressesInTheSystemOfTheMass() {
    assertEquals(poundsForce(60), hung(DoorLoad.weighing(pounds(60), feet(3))).weight());
    assertEquals(
        264.77955,
        hung(DoorLoad.weighing(kilograms(27), metres(0.91))).weight().in(ShopUnits.NEWTON),
        1e-9);
  }

  @Test
  void turnsThePullAsTheDoorOpens() {
    assertEquals(DOOR.pull(3), DOOR.pullAlongPost(3, degrees(0)));
    assertEquals(0, DOOR.pullFromPost(3, degrees(0)).in(ShopUnits.NEWTON));
    assertEquals(DOOR.pull(3), DOOR.pullFromPost(3, degrees(90)));
    double along = DOOR.pullAlongPost(3, degrees(60)).in(ShopUnits.NEWTON);
    double from = DOOR.pullFromPost(3, degrees(60)).in(ShopUnits.NEWTON);
    assertEquals(DOOR.pull(3).in(ShopUnits.NEWTON), Math.hypot(along, from), 1e-10);
    assertTrue(DOOR.pullAlongPost(3, degrees(150)).getValue() < 0);
  }

  @Test
  void addsAPersonWhoSwingsOnIt() {
    DoorLoad swung = DOOR.withPersonAtTip(kilograms(30));
    // 30 kg at 0.9 m turn as 2 × 294.2 N at the middle do.
    double added = 1 + 2 * 30 * 9.80665 / 500;
    assertEquals(
        added * DOOR.pull(3).in(ShopUnits.NEWTON), swung.pull(3).in(ShopUnits.NEWTON), 1e-9);
    assertEquals(2, swung.counted().size());
    assertTrue(swung.cautions().get(0).text().contains("a person at the tip: 294.2 N at 0.9 m"));
    assertTrue(DOOR.cautions().get(0).text().contains("nor a person or child"));
    assertTrue(DOOR.cautions().get(1).isDanger());
  }

  @Test
  void movesTheMiddle() {
    DoorLoad near = DOOR.withMiddleAt(metres(0.225));
    assertEquals(DOOR.pull(3).in(ShopUnits.NEWTON), 2 * near.pull(3).in(ShopUnits.NEWTON), 1e-9);
    assertEquals(near.counted(), DOOR.withMiddleAt(metres(0.225)).counted());
  }

  @Test
  void bearsFromNothingToAll() {
    assertEquals(newtons(0), DOOR.bearing().low());
    assertEquals(newtons(500), DOOR.bearing().high());
    assertEquals(newtons(500).divide(3), DOOR.bearing().likely());
    double pull = DOOR.pull(1).in(ShopUnits.NEWTON);
    assertEquals(Math.hypot(pull, 500), DOOR.worst(1).in(ShopUnits.NEWTON), 1e-9);
    double share = 500d / DOOR.hinges();
    assertEquals(Math.hypot(pull, share), DOOR.reaction(1).in(ShopUnits.NEWTON), 1e-9);
  }

  @Test
  void showsItsWorkings() {
    DoorLoad laden = DOOR.with("a lamp", newtons(40), metres(0.5));
    for (int hinge = 1; hinge <= 3; hinge++) {
      Workings.check(laden.working(hinge), laden.pull(hinge));
      Workings.check(laden.worstWorking(hinge), laden.worst(hinge));
      Workings.check(laden.reactionWorking(hinge), laden.reaction(hinge));
    }
  }

  @Test
  void refusesWhatCannotHang() {
    UnhungDoor loose = DoorLoad.weighing(kilograms(1), inches(30));
    assertTrue(refusal(() -> loose.hungAt(metres(1))).contains("from 2 to 100, was 1"));
    assertTrue(refusal(() -> loose.hungAt(metres(1), metres(1))).contains("must rise"));
    assertEquals("door of 9.807 N, 30 in wide, not hung yet", loose.toString());
    assertTrue(refusal(() -> DOOR.pull(4)).contains("between 1 and 3, was 4"));
    assertTrue(refusal(() -> DOOR.pull(0)).contains("1 is the lowest"));
    assertTrue(refusal(() -> DOOR.withMiddleAt(metres(1))).startsWith("fromPin must be at most"));
    assertTrue(refusal(() -> DOOR.with(" ", newtons(1), metres(0))).startsWith("name"));
    assertTrue(
        refusal(() -> DoorLoad.weighing(kilograms(0), metres(1))).startsWith("door must be more"));
  }

  private static DoorLoad hung(UnhungDoor door) {
    return door.hungAt(metres(0), metres(1));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
