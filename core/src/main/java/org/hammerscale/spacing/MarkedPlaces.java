package org.hammerscale.spacing;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;

/**
 * The marks of a rule that holes may go to: those next to their places, as far as they lie outside
 * the keep-outs. They are single points, and a row on them is a row like any other.
 */
final class MarkedPlaces {
  private final RowPlan plan;
  private final Graduation<Length> rule;

  MarkedPlaces(RowPlan plan, Graduation<Length> rule) {
    this.plan = plan;
    this.rule = rule;
  }

  /** The layout on marks nearest to another, its least spacing kept. */
  double[] nearestTo(double[] places) {
    Places free = plan.free();
    double[] marks =
        Arrays.stream(places)
            .flatMap(this::next)
            .filter(free::contains)
            .sorted()
            .distinct()
            .toArray();
    double[] fixed = plan.sortedFixed();
    Strip strip = Strip.of(Places.points(marks, plan.slack()), places.length, fixed, plan.apart);
    double spacing = plan.least;
    if (!plan.nearest && places.length > 1) {
      Chain widest = new WidestSpacing(strip).solve();
      spacing = widest == null ? spacing : Math.max(spacing, plan.spacing(widest));
    }
    NearestPlaces nearest =
        new NearestPlaces(strip, Targets.of(places), Pace.of(spacing, plan.apart, plan.slack()));
    double reach = nearest.leastReach();
    if (Double.isNaN(reach)) {
      throw new IllegalArgumentException(
          "rule must have marks fine enough for these holes, was one of "
              + rule
              + ": no marks near the places keep the holes out of the keep-outs and "
              + plan.measure(plan.least)
              + " apart; take a finer rule, or a smaller least spacing");
    }
    return nearest.within(reach);
  }

  /** Two marks on either side of a place. */
  private DoubleStream next(double place) {
    double step = rule.step().in(plan.unit);
    return DoubleStream.of(down(place - step), down(place), up(place), up(place + step));
  }

  private double down(double place) {
    return plan.measure(place).downTo(rule).getValue();
  }

  private double up(double place) {
    return plan.measure(place).upTo(rule).getValue();
  }
}
