package org.hammerscale.stock;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class SilhouetteTest {
  private static final Section STRAP = Section.flat(inches(1), inches("1/4"));
  private static final Section TIP = Section.flat(inches("1/2"), inches("1/8"));

  @Test
  void runsStraightUnlessTold() {
    Silhouette plain = Silhouette.of(Plain.of(STRAP, inches(3)));
    assertArrayEquals(
        new double[] {0, 0.5, 3, 0.5, 3, -0.5, 0, -0.5}, plain.rims(ShopUnits.INCH).get(0), 1e-12);
    assertArrayEquals(new double[] {0, 6.35, 76.2, 6.35}, plain.edge(ShopUnits.MILLIMETRE), 1e-9);
    assertEquals(List.of(), plain.openings(ShopUnits.INCH));
    assertEquals("silhouette 3 in long, 1 in wide", plain.toString());
  }

  @Test
  void isLedOnFromPlaceToPlace() {
    Silhouette fish = Silhouette.from(STRAP).to(inches(1), TIP).to(inches(2), inches(1));
    assertArrayEquals(
        new double[] {0, 0.5, 1, 0.25, 2, 0.5, 2, -0.5, 1, -0.25, 0, -0.5},
        fish.rims(ShopUnits.INCH).get(0),
        1e-12);
    assertArrayEquals(new double[] {0, 0.25, 1, 0.125, 2, 0.125}, fish.edge(ShopUnits.INCH), 1e-12);
    Silhouette back = fish.reversed();
    assertArrayEquals(new double[] {0, 0.125, 1, 0.125, 2, 0.25}, back.edge(ShopUnits.INCH), 1e-12);
    assertEquals(0.25, back.rims(ShopUnits.INCH).get(0)[3], 1e-12);
  }

  @Test
  void hasOpeningsAndParts() {
    Silhouette slot = Silhouette.from(Section.square(inches("1/4"))).to(inches(1), inches("1/4"));
    Silhouette pierced =
        Silhouette.from(STRAP)
            .to(inches(3), STRAP)
            .withOpening(slot, inches(1), inches("1/8"))
            .withOpening(Silhouette.oval(inches("1/2"), inches("1/4")), inches("1/4"), inches(0));
    assertArrayEquals(
        new double[] {1, 0.25, 2, 0.25, 2, 0, 1, 0},
        pierced.openings(ShopUnits.INCH).get(0),
        1e-12);
    double[] oval = pierced.openings(ShopUnits.INCH).get(1);
    for (int i = 0; i < oval.length; i += 2) {
      double round = Math.hypot((oval[i] - 0.5) / 0.25, oval[i + 1] / 0.125);
      assertEquals(1, round, 1e-12);
    }
    assertEquals(1, pierced.reversed().openings(ShopUnits.INCH).get(0)[0] - 1, 1e-12);
    assertEquals("silhouette 3 in long, 1 in wide, 2 openings", pierced.toString());
    Silhouette both = Silhouette.from(STRAP).beside(pierced, inches(2));
    assertEquals(2, both.rims(ShopUnits.INCH).size());
    assertEquals(2.25, both.openings(ShopUnits.INCH).get(0)[1], 1e-12);
    assertArrayEquals(new double[] {0, 0.25, 3, 0.25}, both.edge(ShopUnits.INCH), 1e-12);
    assertEquals("silhouette 3 in long, 1 in wide, 2 side by side, 2 openings", both.toString());
    assertEquals(
        "silhouette 3 in long, 1 in wide, 1 opening",
        Silhouette.from(STRAP)
            .to(inches(3), STRAP)
            .withOpening(slot, inches(1), inches(0))
            .toString());
  }

  @Test
  void forwardsAndReverses() {
    Feature taper = Plain.of(STRAP, inches(3));
    Feature named = new ForwardingFeature(taper) {};
    assertEquals(Silhouette.of(taper).toString(), Silhouette.of(named).toString());
    assertEquals(Silhouette.of(taper).toString(), Silhouette.of(named.reversed()).toString());
  }

  @Test
  void refusesToGoBack() {
    Silhouette begun = Silhouette.from(STRAP).to(inches(2), TIP);
    assertEquals(
        "along must be at least the 2 in that it is long already, was 25.4 mm; name the places from"
            + " its beginning on",
        assertThrows(IllegalArgumentException.class, () -> begun.to(millimetres(25.4), inches(1)))
            .getMessage());
  }
}
