package org.hammerscale.punching;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
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
 * A hole that is slit along the bar and opened with a drift: nothing is lost, there is no slug. The
 * bar is split over the length of the slit s into two cheeks of half its width, which are bent
 * round the hole and keep their width. So the bar swells to w + h over the eye, h being the hole
 * across, and draws in along: what was s long becomes as long as the hole. The metal is that of the
 * stretch that was slit, V = s A.
 *
 * <pre>{@code
 * Section bar = Section.square(inches(1));
 * DriftedHole eye = DriftedHole.through(bar, Hole.round(inches("1/2")));
 * eye.widthOverEye()                                    // 1 1/2 in   how far the bar swells
 * eye.stock(bar)                                        // 0.7854 in  bar to mark off: more than the hole
 * eye.shortening()                                      // 0.2854 in  how much shorter it makes the bar
 * eye.withSlit(Slit.byShopRule(eye.hole())).stock(bar)  // 3/4 in     with a slit cut by the shop's rule
 * }</pre>
 *
 * <p>Exact as geometry of cheeks that keep their width. A drift driven far stretches and thins
 * them: dress the eye on the drift and measure. Other names: {@index "slit and drift"}, {@index
 * "swelled hole"}, {@index "swelled eye"}.
 *
 * <p>Source: conservation of volume; for the slit see {@link Slit}.
 */
public final class DriftedHole extends Opened implements Outlined {
  private static final int POINTS = 48;
  private static final Source CHEEKS =
      Source.commonPractice("cheeks at least half as wide as the bar is thick");

  private final Hole hole;
  private final Slit slit;
  private final Cheeks cheeks;

  private DriftedHole(Section section, Hole hole, Slit slit, Cheeks cheeks) {
    super(section);
    this.hole = hole;
    this.slit = slit;
    this.cheeks = cheeks;
  }

  /**
   * A hole drifted open from a slit of half the way round, in the middle of the bar.
   *
   * @param section the bar
   * @param hole the finished hole, cold
   * @return the hole in its bar
   * @throws IllegalArgumentException if the bar is a tube
   */
  public static DriftedHole through(Section section, Hole hole) {
    Objects.requireNonNull(hole, "hole");
    return new DriftedHole(
        Section.requireArea("section", section),
        hole,
        Slit.halfWayRound(hole),
        Cheeks.beside(section.width().withValue(0), section));
  }

  /**
   * The same hole from another slit, such as {@link Slit#byShopRule}.
   *
   * @param newSlit the slit
   * @return the hole
   */
  public DriftedHole withSlit(Slit newSlit) {
    return new DriftedHole(section(), hole, Objects.requireNonNull(newSlit, "newSlit"), cheeks);
  }

  /**
   * The same hole with its slit off the middle of the bar.
   *
   * @param offset how far, not negative and less than half the width
   * @return the hole
   * @throws IllegalArgumentException if the offset is negative or reaches the edge
   */
  public DriftedHole offCentre(Quantity<Length> offset) {
    return new DriftedHole(section(), hole, slit, cheeks.moved(offset));
  }

  /** {@return the finished hole} */
  public Hole hole() {
    return hole;
  }

  /** {@return the slit it is opened from} */
  public Slit slit() {
    return slit;
  }

  /**
   * The width of the bar over the eye: W = w + h.
   *
   * @return the width, exact for cheeks that keep theirs, in the unit of the bar's width
   */
  public Measure<Length> widthOverEye() {
    return Measure.of(widthOverEye(Notes.NONE), section().width().getUnit());
  }

  /** {@return the width left on the narrower side of the hole: half the bar, less the offset} */
  public Measure<Length> narrowerCheek() {
    return cheeks.narrower();
  }

  /** {@return the width left on the wider side of the hole: half the bar and the offset} */
  public Measure<Length> widerCheek() {
    return cheeks.wider();
  }

  /**
   * How much shorter the bar becomes in opening the hole: the slit less the hole's length.
   *
   * @return the difference, exact for cheeks that keep their width, in the unit of the hole's
   *     length; negative if a very short slit was stretched
   */
  public Measure<Length> shortening() {
    return hole.length().withValue(slit.length().in(hole.unit())).subtract(hole.length());
  }

