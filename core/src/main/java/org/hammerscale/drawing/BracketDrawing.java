package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Turned;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.strength.AngleBracket;
import org.hammerscale.strength.Bracket;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * Where the screws of a bracket go on the wall, above the foot that its plate turns about, and
 * where its load is; with the iron and its brace if that is a bar bent square.
 *
 * <pre>{@code
 * Bracket shelf = Bracket.carrying(newtons(200), millimetres(150)).screwedAt(millimetres(40), millimetres(200));
 * Drawing drawing = BracketDrawing.of(shelf).drawing();
 * drawing                  // bracket under 200 N at 150 mm, 2 screws, scale 1 : 1
 * drawing.description().contains("screw at 200 mm: pulled by 144.2 N")   // true
 * Bar flat = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
 * AngleBracket iron = AngleBracket.ofArmAndPlate(millimetres(220), millimetres(240), flat);
 * BracketDrawing.of(shelf).madeOf(iron).drawing().title()   // "bracket of 25 mm × 6 mm flat, arm 220 mm, plate 240 mm"
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Places are true; where it is not told what it is made of,
 * dashes and dots show where the iron may run. For wind on a sign turn the sheet, as the bracket's
 * heights then lie sideways.
 */
public final class BracketDrawing {
  private static final double OFF = 9;
  private static final double WALL = 5;
  private static final double BEYOND = 10;
  private static final double ARROW = 16;
  private static final int MOST_NOTES = 12;

  private final Bracket bracket;
  private final @Nullable AngleBracket iron;
  private final Scale scale;

  private BracketDrawing(Bracket bracket, @Nullable AngleBracket iron, Scale scale) {
    this.bracket = bracket;
    this.iron = iron;
    this.scale = scale;
  }

  /**
   * The drawing of a bracket, in true scale.
   *
   * @param bracket the bracket with its screws
   * @return what can be drawn
   */
  public static BracketDrawing of(Bracket bracket) {
    return new BracketDrawing(Objects.requireNonNull(bracket, "bracket"), null, Scale.TRUE);
  }

  /**
   * The same with the iron: plate, bend, arm, and the brace if there is one.
   *
   * @param iron what it is made of, its foot where heights are counted from
   * @return what can be drawn
   * @throws IllegalArgumentException if a screw is above its plate, or the load beyond its arm
   */
  public BracketDrawing madeOf(AngleBracket iron) {
    Measure<Length> plate = Objects.requireNonNull(iron, "iron").plate();
    for (Measure<Length> height : bracket.heights()) {
      Arguments.atMost("height", height, "the plate", plate, "take a longer plate");
    }
    Arguments.atMost("distance", bracket.distance(), "the arm", iron.arm(), "take a longer arm");
    return new BracketDrawing(bracket, iron, scale);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public BracketDrawing reducedTo(int reduction) {
    return new BracketDrawing(bracket, iron, Scale.oneTo(reduction));
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
    double through = iron == null ? 0 : draft.of(iron.bar().section().thickness());
    List<Callout> marks = new ArrayList<>();
    for (Measure<Length> height : bracket.heights()) {
      double up = scale.size("height of a screw", height);
      top = Math.max(top, up);
      marks.add(new Callout(-WALL, -up, height.toString()));
      draft.pen.line(Line.CENTRE, "screw", -WALL - 2, -up, through + WALL, -up);
    }
    if (iron != null) {
      top = scale.size("plate of the bracket", iron.plate());
      marks.add(new Callout(-WALL, -top, iron.plate().toString()));
    }
    double[] wall = {0, -top - BEYOND, 0, BEYOND, -WALL, BEYOND, -WALL, -top - BEYOND};
    draft.pen.line(Line.WIDE, "wall", 0, -top - BEYOND, 0, BEYOND);
    draft.pen.hatch("wall", false, wall);
    draft.pen.circle(Line.NARROW, "turn", 0, -draft.of(bracket.turningHeight()), 1.5);
    List<Callout> far = new ArrayList<>();
    far.add(new Callout(out, -top, bracket.distance().toString()));
    if (iron == null) {
      draft.pen.draw(Line.MOVED, "iron", Path.through(0, 0, 0, -top, out, -top));
      load(draft, out, -top, ARROW - top, ARROW - top - 3);
    } else {
      iron(draft, iron, far);
      load(draft, out, -top - ARROW, -top, -top - ARROW + 3);
    }
    draft.sizes.runningDown(new Callout(-WALL, 0, "foot"), marks, -WALL - OFF);
    draft.sizes.running(new Callout(0, BEYOND, "wall"), far, draft.pen.box().bottom() + OFF);
    draft.pen.say(notes());
    String title = iron == null ? bracket.toString() : iron.toString();
    return Drawing.of(Words.sentence(title), scale, draft.pen);
  }

  private void load(Draft draft, double x, double from, double to, double words) {
    draft.pen.line(Line.NARROW, "load", x, from, x, to);
    draft.sizes.arrow(x, to, 0, -1);
    draft.pen.words(bracket.load().toString(), x + 2, words);
  }

  /** Plate and arm from their outside, and the brace between them. */
  private static void iron(Draft draft, AngleBracket iron, List<Callout> far) {
    Measure<Length> half = iron.bar().section().thickness().divide(2);
    double thick = 2 * draft.of(half);
    Turned up = new Turned(thick / 2, 0, Math.PI / 2, false);
    MeanLine line = iron.meanLine();
    double[] outer = draft.points(line, half);
    double[] inner = draft.points(line, half.negate());
    draft.pen.draw(Line.WIDE, "iron", Draft.band(up, outer, inner).close());
    double top = -draft.of(iron.plate());
    iron.brace()
        .ifPresent(
            brace -> {
              double alpha = brace.angleToArm().in(ShopUnits.RADIAN);
              double out = draft.of(brace.out());
              double down = top + draft.of(brace.down());
              Path path =
                  Path.through(
                      thick,
                      down,
                      out,
                      top + thick,
                      out - thick / Math.sin(alpha),
                      top + thick,
                      thick,
                      down - thick / Math.cos(alpha));
              draft.pen.draw(Line.WIDE, "brace", path.close());
              far.add(new Callout(out, top + thick, brace.out() + " brace"));
            });
    far.add(new Callout(draft.of(iron.arm()), top + thick, iron.arm().toString()));
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (iron == null) {
      notes.add("the plate turns about the small ring; dashes and dots: where the iron may run");
    } else {
      notes.add("the plate turns about the small ring; outside sizes");
      notes.add(iron.bend().insideRadius() + " of radius inside the bend");
      iron.brace()
          .ifPresent(
              brace ->
                  notes.add(
                      "brace: lower edge "
                          + brace.down()
                          + " below the arm's top, bevelled "
                          + brace.angleToArm()
                          + " to the arm"));
    }
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
