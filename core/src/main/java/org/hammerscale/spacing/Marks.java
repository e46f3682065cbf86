package org.hammerscale.spacing;

import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * The marks of a rule along a line, in bare numbers of the line's unit. A value that noise parts
 * from a mark lies on it.
 */
final class Marks {
  private final Graduation<Length> rule;
  private final Measure<Length> slack;
  private final @Nullable Marks image;
  private final double sum;
  private final double half;

  private Marks(Graduation<Length> rule, Measure<Length> slack, @Nullable Marks image, double sum) {
    this.rule = rule;
    this.slack = slack;
    this.image = image;
    this.sum = sum;
    this.half = rule.step().in(slack.getUnit()) / 2;
  }

  /** A rule with its zero on the pin centre; the slack is in the line's unit. */
  static Marks of(Graduation<Length> rule, Measure<Length> slack) {
    return new Marks(rule, slack, null, 0);
  }

  /** The first mark not before a place. */
  double up(double x) {
    if (image != null) {
      return sum - image.down(sum - x);
    }
    double mark = rule.upTo(slack.withValue(x - slack.getValue())).getValue();
    // The rule's own idea of noise is wider than ours.
    return mark < x - slack.getValue() ? rule.upTo(slack.withValue(x + half)).getValue() : mark;
  }

  /** The last mark not beyond a place. */
  double down(double x) {
    if (image != null) {
      return sum - image.up(sum - x);
    }
    double mark = rule.downTo(slack.withValue(x + slack.getValue())).getValue();
    return mark > x + slack.getValue() ? rule.downTo(slack.withValue(x - half)).getValue() : mark;
  }

  /** Whether there is a mark at a place. */
  boolean has(double x) {
    return Math.abs(up(x) - x) <= slack.getValue();
  }

  /** The marks looked at from the other side: x becomes sum − x. */
  Marks mirrored(double newSum) {
    return new Marks(rule, slack, this, newSum);
  }
}
