package org.hammerscale.drawing;

import java.util.List;
import java.util.Objects;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.bending.Bent;
import org.hammerscale.bending.MeanLine;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * Bent work, or any bar that follows a line, to lay the hot iron on: its mean line and both its
 * faces, with a stroke across where a bend begins. Other names: {@index pattern}, {@index
 * "full-size drawing"}.
 *
 * <pre>{@code
 * Hook hook = Hook.open(inches("1 1/2"), Section.round(inches("3/8"))).withTip(inches("1/2"));
 * Drawing pattern = BentDrawing.of(hook).drawing();
 * pattern.title()   // "open hook of 3/8 in round"
 * BentDrawing.of(Scroll.archimedean(millimetres(8), millimetres(60), 2, Section.flat(millimetres(20), millimetres(5)))).drawing().sheets(Paper.A4).size()   // 1
 * }</pre>
 *
 * <p>In true scale unless told otherwise. Sizes are those over the faces; the length is that of the
 * bar it uses up. A coil is seen along its axis.
 */
public final class BentDrawing {
  private static final double OFF = 12;

  private final String title;
  private final MeanLine line;
  private final Section bar;
  private final List<String> notes;
  private final Scale scale;

  private BentDrawing(String title, MeanLine line, Section bar, List<String> notes, Scale scale) {
    this.title = title;
    this.line = line;
    this.bar = bar;
    this.notes = notes;
    this.scale = scale;
  }

  /**
   * The drawing of something bent, in true scale.
   *
   * @param work what is bent
   * @return what can be drawn
   */
  public static BentDrawing of(Bent work) {
    Section bar = Objects.requireNonNull(work, "work").start();
    MeanLine line = work.meanLine();
    List<String> notes =
        List.of(
            Words.sentence(work.toString()),
            "bar used: " + work.stock(bar) + ", along the chain line " + line.length());
    String title = Words.name(work.name()) + " of " + bar;
    return new BentDrawing(title, line, bar, notes, Scale.TRUE);
  }

  /**
   * The drawing of a bar that follows a line, such as a latch's handle or a collar, in true scale.
   *
   * @param line the line of its middle
   * @param bar its section, the thickness across the bends
   * @return what can be drawn
   */
  public static BentDrawing of(MeanLine line, Section bar) {
    Objects.requireNonNull(line, "line");
    Objects.requireNonNull(bar, "bar");
    List<String> notes = List.of("along the chain line " + line.length());
    return new BentDrawing("bent bar of " + bar, line, bar, notes, Scale.TRUE);
  }

  /**
   * The same drawn smaller, for an overview. Letters keep their size.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public BentDrawing reducedTo(int reduction) {
    return new BentDrawing(title, line, bar, notes, Scale.oneTo(reduction));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if a size is more than 100 m or less than 0.001 mm on the
   *     paper
   */
  public Drawing drawing() {
    Measure<Length> thickness = bar.thickness();
    scale.size("thickness of the work", thickness);
    scale.sizeOrNone("length of the work", line.length());
    Measure<Length> half = thickness.divide(2);
    double[] middle = points(line, half.withValue(0));
    double[] left = points(line, half);
    double[] right = points(line, half.negate());
    Pen pen = new Pen();
    pen.draw(Line.WIDE, "face", path(left, line.isClosed()));
    pen.draw(Line.WIDE, "face", path(right, line.isClosed()));
    if (!line.isClosed()) {
      int n = left.length;
      pen.line(Line.WIDE, "end", left[0], left[1], right[0], right[1]);
      pen.line(Line.WIDE, "end", left[n - 2], left[n - 1], right[n - 2], right[n - 1]);
    }
    pen.draw(Line.CENTRE, "mean", path(middle, line.isClosed()));
    double[] from = reduced(line.joints(half, ShopUnits.MILLIMETRE));
    double[] to = reduced(line.joints(half.negate(), ShopUnits.MILLIMETRE));
    for (int i = 0; i < from.length; i += 2) {
      pen.line(Line.NARROW, "joint", from[i], from[i + 1], to[i], to[i + 1]);
    }
    sizes(pen);
    pen.say(notes);
    return Drawing.of(title, scale, pen);
  }

  private void sizes(Pen pen) {
    Box over = pen.box();
    Dimensions dimensions = new Dimensions(pen);
    double low = over.bottom() + OFF;
    String wide = size(over.width());
    dimensions.across(over.left(), over.right(), low, over.bottom(), over.bottom(), wide);
    double left = over.left() - OFF;
    dimensions.upright(
        over.top(), over.bottom(), left, over.left(), over.left(), size(over.height()));
  }

  /** A size over all, which points on curves give to no more than a hundredth of a millimetre. */
  private String size(double paper) {
    Unit<Length> unit = bar.width().getUnit();
    Measure<Length> size = Measure.of(paper * scale.reduction(), ShopUnits.MILLIMETRE).to(unit);
    boolean inches = unit.equals(ShopUnits.INCH);
    double step = inches ? 1000 : 10;
    return size.withValue(Math.rint(size.getValue() * step) / step).toString();
  }

  private double[] points(MeanLine line, Measure<Length> distance) {
    return reduced(line.points(distance, ShopUnits.MILLIMETRE));
  }

  /** On the paper, where up is less. */
  private double[] reduced(double[] numbers) {
    double[] on = new double[numbers.length];
    for (int i = 0; i < numbers.length; i += 2) {
      on[i] = numbers[i] / scale.reduction();
      on[i + 1] = -numbers[i + 1] / scale.reduction();
    }
    return on;
  }

  private static Path path(double[] points, boolean closed) {
    Path path = Path.through(points);
    return closed ? path.close() : path;
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of bent work, " + scale + "\n  " + title + ", " + line;
  }
}
