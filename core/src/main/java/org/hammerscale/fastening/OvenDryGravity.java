package org.hammerscale.fastening;

import org.hammerscale.internal.Arguments;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The specific gravity of wood on the basis of the NDS: weight when oven-dry over volume when
 * oven-dry. It is more than that of the same wood {@linkplain TwelvePercentGravity at 12 %}, since
 * the wood shrinks in the oven; a rule made for one of the two is wrong with the other, so they are
 * two types.
 *
 * <pre>{@code
 * OvenDryGravity.of(0.50).at12Percent()  // specific gravity 0.4744 at 12 %  for a rule of the Wood Handbook
 * OvenDryGravity.of(0.73).at12Percent().ovenDry()  // specific gravity 0.73 oven-dry  there and back
 * }</pre>
 *
 * <p>The conversion G₁₂ = G₀ / (1 + 0.108 G₀) is a mean over species; printed tables differ from it
 * by up to 0.01. Source: NDS, relation of density to moisture, from memory.
 */
public final class OvenDryGravity {
  /** The substance of wood itself, without pores, weighs about 1.5 times as much as water. */
  private static final double MOST = 1.5;

  /** What the volume grows per unit of gravity from dry to 12 %: 0.009 × 12. */
  static final double SWELLING = 0.108;

  static final Source CONVERSION =
      Source.fromMemory(
          "ANSI/AWC NDS 2015", "relation of density to moisture: G / (1 + 0.009 m G), m = 12 %");

  private final double value;

  /** A converted gravity may pass the limit by a rounding. */
  OvenDryGravity(double value) {
    this.value = value;
  }

  /**
   * A specific gravity on the oven-dry basis.
   *
   * @param value weight ÷ volume ÷ density of water, both oven-dry; more than 0 and at most 1.5
   * @return the gravity
   * @throws IllegalArgumentException if the value lies outside that range
   */
  public static OvenDryGravity of(double value) {
    return new OvenDryGravity(
        Arguments.number(
            "oven-dry gravity", value, MOST, "give it as a plain number, such as 0.5"));
  }

  /** {@return the plain number G₀} */
  public double value() {
    return value;
  }

  /**
   * The same wood on the other basis: G₁₂ = G₀ / (1 + 0.108 G₀).
   *
   * @return its gravity by the volume at 12 % moisture, by the mean relation
   */
  public TwelvePercentGravity at12Percent() {
    return new TwelvePercentGravity(converted(Notes.NONE));
  }

  /** {@return how the gravity at 12 % was found} */
  public Working working() {
    return Notes.taken("oven-dry gravity at 12 %", ShopUnits.METRE, this::converted)
        .withSource(CONVERSION);
  }

  private double converted(Notes n) {
    double g = n.number("G₀", "specific gravity, oven-dry", "", value);
    return n.number(
        "G₁₂", "specific gravity at 12 %", "G₀ / (1 + 0.108 G₀)", g / (1 + SWELLING * g));
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof OvenDryGravity gravity && value == gravity.value;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(value);
  }

  /** The number and its basis. */
  @Override
  public String toString() {
    return "specific gravity " + TwelvePercentGravity.digits(value) + " oven-dry";
  }
}
