package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DoorEdgeTest {
  /** A 3-4-5 triangle: 3 inboard, 1 proud of a door of 3. */
  @Test
  void backCornerDigsBehindTheDoor() {
    DoorEdge edge = DoorEdge.of(inches(3)).pinInboard(inches(3)).pinProud(inches(1));
    assertEquals(inches(1), edge.roomAtStop());
    assertEquals(inches(0), edge.roomAtJamb());
    assertEquals(inches(0), DoorEdge.of(inches(3)).roomAtStop());
    Workings.check(edge.roomAtStopWorking(), edge.roomAtStop());
  }

  @Test
  void frontCornerComesOutRoundASunkPin() {
    DoorEdge edge = DoorEdge.of(inches(7)).pinInboard(inches(4)).pinSunk(inches(3));
    assertEquals(inches(1), edge.roomAtJamb());
    assertEquals(Math.sqrt(32) - 4, edge.roomAtStop().getValue(), 1e-15);
    Workings.check(edge.roomAtJambWorking(), edge.roomAtJamb());
    Workings.check(edge.roomAtStopWorking(), edge.roomAtStop());
    assertEquals("door of 7 in, pin 4 in inboard and 3 in below the face", edge.toString());
  }

  /** The corners turned step by step never leave the room that is given, and use it up. */
  @Test
  void roomIsThatOfTheTurnedCorners() {
    for (double proud : new double[] {-15, -5, 0, 12}) {
      DoorEdge plain = DoorEdge.of(millimetres(30)).pinInboard(millimetres(25));
      DoorEdge edge =
          proud < 0 ? plain.pinSunk(millimetres(-proud)) : plain.pinProud(millimetres(proud));
      double behind = 0;
      double beside = 0;
      for (double angle = 0; angle <= Math.PI; angle += 1e-4) {
        for (double y : new double[] {-proud, -proud - 30}) {
          double turnedX = -25 * Math.cos(angle) - y * Math.sin(angle);
          double turnedY = -25 * Math.sin(angle) + y * Math.cos(angle);
          behind = Math.max(behind, -turnedY - (30 + proud));
          beside = Math.max(beside, -turnedX - 25);
        }
      }
      assertEquals(behind, edge.roomAtStop().in(ShopUnits.MILLIMETRE), 1e-6);
      assertEquals(beside, edge.roomAtJamb().in(ShopUnits.MILLIMETRE), 1e-6);
    }
  }

  @Test
  void standOffIsHalfTheProjection() {
    PinStandOff past = PinStandOff.past(millimetres(20));
    assertEquals(millimetres(10), past.distance());
    assertEquals(millimetres(12), past.leaving(millimetres(4)).distance());
    assertEquals(0, past.openingTo(degrees(90)).distance().getValue(), 1e-14);
    Workings.check(past.working(), past.distance());
    assertEquals(millimetres(0), past.openingTo(degrees(90)).distance());
    assertEquals("stand-off of a pin to open 180° past a projection of 20 mm", past.toString());
  }

  /** The architrave's corner, put into the opened door's own axes, lies before its face. */
  @Test
  void doorStandsClearOfTheArchitraveAtAnyOpening() {
    for (double opening : new double[] {95, 120, 150, 180}) {
      PinStandOff past =
          PinStandOff.past(millimetres(20)).leaving(millimetres(3)).openingTo(degrees(opening));
      double y = past.distance().in(ShopUnits.MILLIMETRE);
      double back = Math.toRadians(-opening);
      double corner = 20 - y; // straight above the pin, from the pin
      double turned = corner * Math.cos(back);
      assertEquals(3, turned + y, 1e-12);
      Workings.check(past.working(), past.distance());
    }
  }

  @Test
  void refusesWithTheParametersName() {
    DoorEdge edge = DoorEdge.of(inches(2));
    refused("thickness of door", () -> DoorEdge.of(inches(0)));
    refused("pin inboard", () -> edge.pinInboard(inches(-1)));
    refused("pin proud", () -> edge.pinProud(inches(-1)));
    refused(
        "pin sunk must be at most half the door's thickness, 1 in, was 2 in",
        () -> edge.pinSunk(inches(2)));
    PinStandOff past = PinStandOff.past(inches(1));
    refused("projection", () -> PinStandOff.past(inches(0)));
    refused("room must not be negative", () -> past.leaving(inches(-1)));
    refused("opening must be at least 90°", () -> past.openingTo(degrees(80)));
    refused("opening must lie", () -> past.openingTo(degrees(190)));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.contains(message), said);
  }
}
