package org.hammerscale.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * The sizes of bar to choose the parent stock from: what stands on the rack, or what the merchant
 * sells. Each question leaves the sizes that answer it, so that questions can be asked one after
 * another; none may be left. The smallest area stands first, unless {@link #nearestTo} has put them
 * in its own order.
 *
 * <pre>{@code
 * BarSizes shop = BarSizes.of(
 *     Section.square(inches("1/2")), Section.square(inches("5/8")),
 *     Section.round(inches("3/4")), Section.flat(inches(1), inches("3/8")));
 * Section leaf = Section.flat(inches("7/8"), inches("5/16"));
 * shop.nearestTo(leaf.area()).sections().get(0)   // 1/2 in square
 * shop.atLeast(leaf.area())                       // 1 in × 3/8 in flat, 5/8 in square, 3/4 in round
 * shop.covering(leaf)                             // 1 in × 3/8 in flat
 * }</pre>
 *
 * <p>Source: conservation of volume; a bar that is large enough both ways is drawn down, a smaller
 * one must be upset.
 */
public final class BarSizes {
  private final List<Section> sections;

  private BarSizes(List<Section> sections) {
    this.sections = sections;
  }

  /**
   * Some sizes of bar.
   *
   * @param sections solid sections, in any order and units
   * @return the sizes, the smallest area first
   * @throws IllegalArgumentException if one is a tube, which cannot be forged to a solid size
   */
  public static BarSizes of(Section... sections) {
    Objects.requireNonNull(sections, "sections");
    List<Section> sorted = new ArrayList<>(List.of(sections));
    sorted.forEach(section -> solid("sections", section));
    sorted.sort(Comparator.comparing(Section::area));
    return new BarSizes(List.copyOf(sorted));
  }

  /** {@return the sizes in their order; empty if none is left} */
  public List<Section> sections() {
    return sections;
  }

  /**
   * All these sizes, the nearest in area first; of two as near the larger, since drawing down is
   * easier than upsetting.
   *
   * @param area the area wanted, more than zero
   * @return the sizes in that order
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public BarSizes nearestTo(Quantity<Area> area) {
    Measure<Area> wanted = Arguments.positiveArea("area", area);
    List<Section> sorted = new ArrayList<>(sections);
    sorted.sort(
        Comparator.comparingDouble((Section section) -> Math.abs(section.area().ratio(wanted) - 1))
            .thenComparing(Section::area, Comparator.reverseOrder()));
    return new BarSizes(List.copyOf(sorted));
  }

  /**
   * The sizes of at least an area.
   *
   * @param area the area wanted, more than zero
   * @return the sizes that have it; one that misses it by rounding only is among them
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public BarSizes atLeast(Quantity<Area> area) {
    Measure<Area> wanted = Arguments.positiveArea("area", area);
    return only(section -> reaches(section.area(), wanted));
  }

  /**
   * The sizes of which no more than a length is used up by a volume of metal: those of at least
   * volume ÷ length.
   *
   * @param volume the metal needed, more than zero
   * @param length the longest stretch of bar to use, more than zero
   * @return the sizes that hold it
   * @throws IllegalArgumentException if an argument is not more than zero
   */
  public BarSizes holding(Quantity<Volume> volume, Quantity<Length> length) {
    Measure<Volume> metal = Arguments.positiveVolume("volume", volume);
    Measure<Length> longest = Arguments.positive("length", length);
    return only(section -> reaches(longest, Measures.length(metal, section.area())));
  }

  /**
   * The sizes that are at least as wide and at least as thick as a wanted section, lying flat or
   * standing on edge. Such a bar need only be drawn down, edged in or dressed to it, without
   * spreading or upsetting.
   *
   * @param wanted the section to forge
   * @return the sizes that cover it over all
   * @throws IllegalArgumentException if it is a tube
   */
  public BarSizes covering(Section wanted) {
    Section.requireArea("wanted", wanted);
    solid("wanted", wanted);
    return only(
        section ->
            covers(section.width(), section.thickness(), wanted)
                || covers(section.thickness(), section.width(), wanted));
  }

  private static void solid(String name, Section section) {
    if (section.isTube()) {
      throw new IllegalArgumentException(
          name
              + " must be solid to be forged to size, was "
              + section
              + "; buy a tube by its own outside and wall");
    }
  }

  private static boolean covers(Measure<Length> width, Measure<Length> thickness, Section wanted) {
    return reaches(width, wanted.width()) && reaches(thickness, wanted.thickness());
  }

  private static <Q extends Quantity<Q>> boolean reaches(Measure<Q> has, Measure<Q> wanted) {
    return has.isGreaterThan(wanted) || has.isEquivalentTo(wanted);
  }

  private BarSizes only(Predicate<Section> condition) {
    return new BarSizes(sections.stream().filter(condition).toList());
  }

  /** The sizes in their order. */
  @Override
  public String toString() {
    return sections.isEmpty()
        ? "no size"
        : sections.stream().map(Section::toString).collect(Collectors.joining(", "));
  }
}
