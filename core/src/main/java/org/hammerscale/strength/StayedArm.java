package org.hammerscale.strength;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
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
 * StayedArm sign = StayedArm.carrying(newtons(400), millimetres(600)).heldAt(millimetres(500), degrees(40));
 * sign.stay()        // 746.7 N   along the stay
 * sign.thrust()      // 572 N     level, between arm and wall
 * sign.pinForce()    // -80 N     the arm's end is lifted off its pin
 * sign.bendingLever()   // 100 mm    it is bent as a cantilever of that length
 * }</pre>
 *
 * <p>Exact as statics of a pinned arm; the arm is bent besides between wall, stay and load. Forces
 * are in the load's unit. Source: statics.
 */
public final class StayedArm {
  private static final Source STATICS = Source.computed("balance of a pinned arm on a stay");

  private final Measure<Force> load;
  private final Measure<Length> distance;

  private final Measure<Length> along;
  private final Measure<Angle> angle;

  private StayedArm(
      Measure<Force> load, Measure<Length> distance, Measure<Length> along, Measure<Angle> angle) {
    this.load = load;
    this.distance = distance;
    this.along = along;
    this.angle = angle;
  }

  /** An arm under its load, to be held by a stay or a brace. */
  public static final class Unheld {
    private final Measure<Force> load;
    private final Measure<Length> distance;

    private Unheld(Measure<Force> load, Measure<Length> distance) {
      this.load = load;
      this.distance = distance;
    }

    /**
     * The arm on its stay or brace.
     *
     * @param alongArm a, from the wall to where it is held, more than zero
     * @param angle α, between arm and stay, 1° to 89°; its tangent is height ÷ a
     * @return the arm
     * @throws IllegalArgumentException if an argument lies outside its range
     */
    public StayedArm heldAt(Quantity<Length> alongArm, Quantity<Angle> angle) {
      Measure<Length> along = Arguments.positive("alongArm", alongArm);
      Measure<Angle> up = Arguments.angle("angle", angle, 89, "measure it between arm and stay");
      if (up.in(ShopUnits.DEGREE) < 1) {
        throw new IllegalArgumentException(
            "angle must be at least 1°, was " + up + "; a stay along the arm holds nothing");
      }
      return new StayedArm(load, distance, along, up);
    }

    /** Load and distance. */
    @Override
    public String toString() {
      return "arm under " + load + " at " + distance + ", not held yet";
    }
  }

  /**
   * An arm under a load.
   *
   * @param load W, more than zero
   * @param distance L, from the wall to the load, more than zero
   * @return the arm, to be held
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public static Unheld carrying(Quantity<Force> load, Quantity<Length> distance) {
    return new Unheld(
        Arguments.positiveForce("load", load), Arguments.positive("distance", distance));
  }

  /**
   * The force in the stay, or in a brace, along itself.
   *
   * @return S, exact
   */
  public Measure<Force> stay() {
    return load.withValue(stay(Notes.NONE));
  }

  /**
   * The level force between arm and wall: the arm presses on it under a stay, pulls at it over a
   * brace.
   *
   * @return S cos α, exact
   */
  public Measure<Force> thrust() {
    return load.withValue(thrust(Notes.NONE));
  }

  /**
   * The upright force of the wall on the arm's pin; negative where the load beyond the stay lifts
   * it.
   *
   * @return W − S sin α, exact
   */
  public Measure<Force> pinForce() {
    return load.withValue(pin(Notes.NONE));
  }

  /**
   * The cantilever that the load would bend at the wall as much as it bends this arm, for {@link
   * BracketArm}: L − a for a load beyond the stay, L (a − L) / a for one before it.
   *
   * @return the lever, exact; zero if the load hangs at the stay
   */
  public Measure<Length> bendingLever() {
    return distance.withValue(lever(Notes.NONE));
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

  /** {@return the working of {@link #bendingLever}} */
  public Working leverWorking() {
    return taken("lever that bends the arm", this::lever);
  }

  private Working taken(String title, Notes.Calculation calculation) {
    return Notes.taken(title, distance.getUnit(), calculation)
        .withSource(STATICS)
        .withCautions(cautions());
  }

  private double stay(Notes n) {
    double w = n.value("W", "load", "", load.getValue(), unit());
    double l = n.given("L", "load from the wall", distance.getValue());
    double a = n.given("a", "stay from the wall, along the arm", along.in(distance.getUnit()));
    double alpha = alpha(n);
    return n.value(
        "S", "force in the stay", "W L / (a sin(α))", w * l / (a * Math.sin(alpha)), unit());
  }

  private double thrust(Notes n) {
    double s = stay(n);
    return n.value("T", "level, at the wall", "S cos(α)", s * Math.cos(alpha(Notes.NONE)), unit());
  }

  private double pin(Notes n) {
    double s = stay(n);
    double up = s * Math.sin(alpha(Notes.NONE));
    return n.value("P", "upright, at the pin", "W − S sin(α)", load.getValue() - up, unit());
  }

  private double lever(Notes n) {
    double l = n.given("L", "load from the wall", distance.getValue());
    double a = n.given("a", "stay from the wall, along the arm", along.in(distance.getUnit()));
    return l > a
        ? n.length("b", "lever", "L − a", l - a)
        : n.length("b", "lever", "L (a − L) / a", l * (a - l) / a);
  }

  private double alpha(Notes n) {
    return n.value("α", "between arm and stay", "", angle.in(ShopUnits.RADIAN), ShopUnits.RADIAN);
  }

  private Unit<Force> unit() {
    return load.getUnit();
  }

  /** Load, distance and stay. */
  @Override
  public String toString() {
    return "arm under " + load + " at " + distance + ", held at " + along + ", " + angle;
  }
}
