package org.hammerscale.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.junit.jupiter.api.Test;

/** Sizes and hatching, as a reader of the sheet sees them. */
class DimensionsTest {
  @Test
  void hatchingStaysWithinAndLeavesHolesOut() {
    double[] outer = {0, 0, 30, 0, 30, 20, 0, 20};
    double[] hole = {10, 5, 20, 5, 20, 15, 10, 15};
    for (boolean rising : new boolean[] {true, false}) {
      Pen pen = new Pen();
      pen.hatch("metal", rising, outer, hole);
      Picture.Shape lines = Picture.of(Drawing.of("x", Scale.TRUE, pen)).only("metal");
      double drawn = 0;
      for (int i = 1; i < lines.points().size(); i += 2) {
        double[] from = lines.points().get(i - 1);
        double[] to = lines.points().get(i);
        double mx = (from[0] + to[0]) / 2;
        double my = (from[1] + to[1]) / 2;
        assertTrue(mx >= 0 && mx <= 30 && my >= 0 && my <= 20);
        assertFalse(mx > 10 && mx < 20 && my > 5 && my < 15);
        assertEquals(rising, (to[1] - from[1]) * (to[0] - from[0]) < 0);
        drawn += Math.hypot(to[0] - from[0], to[1] - from[1]);
      }
      assertEquals(500 / 2.2, drawn, 12, "area over spacing");
    }
  }

  @Test
  void sizesBesideTheThing() {
    for (double size : new double[] {0.5, 4, 9, 20, 60}) {
      Pen pen = new Pen();
      pen.draw(Line.WIDE, "thing", Path.rectangle(new Box(0, 0, size, size)));
      Dimensions dimensions = new Dimensions(pen);
      dimensions.across(0, size, size + 12, size, size, "1 1/2 in");
      dimensions.across(0, size, -12, 0, 0, "40 mm");
      dimensions.upright(0, size, -14, 0, 0, "1 1/2 in");
      dimensions.upright(0, size, size + 30, size, size, "40 mm");
      Picture picture = Picture.of(Drawing.of("x", Scale.TRUE, pen));
      picture.assertLegible();
      assertEquals(4, picture.texts.size());
    }
  }

  @Test
  void runningSizesDownTheSide() {
    Pen pen = new Pen();
    pen.draw(Line.WIDE, "thing", Path.rectangle(new Box(0, 0, 100, 20)));
    Dimensions dimensions = new Dimensions(pen);
    List<Callout> places =
        List.of(new Callout(0, 2, "2 mm"), new Callout(0, 3, "3 mm"), new Callout(0, 20, "20 mm"));
    dimensions.runningDown(new Callout(0, 0, "0"), places, -10);
    dimensions.leader(80, 5, 90, -12, "Ø 5 mm");
    dimensions.leader(20, 5, 10, -12, "Ø 5 mm");
    Picture picture = Picture.of(Drawing.of("x", Scale.TRUE, pen));
    assertEquals(List.of("0", "2 mm", "3 mm", "20 mm", "Ø 5 mm", "Ø 5 mm"), picture.words());
    picture.assertLegible();
  }
}
