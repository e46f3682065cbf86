package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HingePairTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);
  private static final Bore BORE = Bore.forPin(millimetres(10));
  private static final Plain LONG = Plain.of(STRAP.section(), millimetres(300));
  private static final Plain SHORT = Plain.of(STRAP.section(), millimetres(120));

  private static HingePairBuilder asked() {
    return HingePair.of(STRAP, BORE).leaves(LONG);
  }

  @Test
  void aStrapOnTheFaceNeedsNoMoreNotchThanItsBarrel() {
    HingePair pair = asked().opening(degrees(180), Hanging.FACE).pair();
    // √(2 R t − t²) with R = 11 and t = 6.
    assertEquals(Math.sqrt(2 * 11 * 6 - 36), mm(pair.notchDepth()), 1e-12);
    assertTrue(pair.opening().in(ShopUnits.DEGREE) > 180);
    assertEquals(Contact.TIPS, pair.swing().contact());
  }

  @Test
  void facesThatMeetNeedDeeperNotches() {
    HingePair pair = asked().facesFlush().opening(degrees(120), Hanging.FACE).pair();
    // R tan 60°, of the published examples.
    assertEquals(19.052559, mm(pair.notchDepth()), 5e-7);
    assertEquals(120, pair.opening().in(ShopUnits.DEGREE), 1e-8);
    assertEquals(pair.notchDepth(), pair.slotFloor());
    HingePair folded = asked().opening(degrees(300), Hanging.JOINT).pair();
    assertEquals(19.052559, mm(folded.notchDepth()), 5e-7);
    assertEquals(300, folded.opening().in(ShopUnits.DEGREE), 1e-8);
  }

  @Test
  void aDeeperNotchOpensFarther() {
    HingePair pair =
        asked()
            .facesFlush()
            .opening(degrees(120), Hanging.FACE)
            .notchedBehindPin(millimetres(20))
            .pair();
    assertEquals(122.378413, pair.opening().in(ShopUnits.DEGREE), 5e-7);
    assertEquals(millimetres(20), pair.notchDepth());
  }

  @Test
  void leavesMayDiffer() {
    HingePair pair =
        HingePair.of(STRAP, BORE).leaf(Leaf.FIRST, SHORT).leaf(Leaf.SECOND, LONG).pair();
    assertEquals(millimetres(120), pair.lengthFromPin(Leaf.FIRST));
    assertEquals(millimetres(300), pair.lengthFromPin(Leaf.SECOND));
    double difference =
        mm(pair.leaf(Leaf.SECOND).layout().cutLength().likely())
            - mm(pair.leaf(Leaf.FIRST).layout().cutLength().likely());
    assertEquals(180, difference, 1e-9);
    assertSame(pair.barrel(), pair.leaf(Leaf.FIRST).features().get(0));
    HingePair alike = asked().pair();
    assertSame(alike.leaf(Leaf.FIRST), alike.leaf(Leaf.SECOND));
  }

  @Test
  void aCentredLeafBeginsAtItsNeck() {
    HingePair pair = asked().centred().opening(degrees(120), Hanging.FACE).pair();
    assertTrue(pair.barrel().isCentred());
    assertEquals(11, mm(pair.notchDepth()), 1e-12); // of the published examples
    double neck = Math.sqrt(11 * 11 - 3 * 3);
    assertEquals(300 + neck, mm(pair.lengthFromPin(Leaf.FIRST)), 1e-9);
    assertEquals(11 - neck, mm(pair.slotFloor()), 1e-9);
  }

  @Test
  void countsTheMetalOfTheSlots() {
    HingePair pair =
        asked()
            .knuckles(Knuckles.across(millimetres(40)).withGap(millimetres(0.5)))
            .notchedBehindPin(millimetres(12))
            .pair();
    // Knuckles of 13 mm: a slot of 14 in the first leaf, two notches of 13.5 in the second.
    double alpha = Math.acos(5 / 11d);
    double along = 8 * (2 * Math.PI - alpha) + 12;
    double first = 14 * 6 * along;
    assertEquals(
        first, pair.metalCutOut(Leaf.FIRST).likely().in(ShopUnits.CUBIC_MILLIMETRE), 1e-9 * first);
    double second = 27 * 6 * along;
    assertEquals(
        second,
        pair.metalCutOut(Leaf.SECOND).likely().in(ShopUnits.CUBIC_MILLIMETRE),
        1e-9 * second);
  }

  @Test
  void handsOutThePartsItWasMadeOf() {
    HingePair pair = asked().opening(degrees(120), Hanging.CORNER).pair();
    assertSame(STRAP, pair.strap());
    assertSame(BORE, pair.bore());
    assertEquals(Hanging.CORNER, pair.hanging());
    assertEquals(Pin.of(millimetres(10)), pair.pin());
  }

  @Test
  void itsToolsLeaveTheColdSizes() {
    HingePair pair = asked().pair();
    Contraction work = Contraction.from(celsius(900), Material.MILD_STEEL);
    Drift drift = pair.drift(work);
    assertEquals(10, mm(drift.boreLeftBy(drift.diameter())), 1e-12);
    Swage swage = pair.swage(work);
    // A pin of 10 in a strap of 6 twice.
    assertEquals(22, mm(swage.outsideLeftBy(swage.groove())), 1e-12);
  }

  @Test
  void theBarrelEndsAsAsked() {
    BarrelEnd weld = BarrelEnd.forgeWelded(WeldAllowance.ONE_THICKNESS);
    assertTrue(asked().pair().barrel().metalLost().isNone());
    assertFalse(asked().endedWith(weld).pair().barrel().metalLost().isNone());
  }

  @Test
  void theLastWordOnTheFacesCounts() {
    HingePair proud =
        asked().facesFlush().barrelsProud().opening(degrees(120), Hanging.FACE).pair();
    assertEquals(
        asked().opening(degrees(120), Hanging.FACE).pair().notchDepth(), proud.notchDepth());
    HingePair flush =
        asked().barrelsProud().facesFlush().opening(degrees(120), Hanging.FACE).pair();
    assertTrue(flush.notchDepth().isGreaterThan(proud.notchDepth()));
  }

  @Test
  void marksBothLeavesFromTheTop() {
    HingePair left = asked().pair();
    HingePair right = asked().handed(Hand.RIGHT).pair();
    assertEquals("far edge", left.markedFrom(Leaf.SECOND));
    assertEquals("near edge", left.markedFrom(Leaf.FIRST));
    assertEquals("near edge", right.markedFrom(Leaf.SECOND));
    assertEquals("far edge", right.markedFrom(Leaf.FIRST));
    assertEquals(Hand.RIGHT, left.hand().other());
    assertEquals(Hand.LEFT, right.hand().other());
  }

  @Test
  void passesOnWhatItsPartsWarnOf() {
    Section thin = Section.flat(millimetres(40), millimetres(3));
    HingePair stepped = HingePair.of(STRAP, BORE).leaves(Plain.of(thin, millimetres(90))).pair();
    assertTrue(
        stepped.cautions().stream().anyMatch(c -> c.text().contains("put a taper or a shoulder")));
    assertEquals(
        stepped.cautions().size(), stepped.cautions().stream().distinct().count(), "each once");
  }

  @Test
  void rollsTheBarrelFromANarrowerSection() {
    Section narrow = Section.flat(millimetres(30), millimetres(5));
    HingePair pair =
        HingePair.of(STRAP, BORE)
            .rolledFrom(narrow)
            .knuckles(Knuckles.across(millimetres(30)))
            .leaves(Taper.between(narrow, STRAP.section(), millimetres(60)), LONG)
            .pair();
    assertEquals(millimetres(20), pair.barrel().outsideDiameter());
    assertTrue(pair.leaf(Leaf.FIRST).layout().cautions().stream().noneMatch(c -> c.isDanger()));
  }

  @Test
  void saysWhichNumbersAreAtOdds() {
    assertEquals(
        "width of the knuckles must be that of the strap at the barrel, 40 mm, was 50 mm; divide"
            + " the strap's width, or say what section the barrel is rolled from",
        refusal(() -> asked().knuckles(Knuckles.across(millimetres(50))).pair()));
    assertEquals(
        "depth of notch must be at least 19.05 mm for the door to open 120°, was 12 mm; cut the"
            + " notch deeper",
        refusal(
            () ->
                asked()
                    .facesFlush()
                    .opening(degrees(120), Hanging.FACE)
                    .notchedBehindPin(millimetres(12))
                    .pair()));
    assertTrue(
        refusal(() -> asked().notchedBehindPin(millimetres(5)).pair()).contains("depth of notch"));
    assertTrue(refusal(() -> asked().notchedBehindPin(millimetres(300)).pair()).contains("300 mm"));
    assertEquals(
        "second leaf must go on beyond its barrel, was none; give at least a Plain stretch",
        refusal(() -> HingePair.of(STRAP, BORE).leaf(Leaf.FIRST, LONG).pair()));
    String fold = refusal(() -> asked().centred().opening(degrees(200), Hanging.JOINT).pair());
    assertTrue(fold.startsWith("leaves must fold by 180° to hang in the joint, but meet at"), fold);
    assertTrue(refusal(() -> asked().opening(degrees(361), Hanging.FACE)).startsWith("opening"));
    assertTrue(
        refusal(() -> asked().runningGap(millimetres(-1))).startsWith("running gap must not be"));
  }

  @Test
  void readsAsASmithWould() {
    HingePair pair =
        HingePair.of(
                Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL),
                Bore.forPin(inches("1/2")))
            .facesFlush()
            .leaves(Plain.of(Section.flat(inches("1 1/2"), inches("1/4")), inches(9)))
            .pair();
    assertEquals(
        "left hand pair, 1 1/2 in × 1/4 in flat, pin 1/2 in: notch 1/2 in, opens 90°",
        pair.toString());
    assertEquals(
        "asked: 40 mm × 6 mm flat, pin 10 mm, to open 90° on the face", asked().toString());
  }

  private static double mm(Measure<javax.measure.quantity.Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  @Test
  void goesToTheMarksOfARule() {
    HingePair pair =
        asked()
            .knuckles(Knuckles.across(millimetres(40)).withGap(millimetres(0.3)))
            .facesFlush()
            .opening(degrees(120), Hanging.FACE)
            .on(Graduation.MILLIMETRE)
            .pair();
    // R tan 60° = 19.05: sawn to 20 it opens farther than asked, and no joint is tighter.
    assertEquals(millimetres(20), pair.notchDepth());
    assertEquals(122.378413, pair.opening().in(ShopUnits.DEGREE), 5e-7);
    assertEquals(millimetres(1), pair.knuckles().gap());
    assertEquals(millimetres(13), pair.slotsOf(Leaf.FIRST).get(0).start());
    assertEquals(millimetres(27), pair.slotsOf(Leaf.FIRST).get(0).end());
  }
}