  /** {@return {@code drifted hole}} */
  @Override
  public String name() {
    return "drifted hole";
  }

  /** {@return the metal of the stretch that is slit, exact, in the cube of the slit's unit} */
  @Override
  public Estimate<Volume> metalKept() {
    Measure<Length> one = slit.length();
    return Estimate.exact(
        Measures.volume(one, Measures.area(one, one)).withValue(metal(Notes.NONE)));
  }

  /** {@return the hole's length along the bar} */
  @Override
  public Measure<Length> reach() {
    return hole.length();
  }

  /** {@return the hole, and cheeks that keep their width round it} */
  @Override
  public Silhouette outline() {
    Measure<Length> wide = section().width();
    Measure<Length> none = hole.length().withValue(0);
    Silhouette look = Silhouette.from(section());
    for (int i = 0; i <= POINTS; i++) {
      double angle = Math.PI * i / POINTS;
      double share = hole.hasCorners() ? 1 : i == POINTS ? 0 : Math.sin(angle);
      Measure<Length> along = hole.length().multiply((1 - Math.cos(angle)) / 2);
      look = look.to(along, wide.add(hole.width().multiply(share)));
    }
    return look.to(hole.length(), section()).withOpening(hole.outline(), none, cheeks.offset());
  }

  @Override
  Measure<Length> stretch() {
    return slit.length();
  }

  /**
   * Where the bar is asked for more than it gives.
   *
   * @return cautions for a hole wider than the bar, for thin cheeks, for a slit that is too long,
   *     for one so short that its lips must stretch by more than a seventh, and for a mortise,
   *     whose sides stretch when they are straightened
   */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (hole.width().isGreaterThan(section().width())) {
      cautions.add(
          Caution.limit(
              "the hole of "
                  + hole.width()
                  + " is wider than the bar ("
                  + section().width()
                  + "), a slit of "
                  + slit.length()
                  + " longer than its width allows: the cheeks thin and may tear; jump the bar up"
                  + " or take a wider one",
              Source.commonPractice("a drifted hole no wider than the bar")));
    }
    if (narrowerCheek().isLessThan(section().thickness().divide(2).multiply(1 - Rim.SLACK))) {
      cautions.add(
          Caution.limit(
              "the cheek of "
                  + narrowerCheek()
                  + " is less than half as wide as the bar is thick ("
                  + section().thickness()
                  + "): it leans over or tears in drifting; take a wider bar",
              CHEEKS));
    }
    cautions.addAll(Rim.cautions("slit", slit.length(), hole));
    if (hole.hasCorners() && !hole.length().isEquivalentTo(hole.width())) {
      cautions.add(
          Caution.limit(
              "the sides of a slot stretch when they are hammered straight: one marked 1 3/4 in"
                  + " finished 2 in long; slit the first one short and measure it",
              Slit.STRAIGHTENED));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the metal was found} */
  @Override
  public Working working() {
    return Notes.taken(
            slit.working().title() + " and drifted", slit.length().getUnit(), this::metal)
        .withSource(slit.source())
        .withSource(Source.computed("conservation of volume: a slit loses nothing"))
        .withCautions(cautions());
  }

  /** {@return how the width over the eye was found} */
  public Working widthWorking() {
    return Notes.taken("width over the eye", section().width().getUnit(), this::widthOverEye)
        .withSource(Source.computed("each cheek keeps half the bar's width"))
        .withCautions(cautions());
  }

  private double metal(Notes n) {
    Measure<Length> one = slit.length();
    Unit<Area> square = Measures.area(one, one).getUnit();
    double s = slit.length(n);
    double a = n.givenArea("A", "section of the bar", section().area().in(square));
    return n.volume("V", "metal kept", "s A", s * a);
  }

  private double widthOverEye(Notes n) {
    Unit<Length> unit = section().width().getUnit();
    double w = n.given("w", "width of the bar", section().width().in(unit));
    double h = n.given("h", "width of the hole", hole.width().in(unit));
    return n.length("W", "width over the eye", "w + h", w + h);
  }

  /** Hole, slit and bar. */
  @Override
  public String toString() {
    return hole + " drifted from a " + slit + " in " + section();
  }
}
