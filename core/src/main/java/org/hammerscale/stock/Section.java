package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * The section of a bar: its shape and its sizes. Areas come out in the square of the unit that the
 * width is given in.
 *
 * <pre>{@code
 * Section.flat(inches("1 1/2"), inches("1/4"))          // 1 1/2 in × 1/4 in flat
 * Section.flat(inches("1 1/2"), inches("1/4")).area()   // 0.375 in²
 * Section.round(millimetres(12)).area()                 // 113.1 mm²
 * Section.hexagon(inches("3/4"))                        // 3/4 in hexagon
 * Section.roundTube(millimetres(25), millimetres(2))    // 25 mm × 2 mm round tube
 * }</pre>
 *
 * <p>Sizes are exact as geometry; rolled bar differs from its nominal size by the mill's tolerance
 * and has slightly rounded edges. Source: plane geometry.
 */
public final class Section {
  private final Shape shape;
  private final Measure<Length> first;
  private final Measure<Length> second;

  private Section(Shape shape, Measure<Length> first, Measure<Length> second) {
    this.shape = shape;
    this.first = first;
    this.second = second;
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
    Arguments.atLeast(
        "width",
        wide,
        "the thickness",
        thin,
        "name the width first, or use Section.onEdge for a bar that stands on edge");
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
    Arguments.atLeast(
        "thickness", standing, "the width", lying, "use Section.flat for a bar that lies flat");
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
    return ofOneSize(Shape.SQUARE, "side", side);
  }

  /**
   * A round bar.
   *
   * @param diameter more than zero
   * @return the section
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Section round(Quantity<Length> diameter) {
    return ofOneSize(Shape.ROUND, "diameter", diameter);
  }

  /**
   * A hexagonal bar, lying on a flat.
   *
   * @param acrossFlats from one flat to the opposite one, more than zero
   * @return the section
   * @throws IllegalArgumentException if the size is not more than zero
   */
  public static Section hexagon(Quantity<Length> acrossFlats) {
    return ofOneSize(Shape.HEXAGON, "acrossFlats", acrossFlats);
  }

  /**
   * An octagonal bar, lying on a flat: bought so, or a square with its corners forged in until all
   * eight sides are equal.
   *
   * @param acrossFlats from one flat to the opposite one, more than zero
   * @return the section
   * @throws IllegalArgumentException if the size is not more than zero
   */
  public static Section octagon(Quantity<Length> acrossFlats) {
    return ofOneSize(Shape.OCTAGON, "acrossFlats", acrossFlats);
  }

  /**
   * A half-round bar, lying on its flat: a round bar split along its middle. It is as thick as half
   * its width.
   *
   * @param width the flat, which is the diameter of the round; more than zero
   * @return the section
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Section halfRound(Quantity<Length> width) {
    return ofOneSize(Shape.HALF_ROUND, "width", width);
  }

  /**
   * A round tube or pipe. One that is closed at both ends bursts in the fire: vent it.
   *
   * @param outside the outside diameter, more than zero
   * @param wall the thickness of the wall, more than zero and less than half the outside
   * @return the section
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Section roundTube(Quantity<Length> outside, Quantity<Length> wall) {
    return tube(Shape.ROUND_TUBE, outside, wall);
  }

  /**
   * A square tube with sharp corners. Tube as bought has rounded corners, so that it is a few per
   * cent lighter. One that is closed at both ends bursts in the fire: vent it.
   *
   * @param outside the outside across the flats, more than zero
   * @param wall the thickness of the wall, more than zero and less than half the outside
   * @return the section
   * @throws IllegalArgumentException if a size is not more than zero, or the two are swapped
   */
  public static Section squareTube(Quantity<Length> outside, Quantity<Length> wall) {
    return tube(Shape.SQUARE_TUBE, outside, wall);
  }

  private static Section ofOneSize(Shape shape, String name, Quantity<Length> size) {
    Measure<Length> measure = Arguments.positive(name, size);
    return new Section(shape, measure, measure);
  }

