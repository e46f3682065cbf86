package org.hammerscale.latch;

import static org.hammerscale.units.Graduation.EIGHTH;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CabinHookTest {
  private static final Bar ROD = Bar.of(Section.round(millimetres(10)), Material.MILD_STEEL);
  private static final Bar WIRE = Bar.of(Section.round(millimetres(8)), Material.MILD_STEEL);

  /** Three, four and five: the door at a right angle, 400 along it, the wall's eye 300 behind. */
  private static CabinHookBuilder asked() {
    return CabinHook.betweenEyes(millimetres(400), millimetres(-300), ROD)
        .withScrewEyes(WIRE, millimetres(45))
        .clearing(millimetres(2))
        .standingOff(millimetres(20));
  }

  @Test
  void partsFitByHandArithmetic() {
    CabinHook hook = asked().hook();
    assertEquals(500, hook.length().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(240, hook.leverArm().in(ShopUnits.MILLIMETRE), 1e-9); // 300 × 400 / 500
    assertEquals(degrees(90), hook.opening());
    assertEquals(-90, hook.otherOpening().in(ShopUnits.DEGREE), 1e-9);
    assertEquals(508, hook.insideLength().in(ShopUnits.MILLIMETRE), 1e-9); // and one wire
    assertEquals(millimetres(12), hook.eyeInside()); // rod and room
    assertEquals(millimetres(10), hook.seatToShank()); // (12 + 8)/2
    assertEquals(
        List.of(millimetres(400), millimetres(0), millimetres(-300), millimetres(0)),
        List.of(hook.onDoor(), hook.doorOff(), hook.onWall(), hook.wallOff()));
    assertEquals(List.of(ROD, WIRE), List.of(hook.rod(), hook.eyeRod()));
    assertEquals(List.of(millimetres(20), millimetres(10)), List.of(hook.standOff(), hook.bore()));
    assertFalse(hook.hasStaples());
    // Shank, a quarter round half a wire and half the rod, and the tip of three wires.
    assertEquals(
        484 + Math.PI / 2 * 9 + 24, hook.shankLine().length().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals("staple must be there, was a screw eye; ask for the eye", refusal(hook::staple));
    // Over all: half the wall's seat to the eye's outside, and half a wire and a rod beyond the
    // other.
    double over = hook.hook().layout().finishedLength().in(ShopUnits.MILLIMETRE);
    assertEquals(508 + 10 + 10, over, 1e-9);
    // The eye: 10 inside and 10 of rod on its mean line; the bend 4 inside.
    double straight = 508 - 10 - 10 - 4;
    double used = Math.PI * 20 + straight + Math.PI / 2 * 9 + 24;
    assertEquals(used, hook.hook().layout().cutLength().likely().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(
        Math.PI * 20 + 45, hook.eye().layout().cutLength().likely().in(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(3, hook.pieces().size());
    assertEquals(166.6666667, hook.pull(newtons(100), millimetres(400)).getValue(), 1e-6);
    assertEquals(900, hook.shutEye(millimetres(0)).in(ShopUnits.MILLIMETRE), 1e-9);
  }

  @Test
  void aRuleMovesTheOpeningAndSaysSo() {
    CabinHook hook = asked().heldOpen(degrees(95)).on(MILLIMETRE).hook();
    // 400² + 300² + 2 × 400 × 300 cos 85° = 520.42², and its nearest millimetre
    assertEquals(millimetres(479), hook.length());
    double angle = Math.toDegrees(Math.acos((400 * 400 + 300 * 300 - 479 * 479) / 240_000d));
    assertEquals(180 - angle, hook.opening().in(ShopUnits.DEGREE), 1e-9);
    assertTrue(hook.openingWith(hook.length()).isWithin(hook.opening(), degrees(1e-9)));
    CabinHook inch =
        CabinHook.betweenEyes(inches(28), inches(-10), ROD)
            .off(inches(1), inches(1))
            .heldOpen(degrees(95))
            .on(EIGHTH)
            .hook();
    assertEquals(ShopUnits.INCH, inch.length().getUnit());
  }

  @Test
  void workingsAreTheAnswers() {
    CabinHook hook = asked().off(millimetres(20), millimetres(25)).hook();
    Workings.check(hook.working(), hook.length());
    Workings.check(hook.leverArmWorking(), hook.leverArm());
    assertEquals(1, hook.cautions().size());
  }

  @Test
  void warnsOfAHookThatHoldsNothingOrPassesThroughWood() {
    CabinHook weak = asked().heldOpen(degrees(179)).hook();
    assertTrue(weak.cautions().get(0).text().contains("holds the door badly"));
    CabinHook through = asked().heldOpen(degrees(190)).hook();
    // 400 sin 190° = −69.46 behind the wall's face, 15 of room on the eyes
    assertEquals(-54.459, through.clearance().in(ShopUnits.MILLIMETRE), 1e-3);
    assertTrue(through.cautions().get(0).text().contains("stand farther off"));
  }

  @Test
  void staplesServeForEyes() {
    CabinHook held = asked().withStaples(WIRE, millimetres(40)).hook();
    assertTrue(held.hasStaples());
    assertEquals(held.eyeInside(), held.staple().insideWidth());
    assertEquals(millimetres(16), held.staple().insideHeight()); // 20 less half a wire
    CabinHook hook = asked().withStaples(WIRE, millimetres(40)).hook();
    assertEquals(millimetres(0), hook.seatToShank());
    // 12 inside, standing 16 under its crown: a half round and legs, two points
    double legs = 2 * (16 + 8 + 40 - 16 - 14);
    double used = 2 * 16 / 3d + legs + Math.PI * 10;
    assertEquals(used, hook.eye().layout().cutLength().likely().in(ShopUnits.MILLIMETRE), 1e-9);
  }

  /** Where the hook is near its shortest no rule may make it too short to reach. */
  @Test
  void everyOpeningFindsAMarkThatReaches() {
    for (double onWall : new double[] {-300.3, -399.8, -150}) {
      for (double degrees = 1; degrees < 270; degrees += 0.25) {
        CabinHookBuilder asked =
            CabinHook.betweenEyes(millimetres(400.4), millimetres(onWall), ROD)
                .withScrewEyes(WIRE, millimetres(45))
                .heldOpen(degrees(degrees));
        try {
          asked.hook();
        } catch (IllegalArgumentException e) {
          continue; // too near to one line with the pin, whatever the rule
        }
        try {
          CabinHook hook = asked.on(MILLIMETRE).hook();
          assertEquals(0, hook.length().in(ShopUnits.MILLIMETRE) % 1, 1e-9);
        } catch (IllegalArgumentException e) {
          String said = String.valueOf(e.getMessage());
          assertFalse(said.startsWith("seatToSeat"), degrees + "° from " + onWall + ": " + said);
        }
      }
    }
  }

  @Test
  void refusesWhatCannotHold() {
    assertTrue(
        refusal(() -> asked().heldOpen(degrees(180)).hook()).contains("in one line with the pin"));
    assertTrue(
        refusal(() -> CabinHook.betweenEyes(millimetres(15), millimetres(-5), ROD).hook())
            .contains("set the eyes farther apart"));
    assertTrue(
        refusal(() -> asked().hook().openingWith(millimetres(701))).contains("from 100 mm to"));
    assertTrue(refusal(() -> asked().hook().shutEye(millimetres(501))).startsWith("out must"));
    assertTrue(refusal(() -> asked().heldOpen(degrees(271))).startsWith("opening"));
    assertTrue(asked().toString().contains("400 mm and -300 mm"));
    assertTrue(asked().hook().toString().contains("500 mm from seat to seat"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
