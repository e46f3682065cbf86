package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CoolingTest {
  private static final Bar ROUND = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
  private static final Cooling COOLING = Cooling.from(celsius(1150), ROUND);
  private static final Material OWN =
      Material.of("5160", Measures.kilogramsPerCubicMetre(7850), Source.computed("mill sheet"));

  @Test
  void theSpreadIsThatOfTheEmissivity() {
    // The reference has 46.3971 s and finds that 0.70 to 0.90 moves a time by about −10 and +13 %.
    var time = COOLING.to(celsius(900)).time();
    assertEquals(46.3971, time.likely().in(ShopUnits.SECOND), 5e-5);
    assertEquals(0.90, time.low().ratio(time.likely()), 0.005);
    assertEquals(1.13, time.high().ratio(time.likely()), 0.005);
    var sure = COOLING.to(celsius(900)).withEmissivity(share(0.8));
    assertEquals(Estimate.exact(time.likely()), sure.time());
    assertTrue(sure.emissivity().isExact());
    assertEquals("0.8 (0.7 to 0.9)", COOLING.emissivity().toString());
  }

  @Test
  void theWindowIsAboutHalfOfIt() {
    var time = COOLING.time();
    var window = COOLING.window();
    assertEquals(0.5, window.likely().ratio(time.likely()), 1e-15);
    assertEquals(0.35, window.low().ratio(time.low()), 1e-15);
    assertEquals(0.75, window.high().ratio(time.high()), 1e-15);
  }

  @Test
  void aThinTipHasHalfTheTimeOfItsBar() {
    Bar strap = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
    Cooling whole = Cooling.from(celsius(1150), strap);
    Cooling tipped = whole.withThinnest(Section.flat(millimetres(19), millimetres(3)));
    assertEquals(0.5, tipped.window().likely().ratio(whole.window().likely()), 0.05);
    assertTrue(tipped.windowWorking().title().contains("19 mm × 3 mm flat"));
    Workings.check(tipped.windowWorking(), tipped.window().likely());
    assertTrue(whole.withThinnest(strap.section()).window().equals(whole.window()));
  }

  @Test
  void endsWhereTheMetalMayNoLongerBeForged() {
    assertEquals(Estimate.exact(celsius(800)), COOLING.finish());
    assertEquals(COOLING.to(celsius(800)).time(), COOLING.time());
    assertEquals(celsius(1150), COOLING.heat());
    assertEquals(ROUND, COOLING.bar());
    // Of wrought iron the sources are not sure: 850 to 900 °C.
    Bar iron = Bar.of(ROUND.section(), Material.WROUGHT_IRON);
    Cooling cooling = Cooling.from(celsius(1150), iron).withEmissivity(share(0.8));
    assertEquals(cooling.to(celsius(900)).time().likely(), cooling.time().low());
    assertEquals(cooling.to(celsius(850)).time().likely(), cooling.time().high());
    assertEquals(0, Cooling.from(celsius(890), iron).time().low().getValue(), 0);
  }

  @Test
  void aSteelOfOnesOwnCoolsByTheCurveItIsGiven() {
    Bar bar = Bar.of(ROUND.section(), OWN);
    Cooling own = Cooling.from(celsius(1150), bar).by(HotMetal.carbonSteel(OWN)).to(celsius(800));
    assertEquals(COOLING.time(), own.time());
    // It holds less heat by the curve of austenitic steel, but radiates worse.
    Cooling austenitic = own.by(HotMetal.austenitic(OWN));
    assertTrue(austenitic.time().likely().isGreaterThan(own.time().likely()));
    var alike = austenitic.withEmissivity(own.emissivity());
    assertTrue(alike.time().likely().isLessThan(own.time().likely()));
    Cooling open = Cooling.from(celsius(1150), bar).by(HotMetal.carbonSteel(OWN));
    assertEquals(1, open.cautions().size());
    refused("forging range", open::time);
    refused("emissivity", Cooling.from(celsius(1150), bar)::emissivity);
  }

  @Test
  void showsItsWorking() {
    Bar flat = Bar.of(Section.flat(inches(1), inches("1/4")), Material.NAVAL_BRASS);
    for (Cooling cooling :
        List.of(
            COOLING,
            COOLING.to(celsius(650)),
            COOLING.cutTo(millimetres(60)),
            COOLING.in(Air.moving(metres(3), seconds(2))),
            Cooling.from(fahrenheit(1450), flat).hotAtTheEnd(inches(3)))) {
      Workings.check(cooling.working(), cooling.time().likely());
      Workings.check(cooling.windowWorking(), cooling.window().likely());
      assertEquals(cooling.cautions(), cooling.working().cautions());
    }
    String working = COOLING.working().toString();
    assertTrue(working.contains("the coldest that mild steel is forged at"), working);
    assertTrue(working.contains("FLIR and Omega"), working);
    assertTrue(working.contains("grades up to 0.30 % carbon"), working);
    String own = COOLING.to(celsius(900)).withEmissivity(share(0.6)).working().toString();
    assertTrue(own.contains("the end asked for") && own.contains("emissivity as given"), own);
    assertFalse(own.contains("FLIR") || own.contains("grades up to"), own);
    assertTrue(
        Cooling.from(fahrenheit(1450), flat)
            .working()
            .toString()
            .contains("weldaloy.com C46400 (CDA data), 20 °C"));
  }

  @Test
  void isAtTheHeatFirstAndAtTheRoomsLast() {
    assertEquals(Estimate.exact(celsius(1150)), COOLING.temperatureAfter(seconds(0)));
    assertEquals(Estimate.exact(celsius(20)), COOLING.temperatureAfter(minutes(10_000)));
    var after = COOLING.temperatureAfter(minutes(1));
    assertTrue(
        after.low().isLessThan(after.likely()) && after.high().isGreaterThan(after.likely()));
    assertEquals("1150 °C after 0 s", COOLING.curve(4).get(0).toString());
    assertEquals(5, COOLING.curve(4).size());
  }

  @Test
  void cautionsAgainstTheAnvil() {
    assertEquals(1, COOLING.cautions().size());
    has(COOLING, "anvil, hammer and tongs take heat too");
  }

  @Test
  void cautionsWhereTheBarIsTooThick() {
    // The reference finds the limit near 62 mm.
    assertEquals(1, thick(60).cautions().size());
    assertTrue(thick(60).biot() < 0.1 && thick(65).biot() > 0.1);
    has(thick(65), "more than 0.1");
    Bar brass = Bar.of(ROUND.section(), Material.NAVAL_BRASS);
    has(Cooling.from(celsius(780), brass), "the conductivity of naval brass is not known");
  }

  @Test
  void cautionsWhereTheCurveIsLeastToBeTrusted() {
    has(COOLING.to(celsius(799)), "below 800 °C the time is least to be trusted");
    hasNot(COOLING.to(celsius(800)), "least to be trusted");
    has(
        Cooling.from(fahrenheit(2100), ROUND).to(fahrenheit(1300)),
        "below 1472 °F the time is least to be trusted: the curve's peak at 1355 °F");
    has(Cooling.from(celsius(1210), ROUND), "ends at 1200 °C, below the heat of 1210 °C");
    hasNot(Cooling.from(celsius(1200), ROUND), "ends at");
  }

  @Test
  void cautionsAgainstForgingTooHotOrTooCold() {
    has(
        Cooling.from(celsius(1260), ROUND),
        "too hot to forge mild steel, whose range begins at 1250");
    hasNot(Cooling.from(celsius(1250), ROUND), "too hot");
    has(Cooling.from(celsius(1390), ROUND), "is near the solidus of mild steel, 1480 °C");
    hasNot(Cooling.from(celsius(1380), ROUND), "near the solidus");
    has(
        COOLING.to(celsius(700)),
        "below 800 °C mild steel hardens under the hammer: bend and true");
    hasNot(COOLING.to(celsius(700)), "cracks or splits");
    Bar iron = Bar.of(ROUND.section(), Material.WROUGHT_IRON);
    has(
        Cooling.from(celsius(1200), iron).to(celsius(700)),
        "below 875 °C wrought iron is too cold to forge: it cracks or splits");
    hasNot(COOLING.to(celsius(400)), "blue heat");
    hasNot(Cooling.from(celsius(200), ROUND).to(celsius(100)), "blue heat");
    has(COOLING.to(celsius(340)), "blue heat: between 200 °C and 350 °C");
    Bar aluminium = Bar.of(ROUND.section(), Material.ALUMINIUM_6061);
    has(Cooling.from(celsius(450), aluminium), "aluminium 6061 melts before it glows");
  }

  /** It works very well at any lower heat and cold, so its window is no matter of seconds. */
  @Test
  void copperIsWorkedOnBelowItsForgingRange() {
    Bar copper = Bar.of(ROUND.section(), Material.COPPER);
    Cooling cooling = Cooling.from(celsius(850), copper).withEmissivity(share(0.6));
    assertEquals(Estimate.exact(celsius(375)), cooling.finish());
    hasNot(cooling, "cold to forge");
    hasNot(cooling, "hardens");
    has(cooling.to(celsius(300)), "below 375 °C copper hardens under the hammer");
    assertTrue(cooling.window().likely().isGreaterThan(minutes(1)), () -> "" + cooling.window());
    String text = cooling.working().toString();
    assertTrue(text.contains("below which copper hardens"), text);
    assertTrue(text.contains("annealing 700–1200 °F"), text);
  }

  @Test
  void cautionsAgainstASealedTube() {
    Bar tube = Bar.of(Section.roundTube(millimetres(25), millimetres(3)), Material.MILD_STEEL);
    assertTrue(Cooling.from(celsius(1100), tube).cautions().contains(FireCautions.CLOSED_TUBE));
    assertFalse(COOLING.cautions().contains(FireCautions.CLOSED_TUBE));
    assertTrue(FireCautions.all().contains(FireCautions.CLOSED_TUBE));
    assertTrue(FireCautions.all().stream().allMatch(Caution::isDanger));
  }

  @Test
  void refusesWhatCannotBe() {
    refused("heat must lie between the room at 20 °C and 1480 °C", () -> from(1481));
    refused("heat must lie between the room at 20 °C and", () -> from(20));
    refused("heat must lie between the room at 68 °F", () -> Cooling.from(fahrenheit(60), ROUND));
    refused(
        "give its solidus with withSolidus",
        () -> Cooling.from(celsius(1201), Bar.of(ROUND.section(), OWN)));
    refused("heat must", () -> from(50).in(Air.STILL.at(celsius(60))));
    refused(
        "lower end must lie between the room at 20 °C and the heat of 1150 °C, was 1160 °C",
        () -> COOLING.to(celsius(1160)));
    refused("lower end must", () -> COOLING.to(celsius(20)));
    refused("lower end must", () -> from(700).time());
    refused("lower end must", () -> from(700).window());
    refused("share", () -> COOLING.withEmissivity(share(0)));
    refused("share", () -> COOLING.withEmissivity(share(1.1)));
    refused("length", () -> COOLING.cutTo(millimetres(0)));
    refused("length", () -> COOLING.hotAtTheEnd(millimetres(-1)));
    refused("time", () -> COOLING.temperatureAfter(seconds(-1)));
    refused("steps", () -> COOLING.curve(0));
    refused("steps", () -> COOLING.curve(10_001));
    assertThrows(NullPointerException.class, () -> COOLING.in(null));
    assertThrows(NullPointerException.class, () -> COOLING.by(null));
    assertThrows(NullPointerException.class, () -> COOLING.withThinnest(null));
  }

  @Test
  void airIsStillOrADraught() {
    assertEquals("still air at 20 °C", Air.STILL.toString());
    assertEquals("still air at 5 °C", Air.STILL.at(celsius(5)).toString());
    assertEquals(
        "draught of 2 m/s at 5 °C", Air.moving(metres(2), seconds(1)).at(celsius(5)).toString());
    assertEquals("air taking 10.0 W/(m² K) at 20 °C", Air.taking(10).toString());
    assertEquals(celsius(5), Air.STILL.at(celsius(5)).temperature());
    assertTrue(Air.moving(metres(2), seconds(1)).source().toString().contains("Bernstein"));
    assertTrue(Air.taking(10).source().toString().contains("given by the caller"));
    refused("distance", () -> Air.moving(metres(0), seconds(1)));
    refused("time", () -> Air.moving(metres(1), seconds(0)));
    refused("wattsPerSquareMetreKelvin", () -> Air.taking(-1));
    refused("wattsPerSquareMetreKelvin", () -> Air.taking(Double.NaN));
    refused("room", () -> Air.STILL.at(celsius(101)));
    refused("room", () -> Air.STILL.at(celsius(-61)));
  }

  private static Cooling from(double heat) {
    return Cooling.from(celsius(heat), ROUND);
  }

  private static Cooling thick(double diameter) {
    return Cooling.from(
        celsius(1150), Bar.of(Section.round(millimetres(diameter)), Material.MILD_STEEL));
  }

  private static void has(Cooling cooling, String text) {
    assertTrue(
        cooling.cautions().stream().anyMatch(caution -> caution.text().contains(text)),
        () -> cooling.cautions().toString());
  }

  private static void hasNot(Cooling cooling, String text) {
    assertTrue(
        cooling.cautions().stream().noneMatch(caution -> caution.text().contains(text)),
        () -> cooling.cautions().toString());
  }

  private static void refused(String part, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message.contains(part), message);
  }

  private static Estimate<Dimensionless> share(double value) {
    return Estimate.exact(Measure.of(value, ShopUnits.ONE));
  }

  @Test
  void takesAnEmissivityAsAPlainNumber() {
    Estimate<Dimensionless> share = Estimate.exact(Measure.of(0.85, ShopUnits.ONE));
    assertEquals(COOLING.withEmissivity(share).time(), COOLING.withEmissivity(0.85).time());
    assertEquals(
        "share must be more than 0 and at most 1.0, was 1.1; scaled steel has 0.7 to 0.9",
        assertThrows(IllegalArgumentException.class, () -> COOLING.withEmissivity(1.1))
            .getMessage());
  }
}
