package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Inverse;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * How long a bar stays hot after it leaves the fire, and how much of that is left for work: cooling
 * time, working window, the length of a heat. The bar loses q = ε σ (T⁴ − Tₐ⁴) + h (T − Tₐ) from
 * each unit of its surface, so that t = ρ (V/A) ∫ c dT / q, from the heat down to the coldest that
 * the metal may be worked at.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Cooling cooling = Cooling.from(celsius(1150), bar);
 * cooling.to(celsius(900)).time()     // 46.4 s (41.68 s to 52.32 s)
 * cooling.window()                    // 40.2 s (25.32 s to 67.86 s)
 * }</pre>
 *
 * <p>The time in still air is good to about 3 % but for the emissivity, which its spread stands
 * for. In the hand it is shorter: anvil and hammer take heat, so that about half is left (our own
 * judgement; no source was found), and the thinnest part rules: tell it with {@link #withThinnest}.
 * The bar is taken as one temperature throughout, endless, of its cold sizes, without scale. How
 * long the fire takes to heat it through is not computed, for want of a sourced model.
 *
 * <p>Since the time is an explicit integral over the temperature it is taken by quadrature, cut at
 * the jumps of the specific heat, not by stepping a differential equation across them: relative
 * error below 1e-8.
 *
 * <p>Source: Stefan and Boltzmann; EN 1993-1-2:2005 for c; {@link Air} for h.
 */
public final class Cooling {
  private static final double ZERO_CELSIUS = 273.15;

  /** How far one piece of an integral reaches on from the room's temperature. */
  private static final double REACH = 3;

  /** Cooler than this above the room a bar is as cold as the room, in kelvins. */
  private static final double COLD = 0.01;

  private final Measure<Temperature> heat;
  private final Bar bar;
  private final HotMetal metal;
  private final @Nullable Estimate<Temperature> finish;
  private final @Nullable Estimate<Dimensionless> emissivity;
  private final Air air;
  private final Body body;
  private final @Nullable Section thinnest;

  private Cooling(
      Measure<Temperature> heat,
      Bar bar,
      HotMetal metal,
      @Nullable Estimate<Temperature> finish,
      @Nullable Estimate<Dimensionless> emissivity,
      Air air,
      Body body,
      @Nullable Section thinnest) {
    this.heat = heat;
    this.bar = bar;
    this.metal = metal;
    this.finish = finish;
    this.emissivity = emissivity;
    this.air = air;
    this.body = body;
    this.thinnest = thinnest;
  }

  /** A moment of the cooling curve. */
  public record Moment(Measure<Time> time, Measure<Temperature> temperature) {
    /** Time and temperature. */
    @Override
    public String toString() {
      return temperature + " after " + time;
    }
  }

  /**
   * A bar that leaves the fire and cools in still air of 20 °C to the coldest that its metal may be
   * worked at.
   *
   * @param heat the temperature on leaving the fire, above the lower forging limit, below the
   *     solidus
   * @param bar the bar
   * @return its cooling
   * @throws IllegalArgumentException if the temperature lies at the solidus or above, or below zero
   *     Celsius
   */
  public static Cooling from(Quantity<Temperature> heat, Bar bar) {
    Measure<Temperature> point = Arguments.temperature("heat", heat);
    HotMetal metal = HotMetal.of(bar.material());
    return new Cooling(point, bar, metal, null, null, Air.STILL, Body.endless(bar.section()), null)
        .checked();
  }

  /**
   * The same by another curve, for a steel of the caller's own.
   *
   * @param curves what the bar's metal is in the fire, such as {@link HotMetal#carbonSteel}
   * @return the cooling
   */
  public Cooling by(HotMetal curves) {
    return new Cooling(heat, bar, curves, finish, emissivity, air, body, thinnest).checked();
  }

  /**
   * The same down to another temperature.
   *
   * @param lower where the time ends, below the heat and above the room
   * @return the cooling
   * @throws IllegalArgumentException if it is out of that range
   */
  public Cooling to(Quantity<Temperature> lower) {
    Estimate<Temperature> end = Estimate.exact(Arguments.temperature("lower", lower));
    return new Cooling(heat, bar, metal, end, emissivity, air, body, thinnest).checked();
  }

  /**
   * The same with another surface.
   *
   * @param share how well the surface radiates, as a part of what a black body does; more than 0,
   *     at most 1; {@link Estimate#exact} for a single value
   * @return the cooling
   * @throws IllegalArgumentException if it is out of that range
   */
  public Cooling withEmissivity(Estimate<Dimensionless> share) {
    if (!(share.low().getValue() > 0 && share.high().in(ShopUnits.ONE) <= 1)) {
      throw new IllegalArgumentException(
          "share must lie between 0 and 1, was " + share + "; scaled steel has 0.7 to 0.9");
    }
    return new Cooling(heat, bar, metal, finish, share, air, body, thinnest);
  }

  /**
   * The same in other air.
   *
   * @param other a draught, or a colder shop
   * @return the cooling
   */
  public Cooling in(Air other) {
    return new Cooling(
            heat, bar, metal, finish, emissivity, Objects.requireNonNull(other), body, thinnest)
        .checked();
  }

  /**
   * The same for a short piece that is hot throughout: its two ends count as bare surface.
   *
   * @param length its length, more than zero
   * @return the cooling
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public Cooling cutTo(Quantity<Length> length) {
    return withBody(new Body(bar.section(), Arguments.positive("length", length), 2));
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
    return withBody(new Body(bar.section(), Arguments.positive("length", length), 1));
  }

  /**
   * The same for a piece that is drawn thinner somewhere: where it is thinnest it is cold first,
   * and that ends the {@link #window}. The {@link #time} remains that of the bar.
   *
   * @param section the thinnest part, such as the tip of a taper
   * @return the cooling
   */
  public Cooling withThinnest(Section section) {
    return new Cooling(
        heat, bar, metal, finish, emissivity, air, body, Objects.requireNonNull(section));
  }

  private Cooling withBody(Body other) {
    return new Cooling(heat, bar, metal, finish, emissivity, air, other, thinnest);
  }

  /** {@return the temperature on leaving the fire} */
  public Measure<Temperature> heat() {
    return heat;
  }

  /** {@return the bar} */
  public Bar bar() {
    return bar;
  }

  /**
   * Where the time ends: the temperature asked for, else the coldest that the metal may be worked
   * at.
   *
   * @return the lower end
   * @throws IllegalArgumentException if neither is known
   */
  public Estimate<Temperature> finish() {
    return finish == null ? bar.material().forgingFinish() : finish;
  }

  /**
   * How well the surface radiates.
   *
   * @return the emissivity given, else that of the scaled metal
   * @throws IllegalArgumentException if neither is known
   */
  public Estimate<Dimensionless> emissivity() {
    return emissivity == null ? metal.emissivity() : emissivity;
  }

  /**
   * The time in the air from the heat to its end: t = ρ (V/A) ∫ c dT / q.
   *
   * @return the time; its spread is that of emissivity and lower end
   * @throws IllegalArgumentException if the end does not lie below the heat and above the room, or
   *     something of the metal is not known
   */
  public Estimate<Time> time() {
    return time(body);
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
    return WorkingShare.of(time(ruling()));
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
    double seconds = Times.notNegative("time", time).in(ShopUnits.SECOND);
    Estimate<Dimensionless> e = emissivity();
    return Estimate.of(
        after(seconds, e.high()), after(seconds, e.likely()), after(seconds, e.low()));
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
    double end = end(finish().likely());
    double share = emissivity().likely().in(ShopUnits.ONE);
    double step = (celsius() - end) / steps;
    List<Moment> moments = new ArrayList<>(steps + 1);
    double seconds = 0;
    for (int i = 0; i <= steps; i++) {
      double at = i == steps ? end : celsius() - i * step;
      seconds += i == 0 ? 0 : seconds(body, share, at, celsius() - (i - 1) * step);
      moments.add(new Moment(Measures.seconds(seconds), point(at)));
    }
    return List.copyOf(moments);
  }

  /**
   * Biot's number at the heat: how much better the metal conducts than its surface sheds, (h + hᵣ)
   * (V/A) / k. Up to 0.1 the bar may be taken as one temperature throughout.
   *
   * @return the plain ratio
   * @throws IllegalArgumentException if conductivity or emissivity is not known
   */
  public double biot() {
    return biot(emissivity().likely().in(ShopUnits.ONE));
  }

  /** {@return what to know before trusting the times; more if a limit is passed} */
  public List<org.hammerscale.working.Caution> cautions() {
    return CoolingCautions.of(this);
  }

  /**
   * How the time in the air was found.
   *
   * @return the working of the likely {@link #time}
   * @throws IllegalArgumentException as {@link #time}
   */
  public Working working() {
    return working("time in the air of ", body, this::noted);
  }

  /**
   * How the time in the hand was found.
   *
   * @return the working of the likely {@link #window}
   * @throws IllegalArgumentException as {@link #time}
   */
  public Working windowWorking() {
    return working(
            "time for work on ", ruling(), (n, ruling) -> WorkingShare.left(n, noted(n, ruling)))
        .withSource(WorkingShare.SOURCE);
  }

  private interface Noted {
    double calculate(Notes n, Body cooled);
  }

  private Working working(String title, Body cooled, Noted calculation) {
    return Notes.taken(
            title + cooled.section() + " from " + heat,
            ShopUnits.MILLIMETRE,
            n -> calculation.calculate(n, cooled))
        .withSource(metal.source())
        .withSource(air.source())
        .withCautions(cautions());
  }

  HotMetal metal() {
    return metal;
  }

  Air air() {
    return air;
  }

  Body body() {
    return body;
  }

  /** The body that is cold first. */
  Body ruling() {
    if (thinnest == null) {
      return body;
    }
    Body thin = new Body(thinnest, body.length(), body.ends());
    return thin.depth() < body.depth() ? thin : body;
  }

  boolean hasOwnEmissivity() {
    return emissivity != null;
  }

  double celsius() {
    return heat.in(ShopUnits.CELSIUS);
  }

  /** The integral over the time in the air of something that depends on the temperature in °C. */
  double integral(DoubleUnaryOperator rate) {
    double share = emissivity().likely().in(ShopUnits.ONE);
    double capacity =
        bar.material().density().in(ShopUnits.KILOGRAM_PER_CUBIC_METRE) * body.depth();
    return capacity * quadrature(body, share, end(finish().likely()), celsius(), rate);
  }

  double biot(double share) {
    double surface = celsius() + ZERO_CELSIUS;
    double room = room() + ZERO_CELSIUS;
    double h = air.coefficient(body, surface, room) + Radiation.coefficient(share, surface, room);
    return h * body.depth() / metal.curve().conductivity(celsius());
  }

  private Estimate<Time> time(Body cooled) {
    Estimate<Dimensionless> e = emissivity();
    Estimate<Temperature> f = finish();
    return Estimate.of(
        time(cooled, e.high(), f.high()),
        time(cooled, e.likely(), f.likely()),
        time(cooled, e.low(), f.low()));
  }

  private Measure<Time> time(
      Body cooled, Measure<Dimensionless> share, Measure<Temperature> lower) {
    return Measures.seconds(
        seconds(Notes.NONE, cooled, share.in(ShopUnits.ONE), end(lower), celsius()));
  }

  private double noted(Notes n, Body cooled) {
    double share = emissivity().likely().in(ShopUnits.ONE);
    return seconds(n, cooled, share, end(finish().likely()), celsius());
  }

  private double seconds(Body cooled, double share, double lower, double upper) {
    return seconds(Notes.NONE, cooled, share, lower, upper);
  }

  /** Works in millimetres and seconds; the integral in s m²/kg. */
  private double seconds(Notes n, Body cooled, double share, double lower, double upper) {
    double density = bar.material().density().in(ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    n.value("θ₁", "heat", "", upper, ShopUnits.CELSIUS);
    n.value("θ₂", "lower end", "", lower, ShopUnits.CELSIUS);
    n.number("ε", "emissivity", "", share);
    double r = cooled.noted(n);
    double rho = n.value("ρ", "density", "", density, ShopUnits.KILOGRAM_PER_CUBIC_METRE);
    double i =
        n.number(
            "I",
            "∫ c dθ / q from θ₂ to θ₁, q = ε σ (T⁴ − Tₐ⁴) + h (T − Tₐ), in s m²/kg",
            "",
            quadrature(cooled, share, lower, upper, t -> 1));
    return n.value("t", "time in the air", "ρ r I / 1000", rho * r * i / 1000, ShopUnits.SECOND);
  }

  private double quadrature(
      Body cooled, double share, double lower, double upper, DoubleUnaryOperator weight) {
    HeatCurve curve = metal.curve();
    double room = room() + ZERO_CELSIUS;
    DoubleUnaryOperator integrand =
        t -> {
          double surface = t + ZERO_CELSIUS;
          double q =
              Radiation.flux(share, surface, room)
                  + air.coefficient(cooled, surface, room) * (surface - room);
          return weight.applyAsDouble(t) * curve.specificHeat(t) / q;
        };
    return Quadrature.integrate(integrand, lower, upper, curve.cuts(), room(), REACH);
  }

  private Measure<Temperature> after(double seconds, Measure<Dimensionless> emissivity) {
    double share = emissivity.in(ShopUnits.ONE);
    double coldest = room() + COLD;
    return seconds(body, share, coldest, celsius()) <= seconds
        ? air.temperature().to(heat.getUnit())
        : point(
            Inverse.solve(
                "time",
                lower -> seconds(body, share, lower, celsius()),
                coldest,
                celsius(),
                seconds,
                Measures::seconds));
  }

  private Measure<Temperature> point(double celsius) {
    return celsius == celsius() ? heat : Measures.celsius(celsius).to(heat.getUnit());
  }

  private double room() {
    return air.temperature().in(ShopUnits.CELSIUS);
  }

  /** A lower end in °C, if it lies between room and heat. */
  private double end(Measure<Temperature> lower) {
    double celsius = lower.in(ShopUnits.CELSIUS);
    if (!(celsius > room() + COLD && celsius <= celsius())) {
      throw new IllegalArgumentException(
          "lower end must lie between the room at "
              + air.temperature()
              + " and the heat of "
              + heat
              + ", was "
              + lower
              + "; heat it hotter, or give another end with to(…)");
    }
    return celsius;
  }

  /** This cooling, if its heat is one that the metal can have and its end, if given, lies below. */
  private Cooling checked() {
    Measure<Temperature> hottest =
        bar.material().has(Property.SOLIDUS)
            ? bar.material().solidus()
            : Measures.celsius(metal.curve().hottest());
    if (!(celsius() > room() + COLD) || heat.isGreaterThan(hottest)) {
      throw new IllegalArgumentException(
          "heat must lie between the room at "
              + air.temperature()
              + " and "
              + hottest.to(heat.getUnit())
              + " for "
              + bar.material().name()
              + ", was "
              + heat
              + "; hotter metal melts");
    }
    if (finish != null) {
      end(finish.likely());
    }
    return this;
  }

  /** Bar, heat and air. */
  @Override
  public String toString() {
    return bar + ", cooling from " + heat + " in " + air;
  }
}
