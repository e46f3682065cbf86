package org.hammerscale.examples;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.DoorMovement;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.LatchCatch;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.Staple;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

/**
 * A chapel cupboard's whole set from one flat bar and two rods, and a nail for a knob: two hinges,
 * a latch with its handle, a bolt, a cabin hook, waxed in two coats of 0.05 mm. Its door is 480
 * wide and 25 thick, of oak.
 */
class ChapelCupboardTest {
  private static final Bar FLAT =
      Bar.of(Section.flat(millimetres(20), millimetres(5)), Material.MILD_STEEL);
  private static final Bar ROD = Bar.of(Section.round(millimetres(8)), Material.MILD_STEEL);
  private static final Bar WIRE = Bar.of(Section.round(millimetres(5)), Material.MILD_STEEL);
  private static final Measure<Length> COAT = millimetres(0.05);

  private static HingePair hinges() {
    return HingePair.of(FLAT, Bore.forPin(millimetres(8)).clearing(millimetres(0.3)).coated(COAT))
        .knuckles(Knuckles.across(millimetres(20)).withGap(millimetres(0.5)))
        .leaves(Plain.of(FLAT.section(), millimetres(200)))
        .opening(degrees(100), Hanging.FACE)
        .pair();
  }

  private static SlideBolt bolt() {
    return SlideBolt.thrown(millimetres(24), ROD)
        .across(millimetres(3))
        .stapledApart(millimetres(60))
        .fromEdge(millimetres(6))
        .clearing(millimetres(0.4))
        .coated(COAT)
        .inStaplesOf(WIRE, millimetres(20))
        .allowing(millimetres(1), millimetres(4))
        .withKnob(millimetres(4), millimetres(18))
        .on(MILLIMETRE)
        .bolt();
  }

  private static ThumbLatch latch() {
    return ThumbLatch.through(millimetres(25), FLAT, millimetres(140))
        .thumbAt(millimetres(28), millimetres(8))
        .lifting(millimetres(50), millimetres(122))
        .madeOf(FLAT, WIRE)
        .into(LatchCatch.standing(millimetres(10)).under(millimetres(3)), millimetres(1))
        .allowing(millimetres(1), millimetres(2))
        .on(MILLIMETRE)
        .latch();
  }

  private static CabinHook hook() {
    return CabinHook.betweenEyes(millimetres(420), millimetres(-150), WIRE)
        .off(millimetres(12), millimetres(12))
        .heldOpen(degrees(95))
        .clearing(millimetres(1))
        .on(MILLIMETRE)
        .hook();
  }

  @Test
  void doorMovesByLessThanItsHardwareAllows() {
    DoorMovement door = DoorMovement.of(millimetres(480));
    // 480 × 1.5/800 = 0.9; 480 × 0.00158 × 5 = 3.792, quartered oak drier by five per cent
    assertEquals(0.9, mm(door.drop(millimetres(1.5), millimetres(800))), 1e-12);
    assertEquals(3.792, mm(door.widthChange(0.00158, 5)), 1e-12);
  }

  @Test
  void pinTurnsInBothCoatedBores() {
    // 8 + 0.3 + 4 × 0.05
    assertEquals(8.5, mm(hinges().bore().diameter()), 1e-12);
    assertTrue(hinges().opening().in(ShopUnits.DEGREE) >= 100);
    assertEquals(FLAT, hinges().leaf(Leaf.FIRST).bar());
  }

  @Test
  void boltRunsInItsStaplesAndMeetsItsKeeper() {
    SlideBolt bolt = bolt();
    // 8 + 0.4 + 0.2 = 8.6, up to 9: 0.8 of room is left
    assertEquals(millimetres(9), bolt.staple().insideWidth());
    assertEquals(0.8, mm(bolt.clearance()), 1e-12);
    // 24 − 3 − 4
    assertEquals(millimetres(17), bolt.leastEngagement());
    // Tip 30 out: 0.8 (1/2 + 30/60) = 0.8 and 1 of drop on both sides: 8.2 + 3.6 = 11.8, up
    assertEquals(0.8, mm(bolt.tipShift()), 0.01);
    assertEquals(millimetres(12), bolt.keeper().insideWidth());
    // The knob runs 24 and is 4 wide; 60 − 2 × 5 = 50 is clear between the staples.
    assertTrue(24 + 4 <= 60 - 10);
    // Thrown, the knob's middle is 30 + 5 + 2 from the tip.
    assertEquals(millimetres(37), bolt.knobPlace());
    // 30 + 60 + 8
    assertEquals(millimetres(98), bolt.bolt().layout().cutLength().likely());
  }

