package org.hammerscale.bending;

import static org.hammerscale.bending.BendTest.refused;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

/** Scrolls, courses, coils, twists, hooks and joggles. */
class CurvesTest {
  private static final Section BAR = Section.square(inches("1/4"));
  private static final Scroll EVEN = Scroll.archimedean(inches("1/2"), inches(2), 1.5, BAR);
  private static final Scroll OPEN = Scroll.logarithmic(inches("1/2"), inches(4), 1.5, BAR);
  private static final Scroll STRING = Scroll.involute(inches("1/2"), 1.5, BAR);

  @Test
  void scrollsAnswerBackwards() {
    for (Scroll scroll : List.of(EVEN, OPEN, STRING)) {
      Measure<?> half = scroll.using(inches(5)).developedLength();
      assertEquals(5, half.getValue(), 1e-11, scroll::toString);
      assertEquals(50, scroll.using(inches(50)).developedLength().getValue(), 1e-11);
      assertEquals(7, scroll.scaledTo(inches(7)).developedLength().getValue(), 1e-12);
      assertEquals(1.5, scroll.using(scroll.developedLength()).turns(), 1e-11);
      assertEquals(scroll.innerRadius(), scroll.using(inches(5)).innerRadius());
    }
    for (Scroll scroll : List.of(EVEN, OPEN)) {
      Scroll tight = scroll.tightenedTo(inches(30));
      assertTrue(tight.turns() > scroll.turns());
      assertEquals(30, tight.developedLength().getValue(), 1e-11);
      assertEquals(scroll.outerRadius(), tight.outerRadius());
      assertEquals(3.6, scroll.tightenedTo(inches(3.6)).developedLength().getValue(), 1e-11);
      refused("length must be more than the", () -> scroll.tightenedTo(inches(1)));
    }
    refused("scroll must be Archimedean", () -> STRING.tightenedTo(inches(30)));
  }

  @Test
  void evenScrollsMayBeginAtTheCentreOrBeCircles() {
    Scroll centre = Scroll.archimedean(inches(0), inches(3), 3, BAR);
    assertEquals(20, centre.using(inches(20)).developedLength().getValue(), 1e-11);
    Scroll circle = Scroll.archimedean(inches(2), inches(2), 3, BAR);
    assertEquals(12 * Math.PI, circle.developedLength().getValue(), 1e-13);
    assertEquals(1, circle.using(inches(4 * Math.PI)).turns(), 1e-13);
    assertEquals(1, circle.tightenedTo(inches(4 * Math.PI)).turns(), 1e-13);
    assertTrue(circle.cautions().get(0).text().contains("lie in one another"));
  }

  @Test
  void scrollsShowTheirWorkings() {
    for (Scroll scroll : List.of(EVEN, OPEN, STRING)) {
      Workings.check(scroll.working(), scroll.developedLength());
      Workings.check(scroll.meanRadiusWorking(), scroll.meanRadiusLength());
      assertEquals("scroll", scroll.name());
      assertEquals(2 * scroll.outerRadius().getValue() + 0.25, scroll.reach().getValue(), 1e-15);
      assertTrue(scroll.cautions().isEmpty(), scroll::toString);
    }
    assertEquals(
        "Archimedean scroll from 1/2 in to 2 in radius in 1.5 turns, of 1/4 in square",
        EVEN.toString());
    assertTrue(EVEN.using(inches(18)).toString().contains("in 1.937 turns"));
  }

  @Test
  void scrollsCautionWhereCoilsOrHeartAreTight() {
    assertEquals(1, Scroll.archimedean(inches("1/2"), inches(1), 3, BAR).cautions().size());
    assertEquals(1, Scroll.logarithmic(inches("1/8"), inches(4), 1, BAR).cautions().size());
  }

  @Test
  void scrollsRefuseBadSizes() {
    refused(
        "outer radius must be at least the inner one of 2 in, was 1 in",
        () -> Scroll.archimedean(inches(2), inches(1), 1, BAR));
    refused(
        "outer radius must be more than the inner one",
        () -> Scroll.logarithmic(inches(2), inches(2), 1, BAR));
    refused("inner radius", () -> Scroll.logarithmic(inches(0), inches(2), 1, BAR));
    refused("turns must be more than 0", () -> Scroll.archimedean(inches(1), inches(2), 0, BAR));
    refused("turns must be more than 0", () -> Scroll.involute(inches(1), 1001, BAR));
    refused("peg radius must be more", () -> Scroll.involute(inches(0), 1, BAR));
    refused("length must be more than zero", () -> EVEN.using(inches(0)));
  }

