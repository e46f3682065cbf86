package org.hammerscale.strength;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class AngleBracketTest {
  private static final Bar FLAT =
      Bar.of(Section.flat(millimetres(30), millimetres(8)), Material.MILD_STEEL);
  private static final AngleBracket LAMP =
      AngleBracket.ofArmAndPlate(millimetres(300), millimetres(250), FLAT).bentTo(millimetres(10));

  private static void assertRefused(String words, Executable call) {
    String message = assertThrows(IllegalArgumentException.class, call).getMessage();
    assertTrue(message.contains(words), message);
  }

  @Test
  void isBentFromOneBar() {
    // 250 − 18 and 300 − 18 of straight, and a quarter of 2 π 14 between them.
    assertEquals(millimetres(232), LAMP.straightPlate());
    assertEquals(
        232 + Math.PI / 2 * 14 + 282,
        LAMP.piece().layout().cutLength().likely().in(ShopUnits.MILLIMETRE),
        1e-9);
    assertEquals(millimetres(300), LAMP.arm());
    assertEquals(millimetres(250), LAMP.plate());
    assertEquals(FLAT, LAMP.bar());
    assertEquals(millimetres(10), LAMP.bend().insideRadius());
    assertEquals(List.of(LAMP.piece().toString()), words(LAMP));
    assertEquals(
        millimetres(8),
        AngleBracket.ofArmAndPlate(millimetres(50), millimetres(50), FLAT).bend().insideRadius());
    assertEquals("bracket of 30 mm × 8 mm flat, arm 300 mm, plate 250 mm", LAMP.toString());
  }

  private static List<String> words(AngleBracket bracket) {
    return bracket.pieces().stream().map(Object::toString).toList();
  }

  /** Its line begins at the foot, ends at the tip, and keeps both outside sizes. */
  @Test
  void itsLineKeepsTheOutsideSizes() {
    double[] outside = LAMP.meanLine().points(millimetres(4), ShopUnits.MILLIMETRE);
    int n = outside.length;
    // The line runs up the plate: laid along, that is its length; the arm then goes down from it.
    assertEquals(250, outside[n - 2], 1e-9);
    assertEquals(300, outside[1] - outside[n - 1], 1e-9);
  }

  @Test
  void aBraceLiesAcrossTheCorner() {
    AngleBracket shelf = LAMP.bracedOutAndDown(millimetres(128), millimetres(98));
    AngleBracket.Brace brace = shelf.brace().orElseThrow();
    // Legs of 120 and 90 from the inner corner: a lower edge of 150.
    Measure<?> edge = brace.piece().layout().cutLength().likely();
    assertEquals(150, edge.getValue(), 1e-9);
    Workings.check(brace.working(), brace.piece().layout().cutLength().likely());
    assertEquals(Math.toDegrees(Math.atan2(90, 120)), brace.angleToArm().getValue(), 1e-9);
    assertEquals(millimetres(128), brace.out());
    assertEquals(millimetres(98), brace.down());
    assertEquals(2, shelf.pieces().size());
    assertEquals("brace 128 mm out, 98 mm down", brace.toString());
    assertTrue(shelf.toString().endsWith("plate 250 mm, brace 128 mm × 98 mm"));
    assertTrue(shelf.cautions().stream().anyMatch(caution -> caution.text().contains("buckles")));
    assertFalse(LAMP.cautions().stream().anyMatch(caution -> caution.text().contains("buckles")));
    assertTrue(LAMP.brace().isEmpty());
  }

  /** Its end on the plate, laid out corner by corner, against heads anywhere on it. */
  @Test
  void headsStayClearOfItsEnd() {
    Random random = new Random(7);
    for (int i = 0; i < 20_000; i++) {
      double out = 60 + random.nextInt(240);
      double down = 60 + random.nextInt(190);
      AngleBracket.Brace brace =
          LAMP.bracedOutAndDown(millimetres(out), millimetres(down)).brace().orElseThrow();
      // Its upper edge runs a thickness off the lower one: where that meets the plate.
      double length = Math.hypot(out - 8, down - 8);
      double top = 250 - down + 8 * length / (out - 8);
      double height = random.nextInt(250);
      double head = random.nextInt(20);
      boolean above = height - head / 2 >= top;
      boolean below = height + head / 2 <= 250 - down;
      assertEquals(
          above || below, brace.isClearOf(millimetres(height), millimetres(head)), brace::toString);
    }
    AngleBracket.Brace brace =
        LAMP.bracedOutAndDown(millimetres(128), millimetres(98)).brace().orElseThrow();
    // From 152 to 152 + 8 × 150 / 120 = 162, touching allowed.
    assertTrue(brace.isClearOf(millimetres(147), millimetres(10)));
    assertFalse(brace.isClearOf(millimetres(147.1), millimetres(10)));
    assertTrue(brace.isClearOf(millimetres(167), millimetres(10)));
    assertFalse(brace.isClearOf(millimetres(166.9), millimetres(10)));
    assertTrue(brace.isClearOf(inches(5), inches("1/2")));
  }

  @Test
  void inchesAndMillimetresAgree() {
    Bar bar = Bar.of(Section.flat(inches(1), inches("1/4")), Material.MILD_STEEL);
    AngleBracket inches =
        AngleBracket.ofArmAndPlate(inches(9), millimetres(254), bar)
            .bracedOutAndDown(millimetres(177.8), inches(8));
    assertEquals(inches(10), inches.plate());
    assertEquals(inches(7), inches.brace().orElseThrow().out());
    // √(6.75² + 7.75²)
    assertEquals(
        10.27740, inches.pieces().get(1).layout().cutLength().likely().in(ShopUnits.INCH), 5e-6);
  }

  @Test
  void saysWhatDoesNotFit() {
    assertRefused(
        "arm must be more than zero",
        () -> AngleBracket.ofArmAndPlate(millimetres(0), millimetres(1), FLAT));
    assertRefused(
        "arm must be at least the bend of 16 mm, was 15 mm; make it longer",
        () -> AngleBracket.ofArmAndPlate(millimetres(15), millimetres(90), FLAT));
    assertRefused(
        "plate must be at least the bend of 16 mm, was 15 mm",
        () -> AngleBracket.ofArmAndPlate(millimetres(90), millimetres(15), FLAT));
    assertRefused(
        "insideRadius must be at most what arm, plate and brace leave of 242 mm, was 250 mm",
        () -> LAMP.bentTo(millimetres(250)));
    assertRefused(
        "out must be at most the arm of 300 mm, was 301 mm; set it nearer to the corner",
        () -> LAMP.bracedOutAndDown(millimetres(301), millimetres(90)));
    assertRefused(
        "down must be at most the plate of 250 mm",
        () -> LAMP.bracedOutAndDown(millimetres(90), inches(10)));
    assertRefused(
        "out must be at least the bend and the brace's thickness of 26 mm, was 17 mm",
        () -> LAMP.bracedOutAndDown(millimetres(17), millimetres(90)));
    assertRefused(
        "upper edge of the brace, out, must be at least the bend of 18 mm",
        () -> LAMP.bracedOutAndDown(millimetres(26), millimetres(90)));
    assertRefused(
        "upper edge of the brace, down, must be at least the bend of 18 mm",
        () -> LAMP.bracedOutAndDown(millimetres(90), millimetres(26)));
    AngleBracket sharp = LAMP.bentTo(millimetres(0));
    assertRefused(
        "out must be at least the bend and the brace's thickness of 16 mm, was 8 mm",
        () -> sharp.bracedOutAndDown(millimetres(8), millimetres(8)));
    AngleBracket braced = LAMP.bracedOutAndDown(millimetres(90), millimetres(90));
    // At 45° its upper edge meets both legs at 90 − 8 √2, and the bar takes 8 more.
    assertRefused("brace leave of 70.69 mm, was 71 mm", () -> braced.bentTo(millimetres(71)));
    assertEquals(millimetres(70.5), braced.bentTo(millimetres(70.5)).bend().insideRadius());
    AngleBracket.Brace brace = braced.brace().orElseThrow();
    assertRefused(
        "head must not be negative", () -> brace.isClearOf(millimetres(9), millimetres(-1)));
  }
}
