package org.hammerscale.heat;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * How long a bar stays hot after it leaves the fire, and how much of that is left for work: {@index
 * "cooling time"}, {@index "working window"}, the {@index "length of a heat"}. The bar loses q = ε
 * σ (T⁴ − Tₐ⁴) + h (T − Tₐ) from each unit of its surface, so that t = ρ (V/A) ∫ c dT / q, from the
 * heat down to the coldest that the metal may be worked at.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Cooling cooling = Cooling.from(celsius(1150), bar);
 * cooling.to(celsius(900)).time()  // 46.4 s (41.68 s to 52.32 s)  held in still air, down to 900 °C
 * cooling.window()  // 40.2 s (25.32 s to 67.86 s)  left for work, down to the coldest it is forged at
 * cooling.withThinnest(Section.round(millimetres(10))).window()  // 19.58 s (12.36 s to 32.95 s)  if its tip is 10 mm
 * cooling.hotAtTheEnd(millimetres(60)).time()  // 74.21 s (66.77 s to 83.52 s)  the end face sheds heat too
 * cooling.temperatureAfter(minutes(1))  // 853.5 °C (833.9 °C to 875.5 °C)  is it still worth a blow?
 * }</pre>
 *
 * <p>The time in still air is good to about 3 % but for the emissivity, which its spread stands
 * for. In the hand it is shorter: anvil and hammer take heat, so that about half is left (our own
 * judgement; no source was found), and the thinnest part rules: tell it with {@link #withThinnest}.
 * The bar is taken as one temperature throughout, endless, of its cold sizes, without scale; a tube
 * sheds heat from its outside alone. How long the fire takes to heat it through is not computed,
 * for want of a sourced model.
 *
 * <p>Since the time is an explicit integral over the temperature it is taken by quadrature, cut at
 * the jumps of the specific heat, not by stepping a differential equation across them: relative
 * error below 1e-8.
 *
 * <p>Source: Stefan and Boltzmann; EN 1993-1-2:2005 for c; {@link Air} for h.
 */
public final class Cooling {
  private final CoolingCase given;
  private final Body body;
  private final @Nullable Section thinnest;

  private Cooling(CoolingCase given, Body body, @Nullable Section thinnest) {
    this.given = given;
    this.body = body;
    this.thinnest = thinnest;
  }

  /**
   * A moment of the cooling curve.
   *
   * @param time the time since it left the fire
   * @param temperature how hot it is then
   */
  public record Moment(Measure<Time> time, Measure<Temperature> temperature) {
    /**
     * A moment.
     *
     * @param time the time since it left the fire
     * @param temperature how hot it is then
     */
    public Moment {
      Objects.requireNonNull(time, "time");
      Objects.requireNonNull(temperature, "temperature");
    }

    /** Time and temperature. */
    @Override
    public String toString() {
      return temperature + " after " + time;
    }
  }

  /**
   * A bar that leaves the fire and cools in still air of 20 °C to the coldest that its metal is
   * forged at.
   *
   * @param heat the temperature on leaving the fire, above the room's, at most the solidus
   * @param bar the bar
   * @return its cooling
   * @throws IllegalArgumentException if the temperature is out of that range
   */
  public static Cooling from(Quantity<Temperature> heat, Bar bar) {
    Objects.requireNonNull(bar, "bar");
    Measure<Temperature> point = Arguments.temperature("heat", heat);
    HotMetal metal = HotMetal.of(bar.material());
    return new Cooling(
        new CoolingCase(point, bar, metal, Air.STILL, null, null),
        Body.endless(bar.section()),
        null);
  }

  /**
   * The same by another curve, for a steel of the caller's own.
   *
   * @param curves what the bar's metal is in the fire, such as {@link HotMetal#carbonSteel}
   * @return the cooling
   */
  public Cooling by(HotMetal curves) {
    return with(given.by(Objects.requireNonNull(curves, "curves")));
  }

  /**
   * The same down to another temperature.
   *
   * @param lower where the time ends, above the room's temperature, at most the heat
   * @return the cooling
   * @throws IllegalArgumentException if it is out of that range
   */
  public Cooling to(Quantity<Temperature> lower) {
    return with(given.to(Arguments.temperature("lower", lower)));
  }

  /**
   * The same with another surface.
   *
   * @param share how well the surface radiates, as a part of what a black body does; more than 0,
   *     at most 1; {@link Estimate#exact} for a single value
   * @return the cooling
   * @throws IllegalArgumentException if it is out of that range
   */
  public Cooling withEmissivity(double share) {
    return withEmissivity(Estimate.exact(Measure.of(checkedShare(share), ShopUnits.ONE)));
  }

  /**
   * The same with a surface whose emissivity is known only between bounds.
   *
   * @param share the part of what a black body radiates, each value more than 0, at most 1
   * @return the cooling
   * @throws IllegalArgumentException if a share is out of range
   */
  public Cooling withEmissivity(Estimate<Dimensionless> share) {
    Objects.requireNonNull(share, "share");
    for (Measure<Dimensionless> value : List.of(share.low(), share.high())) {
      checkedShare(value.in(ShopUnits.ONE));
    }
    return with(given.withEmissivity(share));
  }

  private static double checkedShare(double share) {
    return Arguments.number("share", share, 1, "scaled steel has 0.7 to 0.9");
  }

  /**
   * The same in other air.
   *
   * @param other a draught, or a colder shop
   * @return the cooling
   * @throws IllegalArgumentException if the bar is not hotter than that shop
   */
  public Cooling in(Air other) {
    return with(given.in(Objects.requireNonNull(other, "other")));
  }

  /**
   * The same for a short piece that is hot throughout: its two ends count as bare surface.
   *
   * @param length its length, more than zero
   * @return the cooling
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Cooling cutTo(Quantity<Length> length) {
    return withBareEnds(length, 2);
  }

  /**
   * The same for a bar that is hot at one end only, which counts as bare surface. What flows along
   * the bar into the cold is not counted.
   *
   * @param length how far it is hot, more than zero
   * @return the cooling
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Cooling hotAtTheEnd(Quantity<Length> length) {
    return withBareEnds(length, 1);
  }

  /**
   * The same for a piece that is drawn thinner somewhere: where it is thinnest it is cold first,
   * and that ends the {@link #window}. The {@link #time} remains that of the bar.
   *
   * @param section the thinnest part, such as the tip of a taper
   * @return the cooling
   */
  public Cooling withThinnest(Section section) {
    Section.requireArea("section", section);
    section.area();
    return new Cooling(given, body, section);
  }

  private Cooling with(CoolingCase other) {
    return new Cooling(other, body, thinnest);
  }

  private Cooling withBareEnds(Quantity<Length> length, int ends) {
    Measure<Length> hot = Arguments.positive("length", length);
    return new Cooling(given, new Body(bar().section(), hot, ends), thinnest);
  }

  /** {@return the temperature on leaving the fire} */
  public Measure<Temperature> heat() {
    return given.heat();
  }

  /** {@return the bar} */
  public Bar bar() {
    return given.bar();
  }

  /**
   * Where the time ends: the temperature asked for, else the coldest that the metal is forged at,
   * or below which it hardens if it stays soft for longer, as copper does.
   *
   * @return the lower end
   * @throws IllegalArgumentException if neither is known
   */
  public Estimate<Temperature> finish() {
    return given.finish();
  }

  /**
   * How well the surface radiates.
   *
   * @return the emissivity given, else that of the scaled metal
   * @throws IllegalArgumentException if neither is known
   */
  public Estimate<Dimensionless> emissivity() {
    return given.emissivity();
  }

  /**
   * The time in the air from the heat to its end: t = ρ (V/A) ∫ c dT / q.
   *
   * @return the time; its spread is that of emissivity and lower end
   * @throws IllegalArgumentException if the end does not lie below the heat and above the room, or
   *     something of the metal is not known
   */
  public Estimate<Time> time() {
    return given.time(body);
  }

  /**
   * What is left of it in the hand: about half of the time in the air, since anvil, hammer and
   * tongs take heat; of the bar or of its {@linkplain #withThinnest thinnest part}, whichever is
   * the shorter. That half (0.35 to 0.75) is our own judgement, without a source.
   *
   * @return the time for work in one heat
   * @throws IllegalArgumentException as {@link #time}
   */
  public Estimate<Time> window() {
    return WorkingShare.of(given.time(ruling()));
  }

  /**
   * How hot the bar is after a time in the air.
   *
   * @param time the time since it left the fire, not negative
   * @return the temperature, in the unit of the heat; its spread is that of the emissivity
   * @throws IllegalArgumentException if the time is negative, or something of the metal is not
   *     known
   */
  public Estimate<Temperature> temperatureAfter(Quantity<Time> time) {
    double seconds = Arguments.notNegativeTime("time", time).in(ShopUnits.SECOND);
    Estimate<Dimensionless> e = emissivity();
    return Estimate.of(
        given.after(seconds, body, e.high()),
        given.after(seconds, body, e.likely()),
        given.after(seconds, body, e.low()));
  }

  /**
   * The cooling curve, for a plot: from the heat to the lower end in equal steps of temperature, by
   * the likely emissivity.
   *
   * @param steps how many steps, 1 to 10 000
   * @return one moment more than steps, the first at time zero
   * @throws IllegalArgumentException if the number of steps is out of range, or as {@link #time}
   */
  public List<Moment> curve(int steps) {
    if (!(steps >= 1 && steps <= 10_000)) {
      throw new IllegalArgumentException(
          "steps must lie between 1 and 10000, was " + steps + "; 50 make a smooth plot");
    }
    return given.curve(body, steps);
  }

  /**
   * Biot's number at the heat: how much better the metal conducts than its surface sheds, (h + hᵣ)
   * (V/A) / k. Up to 0.1 the bar may be taken as one temperature throughout.
   *
   * @return the plain ratio
   * @throws IllegalArgumentException if conductivity or emissivity is not known
   */
  public double biot() {
    return given.biot(body);
  }

  /** {@return what to know before trusting the times or working the metal; more past a limit} */
  public List<Caution> cautions() {
    return CoolingCautions.of(given, body);
  }

  /**
   * How the time in the air was found.
   *
   * @return the working of the likely {@link #time}
   * @throws IllegalArgumentException as {@link #time}
   */
  public Working working() {
    return given
        .working("time in the air of " + body.section(), n -> given.seconds(n, body))
        .withCautions(cautions());
  }

  /**
   * How the time in the hand was found.
   *
   * @return the working of the likely {@link #window}
   * @throws IllegalArgumentException as {@link #time}
   */
  public Working windowWorking() {
    return worked("time for work on " + ruling().section(), this::windowSeconds)
        .withCautions(cautions());
  }

  /** The seconds of the likely window, noted. */
  double windowSeconds(Notes n) {
    return WorkingShare.left(n, given.seconds(n, ruling()));
  }

  /** A working that rests on the window. */
  Working worked(String title, Notes.Calculation calculation) {
    return given.working(title, calculation).withSource(WorkingShare.SOURCE);
  }

  CoolingCase given() {
    return given;
  }

  /** The body that is cold first. */
  Body ruling() {
    if (thinnest == null) {
      return body;
    }
    Body thin = new Body(thinnest, body.length(), body.ends());
    return given.seconds(Notes.NONE, thin) < given.seconds(Notes.NONE, body) ? thin : body;
  }

  /** Whether a part thinner than the bar is cold first. */
  boolean isRuledByThinnest() {
    return !ruling().equals(body);
  }

  /** Bar, heat and air. */
  @Override
  public String toString() {
    return bar() + ", cooling from " + heat() + " in " + given.air();
  }
}
