package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class CountersinkTest {
  /** A screw measured at the bench, in round numbers. */
  private record Measured(
      Measure<Length> diameter,
      Measure<Length> headDiameter,
      Measure<Angle> headAngle,
      Measure<Length> clearanceHole)
      implements CountersunkHead {}

  private static final Measured SCREW =
      new Measured(millimetres(4), millimetres(10), degrees(90), millimetres(5));

  @Test
  void aHeadThatFitsLeavesALand() {
    Countersink sink = SCREW.countersinkIn(millimetres(4));
    assertTrue(sink.fits());
    assertEquals("10 mm", sink.diameter().toString());
    assertEquals("3 mm", sink.headDepth().toString());
    assertEquals("2.5 mm", sink.depth().toString());
    assertEquals("1.5 mm", sink.land().toString());
    assertEquals("5 mm", sink.diameterAtBack().toString());
    assertEquals(millimetres(0), sink.standsProud());
    assertEquals(millimetres(0), sink.entersWood());
    assertEquals("2.75 mm", sink.bearingThickness().toString());
    assertTrue(sink.cautions().isEmpty());
    assertEquals("90° countersink, 10 mm over a hole of 5 mm in 4 mm", sink.toString());
  }

  @Test
  void aHeadDeeperThanThePlateSaysSo() {
    Countersink sink = SCREW.countersinkIn(millimetres(2));
    assertFalse(sink.fits());
    assertEquals("0.5 mm", sink.standsProud().toString());
    assertEquals("1 mm", sink.entersWood().toString());
    assertEquals("6 mm", sink.diameterAtBack().toString());
    assertEquals(millimetres(0), sink.land());
    assertEquals("1 mm", sink.bearingThickness().toString());
    assertEquals(
        "the head is 3 mm deep and the plate only 2 mm: it stands 0.5 mm proud over a hole of 5"
            + " mm, or reaches 1 mm into the wood; countersink the wood too, take a smaller screw,"
            + " or a round head",
        sink.cautions().get(0).text());
    assertTrue(sink.working().toString().contains("Caution: the head is 3 mm deep"));
    assertTrue(sink.toString().endsWith("in 2 mm, too thin for the head"));
    Countersink neck = SCREW.countersinkIn(millimetres(2.75));
    assertFalse(neck.fits());
    assertEquals("0.25 mm", neck.land().toString());
    assertTrue(
        neck.cautions().get(0).text().contains("only 2.75 mm: its neck reaches 0.25 mm into"),
        neck.cautions()::toString);
  }

  /** Heads of 82°: (A − C) / (2 tan 41°) deep. */
  @Test
  void sinksAmericanScrews() {
    Countersink eight = WoodScrew.number(8).countersinkIn(inches("3/16"));
    assertTrue(eight.fits());
    assertEquals("0.0921 in", eight.depth().toString());
    Countersink fourteen = WoodScrew.number(14).countersinkIn(inches("1/8"));
    assertEquals("0.2897 in", fourteen.diameterAtBack().toString());
    assertEquals("0.01313 in", fourteen.withHole(inches("5/16")).land().toString());
    assertEquals(
        "0.04694 in", OldBritishWoodScrew.number(8).countersinkIn(inches("1/8")).land().toString());
  }

  @Test
  void aKnifeEdgeIsCautionedAgainst() {
    Countersink sink = SCREW.countersinkIn(millimetres(3)).withHole(millimetres(4));
    assertTrue(sink.fits());
    assertTrue(sink.cautions().get(0).text().contains("knife edge"), sink.cautions()::toString);
  }

  @Test
  void speaksThePlatesUnit() {
    Countersink mixed = WoodScrew.number(8).countersinkIn(millimetres(5));
    assertEquals("8.433 mm", mixed.diameter().toString());
    Countersink inch = WoodScrew.number(8).countersinkIn(inches(5 / 25.4));
    assertTrue(mixed.depth().isEquivalentTo(inch.depth()));
    assertTrue(mixed.headDepth().isEquivalentTo(inch.headDepth()));
    assertTrue(mixed.land().isEquivalentTo(inch.land()));
    assertTrue(mixed.hole().isEquivalentTo(inch.hole()));
    assertEquals(degrees(82), mixed.angle());
  }

  @Test
  void showsItsWorkings() {
    for (Countersink sink :
        new Countersink[] {
          SCREW.countersinkIn(millimetres(4)),
          WoodScrew.number(14).countersinkIn(inches("1/8")),
          OldBritishWoodScrew.number(8).countersinkIn(millimetres(3))
        }) {
      Workings.check(sink.working(), sink.depth());
      Workings.check(sink.headWorking(), sink.headDepth());
    }
    assertEquals(SCREW.countersinkIn(millimetres(4)), Countersink.under(SCREW, millimetres(4)));
    assertEquals(
        SCREW.countersinkIn(millimetres(4)).hashCode(),
        Countersink.under(SCREW, millimetres(4)).hashCode());
  }

  @Test
  void refusesWhatIsNoSeat() {
    refused("plate must be more than zero", () -> SCREW.countersinkIn(millimetres(0)));
    Countersink sink = SCREW.countersinkIn(millimetres(4));
    refused(
        "diameter must be at least the 4 mm of the shank, was 3 mm",
        () -> sink.withHole(millimetres(3)));
    refused(
        "diameter must be less than the 10 mm of the head, was 10 mm",
        () -> sink.withHole(millimetres(10)));
    refused("headAngle must be more than 0°", () -> with(degrees(0)).countersinkIn(millimetres(4)));
    refused("headAngle must lie between", () -> with(degrees(180)).countersinkIn(millimetres(4)));
  }

  private static Measured with(Measure<Angle> angle) {
    return new Measured(SCREW.diameter(), SCREW.headDiameter(), angle, SCREW.clearanceHole());
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
