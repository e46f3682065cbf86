package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class TaperTest {
  private static final Section BAR = Section.flat(inches("1 1/2"), inches("1/4"));
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final Taper TAPER = Taper.between(BAR, TIP, inches(6));

  @Test
  void usesLessBarThanItIsLong() {
    assertEquals(Estimate.exact(inches(3.5)), TAPER.stock(BAR));
    assertEquals(inches(6), TAPER.reach());
    assertEquals(BAR, TAPER.start());
    assertEquals(TIP, TAPER.end());
    assertEquals("taper", TAPER.name());
    assertTrue(TAPER.metalLost().isNone());
    assertTrue(TAPER.cautions().isEmpty());
  }

  @Test
  void mayEndStandingOnEdge() {
    Section edge = Section.onEdge(inches("1/8"), inches("1/4"));
    // Width alone tapers, from 1 1/2 to 1/8: the mean width is 13/16.
    assertEquals(
        6 * 13 / 16d * 0.25,
        Taper.between(BAR, edge, inches(6)).metalKept().likely().getValue(),
        1e-15);
  }

  @Test
  void showsItsWorking() {
    Workings.check(TAPER.working(), TAPER.metalKept().likely());
    Taper metric =
        Taper.between(
            Section.round(millimetres(16)), Section.round(inches("1/4")), millimetres(150));
    Workings.check(metric.working(), metric.metalKept().likely());
    assertEquals(
        "6 in taper from 1 1/2 in × 1/4 in flat to 3/4 in × 1/8 in flat", TAPER.toString());
  }

  @Test
  void toAPointHoldsAThirdAndToAnEdgeHalf() {
    assertEquals(Estimate.exact(inches(2)), Taper.toPoint(BAR, inches(6)).stock(BAR));
    assertEquals(Estimate.exact(inches(3)), Taper.toEdge(BAR, inches(6)).stock(BAR));
    Section hexagon = Section.hexagon(millimetres(20));
    assertTrue(
        Taper.toPoint(hexagon, millimetres(60))
            .stock(hexagon)
            .likely()
            .isEquivalentTo(millimetres(20)));
    assertEquals("6 in taper from 1 1/2 in × 1/4 in flat to point", toPoint().toString());
    assertEquals(
        "6 in taper from 1 1/2 in × 1/4 in flat to 1 1/2 in edge",
        Taper.toEdge(BAR, inches(6)).toString());
    Workings.check(toPoint().working(), toPoint().metalKept().likely());
  }

  private static Taper toPoint() {
    return Taper.toPoint(BAR, inches(6));
  }

  @Test
  void blendsASolidSectionIntoARound() {
    Section square = Section.square(inches(1));
    Taper blend = Taper.between(square, Section.round(inches(1)), inches(2));
    Workings.check(blend.working(), blend.metalKept().likely());
    assertEquals(
        blend.metalKept().likely().getValue(),
        Taper.between(Section.round(inches(1)), square, inches(2)).metalKept().likely().getValue(),
        1e-15);
    // A stadium of nothing but its edge: a flat of width w and no thickness, blended into a disc.
    // Half-way its area is (π r² + 2 w r) / 4.
    double disc = Math.PI / 4;
    assertEquals(
        (disc + disc + 2 * 1.5 * 0.5) / 6 * 3,
        Taper.between(BAR.edge(), Section.round(inches(1)), inches(3))
            .metalKept()
            .likely()
            .getValue(),
        1e-14);
  }

  @Test
  void tellsTheLengthThatABarGives() {
    Taper drawn = Taper.using(inches(3.5), BAR, TIP);
    assertTrue(drawn.reach().isEquivalentTo(inches(6)));
    assertTrue(drawn.stock(BAR).likely().isEquivalentTo(inches(3.5)));
    Workings.check(drawn.working(), drawn.metalKept().likely());
    assertTrue(drawn.working().toString().contains("L = s A₁ / A = 3.5 × 0.375 / 0.21875 = 6 in"));
  }

  @Test
  void refusesToDrawABarToALargerTip() {
    assertEquals(
        "section tapered to must have no more area than the 3/4 in × 1/8 in flat it is drawn from, was 1 1/2 in ×"
            + " 1/4 in flat; jump the bar up first, or start from a larger one",
        assertThrows(IllegalArgumentException.class, () -> Taper.using(inches(3), TIP, BAR))
            .getMessage());
  }

  @Test
  void tellsTheTipThatAStockAllows() {
    Taper blunt = toPoint().bluntedFor(inches(3.5));
    assertTrue(blunt.end().width().isWithin(inches(0.75), inches(1e-12)));
    assertTrue(blunt.end().thickness().isWithin(inches(0.125), inches(1e-12)));
    assertEquals(inches(6), blunt.reach());
    Taper inWidth =
        Taper.between(BAR, Section.onEdge(inches("1/8"), inches("1/4")), inches(6))
            .bluntedFor(inches(4));
    assertTrue(inWidth.end().width().isWithin(inches(0.5), inches(1e-12)));
    assertTrue(inWidth.end().thickness().isEquivalentTo(inches("1/4")));
    assertEquals(
        "stock must lie between 2 in and 6 in to be reached here, was 7 in; ask for one in that"
            + " range, or change the other sizes",
        assertThrows(IllegalArgumentException.class, () -> toPoint().bluntedFor(inches(7)))
            .getMessage());
    assertThrows(
        IllegalArgumentException.class,
        () ->
            Taper.between(Section.square(inches(1)), Section.round(inches("1/2")), inches(3))
                .bluntedFor(inches(2)));
  }

  @Test
  void refusesSectionsThatNoStraightTaperJoins() {
    assertEquals(
        "sections at base and top of a taper must be similar, or one of them round and the other"
            + " solid, was from 1 1/2 in × 1/4 in flat to 1/4 in hexagon; forge the change of shape by way of a"
            + " round or as stretches of their own",
        assertThrows(
                IllegalArgumentException.class,
                () -> Taper.between(BAR, Section.hexagon(inches("1/4")), inches(3)))
            .getMessage());
    Section tube = Section.roundTube(inches(1), inches("1/8"));
    assertThrows(
        IllegalArgumentException.class,
        () -> Taper.between(tube, Section.round(inches(1)), inches(3)));
    assertEquals(
        "section must be a flat or a square to end in an edge, was 1 in round; forge it flat first,"
            + " as a stretch of its own",
        assertThrows(
                IllegalArgumentException.class,
                () -> Taper.toEdge(Section.round(inches(1)), inches(3)))
            .getMessage());
    assertThrows(IllegalArgumentException.class, () -> Taper.between(BAR, TIP, inches(0)));
    assertThrows(IllegalArgumentException.class, () -> Taper.toPoint(BAR, inches(-1)));
    assertThrows(IllegalArgumentException.class, () -> Taper.using(inches(0), BAR, TIP));
    assertThrows(NullPointerException.class, () -> Taper.between(BAR, null, inches(1)));
  }
}
