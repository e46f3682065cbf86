package org.hammerscale.cutting;

import static org.hammerscale.cutting.TrialList.ROUND;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTEENTH;
import static org.hammerscale.units.Measures.feet;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rule of the saw, what is printed, what is refused. */
class CutListTest {
  private static final CutList EMPTY = CutList.of(ROUND, MILLIMETRE);
  private static final CutList GATE =
      EMPTY
          .kerf(millimetres(2))
          .endTrim(millimetres(20))
          .pieces("gate strap", millimetres(1450), 4)
          .pieces("door strap", millimetres(900), 4)
          .buying(metres(6), new BigDecimal("31.50"));

  /** Bar, kerf, trim, two pieces of this length: whether one bar holds them, and what is left. */
  @ParameterizedTest
  @CsvSource({
    "1000, 0, 0, 500, 1, 0", // just so
    "1000, 2, 0, 499, 1, 0", // with the kerf between them
    "1000, 2, 0, 500, 2, 498", // no room for the kerf
    "1000, 2, 0, 498, 1, 0", // the last cut takes the 2 mm that are left
    "1003, 2, 0, 499, 1, 1", // and here leaves 1 mm
    "1020, 2, 20, 499, 1, 0",
    "1019, 2, 20, 499, 2, 498",
    "520, 0, 20, 500, 2, 0" // a piece as long as what the trim leaves
  })
  void kerfGoesBetweenPiecesAndBehindTheLastIfThereIsRoom(
      int bar, int kerf, int trim, int piece, int bars, int left) {
    CuttingPlan plan =
        EMPTY
            .kerf(millimetres(kerf))
            .endTrim(millimetres(trim))
            .pieces("piece", millimetres(piece), 2)
            .buying(millimetres(bar))
            .plan();
    assertEquals(bars, plan.barCount());
    assertEquals(millimetres(left), plan.longestLeftover());
  }

  @Test
  void printsWhatToChalkAndWhatToBuy() {
    CuttingPlan plan = GATE.leastOffcut(millimetres(600)).plan();
    assertEquals(
        """
        1 × 6 m: from 20 mm, mark 1470 mm (gate strap), 2922 mm (gate strap), 4374 mm (gate strap),\
         5826 mm (gate strap); 172 mm scrap
        1 × 6 m: from 20 mm, mark 920 mm (door strap), 1822 mm (door strap), 2724 mm (door strap),\
         3626 mm (door strap); 2372 mm left
        """,
        plan.cutList());
    assertEquals("2 × 6 m\ntogether 63.00 crowns\n", plan.buyingList("crowns"));
    assertEquals(new BigDecimal("63.00"), plan.money());
    assertEquals(metres(12), plan.newStock().to(metres(1).getUnit()));
    assertEquals("cut 2 bars, pay 63.00: 2 × 6 m; longest leftover 2372 mm", plan.toString());
    assertEquals("money 63.00, proven", plan.reached(Aim.LEAST_MONEY).toString());
    assertEquals(0, plan.reached(Aim.FEWEST_BARS).gap());
  }

  @Test
  void offcutsAreCutFirstAndNeedNotBeBought() {
    CuttingPlan plan = EMPTY.pieces("pin", millimetres(90), 2).offcuts(millimetres(200), 5).plan();
    assertEquals("1 × 200 mm offcut: mark 90 mm (pin), 180 mm (pin); 20 mm left\n", plan.cutList());
    assertEquals("nothing to buy\n", plan.buyingList("crowns"));
    assertTrue(plan.bars().get(0).isOffcut());
  }

  @Test
  void barsThatAreCutAlikeStandOnOneLine() {
    CuttingPlan plan = EMPTY.pieces("rail", millimetres(700), 5).buying(metres(1)).plan();
    assertEquals("5 × 1 m: mark 700 mm (rail); 300 mm left\n", plan.cutList());
    assertEquals("5 × 1 m\n", plan.buyingList("crowns"));
    assertEquals("patterns 1, proven", plan.reached(Aim.FEWEST_PATTERNS).toString());
  }

