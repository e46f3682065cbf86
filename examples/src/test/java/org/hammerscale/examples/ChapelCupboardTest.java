package org.hammerscale.examples;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.cutting.Rack;
import org.hammerscale.examples.latch.BoltOrder;
import org.hammerscale.examples.latch.HaspOrder;
import org.hammerscale.examples.latch.HookOrder;
import org.hammerscale.examples.latch.LatchOrder;
import org.hammerscale.examples.order.Cut;
import org.hammerscale.examples.order.CutSheet;
import org.hammerscale.examples.order.Order;
import org.hammerscale.examples.order.SheetText;
import org.hammerscale.latch.CabinHook;
import org.hammerscale.latch.DoorMovement;
import org.hammerscale.latch.Hasp;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The chapel cupboard of the sample order, walked through with a ruler sheet by sheet: two pairs of
 * hinges, a latch with its handle, a bolt, a cabin hook, a hasp from one flat bar, a rod and a
 * wire, and a nail for a knob, waxed 0.05 mm thick. Its door is 480 wide and 25 thick, of oak. All
 * sums are done by hand, in millimetres.
 */
class ChapelCupboardTest {
  private static List<Order> set = List.of();

  @BeforeAll
  static void readTheSample() throws IOException {
    OrderFile file = OrderFile.of(JobSheet.sampleLines());
    assertEquals(List.of(), file.faults());
    set = file.orders().stream().filter(o -> o.name().equals("Chapel cupboard")).toList();
  }

  private static <T extends Order> T the(Class<T> kind) {
    return set.stream().filter(kind::isInstance).map(kind::cast).findFirst().orElseThrow();
  }

  /** The front of a sheet, its lines joined, so that a search does not mind where they break. */
  private static String front(Class<? extends Order> kind) {
    SheetText sheet = new SheetText(80);
    the(kind).front(sheet);
    return sheet.toString().replaceAll("\\s+", " ");
  }

  private static void says(String sheet, String... words) {
    for (String each : words) {
      assertTrue(sheet.contains(each), () -> each + "\nis not in\n" + sheet);
    }
  }

  @Test
  void doorMovesByLessThanItsHardwareAllows() {
    DoorMovement door = DoorMovement.of(millimetres(480));
    // 480 × 1.5/800 = 0.9 of 1; 480 × 0.00158 × 5 = 3.792 of 4, quartered oak five per cent drier
    assertEquals(0.9, mm(door.drop(millimetres(1.5), millimetres(800))), 1e-12);
    assertEquals(3.792, mm(door.widthChange(0.00158, 5)), 1e-12);
  }

  @Test
  void hingesTurnAndSwing() {
    String sheet = front(HingeOrder.class);
    // Bore 8 + 0.3 + 4 × 0.05 = 8.5, mean 13.5, a full turn 42.41, up to 43; 43 + 200. It closes at
    // 6.75 (2 π − acos(4.25 / 9.25)) = 35.03.
    says(sheet, "CUT door leaf 243 mm long × 2", "CUT post leaf 243 mm long × 2");
    says(sheet, "43 mm from the barrel end", "cut the strip to 35 mm from R (8 mm goes)");
    // 1.2e-5 × 1100 … = 1.58 %: 8.5 × 1.0158 = 8.63 hot. 8.5 leaves 8.37, 9 would leave 8.86; the
    // pin and its wax take 8.2: 0.17 is left.
    says(sheet, "Drift 8.5 mm, driven hot: bore 8.4 mm, the pin plays 0.2 mm");
    // 18.5 × 1.0158 = 18.79, nearest 19, which leaves 18.70
    says(sheet, "Swage 19 mm: barrel 18.7 mm over");
    // (20 − 2 × 1) / 3 = 6 for a knuckle; slots 7 − 0, 14 − 6 and 20 − 13: each joint has 1, for
    // the
    // tongue from 7 to 13 in the slot from 6 to 14
    says(sheet, "door leaf: 0 mm to 7 mm; 13 mm to 20 mm", "post leaf: 6 mm to 14 mm");
    says(sheet, "1 mm in each joint (asked 0.5 mm)");
    // √(9.25² − 4.25²) = 8.22 lets the barrel pass, up to 9; 43 + 9
    says(sheet, "floor 9 mm past R, 52 mm from the uncut barrel end");
    // 9 + 7.5 for a head = 16.5, up; 200 − 7.5 = 192.5, down; between them 104.5
    says(sheet, "door leaf, from the pin's centre: 17 mm, 104 mm, 192 mm");
    // 5 − (7.5 − 4.5)/2 = 3.5 of iron below; 20 − 5 = 15 of screw in 25 of door
    says(sheet, "drill 4.5 mm, sink 90° to 7.5 mm; 3.5 mm or more is left below");
    // both faces 4.25 under the pin: 180° + 2 atan(4.25 / 200) = 182.4°
    says(sheet, "opens 182° (asked 100°)", "hinges 800 mm from centre to centre");
  }

