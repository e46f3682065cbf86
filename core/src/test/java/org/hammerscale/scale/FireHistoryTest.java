package org.hammerscale.scale;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.heat.Cooling;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class FireHistoryTest {
  private static final FireHistory HEAT =
      FireHistory.from(fahrenheit(68))
          .to(celsius(1150), minutes(6))
          .hold(minutes(2))
          .to(celsius(800), seconds(60));

  @Test
  void goesThroughItsPoints() {
    assertEquals(minutes(9), HEAT.duration());
    assertEquals(celsius(1150), HEAT.hottest());
    assertEquals(4, HEAT.points().size());
    assertEquals(minutes(8), HEAT.points().get(2).time());
    assertEquals(HEAT, FireHistory.through(HEAT.points()));
    assertEquals(HEAT.hashCode(), FireHistory.through(HEAT.points()).hashCode());
    assertFalse(HEAT.equals(HEAT.hold(minutes(1))));
    assertEquals("9 min from 68 °F over 1150 °C to 800 °C", HEAT.toString());
    assertEquals("30 s at 1000 °C", FireHistory.soak(celsius(1000), seconds(30)).toString());
  }

  @Test
  void aLaterStartOfTheClockChangesNothing() {
    List<Cooling.Moment> late =
        HEAT.points().stream()
            .map(p -> new Cooling.Moment(p.time().add(minutes(30)), p.temperature()))
            .toList();
    assertEquals(minutes(9), FireHistory.through(late).duration());
    assertEquals(
        ScaleLaw.MI.metalLoss(HEAT).getValue(),
        ScaleLaw.MI.metalLoss(FireHistory.through(late)).getValue(),
        1e-15);
  }

  @Test
  void refusesWhatCannotBe() {
    refused("start must lie between -50 °C", () -> FireHistory.from(celsius(-80)));
    refused("heat must lie between", () -> HEAT.to(celsius(1600), minutes(1)));
    refused("time must not be negative", () -> HEAT.hold(minutes(-1)));
    refused("points must be at least one", () -> FireHistory.through(List.of()));
    Cooling.Moment early = HEAT.points().get(0);
    Cooling.Moment later = HEAT.points().get(1);
    refused("points must be in order of time", () -> FireHistory.through(List.of(later, early)));
  }

  /** Against the curve in so many moments that each step may count as a soak. */
  @Test
  void takesTheCurveOfCooling() {
    Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
    Cooling cooling = Cooling.from(celsius(1150), bar).to(celsius(700));
    FireHistory hot = FireHistory.from(celsius(1150));
    List<Cooling.Moment> curve = cooling.curve(4000);
    double exact = 0;
    for (int i = 1; i < curve.size(); i++) {
      double step = curve.get(i).time().subtract(curve.get(i - 1).time()).in(ShopUnits.SECOND);
      double middle =
          (curve.get(i).temperature().in(ShopUnits.CELSIUS)
                  + curve.get(i - 1).temperature().in(ShopUnits.CELSIUS))
              / 2;
      exact += step * ScaleLaw.MI.metalRate(middle);
    }
    double pieces = ScaleLaw.MI.metalLoss(hot.cooling(cooling)).getValue();
    assertEquals(Math.sqrt(exact), pieces, 1e-4 * pieces);
    assertEquals(
        cooling.time().likely().in(ShopUnits.SECOND),
        hot.cooling(cooling).duration().in(ShopUnits.SECOND),
        1e-6);
    refused("cooling must start from 800 °C", () -> HEAT.cooling(cooling));
  }

  private static void refused(String beginning, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.startsWith(beginning), message);
  }

  @Test
  void isDrawnOutInProportion() {
    FireHistory up = FireHistory.from(celsius(20)).to(celsius(1150), minutes(6));
    HeatPlan plan = HeatPlan.of(up.hold(minutes(2))).inHeats(3);
    assertThrows(
        IllegalArgumentException.class,
        () -> HeatPlan.of(FireHistory.from(celsius(20))).lasting(minutes(1)));
    HeatPlan longer = plan.lasting(minutes(16));
    assertEquals(minutes(16), longer.each().duration());
    assertEquals(minutes(12), longer.each().points().get(1).time());
    assertEquals(3, longer.heats());
    Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
    ScaleLoss loss = ScaleLoss.of(bar, plan);
    assertEquals(loss.perSurface(), loss.during(plan.lasting(minutes(8))).perSurface());
    assertTrue(loss.during(longer).perSurface().likely().isGreaterThan(loss.perSurface().likely()));
  }
}
