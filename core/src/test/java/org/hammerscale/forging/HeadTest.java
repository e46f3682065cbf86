package org.hammerscale.forging;

import static org.hammerscale.forging.UpsetTest.refusal;
import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class HeadTest {
  private static final Section SHANK = Section.round(millimetres(10));
  private static final Section BASE = Section.round(millimetres(20));

  @Test
  void theTwoConventionsOfBoltHeadsDiffer() {
    Section inch = Section.round(inches(1));
    assertEquals(inches("13/16"), BoltHead.HALF_WIDTH.square(inch).reach());
    assertEquals(inches(1), BoltHead.SHANK_DIAMETER.square(inch).reach());
    assertEquals(Section.square(inches("1 5/8")), BoltHead.HALF_WIDTH.square(inch).end());
    assertEquals(Section.hexagon(inches("1 5/8")), BoltHead.HALF_WIDTH.hexagon(inch).end());
    assertEquals("square head", BoltHead.HALF_WIDTH.square(inch).name());
    assertEquals("hexagonal head", BoltHead.HALF_WIDTH.hexagon(inch).name());
    assertEquals("half its width thick", BoltHead.HALF_WIDTH.toString());
  }

  /** A square of 1 1/4 in, 5/8 in thick, over π/4 × (3/4)² of the shank. */
  @Test
  void aBoltHeadTakesItsVolumeOfTheShank() {
    Upset head = BoltHead.HALF_WIDTH.square(Section.round(inches("3/4")));
    double shank = Math.PI / 4 * 0.75 * 0.75;
    assertEquals(1.25 * 1.25 * 0.625 / shank, head.stockLength().in(ShopUnits.INCH), 1e-12);
  }

  @Test
  void aTubeHasNoNailHead() {
    Section tube = Section.roundTube(millimetres(20), millimetres(2));
    assertEquals(
        "shank must be solid to be driven, was " + tube + "; close the tube, or give a bar",
        refusal(() -> Head.nail(tube)));
  }

  /** The eighth of an inch is 3.175 mm for a metric shank. */
  @Test
  void theOldRuleHoldsInMillimetresToo() {
    Upset metric = BoltHead.HALF_WIDTH.square(Section.round(millimetres(25.4)));
    assertTrue(metric.reach().isEquivalentTo(inches("13/16")));
    assertTrue(metric.end().meets(Section.square(inches("1 5/8"))));
  }

  @Test
  void aHalfBallIsTheTallestDome() {
    assertTrue(
        Head.dome(SHANK, BASE, millimetres(10))
            .stockLength()
            .isEquivalentTo(millimetres(2 / 3d * 1000 * Math.PI / (25 * Math.PI))));
    assertEquals(
        "height must be at most half the diameter of 20 mm, was 11 mm; take Head.ball for more than"
            + " half a ball",
        refusal(() -> Head.dome(SHANK, BASE, millimetres(11))));
  }

  @Test
  void aNailHeadIsAnEstimate() {
    Section nail = Section.square(millimetres(4));
    assertFalse(Head.nail(nail).stock(nail).isExact());
    assertEquals(millimetres(7), Head.nail(nail).stock(nail).likely());
    assertEquals(millimetres(0), Head.nail(nail).reach());
  }

  @Test
  void aHeadEndsThePiece() {
    assertEquals(0, Head.snap(SHANK).end().area().getValue());
    assertEquals(SHANK, Head.pan(SHANK).end());
    assertEquals(SHANK, Head.snap(SHANK).reversed().end());
    assertEquals(BASE, Head.countersunk(SHANK, millimetres(20), degrees(90)).end());
    assertTrue(
        Head.countersunk(SHANK, millimetres(20), degrees(90))
            .reach()
            .isEquivalentTo(millimetres(5)));
  }

  @Test
  void refusesImpossibleHeads() {
    Section square = Section.square(millimetres(10));
    assertTrue(
        refusal(() -> Head.snap(square)).startsWith("shank must be round, was 10 mm square"));
    assertTrue(refusal(() -> Head.pan(square)).startsWith("shank must be round"));
    assertTrue(refusal(() -> BoltHead.HALF_WIDTH.square(square)).startsWith("shank must be round"));
    assertTrue(
        refusal(() -> BoltHead.HALF_WIDTH.hexagon(square)).startsWith("shank must be round"));
    assertTrue(
        refusal(() -> Head.dome(SHANK, square, millimetres(2))).startsWith("base must be round"));
    assertEquals(
        "widest section of the domed head must have at least the area of the 20 mm round it is jumped up from, was 10 mm"
            + " round; draw it out instead, or start from a thinner bar",
        refusal(() -> Head.dome(BASE, SHANK, millimetres(2))));
    assertEquals(
        "diameter must be more than the 10 mm of the bar, was 10 mm; make the head wider, or the"
            + " bar thinner",
        refusal(() -> Head.ball(SHANK, millimetres(10))));
    assertTrue(refusal(() -> Head.ball(square, millimetres(20))).startsWith("bar must be round"));
    assertEquals(
        "angle must be more than 0° and less than 180°, was 0°; give the included angle of the"
            + " cone, often 90°",
        refusal(() -> Head.countersunk(SHANK, millimetres(20), degrees(0))));
    assertTrue(
        refusal(() -> Head.countersunkOverGrip(SHANK, millimetres(20), degrees(180)))
            .startsWith("angle must be more than 0°"));
    assertTrue(
        refusal(() -> Head.countersunk(SHANK, millimetres(20), degrees(181)))
            .startsWith("angle must lie between 0° and 180°"));
    assertTrue(
        refusal(() -> Head.countersunk(SHANK, millimetres(9), degrees(90)))
            .startsWith("diameter must be more than the 10 mm"));
    assertTrue(
        refusal(
                () ->
                    Head.tapered(
                        SHANK, BASE, Section.roundTube(BASE.width(), inches("1/8")), inches(1)))
            .startsWith("sections at base and top of a taper must be similar"));
  }

  @Test
  void aRivetTakesGripFillingAndHead() {
    RivetBlank rivet = RivetBlank.through(millimetres(12), Head.snap(SHANK));
    assertEquals(SHANK, rivet.shank());
    assertTrue(rivet.length().isEquivalentTo(millimetres(12).add(Head.snap(SHANK).stockLength())));
    assertEquals(millimetres(27), RivetBlank.Rule.ONE_AND_A_HALF.length(millimetres(12), SHANK));
    assertTrue(rivet.inHole(millimetres(11)).length().isGreaterThan(rivet.length()));
    assertEquals("10 mm round rivet through 12 mm, with a snap head", rivet.toString());
    assertEquals("one and a half diameters", RivetBlank.Rule.ONE_AND_A_HALF.toString());
    Workings.check(rivet.inHole(inches("7/16")).working(), rivet.inHole(inches("7/16")).length());
    for (RivetBlank.Rule rule : RivetBlank.Rule.values()) {
      Workings.check(rule.working(millimetres(12), SHANK), rule.length(millimetres(12), SHANK));
    }
  }

  /** Grip less the depth with the whole cone, and full grip with what lies outside the shank. */
  @Test
  void bothWaysOfReckoningACountersunkRivetAgree() {
    Upset whole = Head.countersunk(SHANK, millimetres(18), degrees(82));
    Upset over = Head.countersunkOverGrip(SHANK, millimetres(18), degrees(82));
    assertEquals(millimetres(0), over.reach());
    assertTrue(
        RivetBlank.through(millimetres(12).subtract(whole.reach()), whole)
            .length()
            .isEquivalentTo(RivetBlank.through(millimetres(12), over).length()));
  }

  @Test
  void refusesBadRivets() {
    assertTrue(
        refusal(() -> RivetBlank.through(millimetres(0), Head.snap(SHANK)))
            .startsWith("grip must be more than zero"));
    assertTrue(
        refusal(() -> RivetBlank.through(millimetres(5), Head.nail(Section.square(millimetres(4)))))
            .startsWith("shank must be round"));
    assertEquals(
        "diameter must be at least the 10 mm of the shank, was 9 mm; drill the hole wider",
        refusal(() -> RivetBlank.through(millimetres(5), Head.snap(SHANK)).inHole(millimetres(9))));
  }
}
