package org.hammerscale.punching;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.Ellipse;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Silhouette;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.jspecify.annotations.Nullable;

/**
 * A hole by its shape and its finished cold sizes: round, square, {@index mortise} or oval. Its
 * length lies along the bar, its width across. It is also the end of the punch or the drift that
 * makes it.
 *
 * <pre>{@code
 * Hole.round(inches("1/2")).perimeter()                    // 1.5708 in  twice the slit that it is drifted from
 * Hole.mortise(inches("3/4"), inches("1/4")).area()        // 0.1875 in²  what a punch takes, times the thickness
 * Hole.oval(millimetres(32), millimetres(20)).perimeter()  // 82.77 mm  the eye of a hammer
 * }</pre>
 *
 * <p>Exact as geometry. Source: plane geometry; the way round an oval is the complete elliptic
 * integral, not an approximation.
 */
public final class Hole {
  private enum Shape {
    ROUND("round hole"),
    SQUARE("square hole"),
    MORTISE("mortise"),
    OVAL("oval hole");

    final String word;

    Shape(String word) {
      this.word = word;
    }
  }

  private final Shape shape;
  private final Measure<Length> length;
  private final Measure<Length> width;

  private Hole(Shape shape, Measure<Length> along, Measure<Length> across) {
    this.shape = shape;
    this.length = along;
    this.width = across;
  }

  /**
   * A round hole.
   *
   * @param diameter more than zero
   * @return the hole
   * @throws IllegalArgumentException if the diameter is not more than zero
   */
  public static Hole round(Quantity<Length> diameter) {
    Measure<Length> size = Arguments.positive("diameter", diameter);
    return new Hole(Shape.ROUND, size, size);
  }

  /**
   * A square hole with two sides along the bar.
   *
   * @param side more than zero
   * @return the hole
   * @throws IllegalArgumentException if the side is not more than zero
   */
  public static Hole square(Quantity<Length> side) {
    Measure<Length> size = Arguments.positive("side", side);
    return new Hole(Shape.SQUARE, size, size);
  }

  /**
   * A mortise: a hole with four square corners, longer than wide, its length along the bar. Also
   * called a slot.
   *
   * @param length the long side, more than zero
   * @param width the short side, more than zero and at most the length
   * @return the hole
   * @throws IllegalArgumentException if a side is not more than zero, or the two are swapped
   */
  public static Hole mortise(Quantity<Length> length, Quantity<Length> width) {
    return elongated(Shape.MORTISE, length, width);
  }

  /**
   * An oval hole, an ellipse, its length along the bar: the eye of a hammer or an axe.
   *
   * @param length the long axis, more than zero
   * @param width the short axis, more than zero and at most the length
   * @return the hole
   * @throws IllegalArgumentException if an axis is not more than zero, or the two are swapped
   */
  public static Hole oval(Quantity<Length> length, Quantity<Length> width) {
    return elongated(Shape.OVAL, length, width);
  }

  private static Hole elongated(Shape shape, Quantity<Length> length, Quantity<Length> width) {
    Measure<Length> along = Arguments.positive("length", length);
    Measure<Length> across = Arguments.positive("width", width);
    Arguments.atLeast(
        "length",
        along,
        "the width",
        across,
        "name the length first, and turn the hole if it lies across the bar");
    return new Hole(shape, along, across);
  }

  /** {@return this hole turned by a quarter, so that what lay along the bar lies across} */
  public Hole turned() {
    return new Hole(shape, width, length);
  }

  /** {@return the size along the bar: the length, diameter or side} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return the size across the bar: the width, diameter or side} */
  public Measure<Length> width() {
    return width;
  }

  /**
   * The area: π d²/4 round, a² square, l b mortise, π l b/4 oval.
   *
   * @return the area, exact, in the square of the length's unit
   */
  public Measure<Area> area() {
    return Measures.area(length, length).withValue(area(Notes.NONE, unit()));
  }

  /**
   * The way round: π d round, 4 a square, 2 (l + b) mortise, the elliptic integral 2 l E oval.
   *
   * @return the perimeter, exact, in the length's unit
   */
  public Measure<Length> perimeter() {
    return length.withValue(2 * halfWayRound(Notes.NONE));
  }

