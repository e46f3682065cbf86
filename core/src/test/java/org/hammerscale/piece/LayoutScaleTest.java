package org.hammerscale.piece;

import static org.hammerscale.units.Measures.celsius;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.Measures.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.forging.HandAllowance;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.scale.Atmosphere;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

/** What planned heats add to a layout. */
class LayoutScaleTest {
  private static final Bar STRAP =
      Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
  private static final Section TIP = Section.flat(inches("3/4"), inches("1/8"));
  private static final HeatPlan PLAN =
      HeatPlan.soaking(celsius(1150), minutes(5)).inHeats(2).in(Atmosphere.STILL_AIR);
  private static final Barrel BARREL = Barrel.around(inches("1/2"), STRAP.section());
  private static final Plain PLAIN = Plain.of(STRAP.section(), inches(9));
  private static final Taper TAPER = Taper.between(STRAP.section(), TIP, inches(6));
  private static final Piece LEAF = Piece.of(STRAP, BARREL, PLAIN, TAPER);

  /** Five minutes at 1150 °C by the published parabola, and as still air can feed it, in mm. */
  private static final double PARABOLA = 0.18017877;

  private static final double FED = fed();

  private static double fed() {
    double l = 0.001;
    double k = PARABOLA * PARABOLA / 300;
    return k / l * (Math.sqrt(1 + 4 * l * l * 300 / k) - 1) / 2;
  }

  @Test
  void withoutAPlanNoScaleIsCounted() {
    assertEquals(Estimate.exact(inches(0)), LEAF.layout().scaleAllowance());
    assertEquals(Estimate.exact(pounds(0)), LEAF.layout().scaleLoss());
  }

  /**
   * The taper from 1 1/2 × 1/4 to 3/4 × 1/8 in over 6 in uses 3 1/2 in of bar with 3 1/2 in round;
   * when drawn it has 2 5/8 in round in its middle. Two heats of five minutes at 1150 °C take twice
   * what the air feeds in one.
   */
  @Test
  void theTaperGetsBarAndTheRestComesOutThinner() {
    Layout layout = LEAF.layout(PLAN);
    double depth = 2 * FED / 25.4;
    double surface = (3.5 * 3.5 + 6 * 2.625) / 2;
    double allowance = depth * surface / 0.375;
    Estimate<Length> told = layout.scaleAllowance();
    assertEquals(allowance, told.likely().in(ShopUnits.INCH), 1e-9);
    double most = allowance * 2;
    assertEquals(most, told.high().in(ShopUnits.INCH), 1e-9);
    assertEquals(
        LEAF.layout().cutLength().likely().in(ShopUnits.INCH) + allowance,
        layout.cutLength().likely().in(ShopUnits.INCH),
        1e-9);
    // What the end of the barrel leaves to trim and what the fire takes err apart.
    Estimate<Length> cold = LEAF.layout().cutLength();
    double trim = cold.high().in(ShopUnits.INCH) - cold.likely().in(ShopUnits.INCH);
    assertEquals(
        cold.likely().in(ShopUnits.INCH) + allowance + Math.hypot(trim, most - allowance),
        layout.cutLength().high().in(ShopUnits.INCH),
        1e-9);
    assertEquals(LEAF.layout().marks().get(0).position(), layout.marks().get(0).position());
    assertEquals(LEAF.layout().marks().get(1).position(), layout.marks().get(1).position());
    assertTrue(layout.marks().get(2).isCut());
    assertEquals(layout.cutLength(), layout.marks().get(2).position());
    assertEquals(LEAF.layout().finishedLength(), layout.finishedLength());
  }

  @Test
  void theMassOfTheScaleIsToldApart() {
    Layout layout = LEAF.layout(PLAN);
    assertEquals(
        STRAP.mass(layout.cutLength().likely()).in(ShopUnits.POUND),
        layout.mass().in(ShopUnits.POUND));
    double depth = 2 * FED / 25.4;
    // Cut square, the barrel closes 60° short of a full turn.
    double barrel = 0.375 * (2 * Math.PI - Math.PI / 3);
    double surface = (barrel + 9) * 3.5 + (3.5 * 3.5 + 6 * 2.625) / 2;
    double perCubicInch = STRAP.mass(inches(1)).in(ShopUnits.POUND) / 0.375;
    assertEquals(
        depth * surface * perCubicInch, layout.scaleLoss().likely().in(ShopUnits.POUND), 1e-9);
    assertEquals(ShopUnits.POUND, layout.scaleLoss().low().getUnit());
  }

