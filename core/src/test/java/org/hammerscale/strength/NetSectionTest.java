package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class NetSectionTest {
  private static final Section STRAP = Section.flat(millimetres(40), millimetres(5));

  private static final IronHole HOLE = IronHole.drilled(millimetres(7)).clearing(millimetres(6));

  private static final Measure<Pressure> FU = megapascals(360);

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
  void refusesHolesThatLeaveNoStrap() {
    refused("holes must leave some", () -> NetSection.of(STRAP, wide(-9), wide(9)));
    refused("holes must leave some", () -> NetSection.of(STRAP, HOLE).deducting(millimetres(33)));
    refused("perHole must not be", () -> NetSection.of(STRAP, HOLE).deducting(millimetres(-1)));
    refused("holes of a line must lie", () -> NetSection.along(STRAP, HOLE, HOLE));
  }

  /** One place told in two units differs in its last digit, and does not lie beside itself. */
  @Test
  void aHoleAtTheSamePlaceIsBehind() {
    for (double away : new double[] {1 / 25.4, 2.3 / 25.4, Double.MIN_NORMAL, 1e-12}) {
      IronHole there = HOLE.offCentre(inches(away));
      IronHole again = HOLE.offCentre(millimetres(away > 1e-9 ? 25.4 * away + 1e-14 : 0));
      refused(
          "holes of a line must lie",
          () -> NetSection.along(STRAP, again.at(millimetres(30)), there));
      assertEquals(
          33, NetSection.of(STRAP, again.at(millimetres(30)), there).netWidth().getValue(), 1e-12);
    }
  }

  private static IronHole wide(double offset) {
    return IronHole.drilled(millimetres(21)).offCentre(millimetres(offset));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
