package org.hammerscale.forging;

import static org.hammerscale.forging.UpsetTest.refusal;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class EndTest {
  private static final Section NECK = Section.flat(millimetres(30), millimetres(5));

  @Test
  void anEndOfTheNecksOwnWidthIsPlain() {
    End plain = End.measured(NECK, Map.of(millimetres(70), millimetres(30)));
    assertTrue(plain.stock(NECK).likely().isEquivalentTo(millimetres(70)));
    assertEquals(NECK, plain.end());
    assertEquals(millimetres(70), plain.reach());
    assertTrue(
        End.along(NECK, millimetres(70), x -> millimetres(30))
            .stock(NECK)
            .likely()
            .isEquivalentTo(millimetres(70)));
  }

  @Test
  void endsInWhatItsOutlineLeaves() {
    assertEquals(0, End.penny(NECK, millimetres(50)).end().area().getValue());
    assertEquals(
        Section.flat(millimetres(60), millimetres(5)),
        End.fishtail(NECK, millimetres(60), millimetres(50)).end());
    assertEquals(
        Section.onEdge(millimetres(2), millimetres(5)),
        End.measured(NECK, Map.of(millimetres(70), millimetres(2))).end());
    assertEquals(NECK, End.penny(NECK, millimetres(50)).start());
    assertEquals(NECK, End.penny(NECK, millimetres(50)).reversed().end());
    assertEquals(
        Section.round(millimetres(8)).point(),
        End.ratTail(Section.round(millimetres(8)), millimetres(90)).end());
  }

  @Test
  void distancesNeedNoOrderAndMayMixUnits() {
    End end =
        End.measured(
            NECK,
            Map.of(
                inches(4), millimetres(0),
                millimetres(50.8), inches(2),
                inches(1), inches(1)));
    double area = (30 + 25.4) / 2 * 25.4 + (25.4 + 50.8) / 2 * 25.4 + 50.8 / 2 * 50.8;
    assertEquals(area * 5, end.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE), 1e-9);
    assertEquals(inches(4), end.reach());
  }

  @Test
  void aPennyOfItsNecksWidthIsHalfADisc() {
    End half = End.penny(NECK, millimetres(30));
    assertTrue(half.reach().isWithin(millimetres(15), millimetres(1e-12)));
    assertTrue(
        End.bean(NECK, millimetres(40), millimetres(40))
            .metalKept()
            .likely()
            .isEquivalentTo(End.penny(NECK, millimetres(40)).metalKept().likely()));
  }

  @Test
  void showsItsWorking() {
    for (End end :
        List.of(
            End.penny(NECK, inches(2)),
            End.bean(NECK, millimetres(40), inches(3)),
            End.spear(NECK, millimetres(40), inches(5)),
            End.fishtail(NECK, millimetres(50), inches(2)),
            End.along(NECK, inches(2), x -> millimetres(20).add(x.divide(2))),
            End.measured(
                NECK,
                Map.of(
                    inches(1), millimetres(12),
                    inches(2), millimetres(30),
                    inches(5), millimetres(1))))) {
      Workings.check(end.working(), end.metalKept().likely());
      assertTrue(end.metalLost().isNone());
      assertTrue(end.cautions().isEmpty());
    }
    assertEquals("spear end", spear().name());
    assertEquals("spear end, 90 mm long, on 30 mm × 5 mm flat", spear().toString());
  }

  private static End spear() {
    return End.spear(NECK, millimetres(40), millimetres(90));
  }

  @Test
  void aTrimmedEndIsAnEstimate() {
    assertTrue(spear().stock(NECK).isExact());
    assertFalse(HandAllowance.DRAWN.on(spear()).stock(NECK).isExact());
  }

  @Test
  void refusesImpossibleOutlines() {
    Section round = Section.round(millimetres(10));
    assertEquals(
        "neck must be flat or square, was 10 mm round; forge it flat first, or take End.ratTail for"
            + " a round one",
        refusal(() -> End.penny(round, millimetres(30))));
    assertTrue(refusal(() -> End.ratTail(NECK, millimetres(30))).startsWith("neck must be round"));
    assertEquals(
        "diameter must be at least the width of the neck of 30 mm, was 29 mm; draw the neck narrower"
            + " first",
        refusal(() -> End.penny(NECK, millimetres(29))));
    assertTrue(
        refusal(() -> End.bean(NECK, millimetres(29), millimetres(40)))
            .startsWith("width must be at least the width of the neck"));
    assertEquals(
        "length must be at least the width of 40 mm, was 30 mm; name the width first, or take"
            + " End.penny for a disc",
        refusal(() -> End.bean(NECK, millimetres(40), millimetres(30))));
    assertEquals(
        "length must be at least half the width of 90 mm, was 40 mm; name the width first, or give"
            + " the outline to End.measured",
        refusal(() -> End.spear(NECK, millimetres(90), millimetres(40))));
    assertTrue(
        refusal(() -> End.fishtail(NECK, millimetres(90), millimetres(40)))
            .startsWith("length must be at least half the width"));
    assertEquals(
        "widths must be at least one, was none; measure the width at the tip",
        refusal(() -> End.measured(NECK, Map.of())));
    assertTrue(
        refusal(
                () ->
                    End.measured(NECK, Map.of(inches(1), inches(1), millimetres(25.4), inches(2))))
            .startsWith("distance of widths must be given once, was twice "));
    assertTrue(
        refusal(() -> End.measured(NECK, Map.of(millimetres(0), millimetres(20))))
            .startsWith("distance of widths must be more than zero"));
    assertTrue(
        refusal(() -> End.measured(NECK, Map.of(millimetres(10), millimetres(-1))))
            .startsWith("width must not be negative"));
  }

  @Test
  void refusesFunctionsThatAreNoOutline() {
    assertTrue(
        refusal(() -> End.along(NECK, millimetres(0), x -> millimetres(20)))
            .startsWith("length must be more than zero"));
    assertTrue(
        refusal(() -> End.along(NECK, millimetres(50), x -> millimetres(20).subtract(x)))
            .startsWith("width at 50 mm must not be negative, was -30 mm"));
    assertEquals(
        "width must run smoothly along the end for its area to be found; give the widths to"
            + " End.measured",
        refusal(
            () ->
                End.along(
                    NECK,
                    millimetres(50),
                    x -> millimetres(20 + 10 * Math.sin(1e9 * x.getValue())))));
  }
}
