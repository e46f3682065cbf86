package org.hammerscale.piece;

import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.hammerscale.bending.Eye;
import org.hammerscale.bending.Ring;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class MarkedBarTest {
  private static final Section FLAT = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final Bar STRAP = Bar.of(FLAT, Material.MILD_STEEL);
  private static final Barrel EYE = Barrel.around(inches("1/2"), FLAT);
  private static final Plain PLAIN = Plain.of(FLAT, inches(9));
  private static final Taper TAPER = Taper.between(FLAT, TIP, inches(6));
  private static final Feature SHOULDER =
      HandAllowance.SET_DOWN.on(Plain.of(Section.flat(inches(1), inches("1/4")), inches(2)));

  private static Piece leaf() {
    return Piece.of(STRAP, EYE, PLAIN, TAPER)
        .withReferenceAfter(1)
        .trimmedAt(PieceEnd.FIRST, PieceEnd.LAST);
  }

  /** By hand: a full turn of 2.3562 up to 2 3/8; 9 plain and 3 1/2 of bar for the taper. */
  @Test
  void tellsALeafFromWhereItLeavesItsBarrel() {
    MarkedBar bar = leaf().layout().on(SIXTEENTH);
    assertEquals(inches("2 3/8"), bar.reference());
    assertEquals(inches("14 7/8"), bar.cutLength());
    assertEquals(14.875 - 14.4635, bar.added().getValue(), 5e-5);
    assertEquals(0.95, bar.odds());
    List<BenchMark> marks = bar.marks();
    assertEquals(2, marks.size());
    assertTrue(marks.get(0).isReference());
    assertEquals("reference, rolled barrel | plain stretch", marks.get(0).toString());
    assertEquals(inches(9), marks.get(1).fromReference());
    assertEquals(inches("11 3/8"), marks.get(1).fromFirstEnd());
    assertEquals(PieceEnd.LAST, marks.get(1).towards());
    assertEquals("plain stretch | taper", marks.get(1).label());
    assertEquals(Optional.empty(), marks.get(1).movedBy());
    assertTrue(bar.cautions().isEmpty());
  }

  /** The strip that closes, 1.9635, is cut to 1 15/16 before rolling; 7/16 of the bar comes off. */
  @Test
  void tellsWhatToTrimWhenAndInWhichSection() {
    List<Trim> trims = leaf().layout().on(SIXTEENTH).trims();
    Trim strip = trims.get(0);
    assertEquals(PieceEnd.FIRST, strip.end());
    assertEquals(Trimming.BEFORE_WORK, strip.when());
    assertEquals(inches("1 15/16"), strip.keptFromReference());
    assertEquals(inches("7/16"), strip.length().likely());
    assertTrue(strip.length().isExact());
    assertEquals(FLAT, strip.section());
    assertEquals(EYE, strip.feature());
    Trim tip = trims.get(1);
    assertEquals(Trimming.AFTER_WORK, tip.when());
    assertEquals(inches(15), tip.keptFromReference());
    assertEquals(inches(0), tip.inBar().likely());
    assertEquals(TIP, tip.section());
  }

  /** 3/4 in of the bar is four times as long at a tip of a quarter of its area. */
  @Test
  void aShortBitOfBarIsALongBitOfTip() {
    Piece short1 = Piece.of(STRAP, PLAIN, Taper.between(FLAT, TIP, inches("5 1/2")));
    // 3.2083 of bar for the taper: up to the next inch leaves 0.7917 in.
    Trim trim = short1.layout().on(Graduation.of(inches(1))).trims().get(0);
    assertEquals(13 - 9 - 5.5 * 7 / 12, trim.inBar().likely().getValue(), 1e-12);
    assertEquals(4 * (4 - 5.5 * 7 / 12), trim.length().likely().getValue(), 1e-12);
    // A point has no section: what is too long is told in the bar's.
    Piece pointed = Piece.of(STRAP, Taper.toPoint(FLAT, inches("8 1/2")));
    Trim point = pointed.layout().on(Graduation.of(inches(1))).trims().get(0);
    assertEquals(FLAT, point.section());
    assertEquals(3 - 8.5 / 3, point.length().likely().getValue(), 1e-12);
  }

  @Test
  void asksForEnoughByTheOdds() {
    Piece drawn = Piece.of(STRAP, PLAIN, SHOULDER);
    Layout layout = drawn.layout();
    Measure<?> even = layout.on(SIXTEENTH, 0.5).cutLength();
    assertEquals(SIXTEENTH.upTo(layout.cutLength().likely()), even);
    assertEquals(SIXTEENTH.upTo(layout.cutLength().high()), layout.on(SIXTEENTH).cutLength());
    assertEquals(
        SIXTEENTH.upTo(layout.cutLength().bound(0.99)), layout.on(SIXTEENTH, 0.99).cutLength());
    Trim trim = layout.on(SIXTEENTH, 0.5).trims().get(0);
    assertEquals(0, trim.inBar().low().getValue(), "short as often as not");
    assertEquals(
        "odds must lie between 0.5 and 0.9999, was 1.0; give 0.95 for what is enough 19 times in 20",
        refused(() -> layout.on(SIXTEENTH, 1)));
  }

  @Test
  void tellsWhichMarksAWorkedStretchMoves() {
    Piece piece = Piece.of(STRAP, PLAIN, SHOULDER, TAPER);
    MarkedBar bar = piece.layout().on(SIXTEENTH);
    assertEquals(Optional.empty(), bar.marks().get(0).movedBy());
    assertEquals(Optional.of(SHOULDER), bar.marks().get(1).movedBy());
    assertEquals(List.of(3, 2, 1), piece.order());
    assertEquals(2, bar.marksHoldingAfter(3).size());
    assertEquals(1, bar.marksHoldingAfter(2).size());
    assertEquals("plain stretch | plain stretch", bar.marksHoldingAfter(2).get(0).label());
    assertTrue(refused(() -> bar.marksHoldingAfter(4)).startsWith("number must be from 1 to 3"));
  }

  @Test
  void refusesAnOrderThatBuriesAMark() {
    Piece piece = Piece.of(STRAP, PLAIN, SHOULDER, TAPER);
    assertEquals(List.of(1, 3, 2), piece.workedInOrder(1, 3, 2).order());
    assertEquals(
        "numbers must work what lies farther from the reference mark first, was the plain stretch"
            + " (2) before the taper (3), whose mark it moves; work 3 before 2",
        refused(() -> piece.workedInOrder(2, 3, 1)));
    assertEquals(
        "numbers must name each of the 3 features once, was 1, 2, 2; count them from 1 at the first"
            + " end",
        refused(() -> piece.workedInOrder(1, 2, 2)));
    assertTrue(
        refused(() -> piece.workedInOrder(3, 2, 1).withReferenceAfter(3))
            .contains("work 2 before 3"));
  }

  @Test
  void aClosedRingHasNoEndToTrim() {
    Ring ring = Ring.inside(inches(2), Section.round(inches("1/2")));
    Bar rod = Bar.of(ring.section(), Material.MILD_STEEL);
    Piece piece = Piece.of(rod, Plain.of(ring.section(), inches(3)), ring);
    assertEquals(
        "last end must be free to be trimmed, was a butted ring; trim the first end, and cut the"
            + " butted ring to 7.854 in of bar",
        refused(() -> piece.trimmedAt(PieceEnd.LAST)));
    assertTrue(piece.trimmedAt(PieceEnd.FIRST).isTrimmedAt(PieceEnd.FIRST));
    assertEquals("first end", PieceEnd.LAST.other().toString());
    assertTrue(
        refused(() -> piece.withReferenceAfter(3))
            .startsWith("featuresBefore must be from 0 to 2"));
  }

  @Test
  void slackWithoutATrimmedEndIsTold() {
    MarkedBar bar = Piece.of(STRAP, SHOULDER).trimmedAt().layout().on(SIXTEENTH);
    assertTrue(bar.trims().isEmpty());
    assertTrue(bar.cautions().get(0).text().contains("the last end, which is not trimmed"));
    assertEquals(SIXTEENTH.nearest(bar.layout().cutLength().likely()), bar.cutLength());
  }

  @Test
  void tellsWhatIsLeftToHold() {
    MarkedBar bar = leaf().layout().on(SIXTEENTH);
    assertEquals(inches("5 1/8"), bar.leftToHold(inches(20)));
    assertTrue(bar.holdingCautions(inches(40), inches(12)).isEmpty());
    assertEquals(
        "5 1/8 in of the bar is left to hold, less than 1 ft: cut the piece off first and hold it"
            + " with tongs, or take a longer bar",
        bar.holdingCautions(inches(20), Measure.of(1, ShopUnits.FOOT)).get(0).text());
    assertTrue(
        refused(() -> bar.leftToHold(inches(14)))
            .startsWith("barLength must be at least the cut length of 14 7/8 in, was 14 in"));
  }

  @Test
  void tellsTheSectionAtAHole() {
    Piece leaf = leaf();
    assertEquals(FLAT, leaf.sectionAt(inches(9)));
    assertEquals(Section.flat(inches(1.125), inches(0.1875)), leaf.sectionAt(inches(12)));
    assertEquals(TIP, leaf.sectionAt(inches(15)));
    assertEquals(FLAT, leaf.sectionAt(inches("-1/4")));
    assertTrue(
        refused(() -> leaf.sectionAt(inches(16)))
            .startsWith("fromReference must lie on the piece"));
    assertTrue(refused(() -> leaf.sectionAt(inches(-2))).startsWith("fromReference must lie on"));
    // The same from the other side, and of a stretch turned round.
    Piece turned = Piece.of(STRAP, TAPER.reversed(), PLAIN, EYE.reversed()).withReferenceAfter(2);
    assertEquals(leaf.sectionAt(inches(12)), turned.sectionAt(inches(-12)));
    Shoulder set = Shoulder.between(FLAT, Section.flat(inches(1), inches("1/4")), inches(2));
    assertEquals(set.end(), set.sectionAt(inches(2)));
    assertTrue(
        refused(() -> TAPER.sectionAt(inches(7))).startsWith("along must be at most the reach"));
  }

  @Test
  void readsAtThePrompt() {
    MarkedBar bar = leaf().layout().on(SIXTEENTH);
    assertEquals(
        "cut 14 7/8 in; reference, rolled barrel | plain stretch; 9 in towards the last end: plain"
            + " stretch | taper",
        bar.toString());
    assertEquals(
        "at the first end, before it is worked: 7/16 in of 1 1/2 in × 1/4 in flat, 1 15/16 in from"
            + " the reference mark",
        bar.trims().get(0).toString());
    assertEquals(SIXTEENTH, bar.rule());
  }

  @Test
  void whatIsTrimmedBeforeItIsWorkedIsCutGenerously() {
    Section rod = Section.round(inches("1/2"));
    Eye eye = Eye.turned(inches(1), rod);
    assertEquals(Trimming.BEFORE_WORK, eye.trimming());
    assertEquals(eye.stock(rod).high(), eye.mostToCut(rod));
    assertEquals(EYE.mostToCut(FLAT), EYE.reversed().mostToCut(FLAT));
    assertEquals(Trimming.BEFORE_WORK, EYE.reversed().trimming());
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
