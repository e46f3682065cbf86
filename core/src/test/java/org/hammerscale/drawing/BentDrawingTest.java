package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.bending.Bent;
import org.hammerscale.bending.Collar;
import org.hammerscale.bending.Hook;
import org.hammerscale.bending.Joggle;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.Ring;
import org.hammerscale.bending.Scroll;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.stock.Section;
import org.junit.jupiter.api.Test;

class BentDrawingTest {
  private static final double EXACT = 1e-6;
  private static final Section FLAT = Section.flat(millimetres(20), millimetres(5));

  @Test
  void aRingIsDrawnRoundItsCentre() {
    Picture picture = Picture.of(BentDrawing.of(Ring.inside(millimetres(50), FLAT)).drawing());
    double[] radii = {25, 30};
    for (int i = 0; i < 2; i++) {
      for (double[] point : picture.all("face").get(i).points()) {
        assertEquals(radii[i], Math.hypot(point[0], point[1] + 27.5), EXACT);
      }
    }
    for (double[] point : picture.only("mean").points()) {
      assertEquals(27.5, Math.hypot(point[0], point[1] + 27.5), EXACT);
    }
    assertTrue(picture.all("end").isEmpty(), "it is closed");
    assertTrue(picture.words().contains("60 mm"));
  }

  @Test
  void aHookShowsWhereItsBendEnds() {
    Hook hook = Hook.open(inches("1 1/2"), Section.round(inches("3/8"))).withTip(inches("1/2"));
    Drawing drawing = BentDrawing.of(hook).drawing();
    Picture picture = Picture.of(drawing);
    Picture.Shape joint = picture.only("joint");
    assertEquals(9.525, Math.abs(joint.points().get(1)[1] - joint.points().get(0)[1]), EXACT);
    assertEquals(2, picture.all("end").size());
    assertEquals("open hook of 3/8 in round", drawing.title());
    assertTrue(picture.words().contains("2 1/4 in"), "over both faces");
    assertTrue(
        drawing.description().endsWith("bar used: 3.4452 in, along the chain line 3.4452 in"));
    assertTrue(
        BentDrawing.of(hook)
            .toString()
            .startsWith(
                "drawing of bent work, scale 1 : 1\n  open hook of 3/8 in round, mean line"));
  }

  @Test
  void aCollarIsDrawnRoundItsBars() {
    Section square = Section.square(millimetres(12));
    Collar collar = Collar.aroundBars(2, square, millimetres(3));
    Drawing drawing =
        BentDrawing.of(collar.line(), Section.flat(millimetres(10), millimetres(3))).drawing();
    Picture picture = Picture.of(drawing);
    Box inner = new Box(-12, -13.5, 12, -1.5);
    for (double[] point : picture.all("face").get(0).points()) {
      boolean onSide = Math.abs(Math.abs(point[0]) - 12) < EXACT;
      boolean onTop = Math.abs(Math.abs(point[1] + 7.5) - 6) < EXACT;
      assertTrue(inner.grown(EXACT).with(point[0], point[1]).width() < 24.001 && (onSide || onTop));
    }
    assertTrue(picture.words().containsAll(List.of("30 mm", "18 mm")));
    assertEquals("bent bar of 10 mm × 3 mm flat", drawing.title());
    assertTrue(drawing.description().contains("along the chain line 81.42 mm"));
    picture.assertLegible();
  }

  @Test
  void isLegible() {
    List<Bent> work =
        List.of(
            Hook.cabin(millimetres(4), Section.round(millimetres(8))).withTip(millimetres(30)),
            Scroll.archimedean(millimetres(8), millimetres(60), 2.25, FLAT),
            Scroll.involute(millimetres(2), 8, Section.flat(millimetres(20), millimetres(2))),
            Link.inside(inches(30), inches(1), Section.round(inches("1/4"))),
            Ring.inside(millimetres(3), Section.round(millimetres(1))),
            Joggle.by(millimetres(20), degrees(40), millimetres(10), FLAT));
    for (Bent each : work) {
      Picture.of(BentDrawing.of(each).drawing()).assertLegible();
      Picture.of(BentDrawing.of(each).reducedTo(2).drawing()).assertLegible();
    }
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Ring huge = Ring.inside(millimetres(90_000), FLAT);
    assertTrue(
        assertThrows(IllegalArgumentException.class, BentDrawing.of(huge)::drawing)
            .getMessage()
            .startsWith("length of the work must be at most 100 m on the paper, was 282"));
    BentDrawing.of(huge).reducedTo(10).drawing();
  }
}
