package org.hammerscale.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.heat.Cooling;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * How hot the piece is, and when, in one heat: coming up in the fire, soaking, cooling on the anvil
 * or in the air. Between two points it goes straight.
 *
 * <pre>{@code
 * FireHistory up = FireHistory.from(celsius(20)).to(celsius(1150), minutes(6));
 * FireHistory heat = up.hold(minutes(2)).to(celsius(800), minutes(1));
 * heat.duration()               // 9 min      six up, two held, one at the anvil
 * heat.hottest()                // 1150 °C    where most of the scale grows
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Cooling inAir = Cooling.from(celsius(1150), bar).to(celsius(900));
 * up.cooling(inAir).duration()  // 6.773 min  or laid down to cool, which takes its own time
 * }</pre>
 *
 * <p>Scale grows mostly near the hottest moment, but slow ramps count: heating and cooling by 5 K a
 * minute lets more scale grow than a quarter of an hour at the top.
 */
public final class FireHistory {
  private static final double COLDEST = -50;
  private static final double MELTING = 1538;

  /** Straight pieces for the curve of cooling in air. */
  private static final int PIECES = 64;

  private final List<Cooling.Moment> points;

  private FireHistory(List<Cooling.Moment> points) {
    this.points = List.copyOf(points);
  }

  /**
   * Held at one heat; the way up and down is not counted.
   *
   * @param heat the temperature, −50 to 1538 °C
   * @param time how long, not negative
   * @return the history
   * @throws IllegalArgumentException if one is out of its range
   */
  public static FireHistory soak(Quantity<Temperature> heat, Quantity<Time> time) {
    return from("heat", heat).hold(time);
  }

  /**
   * The start of a history, such as the cold bar.
   *
   * @param start the temperature, −50 to 1538 °C
   * @return a history of no time yet
   * @throws IllegalArgumentException if it is out of its range
   */
  public static FireHistory from(Quantity<Temperature> start) {
    return from("start", start);
  }

  private static FireHistory from(String name, Quantity<Temperature> start) {
    return new FireHistory(List.of(new Cooling.Moment(Measures.minutes(0), inRange(name, start))));
  }

  /**
   * A history through measured points, such as a pyrometer's, or those of {@link Cooling#curve}.
   *
   * @param points times from any zero that do not fall, and temperatures from −50 to 1538 °C; at
   *     least one
   * @return the history
   * @throws IllegalArgumentException if there is no point, one is out of its range, or times fall
   */
  public static FireHistory through(List<Cooling.Moment> points) {
    Objects.requireNonNull(points, "points");
    if (points.isEmpty()) {
      throw new IllegalArgumentException(
          "points must be at least one, was none; give a time and a temperature");
    }
    for (int i = 0; i < points.size(); i++) {
      inRange("points", points.get(i).temperature());
      if (i > 0 && points.get(i).time().isLessThan(points.get(i - 1).time())) {
        throw new IllegalArgumentException(
            "points must be in order of time, was "
                + points.get(i)
                + " behind "
                + points.get(i - 1)
                + "; sort them");
      }
    }
    return new FireHistory(points);
  }

  /**
   * Then straight to another temperature.
   *
   * @param heat the temperature at the end, −50 to 1538 °C
   * @param time how long it takes, not negative
   * @return the longer history
   * @throws IllegalArgumentException if one is out of its range
   */
  public FireHistory to(Quantity<Temperature> heat, Quantity<Time> time) {
    Measure<Time> longer = Arguments.notNegativeTime("time", time);
    List<Cooling.Moment> all = new ArrayList<>(points);
    all.add(
        new Cooling.Moment(
            points.size() == 1 ? longer.add(last().time()) : last().time().add(longer),
            inRange("heat", heat)));
    return new FireHistory(all);
  }

  /**
   * Then held at the temperature that it has.
   *
   * @param time how long, not negative
   * @return the longer history
   * @throws IllegalArgumentException if the time is negative
   */
  public FireHistory hold(Quantity<Time> time) {
    return to(last().temperature(), time);
  }

