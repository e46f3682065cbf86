package org.hammerscale.latch;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HaspTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(4)), Material.MILD_STEEL);
  private static final Bar ROD = Bar.of(Section.round(millimetres(8)), Material.MILD_STEEL);
  private static final Staple STAPLE =
      Staple.inside(millimetres(12), ROD).standing(millimetres(14));

  private static HaspBuilder asked() {
    return Hasp.of(STRAP, STAPLE).stapledAt(millimetres(60)).hungOn(millimetres(10));
  }

  @Test
  void partsFitByHandArithmetic() {
    Hasp hasp = asked().clearing(millimetres(1)).on(MILLIMETRE).hasp();
    // √(60² − 2²) − 1 = 58.97; √(68² + 20²) + 1 = 71.88; 12 + 16 + 2
    assertEquals(millimetres(58), hasp.slotFrom());
    assertEquals(millimetres(72), hasp.slotTo());
    assertEquals(millimetres(14), hasp.slotLength());
    assertEquals(millimetres(30), hasp.slotWidth());
    assertEquals(millimetres(4), hasp.longerForSwing());
    // Eye of 10 in 4 on its mean line; 58 less half the pin and the eye's thickness; slot; 40
    // beyond.
    double used = hasp.hasp().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(Math.PI * 14 + (58 - 5 - 4) + 14 + 40, used, 1e-9);
    assertEquals(millimetres(2), hasp.play(millimetres(8)));
    assertEquals(
        millimetres(3), hasp.playAtEdge(millimetres(8), millimetres(900), millimetres(600)));
    assertEquals(2, hasp.pieces().size());
    assertEquals(STAPLE, hasp.staple());
    assertEquals(STRAP, hasp.strap());
    assertEquals(millimetres(10), hasp.bore());
    assertEquals(millimetres(2), hasp.pinAbove()); // in the middle of the strap
    assertEquals(millimetres(60), hasp.stapledAt());
    assertEquals(millimetres(8), hasp.stapleLength());
    assertEquals(millimetres(72 + 40), hasp.length());
    assertFalse(hasp.isInLine());
    assertEquals(2, hasp.cautions().size());
  }

  @Test
  void inLineTheSlotIsNarrow() {
    Hasp hasp = asked().inLine().reachingBeyond(millimetres(25)).hasp();
    assertEquals(millimetres(8), hasp.slotWidth());
    assertTrue(hasp.isInLine());
    assertEquals(millimetres(28), hasp.stapleLength()); // 12 and two wires
    // The crown of 14 round its middle at 74, 22 − 14 = 8 high, 6 above the pin
    assertEquals(Math.hypot(74, 6) + 14, hasp.slotTo().in(ShopUnits.MILLIMETRE), 1e-9);
    Workings.check(hasp.slotFromWorking(), hasp.slotFrom());
    Workings.check(hasp.slotToWorking(), hasp.slotTo());
    Hasp square =
        Hasp.of(STRAP, STAPLE.withSquareCrown())
            .stapledAt(millimetres(60))
            .hungOn(millimetres(10))
            .inLine()
            .hasp();
    assertEquals(Math.hypot(88, 20), square.slotTo().in(ShopUnits.MILLIMETRE), 1e-9);
  }

  @Test
  void hangsOnAStapleThroughItsEye() {
    Staple hanger = Hasp.hanger(STRAP, ROD, millimetres(1));
    assertEquals(millimetres(41), hanger.insideWidth());
    assertEquals(millimetres(4.5), hanger.insideHeight());
    Hasp hasp = asked().hungOn(hanger, millimetres(1)).clearing(millimetres(1)).hasp();
    assertEquals(hanger, hasp.hanger().orElseThrow());
    assertEquals(millimetres(9), hasp.bore());
    // The eye, 9 / 2 + 4 in radius outside, lies on the wood.
    assertEquals(millimetres(8.5), hasp.pinAbove());
    // √(60² − 8.5²) − 1 = 58.39; above the pin by 22 − 8.5, the strap's face 4.5 below it:
    // √(68² + 13.5² − 4.5²) + 1 = 70.18
    assertEquals(Math.sqrt(3600 - 72.25) - 1, hasp.slotFrom().getValue(), 1e-9);
    assertEquals(Math.sqrt(68 * 68 + 13.5 * 13.5 - 20.25) + 1, hasp.slotTo().getValue(), 1e-9);
    // Rolled from its underside the eye ends beneath the pin: a full turn of 13, all to the slot,
    // the slot, and 40 beyond.
    assertEquals(
        Math.PI * 13 + hasp.slotTo().getValue() + 40,
        hasp.hasp().layout().cutLength().likely().in(ShopUnits.MILLIMETRE),
        1e-9);
    assertEquals(3, hasp.pieces().size());
    assertTrue(asked().hasp().hanger().isEmpty());
    assertTrue(asked().hungOn(hanger, millimetres(1)).hungOn(inches(1)).hasp().hanger().isEmpty());
    assertTrue(
        asked().hungOn(hanger, millimetres(1)).pinAbove(millimetres(2)).hasp().hanger().isEmpty());
  }

  @Test
  void refusesAHangerThatDoesNotLetItSwing() {
    Staple low = Staple.inside(millimetres(41), ROD).standing(millimetres(3)).withSquareCrown();
    assertTrue(
        refusal(() -> asked().hungOn(low, millimetres(1)).hasp())
            .startsWith("hanger must be at least the hasp's thickness of 4 mm, was 3 mm"));
    Staple round = Staple.inside(millimetres(47), ROD).standing(millimetres(4));
    assertTrue(
        refusal(() -> asked().hungOn(round, millimetres(1)).hasp())
            .startsWith(
                "straight crown of the hanger must be at least the strap's width of 40 mm"));
    assertEquals(
        millimetres(8),
        asked()
            .hungOn(Staple.inside(millimetres(48), ROD).standing(millimetres(4)), millimetres(0))
            .hasp()
            .pinAbove());
    Staple half = Staple.inside(millimetres(60), ROD);
    assertTrue(
        refusal(() -> asked().hungOn(half, millimetres(1)).hasp()).contains("was 0 mm; bend it"));
    assertTrue(
        refusal(() -> Hasp.hanger(STRAP, ROD, millimetres(-1))).startsWith("play must not be"));
  }

  @Test
  void workingsAreTheAnswersWhereverThePinLies() {
    for (double u : new double[] {-5, 0, 2, 4, 9, 15, 21, 40}) {
      Hasp across = asked().pinAbove(millimetres(u)).hasp();
      Hasp along = asked().pinAbove(millimetres(u)).inLine().hasp();
      Workings.check(across.slotFromWorking(), across.slotFrom());
      Workings.check(across.slotToWorking(), across.slotTo());
      Workings.check(along.slotFromWorking(), along.slotFrom());
      Workings.check(along.slotToWorking(), along.slotTo());
    }
  }

  @Test
  void refusesWhatDoesNotPass() {
    assertTrue(
        refusal(() -> asked().pinAbove(millimetres(60)).hasp()).startsWith("fromPin must be more"));
    assertTrue(
        refusal(() -> asked().stapledAt(millimetres(9)).hasp()).contains("between eye and slot"));
    assertTrue(
        refusal(() -> asked().clearing(millimetres(6)).hasp()).startsWith("strap must be wider"));
    assertTrue(
        refusal(() -> Hasp.of(STRAP, STAPLE.standing(millimetres(3))).hasp()).startsWith("staple"));
    assertTrue(refusal(() -> asked().hasp().play(millimetres(11))).startsWith("shackle"));
    assertTrue(asked().toString().startsWith("description of a hasp of 40 mm × 4 mm flat"));
    assertTrue(asked().hasp().toString().contains("off the pin"));
    assertEquals(inches(0.5), Hasp.leastInside(inches(0.125), inches(0.25), inches(0.125)));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
