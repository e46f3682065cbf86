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
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.Measure;

/**
 * Where the screws of a bracket go on the wall, above the foot that its plate turns about, and
 * where its load hangs.
 *
 * <pre>{@code
 * Bracket shelf = Bracket.carrying(newtons(200), millimetres(150)).screwedAt(millimetres(40), millimetres(200));
 * Drawing drawing = BracketDrawing.of(shelf).drawing();
 * drawing                  // bracket under 200 N at 150 mm, 2 screws, scale 1 : 1
 * drawing.description().contains("screw at 200 mm: pulled by 144.2 N")   // true
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Places are true; the iron itself is the smith's. For wind
 * on a sign turn the sheet, as the bracket's heights then lie sideways.
 */
public final class BracketDrawing {
  private static final double OFF = 9;
  private static final double WALL = 5;
  private static final double BEYOND = 10;
  private static final double ARROW = 16;
  private static final int MOST_NOTES = 12;

  private final Bracket bracket;
  private final Scale scale;

  private BracketDrawing(Bracket bracket, Scale scale) {
    this.bracket = bracket;
    this.scale = scale;
  }

  /**
   * The drawing of a bracket, in true scale.
   *
   * @param bracket the bracket with its screws
   * @return what can be drawn
   */
  public static BracketDrawing of(Bracket bracket) {
    return new BracketDrawing(Objects.requireNonNull(bracket, "bracket"), Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public BracketDrawing reducedTo(int reduction) {
    return new BracketDrawing(bracket, Scale.oneTo(reduction));
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
    double out = scale.size("distance of the load", bracket.distance());
    double top = 0;
    List<Callout> marks = new ArrayList<>();
    for (Measure<Length> height : bracket.heights()) {
      double up = scale.size("height of a screw", height);
      top = Math.max(top, up);
      marks.add(new Callout(-WALL, -up, height.toString()));
      draft.pen.line(Line.CENTRE, "screw", -WALL - 2, -up, WALL, -up);
    }
    double[] wall = {0, -top - BEYOND, 0, BEYOND, -WALL, BEYOND, -WALL, -top - BEYOND};
    draft.pen.line(Line.WIDE, "wall", 0, -top - BEYOND, 0, BEYOND);
    draft.pen.hatch("wall", false, wall);
    draft.pen.draw(Line.MOVED, "iron", Path.through(0, 0, 0, -top, out, -top));
    draft.pen.circle(Line.NARROW, "turn", 0, -draft.of(bracket.turningHeight()), 1.5);
    draft.pen.line(Line.NARROW, "load", out, -top, out, ARROW - top);
    draft.sizes.arrow(out, ARROW - top, 0, -1);
    draft.pen.words(bracket.load().toString(), out + 2, ARROW - top - 3);
    Box over = draft.pen.box();
    draft.sizes.runningDown(new Callout(-WALL, 0, "foot"), marks, -WALL - OFF);
    String far = bracket.distance().toString();
    draft.sizes.across(0, out, over.bottom() + OFF, over.bottom(), ARROW - top, far);
    draft.pen.say(notes());
    return Drawing.of(Words.sentence(bracket.toString()), scale, draft.pen);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add("the plate turns about the small ring; dashes and dots: where the iron may run");
    int count = bracket.heights().size();
    for (int i = 1; i <= Math.min(count, MOST_NOTES); i++) {
      notes.add(
          "screw at "
              + bracket.heights().get(i - 1)
              + ": pulled by "
              + bracket.pull(i)
              + ", "
              + bracket.shear()
              + " across it");
    }
    if (count > MOST_NOTES) {
      notes.add("and so on for the rest of " + count + " screws");
    }
    return notes;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a bracket, " + scale + "\n  " + bracket;
  }
}
