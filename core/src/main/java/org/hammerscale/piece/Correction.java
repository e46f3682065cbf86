package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/**
 * What each feature of a piece takes once its log has corrected the book. A trim is one total for
 * all features of its side: the layout has them err together, so each moves by its part of the
 * spread; where all are exact, by its part of the bar that is worked.
 */
final class Correction {
  private final List<Estimate<Length>> taken;
  private final List<Measure<Length>> shifts;

  private Correction(List<Estimate<Length>> taken, List<Measure<Length>> shifts) {
    this.taken = taken;
    this.shifts = shifts;
  }

  static Correction of(Layout book, TrialLog log) {
    int features = book.piece().features().size();
    List<Estimate<Length>> taken = new ArrayList<>(features);
    List<Measure<Length>> shifts = new ArrayList<>(features);
    for (int i = 0; i < features; i++) {
      taken.add(Taking.together(book.stock(i), book.allowance(i)));
      shifts.add(book.nothing().likely());
    }
    for (EndTrials each : log.ends()) {
      if (each.count() > 0) {
        share(book, each, taken, shifts);
      }
    }
    return new Correction(List.copyOf(taken), List.copyOf(shifts));
  }

  private static void share(
      Layout book, EndTrials trials, List<Estimate<Length>> taken, List<Measure<Length>> shifts) {
    Taking side = Taking.of(book, trials.end());
    Unit<Length> unit = book.nothing().likely().getUnit();
    Estimate<Length> next = trials.next();
    Measure<Length> shift = next.likely().subtract(trials.book().likely());
    double[] weights = weights(book, side, taken);
    double all = 0;
    for (double weight : weights) {
      all += weight;
    }
    for (int i = 0; i < weights.length; i++) {
      int place = side.index(i);
      double part = weights[i] / all;
      Measure<Length> likely = taken.get(place).likely().add(shift.multiply(part));
      double below = part * (next.likely().in(unit) - next.low().in(unit));
      double above = part * (next.high().in(unit) - next.likely().in(unit));
      shifts.set(place, shift.multiply(part));
      taken.set(
          place,
          Estimate.of(
              likely.withValue(likely.in(unit) - below),
              likely,
              likely.withValue(likely.in(unit) + above)));
    }
  }

  private static double[] weights(Layout book, Taking side, List<Estimate<Length>> taken) {
    Unit<Length> unit = book.nothing().likely().getUnit();
    double[] spread = new double[side.count()];
    double[] worked = new double[side.count()];
    double[] bar = new double[side.count()];
    for (int i = 0; i < spread.length; i++) {
      Estimate<Length> each = taken.get(side.index(i));
      bar[i] = each.likely().in(unit);
      spread[i] = each.high().in(unit) - each.low().in(unit);
      worked[i] = book.piece().changesLength(side.index(i) + 1) ? bar[i] : 0;
    }
    if (isSome(spread)) {
      return spread;
    } else if (isSome(worked)) {
      return worked;
    } else if (!isSome(bar)) {
      Arrays.fill(bar, 1); // by the book the side takes nothing at all
    }
    return bar;
  }

  private static boolean isSome(double[] weights) {
    for (double weight : weights) {
      if (weight > 0) {
        return true;
      }
    }
    return false;
  }

  /** What a feature takes in all, hand and fire. */
  Estimate<Length> taken(int index) {
    return taken.get(index);
  }

  /** By how much the trials move it from the book. */
  Measure<Length> shift(int index) {
    return shifts.get(index);
  }
}
