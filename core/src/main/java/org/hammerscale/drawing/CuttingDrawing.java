package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.cutting.CutBar;
import org.hammerscale.cutting.CutMark;
import org.hammerscale.cutting.CuttingPlan;
import org.hammerscale.internal.pen.Box;
import org.hammerscale.internal.pen.Dimensions;
import org.hammerscale.internal.pen.Dimensions.Callout;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Path;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.internal.pen.Words;
import org.hammerscale.units.Measure;

/**
 * A cutting plan: the bars to scale, one below the other, with their pieces, where to chalk the
 * marks, and what is left over. What the saw eats and what is trimmed off is hatched.
 *
 * <pre>{@code
 * CutList list = CutList.of(Bar.of(Section.flat(millimetres(40), millimetres(6)), Material.MILD_STEEL), MILLIMETRE);
 * list = list.kerf(millimetres(2)).pieces("gate strap", millimetres(1450), 3).buying(metres(6));
 * CuttingDrawing.of(list.plan()).drawing()   // cut 1 bar: 1 × 6 m; longest leftover 1644 mm, scale 1 : 50
 * }</pre>
 *
 * <p>Drawn at the first of the scales 1 : 1, 2, 5, 10, 20, 50 and so on at which the longest bar is
 * at most 250 mm long, unless told otherwise. Along it is true to that scale; across, every bar is
 * 12 mm wide on the paper.
 */
public final class CuttingDrawing {
  private static final double LONGEST = 250;
  private static final double WIDE = 12;
  private static final double OFF = 9;
  private static final int MOST_BARS = 200;
  private static final int[] SCALES = {1, 2, 5, 10, 20, 50, 100, 200, 500};

  private final CuttingPlan plan;
  private final Optional<Scale> told;

  private CuttingDrawing(CuttingPlan plan, Optional<Scale> told) {
    this.plan = plan;
    this.told = told;
  }

  /**
   * The drawing of a plan, at a scale that suits it.
   *
   * @param plan which bars to take and where to cut them
   * @return what can be drawn
   */
  public static CuttingDrawing of(CuttingPlan plan) {
    return new CuttingDrawing(Objects.requireNonNull(plan, "plan"), Optional.empty());
  }

  /**
   * The same at another scale.
   *
   * @param reduction how many times smaller, 1 to 1000
   * @return what can be drawn
   * @throws IllegalArgumentException if the reduction is out of range
   */
  public CuttingDrawing reducedTo(int reduction) {
    return new CuttingDrawing(plan, Optional.of(Scale.oneTo(reduction)));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if there are more than 200 kinds of bars, or one is more than
   *     100 m or less than 0.001 mm long on the paper
   */
  public Drawing drawing() {
    List<CutBar> bars = plan.bars();
    if (bars.size() > MOST_BARS) {
      throw new IllegalArgumentException(
          "bars of the plan must be at most "
              + MOST_BARS
              + " that are cut in different ways, was "
              + bars.size()
              + "; draw the plan in parts");
    }
    Scale scale = told.orElseGet(this::suitable);
    Pen pen = new Pen();
    double top = 0;
    List<String> notes = new ArrayList<>();
    for (CutBar bar : bars) {
      Pen trial = new Pen();
      bar(trial, scale, bar, 0); // to see how high its names reach
      pen.words(called(bar), 0, top);
      bar(pen, scale, bar, top + Pen.LEADING - trial.box().top());
      top = pen.box().bottom() + OFF + 3;
      notes.add(Words.sentence(bar.toString()));
    }
    pen.say(List.of("sizes are where to chalk, from the left end; the saw cuts to the right"));
    String title = Words.sentence(plan.toString());
    return Drawing.of(title, notes, scale, pen);
  }

  private Scale suitable() {
    for (int reduction : SCALES) {
      Scale scale = Scale.oneTo(reduction);
      if (plan.bars().stream().allMatch(bar -> scale.of(bar.length()) <= LONGEST)) {
        return scale;
      }
    }
    return Scale.oneTo(1000);
  }

  private static String called(CutBar bar) {
    return bar.count() + " × " + bar.length() + (bar.isOffcut() ? " offcut" : "");
  }

  private static void bar(Pen pen, Scale scale, CutBar bar, double top) {
    Dimensions dimensions = new Dimensions(pen);
    double length = scale.size("length of bar", bar.length());
    double bottom = top + WIDE;
    pen.draw(Line.WIDE, "bar", Path.rectangle(new Box(0, top, length, bottom)));
    List<Callout> names = new ArrayList<>();
    List<Callout> sizes = new ArrayList<>();
    double last = 0;
    for (CutMark mark : bar.marks()) {
      double from = scale.of(mark.start());
      double to = scale.of(mark.end());
      lost(pen, last, from, top, bottom);
      pen.line(Line.WIDE, "mark", to, top, to, bottom);
      names.add(new Callout((from + to) / 2, top, Words.name(mark.name())));
      sizes.add(new Callout(to, bottom, mark.end().toString()));
      last = to;
    }
    double rest = scale.of(bar.leftover());
    lost(pen, last, length - rest, top, bottom);
    if (rest > 0) {
      Measure<Length> left = bar.leftover();
      String kind = bar.isLeftoverUseful() ? "offcut " : "scrap ";
      names.add(new Callout(length - rest / 2, top, kind + left));
    }
    dimensions.callouts(names, top - 2);
    dimensions.running(new Callout(0, bottom, "0"), sizes, bottom + OFF);
  }

  private static void lost(Pen pen, double from, double to, double top, double bottom) {
    if (to > from) {
      pen.hatch("lost", true, new double[] {from, top, to, top, to, bottom, from, bottom});
      pen.line(Line.WIDE, "cut", to, top, to, bottom);
    }
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "drawing of a cutting plan\n  " + plan;
  }
}
