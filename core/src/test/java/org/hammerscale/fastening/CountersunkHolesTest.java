package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.junit.jupiter.api.Test;

class CountersunkHolesTest {
  private record Measured(
      Measure<Length> diameter,
      Measure<Length> headDiameter,
      Measure<Angle> headAngle,
      Measure<Length> clearanceHole)
      implements CountersunkHead {
    @Override
    public String toString() {
      return "measured screw";
    }
  }

  /** At 90° the cone is (10 − 5) / 2 = 2.5 mm deep, the head (10 − 4) / 2 = 3 mm. */
  private static final Measured SCREW =
      new Measured(millimetres(4), millimetres(10), degrees(90), millimetres(5));

  private static final Section BAR = Section.flat(millimetres(40), millimetres(6));
  private static final Section TIP = Section.flat(millimetres(20), millimetres(2));

  /** 100 mm plain, then 200 mm in which 6 mm of thickness become 2: 1 mm in 50. */
  private static final Piece LEAF =
      Piece.of(
          Bar.of(BAR, Material.MILD_STEEL),
          Plain.of(BAR, millimetres(100)),
          Taper.between(BAR, TIP, millimetres(200)));

  private static final CountersunkHoles HOLES = CountersunkHoles.of(SCREW, LEAF);

  @Test
  void eachHoleIsSunkInTheIronThatLiesThere() {
    assertEquals("3.5 mm", HOLES.at(millimetres(0)).land().toString());
    assertEquals("3.5 mm", HOLES.at(millimetres(100)).land().toString());
    // 100 mm into the taper: 6 − 2 = 4 mm thick.
    assertEquals("4 mm", HOLES.at(millimetres(200)).plate().toString());
    assertEquals("1.5 mm", HOLES.at(millimetres(200)).land().toString());
    assertEquals(0.25, HOLES.partLeft());
    assertTrue(HOLES.toString().startsWith("holes for a measured screw in a piece of"));
  }

  @Test
  void aQuarterLeftWantsAThirdMoreThanTheCone() {
    // 2.5 / 0.75 = 3.3333 mm: 2.6667 mm drawn off, 133.33 mm into the taper.
    Measure<Length> last = HOLES.nearestTo(millimetres(290)).orElseThrow();
    assertEquals(100 + 400 / 3d, last.getValue(), 1e-9);
    assertTrue(HOLES.fitsAt(millimetres(233.3)));
    assertFalse(HOLES.fitsAt(millimetres(233.4)));
    assertEquals(Optional.of(millimetres(50)), HOLES.nearestTo(millimetres(50)));
  }

  @Test
  void theHeadItselfMustNotBeDeeperThanTheIron() {
    // Nothing to be left: the cone would do with 2.5 mm, the head wants 3: 150 mm into the taper.
    Measure<Length> last = HOLES.leaving(0).nearestTo(millimetres(300)).orElseThrow();
    assertEquals(250, last.getValue(), 1e-9);
  }

  @Test
  void refusesAHeadThatLeavesTooLittleAndSaysWhereItFits() {
    assertEquals(
        "fromReference must lie where the iron holds a head 3 mm deep and 0.75 mm is left under its"
            + " cone, was 250 mm, where the iron is 3 mm thick and 0.5 mm is left; drill it at"
            + " 233.33 mm, or take a smaller screw",
        refused(() -> HOLES.at(millimetres(250))));
    assertTrue(
        refused(() -> HOLES.leaving(0.6).at(millimetres(50)))
            .endsWith("take a smaller screw, since no place of this leaf is thick enough"));
    assertEquals(Optional.empty(), HOLES.leaving(0.6).nearestTo(millimetres(50)));
  }

  @Test
  void findsAPlaceOnEitherSide() {
    // Thin in the middle: 100 mm up from 2 to 6 mm after 100 mm down.
    Piece waisted =
        Piece.of(
            Bar.of(BAR, Material.MILD_STEEL),
            Taper.between(BAR, TIP, millimetres(100)),
            Taper.between(TIP, BAR, millimetres(100)));
    CountersunkHoles holes = CountersunkHoles.of(SCREW, waisted);
    // 3.3333 mm lie 66.667 mm from either end.
    assertEquals(200 / 3d, holes.nearestTo(millimetres(90)).orElseThrow().getValue(), 1e-9);
    assertEquals(200 - 200 / 3d, holes.nearestTo(millimetres(110)).orElseThrow().getValue(), 1e-9);
    assertEquals(200 / 3d, holes.nearestTo(millimetres(100)).orElseThrow().getValue(), 1e-9);
  }

  @Test
  void speaksTheUnitWanted() {
    assertEquals(
        (100 + 400 / 3d) / 25.4, HOLES.nearestTo(inches(11)).orElseThrow().getValue(), 1e-10);
  }

  @Test
  void refusesWhatIsNoPlaceOrPart() {
    assertTrue(refused(() -> HOLES.at(millimetres(301))).contains("fromReference must lie on"));
    assertTrue(refused(() -> HOLES.fitsAt(millimetres(-1))).contains("fromReference"));
    assertTrue(refused(() -> HOLES.leaving(0.91)).contains("part left must lie between 0 and 0.9"));
    assertTrue(refused(() -> HOLES.leaving(Double.NaN)).contains("was NaN"));
  }

  private static String refused(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
