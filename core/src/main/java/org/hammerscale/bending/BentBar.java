package org.hammerscale.bending;

import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/** What all bent stretches share: one section throughout, and a length of it bent out of line. */
abstract class BentBar implements Bent {
  static final Source MEAN_LINE = Source.read("Ilgen, Forge Work, 1912", "sec. 111");

  private final Section section;
  private final Unit<Length> unit;

  BentBar(Section section, Unit<Length> unit) {
    this.section = Section.requireArea("section", section);
    this.unit = unit;
  }

  /** The length of straight bar bent into it, in {@link #unit}. */
  abstract double developed(Notes n);

  /** What the smith measures it in: every length is worked out in this unit. */
  final Unit<Length> unit() {
    return unit;
  }

  final double t(Notes n) {
    return n.given("t", "thickness across the bend", thickness());
  }

  final double thickness() {
    return section.thickness().in(unit);
  }

  final Measure<Length> measure(double value) {
    return Measure.of(value, unit);
  }

  /** A number of turns as it is read, without the noise of its last digits. */
  static Measure<Dimensionless> count(double turns) {
    return Measure.of(turns, ShopUnits.ONE);
  }

  /** {@return the section of the bar, the same throughout} */
  public final Section section() {
    return section;
  }

  /**
   * The length of straight bar that is bent into it and stays in it.
   *
   * @return the length, exact as geometry of its rule, in the unit of its sizes
   */
  public final Measure<Length> developedLength() {
    return measure(developed(Notes.NONE));
  }

  @Override
  public final Section start() {
    return section;
  }

  /** {@return developed length × area of the section, exact as geometry} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Measures.volume(developedLength(), section.area()));
  }

  /** {@return its own length of bar to the last bit if the parent has its section} */
  @Override
  public Estimate<Length> stock(Section parent) {
    return section.equals(parent) ? Estimate.exact(developedLength()) : Bent.super.stock(parent);
  }

  /** {@return how the length of bar that stays in it was found} */
  @Override
  public Working working() {
    return Notes.taken(toString(), unit, this::developed)
        .withSource(MEAN_LINE)
        .withCautions(cautions());
  }

  /** A caution if a curl of this inside diameter is tighter than the bar is thick. */
  final List<Caution> tightCurl(Measure<Length> insideDiameter) {
    return insideDiameter.isLessThan(section.thickness())
        ? List.of(
            Caution.limit(
                "an inside diameter of "
                    + insideDiameter
                    + " is less than the bar is thick ("
                    + section.thickness()
                    + "): so tight a bend thickens inside and may crack outside; bend it hot, and"
                    + " thin the bar there or open the bend if you can",
                Source.commonPractice("mean line holds for curls of a thickness inside or more")))
        : List.of();
  }
}
