package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
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

  /** A published piece: what it was drawn from, and what length it is said to have. */
  private record Published(String piece, Measure<Length> ideal, double finished) {}

  /** Ilgen, Forge Work, 1912: lengths as printed, ideal lengths by conservation of volume. */
  private static List<Published> published() {
    Section quarter = Section.round(inches("1/4"));
    Section half = Section.round(inches("1/2"));
    return List.of(
        new Published("gate-hook eye end, share as computed", inches(1), 0.909),
        new Published("staple point, share as computed", inches(1), 0.875),
        new Published("hasp, second stretch, share as computed", inches(1), 0.803),
        new Published(
            "S-hook point, sec. 70: 1/2 in of 1/4 round",
            Taper.using(inches("1/2"), quarter, quarter.point()).reach(),
            1.125),
        new Published(
            "hasp, sec. 73: 2 1/4 in of 1 × 3/16 to 5/8 × 3/16",
            DrawOut.edging(Section.flat(inches(1), inches("3/16")), inches("5/8"))
                .lengthFrom(inches("2 1/4")),
            3),
        new Published(
            "bolt, sec. 74: 2 1/2 in of 1/2 round upset to 3/4",
            inches(2.5 * half.area().ratio(Section.round(inches("3/4")).area())),
            1));
  }

  @Test
  void coversNineOfTenPublishedPieces() {
    long covered =
        published().stream()
            .filter(
                p -> HandAllowance.SMALL_WORK.lengthFrom(p.ideal()).covers(inches(p.finished())))
            .count();
    assertTrue(covered >= 0.9 * published().size(), covered + " of " + published().size());
  }

  /** Student's t for 4 degrees of freedom, one side 95 %: 2.132 in the usual tables. */
  @Test
  void isThePredictionIntervalForOneMorePiece() {
    double mean = (0.909 + 0.875 + 0.750 + 0.833 + 0.803) / 5;
    double squares = 0;
    for (double share : new double[] {0.909, 0.875, 0.750, 0.833, 0.803}) {
      squares += (share - mean) * (share - mean);
    }
    double reach = 2.132 * Math.sqrt(squares / 4 * 1.2);
    Estimate<Length> length = HandAllowance.SMALL_WORK.lengthFrom(inches(1));
    assertEquals(mean, length.likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(mean - reach, length.low().in(ShopUnits.INCH), 1e-4);
    assertEquals(mean + reach, length.high().in(ShopUnits.INCH), 1e-4);
  }

  @Test
  void aShoulderIsAnEstimateUnlessToldOtherwise() {
    Estimate<Length> stock = SHOULDER.stock(BAR);
    assertFalse(stock.isExact());
    assertTrue(stock.low().isGreaterThan(SHOULDER.by(HandAllowance.NONE).stock(BAR).likely()));
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
        "1 in set down from 1/2 in square to 3/8 in round\n  allowance for small hand work",
        SHOULDER.toString());
    Workings.check(SHOULDER.working(), SHOULDER.metalKept().likely());
    assertEquals(2, SHOULDER.working().sources().size());
  }

  /** What the stock gives under the allowance is the length that the stock was asked for. */
  @Test
  void stockAndLengthAreInverse() {
    Measure<Length> ideal = DrawOut.between(BAR, TENON).lengthFrom(SHOULDER.stock(BAR).likely());
    assertTrue(HandAllowance.SMALL_WORK.lengthFrom(ideal).likely().isEquivalentTo(inches(1)));
  }

  @Test
  void goesOnAnyFeature() {
    Taper taper = Taper.toPoint(BAR, inches(3));
    Feature byHand = HandAllowance.SMALL_WORK.on(taper);
    assertEquals(taper.metalKept(), byHand.metalKept());
    assertEquals(taper.reach(), byHand.reach());
    assertEquals(taper.start(), byHand.start());
    assertEquals(taper.end(), byHand.end());
    assertEquals("taper", byHand.name());
    assertTrue(byHand.cautions().isEmpty());
    assertTrue(byHand.metalLost().toString().startsWith("trim and hand "));
    assertEquals(1 / 0.834, byHand.stock(BAR).likely().in(ShopUnits.INCH), 1e-12);
    assertEquals(taper + ", allowance for small hand work", byHand.toString());
    Workings.check(byHand.working(), byHand.metalKept().likely());
    assertEquals(taper.stock(BAR), HandAllowance.NONE.on(taper).stock(BAR));
  }

  @Test
  void aShopMakesItsOwn() {
    HandAllowance own = HandAllowance.fromTrials(0.9, 0.95, 1, 0.98, 0.97);
    assertEquals(millimetres(100), own.lengthFrom(millimetres(100)).high());
    assertEquals("allowance of 5 trial pieces", own.toString());
    HandAllowance steady = HandAllowance.fromTrials(0.9, 0.9, 0.9);
    assertTrue(steady.lengthFrom(inches(1)).covers(inches(0.9)));
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
    assertEquals(inches(1), mixed.lengthFrom(inches(1)).high());
    String said =
        assertThrows(
                IllegalArgumentException.class,
                () -> HandAllowance.fromTrials(inches(10), inches(11), inches(9), inches(9)))
            .getMessage();
    assertTrue(said.startsWith("finished must be at most the ideal 10 in, was 11 in"), said);
  }

  @Test
  void refusesBadTrials() {
    assertEquals(
        "shares must be of at least three pieces, was 2; forge some more", refusal(0.9, 0.8));
    assertEquals(
        "shares must be from 0.01 to 1, was 1.2; divide the finished length by the ideal" + " one",
        refusal(0.9, 0.8, 1.2));
    assertTrue(refusal(0.9, 0, 0.8).startsWith("shares must be from 0.01 to 1"));
    assertEquals(
        "shares must scatter less, was 0.1, 0.9, 0.2; look for the cause, or forge more pieces",
        refusal(0.1, 0.9, 0.2));
    assertThrows(
        IllegalArgumentException.class, () -> HandAllowance.SMALL_WORK.lengthFrom(inches(-1)));
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