  @Test
  void latchLiftsOverItsNoseAndStillCatches() {
    ThumbLatch latch = latch();
    // 10 − 3 + 1 + 1
    assertEquals(millimetres(9), latch.liftNeeded());
    // First order s (z/a)(X/x) = 8 × 30/28 × 122/50 = 20.9; the tangent adds 4 %
    assertEquals(20.9, mm(latch.lift()), 2);
    assertTrue(latch.lift().isGreaterThan(latch.liftNeeded()));
    // risen by 2 it still lies 10 − 3 − 2 behind the nose
    assertEquals(millimetres(5), latch.nose().engagement(millimetres(-2)));
    // 18 in the catch, 3.8 of shrinkage, 1 of play
    assertEquals(
        13.2,
        mm(latch.nose().overlapLeft(latch.overlap(), millimetres(3.8), millimetres(1))),
        1e-9);
    // 5 + 25 × 8/√(28² − 8²) + 1 = 13.45, up
    assertEquals(millimetres(14), latch.slotHeight());
  }

  @Test
  void hookReachesFromEyeToEye() {
    CabinHook hook = hook();
    // Door's eye at 420 cos 95° − 12 sin 95° = −48.56, 420 sin 95° + 12 cos 95° = 417.35
    assertEquals(Math.hypot(-48.56 + 150, 417.35 - 12), mm(hook.length()), 0.5);
    assertEquals(95, hook.opening().in(ShopUnits.DEGREE), 0.5);
    assertEquals(millimetres(6), hook.eyeInside()); // 5 + 1
    assertTrue(hook.clearance().getValue() > 0);
  }

  @Test
  void everyPartComesFromThreeBars() {
    List<Bar> bars = List.of(FLAT, ROD, WIRE);
    latch().pieces().forEach(piece -> assertTrue(bars.contains(piece.bar()), piece::toString));
    hook().pieces().forEach(piece -> assertTrue(bars.contains(piece.bar()), piece::toString));
    List<Piece> parts = bolt().pieces();
    assertEquals(ROD, parts.get(0).bar());
    assertEquals(millimetres(4), parts.get(1).bar().section().width()); // the knob, from a nail rod
    parts.subList(2, 5).forEach(piece -> assertEquals(WIRE, piece.bar()));
  }

  @Test
  void eachHasASheetThatFitsThePage() {
    Staple staple = Staple.inside(millimetres(10), WIRE).standing(millimetres(13));
    Hasp hasp = Hasp.of(FLAT, staple).stapledAt(millimetres(50)).inLine().on(MILLIMETRE).hasp();
    List<String> sheets =
        List.of(
            LatchSheet.of("chapel cupboard", bolt(), MILLIMETRE),
            LatchSheet.of("chapel cupboard", latch(), MILLIMETRE),
            LatchSheet.of("chapel cupboard", hook(), MILLIMETRE),
            LatchSheet.of("chapel cupboard", hasp, MILLIMETRE));
    for (String sheet : sheets) {
      assertTrue(sheet.lines().allMatch(line -> line.length() <= 72), sheet);
      assertTrue(sheet.contains("job       chapel cupboard"), sheet);
      assertTrue(sheet.contains("! "), sheet);
      assertTrue(!sheet.contains("@"), sheet);
    }
    assertTrue(sheets.get(0).contains("cut       98 mm of 8 mm round: bolt"), sheets.get(0));
    assertTrue(sheets.get(0).contains("knob hole 37 mm"), sheets.get(0));
    assertTrue(sheets.get(1).contains("slot high 14 mm"), sheets.get(1));
  }

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }
}
