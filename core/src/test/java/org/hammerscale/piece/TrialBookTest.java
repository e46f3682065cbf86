package org.hammerscale.piece;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import javax.measure.MetricPrefix;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class TrialBookTest {
  private static final String TEXT =
      "\uFEFFpiece,cut,mark,off first,off last,remark\r\n"
          + "# spring\r\n"
          + "\"gate, door leaf\",14 7/8 in,2 3/8 in,7/16 in,5/16 in of 3/4 in x 1/8 in,\"too \"\"hot\"\"\"\r\n"
          + "hook,250 mm,,,8 mm of 12 mm round,\r\n"
          + "hook,25 parsecs,,,8 mm,\r\n"
          + "hook,250 mm,,\r\n"
          + "\r\n"
          + "hook,\"250 mm,,,8 mm,\r\n"
          + "hook,250 mm,,,,still to be forged\r\n"
          + "hook,250 mm,,,6 mm,";

  @Test
  void readsEveryLineThatCanBeRead() {
    TrialBook book = TrialBook.parse(TEXT);
    assertEquals(List.of("gate, door leaf", "hook"), book.pieces());
    assertEquals(
        "[cut 14 7/8 in, marked at 2 3/8 in; 7/16 in off at the first end; 5/16 in of 3/4 in × 1/8"
            + " in flat off at the last end]",
        book.of("gate, door leaf").toString());
    assertEquals(
        "[cut 250 mm; 8 mm of 12 mm round off at the last end, cut 250 mm; 6 mm off at the last"
            + " end]",
        book.of("hook").toString());
    assertEquals(List.of(), book.of("latch"));
    assertEquals(1, book.waiting("hook"));
    assertEquals(0, book.waiting("latch"));
    assertEquals("book of 3 trials of 2 pieces, lines with faults: 3", book.toString());
  }

  @Test
  void namesEachDamagedLineWithItsFault() {
    assertEquals(
        List.of(
            "line 5, cut: text \"25 parsecs\" is not a length: expected one of the units in, ft, thou,"
                + " mm, cm, m at position 3, found 'p'",
            "line 6, must have the cells piece, cut, mark, off first, off last, remark, had 4; part"
                + " them by commas, and put a cell that holds one in quotation marks",
            "line 8, must end what a quotation mark begins; put one at the end of the cell, or two"
                + " for an inch sign within it"),
        TrialBook.parse(TEXT).faults());
    assertEquals(
        List.of(
            "line 1, mark: fromFirstEnd must be at most the cut length of 9 in, was 10 in; measure"
                + " from the first end",
            "line 2, piece: must not be blank; name the piece",
            "line 3, off last: length must not be negative, was -1 in; give zero if there is none"),
        TrialBook.parse("a,9 in,10 in,,1 in\n,9 in,,,1 in,\na,9 in,,,-1 in,").faults());
  }

  @Test
  void losesNothingThatWasRead() {
    TrialBook book = TrialBook.parse(TEXT);
    assertEquals(TEXT, book.text());
    Trial trial = Trial.cut(inches("9 1/2")).off(PieceEnd.LAST, inches("1/4"));
    TrialBook more = book.with("latch", trial);
    assertEquals(TEXT + "\r\nlatch,9 1/2 in,,,1/4 in,\r\n", more.text());
    assertEquals(book.faults(), more.faults());
    assertEquals(3 + 1, more.pieces().stream().mapToInt(each -> more.of(each).size()).sum());
    assertEquals("piece,cut,mark,off first,off last,remark\n", TrialBook.empty().text());
  }

  @Test
  void whatIsWrittenReadsBackTheSame() {
    Random random = new Random(7);
    List<Section> sections =
        List.of(
            Section.round(millimetres(12.3)),
            Section.square(inches("5/8")),
            Section.flat(inches("1 1/2"), inches("1/4")),
            Section.onEdge(inches("1/4"), inches(1)));
    TrialBook book = TrialBook.empty();
    for (int i = 0; i < 300; i++) {
      double size = 1 + 300 * random.nextDouble();
      Trial trial = Trial.cut(random.nextBoolean() ? millimetres(size) : inches(size));
      trial = random.nextBoolean() ? trial.marked(millimetres(random.nextDouble())) : trial;
      trial =
          random.nextBoolean()
              ? trial.off(PieceEnd.FIRST, inches(random.nextInt(640) / 64.0))
              : trial.off(PieceEnd.LAST, millimetres(random.nextDouble() / 3), sections.get(i % 4));
      String name = i % 3 == 0 ? "a, \"b\"" : i % 3 == 1 ? "#c" : "d";
      book = book.with(name, trial);
      List<Trial> read = book.of(name);
      Trial last = read.get(read.size() - 1);
      assertEquals(trial.toString(), last.toString());
      assertEquals(trial.cutLength(), last.cutLength());
      assertEquals(trial.reference(), last.reference());
      assertEquals(trial.off(PieceEnd.LAST), last.off(PieceEnd.LAST));
    }
    assertEquals(List.of(), book.faults());
  }

  @Test
  void anotherShapeIsWrittenByItsArea() {
    Section hexagon = Section.hexagon(inches("1/2"));
    Trial trial = Trial.cut(inches(9)).off(PieceEnd.LAST, inches(1), hexagon);
    Section read =
        TrialBook.empty().with("a", trial).of("a").get(0).sectionOff(PieceEnd.LAST).orElseThrow();
    assertEquals(1, hexagon.area().ratio(read.area()), 1e-12);
  }

  @Test
  void refusesWhatCouldNotBeReadBack() {
    Trial trial = Trial.cut(inches(9)).off(PieceEnd.LAST, inches(1));
    assertTrue(
        assertThrows(
                IllegalArgumentException.class, () -> TrialBook.empty().with("two\nlines", trial))
            .getMessage()
            .startsWith("piece must be on one line"));
    assertThrows(IllegalArgumentException.class, () -> TrialBook.empty().with(" ", trial));
  }

  @Test
  void someoneElsesUnitIsWrittenInMillimetres() {
    Trial trial =
        Trial.cut(Measure.of(250_000, MetricPrefix.MICRO(ShopUnits.METRE)))
            .off(PieceEnd.LAST, inches(1));
    assertEquals(
        "[cut 250 mm; 1 in off at the last end]",
        TrialBook.empty().with("a", trial).of("a").toString());
  }

  @Test
  void aPlannedPieceWaitsToBeFilledIn() {
    TrialBook book = TrialBook.empty().with("a", Trial.cut(inches(9)).marked(inches(1)));
    assertEquals("piece,cut,mark,off first,off last,remark\na,9 in,1 in,,,\n", book.text());
    assertEquals(List.of(), book.pieces());
    assertEquals(List.of(), book.faults());
  }

  /** Damage anywhere costs the line it is in and none other. */
  @Test
  void damageStaysInItsLine() {
    Random random = new Random(3);
    String good = "hook,250 mm,,,8 mm,";
    for (int i = 0; i < 5000; i++) {
      StringBuilder damaged = new StringBuilder(good);
      for (int hits = random.nextInt(4); hits >= 0; hits--) {
        damaged.setCharAt(random.nextInt(good.length()), (char) (32 + random.nextInt(95)));
      }
      TrialBook book = TrialBook.parse(good + "\n" + damaged + "\n" + good + "\n");
      assertTrue(book.of("hook").size() >= 2, damaged::toString);
      assertTrue(
          book.faults().stream().allMatch(fault -> fault.startsWith("line 2, ")),
          () -> book.faults().toString());
    }
  }
}
