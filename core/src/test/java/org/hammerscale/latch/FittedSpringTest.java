package org.hammerscale.latch;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.megapascals;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class FittedSpringTest {
  private static final LatchSpring STRIP =
      LatchSpring.of(millimetres(150), millimetres(16), millimetres(2));
  private static final FittedSpring FITTED =
      FittedSpring.on(millimetres(30), STRIP).set(millimetres(4)).travelling(millimetres(10));

  /**
   * A strip gives 4 P L³/(E b t³): 4 × 150³/(206000 × 16 × 8) = 0.511984 mm for a newton, and its
   * root bears 6 × 150/(16 × 4) = 14.0625 MPa.
   */
  @Test
  void pressesAtRestAndAtTravel() {
    assertEquals(7.81274, FITTED.forceAtRest().in(ShopUnits.NEWTON), 1e-5);
    assertEquals(27.34459, FITTED.forceAtTravel().in(ShopUnits.NEWTON), 1e-5);
    assertEquals(27.34459 * 14.0625, FITTED.stressAtTravel().in(ShopUnits.MEGAPASCAL), 1e-3);
    assertEquals(27.34459 * 14.0625 / 400, FITTED.use(megapascals(400)), 1e-6);
    assertEquals(millimetres(14), FITTED.deflection());
    // (4/6) × 400 × 150²/(206000 × 2) = 14.5631 mm in all.
    assertEquals(10.5631, FITTED.mostTravel(megapascals(400)).in(ShopUnits.MILLIMETRE), 1e-4);
    assertEquals(
        1, FITTED.travelling(FITTED.mostTravel(megapascals(400))).use(megapascals(400)), 1e-12);
    assertEquals(newtons(0), FittedSpring.on(millimetres(30), STRIP).forceAtTravel());
  }

  @Test
  void isCutFromItsStripWithItsFoot() {
    Bar strip = Bar.of(Section.flat(millimetres(16), millimetres(2)), Material.MEDIUM_CARBON_STEEL);
    Piece piece = FITTED.piece(strip);
    assertEquals(millimetres(180), piece.layout().cutLength().likely());
    assertEquals(millimetres(30), piece.layout().marks().get(0).position().likely());
    Bar other = Bar.of(Section.flat(millimetres(20), millimetres(2)), Material.MILD_STEEL);
    assertTrue(
        refusal(() -> FITTED.piece(other))
            .startsWith("strip must be 16 mm × 2 mm as the spring's root is, was 20 mm"));
  }

  @Test
  void itsFootIsDrilledInEqualParts() {
    FittedSpring drilled = FITTED.drilled(2, millimetres(4.5));
    assertEquals(List.of(millimetres(7.5), millimetres(22.5)), drilled.holes());
    assertEquals(millimetres(4.5), drilled.hole());
    assertEquals(List.of(millimetres(15)), FITTED.drilled(1, millimetres(4)).holes());
    assertEquals(List.of(), FITTED.holes());
    assertEquals(millimetres(0), FITTED.hole());
    assertEquals(
        drilled.holes(), drilled.set(millimetres(1)).travelling(millimetres(2)).holes(), "kept");
    assertTrue(
        refusal(() -> FITTED.drilled(2, millimetres(15)))
            .startsWith("diameter must be less than 15 mm to leave metal round each hole"));
    assertTrue(
        refusal(() -> FITTED.drilled(1, millimetres(16))).startsWith("diameter must be less than"));
    assertTrue(refusal(() -> FITTED.drilled(0, millimetres(4))).startsWith("count must be from 1"));
  }

  @Test
  void tellsHowItFailsAndWhatIsNotReckoned() {
    assertEquals(3, FITTED.cautions().size());
    assertTrue(FITTED.cautions().get(2).text().contains("thousands of times are not counted"));
    assertTrue(FITTED.cautions().get(0).text().contains("eye protection"));
    assertTrue(FITTED.cautions().get(1).text().contains("1.6 times")); // 0.915/0.574 mm
    FittedSpring far = FITTED.travelling(millimetres(26.1));
    assertTrue(far.cautions().get(0).text().contains("more than a fifth of the length"));
    assertEquals(STRIP, FITTED.spring());
    assertEquals(millimetres(30), FITTED.foot());
    assertEquals(millimetres(4), FITTED.set());
    assertEquals(millimetres(10), FITTED.travel());
    assertEquals(
        "flat spring 150 mm long, 16 mm × 2 mm\n  on a foot of 30 mm, set 4 mm, travelling 10 mm",
        FITTED.toString());
  }

  @Test
  void refusesASetThatIsTooMuchForTheMetal() {
    // (4/6) × 100 × 150²/(206000 × 2) = 3.641 mm.
    assertTrue(
        refusal(() -> FITTED.mostTravel(megapascals(100)))
            .startsWith("set must be at most what the limit of stress allows in all of 3.641 mm"));
    assertTrue(refusal(() -> FITTED.use(megapascals(0))).startsWith("limit must be more than"));
    assertTrue(refusal(() -> FITTED.set(inches(-1))).startsWith("set must not be negative"));
    assertTrue(refusal(() -> FITTED.travelling(inches(-1))).startsWith("travel must not be"));
    assertTrue(refusal(() -> FittedSpring.on(inches(0), STRIP)).startsWith("foot must be more"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
