package org.hammerscale.heat;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.junit.jupiter.api.Test;

/** Times that only this code has reckoned: they notice a change, and validate nothing. */
class CoolingRegressionTest {
  private static final Cooling COOLING =
      Cooling.from(celsius(1150), Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL));

  @Test
  void regressionOfWhatTheCallerTells() {
    assertEquals("68.91 s (62 s to 77.55 s)", COOLING.cutTo(millimetres(60)).time().toString());
    Air draught = Air.moving(metres(2), seconds(1));
    assertEquals("68.82 s (62.82 s to 76.1 s)", COOLING.in(draught).time().toString());
    Cooling austenitic = COOLING.by(HotMetal.austenitic(Material.MILD_STEEL));
    assertEquals("81.53 s (61.06 s to 122.7 s)", austenitic.time().toString());
  }

  @Test
  void regressionOfTheCurve() {
    assertEquals("975 °C after 28.75 s", COOLING.curve(4).get(2).toString());
  }
}
