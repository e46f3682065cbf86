package org.hammerscale.bending;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.quantity.Length;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Workings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class ChainTest {
  private static final Link KEEP = ChainPattern.SHORT_LINK.link(inches("3/8"));

  @Test
  void isAsLongAsItsInsidesAndTheBarsAtItsEnds() {
    Chain chain = Chain.of(KEEP, 21);
    assertEquals(inches(24.375), chain.length()); // 21 × 1 1/8 + 2 × 3/8
    assertEquals(inches("1 1/8"), chain.pitch());
    assertEquals(inches("1 5/16"), chain.outsideWidth());
    assertEquals(inches("3/16"), chain.clearance());
    assertEquals(KEEP.reach(), Chain.of(KEEP, 1).length());
    assertEquals(ChainPattern.SHORT_LINK.lengthOf(21, inches("3/8")), chain.length());
    // Five stud links are 22 d long as a table of anchor chain prints them: 3/4 in, 16 1/2 in.
    assertEquals(
        inches("16 1/2"), Chain.of(ChainPattern.STUD_LINK.link(inches("3/4")), 5).length());
    Workings.check(chain.working(), chain.length());
  }

  /**
   * Links counted one by one in decimal fractions, which round nothing: lengths at, a hair below
   * and a hair above those of every count to 60, of bars in inches and millimetres, asked in
   * either.
   */
  @Test
  void reachesALengthWithTheFewestLinks() {
    int asked = 0;
    for (String[] size :
        new String[][] {
          {"0.25", "0.75", "0.375"}, {"0.375", "1.125", "0.5625"}, {"0.3125", "1", "0.5"},
          {"0.1", "0.3", "0.1"}, {"0.7", "1.4", "0.7"}, {"0.0625", "3.3", "1.7"}
        }) {
      for (boolean metric : new boolean[] {false, true}) {
        BigDecimal scale = new BigDecimal(metric ? "10" : "1");
        BigDecimal bar = new BigDecimal(size[0]).multiply(scale);
        BigDecimal pitch = new BigDecimal(size[1]).multiply(scale);
        BigDecimal width = new BigDecimal(size[2]).multiply(scale);
        Link link =
            Link.inside(of(pitch, metric), of(width, metric), Section.round(of(bar, metric)));
        for (int n = 1; n <= 60; n++) {
          BigDecimal exact = pitch.multiply(new BigDecimal(n)).add(bar.add(bar));
          for (String hair : new String[] {"-1e-7", "0", "1e-7"}) {
            BigDecimal length = exact.add(new BigDecimal(hair));
            int fewest = 1;
            while (pitch.multiply(new BigDecimal(fewest)).add(bar.add(bar)).compareTo(length) < 0) {
              fewest++;
            }
            Chain own = Chain.reaching(of(length, metric), link);
            assertEquals(fewest, own.links(), () -> length + " of " + link);
            BigDecimal other =
                metric
                    ? length.divide(new BigDecimal("25.4"), 30, RoundingMode.HALF_EVEN)
                    : length.multiply(new BigDecimal("25.4"));
            assertEquals(fewest, Chain.reaching(of(other, !metric), link).links());
            asked += 2;
          }
        }
      }
    }
    assertEquals(6 * 2 * 60 * 3 * 2, asked);
    assertEquals(1, Chain.reaching(millimetres(0.1), KEEP).links(), "one is the fewest");
    assertEquals(
        100_000, Chain.reaching(Chain.of(KEEP, 100_000).length(), KEEP).links(), "and the most");
  }

  private static Measure<Length> of(BigDecimal number, boolean metric) {
    return metric ? millimetres(number.doubleValue()) : inches(number.doubleValue());
  }

  /**
   * Of a flat bar its width goes between the sides of the next link, its thickness into the end.
   */
  @Test
  void aLinkGoesThroughTheNext() {
    Section rod = Section.round(millimetres(6));
    assertEquals(
        millimetres(0), Chain.of(Link.inside(millimetres(12), millimetres(6), rod), 3).clearance());
    assertTrue(
        refusal(() -> Chain.of(Link.inside(millimetres(12), millimetres(5.99), rod), 3))
            .startsWith("width inside the link must be at least the bar of 6 mm, was 5.99 mm"));
    assertTrue(
        refusal(() -> Chain.of(Link.inside(millimetres(11.99), millimetres(6), rod), 3))
            .startsWith(
                "length inside the link must be at least twice the thickness of the bar, of 12"
                    + " mm, was 11.99 mm"));
    Section flat = Section.flat(millimetres(10), millimetres(3));
    assertEquals(
        millimetres(1),
        Chain.of(Link.inside(millimetres(30), millimetres(11), flat), 3).clearance());
    assertTrue(
        refusal(() -> Chain.of(Link.inside(millimetres(30), millimetres(9), flat), 3))
            .startsWith("width inside the link must be at least the bar of 10 mm"));
  }

  @Test
  void warnsOfWeldsAndOfLinksThatBind() {
    Section rod = Section.round(millimetres(8));
    Chain least = Chain.of(Link.inside(millimetres(24), millimetres(10), rod), 3);
    assertTrue(least.cautions().isEmpty(), least.cautions()::toString); // 1.25 × 8
    Chain tight = Chain.of(Link.inside(millimetres(24), millimetres(9.9), rod), 3);
    assertTrue(tight.cautions().get(0).text().contains("less than the 10 mm"));
    Chain welded = Chain.of(least.link().welded(WeldAllowance.ONE_THICKNESS), 3);
    assertTrue(welded.cautions().get(0).isDanger());
    assertTrue(welded.working().cautions().containsAll(welded.cautions()));
  }

  /** π (9/16 + 3/8) + 2 (1 1/8 − 9/16) = 4.0702 in, and 1.5 × 3/8 for the worst weld of twenty. */
  @Test
  void eachLinkIsCutLikeAnyPiece() {
    Bar rod = Bar.of(Section.round(inches("3/8")), Material.MILD_STEEL);
    Link link = KEEP.welded(WeldAllowance.ONE_THICKNESS);
    assertEquals(
        inches("4 11/16"), Piece.of(rod, link).layout().on(Graduation.SIXTEENTH).cutLength());
    assertEquals(
        Math.PI * 0.9375 + 1.125 + 0.375,
        Chain.of(link, 9).link().cutLength().likely().in(ShopUnits.INCH),
        1e-12);
  }

  @Test
  void saysWhatItIs() {
    assertEquals("chain of 21 links, 24 3/8 in\n  " + KEEP, Chain.of(KEEP, 21).toString());
    assertTrue(Chain.of(KEEP, 1).toString().startsWith("chain of 1 link, 1 7/8 in"));
    assertFalse(Chain.of(KEEP, 1).toString().contains("@"));
    assertTrue(
        refusal(() -> Chain.of(KEEP, 0)).startsWith("links must be from 1 to 100000, was 0"));
    assertTrue(refusal(() -> Chain.reaching(inches(0), KEEP)).startsWith("length must be more"));
    assertTrue(
        refusal(() -> Chain.reaching(metres(3000), KEEP)).startsWith("length must be at most the"));
  }

  private static String refusal(Executable call) {
    return assertThrows(IllegalArgumentException.class, call).getMessage();
  }
}
