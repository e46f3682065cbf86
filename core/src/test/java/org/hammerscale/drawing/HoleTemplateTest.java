package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class HoleTemplateTest {
  private static final double EXACT = 1e-6;

  private static HoleLayout seamed() {
    ClosedStretch seam = ClosedStretch.seamAt(inches(6)).wide(inches("1/8")).clear(inches("3/4"));
    ClosedStretch boss = ClosedStretch.between(inches(11), inches(20)).named("boss");
    return HoleRow.along(inches(14))
        .holes(4)
        .startingFrom(inches("1 1/2"))
        .endingBefore(inches("3/4"))
        .missing(boss, seam)
        .layout()
        .on(Graduation.SIXTEENTH);
  }

  private static HoleLayout forty() {
    return HoleRow.along(millimetres(1000))
        .holes(40)
        .startingFrom(millimetres(20))
        .endingBefore(millimetres(15))
        .layout();
  }

  @Test
  void crossesLieOnTheHoles() {
    for (HoleLayout holes : List.of(seamed(), forty())) {
      Picture picture = Picture.of(HoleTemplate.of(holes, millimetres(38)).drawing());
      List<Picture.Shape> crosses = picture.all("hole");
      assertEquals(holes.positions().size(), crosses.size());
      for (int i = 0; i < crosses.size(); i++) {
        List<double[]> arms = crosses.get(i).points();
        double x = (arms.get(0)[0] + arms.get(1)[0]) / 2;
        assertEquals(holes.positions().get(i).in(ShopUnits.MILLIMETRE), x, EXACT);
        assertEquals(x, arms.get(2)[0], EXACT, "both arms");
        assertEquals(19, arms.get(0)[1], EXACT, "in the middle");
      }
      assertEquals(0, picture.only("pin").x(), EXACT);
    }
  }

  @Test
  void hatchesWhatStaysClosed() {
    HoleLayout holes = seamed();
    Picture picture = Picture.of(HoleTemplate.of(holes, inches("1 1/2")).drawing());
    List<Double> edges =
        picture.all("closed").stream().filter(s -> s.is("narrow")).map(Picture.Shape::x).toList();
    assertEquals(4, edges.size());
    ClosedStretch seam = holes.closedStretches().get(1);
    assertEquals(seam.from().in(ShopUnits.MILLIMETRE), edges.get(2), EXACT);
    assertEquals(seam.to().in(ShopUnits.MILLIMETRE), edges.get(3), EXACT);
    assertEquals(14 * 25.4, edges.get(1), EXACT, "no further than the leaf");
    assertTrue(picture.words().containsAll(List.of("boss", "seam at 6 in", "pin", "14 in")));
  }

  @Test
  void drillsCirclesInTwoRows() {
    HoleLayout staggered =
        HoleRow.along(millimetres(300))
            .holes(5)
            .startingFrom(millimetres(30))
            .endingBefore(millimetres(15))
            .inTwoRows(millimetres(20))
            .layout();
    assertEquals(millimetres(20), staggered.betweenRows());
    Picture picture =
        Picture.of(HoleTemplate.of(staggered, millimetres(60)).drilled(millimetres(5.5)).drawing());
    List<Picture.Shape> circles = picture.all("drill");
    for (int i = 0; i < 5; i++) {
      assertEquals(2.75, circles.get(i).radius(), EXACT);
      double y = circles.get(i).y();
      assertEquals(i % 2 == 0 ? 20 : 40, y, EXACT);
    }
    picture.assertLegible();
    assertTrue(picture.words().contains("drill 5.5 mm"));
  }

  @Test
  void isLegible() {
    HoleLayout one =
        HoleRow.along(millimetres(60))
            .holes(1)
            .startingFrom(millimetres(25))
            .endingBefore(millimetres(10))
            .layout();
    for (HoleLayout holes : List.of(seamed(), forty(), one)) {
      Picture.of(HoleTemplate.of(holes, inches(1)).drawing()).assertLegible();
      Picture.of(HoleTemplate.of(holes, millimetres(2)).drilled(millimetres(7)).drawing())
          .assertLegible();
    }
    Drawing single = HoleTemplate.of(one, inches(1)).drawing();
    assertEquals("template of 1 hole from the pin", single.title());
    assertTrue(single.description().contains("1 hole at 30 mm from the pin centre"));
  }

  @Test
  void refusesWhatIsNoLeaf() {
    assertEquals(
        "leafWidth must be more than zero, was 0 mm; give it a size",
        assertThrows(IllegalArgumentException.class, () -> HoleTemplate.of(forty(), millimetres(0)))
            .getMessage()
            .replaceAll(";.*", "; give it a size"));
    assertTrue(
        HoleTemplate.of(seamed(), inches(1))
            .toString()
            .startsWith("template for a leaf of 1 in\n  4 holes"));
  }
}
