package org.hammerscale.hinge;

import javax.measure.quantity.Length;
import org.hammerscale.internal.ShopRules;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;

/**
 * Puts the edges of all knuckles on the marks of a rule, both leaves together. Every joint gets the
 * least number of marks that is not less than the gap asked for; the knuckles share the rest, each
 * edge at the mark nearest to where it would then be. Rounding each slot by itself would close some
 * joints and open others.
 */
final class KnuckleMarks {
  private final Knuckles asked;
  private final Graduation<Length> rule;
  private final Measure<Length> joint;

  private KnuckleMarks(Knuckles asked, Graduation<Length> rule) {
    this.asked = asked;
    this.rule = rule;
    this.joint = rule.upTo(asked.gap());
  }

  /** The same knuckles with their edges on marks. */
  static Knuckles of(Knuckles asked, Graduation<Length> rule) {
    KnuckleMarks marks = new KnuckleMarks(asked, rule);
    double[] lengths = marks.lengths();
    if (!marks.hold(lengths)) {
      throw new IllegalArgumentException(
          "rule must be fine enough for "
              + asked.count()
              + " knuckles across "
              + asked.width()
              + " with gaps of "
              + asked.gap()
              + ", was "
              + rule
              + "; "
              + marks.advice());
    }
    return asked.marked(lengths, marks.joint);
  }

  /** The lengths on the marks; the last one ends at the edge, be that on a mark or not. */
  private double[] lengths() {
    int count = asked.count();
    double shared = value(asked.width()) - (count - 1) * value(joint);
    double[] lengths = new double[count];
    double ideal = 0;
    double start = 0;
    for (int number = 1; number < count; number++) {
      ideal += shared * asked.share(number);
      double end = end(ideal + (number - 1) * value(joint), number);
      lengths[number - 1] = end - start;
      start = end + value(joint);
    }
    lengths[count - 1] = value(asked.width()) - start;
    return lengths;
  }

  /**
   * The mark of a knuckle's end. Half-way between two it goes from the nearer edge of the leaf, so
   * that a division which is alike from both edges stays so.
   */
  private double end(double ideal, int number) {
    Measure<Length> width = asked.width();
    if (2 * number <= asked.count() || !rule.isOnMark(width)) {
      return value(rule.nearest(width.withValue(ideal)));
    }
    double fromFarEdge = value(width) - ideal - value(joint);
    return value(width) - value(rule.nearest(width.withValue(fromFarEdge))) - value(joint);
  }

  /** Whether every knuckle is left at least a mark of length. */
  private boolean hold(double[] lengths) {
    double least = value(rule.step()) * (1 - 1e-9);
    for (double length : lengths) {
      if (!(length >= least)) {
        return false;
      }
    }
    return true;
  }

  private String advice() {
    for (Graduation<Length> finer : ShopRules.finerThan(rule)) {
      KnuckleMarks marks = new KnuckleMarks(asked, finer);
      if (marks.hold(marks.lengths())) {
        return "take " + finer + ", the coarsest that holds them";
      }
    }
    return "make fewer knuckles, or close the gaps";
  }

  private double value(Measure<Length> length) {
    return length.in(asked.width().getUnit());
  }
}
