package org.hammerscale.forging;

import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The decorative end of a strap, latch or handle, forged flat to the thickness of its neck: {@index
 * "penny end"}, {@index "bean end"}, {@index "spear end"}, {@index fishtail}, or any other outline.
 * Other name: {@index finial}. Its metal is the area of the outline times the thickness, V = A t;
 * so the bar it takes follows from the outline.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches(1), inches("1/4"));
 * End.penny(strap, inches(2)).stock(strap)  // 3.051 in  strap to forge a penny of 2 in from
 * End.spear(strap, inches("1 1/2"), inches(4)).stock(strap)  // 3.6667 in  a spear takes less than its length
 * Map<Measure<Length>, Measure<Length>> widths =
 *     Map.of(inches(1), inches("1 1/2"), inches(3), inches(0));
 * End.measured(strap, widths).stock(strap)  // 2 3/4 in  any outline, its widths read off a drawing
 * }</pre>
 *
 * <p>Exact as geometry of the outline. An end that is trimmed to shape takes more: {@link
 * HandAllowance#on} makes an estimate of it. A {@index rat-tail} is {@link #ratTail}, a round
 * taper.
 *
 * <p>Source: plane geometry; conservation of volume.
 */
public final class End implements Feature, Outlined {
  private final String name;
  private final Section neck;
  private final Section tip;
  private final Measure<Length> length;
  private final Solid solid;
  private final String law;
  private final Supplier<Silhouette> look;

  private End(
      String name,
      Section neck,
      Section tip,
      Measure<Length> length,
      Solid solid,
      String law,
      Supplier<Silhouette> look) {
    this.name = name;
    this.neck = neck;
    this.tip = tip;
    this.length = length;
    this.solid = solid;
    this.law = law;
    this.look = look;
  }

  /**
   * A penny end: a disc, cut off where its chord is as wide as the neck.
   *
   * @param neck the flat or square where it begins
   * @param diameter of the disc, at least the width of the neck
   * @return the end
   * @throws IllegalArgumentException if the neck is neither flat nor square, or wider than the disc
   */
  public static End penny(Section neck, Quantity<Length> diameter) {
    Section.requireArea("neck", neck);
    Measure<Length> d = Arguments.positive("diameter", diameter);
    return oval("penny end", "diameter", neck, d, d);
  }

  /**
   * A bean end: an oval (ellipse) that lies along the strap, cut off where it is as wide as the
   * neck. A bean that is bent to one side has the same metal.
   *
   * @param neck the flat or square where it begins
   * @param width of the oval across the strap, at least that of the neck
   * @param length of the whole oval along the strap, at least its width
   * @return the end; its {@link #reach} is the length less what the neck cuts off
   * @throws IllegalArgumentException if the neck is neither flat nor square, or wider than the
   *     oval, or the oval wider than long
   */
  public static End bean(Section neck, Quantity<Length> width, Quantity<Length> length) {
    Section.requireArea("neck", neck);
    Measure<Length> wide = Arguments.positive("width", width);
    Measure<Length> along = Arguments.positive("length", length);
    Arguments.atLeast(
        "length", along, "the width", wide, "name the width first, or take End.penny for a disc");
    return oval("bean end", "width", neck, wide, along);
  }

  private static End oval(
      String name, String size, Section neck, Measure<Length> wide, Measure<Length> along) {
    Measure<Length> n = checkFlat(neck).width();
    Arguments.atLeast(size, wide, "the width of the neck", n, "draw the neck narrower first");
    Unit<Length> unit = along.getUnit();
    double angle = Outline.neckAngle(Notes.NONE, n.in(unit), wide.in(unit));
    Measure<Length> reach = along.multiply((1 + Math.cos(angle)) / 2);
    return new End(
        name,
        neck,
        neck.point(),
        reach,
        Outline.oval(neck, wide, along),
        "area of an oval less the segment at its neck",
        () -> Outline.ovalLook(neck, wide, along));
  }

  /**
   * A spear end with straight sides: it widens from the neck over a third of its length, then runs
   * out to a point.
   *
   * @param neck the flat or square where it begins
   * @param width where it is widest, a third of the way along; more than zero
   * @param length from the neck to its point, at least half the width
   * @return the end
   * @throws IllegalArgumentException if the neck is neither flat nor square, or a size is out of
   *     range
   */
  public static End spear(Section neck, Quantity<Length> width, Quantity<Length> length) {
    Section.requireArea("neck", neck);
    Measure<Length> wide = Arguments.positive("width", width);
    Measure<Length> along = checkLong(wide, length);
    Outline outline =
        Outline.from(checkFlat(neck)).to(along.divide(3), wide).to(along, along.withValue(0));
    return polyline("spear end", outline);
  }

  /**
   * A fishtail end: it widens in straight lines from the neck to its square-cut tip. The metal of a
   * notch that is cut into it is lost, not saved.
   *
   * @param neck the flat or square where it begins
   * @param width at its tip, more than zero
   * @param length from the neck to the tip, at least half the width
   * @return the end
   * @throws IllegalArgumentException if the neck is neither flat nor square, or a size is out of
   *     range
   */
  public static End fishtail(Section neck, Quantity<Length> width, Quantity<Length> length) {
    Section.requireArea("neck", neck);
    Measure<Length> wide = Arguments.positive("width", width);
    Measure<Length> along = checkLong(wide, length);
    return polyline("fishtail end", Outline.from(checkFlat(neck)).to(along, wide));
  }

  /**
   * A rat-tail: a round drawn to a long point, straight or curled up.
   *
   * @param neck the round where it begins
   * @param length to its point, along the middle of a curl; more than zero
   * @return the taper, which holds a third of a plain round
   * @throws IllegalArgumentException if the neck is not round, or the length not more than zero
   */
  public static Taper ratTail(Section neck, Quantity<Length> length) {
    Section.requireArea("neck", neck);
    Head.checkRound("neck", neck);
    return Taper.toPoint(neck, length);
  }

  /**
   * An end of which the widths were measured on a drawing or a pattern, with straight lines between
   * them.
   *
   * @param neck the flat or square where it begins, with the width there
   * @param widths the whole width at each distance from the neck, at least one; distances more than
   *     zero, widths not negative
   * @return the end, as long as the greatest distance
   * @throws IllegalArgumentException if the neck is neither flat nor square, or a size is out of
   *     range
   */
  public static End measured(
      Section neck, Map<? extends Quantity<Length>, ? extends Quantity<Length>> widths) {
    return polyline("decorative end", Outline.measured(checkFlat(neck), widths));
  }

  /**
   * An end whose width is a function of the distance from the neck, integrated by Gauss and
   * Legendre's rule until a finer division changes it by less than a relative 1e-10.
   *
   * @param neck the flat or square where it begins
   * @param length from the neck to the tip, more than zero
   * @param width the whole width at a distance from the neck, never negative
   * @return the end
   * @throws IllegalArgumentException if the neck is neither flat nor square, the length is not more
   *     than zero, the width is negative somewhere, or so wild that the area does not settle
   */
  public static End along(
      Section neck,
      Quantity<Length> length,
      Function<Measure<Length>, ? extends Quantity<Length>> width) {
    Measure<Length> along = Arguments.positive("length", length);
    Objects.requireNonNull(width, "width");
    Section tip = Outline.section(checkFlat(neck), Outline.width(width, along));
    return new End(
        "decorative end",
        neck,
        tip,
        along,
        Outline.curve(neck, along, width),
        "area of the outline by quadrature",
        () -> Outline.curveLook(neck, along, width));
  }

  private static End polyline(String name, Outline outline) {
    return new End(
        name,
        outline.neck(),
        outline.tip(),
        outline.length(),
        outline.solid(),
        "area of the outline by trapezia",
        outline::look);
  }

  private static Section checkFlat(Section neck) {
    Section.requireArea("neck", neck);
    if (!neck.isSimilarTo(Section.square(Measures.millimetres(1)))) {
      throw new IllegalArgumentException(
          "neck must be flat or square, was "
              + neck
              + "; forge it flat first, or take End.ratTail for a round one");
    }
    return neck;
  }

  /** Width and length swapped would make an end that nobody forges. */
  private static Measure<Length> checkLong(Measure<Length> wide, Quantity<Length> length) {
    Measure<Length> along = Arguments.positive("length", length);
    if (along.multiply(2).isLessThan(wide)) {
      throw new IllegalArgumentException(
          "length must be at least half the width of "
              + wide
              + ", was "
              + along
              + "; name the width first, or give the outline to End.measured");
    }
    return along;
  }

  /** {@return what the smith calls it, such as {@code penny end}} */
  @Override
  public String name() {
    return name;
  }

  @Override
  public Section start() {
    return neck;
  }

  @Override
  public Section end() {
    return tip;
  }

  /** {@return area of the outline × thickness, in the cube of the unit of its length} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(
        Measures.volume(length, Measures.area(length, length))
            .withValue(solid.volume(Notes.NONE, length.getUnit())));
  }

  /** {@return its length from the neck} */
  @Override
  public Measure<Length> reach() {
    return length;
  }

  /** {@return its outline, as thick as the neck} */
  @Override
  public Silhouette outline() {
    return look.get();
  }

  /** {@return how the metal was found} */
  @Override
  public Working working() {
    return Notes.taken(
            name + " on " + neck, length.getUnit(), n -> solid.volume(n, length.getUnit()))
        .withSource(Source.computed(law));
  }

  /** What it is, its length and its neck. */
  @Override
  public String toString() {
    return name + ", " + length + " long, on " + neck;
  }
}
