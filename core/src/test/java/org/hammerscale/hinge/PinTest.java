package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class PinTest {
  @Test
  void isAsLongAsWhatStandsOnIt() {
    Pin pin = Pin.of(millimetres(10)).withWashers(2, millimetres(2));
    assertEquals(Estimate.exact(millimetres(64)), pin.length(millimetres(60)));
    // Two round heads of 1.5 d more.
    assertEquals(
        Estimate.exact(millimetres(94)),
        pin.headed(Pin.Head.ROUND, Pin.Head.ROUND).length(millimetres(60)));
    assertEquals(
        Estimate.of(millimetres(84), millimetres(86.5), millimetres(89)),
        pin.headed(Pin.Head.ROUND, Pin.Head.LOW_PEEN).length(millimetres(60)));
    assertEquals(Section.round(millimetres(10)), pin.section());
    assertEquals(inches(2), Pin.of(millimetres(10)).length(inches(2)).likely());
  }

  @Test
  void namesTheSourceOfItsHeads() {
    Pin pin = Pin.of(inches("3/8")).headed(Pin.Head.ROUND, Pin.Head.LOW_PEEN);
    Working working = pin.lengthWorking(inches(2));
    Workings.check(working, pin.length(inches(2)).likely());
    assertEquals(Source.Kind.READ, working.sources().get(0).kind());
    assertEquals(Source.Kind.COMMON_PRACTICE, working.sources().get(1).kind());
    Working plain = Pin.of(inches("3/8")).lengthWorking(inches(2));
    Workings.check(plain, inches(2));
    assertEquals(1, plain.sources().size());
    assertTrue(plain.toString().contains("do not quench"));
  }

  @Test
  void areEqualByTheirValues() {
    Pin pin = Pin.of(inches("3/8"));
    assertEquals(pin, Pin.of(inches("3/8")));
    assertEquals(pin.hashCode(), Pin.of(inches("3/8")).hashCode());
    assertNotEquals(pin, pin.headed(Pin.Head.ROUND, Pin.Head.NONE));
    assertNotEquals(pin, pin.withWashers(1, inches("1/16")));
  }

  @Test
  void refusesWhatCannotBe() {
    Pin pin = Pin.of(inches("3/8"));
    assertEquals(
        "diameter must be more than zero, was 0 in; give the finished cold size",
        refused(() -> Pin.of(inches(0))));
    assertTrue(refused(() -> pin.length(inches(0))).startsWith("width must"));
    assertTrue(refused(() -> pin.withWashers(-1, inches(1))).startsWith("count must"));
    assertTrue(refused(() -> pin.withWashers(1, inches(0))).startsWith("thickness must"));
    assertThrows(NullPointerException.class, () -> pin.headed(null, Pin.Head.NONE));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }

  /** 2 in of knuckles and 1/2 in round: heads of 1.1247 to 1.5 d, a cotter's end of 1 to 1.5 d. */
  @Test
  void countsAHeadForgedBeforehandAndAnEndForACotter() {
    Pin pin = Pin.of(inches("1/2")).headed(Pin.Head.FORGED, Pin.Head.KEYED);
    Estimate<Length> length = pin.length(inches(2));
    assertEquals(2 + 0.5 * (1.1247 + 1), length.low().getValue(), 1e-12);
    assertEquals(2 + 0.5 * (1.3 + 1.25), length.likely().getValue(), 1e-12);
    assertEquals(2 + 0.5 * 3, length.high().getValue(), 1e-12);
    assertTrue(pin.lengthWorking(inches(2)).toString().contains("a cotter's hole"));
    assertEquals("1/2 in pin, head forged beforehand, end for a cotter", pin.toString());
  }
}
