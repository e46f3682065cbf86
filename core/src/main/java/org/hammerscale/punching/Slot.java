package org.hammerscale.punching;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
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
 * A slot along the bar that is punched narrower than its finished gap, and then cleaned by saw cuts
 * along its sides: two of them in a slot, one in a {@index notch} at the edge of the bar. What is
 * left to punch between the cuts is the tongue, b − c k, b being the gap, k the saw's {@index kerf}
 * and c the number of cuts. The slot between two knuckles of a hinge is one.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Hole gap = Hole.mortise(inches("1 3/4"), inches("1/2"));
 * Slot slot = Slot.through(strap, gap, inches("1/16"));
 * slot.tongue()                                    // 3/8 in  to punch out between the two saw cuts
 * slot.metalLost()                                 // slug 0.1641 in³, saw 0.05469 in³  where the metal went
 * Slot.notch(strap, gap, inches("1/16")).tongue()  // 7/16 in  at the edge, with one saw cut
 * }</pre>
 *
 * <p>The kerf must fall inside the slot: the marking line is the edge of the finished slot. Exact
 * as geometry of a strap that is dressed back to its width; what the punch pushes aside counts as
 * slug.
 *
 * <p>Source: plane geometry; conservation of volume.
 */
public final class Slot extends Opened implements Outlined {
  private static final Source CUTS =
      Source.computed("the saw cuts lie inside the slot, along its sides");
  private static final Source CHEEKS =
      Source.commonPractice("beside a slot at least the thickness of the bar");

  private final Hole gap;
  private final Measure<Length> kerf;
  private final int cuts;
  private final Unit<Length> unit;

  private Slot(Section section, Hole gap, Measure<Length> kerf, int cuts) {
    super(section);
    this.gap = gap;
    this.kerf = kerf;
    this.cuts = cuts;
    this.unit = gap.unit();
  }

  /**
   * A slot with metal on both sides, cleaned by two saw cuts.
   *
   * @param section the bar
   * @param gap the finished slot with square corners; its width lies across the bar
   * @param kerf the width of a saw cut, not negative and less than half the gap
   * @return the slot
   * @throws IllegalArgumentException if the gap has no corners or is as wide as the bar, no tongue
   *     is left between the cuts, or the bar is not flat or square
   */
  public static Slot through(Section section, Hole gap, Quantity<Length> kerf) {
    Section.requireArea("section", section);
    Objects.requireNonNull(gap, "gap");
    return cut(section, gap, kerf, 2);
  }

  /**
   * A notch at the edge of the bar, cleaned by one saw cut.
   *
   * @param section the bar
   * @param gap the finished notch with square corners; its width lies across the bar
   * @param kerf the width of the saw cut, not negative and less than the gap
   * @return the notch
   * @throws IllegalArgumentException if the gap has no corners or is as wide as the bar, nothing is
   *     left to punch beside the cut, or the bar is not flat or square
   */
  public static Slot notch(Section section, Hole gap, Quantity<Length> kerf) {
    Section.requireArea("section", section);
    Objects.requireNonNull(gap, "gap");
    return cut(section, gap, kerf, 1);
  }

  private static Slot cut(Section section, Hole gap, Quantity<Length> kerf, int cuts) {
    if (!gap.hasCorners()) {
      throw new IllegalArgumentException(
          "gap must have straight sides to saw, was a " + gap + "; give a mortise or a square");
    }
    Cheeks.flat(section);
    Cheeks.beside(gap.width(), section);
    Slot slot = new Slot(section, gap, Arguments.notNegative("kerf", kerf), cuts);
    if (!(slot.tongue(Notes.NONE) > 0)) {
      throw new IllegalArgumentException(
          "kerf must be less than "
              + gap.width().divide(cuts)
              + ", so that "
              + (cuts == 2 ? "two cuts leave a tongue" : "a cut leaves a tongue")
              + " to punch in the gap of "
              + gap.width()
              + ", was "
              + slot.kerf
              + "; take a thinner blade or a wider gap");
    }
    return slot;
  }

