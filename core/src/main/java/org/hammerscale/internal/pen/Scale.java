package org.hammerscale.internal.pen;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** How many times smaller than the iron it is drawn; 1 for true scale. */
public record Scale(int reduction) {
  public static final Scale TRUE = new Scale(1);

  /** Of what shows no iron, such as a plot. */
  public static final Scale NONE = new Scale(0);

  private static final double LARGEST = 100_000;
  private static final double SMALLEST = 0.001;

  public static Scale oneTo(int reduction) {
    return new Scale(
        Arguments.count(
            "reduction", reduction, 1, 1000, "5 draws it a fifth as large, 1 in true scale"));
  }

  public static double millimetres(Measure<Length> length) {
    return length.in(ShopUnits.MILLIMETRE);
  }

  /** A distance on the paper, in millimetres. */
  public double of(Measure<Length> length) {
    return millimetres(length) / reduction;
  }

  /** A size on the paper; one that no paper holds or no eye sees is refused. */
  public double size(String name, Measure<Length> size) {
    double paper = of(size);
    if (!(paper <= LARGEST)) {
      throw new IllegalArgumentException(
          name
              + " must be at most 100 m on the paper, was "
              + size
              + " at "
              + this
              + "; draw it reduced, or in parts");
    } else if (!(paper >= SMALLEST)) {
      throw new IllegalArgumentException(
          name
              + " must be at least 0.001 mm on the paper, was "
              + size
              + " at "
              + this
              + "; look at the number and its unit, or draw it less reduced");
    }
    return paper;
  }

  /** The same for what may be nothing at all, such as the width of a point. */
  public double sizeOrNone(String name, Quantity<Length> size) {
    Measure<Length> own = Arguments.notNegative(name, size);
    return own.getValue() == 0 ? 0 : size(name, own);
  }

  /** As it stands on the sheet. */
  @Override
  public String toString() {
    return reduction == 0 ? "no scale" : "scale 1 : " + reduction;
  }
}
