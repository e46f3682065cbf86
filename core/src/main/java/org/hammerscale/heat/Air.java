package org.hammerscale.heat;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Source;

/**
 * The air round a hot bar: how warm it is, and whether it is still or a {@index draught}. Most of
 * the heat leaves as radiation; still air takes some 7 % of it at 1150 °C, 14 % at 800 °C.
 *
 * <pre>{@code
 * Bar bar = Bar.of(Section.round(millimetres(20)), Material.MILD_STEEL);
 * Cooling cooling = Cooling.from(celsius(1150), bar);
 * Air draught = Air.moving(metres(2), seconds(1));
 * draught                              // draught of 2 m/s at 20 °C  a door that stands open
 * cooling.time().likely()              // 80.39 s                    in still air, unless told otherwise
 * cooling.in(draught).time().likely()  // 68.82 s                    what the open door leaves of it
 * }</pre>
 *
 * <p>Walls and ground are as warm as the air. Source: Churchill and Chu 1975; for a draught
 * Churchill and Bernstein 1977; good to about 20 %, which is 3 % of the whole.
 */
public final class Air {
  private static final Measure<Temperature> ROOM = Measures.celsius(20);

  /** Still air of a shop at 20 °C. */
  public static final Air STILL = new Air(Kind.STILL, 0, ROOM);

  private final Kind kind;
  private final double number;
  private final Measure<Temperature> temperature;

  private enum Kind {
    STILL,
    DRAUGHT,
    GIVEN
  }

  private Air(Kind kind, double number, Measure<Temperature> temperature) {
    this.kind = kind;
    this.number = number;
    this.temperature = temperature;
  }

  /**
   * A draught across the bar, at 20 °C.
   *
   * @param distance how far the air moves, more than zero
   * @param time in which time, more than zero
   * @return the air
   * @throws IllegalArgumentException if one is not more than zero
   */
  public static Air moving(Quantity<Length> distance, Quantity<Time> time) {
    double metres = Arguments.positive("distance", distance).in(ShopUnits.METRE);
    double seconds = Arguments.positiveTime("time", time).in(ShopUnits.SECOND);
    return new Air(Kind.DRAUGHT, metres / seconds, ROOM);
  }

  /**
   * Air that takes heat by a fixed coefficient, at 20 °C; zero for radiation alone.
   *
   * @param wattsPerSquareMetreKelvin the coefficient, 0 to 1000 W/(m² K); still air has 10 to 20
   * @return the air
   * @throws IllegalArgumentException if the coefficient is out of that range
   */
  public static Air taking(double wattsPerSquareMetreKelvin) {
    if (!(wattsPerSquareMetreKelvin >= 0 && wattsPerSquareMetreKelvin <= 1000)) {
      throw new IllegalArgumentException(
          "wattsPerSquareMetreKelvin must lie between 0 and 1000, was "
              + wattsPerSquareMetreKelvin
              + "; still air has 10 to 20");
    }
    return new Air(Kind.GIVEN, wattsPerSquareMetreKelvin, ROOM);
  }

  /**
   * The same air in a warmer or colder shop.
   *
   * @param room the temperature of air and walls, −60 to 100 °C
   * @return the air
   * @throws IllegalArgumentException if the temperature is out of that range
   */
  public Air at(Quantity<Temperature> room) {
    Measure<Temperature> point = Arguments.temperature("room", room);
    double celsius = point.in(ShopUnits.CELSIUS);
    if (!(celsius >= -60 && celsius <= 100)) {
      throw new IllegalArgumentException(
          "room must lie between −60 °C and 100 °C, was "
              + point
              + "; give the temperature of the shop, not of the fire");
    }
    return new Air(kind, number, point);
  }

  /** {@return the temperature of air and walls} */
  public Measure<Temperature> temperature() {
    return temperature;
  }

  /** {@return where its coefficient comes from} */
  public Source source() {
    return switch (kind) {
      case STILL ->
          Source.read(
              "Churchill and Chu, International Journal of Heat and Mass Transfer 18, 1975",
              "horizontal cylinder and vertical plate, as an open-source library of heat transfer"
                  + " has them; plates that lie by McAdams, Heat Transmission, 1954 (from memory)");
      case DRAUGHT ->
          Source.read(
              "Churchill and Bernstein, Journal of Heat Transfer 99, 1977",
              "cylinder in crossflow, as public pages quote it");
      case GIVEN -> Source.commonPractice("coefficient given by the caller");
    };
  }

  /** The coefficient in W/(m² K) between a surface and a room in kelvins. */
  double coefficient(Body body, double surface, double room) {
    return switch (kind) {
      case STILL -> Convection.still(body, surface, room);
      case DRAUGHT -> Convection.draught(body, surface, room, number);
      case GIVEN -> number;
    };
  }

  /** How it moves and how warm it is. */
  @Override
  public String toString() {
    String what =
        switch (kind) {
          case STILL -> "still air";
          case DRAUGHT -> "draught of " + Measure.of(number, ShopUnits.METRE) + "/s";
          case GIVEN -> "air taking " + number + " W/(m² K)";
        };
    return what + " at " + temperature;
  }
}