  @Test
  void countsInTheStepsOfItsRulePiecesUpAndBarsDown() {
    CuttingPlan plan =
        CutList.of(ROUND, SIXTEENTH)
            .kerf(millimetres(3))
            .pieces("hook", millimetres(100), 2)
            .buying(feet(1))
            .plan();
    assertEquals(inches("3 15/16"), plan.bars().get(0).marks().get(0).length());
    assertEquals(inches("4 1/16"), plan.bars().get(0).marks().get(1).start());
    assertEquals(inches("3 15/16"), plan.bars().get(0).leftover().add(inches("1/16")));
  }

  @Test
  void moneyChoosesOtherBarsThanNewStockDoes() {
    CutList list =
        EMPTY
            .pieces("rail", millimetres(1500), 3)
            .buying(metres(6), new BigDecimal("20"))
            .buying(metres(3), new BigDecimal("11.5"))
            .buying(millimetres(1500), new BigDecimal("9.25"));
    assertEquals("cut 1 bar, pay 20.00: 1 × 6 m; longest leftover 1500 mm", list.plan().toString());
    assertEquals(
        "cut 2 bars, pay 20.75: 1 × 3 m, 1 × 1500 mm; longest leftover 0 mm",
        list.plan(Aim.LEAST_NEW_STOCK, Aim.FEWEST_BARS).toString());
  }

  @Test
  void takesNoMoreBarsThanThereAre() {
    CutList list =
        EMPTY
            .pieces("rail", millimetres(900), 3)
            .buying(metres(1), BigDecimal.ONE, 2)
            .buying(metres(2), BigDecimal.TEN);
    assertEquals(new BigDecimal("11"), list.plan().money());
  }

  @Test
  void cutsALaidOutPieceToTheLengthOfItsOdds() {
    Piece piece = Piece.of(ROUND, Plain.of(ROUND.section(), millimetres(321)));
    CuttingPlan plan =
        EMPTY.pieces("pin", piece.layout().on(MILLIMETRE), 1).buying(metres(1)).plan();
    assertEquals(millimetres(321), plan.bars().get(0).marks().get(0).length());
    Bar iron = Bar.of(ROUND.section(), Material.WROUGHT_IRON);
    refuses(
        "pin must be of the list's bar",
        () -> CutList.of(iron, MILLIMETRE).pieces("pin", piece.layout().on(MILLIMETRE), 1));
  }

  @Test
  void tellsHowFarItIsAndStopsWhenTold() {
    List<Long> told = new ArrayList<>();
    CutList list = hard();
    CuttingPlan stopped = list.plan(Long.MAX_VALUE, steps -> !told.add(steps));
    assertEquals(1, told.size());
    CuttingPlan limited = list.plan(1, steps -> true);
    assertTrue(stopped.barCount() <= limited.barCount());
    assertFalse(limited.reached(Aim.LONGEST_LEFTOVER).isProven());
    assertTrue(limited.reached(Aim.LONGEST_LEFTOVER).toString().contains(", at most "));
    assertTrue(limited.reached(Aim.LONGEST_LEFTOVER).gap() > 0);
  }

  /** Twenty uneven lengths, a hundred pieces. */
  private static CutList hard() {
    CutList list = EMPTY.kerf(millimetres(3)).buying(metres(6)).buying(metres(3));
    for (int n = 0; n < 20; n++) {
      list = list.pieces("piece " + n, millimetres(301 + n * n * 7 % 1499), 1 + n % 9);
    }
    return list;
  }

  @Test
  void aRackBeginsTheListOfItsBar() {
    Rack rack = Rack.empty().buying(ROUND, metres(3)).offcuts(ROUND, millimetres(500), 1);
    assertTrue(rack.has(ROUND));
    assertEquals("rack of 12 mm round, mild steel", rack.toString());
    assertEquals("empty rack", Rack.empty().toString());
    CuttingPlan plan = rack.cutList(ROUND, MILLIMETRE).pieces("pin", millimetres(400), 1).plan();
    assertTrue(plan.bars().get(0).isOffcut());
    Bar iron = Bar.of(ROUND.section(), Material.WROUGHT_IRON);
    assertFalse(rack.has(iron));
    refuses(
        "bars must be at least 1",
        () -> rack.cutList(iron, MILLIMETRE).pieces("pin", millimetres(400), 1).plan());
    refuses("number of offcuts of 1 m", () -> Rack.empty().offcuts(ROUND, metres(1), 0));
  }

