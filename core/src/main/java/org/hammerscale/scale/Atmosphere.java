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
 * What the hot iron stands in: a factor on the scale that clean air would make, with its spread,
 * and how fast it brings oxygen.
 *
 * <pre>{@code
 * Atmosphere.FORGE_FIRE       // forge fire, scale × 1 (0.5 to 2)  what a heat plan takes unless told otherwise
 * Atmosphere.BLAST            // under the blast, scale × 1 (0.5 to 2), 4 times as much oxygen as still air
 * HeatPlan deep = HeatPlan.soaking(celsius(1150), minutes(2));
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * ScaleLoss.of(bar, deep).perSurface().likely()                       // 0.07204 mm  deep in the fire
 * ScaleLoss.of(bar, deep.in(Atmosphere.BLAST)).perSurface().likely()  // 0.1012 mm  where the air blows on it
 * }</pre>
 *
 * <p>The spreads are our own judgement from published comparisons. A smith who weighs a piece
 * before and after knows better: see {@link #weighed}.
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
   * A forge fire of coal, coke, charcoal or gas, the iron covered by it: twice or half. A deep,
   * reducing fire scales less; a shallow one, and wet gas, more. Where the air blows on the iron it
   * is {@link #BLAST}.
   */
  public static final Atmosphere FORGE_FIRE =
      within(
          "forge fire",
          2,
          "wet gas raises the rate 1.2 times at 850 °C and 1.6 times at 950 °C (Rahmel and"
              + " Tobolski, abstract); in lean gas the growth is linear, in gas with excess air"
              + " parabolic (Lee, Gleeson and Young, Oxidation of Metals 63, 2005, abstract); scale"
              + " lifts off near 900 °C (Abuluwefa, Metallurgical and Materials Transactions A 28,"
              + " 1997, abstract); reducing fires give less, no figure was found");

  /**
   * A hollow or over-blown fire, where the air of the blast reaches the iron and brings four times
   * the oxygen of still air, so that even a short heat scales nearly by the bare parabola.
   */
  public static final Atmosphere BLAST =
      new Atmosphere(
          "under the blast",
          spread(2),
          4,
          Source.computed(
              "a draught of 5 m/s carries four times as much to a bar of 20 mm as still air does"
                  + " (Churchill and Bernstein 1977); its speed and the spread are our own"
                  + " judgement"));

  private final String name;
  private final Estimate<Dimensionless> factor;
  private final double supply; // oxygen as a multiple of what still air brings
  private final Source source;

  private Atmosphere(String name, Estimate<Dimensionless> factor, double supply, Source source) {
    this.name = name;
    this.factor = factor;
    this.supply = supply;
    this.source = source;
  }

  /**
   * A fire of the caller's own, fed as still air feeds.
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
        Arguments.text("name", name), factor, 1, Objects.requireNonNull(source, "source"));
  }

  /**
   * This fire as a shop's own weighings show it, the more closely the more there are: of the
   * logarithms of their factors the mean is μ = (μ₀ + Σ y) / (1 + n), and nine of ten pieces lie
   * within t √(S/(4 + n) · (1 + 1/(1 + n))), with S = 4 s₀² + Σ (y − ȳ)² + n (ȳ − μ₀)²/(1 + n) and
   * Student's t for 4 + n degrees of freedom. This fire's own factor counts as one weighing for the
   * mean, μ₀, and as four for the spread; s₀ is such that without a weighing its own spread stays.
   * That is the conjugate normal and inverse gamma prior; its weights are our own judgement.
   *
   * @param pieces all weighings of the shop in this fire, at least one, in any order
   * @return the shop's own fire
   * @throws IllegalArgumentException if there is none, one is of another fire, or they tell so
   *     unlike factors that the next could lie anywhere
   */
  public Atmosphere weighed(Weighing... pieces) {
    Objects.requireNonNull(pieces, "pieces");
    if (pieces.length == 0) {
      throw new IllegalArgumentException("pieces must be at least one, was none; weigh a piece");
    }
    double[] logs = new double[pieces.length];
    for (int i = 0; i < pieces.length; i++) {
      Weighing piece = Objects.requireNonNull(pieces[i], "pieces");
      if (!piece.plan().atmosphere().equals(this)) {
        throw new IllegalArgumentException(
            "pieces must be heated in the "
                + name
                + ", was in the "
                + piece.plan().atmosphere().name()
                + "; name the fire in the plan of its heats");
      }
      logs[i] = Math.log(piece.factor().in(ShopUnits.ONE));
    }
    String times = pieces.length == 1 ? "weighed once" : "weighed " + pieces.length + " times";
    return new Atmosphere(
        name + ", " + times,
        WeighedFactor.of(factor, logs),
        supply,
        Source.commonPractice(
            times + " in the shop, beside what is judged of the " + name + " elsewhere"));
  }

  private static Atmosphere within(String name, double spread, String reasons) {
    return new Atmosphere(
        name, spread(spread), 1, Source.commonPractice("our own judgement: " + reasons));
  }

  private static Estimate<Dimensionless> spread(double times) {
    return Estimate.of(ratio(1 / times), ratio(1), ratio(times));
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

  /** The metal a second that its oxygen can take, in millimetres. */
  double supply() {
    return supply * OxygenSupply.STILL_AIR;
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
        && supply == that.supply
        && source.equals(that.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, factor, supply, source);
  }

  /** Name and factor, and the oxygen if it is not that of still air. */
  @Override
  public String toString() {
    return name
        + ", scale × "
        + factor
        + (supply == 1 ? "" : ", " + ratio(supply) + " times as much oxygen as still air");
  }
}
