package org.hammerscale.heat;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.jspecify.annotations.Nullable;

/**
 * What cools: a section, over a length with no, one or two bare ends; a length without bare ends is
 * as good as endless. Works in metres.
 */
record Body(Section section, @Nullable Measure<Length> length, int ends) {
  private static final Section SQUARE = Section.square(Measures.metres(1));
  private static final Section SQUARE_TUBE =
      Section.squareTube(Measures.metres(1), Measures.metres(0.1));

  static Body endless(Section section) {
    return new Body(section, null, 0);
  }

  double perimeter() {
    return section.perimeter().in(ShopUnits.METRE);
  }

  /** Volume over bare surface: A / P without ends, else A L / (P L + n A). */
  double depth() {
    return noted(Notes.NONE) / 1000;
  }

  /** The same in millimetres, noted. */
  double noted(Notes n) {
    double a = n.givenArea("A", "section", section.area().in(ShopUnits.SQUARE_MILLIMETRE));
    double p = n.given("P", "way round it", section.perimeter().in(ShopUnits.MILLIMETRE));
    if (length == null) {
      return n.length("r", "metal behind its surface", "A / P", a / p);
    }
    double l = n.given("L", "hot length", length.in(ShopUnits.MILLIMETRE));
    double e = n.number("n", "bare ends", "", ends);
    return n.length("r", "metal behind its surface", "A L / (P L + n A)", a * l / (p * l + e * a));
  }

  /** Whether it has flat faces that lie and edges that stand. */
  boolean isFlat() {
    return section.isSimilarTo(SQUARE) || section.isSimilarTo(SQUARE_TUBE);
  }

  double width() {
    return section.width().in(ShopUnits.METRE);
  }

  double thickness() {
    return section.thickness().in(ShopUnits.METRE);
  }

  /** The diameter of the round of the same perimeter. */
  double diameter() {
    return perimeter() / Math.PI;
  }
}
