package org.hammerscale.validation;

import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** One row of a validation file: what goes in, what somebody else says comes out, and who. */
record ValidationCase(Map<String, String> row) {
  String text(String column) {
    String text = row.get(column);
    if (text == null) {
      throw new IllegalArgumentException("no column " + column + " in " + row);
    }
    return text;
  }

  Measure<Length> length(String column) {
    return Measures.length(text(column));
  }

  /** A section written as {@code flat 2 in 1/4 in}, {@code square 1 in} or {@code round 12 mm}. */
  Section section(String column) {
    String[] words = text(column).split(" ", 2);
    return switch (words[0]) {
      case "square" -> Section.square(Measures.length(words[1]));
      case "round" -> Section.round(Measures.length(words[1]));
      case "flat", "edge" -> {
        String unit = words[1].substring(words[1].lastIndexOf(' ') + 1);
        int cut = words[1].indexOf(unit) + unit.length();
        Measure<Length> width = Measures.length(words[1].substring(0, cut));
        Measure<Length> thickness = Measures.length(words[1].substring(cut));
        yield words[0].equals("flat")
            ? Section.flat(width, thickness)
            : Section.onEdge(width, thickness);
      }
      default -> throw new IllegalArgumentException("no shape " + words[0]);
    };
  }

  /** The unit of length that the expected value is in. */
  Unit<Length> lengthUnit() {
    return unit(Map.of("in", ShopUnits.INCH, "mm", ShopUnits.MILLIMETRE));
  }

  /** The unit of volume that the expected value is in. */
  Unit<Volume> volumeUnit() {
    return unit(Map.of("in³", ShopUnits.CUBIC_INCH, "mm³", ShopUnits.CUBIC_MILLIMETRE));
  }

  private <Q extends Quantity<Q>> Unit<Q> unit(Map<String, Unit<Q>> known) {
    Unit<Q> unit = known.get(text("unit"));
    if (unit == null) {
      throw new IllegalArgumentException("no unit " + text("unit") + " for " + this);
    }
    return unit;
  }

  double expected() {
    return Double.parseDouble(text("expected"));
  }

  double tolerance() {
    return Double.parseDouble(text("tolerance"));
  }

  @Override
  public String toString() {
    return text("case") + " (" + text("source") + ")";
  }
}
