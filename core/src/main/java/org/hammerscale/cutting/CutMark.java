package org.hammerscale.cutting;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * A piece on its bar: between which marks it lies, measured from the end of the bar before that is
 * trimmed. The saw cuts beyond its {@link #end() end}. Exact, on the marks of the list's rule.
 */
public final class CutMark {
  private final Counting counting;
  private final String name;
  final int startSteps;
  final int endSteps;

  CutMark(Counting counting, String name, int startSteps, int endSteps) {
    this.counting = counting;
    this.name = name;
    this.startSteps = startSteps;
    this.endSteps = endSteps;
  }

  /** {@return what the piece is} */
  public String name() {
    return name;
  }

  /** {@return where it begins: behind the end trim, or behind the kerf of the cut before} */
  public Measure<Length> start() {
    return counting.measure(startSteps);
  }

  /** {@return where it ends and the mark is chalked, from the end of the bar} */
  public Measure<Length> end() {
    return counting.measure(endSteps);
  }

  /** {@return how long it is cut} */
  public Measure<Length> length() {
    return counting.measure(endSteps - startSteps);
  }

  boolean isLike(CutMark other) {
    return name.equals(other.name) && endSteps == other.endSteps;
  }

  /** The mark and the name behind it. */
  @Override
  public String toString() {
    return end() + " (" + name + ")";
  }
}
