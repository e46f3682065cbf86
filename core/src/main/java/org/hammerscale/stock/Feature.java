package org.hammerscale.stock;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Working;

/**
 * A stretch of a finished piece: it keeps some metal, loses some by a named cause, and reaches some
 * distance. How much parent bar it uses follows from the volume of metal, whatever the bar; so a
 * barrel rolled from a strap that was first drawn narrower comes out right by itself.
 *
 * <p>The library's operations are features. A caller's own class can be one: it gives the sections
 * where it begins and ends, the metal it keeps and loses, its reach, and a {@link Working} taken
 * with {@link org.hammerscale.working.Notes}.
 */
public interface Feature {
  /** {@return what the smith calls it, such as {@code taper}} */
  String name();

  /** {@return the section where it begins, on the side of the piece's marked end} */
  Section start();

  /**
   * The section where it ends. The next feature should begin with the same.
   *
   * @return the section where it begins, unless the feature says otherwise
   */
  default Section end() {
    return start();
  }

  /** {@return the metal it keeps in the finished piece} */
  Estimate<Volume> metalKept();

  /** {@return the metal it uses and does not keep; nothing unless the feature says otherwise} */
  default Losses metalLost() {
    return Losses.NONE;
  }

  /**
   * Whether the metal it loses already holds what the fire takes, as what was found on finished
   * pieces does. Then no scale is added for it, so that no metal is counted twice.
   *
   * @return no, unless the feature says otherwise
   */
  default boolean holdsScale() {
    return false;
  }

  /** {@return what it adds to the finished length of the piece} */
  Measure<Length> reach();

  /** {@return where a rule of it is stretched, or the work dangerous; empty if neither} */
  default List<Caution> cautions() {
    return List.of();
  }

  /** {@return how the metal it keeps, or the length that the metal follows from, was found} */
  Working working();

  /**
   * The length of parent bar it uses up: (metal kept + metal lost) ÷ area of the parent.
   *
   * @param parent the section of the bar it is forged from
   * @return the length of bar before forging; exact if the metal is. Scale is not counted
   */
  default Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    Estimate<Volume> used = metalLost().addedTo(metalKept());
    Measure<Area> area = parent.area();
    Measure<Length> likely = Measures.length(used.likely(), area);
    return used.isExact()
        ? Estimate.exact(likely)
        : Estimate.of(
            Measures.length(used.low(), area), likely, Measures.length(used.high(), area));
  }

  /**
   * When it can be cut to its length, if it stands at an end of the piece.
   *
   * @return after it is worked, unless the feature says otherwise
   */
  default Trimming trimming() {
    return Trimming.AFTER_WORK;
  }

  /**
   * The most that one may cut for it where it is trimmed before it is worked: what the book says,
   * or what the hand may need.
   *
   * @param parent the section of the bar it is forged from
   * @return the length of bar, the high end of its {@link #stock} unless the feature says otherwise
   */
  default Measure<Length> mostToCut(Section parent) {
    return stock(parent).high();
  }

  /**
   * The section that it has some way along, once it is finished: what a hole there goes through.
   *
   * @param along from where it begins, not negative and at most its {@link #reach}
   * @return the section; straight from its beginning to its end unless the feature says otherwise
   * @throws IllegalArgumentException if the distance is out of range, or the shape changes on the
   *     way and the feature does not say how
   */
  default Section sectionAt(Quantity<Length> along) {
    Measure<Length> distance = Arguments.notNegative("along", along);
    if (distance.isGreaterThan(reach()) && !distance.isEquivalentTo(reach())) {
      throw new IllegalArgumentException(
          "along must be at most the reach of "
              + reach()
              + ", was "
              + distance
              + "; ask the feature that lies there");
    }
    if (start().equals(end())) {
      return start();
    }
    double share = reach().getValue() == 0 ? 0 : distance.ratio(reach());
    return start().towards(end(), Math.min(share, 1));
  }

  /**
   * The same feature the other way round: a head or a decorative end at the marked end of a piece
   * begins where it would end at the other.
   *
   * @return the feature with {@link #start} and {@link #end} exchanged
   */
  default Feature reversed() {
    return new Reversed(this);
  }
}
