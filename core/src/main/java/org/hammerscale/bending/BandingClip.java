package org.hammerscale.bending;

import java.util.Objects;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * The strip that is bent hot round bars that lie side by side, and holds them when it shrinks:
 * {@index collar}, {@index band}, {@index clip}. It is cut as long as the way round the bundle and
 * an eighth of an inch more: L = p + 1/8 in.
 *
 * <pre>{@code
 * Section bundle = Section.flat(inches(1), inches("1/2"));
 * BandingClip clip = BandingClip.around(bundle);
 * clip.cutLength()   // 3 1/8 in  for two bars of 1/2 in square side by side
 * }</pre>
 *
 * <p>A bench rule for light strip of about an eighth of an inch, whose thickness it does not ask
 * for: bend one for trial, and cut the others after it.
 *
 * <p>Source: common practice.
 */
public final class BandingClip {
  private static final Source RULE =
      Source.commonPractice("the way round the bundle and 1/8 in more");
  private static final Measure<Length> MORE = Measures.inches(0.125);

  private final Section bundle;
  private final Unit<Length> unit;

  private BandingClip(Section bundle) {
    this.bundle = bundle;
    this.unit = bundle.width().getUnit();
  }

  /**
   * A clip round a bundle.
   *
   * @param bundle the outline of the bars together: two of 1/2 in square side by side are a flat of
   *     1 × 1/2 in
   * @return the clip
   * @throws IllegalArgumentException if the outline is a point or an edge
   */
  public static BandingClip around(Section bundle) {
    Objects.requireNonNull(bundle, "bundle");
    Arguments.positive("thickness of bundle", bundle.thickness());
    return new BandingClip(bundle);
  }

  /**
   * How long to cut the strip.
   *
   * @return p + 1/8 in, by the bench rule, in the unit of the bundle's width
   */
  public Measure<Length> cutLength() {
    return Measure.of(cut(Notes.NONE), unit);
  }

  /** {@return how the length was found} */
  public Working working() {
    return Notes.taken(toString(), unit, this::cut).withSource(RULE);
  }

  private double cut(Notes n) {
    double p = n.given("p", "way round the bundle", bundle.perimeter().in(unit));
    double m = n.given("m", "an eighth of an inch more", MORE.in(unit));
    return n.length("L", "strip to cut", "p + m", p + m);
  }

  /** What it goes round. */
  @Override
  public String toString() {
    return "banding clip around " + bundle;
  }
}
