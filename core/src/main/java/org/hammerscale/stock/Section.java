package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * The section of a bar: its shape and its sizes. Areas come out in the square of the unit that the
 * width is given in.
 *
 * <pre>{@code
 * Section.flat(inches("1 1/2"), inches("1/4"))          // 1 1/2 in × 1/4 in flat
 * Section.flat(inches("1 1/2"), inches("1/4")).area()   // 0.375 in²
 * Section.round(millimetres(12)).area()                 // 113.1 mm²
 * }</pre>
 */
public final class Section {
  private enum Shape {
    FLAT("flat"),
    SQUARE("square"),
    ROUND("round");

    final String word;

    Shape(String word) {
      this.word = word;
    }
  }

  private final Shape shape;
  private final Measure<Length> width;
  private final Measure<Length> thickness;

  private Section(Shape shape, Measure<Length> width, Measure<Length> thickness) {
    this.shape = shape;
    this.width = width;
    this.thickness = thickness;
  }

  /**
   * A flat bar, lying flat: the width first, as bars are named.
   *
   * @param width the wide side, more than zero
   * @param thickness the thin side, more than zero and at most the width
   * @return the section
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Section flat(Quantity<Length> width, Quantity<Length> thickness) {
    Measure<Length> wide = Arguments.positive("width", width);
    Measure<Length> thin = Arguments.positive("thickness", thickness);
    if (wide.isLessThan(thin)) {
      throw new IllegalArgumentException(
          "width must be at least the thickness of "
              + thin
              + ", was "
              + wide
              + "; name the width first, or use Section.onEdge for a bar that stands on edge");
    }
    return new Section(Shape.FLAT, wide, thin);
  }

  /**
   * A flat bar standing on edge, to be bent the hard way, or a tip that is thicker than wide.
   *
   * @param width the side that lies, more than zero
   * @param thickness the side that stands, across which it bends, at least the width
   * @return the section
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Section onEdge(Quantity<Length> width, Quantity<Length> thickness) {
    Measure<Length> lying = Arguments.positive("width", width);
    Measure<Length> standing = Arguments.positive("thickness", thickness);
    if (standing.isLessThan(lying)) {
      throw new IllegalArgumentException(
          "thickness must be at least the width of "
              + lying
              + ", was "
              + standing
              + "; use Section.flat for a bar that lies flat");
    }
    return new Section(Shape.FLAT, lying, standing);
  }

  /**
   * A square bar.
   *
   * @param side across the flats, more than zero
   * @return the section
   * @throws IllegalArgumentException if the side is not more than zero
   */
  public static Section square(Quantity<Length> side) {
    Measure<Length> measure = Arguments.positive("side", side);
    return new Section(Shape.SQUARE, measure, measure);
  }

  /**
   * A round bar.
   *
   * @param diameter more than zero
   * @return the section
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Section round(Quantity<Length> diameter) {
    Measure<Length> measure = Arguments.positive("diameter", diameter);
    return new Section(Shape.ROUND, measure, measure);
  }

  /** {@return the size along the axis that it bends about: the width, side or diameter} */
  public Measure<Length> width() {
    return width;
  }

  /** {@return the size across the bend: the thickness, side or diameter} */
  public Measure<Length> thickness() {
    return thickness;
  }

  /**
   * The area: w t for a flat, s² for a square, π d²/4 for a round.
   *
   * @return the area, exact, in the square of the width's unit
   */
  public Measure<Area> area() {
    Measure<Area> box = Measures.area(width, thickness);
    return shape == Shape.ROUND ? box.multiply(Math.PI / 4) : box;
  }

  /**
   * The way round: 2 (w + t) for a flat, 4 s for a square, π d for a round.
   *
   * @return the perimeter, exact, in the width's unit
   */
  public Measure<Length> perimeter() {
    return shape == Shape.ROUND ? width.multiply(Math.PI) : width.add(thickness).multiply(2);
  }

  /**
   * Whether another section is of the same family, so that a straight taper leads from one to the
   * other: flats and squares are one family, rounds another.
   *
   * @param other a section
   * @return whether it is similar
   */
  public boolean isSimilarTo(Section other) {
    return (shape == Shape.ROUND) == (other.shape == Shape.ROUND);
  }

  /**
   * Whether another section is the same but for rounding, whatever its units: a square meets a flat
   * of its sides.
   *
   * @param other a section
   * @return whether one can go over into the other without a step
   */
  public boolean meets(Section other) {
    return isSimilarTo(other)
        && width.isEquivalentTo(other.width)
        && thickness.isEquivalentTo(other.thickness);
  }

  /**
   * The section half-way along a straight taper to another one: the mean of each size.
   *
   * @param other a similar section
   * @return the section between, in this one's unit
   * @throws IllegalArgumentException if the sections are not similar
   */
  public Section halfwayTo(Section other) {
    if (!isSimilarTo(other)) {
      throw new IllegalArgumentException(
          "section must be similar to "
              + this
              + ", was "
              + other
              + "; forge the change of shape as a feature of its own");
    }
    Measure<Length> middleWidth = width.add(other.width).divide(2);
    Measure<Length> middleThickness = thickness.add(other.thickness).divide(2);
    Shape middle = shape == other.shape ? shape : Shape.FLAT;
    return new Section(middle, middleWidth, middleThickness);
  }

  /** Same shape and sizes, each by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Section section
        && shape == section.shape
        && width.equals(section.width)
        && thickness.equals(section.thickness);
  }

  @Override
  public int hashCode() {
    return Objects.hash(shape, width, thickness);
  }

  /** The sizes and the shape, such as {@code 1 1/2 in × 1/4 in flat}. */
  @Override
  public String toString() {
    return shape == Shape.FLAT
        ? width + " × " + thickness + " " + shape.word
        : width + " " + shape.word;
  }
}
