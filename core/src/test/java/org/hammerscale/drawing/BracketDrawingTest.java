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
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.AngleBracket;
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
  void ironAndBraceStandOnTheWall() {
    Bar flat = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
    AngleBracket bare = AngleBracket.ofArmAndPlate(millimetres(220), millimetres(240), flat);
    AngleBracket braced = bare.bracedOutAndDown(millimetres(126), millimetres(166));
    for (AngleBracket iron : List.of(bare, braced, bare.bentTo(millimetres(0)))) {
      BracketDrawing drawn = BracketDrawing.of(SHELF).madeOf(iron);
      Picture picture = Picture.of(drawn.drawing());
      Shape outline = picture.only("iron");
      double wall = picture.all("wall").get(0).x();
      double[] least = {1e9, 1e9};
      double[] most = {-1e9, -1e9};
      for (double[] point : outline.points()) {
        for (int i = 0; i < 2; i++) {
          least[i] = Math.min(least[i], point[i]);
          most[i] = Math.max(most[i], point[i]);
        }
      }
      assertEquals(wall, least[0], EXACT);
      assertEquals(wall + 220, most[0], EXACT);
      assertEquals(-240, least[1], EXACT);
      assertEquals(0, most[1], EXACT);
      picture.assertLegible();
      Picture.of(drawn.reducedTo(5).drawing()).assertLegible();
    }
    Picture picture = Picture.of(BracketDrawing.of(SHELF).madeOf(braced).drawing());
    double wall = picture.all("wall").get(0).x();
    // Legs of 120 and 160 of the inner corner; its ends 6 / 0.6 and 6 / 0.8 long.
    double[][] corners = {{6, -74}, {126, -234}, {118.5, -234}, {6, -84}};
    List<double[]> points = picture.only("brace").points();
    for (int i = 0; i < corners.length; i++) {
      assertEquals(wall + corners[i][0], points.get(i)[0], EXACT);
      assertEquals(corners[i][1], points.get(i)[1], EXACT);
    }
    assertTrue(picture.words().containsAll(List.of("126 mm brace", "220 mm", "240 mm", "150 mm")));
    assertTrue(
        BracketDrawing.of(SHELF)
            .madeOf(braced)
            .drawing()
            .description()
            .contains("lower edge 166 mm below the arm's top, bevelled 53.13° to the arm"));
  }

  @Test
  void refusesIronTooShortForIt() {
    Bar flat = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
    BracketDrawing drawn = BracketDrawing.of(SHELF);
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    drawn.madeOf(
                        AngleBracket.ofArmAndPlate(millimetres(149), millimetres(240), flat)))
            .getMessage()
            .startsWith("distance must be at most the arm of 149 mm, was 150 mm"));
    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () ->
                    drawn.madeOf(
                        AngleBracket.ofArmAndPlate(millimetres(150), millimetres(199), flat)))
            .getMessage()
            .startsWith("height must be at most the plate of 199 mm, was 200 mm"));
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
