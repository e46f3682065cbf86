package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class BarDrawingTest {
  private static final double EXACT = 1e-6;

  @Test
  void marksLieWhereTheLayoutHasThem() {
    for (MarkedBar bar : List.of(Bars.gate(), Bars.boathouse(), Bars.busiest())) {
      Picture picture = Picture.of(BarDrawing.of(bar).drawing());
      List<Picture.Shape> marks = picture.all("mark");
      assertEquals(bar.marks().size(), marks.size());
      for (int i = 0; i < marks.size(); i++) {
        double asked = bar.marks().get(i).fromFirstEnd().in(ShopUnits.MILLIMETRE);
        assertEquals(asked, marks.get(i).x(), EXACT);
      }
      double cut = picture.all("cut").stream().filter(s -> s.is("cut")).findFirst().get().x();
      assertEquals(bar.cutLength().in(ShopUnits.MILLIMETRE), cut, EXACT);
    }
  }

  @Test
  void hatchesWhatIsTrimmed() {
    MarkedBar bar = Bars.gate();
    Picture picture = Picture.of(BarDrawing.of(bar).drawing());
    List<Picture.Shape> hatched =
        picture.all("hatch").stream().filter(shape -> shape.is("trim")).toList();
    assertEquals(1, hatched.size(), "the tip is likely cut just right");
    double off = bar.trims().get(0).inBar().likely().in(ShopUnits.MILLIMETRE);
    for (double[] point : hatched.get(0).points()) {
      assertTrue(point[0] >= -EXACT && point[0] <= off + EXACT, "hatched at " + point[0]);
    }
    assertTrue(picture.words().contains("1 15/16 in"), "where the strip is cut before rolling");
  }

  @Test
  void saysItsSizesOnTheRuleOfTheBar() {
    Picture inch = Picture.of(BarDrawing.of(Bars.gate()).drawing());
    assertTrue(inch.words().containsAll(List.of("R", "9 in", "cut 14 7/8 in", "taper")));
    Picture metric = Picture.of(BarDrawing.of(Bars.boathouse()).drawing());
    assertTrue(
        metric.words().containsAll(List.of("R", "240 mm", "63 mm")), metric.words()::toString);
  }

  @Test
  void isLegible() {
    Stream.of(Bars.gate(), Bars.boathouse(), Bars.longest(), Bars.stoutest(), Bars.busiest())
        .forEach(
            bar -> {
              Picture.of(BarDrawing.of(bar).drawing()).assertLegible();
              Picture.of(BarDrawing.of(bar).reducedTo(5).drawing()).assertLegible();
            });
  }

  @Test
  void isDrawnReduced() {
    MarkedBar bar = Bars.gate();
    Drawing fifth = BarDrawing.of(bar).reducedTo(5).drawing();
    Picture.Shape outline = Picture.of(fifth).only("bar");
    double wide = outline.points().get(1)[0] - outline.points().get(0)[0];
    assertEquals(bar.cutLength().in(ShopUnits.MILLIMETRE) / 5, wide, EXACT);
    assertEquals("cold bar, 1 1/2 in × 1/4 in flat: cut 14 7/8 in, scale 1 : 5", fifth.toString());
    assertTrue(BarDrawing.of(bar).toString().startsWith("drawing of a bar, scale 1 : 1\n  cut 14"));
  }

  @Test
  void aBarMarkedFromItsFirstEndHasNothingBeforeIt() {
    Bar bar = Bar.of(Section.square(inches("1/2")), Material.MILD_STEEL);
    Piece rod = Piece.of(bar, Plain.of(bar.section(), inches(4)));
    Picture picture = Picture.of(BarDrawing.of(rod.layout().on(Graduation.EIGHTH)).drawing());
    assertTrue(picture.words().containsAll(List.of("R", "4 in", "cut 4 in")));
    picture.assertLegible();
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Bar bar = Bar.of(Section.square(millimetres(20)), Material.MILD_STEEL);
    Piece rod = Piece.of(bar, Plain.of(bar.section(), millimetres(100_001)));
    BarDrawing drawing = BarDrawing.of(rod.layout().on(Graduation.MILLIMETRE));
    assertRefused(
        drawing::drawing,
        "cut length of the bar must be at most 100 m on the paper, was 100001 mm at scale 1 : 1;"
            + " draw it reduced, or in parts");
    drawing.reducedTo(10).drawing();
    Bar wire = Bar.of(Section.round(millimetres(0.0009)), Material.MILD_STEEL);
    Piece piece = Piece.of(wire, Plain.of(wire.section(), millimetres(10)));
    assertRefused(
        BarDrawing.of(piece.layout().on(Graduation.MILLIMETRE))::drawing,
        "width of the bar must be at least 0.001 mm on the paper, was 0.0009 mm at scale 1 : 1;"
            + " look at the number and its unit, or draw it less reduced");
    assertRefused(
        () -> drawing.reducedTo(0),
        "reduction must be from 1 to 1000, was 0; 5 draws it a fifth as large, 1 in true scale");
  }

  private static void assertRefused(org.junit.jupiter.api.function.Executable call, String text) {
    assertEquals(text, assertThrows(IllegalArgumentException.class, call).getMessage());
  }
}
