package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class BracketDrawingTest {
  private static final double EXACT = 1e-6;

  private static final Bracket SHELF =
      Bracket.carrying(newtons(200), millimetres(150)).screwedAt(millimetres(40), millimetres(200));
  private static final Bracket SIGN =
      Bracket.carrying(poundsForce(40), inches(8))
          .screwedAt(inches(1), inches(1), inches(5))
          .turningOnLowest();
  private static final Bracket SMALL =
      Bracket.carrying(newtons(2), millimetres(5))
          .screwedAt(millimetres(2), millimetres(4), millimetres(6));

  @Test
  void screwsStandAboveTheFoot() {
    for (Bracket bracket : List.of(SHELF, SIGN, SMALL)) {
      Picture picture = Picture.of(BracketDrawing.of(bracket).drawing());
      List<Shape> screws = picture.all("screw");
      assertEquals(bracket.heights().size(), screws.size());
      for (int i = 0; i < screws.size(); i++) {
        double height = bracket.heights().get(i).in(ShopUnits.MILLIMETRE);
        assertEquals(-height, screws.get(i).y(), EXACT);
      }
      double wall = picture.all("wall").get(0).x();
      double out = bracket.distance().in(ShopUnits.MILLIMETRE);
      assertEquals(out, picture.only("load").x() - wall, EXACT);
      double turn = bracket.turningHeight().in(ShopUnits.MILLIMETRE);
      Shape ring = picture.only("turn");
      assertEquals(-turn, ring.y(), EXACT);
      picture.assertLegible();
      Picture.of(BracketDrawing.of(bracket).reducedTo(4).drawing()).assertLegible();
    }
  }

  @Test
  void saysHowEachScrewIsPulled() {
    Drawing drawing = BracketDrawing.of(SHELF).drawing();
    assertEquals("bracket under 200 N at 150 mm, 2 screws", drawing.title());
    assertTrue(
        drawing.description().contains("screw at 200 mm: pulled by 144.2 N, 100 N across it"));
    assertTrue(Picture.of(drawing).words().containsAll(List.of("40 mm", "200 mm", "200 N")));
    assertEquals(
        "drawing of a bracket, scale 1 : 2\n  " + SHELF,
        BracketDrawing.of(SHELF).reducedTo(2).toString());
    Bracket row =
        Bracket.carrying(newtons(90), inches(1))
            .screwedAt(
                inches(1), inches(1), inches(2), inches(2), inches(3), inches(3), inches(4),
                inches(4), inches(5), inches(5), inches(6), inches(6), inches(7));
    assertTrue(BracketDrawing.of(row).drawing().description().endsWith("the rest of 13 screws"));
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Bracket far = Bracket.carrying(newtons(1), metres(101)).screwedAt(inches(1));
    assertTrue(
        assertThrows(IllegalArgumentException.class, BracketDrawing.of(far)::drawing)
            .getMessage()
            .startsWith("distance of the load must be at most 100 m on the paper, was 101 m"));
  }
}
