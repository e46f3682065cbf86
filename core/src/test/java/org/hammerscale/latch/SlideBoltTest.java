package org.hammerscale.latch;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.newtons;
import static org.hammerscale.units.Measures.poundsForce;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.strength.SlideBoltLoad;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class SlideBoltTest {
  private static final Bar ROD = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
  private static final Bar WIRE = Bar.of(Section.round(millimetres(6)), Material.MILD_STEEL);

  private static SlideBoltBuilder asked() {
    return SlideBolt.thrown(millimetres(40), ROD)
        .across(millimetres(4))
        .setBack(millimetres(2))
        .stapledApart(millimetres(100))
        .fromEdge(millimetres(10))
        .clearing(millimetres(0.5))
        .inStaplesOf(WIRE, millimetres(40));
  }

  @Test
  void partsFitByHandArithmetic() {
    SlideBolt bolt = asked().bolt();
    assertEquals(millimetres(34), bolt.engagement()); // 40 − 4 − 2
    assertEquals(millimetres(48), bolt.overhang()); // 10 + 40 − 2
    assertEquals(millimetres(17), bolt.keeperOverhang()); // 10 + 4 + 6/2
    assertEquals(List.of(millimetres(13), millimetres(107), millimetres(-7)), bolt.places());
    // thrown, the knob of 6 mm touches the outer staple: 48 + 6 + 6/2
    assertEquals(millimetres(57), bolt.knobPlace());
    // Its head fills a cone from 6 to 9 that is 1.5 deep: what lies outside the shank.
    assertEquals(millimetres(9), bolt.knobCountersink());
    double cone = Math.PI * (1.5 * (81 + 54 + 36) / 12 - 1.5 * 36 / 4);
    assertEquals(
        24 + 6 + cone / (9 * Math.PI),
        bolt.knob().layout().cutLength().likely().in(ShopUnits.MILLIMETRE),
        1e-9);
    // 48 to the outer side of the outer staple, 100 to that of the inner, 12 behind it
    assertEquals(millimetres(160), bolt.bolt().layout().cutLength().likely());
    assertEquals(millimetres(12.5), bolt.staple().insideWidth());
    assertEquals(5, bolt.pieces().size());
    assertEquals(ROD, bolt.bar());
    assertEquals(millimetres(40), bolt.travel());
    assertEquals(millimetres(4), bolt.gap());
    assertEquals(millimetres(2), bolt.setBack());
    assertEquals(millimetres(24), bolt.handleHeight()); // twice the bolt's thickness
    assertFalse(bolt.hasTail());
  }

  @Test
  void roundsEachSizeByWhatItGuards() {
    SlideBolt bolt = asked().allowing(millimetres(2), millimetres(3)).on(MILLIMETRE).bolt();
    assertEquals(millimetres(13), bolt.staple().insideWidth());
    assertEquals(millimetres(1), bolt.clearance()); // asked 0.5: what the rule costs
    assertEquals(millimetres(31), bolt.leastEngagement());
    // c (1/2 + o/s) = 0.98 on either side, and 2 of drop: 12 + 2 × 2.98 = 17.96, up
    assertEquals(millimetres(18), bolt.keeper().insideWidth());
    assertTrue(bolt.entersAfterDrop(millimetres(2)) && bolt.entersAfterDrop(millimetres(-2)));
    assertFalse(bolt.entersAfterDrop(millimetres(2.1)));
  }

  @Test
  void aCoatTakesRoomOnBothSidesOfBoltAndOpening() {
    SlideBolt bolt = asked().coated(millimetres(0.1)).bolt();
    assertEquals(12.9, bolt.staple().insideWidth().in(ShopUnits.MILLIMETRE), 1e-12);
    assertEquals(0.5, bolt.clearance().in(ShopUnits.MILLIMETRE), 1e-12);
  }

  @Test
  void tailStopsAtTheInnerStaple() {
    SlideBolt bolt = asked().withTail(millimetres(50)).bolt();
    assertTrue(bolt.hasTail());
    // inside face of the tail: 48 + 100 from the tip; it stands 50 over the axis, so 56 over all
    assertEquals(148 + 12, bolt.bolt().layout().finishedLength().in(ShopUnits.MILLIMETRE), 1e-9);
    double arc = Math.PI / 2 * 12;
    double stock = bolt.bolt().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(148 - 6 + arc + 56 - 12 - 6, stock, 1e-9);
    assertTrue(bolt.bolt().isTrimmedAt(PieceEnd.LAST));
    assertEquals(4, bolt.pieces().size());
    assertTrue(refusal(bolt::knob).contains("ask for a knob"));
    assertTrue(refusal(bolt::knobCountersink).contains("ask for a knob"));
  }

  @Test
  void workingsAreTheAnswers() {
    SlideBolt bolt = asked().bolt();
    Workings.check(bolt.working(), bolt.engagement());
    Workings.check(bolt.tipShiftWorking(), bolt.tipShift());
    Workings.check(bolt.leastApartWorking(0.3), bolt.leastApart(0.3));
    Workings.check(bolt.staple().working(), bolt.staple().legCentres());
    assertEquals(4, bolt.cautions().size() + bolt.keeper().cautions().size() + 1);
    SlideBolt closer =
        asked().stapledApart(millimetres(60)).withKnob(millimetres(5), millimetres(110)).bolt();
    assertTrue(closer.cautions().get(0).text().contains("66 mm let a dry bolt jam"));
  }

  @Test
  void loadsAreThoseOfABeam() {
    SlideBolt bolt = asked().bolt();
    SlideBoltLoad pushed = SlideBoltLoad.of(bolt, newtons(500));
    // o = 17, s = 100
    assertEquals(585, pushed.outerStaple().in(ShopUnits.NEWTON), 1e-9);
    assertEquals(85, pushed.innerStaple().in(ShopUnits.NEWTON), 1e-9);
    assertEquals(newtons(500), pushed.keeper());
    assertEquals(
        pushed.shear().in(ShopUnits.MEGAPASCAL) * 4 / 3,
        pushed.peakShear().in(ShopUnits.MEGAPASCAL),
        1e-12);
    Workings.check(pushed.working(), pushed.outerStaple());
    Workings.check(pushed.innerStapleWorking(), pushed.innerStaple());
    Workings.check(pushed.shearWorking(), pushed.shear());
    Workings.check(pushed.bendingWorking(), pushed.bending());
    SlideBoltLoad pounds =
        SlideBoltLoad.of(
            SlideBolt.thrown(
                    inches(1), Bar.of(Section.flat(inches(1), inches("1/4")), Material.MILD_STEEL))
                .bolt(),
            poundsForce(100));
    assertEquals(400, pounds.shear().in(ShopUnits.PSI), 1e-9);
    assertEquals(600, pounds.peakShear().in(ShopUnits.PSI), 1e-9);
    Workings.check(pounds.shearWorking(), pounds.shear());
    Workings.check(pounds.bendingWorking(), pounds.bending());
    assertFalse(pounds.cautions().isEmpty());
    assertTrue(pushed.toString().startsWith("500 N on the slide bolt of 12 mm round"));
  }

  @Test
  void stapleIsBentFromOneRod() {
    Staple staple = Staple.inside(millimetres(13), WIRE).standing(millimetres(13));
    assertEquals(millimetres(12), staple.pointLength());
    assertEquals(millimetres(13 + 6 + 48 - 12), staple.bend().firstLegOverAll());
    assertEquals(millimetres(19), staple.legCentres());
    assertEquals(millimetres(19), staple.heightOverAll());
    assertEquals(millimetres(48), staple.inWood());
    assertEquals(WIRE, staple.rod());
    Staple through = staple.clenchedThrough(millimetres(30));
    assertEquals(millimetres(48), through.inWood());
    assertTrue(through.isClenched() && through.cautions().size() == 2);
    assertEquals(millimetres(18), through.clench());
    assertEquals(millimetres(30), through.holdingLength());
    assertEquals(millimetres(36), staple.holdingLength()); // 48 less the point of 12
    assertEquals(millimetres(0), staple.clench());
    assertEquals(millimetres(20), through.on(Graduation.of(millimetres(10))).clench());
    // Both points hold a third of 12 mm; two legs straight from their setback; half round on the
    // mean line.
    double legs = 2 * (19 + 48 - 12 - 12.5);
    double used = staple.piece().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(2 * 4 + legs + Math.PI * 9.5, used, 1e-9);
    Staple low = staple.standing(millimetres(4));
    double flat = low.piece().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(8 + 2 * (10 + 48 - 12 - 10) + 13 - 8 + Math.PI * 7, flat, 1e-9);
    double square =
        staple.withSquareCrown().piece().layout().cutLength().likely().in(ShopUnits.MILLIMETRE);
    assertEquals(8 + 2 * (19 + 48 - 12 - 6) + 13 + 12, square, 1e-9);
    assertTrue(refusal(() -> staple.driven(millimetres(11))).startsWith("depth must be at least"));
  }

  @Test
  void refusesWhatDoesNotFit() {
    assertTrue(refusal(() -> asked().across(millimetres(38)).bolt()).startsWith("travel must be"));
    // 40 to travel, 6 of knob, 2 × 6 of wire
    assertTrue(
        refusal(() -> asked().stapledApart(millimetres(57)).bolt())
            .contains("apart must be at least 58 mm"));
    assertEquals(millimetres(58), asked().stapledApart(millimetres(58)).bolt().staplesApart());
    assertTrue(
        refusal(() -> asked().withKnob(millimetres(7), millimetres(30)).bolt())
            .startsWith("diameter must be at most half"));
    assertTrue(
        refusal(() -> asked().withKnob(millimetres(5), millimetres(3)).bolt())
            .startsWith("standing"));
    assertTrue(refusal(() -> asked().withTail(millimetres(17)).bolt()).startsWith("standing"));
    assertTrue(
        refusal(() -> asked().withTail(millimetres(20)).stapledApart(millimetres(11)).bolt())
            .startsWith("apart must be at least both staples"));
    Bar tube = Bar.of(Section.roundTube(millimetres(12), millimetres(2)), Material.MILD_STEEL);
    assertTrue(refusal(() -> SlideBolt.thrown(millimetres(4), tube)).startsWith("bar must be"));
    assertTrue(refusal(() -> asked().bolt().leastApart(0)).startsWith("friction"));
    assertEquals("description of a slide bolt of 12 mm round, thrown 40 mm", asked().toString());
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
