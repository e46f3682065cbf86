package org.hammerscale.cutting;

import java.math.BigDecimal;

/**
 * How far a plan reaches in one aim, and what no plan can surpass: no plan that is as good in all
 * earlier aims reaches more than the bound. Lengths are numbers in the unit of the list's rule.
 */
public final class Reached {
  private final Aim aim;
  private final BigDecimal value;
  private final BigDecimal bound;
  private final String unit;

  Reached(Aim aim, BigDecimal value, BigDecimal bound, String unit) {
    this.aim = aim;
    this.value = value;
    this.bound = bound;
    this.unit = unit;
  }

  /** {@return the aim} */
  public Aim aim() {
    return aim;
  }

  /** {@return what the plan reaches, exact} */
  public BigDecimal value() {
    return value;
  }

  /** {@return the best that any plan might reach, proved in whole numbers} */
  public BigDecimal bound() {
    return bound;
  }

  /** {@return whether no plan is better in this aim} */
  public boolean isProven() {
    return value.compareTo(bound) == 0;
  }

  /**
   * What might be missed.
   *
   * @return the distance from value to bound as a share of the greater of the two; 0 if proved
   */
  public double gap() {
    BigDecimal greater = value.max(bound);
    return isProven() ? 0 : value.subtract(bound).abs().doubleValue() / greater.doubleValue();
  }

  /** Value, and whether it is proved. */
  @Override
  public String toString() {
    boolean most = aim == Aim.LONGEST_LEFTOVER;
    return aim
        + " "
        + value.toPlainString()
        + unit
        + (isProven()
            ? ", proven"
            : (most ? ", at most " : ", at least ") + bound.toPlainString() + unit);
  }
}
