package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hammerscale.bending.Chain;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.stock.Section;

/**
 * The first links of a chain pulled straight, by turns face on and edge on, with the sizes of a
 * link: to lay a bent one on before it is welded.
 *
 * <pre>{@code
 * Chain chain = Chain.reaching(millimetres(800), ChainPattern.SHORT_LINK.link(millimetres(6)));
 * ChainDrawing.of(chain).drawing()   // chain of 44 links of 6 mm round, scale 1 : 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Dashed is what passes behind the next link.
 */
public final class ChainDrawing {
  private static final double OFF = 9;
  private static final int SHOWN = 3;

  private final Chain chain;
  private final Scale scale;

  private ChainDrawing(Chain chain, Scale scale) {
    this.chain = chain;
    this.scale = scale;
  }

  /**
   * The drawing of a chain, in true scale.
   *
   * @param chain the chain
   * @return what can be drawn
   */
  public static ChainDrawing of(Chain chain) {
    return new ChainDrawing(Objects.requireNonNull(chain, "chain"), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public ChainDrawing reducedTo(int reduction) {
    return new ChainDrawing(chain, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm on the
   *     paper
   */
  public Drawing drawing() {
    Draft draft = new Draft(scale, null);
    double pitch = scale.size("inside length of a link", chain.pitch());
    scale.size("thickness of a link", chain.link().section().thickness());
    scale.size("inside width of a link", chain.link().insideWidth());
    int shown = Math.min(SHOWN, chain.links());
    for (int i = 0; i < shown; i++) {
      if (i % 2 == 0) {
        faceOn(draft, i * pitch, i > 0, i + 1 < chain.links());
      } else {
        edgeOn(draft, i * pitch, Line.WIDE);
      }
    }
    if (shown < chain.links()) {
      edgeOn(draft, shown * pitch, Line.MOVED);
    }
    Box over = draft.pen.box();
    draft.pen.line(Line.CENTRE, "middle", over.left() - 4, 0, over.right() + 4, 0);
    sizes(draft);
    draft.pen.say(notes());
    String title =
        (chain.links() == 1 ? "chain link of " : "chain of " + chain.links() + " links of ")
            + chain.link().section();
    return Drawing.of(title, List.of(Words.sentence(chain.toString())), scale, draft.pen);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        chain.link().insideLength()
            + " × "
            + chain.link().insideWidth()
            + " inside; rod for each likely "
            + chain.link().cutLength().likely());
    if (chain.links() > 1) {
      notes.add(
          chain.links()
              + " links pulled straight are "
              + chain.length()
              + " long over all; each is turned square to the next");
    }
    return notes;
  }

  /** Both faces of a link that begins inside at a place; dashed where a neighbour hides an end. */
  private void faceOn(Draft d, double x, boolean before, boolean behind) {
    double length = d.of(chain.pitch());
    double thick = d.of(chain.link().section().thickness());
    double inner = d.of(chain.link().insideWidth()) / 2;
    double half = d.of(chain.link().section().width()) / 2;
    for (double radius : new double[] {inner, inner + thick}) {
      double[] middles = {x + inner, x + length - inner};
      for (int side = -1; side <= 1; side += 2) {
        d.pen.line(Line.WIDE, "link", middles[0], side * radius, middles[1], side * radius);
      }
      end(d, middles[0], radius, Math.PI, before ? Math.asin(half / radius) : 0);
      end(d, middles[1], radius, 0, behind ? Math.asin(half / radius) : 0);
    }
  }

  /** A half circle in a direction, but for an angle on either side of it where it is hidden. */
  private static void end(Draft d, double x, double radius, double towards, double hidden) {
    double quarter = Math.PI / 2;
    if (hidden == 0) {
      d.pen.draw(
          Line.WIDE, "link", new Path().arc(x, 0, radius, towards - quarter, towards + quarter));
      return;
    }
    for (int side = -1; side <= 1; side += 2) {
      d.pen.draw(
          Line.WIDE,
          "link",
          new Path().arc(x, 0, radius, towards + side * quarter, towards + side * hidden));
    }
    d.pen.draw(
        Line.HIDDEN, "link", new Path().arc(x, 0, radius, towards - hidden, towards + hidden));
  }

  /** A link from its edge that begins inside at a place; one that is left out ends in the air. */
  private void edgeOn(Draft d, double x, Line line) {
    Section bar = chain.link().section();
    double half = d.of(bar.width()) / 2;
    double left = x - d.of(bar.thickness());
    double right = x + d.of(chain.pitch().add(bar.thickness()));
    double round = bar.isRound() ? half : 0;
    if (line == Line.MOVED) {
      double air = (left + right) / 2;
      Path path = new Path().from(air, half).to(left + round, half);
      d.pen.draw(line, "edge", cap(path, left + round, half, 1, bar.isRound()).to(air, -half));
      return;
    }
    Path path = new Path().from(right - round, half).to(left + round, half);
    cap(path, left + round, half, 1, bar.isRound()).to(right - round, -half);
    d.pen.draw(line, "edge", cap(path, right - round, half, -1, bar.isRound()).close());
  }

  /** Round or square from below to above at the left, or from above to below at the right. */
  private static Path cap(Path path, double x, double half, int side, boolean isRound) {
    double from = side * Math.PI / 2;
    return isRound ? path.arc(x, 0, half, from, from + Math.PI) : path.to(x, -side * half);
  }

  private void sizes(Draft d) {
    double length = d.of(chain.pitch());
    double thick = d.of(chain.link().section().thickness());
    double inner = d.of(chain.link().insideWidth()) / 2;
    double outer = inner + thick;
    Box over = d.pen.box();
    String inside = chain.pitch() + (chain.links() == 1 ? " inside" : " inside, the pitch");
    d.sizes.across(0, length, over.top() - OFF, -inner, -inner, inside);
    String all = chain.link().reach() + " over all";
    d.sizes.across(-thick, length + thick, over.bottom() + OFF + 2, 0, 0, all);
    String wide = chain.link().insideWidth() + " inside";
    d.sizes.upright(-inner, inner, over.left() - OFF, inner, inner, wide);
    String out = chain.outsideWidth().toString();
    int last = chain.links() < SHOWN ? 0 : SHOWN - 1;
    double edge = last * length + length - inner;
    d.sizes.upright(-outer, outer, d.pen.box().right() + OFF, edge, edge, out);
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a chain, " + scale + "\n  " + chain.toString().replace("\n", "\n  ");
  }
}
