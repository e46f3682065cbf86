package org.hammerscale.punching;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Losses;
import org.hammerscale.stock.Outlined;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A hole punched through the bar, with its {@index slug} knocked out, and drifted to size if the
 * punch was smaller. Other names of the slug: {@index burr}, {@index pellet}. A punch driven from
 * one face first pushes metal aside; only what is left under it comes out. No thickness of the slug
 * is published: it is estimated as a third of the bar's, between nothing and the full slug H t, the
 * whole of the hole. Measure yours and say so with {@link #withSlugThickness}; a drilled hole loses
 * the full slug.
 *
 * <p>The stretch is as long as the punch along the bar. The metal it keeps is that of a plain
 * stretch less the slug, V = x A − H q, and the bar it uses is the stretch itself.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches(1), inches("1/4"));
 * PunchedHole hole = PunchedHole.through(bar, Hole.round(inches("3/8")));
 * hole.narrowerCheek()  // 5/16 in  what is left beside the hole
 * hole.slug()  // 0.009204 in³ (0 in³ to 0.02761 in³)  what comes out, a third of the hole or so
 * hole.withSlugThickness(inches("1/4")).slug()  // 0.02761 in³  all of it, as a drill takes
 * hole.widthOverEye().high()  // 1 3/8 in  the most that the bar may swell
 * }</pre>
 *
 * <p>The full slug, the stock and the cheeks are exact as geometry; slug, metal kept and swelling
 * are estimates.
 *
 * <p>Source: conservation of volume; the slug's thickness is an assumption.
 */
public final class PunchedHole extends Opened implements Outlined {
  private static final Source CHEEKS =
      Source.commonPractice("beside a punched hole at least the thickness of the bar");

  private final Hole hole;
  private final Hole punch;
  private final Slug slug;
  private final Cheeks cheeks;
  private final Unit<Length> unit;

  private PunchedHole(Section section, Hole hole, Hole punch, Slug slug, Cheeks cheeks) {
    super(section);
    this.hole = hole;
    this.punch = punch;
    this.slug = slug;
    this.cheeks = cheeks;
    this.unit = punch.unit();
    Measure<Volume> stretch = Measures.volume(punch.length(), section.area());
    if (!slug.full(unit).isLessThan(stretch)) {
      throw new IllegalArgumentException(
          "hole must leave metal on both sides of the "
              + section
              + ", was a "
              + punch
              + "; flatten the bar, or slit and drift the hole");
    }
  }

  /**
   * A hole punched to its size in the middle of the bar.
   *
   * @param section the bar
   * @param hole the finished hole, cold, narrower than the bar
   * @return the hole in its bar
   * @throws IllegalArgumentException if the hole is as wide as the bar or leaves no metal beside,
   *     or the bar is a tube
   */
  public static PunchedHole through(Section section, Hole hole) {
    Objects.requireNonNull(hole, "hole");
    Section.requireArea("section", section);
    Cheeks cheeks = Cheeks.beside(hole.width(), section);
    return new PunchedHole(section, hole, hole, Slug.of(hole, section.thickness()), cheeks);
  }

  /**
   * The same hole from a smaller punch, drifted to size: a slot punch for a round hole loses least.
   *
   * @param newPunch the end of the punch; not wider than the hole, nor larger in area
   * @return the hole
   * @throws IllegalArgumentException if the punch is wider or larger than the hole
   */
  public PunchedHole withPunch(Hole newPunch) {
    Objects.requireNonNull(newPunch, "newPunch");
    if (newPunch.width().isGreaterThan(hole.width())
        || newPunch.area().isGreaterThan(hole.area())) {
      throw new IllegalArgumentException(
          "punch must be no wider and no larger than the "
              + hole
              + ", was a "
              + newPunch
              + "; take a smaller punch");
    }
    Cheeks beside = Cheeks.beside(newPunch.width(), section()).moved(cheeks.offset());
    return new PunchedHole(section(), hole, newPunch, slug.by(newPunch), beside);
  }

  /**
   * The same hole with the slug that was found at the anvil.
   *
   * @param thickness the thickness of the slug, from zero to the bar's; the bar's own for a hole
   *     that is drilled
   * @return the hole
   * @throws IllegalArgumentException if the thickness is negative or more than the bar's
   */
  public PunchedHole withSlugThickness(Quantity<Length> thickness) {
    return new PunchedHole(section(), hole, punch, slug.measured(thickness), cheeks);
  }

  /**
   * The same hole off the middle of the bar.
   *
   * @param offset how far, not negative, and less than the width left beside the hole
   * @return the hole
   * @throws IllegalArgumentException if the offset is negative, or the hole reaches the edge
   */
  public PunchedHole offCentre(Quantity<Length> offset) {
    return new PunchedHole(section(), hole, punch, slug, cheeks.moved(offset));
  }

  /** {@return the finished hole} */
  public Hole hole() {
    return hole;
  }

  /** {@return the end of the punch; the hole itself unless a smaller one was chosen} */
  public Hole punch() {
    return punch;
  }

  /** {@return the most that the slug can be, H t, exact, in the cube of the punch's unit} */
  public Measure<Volume> fullSlug() {
    return slug.full(unit);
  }

