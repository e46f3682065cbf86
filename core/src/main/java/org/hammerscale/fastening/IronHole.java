package org.hammerscale.fastening;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A round hole for a fastener in a strap, how it is made and where it lies. Other name: {@index
 * "clearance hole"}. Drilling takes d0 out of the width and leaves the rest as it was; a punch
 * takes a slug and pushes some metal aside; a slit that is drifted open takes nothing: the strap
 * swells and grows shorter, and its net width stays whole.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * IronHole drilled = IronHole.drilled(inches("1/4"));
 * drilled.netWidth(strap)                               // 1 1/4 in   strap left to pull on
 * drilled.offCentre(inches("3/8")).edgeDistance(strap)  // 3/8 in     from its centre to the nearer edge
 * IronHole drifted = IronHole.drifted(inches("1/4"));
 * drifted.netWidth(strap)                               // 1 1/2 in   slit and drifted: nothing is lost,
 * drifted.widthOver(strap)                              // 1 3/4 in   but the strap swells
 * drifted.shortening(strap)                             // 0.1427 in  and grows shorter
 * }</pre>
 *
 * <p>Net width and edge are exact as geometry; what the punch does is an estimate, see {@link
 * PunchedHole}.
 *
 * <p>Source: plane geometry; conservation of volume.
 */
public final class IronHole {
  /** How a hole is made. */
  public enum Making {
    /** With a drill: all its metal is lost as chips. */
    DRILLED("drilled"),
    /** With a punch, hot or cold: a slug is lost, some metal goes sideways. */
    PUNCHED("punched"),
    /** Slit and opened with a drift: nothing is lost. */
    DRIFTED("drifted");

    private final String word;

    Making(String word) {
      this.word = word;
    }

    /** The way in a word. */
    @Override
    public String toString() {
      return word;
    }
  }

  private final Making making;
  private final Measure<Length> diameter;
  private final Measure<Length> fastener;
  private final Measure<Length> along;
  private final Measure<Length> offset;

  private IronHole(
      Making making,
      Measure<Length> diameter,
      Measure<Length> fastener,
      Measure<Length> along,
      Measure<Length> offset) {
    this.making = making;
    this.diameter = diameter;
    this.fastener = fastener;
    this.along = along;
    this.offset = offset;
  }

  /**
   * A drilled hole in the middle of the strap.
   *
   * @param diameter d0, more than zero
   * @return the hole
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static IronHole drilled(Quantity<Length> diameter) {
    return made(Making.DRILLED, diameter);
  }

  /**
   * A punched hole in the middle of the strap.
   *
   * @param diameter d0, more than zero
   * @return the hole
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static IronHole punched(Quantity<Length> diameter) {
    return made(Making.PUNCHED, diameter);
  }

  /**
   * A hole in the middle of the strap that is slit and drifted open.
   *
   * @param diameter d0, more than zero
   * @return the hole
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static IronHole drifted(Quantity<Length> diameter) {
    return made(Making.DRIFTED, diameter);
  }

  private static IronHole made(Making making, Quantity<Length> diameter) {
    Measure<Length> size = Arguments.positive("diameter", diameter);
    return new IronHole(making, size, size, size.withValue(0), size.withValue(0));
  }

  /**
   * The same hole for a fastener that does not fill it.
   *
   * @param fastenerDiameter d, more than zero and at most that of the hole
   * @return the hole
   * @throws IllegalArgumentException if the fastener does not pass
   */
  public IronHole clearing(Quantity<Length> fastenerDiameter) {
    Measure<Length> d = Arguments.positive("fastenerDiameter", fastenerDiameter);
    if (d.isGreaterThan(diameter) && !d.isEquivalentTo(diameter)) {
      throw new IllegalArgumentException(
          "fastenerDiameter must be at most the "
              + diameter
              + " of the hole, was "
              + d
              + "; drill the hole wider");
    }
    return new IronHole(making, diameter, d, along, offset);
  }

  /**
   * The same hole elsewhere along the strap.
   *
   * @param distance of its centre from any one point of the strap, the same for all its holes
   * @return the hole
   */
  public IronHole at(Quantity<Length> distance) {
    return new IronHole(making, diameter, fastener, Arguments.length("distance", distance), offset);
  }

  /**
   * The same hole off the middle line of the strap.
   *
   * @param distance of its centre from the middle line, positive to one side, negative to the other
   * @return the hole
   */
  public IronHole offCentre(Quantity<Length> distance) {
    return new IronHole(making, diameter, fastener, along, Arguments.length("distance", distance));
  }

  /** {@return how it is made} */
  public Making making() {
    return making;
  }

  /** {@return its diameter d0} */
  public Measure<Length> diameter() {
    return diameter;
  }

  /** {@return the diameter d of its fastener; that of the hole unless said} */
  public Measure<Length> fastenerDiameter() {
    return fastener;
  }

  /** {@return where its centre lies along the strap} */
  public Measure<Length> along() {
    return along;
  }

  /** {@return how far its centre lies off the middle line, with its sign} */
  public Measure<Length> offset() {
    return offset;
  }

