package org.hammerscale.piece;

import static org.hammerscale.piece.PieceEnd.FIRST;
import static org.hammerscale.piece.PieceEnd.LAST;
import static org.hammerscale.units.Measures.fahrenheit;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.internal.StudentT;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TrialLogTest {
  private static final Section FLAT = Section.flat(millimetres(25), millimetres(6));
  private static final Layout PLAIN =
      Piece.of(Bar.of(FLAT, Material.MILD_STEEL), Plain.of(FLAT, millimetres(420))).layout();

  private static final Section STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final HeatPlan HEATS = HeatPlan.soaking(fahrenheit(2100), minutes(1)).inHeats(8);

  /** Barrel, plain stretch, taper: trimmed at both ends, the strip before it is rolled. */
  private static final Layout LEAF =
      Piece.of(
              Bar.of(STRAP, Material.MILD_STEEL),
              Barrel.around(inches("1/2"), STRAP),
              Plain.of(STRAP, inches(9)),
              Taper.between(STRAP, TIP, inches(6)))
          .withReferenceAfter(1)
          .trimmedAt(FIRST, LAST)
          .layout(HEATS);

  private static Trial took(double millimetres) {
    return Trial.cut(millimetres(440)).off(LAST, millimetres(440 - millimetres));
  }

  private static final TrialLog FOUR =
      TrialLog.of(PLAIN)
          .withSpread(millimetres(5))
          .withSpreadWorth(1)
          .with(took(412), took(415), took(410), took(413));

  @Test
  void boundByBookAndTrials() {
    EndTrials end = FOUR.at(LAST);
    // By hand: κ = ν = 5, μ = (420 + 4 × 412.5)/5, S = 25 + 13 + 4 × 7.5²/5; t(5, 0.95) = 2.015048.
    assertEquals(414 + 2.015048 * Math.sqrt(83 / 5.0 * 1.2), millimetresOf(end.bound(0.95)), 1e-5);
    assertEquals(414, millimetresOf(end.next().likely()), 1e-12);
    assertEquals(end.bound(0.95), end.next().high());
    assertEquals(412.5, millimetresOf(end.mean()), 1e-12);
    assertEquals(Math.sqrt(83 / 5.0), millimetresOf(end.spread()), 1e-12);
    assertEquals(4, end.count());
    assertEquals(LAST, end.end());
    assertEquals(Estimate.exact(millimetres(420)), end.book());
    assertEquals(0.95, end.odds(end.bound(0.95)), 1e-9);
    assertEquals(0.5, end.odds(end.next().likely()), 1e-12);
    Workings.check(end.working(0.9), end.bound(0.9));
    assertEquals(
        "last end, 4 trials: next 414 mm (405.01 mm to 422.99 mm) by the book 420 mm",
        end.toString());
    assertEquals("log of 4 trials\n  " + end, FOUR.toString());
  }

  @Test
  void classicalBoundByItsName() {
    assertEquals(417.9772, millimetresOf(FOUR.at(LAST).classicalBound(0.95)), 5e-5);
    assertEquals(
        "trials must be at least 2 for the classical bound, was 1; ask bound(odds), which goes by"
            + " the book as well",
        message(() -> TrialLog.of(PLAIN).with(took(412)).at(LAST).classicalBound(0.95)));
  }

  @Test
  void classicalBoundIsWhereTheBookWeighsNothing() {
    double[] taken = {412, 415, 410, 413};
    ShopModel weightless = ShopModel.of(420, 1e-13, -1, 0, taken);
    ShopModel classical = ShopModel.of(420, 1, 1, 5, taken);
    for (double p : new double[] {0.5, 0.9, 0.95, 0.99}) {
      assertEquals(classical.classicalBound(p), weightless.bound(Notes.NONE, p), 1e-9);
    }
  }

  /** So little metal that its volume is rounded to none takes no bar at all by the book. */
  @Test
  void whereTheBookTakesNothingAllFeaturesMoveAlike() {
    Plain wire = Plain.of(Section.square(millimetres(0.5)), millimetres(Double.MIN_VALUE));
    Piece piece = Piece.of(Bar.of(FLAT, Material.MILD_STEEL), wire, wire);
    TrialLog log =
        TrialLog.of(piece.layout()).with(Trial.cut(millimetres(44)).off(LAST, millimetres(0)));
    Layout next = log.layout();
    // Half of the way from the book's nothing to the one piece, and each takes half of that.
    assertEquals(11, millimetresOf(next.correctionOf(0)), 1e-12);
    assertEquals(11, millimetresOf(next.correctionOf(1)), 1e-12);
    assertEquals(2, log.cautions().size());
  }

  @Test
  void beforeTheFirstTrialItIsTheBook() {
    TrialLog none = TrialLog.of(LEAF);
    assertSame(LEAF, none.layout());
    EndTrials end = none.at(LAST);
    assertEquals(end.book(), end.next());
    assertEquals(inchesOf(end.book().high()), inchesOf(end.bound(0.95)), 1e-9);
    assertEquals(1, end.chance());
    assertFalse(end.differsFromBook());
    assertEquals(List.of(), none.cautions());
    assertEquals("log of 0 trials\n  " + end, none.toString());
  }

  @Test
  void whatIsTrimmedIsTurnedBackIntoBar() {
    Trial trial = Trial.cut(inches(15)).marked(inches("2 3/8")).off(LAST, inches(2));
    // 2 in of 3/4 × 1/8 is 1/2 in of 1 1/2 × 1/4.
    EndTrials end = TrialLog.of(LEAF).with(trial).at(LAST);
    assertEquals(15 - 2.375 - 0.5, inchesOf(end.mean()), 1e-12);
    Trial stout = Trial.cut(inches(15)).marked(inches("2 3/8")).off(LAST, inches("1/2"), STRAP);
    assertEquals(end.mean(), TrialLog.of(LEAF).with(stout).at(LAST).mean());
  }

  @Test
  void movesMarksAndCut() {
    MarkedBar first = LEAF.on(Graduation.SIXTEENTH);
    TrialLog log =
        TrialLog.of(LEAF)
            .with(
                Trial.of(first).off(LAST, inches(4)),
                Trial.of(first).off(LAST, inches("3 3/4")),
                Trial.of(first).off(LAST, inches("3 7/8")));
    Layout next = log.layout();
    EndTrials end = log.at(LAST);
    // The barrel is as the book has it; the plain stretch is exact, so the taper takes it all.
    assertEquals(LEAF.marks().get(0).position(), next.marks().get(0).position());
    assertEquals(
        inchesOf(LEAF.marks().get(1).position().likely()),
        inchesOf(next.marks().get(1).position().likely()),
        1e-12);
    assertEquals(
        inchesOf(end.next().likely()) - inchesOf(end.book().likely()),
        inchesOf(next.cutLength().likely()) - inchesOf(LEAF.cutLength().likely()),
        1e-12);
    MarkedBar second = next.on(Graduation.SIXTEENTH);
    assertEquals(first.reference(), second.reference());
    assertTrue(second.cutLength().isLessThan(first.cutLength()));
    assertEquals(
        end.bound(0.95).upTo(Graduation.SIXTEENTH),
        second.cutLength().subtract(second.reference()));
    assertTrue(next.on(Graduation.SIXTEENTH, 0.99).cutLength().isGreaterThan(second.cutLength()));
    // What the plan of the heats foretells stays.
    assertEquals(LEAF.scaleAllowance(), next.scaleAllowance());
    Workings.check(next.working(), next.cutLength().likely());
    assertTrue(next.working().toString().contains("correction by 3 trials"));
    assertEquals(3, log.trials().size());
    assertSame(LEAF, log.book());
    assertEquals(List.of(end.toString()), log.ends().stream().map(Object::toString).toList());
  }

  @Test
  void marksMoveByTheirPartOfTheSpread() {
    Section round = Section.round(inches("3/8"));
    Section small = Section.round(inches("1/4"));
    Layout book =
        Piece.of(
                Bar.of(STRAP, Material.MILD_STEEL),
                Plain.of(STRAP, inches(4)),
                Shoulder.between(STRAP, round, inches(6)),
                Shoulder.between(round, small, inches(6)))
            .layout();
    MarkedBar first = book.on(Graduation.SIXTEENTH);
    TrialLog log = TrialLog.of(book).with(Trial.of(first).off(LAST, inches(3)));
    List<Double> moved =
        IntStream.range(0, 3)
            .mapToObj(
                i ->
                    inchesOf(log.layout().marks().get(i).position().likely())
                        - inchesOf(book.marks().get(i).position().likely()))
            .toList();
    double stout = inchesOf(book.stock(1).high()) - inchesOf(book.stock(1).low());
    double thin = inchesOf(book.stock(2).high()) - inchesOf(book.stock(2).low());
    assertEquals(0, moved.get(0), 1e-12);
    assertEquals(moved.get(2) * stout / (stout + thin), moved.get(1), 1e-12);
    assertTrue(log.cautions().get(0).text().contains("cannot be shared out"), "caution");
    assertTrue(log.layout().cautions().containsAll(log.cautions()));
    Estimate<?> spread = log.layout().cutLength();
    assertEquals(
        inchesOf(log.at(LAST).next().high()) - inchesOf(log.at(LAST).next().low()),
        inchesOf(log.layout().cutLength().high()) - inchesOf(log.layout().cutLength().low()),
        1e-12,
        spread::toString);
  }

  @Test
  void exactFeaturesShareByTheBarThatIsWorked() {
    Layout book =
        Piece.of(
                Bar.of(STRAP, Material.MILD_STEEL),
                Plain.of(STRAP, inches(9)),
                Taper.between(STRAP, TIP, inches(6)))
            .layout();
    Trial trial = Trial.cut(inches(14)).off(LAST, inches(1), STRAP);
    Layout next = TrialLog.of(book).with(trial).layout();
    assertEquals(inches(9), next.marks().get(0).position().likely());
    assertTrue(next.cutLength().likely().isGreaterThan(book.cutLength().likely()));
    // Nothing is forged there at all: the shift lies on the bar as it is.
    assertEquals(
        millimetresOf(FOUR.at(LAST).next().likely()),
        millimetresOf(FOUR.layout().cutLength().likely()),
        1e-12);
  }

  @Test
  void tellsWhereTheShopIsNotTheBook() {
    assertFalse(
        TrialLog.of(PLAIN).withSpread(millimetres(5)).with(took(415)).at(LAST).differsFromBook());
    TrialLog far = TrialLog.of(PLAIN).with(took(412), took(415), took(410), took(413));
    // Student's test by hand: freedom 2 + 4 − 1.
    double s0 = 0.4;
    double pooled = Math.sqrt((2 * s0 * s0 + 13) / 5);
    assertEquals(2 * StudentT.probability(5, -7.5 / pooled * 2), far.at(LAST).chance(), 1e-12);
    assertTrue(far.at(LAST).differsFromBook());
    assertTrue(far.cautions().get(0).text().startsWith("this shop takes less bar"), "caution");
  }

  @Test
  void weightsOfTheBook() {
    TrialLog light = FOUR.withMeanWorth(0.1);
    TrialLog heavy = FOUR.withMeanWorth(100);
    assertTrue(light.at(LAST).next().likely().isLessThan(FOUR.at(LAST).next().likely()));
    assertTrue(heavy.at(LAST).next().likely().isGreaterThan(FOUR.at(LAST).next().likely()));
    assertEquals(
        "pieces must be at least 1, was 0.5; less would leave a spread without bounds",
        message(() -> FOUR.withSpreadWorth(0.5)));
    assertThrows(IllegalArgumentException.class, () -> FOUR.withMeanWorth(0));
    assertThrows(IllegalArgumentException.class, () -> FOUR.withSpread(millimetres(0)));
  }

  @Test
  void logsOfSeveralOrdersCombine() {
    TrialLog spring = TrialLog.of(PLAIN).with(took(412), took(415));
    TrialLog autumn = TrialLog.of(PLAIN).with(took(410), took(413));
    TrialLog both = autumn.with(spring.trials());
    assertEquals(4, both.at(LAST).count());
    assertEquals(
        TrialLog.of(PLAIN).with(took(413), took(412), took(415), took(410)).at(LAST).bound(0.95),
        both.at(LAST).bound(0.95));
  }

  @Test
  void refusesWhatDoesNotFitThePiece() {
    TrialLog log = TrialLog.of(LEAF);
    assertEquals(
        "trial must tell where its reference mark was, was cut 15 in; 1/4 in off at the last end; a"
            + " single total cannot be shared out to the two sides of the mark, so give it with"
            + " marked(…)",
        message(() -> log.with(Trial.cut(inches(15)).off(LAST, inches("1/4")))));
    assertEquals(
        "more must tell what was cut off at the last end, was cut 15 in; write 0 if there was"
            + " nothing to cut off",
        message(() -> log.with(Trial.cut(inches(15)))));
    assertEquals(
        "trial must have less cut off at the last end than the 3 in of bar on that side, was 5 in of"
            + " bar; write down how long the cut-off piece is, and its section",
        message(
            () -> log.with(Trial.cut(inches(5)).marked(inches(2)).off(LAST, inches(5), STRAP))));
    assertEquals(
        "end must be trimmed after the work, was the first end; ask for the last end",
        message(() -> log.at(FIRST)));
    assertEquals(
        "layout must be the book's, was one that a log has corrected; add trials to that log",
        message(() -> TrialLog.of(FOUR.layout())));
    assertEquals(
        "layout must have an end that is trimmed after the work, was a piece of 25 mm × 6 mm flat,"
            + " mild steel: plain stretch; name a free end with trimmedAt(…)",
        message(() -> TrialLog.of(PLAIN.piece().trimmedAt().layout())));
    assertEquals(
        "odds must lie between 0.5 and 0.9999, was 1.0; give 0.95 for what is enough 19 times in"
            + " 20",
        message(() -> FOUR.at(LAST).bound(1)));
  }

  @Test
  void trialsOfTheFirstEnd() {
    Layout book =
        Piece.of(Bar.of(FLAT, Material.MILD_STEEL), Plain.of(FLAT, millimetres(420)))
            .withReferenceAfter(1)
            .trimmedAt(FIRST)
            .layout();
    Trial trial = Trial.cut(millimetres(440)).off(FIRST, millimetres(28));
    assertEquals(millimetres(412), TrialLog.of(book).with(trial).at(FIRST).mean());
  }

  private static double millimetresOf(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  private static double inchesOf(Measure<Length> length) {
    return length.in(ShopUnits.INCH);
  }

  private static String message(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
