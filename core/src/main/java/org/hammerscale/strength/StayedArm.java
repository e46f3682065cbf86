package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The level arm of a sign or a shelf, held at the wall by a pin and farther out by a {@index stay}
 * that rises to the wall above, or by a {@index brace} that comes from the wall below: what each
 * bears. S = W L / (a sin α), pulling in a stay, pushing in a brace; the arm presses on the wall
 * with S cos α, or is pulled off it; its pin bears W − S sin α upwards.
 *
 * <pre>{@code
 * StayedArm sign = StayedArm.carrying(newtons(400), millimetres(600)).tiedAt(millimetres(500)).tiedToWall(millimetres(400));
 * sign.stay()        // 768.4 N   along the stay
 * sign.thrust()      // 600 N     level, between arm and wall
 * sign.pinForce()    // -80 N     the arm's end is lifted off its pin
 * }</pre>
 *
 * <p>Exact as statics of a pinned arm; the arm is bent besides between wall, stay and load. Forces
 * are in the load's unit. Source: statics.
 */
public final class StayedArm {
  private static final Source STATICS = Source.computed("balance of a pinned arm on a stay");

  private final Measure<Force> load;
  private final Measure<Length> distance;

  /** Along the arm, and up the wall, in the unit of the distance; zero if not told. */
  private final double along;

  private final double rise;

  private StayedArm(Measure<Force> load, Measure<Length> distance, double along, double rise) {
    this.load = load;
    this.distance = distance;
    this.along = along;
    this.rise = rise;
  }

  /**
   * An arm under a load.
   *
   * @param load W, more than zero
   * @param distance L, from the wall to the load, more than zero
   * @return the arm, whose stay must still be told
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public static StayedArm carrying(Quantity<Force> load, Quantity<Length> distance) {
    return new StayedArm(
        Arguments.positiveForce("load", load), Arguments.positive("distance", distance), 0, 0);
  }

  /**
   * The same with a stay from the arm to a place on the wall.
   *
   * @param alongArm a, from the wall to where it holds the arm, more than zero
   * @return the arm, of which {@link #tiedToWall} must still be told
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public StayedArm tiedAt(Quantity<Length> alongArm) {
    double a = Arguments.positive("alongArm", alongArm).in(distance.getUnit());
    return new StayedArm(load, distance, a, rise);
  }

  /**
   * The same with the other end of its stay.
   *
   * @param height h, above the arm's pin, of a brace below it; more than zero
   * @return the arm
   * @throws IllegalArgumentException if the height is not more than zero
   */
  public StayedArm tiedToWall(Quantity<Length> height) {
    double h = Arguments.positive("height", height).in(distance.getUnit());
    return new StayedArm(load, distance, along, h);
  }

  /**
   * The force in the stay, or in a brace, along itself.
   *
   * @return S, exact
   * @throws IllegalStateException if the stay has not been told
   */
  public Measure<Force> stay() {
    return load.withValue(stay(Notes.NONE));
  }

  /**
   * The level force between arm and wall: the arm presses on it under a stay, pulls at it over a
   * brace.
   *
   * @return S cos α, exact
   * @throws IllegalStateException if the stay has not been told
   */
  public Measure<Force> thrust() {
    return load.withValue(thrust(Notes.NONE));
  }

  /**
   * The upright force of the wall on the arm's pin; negative where the load beyond the stay lifts
   * it.
   *
   * @return W − S sin α, exact
   * @throws IllegalStateException if the stay has not been told
   */
  public Measure<Force> pinForce() {
    return load.withValue(pin(Notes.NONE));
  }

  /** {@return against lifting, buckling and wind, and that no design is certified} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    cautions.add(
        Caution.limit(
            "hold the pin down as well as up, stiffen a slender brace or arm against buckling, and"
                + " reckon the wind on a sign, which swings and tugs",
            STATICS));
    cautions.addAll(LoadCautions.OF_STRENGTH);
    return List.copyOf(cautions);
  }

  /** {@return the working of {@link #stay}} */
  public Working working() {
    return taken("force in the stay", this::stay);
  }

  /** {@return the working of {@link #thrust}} */
  public Working thrustWorking() {
    return taken("thrust of the arm", this::thrust);
  }

  /** {@return the working of {@link #pinForce}} */
  public Working pinWorking() {
    return taken("force on the arm's pin", this::pin);
  }

  private Working taken(String title, Notes.Calculation calculation) {
    told();
    return Notes.taken(title, distance.getUnit(), calculation)
        .withSource(STATICS)
        .withCautions(cautions());
  }

  private double stay(Notes n) {
    told();
    double w = n.value("W", "load", "", load.getValue(), unit());
    double l = n.given("L", "load from the wall", distance.getValue());
    double a = n.given("a", "stay from the wall, along the arm", along);
    double h = n.given("h", "stay up the wall", rise);
    double s = n.length("s", "length of the stay", "√(a² + h²)", Math.sqrt(a * a + h * h));
    return n.value("S", "force in the stay", "W L s / (a h)", w * l * s / (a * h), unit());
  }

  private double thrust(Notes n) {
    double force = stay(n);
    double s = Math.sqrt(along * along + rise * rise);
    return n.value("T", "level, at the wall", "S a / s", force * along / s, unit());
  }

  private double pin(Notes n) {
    double force = stay(n);
    double s = Math.sqrt(along * along + rise * rise);
    double w = load.getValue();
    return n.value("P", "upright, at the pin", "W − S h / s", w - force * rise / s, unit());
  }

  private void told() {
    if (!(along > 0 && rise > 0)) {
      throw new IllegalStateException("stay must be told; say it with tiedAt(…) and tiedToWall(…)");
    }
  }

  private Unit<Force> unit() {
    return load.getUnit();
  }

  /** Load, distance and stay. */
  @Override
  public String toString() {
    return "arm under "
        + load
        + " at "
        + distance
        + (along > 0 && rise > 0
            ? ", held at " + Measure.of(along, distance.getUnit())
            : ", not held yet");
  }
}
