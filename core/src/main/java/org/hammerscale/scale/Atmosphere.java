package org.hammerscale.scale;

import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * What the hot iron stands in, as a factor on the scale that clean air would make, with its spread.
 *
 * <pre>{@code
 * Atmosphere.STILL_AIR            // still air of the shop, scale × 1 (0.5 to 2)  a bar that lies on the bench
 * Atmosphere.FORGE_FIRE.factor()  // 1 (0.3333 to 3)  what a heat plan takes unless told otherwise
 * }</pre>
 *
 * <p>The spreads are our own judgement from published comparisons. A smith who weighs a piece
 * before and after knows better: see {@link #of}.
 */
public final class Atmosphere {
  /** Clean dry air of a laboratory furnace: half as much again, or a third less. */
  public static final Atmosphere LABORATORY_AIR =
      within(
          "laboratory air",
          1.5,
          "the published constants differ by up to 1.44 from 900 to 1250 °C, for 5 to 60 min");

  /** Still air of the shop, in a muffle or on the bench: twice or half. */
  public static final Atmosphere STILL_AIR =
      within(
          "still air of the shop",
          2,
          "as in the laboratory, and short heats lack oxygen: a bar of 20 mm at 1250 °C takes less"
              + " than half the parabola's scale in its first minute");

  /**
   * A forge fire of coal, coke, charcoal or gas: three times or a third. A deep, reducing fire
   * scales less; a shallow or over-blown one, and wet gas, more.
   */
  public static final Atmosphere FORGE_FIRE =
      within(
          "forge fire",
          3,
          "wet gas raises the rate 1.2 times at 850 °C and 1.6 times at 950 °C (Rahmel and"
              + " Tobolski, abstract); in lean gas the growth is linear, in gas with excess air"
              + " parabolic (Lee, Gleeson and Young, Oxidation of Metals 63, 2005, abstract); scale"
              + " lifts off near 900 °C (Abuluwefa, Metallurgical and Materials Transactions A 28,"
              + " 1997, abstract); reducing fires give less, no figure was found");

  private final String name;
  private final Estimate<Dimensionless> factor;
  private final Source source;

  private Atmosphere(String name, Estimate<Dimensionless> factor, Source source) {
    this.name = name;
    this.factor = factor;
    this.source = source;
  }

  /**
   * A fire of the caller's own, such as one in which a test piece was weighed before and after.
   *
   * @param name what the smith calls it
   * @param factor the metal lost in it, as a multiple of what {@link ScaleLaw#MI} says; more than 0
   * @param source where the factor comes from
   * @return the atmosphere
   * @throws IllegalArgumentException if the name is blank or the factor not more than zero
   */
  public static Atmosphere of(String name, Estimate<Dimensionless> factor, Source source) {
    Objects.requireNonNull(factor, "factor");
    if (!(factor.low().in(ShopUnits.ONE) > 0)) {
      throw new IllegalArgumentException(
          "factor must be more than zero, was "
              + factor
              + "; give the loss as a multiple of that in clean air");
    }
    return new Atmosphere(
        Arguments.text("name", name), factor, Objects.requireNonNull(source, "source"));
  }

  private static Atmosphere within(String name, double spread, String reasons) {
    return new Atmosphere(
        name,
        Estimate.of(ratio(1 / spread), ratio(1), ratio(spread)),
        Source.commonPractice("our own judgement: " + reasons));
  }

  private static Measure<Dimensionless> ratio(double value) {
    return Measure.of(value, ShopUnits.ONE);
  }

  /** {@return what the smith calls it} */
  public String name() {
    return name;
  }

  /** {@return the metal lost in it, as a multiple of that in clean air} */
  public Estimate<Dimensionless> factor() {
    return factor;
  }

  /** {@return where factor and spread come from} */
  public Source source() {
    return source;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Atmosphere that
        && name.equals(that.name)
        && factor.equals(that.factor)
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, factor, source);
  }

  /** Name and factor. */
  @Override
  public String toString() {
    return name + ", scale × " + factor;
  }
}
