package org.hammerscale.forging;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class UpsetTest {
  private static final Section BAR = Section.round(millimetres(12));
  private static final Section WIDE = Section.round(millimetres(18));

  @Test
  void takesItsVolumeOfTheBar() {
    Upset upset = Upset.to(BAR, Section.round(millimetres(24)), millimetres(9));
    assertTrue(upset.stockLength().isEquivalentTo(millimetres(36)));
    assertTrue(upset.stock(BAR).likely().isEquivalentTo(millimetres(36)));
    assertTrue(upset.stock(BAR).isExact());
    assertEquals(millimetres(9), upset.reach());
    assertEquals(BAR, upset.start());
    assertEquals(Section.round(millimetres(24)), upset.end());
    assertTrue(upset.metalLost().isNone());
    assertEquals("upset", upset.name());
    assertEquals("upset on 12 mm round, taking 36 mm of it", upset.toString());
  }

  @Test
  void aSwellingHasTheBarOnBothSides() {
    Upset swelling = Upset.barrelled(BAR, WIDE, millimetres(20));
    assertEquals(BAR, swelling.start());
    assertEquals(BAR, swelling.end());
    assertEquals(WIDE, swelling.widest());
  }

  @Test
  void aFlareIsATaperThatGrows() {
    Upset flare = Upset.flared(BAR, WIDE, millimetres(20));
    assertTrue(
        flare
            .metalKept()
            .likely()
            .isEquivalentTo(Taper.between(BAR, WIDE, millimetres(20)).metalKept().likely()));
    assertEquals(WIDE, flare.end());
  }

  /** The three rules at their limits: L = 3 d, D = 1.5 d. */
  @Test
  void knowsThePublishedRules() {
    Upset atLimit = Upset.using(millimetres(36), BAR, Section.round(millimetres(30)));
    assertEquals(3, atLimit.slenderness(), 1e-12);
    assertTrue(atLimit.standsFree());
    assertTrue(atLimit.standsInDie());
    assertTrue(atLimit.cautions().isEmpty());
    Upset slender = Upset.using(millimetres(60), BAR, WIDE);
    assertFalse(slender.standsFree());
    assertTrue(slender.standsInDie());
    Upset tooMuch = Upset.using(millimetres(60), BAR, Section.round(millimetres(18.1)));
    assertFalse(tooMuch.standsInDie());
    assertEquals(millimetres(36), slender.longestFree());
    assertEquals(millimetres(18), slender.longestBeyondDie());
  }

  @Test
  void cautionsWhereTheBarWouldBuckle() {
    assertEquals(
        "the upset takes 60 mm of bar, more than three times its thickness (36 mm): it buckles if"
            + " struck in one go; upset it in a die with at most 18 mm standing out, or take a"
            + " short heat at a time",
        Upset.using(millimetres(60), BAR, WIDE).cautions().get(0).text());
    assertEquals(
        "the upset takes 60 mm of bar, more than three times its thickness (36 mm): it buckles if"
            + " struck in one go; take a short heat at a time",
        Upset.using(millimetres(60), BAR, Section.round(millimetres(30))).cautions().get(0).text());
  }

  @Test
  void aFlatBarBucklesAcrossItsThinSide() {
    Section flat = Section.flat(millimetres(40), millimetres(10));
    Section edge = Section.onEdge(millimetres(10), millimetres(40));
    for (Section bar : List.of(flat, edge)) {
      Upset upset = Upset.using(millimetres(31), bar, Section.square(millimetres(25)));
      assertEquals(3.1, upset.slenderness(), 1e-12);
      assertFalse(upset.standsFree());
    }
  }

  @Test
  void guessesTheHeats() {
    assertEquals("2 (1 to 4)", Upset.using(millimetres(36), BAR, WIDE).heats().toString());
    assertEquals("4 (2 to 8)", Upset.using(millimetres(60), BAR, WIDE).heats().toString());
    assertEquals("2 (1 to 4)", Head.nail(Section.square(millimetres(5))).heats().toString());
  }

  @Test
  void showsItsWorkings() {
    Section shank = Section.round(inches("1/2"));
    Section base = Section.round(inches(1));
    for (Upset upset :
        List.of(
            Upset.to(BAR, WIDE, inches(1)),
            Upset.using(inches(2), BAR, WIDE),
            Upset.flared(Section.square(millimetres(12)), WIDE, millimetres(20)),
            Upset.barrelled(BAR, WIDE, inches(1)),
            Head.snap(shank),
            Head.pan(shank),
            Head.dome(shank, base, millimetres(9)),
            Head.ball(shank, millimetres(20)),
            Head.tapered(shank, base, base.point(), millimetres(9)),
            Head.countersunk(shank, millimetres(25), Measure.of(Math.PI / 2, ShopUnits.RADIAN)),
            Head.countersunkOverGrip(shank, millimetres(25), Measure.of(90, ShopUnits.DEGREE)),
            Head.nail(Section.square(millimetres(5))),
            BoltHead.HALF_WIDTH.square(shank),
            BoltHead.SHANK_DIAMETER.hexagon(shank))) {
      Workings.check(upset.working(), upset.metalKept().likely());
      Workings.check(upset.stockWorking(), upset.stockLength());
      assertEquals(upset.cautions(), upset.working().cautions());
    }
  }

  @Test
  void refusesWhatIsNotUpsetting() {
    assertEquals(
        "widest section of the upset must have at least the area of the 12 mm round it is jumped up from, was 10 mm"
            + " square; draw it out instead, or start from a thinner bar",
        refusal(() -> Upset.to(BAR, Section.square(millimetres(10)), millimetres(20))));
    assertEquals(
        "middle must be round, was 20 mm square; give its Section.round, or use Upset.to",
        refusal(() -> Upset.barrelled(BAR, Section.square(millimetres(20)), millimetres(20))));
    assertTrue(
        refusal(() -> Upset.barrelled(Section.square(millimetres(9)), WIDE, millimetres(20)))
            .startsWith("bar must be round"));
    assertTrue(
        refusal(() -> Upset.to(BAR, WIDE, millimetres(0)))
            .startsWith("length must be more than zero"));
    assertTrue(
        refusal(() -> Upset.using(millimetres(-1), BAR, WIDE))
            .startsWith("stock must be more than zero"));
    assertTrue(
        refusal(() -> Upset.flared(WIDE, BAR, millimetres(10)))
            .startsWith("widest section of the flare must have at least"));
    assertTrue(
        refusal(
                () ->
                    Upset.flared(
                        Section.square(millimetres(10)),
                        Section.hexagon(millimetres(20)),
                        millimetres(10)))
            .startsWith("sections at base and top of a taper must be similar"));
  }

  static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