  /**
   * The width that carries the pull past this hole: w − d0; the whole w if it is drifted.
   *
   * @param strap a flat or square bar
   * @return the net width, exact, in the unit of the strap's width
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Measure<Length> netWidth(Section strap) {
    requireWithin(strap);
    return strap.width().withValue(netWidth(Notes.NONE, strap));
  }

  /**
   * How far its centre lies from the nearer edge: w/2 less the offset; half of d0 more if it is
   * drifted, since the strap swells.
   *
   * @param strap a flat or square bar
   * @return the edge distance, exact, in the unit of the strap's width
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Measure<Length> edgeDistance(Section strap) {
    requireWithin(strap);
    return toEdge(strap);
  }

  /**
   * The metal it takes out of the strap: chips of the full hole, a slug, or nothing.
   *
   * @param strap a flat or square bar
   * @return the metal, exact if it is drilled or drifted, in the cube of the diameter's unit
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Estimate<Volume> metalLost(Section strap) {
    requireWithin(strap);
    Measure<Volume> none = Measures.volume(diameter.withValue(0), strap.area());
    return switch (making) {
      case DRILLED -> Estimate.exact(punchedIn(strap).fullSlug());
      case PUNCHED -> punchedIn(strap).slug();
      case DRIFTED -> Estimate.exact(none);
    };
  }

  /**
   * The width of the strap over the hole: as it was if drilled, a little swelled if punched, w + d0
   * if drifted. What does not suit can be ground or forged back, at the cost of the net width.
   *
   * @param strap a flat or square bar
   * @return the width, exact if it is drilled or drifted, in the unit of the strap's width
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Estimate<Length> widthOver(Section strap) {
    requireWithin(strap);
    return switch (making) {
      case DRILLED -> Estimate.exact(strap.width());
      case PUNCHED -> punchedIn(strap).widthOverEye();
      case DRIFTED -> Estimate.exact(driftedIn(strap).widthOverEye());
    };
  }

  /**
   * How much shorter the strap becomes in making the hole: nothing if drilled or punched, the slit
   * less the hole if drifted. Marks beyond it move by as much.
   *
   * @param strap a flat or square bar
   * @return the difference, exact for cheeks that keep their width, in the diameter's unit
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Measure<Length> shortening(Section strap) {
    requireWithin(strap);
    return making == Making.DRIFTED ? driftedIn(strap).shortening() : diameter.withValue(0);
  }

  /**
   * Where the strap is asked for more than it gives.
   *
   * @param strap a flat or square bar
   * @return cautions of {@link PunchedHole} or {@link DriftedHole} for what is left beside it
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public List<Caution> cautions(Section strap) {
    requireWithin(strap);
    return switch (making) {
      case DRILLED -> List.of();
      case PUNCHED -> punchedIn(strap).cautions();
      case DRIFTED -> driftedIn(strap).cautions();
    };
  }

  /**
   * How the net width was found.
   *
   * @param strap a flat or square bar
   * @return the working of {@link #netWidth}
   * @throws IllegalArgumentException if the hole does not lie within the strap
   */
  public Working netWorking(Section strap) {
    requireWithin(strap);
    Unit<Length> unit = strap.width().getUnit();
    return Notes.taken("width left at a " + this, unit, n -> netWidth(n, strap))
        .withSource(
            Source.computed(
                making == Making.DRIFTED
                    ? "a slit takes nothing out of the width"
                    : "the strap less its hole"))
        .withCautions(cautions(strap));
  }

  private double netWidth(Notes n, Section strap) {
    double w = n.given("w", "width of the strap", strap.width().getValue());
    if (making == Making.DRIFTED) {
      return n.length("b", "net width, both cheeks", "w", w);
    }
    double d = n.given("d₀", "diameter of the hole", diameter.in(strap.width().getUnit()));
    return n.length("b", "net width", "w − d₀", w - d);
  }

  /** {@return what it takes from the net width: its diameter, or nothing if it is drifted} */
  public Measure<Length> widthTaken() {
    return making == Making.DRIFTED ? diameter.withValue(0) : diameter;
  }

  private Measure<Length> toEdge(Section strap) {
    Unit<Length> unit = strap.width().getUnit();
    double swell = making == Making.DRIFTED ? diameter.in(unit) / 2 : 0;
    double middle = strap.width().getValue() / 2;
    return strap.width().withValue(middle - Math.abs(offset.in(unit)) + swell);
  }

  /**
   * Refuses a strap that this hole does not lie within.
   *
   * @param strap the section it has where the hole is
   * @throws IllegalArgumentException if the strap is no flat or square bar, or the hole leaves no
   *     iron on one of its sides
   */
  public void requireWithin(Section strap) {
    Section.requireArea("strap", strap);
    if (!strap.isSimilarTo(Section.square(strap.width()))) {
      throw new IllegalArgumentException(
          "strap must be a flat or square bar, was "
              + strap
              + "; flatten it, and give the section it has where the hole is");
    }
    Measure<Length> beside = toEdge(strap).subtract(diameter.divide(2));
    if (!(beside.getValue() > 0)) {
      throw new IllegalArgumentException(
          "diameter must leave iron on both sides of the "
              + strap
              + ", was "
              + diameter
              + ", "
              + off()
              + " off the middle; take a smaller hole, or set it nearer to the middle");
    }
  }

  private Measure<Length> off() {
    return offset.withValue(Math.abs(offset.getValue()));
  }

  private PunchedHole punchedIn(Section strap) {
    return PunchedHole.through(strap, Hole.round(diameter)).offCentre(off());
  }

  private DriftedHole driftedIn(Section strap) {
    return DriftedHole.through(strap, Hole.round(diameter)).offCentre(off());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof IronHole that
        && making == that.making
        && diameter.equals(that.diameter)
        && fastener.equals(that.fastener)
        && along.equals(that.along)
        && offset.equals(that.offset);
  }

  @Override
  public int hashCode() {
    return Objects.hash(making, diameter, fastener, along, offset);
  }

  /** Making, diameter, and where it lies if not in the middle. */
  @Override
  public String toString() {
    return making
        + " hole of "
        + diameter
        + (along.getValue() == 0 ? "" : " at " + along)
        + (offset.getValue() == 0 ? "" : ", " + offset + " off the middle");
  }
}
