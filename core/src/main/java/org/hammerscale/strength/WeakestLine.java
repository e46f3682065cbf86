package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.fastening.IronHole;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/**
 * The line from edge to edge through holes that leaves the least of a strap. For each hole, from
 * one edge to the other, the weakest line that ends there is the weakest one to a hole before it,
 * or none, and the step from there: so every line is weighed without listing them.
 */
final class WeakestLine {
  /** Of the strap's width: what the same place differs by when it is told in two units. */
  private static final double SAME_PLACE = 1e-9;

  private WeakestLine() {}

  /** Whether a hole lies beside another, farther across, and not behind it. */
  static boolean isBeside(IronHole hole, IronHole other, Section strap) {
    Unit<Length> unit = strap.width().getUnit();
    return hole.offset().in(unit) - other.offset().in(unit) > SAME_PLACE * strap.width().getValue();
  }

  /** The holes of the line; none if no hole takes anything. */
  static List<IronHole> of(Section strap, List<IronHole> sorted, Measure<Length> extra) {
    Unit<Length> unit = strap.width().getUnit();
    double whole = strap.width().getValue();
    double[] left = new double[sorted.size()];
    int[] before = new int[sorted.size()];
    Arrays.fill(before, -1);
    int last = -1;
    double least = whole;
    for (int j = 0; j < sorted.size(); j++) {
      IronHole hole = sorted.get(j);
      double best = whole;
      for (int i = 0; i < j; i++) {
        double g = hole.offset().in(unit) - sorted.get(i).offset().in(unit);
        double s = hole.along().in(unit) - sorted.get(i).along().in(unit);
        if (isBeside(hole, sorted.get(i), strap) && left[i] + s * s / (4 * g) < best) {
          best = left[i] + s * s / (4 * g);
          before[j] = i;
        }
      }
      double taken = hole.widthTaken().in(unit);
      left[j] = best - (taken > 0 ? taken + extra.in(unit) : 0);
      if (left[j] < least) {
        least = left[j];
        last = j;
      }
    }
    List<IronHole> line = new ArrayList<>();
    for (int j = last; j >= 0; j = before[j]) {
      line.add(0, sorted.get(j));
    }
    return List.copyOf(line);
  }
}
