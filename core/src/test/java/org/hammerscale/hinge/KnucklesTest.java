package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.units.Graduation;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class KnucklesTest {
  private static final Knuckles THREE = Knuckles.across(inches(2)).withGap(inches("1/16"));

  @Test
  void divideTheWidth() {
    assertEquals(inches(2), THREE.width());
    assertEquals(inches("1/16"), THREE.gap());
    assertEquals(3, THREE.count());
    // (2 − 2/16) / 3
    assertEquals(inches("5/8"), THREE.length(1));
    assertEquals(inches("5/8"), THREE.length(3));
    Knuckle middle = THREE.all().get(1);
    assertEquals(2, middle.number());
    assertEquals(Leaf.SECOND, middle.leaf());
    assertEquals(inches("11/16"), middle.start());
    assertEquals(inches("1 5/16"), middle.end());
    assertEquals(inches("5/8"), middle.length());
    assertEquals("knuckle 2, second leaf: 5/8 in at 11/16 in", middle.toString());
    assertEquals("3 knuckles across 2 in, gaps of 1/16 in", THREE.toString());
    assertEquals(2, THREE.knucklesOf(Leaf.FIRST).size());
    assertEquals(1, THREE.knucklesOf(Leaf.SECOND).size());
    assertEquals(Leaf.FIRST, Leaf.SECOND.other());
  }

  @Test
  void canBearEquallyOrByRatios() {
    Knuckles equal = THREE.bearingEqually();
    assertEquals(inches("15/32"), equal.length(1));
    assertEquals(inches("15/16"), equal.length(2));
    assertEquals(equal.bearingLength(Leaf.FIRST), equal.bearingLength(Leaf.SECOND));
    assertEquals(inches("15/16"), equal.bearingLength(Leaf.FIRST));
    assertEquals(inches("1 1/4"), THREE.bearingLength(Leaf.FIRST));
    Knuckles ratios = THREE.inRatios(1, 2, 1);
    assertEquals(equal.length(2), ratios.length(2));
    Knuckles four = THREE.inRatios(1, 2, 3, 4);
    assertEquals(4, four.count());
    // (2 − 3/16) × 3/10
    assertEquals(1.8125 * 0.3, four.length(3).getValue(), 1e-15);
  }

  @Test
  void cutSlotsForTheOtherLeaf() {
    Knuckles five = Knuckles.across(inches("3 1/4")).into(5).withGap(inches("1/16"));
    // (3 1/4 − 4/16) / 5 = 0.6: knuckles 0.6, slots 0.725, end notches 0.6625.
    List<KnuckleSlot> first = five.slotsOf(Leaf.FIRST);
    List<KnuckleSlot> second = five.slotsOf(Leaf.SECOND);
    assertEquals(2, first.size());
    assertEquals(3, second.size());
    assertFalse(first.get(0).isEndNotch());
    assertEquals(0.6, first.get(0).start().getValue(), 1e-15);
    assertEquals(0.725, first.get(0).width().getValue(), 1e-15);
    assertEquals(1.325, first.get(0).end().getValue(), 1e-15);
    assertEquals(Leaf.FIRST, first.get(0).leaf());
    assertTrue(second.get(0).isEndNotch());
    assertEquals(inches(0), second.get(0).start());
    assertEquals(0.6625, second.get(0).width().getValue(), 1e-15);
    assertFalse(second.get(1).isEndNotch());
    assertTrue(second.get(2).isEndNotch());
    assertEquals(3.25, second.get(2).end().getValue(), 1e-14);
    assertEquals(0.6, first.get(0).tongue(inches("1/16")).getValue(), 1e-15);
    assertEquals(0.6, second.get(0).tongue(inches("1/16")).getValue(), 1e-15);
    assertEquals("end notch of the second leaf: 0.6625 in at 0 in", second.get(0).toString());
    assertEquals("slot of the first leaf: 0.725 in at 0.6 in", first.get(0).toString());
  }

  @Test
  void twoAreStaggered() {
    Knuckles two = Knuckles.across(inches(2)).into(2);
    assertEquals(
        "end notch of the first leaf: 1 in at 1 in", two.slotsOf(Leaf.FIRST).get(0).toString());
    assertEquals(
        "end notch of the second leaf: 1 in at 0 in", two.slotsOf(Leaf.SECOND).get(0).toString());
    assertTrue(two.interleavesWith(two));
    assertEquals(two.length(1), two.bearingEqually().length(2));
  }

  @Test
  void dropByTheGapOfOneJoint() {
    assertEquals(inches("1/16"), THREE.drop());
    assertEquals(inches("1/16"), THREE.into(5).drop());
  }

  @Test
  void tellWhetherTwoLeavesInterleave() {
    assertTrue(THREE.interleavesWith(THREE));
    assertEquals(0.0625, THREE.tightestJointWith(THREE).getValue(), 1e-15);
    // The middle knuckle of the other begins at 17/32 in, where this one's first ends at 5/8 in.
    assertFalse(THREE.interleavesWith(THREE.bearingEqually()));
    assertEquals(-3 / 32d, THREE.tightestJointWith(THREE.bearingEqually()).getValue(), 1e-15);
    // The other way round there is more room than needed.
    assertTrue(THREE.bearingEqually().interleavesWith(THREE));
    assertEquals(7 / 32d, THREE.bearingEqually().tightestJointWith(THREE).getValue(), 1e-15);
    assertFalse(THREE.interleavesWith(THREE.into(5)));
    refused(
        "count of knuckles must be the same for both leaves, was 3 and 5; divide both alike",
        () -> THREE.tightestJointWith(THREE.into(5)));
  }

  @Test
  void showTheirWorkings() {
    Knuckles mixed = Knuckles.across(millimetres(75)).into(5).withGap(inches("1/32"));
    for (Knuckles knuckles : List.of(THREE, mixed, mixed.bearingEqually(), THREE.into(2))) {
      for (Knuckle knuckle : knuckles.all()) {
        Workings.check(knuckle.working(), knuckle.length());
      }
      for (Leaf leaf : Leaf.values()) {
        Workings.check(knuckles.bearingWorking(leaf), knuckles.bearingLength(leaf));
        for (KnuckleSlot slot : knuckles.slotsOf(leaf)) {
          Workings.check(slot.working(), slot.width());
          Workings.check(slot.tongueWorking(millimetres(1.2)), slot.tongue(millimetres(1.2)));
        }
      }
    }
  }

  @Test
  void refuseWhatCannotBeDivided() {
    refused("width must be more than zero, was 0 in", () -> Knuckles.across(inches(0)));
    refused(
        "count of knuckles must be from 2 to 1000, was 1; give each leaf one", () -> THREE.into(1));
    refused(
        "gap must be less than 1/2 in for 5 knuckles across 2 in, was 1/2 in; close the gaps, or"
            + " make fewer knuckles",
        () -> THREE.into(5).withGap(inches("1/2")));
    refused("gap must be less than 1/16 in for 33 knuckles", () -> THREE.into(33));
    refused("gap must not be negative", () -> THREE.withGap(inches(-1)));
    refused("part must be more than 0", () -> THREE.inRatios(1, 0, 1));
    refused("count of knuckles must be from 2 to 1000, was 1", () -> THREE.inRatios(1));
    refused("number of the knuckle must be from 1 to 3, was 0", () -> THREE.length(0));
    refused("number of the knuckle must be from 1 to 3, was 4", () -> THREE.lengthWorking(4));
    KnuckleSlot slot = THREE.slotsOf(Leaf.FIRST).get(0);
    refused(
        "kerf must leave a tongue in the slot of 3/4 in, was 3/8 in, twice; take a finer saw, or"
            + " wider knuckles",
        () -> slot.tongue(inches("3/8")));
    KnuckleSlot notch = THREE.slotsOf(Leaf.SECOND).get(0);
    refused(
        "kerf must leave a tongue in the slot of 11/16 in, was 11/16 in; take",
        () -> notch.tongueWorking(inches("11/16")));
  }

  private static void refused(String message, Executable call) {
    String text = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(text.startsWith(message), text);
  }

  /** By hand: joints of one mark, 7, 8 and 7 sixteenths of knuckle, 24 in all. */
  @Test
  void goToTheMarksOfARuleTogether() {
    Knuckles asked = Knuckles.across(inches("1 1/2")).withGap(inches("1/32"));
    Knuckles marked = asked.on(Graduation.SIXTEENTH);
    assertEquals(inches("1/16"), marked.gap());
    assertEquals(inches("1/32"), marked.playOver(asked));
    assertEquals(inches("7/16"), marked.length(1));
    assertEquals(inches("1/2"), marked.length(2));
    assertEquals(inches("7/16"), marked.length(3));
    KnuckleSlot slot = marked.slotsOf(Leaf.FIRST).get(0);
    assertEquals(inches("7/16"), slot.start());
    assertEquals(inches("1 1/16"), slot.end());
    assertEquals(inches("1/2"), marked.slotsOf(Leaf.SECOND).get(0).end());
    assertEquals(inches(1), marked.slotsOf(Leaf.SECOND).get(1).start());
    // On a finer rule nothing is lost.
    assertEquals(inches(0), asked.on(Graduation.THIRTY_SECOND).playOver(asked));
  }

  @Test
  void refuseARuleThatLeavesAKnuckleNoMark() {
    Knuckles nine = Knuckles.across(inches(1)).into(9).withGap(inches("1/64"));
    refused(
        "rule must be fine enough for 9 knuckles across 1 in with gaps of 1/64 in, was 1/8 in"
            + " steps; take 1/32 in steps, the coarsest that holds them",
        () -> nine.on(Graduation.EIGHTH));
    refused(
        "rule must be fine enough for 9 knuckles across 5 mm with gaps of 0.6 mm, was 1 mm steps;"
            + " make fewer knuckles, or close the gaps",
        () ->
            Knuckles.across(millimetres(5))
                .into(9)
                .withGap(millimetres(0.6))
                .on(Graduation.MILLIMETRE));
  }
}
