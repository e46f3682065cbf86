package org.hammerscale.fastening;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Head;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A nail driven through iron, board and ledge, whose point is bent over and driven back into the
 * wood: {@index clench} (GB), {@index clinch} (US). Its length under the head is what it goes
 * through and the clench: L = G + c, with c about 1/4 in unless another is chosen.
 *
 * <pre>{@code
 * Section shank = Section.square(inches("3/16"));
 * ClenchedNail bare = ClenchedNail.of(shank).through(inches("3/16"));
 * ClenchedNail nail = bare.through(inches(1)).through(inches("3/4"));
 * nail.length()  // 2 3/16 in  under the head: strap, board, ledge and what is bent over
 * nail.withClench(inches("1/2")).length()  // 2 7/16 in  with twice as much bent over
 * nail.barForShank()  // 2 33/64 in (2 15/32 in to 2 9/16 in)  bar of the shank's size for shank and head
 * }</pre>
 *
 * <p>The length is exact as a sum; the clench is a rule. In a comparison by the Forest Products
 * Laboratory of 1948 clenched nails held 45 % to 464 % more than unclenched ones, after species and
 * moisture, and about a fifth more clenched across the grain than along: clench across. Drive the
 * point on to an anvil, or bend it round a rod so that it enters the wood again.
 *
 * <p>Source: Lost Art Press, 22 March 2009 (read), for the clench and what it holds.
 */
public final class ClenchedNail extends DrivenShank {
  private static final Source CLENCH =
      Source.read("Lost Art Press", "22 March 2009: about 1/4 in through the second board");
  private static final Source BENDS =
      Source.commonPractice("a point of two thicknesses at least can be bent over");
  private static final Measure<Length> QUARTER = Measures.inches(1 / 4d);

  private final Layers layers;
  private final Measure<Length> clench;

  private ClenchedNail(Section shank, Layers layers, Measure<Length> clench) {
    super(shank);
    this.layers = layers;
    this.clench = clench;
  }

  /**
   * A nail of a section, with 1/4 in to clench.
   *
   * @param shank its section below the head, square or round
   * @return the nail, through nothing yet
   * @throws IllegalArgumentException if the shank is neither square nor round
   */
  public static ClenchedNail of(Section shank) {
    return new ClenchedNail(shank, Layers.NONE, QUARTER);
  }

  /**
   * The same nail through one thickness more: iron, board or ledge.
   *
   * @param thickness more than zero
   * @return the nail
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public ClenchedNail through(Quantity<Length> thickness) {
    return new ClenchedNail(shank(), layers.and(thickness), clench);
  }

  /**
   * The same nail with another length to clench.
   *
   * @param length that comes through, more than zero
   * @return the nail
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public ClenchedNail withClench(Quantity<Length> length) {
    return new ClenchedNail(shank(), layers, Arguments.positive("length", length));
  }

  /**
   * The thickness of all that it goes through.
   *
   * @return the sum, in the first thickness's unit
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Measure<Length> grip() {
    return layers.grip();
  }

  /**
   * The length under the head: L = G + c.
   *
   * @return the length, exact as a sum, in the first thickness's unit
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Measure<Length> length() {
    return Measure.of(length(Notes.NONE), layers.unit());
  }

  /**
   * The bar of its own section that shank and rose head take: the length, and 1 1/2 to 2
   * thicknesses for the head. A long point drawn out of the shank takes less bar than its length.
   *
   * @return the length of bar, an estimate for the head, in the first thickness's unit
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Estimate<Length> barForShank() {
    return Head.nail(shank()).stock(shank()).to(layers.unit()).add(length());
  }

  /**
   * The least that must come through for a clench that counts in double shear: three thicknesses,
   * for nails up to about 0.148 in.
   *
   * @return 3 D, in the shank's unit. Source: American Wood Council on the 2001 NDS, read
   */
  public Measure<Length> leastClench() {
    return diameter().multiply(3);
  }

  /** {@return a caution if less comes through than can be bent over} */
  public List<Caution> cautions() {
    return clench.isLessThan(diameter().multiply(2))
        ? List.of(
            Caution.limit(
                "only "
                    + clench
                    + " comes through, less than two thicknesses of the nail ("
                    + diameter()
                    + "): it is too stiff to bend over; leave more with withClench",
                BENDS))
        : List.of();
  }

  /**
   * How the length was found.
   *
   * @return the working of {@link #length}
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Working working() {
    return Notes.taken("clenched nail", layers.unit(), this::length)
        .withSource(CLENCH)
        .withCautions(cautions());
  }

  private double length(Notes n) {
    Unit<Length> unit = layers.unit();
    double g = layers.grip(n);
    double c = n.given("c", "clench", clench.in(unit));
    return n.length("L", "length under the head", "G + c", g + c);
  }

  /** Its shank. */
  @Override
  public String toString() {
    return shank() + " nail, clenched";
  }
}
