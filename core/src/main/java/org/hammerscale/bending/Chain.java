package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * So many links alike, each hung in the next and turned square to it: how long they are pulled
 * straight, how many reach a length, and whether one passes through the next. Other names: {@index
 * "link chain"}, {@index "chain pitch"}.
 *
 * <pre>{@code
 * Section rod = Section.round(inches("3/8"));
 * Link link = ChainPattern.SHORT_LINK.link(inches("3/8")).welded(WeldAllowance.ONE_THICKNESS);
 * Chain chain = Chain.reaching(inches(24), link);
 * chain.links()                    // 21         the fewest
 * chain.length()                   // 24 3/8 in  over all of them
 * chain.clearance()                // 3/16 in    the next link has beside its bar
 * Piece.of(Bar.of(rod, Material.MILD_STEEL), link).layout().on(SIXTEENTH).cutLength()   // 4 11/16 in  rod for each
 * }</pre>
 *
 * <p>L = n p + 2 t, the pitch p being the inside length of a link. Exact as geometry: a chain that
 * hangs or has worn is longer, one that has kinked shorter. A link must be at least as wide inside
 * as the bar, and at least twice as long inside as the bar is thick, since a neighbour hangs in
 * either end. Source: plane geometry.
 */
public final class Chain {
  private static final int MOST = 100_000;

  /** Of the short link standard, inside width ÷ bar. */
  private static final double FREE = 1.25;

  private static final Source PULLED = Source.computed("insides of the links, and both end bars");

  private final Link link;
  private final int links;

  private Chain(Link link, int links) {
    this.link = link;
    this.links = Arguments.count("links", links, 1, MOST, "count the links");
    Section bar = link.section();
    Arguments.atLeast(
        "width inside the link",
        link.insideWidth(),
        "the bar",
        bar.width(),
        "the next link passes through it; make it wider");
    Arguments.atLeast(
        "length inside the link",
        link.insideLength(),
        "twice the thickness of the bar,",
        bar.thickness().multiply(2),
        "a link hangs in either end; make it longer");
  }

  /**
   * A chain of so many links.
   *
   * @param link each of them, butted, welded or lapped
   * @param links how many, 1 to 100 000
   * @return the chain
   * @throws IllegalArgumentException if the count is out of range, or a link does not pass through
   *     the next
   */
  public static Chain of(Link link, int links) {
    return new Chain(Objects.requireNonNull(link, "link"), links);
  }

  /**
   * The chain of the fewest links that is at least so long.
   *
   * @param length over all, pulled straight, more than zero
   * @param link each of them, butted, welded or lapped
   * @return the chain, of 1 link or more
   * @throws IllegalArgumentException if the length is not more than zero, takes more than 100 000
   *     links, or a link does not pass through the next
   */
  public static Chain reaching(Quantity<Length> length, Link link) {
    Measure<Length> wanted = Arguments.positive("length", length);
    Chain most = of(link, MOST);
    if (!most.reaches(wanted)) {
      throw new IllegalArgumentException(
          "length must be at most the "
              + most.length()
              + " of "
              + MOST
              + " links, was "
              + wanted
              + "; take longer links");
    }
    Chain one = of(link, 1);
    double beyond = wanted.subtract(one.length()).ratio(one.pitch());
    // A quotient at a whole number may miss it by its last bit: the length itself decides.
    int links = Math.max(1, (int) Math.floor(beyond));
    while (!of(link, links).reaches(wanted)) {
      links++;
    }
    return of(link, links);
  }

  private boolean reaches(Measure<Length> wanted) {
    Measure<Length> own = length();
    return !own.isLessThan(wanted) || own.isEquivalentTo(wanted);
  }

  /** {@return one of its links} */
  public Link link() {
    return link;
  }

  /** {@return how many links it has} */
  public int links() {
    return links;
  }

  /** {@return from a link to the next, pulled straight: the inside length of one} */
  public Measure<Length> pitch() {
    return link.insideLength();
  }

  /**
   * The length over all of its links, pulled straight.
   *
   * @return n p + 2 t, exact, in the unit of the link's length
   */
  public Measure<Length> length() {
    return pitch().withValue(length(Notes.NONE));
  }

  /** {@return the width of a link over all, exact} */
  public Measure<Length> outsideWidth() {
    return link.insideWidth().add(link.section().thickness().multiply(2));
  }

  /** {@return what a link is wider inside than the bar that passes through it, exact} */
  public Measure<Length> clearance() {
    return link.insideWidth().subtract(link.section().width());
  }

  /** {@return how the length was found} */
  public Working working() {
    return Notes.taken("length of a chain pulled straight", pitch().getUnit(), this::length)
        .withSource(PULLED)
        .withCautions(cautions());
  }

  /** {@return cautions of the link, and one if it leaves the next little room} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>(link.cautions());
    Measure<Length> free = link.section().width().multiply(FREE);
    if (link.insideWidth().isLessThan(free) && !link.insideWidth().isEquivalentTo(free)) {
      cautions.add(
          Caution.limit(
              "a link is "
                  + link.insideWidth()
                  + " wide inside, less than the "
                  + free
                  + " that short link chain has: it may bind or kink",
              ChainPattern.SHORT_LINK.source()));
    }
    return List.copyOf(cautions);
  }

  private double length(Notes n) {
    double k = n.number("n", "links", "", links);
    double p = n.given("p", "inside length of a link, the pitch", pitch().getValue());
    double t =
        n.given("t", "thickness of the bar", link.section().thickness().in(pitch().getUnit()));
    return n.length("L", "length over all", "n p + 2 t", k * p + 2 * t);
  }

  /** How many links, how long, and what they are. */
  @Override
  public String toString() {
    return "chain of " + (links == 1 ? "1 link, " : links + " links, ") + length() + "\n  " + link;
  }
}
