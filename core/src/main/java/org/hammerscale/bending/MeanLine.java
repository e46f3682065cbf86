package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * The line that the middle of a bent bar follows, in the plane that it is bent in: straight
 * stretches and arcs, one behind the other, beginning to the right.
 *
 * <pre>{@code
 * MeanLine crook = MeanLine.straight(inches(6)).bentLeft(inches(1), degrees(180)).straightOn(inches(2));
 * crook             // mean line 11.1416 in long, from end to end 4.4721 in
 * crook.length()    // 11.1416 in
 * crook.bentRight(inches("1/2"), degrees(90)).isClosed()   // false
 * }</pre>
 *
 * <p>As points it is exact at each of them; arcs have one at least every 2.5°, and their {@link
 * #length} is that of the arcs.
 */
public final class MeanLine {
  private static final double STEP = Math.toRadians(2.5);
  private static final double FULL_TURN = 360;
  private static final int MOST = 100_000;

  private final Unit<Length> unit;

  /** At each point x, y, and the normal to the left, as long as an offset of 1 goes. */
  private final List<double[]> points;

  private final List<double[]> joints;
  private final double direction;
  private final double length;
  private final boolean closed;

  MeanLine(
      Unit<Length> unit,
      List<double[]> points,
      List<double[]> joints,
      double direction,
      double length,
      boolean closed) {
    this.unit = unit;
    this.points = points;
    this.joints = joints;
    this.direction = direction;
    this.length = length;
    this.closed = closed;
  }

  /** A line that has no length as yet. */
  static MeanLine from(Unit<Length> unit) {
    return new MeanLine(unit, List.of(new double[] {0, 0, 0, 1}), List.of(), 0, 0, false);
  }

  /**
   * A straight bar, to be led on.
   *
   * @param length not negative
   * @return the line
   * @throws IllegalArgumentException if the length is negative
   */
  public static MeanLine straight(Quantity<Length> length) {
    Measure<Length> first = Arguments.notNegative("length", length);
    return from(first.getUnit()).on(first.in(first.getUnit()));
  }

  /**
   * The same led straight on.
   *
   * @param further not negative
   * @return the line
   * @throws IllegalArgumentException if the length is negative
   */
  public MeanLine straightOn(Quantity<Length> further) {
    return on(Arguments.notNegative("further", further).in(unit));
  }

  /**
   * The same led on by an arc to the left.
   *
   * @param radius of the middle of the bar, not negative; 0 for a sharp corner
   * @param angle bent through, 0° to 360°
   * @return the line
   * @throws IllegalArgumentException if one is out of its range
   */
  public MeanLine bentLeft(Quantity<Length> radius, Quantity<Angle> angle) {
    return bent(radius, angle, 1);
  }

  /**
   * The same led on by an arc to the right.
   *
   * @param radius of the middle of the bar, not negative; 0 for a sharp corner
   * @param angle bent through, 0° to 360°
   * @return the line
   * @throws IllegalArgumentException if one is out of its range
   */
  public MeanLine bentRight(Quantity<Length> radius, Quantity<Angle> angle) {
    return bent(radius, angle, -1);
  }

  private MeanLine bent(Quantity<Length> radius, Quantity<Angle> angle, int side) {
    double round = Arguments.notNegative("radius", radius).in(unit);
    double turn = Arguments.angle("angle", angle, FULL_TURN).in(ShopUnits.RADIAN);
    return arc(round, side * turn);
  }

  /** Straight on, in the unit. */
  MeanLine on(double further) {
    if (further == 0) {
      return this;
    }
    double[] last = last();
    double x = last[0] + further * Math.cos(direction);
    double y = last[1] + further * Math.sin(direction);
    double[] normal = {-Math.sin(direction), Math.cos(direction)};
    List<double[]> more = begun(normal);
    more.add(new double[] {x, y, normal[0], normal[1]});
    return led(more, direction, further);
  }

  /** Round an arc, to the left if the turn is positive, in the unit and in radians. */
  MeanLine arc(double radius, double turn) {
    if (turn == 0) {
      return this;
    }
    double[] last = last();
    double side = Math.signum(turn);
    double cx = last[0] - side * radius * Math.sin(direction);
    double cy = last[1] + side * radius * Math.cos(direction);
    List<double[]> more = begun(new double[] {-Math.sin(direction), Math.cos(direction)});
    int parts = Math.max(1, (int) Math.ceil(Math.abs(turn) / STEP - 1e-9));
    for (int i = 1; i <= parts && radius > 0; i++) {
      double to = direction + turn * i / parts;
      double nx = -Math.sin(to);
      double ny = Math.cos(to);
      more.add(new double[] {cx - side * radius * nx, cy - side * radius * ny, nx, ny});
    }
    return led(more, direction + turn, radius * Math.abs(turn));
  }

  /**
   * The points so far; where the line turns sharply, the last is moved to where the faces of two
   * straight stretches meet.
   */
  private List<double[]> begun(double[] normal) {
    Arguments.count("points", points.size(), 1, MOST, "lay out the rest as another line");
    List<double[]> more = new ArrayList<>(points);
    double[] last = last();
    if (points.size() == 1) {
      more.set(0, new double[] {last[0], last[1], normal[0], normal[1]});
    } else {
      more.set(more.size() - 1, mitred(last, normal));
    }
    return more;
  }

  private static double[] mitred(double[] last, double[] normal) {
    double nx = last[2] + normal[0];
    double ny = last[3] + normal[1];
    double square = (nx * nx + ny * ny) / 2;
    // A line that turns back on itself has no such place.
    return square > 0.05
        ? new double[] {last[0], last[1], nx / square, ny / square}
        : new double[] {last[0], last[1], normal[0], normal[1]};
  }

  private MeanLine led(List<double[]> more, double newDirection, double further) {
    List<double[]> met = new ArrayList<>(joints);
    if (points.size() > 1) {
      met.add(last());
    }
    return new MeanLine(
        unit, List.copyOf(more), List.copyOf(met), newDirection, length + further, closed);
  }

  /** The same with its end joined to its beginning. */
  MeanLine closed() {
    return new MeanLine(unit, points, joints, direction, length, true);
  }

  private double[] last() {
    return points.get(points.size() - 1);
  }

  /** {@return how long it is, arcs measured round, exact} */
  public Measure<Length> length() {
    return Measure.of(length, unit);
  }

  /** {@return whether its end is joined to its beginning, as that of a ring} */
  public boolean isClosed() {
    return closed;
  }

  /**
   * Points of the line, or of one that runs beside it, such as a face of the bar.
   *
   * @param distance to the left of the middle; negative to the right
   * @param unitOfNumbers what the numbers count
   * @return by turns how far each point lies to the right of the beginning and how far up
   */
  public double[] points(Quantity<Length> distance, Unit<Length> unitOfNumbers) {
    return numbers(points, Arguments.length("distance", distance).in(unit), unitOfNumbers);
  }

  /**
   * The points where two stretches meet, such as a straight and an arc.
   *
   * @param distance to the left of the middle; negative to the right
   * @param unitOfNumbers what the numbers count
   * @return by turns how far each point lies to the right of the beginning and how far up
   */
  public double[] joints(Quantity<Length> distance, Unit<Length> unitOfNumbers) {
    return numbers(joints, Arguments.length("distance", distance).in(unit), unitOfNumbers);
  }

  private double[] numbers(List<double[]> from, double distance, Unit<Length> unitOfNumbers) {
    double factor = Measure.of(1, unit).in(unitOfNumbers);
    double[] numbers = new double[2 * from.size()];
    for (int i = 0; i < from.size(); i++) {
      double[] point = from.get(i);
      numbers[2 * i] = (point[0] + distance * point[2]) * factor;
      numbers[2 * i + 1] = (point[1] + distance * point[3]) * factor;
    }
    return numbers;
  }

  /** Its length, and how far apart its ends lie. */
  @Override
  public String toString() {
    double[] first = points.get(0);
    double apart = Math.hypot(last()[0] - first[0], last()[1] - first[1]);
    return "mean line "
        + length()
        + " long, "
        + (closed ? "closed" : "from end to end " + Measure.of(apart, unit));
  }
}
