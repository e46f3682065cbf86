package org.hammerscale.bending;

import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A bar bent along a drawn line that was measured point by point: a scroll, a snake, any curve. Its
 * length is the sum of the straights between the points, as of a string laid along the middle of
 * the drawn bar. Other names: {@index polyline}, {@index "string length"}.
 *
 * <pre>{@code
 * Course course = Course.from(millimetres(0), millimetres(0), Section.square(millimetres(10)));
 * course = course.to(millimetres(30), millimetres(40)).to(millimetres(60), millimetres(50));
 * course.developedLength()  // 81.62 mm  what a string along the drawing would measure
 * }</pre>
 *
 * <p>Exact for the polyline; a smooth curve through its points is longer, by a twenty-fourth of the
 * square of the turn (in radians) at each point: 0.3 % at 15°, 1.1 % at 30°. Lengths come out in
 * the first point's unit.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 141; Googerty, <cite>Hand-Forging and
 * Wrought-Iron Ornamental Work</cite>, 1911, p. 110.
 */
public final class Course extends BentBar {
  private static final double SHARPEST = 30;
  private static final int MOST = 1000;
  private static final Source STRING = Source.read("Ilgen, Forge Work, 1912", "sec. 141");

  private final double[] across;
  private final double[] up;

  private Course(double[] across, double[] up, Section section, Unit<Length> unit) {
    super(section, unit);
    this.across = across;
    this.up = up;
  }

  /**
   * A course that begins at a point.
   *
   * @param across how far the point lies across the drawing, from any origin
   * @param up how far it lies up the drawing
   * @param section the bar
   * @return the course, no length yet; lead it on with {@link #to}
   */
  public static Course from(Quantity<Length> across, Quantity<Length> up, Section section) {
    Measure<Length> x = Arguments.length("across", across);
    Unit<Length> unit = x.getUnit();
    return new Course(
        new double[] {x.in(unit)},
        new double[] {Arguments.length("up", up).in(unit)},
        section,
        unit);
  }

  /**
   * The same course led on, straight to another point, the thousandth at most.
   *
   * @param nextAcross how far the point lies across the drawing
   * @param nextUp how far it lies up the drawing
   * @return the longer course
   * @throws IllegalArgumentException if it has a thousand points already
   */
  public Course to(Quantity<Length> nextAcross, Quantity<Length> nextUp) {
    Arguments.count("points", across.length + 1, 2, MOST, "lay out the rest as another course");
    return new Course(
        with(across, Arguments.length("across", nextAcross).in(unit())),
        with(up, Arguments.length("up", nextUp).in(unit())),
        section(),
        unit());
  }

  /**
   * The same course drawn larger or smaller, so that it uses a length of bar.
   *
   * @param length the length of bar, more than zero
   * @return the course
   * @throws IllegalArgumentException if the length is not more than zero, or the course has none
   */
  public Course scaledTo(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    double now = developed(Notes.NONE);
    if (!(now > 0)) {
      throw new IllegalArgumentException(
          "course must have a length to be scaled, was one point; lead it on to another point");
    }
    return new Course(scaled(across, used / now), scaled(up, used / now), section(), unit());
  }

  /** {@return how many points it has} */
  public int points() {
    return across.length;
  }

  /** {@return straight from point to point, turned so that it begins to the right} */
  @Override
  public MeanLine meanLine() {
    MeanLine line = MeanLine.from(unit());
    double direction = 0;
    boolean begun = false;
    for (int i = 1; i < across.length; i++) {
      double dx = across[i] - across[i - 1];
      double dy = up[i] - up[i - 1];
      double chord = Math.hypot(dx, dy);
      if (chord > 0) {
        double towards = Math.atan2(dy, dx);
        double turn = begun ? Math.IEEEremainder(towards - direction, 2 * Math.PI) : 0;
        line = line.arc(0, turn).on(chord);
        direction = towards;
        begun = true;
      }
    }
    return line;
  }

  /** {@return {@code course}} */
  @Override
  public String name() {
    return "course";
  }

  /** {@return the straight distance from its first to its last point} */
  @Override
  public Measure<Length> reach() {
    int last = across.length - 1;
    return measure(Math.hypot(across[last] - across[0], up[last] - up[0]));
  }

  /** {@return a caution if it turns more than 30° at a point; else none} */
  @Override
  public List<Caution> cautions() {
    double sharpest = sharpestTurn();
    return sharpest > Math.toRadians(SHARPEST) * (1 + 1e-9)
        ? List.of(
            Caution.limit(
                "the course turns by "
                    + Math.round(Math.toDegrees(sharpest))
                    + "° at a point, more than "
                    + Math.round(SHARPEST)
                    + "°: a smooth curve there is more than 1 % longer; measure more points, or add"
                    + " a Bend for a corner",
                Source.computed("arc against chord: turn² ÷ 24")))
        : List.of();
  }

  /** {@return how the length of bar was found} */
  @Override
  public Working working() {
    return Notes.taken(toString(), unit(), this::developed)
        .withSource(STRING)
        .withCautions(cautions());
  }

  @Override
  double developed(Notes n) {
    if (across.length == 1) {
      return n.given("L", "a single point has no length", 0);
    }
    double total = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 1; i < across.length; i++) {
      String symbol = "c" + i;
      double chord = Math.hypot(across[i] - across[i - 1], up[i] - up[i - 1]);
      total += n.given(symbol, "from point " + i + " to point " + (i + 1), chord);
      formula.append(i == 1 ? "" : " + ").append(symbol);
    }
    return n.length("L", "bar used", formula.toString(), total);
  }

  private double sharpestTurn() {
    double sharpest = 0;
    for (int i = 2; i < across.length; i++) {
      double ax = across[i - 1] - across[i - 2];
      double ay = up[i - 1] - up[i - 2];
      double bx = across[i] - across[i - 1];
      double by = up[i] - up[i - 1];
      sharpest = Math.max(sharpest, Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)));
    }
    return sharpest;
  }

  private static double[] with(double[] values, double next) {
    double[] longer = Arrays.copyOf(values, values.length + 1);
    longer[values.length] = next;
    return longer;
  }

  private static double[] scaled(double[] values, double factor) {
    return Arrays.stream(values).map(value -> value * factor).toArray();
  }

  /** Points and bar. */
  @Override
  public String toString() {
    return "course through "
        + across.length
        + (across.length == 1 ? " point" : " points")
        + ", of "
        + section();
  }
}
