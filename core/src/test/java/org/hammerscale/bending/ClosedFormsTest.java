package org.hammerscale.bending;

import static org.hammerscale.bending.BendTest.refused;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

/** Rings, eyes, links and ovals, and their joints. */
class ClosedFormsTest {
  private static final Section BAR = Section.round(inches(1));
  private static final Ring RING = Ring.inside(inches(10), BAR);
  private static final Link LINK = Link.inside(inches(3), inches("1 1/2"), BAR);
  private static final Oval OVAL = Oval.inside(inches(6), inches(4), BAR);
  private static final Eye EYE = Eye.turned(inches(2), BAR);

  @Test
  void knowTheirSizes() {
    assertEquals(inches(11), RING.meanDiameter());
    assertEquals(inches(12), RING.outsideDiameter());
    assertEquals(inches(12), RING.reach());
    assertEquals(inches(10), RING.insideDiameter());
    assertEquals(inches(5), LINK.reach());
    assertEquals(inches(3), LINK.insideLength());
    assertEquals(inches("1 1/2"), LINK.insideWidth());
    assertEquals(inches(8), OVAL.reach());
    assertEquals(inches(6), OVAL.insideLength());
    assertEquals(inches(4), OVAL.insideWidth());
    assertEquals(inches(3), EYE.meanDiameter());
    assertEquals(inches(4), EYE.reach());
    assertEquals(inches(2), EYE.insideDiameter());
    assertEquals(BAR, RING.section());
  }

  @Test
  void areNamedByTheirJoints() {
    WeldAllowance weld = WeldAllowance.ONE_THICKNESS;
    assertEquals("butted ring", RING.name());
    assertEquals("welded ring", RING.welded(weld).name());
    assertEquals("lapped ring", RING.lapped(inches(1)).name());
    assertEquals("weldless ring", RING.weldless().name());
    assertEquals("welded link", LINK.welded(weld).name());
    assertEquals("lapped oval", OVAL.lapped(inches(1)).name());
    assertEquals("turned eye", EYE.name());
    assertEquals("scarf-welded eye", Eye.scarfed(inches(2), BAR).name());
    assertEquals("welded ring, 10 in inside, of 1 in round", RING.welded(weld).toString());
  }

  @Test
  void weldsTakeMetalThatIsLost() {
    Ring welded = RING.welded(WeldAllowance.ONE_THICKNESS);
    Estimate<Length> cut = welded.cutLength();
    assertEquals(welded.stock(BAR), cut);
    assertEquals(RING.developedLength(), welded.developedLength());
    assertEquals(RING.developedLength().subtract(inches(0.5)), cut.low());
    assertEquals(RING.developedLength().add(inches(1)), cut.likely());
    assertEquals(RING.developedLength().add(inches(1.5)), cut.high());
    assertFalse(welded.metalLost().isNone());
    assertTrue(welded.metalLost().toString().startsWith("weld"));
    assertTrue(RING.metalLost().isNone());
    assertTrue(RING.cutLength().isExact());
    // By volume, from a bar of half the area: twice the length, within rounding.
    Section half = Section.flat(inches(Math.PI / 4), inches("1/2"));
    assertEquals(
        2 * welded.cutLength().high().getValue(), welded.stock(half).high().getValue(), 1e-12);
    assertTrue(welded.cautions().get(0).isDanger());
    assertTrue(Eye.scarfed(inches(2), BAR).cautions().get(0).isDanger());
    assertTrue(RING.cautions().isEmpty());
  }

  @Test
  void publishedChainRingLiesInTheSpread() {
    // Ilgen sec. 81: 8 in of 7/16 round for a ring of 2 in inside, welded.
    Ring chain = Ring.inside(inches(2), Section.round(inches("7/16")));
    assertTrue(chain.welded(WeldAllowance.ONE_THICKNESS).cutLength().covers(inches(8)));
    assertTrue(chain.welded(WeldAllowance.THREE_EIGHTHS).cutLength().covers(inches(8)));
    // The source's 3/8 in are for 1 in bar; thinner bar keeps them, up to one thickness.
    for (String[] sized :
        new String[][] {{"1/4", "1/4"}, {"1/2", "3/8"}, {"1", "3/8"}, {"2", "3/4"}}) {
      Section bar = Section.round(inches(sized[0]));
      assertTrue(
          WeldAllowance.THREE_EIGHTHS.on(bar, inches(10)).likely().isEquivalentTo(inches(sized[1])),
          sized[0]);
      Ring ring = Ring.inside(inches(10), bar);
      assertTrue(
          ring.welded(WeldAllowance.THREE_EIGHTHS)
              .cutLength()
              .likely()
              .isEquivalentTo(ring.developedLength().add(inches(sized[1]))),
          sized[0]);
    }
  }

