package org.hammerscale.drawing;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.spacing.GuardCode;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class PicketDrawingTest {
  private static final double EXACT = 1e-6;

  private static final PicketLayout FENCE =
      PicketRow.across(inches(36))
          .of(inches("1/2"))
          .stopping(GuardCode.IRC_SPHERE)
          .layout()
          .on(SIXTEENTH);

  private static PicketRow stairs() {
    return PicketRow.across(millimetres(1500))
        .of(millimetres(16), millimetres(12))
        .stopping(GuardCode.ENGLAND_SPHERE)
        .raked(degrees(35));
  }

  private static List<PicketLayout> layouts() {
    return List.of(
        FENCE,
        PicketRow.across(inches(72)).of(inches("1/2")).pickets(16).layout().on(SIXTEENTH),
        stairs().layout(),
        stairs().layout().on(MILLIMETRE),
        PicketRow.across(millimetres(60)).of(millimetres(2)).pickets(3).layout(),
        PicketRow.across(metres(2)).of(millimetres(12)).pickets(60).layout().on(MILLIMETRE),
        PicketRow.across(millimetres(80)).of(millimetres(12)).pickets(0).layout());
  }

  /** Where an upright crosses the middle of the rail. */
  private static double at(Shape upright) {
    List<double[]> points = upright.points();
    return (points.get(0)[0] + points.get(1)[0]) / 2;
  }

  private static double mm(Measure<javax.measure.quantity.Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  @Test
  void picketsStandWhereTheLayoutSays() {
    for (PicketLayout layout : layouts()) {
      Picture picture = Picture.of(PicketDrawing.of(layout).drawing());
      List<Shape> posts = picture.all("post").stream().filter(shape -> shape.is("wide")).toList();
      double post = at(posts.get(0));
      assertEquals(mm(layout.railLength()), at(posts.get(1)) - post, EXACT);
      List<Shape> edges = picture.all("picket");
      assertEquals(2 * layout.pickets(), edges.size());
      for (int i = 0; i < layout.pickets(); i++) {
        assertEquals(mm(layout.edges().get(i)), at(edges.get(2 * i)) - post, EXACT);
        assertEquals(mm(layout.farEdges().get(i)), at(edges.get(2 * i + 1)) - post, EXACT);
        assertTrue(picture.words().contains(layout.edges().get(i).toString()));
      }
      double[] top = posts.get(0).points().get(0);
      double[] foot = posts.get(0).points().get(1);
      double lean = Math.toDegrees(Math.atan2(top[0] - foot[0], foot[1] - top[1]));
      assertEquals(layout.rake().in(ShopUnits.DEGREE), lean, EXACT);
    }
  }

  @Test
  void isLegible() {
    for (PicketLayout layout : layouts()) {
      Picture.of(PicketDrawing.of(layout).drawing()).assertLegible();
      Picture.of(PicketDrawing.of(layout).reducedTo(10).drawing()).assertLegible();
    }
  }

  @Test
  void saysHowWideTheGapsAre() {
    Drawing fence = PicketDrawing.of(FENCE).drawing();
    assertEquals("8 pickets, 3 1/2 in to 3 9/16 in apart on 1/16 in steps", fence.title());
    assertTrue(
        fence.description().contains("gaps are clear and level, from 3 1/2 in to 3 9/16 in"));
    assertTrue(Picture.of(fence).words().containsAll(List.of("3 9/16 in gap", "36 in post")));
    Drawing steep = PicketDrawing.of(stairs().layout()).drawing();
    assertTrue(
        steep.description().contains("gaps are clear and level, 94 mm. the rail lies level"));
    assertTrue(Picture.of(steep).words().contains("94 mm level gap"));
    assertEquals(
        "drawing of pickets, scale 1 : 5\n  13 pickets, 94 mm apart",
        PicketDrawing.of(stairs().layout()).reducedTo(5).toString());
  }

  @Test
  void refusesWhatNoPaperHolds() {
    PicketLayout mile = PicketRow.across(metres(200)).of(metres(1)).pickets(3).layout();
    assertTrue(
        assertThrows(IllegalArgumentException.class, PicketDrawing.of(mile)::drawing)
            .getMessage()
            .startsWith("length of the rail must be at most 100 m on the paper, was 200 m"));
    PicketDrawing.of(mile).reducedTo(100).drawing();
  }
}
