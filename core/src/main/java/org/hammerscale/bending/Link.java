package org.hammerscale.bending;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/**
 * A chain link: two half rounds and two straights, L = π (w + t) + 2 (l − w). Its ends butt, unless
 * it is asked for welded or lapped. Other names: {@index "chain link"}, {@index "chain ring"},
 * {@index "shackle link"}, {@index stadium}.
 *
 * <pre>{@code
 * Section rod = Section.round(millimetres(10));
 * Link link = Link.inside(millimetres(60), millimetres(30), rod);
 * link.developedLength()                                // 185.66 mm  rod for a link whose ends butt
 * link.welded(WeldAllowance.ONE_THICKNESS).cutLength()  // 195.66 mm (180.66 mm to 200.66 mm)  if welded
 * link.using(millimetres(200)).insideLength()           // 67.17 mm  what 200 mm at hand makes
 * }</pre>
 *
 * <p>Lengths come out in the unit of the inside length. Exact as geometry but for the weld. A link
 * drawn as an ellipse is an {@link Oval}.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111.
 */
public final class Link extends ClosedOblong {
  private Link(Quantity<Length> length, Quantity<Length> width, Section section, Joint joint) {
    super(length, width, section, joint);
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
    return new Link(length, width, section, Joint.BUTTED);
  }

  /**
   * The same link forge-welded.
   *
   * @param allowance what the weld takes
   * @return the link
   */
  public Link welded(WeldAllowance allowance) {
    return new Link(
        insideLength(),
        insideWidth(),
        section(),
        Joint.welded(Objects.requireNonNull(allowance, "allowance").forBar(section())));
  }

  /**
   * The same link with its ends lapped.
   *
   * @param lap the length of the lap on the mean line, more than zero
   * @return the link
   * @throws IllegalArgumentException if the lap is not more than zero
   */
  public Link lapped(Quantity<Length> lap) {
    return new Link(insideLength(), insideWidth(), section(), Joint.lapped(lap));
  }

  /**
   * The same kind of link, as wide, in the length that uses up a length of bar.
   *
   * @param bar the length of bar of the link's section
   * @return the link
   * @throws IllegalArgumentException if the bar is too short to close a ring of this width
   */
  public Link using(Quantity<Length> bar) {
    double across = insideWidth().in(unit());
    double round = Math.PI * (across + thickness());
    double line = meanLineOf("bar", bar, round);
    return new Link(measure(across + (line - round) / 2), insideWidth(), section(), joint());
  }

  /** {@return two straights and two half circles} */
  @Override
  public MeanLine meanLine() {
    double straight = insideLength().in(unit()) - insideWidth().in(unit());
    double radius = (insideWidth().in(unit()) + thickness()) / 2;
    return MeanLine.from(unit())
        .on(straight)
        .arc(radius, Math.PI)
        .on(straight)
        .arc(radius, Math.PI)
        .closed();
  }

  @Override
  double meanLine(Notes n) {
    double l = n.given("l", "inside length", insideLength().in(unit()));
    double w = n.given("v", "inside width", insideWidth().in(unit()));
    double t = t(n);
    double m = n.length("m", "mean diameter of the half rounds", "v + t", w + t);
    return n.length("L", "mean line", "π m + 2 (l − v)", Math.PI * m + 2 * (l - w));
  }

  @Override
  Measure<Length> tightest() {
    return insideWidth();
  }

  @Override
  String noun() {
    return "link";
  }
}