  @Test
  void aRackKnowsABarInWhateverUnits() {
    Bar half = Bar.of(Section.round(inches("1/2")), Material.MILD_STEEL);
    Bar same = Bar.of(Section.round(millimetres(12.7)), Material.MILD_STEEL);
    Bar square = Bar.of(Section.square(inches("1/2")), Material.MILD_STEEL);
    Rack rack =
        Rack.empty()
            .buying(half, feet(10), new BigDecimal("8.00"))
            .buying(same, metres(3), new BigDecimal("8.20"), 1)
            .offcuts(square, inches(20), 1);
    assertEquals("rack of 1/2 in round, mild steel; 1/2 in square, mild steel", rack.toString());
    CutList list = rack.cutList(same, MILLIMETRE).pieces("rail", metres(3), 2);
    assertEquals(
        "cut 2 bars, pay 16.00: 2 × 10 ft; longest leftover 48 mm", list.plan().toString());
    Piece piece = Piece.of(half, Plain.of(half.section(), millimetres(321)));
    CuttingPlan plan = list.pieces("pin", piece.layout().on(MILLIMETRE), 1).plan();
    assertEquals(new BigDecimal("24.00"), plan.money());
  }

  @Test
  void refusesWhatCannotBeCut() {
    refuses("pieces must be at least 1", () -> EMPTY.buying(metres(3)).plan());
    refuses("bars must be at least 1", () -> EMPTY.pieces("pin", metres(1), 1).plan());
    refuses(
        "length of hinge strap must fit a bar, was 3.5 m and the longest bar has 3 m less an end"
            + " trim of 20 mm",
        () ->
            EMPTY
                .endTrim(millimetres(20))
                .pieces("hinge strap", metres(3.5), 1)
                .buying(metres(3))
                .plan());
    refuses(
        "these bars are too few",
        () -> EMPTY.pieces("rail", metres(2), 3).buying(metres(3), BigDecimal.ONE, 2).plan());
    refuses(
        "count in a coarser rule",
        () -> EMPTY.pieces("rail", metres(1), 1).buying(metres(1001)).plan());
  }

  @Test
  void refusesWhatIsNoList() {
    refuses("name of the pieces", () -> EMPTY.pieces(" ", metres(1), 1));
    refuses("length of pin must be more than zero", () -> EMPTY.pieces("pin", metres(0), 1));
    refuses("count of pin must be 1 to", () -> EMPTY.pieces("pin", metres(1), 0));
    refuses("pieces must be at most", () -> GATE.pieces("pin", metres(1), 50_000));
    refuses("price of a bar of 1 m", () -> EMPTY.buying(metres(1), new BigDecimal("-1")));
    refuses("number of bars of 1 m", () -> EMPTY.buying(metres(1), BigDecimal.ONE, 0));
    refuses("kerf must not be negative", () -> EMPTY.kerf(millimetres(-1)));
    refuses("end trim must not be negative", () -> EMPTY.endTrim(millimetres(-1)));
    refuses("least useful offcut must not", () -> EMPTY.leastOffcut(millimetres(-1)));
    refuses("most steps must be more than zero", () -> GATE.plan(0, steps -> true));
    refuses("prices must be told of all", () -> GATE.buying(metres(3)).plan());
    refuses("price of a bar of 6 m", () -> EMPTY.buying(metres(6), new BigDecimal("1e9")));
    refuses("price of a bar of 6 m", () -> EMPTY.buying(metres(6), new BigDecimal("1e-7")));
    refuses("aims must differ", () -> GATE.plan(Aim.FEWEST_BARS, Aim.FEWEST_BARS));
    refuses("before leftover", () -> GATE.plan(Aim.LONGEST_LEFTOVER, Aim.FEWEST_BARS));
  }

  private static void refuses(String message, Executable executable) {
    String was = assertThrows(IllegalArgumentException.class, executable).getMessage();
    assertTrue(was.contains(message), was);
  }
}
