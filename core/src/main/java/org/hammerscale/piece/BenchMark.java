package org.hammerscale.piece;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Measure;

/** A centre-punch mark on a rule, told from the reference mark towards one end of the bar. */
public final class BenchMark {
  private final PieceEnd towards;
  private final Measure<Length> distance;
  private final Measure<Length> fromFirstEnd;
  private final Mark mark;
  private final Optional<Feature> mover;

  BenchMark(
      PieceEnd towards,
      Measure<Length> distance,
      Measure<Length> fromFirstEnd,
      Mark mark,
      Optional<Feature> mover) {
    this.towards = towards;
    this.distance = distance;
    this.fromFirstEnd = fromFirstEnd;
    this.mark = mark;
    this.mover = mover;
  }

  /** {@return the end towards which it lies from the reference mark} */
  public PieceEnd towards() {
    return towards;
  }

  /** {@return its distance from the reference mark, on the rule; zero for that mark itself} */
  public Measure<Length> fromReference() {
    return distance;
  }

  /** {@return its distance from the first end of the cut bar, on the rule} */
  public Measure<Length> fromFirstEnd() {
    return fromFirstEnd;
  }

  /** {@return what the mark divides, such as {@code rolled barrel | plain stretch}} */
  public String label() {
    return mark.label();
  }

  /** {@return whether it is the reference mark} */
  public boolean isReference() {
    return distance.getValue() == 0;
  }

  /**
   * The first feature between the reference mark and this one whose working moves it: until then
   * its distance holds. Afterwards the stretches beyond it are measured from where that feature
   * ends.
   *
   * @return the feature; empty if the mark holds to the last
   */
  public Optional<Feature> movedBy() {
    return mover;
  }

  /** Distance, end and label. */
  @Override
  public String toString() {
    return isReference()
        ? "reference, " + label()
        : distance + " towards the " + towards + ": " + label();
  }
}