  /** {@return the finished slot} */
  public Hole gap() {
    return gap;
  }

  /**
   * The width to punch or chisel out between the saw cuts: b − 2 k in a slot, b − k in a notch.
   *
   * @return the width of the tongue, exact, in the unit of the gap's length
   */
  public Measure<Length> tongue() {
    return Measure.of(tongue(Notes.NONE), unit);
  }

  /**
   * The width left beside the slot: half of what the gap leaves of the bar, on each side; all of
   * it, on one side, beside a notch.
   *
   * @return the width, exact, in the unit of the bar's width
   */
  public Measure<Length> cheek() {
    return section().width().subtract(gap.width()).divide(cuts);
  }

  /** {@return {@code slot}, or {@code notch}} */
  @Override
  public String name() {
    return cuts == 2 ? "slot" : "notch";
  }

  /** {@return the plain stretch less the slot, exact, in the cube of the unit of its length} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Slug.cubic(metal(Notes.NONE), unit));
  }

  /** {@return the tongue as slug, and the kerf of each cut as saw} */
  @Override
  public Losses metalLost() {
    double face = gap.length().in(unit) * section().thickness().in(unit);
    double sawn = cuts * kerf.in(unit) * face;
    return Losses.NONE
        .and("slug", Estimate.exact(Slug.cubic(tongue(Notes.NONE) * face, unit)))
        .and("saw", Estimate.exact(Slug.cubic(sawn, unit)));
  }

  /** {@return the slot's length} */
  @Override
  public Measure<Length> reach() {
    return gap.length();
  }

  /** {@return the gap, in the middle of the bar or at its edge} */
  @Override
  public Silhouette outline() {
    Measure<Length> none = gap.length().withValue(0);
    Measure<Length> aside = section().width().subtract(gap.width()).divide(2);
    return Silhouette.from(section())
        .to(gap.length(), section())
        .withOpening(gap.outline(), none, cuts == 2 ? none : aside);
  }

  @Override
  Measure<Length> stretch() {
    return gap.length();
  }

  /** {@return a caution if the bar beside the slot is narrower than thick; else none} */
  @Override
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (cheek().isLessThan(section().thickness().multiply(1 - Rim.SLACK))) {
      cautions.add(
          Caution.limit(
              "the width left beside the "
                  + name()
                  + ", "
                  + cheek()
                  + ", is less than the bar is thick ("
                  + section().thickness()
                  + "): it bends in punching; saw the whole slot, or take a wider bar",
              CHEEKS));
    }
    return List.copyOf(cautions);
  }

  /** {@return how the metal kept was found} */
  @Override
  public Working working() {
    return Notes.taken(name() + " in " + section(), unit, this::metal)
        .withSource(Source.computed("conservation of volume: a plain stretch less the slot"))
        .withCautions(cautions());
  }

  /** {@return how the tongue was found} */
  public Working tongueWorking() {
    return Notes.taken("tongue to punch in a " + name(), unit, this::tongue)
        .withSource(CUTS)
        .withCautions(cautions());
  }

  private double tongue(Notes n) {
    double b = n.given("b", "finished gap", gap.width().in(unit));
    double k = n.given("k", "kerf of the saw", kerf.in(unit));
    double c = n.number("c", "saw cuts", "", cuts);
    return n.length("T", "tongue to punch", "b − c k", b - c * k);
  }

  private double metal(Notes n) {
    Unit<Area> square = Measures.area(gap.length(), gap.length()).getUnit();
    double a = n.givenArea("A", "section of the bar", section().area().in(square));
    double t = n.given("t", "thickness of the bar", section().thickness().in(unit));
    double l = n.given("l", "length of the slot", gap.length().in(unit));
    double b = n.given("b", "finished gap", gap.width().in(unit));
    return n.volume("V", "metal kept", "l (A − b t)", l * (a - b * t));
  }

  /** Slot and bar. */
  @Override
  public String toString() {
    return gap.length() + " × " + gap.width() + " " + name() + " in " + section();
  }
}
