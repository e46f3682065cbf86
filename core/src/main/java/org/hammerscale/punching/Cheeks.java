package org.hammerscale.punching;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

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

  /** A caution if less is left beside an opening than the bar is thick; else none. */
  static List<Caution> tooNarrow(
      String opening, Measure<Length> left, Section section, String otherwise, Source rule) {
    return left.isLessThan(section.thickness().multiply(1 - Rim.SLACK))
        ? List.of(
            Caution.limit(
                "the width left beside the "
                    + opening
                    + ", "
                    + left
                    + ", is less than the bar is thick ("
                    + section.thickness()
                    + "): "
                    + otherwise,
                rule))
        : List.of();
  }

  /** The area of the bar, noted as A, in the square of a unit. */
  static double area(Notes n, Section section, Unit<Length> unit) {
    Measure<Length> one = Measure.of(1, unit);
    return n.givenArea(
        "A", "section of the bar", section.area().in(Measures.area(one, one).getUnit()));
  }

  /** The same opening moved to one side. */
  Cheeks moved(Quantity<Length> newOffset) {
    Measure<Length> moved = Arguments.notNegative("offset", newOffset);
    Cheeks cheeks = new Cheeks(section, opening, moved);
    if (!(cheeks.narrower().getValue() > 0)) {
      Measure<Length> most = section.width().subtract(opening).divide(2);
      throw new IllegalArgumentException(
          "offset must be less than "
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
