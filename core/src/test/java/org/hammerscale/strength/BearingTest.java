package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Pressure;
import org.hammerscale.fastening.Countersink;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.fastening.IronHoleRule;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BearingTest {
  private static final Section STRAP = Section.flat(millimetres(40), millimetres(5));

  private static final Section INCH_STRAP = Section.flat(inches("1 1/2"), inches("1/4"));

  private static final IronHole HOLE = IronHole.drilled(millimetres(7)).clearing(millimetres(6));

  private static final Measure<Pressure> FU = megapascals(360);

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
  void refusesAHoleWithoutIronBesideIt() {
    refused(
        "fastenerDiameter must be at most the 7 mm of the hole, was 8 mm",
        () -> HOLE.clearing(millimetres(8)));
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
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
