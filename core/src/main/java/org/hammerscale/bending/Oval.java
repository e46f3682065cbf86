package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Ellipse;
import org.hammerscale.internal.Inverse;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * An oval: a bar whose mean line is an ellipse. L = 4 a E(m), with the half axes a = (l + t)/2 and
 * b = (v + t)/2 of the mean line, m = 1 − b²/a², and E the complete elliptic integral of the second
 * kind. Its ends butt, unless it is asked for welded or lapped. Other names: {@index "elliptical
 * link"}, {@index "oval ring"}, {@index ellipse}.
 *
 * <pre>{@code
 * Oval oval = Oval.inside(inches(3), inches(1), Section.round(inches("1/2")));
 * oval.developedLength()                // 8.1714 in  rod to cut, its ends butting
 * oval.using(inches(9)).insideLength()  // 3.4505 in  what 9 in at hand makes
 * }</pre>
 *
 * <p>Exact as geometry but for the weld: the integral is found by the arithmetic-geometric mean,
 * which doubles its correct digits at each of a handful of steps, to the last digits of a double.
 * Lengths come out in the unit of the inside length.
 *
 * <p>Source: ellipse perimeter 4 a E(e²), standard mathematics; method of Gauss and Legendre.
 */
public final class Oval extends ClosedOblong {
  private static final int POINTS = 180;
  private static final Source ELLIPSE =
      Source.computed("perimeter of an ellipse by the arithmetic-geometric mean");

  private Oval(Quantity<Length> length, Quantity<Length> width, Section section, Joint joint) {
    super(length, width, section, joint);
  }

  /**
   * An oval with butted ends: the long way first.
   *
   * @param length the finished inside length, at least the width
   * @param width the finished inside width, more than zero
   * @param section the bar
   * @return the oval
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Oval inside(Quantity<Length> length, Quantity<Length> width, Section section) {
    return new Oval(length, width, section, Joint.BUTTED);
  }

  /**
   * The same oval forge-welded.
   *
   * @param allowance what the weld takes
   * @return the oval
   */
  public Oval welded(WeldAllowance allowance) {
    return new Oval(
        insideLength(),
        insideWidth(),
        section(),
        Joint.welded(Objects.requireNonNull(allowance, "allowance").forBar(section())));
  }

  /**
   * The same oval with its ends lapped.
   *
   * @param lap the length of the lap on the mean line, more than zero
   * @return the oval
   * @throws IllegalArgumentException if the lap is not more than zero
   */
  public Oval lapped(Quantity<Length> lap) {
    return new Oval(insideLength(), insideWidth(), section(), Joint.lapped(lap));
  }

  /**
   * The same kind of oval, as wide, in the length that uses up a length of bar.
   *
   * @param bar the length of bar of the oval's section
   * @return the oval
   * @throws IllegalArgumentException if the bar is too short to close a ring of this width
   */
  public Oval using(Quantity<Length> bar) {
    double b = (insideWidth().in(unit()) + thickness()) / 2;
    double line = meanLineOf("bar", bar, 2 * Math.PI * b);
    double a =
        Inverse.solve("mean line", x -> Ellipse.perimeter(x, b), b, line / 4, line, this::measure);
    return new Oval(measure(2 * a - thickness()), insideWidth(), section(), joint());
  }

  /** {@return how the length of bar that stays in it was found} */
  @Override
  public Working working() {
    return super.working().withSource(ELLIPSE);
  }

  /** {@return an ellipse} */
  @Override
  public MeanLine meanLine() {
    double a = (insideLength().in(unit()) + thickness()) / 2;
    double b = (insideWidth().in(unit()) + thickness()) / 2;
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      double angle = 2 * Math.PI * i / POINTS;
      double x = a * Math.cos(angle);
      double y = b * Math.sin(angle);
      double slope = Math.hypot(b * Math.cos(angle), a * Math.sin(angle));
      double nx = -b * Math.cos(angle) / slope; // inwards, to the left of the way round
      double ny = -a * Math.sin(angle) / slope;
      points.add(new double[] {x, y, nx, ny});
    }
    return new MeanLine(unit(), points, List.of(), 0, meanLine(Notes.NONE), true);
  }

  @Override
  double meanLine(Notes n) {
    double l = n.given("l", "inside length", insideLength().in(unit()));
    double w = n.given("v", "inside width", insideWidth().in(unit()));
    double t = t(n);
    double a = n.length("a", "long half axis of the mean line", "(l + t) / 2", (l + t) / 2);
    double b = n.length("b", "short half axis", "(v + t) / 2", (w + t) / 2);
    n.number("m", "parameter of the ellipse", "1 − b² / a²", 1 - b * b / (a * a));
    return n.length("L", "perimeter of the ellipse", "4 a E(m)", Ellipse.perimeter(a, b));
  }

  /** The tightest curl lies at the ends of the long way: mean radius b²/a. */
  @Override
  Measure<Length> tightest() {
    double a = (insideLength().in(unit()) + thickness()) / 2;
    double b = (insideWidth().in(unit()) + thickness()) / 2;
    return measure(Math.max(2 * b * b / a - thickness(), 0));
  }

  @Override
  String noun() {
    return "oval";
  }
}
