package org.hammerscale.fastening;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A {@index "carriage bolt"} (US), {@index "coach bolt"} (GB): a round head on a square neck that
 * keeps it from turning, through iron, board and ledge to a nut. Its length under the head is the
 * grip, the washer, the nut and two threads that stand out: L = G + W + 7/8 D + 2 P.
 *
 * <pre>{@code
 * CarriageBolt bolt = CarriageBolt.of(inches("3/8"));
 * bolt.squareHole()                         // 25/64 in    in the iron, if the head sits on it
 * bolt.clearanceHole()                      // 7/16 in     in the iron, if the nut sits on it
 * CarriageBolt door = bolt.through(inches("1/4")).through(inches(1)).through(inches("7/8"));
 * door.length().upTo(QUARTER)               // 2 3/4 in    to buy, for strap, board and ledge
 * door.withWasher(inches("1/16")).length()  // 2 41/64 in  at least, with a washer
 * }</pre>
 *
 * <p>Sizes are the standards' greatest, the length is a rule: buy the next longer bolt, and cut it
 * where the thread would not reach the nut.
 *
 * <p>Source: ASME B18.5 in inches, DIN 603 in millimetres, from memory.
 */
public final class CarriageBolt {
  private static final Source INCH =
      Source.fromMemory("ASME B18.5", "round head square neck bolts");
  private static final Source METRIC = Source.fromMemory("DIN 603", "mushroom head square neck");
  private static final Source LENGTH =
      Source.commonPractice("a nut of 7/8 of the diameter, and two threads that stand out of it");

  /** Diameter, head and neck at most, and pitch, in the unit. */
  private record Row(Unit<Length> unit, double diameter, double head, double neck, double pitch) {}

  private static final List<Row> ROWS =
      List.of(
          inch(1 / 4.0, 0.594, 0.260, 20),
          inch(5 / 16.0, 0.719, 0.324, 18),
          inch(3 / 8.0, 0.844, 0.388, 16),
          inch(7 / 16.0, 0.969, 0.452, 14),
          inch(1 / 2.0, 1.094, 0.515, 13),
          inch(5 / 8.0, 1.344, 0.642, 11),
          inch(3 / 4.0, 1.594, 0.768, 10),
          metric(5, 13.55, 5.48, 0.8),
          metric(6, 16.55, 6.48, 1),
          metric(8, 20.65, 8.58, 1.25),
          metric(10, 24.65, 10.58, 1.5),
          metric(12, 30.65, 12.7, 1.75),
          metric(16, 38.8, 16.7, 2));

  private final Row row;
  private final Layers layers;
  private final Measure<Length> washer;

  private CarriageBolt(Row row, Layers layers, Measure<Length> washer) {
    this.row = row;
    this.layers = layers;
    this.washer = washer;
  }

  private static Row inch(double diameter, double head, double neck, double threads) {
    return new Row(ShopUnits.INCH, diameter, head, neck, 1 / threads);
  }

  private static Row metric(double diameter, double head, double neck, double pitch) {
    return new Row(ShopUnits.MILLIMETRE, diameter, head, neck, pitch);
  }

  /**
   * The bolt of a nominal diameter, without a washer.
   *
   * @param diameter 1/4, 5/16, 3/8, 7/16, 1/2, 5/8 or 3/4 in, or 5, 6, 8, 10, 12 or 16 mm
   * @return the bolt, with sizes in its standard's unit
   * @throws IllegalArgumentException if neither standard has such a diameter
   */
  public static CarriageBolt of(Quantity<Length> diameter) {
    Measure<Length> wanted = Arguments.positive("diameter", diameter);
    for (Row row : ROWS) {
      if (Measure.of(row.diameter(), row.unit()).isEquivalentTo(wanted)) {
        return new CarriageBolt(row, Layers.NONE, Measure.of(0, row.unit()));
      }
    }
    throw new IllegalArgumentException(
        "diameter must be 1/4, 5/16, 3/8, 7/16, 1/2, 5/8 or 3/4 in, or 5, 6, 8, 10, 12 or 16 mm,"
            + " was "
            + wanted
            + "; take the nearest of these");
  }

  /**
   * The same bolt with a washer under its nut, as on wood it needs.
   *
   * @param thickness of the washer, not negative
   * @return the bolt
   * @throws IllegalArgumentException if the thickness is negative
   */
  public CarriageBolt withWasher(Quantity<Length> thickness) {
    return new CarriageBolt(row, layers, Arguments.notNegative("thickness", thickness));
  }

  /** {@return its nominal diameter D} */
  public Measure<Length> diameter() {
    return size(row.diameter());
  }

  /** {@return the diameter of its head, at most} */
  public Measure<Length> headDiameter() {
    return size(row.head());
  }

  /** {@return the side of its square neck, at most; its nominal size is the diameter} */
  public Measure<Length> neck() {
    return size(row.neck());
  }

  /** {@return the pitch P of its coarse thread} */
  public Measure<Length> pitch() {
    return size(row.pitch());
  }

  /**
   * The side of a square hole in the iron for the neck, where the head sits on the iron: the neck
   * up to the next 1/64 in, or half a millimetre.
   *
   * @return the side, in the standard's unit
   */
  public Measure<Length> squareHole() {
    Graduation<Length> step =
        row.unit().equals(ShopUnits.INCH) ? Graduation.SIXTY_FOURTH : Graduation.HALF_MILLIMETRE;
    return neck().upTo(step);
  }

  /**
   * The round hole in the iron where the nut sits on it: 1/16 in more than the diameter, or a
   * millimetre.
   *
   * @return the diameter, in the standard's unit. Source: common practice
   */
  public Measure<Length> clearanceHole() {
    return diameter()
        .add(
            row.unit().equals(ShopUnits.INCH)
                ? Measures.inches(1 / 16.0)
                : Measures.millimetres(1));
  }

  /**
   * The same bolt through one thickness more: iron, board or ledge.
   *
   * @param thickness more than zero
   * @return the bolt
   * @throws IllegalArgumentException if the thickness is not more than zero
   */
  public CarriageBolt through(Quantity<Length> thickness) {
    return new CarriageBolt(row, layers.and(thickness), washer);
  }

  /**
   * The length under the head that all it goes through asks for.
   *
   * @return the least length, by rule, in the first thickness's unit; round it up to what is sold
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Measure<Length> length() {
    return Measure.of(length(Notes.NONE), layers.unit());
  }

  /**
   * How the length was found.
   *
   * @return the working of {@link #length}
   * @throws IllegalArgumentException if it goes through nothing yet
   */
  public Working working() {
    return Notes.taken("length of a " + this, layers.unit(), this::length)
        .withSource(LENGTH)
        .withSource(row.unit().equals(ShopUnits.INCH) ? INCH : METRIC);
  }

  private double length(Notes n) {
    Unit<Length> unit = layers.unit();
    double g = layers.grip(n);
    double w = n.given("W", "washer", washer.in(unit));
    double d = n.given("D", "diameter", diameter().in(unit));
    double p = n.given("P", "pitch of the thread", pitch().in(unit));
    double l = g + w + 7 / 8d * d + 2 * p;
    return n.length("L", "length under the head", "G + W + 7 / 8 D + 2 P", l);
  }

  private Measure<Length> size(double value) {
    return Measure.of(value, row.unit());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CarriageBolt that
        && row.equals(that.row)
        && layers.equals(that.layers)
        && washer.equals(that.washer);
  }

  @Override
  public int hashCode() {
    return Objects.hash(row, layers, washer);
  }

  /** The diameter. */
  @Override
  public String toString() {
    return diameter() + " carriage bolt";
  }
}
