package org.hammerscale.validation;

import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Density;
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

  /** A temperature written as a number and {@code °C} or {@code °F}. */
  Measure<Temperature> temperature(String column) {
    String[] words = text(column).split(" ", 2);
    double value = Double.parseDouble(words[0]);
    return words[1].equals("°F") ? Measures.fahrenheit(value) : Measures.celsius(value);
  }

  /**
   * A section written as its shape and sizes: {@code flat 2 in 1/4 in}, {@code round 12 mm}, {@code
   * square-tube 40 mm 3 mm}.
   */
  Section section(String column) {
    String[] words = text(column).split(" ", 2);
    String unit = words[1].substring(words[1].lastIndexOf(' ') + 1);
    int cut = words[1].indexOf(unit) + unit.length();
    Measure<Length> first = Measures.length(words[1].substring(0, cut));
    String rest = words[1].substring(cut);
    return switch (words[0]) {
      case "square" -> Section.square(first);
      case "round" -> Section.round(first);
      case "hexagon" -> Section.hexagon(first);
      case "octagon" -> Section.octagon(first);
      case "half-round" -> Section.halfRound(first);
      case "flat" -> Section.flat(first, Measures.length(rest));
      case "edge" -> Section.onEdge(first, Measures.length(rest));
      case "round-tube" -> Section.roundTube(first, Measures.length(rest));
      case "square-tube" -> Section.squareTube(first, Measures.length(rest));
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

  /** The unit of area that the expected value is in. */
  Unit<Area> areaUnit() {
    return unit(Map.of("in²", ShopUnits.SQUARE_INCH, "mm²", ShopUnits.SQUARE_MILLIMETRE));
  }

  /** The unit of density that the expected value is in. */
  Unit<Density> densityUnit() {
    return unit(
        Map.of(
            "kg/m³", ShopUnits.KILOGRAM_PER_CUBIC_METRE,
            "lb/ft³", ShopUnits.POUND_PER_CUBIC_FOOT));
  }

  /** The unit of temperature that the expected value is in. */
  Unit<Temperature> temperatureUnit() {
    return unit(Map.of("°C", ShopUnits.CELSIUS, "°F", ShopUnits.FAHRENHEIT));
  }

  /** The unit of pressure that the expected value is in. */
  Unit<Pressure> pressureUnit() {
    return unit(Map.of("MPa", ShopUnits.MEGAPASCAL, "ksi", ShopUnits.KSI));
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
