package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class BoreTest {
  private static final Bore BORE =
      Bore.forPin(inches("3/8")).clearing(inches("1/64")).coated(inches(0.002));

  @Test
  void addsClearanceAndFourCoats() {
    // 0.375 + 0.015625 + 0.008 by hand.
    assertEquals(0.398625, BORE.diameter().getValue(), 1e-15);
    assertEquals(inches("3/8"), BORE.pin());
    assertEquals(inches("1/64"), BORE.clearance());
    assertEquals(inches(0.002), BORE.coat());
    assertEquals(inches("3/8"), Bore.forPin(inches("3/8")).diameter());
    assertEquals("bore of 0.3986 in for a pin of 3/8 in", BORE.toString());
  }

  @Test
  void speaksThePinsUnit() {
    Bore mixed = Bore.forPin(inches("1/2")).clearing(millimetres(0.254));
    assertEquals(0.51, mixed.diameter().getValue(), 1e-15);
    Workings.check(mixed.working(), mixed.diameter());
    Workings.check(BORE.working(), BORE.diameter());
  }

  @Test
  void isTheBoreOfABarrel() {
    Section strap = Section.flat(inches(1), inches("3/16"));
    assertEquals(BORE.diameter(), Barrel.around(BORE, strap).insideDiameter());
  }

  @Test
  void refusesWhatIsNoPinOrCoat() {
    assertEquals(
        "pin must be more than zero, was 0 in; give the finished cold size",
        assertThrows(IllegalArgumentException.class, () -> Bore.forPin(inches(0))).getMessage());
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> BORE.clearing(inches(-1)))
            .getMessage()
            .startsWith("clearance must not be negative"));
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> BORE.coated(inches(-1)))
            .getMessage()
            .startsWith("coat must not be negative"));
  }
}