  /** {@return the slug H q: a third of the full one, between nothing and all; exact if measured} */
  public Estimate<Volume> slug() {
    return slug.estimate(unit);
  }

  /** {@return the width left on the narrower side of the punch, (w − p)/2 less the offset} */
  public Measure<Length> narrowerCheek() {
    return cheeks.narrower();
  }

  /** {@return the width left on the wider side of the punch, (w − p)/2 and the offset} */
  public Measure<Length> widerCheek() {
    return cheeks.wider();
  }

  /**
   * The width of the bar over the eye: what the drift opens, and the metal that the punch pushed
   * aside. Low: it all went along the bar, w − p + h. Likely: it went sideways, evenly over the
   * stretch, (H t − S)/(x t) more. High: it went sideways where the hole is widest, p (1 − q/t)
   * more.
   *
   * @return the width, an estimate, in the unit of the bar's width; exact for a full slug
   */
  public Estimate<Length> widthOverEye() {
    Unit<Length> bar = section().width().getUnit();
    double p = punch.width().in(bar);
    double low = section().width().getValue() - p + hole.width().in(bar);
    double likely = Math.max(low, widthOverEye(Notes.NONE));
    double high = Math.max(likely, low + p * (1 - slug.leastPart()));
    return Estimate.of(Measure.of(low, bar), Measure.of(likely, bar), Measure.of(high, bar));
  }

  /** {@return {@code punched hole}} */
  @Override
  public String name() {
    return "punched hole";
  }

  /** {@return the plain stretch less the slug, an estimate as the slug is} */
  @Override
  public Estimate<Volume> metalKept() {
    Measure<Volume> likely = Slug.cubic(kept(Notes.NONE), unit);
    Measure<Volume> stretch = Measures.volume(punch.length(), section().area());
    return slug.isKnown()
        ? Estimate.exact(likely)
        : Estimate.of(stretch.subtract(fullSlug()), likely, stretch);
  }

  /** {@return the slug} */
  @Override
  public Losses metalLost() {
    return Losses.NONE.and("slug", slug());
  }

  /** {@return the hole's length along the bar} */
  @Override
  public Measure<Length> reach() {
    return hole.length();
  }

  /** {@return the hole in the bar as it was; that it swells is left to the hand} */
  @Override
  public Silhouette outline() {
    Measure<Length> none = hole.length().withValue(0);
    return Silhouette.from(section())
        .to(hole.length(), section())
        .withOpening(hole.outline(), none, cheeks.offset());
  }

  @Override
  Measure<Length> stretch() {
    return punch.length();
  }

  /** {@return cautions for narrow cheeks, and for a punch whose rim does not suit the hole's} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (narrowerCheek().isLessThan(section().thickness().multiply(1 - Rim.SLACK))) {
      cautions.add(
          Caution.limit(
              "the width left beside the hole, "
                  + narrowerCheek()
                  + ", is less than the bar is thick ("
                  + section().thickness()
                  + "): it bulges or tears; slit and drift the hole, or take a wider bar",
              CHEEKS));
    }
    if (!punch.equals(hole)) {
      cautions.addAll(Rim.cautions("half rim of the punch", punch.perimeter().divide(2), hole));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the likely metal kept was found} */
  @Override
  public Working working() {
    return Notes.taken("punched hole in " + section(), unit, this::kept)
        .withSource(Source.computed("conservation of volume: a plain stretch less the slug"))
        .withSource(slug.source())
        .withCautions(cautions());
  }

  /** {@return how the full slug was found} */
  public Working slugWorking() {
    return Notes.taken("slug of a " + punch, unit, n -> slug.full(n, unit))
        .withSource(Source.computed("area of the punch × thickness of the bar"));
  }

  /** {@return how the likely width over the eye was found} */
  public Working widthWorking() {
    return Notes.taken("width over the eye", section().width().getUnit(), this::widthOverEye)
        .withSource(Source.computed("conservation of volume: what is not slug swells the bar"))
        .withSource(slug.source())
        .withCautions(cautions());
  }

  private double kept(Notes n) {
    double s = slug.volume(n, unit);
    double x = n.length("x", "stretch that is punched", punch.symbol(), punch.length().in(unit));
    Unit<Area> square = Measures.area(punch.length(), punch.length()).getUnit();
    double a = n.givenArea("A", "section of the bar", section().area().in(square));
    return n.volume("V", "metal kept", "x A − S", x * a - s);
  }

  private double widthOverEye(Notes n) {
    Unit<Length> bar = section().width().getUnit();
    double s = slug.volume(n, bar);
    double area = punch.area(Notes.NONE, bar);
    double t = section().thickness().in(bar);
    double x = n.length("x", "stretch that is punched", punch.symbol(), punch.length().in(bar));
    double w = n.given("w", "width of the bar", section().width().in(bar));
    double p = n.given("p", "width of the punch", punch.width().in(bar));
    double h = n.given("h", "width of the hole", hole.width().in(bar));
    return n.length(
        "W",
        "width over the eye",
        "w − p + h + (H t − S) / (x t)",
        w - p + h + (area * t - s) / (x * t));
  }

  /** Hole, punch and bar. */
  @Override
  public String toString() {
    return (punch.equals(hole) ? hole + " punched" : hole + " drifted from a " + punch)
        + " in "
        + section();
  }
}
