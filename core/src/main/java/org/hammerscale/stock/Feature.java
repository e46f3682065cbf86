package org.hammerscale.stock;

import java.util.List;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
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

  /** {@return the section where it ends; the next feature should begin with the same} */
  Section end();

  /** {@return the metal it keeps in the finished piece} */
  Estimate<Volume> metalKept();

  /** {@return the metal it uses and does not keep; nothing unless the feature says otherwise} */
  default Losses metalLost() {
    return Losses.NONE;
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
   * The same feature the other way round: a head or a decorative end at the marked end of a piece
   * begins where it would end at the other.
   *
   * @return the feature with {@link #start} and {@link #end} exchanged
   */
  default Feature reversed() {
    return new Reversed(this);
  }
}