  @Test
  void coursesAddUpTheirStraights() {
    Course start = Course.from(millimetres(10), millimetres(-10), BAR);
    assertEquals(millimetres(0), start.developedLength());
    assertEquals(millimetres(0), start.working().result());
    assertEquals("course through 1 point, of 1/4 in square", start.toString());
    refused("course must have a length", () -> start.scaledTo(inches(1)));
    Course bent = start.to(millimetres(40), millimetres(30)).to(millimetres(40), millimetres(80));
    assertEquals(millimetres(100), bent.developedLength());
    assertEquals(3, bent.points());
    assertEquals(Math.hypot(30, 90), bent.reach().getValue(), 1e-12);
    assertEquals("course", bent.name());
    Workings.check(bent.working(), bent.developedLength());
    assertEquals(250, bent.scaledTo(millimetres(250)).developedLength().getValue(), 1e-12);
    assertTrue(bent.cautions().get(0).text().contains("turns by 37° at a point"));
    // A circle of 24 chords: short by 15°² / 24.
    Course circle = Course.from(millimetres(100), millimetres(0), BAR);
    for (int i = 1; i <= 24; i++) {
      double angle = Math.toRadians(15) * i;
      circle = circle.to(millimetres(100 * Math.cos(angle)), millimetres(100 * Math.sin(angle)));
    }
    double part = circle.developedLength().getValue() / (200 * Math.PI);
    assertEquals(1 - Math.toRadians(15) * Math.toRadians(15) / 24, part, 1e-5);
    assertTrue(circle.cautions().isEmpty());
  }

  @Test
  void coilsRiseEvenly() {
    Section rod = Section.round(millimetres(10));
    Coil coil = Coil.around(millimetres(80), 5, millimetres(40), rod);
    assertEquals(millimetres(200), coil.reach());
    assertEquals(millimetres(80), coil.insideDiameter());
    assertEquals(millimetres(40), coil.pitch());
    assertEquals("coil", coil.name());
    assertEquals(7, coil.using(coil.developedLength().multiply(1.4)).turns(), 1e-12);
    Workings.check(coil.working(), coil.developedLength());
    assertTrue(coil.cautions().isEmpty());
    assertEquals(1, Coil.around(millimetres(80), 5, millimetres(9), rod).cautions().size());
    assertTrue(Coil.around(millimetres(80), 1, millimetres(0), rod).cautions().isEmpty());
    // One flat turn is a ring.
    assertTrue(
        Coil.around(millimetres(80), 1, millimetres(0), rod)
            .developedLength()
            .isEquivalentTo(Ring.inside(millimetres(80), rod).developedLength()));
    refused("turns", () -> Coil.around(inches(1), -1, inches(1), rod));
    refused("pitch", () -> Coil.around(inches(1), 1, inches(-1), rod));
    refused("mandrel", () -> Coil.around(inches(0), 1, inches(1), rod));
  }

  @Test
  void twistsKeepTheirLength() {
    Twist twist = Twist.of(1, inches(2), Section.square(inches("3/8")));
    assertEquals(Estimate.exact(inches(2)), twist.stock(Section.square(inches("3/8"))));
    assertEquals(inches(2), twist.reach());
    assertEquals(inches(2), twist.pitch());
    assertEquals("twist", twist.name());
    assertEquals(2.5, twist.using(inches(5)).turns());
    assertEquals(twist.pitch(), twist.using(inches(5)).pitch());
    assertTrue(twist.cautions().isEmpty());
    assertEquals(1, Twist.of(2, inches(2), Section.square(inches("3/8"))).cautions().size());
    Workings.check(twist.working(), twist.developedLength());
    Workings.check(twist.pitchWorking(), twist.pitch());
    Workings.check(twist.cornerWorking(), twist.cornerLength());
    Twist round = Twist.of(3, millimetres(100), Section.round(millimetres(12)));
    Workings.check(round.cornerWorking(), round.cornerLength());
    assertEquals(millimetres(6), round.cornerRadius());
    refused("turns", () -> Twist.of(0, inches(1), BAR));
    refused("length", () -> Twist.of(1, inches(0), BAR));
  }

