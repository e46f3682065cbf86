package org.hammerscale.internal;

import java.util.List;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.ShopUnits;

/** What smiths' rules are divided into: where one is too coarse, the next to be tried. */
public final class ShopRules {
  private static final List<Graduation<Length>> INCH =
      List.of(
          Graduation.HALF,
          Graduation.QUARTER,
          Graduation.EIGHTH,
          Graduation.SIXTEENTH,
          Graduation.THIRTY_SECOND,
          Graduation.SIXTY_FOURTH);
  private static final List<Graduation<Length>> METRIC =
      List.of(Graduation.MILLIMETRE, Graduation.HALF_MILLIMETRE, Graduation.TENTH_MILLIMETRE);

  private ShopRules() {}

  /**
   * The finer ones of the same system, inches or millimetres.
   *
   * @param rule any
   * @return the rules, coarse to fine; none if there is no finer one in a shop
   */
  public static List<Graduation<Length>> finerThan(Graduation<Length> rule) {
    boolean inches = rule.step().getUnit().equals(ShopUnits.INCH);
    return (inches ? INCH : METRIC)
        .stream().filter(finer -> finer.step().isLessThan(rule.step())).toList();
  }
}
