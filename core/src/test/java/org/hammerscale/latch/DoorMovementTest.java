package org.hammerscale.latch;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DoorMovementTest {
  private static final DoorMovement DOOR = DoorMovement.of(inches(32));

  @Test
  void dropsAsFarAsItsHingeGivesWhereItIsAsWide() {
    assertEquals(inches(0.5), DOOR.drop(inches(0.5), inches(32)));
    assertEquals(ShopUnits.INCH, DOOR.drop(millimetres(2), millimetres(900)).getUnit());
    Workings.check(DOOR.dropWorking(inches(1), inches(40)), DOOR.drop(inches(1), inches(40)));
  }

  @Test
  void swellsAsItShrinks() {
    assertEquals(DOOR.widthChange(0.002, 5).negate(), DOOR.widthChange(0.002, -5));
    Workings.check(DOOR.widthChangeWorking(0.002, 5), DOOR.widthChange(0.002, 5));
    assertTrue(DOOR.widthChangeWorking(0.002, 5).cautions().isEmpty());
    assertTrue(DOOR.widthChangeWorking(0.002, 9).cautions().get(0).text().contains("6 to 14"));
  }

  @Test
  void refusesWhatNoDoorDoes() {
    assertTrue(refusal(() -> DOOR.drop(inches(33), inches(32))).startsWith("play must be at most"));
    assertTrue(refusal(() -> DOOR.widthChange(0.02, 5)).startsWith("perPercent"));
    assertTrue(refusal(() -> DOOR.widthChange(0.002, 31)).startsWith("drierByPercent"));
    assertTrue(refusal(() -> DOOR.widthChange(0.002, Double.NaN)).startsWith("drierByPercent"));
    assertEquals("movement of a door 32 in wide", DOOR.toString());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
