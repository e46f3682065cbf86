package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.hinge.Pin;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HingeHookTest {
  private static final Pin PIN = Pin.of(millimetres(12));
  private static final Section ROUND = Section.round(millimetres(12));
  private static final HingeHook HOOK = HingeHook.of(PIN, millimetres(40), ROUND, millimetres(30));

  @Test
  void bendsAsACantilever() {
    // By hand: 300 × 20 ÷ (π 12³ / 32); 250 × 30 ÷ 169.646; 300 × 26 ÷ 169.646 + 300 ÷ 113.097.
    assertEquals(35.3678, HOOK.pinBending(newtons(300)).getValue(), 5e-5);
    assertEquals(44.2097, HOOK.shankBending(newtons(250)).getValue(), 5e-5);
    assertEquals(48.6307, HOOK.shankStressUnder(newtons(300)).getValue(), 5e-5);
    HingeHook flat =
        HingeHook.of(
            PIN,
            millimetres(40),
            Section.onEdge(millimetres(10), millimetres(20)),
            millimetres(30));
    // 250 × 30 ÷ (10 × 20² / 6); 300 × (10 + 20) ÷ 666.667 + 300 ÷ 200.
    assertEquals(11.25, flat.shankBending(newtons(250)).getValue(), 1e-12);
    assertEquals(15, flat.shankStressUnder(newtons(300)).getValue(), 1e-12);
    assertEquals(ShopUnits.PSI, HOOK.pinBending(poundsForce(60)).getUnit());
  }

  @Test
  void washersLengthenTheArm() {
    HingeHook raised = HOOK.onWashers(millimetres(4));
    assertEquals(millimetres(44), raised.pinHeight());
    assertEquals(35.3678 * 24 / 20, raised.pinBending(newtons(300)).getValue(), 5e-5);
    assertEquals(HOOK.shankBending(newtons(250)), raised.shankBending(newtons(250)));
  }

  @Test
  void showsItsWorkings() {
    HingeHook square =
        HingeHook.of(PIN, millimetres(40), Section.square(inches("1/2")), inches(1))
            .onWashers(millimetres(2));
    for (HingeHook hook : new HingeHook[] {HOOK, square}) {
      Workings.check(hook.pinWorking(newtons(300)), hook.pinBending(newtons(300)));
      Workings.check(hook.shankWorking(newtons(300)), hook.shankBending(newtons(300)));
      Workings.check(hook.shankPullWorking(newtons(300)), hook.shankStressUnder(newtons(300)));
      Workings.check(
          hook.invertedWorking(millimetres(900)),
          hook.shankCentresWithOneInverted(millimetres(900)));
    }
    String working = HOOK.shankWorking(newtons(250)).toString();
    assertTrue(working.contains("upside down"), working);
    assertTrue(working.contains("do not quench"), working);
    assertTrue(working.contains("licensed engineer"), working);
  }

  @Test
  void sitsAsFarApartAsTheStraps() {
    assertEquals(millimetres(900), HOOK.shankCentres(millimetres(900)));
    // Lower shank 20 + 6 below its strap, upper one 20 + 6 above.
    assertEquals(millimetres(952), HOOK.shankCentresWithOneInverted(millimetres(900)));
    assertEquals(
        millimetres(956),
        HOOK.onWashers(millimetres(2)).shankCentresWithOneInverted(millimetres(900)));
  }

  @Test
  void isBentFromOneBar() {
    Piece piece = HOOK.piece(Material.MILD_STEEL, millimetres(100));
    // Pin 40, corner 12, shank 30 − 6 + 100.
    assertEquals(millimetres(176), piece.layout().cutLength().likely());
    assertEquals(3, piece.features().size());
    HingeHook drawn = HingeHook.of(PIN, millimetres(40), Section.square(inches(1)), inches(2));
    assertTrue(
        refused(() -> drawn.piece(Material.MILD_STEEL, millimetres(100)))
            .startsWith("shank must be round bar of the pin's 12 mm to be bent from one bar, was"));
    assertTrue(
        refused(() -> HOOK.piece(Material.MILD_STEEL, millimetres(-1)))
            .startsWith("behind must not be negative"));
  }

  @Test
  void cautionsOfANarrowShoulder() {
    assertTrue(says(HOOK, "no wider than the pin"));
    assertFalse(says(HOOK.onWashers(millimetres(2)), "no wider than the pin"));
    assertFalse(
        says(
            HingeHook.of(PIN, millimetres(40), Section.square(inches(1)), inches(2)),
            "no wider than the pin"));
    assertTrue(says(HOOK, "in timber"));
    assertEquals(PIN, HOOK.pin());
    assertEquals(ROUND, HOOK.shank());
    assertEquals(millimetres(30), HOOK.projection());
  }

  @Test
  void refusesWhatCannotBe() {
    assertEquals(
        "projection must be at least half the pin of 12 mm, was 5 mm; measure from the post's face"
            + " to the pin's centre",
        refused(() -> HingeHook.of(PIN, millimetres(40), ROUND, millimetres(5))));
    assertTrue(
        refused(() -> HingeHook.of(PIN, millimetres(0), ROUND, millimetres(20)))
            .startsWith("barrel width must"));
    Section tube = Section.roundTube(millimetres(20), millimetres(2));
    Section square = Section.squareTube(millimetres(20), millimetres(2));
    Section hexagon = Section.hexagon(millimetres(20));
    for (Section shank : new Section[] {tube, square, hexagon}) {
      assertTrue(
          refused(() -> HingeHook.of(PIN, millimetres(40), shank, millimetres(20)))
              .startsWith("shank must be round, square or flat"));
    }
    assertTrue(refused(() -> HOOK.onWashers(millimetres(-1))).startsWith("stack must"));
    assertTrue(refused(() -> HOOK.pinBending(newtons(0))).startsWith("force must"));
    assertTrue(refused(() -> HOOK.shankBending(newtons(0))).startsWith("weight must"));
    assertTrue(refused(() -> HOOK.shankStressUnder(newtons(0))).startsWith("pull must"));
    assertTrue(refused(() -> HOOK.shankCentres(millimetres(0))).startsWith("strap centres"));
    assertThrows(
        NullPointerException.class,
        () -> HingeHook.of(null, millimetres(40), ROUND, millimetres(20)));
  }

  private static boolean says(HingeHook hook, String words) {
    return hook.cautions().stream().anyMatch(caution -> caution.text().contains(words));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
