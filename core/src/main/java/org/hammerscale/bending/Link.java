package org.hammerscale.bending;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/**
 * A chain link: two half rounds and two straights, L = π (w + t) + 2 (l − w). Its ends butt, unless
 * it is asked for welded or lapped. Other names: stadium, chain ring, shackle link.
 *
 * <pre>{@code
 * Section rod = Section.round(millimetres(10));
 * Link link = Link.inside(millimetres(60), millimetres(30), rod);
 * link.developedLength()                                // 185.66 mm
 * link.welded(WeldAllowance.ONE_THICKNESS).cutLength()  // 195.66 mm (189.41 mm to 200.66 mm)
 * link.using(millimetres(200)).insideLength()           // 67.17 mm
 * }</pre>
 *
 * <p>Lengths come out in the unit of the inside length. Exact as geometry but for the weld. A link
 * drawn as an ellipse is an {@link Oval}.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111.
 */
public final class Link extends ClosedBar {
  private final Measure<Length> length;
  private final Measure<Length> width;

  private Link(Measure<Length> length, Measure<Length> width, Section section, Joint joint) {
    super(section, length.getUnit(), joint);
    this.length = length;
    this.width = width;
  }

  /**
   * A link with butted ends: the length first, as links are named.
   *
   * @param length the finished inside length, at least the width
   * @param width the finished inside width, more than zero
   * @param section the bar
   * @return the link
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Link inside(Quantity<Length> length, Quantity<Length> width, Section section) {
    Measure<Length> along = Arguments.positive("length", length);
    Measure<Length> across = Arguments.positive("width", width);
    notSwapped(along, across);
    return new Link(along, across, section, Joint.BUTTED);
  }

  /**
   * The same link forge-welded.
   *
   * @param allowance what the weld takes
   * @return the link
   */
  public Link welded(WeldAllowance allowance) {
    return new Link(length, width, section(), Joint.welded(allowance));
  }

  /**
   * The same link with its ends lapped.
   *
   * @param lap the length of the lap on the mean line, more than zero
   * @return the link
   * @throws IllegalArgumentException if the lap is not more than zero
   */
  public Link lapped(Quantity<Length> lap) {
    return new Link(length, width, section(), Joint.lapped(lap));
  }

  /**
   * The same kind of link, as wide, in the length that uses up a length of bar.
   *
   * @param bar the length of bar of the link's section
   * @return the link
   * @throws IllegalArgumentException if the bar is too short to close a ring of this width
   */
  public Link using(Quantity<Length> bar) {
    Objects.requireNonNull(bar, "bar");
    double across = width.in(unit());
    double round = Math.PI * (across + thickness());
    double line = meanLineOf("bar", bar, round);
    return new Link(measure(across + (line - round) / 2), width, section(), joint());
  }

  /** {@return the inside length} */
  public Measure<Length> insideLength() {
    return length;
  }

  /** {@return the inside width} */
  public Measure<Length> insideWidth() {
    return width;
  }

  /** {@return the length over all, exact} */
  @Override
  public Measure<Length> reach() {
    return length.add(section().thickness().multiply(2));
  }

  @Override
  double meanLine(Notes n) {
    double l = n.given("l", "inside length", length.in(unit()));
    double w = n.given("v", "inside width", width.in(unit()));
    double t = t(n);
    double m = n.length("m", "mean diameter of the half rounds", "v + t", w + t);
    return n.length("L", "mean line", "π m + 2 (l − v)", Math.PI * m + 2 * (l - w));
  }

  @Override
  Measure<Length> tightest() {
    return width;
  }

  @Override
  String noun() {
    return "link";
  }

  /** How it is joined, its inside sizes and its bar. */
  @Override
  public String toString() {
    return name() + ", " + length + " × " + width + " inside, of " + section();
  }
}