  private static Section tube(Shape shape, Quantity<Length> outside, Quantity<Length> wall) {
    Measure<Length> over = Arguments.positive("outside", outside);
    Measure<Length> thin = Arguments.positive("wall", wall);
    if (thin.multiply(2).compareTo(over) >= 0) {
      throw new IllegalArgumentException(
          "wall must be less than half the outside of "
              + over
              + ", was "
              + thin
              + "; name the outside first, or use Section.round or Section.square for a solid bar");
    }
    return new Section(shape, over, thin);
  }

  /**
   * The size along the axis that it bends about: the width, side, diameter or outside; of a
   * hexagon, which lies on a flat, the size across its corners.
   *
   * @return the width over all, exact
   */
  public Measure<Length> width() {
    return shape.width(first);
  }

  /**
   * The size across the bend: the thickness, side, diameter, outside or size across flats; of a
   * half round half its width. The thickness of a tube's wall is {@link #wall}.
   *
   * @return the thickness over all, exact
   */
  public Measure<Length> thickness() {
    return shape.thickness(first, second);
  }

  /**
   * How thick the wall of a tube is.
   *
   * @return the wall
   * @throws IllegalArgumentException if the section is solid
   */
  public Measure<Length> wall() {
    if (!isTube()) {
      throw new IllegalArgumentException(
          "section must be a tube to have a wall, was "
              + this
              + "; ask a solid bar for its thickness()");
    }
    return second;
  }

  /**
   * How far the centre of its area lies above the face that it lies on: half the thickness; of a
   * half round 2 w / (3 π), measured from its flat. A bend with that face inside keeps its length
   * on the line through this centre.
   *
   * @return the distance, exact, in the width's unit
   */
  public Measure<Length> toCentre() {
    return shape.toCentre(first, second);
  }

  /** {@return whether it is a solid round bar} */
  public boolean isRound() {
    return shape == Shape.ROUND;
  }

  /** {@return whether it is a tube, round or square} */
  public boolean isTube() {
    return shape.isTube();
  }

  /**
   * The area of the metal: w t for a flat, s² for a square, π d²/4 for a round, √3 s²/2 for a
   * hexagon and 2 (√2 − 1) s² for an octagon across flats s, π w²/8 for a half round, π t (D − t)
   * for a round tube, 4 t (D − t) for a square one.
   *
   * @return the area, exact, in the square of the width's unit
   */
  public Measure<Area> area() {
    return shape.area(first, second);
  }

  /**
   * The way round the outside: 2 (w + t) for a flat, 4 s for a square, π d for a round, 2 √3 s for
   * a hexagon and 8 (√2 − 1) s for an octagon across flats s, w (1 + π/2) for a half round. The
   * inside of a tube is not counted.
   *
   * @return the perimeter, exact, in the width's unit
   */
  public Measure<Length> perimeter() {
    return shape.perimeter(first, second);
  }

  /**
   * Whether another section is of the same family, so that a straight taper leads from one to the
   * other: flats and squares are one family, every other shape is one by itself.
   *
   * @param other a section
   * @return whether it is similar
   */
  public boolean isSimilarTo(Section other) {
    Objects.requireNonNull(other, "other");
    return shape.isSimilarTo(other.shape);
  }

  /**
   * Whether another section is the same but for rounding, whatever its units: a square meets a flat
   * of its sides, a tube one of the same outside and wall.
   *
   * @param other a section
   * @return whether one can go over into the other without a step
   */
  public boolean meets(Section other) {
    Objects.requireNonNull(other, "other");
    return isSimilarTo(other)
        && first.isEquivalentTo(other.first)
        && second.isEquivalentTo(other.second);
  }

  /**
   * The section half-way along a straight taper to another one: the mean of each size, of a tube
   * the mean outside and the mean wall.
   *
   * @param other a similar section
   * @return the section between, in this one's unit
   * @throws IllegalArgumentException if the sections are not similar
   */
  public Section halfwayTo(Section other) {
    Objects.requireNonNull(other, "other");
    checkSimilar(other);
    // In this order the compiler at run time needs no objects for what lies between.
    Measure<Length> middleFirst = first.add(other.first).divide(2);
    Measure<Length> middleSecond = second.add(other.second).divide(2);
    Shape middle = shape == other.shape ? shape : Shape.FLAT;
    return new Section(middle, middleFirst, middleSecond);
  }

