package org.hammerscale.spacing;

import static org.hammerscale.units.Measures.inches;

import java.util.Random;
import java.util.function.DoubleFunction;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/**
 * The unit in which a trial row's whole numbers are told: halves, thirds, sevenths, tenths of an
 * inch, whole or odd millimetres, and the same length now in inches, now in millimetres.
 */
record TrialUnit(double millimetres, DoubleFunction<Measure<Length>> lengths) {
  static TrialUnit any(Random random) {
    double inch = 1 / new double[] {2, 3, 7, 10}[random.nextInt(4)];
    double millimetre = new double[] {1, 0.5, 12.7, 25.4 * inch}[random.nextInt(4)];
    return switch (random.nextInt(3)) {
      case 0 -> new TrialUnit(25.4 * inch, x -> inches(x * inch));
      case 1 -> new TrialUnit(millimetre, x -> Measures.millimetres(x * millimetre));
      default ->
          new TrialUnit(
              25.4 * inch,
              x ->
                  random.nextBoolean()
                      ? inches(x * inch)
                      : Measures.millimetres(x * (25.4 * inch)));
    };
  }

  static TrialUnit whole() {
    return new TrialUnit(1, x -> Measures.millimetres(x));
  }

  Measure<Length> of(double x) {
    return lengths.apply(x);
  }

  /** A length in the row's numbers. */
  double number(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE) / millimetres;
  }

  double[] positions(HoleLayout layout) {
    return layout.positions().stream().mapToDouble(this::number).toArray();
  }
}
