package org.hammerscale.punching;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/** What a punch knocks out of a bar: the area of its end times a thickness, measured or assumed. */
final class Slug {
  /** Why it is an estimate. */
  static final Source ASSUMED =
      Source.commonPractice(
          "slug a third as thick as the bar, an assumption: no published figure is known. Geometry"
              + " bounds it by nothing and the whole hole");

  private static final Source MEASURED = Source.commonPractice("slug as thick as the caller says");

  private final Hole punch;
  private final Measure<Length> through;
  private final @Nullable Measure<Length> thickness;

  private Slug(Hole punch, Measure<Length> through, @Nullable Measure<Length> thickness) {
    this.punch = punch;
    this.through = through;
    this.thickness = thickness;
  }

  /** A slug of unknown thickness. */
  static Slug of(Hole punch, Measure<Length> through) {
    return new Slug(punch, through, null);
  }

  /** A slug of this thickness; zero for none. */
  Slug measured(Quantity<Length> newThickness) {
    Measure<Length> known = Arguments.notNegative("slug thickness", newThickness);
    if (known.isGreaterThan(through)) {
      throw new IllegalArgumentException(
          "slug thickness must be at most the "
              + through
              + " that the hole goes through, was "
              + known
              + "; give the thickness of the bar for a hole that is drilled");
    }
    return new Slug(punch, through, known);
  }

  /** The same thickness, knocked out by another punch. */
  Slug by(Hole newPunch) {
    return new Slug(newPunch, through, thickness);
  }

  /** The hole's whole volume: no slug is larger. */
  double full(Notes n, Unit<Length> unit) {
    double h = punch.area(n, unit);
    double t = n.given("t", "thickness of the bar", through.in(unit));
    return n.volume("F", "full slug", "H t", h * t);
  }

  /** The likely volume, in the cube of a unit. Notes H and t on the way, its thickness as q. */
  double volume(Notes n, Unit<Length> unit) {
    double h = punch.area(n, unit);
    double t = n.given("t", "thickness of the bar", through.in(unit));
    double q = thickness(n, t, unit);
    return n.volume("S", "slug", "H q", h * q);
  }

  /** Its likely thickness as q. */
  double thickness(Notes n, double t, Unit<Length> unit) {
    return thickness == null
        ? n.length("q", "slug thickness, assumed", "t / 3", t / 3)
        : n.given("q", "slug thickness", thickness.in(unit));
  }

  Measure<Volume> full(Unit<Length> unit) {
    return cubic(full(Notes.NONE, unit), unit);
  }

  Estimate<Volume> estimate(Unit<Length> unit) {
    Measure<Volume> likely = cubic(volume(Notes.NONE, unit), unit);
    return isKnown()
        ? Estimate.exact(likely)
        : Estimate.of(likely.withValue(0), likely, full(unit));
  }

  boolean isKnown() {
    return thickness != null;
  }

  /** The least and the most of its thickness as a part of the bar's. */
  double leastPart() {
    return thickness == null ? 0 : thickness.ratio(through);
  }

  double mostPart() {
    return thickness == null ? 1 : thickness.ratio(through);
  }

  Source source() {
    return isKnown() ? MEASURED : ASSUMED;
  }

  static Measure<Volume> cubic(double value, Unit<Length> unit) {
    Measure<Length> one = Measure.of(1, unit);
    return Measures.volume(one, Measures.area(one, one)).withValue(value);
  }
}
