package org.hammerscale.validation;

import java.util.Locale;
import javax.measure.Unit;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.hammerscale.checking.CheckValue;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** A check value, read as our own types: what goes in, and the unit of what comes out. */
record ValidationCase(CheckValue value) {
  String question() {
    return value.question();
  }

  /** An input as it is written; empty if there is none of that name. */
  String text(String name) {
    return value.has(name) ? value.text(name) : "";
  }

  double number(String name) {
    return value.number(name);
  }

  int count(String name) {
    return Math.toIntExact(Math.round(number(name)));
  }

  Measure<Length> length(String name) {
    return value.input(name, Length.class);
  }

  Measure<Angle> angle(String name) {
    return value.input(name, Angle.class);
  }

  Measure<Time> time(String name) {
    return value.input(name, Time.class);
  }

  Measure<Temperature> temperature(String name) {
    return value.input(name, Temperature.class);
  }

  /** One of our constants, which the files call by its words: {@code six diameters}. */
  <E extends Enum<E>> E constant(String name, Class<E> type) {
    return Enum.valueOf(type, constantName(name));
  }

  String constantName(String name) {
    return text(name).toUpperCase(Locale.ROOT).replace(' ', '_');
  }

  /** A section by its shape and the sizes that go with it: {@code bar}, {@code bar width}, ... */
  Section section(String name) {
    return switch (text(name)) {
      case "square" -> Section.square(length(name + " across"));
      case "round" -> Section.round(length(name + " across"));
      case "hexagon" -> Section.hexagon(length(name + " across"));
      case "octagon" -> Section.octagon(length(name + " across"));
      case "half-round" -> Section.halfRound(length(name + " across"));
      case "flat" -> Section.flat(length(name + " width"), length(name + " thickness"));
      case "edge" -> Section.onEdge(length(name + " width"), length(name + " thickness"));
      case "round-tube" -> Section.roundTube(length(name + " outside"), length(name + " wall"));
      case "square-tube" -> Section.squareTube(length(name + " outside"), length(name + " wall"));
      default -> throw new IllegalArgumentException("no shape " + text(name));
    };
  }

  /** The unit of length that the expected value is in. */
  Unit<Length> lengthUnit() {
    return value.expected(Length.class).getUnit();
  }

  /** The unit of volume that the expected value is in. */
  Unit<Volume> volumeUnit() {
    return value.expected(Volume.class).getUnit();
  }

  /** The unit of area that the expected value is in. */
  Unit<Area> areaUnit() {
    return value.expected(Area.class).getUnit();
  }

  String unit() {
    return value.unit();
  }

  double expected() {
    return value.expected();
  }

  double tolerance() {
    return value.tolerance();
  }

  @Override
  public String toString() {
    return value.id() + " (" + value.source() + ")";
  }
}
