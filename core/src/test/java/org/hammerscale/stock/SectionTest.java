package org.hammerscale.stock;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class SectionTest {
  private static final Section FLAT = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Section TUBE = Section.roundTube(millimetres(25), millimetres(2));

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

  @Test
  void aHexagonLiesOnAFlat() {
    Section hexagon = Section.hexagon(millimetres(30));
    assertEquals(millimetres(30), hexagon.thickness());
    assertEquals(34.64101615137755, hexagon.width().in(ShopUnits.MILLIMETRE), 1e-13);
    assertEquals(779.4228634059948, hexagon.area().in(ShopUnits.SQUARE_MILLIMETRE), 1e-11);
    assertEquals(6 * 17.320508075688775, hexagon.perimeter().in(ShopUnits.MILLIMETRE), 1e-12);
    assertEquals("30 mm hexagon", hexagon.toString());
  }

  @Test
  void anOctagonIsAsWideAsThick() {
    Section octagon = Section.octagon(inches("3/4"));
    assertEquals(inches("3/4"), octagon.thickness());
    assertEquals(inches("3/4"), octagon.width());
    double side = 0.75 * 0.41421356237309503;
    assertEquals(8 * side, octagon.perimeter().in(ShopUnits.INCH), 1e-14);
    assertEquals(
        0.75 * 0.75 - 4 * (side * side / 4), octagon.area().in(ShopUnits.SQUARE_INCH), 1e-14);
    assertEquals("3/4 in octagon", octagon.toString());
  }

  @Test
  void aHalfRoundIsHalfOfARound() {
    Section half = Section.halfRound(millimetres(20));
    Section whole = Section.round(millimetres(20));
    assertEquals(millimetres(20), half.width());
    assertEquals(millimetres(10), half.thickness());
    assertTrue(half.area().multiply(2).isEquivalentTo(whole.area()));
    assertTrue(half.perimeter().isEquivalentTo(whole.perimeter().divide(2).add(millimetres(20))));
    assertEquals("20 mm half round", half.toString());
  }

  @Test
  void theCentreOfAHalfRoundLiesNearerItsFlat() {
    assertEquals(inches("1/8"), FLAT.toCentre());
    assertEquals(millimetres(6), Section.round(millimetres(12)).toCentre());
    assertEquals(millimetres(15), Section.hexagon(millimetres(30)).toCentre());
    assertEquals(millimetres(12.5), TUBE.toCentre());
    assertEquals(
        4.244131815783876,
        Section.halfRound(millimetres(20)).toCentre().in(ShopUnits.MILLIMETRE),
        1e-14);
  }

  @Test
  void aTubeHasAWall() {
    assertEquals(millimetres(25), TUBE.width());
    assertEquals(millimetres(25), TUBE.thickness());
    assertEquals(millimetres(2), TUBE.wall());
    assertTrue(TUBE.isTube() && !TUBE.isRound());
    Section square = Section.squareTube(inches(1), inches("1/8"));
    assertEquals("0.4375 in²", square.area().toString());
    assertEquals(inches(4), square.perimeter());
    assertEquals("25 mm × 2 mm round tube", TUBE.toString());
    assertEquals(
        "section must be a tube to have a wall, was 12 mm round; ask a solid bar for its"
            + " thickness()",
        assertThrows(IllegalArgumentException.class, () -> Section.round(millimetres(12)).wall())
            .getMessage());
    assertTrue(Section.round(inches(1)).isRound() && !Section.round(inches(1)).isTube());
  }

  @Test
  void refusesATubeWithoutABore() {
    assertEquals(
        "wall must be less than half the outside of 2 mm, was 25 mm; name the outside first, or use"
            + " Section.round or Section.square for a solid bar",
        assertThrows(
                IllegalArgumentException.class,
                () -> Section.roundTube(millimetres(2), millimetres(25)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class, () -> Section.squareTube(inches(1), inches("1/2")));
    assertThrows(IllegalArgumentException.class, () -> Section.squareTube(inches(1), inches(0)));
  }

  @Test
  void taperOnlyWithinAShape() {
    assertEquals(
        Section.roundTube(millimetres(20), millimetres(1.5)),
        TUBE.halfwayTo(Section.roundTube(millimetres(15), millimetres(1))));
    assertEquals(
        Section.hexagon(inches(1)),
        Section.hexagon(inches("1 1/2")).halfwayTo(Section.hexagon(inches("1/2"))));
    assertEquals(
        Section.flat(inches(2), inches(1)),
        Section.square(inches(1)).halfwayTo(Section.flat(inches(3), inches(1))));
    List<Section> shapes =
        List.of(
            FLAT,
            Section.round(inches(1)),
            Section.hexagon(inches(1)),
            Section.octagon(inches(1)),
            Section.halfRound(inches(1)),
            Section.roundTube(inches(1), inches("1/8")),
            Section.squareTube(inches(1), inches("1/8")));
    for (Section one : shapes) {
      for (Section other : shapes) {
        assertEquals(one.equals(other), one.isSimilarTo(other), one + " and " + other);
        assertEquals(one.equals(other), one.meets(other), one + " and " + other);
      }
    }
    assertFalse(TUBE.meets(Section.roundTube(millimetres(25), millimetres(2.5))));
    assertTrue(Section.hexagon(inches(1)).meets(Section.hexagon(millimetres(25.4))));
    assertNotEquals(TUBE, Section.squareTube(millimetres(25), millimetres(2)));
  }

  @Test
  void isLeftOverAtAPointOrAnEdge() {
    assertEquals(0, FLAT.point().area().getValue());
    assertEquals("point", FLAT.point().toString());
    assertEquals(0, FLAT.edge().area().getValue());
    assertEquals(FLAT.width(), FLAT.edge().width());
    assertEquals("1 1/2 in edge", FLAT.edge().toString());
    assertThrows(IllegalArgumentException.class, () -> Section.halfRound(inches(1)).edge());
  }

  @Test
  void growsInStraightLinesTowardsAnother() {
    Section tip = Section.flat(inches("3/4"), inches("1/8"));
    assertEquals(FLAT, FLAT.towards(tip, 0));
    assertEquals(tip, FLAT.towards(tip, 1));
    assertEquals(FLAT.halfwayTo(tip), FLAT.towards(tip, 0.5));
    assertEquals(
        "share must be from 0 to 1, was 1.5; give the part of the taper's length",
        assertThrows(IllegalArgumentException.class, () -> FLAT.towards(tip, 1.5)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> FLAT.towards(tip, Double.NaN));
    assertThrows(IllegalArgumentException.class, () -> FLAT.towards(TUBE, 0.5));
  }

  @Test
  void turnsAQuarterAboutItsAxis() {
    Section flat = Section.flat(inches("1 1/2"), inches("1/4"));
    assertEquals(Section.onEdge(inches("1/4"), inches("1 1/2")), flat.turned());
    assertEquals(flat, flat.turned().turned());
    Section round = Section.round(millimetres(10));
    assertEquals(round, round.turned());
    assertEquals(
        "section must look alike on its other side, or be a flat, to be turned, was 10 mm hexagon;"
            + " forge the side that it shall lie on first",
        assertThrows(
                IllegalArgumentException.class, () -> Section.hexagon(millimetres(10)).turned())
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> Section.halfRound(millimetres(10)).turned());
  }

  /** The offcut of a 1 1/2 × 1/4 bar is four times as long at a 3/4 × 1/8 tip, and back. */
  @Test
  void tellsHowLongItIsInAnotherSection() {
    Section bar = Section.flat(inches("1 1/2"), inches("1/4"));
    Section tip = Section.flat(inches("3/4"), inches("1/8"));
    assertEquals(inches(3), bar.lengthAs(tip, inches("3/4")));
    assertEquals(inches("3/4"), tip.lengthAs(bar, inches(3)));
    assertEquals(
        "other must have an area, was a point; only a taper or an end may come to a point or an edge",
        assertThrows(IllegalArgumentException.class, () -> bar.lengthAs(bar.point(), inches(1)))
            .getMessage());
  }
}
