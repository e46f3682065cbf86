package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.heat.Cooling;
import org.hammerscale.holding.FastenerRow;
import org.hammerscale.scale.FireHistory;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class CurveDrawingTest {
  private static final double EXACT = 1e-6;
  private static final Bar ROUND = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
  private static final Bar THIN =
      Bar.of(Section.flat(inches("1 1/2"), inches("1/8")), Material.WROUGHT_IRON);
  private static final HeatPlan PLAN = HeatPlan.soaking(celsius(1150), minutes(5)).inHeats(3);

  /** The middle of the ring in the numbers of the axes, read from the ticks beside them. */
  private static double[] read(Picture picture) {
    Picture.Shape ring = picture.all("read").stream().filter(s -> s.radius() > 0).findFirst().get();
    double x = ring.points().get(0)[0] - ring.radius();
    double y = ring.points().get(0)[1];
    return new double[] {onAxis(picture, x, true), onAxis(picture, y, false)};
  }

  /** A place between the first tick of an axis and its last, by the numbers that stand there. */
  private static double onAxis(Picture picture, double place, boolean across) {
    int axis = across ? 0 : 1;
    List<Picture.Shape> ticks =
        picture.all("tick").stream()
            .filter(t -> (t.points().get(0)[0] == t.points().get(1)[0]) == across)
            .toList();
    double first = ticks.get(0).points().get(0)[axis];
    double last = ticks.get(ticks.size() - 1).points().get(0)[axis];
    // The numbers come first, those across before those up.
    long before = across ? 0 : picture.all("tick").size() - ticks.size();
    double low = Double.parseDouble(picture.words().get((int) before));
    double high = Double.parseDouble(picture.words().get((int) before + ticks.size() - 1));
    return low + (place - first) / (last - first) * (high - low);
  }

  @Test
  void aCoolingIsReadWhereItEnds() {
    for (Cooling cooling :
        List.of(Cooling.from(celsius(1150), ROUND), Cooling.from(fahrenheit(2000), THIN))) {
      Drawing drawing = CurveDrawing.of(cooling).drawing();
      Picture picture = Picture.of(drawing);
      double[] read = read(picture);
      assertEquals(cooling.time().likely().in(ShopUnits.SECOND), read[0], EXACT);
      assertEquals(cooling.finish().likely().in(cooling.heat().getUnit()), read[1], EXACT * 100);
      double shaded =
          picture.only("window").points().stream().mapToDouble(p -> p[0]).max().getAsDouble();
      double until = onAxis(picture, shaded, true);
      double window = cooling.window().likely().in(ShopUnits.SECOND);
      assertTrue(until <= window + EXACT && until > 0.95 * window, "hatched until " + until);
      picture.assertLegible();
      assertTrue(drawing.description().contains("left for work at the anvil"));
    }
    assertEquals(
        "cooling of 20 mm round, mild steel, no scale",
        CurveDrawing.of(Cooling.from(celsius(1150), ROUND)).drawing().toString());
  }

  @Test
  void scaleIsReadAtTheTimeOfThePlan() {
    for (ScaleLoss loss :
        List.of(
            ScaleLoss.of(ROUND, PLAN),
            ScaleLoss.of(THIN, HeatPlan.soaking(fahrenheit(2100), minutes(0.5))).unfed())) {
      Picture picture = Picture.of(CurveDrawing.of(loss).drawing());
      double[] read = read(picture);
      double minutes = loss.plan().each().duration().in(ShopUnits.MINUTE);
      double lost = loss.perSurface().likely().in(loss.bar().section().width().getUnit());
      assertEquals(minutes, read[0], EXACT);
      assertEquals(lost, read[1], EXACT);
      // The curve itself goes through the answer: its middle point is the time of the plan.
      double[] middle = picture.only("curve").points().get(24);
      assertEquals(lost, onAxis(picture, middle[1], false), EXACT);
      picture.assertLegible();
    }
    HeatPlan none = HeatPlan.of(FireHistory.from(celsius(1150)));
    assertEquals(
        "time of each heat must be more than nothing to be drawn, was 0 min; give the plan's heats a"
            + " duration",
        assertThrows(
                IllegalArgumentException.class, CurveDrawing.of(ScaleLoss.of(ROUND, none))::drawing)
            .getMessage());
  }

  @Test
  void aRowIsReadAtItsNumber() {
    Picture picture =
        Picture.of(CurveDrawing.of(FastenerRow.pulledOut(6), poundsForce(135)).drawing());
    double[] read = read(picture);
    assertEquals(6, read[0], EXACT);
    double holds =
        FastenerRow.pulledOut(6).holds(poundsForce(135)).likely().in(ShopUnits.POUND_FORCE);
    assertEquals(holds, read[1], 1e-4);
    assertEquals(18, picture.all("spread").size());
    picture.assertLegible();
    for (int count : new int[] {1, 40, 41, 1_000_000}) {
      CurveDrawing row = CurveDrawing.of(FastenerRow.acrossGrain(count), newtons(600));
      Picture many = Picture.of(row.drawing());
      many.assertLegible();
      assertTrue(many.all("spread").size() <= 120);
      assertEquals("plot: what a row of fasteners holds", row.toString());
    }
  }
}
