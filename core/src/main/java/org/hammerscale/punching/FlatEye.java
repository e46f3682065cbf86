package org.hammerscale.punching;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A flat round eye at the end of a bar: the end is forged to a disc, which is slit and drifted or
 * punched, and finishes with a round rim. The metal in it is that of the disc less the hole, V = (π
 * D²/4 − H) t. Drifted without a slug, the disc must be forged smaller before, to √(D² − 4 H/π);
 * for a round hole, √(D² − d²).
 *
 * <pre>{@code
 * Section bar = Section.square(inches("3/8"));
 * FlatEye eye = FlatEye.drifted(inches(1), inches("3/16"), Hole.round(inches("5/16"))).ending(bar);
 * eye.discBefore()    // 0.9499 in  to forge the disc to, before it is slit and drifted to 1 in
 * eye.stock(bar)      // 0.9449 in  bar in it
 * FlatEye punched = FlatEye.punched(inches(1), inches("3/16"), eye.hole());
 * punched.stock(bar)  // 0.979 in (0.9449 in to 1.0472 in)  more if a slug is lost
 * }</pre>
 *
 * <p>The disc counts from where its rim meets the bar. Exact as geometry for the finished eye; a
 * slug's thickness is an estimate unless it is measured. Other name: {@index "penny end with a
 * hole"}.
 *
 * <p>Source: conservation of volume.
 */
public final class FlatEye implements Feature, Outlined {
  private static final int POINTS = 72;
  private static final Source RIM =
      Source.commonPractice("rim of a flat eye at least as wide as it is thick");

  private final Section neck;
  private final Measure<Length> outside;
  private final Measure<Length> thickness;
  private final Hole hole;
  private final Slug slug;
  private final Unit<Length> unit;

  private FlatEye(
      Section neck, Measure<Length> outside, Measure<Length> thickness, Hole hole, Slug slug) {
    this.neck = neck;
    this.outside = outside;
    this.thickness = thickness;
    this.hole = hole;
    this.slug = slug;
    this.unit = outside.getUnit();
  }

  /**
   * An eye slit and drifted in a disc, without loss.
   *
   * @param outside the finished diameter over the rim, more than zero
   * @param thickness the finished thickness, more than zero and at most the diameter
   * @param hole the finished hole, inside the disc
   * @return the eye
   * @throws IllegalArgumentException if a size is not more than zero, the eye is thicker than it is
   *     wide, or the hole breaks through its rim
   */
  public static FlatEye drifted(Quantity<Length> outside, Quantity<Length> thickness, Hole hole) {
    return punched(outside, thickness, hole).withSlugThickness(hole.length().withValue(0));
  }

  /**
   * An eye punched in a disc, with its slug knocked out. The slug is estimated as {@link
   * PunchedHole} does.
   *
   * @param outside the finished diameter over the rim, more than zero
   * @param thickness the finished thickness, more than zero and at most the diameter
   * @param hole the finished hole, inside the disc
   * @return the eye
   * @throws IllegalArgumentException if a size is not more than zero, the eye is thicker than it is
   *     wide, or the hole breaks through its rim
   */
  public static FlatEye punched(Quantity<Length> outside, Quantity<Length> thickness, Hole hole) {
    Objects.requireNonNull(hole, "hole");
    Measure<Length> over = Arguments.positive("outside", outside);
    Measure<Length> thick = Arguments.positive("thickness", thickness);
    Arguments.atMost("thickness", thick, "the outside diameter", over, "name the diameter first");
    if (!hole.span().isLessThan(over)) {
      throw new IllegalArgumentException(
          "hole must lie inside the outside diameter of "
              + over
              + ", was a "
              + hole
              + ", "
              + hole.span()
              + " at its widest; forge a larger eye");
    }
    return new FlatEye(Section.flat(over, thick), over, thick, hole, Slug.of(hole, thick));
  }

  /**
   * The same eye at the end of a bar. Unless it is told, the eye begins with its own width and
   * thickness, as if cut from a wide flat.
   *
   * @param neck the section of the bar that it ends
   * @return the eye
   */
  public FlatEye ending(Section neck) {
    return new FlatEye(Section.requireArea("neck", neck), outside, thickness, hole, slug);
  }

  /**
   * The same eye with the slug that was found at the anvil.
   *
   * @param slugThickness from zero to the thickness of the eye; that of the eye for a drilled hole
   * @return the eye
   * @throws IllegalArgumentException if it is negative or more than the thickness of the eye
   */
  public FlatEye withSlugThickness(Quantity<Length> slugThickness) {
    return new FlatEye(neck, outside, thickness, hole, slug.measured(slugThickness));
  }

