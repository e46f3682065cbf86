package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ScrewTest {
  @Test
  void theGaugeRulesAgreeOnlyAtEight() {
    assertEquals(WoodScrew.number(8).diameter(), OldBritishWoodScrew.number(8).diameter());
    for (int n = 0; n <= 24; n++) {
      double american = WoodScrew.number(n).diameter().in(ShopUnits.INCH);
      double british = OldBritishWoodScrew.number(n).diameter().in(ShopUnits.INCH);
      assertEquals(
          Integer.signum(n - 8), Long.signum(Math.round((british - american) * 1e6)), "" + n);
    }
  }

  @Test
  void aHoleInTheIronPassesTheShank() {
    for (int n = 0; n <= 24; n++) {
      WoodScrew screw = WoodScrew.number(n);
      assertTrue(screw.clearanceHole().isGreaterThanOrEqualTo(screw.diameter()), screw::toString);
      OldBritishWoodScrew old = OldBritishWoodScrew.number(n);
      assertTrue(old.clearanceHole().isLessThan(old.headDiameter()), old::toString);
      assertTrue(old.clearanceHole().isGreaterThanOrEqualTo(old.diameter()), old::toString);
      assertTrue(old.countersinkIn(inches("1/4")).fits(), old::toString);
      Workings.check(screw.working(), screw.diameter());
      Workings.check(screw.holeWorking(), screw.clearanceHole());
      Workings.check(old.working(), old.diameter());
      Workings.check(old.holeWorking(), old.clearanceHole());
    }
    MetricWoodScrew metric = MetricWoodScrew.din97(millimetres(4.5));
    Workings.check(metric.holeWorking(), metric.clearanceHole());
  }

  /** (n + 3)/64 in is 3/64 in for number 0, whose shank has 0.052 in. */
  @Test
  void theOldRuleForTheHoleStartsAtNumberFour() {
    for (int n = 0; n <= 32; n++) {
      assertEquals(
          inches((n + (n < 4 ? 4 : 3)) / 64d), OldBritishWoodScrew.number(n).clearanceHole());
    }
  }

  @Test
  void theRootComesFromTheTableOrTheRule() {
    assertEquals("0.131 in", WoodScrew.number(8).rootDiameter().toString());
    assertEquals(Source.Kind.FROM_MEMORY, WoodScrew.number(8).rootSource().kind());
    assertEquals(WoodScrew.number(5).rootByTwoThirds(), WoodScrew.number(5).rootDiameter());
    assertEquals(WoodScrew.number(11).rootByTwoThirds(), WoodScrew.number(11).rootDiameter());
    assertEquals(Source.Kind.READ, WoodScrew.number(5).rootSource().kind());
    assertTrue(MetricWoodScrew.din97(millimetres(6)).rootDiameter().isEquivalentTo(millimetres(4)));
    assertTrue(OldBritishWoodScrew.number(8).rootDiameter().isLessThan(inches(0.11)));
  }

  @Test
  void printTheirSizes() {
    WoodScrew ten = WoodScrew.number(10);
    assertEquals("0.19 in", ten.diameter().toString());
    assertEquals("0.385 in", ten.headDiameter().toString());
    assertEquals("0.152 in", ten.rootDiameter().toString());
    assertEquals("0.265 in", LagScrew.of(inches("3/8")).rootDiameter().toString());
    assertEquals("9.2 mm", MetricWoodScrew.din97(millimetres(5)).headDiameter().toString());
    assertEquals("0.328 in", OldBritishWoodScrew.number(8).headDiameter().toString());
  }

  @Test
  void knowWhatTheyAre() {
    assertEquals(WoodFastener.Kind.WOOD_SCREW, WoodScrew.number(8).kind());
    assertEquals(WoodFastener.Kind.WOOD_SCREW, OldBritishWoodScrew.number(8).kind());
    assertEquals(WoodFastener.Kind.WOOD_SCREW, MetricWoodScrew.din97(inches(5 / 25.4)).kind());
    assertEquals(WoodFastener.Kind.LAG_SCREW, LagScrew.of(millimetres(12.7)).kind());
    assertEquals("no. 8 wood screw, 0.164 in", WoodScrew.number(8).toString());
    assertEquals(
        "old British no. 8 wood screw, 0.164 in", OldBritishWoodScrew.number(8).toString());
    assertEquals("5 mm wood screw, DIN 97", MetricWoodScrew.din97(millimetres(5)).toString());
    assertEquals("1/2 in lag screw", LagScrew.of(inches("1/2")).toString());
    assertEquals(WoodScrew.number(8), WoodScrew.number(8));
    assertEquals(WoodScrew.number(8).hashCode(), WoodScrew.number(8).hashCode());
    assertNotEquals(WoodScrew.number(8), OldBritishWoodScrew.number(8));
    assertEquals(OldBritishWoodScrew.number(8), OldBritishWoodScrew.withHead(inches(0.34)));
    assertEquals(
        OldBritishWoodScrew.number(8).hashCode(), OldBritishWoodScrew.number(8).hashCode());
    assertEquals(MetricWoodScrew.din97(millimetres(5)), MetricWoodScrew.din97(inches(5 / 25.4)));
    assertEquals(
        MetricWoodScrew.din97(millimetres(5)).hashCode(),
        MetricWoodScrew.din97(inches(5 / 25.4)).hashCode());
    assertEquals(LagScrew.of(inches("1/2")), LagScrew.of(millimetres(12.7)));
    assertEquals(LagScrew.of(inches("1/2")).hashCode(), LagScrew.of(millimetres(12.7)).hashCode());
    assertEquals(17, WoodScrew.standardNumbers().size());
    assertEquals(8, WoodScrew.number(8).number());
    assertEquals(degrees(82), WoodScrew.number(8).headAngle());
    assertEquals(degrees(90), OldBritishWoodScrew.number(8).headAngle());
  }

  @Test
  void aLagScrewHoldsByItsThreadWithoutTheTip() {
    LagScrew lag = LagScrew.of(inches("1/2"));
    assertEquals("2 1/2 in", lag.threadLength(inches(4)).toString());
    assertEquals("2 3/16 in", lag.holdingThread(inches(4)).toString());
    assertEquals(inches("3/4"), lag.threadLength(inches("3/4")), "a short one is all thread");
    for (double length : new double[] {0.5, 0.75, 1, 4, 11, 12, 16}) {
      Workings.check(lag.threadWorking(inches(length)), lag.holdingThread(inches(length)));
      assertTrue(
          lag.holdingThread(millimetres(25.4 * length))
              .isEquivalentTo(lag.holdingThread(inches(length))));
    }
    assertEquals("9/16 in", lag.clearanceHole().toString());
  }

  @Test
  void theThreadIsAShareOfTheLength() {
    assertEquals(inches(1), WoodScrew.number(8).threadLength(inches("1 1/2")));
    assertEquals(
        millimetres(30), MetricWoodScrew.din97(millimetres(5)).threadLength(millimetres(50)));
  }

  @Test
  void refuseWhatIsNotMade() {
    refused("number must be from 0 to 24, was 25; take a lag screw", () -> WoodScrew.number(25));
    refused("number must be from 0 to 24, was -1", () -> WoodScrew.number(-1));
    refused("number must be from 0 to 32, was 33", () -> OldBritishWoodScrew.number(33));
    refused("number must be from 0 to 32, was -1", () -> OldBritishWoodScrew.number(-1));
    refused(
        "number must be one of 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 24 for a"
            + " standard head and thread, was 11",
        () -> WoodScrew.number(11).headDiameter());
    refused(
        "headDiameter must be from 3/32 in to 1 3/32 in, was 2 in",
        () -> OldBritishWoodScrew.withHead(inches(2)));
    refused(
        "headDiameter must be from 3/32 in", () -> OldBritishWoodScrew.withHead(inches("1/16")));
    refused("diameter must be one of DIN 97", () -> MetricWoodScrew.din97(millimetres(4.2)));
    refused("diameter must be 1/4, 5/16", () -> LagScrew.of(millimetres(12)));
    refused(
        "length must be more than the tip of 5/16 in, was 1/4 in",
        () -> LagScrew.of(inches("1/2")).threadLength(inches("1/4")));
    refused("length must be more than zero", () -> WoodScrew.number(8).threadLength(inches(0)));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
    assertFalse(said.contains("["), said);
  }
}