  /** Half the way round, in the length's unit. */
  double halfWayRound(Notes n) {
    String meaning = "slit, half the way round";
    double l = along(n, unit());
    return switch (shape) {
      case ROUND -> n.length("s", meaning, "π d / 2", Math.PI * l / 2);
      case SQUARE -> n.length("s", meaning, "2 a", 2 * l);
      case MORTISE -> n.length("s", meaning, "l + b", l + across(n, unit()));
      case OVAL -> {
        double half = halfEllipse(n, l);
        yield n.length("s", meaning, isTurned() ? "b E(m)" : "l E(m)", half);
      }
    };
  }

  /** The slit of the shop rules, in the length's unit. */
  double shopSlit(Notes n) {
    String less = "slit, half the way round less a twentieth";
    double l = along(n, unit());
    return switch (shape) {
      case ROUND -> n.length("s", "slit of three radii", "3 d / 2", 3 * l / 2);
      case SQUARE ->
          n.length("s", "slit of two sides less a twentieth", "0.95 × 2 a", 0.95 * 2 * l);
      case MORTISE -> n.length("s", less, "0.95 (l + b)", 0.95 * (l + across(n, unit())));
      case OVAL -> {
        double half = halfEllipse(n, l);
        yield n.length("s", less, isTurned() ? "0.95 b E(m)" : "0.95 l E(m)", 0.95 * half);
      }
    };
  }

  /** Half the way round an oval: its long axis times the elliptic integral E(m). */
  private double halfEllipse(Notes n, double l) {
    double b = across(n, unit());
    double flatness = isTurned() ? 1 - l * l / (b * b) : 1 - b * b / (l * l);
    n.number("m", "parameter of the ellipse", isTurned() ? "1 − l² / b²" : "1 − b² / l²", flatness);
    return Ellipse.perimeter(l / 2, b / 2) / 2;
  }

  private boolean isTurned() {
    return width.isGreaterThan(length);
  }

  /** The area, in the square of a unit; notes its size along the bar as {@link #symbol()}. */
  double area(Notes n, Unit<Length> unit) {
    String meaning = "area of the hole";
    double l = along(n, unit);
    return switch (shape) {
      case ROUND -> n.area("H", meaning, "π d² / 4", Math.PI * (l * l) / 4);
      case SQUARE -> n.area("H", meaning, "a²", l * l);
      case MORTISE -> n.area("H", meaning, "l b", l * across(n, unit));
      case OVAL -> n.area("H", meaning, "π l b / 4", Math.PI * l * across(n, unit) / 4);
    };
  }

  /** The symbol of its size along the bar. */
  String symbol() {
    return switch (shape) {
      case ROUND -> "d";
      case SQUARE -> "a";
      default -> "l";
    };
  }

  private double along(Notes n, Unit<Length> unit) {
    String meaning =
        switch (shape) {
          case ROUND -> "diameter of the hole";
          case SQUARE -> "side of the hole";
          default -> "hole along the bar";
        };
    return n.given(symbol(), meaning, length.in(unit));
  }

  private double across(Notes n, Unit<Length> unit) {
    return n.given("b", "hole across the bar", width.in(unit));
  }

  Unit<Length> unit() {
    return length.getUnit();
  }

  /** Whether its sides are straight and meet in corners. */
  boolean hasCorners() {
    return shape == Shape.SQUARE || shape == Shape.MORTISE;
  }

  /** Its form, as it lies in a piece. */
  Silhouette outline() {
    return hasCorners()
        ? Silhouette.from(Section.square(width)).to(length, width)
        : Silhouette.oval(length, width);
  }

  /** The longest straight line in it. */
  Measure<Length> span() {
    double l = length.getValue();
    double w = width.in(unit());
    return length.withValue(hasCorners() ? Math.hypot(l, w) : Math.max(l, w));
  }

  /** Same shape and sizes, each by {@link Measure#equals}. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Hole hole
        && shape == hole.shape
        && length.equals(hole.length)
        && width.equals(hole.width);
  }

  @Override
  public int hashCode() {
    return Objects.hash(shape, length, width);
  }

  /** Sizes and shape, such as {@code 3/4 in × 1/4 in mortise}, the size along the bar first. */
  @Override
  public String toString() {
    return shape == Shape.ROUND || shape == Shape.SQUARE
        ? length + " " + shape.word
        : length + " × " + width + " " + shape.word;
  }
}
