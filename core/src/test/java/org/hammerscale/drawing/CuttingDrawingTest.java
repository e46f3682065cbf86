package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.cutting.CutBar;
import org.hammerscale.cutting.CutList;
import org.hammerscale.cutting.CutMark;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class CuttingDrawingTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL);

  private static CuttingPlan metric() {
    return CutList.of(STRAP, Graduation.MILLIMETRE)
        .kerf(millimetres(2))
        .endTrim(millimetres(20))
        .leastOffcut(millimetres(250))
        .pieces("gate strap", millimetres(1450), 4)
        .pieces("door strap", millimetres(900), 4)
        .pieces("latch bar", millimetres(330), 2)
        .offcuts(millimetres(1500), 1)
        .buying(metres(6), new BigDecimal("31.50"))
        .buying(metres(3), new BigDecimal("17.25"))
        .plan();
  }

  /** Twenty-two short pieces of one bar. */
  private static CuttingPlan rods() {
    Bar rod = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);
    return CutList.of(rod, Graduation.SIXTEENTH)
        .kerf(inches("1/8"))
        .pieces("hook", inches("14 1/2"), 12)
        .pieces("pin", inches("5 1/4"), 10)
        .buying(feet(20))
        .plan();
  }

  @Test
  void marksLieWhereTheyAreChalked() {
    for (CuttingPlan plan : List.of(metric(), rods())) {
      Drawing drawing = CuttingDrawing.of(plan).drawing();
      Picture picture = Picture.of(drawing);
      int reduction = drawing.scale().reduction();
      List<Double> asked = new ArrayList<>();
      for (CutBar bar : plan.bars()) {
        for (CutMark mark : bar.marks()) {
          asked.add(mark.end().in(ShopUnits.MILLIMETRE) / reduction);
        }
      }
      List<Double> drawn = picture.all("mark").stream().map(Picture.Shape::x).toList();
      assertEquals(asked.size(), drawn.size());
      for (int i = 0; i < asked.size(); i++) {
        assertEquals(asked.get(i), drawn.get(i), 1e-6);
      }
      assertEquals(plan.bars().size(), picture.all("bar").size());
      picture.assertLegible();
    }
  }

  @Test
  void takesTheFirstScaleThatSuits() {
    Drawing drawing = CuttingDrawing.of(metric()).drawing();
    assertEquals("scale 1 : 50", drawing.scale().toString());
    assertTrue(drawing.title().startsWith("cut "), drawing.title());
    Drawing larger = CuttingDrawing.of(metric()).reducedTo(20).drawing();
    Picture.Shape bar = Picture.of(larger).all("bar").get(1);
    assertEquals(300, bar.points().get(1)[0], 1e-6);
    CuttingPlan endless =
        CutList.of(STRAP, Graduation.of(metres(1)))
            .pieces("rail", metres(500), 1)
            .buying(metres(600))
            .plan();
    assertEquals("scale 1 : 1000", CuttingDrawing.of(endless).drawing().scale().toString());
    assertTrue(
        CuttingDrawing.of(endless).toString().startsWith("drawing of a cutting plan\n  cut 1"));
  }

  @Test
  void tellsOffcutFromScrap() {
    Picture picture = Picture.of(CuttingDrawing.of(metric()).drawing());
    assertTrue(picture.words().stream().anyMatch(text -> text.startsWith("scrap ")));
    assertTrue(picture.words().stream().anyMatch(text -> text.startsWith("offcut ")));
    assertTrue(picture.words().contains("1 × 1500 mm offcut"));
  }

  @Test
  void refusesMoreBarsThanAnybodyReads() {
    CutList list = CutList.of(STRAP, Graduation.MILLIMETRE).buying(millimetres(1000));
    for (int i = 0; i < 201; i++) {
      list = list.pieces("piece " + i, millimetres(700 + i), 1);
    }
    CuttingPlan plan = list.plan();
    assertEquals(
        "bars of the plan must be at most 200 that are cut in different ways, was 201; draw the"
            + " plan in parts",
        assertThrows(IllegalArgumentException.class, CuttingDrawing.of(plan)::drawing)
            .getMessage());
  }
}
