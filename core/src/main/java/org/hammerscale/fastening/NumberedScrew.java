package org.hammerscale.fastening;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/** What wood screws by number share: shank and hole follow from the number, in inches. */
abstract class NumberedScrew implements WoodFastener, CountersunkHead {
  private final int number;

  NumberedScrew(int number, int last, String thicker) {
    if (number < 0 || number > last) {
      throw new IllegalArgumentException(
          "number must be from 0 to "
              + last
              + ", was "
              + number
              + "; take a "
              + thicker
              + " for a thicker one");
    }
    this.number = number;
  }

  /** Notes the number and gives the diameter of the shank. */
  abstract double shank(Notes n);

  /** Notes and gives the hole through the iron. */
  abstract double hole(Notes n);

  /** Where the rule of the shank comes from. */
  abstract Source rule();

  /** What the series calls itself before a number. */
  abstract String series();

  /** {@return its number n} */
  public final int number() {
    return number;
  }

  @Override
  public final Kind kind() {
    return Kind.WOOD_SCREW;
  }

  @Override
  public final Measure<Length> diameter() {
    return Measures.inches(shank(Notes.NONE));
  }

  /**
   * The drill for the hole through the iron: of an American screw the first of the 1/64 in series
   * that passes the shank, of an old British one (n + 3)/64 in, or the next where that does not
   * pass the shank.
   *
   * @return the hole, in inches, on a sixty-fourth
   */
  @Override
  public final Measure<Length> clearanceHole() {
    return Measures.inches(hole(Notes.NONE));
  }

  /** {@return two thirds of the shank, the handbook's average for the root of a thread} */
  final Measure<Length> twoThirdsOfShank() {
    return diameter().multiply(2).divide(3);
  }

  /** {@return how the diameter follows from the number} */
  public final Working working() {
    return Notes.taken(series() + "wood screw no. " + number, ShopUnits.INCH, this::shank)
        .withSource(rule());
  }

  /** {@return how the hole through the iron follows from the number} */
  public Working holeWorking() {
    return Notes.taken(
            "hole in the iron for " + series() + "no. " + number, ShopUnits.INCH, this::hole)
        .withSource(rule());
  }

  /** Same series and number. */
  @Override
  public final boolean equals(@Nullable Object other) {
    return other instanceof NumberedScrew screw
        && number == screw.number
        && series().equals(screw.series());
  }

  @Override
  public final int hashCode() {
    return number;
  }

  /** Number and diameter. */
  @Override
  public final String toString() {
    return series() + "no. " + number + " wood screw, " + diameter();
  }
}
