package org.hammerscale.stock;

import static org.hammerscale.units.Measures.area;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import javax.measure.quantity.Area;
import org.hammerscale.units.Measure;
import org.junit.jupiter.api.Test;

class BarSizesTest {
  private static final Section HALF = Section.square(inches("1/2"));
  private static final Section FLAT = Section.flat(inches(1), inches("3/8"));
  private static final Section FIVE_EIGHTHS = Section.square(inches("5/8"));
  private static final Section ROUND = Section.round(inches("3/4"));
  private static final BarSizes SHOP = BarSizes.of(ROUND, FIVE_EIGHTHS, HALF, FLAT);

  private static Measure<Area> squareInches(double value) {
    return area(inches(value), inches(1));
  }

  @Test
  void theSmallestStandsFirst() {
    assertEquals(List.of(HALF, FLAT, FIVE_EIGHTHS, ROUND), SHOP.sections());
    assertEquals("1/2 in square, 1 in × 3/8 in flat, 5/8 in square, 3/4 in round", SHOP.toString());
  }

  @Test
  void nearestInArea() {
    assertEquals(
        List.of(FIVE_EIGHTHS, FLAT, ROUND, HALF), SHOP.nearestTo(squareInches(0.4)).sections());
    assertEquals(HALF, SHOP.nearestTo(millimetreArea(160)).sections().get(0));
  }

  @Test
  void ofTwoAsNearTheLargerStandsFirst() {
    BarSizes apart = BarSizes.of(HALF, Section.flat(inches(1), inches("3/4")));
    assertEquals(inches(1), apart.nearestTo(squareInches(0.5)).sections().get(0).width());
  }

  @Test
  void atLeastAsLarge() {
    assertEquals(List.of(FIVE_EIGHTHS, ROUND), SHOP.atLeast(squareInches(0.38)).sections());
    assertEquals(List.of(FLAT, FIVE_EIGHTHS, ROUND), SHOP.atLeast(FLAT.area()).sections());
    assertEquals("no size", SHOP.atLeast(squareInches(2)).toString());
    BarSizes metric = BarSizes.of(Section.square(millimetres(12.7)));
    assertEquals(1, metric.atLeast(squareInches(0.25)).sections().size());
  }

  @Test
  void holdingAVolumeInALength() {
    assertEquals(
        List.of(FLAT, FIVE_EIGHTHS, ROUND),
        SHOP.holding(volume(inches(3), squareInches(1)), inches(8)).sections());
    assertEquals(
        List.of(FIVE_EIGHTHS, ROUND),
        SHOP.holding(volume(inches(3), squareInches(1)), millimetres(203)).sections());
  }

  @Test
  void coveringWidthAndThickness() {
    Section leaf = Section.flat(inches("7/8"), inches("5/16"));
    assertEquals(List.of(FLAT), SHOP.covering(leaf).sections());
    assertEquals(List.of(FLAT), SHOP.covering(Section.onEdge(inches("3/8"), inches(1))).sections());
    assertEquals(
        List.of(ROUND, FIVE_EIGHTHS),
        SHOP.nearestTo(squareInches(0.5)).covering(Section.square(inches("9/16"))).sections());
  }

  @Test
  void badInputIsRefused() {
    Section tube = Section.roundTube(millimetres(25), millimetres(2));
    assertEquals(
        "sections must be solid to be forged to size, was 25 mm × 2 mm round tube; buy a tube by"
            + " its own outside and wall",
        assertThrows(IllegalArgumentException.class, () -> BarSizes.of(HALF, tube)).getMessage());
    assertThrows(IllegalArgumentException.class, () -> SHOP.covering(tube));
    assertEquals(
        "area must be more than zero, was 0 in²; give the finished cold size",
        assertThrows(IllegalArgumentException.class, () -> SHOP.nearestTo(squareInches(0)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> SHOP.atLeast(squareInches(-1)));
    assertEquals(
        "volume must be more than zero, was 0 in³; give the finished cold size",
        assertThrows(
                IllegalArgumentException.class,
                () -> SHOP.holding(volume(inches(0), squareInches(1)), inches(1)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () -> SHOP.holding(volume(inches(1), squareInches(1)), inches(0)));
    assertThrows(NullPointerException.class, () -> BarSizes.of(HALF, null));
  }

  private static Measure<Area> millimetreArea(double value) {
    return area(millimetres(value), millimetres(1));
  }
}
