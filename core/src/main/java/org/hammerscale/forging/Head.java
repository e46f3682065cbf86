package org.hammerscale.forging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * Heads jumped up on the end of a shank, each an {@link Upset}: {@index "snap head"}, {@index
 * "rivet head"}, {@index "nail head"}, ball. Bolt heads are {@link BoltHead}s; any head of one
 * section throughout, such as a T or hammer head, is {@link Upset#to}. The square neck of a coach
 * (carriage) bolt is a plain stretch of square bar.
 *
 * <pre>{@code
 * Section shank = Section.round(inches("3/4"));
 * Head.snap(shank).stockLength()   // 0.8435 in  to stand out of the hole for a snap head
 * Upset ball = Head.ball(shank, inches("1 1/2"));
 * ball.stockLength().upTo(EIGHTH)  // 4 in  rod for a ball twice as thick as the shank
 * Section nail = Section.square(millimetres(5));
 * Head.nail(nail).stock(nail)      // 8.75 mm (7.5 mm to 10 mm)  to leave above the nail header
 * }</pre>
 *
 * <p>Exact as geometry but for nails. Leave a little for scale and for squaring the face.
 */
public final class Head {
  private static final Source BS_275 =
      Source.read("BS 275:1927, in Machinery's Handbook, 31st ed.", "p. 1877");
  private static final double NAIL = 1.75;
  private static final double NAIL_DOUBT = 0.25;

  private Head() {}

  /**
   * A round rivet head, also called snap, cup or button head, in the proportions of BS 275: 1.6 d
   * wide, 0.7 d high. It takes about 1.125 d of shank, before the hole is filled.
   *
   * @param shank the round shank of diameter d
   * @return the head
   * @throws IllegalArgumentException if the shank is not round
   */
  public static Upset snap(Section shank) {
    Section.requireArea("shank", shank);
    checkRound("shank", shank);
    Measure<Length> height = shank.width().multiply(0.7);
    Section base = Section.round(shank.width().multiply(1.6));
    return new Upset(
        "snap head",
        shank,
        base,
        base.point(),
        height,
        Solid.dome(base.width(), height),
        BS_275,
        0);
  }

  /**
   * A pan rivet head in the proportions of BS 275: 1.6 d wide below, d above, 0.7 d high.
   *
   * @param shank the round shank of diameter d
   * @return the head
   * @throws IllegalArgumentException if the shank is not round
   */
  public static Upset pan(Section shank) {
    Section.requireArea("shank", shank);
    checkRound("shank", shank);
    Measure<Length> height = shank.width().multiply(0.7);
    Section base = Section.round(shank.width().multiply(1.6));
    Solid solid = Solid.between(base, shank, height);
    return new Upset("pan head", shank, base, shank, height, solid, BS_275, 0);
  }

  /**
   * A domed head, a segment of a ball: V = π h (3 a² + h²) / 6 on a base of radius a.
   *
   * @param shank the shank
   * @param base the round base of the dome, of no less area than the shank
   * @param height its height h, more than zero and at most half the base's diameter
   * @return the head
   * @throws IllegalArgumentException if the base is not round or too small, or the height out of
   *     range
   */
  public static Upset dome(Section shank, Section base, Quantity<Length> height) {
    Section.requireArea("shank", shank);
    Section.requireArea("base", base);
    checkRound("base", base);
    Measure<Length> h = Arguments.positive("height", height);
    if (h.multiply(2).isGreaterThan(base.width()) && !h.multiply(2).isEquivalentTo(base.width())) {
      throw new IllegalArgumentException(
          "height must be at most half the diameter of "
              + base.width()
              + ", was "
              + h
              + "; take Head.ball for more than half a ball");
    }
    return Upset.exact("domed head", shank, base, base.point(), h, Solid.dome(base.width(), h));
  }

  /**
   * A ball on the end of a round bar: V = π h² (3 R − h) / 3 with h = R + √(R² − a²), a ball of
   * radius R without the cap that the bar of radius a takes.
   *
   * @param bar the round bar
   * @param diameter of the ball, more than that of the bar
   * @return the ball
   * @throws IllegalArgumentException if the bar is not round, or the ball not thicker than it
   */
  public static Upset ball(Section bar, Quantity<Length> diameter) {
    Section.requireArea("bar", bar);
    checkRound("bar", bar);
    Measure<Length> ball = checkLarger(bar, diameter);
    double radius = ball.getValue() / 2;
    Measure<Length> height =
        ball.withValue(Solid.ballHeight(Notes.NONE, radius, bar.width().in(ball.getUnit())));
    Section round = Section.round(ball);
    return Upset.exact("ball", bar, round, round.point(), height, Solid.ball(ball, bar.width()));
  }

  /**
   * A head with straight sides from one section to another, such as a pan, or a rose head drawn to
   * a {@linkplain Section#point point}.
   *
   * @param shank the shank
   * @param base its section next to the shank, of no less area than it
   * @param top its section on top, similar to the base or one of the two a round
   * @param height its height, more than zero
   * @return the head
   * @throws IllegalArgumentException if the base has less area than the shank, no straight sides
   *     lead to the top, or the height is not more than zero
   */
  public static Upset tapered(Section shank, Section base, Section top, Quantity<Length> height) {
    Objects.requireNonNull(top, "top");
    Section.requireArea("base", base);
    Section.requireArea("shank", shank);
    Measure<Length> h = Arguments.positive("height", height);
    Prismoid.between(base, top, h.getUnit());
    return Upset.exact("tapered head", shank, base, top, h, Solid.between(base, top, h));
  }

  /**
   * A countersunk head: the whole cone from the shank d to its diameter D, V = π h (D² + D d + d²)
   * / 12, with its depth h from the included angle. The shank's length is then the grip less h; see
   * {@link #countersunkOverGrip} for the other way of reckoning.
   *
   * @param shank the round shank
   * @param diameter of the head, more than that of the shank
   * @param angle the included angle of the cone, more than 0° and less than 180°
   * @return the head; its {@link Upset#reach} is its depth
   * @throws IllegalArgumentException if the shank is not round, or an argument out of range
   */
  public static Upset countersunk(Section shank, Quantity<Length> diameter, Quantity<Angle> angle) {
    Section.requireArea("shank", shank);
    return countersunk(shank, diameter, angle, false);
  }

  /**
   * The same head where the shank is reckoned over the full grip, plates and all: only the metal
   * outside the shank counts, and it adds nothing to the length.
   *
   * @param shank the round shank
   * @param diameter of the head, more than that of the shank
   * @param angle the included angle of the cone, more than 0° and less than 180°
   * @return what the head takes beyond the grip
   * @throws IllegalArgumentException if the shank is not round, or an argument out of range
   */
  public static Upset countersunkOverGrip(
      Section shank, Quantity<Length> diameter, Quantity<Angle> angle) {
    Section.requireArea("shank", shank);
    return countersunk(shank, diameter, angle, true);
  }

  private static Upset countersunk(
      Section shank, Quantity<Length> diameter, Quantity<Angle> angle, boolean overGrip) {
    checkRound("shank", shank);
    Measure<Length> big = checkLarger(shank, diameter);
    Measure<Length> d = shank.width();
    Measure<Angle> included = Arguments.angle("angle", angle, 180);
    double degrees = included.in(ShopUnits.DEGREE);
    if (degrees == 0 || degrees == 180) {
      throw new IllegalArgumentException(
          "angle must be more than 0° and less than 180°, was "
              + included
              + "; give the included angle of the cone, often 90°");
    }
    double depth = Solid.countersunkDepth(Notes.NONE, big.getValue(), d.in(big.getUnit()), degrees);
    Section face = Section.round(big);
    return overGrip
        ? Upset.exact(
            "countersunk head over full grip",
            shank,
            face,
            face,
            big.withValue(0),
            Solid.countersunkWithin(big, d, degrees))
        : Upset.exact(
            "countersunk head",
            shank,
            face,
            face,
            big.withValue(depth),
            Solid.countersunk(big, d, degrees));
  }

  /**
   * The rose head of a hand-made nail or spike: it takes 1 1/2 to 2 thicknesses d of its shank.
   *
   * @param shank the square or round shank below the head
   * @return the head, as an estimate; it is reckoned flush, adding nothing to the length
   * @throws IllegalArgumentException if the shank is a tube
   */
  public static Upset nail(Section shank) {
    Section.requireArea("shank", shank);
    if (shank.isTube()) {
      throw new IllegalArgumentException(
          "shank must be solid to be driven, was " + shank + "; close the tube, or give a bar");
    }
    Measure<Length> d = shank.thickness();
    Solid solid =
        (n, unit) -> {
          double a = n.givenArea("A₁", "section of the shank", shank.area().in(Solid.square(unit)));
          double t = n.given("d", "thickness of the shank", d.in(unit));
          return n.volume("V", "metal in it", "1.75 d A₁", NAIL * t * a);
        };
    return new Upset(
        "nail head",
        shank,
        shank,
        shank.point(),
        d.withValue(0),
        solid,
        Source.commonPractice("a forged rose head takes 1.5 to 2 thicknesses of the shank"),
        NAIL_DOUBT / NAIL);
  }

  static void checkRound(String name, Section section) {
    if (!section.isRound()) {
      throw new IllegalArgumentException(
          name + " must be round, was " + section + "; give its Section.round, or use Upset.to");
    }
  }

  private static Measure<Length> checkLarger(Section shank, Quantity<Length> diameter) {
    Measure<Length> big = Arguments.positive("diameter", diameter);
    if (!big.isGreaterThan(shank.width())) {
      throw new IllegalArgumentException(
          "diameter must be more than the "
              + shank.width()
              + " of the bar, was "
              + big
              + "; make the head wider, or the bar thinner");
    }
    return big;
  }
}
