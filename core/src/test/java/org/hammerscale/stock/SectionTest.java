package org.hammerscale.stock;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class SectionTest {
  private static final Section FLAT = Section.flat(inches("1 1/2"), inches("1/4"));

  @Test
  void knowsItsSizes() {
    assertEquals(inches("1 1/2"), FLAT.width());
    assertEquals(inches("1/4"), FLAT.thickness());
    assertEquals(inches("3 1/2"), FLAT.perimeter());
    assertEquals(millimetres(12), Section.round(millimetres(12)).thickness());
    assertEquals(millimetres(48), Section.square(millimetres(12)).perimeter());
  }

  @Test
  void areaIsInTheWidthsUnit() {
    Section mixed = Section.flat(millimetres(50.8), inches("1/2"));
    assertEquals(645.16, mixed.area().in(ShopUnits.SQUARE_MILLIMETRE), 1e-10);
    assertEquals(ShopUnits.SQUARE_MILLIMETRE, mixed.area().getUnit());
    assertEquals("0.375 in²", FLAT.area().toString());
  }

  @Test
  void refusesSwappedSizes() {
    String message =
        assertThrows(IllegalArgumentException.class, () -> Section.flat(inches("1/4"), inches(2)))
            .getMessage();
    assertEquals(
        "width must be at least the thickness of 2 in, was 1/4 in; name the width first, or use"
            + " Section.onEdge for a bar that stands on edge",
        message);
    assertThrows(IllegalArgumentException.class, () -> Section.onEdge(inches(2), inches("1/4")));
    assertEquals(inches(2), Section.onEdge(inches("1/4"), inches(2)).thickness());
  }

  @Test
  void refusesSizesThatAreNone() {
    assertEquals(
        "diameter must be more than zero, was -3 mm; give the finished cold size",
        assertThrows(IllegalArgumentException.class, () -> Section.round(millimetres(-3)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> Section.square(millimetres(0)));
    assertThrows(NullPointerException.class, () -> Section.square(null));
  }

  @Test
  void halfWayIsTheMeanOfEachSize() {
    Section tip = Section.flat(inches("1/2"), inches("1/8"));
    assertEquals(Section.flat(inches(1), inches("3/16")), FLAT.halfwayTo(tip));
    assertEquals(
        Section.round(millimetres(9)),
        Section.round(millimetres(12)).halfwayTo(Section.round(millimetres(6))));
    String message =
        assertThrows(IllegalArgumentException.class, () -> FLAT.halfwayTo(Section.round(inches(1))))
            .getMessage();
    assertTrue(message.startsWith("section must be similar to 1 1/2 in × 1/4 in flat"), message);
  }

  @Test
  void meetsWhatHasItsSizes() {
    assertTrue(FLAT.meets(Section.flat(millimetres(38.1), millimetres(6.35))));
    assertTrue(Section.square(inches(1)).meets(Section.flat(inches(1), inches(1))));
    assertFalse(FLAT.meets(Section.flat(inches("1 1/4"), inches("1/4"))));
    assertFalse(Section.round(inches(1)).meets(Section.square(inches(1))));
  }

  @Test
  void equalsByShapeAndSizes() {
    assertEquals(FLAT, Section.flat(inches(1.5), inches(0.25)));
    assertEquals(FLAT.hashCode(), Section.flat(inches(1.5), inches(0.25)).hashCode());
    assertNotEquals(Section.square(inches(1)), Section.round(inches(1)));
    assertEquals("12 mm round", Section.round(millimetres(12)).toString());
    assertEquals("1/2 in square", Section.square(inches("1/2")).toString());
  }
}
