package org.hammerscale.fastening;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BoltRivetNailTest {
  private static final Section NAIL = Section.square(inches("3/16"));

  @Test
  void aCarriageBoltIsAsLongAsAllItGoesThroughAndItsNut() {
    CarriageBolt bolt = CarriageBolt.of(inches("1/2")).through(inches("1/4")).through(inches(2));
    // 2 1/4 + 7/16 + 2/13 by hand.
    assertEquals(2.6875 + 2 / 13.0, bolt.length().getValue(), 1e-12);
    assertEquals(0.125, bolt.withWasher(inches("1/8")).length().subtract(bolt.length()).getValue());
    // 2 1/8 + 21/64 + 1/8 by hand.
    CarriageBolt door =
        CarriageBolt.of(inches("3/8")).through(inches("1/4")).through(inches("1 7/8"));
    assertEquals("2 37/64 in", door.length().toString());
    assertEquals("0.844 in", door.headDiameter().toString());
    Workings.check(bolt.working(), bolt.length());
    CarriageBolt metric = CarriageBolt.of(millimetres(8)).through(millimetres(6));
    assertEquals("15.5 mm", metric.length().toString());
    Workings.check(metric.working(), metric.length());
    assertEquals("33/64 in", bolt.squareHole().toString());
    assertEquals("9/16 in", bolt.clearanceHole().toString());
    assertEquals("9 mm", metric.squareHole().toString());
    assertEquals("9 mm", metric.clearanceHole().toString());
    assertEquals(CarriageBolt.of(inches("1/2")), CarriageBolt.of(millimetres(12.7)));
    assertEquals(
        CarriageBolt.of(inches("1/2")).hashCode(), CarriageBolt.of(millimetres(12.7)).hashCode());
    assertNotEquals(bolt, CarriageBolt.of(inches("1/2")));
  }

  @Test
  void aNailIsClenchedOver() {
    ClenchedNail nail = ClenchedNail.of(NAIL).through(inches("3/16")).through(inches("1 3/4"));
    assertEquals("2 3/16 in", nail.length().toString());
    assertEquals("1 15/16 in", nail.grip().toString());
    Workings.check(nail.working(), nail.length());
    assertEquals(
        "only 1/4 in comes through, less than two thicknesses of the nail (3/16 in): it is too"
            + " stiff to bend over; leave more with withClench",
        nail.cautions().get(0).text());
    assertTrue(nail.withClench(inches("3/8")).cautions().isEmpty());
    assertEquals(WoodFastener.Kind.NAIL, nail.kind());
    assertEquals(nail.diameter(), nail.rootDiameter());
    assertEquals(NAIL, nail.shank());
    assertEquals("3/16 in square nail, clenched", nail.toString());
    assertTrue(nail.barForShank().low().isGreaterThan(nail.length()));
    ClenchedNail mixed = ClenchedNail.of(Section.round(inches("1/8"))).through(millimetres(30));
    assertEquals("36.35 mm", mixed.length().toString());
  }

  @Test
  void aRivetByUnwinIsCautionedInThinPlate() {
    Rivet thin = Rivet.byUnwin(inches("1/8"));
    assertTrue(thin.cautions().get(0).text().contains("made for boiler plate"));
    assertEquals(thin.diameter(), thin.joining(inches("1/8")).diameter());
    assertTrue(Rivet.byUnwin(inches("3/8")).cautions().stream().noneMatch(c -> boiler(c.text())));
    assertTrue(
        Rivet.byUnwin(millimetres(10))
            .diameter()
            .isEquivalentTo(Rivet.byUnwin(inches(10 / 25.4)).diameter()));
    assertTrue(
        Rivet.of(inches("1/4"))
            .joining(inches("3/8"))
            .cautions()
            .get(0)
            .text()
            .contains("thinner than the plate"));
    assertTrue(Rivet.of(inches("1/2")).cautions().get(0).text().contains("more than 1/32 in"));
    assertTrue(Rivet.of(inches("3/8")).cautions().isEmpty(), "just 1/32 in");
  }

  private static boolean boiler(String text) {
    return text.contains("boiler");
  }

  @Test
  void aRivetKnowsItsHeads() {
    Rivet rivet = Rivet.of(millimetres(12));
    assertEquals("13 mm", rivet.hole().toString());
    assertEquals("18 mm", rivet.headStock().toString());
    // 20 mm of a 13 mm hole, and 7/48 of the diameter: 20 × 169/144 + 1.75.
    double flush = rivet.withCountersunkHead(millimetres(20)).length().getValue();
    assertEquals(20 * 169 / 144.0 + 1.75, flush, 1e-12);
    assertTrue(rivet.withSnapHead(millimetres(20)).length().getValue() > flush);
    assertEquals("2.5 mm", rivet.countersinkIn(millimetres(4)).depth().toString());
    assertEquals("3 mm", rivet.countersinkIn(millimetres(4)).headDepth().toString());
    Rivet inch = Rivet.of(inches("3/8"));
    assertEquals("9/16 in", inch.headStock().toString());
    // A cone from d to 1.5 d, d/4 deep: 19/48 of d.
    assertEquals("0.1484 in", inch.countersunkHead().stockLength().toString());
    Workings.check(rivet.working(), rivet.diameter());
    Workings.check(rivet.holeWorking(), rivet.hole());
    Workings.check(rivet.headWorking(), rivet.headStock());
    Rivet unwin = Rivet.byUnwin(millimetres(10));
    Workings.check(unwin.working(), unwin.diameter());
    Workings.check(unwin.holeWorking(), unwin.hole());
    assertEquals("12 mm rivet", rivet.toString());
  }

  @Test
  void refuseWhatCannotBe() {
    refused("thickness must be known", () -> CarriageBolt.of(inches("1/2")).length());
    refused("thickness must be known", () -> ClenchedNail.of(NAIL).length());
    refused("thickness must be known", () -> ClenchedNail.of(NAIL).grip());
    refused("thickness must be more", () -> ClenchedNail.of(NAIL).through(inches(0)));
    refused(
        "thickness must not be negative",
        () -> CarriageBolt.of(inches("1/2")).withWasher(inches(-1)));
    refused("diameter must be 1/4, 5/16", () -> CarriageBolt.of(millimetres(9)));
    refused("length must be more than zero", () -> ClenchedNail.of(NAIL).withClench(inches(0)));
    refused(
        "shank must be square or round, was 1 in × 1/4 in flat",
        () -> ClenchedNail.of(Section.flat(inches(1), inches("1/4"))));
    refused("diameter must be more than zero", () -> Rivet.of(inches(0)));
    refused("plate must be more than zero", () -> Rivet.byUnwin(inches(-1)));
    refused("thickestPlate must be more than zero", () -> Rivet.of(inches(1)).joining(inches(0)));
    refused("grip must be more than zero", () -> Rivet.of(inches(1)).withSnapHead(inches(0)));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.startsWith(message), said);
  }
}
