package org.hammerscale.fastening;

import static org.hammerscale.units.Graduation.EIGHTH;
import static org.hammerscale.units.Graduation.HALF_MILLIMETRE;
import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Graduation.SIXTY_FOURTH;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.forging.Head;
import org.hammerscale.forging.Taper;
import org.hammerscale.forging.Upset;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** Spikes as they are forged and driven; what they hold is tried in {@code DrivenTest}. */
class SpikeTest {
  private static final Section SQUARE = Section.square(millimetres(10));
  private static final Section ROUND = Section.round(millimetres(20));
  private static final Spike DRIVEN =
      Spike.of(SQUARE).through(millimetres(50)).driven(millimetres(120));

  @Test
  void reachesThroughWhatItFixes() {
    Spike iron = DRIVEN.through(millimetres(6));
    assertEquals(millimetres(176), iron.length());
    assertEquals(List.of(millimetres(50), millimetres(6)), iron.layers());
    // Its point is a chisel of two thicknesses.
    assertEquals(millimetres(20), DRIVEN.point().reach());
    assertEquals(SQUARE.edge(), DRIVEN.point().end());
    assertEquals(ROUND.point(), Spike.of(ROUND).point().end());
    assertEquals(millimetres(120), iron.inWood());
    assertEquals(millimetres(100), iron.holdingLength());
    assertEquals(millimetres(156), iron.boringDepth());
    assertEquals(millimetres(0), iron.clench());
    assertFalse(iron.isClenched());
    Spike alone = Spike.of(SQUARE).driven(inches(6));
    assertEquals(inches(6), alone.length());
    assertEquals(ShopUnits.INCH, alone.boringDepth().getUnit());
  }

  @Test
  void isClenchedByThreeDiametersOrItsPoint() {
    Spike clenched = DRIVEN.clenchedThrough(millimetres(40));
    assertTrue(clenched.isClenched());
    assertEquals(millimetres(30), clenched.clench());
    assertEquals(millimetres(50 + 40 + 30), clenched.length());
    assertEquals(millimetres(70), clenched.inWood());
    assertEquals(millimetres(40), clenched.holdingLength());
    assertEquals(millimetres(90), clenched.boringDepth());
    Spike longPoint = clenched.withPoint(Taper.toPoint(SQUARE, millimetres(45)));
    assertEquals(millimetres(45), longPoint.clench());
    assertEquals("spike of 10 mm square, 120 mm with its clench", clenched.toString());
    assertEquals("spike of 10 mm square, 170 mm under the head", DRIVEN.toString());
    assertFalse(clenched.driven(millimetres(70)).isClenched());
  }

  /** A blunt end makes no way for itself. */
  @Test
  void isBoredForToABluntEnd() {
    Spike eased =
        Spike.of(ROUND)
            .withPoint(Taper.between(ROUND, Section.round(millimetres(12)), millimetres(20)))
            .driven(millimetres(150));
    assertEquals(millimetres(150), eased.boringDepth());
    assertEquals(millimetres(130), eased.holdingLength());
    Workings.check(eased.boringWorking(), eased.boringDepth());
  }

  /** Its metal by slices across a pyramid, the shank and a wedge, none of them by a formula. */
  @Test
  void takesTheBarOfItsMetal() {
    Section base = Section.square(millimetres(24));
    Upset rose = Head.tapered(SQUARE, base, base.point(), millimetres(9));
    Piece piece = DRIVEN.withHead(rose).piece(Material.MILD_STEEL);
    double sliced = 0;
    int slices = 100_000;
    double whole = 9 + 170;
    for (int i = 0; i < slices; i++) {
      double x = whole * (i + 0.5) / slices;
      double side = 24 * x / 9;
      double thick = Math.min(10, 10 * (whole - x) / 20);
      sliced += (x < 9 ? side * side : 10 * thick) * whole / slices;
    }
    assertEquals(sliced / 100, piece.layout().cutLength().likely().getValue(), 1e-3);
    assertTrue(piece.layout().cutLength().isExact());
    assertEquals(3, piece.features().size());
    assertEquals(List.of(), piece.layout().cautions(), "each stretch meets the next");
    assertEquals(rose, DRIVEN.withHead(rose).head());
    // A rose head by the rule takes 1 1/2 to 2 thicknesses of bar.
    Piece byRule = DRIVEN.piece(Material.MILD_STEEL);
    assertEquals(150 + 10 + 15, byRule.layout().cutLength().low().getValue(), 1e-9);
    assertEquals(150 + 10 + 20, byRule.layout().cutLength().high().getValue(), 1e-9);
  }

