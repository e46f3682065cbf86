package org.hammerscale.stock;

import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * What a section's shape makes of its two sizes. A flat has a width and a thickness, a tube an
 * outside and a wall; all others have one size, given twice.
 *
 * <p>Every shape but the flat and the half round encloses a circle of its size d that touches all
 * its sides. Such a shape fills a share f of the square of that side: its area is f d² and its
 * perimeter 4 f d.
 */
enum Shape {
  FLAT("flat", 1),
  SQUARE("square", 1),
  ROUND("round", Math.PI / 4),
  OCTAGON("octagon", 2 * (Math.sqrt(2) - 1)),
  HEXAGON("hexagon", Math.sqrt(3) / 2) {
    @Override
    Measure<Length> width(Measure<Length> acrossFlats) {
      return acrossFlats.multiply(2 / Math.sqrt(3));
    }
  },
  HALF_ROUND("half round", Math.PI / 8) {
    @Override
    Measure<Length> thickness(Measure<Length> first, Measure<Length> second) {
      return first.divide(2);
    }

    @Override
    Measure<Length> toCentre(Measure<Length> first, Measure<Length> second) {
      return first.multiply(2 / (3 * Math.PI));
    }

    @Override
    Measure<Length> perimeter(Measure<Length> first, Measure<Length> second) {
      return first.multiply(1 + Math.PI / 2);
    }
  },
  ROUND_TUBE("round tube", Math.PI / 4) {
    @Override
    Measure<Length> thickness(Measure<Length> outside, Measure<Length> wall) {
      return outside;
    }
  },
  SQUARE_TUBE("square tube", 1) {
    @Override
    Measure<Length> thickness(Measure<Length> outside, Measure<Length> wall) {
      return outside;
    }
  };

  private final String word;
  private final double fill;

  Shape(String word, double fill) {
    this.word = word;
    this.fill = fill;
  }

  /** The size along the axis that it bends about. */
  Measure<Length> width(Measure<Length> first) {
    return first;
  }

  /** The size across the bend. */
  Measure<Length> thickness(Measure<Length> first, Measure<Length> second) {
    return second;
  }

  /** From the face that it lies on to the centre of its area. */
  Measure<Length> toCentre(Measure<Length> first, Measure<Length> second) {
    return thickness(first, second).divide(2);
  }

  /** The metal, in the square of the first size's unit. */
  final Measure<Area> area(Measure<Length> first, Measure<Length> second) {
    if (isTube()) { // outside less inside: f (D² − (D − 2 t)²) = 4 f t (D − t)
      return Measures.area(first.subtract(second), second).multiply(4 * fill);
    }
    Measure<Area> box = Measures.area(first, second);
    return fill == 1 ? box : box.multiply(fill);
  }

  /** The way round the outside. */
  Measure<Length> perimeter(Measure<Length> first, Measure<Length> second) {
    return first.add(thickness(first, second)).multiply(2 * fill);
  }

  boolean isTube() {
    return this == ROUND_TUBE || this == SQUARE_TUBE;
  }

  /** Flats and squares are one family, since a straight taper leads from one to the other. */
  boolean isSimilarTo(Shape other) {
    return family() == other.family();
  }

  String print(Measure<Length> first, Measure<Length> second) {
    return this == FLAT || isTube() ? first + " × " + second + " " + word : first + " " + word;
  }

  private Shape family() {
    return this == SQUARE ? FLAT : this;
  }
}
