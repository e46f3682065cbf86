package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.working.Source;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;

class SlitTest {
  private static final List<Hole> HOLES =
      List.of(
          Hole.round(inches("1/2")),
          Hole.square(millimetres(12)),
          Hole.mortise(inches("3/4"), millimetres(6)),
          Hole.oval(millimetres(32), inches("3/4")).turned());

  @Test
  void showsItsWorkings() {
    for (Hole hole : HOLES) {
      Slit exact = Slit.halfWayRound(hole);
      Slit shop = Slit.byShopRule(hole);
      Workings.check(exact.working(), exact.length());
      Workings.check(shop.working(), shop.length());
      Workings.check(shop.straightenedWorking(), shop.straightened().likely());
      assertEquals(hole.perimeter().divide(2), exact.length());
      assertEquals(hole.unit(), shop.length().getUnit());
    }
    Workings.check(Slit.of(inches(1)).working(), inches(1));
    assertEquals(
        Source.Kind.COMMON_PRACTICE,
        Slit.byShopRule(HOLES.get(0)).working().sources().get(0).kind());
  }

  @Test
  void isShorterByTheShopRuleByAboutATwentieth() {
    for (Hole hole : HOLES) {
      double ratio = Slit.byShopRule(hole).length().ratio(Slit.halfWayRound(hole).length());
      assertTrue(ratio > 0.949 && ratio < 0.956, hole + ": " + ratio);
    }
  }

  @Test
  void ofASquareHoleIsTwoSidesLessATwentieth() {
    assertEquals("1.9 in", Slit.byShopRule(Hole.square(inches(1))).length().toString());
  }

  @Test
  void growsWhenItsSidesAreStraightened() {
    Slit marks = Slit.of(inches("1 3/4"));
    assertEquals("2 in (1 3/4 in to 2 1/4 in)", marks.straightened().toString());
    assertTrue(marks.straightened().covers(inches(2)));
    assertFalse(marks.straightened().covers(inches("1 5/8")));
    assertEquals(
        "Ilgen, Forge Work, 1912, sec. 73 (read)",
        marks.straightenedWorking().sources().get(1).toString());
  }

  @Test
  void readsAsASmithWould() {
    assertEquals("1 3/4 in slit", Slit.of(inches("1 3/4")).toString());
    assertEquals("30 mm slit", Slit.byShopRule(Hole.round(millimetres(20))).toString());
  }

  @Test
  void refusesWhatIsNoSlit() {
    assertEquals(
        "length must be more than zero, was 0 in; give the finished cold size",
        assertThrows(IllegalArgumentException.class, () -> Slit.of(inches(0))).getMessage());
    assertThrows(NullPointerException.class, () -> Slit.halfWayRound(null));
    assertThrows(NullPointerException.class, () -> Slit.byShopRule(null));
  }
}
