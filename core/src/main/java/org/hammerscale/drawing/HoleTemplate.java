package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.units.Measure;

/**
 * A paper template for the holes of a leaf, to be glued on and punched through: a cross at each
 * centre, the pin line that it is laid on by, and the stretches that stay closed, hatched. Other
 * names: {@index "drilling template"}, {@index "drill jig"}.
 *
 * <pre>{@code
 * ClosedStretch seam = ClosedStretch.seamAt(inches(6)).wide(inches("1/8")).clear(inches("3/4"));
 * HoleRow row = HoleRow.along(inches(14)).holes(4).startingFrom(inches("1 1/2")).endingBefore(inches("3/4"));
 * HoleLayout holes = row.missing(seam).layout().on(SIXTEENTH);
 * Drawing template = HoleTemplate.of(holes, inches("1 1/2")).drilled(inches("3/16")).drawing();
 * template   // template of 4 holes from the pin, scale 1 : 1
 * }</pre>
 *
 * <p>Always in true scale. Sizes are those of the layout: put it on a rule first. The leaf is drawn
 * straight, as wide as it is told; for one that tapers see {@link LeafDrawing}. Of two rows the
 * first hole lies in the upper one.
 */
public final class HoleTemplate {
  private static final double OFF = 12;
  private static final double BEYOND = 5;
  private static final double ARM = 5;

  private final HoleLayout holes;
  private final Measure<Length> width;
  private final Measure<Length> drilled;

  private HoleTemplate(HoleLayout holes, Measure<Length> width, Measure<Length> drilled) {
    this.holes = holes;
    this.width = width;
    this.drilled = drilled;
  }

  /**
   * The template of a layout.
   *
   * @param holes where they go
   * @param leafWidth how wide the leaf is, more than zero
   * @return what can be drawn
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static HoleTemplate of(HoleLayout holes, Quantity<Length> leafWidth) {
    Objects.requireNonNull(holes, "holes");
    Measure<Length> wide = Arguments.positive("leafWidth", leafWidth);
    return new HoleTemplate(holes, wide, wide.withValue(0));
  }

  /**
   * The same with the holes drawn as circles of their size, to drill to.
   *
   * @param diameter of the drill, more than zero
   * @return what can be drawn
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public HoleTemplate drilled(Quantity<Length> diameter) {
    return new HoleTemplate(holes, width, Arguments.positive("diameter", diameter));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm
   */
  public Drawing drawing() {
    Pen pen = new Pen();
    double length = Scale.TRUE.size("length of the leaf", holes.leafLength());
    double wide = Scale.TRUE.size("leafWidth", width);
    double radius = Scale.TRUE.sizeOrNone("diameter", drilled) / 2;
    double apart = Scale.TRUE.sizeOrNone("distance between rows", holes.betweenRows());
    // Open at the pin, where the leaf goes on into its barrel.
    pen.draw(Line.WIDE, "leaf", new Path().from(0, 0).to(length, 0).to(length, wide).to(0, wide));
    pen.line(Line.CENTRE, "pin", 0, -BEYOND, 0, wide + BEYOND);
    closed(pen, length, wide);
    List<Callout> sizes = new ArrayList<>();
    int count = holes.positions().size();
    for (int i = 0; i < count; i++) {
      Measure<Length> place = holes.positions().get(i);
      double x = Scale.millimetres(place);
      double y = (wide + (i % 2 == 0 ? -apart : apart)) / 2;
      pen.cross("hole", x, y, Math.max(ARM, radius + 2));
      if (radius > 0) {
        pen.circle(Line.WIDE, "drill", x, y, radius);
      }
      sizes.add(new Callout(x, wide, place.toString()));
    }
    sizes.add(new Callout(length, wide, holes.leafLength().toString()));
    double level = Math.max(wide, pen.box().bottom() - BEYOND) + OFF;
    new Dimensions(pen).running(new Callout(0, wide, "pin"), sizes, level);
    pen.say(notes());
    String title = "template of " + (count == 1 ? "1 hole" : count + " holes") + " from the pin";
    return Drawing.of(title, List.of(holes.toString()), Scale.TRUE, pen);
  }

  private void closed(Pen pen, double length, double wide) {
    List<Callout> names = new ArrayList<>();
    for (ClosedStretch stretch : holes.closedStretches()) {
      double from = Math.max(0, Scale.millimetres(stretch.from()));
      double to = Math.min(length, Scale.millimetres(stretch.to()));
      if (from <= to) {
        pen.hatch("closed", false, new double[] {from, 0, to, 0, to, wide, from, wide});
        pen.line(Line.NARROW, "closed", from, 0, from, wide);
        pen.line(Line.NARROW, "closed", to, 0, to, wide);
        names.add(new Callout((from + to) / 2, 0, Words.name(stretch.name())));
      }
    }
    names.sort((one, other) -> Double.compare(one.x(), other.x()));
    new Dimensions(pen).callouts(names, -BEYOND);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add("lay the pin line on the pin's centre; sizes count from it, to the centres of holes");
    if (drilled.getValue() > 0) {
      notes.add("drill " + drilled);
    }
    if (!holes.closedStretches().isEmpty()) {
      notes.add("no hole has its centre within what is hatched");
    }
    return notes;
  }

  /** Holes and leaf. */
  @Override
  public String toString() {
    return "template for a leaf of " + width + "\n  " + holes;
  }
}
