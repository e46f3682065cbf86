package org.hammerscale.heat;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** Checks times, as {@code Arguments} does lengths. */
final class Times {
  private Times() {}

  static Measure<Time> positive(String name, Quantity<Time> time) {
    Measure<Time> measure = notNegative(name, time);
    if (measure.getValue() == 0) {
      throw new IllegalArgumentException(
          name + " must be more than zero, was " + measure + "; give the time it takes");
    }
    return measure;
  }

  static Measure<Time> notNegative(String name, Quantity<Time> time) {
    Measure<Time> measure = Measure.from(time);
    if (!measure.hasDimensionOf(ShopUnits.SECOND)) {
      throw new IllegalArgumentException(
          name + " must be a time, was " + measure + "; give it in seconds or minutes");
    }
    if (measure.getValue() < 0) {
      throw new IllegalArgumentException(
          name + " must not be negative, was " + measure + "; give zero if there is none");
    }
    return measure;
  }
}