  @Test
  void allowancesAreSpreadByTheirRules() {
    WeldAllowance own = WeldAllowance.thicknesses(0.5, 0.7, 1.2);
    assertEquals(Estimate.of(inches(0.5), inches(0.7), inches(1.2)), own.on(BAR, inches(20)));
    assertEquals("0.7 thicknesses", own.toString());
    assertEquals(Source.Kind.COMMON_PRACTICE, own.source().kind());
    assertEquals(
        Estimate.of(inches(-0.8), inches(3), inches(4)), WeldAllowance.LINK.on(BAR, inches(20)));
    refused("low must be more than 0", () -> WeldAllowance.thicknesses(0, 1, 2));
    refused("low must be more than 0 and at most 1.0", () -> WeldAllowance.thicknesses(3, 1, 2));
    refused("likely must be more than 0", () -> WeldAllowance.thicknesses(1, 3, 2));
    refused("high must be more than 0", () -> WeldAllowance.thicknesses(1, 2, 11));
    refused("finished length", () -> own.on(BAR, inches(-1)));
  }

  @Test
  void oldTyreRuleIsShort() {
    Ring tyre = Ring.inside(inches(60), BAR);
    assertEquals(inches(15 * 12 + 10 + 5 / 6d), tyre.lengthByTyreRule());
    assertEquals(190.8333 - 191.6372, tyre.tyreRuleError().getValue(), 1e-4);
    Workings.check(tyre.tyreRuleWorking(), tyre.lengthByTyreRule());
  }

  @Test
  void weldlessRingComesFromWiderStock() {
    Ring ring = Ring.inside(inches(3), Section.square(inches("1/2"))).weldless();
    assertEquals(Estimate.of(inches("1 1/4"), inches("1 3/8"), inches("1 1/2")), ring.stockWidth());
    assertTrue(ring.cutLength().isExact());
  }

  @Test
  void showTheirWorkings() {
    WeldAllowance length = WeldAllowance.LINK;
    WeldAllowance thick = WeldAllowance.CHAIN_RING;
    List<ClosedBar> all =
        List.of(
            RING,
            RING.lapped(millimetres(40)),
            RING.welded(length),
            RING.welded(thick),
            RING.weldless(),
            LINK,
            LINK.welded(length),
            LINK.lapped(inches(2)),
            OVAL,
            OVAL.welded(thick),
            OVAL.lapped(inches(2)),
            Oval.inside(millimetres(300), millimetres(10), Section.round(millimetres(6))),
            EYE,
            EYE.welded(thick),
            Eye.scarfed(millimetres(33), BAR));
    for (ClosedBar form : all) {
      Workings.check(form.working(), form.developedLength());
      Workings.check(form.cutWorking(), form.cutLength().likely());
    }
  }

  @Test
  void comeInTheSizeThatUsesUpABar() {
    Measure<Length> bar = inches(40);
    WeldAllowance weld = WeldAllowance.LINK;
    List<ClosedBar> all =
        List.of(
            RING.using(bar),
            RING.lapped(inches(2)).using(bar),
            RING.welded(weld).using(bar),
            RING.welded(WeldAllowance.CUSTOMARY).using(bar),
            LINK.using(bar),
            LINK.welded(weld).using(bar),
            OVAL.using(bar),
            OVAL.welded(weld).using(bar),
            EYE.using(bar),
            Eye.scarfed(inches(2), BAR).using(bar));
    for (ClosedBar form : all) {
      assertEquals(40, form.cutLength().likely().getValue(), 1e-11, form::toString);
    }
    assertEquals(inches(4), OVAL.using(bar).insideWidth());
    refused(
        "length must be more than 3.1416 in to close a butted ring of this section, was 3 in",
        () -> RING.using(inches(3)));
    refused("bar must be more than", () -> LINK.using(inches(7)));
    refused("bar must be more than", () -> OVAL.using(inches(15)));
    refused("length must be more than", () -> EYE.using(inches(3)));
  }

  @Test
  void cautionWhereTheyAreTight() {
    assertEquals(1, Ring.inside(inches("3/4"), BAR).cautions().size());
    assertEquals(1, Oval.inside(inches(30), inches(2), BAR).cautions().size());
    assertTrue(OVAL.cautions().isEmpty());
  }

  @Test
  void refuseBadSizes() {
    refused("length must be at least the width", () -> Link.inside(inches(1), inches(2), BAR));
    refused("length must be at least the width", () -> Oval.inside(inches(1), inches(2), BAR));
    refused("diameter must be more than zero", () -> Ring.inside(inches(0), BAR));
    refused("diameter must be more than zero", () -> Eye.turned(inches(0), BAR));
    refused("diameter must be more than zero", () -> Eye.scarfed(inches(-1), BAR));
    refused("lap must be more than zero", () -> RING.lapped(inches(0)));
    assertThrows(NullPointerException.class, () -> RING.welded(null));
  }
}