  @Test
  void latchIsCutAndMarked() {
    String sheet = front(LatchOrder.class);
    // 140 + 20 behind the pivot; 28 out, 25 + 5 through, 5 beyond
    says(sheet, "CUT bar 160 mm long × 1", "drill for its pivot 20 mm from the back end");
    says(sheet, "CUT thumb piece 63 mm long × 1");
    // Feet 40, four bends of 5 π/2 = 7.85, legs 45 − 10 = 35, grip 110 − 5 = 105: 286.4. Marks at
    // 40, 47.85, 82.85, 90.71, 195.71, 203.56, 238.56, 246.42; the first half lies 0.3 farther, for
    // what is trimmed at that end.
    says(sheet, "CUT handle 287 mm long × 1", "punch at 40 mm, 48 mm, 83 mm, 91 mm, 196 mm,");
    says(sheet, "196 mm, 204 mm, 239 mm, 247 mm from one end; bend square from the first");
    // 16 = 3 × 5 + 1 stands out; 60 of point takes 20
    says(
        sheet,
        "CUT catch 36 mm long × 1",
        "leave 16 mm of the bar, draw the rest to a point of 60");
    // The bar turns by 10.3°, so that at 86 + 2.5 it has risen by 16.1: 16.1 + 10/cos + 10 + 2 × 1
    // = 38.3, up to 39. Crown 44, legs 6 + 2.5 + 40 − 10, points 10/3: 127.7, up on both sides.
    says(sheet, "CUT guide 129 mm long × 1 of 5 mm round", "39 mm wide and 6 mm high inside");
    // 39 + 5; legs of 40 in a door of 25
    says(sheet, "44 mm apart in the middle, right through; clench the 15 mm that stand out");
    // 122 − 3 to the pivot; 119 − 50, 119 − (50 + 122)/2; all on a door of 480
    says(sheet, "the bar's pivot 119 mm, the thumb piece 69 mm, the guide 33 mm");
    says(sheet, "the catch's inner face 3 mm beyond it");
    // two in a foot of 40, a head of 7.5 from either end; 5 × 4 × 0.7 = 14 apart at least
    says(sheet, "each foot, from its end: 8 mm, 32 mm");
  }

  @Test
  void latchLiftsOverItsNoseAndStillCatches() {
    ThumbLatch latch = the(LatchOrder.class).latch();
    String sheet = front(LatchOrder.class);
    // 10 − 3 + 1 + 1
    assertEquals(millimetres(9), latch.liftNeeded());
    // First order s (z/a)(X/x) = 8 × 30/28 × 122/50 = 20.9; the tangent adds 4 %
    assertEquals(20.9, mm(latch.lift()), 2);
    says(sheet, "the thumb lifts the bar by 22 mm at the catch; 9 mm clears the nose");
    // 10 − 3; risen by 2 it still lies 10 − 3 − 2 behind the nose; 140 − 122
    says(sheet, "7 mm behind the nose at rest, 5 mm with the door 2 mm up; 18 mm of the tip");
    // 18 in the catch, 3.8 of shrinkage, 1 of play
    assertEquals(
        13.2,
        mm(latch.nose().overlapLeft(latch.overlap(), millimetres(3.8), millimetres(1))),
        1e-9);
    // 5 + 25 × 8/√(28² − 8²) + 1 = 13.45, up; 20 + 2 × 1
    says(sheet, "14 mm high and 22 mm wide through the door");
    // 0.9 of play and two coats on each side
    says(sheet, "the bar has 0.9 mm in its guide over, under and behind it, the finish counted");
  }

