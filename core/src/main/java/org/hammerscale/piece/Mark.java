package org.hammerscale.piece;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * A centre-punch mark on the cold bar: where one feature's stock ends and the next one's begins.
 */
public final class Mark {
  private final Estimate<Length> position;
  private final Feature before;
  private final @Nullable Feature after;

  Mark(Estimate<Length> position, Feature before, @Nullable Feature after) {
    this.position = position;
    this.before = before;
    this.after = after;
  }

  /** This mark further along the bar; as it is if by nothing. */
  Mark movedBy(Estimate<Length> allowance) {
    return allowance.isExact() && allowance.likely().getValue() == 0
        ? this
        : new Mark(position.addIndependent(allowance), before, after);
  }

  /** This mark elsewhere, spread as what lies before it. */
  Mark at(Measure<Length> likely, Estimate<Length> taken) {
    Measure<Length> below = taken.likely().subtract(taken.low());
    Measure<Length> above = taken.high().subtract(taken.likely());
    return new Mark(Estimate.of(likely.subtract(below), likely, likely.add(above)), before, after);
  }

  /** {@return the distance from the marked end of the bar, in the bar's unit} */
  public Estimate<Length> position() {
    return position;
  }

  /** {@return what the mark divides, such as {@code rolled barrel | plain stretch}} */
  public String label() {
    return before.name() + " | " + (after == null ? "cut" : after.name());
  }

  /** {@return whether the bar is cut here} */
  public boolean isCut() {
    return after == null;
  }

  /** Position and label. */
  @Override
  public String toString() {
    return position + ": " + label();
  }
}
