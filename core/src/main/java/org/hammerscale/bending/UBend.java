package org.hammerscale.bending;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A bar bent to a U. Other names: {@index staple}, {@index U-bolt}, {@index clip}, {@index
 * bracket}. Its bottom is a half round, unless it is asked for rounded or square corners. The legs
 * are measured over all, from the outside of the bottom.
 *
 * <pre>{@code
 * Section rod = Section.round(millimetres(10));
 * UBend staple = UBend.inside(millimetres(100), rod).withLegs(millimetres(300), millimetres(200));
 * staple.developedLength()                               // 552.79 mm  rod to cut, the bottom a half round
 * staple.withCorners(millimetres(20)).developedLength()  // 578.54 mm  with a flat bottom and round corners
 * staple.withSquareCorners().developedLength()           // 600 mm  with corners forged sharp
 * }</pre>
 *
 * <p>Straight legs, the bottom on its mean line: L = A + C − 2 s + b, with the outside R + t as the
 * setback s of either leg and b = w − 2 R + π (R + t/2) round the bottom; square corners are by
 * volume, as {@link SquareCorner}. Lengths come out in the width's unit. Points on a staple are
 * tapers beside it in the piece.
 *
 * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111.
 */
public final class UBend extends BentBar {
  private final Measure<Length> width;
  private final @Nullable Measure<Length> corner;
  private final Measure<Length> first;
  private final Measure<Length> second;

  private UBend(
      Measure<Length> width,
      Section section,
      @Nullable Measure<Length> corner,
      Measure<Length> first,
      Measure<Length> second) {
    super(section, width.getUnit());
    this.width = width;
    this.corner = corner;
    this.first = first;
    this.second = second;
  }

  /**
   * A U with a half-round bottom and legs that are straight nowhere yet.
   *
   * @param width the finished inside width between the legs, more than zero
   * @param section the bar
   * @return the U; give it legs with {@link #withLegs}
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static UBend inside(Quantity<Length> width, Section section) {
    Section.requireArea("section", section);
    Measure<Length> between = Arguments.positive("width", width);
    Measure<Length> radius = between.divide(2);
    Measure<Length> leg = radius.add(section.thickness());
    return new UBend(between, section, radius, leg, leg);
  }

  /**
   * The same U with legs of these lengths.
   *
   * @param firstLeg over all from the outside of the bottom, at least the {@link #setback}
   * @param secondLeg the other leg, likewise
   * @return the U
   * @throws IllegalArgumentException if a leg is shorter than the setback
   */
  public UBend withLegs(Quantity<Length> firstLeg, Quantity<Length> secondLeg) {
    return new UBend(
        width, section(), corner, leg("first leg", firstLeg), leg("second leg", secondLeg));
  }

  /**
   * The same U with two rounded corners and a straight between them. Legs stay, over all.
   *
   * @param insideRadius the inside radius of either corner, not negative and at most half the width
   * @return the U
   * @throws IllegalArgumentException if the radius is negative, or too large for width or legs
   */
  public UBend withCorners(Quantity<Length> insideRadius) {
    Measure<Length> radius = Arguments.notNegative("inside radius", insideRadius);
    if (radius.isGreaterThan(width.divide(2))) {
      throw new IllegalArgumentException(
          "inside radius must be at most half the width of "
              + width
              + ", was "
              + radius
              + "; make the U wider or the corners tighter");
    }
    return with(radius.to(unit()));
  }

  /**
   * The same U with both corners forged sharp. Legs stay, over all.
   *
   * @return the U
   */
  public UBend withSquareCorners() {
    return with(null);
  }

  private UBend with(@Nullable Measure<Length> radius) {
    return new UBend(width, section(), radius, first, second).withLegs(first, second);
  }

  /**
   * The same U with two equal legs that use up a length of bar.
   *
   * @param length the length of bar, at least what the bottom uses
   * @return the U
   * @throws IllegalArgumentException if the length does not reach round the bottom
   */
  public UBend using(Quantity<Length> length) {
    double used = Arguments.positive("length", length).in(unit());
    double bottom = bottom(Notes.NONE, width.in(unit()), thickness());
    if (used < bottom) {
      throw new IllegalArgumentException(
          "length must be at least the "
              + measure(bottom)
              + " that the bottom uses, was "
              + measure(used)
              + "; take a longer bar or a narrower U");
    }
    Measure<Length> leg = setback().add(measure((used - bottom) / 2));
    return new UBend(width, section(), corner, leg, leg);
  }