  @Test
  void boltRunsInItsStaplesAndMeetsItsKeeper() {
    SlideBolt bolt = the(BoltOrder.class).bolt();
    String sheet = front(BoltOrder.class);
    // Thrown it reaches 6 + 24 out of the outer staple; 30 + 60 + 8
    says(sheet, "CUT bolt 98 mm long × 1");
    // Thrown, the knob's middle is 30 + 5 + 2 from the tip; it runs 24 and is 4 wide, and 60 − 2 ×
    // 5
    // is clear between the staples.
    says(sheet, "the knob's hole 37 mm from the tip, 4 mm");
    assertTrue(mm(bolt.staplesApart()) - 2 * 5 >= mm(bolt.travel()) + 4);
    // 18 + 4, and a cone from 4 to 6 that is 1 deep: π (36 + 24 + 16) / 12 − 4 π = 7.33 mm³ more,
    // of 12.57 mm² 0.58.
    says(sheet, "CUT knob 23 mm long × 1 of 4 mm round", "sink it below, 90° to 6 mm");
    // 8 + 0.4 + 0.2 = 8.6, up to 9: 0.8 of room is left. Crown 7 π, legs 4.5 + 10, points 10/3:
    // 57.7; 3.3 and 54.3, both up.
    says(sheet, "Staple 9 mm wide and 9 mm high inside", "CUT staple 59 mm long × 2");
    says(sheet, "14 mm apart in the middle, 20 mm deep", "with 0.8 mm of room over the finish");
    // Tip 30 out: 0.8 (1/2 + 30/60) = 0.8 and 1 of drop on both sides: 8.2 + 3.6 = 11.8, up; 9 +
    // 0.8 high, up. Crown 8.5 π, legs 4 + 10: 61.4; 3.3 and 58.04, both up.
    assertEquals(0.8, mm(bolt.tipShift()), 0.01);
    says(sheet, "Keeper 12 mm wide and 10 mm high inside", "CUT keeper 63 mm long × 1");
    says(sheet, "17 mm apart in the middle, 20 mm deep", "with the door's edge 1 mm up or down");
    // 24 − 3; 24 − 3 − 4; 6 + 60
    says(sheet, "throws 24 mm: 21 mm in the keeper, 17 mm once the door has drawn away by 4 mm");
    says(sheet, "outer staple 6 mm, of the inner one 66 mm; near side of the keeper 3 mm beyond");
  }

  @Test
  void hookReachesFromEyeToEye() {
    CabinHook hook = the(HookOrder.class).hook();
    String sheet = front(HookOrder.class);
    // Door's eye at 420 cos 95° − 12 sin 95° = −48.56, 420 sin 95° + 12 cos 95° = 417.35: 417.9
    assertEquals(Math.hypot(-48.56 + 150, 417.35 - 12), mm(hook.length()), 0.5);
    // 418 + 5; an eye of 11 π = 34.6, 423 − 6 − 5 − 2.5 = 409.5 straight, 5 π/2 + 15 turned down
    says(sheet, "423 mm inside", "CUT hook 467 mm long × 1");
    says(sheet, "35 mm (turned eye | plain stretch), 444 mm (plain stretch | cabin hook)");
    // 5 + 0.8 + 0.2 = 6; 34.6 + 20
    says(sheet, "mandrel of 6 mm; 20 mm of shank", "CUT eye 55 mm long × 2");
    says(sheet, "the wire turns in its eyes with 0.8 mm of room, the finish counted");
    // 418 + 2 × (6 + 5)/2
    says(sheet, "429 mm from middle to middle");
    // (150 × 417.4 − 12 × 48.15)/418 = 148.4, down
    says(sheet, "the door open by 95°; its line passes the pin by 148 mm");
    // 10 − 2.5 = 7.5, down
    says(sheet, "7 mm are left between the hook and the faces");
    // within what the hinges open
    assertTrue(the(HingeOrder.class).pair().opening().isGreaterThan(degrees(95)));
  }

