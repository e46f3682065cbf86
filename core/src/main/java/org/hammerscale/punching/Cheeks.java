package org.hammerscale.punching;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** The bar on both sides of an opening of a given width: (w − p)/2, less or plus the offset. */
final class Cheeks {
  private final Section section;
  private final Measure<Length> opening;
  private final Measure<Length> offset;

  private Cheeks(Section section, Measure<Length> opening, Measure<Length> offset) {
    this.section = section;
    this.opening = opening;
    this.offset = offset;
  }

  /** Beside an opening in the middle of the bar; its width may be zero. */
  static Cheeks beside(Measure<Length> opening, Section section) {
    if (section.isTube()) {
      throw new IllegalArgumentException(
          "section must be a solid bar, was " + section + "; drill holes in a tube");
    }
    Cheeks cheeks = new Cheeks(section, opening, section.width().withValue(0));
    if (!(cheeks.narrower().getValue() > 0)) {
      throw new IllegalArgumentException(
          "width of the hole must be less than the "
              + section.width()
              + " of the bar, was "
              + opening
              + "; take a wider bar, or slit and drift the hole");
    }
    return cheeks;
  }

  /** A bar as thick at its edges as in the middle, so that strips can be cut from it. */
  static Section flat(Section section) {
    if (!section.isSimilarTo(Section.square(section.width()))) {
      throw new IllegalArgumentException(
          "section must be a flat or square bar, was "
              + section
              + "; flatten it first and give the section it has then");
    }
    return section;
  }

  /** The same opening moved to one side. */
  Cheeks moved(Quantity<Length> newOffset) {
    Measure<Length> moved = Arguments.notNegative("offset", newOffset);
    Cheeks cheeks = new Cheeks(section, opening, moved);
    if (!(cheeks.narrower().getValue() > 0)) {
      Measure<Length> most = section.width().subtract(opening).divide(2);
      throw new IllegalArgumentException(
          "offset of the hole must be less than "
              + most
              + ", so that the bar is whole on both sides, was "
              + moved
              + "; set the hole nearer to the middle");
    }
    return cheeks;
  }

  Measure<Length> narrower() {
    return section.width().subtract(opening).divide(2).subtract(offset);
  }

  Measure<Length> wider() {
    return section.width().subtract(opening).divide(2).add(offset);
  }

  Measure<Length> offset() {
    return offset;
  }
}
