package org.hammerscale.forging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Inverse;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A straight taper: from one section to a similar one, to a blunt tip, a point or a chisel edge; or
 * from any solid section to a round, as a square bar is blended into a round one. Other names:
 * {@index "drawing to a point"}, {@index pointing}. The metal in it is V = L A, with the mean
 * section A = (A₁ + 4 Aₘ + A₂) / 6 of its two ends and of its middle: the prismoidal formula, exact
 * for straight sides. A cone or pyramid has a third of A₁, a wedge the half.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches("1 1/2"), inches("1/4"));
 * Section tip = Section.flat(inches("3/4"), inches("1/8"));
 * Taper.between(bar, tip, inches(6)).stock(bar)  // 3 1/2 in  bar to mark off for 6 in of taper
 * Taper.toPoint(bar, inches(6)).stock(bar)  // 2 in  for a point, a third
 * Taper.using(inches("3 1/2"), bar, tip).reach()  // 6 in  how far the bar at hand goes
 * Taper.toPoint(bar, inches(6)).bluntedFor(inches("3 1/2")).end()  // 3/4 in × 1/8 in flat  how blunt from more bar
 * }</pre>
 *
 * <p>Exact as geometry. Hand-forged tapers that are trimmed or shouldered come out shorter than
 * this: {@link HandAllowance#on} makes an estimate of it.
 *
 * <p>Source: prismoidal formula; for blends the area of a figure and a disc added point by point
 * (Steiner), solid geometry.
 */
public final class Taper implements Feature {
  private final Section from;
  private final Section to;
  private final Prismoid solid;
  private final Unit<Length> unit;
  private final @Nullable Measure<Length> used;
  private final Measure<Length> length;

  /** Either the finished length is given, or the bar used. */
  private Taper(
      Section from, Section to, @Nullable Measure<Length> length, @Nullable Measure<Length> used) {
    Measure<Length> given = length != null ? length : Objects.requireNonNull(used, "used");
    this.from = from;
    this.to = to;
    this.unit = given.getUnit();
    this.solid = Prismoid.between(from, to, unit);
    this.used = used;
    this.length =
        length != null ? length : Measure.of(drawn(Notes.NONE, solid.meanArea(Notes.NONE)), unit);
  }

  /**
   * A straight taper.
   *
   * @param from the section where it begins
   * @param to the section where it ends, a blunt tip or not; similar to the first, or one of the
   *     two a round and the other solid
   * @param length its finished length, more than zero
   * @return the taper
   * @throws IllegalArgumentException if no straight taper leads between the sections, or the length
   *     is not more than zero
   */
  public static Taper between(Section from, Section to, Quantity<Length> length) {
    Objects.requireNonNull(to, "to");
    Objects.requireNonNull(from, "from");
    return new Taper(from, to, Arguments.positive("length", length), null);
  }

  /**
   * A taper to a sharp point: a cone of a round, a pyramid of a square or flat.
   *
   * @param from the section where it begins
   * @param length its finished length, more than zero
   * @return the taper, which holds a third of a plain stretch
   * @throws IllegalArgumentException if the length is not more than zero
   */
  public static Taper toPoint(Section from, Quantity<Length> length) {
    Section.requireArea("from", from);
    return between(from, from.point(), length);
  }

  /**
   * A taper in thickness to a chisel edge of the same width: a wedge, a feather edge.
   *
   * @param from the flat or square where it begins
   * @param length its finished length, more than zero
   * @return the taper, which holds half of a plain stretch
   * @throws IllegalArgumentException if the section is neither flat nor square, or the length not
   *     more than zero
   */
  public static Taper toEdge(Section from, Quantity<Length> length) {
    Section.requireArea("from", from);
    return between(from, from.edge(), length);
  }

  /**
   * The taper that a length of bar at hand gives: L = s A₁ / A.
   *
   * @param stock the length of bar to draw, more than zero
   * @param bar its section, where the taper begins
   * @param to the section where it ends, of no more area than the bar; {@link Section#point} and
   *     {@link Section#edge} are sharp
   * @return the taper; its {@link #reach} is the finished length, in the stock's unit
   * @throws IllegalArgumentException if no straight taper leads between the sections, the tip is
   *     larger than the bar, or the stock is not more than zero
   */
  public static Taper using(Quantity<Length> stock, Section bar, Section to) {
    Objects.requireNonNull(to, "to");
    Section.requireArea("bar", bar);
    DrawOut.checkSmaller("section tapered to", bar, to);
    return new Taper(bar, to, null, Arguments.positive("stock", stock));
  }

  /**
   * A taper of the same length and direction that stops at a larger tip, so that it uses a given
   * length of its first section: the tip that the stock at hand allows.
   *
   * @param stock the length of bar to use, between what this taper uses and its own length
   * @return the taper; its {@link #end} is the tip
   * @throws IllegalArgumentException if the stock is outside that range, or the taper is a blend of
   *     unlike sections
   */
  public Taper bluntedFor(Quantity<Length> stock) {
    Measure<Length> wanted = Arguments.positive("stock", stock);
    Section.requireArea("start of the taper", from);
    if (!from.isSimilarTo(to)) {
      throw new IllegalArgumentException(
          "taper must lead between similar sections to be blunted, was "
              + this
              + "; blunt the stretch that keeps its shape");
    }
    if (wanted.isEquivalentTo(Measure.of(stockUsed(), unit))) {
      return this;
    }
    if (wanted.isEquivalentTo(length)) {
      return stopped(0);
    }
    double share =
        Inverse.solve(
            "stock", x -> stopped(x).stockUsed(), 0, 1, wanted.in(unit), x -> Measure.of(x, unit));
    return stopped(share);
  }

  private Taper stopped(double share) {
    return between(from, from.towards(to, share), length);
  }

  private double stockUsed() {
    return volume(Notes.NONE) / solid.firstArea();
  }

  /** {@return {@code taper}} */
  @Override
  public String name() {
    return "taper";
  }

  @Override
  public Section start() {
    return from;
  }

  @Override
  public Section end() {
    return to;
  }

  /** {@return mean section × length, exact, in the cube of the length's unit} */
  @Override
  public Estimate<Volume> metalKept() {
    double volume = volume(Notes.NONE);
    return Estimate.exact(Measures.volume(length, Measures.area(length, length)).withValue(volume));
  }

  /** {@return its finished length} */
  @Override
  public Measure<Length> reach() {
    return length;
  }

  /** {@return how the volume was found, and the length if the bar was given} */
  @Override
  public Working working() {
    return Notes.taken("taper from " + from + " to " + to, unit, this::volume)
        .withSource(Source.computed("prismoidal formula, exact for straight sides"));
  }

  /** Works in the length's unit, its square and its cube. */
  private double volume(Notes n) {
    double a = solid.meanArea(n);
    double l = used == null ? n.given("L", "finished length", length.in(unit)) : drawn(n, a);
    return n.volume("V", "metal kept", "L A", l * a);
  }

  private double drawn(Notes n, double a) {
    double s = n.given("s", "bar used", used == null ? 0 : used.in(unit));
    return n.length("L", "finished length", "s A₁ / A", s * solid.firstArea() / a);
  }

  /** Sections and length. */
  @Override
  public String toString() {
    return length + " taper from " + from + " to " + to;
  }
}
