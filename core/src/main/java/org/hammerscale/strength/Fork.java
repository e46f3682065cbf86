package org.hammerscale.strength;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;

/**
 * The three bearings of a pin: a middle one between two cheeks, with a gap on either side. It is a
 * fork ({@index clevis}, {@index yoke}) and its tongue, or the three knuckles of a hinge.
 *
 * <pre>{@code
 * Fork fork = Fork.around(millimetres(30)).cheeks(millimetres(15)).gap(millimetres(1));
 * fork.middle()    // 30 mm
 * fork.cheek()     // 15 mm
 * fork.gap()       // 1 mm
 * }</pre>
 */
public final class Fork {
  private final Measure<Length> middle;
  private final Measure<Length> cheek;
  private final Measure<Length> gap;

  private Fork(Measure<Length> middle, Measure<Length> cheek, Measure<Length> gap) {
    this.middle = middle;
    this.cheek = cheek;
    this.gap = gap;
  }

  /**
   * A fork with cheeks of half the middle and no gap, so that all bear alike.
   *
   * @param middle the width of the middle bearing b, along the pin; more than zero
   * @return the fork
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Fork around(Quantity<Length> middle) {
    Measure<Length> width = Arguments.positive("middle", middle);
    return new Fork(width, width.divide(2), width.withValue(0));
  }

  /**
   * The same fork with other cheeks.
   *
   * @param eachCheek the width of each outer bearing a, along the pin; more than zero
   * @return the fork
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public Fork cheeks(Quantity<Length> eachCheek) {
    return new Fork(middle, Arguments.positive("each cheek", eachCheek), gap);
  }

  /**
   * The same fork with a gap.
   *
   * @param eachGap the gap on either side of the middle c, not negative
   * @return the fork
   * @throws IllegalArgumentException if the gap is negative
   */
  public Fork gap(Quantity<Length> eachGap) {
    return new Fork(middle, cheek, Arguments.notNegative("each gap", eachGap));
  }

  /** {@return the width of the middle bearing} */
  public Measure<Length> middle() {
    return middle;
  }

  /** {@return the width of each cheek} */
  public Measure<Length> cheek() {
    return cheek;
  }

  /** {@return the gap on either side of the middle} */
  public Measure<Length> gap() {
    return gap;
  }

  /** The three widths. */
  @Override
  public String toString() {
    return "fork of " + cheek + " cheeks round " + middle + ", " + gap + " gaps";
  }
}