  /** {@return the inside width between the legs} */
  public Measure<Length> insideWidth() {
    return width;
  }

  /** {@return the width over both legs, exact} */
  public Measure<Length> outsideWidth() {
    return width.add(section().thickness().multiply(2));
  }

  /** {@return the first leg over all, from the outside of the bottom} */
  public Measure<Length> firstLegOverAll() {
    return first;
  }

  /** {@return the second leg over all, from the outside of the bottom} */
  public Measure<Length> secondLegOverAll() {
    return second;
  }

  /** {@return the straight part of the first leg, above its bend; zero if there is none} */
  public Measure<Length> firstStraight() {
    return first.subtract(setback());
  }

  /** {@return the straight part of the second leg, above its bend; zero if there is none} */
  public Measure<Length> secondStraight() {
    return second.subtract(setback());
  }

  /** {@return how far a leg's straight part begins above the outside of the bottom} */
  public Measure<Length> setback() {
    return corner == null ? measure(thickness()) : measure(thickness()).add(corner);
  }

  /** {@return a leg, the bottom with its two corners, and the other leg} */
  @Override
  public MeanLine meanLine() {
    double half = thickness() / 2;
    double inside = corner == null ? -half : corner.in(unit());
    double off = inside + 2 * half; // a sharp corner of the mean line lies half a thickness in
    return MeanLine.from(unit())
        .on(first.in(unit()) - off)
        .arc(inside + half, Math.PI / 2)
        .on(width.in(unit()) - 2 * inside)
        .arc(inside + half, Math.PI / 2)
        .on(second.in(unit()) - off);
  }

  /** {@return {@code U bend}} */
  @Override
  public String name() {
    return "U bend";
  }

  /** {@return the longer leg over all} */
  @Override
  public Measure<Length> reach() {
    return first.isLessThan(second) ? second : first;
  }

  /** {@return a caution if its bends are tighter than the bar is thick; else none} */
  @Override
  public List<Caution> cautions() {
    return corner == null ? List.of() : tightCurl(corner.multiply(2));
  }

  /** {@return how the length of bar was found} */
  @Override
  public Working working() {
    return Notes.taken(name() + " of " + section(), unit(), this::developed)
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  @Override
  double developed(Notes n) {
    double a = n.given("A", "first leg over all", first.in(unit()));
    double c = n.given("C", "second leg over all", second.in(unit()));
    double w = n.given("w", "inside width", width.in(unit()));
    double t = t(n);
    double b = bottom(n, w, t);
    double s =
        corner == null
            ? n.length("s", "setback of a leg", "t", t)
            : n.length("s", "setback of a leg", "R + t", corner.in(unit()) + t);
    return n.length("L", "bar used", "A + C − 2 s + b", a + c - 2 * s + b);
  }

  private double bottom(Notes n, double w, double t) {
    if (corner == null) {
      return n.length("b", "bottom and two square corners", "w + 2 t", w + 2 * t);
    }
    double r = n.given("R", "inside radius of the bends", corner.in(unit()));
    return n.length(
        "b",
        "round the bottom on the mean line",
        "w − 2 R + π (R + t / 2)",
        w - 2 * r + Math.PI * (r + t / 2));
  }

  private Measure<Length> leg(String name, Quantity<Length> leg) {
    Measure<Length> over = Arguments.positive(name, leg).to(unit());
    if (over.isLessThan(setback())) {
      throw new IllegalArgumentException(
          name
              + " must be at least "
              + setback()
              + " over all, where the straight begins, was "
              + over
              + "; make it longer or the bend tighter");
    }
    return over;
  }

  /** Legs, width and bar. */
  @Override
  public String toString() {
    return "U bend, "
        + width
        + " inside, legs of "
        + first
        + " and "
        + second
        + " over all, of "
        + section();
  }
}
