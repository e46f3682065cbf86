package org.hammerscale.bending;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A joggle: two equal bends, one against the other, that move the bar sideways by an offset and let
 * it run on parallel. Other names: {@index set}, {@index offset}, {@index jog}, {@index crank}.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches(1), inches("1/4"));
 * Joggle joggle = Joggle.by(inches("1/4"), degrees(30), inches("1/4"), strap);
 * joggle.reach()                                       // 0.634 in  how much of the strap's length it spans
 * joggle.developedLength()                             // 0.6917 in  bar in it
 * joggle.takeUp()                                      // 0.05776 in  how much shorter it makes the strap
 * joggle.over(inches(1)).angle().to(ShopUnits.DEGREE)  // 15.57°  how flat it is, given a whole inch
 * }</pre>
 *
 * <p>On the mean line of radius ρ = R + t/2: the offset is h = 2 ρ (1 − cos α) + g sin α with the
 * straight g between the bends, the run x = 2 ρ sin α + g cos α, the bar L = 2 ρ α + g. Exact as
 * geometry, in the offset's unit.
 *
 * <p>Source: plane geometry; Ilgen, <cite>Forge Work</cite>, 1912, sec. 111 for the mean line.
 */
public final class Joggle extends BentBar {
  private static final double MOST = 90;

  private final Measure<Length> offset;
  private final Measure<Angle> angle;
  private final Measure<Length> radius;

  private Joggle(
      Measure<Length> offset, Measure<Angle> angle, Measure<Length> radius, Section section) {
    super(section, offset.getUnit());
    this.offset = offset;
    this.angle = angle;
    this.radius = radius;
  }

  /**
   * A joggle by its offset and the angle of its bends.
   *
   * @param offset how far the bar moves sideways, face to same face, more than zero
   * @param angle the angle of either bend, more than 0° and at most 90°
   * @param insideRadius the inside radius of either bend, not negative
   * @param section the bar, its thickness in the direction of the offset
   * @return the joggle
   * @throws IllegalArgumentException if a value lies outside its range, or the two bends alone give
   *     more than the offset
   */
  public static Joggle by(
      Quantity<Length> offset,
      Quantity<Angle> angle,
      Quantity<Length> insideRadius,
      Section section) {
    Measure<Angle> turned = Arguments.angle("angle", angle, MOST);
    Joggle joggle =
        new Joggle(
            Arguments.positive("offset", offset),
            turned,
            Arguments.notNegative("inside radius", insideRadius),
            section);
    double least = 2 * joggle.rho() * (1 - Math.cos(joggle.radians()));
    if (!(turned.getValue() > 0) || least > joggle.offset.in(joggle.unit()) * (1 + 1e-12)) {
      throw new IllegalArgumentException(
          "angle must be more than 0° and such that both bends give no more than the offset of "
              + joggle.offset
              + ", was "
              + turned
              + ", which gives "
              + joggle.measure(least)
              + "; take an angle between, or a smaller radius");
    }
    return joggle;
  }

  /**
   * The same joggle spread over a run along the bar: g² = x² + h² − 4 ρ h, and the angle follows.
   *
   * @param run the distance along the bar from the start of the first bend to the end of the
   *     second, enough for both
   * @return the joggle, with the angle that it takes, in radians
   * @throws IllegalArgumentException if the run is too short for the radius, or needs more than 90°
   */
  public Joggle over(Quantity<Length> run) {
    double x = Arguments.positive("run", run).in(unit());
    double h = offset.in(unit());
    double rho = rho();
    double square = Math.max(x * x + h * h - 4 * rho * h, 0);
    double least = h < 2 * rho ? Math.sqrt(h * (4 * rho - h)) : 2 * rho;
    if (x < least) {
      throw new IllegalArgumentException(
          "run must be at least "
              + measure(least)
              + " for this offset and radius, was "
              + measure(x)
              + "; take a longer run or a smaller radius");
    }
    double bend = Math.atan2(x, 2 * rho - h) - Math.atan2(Math.sqrt(square), 2 * rho);
    return new Joggle(offset, Measure.of(bend, ShopUnits.RADIAN), radius, section());
  }

  /** {@return how far the bar moves sideways} */
  public Measure<Length> offset() {
    return offset;
  }

  /** {@return the angle of either bend} */
  public Measure<Angle> angle() {
    return angle;
  }

  /** {@return the inside radius of either bend} */
  public Measure<Length> insideRadius() {
    return radius;
  }

  /**
   * The straight between the two bends.
   *
   * @return the length, exact, in the offset's unit
   */
  public Measure<Length> straight() {
    return measure(straight(Notes.NONE));
  }

  /**
   * How much shorter the bar becomes: developed length − run.
   *
   * @return the take-up, exact, in the offset's unit
   */
  public Measure<Length> takeUp() {
    return developedLength().subtract(reach());
  }

  /** {@return an arc, the straight between, and an arc back} */
  @Override
  public MeanLine meanLine() {
    return MeanLine.from(unit())
        .arc(rho(), radians())
        .on(Math.max(straight(Notes.NONE), 0))
        .arc(rho(), -radians());
  }

  /** {@return {@code joggle}} */
  @Override
  public String name() {
    return "joggle";
  }

  /** {@return its run along the bar} */
  @Override
  public Measure<Length> reach() {
    return measure(run(Notes.NONE));
  }

  /** {@return a caution if its bends are tighter than the bar is thick; else none} */
  @Override
  public List<Caution> cautions() {
    return tightCurl(radius.multiply(2));
  }

  /** {@return how the run along the bar was found} */
  public Working runWorking() {
    return Notes.taken("run of a " + this, unit(), this::run)
        .withSource(Source.computed("plane geometry of two arcs and a straight"))
        .withCautions(cautions());
  }

  @Override
  double developed(Notes n) {
    double g = straight(n);
    return n.length("L", "bar used", "2 ρ α + g", 2 * rho() * radians() + g);
  }

  private double run(Notes n) {
    double g = straight(n);
    double a = radians();
    double x = 2 * rho() * Math.sin(a) + g * Math.cos(a);
    return n.length("x", "run along the bar", "2 ρ sin(α) + g cos(α)", x);
  }

  private double straight(Notes n) {
    double h = n.given("h", "offset", offset.in(unit()));
    double r = n.given("R", "inside radius of the bends", radius.in(unit()));
    double t = t(n);
    double rho = n.length("ρ", "radius of the middle of the thickness", "R + t / 2", r + t / 2);
    double a = n.number("α", "angle of either bend, in radians", "", radians());
    return n.length(
        "g",
        "straight between the bends",
        "(h − 2 ρ (1 − cos(α))) / sin(α)",
        (h - 2 * rho * (1 - Math.cos(a))) / Math.sin(a));
  }

  private double rho() {
    return radius.in(unit()) + thickness() / 2;
  }

  private double radians() {
    return angle.in(ShopUnits.RADIAN);
  }

  /** Offset, angle, radius and bar. */
  @Override
  public String toString() {
    return "joggle by "
        + offset
        + ", bends of "
        + angle.to(ShopUnits.DEGREE)
        + ", "
        + radius
        + " inside radius, in "
        + section();
  }
}
