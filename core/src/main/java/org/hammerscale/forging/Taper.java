package org.hammerscale.forging;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A straight taper from one section to a similar one: flat or square to flat or square, round to
 * round. The metal in it is V = L (A₁ + 4 Aₘ + A₂) / 6, with the areas of its two ends and of its
 * middle: the prismoidal formula, exact for straight sides.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches("1 1/2"), inches("1/4"));
 * Section tip = Section.flat(inches("3/4"), inches("1/8"));
 * Taper.between(bar, tip, inches(6)).stock(bar)   // 3 1/2 in
 * }</pre>
 *
 * <p>Exact as geometry. Hand-forged tapers that are trimmed or shouldered come out shorter than
 * this; leave something to trim on the first piece.
 *
 * <p>Source: prismoidal formula (solid geometry).
 */
public final class Taper implements Feature {
  private final Section from;
  private final Section to;
  private final Measure<Length> length;

  private Taper(Section from, Section to, Measure<Length> length) {
    this.from = from;
    this.to = to;
    this.length = length;
  }

  /**
   * A straight taper.
   *
   * @param from the section where it begins
   * @param to the section where it ends, similar to the first
   * @param length its finished length, more than zero
   * @return the taper
   * @throws IllegalArgumentException if the sections are not similar, or the length is not more
   *     than zero
   */
  public static Taper between(Section from, Section to, Quantity<Length> length) {
    Objects.requireNonNull(to);
    if (!from.isSimilarTo(to)) {
      throw new IllegalArgumentException(
          "taper must lead between similar sections, was from "
              + from
              + " to "
              + to
              + "; forge the change of shape as a stretch of its own");
    }
    return new Taper(from, to, Arguments.positive("length", length));
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

  /** {@return the prismoidal volume, exact, in the cube of the length's unit} */
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

  /** {@return how the volume was found} */
  @Override
  public Working working() {
    return Notes.taken("taper from " + from + " to " + to, length.getUnit(), this::volume)
        .withSource(Source.computed("prismoidal formula, exact for straight sides"));
  }

  /** Works in the length's unit, its square and its cube. */
  private double volume(Notes n) {
    Unit<Area> square = Measures.area(length, length).getUnit();
    double a1 = n.givenArea("A₁", "section where it begins", from.area().in(square));
    double am = n.givenArea("Aₘ", "section half-way", from.halfwayTo(to).area().in(square));
    double a2 = n.givenArea("A₂", "section where it ends", to.area().in(square));
    double l = n.given("L", "finished length", length.in(length.getUnit()));
    return n.volume("V", "metal kept", "L (A₁ + 4 Aₘ + A₂) / 6", l * (a1 + 4 * am + a2) / 6);
  }

  /** Sections and length. */
  @Override
  public String toString() {
    return length + " taper from " + from + " to " + to;
  }
}
