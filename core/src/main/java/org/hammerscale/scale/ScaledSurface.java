package org.hammerscale.scale;

import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;

/** The surface that scales: the outside, and the inside of a tube. */
final class ScaledSurface {
  private static final Section HEXAGON = Section.hexagon(Measures.millimetres(1));

  private ScaledSurface() {}

  /** The way round what is bare, in a unit; at the point of a tube nothing is left of its wall. */
  static double perimeter(Section section, Unit<Length> unit) {
    double outside = section.perimeter().in(unit);
    return section.isTube() && outside > 0
        ? outside * (2 - 2 * section.wall().ratio(section.width()))
        : outside;
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

  /** Whether a feature begins and ends in the bar's own section, and so comes out thinner. */
  static boolean keepsSection(Bar bar, Feature feature) {
    return feature.start().meets(bar.section()) && feature.end().meets(bar.section());
  }

  /** The surface of a feature, the mean of before and after the work, in the bar's unit squared. */
  static double of(Notes n, Bar bar, Feature feature) {
    Section parent = bar.section();
    Unit<Length> unit = parent.width().getUnit();
    Unit<Volume> cube = Measures.volume(parent.width(), parent.area()).getUnit();
    double p = n.given("p", "way round the bar", perimeter(parent, unit));
    double g =
        n.given("g", "bar used by the " + feature.name(), feature.stock(parent).likely().in(unit));
    double v = n.volume("V", "metal it keeps", "", feature.metalKept().likely().in(cube));
    double q =
        n.number(
            "q",
            "surface of the finished stretch over its volume",
            "",
            perVolume(feature.start(), feature.end(), unit));
    return n.area(
        "b", "surface, the mean of before and after", "(p g + q V) / 2", (p * g + q * v) / 2);
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