  /**
   * The section part of the way along a straight taper to another one.
   *
   * @param other a similar section
   * @param share how far along, from 0 at this section to 1 at the other
   * @return the section between, in this one's unit
   * @throws IllegalArgumentException if the sections are not similar, or the share is not from 0 to
   *     1
   */
  public Section towards(Section other, double share) {
    Objects.requireNonNull(other, "other");
    checkSimilar(other);
    if (!(share >= 0 && share <= 1)) {
      throw new IllegalArgumentException(
          "share must be from 0 to 1, was " + share + "; give the part of the taper's length");
    }
    return new Section(
        shape == other.shape ? shape : Shape.FLAT,
        first.add(other.first.subtract(first).multiply(share)),
        second.add(other.second.subtract(second).multiply(share)));
  }

  /**
   * What is left of it at a sharp point: the same shape with sizes of zero. Only a taper or an end
   * can have it.
   *
   * @return the section, without area
   */
  public Section point() {
    return new Section(shape, first.withValue(0), second.withValue(0));
  }

  /**
   * What is left of it at a chisel edge: the width without the thickness. Only a taper or an end
   * can have it.
   *
   * @return the section, without area
   * @throws IllegalArgumentException if it is neither a flat nor a square
   */
  public Section edge() {
    if (!shape.isSimilarTo(Shape.FLAT)) {
      throw new IllegalArgumentException(
          "section must be a flat or a square to end in an edge, was "
              + this
              + "; forge it flat first, as a stretch of its own");
    }
    return new Section(Shape.FLAT, first, second.withValue(0));
  }

  /**
   * The same bar turned a quarter about its axis: width and thickness change places, so that a flat
   * stands on edge and one on edge lies flat.
   *
   * @return the section
   * @throws IllegalArgumentException if it has no area, or is a hexagon or a half round, which then
   *     lies on a corner
   */
  public Section turned() {
    requireArea("section", this);
    if (shape == Shape.HEXAGON || shape == Shape.HALF_ROUND) {
      throw new IllegalArgumentException(
          "section must look alike on its other side, or be a flat, to be turned, was "
              + this
              + "; forge the side that it shall lie on first");
    }
    return shape == Shape.FLAT
        ? new Section(shape, /* first= */ second, /* second= */ first)
        : this;
  }

  /**
   * How long a length of this bar becomes in another section, be it drawn out or jumped up: L₀ A₀ /
   * A₁. Other names: {@index "draw out"}, {@index "jump up"}, {@index upset}. The types of those
   * crafts, with their workings and cautions, are {@code DrawOut} and {@code Upset}.
   *
   * @param other the section after, with an area
   * @param length of this bar, not negative
   * @return the finished length, exact as geometry, in the length's unit
   * @throws IllegalArgumentException if the other section has no area or the length is negative
   */
  public Measure<Length> lengthAs(Section other, Quantity<Length> length) {
    Measure<Length> stock = Arguments.notNegative("length", length);
    requireArea("other", other);
    return stock.multiply(area().ratio(other.area()));
  }

  /**
   * Refuses a point or an edge where a bar is asked for.
   *
   * @param parameter the parameter's name, for the message
   * @param section its value
   * @return the section
   * @throws IllegalArgumentException if the section is a point or an edge
   */
  public static Section requireArea(String parameter, Section section) {
    Objects.requireNonNull(parameter, "parameter");
    Objects.requireNonNull(section, parameter);
    if (section.second.getValue() == 0) {
      throw new IllegalArgumentException(
          parameter
              + " must have an area, was a "
              + section
              + "; only a taper or an end may come to a point or an edge");
    }
    return section;
  }

  private void checkSimilar(Section other) {
    if (!isSimilarTo(other)) {
      throw new IllegalArgumentException(
          "section must be similar to "
              + this
              + ", was "
              + other
              + "; forge the change of shape as a feature of its own");
    }
  }

  /** Same shape and sizes, each by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Section section
        && shape == section.shape
        && first.equals(section.first)
        && second.equals(section.second);
  }

  @Override
  public int hashCode() {
    return Objects.hash(shape, first, second);
  }

  /** The sizes and the shape, such as {@code 1 1/2 in × 1/4 in flat}. */
  @Override
  public String toString() {
    if (second.getValue() == 0) {
      return first.getValue() == 0 ? "point" : first + " edge";
    }
    return shape.print(first, second);
  }
}
