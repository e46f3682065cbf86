package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class IronHoleTest {
  private static final Section STRAP = Section.flat(millimetres(40), millimetres(5));
  private static final Section INCH_STRAP = Section.flat(inches("1 1/2"), inches("1/4"));

  private static final IronHole HOLE = IronHole.drilled(millimetres(7)).clearing(millimetres(6));

  @Test
  void theWayOfMakingDecidesWhatIsLeft() {
    IronHole punched = IronHole.punched(millimetres(8));
    IronHole drifted = IronHole.drifted(millimetres(8));
    assertEquals(millimetres(33), HOLE.netWidth(STRAP));
    assertEquals(millimetres(32), punched.netWidth(STRAP));
    assertEquals(millimetres(40), drifted.netWidth(STRAP));
    assertEquals(millimetres(48), drifted.widthOver(STRAP).likely());
    assertEquals(STRAP.width(), HOLE.widthOver(STRAP).likely());
    assertTrue(punched.widthOver(STRAP).high().isGreaterThan(STRAP.width()));
    assertEquals(0, drifted.metalLost(STRAP).high().getValue());
    assertEquals(
        Math.PI * 49 / 4 * 5, HOLE.metalLost(STRAP).likely().in(ShopUnits.CUBIC_MILLIMETRE), 1e-9);
    assertTrue(HOLE.metalLost(STRAP).isExact());
    assertEquals(0, punched.metalLost(STRAP).low().getValue());
    assertEquals(4 * Math.PI - 8, drifted.shortening(STRAP).getValue(), 1e-12);
    assertEquals(millimetres(0), HOLE.shortening(STRAP));
    assertEquals(millimetres(0), punched.shortening(STRAP));
    for (IronHole hole : List.of(HOLE, punched, drifted)) {
      Workings.check(hole.netWorking(STRAP), hole.netWidth(STRAP));
      assertTrue(hole.cautions(STRAP).isEmpty(), hole::toString);
    }
    assertEquals("drilled", HOLE.making().toString());
    // π/64 in² through 1/4 in, and the third of it that a punch is taken to lose.
    IronHole inch = IronHole.drilled(inches("1/4")).clearing(inches(0.242));
    assertEquals("0.01227 in³", inch.metalLost(INCH_STRAP).toString());
    assertEquals(
        "0.004091 in³ (0 in³ to 0.01227 in³)",
        IronHole.punched(inches("1/4")).metalLost(INCH_STRAP).toString());
  }

  @Test
  void cautionsTellWhatIsLeftTooThin() {
    assertEquals(1, IronHole.punched(millimetres(34)).cautions(STRAP).size());
    assertEquals(
        1, IronHole.drifted(millimetres(8)).offCentre(millimetres(-19)).cautions(STRAP).size());
  }

  @Test
  void aHoleKnowsItsPlace() {
    IronHole off = HOLE.offCentre(millimetres(-10)).at(millimetres(30));
    assertEquals(millimetres(10), off.edgeDistance(STRAP));
    assertEquals(off.edgeDistance(STRAP), HOLE.offCentre(millimetres(10)).edgeDistance(STRAP));
    assertEquals(millimetres(24), IronHole.drifted(millimetres(8)).edgeDistance(STRAP));
    assertEquals("drilled hole of 7 mm at 30 mm, -10 mm off the middle", off.toString());
    assertEquals("drilled hole of 7 mm", HOLE.toString());
    assertNotEquals(HOLE, off);
    assertEquals(HOLE, off.offCentre(millimetres(0)).at(millimetres(0)));
    assertEquals(HOLE.hashCode(), off.offCentre(millimetres(0)).at(millimetres(0)).hashCode());
  }

  @Test
  void theRulesShowTheirWorkings() {
    for (IronHoleRule rule :
        List.of(IronHoleRule.EN_1993_1_8, IronHoleRule.AISC_360, IronHoleRule.RIVET_PRACTICE)) {
      for (double d : new double[] {0.2, 0.5, 0.7, 0.75, 1.3, 1.25}) {
        IronHole hole = IronHole.drilled(inches(d));
        Workings.check(rule.endWorking(hole), rule.leastEnd(hole));
        Workings.check(rule.edgeWorking(hole), rule.leastEdge(hole));
        Workings.check(rule.spacingWorking(hole), rule.leastSpacing(hole));
        Workings.check(rule.acrossWorking(hole), rule.leastSpacingAcross(hole));
      }
      assertEquals(rule == IronHoleRule.AISC_360, !rule.cautions(HOLE).isEmpty());
    }
    assertTrue(IronHoleRule.AISC_360.cautions(IronHole.drilled(inches("3/4"))).isEmpty());
    for (IronHoleRule rule : List.of(IronHoleRule.EN_1993_1_8, IronHoleRule.AISC_360)) {
      for (double t : new double[] {3, 13, 30}) {
        Workings.check(rule.mostEdgeWorking(millimetres(t)), rule.mostEdge(millimetres(t)));
        Workings.check(rule.mostSpacingWorking(millimetres(t)), rule.mostSpacing(millimetres(t)));
      }
    }
    assertEquals("AISC 360", IronHoleRule.AISC_360.toString());
    // Half-way between the rows of 5/8 and 3/4 in.
    assertEquals(
        "15/16 in", IronHoleRule.AISC_360.leastEdge(IronHole.drilled(inches("11/16"))).toString());
    assertTrue(
        IronHoleRule.RIVET_PRACTICE
            .preferredSpacing(HOLE)
            .isEquivalentTo(IronHoleRule.RIVET_PRACTICE.leastSpacing(HOLE)));
  }

  @Test
  void americanRulesReckonWithTheFastener() {
    // 2 2/3 × 5 mm.
    IronHole hole = IronHole.drilled(millimetres(5.5)).clearing(millimetres(5));
    assertEquals("13.33 mm", IronHoleRule.AISC_360.leastSpacing(hole).toString());
    assertEquals(
        "1 in", IronHoleRule.AISC_360.leastEdge(IronHole.drilled(inches("3/4"))).toString());
  }

  @Test
  void refuseWhatLeavesNoIron() {
    refused("diameter must leave iron", () -> IronHole.drilled(millimetres(40)).netWidth(STRAP));
    refused("diameter must leave iron", () -> HOLE.offCentre(millimetres(17)).metalLost(STRAP));
    refused("strap must be a flat", () -> HOLE.netWidth(Section.round(millimetres(40))));
    refused("diameter must be more than zero", () -> IronHole.punched(millimetres(0)));
    refused(
        "rule must be EN_1993_1_8 for slotted holes, was AISC 360",
        () -> IronHoleRule.AISC_360.leastEdgeOfSlot(HOLE));
    refused(
        "rule must be EN_1993_1_8 for staggered rows",
        () -> IronHoleRule.RIVET_PRACTICE.leastSpacingOfStaggeredRows(HOLE));
    refused(
        "rule must be EN_1993_1_8 or AISC_360",
        () -> IronHoleRule.RIVET_PRACTICE.mostEdge(millimetres(5)));
    refused(
        "plate must be more than zero", () -> IronHoleRule.AISC_360.mostSpacing(millimetres(0)));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
