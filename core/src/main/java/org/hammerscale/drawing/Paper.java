package org.hammerscale.drawing;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.pen.Scale;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;

/**
 * What a drawing is printed on: sheets of a size, which are turned as it suits the drawing, or a
 * roll, which is cut as long as the drawing. What does not go on one sheet goes on several.
 *
 * <pre>{@code
 * Paper.A4                      // A4, 210 mm × 297 mm
 * Paper.LETTER                  // Letter, 8 1/2 in × 11 in
 * Paper.roll(millimetres(610))  // roll, 610 mm wide
 * }</pre>
 *
 * <p>Source: ISO 216; ANSI/ASME Y14.1 for Letter, from memory.
 */
public final class Paper {
  /** A4, 210 mm × 297 mm. */
  public static final Paper A4 =
      new Paper("A4", Measures.millimetres(210), Measures.millimetres(297));

  /** Letter, 8 1/2 in × 11 in. */
  public static final Paper LETTER = new Paper("Letter", Measures.inches(8.5), Measures.inches(11));

  private static final Measure<Length> NARROWEST = Measures.millimetres(150);
  private static final Measure<Length> WIDEST = Measures.millimetres(2000);

  private final String name;
  private final Measure<Length> width;
  private final Measure<Length> height;

  private Paper(String name, Measure<Length> width, Measure<Length> height) {
    this.name = name;
    this.width = width;
    this.height = height;
  }

  /**
   * A roll that is cut to the length of the drawing.
   *
   * @param width of the roll, 150 mm to 2 m
   * @return the paper
   * @throws IllegalArgumentException if the width is out of range
   */
  public static Paper roll(Quantity<Length> width) {
    Measure<Length> wide = Arguments.positive("width", width);
    Arguments.atLeast("width", wide, "the narrowest", NARROWEST, "take a wider roll, or sheets");
    Arguments.atMost("width", wide, "the widest", WIDEST, "take a narrower roll");
    return new Paper("roll", wide, wide.withValue(0));
  }

  boolean isRoll() {
    return height.getValue() == 0;
  }

  /** The shorter side of a sheet, the width of a roll. */
  double width() {
    return Scale.millimetres(width);
  }

  /** The longer side of a sheet. */
  double height() {
    return Scale.millimetres(height);
  }

  /** Name and sizes. */
  @Override
  public String toString() {
    return isRoll() ? name + ", " + width + " wide" : name + ", " + width + " × " + height;
  }
}
