package org.hammerscale.scale;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.heat.Heats;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/**
 * What the fire will do to a piece: how many heats, how hot and how long each, in what fire, and
 * whether the scale is knocked off between them. {@link ScaleLoss} and the layout of a piece reckon
 * from it what the fire takes.
 *
 * <pre>{@code
 * HeatPlan plan = HeatPlan.soaking(celsius(1150), minutes(4)).inHeats(3);
 * plan  // 3 heats of 4 min at 1150 °C, forge fire, scale knocked off  nothing is left unsaid
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Heats heats = Heats.forWork(minutes(2), Cooling.from(celsius(1150), bar));
 * plan.inHeats(heats.count()).heats()  // 3  counted from the work at the anvil, not guessed
 * }</pre>
 *
 * <p>What is counted is the time at the heat, for a thin strap a minute or two and not the whole
 * stay in the fire; tell the way up and down with a {@link FireHistory} where it is slow. Unless
 * told otherwise it is one heat in a forge fire, after which the hammer knocks the scale off.
 */
public final class HeatPlan {
  private static final int MOST = 1000;
  private static final Estimate<Dimensionless> ONCE = Estimate.exact(Measure.of(1, ShopUnits.ONE));

  private final FireHistory shortest;
  private final FireHistory likely;
  private final FireHistory longest;
  private final Estimate<Dimensionless> heats;
  private final Atmosphere atmosphere;
  private final boolean kept;

  private HeatPlan(
      FireHistory shortest,
      FireHistory likely,
      FireHistory longest,
      Estimate<Dimensionless> heats,
      Atmosphere atmosphere,
      boolean kept) {
    this.shortest = shortest;
    this.likely = likely;
    this.longest = longest;
    this.heats = heats;
    this.atmosphere = atmosphere;
    this.kept = kept;
  }

  /**
   * One heat by its history.
   *
   * @param each what each heat is like
   * @return the plan
   */
  public static HeatPlan of(FireHistory each) {
    return new HeatPlan(
        Objects.requireNonNull(each, "each"), each, each, ONCE, Atmosphere.FORGE_FIRE, false);
  }

  /**
   * One heat at a temperature.
   *
   * @param heat the temperature, −50 to 1538 °C
   * @param time the time at it, not negative
   * @return the plan
   * @throws IllegalArgumentException if one is out of its range
   */
  public static HeatPlan soaking(Quantity<Temperature> heat, Quantity<Time> time) {
    return of(FireHistory.soak(heat, time));
  }

  /**
   * One heat at a temperature, for a time that the smith can only guess.
   *
   * @param heat the temperature, −50 to 1538 °C
   * @param time the time at it, not negative
   * @return the plan
   * @throws IllegalArgumentException if one is out of its range
   */
  public static HeatPlan soaking(Quantity<Temperature> heat, Estimate<Time> time) {
    Objects.requireNonNull(time, "time");
    return new HeatPlan(
        FireHistory.soak(heat, time.low()),
        FireHistory.soak(heat, time.likely()),
        FireHistory.soak(heat, time.high()),
        ONCE,
        Atmosphere.FORGE_FIRE,
        false);
  }

  /**
   * The same in several heats, each like the first.
   *
   * @param number how many, 1 to 1000
   * @return the plan
   * @throws IllegalArgumentException if the number is out of range
   */
  public HeatPlan inHeats(int number) {
    return inHeats(Estimate.exact(Measure.of(number, ShopUnits.ONE)));
  }

  /**
   * The same in as many heats as the smith reckons with, each like the first.
   *
   * @param number how many, 1 to 1000, such as {@link Heats#count}; the likely one is taken to the
   *     nearest whole
   * @return the plan
   * @throws IllegalArgumentException if the number may be out of range
   */
  public HeatPlan inHeats(Estimate<Dimensionless> number) {
    Objects.requireNonNull(number, "number");
    if (!(number.low().in(ShopUnits.ONE) >= 1 && number.high().in(ShopUnits.ONE) <= MOST)) {
      throw new IllegalArgumentException(
          "number must be from 1 to 1000, was " + number + "; count each stay in the fire");
    }
    return new HeatPlan(shortest, likely, longest, number, atmosphere, kept);
  }

  /**
   * The same in another fire.
   *
   * @param fire what the piece is heated in
   * @return the plan
   */
  public HeatPlan in(Atmosphere fire) {
    return new HeatPlan(
        shortest, likely, longest, heats, Objects.requireNonNull(fire, "fire"), kept);
  }

  /**
   * The same with the scale left on between the heats, so that it grows on as one and shields the
   * metal: n heats lose √n times what one does, not n times.
   *
   * @return the plan
   */
  public HeatPlan withScaleKept() {
    return new HeatPlan(shortest, likely, longest, heats, atmosphere, true);
  }

  /**
   * The same with each heat longer or shorter, all of its history in proportion.
   *
   * @param time how long each is likely to be, more than zero
   * @return the plan
   * @throws IllegalArgumentException if the time is not more than zero, or that of this plan is
   *     nothing
   */
  public HeatPlan lasting(Quantity<Time> time) {
    double now = likely.duration().in(ShopUnits.SECOND);
    double factor = Arguments.positiveTime("time", time).in(ShopUnits.SECOND) / now;
    if (!(now > 0) || !Double.isFinite(factor)) {
      throw new IllegalArgumentException(
          "time of the plan must be more than nothing to be drawn out, was "
              + likely.duration()
              + "; give each heat a duration first");
    }
    return new HeatPlan(
        shortest.times(factor),
        likely.times(factor),
        longest.times(factor),
        heats,
        atmosphere,
        kept);
  }

  /** {@return what each heat is likely to be like} */
  public FireHistory each() {
    return likely;
  }

  /** {@return how many heats, most likely} */
  public int heats() {
    return (int) Math.round(heats.likely().in(ShopUnits.ONE));
  }

  /** {@return what it is heated in} */
  public Atmosphere atmosphere() {
    return atmosphere;
  }

  /** {@return whether scale stays on between the heats, rather than be knocked off} */
  public boolean isScaleKept() {
    return kept;
  }

  /** By how much the metal lost grows with a number of heats. */
  double growth(double number) {
    return kept ? Math.sqrt(number) : number;
  }

  double fewest() {
    return heats.low().in(ShopUnits.ONE);
  }

  double most() {
    return heats.high().in(ShopUnits.ONE);
  }

  FireHistory shortest() {
    return shortest;
  }

  FireHistory longest() {
    return longest;
  }

  /** Heats, fire and scale. */
  @Override
  public String toString() {
    return (heats() == 1 && heats.isExact() ? "1 heat of " : heats + " heats of ")
        + likely
        + ", "
        + atmosphere.name()
        + (kept ? ", scale kept" : ", scale knocked off");
  }
}
