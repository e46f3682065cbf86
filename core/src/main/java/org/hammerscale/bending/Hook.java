package org.hammerscale.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;

/**
 * The bent end of a hook: an arc and a straight tip beyond it, L = s + π (R + t/2) α / 180°. An
 * open hook has a half round, the end of a cabin hook is turned down at a right angle. The shank,
 * the point and the eye are features of their own. Other names: {@index "pipe hook"}, {@index "gate
 * hook"}, {@index "cabin hook"}; an {@index S-hook} is two of them, a {@index "hook and eye"} one
 * with an {@link Eye}.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches("3/4"), inches("1/4"));
 * Hook pipe = Hook.open(inches(3), bar).withTip(inches("1/2"));
 * pipe.developedLength()                                     // 5.6051 in  bar beyond the shank
 * pipe.using(inches(6)).tip()                                // 0.8949 in  how long the tip gets from 6 in
 * Hook.cabin(inches("1/8"), bar).withTip(inches(1)).reach()  // 3/8 in  how far a turned-down end stands out
 * }</pre>
 *
 * <p>Exact as geometry, on the mean line. Lengths come out in the unit of the inside size.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 70 to 72 and 111.
 */
public final class Hook extends BentBar {
  private static final double FULL_TURN = 360;

  private final Measure<Length> radius;
  private final Measure<Angle> arc;
  private final Measure<Length> tip;
  private final boolean open;

  private Hook(
      Measure<Length> radius,
      Section section,
      Measure<Angle> arc,
      Measure<Length> tip,
      boolean open) {
    super(section, radius.getUnit());
    this.radius = radius;
    this.arc = arc;
    this.tip = tip;
    this.open = open;
  }

  /**
   * An open hook with a half round and no straight tip.
   *
   * @param insideDiameter the finished inside diameter of the half round, more than zero
   * @param section the bar
   * @return the hook
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Hook open(Quantity<Length> insideDiameter, Section section) {
    Measure<Length> inside = Arguments.positive("inside diameter", insideDiameter).divide(2);
    return new Hook(inside, section, Measures.degrees(180), inside.withValue(0), true);
  }

  /**
   * The hooked end of a cabin hook: a right angle, and no straight tip yet.
   *
   * @param insideRadius the finished inside radius of the bend, not negative
   * @param section the bar
   * @return the hook
   * @throws IllegalArgumentException if the radius is negative
   */
  public static Hook cabin(Quantity<Length> insideRadius, Section section) {
    Measure<Length> inside = Arguments.notNegative("inside radius", insideRadius);
    return new Hook(inside, section, Measures.degrees(90), inside.withValue(0), false);
  }

  /**
   * The same hook with a straight tip beyond its arc.
   *
   * @param straight the length of the tip, not negative
   * @return the hook
   * @throws IllegalArgumentException if the length is negative
   */
  public Hook withTip(Quantity<Length> straight) {
    Objects.requireNonNull(straight, "straight");
    return new Hook(radius, section(), arc, Arguments.notNegative("tip", straight), open);
  }

  /**
   * The same hook bent through another angle, such as 320° for the loop of an S-hook.
   *
   * @param angle the angle bent through, 0° to 360°
   * @return the hook
   * @throws IllegalArgumentException if the angle lies outside that range
   */
  public Hook withArc(Quantity<Angle> angle) {
    return new Hook(radius, section(), Arguments.angle("angle", angle, FULL_TURN), tip, open);
  }

  /**
   * The same hook with the tip that a length of bar leaves.
   *
   * @param length the length of bar for arc and tip, at least what the arc uses
   * @return the hook
   * @throws IllegalArgumentException if the length does not reach round the arc
   */
  public Hook using(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    double round = round(Notes.NONE);
    if (used < round) {
      throw new IllegalArgumentException(
          "length must be at least the "
              + measure(round)
              + " that the arc uses, was "
              + measure(used)
              + "; take a longer bar, a smaller hook, or a Bend using the length");
    }
    return withTip(measure(used - round));
  }

  /** {@return the inside radius of the arc} */
  public Measure<Length> insideRadius() {
    return radius;
  }

  /** {@return the arc, then the straight tip} */
  @Override
  public MeanLine meanLine() {
    double middle = radius.in(unit()) + thickness() / 2;
    return MeanLine.from(unit()).arc(middle, arc.in(ShopUnits.RADIAN)).on(tip.in(unit()));
  }

  /** {@return the angle bent through} */
  public Measure<Angle> arc() {
    return arc;
  }

  /** {@return the straight tip beyond the arc} */
  public Measure<Length> tip() {
    return tip;
  }

  /** {@return {@code open hook} or {@code cabin hook}} */
  @Override
  public String name() {
    return open ? "open hook" : "cabin hook";
  }

  /**
   * How far it stands out beyond the straight shank, in the shank's direction: R + t from 90° on.
   *
   * @return the distance, exact, in the unit of the inside size
   */
  @Override
  public Measure<Length> reach() {
    double outside = radius.in(unit()) + thickness();
    double bend = arc.in(ShopUnits.RADIAN);
    return arc.in(ShopUnits.DEGREE) >= 90
        ? measure(outside)
        : measure(outside * Math.sin(bend) + tip.in(unit()) * Math.cos(bend));
  }

  /** {@return cautions for a hook that carries a load, and if it is bent very tight} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (open) {
      cautions.add(
          Caution.danger(
              "a bent hook says nothing of its load: reckon it as a carrying hook, do not quench"
                  + " it, and proof-test it before anything hangs from it"));
    }
    cautions.addAll(tightCurl(radius.multiply(2)));
    return List.copyOf(cautions);
  }

  @Override
  double developed(Notes n) {
    double b = round(n);
    double s = n.given("s", "straight tip", tip.in(unit()));
    return n.length("L", "bar used", "s + b", s + b);
  }

  private double round(Notes n) {
    double r = n.given("R", "inside radius", radius.in(unit()));
    double t = t(n);
    double rho = n.length("ρ", "radius of the middle of the thickness", "R + t / 2", r + t / 2);
    double a = n.number("α", "angle bent through, in degrees", "", arc.in(ShopUnits.DEGREE));
    return n.length("b", "bar round the arc", "π ρ α / 180", Math.PI * rho * a / 180);
  }

  /** Kind, radius, arc, tip and bar. */
  @Override
  public String toString() {
    return name() + ", " + radius + " inside radius, " + arc + ", tip " + tip + ", of " + section();
  }
}
