package org.hammerscale.latch;

import static org.hammerscale.units.Graduation.MILLIMETRE;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class StaplePlateTest {
  private static final Bar FLAT =
      Bar.of(Section.flat(millimetres(25), millimetres(4)), Material.MILD_STEEL);

  private static Bar rod(double diameter) {
    return Bar.of(Section.round(millimetres(diameter)), Material.MILD_STEEL);
  }

  private static StaplePlate eye() {
    return StaplePlate.under(Staple.inside(millimetres(13), rod(6)), FLAT, millimetres(9));
  }

  @Test
  void loopAndPlateFitByHandArithmetic() {
    StaplePlate eye = eye();
    // Legs 19 apart in the middle, 25 over them; on either side half a head, a head, and half a
    // head more than that to the end: 25 + 4 × 9.
    assertEquals(millimetres(61), eye.length());
    assertEquals(List.of(millimetres(21), millimetres(40)), eye.legHoles());
    assertEquals(List.of(millimetres(9), millimetres(52)), eye.screwHoles());
    assertEquals(millimetres(9), eye.rivetCountersink());
    // A half round of 19 in the middle, no straight above the plate since it stands half its width
    // high; 4 of plate twice; and what fills a cone from 6 to 9, 1.5 deep, outside the shank,
    // twice.
    double cone = Math.PI * (1.5 * (81 + 54 + 36) / 12 - 1.5 * 36 / 4);
    assertEquals(
        Math.PI * 9.5 + 2 * 4 + 2 * cone / (9 * Math.PI),
        eye.loop().layout().cutLength().likely().in(ShopUnits.MILLIMETRE),
        1e-9);
    assertEquals(millimetres(61), eye.plate().layout().cutLength().likely());
    assertEquals(2, eye.pieces().size());
    assertEquals(2, eye.cautions().size());
    Workings.check(eye.working(), eye.length());
    assertEquals(
        "6 mm round loop, 13 mm × 6.5 mm inside, on 61 mm of 25 mm × 4 mm flat", eye.toString());
    assertEquals(millimetres(13), eye.staple().insideWidth());
  }

  /** On any rule no head touches the loop or hangs over the end, and both ends are alike. */
  @Test
  void headsFindRoomOnAnyRule() {
    Random random = new Random(11);
    for (int i = 0; i < 5000; i++) {
      double d = 2 + random.nextInt(60) / 10.0;
      double width = 4 + random.nextInt(400) / 10.0;
      double head = 3 + random.nextInt(150) / 10.0;
      boolean inches = random.nextBoolean();
      Staple staple =
          inches
              ? Staple.inside(millimetres(width).to(ShopUnits.INCH), rod(d))
              : Staple.inside(millimetres(width), rod(d));
      Bar plate = Bar.of(Section.flat(millimetres(30), millimetres(5)), Material.MILD_STEEL);
      StaplePlate eye = StaplePlate.under(staple, plate, millimetres(head)).on(MILLIMETRE);
      double length = eye.length().in(ShopUnits.MILLIMETRE);
      assertEquals(Math.rint(length), length, 1e-9);
      double screw = eye.screwHoles().get(0).in(ShopUnits.MILLIMETRE);
      double leg = eye.legHoles().get(0).in(ShopUnits.MILLIMETRE);
      assertTrue(screw >= head - 1e-9 && screw < head + 0.5 + 1e-9, eye::toString);
      assertEquals(head / 2, leg - d / 2 - (screw + head / 2), 1e-9);
      assertEquals(width + d, eye.legHoles().get(1).in(ShopUnits.MILLIMETRE) - leg, 1e-9);
      assertEquals(length - screw, eye.screwHoles().get(1).in(ShopUnits.MILLIMETRE), 1e-9);
    }
  }

  @Test
  void saysWhatDoesNotFit() {
    Staple staple = Staple.inside(millimetres(13), rod(6));
    assertRefused(
        "screwHead must be more than zero", () -> StaplePlate.under(staple, FLAT, millimetres(0)));
    assertRefused(
        "flat must be at least a screw's head of 26 mm, was 25 mm; take a wider flat",
        () -> StaplePlate.under(staple, FLAT, millimetres(26)));
    Staple thick = Staple.inside(inches(1), rod(17));
    assertRefused(
        "flat must be at least a rivet of 1.0039 in",
        () -> StaplePlate.under(thick, FLAT, millimetres(9)));
    Bar thin = Bar.of(Section.flat(millimetres(25), millimetres(1)), Material.MILD_STEEL);
    assertRefused(
        "flat must be at least a countersink of 1.5 mm, was 1 mm; take a thicker one",
        () -> StaplePlate.under(staple, thin, millimetres(9)));
    Bar square = Bar.of(Section.square(millimetres(6)), Material.MILD_STEEL);
    assertRefused(
        "staple must be of round rod",
        () -> StaplePlate.under(Staple.inside(millimetres(13), square), FLAT, millimetres(9)));
  }

  private static void assertRefused(String words, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message.contains(words), message);
  }
}