  @Test
  void takesTheLargestDrillOfTheRule() {
    Wood oak = Wood.named("white oak"); // G 0.73
    Wood fir = Wood.named("Douglas-fir coast"); // G 0.50 at most
    // 0.9 × 10 and 0.75 × 10; 0.9 × 3/8 = 21.6/64.
    assertEquals(millimetres(9), PilotHole.pulledOut(DRIVEN, oak).drill(HALF_MILLIMETRE));
    assertEquals(millimetres(7.5), PilotHole.pulledOut(DRIVEN, fir).drill(HALF_MILLIMETRE));
    assertEquals(millimetres(7), PilotHole.pulledOut(DRIVEN, fir).drill(MILLIMETRE));
    Spike inch = Spike.of(Section.square(inches("3/8")));
    assertEquals(inches("21/64"), PilotHole.pulledOut(inch, oak).drill(SIXTY_FOURTH));
    // A lag screw of 5/16 in: from 0.40 to 0.70 of it in light wood, 0.125 to 0.21875 in.
    PilotHole lag = PilotHole.pulledOut(LagScrew.of(inches("5/16")), fir);
    assertEquals(inches("1/8"), lag.drill(EIGHTH));
    // In dense wood 0.203 to 0.266 in.
    assertEquals(
        inches("1/4"), PilotHole.pulledOut(LagScrew.of(inches("5/16")), oak).drill(EIGHTH));
    // One of 1/4 in: 0.1625 to 0.2125 in, and 1/8 in is too tight.
    assertTrue(
        refused(() -> PilotHole.pulledOut(LagScrew.of(inches("1/4")), oak).drill(EIGHTH))
            .startsWith("drills must have one of at most 0.2125 in and at least 0.1625 in, was"));
    Spike fine = Spike.of(Section.round(millimetres(1)));
    assertTrue(
        refused(() -> PilotHole.pulledOut(fine, fir).drill(MILLIMETRE))
            .startsWith("drills must have one of at most 0.75 mm, was every 1 mm; take finer"));
    // A wood screw has one size, rounded to the nearest: 0.1368 in of root is nearer to 9/64.
    PilotHole screw = PilotHole.pulledOut(WoodScrew.number(10), oak);
    assertEquals(inches("9/64"), screw.drill(SIXTY_FOURTH));
    assertEquals(0, PilotHole.pulledOut(WoodScrew.number(10), fir).drill(MILLIMETRE).getValue());
  }

  @Test
  void showsItsWorkings() {
    Spike alone = Spike.of(ROUND).driven(millimetres(90));
    for (Spike spike :
        List.of(
            DRIVEN,
            alone,
            DRIVEN.through(inches("1/4")).clenchedThrough(inches(2)),
            alone.clenchedThrough(millimetres(60)))) {
      Workings.check(spike.working(), spike.length());
      Workings.check(spike.boringWorking(), spike.boringDepth());
    }
    assertTrue(DRIVEN.working().toString().contains("eye protection"));
  }

  @Test
  void refusesWhatCannotBeDriven() {
    assertEquals(
        "depth must be more than the point of 20 mm, was 20 mm; drive it deeper, or make the point"
            + " shorter",
        refused(() -> DRIVEN.driven(millimetres(20))));
    assertTrue(
        refused(() -> DRIVEN.withPoint(Taper.toEdge(SQUARE, millimetres(130))))
            .startsWith("depth must be more than the point of 130 mm, was 120 mm"));
    assertTrue(
        refused(() -> DRIVEN.withPoint(Taper.toPoint(ROUND, millimetres(20))))
            .startsWith("point must begin with the shank of 10 mm square, was 20 mm round"));
    assertTrue(
        refused(() -> DRIVEN.withHead(Head.snap(ROUND)))
            .startsWith("head must begin with the shank of 10 mm square, was 20 mm round"));
    assertTrue(refused(Spike.of(SQUARE)::length).startsWith("depth must be known, was none"));
    assertTrue(refused(() -> DRIVEN.through(millimetres(0))).startsWith("thickness must"));
    assertTrue(refused(() -> DRIVEN.clenchedThrough(millimetres(0))).startsWith("board must"));
    assertTrue(
        refused(() -> Spike.of(Section.hexagon(inches(1)))).startsWith("shank must be square or"));
  }

  private static String refused(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