  /** {@return the finished diameter over the rim} */
  public Measure<Length> outsideDiameter() {
    return outside;
  }

  /** {@return the finished hole} */
  public Hole hole() {
    return hole;
  }

  /** {@return the width left beside the hole, (D − h)/2, exact, in the unit of the diameter} */
  public Measure<Length> rim() {
    return outside.subtract(hole.width()).divide(2);
  }

  /**
   * The disc to forge before it is opened, of the eye's own thickness: Z = √(D² − 4 H (t − q)/(π
   * t)), q being the slug's thickness.
   *
   * @return the diameter, in the unit of the diameter over the rim; exact if there is no slug or a
   *     measured one
   */
  public Estimate<Length> discBefore() {
    Measure<Length> likely = Measure.of(disc(Notes.NONE), unit);
    return slug.isKnown()
        ? Estimate.exact(likely)
        : Estimate.of(disc(slug.leastPart()), likely, disc(slug.mostPart()));
  }

  private Measure<Length> disc(double part) {
    double d = outside.getValue();
    double opened = 4 * hole.area(Notes.NONE, unit) * (1 - part) / Math.PI;
    return Measure.of(Math.sqrt(d * d - opened), unit);
  }

  /** {@return {@code flat eye}} */
  @Override
  public String name() {
    return "flat eye";
  }

  @Override
  public Section start() {
    return neck;
  }

  /** {@return the disc less the hole, exact, in the cube of the diameter's unit} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Slug.cubic(metal(Notes.NONE), unit));
  }

  /** {@return the slug; nothing if it is drifted} */
  @Override
  public Losses metalLost() {
    return slug.mostPart() == 0 ? Losses.NONE : Losses.NONE.and("slug", slug.estimate(unit));
  }

  /** {@return its outside diameter} */
  @Override
  public Measure<Length> reach() {
    return outside;
  }

  /** {@return the disc with its hole in the middle, as thick as it is throughout} */
  @Override
  public Silhouette outline() {
    Silhouette look = Silhouette.from(Section.flat(outside, thickness));
    for (int i = 0; i <= POINTS; i++) {
      double angle = Math.PI * i / POINTS;
      double share = i == POINTS ? 0 : Math.sin(angle);
      Measure<Length> along = outside.multiply((1 - Math.cos(angle)) / 2);
      look = look.to(along, outside.multiply(share));
    }
    Measure<Length> before = outside.subtract(hole.length()).divide(2);
    return look.withOpening(hole.outline(), before, outside.withValue(0));
  }

  /** {@return a caution if the rim is narrower than it is thick; else none} */
  @Override
  public List<Caution> cautions() {
    return rim().isLessThan(thickness.multiply(1 - Rim.SLACK))
        ? List.of(
            Caution.limit(
                "the rim of "
                    + rim()
                    + " is narrower than the eye is thick ("
                    + thickness
                    + "): it bulges when the hole is opened; forge the eye thinner or larger",
                RIM))
        : List.of();
  }

  /** {@return how the metal kept was found} */
  @Override
  public Working working() {
    return Notes.taken("flat round eye", unit, this::metal)
        .withSource(Source.computed("volume of a disc less its hole"))
        .withCautions(cautions());
  }

  /** {@return how the likely disc before opening was found} */
  public Working discWorking() {
    return Notes.taken("disc for a flat round eye", unit, this::disc)
        .withSource(Source.computed("conservation of volume at the same thickness"))
        .withSource(slug.source())
        .withCautions(cautions());
  }

  private double metal(Notes n) {
    double h = hole.area(n, unit);
    double d = n.given("D", "diameter over the rim", outside.getValue());
    double t = n.given("t", "thickness of the eye", thickness.in(unit));
    return n.volume("V", "metal kept", "(π D² / 4 − H) t", (Math.PI * (d * d) / 4 - h) * t);
  }

  private double disc(Notes n) {
    double h = hole.area(n, unit);
    double d = n.given("D", "diameter over the rim", outside.getValue());
    double t = n.given("t", "thickness of the eye", thickness.in(unit));
    double q = slug.thickness(n, t, unit);
    return n.length(
        "Z",
        "disc before opening",
        "√(D² − 4 H (t − q) / (π t))",
        Math.sqrt(d * d - 4 * h * (t - q) / (Math.PI * t)));
  }

  /** Diameter, thickness and hole. */
  @Override
  public String toString() {
    return outside + " flat eye " + thickness + " thick with a " + hole;
  }
}
