package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Pressure;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.Bearing;
import org.hammerscale.strength.NetSection;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class IronHoleTest {
  private static final Section STRAP = Section.flat(millimetres(40), millimetres(5));
  private static final Section INCH_STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final IronHole HOLE = IronHole.drilled(millimetres(7)).clearing(millimetres(6));
  private static final Measure<Pressure> FU = megapascals(360);

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
  void theWeakestLineIsFound() {
    IronHole near = HOLE.offCentre(millimetres(-10));
    IronHole far = HOLE.offCentre(millimetres(10)).at(millimetres(30));
    NetSection net = NetSection.of(STRAP, near, far);
    assertEquals(List.of(near), net.line());
    IronHole close = far.at(millimetres(10));
    NetSection zigzag = NetSection.of(STRAP, close, near);
    assertEquals(List.of(near, close), zigzag.line());
    // 40 − 14 + 10²/80 by hand.
    assertEquals(27.25, zigzag.netWidth().getValue(), 1e-12);
    assertEquals(23.25, zigzag.deducting(millimetres(2)).netWidth().getValue(), 1e-12);
    assertEquals(40, NetSection.of(STRAP).netWidth().getValue());
    IronHole drifted = IronHole.drifted(millimetres(7));
    assertEquals(40, NetSection.of(STRAP, drifted).netWidth().getValue());
    assertTrue(NetSection.of(STRAP, drifted).cautions().isEmpty());
    for (NetSection each :
        List.of(
            net,
            zigzag,
            zigzag.deducting(millimetres(2)),
            NetSection.of(STRAP),
            NetSection.along(STRAP, near, drifted, far))) {
      Workings.check(each.working(), each.netWidth());
      Workings.check(each.yieldWorking(FU), each.nominalYield(FU));
      Workings.check(each.ruptureWorking(FU), each.nominalRupture(FU));
      Workings.check(each.designWorking(FU), each.designRupture(FU));
    }
    assertTrue(net.cautions().get(0).text().contains("1/16 in more"));
    assertTrue(net.deducting(millimetres(2)).cautions().isEmpty());
    assertTrue(net.ruptureWorking(FU).toString().contains("no factor of safety"));
    assertEquals("40 mm × 5 mm flat with 1 hole in a line", net.toString());
    assertEquals("40 mm × 5 mm flat with 2 holes in a line", zigzag.toString());
  }

  @Test
  void bearingIsCappedAndSpeaksTheStrapsUnit() {
    Bearing bearing = Bearing.towardsEnd(STRAP, HOLE, millimetres(10));
    assertEquals("6.5 mm", bearing.clearDistance().toString());
    assertEquals("14040 N", bearing.nominalByAisc(FU).toString());
    Bearing next = Bearing.towardsHole(STRAP, HOLE, millimetres(14));
    assertEquals("7 mm", next.clearDistance().toString());
    // αb = 14/21 − 1/4 = 5/12, k1 = 1.4 × 15/7 − 1.7 = 1.3.
    assertEquals(
        1.3 * 5 / 12 * 360 * 6 * 5 / 1.25,
        next.besideHole(millimetres(15)).designByEurocode(FU).getValue(),
        1e-9);
    Bearing edge = Bearing.towardsEnd(STRAP, HOLE.offCentre(millimetres(12)), millimetres(30));
    // e2 = 8: k1 = 2.8 × 8/7 − 1.7 = 1.5.
    assertEquals(1.5 * 360 * 6 * 5 / 1.25, edge.designByEurocode(FU).getValue(), 1e-9);
    Countersink sink = MetricWoodScrew.din97(millimetres(6)).countersinkIn(millimetres(5));
    // The cone is (11 − 6.5)/2 = 2.25 deep, 1.125 of it not counted.
    assertEquals(14040 * 3.875 / 5, bearing.under(sink).nominalByAisc(FU).getValue(), 1e-9);
    for (Bearing each :
        List.of(
            bearing,
            next,
            edge,
            next.besideHole(millimetres(15)),
            bearing.under(sink),
            Bearing.towardsEnd(STRAP, HOLE, millimetres(80)))) {
      Workings.check(each.aiscWorking(FU), each.nominalByAisc(FU));
      Workings.check(each.eurocodeWorking(FU), each.designByEurocode(FU));
    }
    Bearing inch = Bearing.towardsEnd(INCH_STRAP, IronHole.drilled(inches("1/4")), inches("1/2"));
    assertEquals(ShopUnits.POUND_FORCE, inch.nominalByAisc(FU).getUnit());
    assertEquals(
        "bearing of a drilled hole of 1/4 in in 1 1/2 in × 1/4 in flat, 1/2 in to the end",
        inch.toString());
    assertTrue(next.toString().endsWith("to the next hole"));
  }

  @Test
  void bearingCautionsWhereAHoleIsTooNear() {
    Bearing near =
        Bearing.towardsHole(STRAP, HOLE.offCentre(millimetres(12)), millimetres(10))
            .besideHole(millimetres(10));
    assertEquals(3, near.cautions(IronHoleRule.EN_1993_1_8).size());
    assertEquals(
        "the hole's centre is 10 mm from the next hole, less than the 15.4 mm of EN 1993-1-8; set"
            + " it farther away, or take a smaller fastener",
        near.cautions(IronHoleRule.EN_1993_1_8).get(0).text());
    assertTrue(
        Bearing.towardsEnd(STRAP, HOLE, millimetres(8.4))
            .cautions(IronHoleRule.EN_1993_1_8)
            .isEmpty());
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
  void refuseWhatLeavesNoIron() {
    refused("diameter must leave iron", () -> IronHole.drilled(millimetres(40)).netWidth(STRAP));
    refused("diameter must leave iron", () -> HOLE.offCentre(millimetres(17)).metalLost(STRAP));
    refused("strap must be a flat", () -> HOLE.netWidth(Section.round(millimetres(40))));
    refused("diameter must be more than zero", () -> IronHole.punched(millimetres(0)));
    refused(
        "fastenerDiameter must be at most the 7 mm of the hole, was 8 mm",
        () -> HOLE.clearing(millimetres(8)));
    refused("holes must leave some", () -> NetSection.of(STRAP, wide(-9), wide(9)));
    refused("holes must leave some", () -> NetSection.of(STRAP, HOLE).deducting(millimetres(33)));
    refused("perHole must not be", () -> NetSection.of(STRAP, HOLE).deducting(millimetres(-1)));
    refused("holes of a line must lie", () -> NetSection.along(STRAP, HOLE, HOLE));
    refused(
        "endDistance must be more than 3.5 mm",
        () -> Bearing.towardsEnd(STRAP, HOLE, millimetres(3.5)));
    refused(
        "spacing must be more than 7 mm", () -> Bearing.towardsHole(STRAP, HOLE, millimetres(7)));
    Bearing bearing = Bearing.towardsEnd(STRAP, HOLE, millimetres(10));
    refused("spacing must be more than the 7 mm", () -> bearing.besideHole(millimetres(7)));
    refused("tensileStrength must be", () -> bearing.nominalByAisc(megapascals(0)));
    refused(
        "countersink must be that of a plate of 5 mm",
        () -> bearing.under(WoodScrew.number(8).countersinkIn(millimetres(4))));
    refused(
        "hole of the bearing must have iron beside it",
        () -> bearing.besideHole(millimetres(8)).designByEurocode(FU));
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

  private static IronHole wide(double offset) {
    return IronHole.drilled(millimetres(21)).offCentre(millimetres(offset));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