  @Test
  void hooksHaveAnArcAndATip() {
    Hook open = Hook.open(inches(3), BAR);
    assertEquals("open hook", open.name());
    assertEquals(inches("1 3/4"), open.reach());
    assertEquals(inches("1 1/2"), open.insideRadius());
    assertTrue(open.cautions().get(0).isDanger());
    assertEquals(inches(0), open.tip());
    Hook cabin = Hook.cabin(inches("1/8"), BAR).withTip(inches(1));
    assertEquals("cabin hook", cabin.name());
    assertEquals(1 + Math.PI / 8, cabin.developedLength().getValue(), 1e-15);
    assertEquals(inches("3/8"), cabin.reach());
    assertTrue(cabin.cautions().isEmpty());
    Hook half = cabin.withArc(degrees(60));
    assertEquals(degrees(60), half.arc());
    assertEquals(0.375 * Math.sqrt(3) / 2 + 0.5, half.reach().getValue(), 1e-15);
    assertEquals(6, open.using(inches(6)).developedLength().getValue(), 1e-14);
    Workings.check(open.withTip(inches(1)).working(), open.withTip(inches(1)).developedLength());
    Workings.check(half.working(), half.developedLength());
    refused("length must be at least the 5.1051 in that the arc", () -> open.using(inches(5)));
    refused("tip must not be negative", () -> open.withTip(inches(-1)));
    refused("angle must lie between", () -> open.withArc(degrees(400)));
    refused("inside diameter", () -> Hook.open(inches(0), BAR));
    refused("inside radius", () -> Hook.cabin(inches(-1), BAR));
  }

  @Test
  void aCabinHookIsAPieceOfItsFeatures() {
    Section rod = Section.round(millimetres(8));
    Layout layout =
        Piece.of(
                Bar.of(rod, Material.MILD_STEEL),
                Eye.turned(millimetres(12), rod),
                Plain.of(rod, millimetres(120)),
                Hook.cabin(millimetres(4), rod).withTip(millimetres(25)))
            .layout();
    // Full turn of 20 mm mean diameter, the shank, a quarter turn of 8 mm mean radius, the tip.
    double expected = 20 * Math.PI + 120 + 4 * Math.PI + 25;
    assertEquals(expected, layout.cutLength().likely().getValue(), 1e-12);
    assertEquals(20 * Math.PI, layout.marks().get(0).position().likely().getValue(), 1e-12);
    assertEquals(28 + 120 + 12, layout.finishedLength().getValue(), 1e-12);
    assertTrue(layout.cautions().isEmpty());
  }

  @Test
  void jogglesGoSideways() {
    Joggle joggle = Joggle.by(inches(1), degrees(45), inches("1/4"), BAR);
    assertEquals("joggle", joggle.name());
    assertEquals(inches(1), joggle.offset());
    assertEquals(inches("1/4"), joggle.insideRadius());
    Workings.check(joggle.working(), joggle.developedLength());
    Workings.check(joggle.runWorking(), joggle.reach());
    assertTrue(joggle.takeUp().isGreaterThan(inches(0)));
    assertEquals(45, joggle.over(joggle.reach()).angle().in(degrees(1).getUnit()), 1e-11);
    assertEquals(3, joggle.over(inches(3)).reach().getValue(), 1e-13);
    // The shortest run: two quarter rounds of 3/8 in with 1/4 in between.
    Joggle steep = joggle.over(inches("3/4"));
    assertEquals(90, steep.angle().in(degrees(1).getUnit()), 1e-11);
    assertEquals(0.25, steep.straight().getValue(), 1e-14);
    Joggle low = Joggle.by(inches("1/4"), degrees(30), inches("1/4"), BAR);
    double least = Math.sqrt(0.25 * (4 * 0.375 - 0.25));
    assertEquals(0, low.over(inches(least)).straight().getValue(), 1e-7);
    refused("run must be at least 3/4 in", () -> joggle.over(inches(0.7)));
    refused("run must be at least", () -> low.over(inches("1/2")));
    refused("angle must be more than 0°", () -> Joggle.by(inches(1), degrees(0), inches(1), BAR));
    refused(
        "such that both bends give no more than the offset of 1/8 in",
        () -> Joggle.by(inches("1/8"), degrees(90), inches("1/4"), BAR));
    refused("offset", () -> Joggle.by(inches(0), degrees(9), inches(1), BAR));
    assertEquals(1, Joggle.by(inches(1), degrees(45), inches(0), BAR).cautions().size());
  }
}
