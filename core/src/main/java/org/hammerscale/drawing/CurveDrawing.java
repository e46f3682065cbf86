package org.hammerscale.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.heat.Cooling;
import org.hammerscale.holding.FastenerRow;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.pen.Line;
import org.hammerscale.internal.pen.Pen;
import org.hammerscale.internal.pen.Plot;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * A plain plot of one thing against another, with a ring where the answer was read: how a bar
 * cools, what the fire takes in time, what a row of fasteners holds.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * CurveDrawing.of(Cooling.from(celsius(1150), bar)).drawing()   // cooling of 20 mm round, mild steel, no scale
 * ScaleLoss loss = ScaleLoss.of(bar, HeatPlan.soaking(celsius(1150), minutes(5)));
 * CurveDrawing.of(loss).drawing().title()                       // "what the fire takes from 20 mm round, mild steel"
 * CurveDrawing.of(FastenerRow.pulledOut(6), poundsForce(135)).drawing().title()   // "what a row of fasteners holds"
 * }</pre>
 *
 * <p>Likely values are the wide lines, low and high the dashed ones; what is shaded is hatched, and
 * nothing is told by colour.
 */
public final class CurveDrawing {
  private static final int STEPS = 48;
  private static final int LEAST_STEPS = 8;

  /** Of all the points of a plot together: where scale is kept each is worked out heat by heat. */
  private static final int MOST_HEATS = 4800;

  private static final int MOST_PLACES = 40;

  /** What can be drawn in a frame of its own. */
  private interface Curve {
    List<String> draw(Pen pen);
  }

  private final String title;
  private final Curve curve;

  private CurveDrawing(String title, Curve curve) {
    this.title = title;
    this.curve = curve;
  }

  /**
   * Temperature against time in the air, the time left for work hatched.
   *
   * @param cooling the bar that cools
   * @return what can be drawn
   */
  public static CurveDrawing of(Cooling cooling) {
    Objects.requireNonNull(cooling, "cooling");
    return new CurveDrawing("cooling of " + cooling.bar(), pen -> cooling(pen, cooling));
  }

  /**
   * Metal lost from each surface against the time of one heat, up to twice the time that the plan
   * has.
   *
   * @param loss what the fire takes
   * @return what can be drawn
   */
  public static CurveDrawing of(ScaleLoss loss) {
    Objects.requireNonNull(loss, "loss");
    return new CurveDrawing("what the fire takes from " + loss.bar(), pen -> scale(pen, loss));
  }

  /**
   * What a row holds against how many fasteners it has.
   *
   * @param row the row, with the number that was asked for
   * @param one what one fastener holds, more than zero
   * @return what can be drawn
   * @throws IllegalArgumentException if the force is not more than zero
   */
  public static CurveDrawing of(FastenerRow row, Quantity<Force> one) {
    Objects.requireNonNull(row, "row");
    Measure<Force> each = Arguments.positiveForce("one", one);
    return new CurveDrawing("what a row of fasteners holds", pen -> row(pen, row, each));
  }

  /**
   * Draws it.
   *
   * @return the drawing
   * @throws IllegalArgumentException if the answer is nothing that could be drawn, such as what a
   *     fire takes in no time
   */
  public Drawing drawing() {
    Pen pen = new Pen();
    List<String> notes = curve.draw(pen);
    pen.say(notes);
    return Drawing.of(title, Scale.NONE, pen);
  }

  private static List<String> cooling(Pen pen, Cooling cooling) {
    Unit<Temperature> degrees = cooling.heat().getUnit();
    List<double[]> points = new ArrayList<>();
    for (Cooling.Moment moment : cooling.curve(STEPS)) {
      points.add(
          new double[] {moment.time().in(ShopUnits.SECOND), moment.temperature().in(degrees)});
    }
    double[] last = points.get(points.size() - 1);
    Estimate<Time> window = cooling.window();
    Plot plot = new Plot(pen, 0, last[0], last[1], points.get(0)[1]);
    plot.axes("time in the air, s", "temperature, " + Plot.symbol(degrees));
    plot.under("window", points, Math.min(window.likely().in(ShopUnits.SECOND), last[0]));
    plot.curve(Line.WIDE, "curve", points);
    plot.read("read", last[0], last[1]);
    return List.of(
        "ring: " + cooling.finish().likely().to(degrees) + " after " + cooling.time(),
        "hatched: left for work at the anvil, " + window,
        cooling.toString());
  }

