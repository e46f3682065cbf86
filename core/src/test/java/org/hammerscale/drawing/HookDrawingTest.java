package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.bending.Hook;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.HookSection;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class HookDrawingTest {
  private static final double EXACT = 1e-6;

  private static final CarryingHook DRAWN =
      CarryingHook.of(
          HookSection.narrowing(millimetres(30), millimetres(12), millimetres(40)),
          millimetres(30));
  private static final CarryingHook ROUND =
      CarryingHook.of(Hook.open(inches("1 1/2"), Section.round(inches("3/8"))))
          .withLoadBeyondCentre(inches("1/4"));
  private static final CarryingHook SMALL =
      CarryingHook.of(HookSection.of(Section.square(millimetres(2))), millimetres(4))
          .withLoadBeyondCentre(millimetres(1));

  @Test
  void theBendHasItsRadiiAndTheLoadItsLine() {
    for (CarryingHook hook : List.of(DRAWN, ROUND, SMALL)) {
      Picture picture = Picture.of(HookDrawing.of(hook).drawing());
      Shape cross = picture.only("middle");
      double x = (cross.points().get(0)[0] + cross.points().get(1)[0]) / 2;
      double y = cross.y();
      double inside = hook.insideRadius().in(ShopUnits.MILLIMETRE);
      double deep = hook.section().depth().in(ShopUnits.MILLIMETRE);
      for (int i = 0; i < 2; i++) {
        for (double[] point : picture.all("bend").get(i).points()) {
          assertEquals(inside + i * deep, Math.hypot(point[0] - x, point[1] - y), EXACT);
          assertTrue(point[0] <= x + EXACT, "its middle to the left");
        }
      }
      double beyond = hook.loadBeyondCentre().in(ShopUnits.MILLIMETRE);
      assertEquals(beyond, picture.only("load").x() - x, EXACT);
      picture.assertLegible();
      Picture.of(HookDrawing.of(hook).reducedTo(3).drawing()).assertLegible();
    }
  }

  @Test
  void theSectionHasItsInsideTowardsTheCentre() {
    Picture picture = Picture.of(HookDrawing.of(DRAWN).drawing());
    List<double[]> corners = wide(picture, "section").points();
    assertEquals(40, corners.get(1)[0] - corners.get(0)[0], EXACT);
    assertEquals(30, corners.get(2)[1] - corners.get(1)[1], EXACT, "inside");
    assertEquals(12, corners.get(3)[1] - corners.get(0)[1], EXACT, "outside");
    assertTrue(
        picture
            .words()
            .containsAll(List.of("40 mm", "30 mm inside", "12 mm outside", "47.14 mm", "30 mm")));
    Picture rod = Picture.of(HookDrawing.of(ROUND).drawing());
    assertEquals(9.525 / 2, wide(rod, "section").radius(), EXACT);
    assertTrue(rod.words().containsAll(List.of("Ø 3/8 in", "1/4 in beyond the centre")));
  }

  private static Shape wide(Picture picture, String part) {
    return picture.all(part).stream().filter(shape -> shape.is("wide")).findFirst().orElseThrow();
  }

  @Test
  void saysWhatItIs() {
    Drawing drawing = HookDrawing.of(DRAWN).drawing();
    assertEquals(
        "hook of 30 mm inside, 12 mm outside, 40 mm deep, 30 mm inside radius", drawing.title());
    assertTrue(drawing.description().contains("do not quench it"));
    assertEquals(
        "drawing of a hook that carries, scale 1 : 2\n  " + DRAWN,
        HookDrawing.of(DRAWN).reducedTo(2).toString());
  }

  @Test
  void refusesWhatNoPaperHolds() {
    CarryingHook vast = CarryingHook.of(HookSection.of(Section.square(inches(5))), metres(101));
    assertTrue(
        assertThrows(IllegalArgumentException.class, HookDrawing.of(vast)::drawing)
            .getMessage()
            .startsWith("inside radius must be at most 100 m on the paper, was 101 m"));
  }
}
