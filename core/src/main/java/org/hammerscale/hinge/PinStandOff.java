package org.hammerscale.hinge;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How far a pin must stand off the face of a door that opens back past an {@index architrave}
 * ({@index casing}, {@index "door trim"}) or a {@index plinth}. Opened by 180° the door lies twice
 * the stand-off before its shut face, so it needs half the projection.
 *
 * <pre>{@code
 * PinStandOff.past(inches("3/4")).distance()         // 3/8 in  the pin stands off so far, to fold flat
 * PinStandOff past = PinStandOff.past(inches("3/4")).leaving(inches("1/8"));
 * past.distance()                                    // 7/16 in    with room left behind the door
 * past.openingTo(degrees(120)).distance()            // 0.3333 in  if it need not open all the way
 * }</pre>
 *
 * <p>y = (k − q cos φ) / (1 − cos φ), with the projection q, the clearance k and the opening φ. The
 * face of the door, shut, is taken to lie flush with the surface that the architrave stands on, and
 * the architrave to begin in line with the pin; one that begins further off needs less unless the
 * door opens by the full 180°. Exact, in the projection's unit. Source: plane geometry.
 */
public final class PinStandOff {
  private static final Source GEOMETRY =
      Source.computed("plane geometry of a door's face turned about its pin");
  private static final double HALF_TURN = 180;

  private final Measure<Length> projection;
  private final Measure<Length> clearance;
  private final double opening;
  private final Unit<Length> unit;

  private PinStandOff(Measure<Length> projection, Measure<Length> clearance, double opening) {
    this.projection = projection;
    this.clearance = clearance;
    this.opening = opening;
    this.unit = projection.getUnit();
  }

  /**
   * The stand-off to pass a projection touching, opened by 180°.
   *
   * @param projection how far the architrave stands out from the shut door's face, more than zero
   * @return the stand-off
   * @throws IllegalArgumentException if the projection is not more than zero
   */
  public static PinStandOff past(Quantity<Length> projection) {
    Measure<Length> out = Arguments.positive("projection", projection);
    return new PinStandOff(out, out.withValue(0), HALF_TURN);
  }

  /**
   * The same with room left between door and architrave.
   *
   * @param room zero or more
   * @return the stand-off
   * @throws IllegalArgumentException if the room is negative
   */
  public PinStandOff leaving(Quantity<Length> room) {
    return new PinStandOff(projection, Arguments.notNegative("room", room), opening);
  }

  /**
   * The same for a door that opens less.
   *
   * @param angle the opening from shut, from 90° to 180°
   * @return the stand-off
   * @throws IllegalArgumentException if the angle lies outside its range
   */
  public PinStandOff openingTo(Quantity<Angle> angle) {
    Objects.requireNonNull(angle, "angle");
    double wanted = Arguments.angle("opening", angle, HALF_TURN).in(ShopUnits.DEGREE);
    if (wanted < HALF_TURN / 2) {
      throw new IllegalArgumentException(
          "opening must be at least 90° for the door to come near the architrave, was "
              + angle
              + "; it needs no stand-off");
    }
    return new PinStandOff(projection, clearance, wanted);
  }

  /**
   * The least distance of the pin's centre from the face of the door.
   *
   * @return the distance, exact, in the projection's unit
   */
  public Measure<Length> distance() {
    return Measure.of(distance(Notes.NONE), unit);
  }

  /** {@return how the distance was found} */
  public Working working() {
    return Notes.taken("stand-off of a pin", unit, this::distance).withSource(GEOMETRY);
  }

  private double distance(Notes n) {
    double q = n.given("q", "projection of the architrave", projection.in(unit));
    double k = n.given("k", "room left", clearance.in(unit));
    double degrees = n.value("φ", "opening from shut", "", opening, ShopUnits.DEGREE);
    double sine = Math.sin((degrees - 90) * Math.PI / 180); // exact at 90°, where a cosine is not
    return n.length(
        "y",
        "pin's centre from the face of the door",
        "(k + q sin((φ − 90) π / 180)) / (1 + sin((φ − 90) π / 180))",
        (k + q * sine) / (1 + sine));
  }

  /** What it passes. */
  @Override
  public String toString() {
    return "stand-off of a pin to open "
        + Measure.of(opening, ShopUnits.DEGREE)
        + " past a projection of "
        + projection;
  }
}
