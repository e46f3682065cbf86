package org.hammerscale.stock;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A stretch of one section throughout. If it is the parent bar's own section it uses just its own
 * length; else it is the bar drawn down, or upset, to that section.
 *
 * <pre>{@code
 * Section bar = Section.flat(inches(1), inches("1/4"));
 * Plain.of(bar, inches(9)).stock(bar)                                       // 9 in
 * Plain.of(Section.flat(inches("3/4"), inches("1/4")), inches(8)).stock(bar) // 6 in
 * }</pre>
 *
 * <p>Source: conservation of volume.
 */
public final class Plain implements Feature {
  private final Section section;
  private final Measure<Length> length;

  private Plain(Section section, Measure<Length> length) {
    this.section = section;
    this.length = length;
  }

  /**
   * A plain stretch.
   *
   * @param section its section
   * @param length its finished length, not negative
   * @return the stretch
   * @throws IllegalArgumentException if the length is negative
   */
  public static Plain of(Section section, Quantity<Length> length) {
    Section.requireArea("section", section);
    section.area();
    return new Plain(section, Arguments.notNegative("length", length));
  }

  /** {@return its section throughout} */
  public Section section() {
    return section;
  }

  /** {@return {@code plain stretch}} */
  @Override
  public String name() {
    return "plain stretch";
  }

  @Override
  public Section start() {
    return section;
  }

  /** {@return length × area, exact} */
  @Override
  public Estimate<Volume> metalKept() {
    return Estimate.exact(Measures.volume(length, section.area()));
  }

  /** {@return its length} */
  @Override
  public Measure<Length> reach() {
    return length;
  }

  @Override
  public Working working() {
    Unit<Length> unit = length.getUnit();
    Unit<Area> square = Measures.area(length, length).getUnit();
    return Notes.taken(
            "plain stretch of " + section,
            unit,
            n -> {
              double a = n.givenArea("A", "section", section.area().in(square));
              double l = n.given("L", "length", length.in(unit));
              return n.volume("V", "metal kept", "L A", l * a);
            })
        .withSource(Source.computed("conservation of volume"));
  }

  /** {@return its own length to the last bit if the parent has its section} */
  @Override
  public Estimate<Length> stock(Section parent) {
    Section.requireArea("parent", parent);
    return section.equals(parent) ? Estimate.exact(length) : Feature.super.stock(parent);
  }

  /** Section and length, such as {@code 9 in of 1 in × 1/4 in flat}. */
  @Override
  public String toString() {
    return length + " of " + section;
  }
}
