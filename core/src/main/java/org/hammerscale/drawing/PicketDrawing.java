package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * Pickets between two posts, with the marks along the rail to lay beside it. Other name: {@index
 * "story pole"}.
 *
 * <pre>{@code
 * PicketRow row = PicketRow.across(inches(36)).of(inches("1/2")).stopping(GuardCode.IRC_SPHERE);
 * PicketDrawing fence = PicketDrawing.of(row.layout().on(SIXTEENTH));
 * fence.drawing()                         // 8 pickets, 3 1/2 in to 3 9/16 in apart on 1/16 in steps, scale 1 : 1
 * fence.reducedTo(10).drawing().sheets(Paper.LETTER).size()   // 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Widths and marks along the rail are true; rail and
 * pickets are broken off above and below. A raked rail lies level on the paper, and its pickets
 * lean by the rake. Sizes are those of the layout: put it on a rule first.
 */
public final class PicketDrawing {
  private static final double OFF = 9;

  /** Half the height of the rail, and of what is shown of the pickets, on the paper. */
  private static final double RAIL = 5;

  private static final double HIGH = 25;

  /** How much of a post is hatched. */
  private static final double POST = 4;

  private static final double LEVEL = 1e-6;

  private final PicketLayout layout;
  private final Scale scale;

  private PicketDrawing(PicketLayout layout, Scale scale) {
    this.layout = layout;
    this.scale = scale;
  }

  /**
   * The drawing of a layout, in true scale.
   *
   * @param layout where the pickets stand
   * @return what can be drawn
   */
  public static PicketDrawing of(PicketLayout layout) {
    return new PicketDrawing(Objects.requireNonNull(layout, "layout"), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public PicketDrawing reducedTo(int reduction) {
    return new PicketDrawing(layout, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if the rail is more than 100 m or less than 0.001 mm long on
   *     the paper
   */
  public Drawing drawing() {
    Draft draft = new Draft(scale, null);
    double length = scale.size("length of the rail", layout.railLength());
    double lean = Math.tan(layout.rake().in(ShopUnits.RADIAN));
    post(draft, 0, -POST, lean);
    post(draft, length, POST, lean);
    List<Measure<Length>> edges = layout.edges();
    List<Measure<Length>> farEdges = layout.farEdges();
    List<double[]> covers = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      double near = draft.of(edges.get(i));
      double far = draft.of(farEdges.get(i));
      upright(draft, "picket", near, lean);
      upright(draft, "picket", far, lean);
      covers.add(new double[] {near, far});
    }
    rail(draft, length, lean, covers);
    sizes(draft, length);
    draft.pen.say(notes());
    return Drawing.of(Words.sentence(layout.toString()), scale, draft.pen);
  }

  /** The face of a post, and what lies behind it hatched. */
  private static void post(Draft d, double x, double behind, double lean) {
    upright(d, "post", x, lean);
    double top = x + HIGH * lean;
    double foot = x - HIGH * lean;
    d.pen.hatch(
        "post",
        behind > 0,
        new double[] {top, -HIGH, foot, HIGH, foot + behind, HIGH, top + behind, -HIGH});
  }

  /** The edge of something upright where it crosses the middle of the rail. */
  private static void upright(Draft d, String part, double x, double lean) {
    d.pen.line(Line.WIDE, part, x + HIGH * lean, -HIGH, x - HIGH * lean, HIGH);
  }

  /** Both edges of the rail, behind the pickets. */
  private static void rail(Draft d, double length, double lean, List<double[]> covers) {
    for (int side = -1; side <= 1; side += 2) {
      double shift = -side * RAIL * lean;
      Path path = new Path();
      double from = 0;
      for (double[] cover : covers) {
        path.from(from + shift, side * RAIL).to(cover[0] + shift, side * RAIL);
        from = cover[1];
      }
      d.pen.draw(
          Line.WIDE, "rail", path.from(from + shift, side * RAIL).to(length + shift, side * RAIL));
    }
  }

  private void sizes(Draft d, double length) {
    Box over = d.pen.box();
    List<Callout> marks = new ArrayList<>();
    for (Measure<Length> edge : layout.edges()) {
      marks.add(new Callout(d.of(edge), RAIL, edge.toString()));
    }
    marks.add(new Callout(length, RAIL, layout.railLength() + " post"));
    d.sizes.running(new Callout(0, RAIL, "post"), marks, over.bottom() + OFF);
    int widest = 0;
    List<Measure<Length>> gaps = layout.gaps();
    for (int i = 1; i < gaps.size(); i++) {
      widest = gaps.get(i).isGreaterThan(gaps.get(widest)) ? i : widest;
    }
    // What stands farther left is told higher up, so that its words pass over the lines of the
    // other.
    if (widest > 0) {
      gap(d, widest, length, over.top() - OFF);
      gap(d, 0, length, over.top() - 2 * OFF - 2);
    } else {
      gap(d, 0, length, over.top() - OFF);
    }
  }

  /** One gap, which is told level even where it is drawn along a raked rail. */
  private void gap(Draft d, int number, double length, double level) {
    double from = number == 0 ? 0 : d.of(layout.farEdges().get(number - 1));
    double to = number == layout.pickets() ? length : d.of(layout.edges().get(number));
    boolean raked = layout.rake().getValue() > LEVEL;
    String text = layout.gaps().get(number) + (raked ? " level" : "") + " gap";
    d.sizes.across(from, to, level, -RAIL, -RAIL, text);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add("marks count along the rail from the left post to the near edge of each picket");
    Measure<Length> least = layout.narrowestGap();
    Measure<Length> most = layout.widestGap();
    notes.add(
        "gaps are clear and level, "
            + (least.equals(most) ? most : "from " + least + " to " + most));
    if (layout.rake().getValue() > LEVEL) {
      notes.add("the rail lies level here; it rises by " + layout.rake() + ", its pickets upright");
    }
    return notes;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of pickets, " + scale + "\n  " + layout;
  }
}