  private static List<String> scale(Pen pen, ScaleLoss loss) {
    Unit<Length> unit = loss.bar().section().width().getUnit();
    Measure<Time> asked = loss.plan().each().duration();
    double minutes = asked.in(ShopUnits.MINUTE);
    if (!(minutes > 0)) {
      throw new IllegalArgumentException(
          "time of each heat must be more than nothing to be drawn, was "
              + asked
              + "; give the plan's heats a duration");
    }
    List<List<double[]>> lines = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    lines.forEach(line -> line.add(new double[] {0, 0}));
    int steps = Math.max(LEAST_STEPS, Math.min(STEPS, MOST_HEATS / loss.plan().heats()));
    for (int i = 1; i <= steps; i++) {
      double time = 2 * minutes * i / steps;
      Estimate<Length> lost =
          loss.during(loss.plan().lasting(Measure.of(time, ShopUnits.MINUTE))).perSurface();
      lines.get(0).add(new double[] {time, lost.likely().in(unit)});
      lines.get(1).add(new double[] {time, lost.low().in(unit)});
      lines.get(2).add(new double[] {time, lost.high().in(unit)});
    }
    double most = lines.get(2).get(steps)[1];
    Plot plot = new Plot(pen, 0, 2 * minutes, 0, most);
    plot.axes("time of each heat, min", "metal lost from each surface, " + Plot.symbol(unit));
    plot.curve(Line.WIDE, "curve", lines.get(0));
    plot.curve(Line.HIDDEN, "low", lines.get(1));
    plot.curve(Line.HIDDEN, "high", lines.get(2));
    plot.read("read", minutes, loss.perSurface().likely().in(unit));
    return List.of(
        "ring: " + loss.perSurface() + " in heats of " + asked,
        "dashed: nine of ten outcomes lie between",
        loss.plan().toString());
  }

  private static List<String> row(Pen pen, FastenerRow row, Measure<Force> one) {
    Unit<Force> unit = one.getUnit();
    int count = row.count();
    TreeSet<Integer> places = new TreeSet<>();
    for (int i = 1; i <= MOST_PLACES; i++) {
      places.add((int) Math.max(1, Math.round((double) count * i / MOST_PLACES)));
    }
    List<double[]> likely = new ArrayList<>();
    List<Estimate<Force>> all = new ArrayList<>();
    for (int place : places) {
      Estimate<Force> holds = row.withCount(place).holds(one);
      all.add(holds);
      likely.add(new double[] {place, holds.likely().in(unit)});
    }
    double most = one.getValue() * count;
    Plot plot = new Plot(pen, 0, count, 0, most);
    plot.axes("fasteners in the row", "what the row holds, " + Plot.symbol(unit));
    plot.curve(Line.HIDDEN, "alike", List.of(new double[] {0, 0}, new double[] {count, most}));
    for (int i = 0; i < likely.size(); i++) {
      double[] point = likely.get(i);
      plot.upright("spread", point[0], all.get(i).low().in(unit), all.get(i).high().in(unit));
    }
    plot.curve(Line.WIDE, "curve", likely);
    double[] last = likely.get(likely.size() - 1);
    plot.read("read", last[0], last[1]);
    return List.of(
        "ring: "
            + count
            + " that hold "
            + one
            + " each hold "
            + all.get(all.size() - 1)
            + " together",
        "dashed: if all carried alike");
  }

  /** What will be drawn. */
  @Override
  public String toString() {
    return "plot: " + title;
  }
}
