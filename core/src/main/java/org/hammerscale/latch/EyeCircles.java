package org.hammerscale.latch;

import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * Where a hook's two eyes lie to each other as the door turns: circles about the pin and about the
 * eye on the wall.
 */
final class EyeCircles {
  private final Unit<Length> unit;
  private final Measure<Length> doorAlong;
  private final Measure<Length> doorOut;
  private final Measure<Length> wallAlong;
  private final Measure<Length> wallOut;

  EyeCircles(CabinHookBuilder asked) {
    this.unit = asked.unit;
    this.doorAlong = asked.doorAlong;
    this.doorOut = asked.doorOut;
    this.wallAlong = asked.wallAlong;
    this.wallOut = asked.wallOut;
  }

  /** On which side of the line from pin to wall eye the door's eye stands. */
  private double side(Measure<Angle> at) {
    double around = at.in(ShopUnits.RADIAN) + lead() - towardsWall();
    return Math.sin(around) < 0 ? -1 : 1;
  }

  private double lead() {
    return Math.atan2(doorOut.in(unit), doorAlong.in(unit));
  }

  private double towardsWall() {
    return Math.atan2(wallOut.in(unit), wallAlong.in(unit));
  }

  private double wallFromPin() {
    return Math.hypot(wallAlong.in(unit), wallOut.in(unit));
  }

  private double doorFromPin() {
    return Math.hypot(doorAlong.in(unit), doorOut.in(unit));
  }

  /** Whether a hook of this length goes from eye to eye at any opening. */
  boolean reach(Measure<Length> seatToSeat) {
    return Math.abs(cosine(seatToSeat.in(unit))) <= 1;
  }

  /** Of the angle at the pin between the two eyes. */
  private double cosine(double l) {
    double w = wallFromPin();
    double rho = doorFromPin();
    return (w * w + rho * rho - l * l) / (2 * w * rho);
  }

  /** The angle at which the circles cross, on one side. */
  private double crossing(Measure<Length> seatToSeat, double side) {
    if (!reach(seatToSeat)) {
      double w = wallFromPin();
      double rho = doorFromPin();
      throw new IllegalArgumentException(
          "seatToSeat must be from "
              + Measure.of(Math.abs(w - rho), unit)
              + " to "
              + Measure.of(w + rho, unit)
              + " to reach from eye to eye, was "
              + seatToSeat
              + "; take a hook between these");
    }
    return towardsWall() - lead() + side * Math.acos(cosine(seatToSeat.in(unit)));
  }

  /** The opening near another at which a hook of a length holds the door, on the same side. */
  Measure<Angle> near(Measure<Angle> wanted, Measure<Length> seatToSeat) {
    double angle = wrapped(Math.toDegrees(crossing(seatToSeat, side(wanted))));
    double whole = Math.rint((wanted.in(ShopUnits.DEGREE) - angle) / 360) * 360;
    return Measure.of(angle + whole, ShopUnits.DEGREE);
  }

  /** The opening that the same length gives on the other side. */
  Measure<Angle> acrossFrom(Measure<Angle> opening, Measure<Length> seatToSeat) {
    double angle = Math.toDegrees(crossing(seatToSeat, -side(opening)));
    return Measure.of(wrapped(angle), ShopUnits.DEGREE);
  }

  private static double wrapped(double degrees) {
    return degrees - 360 * Math.ceil((degrees - 180) / 360);
  }

  double distance(Notes n, double at) {
    double theta = n.value("θ", "opening", "", at, ShopUnits.RADIAN);
    double r = n.given("r", "eye on the door, along it", doorAlong.in(unit));
    double out = n.given("n", "eye on the door, off the pin's line", doorOut.in(unit));
    double wx = n.given("X", "eye on the wall, along the shut door", wallAlong.in(unit));
    double wy = n.given("Y", "eye on the wall, off the pin's line", wallOut.in(unit));
    double x =
        n.length(
            "x",
            "door's eye along",
            "r cos(θ) − n sin(θ)",
            r * Math.cos(theta) - out * Math.sin(theta));
    double y =
        n.length(
            "y",
            "door's eye off",
            "r sin(θ) + n cos(θ)",
            r * Math.sin(theta) + out * Math.cos(theta));
    double apart = Math.sqrt((x - wx) * (x - wx) + (y - wy) * (y - wy));
    return n.length("l", "from seat to seat", "√((x − X)² + (y − Y)²)", apart);
  }

  double arm(Notes n, double theta) {
    double l = distance(n, theta);
    double r = doorAlong.in(unit);
    double out = doorOut.in(unit);
    double wx = wallAlong.in(unit);
    double wy = wallOut.in(unit);
    double x = r * Math.cos(theta) - out * Math.sin(theta);
    double y = r * Math.sin(theta) + out * Math.cos(theta);
    double cross = wx * y - wy * x;
    return n.length(
        "a", "line of the hook from the pin", "√((X y − Y x)²) / l", Math.abs(cross) / l);
  }
}