  @Test
  void eachDrawnStretchMovesTheMarksBehindIt() {
    Piece both = Piece.of(STRAP, TAPER.reversed(), PLAIN, TAPER);
    Layout layout = both.layout(PLAN);
    Measure<Length> once = LEAF.layout(PLAN).scaleAllowance().likely();
    double one = once.in(ShopUnits.INCH);
    for (int i = 0; i < 3; i++) {
      double moved =
          layout.marks().get(i).position().likely().in(ShopUnits.INCH)
              - both.layout().marks().get(i).position().likely().in(ShopUnits.INCH);
      assertEquals(i < 2 ? one : 2 * one, moved, 1e-12);
    }
    assertEquals(once.multiply(2), layout.scaleAllowance().likely());
  }

  /** What the end of the barrel leaves and what the fire does err apart. */
  @Test
  void theFireErrsApartFromTheHand() {
    Piece piece = Piece.of(STRAP, BARREL, TAPER);
    Estimate<Length> hand = piece.layout().cutLength();
    Estimate<Length> fire = ScaleLoss.of(STRAP, PLAN).allowance(TAPER);
    assertEquals(hand.addIndependent(fire), piece.layout(PLAN).cutLength());
  }

  /** Finished pieces have been through the fire: what they show holds the scale. */
  @Test
  void noMetalIsCountedTwice() {
    ScaleLoss fire = ScaleLoss.of(STRAP, PLAN);
    for (Feature byHand :
        List.of(
            HandAllowance.DRAWN.on(TAPER),
            HandAllowance.DRAWN.on(TAPER).reversed(),
            HandAllowance.NONE.on(HandAllowance.DRAWN.on(TAPER)),
            Shoulder.between(STRAP.section(), TIP, inches(2)))) {
      assertTrue(byHand.holdsScale());
      Piece piece = Piece.of(STRAP, byHand);
      assertEquals(piece.layout().cutLength(), piece.layout(PLAN).cutLength());
      assertTrue(
          assertThrows(IllegalArgumentException.class, () -> fire.allowanceWorking(byHand))
              .getMessage()
              .startsWith("feature must not hold the scale already"));
      assertTrue(fire.taken(byHand).likely().getValue() > 0);
    }
    for (Feature bare :
        List.of(
            TAPER,
            TAPER.reversed(),
            HandAllowance.NONE.on(TAPER),
            Shoulder.between(STRAP.section(), TIP, inches(2)).by(HandAllowance.NONE))) {
      assertFalse(bare.holdsScale());
      assertTrue(fire.allowance(bare).likely().getValue() > 0);
    }
  }

  @Test
  void showsItsWorking() {
    Layout layout = Piece.of(STRAP, TAPER.reversed(), PLAIN, TAPER).layout(PLAN);
    Workings.check(layout.working(), layout.cutLength().likely());
    String text = layout.working().toString();
    assertTrue(text.contains("a = a₁ + a₃"), text);
    assertTrue(text.contains("C = s₁ + s₂ + s₃ + a ="), text);
    assertTrue(text.contains("Mi, Fujinawa and Bergthorson"), text);
    Layout plain = Piece.of(STRAP, PLAIN).layout(PLAN);
    Workings.check(plain.working(), inches(9));
    assertEquals(Estimate.exact(inches(9)), plain.cutLength());
  }

  /** A third of the plain stretch, and what scales of it. */
  @Test
  void aTubeIsDrawnToAPoint() {
    Section tube = Section.roundTube(millimetres(20), millimetres(2));
    Bar bar = Bar.of(tube, Material.MILD_STEEL);
    Piece piece = Piece.of(bar, Taper.toPoint(tube, millimetres(60)));
    Estimate<Length> cut = piece.layout(PLAN).cutLength();
    assertTrue(cut.likely().isGreaterThan(piece.layout().cutLength().likely()));
    assertTrue(cut.likely().isLessThan(millimetres(30)), cut::toString);
  }

  @Test
  void passesTheCautionsOfTheFireOn() {
    Section thin = Section.flat(inches("3/4"), inches("1/16"));
    Layout layout =
        Piece.of(STRAP, Taper.between(STRAP.section(), thin, inches(6))).layout(PLAN.inHeats(4));
    assertTrue(layout.cautions().toString().contains("forge it in the last heat"));
  }

  @Test
  void aMetalThatScalesOtherwiseIsRefused() {
    Bar copper = Bar.of(STRAP.section(), Material.COPPER);
    Piece piece = Piece.of(copper, PLAIN);
    assertThrows(IllegalArgumentException.class, () -> piece.layout(PLAN));
  }
}
