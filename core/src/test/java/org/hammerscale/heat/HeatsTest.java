package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class HeatsTest {
  private static final Bar ROUND = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);

  /** Its window is 25.3 s, 40.2 s or 67.9 s. */
  private static final Cooling COOLING = Cooling.from(celsius(1150), ROUND);

  private static final Section TIP = Section.flat(millimetres(19), millimetres(3));

  @Test
  void eachFeatureBeginsAFreshHeatUnlessTheyShareOne() {
    // 120 / 40.2 and 40 / 40.2; together 160 / 67.9; 120 / 25.3 and 40 / 25.3.
    Heats heats = Heats.forWork(minutes(2), COOLING).and(seconds(40));
    assertEquals(number(3, 4, 7), heats.count());
    assertEquals(minutes(2).add(seconds(40)), heats.work());
    assertEquals("2.667 min", heats.work().toString());
    assertEquals(COOLING.cautions().size(), heats.cautions().size());
    assertEquals(number(1, 1, 2), Heats.forWork(seconds(40), COOLING).count());
    assertEquals(number(1, 2, 2), Heats.forWork(seconds(20), COOLING).and(seconds(20)).count());
    assertEquals(COOLING.window(), heats.cooling().window());
  }

  /** Each of 36 s, in a window of 40.2 s; all in 67.9 s; each in 25.3 s. */
  @Test
  void countsOperationsWhereNoTimeIsTold() {
    Heats three = Heats.forStretches(3, COOLING);
    assertEquals(number(2, 3, 6), three.count());
    assertEquals(seconds(108), three.work());
    Workings.check(three.working(), three.count().likely());
    assertEquals(
        Heats.forWork(seconds(36), COOLING).and(seconds(36)).count(),
        Heats.forStretches(1, COOLING).and(seconds(36)).count());
    refused("stretches must be from 1 to 100, was 0", () -> Heats.forStretches(0, COOLING));
    refused("stretches must be", () -> Heats.forStretches(101, COOLING));
  }

  @Test
  void workThatFillsAWindowNeedsOneHeat() {
    assertEquals(1, Heats.forWork(COOLING.window().likely(), COOLING).count().likely().getValue());
    var longer = COOLING.window().likely().multiply(1.0001);
    assertEquals(2, Heats.forWork(longer, COOLING).count().likely().getValue());
  }

  @Test
  void showsItsWorking() {
    Heats heats = Heats.forWork(minutes(2), COOLING).and(seconds(40)).and(minutes(1));
    Workings.check(heats.working(), heats.count().likely());
    Heats tip = Heats.forWork(minutes(2), COOLING.withThinnest(TIP).cutTo(millimetres(100)));
    Workings.check(tip.working(), tip.count().likely());
    assertEquals(tip.cautions(), tip.working().cautions());
    assertTrue(tip.working().toString().contains("a fresh one for each operation"));
  }

  @Test
  void namesWhatEndsAHeat() {
    Heats heats = Heats.forWork(minutes(2), COOLING);
    assertEquals(
        "the bar, 20 mm round, at 800 °C, the coldest that mild steel is forged at", heats.setBy());
    assertEquals("heats for 2 min of work from 1150 °C: 3 (2 to 5)", heats.toString());
    Cooling tip = Cooling.from(fahrenheit(2100), ROUND).withThinnest(TIP).to(fahrenheit(1500));
    assertEquals(
        "the thinnest part, 19 mm × 3 mm flat, at 1500 °F, the end asked for",
        Heats.forWork(minutes(2), tip).setBy());
  }

  @Test
  void cautionsWhereAThinPartIsHeatedAgain() {
    Cooling tipped = COOLING.withThinnest(TIP);
    assertTrue(burns(Heats.forWork(minutes(2), tipped)));
    assertFalse(burns(Heats.forWork(minutes(2), COOLING)));
    assertFalse(burns(Heats.forWork(seconds(2), tipped)));
    assertFalse(burns(Heats.forWork(minutes(2), COOLING.withThinnest(ROUND.section()))));
  }

  @Test
  void refusesWorkOfNothingAndHeatsOfNothing() {
    refused("work", () -> Heats.forWork(seconds(0), COOLING));
    refused("work", () -> Heats.forWork(seconds(1), COOLING).and(seconds(-1)));
    refused("lower end", () -> Heats.forWork(seconds(1), Cooling.from(celsius(700), ROUND)));
    Bar iron = Bar.of(ROUND.section(), Material.WROUGHT_IRON);
    refused(
        "cooling must leave a window",
        () -> Heats.forWork(seconds(1), Cooling.from(celsius(890), iron)));
  }

  private static boolean burns(Heats heats) {
    return heats.cautions().stream()
        .anyMatch(caution -> caution.text().contains("burns if it waits"));
  }

  private static void refused(String part, Runnable call) {
    String message = assertThrows(IllegalArgumentException.class, call::run).getMessage();
    assertTrue(message.contains(part), message);
  }

  private static Estimate<javax.measure.quantity.Dimensionless> number(
      double low, double likely, double high) {
    return Estimate.of(
        Measure.of(low, ShopUnits.ONE),
        Measure.of(likely, ShopUnits.ONE),
        Measure.of(high, ShopUnits.ONE));
  }
}