  @Test
  void haspSwingsOverItsStaple() {
    Hasp hasp = the(HaspOrder.class).hasp();
    String sheet = front(HaspOrder.class);
    // 5 + 6 + 1.8 + 4 × 0.05 = 13; a shackle of 6 leaves 13 − 5 − 6 = 2
    says(sheet, "10 mm wide and 13 mm high inside", "it lets the hasp lift by 2 mm");
    // It hangs on a crown of 8 in a bore of 8 + 0.5: 5 + 0.25 inside, up to 6, its middle 10 over
    // the wood and the eye, 4.25 + 5 about it, at most 1 off it.
    says(sheet, "Hanger 21 mm wide and 6 mm high inside, corners square", "mandrel of 8.5 mm");
    assertEquals(millimetres(10), hasp.pinAbove());
    // The crown's end comes up in √(60² + 2²) − 10 = 50.03, so √(50.03² − 10²) − 0.4 = 48.62, down;
    // its legs leave the strap downwards: 70 + 0.4, up; 5 + 2 × 0.4 = 5.8, up
    says(sheet, "from 48 mm to 71 mm from the eye's centre, 6 mm wide");
    // A staple of 10 + 2 × 5 in a slot of 23
    says(sheet, "the slot 3 mm longer than it is");
    assertEquals(millimetres(23), hasp.slotLength());
    // Eye 13.5 π = 42.4, to the slot 48, slot 23, 20 beyond: 42 + 91
    says(sheet, "CUT strap 133 mm long × 1", "from R, where the eye ends, 42 mm of bar before it");
    says(sheet, "Punch 48 mm (plain stretch | punched hole), 71 mm (punched hole | plain");
    // Of 20 a point of 2 × 5 and one of 2 × 8 leave 10 and 4, of 6 × 5 and 6 × 8.
    says(sheet, "only 10 mm of full rod are in the wood, and no rule counts on less than 30 mm");
    says(sheet, "only 4 mm of full rod are in the wood, and no rule counts on less than 48 mm");
    // Outside 21 + 2 × 8 across, 6 + 8 + 20 − 16 down, corners counted once: 37 + 2 × 10; points
    // 16/3: 5.3 and 62.3, both up
    says(sheet, "CUT hanger 69 mm long × 1 of 8 mm round", "29 mm apart in the middle, 20 mm deep");
    // Crown 7.5 π, legs 8 + 10, points 10/3: 66.2; 3.3 and 62.9, both up
    says(sheet, "CUT staple 67 mm long × 1 of 5 mm round", "15 mm apart in the middle, 20 mm deep");
  }

  @Test
  void everyPartComesFromOneFlatBarARodAndAWire() {
    List<String> bars =
        set.stream()
            .flatMap(order -> order.cuts().stream())
            .map(cut -> cut.bar().section().toString())
            .distinct()
            .toList();
    assertEquals(List.of("20 mm × 5 mm flat", "8 mm round", "5 mm round", "4 mm round"), bars);
    String list = cutList();
    // 4 × 243 + 160 + 63 + 287 + 36 + 133 = 1651, and nine cuts of 1
    says(list, "The pieces are 1651 mm long together", (6000 - 1651 - 9) + " mm left over");
    // 98 + 2 × 40 + 69 = 247, four cuts
    says(list, "The pieces are 247 mm long together", (6000 - 247 - 4) + " mm left over");
    // 129 + 2 × 59 + 63 + 467 + 2 × 55 + 67 = 954, eight cuts
    says(list, "The pieces are 954 mm long together", (6000 - 954 - 8) + " mm left over");
  }

  private static String cutList() {
    SheetText sheet = new SheetText(80);
    CutSheet.of(set, Rack.empty()).write(sheet);
    return sheet.toString().replaceAll("\\s+", " ");
  }

  @Test
  void oneCoatAndOneKindOfScrewServeTheWholeSet() {
    set.forEach(order -> assertEquals(millimetres(0.05), order.coat(), order::what));
    String printed = Sheets.of(set, CutSheet.of(set, Rack.empty())).replaceAll("\\s+", " ");
    // 2 × (3 + 3) in the hinges, 2 × 2 in the handle's feet
    says(
        printed, "finish of 0.05 mm on every face; 16 screws: 4 mm wood screw, DIN 97, 20 mm long");
    says(printed, "Set Chapel cupboard, sheet 1 of 5: 2 pairs of strap hinges, thumb latch");
    says(printed, "Set Chapel cupboard, sheet 5 of 5");
    // Each saw takes the same.
    for (Order order : set) {
      for (Cut cut : order.cuts()) {
        assertEquals(millimetres(1), cut.kerf(), cut::name);
      }
    }
  }

  @Test
  void eachIsForgedAtTheHeatOfTheSet() {
    // Anvil and hammer leave half of ρ r I: as r goes from 100/50 = 2 to 5/4 = 1.25, 8.97 to 23.8 s
    // become 5.6 to 14.9, and somewhat less since a thin rod loses more to the air.
    String sheet = front(LatchOrder.class);
    says(
        sheet,
        "Heat 1100 °C, orange to yellow; at the anvil: 20 mm × 5 mm flat keeps it for 8 to 23");
    says(sheet, "5 mm round keeps it for 5 to 14 s");
  }

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }
}
