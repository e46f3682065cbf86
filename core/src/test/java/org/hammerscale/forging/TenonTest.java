package org.hammerscale.forging;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hammerscale.stock.Section;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class TenonTest {
  private static final Section BAR = Section.square(millimetres(16));
  private static final Section PEG = Section.square(millimetres(10));
  private static final Upset DOME = Head.dome(PEG, Section.round(millimetres(18)), millimetres(5));
  private static final Tenon TENON = Tenon.between(BAR, PEG).through(millimetres(6), DOME);

  @Test
  void metalInIsMetalOut() {
    // The tenon before heading has the metal of plate hole, and head.
    double head = Math.PI * 5 * (3 * 81 + 25) / 6;
    assertEquals(600 + head, TENON.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE), 1e-9);
    Tenon loose = TENON.inHole(Section.square(millimetres(11)));
    assertEquals(6 * 121 + head, loose.metalKept().likely().in(ShopUnits.CUBIC_MILLIMETRE), 1e-9);
    assertEquals(
        (600 + head) / 256, TENON.by(HandAllowance.NONE).stock(BAR).likely().getValue(), 1e-12);
    assertTrue(TENON.stock(BAR).likely().isGreaterThan(millimetres((600 + head) / 256)));
    assertTrue(TENON.by(HandAllowance.NONE).metalLost().total().high().getValue() == 0);
    assertTrue(TENON.holdsScale());
    assertFalse(TENON.by(HandAllowance.NONE).holdsScale());
  }

  @Test
  void countersunkHeadLiesInTheOtherBar() {
    Section round = Section.round(inches("3/8"));
    Upset flush = Head.countersunkOverGrip(round, inches("5/8"), degrees(90));
    Tenon tenon = Tenon.between(Section.square(inches("3/4")), round).through(inches("1/4"), flush);
    assertEquals(inches("1/4"), tenon.reach());
    assertEquals(flush.stockLength(), tenon.lengthBeyond());
    assertEquals(round, tenon.section());
    assertEquals(round, tenon.hole());
    assertEquals(flush.end(), tenon.end());
    assertEquals(inches("3/16"), tenon.shoulderWidth());
  }

  @Test
  void shoulderMustBear() {
    Tenon same = Tenon.between(PEG, PEG).through(millimetres(6), DOME);
    assertEquals(millimetres(0), same.shoulderWidth());
    assertTrue(same.cautions().toString().contains("does not bear all round"));
    assertFalse(TENON.cautions().toString().contains("does not bear"));
    assertEquals(BAR, TENON.start());
    assertEquals("riveted tenon", TENON.name());
    assertEquals(millimetres(11), TENON.reach());
  }

  @Test
  void showsItsWorking() {
    Workings.check(TENON.working(), TENON.length());
    Tenon loose = TENON.inHole(Section.square(millimetres(10.5)));
    Workings.check(loose.working(), loose.length());
    assertEquals(
        "tenon of 10 mm square on 16 mm square\n  through 6 mm, with a domed head",
        TENON.toString());
    assertEquals("tenon of 10 mm square on 16 mm square", Tenon.between(BAR, PEG).toString());
  }

  @Test
  void refusesWhatDoesNotFit() {
    assertTrue(refusal(() -> TENON.inHole(Section.square(millimetres(9)))).contains("wider"));
    Upset other = Head.snap(Section.round(millimetres(10)));
    assertTrue(
        refusal(() -> Tenon.between(BAR, PEG).through(millimetres(6), other))
            .contains("make it of the tenon's section"));
    assertThrows(IllegalArgumentException.class, () -> Tenon.between(PEG, BAR));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
