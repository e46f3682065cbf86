package org.hammerscale.latch;

import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/** How a thumb latch moves: a lever square to the door that lifts a bar along it. */
final class LatchMotion {
  private final Unit<Length> unit;
  private final Measure<Length> travel;
  private final Measure<Length> thumb;
  private final Measure<Length> reach;
  private final Measure<Length> contact;
  private final Measure<Length> catchAt;
  private final Measure<Length> edgeBelow;

  /** The motion, the lever's pivot so far from the bar's far face. */
  LatchMotion(ThumbLatchBuilder asked, Measure<Length> reach) {
    this.unit = asked.unit;
    this.travel = asked.travel;
    this.thumb = asked.thumb;
    this.reach = reach;
    this.contact = asked.contact;
    this.catchAt = asked.catchAt;
    this.edgeBelow = asked.edgeBelow;
  }

  /** How far the lever turns, in radians. */
  double lever(Notes n) {
    double s = n.given("s", "travel of the thumb", travel.in(unit));
    double a = n.given("a", "thumb from the lever's pivot", thumb.in(unit));
    return n.value("φ", "turn of the lever", "asin(s / a)", Math.asin(s / a), ShopUnits.RADIAN);
  }

  /** How far it lifts the bar where it touches it. */
  double atContact(Notes n) {
    double angle = lever(n);
    double z = n.given("z", "pivot to the bar's far face", reach.in(unit));
    return n.length("y", "lift at the contact", "z tan(φ)", z * Math.tan(angle));
  }

  /** How far the bar turns, in radians. */
  double turn(Notes n) {
    double y = atContact(n);
    double x = n.given("x", "contact along the bar", contact.in(unit));
    double u = n.given("u", "edge below the bar's pivot", edgeBelow.in(unit));
    double far = Math.sqrt(x * x + (y - u) * (y - u));
    n.length("q", "contact from the bar's pivot", "√(x² + (y − u)²)", far);
    double angle = Math.atan((y - u) / x) + Math.asin(u / far);
    return n.value(
        "γ", "turn of the bar", "atan((y − u) / x) + asin(u / q)", angle, ShopUnits.RADIAN);
  }

  /** How far the bar's lower edge rises at the catch. */
  double lift(Notes n) {
    double angle = turn(n);
    double u = edgeBelow.in(unit);
    double at = n.given("X", "catch along the bar", catchAt.in(unit));
    double up = at * Math.tan(angle) - u / Math.cos(angle) + u;
    return n.length("Y", "lift at the catch", "X tan(γ) − u / cos(γ) + u", up);
  }

  /** What the thumb presses with against a press on the bar. */
  double force(Notes n, Measure<Force> press, Measure<Length> at) {
    double w = n.value("W", "press on the bar", "", press.getValue(), press.getUnit());
    double far = n.given("X", "where it presses along the bar", at.in(unit));
    double x = n.given("x", "contact along the bar", contact.in(unit));
    double z = n.given("z", "lever's pivot to the bar's far face", reach.in(unit));
    double a = n.given("a", "thumb from the lever's pivot", thumb.in(unit));
    double thumbs = w * (far / x) * (z / a);
    return n.value("F", "force of the thumb", "W (X / x) (z / a)", thumbs, press.getUnit());
  }
}
