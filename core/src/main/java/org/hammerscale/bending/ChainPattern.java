package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;

/**
 * Proportions of chain links in diameters d of their bar. Other names: {@index "short link"},
 * {@index "stud link"}.
 *
 * <pre>{@code
 * ChainPattern.SHORT_LINK.outsideLength(millimetres(10))      // 50 mm  at most
 * ChainPattern.SHORT_LINK.lengthOf(7, millimetres(10))        // 230 mm  of seven links
 * Link link = ChainPattern.SHORT_LINK.link(millimetres(10));
 * link.welded(WeldAllowance.LINK).cutLength().likely()        // 124.82 mm  rod for each
 * }</pre>
 *
 * <p>Exact as the tables print them. A forge weld's strength cannot be computed: proof-test a
 * chain. Sources: a chain maker's table after the short link standard; a table of anchor chain
 * (read).
 */
public enum ChainPattern {
  /** Short link: at most 5 d long and 3.5 d wide outside, at least 1.25 d wide inside. */
  SHORT_LINK("short link chain", 5, 3.5, 1.25),
  /** Stud link, of anchor chain: 6 d long and 3.6 d wide outside; the stud fills the inside. */
  STUD_LINK("stud link chain", 6, 3.6, 1.6);

  private final String words;
  private final double length;
  private final double width;
  private final double inside;

  ChainPattern(String words, double length, double width, double inside) {
    this.words = words;
    this.length = length;
    this.width = width;
    this.inside = inside;
  }

  /**
   * The length of a link over all: 5 d at most, or 6 d.
   *
   * @param bar d, the diameter of the bar, more than zero
   * @return the length, in the bar's unit
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Length> outsideLength(Quantity<Length> bar) {
    return checked(bar).multiply(length);
  }

  /**
   * The width of a link over all: 3.5 d at most, or 3.6 d.
   *
   * @param bar d, the diameter of the bar, more than zero
   * @return the width, in the bar's unit
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Length> outsideWidth(Quantity<Length> bar) {
    return checked(bar).multiply(width);
  }

  /**
   * The least width inside a link: 1.25 d; of a stud link 1.6 d between its sides.
   *
   * @param bar d, the diameter of the bar, more than zero
   * @return the width, in the bar's unit
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Measure<Length> leastInsideWidth(Quantity<Length> bar) {
    return checked(bar).multiply(inside);
  }

  /**
   * The length of several links pulled straight: that of a {@link Chain} of them.
   *
   * @param links how many, 1 to 100 000
   * @param bar d, the diameter of the bar, more than zero
   * @return the length over all, in the bar's unit
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public Measure<Length> lengthOf(int links, Quantity<Length> bar) {
    return Chain.of(link(bar), links).length();
  }

  /**
   * One link as it is bent: as long and as wide as the pattern allows.
   *
   * @param bar d, the diameter of the bar, more than zero
   * @return the link, with butted ends; {@link Link#welded} tells what the weld takes
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public Link link(Quantity<Length> bar) {
    Measure<Length> d = checked(bar);
    return Link.inside(d.multiply(length - 2), d.multiply(width - 2), Section.round(d));
  }

  /** {@return where its proportions come from} */
  public Source source() {
    return this == SHORT_LINK
        ? Source.read("chain maker's table after the short link standard", "grade S(6)")
        : Source.read("table of anchor chain", "sizes 5/8 to 1 3/4 in");
  }

  private static Measure<Length> checked(Quantity<Length> bar) {
    return Arguments.positive("bar", bar);
  }

  /** Its name. */
  @Override
  public String toString() {
    return words;
  }
}
