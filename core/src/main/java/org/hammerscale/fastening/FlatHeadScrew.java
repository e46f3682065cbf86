package org.hammerscale.fastening;

import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.jspecify.annotations.Nullable;

/** What countersunk wood screws share: each is told by its kind and the diameter of its shank. */
abstract class FlatHeadScrew implements WoodFastener, CountersunkHead {
  private final Unit<Length> unit;

  FlatHeadScrew(Unit<Length> unit) {
    this.unit = unit;
  }

  /** The diameter of its shank, in its unit. */
  abstract double diameter(Notes n);

  /** The hole through the iron, in its unit. */
  abstract double hole(Notes n);

  @Override
  public final Kind kind() {
    return Kind.WOOD_SCREW;
  }

  @Override
  public final Measure<Length> diameter() {
    return Measure.of(diameter(Notes.NONE), unit);
  }

  @Override
  public final Measure<Length> clearanceHole() {
    return Measure.of(hole(Notes.NONE), unit);
  }

  final Measure<Length> twoThirds() {
    return diameter().multiply(2).divide(3);
  }

  @Override
  public final boolean equals(@Nullable Object other) {
    return other instanceof FlatHeadScrew that
        && getClass() == that.getClass()
        && diameter().equals(that.diameter());
  }

  @Override
  public final int hashCode() {
    return diameter().hashCode();
  }
}
