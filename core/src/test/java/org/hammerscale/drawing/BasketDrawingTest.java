package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.bending.Basket;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class BasketDrawingTest {
  private static final double EXACT = 1e-6;

  private static final Basket HANDLE =
      Basket.ofFour(Section.round(millimetres(8)), millimetres(120), 1);

  /** Both edges stand half a rod off its middle, which turns evenly at the radius of the shape. */
  @Test
  void rodsRunWhereTheBasketSays() {
    Picture picture = Picture.of(BasketDrawing.of(HANDLE, millimetres(30)).drawing());
    int points = 0;
    for (Shape edge : picture.all("rod")) {
      for (double[] point : edge.points()) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int rod = 0; rod < 4; rod++) {
          for (int i = 0; i <= 96; i++) {
            double above = 120.0 * i / 96;
            double radius =
                HANDLE.radiusAt(millimetres(above), millimetres(30)).in(ShopUnits.MILLIMETRE);
            double x = radius * Math.cos(Math.PI / 4 + Math.PI / 2 * rod + 2 * Math.PI * i / 96);
            double off = Math.hypot(point[0] - x, point[1] + above);
            nearest = Math.min(nearest, Math.abs(off - 4));
          }
        }
        assertEquals(0, nearest, EXACT);
        points++;
      }
    }
    assertTrue(points > 8 * 96, "points: " + points);
  }

  @Test
  void rodsBeforeTheAxisAreWide() {
    Basket straight = Basket.ofFour(Section.round(millimetres(2)), millimetres(15), 0);
    Picture picture = Picture.of(BasketDrawing.of(straight, millimetres(5)).drawing());
    assertEquals(4, picture.all("rod").stream().filter(shape -> shape.is("wide")).count());
    assertEquals(4, picture.all("rod").stream().filter(shape -> shape.is("hidden")).count());
  }

  @Test
  void isLegibleAndSaysHowLongARodIs() {
    List<Drawing> drawings =
        List.of(
            BasketDrawing.of(HANDLE, millimetres(30)).drawing(),
            BasketDrawing.of(HANDLE, inches(1)).reducedTo(3).drawing(),
            BasketDrawing.of(
                    Basket.ofFour(Section.square(inches("1/4")), inches(4), 1.5), inches(1))
                .drawing(),
            BasketDrawing.of(
                    Basket.ofFour(Section.round(millimetres(2)), millimetres(15), 0),
                    millimetres(5))
                .drawing());
    drawings.forEach(drawing -> Picture.of(drawing).assertLegible());
    assertTrue(
        Picture.of(drawings.get(0))
            .words()
            .containsAll(List.of("120 mm", "30 mm to the middle of a rod")));
    assertTrue(drawings.get(0).description().contains("each rod is 191.23 mm long"));
    assertEquals(
        "drawing of a basket that bulges 30 mm, scale 1 : 1\n  " + HANDLE,
        BasketDrawing.of(HANDLE, millimetres(30)).toString());
  }

  @Test
  void refusesWhatDoesNotOpenOrFit() {
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> BasketDrawing.of(HANDLE, millimetres(2)))
            .getMessage()
            .startsWith("bulge must be at least the 5.657 mm at the welds, was 2 mm"));
    Basket vast = Basket.ofFour(Section.round(millimetres(8)), metres(101), 1);
    assertTrue(
        assertThrows(IllegalArgumentException.class, BasketDrawing.of(vast, metres(1))::drawing)
            .getMessage()
            .startsWith("height of the basket must be at most 100 m on the paper, was 101 m"));
  }
}
