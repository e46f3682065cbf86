package org.hammerscale.fastening;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The specific gravity of wood on the basis of the Wood Handbook: weight when oven-dry over volume
 * at 12 % moisture, as wood is in a dry house or under a roof. Rules of the NDS want it {@linkplain
 * OvenDryGravity oven-dry}.
 *
 * <pre>{@code
 * TwelvePercentGravity.of(0.48).ovenDry()  // specific gravity 0.5062 oven-dry  for a rule of the NDS
 * }</pre>
 *
 * <p>The conversion G₀ = G₁₂ / (1 − 0.108 G₁₂) is the inverse of {@link OvenDryGravity#at12Percent}
 * and as good as that.
 */
public final class TwelvePercentGravity {
  /** What the densest wood, 1.5 oven-dry, comes to at 12 %. */
  private static final double MOST = 1.2909;

  private final double value;

  /** A converted gravity may pass the limit by a rounding. */
  TwelvePercentGravity(double value) {
    this.value = value;
  }

  /**
   * A specific gravity by the volume at 12 % moisture.
   *
   * @param value oven-dry weight ÷ volume at 12 % ÷ density of water; more than 0 and at most
   *     1.2909
   * @return the gravity
   * @throws IllegalArgumentException if the value lies outside that range
   */
  public static TwelvePercentGravity of(double value) {
    return new TwelvePercentGravity(
        Arguments.number(
            "gravity at 12 %", value, MOST, "give it as a plain number, such as 0.48"));
  }

  /** {@return the plain number G₁₂} */
  public double value() {
    return value;
  }

  /**
   * The same wood on the other basis: G₀ = G₁₂ / (1 − 0.108 G₁₂).
   *
   * @return its gravity by the oven-dry volume, by the mean relation
   */
  public OvenDryGravity ovenDry() {
    return new OvenDryGravity(converted(Notes.NONE));
  }

  /** {@return how the oven-dry gravity was found} */
  public Working working() {
    return Notes.taken("gravity at 12 % to oven-dry", ShopUnits.METRE, this::converted)
        .withSource(OvenDryGravity.CONVERSION);
  }

  private double converted(Notes n) {
    double g = n.number("G₁₂", "specific gravity at 12 %", "", value);
    return n.number(
        "G₀",
        "specific gravity, oven-dry",
        "G₁₂ / (1 − 0.108 G₁₂)",
        g / (1 - OvenDryGravity.SWELLING * g));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof TwelvePercentGravity gravity && value == gravity.value;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(value);
  }

  /** The number and its basis. */
  @Override
  public String toString() {
    return "specific gravity " + digits(value) + " at 12 %";
  }

  /** A gravity to four decimals, more than any table prints. */
  static String digits(double gravity) {
    BigDecimal rounded = BigDecimal.valueOf(gravity).setScale(4, RoundingMode.HALF_UP);
    return rounded.signum() == 0
        ? Double.toString(gravity)
        : rounded.stripTrailingZeros().toPlainString();
  }
}
