package org.hammerscale.punching;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class HoleTest {
  @Test
  void knowsItsSizes() {
    Hole mortise = Hole.mortise(inches("3/4"), inches("1/4"));
    assertEquals(inches("3/4"), mortise.length());
    assertEquals(inches("1/4"), mortise.width());
    assertEquals(inches(2), mortise.perimeter());
    assertEquals("0.1875 in²", mortise.area().toString());
    assertEquals(inches("1/4"), mortise.turned().length());
    assertEquals(mortise, mortise.turned().turned());
    assertEquals(mortise.perimeter(), mortise.turned().perimeter());
  }

  @Test
  void knowsTheLongestLineInIt() {
    assertEquals(inches(5), Hole.mortise(inches(4), inches(3)).span());
    assertEquals(inches(4), Hole.oval(inches(4), inches(3)).turned().span());
    assertEquals(inches(2), Hole.round(inches(2)).span());
  }

  @Test
  void goesRoundAnOvalByTheEllipticIntegral() {
    // 4 a E(m) in 30 digits by another program: axes 2 and 1, 10 and 1, 1000 and 1.
    assertEquals(4.844224110273838, oval(2, 1), 1e-14);
    assertEquals(20.31987090050448, oval(10, 1), 1e-13);
    assertEquals(2000.007794052344, oval(1000, 1), 1e-9);
    assertEquals(2 * Math.PI, oval(2, 2), 0);
  }

  private static double oval(double length, double width) {
    Hole hole = Hole.oval(inches(length), inches(width));
    assertEquals(hole.perimeter().getValue(), hole.turned().perimeter().getValue(), 1e-12);
    return hole.perimeter().getValue();
  }

  @Test
  void mixesUnits() {
    Hole mixed = Hole.mortise(inches(1), millimetres(12.7));
    assertEquals(inches(3), mixed.perimeter());
    assertEquals(0.5, mixed.area().in(ShopUnits.SQUARE_INCH));
  }

  @Test
  void comparesByShapeAndSizes() {
    assertEquals(Hole.round(inches(1)), Hole.round(inches(1)));
    assertEquals(Hole.round(inches(1)).hashCode(), Hole.round(inches(1)).hashCode());
    assertNotEquals(Hole.round(inches(1)), Hole.square(inches(1)));
    assertNotEquals(Hole.round(inches(1)), Hole.round(inches(2)));
    assertNotEquals(Hole.mortise(inches(2), inches(1)), Hole.mortise(inches(2), inches("1 1/2")));
    assertNotEquals(Hole.round(inches(1)), inches(1));
  }

  @Test
  void readsAsASmithWould() {
    assertEquals("1/2 in round hole", Hole.round(inches("1/2")).toString());
    assertEquals("12 mm square hole", Hole.square(millimetres(12)).toString());
    assertEquals(
        "1/4 in × 3/4 in mortise", Hole.mortise(inches("3/4"), inches("1/4")).turned().toString());
    assertEquals("32 mm × 20 mm oval hole", Hole.oval(millimetres(32), millimetres(20)).toString());
  }

  @Test
  void refusesWhatIsNoHole() {
    assertEquals(
        "length must be at least the width of 3/4 in, was 1/4 in; name the length first, and turn"
            + " the hole if it lies across the bar",
        refusal(() -> Hole.mortise(inches("1/4"), inches("3/4"))));
    assertEquals(
        "diameter must be more than zero, was 0 in; give the finished cold size",
        refusal(() -> Hole.round(inches(0))));
    assertEquals(
        "side must be more than zero, was -1 in; give the finished cold size",
        refusal(() -> Hole.square(inches(-1))));
    assertThrows(IllegalArgumentException.class, () -> Hole.oval(inches(1), inches(0)));
    assertThrows(NullPointerException.class, () -> Hole.round(null));
  }

  private static String refusal(org.junit.jupiter.api.function.Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
