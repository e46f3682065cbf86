package org.hammerscale.spacing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class HoleRowTest {
  private static HoleRow row(double length, int holes) {
    return HoleRow.along(millimetres(length))
        .holes(holes)
        .startingFrom(millimetres(20))
        .endingBefore(millimetres(20));
  }

  private static ClosedStretch keep(double from, double to) {
    return ClosedStretch.between(millimetres(from), millimetres(to));
  }

  private static String refused(Executable what) {
    return assertThrows(IllegalArgumentException.class, what).getMessage();
  }

  private static String untold(Executable what) {
    return assertThrows(IllegalStateException.class, what).getMessage();
  }

  @Test
  void spacingsAreExactToTheLastBit() {
    // A third of a leaf, a seventh: the distance of the edges divided once.
    assertEquals(millimetres(200 / 3d), row(240, 4).widestSpacing());
    assertEquals(
        millimetres((97.3 - 20) / 3), row(240, 5).missing(keep(97.3, 215)).widestSpacing());
    HoleLayout inch =
        HoleRow.along(inches(12))
            .holes(4)
            .startingFrom(inches("1 1/8"))
            .endingBefore(inches("3/4"))
            .layout();
    assertEquals(inches("3 3/8"), inch.closestSpacing());
    assertEquals(
        List.of(inches("1 1/8"), inches("4 1/2"), inches("7 7/8"), inches("11 1/4")),
        inch.positions());
  }

  @Test
  void aRowThatIsItsOwnImageGetsAMirroredLayoutOrLiesTowardsThePin() {
    HoleRow two = row(300, 4).missing(keep(90, 110), keep(190, 210));
    assertEquals(
        List.of(millimetres(20), millimetres(110), millimetres(190), millimetres(280)),
        two.layout().positions());
    // An odd row over a seam in the middle has no mirrored layout.
    assertEquals(millimetres(105), row(240, 3).missing(keep(105, 135)).layout().positions().get(1));
  }

  @Test
  void itSaysWhichHolesAndEdgesDecide() {
    assertEquals(
        "holes 1 to 5, 4 spacings from the start of the row at 20 mm to the end of the row at"
            + " 220 mm",
        row(240, 5).layout().governedBy());
    assertEquals(
        "holes 1 to 2, 1 spacing from the start of the row at 20 mm to the fixed hole at 100 mm",
        row(300, 4).missing(keep(140, 160)).using(millimetres(100)).layout().governedBy());
    HoleRow mirrored = row(320, 6).missing(keep(70, 90), keep(150, 170)).symmetric();
    assertTrue(
        mirrored.layout().governedBy().contains("edge of the closed stretch from 70 mm to 90 mm"));
    HoleRow seam =
        row(320, 4).missing(ClosedStretch.seamAt(millimetres(250)).clear(millimetres(65)));
    assertTrue(
        seam.symmetricAbout(millimetres(170)).layout().governedBy().contains("mirror image of the"),
        seam.symmetricAbout(millimetres(170)).layout()::governedBy);
    assertEquals(
        "every hole lies where it is wanted",
        row(240, 5).leastSpacing(millimetres(9)).nearestToEven().layout().governedBy());
  }

  @Test
  void closedStretchesMayTouchOverlapAndReachBeyondTheLeaf() {
    HoleRow row = row(200, 3).missing(keep(-10, 5), keep(15, 20), keep(20, 90), keep(30, 40));
    HoleRow point = row.missing(keep(90, 180), keep(180, 400));
    assertEquals(millimetres(70), point.widestSpacing());
    assertEquals(
        List.of(millimetres(20), millimetres(90), millimetres(180)), point.layout().positions());
    // The same point where the edges differ by the noise of the arithmetic.
    HoleRow noisy = row(200, 3).missing(keep(20, 30 + 30 * (0.1 + 0.2)), keep(30 + 30 * 0.3, 180));
    assertEquals(3, noisy.leastSpacing(millimetres(19)).mostHoles());
    assertEquals(millimetres(19).getValue(), noisy.widestSpacing().getValue(), 1e-10);
  }

  @Test
  void fixedHolesAreUsedWhereverTheyFitInTheRow() {
    HoleRow row = row(300, 4).using(millimetres(100));
    assertTrue(row.layout().positions().contains(millimetres(100)));
    assertTrue(
        row.leastSpacing(millimetres(10))
            .nearestTo(
                List.of(millimetres(90), millimetres(95), millimetres(240), millimetres(250)))
            .layout()
            .positions()
            .contains(millimetres(100)));
    assertEquals(
        "fixed hole must not lie in a closed stretch, was at 100 mm in the boss; move it, or keep it with"
            + " usingAnyway",
        refused(() -> row.missing(keep(90, 120).named("boss")).layout()));
    assertEquals(
        "fixed hole must not lie in a closed stretch, was at 10 mm in the stretch before the start; move"
            + " it, or keep it with usingAnyway",
        refused(() -> row.using(millimetres(10)).layout()));
    assertTrue(
        refused(() -> row.using(millimetres(295)).layout()).contains("stretch behind the end"));
    assertEquals(
        "fixed hole at 100 mm is named twice; name it once",
        refused(() -> row.using(millimetres(100)).widestSpacing()));
    assertTrue(refused(() -> row.using(millimetres(400))).startsWith("fixed hole must lie on the"));
    assertEquals(
        "fixed holes must be no more than the holes, 1, were 2; ask for more holes",
        refused(() -> row.holes(1).using(millimetres(50)).layout()));
    assertTrue(
        refused(() -> row.symmetric().layout())
            .startsWith("fixed holes of a symmetric row must be mirror images, was one at 100 mm"));
    assertTrue(row.symmetric().using(millimetres(200)).isFeasible());
  }

  @Test
  void aFixedHoleInAClosedStretchIsToldWhenAllowed() {
    HoleLayout layout =
        row(300, 4).usingAnyway(millimetres(100)).missing(keep(90, 120).named("boss")).layout();
    assertTrue(layout.positions().contains(millimetres(100)));
    assertTrue(layout.cautions().get(0).text().contains("at 100 mm lies in the boss"));
    assertTrue(row(300, 4).usingAnyway(millimetres(100)).layout().cautions().isEmpty());
  }

  @Test
  void whatDoesNotFitSaysWhatWould() {
    HoleRow row = row(200, 5).missing(keep(70, 130).named("spine")).leastSpacing(millimetres(30));
    assertFalse(row.isFeasible());
    assertEquals(
        "holes must be at most 4 at a least spacing of 30 mm, were 5; ask for fewer, or ask for a"
            + " least spacing of at most 25 mm (2 spacings from the start of the row at 20 mm to"
            + " the edge of the spine at 70 mm), or start nearer to the pin, or go nearer to the"
            + " tip, or give up the spine",
        refused(row::layout));
    assertEquals(refused(row::layout), refused(() -> row.nearestToEven().layout()));
    assertEquals(
        "5 holes must find room, but there is none; start nearer to the pin, or go nearer to"
            + " the tip",
        refused(() -> row(30, 5).layout()));
    assertEquals(0, row(30, 5).leastSpacing(millimetres(5)).mostHoles());
    assertTrue(
        refused(() -> row(240, 3).missing(keep(105, 135)).symmetric().layout())
            .startsWith("3 holes must find room, the middle one at 120 mm, but there is none"));
    assertTrue(
        refused(
                () ->
                    row(240, 4)
                        .using(millimetres(100))
                        .using(millimetres(110))
                        .leastSpacing(millimetres(20))
                        .layout())
            .contains("give up the fixed hole at 110 mm"));
  }

  @Test
  void theOneHoleLiesInTheMiddleOfTheLeafIfItCan() {
    assertEquals(millimetres(120), row(240, 1).layout().positions().get(0));
    HoleLayout off = row(240, 1).missing(keep(110, 150)).layout();
    assertEquals("1 hole at 110 mm from the pin centre", off.toString());
    assertEquals(millimetres(10), off.largestMove());
    assertEquals("hole 1, 10 mm from 120 mm", off.governedBy());
    assertEquals(List.of(), off.spacings());
    assertTrue(untold(off::closestSpacing).startsWith("one hole has no spacing"));
    assertTrue(refused(() -> row(240, 1).widestSpacing()).startsWith("holes must be at least 2"));
    assertEquals(
        millimetres(100), row(240, 1).symmetricAbout(millimetres(100)).layout().positions().get(0));
  }

  @Test
  void oneRowForSeveralLeavesMissesAllTheirSeams() {
    HoleRow front = row(300, 4).missing(keep(100, 120)).leastSpacing(millimetres(30));
    HoleRow back =
        HoleRow.along(inches(10))
            .holes(4)
            .startingFrom(inches(1))
            .endingBefore(inches(1))
            .leastSpacing(inches("1 1/2"))
            .missing(ClosedStretch.between(inches(3), inches(5)))
            .using(inches("2 1/2"));
    HoleLayout shared = front.sharedWith(back).layout();
    assertTrue(shared.positions().contains(millimetres(63.5)));
    for (var place : shared.positions()) {
      double x = place.getValue();
      assertTrue(x >= 25.4 && x <= 9 * 25.4, shared::toString);
      assertFalse((x > 100 && x < 120) || (x > 76.2 && x < 127), shared::toString);
    }
    // 63.5 is fixed; then 127 behind both seams, and two more up to 228.6.
    assertEquals(millimetres(50.8), shared.closestSpacing());
    assertFalse(front.sharedWith(back.missing(keep(0, 220))).isFeasible());
  }

  @Test
  void aFixedHoleOfTwoLeavesIsDrilledOnce() {
    HoleRow front = row(300, 3).using(millimetres(101.6));
    HoleRow back =
        HoleRow.along(inches(11))
            .holes(3)
            .startingFrom(inches(1))
            .endingBefore(inches(1))
            .using(inches(4))
            .using(inches(8));
    HoleLayout shared = front.sharedWith(back).layout();
    assertEquals(3, shared.positions().size());
    assertTrue(shared.positions().contains(millimetres(101.6)));
    assertTrue(shared.positions().contains(millimetres(203.2)));
  }

  @Test
  void aRowNamesWhatItMisses() {
    HoleRow row = row(300, 4).missing(keep(140, 160));
    assertEquals(
        "4 holes along 300 mm, missing the closed stretch from 140 mm to 160 mm", row.toString());
  }

  @Test
  void holesMayBeSpreadBoardByBoard() {
    HoleRow row =
        row(240, 1)
            .missing(ClosedStretch.seamAt(millimetres(120)).clear(millimetres(20)))
            .leastSpacing(millimetres(30));
    assertEquals(
        "5 holes at 20 mm, 100 mm, 140 mm, 180 mm, 220 mm from the pin centre, at least 40 mm apart",
        row.boardByBoard(2, 3).layout().toString());
    assertEquals(
        List.of(millimetres(60), millimetres(180)), row.boardByBoard(1).layout().positions());
    assertEquals(List.of(millimetres(180)), row.boardByBoard(0, 1).layout().positions());
    // A hole that is there already is one of its board's.
    assertEquals(
        List.of(millimetres(25), millimetres(100), millimetres(180)),
        row.using(millimetres(25)).boardByBoard(2, 1).layout().positions());
    assertEquals(
        "counts must be one of 0 or more for each open stretch, which are 20 mm to 100 mm, 140 mm"
            + " to 220 mm, were 2, 2, 2; count them from the pin on",
        refused(() -> row.boardByBoard(2, 2, 2)));
    assertTrue(
        refused(() -> row.boardByBoard(2, -1)).startsWith("counts must be one of 0 or more"));
    assertTrue(refused(() -> row.boardByBoard(0)).startsWith("count of holes must be at least 1"));
    assertTrue(
        refused(() -> row.boardByBoard(Integer.MAX_VALUE)).startsWith("count of holes must be at"));
    assertTrue(
        untold(() -> HoleRow.along(millimetres(9)).boardByBoard(1)).startsWith("start must be"));
  }

  @Test
  void unevenSpacingIsExplained() {
    ClosedStretch seam = ClosedStretch.seamAt(inches("8 1/4")).clear(inches(1));
    HoleRow row =
        HoleRow.along(inches(14)).holes(4).startingFrom(inches(1)).endingBefore(inches(1));
    assertEquals(Optional.empty(), row.layout().unevenBecause());
    assertEquals(
        Optional.of("past the seam at 8 1/4 in"), row.missing(seam).layout().unevenBecause());
    ClosedStretch boss = ClosedStretch.between(inches(7), inches(8)).named("boss");
    assertEquals(
        Optional.of("past the boss and 1 more"), row.missing(boss, seam).layout().unevenBecause());
    assertEquals(
        Optional.of("beside the fixed hole at 4 in"),
        row.holes(3).using(inches(2)).using(inches(4)).layout().unevenBecause());
    assertEquals(Optional.empty(), row(240, 1).layout().unevenBecause());
    // What a rule rounds needs no reason.
    assertEquals(Optional.empty(), row(240, 4).layout().on(Graduation.MILLIMETRE).unevenBecause());
  }

  @Test
  void aHoleBeyondThisLeafCannotBeShared() {
    HoleRow here = row(100, 2).leastSpacing(millimetres(10));
    HoleRow longer = row(300, 4).usingAnyway(millimetres(250));
    assertFalse(here.sharedWith(longer).isFeasible());
    assertEquals(
        "fixed hole must lie on every leaf of a shared row, the shortest 100 mm long, was at 250 mm;"
            + " leave it out, or lengthen that leaf",
        refused(() -> here.sharedWith(longer).layout()));
    assertTrue(
        refused(() -> here.sharedWith(longer).mostHoles()).startsWith("fixed hole must lie"));
    assertFalse(longer.sharedWith(here).isFeasible());
    assertTrue(longer.sharedWith(row(250, 2)).isFeasible());
  }

  @Test
  void oneHoleToldInTwoUnitsIsOneHole() {
    for (int sixteenths = 16; sixteenths <= 160; sixteenths++) {
      Measure<Length> inch = inches(sixteenths / 16d);
      Measure<Length> metric = millimetres(sixteenths * 25.4 / 16);
      HoleRow ours = row(300, 3).usingAnyway(inch).missing(keep(20, 280));
      HoleRow theirs =
          HoleRow.along(inches(12))
              .holes(3)
              .startingFrom(inches("1/2"))
              .endingBefore(inches("1/2"))
              .usingAnyway(metric);
      for (HoleRow shared : List.of(ours.sharedWith(theirs), theirs.sharedWith(ours))) {
        assertTrue(shared.isFeasible(), shared::toString);
        assertEquals(1, shared.layout().cautions().size(), shared::toString);
      }
      HoleRow strict = row(300, 3).using(inch);
      assertTrue(strict.sharedWith(theirs).isFeasible());
      assertTrue(theirs.sharedWith(strict).isFeasible());
      assertTrue(strict.sharedWith(theirs).missing(keep(21, 279)).isFeasible());
    }
  }

  @Test
  void moreHolesThanAnyShopDrillsAreRefused() {
    assertEquals(
        "count of holes must be at most 1000, was 2147483647; divide the leaf into several rows",
        refused(() -> row(240, 3).holes(Integer.MAX_VALUE)));
    assertTrue(row(240, 3).holes(1000).isFeasible());
    HoleRow close = row(10_000, 3).leastSpacing(millimetres(1e-4));
    assertEquals(
        "least spacing must be wide enough for no more than 1000 holes in a row, was 0.0001 mm;"
            + " ask for a wider one",
        refused(close::mostHoles));
    assertEquals(1000, row(1039, 3).leastSpacing(millimetres(1)).mostHoles());
    assertTrue(
        refused(row(1040, 3).leastSpacing(millimetres(1))::mostHoles).startsWith("least spacing"));
  }

  @Test
  void holesOnARuleAreCheckedAnew() {
    HoleRow row = row(240, 4).missing(keep(86.4, 120)).leastSpacing(millimetres(60));
    HoleLayout layout = row.layout();
    assertEquals(millimetres(86.4), layout.positions().get(1));
    HoleLayout ruled = layout.on(Graduation.MILLIMETRE);
    assertEquals(
        "4 holes at 20 mm, 86 mm, 153 mm, 220 mm from the pin centre, at least 66 mm apart",
        ruled.toString());
    assertEquals(
        "rule must have marks for these holes, was one of 50 mm steps: none keep the holes out of"
            + " the closed stretches and 60 mm apart; take 1 mm steps, or a smaller least spacing",
        refused(() -> layout.on(Graduation.of(millimetres(50)))));
    HoleLayout uneven = row(242, 4).symmetric().layout().on(Graduation.MILLIMETRE);
    assertEquals(List.of(), uneven.cautions());
    assertTrue(
        row(240.4, 5)
            .symmetric()
            .layout()
            .on(Graduation.MILLIMETRE)
            .cautions()
            .get(0)
            .text()
            .startsWith("on 1 mm steps the row is no longer quite symmetric"));
  }

  @Test
  void staggeredRowsKeepTheirDistanceSlantwise() {
    HoleRow row = row(140, 5).inTwoRows(millimetres(20));
    HoleLayout layout = row.layout();
    assertEquals(Math.hypot(25, 20), layout.closestSpacing().getValue(), 1e-12);
    assertTrue(layout.cautions().get(0).text().startsWith("staggered rows 20 mm apart"));
    assertTrue(layout.toString().startsWith("5 holes in two rows by turns at 20 mm, 45 mm, 70 mm"));
    // Rows further apart than the spacing: neighbours may lie above one another.
    HoleRow far = row.inTwoRows(millimetres(60)).leastSpacing(millimetres(50));
    assertEquals(millimetres(50), far.widestSpacing());
    assertEquals(6, far.mostHoles());
  }

  @Test
  void whatHasNotBeenToldIsAskedFor() {
    HoleRow bare = HoleRow.along(millimetres(240));
    assertEquals(
        "holes must be given: say how many there are to be with holes(5) before asking",
        untold(bare::layout));
    assertTrue(untold(bare.holes(3)::isFeasible).startsWith("start must be given"));
    assertTrue(
        untold(bare.holes(3).startingFrom(millimetres(0))::isFeasible).startsWith("end must be"));
    assertTrue(untold(row(240, 3)::mostHoles).startsWith("least spacing must be more than zero"));
    assertTrue(
        untold(row(240, 3).nearestToEven()::layout).startsWith("least spacing must be given"));
    assertEquals(
        5,
        bare.startingFrom(millimetres(20))
            .endingBefore(millimetres(20))
            .leastSpacing(millimetres(50))
            .mostHoles());
  }

  /** A seam at 120 mm with 15 mm on either side shuts out the middle of an even row of five. */
  @Test
  void aRowMovesAsideForASeam() {
    HoleRow row =
        row(240, 5).missing(ClosedStretch.seamAt(millimetres(120)).clear(millimetres(15)));
    assertEquals(
        "5 holes at 20 mm, 65 mm, 105 mm, 170 mm, 220 mm from the pin centre, at least 40 mm apart",
        row.leastSpacing(millimetres(40)).nearestToEven().layout().toString());
    assertEquals(
        "5 holes at 20 mm, 65 mm, 110 mm, 155 mm, 200 mm from the pin centre, at least 45 mm apart",
        row(240, 5).using(millimetres(110)).symmetricAbout(millimetres(110)).layout().toString());
    // Two rows 24 mm apart, 50 mm along: the slant.
    double slant = row(240, 5).inTwoRows(millimetres(24)).widestSpacing().getValue();
    assertEquals(Math.hypot(50, 24), slant, 1e-12);
  }

  /** From 5 3/16 in, beside the seam, two even spacings lead to the end at 13 1/4 in. */
  @Test
  void aLayoutTellsItsSpacings() {
    ClosedStretch seam = ClosedStretch.seamAt(inches(6)).wide(inches("1/8")).clear(inches("3/4"));
    HoleLayout holes =
        HoleRow.along(inches(14))
            .holes(4)
            .startingFrom(inches("1 1/2"))
            .endingBefore(inches("3/4"))
            .missing(seam)
            .layout();
    assertEquals(
        "4 holes at 1 1/2 in, 5 3/16 in, 9.3333 in, 13 1/4 in from the pin centre,"
            + " at least 3 11/16 in apart",
        holes.toString());
    assertEquals("3.9167 in", holes.spacings().get(2).toString());
  }

  @Test
  void badInputIsRefusedByName() {
    HoleRow row = row(240, 3);
    assertTrue(refused(() -> HoleRow.along(millimetres(0))).startsWith("leaf length"));
    assertTrue(refused(() -> row.holes(0)).startsWith("count of holes must be at least 1, was 0"));
    assertTrue(refused(() -> row.startingFrom(millimetres(-1))).startsWith("start"));
    assertTrue(refused(() -> row.endingBefore(millimetres(-1))).startsWith("end distance"));
    assertTrue(refused(() -> row.leastSpacing(millimetres(-1))).startsWith("least spacing"));
    assertTrue(refused(() -> row.using(millimetres(-1))).startsWith("fixed hole"));
    assertTrue(refused(() -> row.symmetricAbout(millimetres(0))).startsWith("mirror line"));
    assertTrue(refused(() -> row.inTwoRows(millimetres(0))).startsWith("distance between"));
    assertTrue(
        refused(() -> row.nearestTo(List.of(millimetres(30), millimetres(20))))
            .startsWith("wanted places must rise, was 20 mm behind 30 mm"));
    HoleRow one = row.leastSpacing(millimetres(9)).nearestTo(List.of(millimetres(30)));
    assertTrue(refused(one::layout).startsWith("places must be as many as the holes, 3, were 1"));
  }

  @Test
  void aSeamKeepsTheHolesOwnRimAndMargin() {
    // 120 − 1 − 6/2 − 2.
    ClosedStretch seam =
        ClosedStretch.seamAt(millimetres(120)).wide(millimetres(2)).forHole(millimetres(6));
    assertEquals(millimetres(114), seam.withMargin(millimetres(2)).from());
  }

  @Test
  void aSeamKeepsTheWoodsDistanceOrTheHolesOwn() {
    ClosedStretch seam =
        ClosedStretch.seamAt(millimetres(120))
            .wide(millimetres(2))
            .clearOnPinSide(millimetres(15))
            .clearOnTipSide(millimetres(35));
    assertEquals("seam at 120 mm, 104 mm to 156 mm", seam.toString());
    ClosedStretch bored = seam.forHole(millimetres(36)).withMargin(millimetres(2));
    assertEquals(millimetres(99), bored.from());
    assertEquals(millimetres(156), bored.to());
    assertEquals("closed stretch from 3 mm to 4 mm", keep(3, 4).name());
    assertTrue(refused(() -> keep(4, 3)).startsWith("to must not lie before from at 4 mm"));
    assertTrue(refused(() -> seam.wide(millimetres(-1))).startsWith("width"));
    assertTrue(refused(() -> seam.clear(millimetres(-1))).startsWith("distance"));
    assertTrue(refused(() -> seam.forHole(millimetres(-1))).startsWith("diameter"));
    assertTrue(refused(() -> seam.withMargin(millimetres(-1))).startsWith("margin"));
    assertTrue(refused(() -> seam.named(" ")).startsWith("name"));
  }

  /** Rows made of rows would double what they miss each time, and soon never end. */
  @Test
  void missesOnceWhatTwoLeavesShare() {
    HoleRow row = row(300, 4).missing(keep(40, 60), keep(100, 120));
    HoleRow shared = row;
    for (int n = 0; n < 64; n++) {
      shared = shared.sharedWith(shared, row);
    }
    assertEquals(row.toString(), shared.toString());
    ClosedStretch[] many = new ClosedStretch[2000];
    Arrays.setAll(many, n -> keep(0.1 * n, 0.1 * n + 0.05));
    HoleRow full = row(300, 4).missing(many);
    assertEquals(
        "closed stretches must be from 0 to 2000, was 2001; join those that overlap",
        refused(() -> full.missing(keep(250, 260))));
    assertEquals(
        "closed stretches must be from 0 to 2000, was 2002; join those that overlap",
        refused(() -> row.sharedWith(full)));
    HoleRow used = row(300, 4);
    for (int n = 0; n < 1000; n++) {
      used = used.using(millimetres(20 + 0.2 * n));
    }
    HoleRow crowded = used;
    assertEquals(
        "fixed holes must be from 0 to 1000, was 1001; divide the leaf into several rows",
        refused(() -> crowded.using(millimetres(250))));
    assertEquals(
        "fixed holes must be from 0 to 1000, was 1001; divide the leaf into several rows",
        refused(() -> row.using(millimetres(250)).sharedWith(crowded)));
  }
}
