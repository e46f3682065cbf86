package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.fastening.Spike;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Pin;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HingeHookTest {
  private static final Pin PIN = Pin.of(millimetres(12));
  private static final Section ROUND = Section.round(millimetres(12));
  private static final HookPin UPRIGHT = HookPin.of(PIN, millimetres(40));
  private static final HingeHook HOOK = HingeHook.of(UPRIGHT, ROUND, millimetres(30));

  @Test
  void bendsAsACantilever() {
    // By hand: 300 × 20 ÷ (π 12³ / 32); 250 × 30 ÷ 169.646; 300 × 26 ÷ 169.646 + 300 ÷ 113.097.
    assertEquals(35.3678, UPRIGHT.bending(newtons(300)).getValue(), 5e-5);
    assertEquals(44.2097, HOOK.shankBending(newtons(250)).getValue(), 5e-5);
    assertEquals(48.6307, HOOK.shankStressUnder(newtons(300)).getValue(), 5e-5);
    HingeHook flat =
        HingeHook.of(UPRIGHT, Section.onEdge(millimetres(10), millimetres(20)), millimetres(30));
    // 250 × 30 ÷ (10 × 20² / 6); 300 × (10 + 20) ÷ 666.667 + 300 ÷ 200.
    assertEquals(11.25, flat.shankBending(newtons(250)).getValue(), 1e-12);
    assertEquals(15, flat.shankStressUnder(newtons(300)).getValue(), 1e-12);
    assertEquals(ShopUnits.PSI, UPRIGHT.bending(poundsForce(60)).getUnit());
  }

  @Test
  void washersLengthenTheArm() {
    HookPin raised = UPRIGHT.onWashers(millimetres(4));
    assertEquals(millimetres(44), raised.height());
    assertEquals(35.3678 * 24 / 20, raised.bending(newtons(300)).getValue(), 5e-5);
    HingeHook hook = HingeHook.of(raised, ROUND, millimetres(30));
    assertEquals(HOOK.shankBending(newtons(250)), hook.shankBending(newtons(250)));
    assertEquals("12 mm pin under a barrel of 40 mm, lifted 4 mm", raised.toString());
    assertEquals("12 mm pin under a barrel of 40 mm", UPRIGHT.toString());
    assertEquals(millimetres(40), raised.barrelWidth());
  }

  @Test
  void showsItsWorkings() {
    HingeHook square =
        HingeHook.of(UPRIGHT.onWashers(millimetres(2)), Section.square(inches("1/2")), inches(1));
    for (HingeHook hook : new HingeHook[] {HOOK, square}) {
      HookPin pin = hook.pin();
      Workings.check(pin.bendingWorking(newtons(300)), pin.bending(newtons(300)));
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
    assertEquals(millimetres(956), onWashers().shankCentresWithOneInverted(millimetres(900)));
  }

  @Test
  void isBentFromOneBar() {
    Piece piece = HOOK.piece(Material.MILD_STEEL, millimetres(100));
    // Pin 40, corner 12, shank 30 − 6 + 100.
    assertEquals(millimetres(176), piece.layout().cutLength().likely());
    assertEquals(3, piece.features().size());
    assertEquals(1, piece.featuresBeforeReference());
    assertTrue(
        refused(() -> HOOK.piece(Material.MILD_STEEL, millimetres(-1)))
            .startsWith("behind must not be negative"));
  }

  @Test
  void endsInATailThatIsDriven() {
    Spike tail =
        Spike.of(ROUND).withPoint(Taper.toPoint(ROUND, millimetres(30))).driven(millimetres(130));
    // Pin 40, corner 12, shank 30 − 6 + 130 − 30, and a third of the point.
    Piece piece = HOOK.piece(Material.MILD_STEEL, tail);
    assertEquals(40 + 12 + 124 + 10, piece.layout().cutLength().likely().getValue(), 1e-9);
    assertTrue(piece.layout().cutLength().isExact());
    Spike clenched = Spike.of(ROUND).clenchedThrough(millimetres(100));
    // Three diameters behind 100 mm, of which the last two are its point: a third of them.
    assertEquals(
        40 + 12 + 24 + 112 + 8,
        HOOK.piece(Material.MILD_STEEL, clenched).layout().cutLength().likely().getValue(),
        1e-9);
    assertTrue(
        refused(() -> HOOK.piece(Material.MILD_STEEL, Spike.of(Section.round(inches(1)))))
            .startsWith("tail must be of the shank's 12 mm round, was of 1 in round"));
    assertTrue(
        refused(() -> HOOK.piece(Material.MILD_STEEL, tail.through(millimetres(3))))
            .startsWith("tail must go straight into the post, was through 3 mm"));
    assertTrue(
        refused(() -> HOOK.piece(Material.MILD_STEEL, Spike.of(ROUND)))
            .startsWith("depth must be known"));
  }

  /** Round pin of 12 mm on 20 mm square; the metal by slices across it. */
  @Test
  void aThinnerPinIsDrawnFromTheBar() {
    Section bar = Section.square(millimetres(20));
    HingeHook hook = HingeHook.of(UPRIGHT, bar, millimetres(35));
    Spike tail =
        Spike.of(bar).withPoint(Taper.toPoint(bar, millimetres(60))).driven(millimetres(160));
    Piece piece = hook.piece(Material.MILD_STEEL, tail);
    double sliced = 0;
    int slices = 245_000; // so many that no slice is cut by a step
    double whole = 40 + 20 + 25 + 160; // pin, corner, to the post's face, tail
    for (int i = 0; i < slices; i++) {
      double x = whole * (i + 0.5) / slices;
      double fromTip = whole - x;
      double side = Math.min(20, 20 * fromTip / 60);
      double area = x < 40 ? Math.PI * 36 : side * side;
      sliced += area * whole / slices;
    }
    double kept =
        piece.features().stream()
            .mapToDouble(each -> each.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE))
            .sum();
    assertEquals(sliced, kept, sliced * 1e-6);
    // The hand takes more for what is set down, so that the bar is longer than its metal.
    assertFalse(piece.layout().cutLength().isExact());
    assertTrue(piece.layout().cutLength().likely().in(ShopUnits.MILLIMETRE) > sliced / 400);
    assertEquals(Section.round(millimetres(12)), piece.features().get(0).start());
    assertTrue(piece.isTrimmedAt(PieceEnd.FIRST) && piece.isTrimmedAt(PieceEnd.LAST));
  }

  @Test
  void isNotBentFromWhatWillNotDo() {
    HingeHook flat =
        HingeHook.of(UPRIGHT, Section.onEdge(millimetres(15), millimetres(20)), millimetres(30));
    assertTrue(
        refused(() -> flat.piece(Material.MILD_STEEL, millimetres(100)))
            .startsWith("shank must be round or square to be bent from one bar, was"));
    HingeHook thin = HingeHook.of(UPRIGHT, Section.square(millimetres(10)), millimetres(30));
    assertTrue(
        refused(() -> thin.piece(Material.MILD_STEEL, millimetres(100)))
            .startsWith("shank must be as thick as the pin of 12 mm at least"));
    HingeHook close = HingeHook.of(UPRIGHT, Section.square(millimetres(20)), millimetres(8));
    assertTrue(
        refused(() -> close.piece(Material.MILD_STEEL, millimetres(100)))
            .startsWith("half the shank must be at most the projection of 8 mm, was 10 mm"));
  }

  @Test
  void cautionsOfANarrowShoulder() {
    assertTrue(says(HOOK, "no wider than the pin"));
    assertFalse(says(onWashers(), "no wider than the pin"));
    assertFalse(
        says(HingeHook.of(UPRIGHT, Section.square(inches(1)), inches(2)), "no wider than the pin"));
    assertTrue(says(HOOK, "in timber"));
    assertEquals(PIN, HOOK.pin().pin());
    assertEquals(ROUND, HOOK.shank());
    assertEquals(millimetres(30), HOOK.projection());
  }

  @Test
  void refusesWhatCannotBe() {
    assertEquals(
        "projection must be at least half the pin of 12 mm, was 5 mm; measure from the post's face"
            + " to the pin's centre",
        refused(() -> HingeHook.of(UPRIGHT, ROUND, millimetres(5))));
    assertTrue(refused(() -> HookPin.of(PIN, millimetres(0))).startsWith("barrel width must"));
    Section tube = Section.roundTube(millimetres(20), millimetres(2));
    Section square = Section.squareTube(millimetres(20), millimetres(2));
    Section hexagon = Section.hexagon(millimetres(20));
    for (Section shank : new Section[] {tube, square, hexagon}) {
      assertTrue(
          refused(() -> HingeHook.of(UPRIGHT, shank, millimetres(20)))
              .startsWith("shank must be round, square or flat"));
    }
    assertTrue(refused(() -> UPRIGHT.onWashers(millimetres(-1))).startsWith("stack must"));
    assertTrue(refused(() -> UPRIGHT.bending(newtons(0))).startsWith("force must"));
    assertTrue(refused(() -> HOOK.shankBending(newtons(0))).startsWith("weight must"));
    assertTrue(refused(() -> HOOK.shankStressUnder(newtons(0))).startsWith("pull must"));
    assertTrue(refused(() -> HOOK.shankCentres(millimetres(0))).startsWith("strap centres"));
    assertThrows(NullPointerException.class, () -> HookPin.of(null, millimetres(40)));
  }

  private static HingeHook onWashers() {
    return HingeHook.of(UPRIGHT.onWashers(millimetres(2)), ROUND, millimetres(30));
  }

  private static boolean says(HingeHook hook, String words) {
    return hook.cautions().stream().anyMatch(caution -> caution.text().contains(words));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
