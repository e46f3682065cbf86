package org.hammerscale.hinge;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SwingTest {
  private static final Section STRAP = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Barrel BARREL = Barrel.around(inches("1/2"), STRAP);
  private static final LeafProfile TANGENT = LeafProfile.tangent(BARREL);
  private static final LeafProfile CENTRED = LeafProfile.centred(BARREL);
  private static final Board DOOR = Board.of(inches(1)).edgeFromPin(inches("1/8"));

  @Test
  void squareNotchOfTheRadiusOpensARightAngleWhateverTheThickness() {
    for (String t : List.of("1/16", "1/8", "1/4", "3/8")) {
      Section strap = Section.flat(inches(2), inches(t));
      Barrel barrel = Barrel.around(inches(2).subtract(inches(t).multiply(2)), strap);
      LeafProfile leaf = LeafProfile.tangent(barrel).notchedBehindPin(inches(1));
      assertEquals(90, Swing.of(leaf).opening().getValue(), 1e-13);
      assertEquals(1, Swing.of(leaf).leastNotch(degrees(90)).getValue(), 1e-15);
    }
  }

  /** cos θ = 1 − t/R where the corner slides on the barrel: exactly 60° for t half of R. */
  @Test
  void barrelNotchIsNotSpoiltByRounding() {
    assertEquals(60, Swing.of(TANGENT).opening().getValue(), 1e-13);
    double t = 0.3;
    Barrel barrel = Barrel.around(millimetres(2 - 2 * t), Section.square(millimetres(t)));
    double cosine = 1 - t;
    assertEquals(
        Math.toDegrees(Math.acos(cosine)),
        Swing.of(LeafProfile.tangent(barrel)).opening().getValue(),
        1e-9);
  }

  /** A hair behind the barrel the angle is asked of forty digits. */
  @Test
  void isExactAHairBehindTheBarrel() {
    MathContext digits = new MathContext(60);
    double least = Swing.of(TANGENT).barrelNotch().getValue();
    for (double beyond : new double[] {1e-15, 1e-13, 1e-11, 1e-9, 1e-7, 1e-5}) {
      double c = least * (1 + beyond);
      // R = 1/2, b = 1/4: θ = atan2(c, b) + atan2(p, R), p² = c² + b² − R².
      BigDecimal square =
          new BigDecimal(c).pow(2).add(new BigDecimal(0.0625)).subtract(new BigDecimal(0.25));
      double p = square.sqrt(digits).doubleValue();
      double exact = Math.toDegrees(Math.atan2(c, 0.25) + Math.atan2(p, 0.5));
      Swing swing = Swing.of(TANGENT.notchedBehindPin(inches(c)));
      assertEquals(exact, swing.opening().getValue(), 1e-12, () -> "beyond by " + beyond);
    }
  }

  @Test
  void foldsToItsTips() {
    LeafProfile leaf = TANGENT.reaching(inches(9));
    Swing swing = Swing.of(leaf);
    double lean = 2 * Math.toDegrees(Math.atan(0.25 / 9));
    assertEquals(180 + lean, swing.backSwing().getValue(), 1e-12);
    assertEquals(Contact.TIPS, swing.turnedOver().contact());
    assertEquals(inches("1/2"), swing.roomWhenFolded());
    assertEquals(inches("-1/4"), Swing.of(CENTRED).roomWhenFolded());
    assertTrue(swing.shuts(Hanging.JOINT));
    assertFalse(Swing.of(CENTRED).shuts(Hanging.JOINT));
    assertTrue(Swing.of(CENTRED).shuts(Hanging.CORNER));
    assertEquals(240, swing.opening(Hanging.JOINT).getValue(), 1e-12);
    assertEquals(150, swing.opening(Hanging.CORNER).getValue(), 1e-12);
    assertEquals(swing.opening(), swing.opening(Hanging.FACE));
    // The shorter leaf decides, whichever it is.
    Swing unequal = Swing.between(leaf, TANGENT.reaching(inches(4)));
    double more = 2 * Math.toDegrees(Math.atan(0.25 / 4));
    assertEquals(180 + more, unequal.backSwing().getValue(), 1e-12);
    assertEquals(180 + more, unequal.exchanged().backSwing().getValue(), 1e-12);
    assertTrue(unequal.turnedOver().clears(degrees(187)));
    assertFalse(unequal.turnedOver().clears(degrees(188)));
    assertEquals(unequal.barrelNotch(), unequal.turnedOver().leastNotch(degrees(185)));
    assertEquals(Contact.BARREL, unequal.turnedOver().leastNotchContact(degrees(185)));
  }

  /** The edge of the deeper notch comes within the gap of the other leaf before the tips meet. */
  @Test
  void keepsTheGapOfANotchPastAHalfTurn() {
    LeafProfile one = leaf(8, 5, true).reaching(millimetres(286.334));
    LeafProfile other = leaf(8, 3, false).reaching(millimetres(163.826));
    LeafProfile fixed = one.notchedBehindPin(millimetres(8.524));
    LeafProfile moving = other.notchedBehindPin(millimetres(25.150));
    Swing free = Swing.between(fixed, moving).turnedOver();
    assertEquals(Contact.TIPS, free.contact());
    Swing swing = free.withGap(millimetres(1.391));
    // Its corner is 25.150 mm out and 4 mm below the pin, the other's face 2.5 mm above.
    double p = Math.sqrt(25.150 * 25.150 + 16 - 3.891 * 3.891);
    double expected = Math.toDegrees(Math.atan2(25.150, -4) + Math.atan2(p, 3.891));
    assertEquals(180.248, expected, 0.0005);
    assertEquals(expected, swing.opening().getValue(), 1e-10);
    assertEquals(Contact.FACE_CORNER, swing.contact());
    assertTrue(swing.clears(degrees(180.248)));
    assertFalse(swing.clears(degrees(180.3)));
    Workings.check(swing.openingWorking(), swing.opening());
    // Which knuckle it is, and that a shallower notch would open further.
    assertTrue(swing.notchOpening().isGreaterThan(swing.opening()));
    assertEquals(expected, swing.exchanged().notchOpening().getValue(), 1e-10);
    Workings.check(swing.notchOpeningWorking(), swing.notchOpening());
    refused(
        "where the tips of the leaves meet", () -> swing.exchanged().leastNotch(degrees(180.6)));
    assertEquals(swing.exchanged().barrelNotch(), swing.exchanged().leastNotch(degrees(180.3)));
    Swing close = Swing.between(fixed, moving).turnedOver().withGap(millimetres(1.48));
    refused(
        "where the edge of the notch keeps no more than the gap from the other leaf",
        () -> close.exchanged().leastNotch(degrees(180.3)));
  }

  private static LeafProfile leaf(double bore, double t, boolean centred) {
    Section strap = Section.flat(millimetres(30), millimetres(t));
    Barrel barrel = Barrel.around(millimetres(bore), strap);
    return centred ? LeafProfile.centred(barrel) : LeafProfile.tangent(barrel);
  }

  /** A notch that was not given grows with the gap, and the swing says so. */
  @Test
  void tellsThatAGapCutsANotchThatWasNotGiven() {
    LeafProfile uncut = leaf(10, 5, false);
    Swing gap = Swing.of(uncut).withGap(millimetres(1));
    assertTrue(gap.opening().isGreaterThan(Swing.of(uncut).opening()));
    String said = gap.cautions().get(0).text();
    assertTrue(said.startsWith("no depth of notch was given: it is taken as 9.798 mm"), said);
    Swing cut = Swing.of(uncut.notchedBehindPin(gap.barrelNotch())).withGap(millimetres(1));
    assertEquals(gap.opening(), cut.opening());
    assertFalse(cut.cautions().toString().contains("no depth"), () -> "" + cut.cautions());
    assertFalse(Swing.of(uncut).cautions().toString().contains("no depth"));
  }

  @Test
  void hangingCountsFromShut() {
    assertEquals(degrees(270), Hanging.JOINT.fromShut(degrees(90)));
    assertEquals(degrees(90), Hanging.JOINT.pastFlat(degrees(270)));
    assertEquals(degrees(0), Hanging.JOINT.pastFlat(degrees(95)));
    assertEquals(degrees(30), Hanging.CORNER.pastFlat(degrees(120)));
    assertEquals(degrees(120), Hanging.FACE.pastFlat(degrees(120)));
    refused("opening from shut must lie", () -> Hanging.FACE.pastFlat(degrees(-1)));
  }

  @Test
  void boardsMeetFirst() {
    // 2 atan(w/H) with H = 1/2 + 1 in.
    Swing swing = Swing.of(TANGENT).withBoards(DOOR);
    assertEquals(2 * Math.toDegrees(Math.atan(0.125 / 1.5)), swing.opening().getValue(), 1e-12);
    assertEquals(Contact.BOARDS, swing.contact());
    assertFalse(swing.clears(degrees(10)));
    assertTrue(swing.clears(degrees(9)));
    // Behind, they are in nobody's way.
    assertEquals(Swing.of(TANGENT).backSwing(), swing.backSwing());
    // Edges apart: the deeper of the two, and an edge that is hit before.
    LeafProfile near = TANGENT.onBoard(DOOR);
    LeafProfile far = TANGENT.onBoard(Board.of(inches(1)).edgeFromPin(inches("1/2")));
    double face = 2 * Math.toDegrees(Math.atan(0.5 / 1.5));
    double edge =
        180 - Math.toDegrees(Math.atan2(1.5, 0.125) + Math.acos(0.5 / Math.hypot(0.125, 1.5)));
    assertEquals(Math.min(face, edge), Swing.between(near, far).opening().getValue(), 1e-12);
    assertTrue(edge < face);
    // A board on one leaf alone meets the other leaf.
    LeafProfile bare = TANGENT.notchedBehindPin(inches(4));
    Swing one = Swing.between(bare.onBoard(DOOR), bare);
    double under = 2 * Math.toDegrees(Math.atan(0.125 / 0.5));
    assertEquals(under, one.opening().getValue(), 1e-12);
    // Far from the pin its upper corner comes first: 2 in out and 1 1/2 in up, 2 1/2 in away.
    Board away = Board.of(inches(1)).edgeFromPin(inches(2));
    double over = Math.toDegrees(Math.atan(2 / 1.5) + Math.acos(0.5 / 2.5));
    Swing wide = Swing.between(bare.onBoard(away), bare);
    assertEquals(over, wide.opening().getValue(), 1e-12);
    Workings.check(one.openingWorking(), one.opening());
    // Boards below the level of the pin fold flat.
    Swing low =
        Swing.of(TANGENT.turnedOver()).withBoards(Board.of(inches("1/8")).edgeFromPin(inches(1)));
    assertEquals(180, low.opening().getValue(), 1e-12);
    Workings.check(low.openingWorking(), low.opening());
  }

  @Test
  void refusesWhatCannotTurn() {
    LeafProfile shallow = TANGENT.notchedBehindPin(inches("3/8"));
    refused(
        "depth of notch must be at least 0.433 in for the leaf to clear the other's barrel, was 3/8"
            + " in; cut the notch deeper",
        () -> Swing.of(shallow));
    LeafProfile enough = TANGENT.notchedBehindPin(inches("7/16"));
    refused("clear the other's barrel by 1/32 in", () -> Swing.of(enough).withGap(inches("1/32")));
    refused(
        "length from pin must be more than 0.6644 in",
        () -> Swing.of(TANGENT.reaching(inches("5/8")).notchedBehindPin(inches("7/16"))));
    refused("running gap must not be negative", () -> Swing.of(TANGENT).withGap(inches(-1)));
    refused(
        "opening past flat must be less than 180°",
        () -> Swing.of(CENTRED).leastNotch(degrees(180)));
    refused(
        "opening past flat must be at most 9.527°, where the boards meet",
        () -> Swing.of(TANGENT).withBoards(DOOR).leastNotch(degrees(60)));
    refused(
        "where the tips of the leaves meet",
        () -> Swing.of(TANGENT).turnedOver().leastNotch(degrees(181)));
    refused("opening past flat must lie", () -> Swing.of(TANGENT).clears(degrees(-1)));
    refused(
        "face above pin must lie between -1/4 in and 1/2 in",
        () -> LeafProfile.offset(BARREL, inches("5/8")));
    refused("face above pin", () -> LeafProfile.offset(BARREL, inches("-3/8")));
    refused("depth of notch must be more", () -> TANGENT.notchedBehindPin(inches(0)));
    refused("length from pin must be more", () -> TANGENT.reaching(inches(0)));
    refused("thickness of board", () -> Board.of(inches(0)));
    refused("edge from pin", () -> DOOR.edgeFromPin(inches(-1)));
  }

  private static void refused(String message, Executable call) {
    String said = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(said.contains(message), said);
  }

  @Test
  void showsItsWorkings() {
    LeafProfile deep = TANGENT.notchedBehindPin(inches(1)).reaching(inches(9));
    LeafProfile thin =
        LeafProfile.tangent(
            Barrel.around(millimetres(12), Section.flat(millimetres(30), millimetres(5))));
    List<Swing> all =
        List.of(
            Swing.of(TANGENT),
            Swing.of(TANGENT.notchedBehindPin(inches("15/32"))).withGap(inches("1/64")),
            Swing.of(deep),
            Swing.of(deep).turnedOver(),
            Swing.of(TANGENT).turnedOver(),
            Swing.of(CENTRED).withGap(millimetres(1)),
            Swing.between(deep, thin),
            Swing.of(LeafProfile.offset(BARREL, inches("3/8"))),
            Swing.of(TANGENT).withBoards(DOOR),
            Swing.between(
                TANGENT.onBoard(Board.of(inches(1)).edgeFromPin(inches("1/2"))),
                TANGENT.onBoard(DOOR)));
    for (Swing swing : all) {
      Workings.check(swing.openingWorking(), swing.opening());
      Workings.check(swing.barrelNotchWorking(), swing.barrelNotch());
      Workings.check(swing.roomWhenFoldedWorking(), swing.roomWhenFolded());
      assertEquals(swing.cautions(), swing.openingWorking().cautions());
      for (double angle : new double[] {0, 5, 70, 100, 150}) {
        if (swing.contact() != Contact.BOARDS || angle == 0) {
          Workings.check(swing.leastNotchWorking(degrees(angle)), swing.leastNotch(degrees(angle)));
        }
      }
    }
    assertTrue(
        Swing.of(deep)
            .openingWorking()
            .toString()
            .startsWith("opening past flat, to the face corner"));
  }

  @Test
  void warnsWhereAFileStrokeOpensItByDegrees() {
    assertTrue(
        Swing.of(TANGENT).cautions().get(0).text().contains("1/64 in deeper gives 74.08° for 60°"),
        () -> Swing.of(TANGENT).cautions().toString());
    assertEquals(List.of(), Swing.of(TANGENT.notchedBehindPin(inches("1/2"))).cautions());
    LeafProfile metric =
        LeafProfile.tangent(
            Barrel.around(millimetres(10), Section.flat(millimetres(30), millimetres(6))));
    String text = Swing.between(metric, TANGENT).cautions().toString();
    assertTrue(text.contains("0.4 mm deeper"), text);
  }

  @Test
  void aLeafAboveAFlatterBarrelNeedsNoNotch() {
    // The plate lies 0.35 in and more above the pin, the other's barrel reaches 0.3125 in.
    LeafProfile high = LeafProfile.tangent(Barrel.around(inches(0.7), STRAP));
    LeafProfile small =
        LeafProfile.centred(Barrel.around(inches("3/8"), Section.flat(inches(1), inches("1/8"))));
    Swing swing = Swing.between(high, small);
    assertEquals(inches(0), swing.barrelNotch());
    assertEquals(Contact.BACK_CORNER, swing.contact());
    // The plate's lower corner, straight above the pin, meets the other's face.
    double expected = Math.toDegrees(Math.acos(0.0625 / 0.35));
    assertEquals(expected, swing.opening().in(ShopUnits.DEGREE), 1e-12);
    Workings.check(swing.openingWorking(), swing.opening());
    Workings.check(swing.barrelNotchWorking(), swing.barrelNotch());
  }

  @Test
  void describesItself() {
    assertEquals(
        "leaf of 1/4 in on a barrel of 1 in, face 1/2 in above the pin", TANGENT.toString());
    assertEquals(
        "swing, each a leaf of 1/4 in on a barrel of 1 in, face 1/8 in above the pin\n  gap 1/32 in",
        Swing.of(CENTRED).withGap(inches("1/32")).toString());
    assertEquals("in the joint", Hanging.JOINT.toString());
  }

  /**
   * The board is let out round the larger barrel, so that its lower corner and the corner where the
   * bare leaf leaves its barrel lie on one circle: they meet at atan2(w, s) + atan2(p, f) with w =
   * 0.059, s² = R² − w² and p² = R² − f², by hand 80.23°.
   */
  @Test
  void boardAndLeafMeetOnTheCircleThatTheBoardIsLetOutBy() {
    Barrel small =
        Barrel.around(millimetres(5.68), Section.flat(millimetres(20), millimetres(7.555)));
    Barrel large =
        Barrel.around(millimetres(17.126), Section.flat(millimetres(20), millimetres(4.577)));
    LeafProfile fixed =
        LeafProfile.tangent(small)
            .notchedBehindPin(millimetres(27.71))
            .onBoard(Board.of(millimetres(5)).edgeFromPin(millimetres(0.059)));
    LeafProfile moving = LeafProfile.centred(large).notchedBehindPin(millimetres(24.37));
    double r = 17.126 / 2 + 4.577;
    double f = 4.577 / 2;
    double w = 0.059;
    double meet = Math.atan2(w, Math.sqrt(r * r - w * w)) + Math.atan2(Math.sqrt(r * r - f * f), f);
    assertEquals(
        Math.toDegrees(meet), Swing.between(fixed, moving).opening().in(ShopUnits.DEGREE), 1e-9);
  }
}
