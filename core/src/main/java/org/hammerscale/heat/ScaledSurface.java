package org.hammerscale.heat;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/** The surface that scales: the outside, and the inside of a tube. */
final class ScaledSurface {
  private static final Section HEXAGON = Section.hexagon(Measures.millimetres(1));

  private ScaledSurface() {}

  /** The way round what is bare, in a unit. */
  static double perimeter(Section section, Unit<Length> unit) {
    double outside = section.perimeter().in(unit);
    return section.isTube() ? outside * (2 - 2 * section.wall().ratio(section.width())) : outside;
  }

  static double area(Section section, Unit<Length> unit) {
    return section.area().in(square(unit));
  }

  /**
   * The surface of a stretch for each volume of it, from one section to another: on a straight
   * taper the middle's way round over the mean area of the prismoidal formula, else the means of
   * both ends.
   */
  static double perVolume(Section start, Section end, Unit<Length> unit) {
    double around = perimeter(start, unit) + perimeter(end, unit);
    double area = area(start, unit) + area(end, unit);
    if (start.isSimilarTo(end)) {
      Section middle = start.halfwayTo(end);
      around = 6 * perimeter(middle, unit);
      area += 4 * area(middle, unit);
    }
    return area == 0 ? 0 : around / area;
  }

  /** How much of a layer's thickness the width loses on one side: more across corners. */
  static double acrossWidth(Section section) {
    return section.isSimilarTo(HEXAGON) ? 2 / Math.sqrt(3) : 1;
  }

  private static Unit<Area> square(Unit<Length> unit) {
    Measure<Length> one = Measure.of(1, unit);
    return Measures.area(one, one).getUnit();
  }
}
