package org.hammerscale.drawing;

import java.util.List;
import java.util.Objects;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.strength.CarryingHook;
import org.hammerscale.strength.HookSection;

/**
 * The bend of a hook that carries, with the line of its load, and its section half way round where
 * it is bent hardest.
 *
 * <pre>{@code
 * HookSection drawn = HookSection.narrowing(millimetres(30), millimetres(12), millimetres(40));
 * CarryingHook hook = CarryingHook.of(drawn, millimetres(30));
 * HookDrawing.of(hook).drawing().title()   // "hook of 30 mm inside, 12 mm outside, 40 mm deep, 30 mm inside radius"
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Radii count from the centre of the bend. The rest of the
 * hook is the smith's; one of a single section throughout is a {@link BentDrawing}.
 */
public final class HookDrawing {
  private static final double OFF = 9;
  private static final int PIECES = 48;

  private final CarryingHook hook;
  private final Scale scale;

  private HookDrawing(CarryingHook hook, Scale scale) {
    this.hook = hook;
    this.scale = scale;
  }

  /**
   * The drawing of a hook, in true scale.
   *
   * @param hook the hook
   * @return what can be drawn
   */
  public static HookDrawing of(CarryingHook hook) {
    return new HookDrawing(Objects.requireNonNull(hook, "hook"), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public HookDrawing reducedTo(int reduction) {
    return new HookDrawing(hook, Scale.oneTo(reduction));
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
    scale.size("inside radius", hook.insideRadius());
    scale.size("depth of the section", hook.section().depth());
    scale.size("width of the section", hook.section().outerWidth());
    draft.row(this::bend, this::section);
    draft.pen.say(
        List.of(
            "the section on the right is that at the level of the bend's centre; do not quench it",
            "radii count from the centre of the bend: of the inside, of the line without stress"
                + " from bending, of the middle of the metal"));
    return Drawing.of(Words.sentence(hook.toString()), scale, draft.pen);
  }

  /** The bend about its centre, its middle to the left. */
  private void bend(Draft d, double x, double y) {
    double inner = d.of(hook.insideRadius());
    double outer = inner + d.of(hook.section().depth());
    double up = -Math.PI / 2;
    d.pen.draw(Line.WIDE, "bend", new Path().arc(x, y, inner, up, up - Math.PI));
    d.pen.draw(Line.WIDE, "bend", new Path().arc(x, y, outer, up, up - Math.PI));
    for (int side = -1; side <= 1; side += 2) {
      d.pen.line(Line.NARROW, "broken", x, y + side * inner, x, y + side * outer);
    }
    d.pen.cross("middle", x, y, 3);
    d.pen.line(Line.CENTRE, "plane", x - outer - 4, y, x - inner + 4, y);
    double load = x + d.of(hook.loadBeyondCentre());
    double foot = y + outer + 12;
    d.pen.line(Line.NARROW, "load", load, y, load, foot);
    d.sizes.arrow(load, foot, 0, -1);
    d.pen.words("load", load + 2, foot - 3);
    if (hook.loadBeyondCentre().getValue() > 0) {
      String beyond = hook.loadBeyondCentre() + " beyond the centre";
      d.sizes.across(x, load, y - outer - OFF, y, y, beyond);
    }
    List<Callout> radii =
        List.of(
            new Callout(x - inner, y, hook.insideRadius().toString()),
            new Callout(x - d.of(hook.neutralRadius()), y, hook.neutralRadius().toString()),
            new Callout(x - d.of(hook.centroidRadius()), y, hook.centroidRadius().toString()));
    d.sizes.running(new Callout(x, y, "centre"), radii, d.pen.box().bottom() + 4);
  }

  /** Its inside to the right of the point by half its depth. */
  private void section(Draft d, double x, double y) {
    HookSection section = hook.section();
    double half = d.of(section.depth()) / 2;
    double inside = d.of(section.innerWidth()) / 2;
    double outside = d.of(section.outerWidth()) / 2;
    double[] corners = {
      x - half, y - outside, x + half, y - inside, x + half, y + inside, x - half, y + outside
    };
    if (section.isRound()) {
      d.pen.circle(Line.WIDE, "section", x, y, half);
      corners = round(x, y, half);
    } else {
      d.pen.draw(Line.WIDE, "section", Path.through(corners).close());
    }
    d.pen.hatch("section", true, corners);
    Box over = d.pen.box();
    String deep = (section.isRound() ? "Ø " : "") + section.depth();
    d.sizes.across(x - half, x + half, over.top() - OFF, over.top(), over.top(), deep);
    if (!section.isRound()) {
      double right = x + half + OFF;
      String wide = section.innerWidth() + " inside";
      d.sizes.upright(y - inside, y + inside, right, x + half, x + half, wide);
      double left = x - half - OFF;
      String narrow = section.outerWidth() + " outside";
      d.sizes.upright(y - outside, y + outside, left, x - half, x - half, narrow);
    }
  }

  private static double[] round(double x, double y, double radius) {
    double[] corners = new double[2 * PIECES];
    for (int i = 0; i < PIECES; i++) {
      corners[2 * i] = x + radius * Math.cos(2 * Math.PI * i / PIECES);
      corners[2 * i + 1] = y + radius * Math.sin(2 * Math.PI * i / PIECES);
    }
    return corners;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a hook that carries, " + scale + "\n  " + hook;
  }
}