  /**
   * Then cooling in air, by the {@linkplain Cooling#curve curve} down to the cooling's lower end.
   *
   * @param cooling a cooling from the temperature that it has
   * @return the longer history
   * @throws IllegalArgumentException if the cooling starts from another temperature
   */
  public FireHistory cooling(Cooling cooling) {
    Objects.requireNonNull(cooling, "cooling");
    if (!cooling.heat().isEquivalentTo(last().temperature())) {
      throw new IllegalArgumentException(
          "cooling must start from "
              + last().temperature()
              + ", where the history ends, was "
              + cooling.heat()
              + "; go there first with to(…)");
    }
    List<Cooling.Moment> all = new ArrayList<>(points);
    Measure<Time> before = last().time();
    List<Cooling.Moment> curve = cooling.curve(PIECES);
    for (Cooling.Moment moment : curve.subList(1, curve.size())) {
      all.add(new Cooling.Moment(before.add(moment.time()), moment.temperature()));
    }
    return new FireHistory(all);
  }

  /** The same so many times as long. */
  FireHistory times(double factor) {
    Measure<Time> start = points.get(0).time();
    return new FireHistory(
        points.stream()
            .map(
                point ->
                    new Cooling.Moment(
                        start.add(point.time().subtract(start).multiply(factor)),
                        point.temperature()))
            .toList());
  }

  /** {@return its points in order, the first where it starts} */
  public List<Cooling.Moment> points() {
    return points;
  }

  /** {@return how long it takes} */
  public Measure<Time> duration() {
    return last().time().subtract(points.get(0).time());
  }

  /** {@return the highest temperature in it} */
  public Measure<Temperature> hottest() {
    Measure<Temperature> hottest = points.get(0).temperature();
    for (Cooling.Moment point : points) {
      hottest = point.temperature().isGreaterThan(hottest) ? point.temperature() : hottest;
    }
    return hottest;
  }

  /** The integral over time, in seconds, of a rate that depends on the temperature in °C. */
  double integral(DoubleUnaryOperator rate, DoubleBinaryOperator overTemperature) {
    double sum = 0;
    for (int i = 1; i < points.size(); i++) {
      double from = celsius(i - 1);
      double to = celsius(i);
      double mean =
          from == to
              ? rate.applyAsDouble(from)
              : overTemperature.applyAsDouble(Math.min(from, to), Math.max(from, to))
                  / Math.abs(to - from);
      sum += mean * seconds(i);
    }
    return sum;
  }

  /** Whether it is one stay at one temperature. */
  boolean isSoak() {
    return points.size() == 2 && celsius(0) == celsius(1);
  }

  double seconds() {
    return duration().in(ShopUnits.SECOND);
  }

  /** The seconds from the point before one to it. */
  double seconds(int point) {
    return points.get(point).time().subtract(points.get(point - 1).time()).in(ShopUnits.SECOND);
  }

  double celsius(int point) {
    return points.get(point).temperature().in(ShopUnits.CELSIUS);
  }

  private Cooling.Moment last() {
    return points.get(points.size() - 1);
  }

  private static Measure<Temperature> inRange(String name, Quantity<Temperature> heat) {
    Measure<Temperature> point = Arguments.temperature(name, heat);
    double celsius = point.in(ShopUnits.CELSIUS);
    if (!(celsius >= COLDEST && celsius <= MELTING)) {
      throw new IllegalArgumentException(
          name
              + " must lie between "
              + Measures.celsius(COLDEST).to(point.getUnit())
              + " and "
              + Measures.celsius(MELTING).to(point.getUnit())
              + ", where iron melts, was "
              + point
              + "; give the temperature of the piece");
    }
    return point;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof FireHistory history && points.equals(history.points);
  }

  @Override
  public int hashCode() {
    return Objects.hash(points);
  }

  /** Time and heat of a soak; else its start, its hottest and its end. */
  @Override
  public String toString() {
    return isSoak()
        ? duration() + " at " + hottest()
        : duration()
            + " from "
            + points.get(0).temperature()
            + " over "
            + hottest()
            + " to "
            + last().temperature();
  }
}
