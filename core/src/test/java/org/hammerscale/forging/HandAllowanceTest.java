package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class HandAllowanceTest {
  private static final Section BAR = Section.square(inches("1/2"));
  private static final Section TENON = Section.round(inches("3/8"));
  private static final Shoulder SHOULDER = Shoulder.between(BAR, TENON, inches(1));

  /**
   * Of logarithms, for three pieces that took 1, 1.1 and 1.21 times their ideal: their mean is ln
   * 1.1, their standard deviation too; Student's t for 2 degrees of freedom, one side 95 %, is
   * 2.920 in the usual tables.
   */
  @Test
  void isThePredictionIntervalForOneMorePiece() {
    HandAllowance hand = HandAllowance.fromTrials(1, 1 / 1.1, 1 / 1.21);
    Estimate<Length> stock = hand.on(Plain.of(BAR, inches(1))).stock(BAR);
    double reach = 2.920 * Math.sqrt(4 / 3d);
    assertEquals(1.1, stock.likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(Math.pow(1.1, 1 - reach), stock.low().in(ShopUnits.INCH), 1e-4);
    assertEquals(Math.pow(1.1, 1 + reach), stock.high().in(ShopUnits.INCH), 1e-4);
    assertEquals(1 / 1.1, hand.lengthFrom(inches(1)).likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(
        Math.pow(1.1, reach - 1), hand.lengthFrom(inches(1)).high().in(ShopUnits.INCH), 1e-4);
  }

  /** What a point alone took out of a blank lies below its volume or above it. */
  @Test
  void aPieceMayComeOutOfLessBarThanItsVolume() {
    Feature point = HandAllowance.DRAWN.on(Taper.toPoint(BAR, inches(3)));
    assertTrue(point.metalLost().total().low().getValue() < 0);
    assertEquals(0.889, point.stock(BAR).low().in(ShopUnits.INCH), 1e-12);
  }

  @Test
  void aShoulderIsAnEstimateUnlessToldOtherwise() {
    Estimate<Length> stock = SHOULDER.stock(BAR);
    assertFalse(stock.isExact());
    assertTrue(stock.likely().isGreaterThan(SHOULDER.by(HandAllowance.NONE).stock(BAR).likely()));
    assertTrue(SHOULDER.by(HandAllowance.NONE).metalLost().isNone());
    assertEquals(
        Math.PI / 4 * 0.375 * 0.375 / 0.25,
        SHOULDER.by(HandAllowance.NONE).stock(BAR).likely().in(ShopUnits.INCH),
        1e-15);
    assertEquals(BAR, SHOULDER.start());
    assertEquals(TENON, SHOULDER.end());
    assertEquals("shoulder", SHOULDER.name());
    assertEquals(inches(1), SHOULDER.reach());
    assertTrue(SHOULDER.cautions().isEmpty());
    assertEquals(
        "1 in set down from 1/2 in square to 3/8 in round\n  allowance for set-down work",
        SHOULDER.toString());
    Workings.check(SHOULDER.working(), SHOULDER.metalKept().likely());
    assertEquals(2, SHOULDER.working().sources().size());
  }

  /** What the stock gives under the allowance is the length that the stock was asked for. */
  @Test
  void stockAndLengthAreInverse() {
    Measure<Length> ideal = DrawOut.between(BAR, TENON).lengthFrom(SHOULDER.stock(BAR).likely());
    assertTrue(HandAllowance.SET_DOWN.lengthFrom(ideal).likely().isEquivalentTo(inches(1)));
  }

  @Test
  void goesOnAnyFeature() {
    Taper taper = Taper.toPoint(BAR, inches(3));
    Feature byHand = HandAllowance.SET_DOWN.on(taper);
    assertEquals(taper.metalKept(), byHand.metalKept());
    assertEquals(taper.reach(), byHand.reach());
    assertEquals(taper.start(), byHand.start());
    assertEquals(taper.end(), byHand.end());
    assertEquals("taper", byHand.name());
    assertTrue(byHand.cautions().isEmpty());
    assertTrue(byHand.metalLost().toString().startsWith("trim and hand "));
    assertEquals(1.215, byHand.stock(BAR).likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(taper + ", allowance for set-down work", byHand.toString());
    Workings.check(byHand.working(), byHand.metalKept().likely());
    assertEquals(taper.stock(BAR), HandAllowance.NONE.on(taper).stock(BAR));
  }

  @Test
  void aShopMakesItsOwn() {
    HandAllowance own = HandAllowance.fromTrials(0.9, 0.95, 1, 0.98, 0.97);
    assertTrue(own.lengthFrom(millimetres(100)).high().isGreaterThan(millimetres(100)));
    assertEquals("allowance of 5 trial pieces", own.toString());
    HandAllowance steady = HandAllowance.fromTrials(0.9, 0.9, 0.9);
    assertTrue(steady.lengthFrom(inches(1)).high().isEquivalentTo(inches(0.9)));
  }

  /** Three points of 10 in by volume that came out at 9, 9 1/2 and 8 1/2 in. */
  @Test
  void trialsMayBeLengths() {
    HandAllowance shares = HandAllowance.fromTrials(0.9, 0.95, 0.85);
    HandAllowance lengths =
        HandAllowance.fromTrials(inches(10), inches(9), inches("9 1/2"), inches("8 1/2"));
    assertEquals(shares.lengthFrom(inches(1)), lengths.lengthFrom(inches(1)));
    HandAllowance mixed =
        HandAllowance.fromTrials(inches(10), millimetres(254), inches(9), inches(10));
    assertTrue(mixed.lengthFrom(inches(1)).covers(inches(1)));
    String said =
        assertThrows(
                IllegalArgumentException.class,
                () -> HandAllowance.fromTrials(inches(10), inches(21), inches(9), inches(9)))
            .getMessage();
    assertTrue(said.startsWith("finished must be at most twice the ideal 10 in, was 21 in"), said);
  }

  @Test
  void refusesBadTrials() {
    assertEquals(
        "shares must be of at least three pieces, was 2; forge some more", refusal(0.9, 0.8));
    assertEquals(
        "shares must be from 0.01 to 2, was 2.1; divide the finished length by the ideal one",
        refusal(0.9, 0.8, 2.1));
    assertEquals(
        "shares must have a middle of at most 1, was 1.2, 1.1, 1.0; measure the sections that"
            + " geometry had",
        refusal(1.2, 1.1, 1));
    assertTrue(refusal(0.9, 0, 0.8).startsWith("shares must be from 0.01 to 2"));
    assertEquals(
        "shares must scatter less, was 0.1, 0.9, 0.2; look for the cause, or forge more pieces",
        refusal(0.1, 0.9, 0.2));
    assertThrows(
        IllegalArgumentException.class, () -> HandAllowance.SET_DOWN.lengthFrom(inches(-1)));
  }

  private static String refusal(double... shares) {
    return assertThrows(IllegalArgumentException.class, () -> HandAllowance.fromTrials(shares))
        .getMessage();
  }

  @Test
  void aShoulderIsNoThickerThanItsBar() {
    assertThrows(IllegalArgumentException.class, () -> Shoulder.between(TENON, BAR, inches(1)));
    assertThrows(IllegalArgumentException.class, () -> Shoulder.between(BAR, TENON, inches(0)));
    assertThrows(NullPointerException.class, () -> SHOULDER.by(null));
  }
}
