package org.hammerscale.drawing;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Chain;
import org.hammerscale.bending.ChainPattern;
import org.hammerscale.bending.Link;
import org.hammerscale.bending.WeldAllowance;
import org.hammerscale.drawing.Picture.Shape;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.junit.jupiter.api.Test;

class ChainDrawingTest {
  private static final double EXACT = 1e-6;

  private static final Chain KEEP =
      Chain.of(ChainPattern.SHORT_LINK.link(inches("3/8")).welded(WeldAllowance.ONE_THICKNESS), 21);
  private static final Chain LAMP =
      Chain.of(Link.inside(millimetres(45), millimetres(14), Section.round(millimetres(6))), 4);
  private static final Chain TIGHT =
      Chain.of(Link.inside(millimetres(8), millimetres(4), Section.round(millimetres(4))), 3);
  private static final Chain SQUARE =
      Chain.of(Link.inside(inches(2), inches("3/4"), Section.square(inches("5/16"))), 2);

  private static double mm(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  /** Every point of a face lies half a bar from the middle line of its link, at its pitch. */
  @Test
  void linksStandAPitchApart() {
    for (Chain chain : List.of(KEEP, LAMP, TIGHT, SQUARE)) {
      double pitch = mm(chain.pitch());
      double half = mm(chain.link().section().thickness()) / 2;
      double mean = mm(chain.link().insideWidth()) / 2 + half;
      double straight = pitch - mm(chain.link().insideWidth());
      Picture picture = Picture.of(ChainDrawing.of(chain).drawing());
      int points = 0;
      double farthest = 0;
      for (Shape face : picture.all("link")) {
        for (double[] point : face.points()) {
          farthest = Math.max(farthest, point[0]);
          double nearest = Double.POSITIVE_INFINITY;
          for (int i = 0; i < 3; i += 2) {
            double along = Math.abs(point[0] - (i + 0.5) * pitch) - straight / 2;
            double off = Math.hypot(Math.max(along, 0), point[1]) - mean;
            nearest = Math.min(nearest, Math.abs(Math.abs(off) - half));
          }
          assertEquals(0, nearest, EXACT);
          points++;
        }
      }
      assertTrue(points > 50, "points: " + points);
      assertEquals(
          (chain.links() < 3 ? 1 : 3) * pitch + 2 * half, farthest, EXACT, "over all from inside");
    }
  }

  /** The next link covers what lies within its bar, whole as it is in front. */
  @Test
  void whatPassesBehindIsDashed() {
    for (Chain chain : List.of(KEEP, LAMP, TIGHT, SQUARE)) {
      double half = mm(chain.link().section().width()) / 2;
      Picture picture = Picture.of(ChainDrawing.of(chain).drawing());
      int hidden = 0;
      for (Shape face : picture.all("link")) {
        boolean inside = face.points().stream().allMatch(p -> Math.abs(p[1]) <= half + EXACT);
        boolean first = face.points().stream().allMatch(p -> p[0] < mm(chain.pitch()) / 2);
        assertEquals(inside && !first && !face.is("wide"), face.is("hidden"));
        hidden += face.is("hidden") ? 1 : 0;
      }
      int ends = chain.links() == 2 ? 1 : chain.links() == 3 ? 2 : 3;
      assertEquals(2 * ends, hidden, "an inner and an outer arc at each end that is hung");
      Shape edge = picture.all("edge").get(0);
      assertTrue(edge.is("wide"));
      double left = edge.points().stream().mapToDouble(p -> p[0]).min().orElseThrow();
      double right = edge.points().stream().mapToDouble(p -> p[0]).max().orElseThrow();
      assertEquals(mm(chain.pitch()) - mm(chain.link().section().thickness()), left, EXACT);
      assertEquals(mm(chain.link().reach()), right - left, EXACT);
      assertEquals(chain.links() > 3 ? 2 : 1, picture.all("edge").size(), "and one that goes on");
    }
  }

  @Test
  void isLegibleWhateverIsMade() {
    List<Chain> chains = new ArrayList<>(List.of(KEEP, LAMP, TIGHT, SQUARE));
    chains.add(Chain.of(KEEP.link(), 1));
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double bar = 1 + random.nextInt(20);
      double width = bar * (1 + random.nextInt(40) / 10.0);
      double length = Math.max(width, 2 * bar) * (1 + random.nextInt(30) / 10.0);
      boolean square = random.nextBoolean();
      Section section = square ? Section.square(millimetres(bar)) : Section.round(millimetres(bar));
      Link link = Link.inside(millimetres(length), millimetres(width), section);
      chains.add(Chain.of(link, 1 + random.nextInt(5)));
    }
    for (Chain chain : chains) {
      Picture.of(ChainDrawing.of(chain).drawing()).assertLegible();
      Picture.of(ChainDrawing.of(chain).reducedTo(4).drawing()).assertLegible();
    }
  }

  @Test
  void saysWhatItShows() {
    Drawing drawing = ChainDrawing.of(KEEP).drawing();
    assertEquals("chain of 21 links of 3/8 in round", drawing.title());
    assertTrue(drawing.description().contains("21 links pulled straight are 24 3/8 in long"));
    assertTrue(
        Picture.of(drawing)
            .words()
            .containsAll(
                List.of(
                    "1 1/8 in inside, the pitch",
                    "9/16 in inside",
                    "1 7/8 in over all",
                    "1 5/16 in")));
    Drawing one = ChainDrawing.of(Chain.of(KEEP.link(), 1)).drawing();
    assertEquals("chain link of 3/8 in round", one.title());
    assertTrue(Picture.of(one).words().contains("1 1/8 in inside"));
    assertTrue(
        ChainDrawing.of(LAMP)
            .reducedTo(2)
            .toString()
            .startsWith("drawing of a chain, scale 1 : 2\n  chain of 4 links, 192 mm"));
  }

  @Test
  void refusesWhatNoPaperHolds() {
    Chain vast = Chain.of(Link.inside(metres(101), metres(1), Section.round(millimetres(6))), 2);
    assertTrue(
        assertThrows(IllegalArgumentException.class, ChainDrawing.of(vast)::drawing)
            .getMessage()
            .startsWith("inside length of a link must be at most 100 m on the paper, was 101 m"));
  }
}
