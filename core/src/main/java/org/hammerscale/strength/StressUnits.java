package org.hammerscale.strength;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * The units in which a stress is worked out, so that force ÷ length² is a stress as it stands, and
 * the force that a mass presses with.
 */
final class StressUnits {
  /** m/s². */
  private static final double STANDARD_GRAVITY = 9.80665;

  /** N, mm, MPa. */
  static final StressUnits METRIC =
      new StressUnits(ShopUnits.MILLIMETRE, ShopUnits.NEWTON, ShopUnits.MEGAPASCAL);

  /** lbf, in, psi. */
  static final StressUnits CUSTOMARY =
      new StressUnits(ShopUnits.INCH, ShopUnits.POUND_FORCE, ShopUnits.PSI);

  private final Unit<Length> length;
  private final Unit<Force> force;
  private final Unit<Pressure> pressure;
  private final Unit<?> moment;
  private final Unit<?> perForce;
  private final Unit<?> stressPerForce;

  private StressUnits(Unit<Length> length, Unit<Force> force, Unit<Pressure> pressure) {
    this.length = length;
    this.force = force;
    this.pressure = pressure;
    this.moment = force.multiply(length);
    this.perForce = force.inverse();
    this.stressPerForce = length.pow(-2);
  }

  /** Customary for pounds-force, else metric. */
  static StressUnits ofForce(Measure<Force> given) {
    return isOne(given, ShopUnits.POUND_FORCE) ? CUSTOMARY : METRIC;
  }

  /** Customary for psi and ksi, else metric. */
  static StressUnits ofPressure(Measure<Pressure> given) {
    return isOne(given, ShopUnits.PSI) || isOne(given, ShopUnits.KSI) ? CUSTOMARY : METRIC;
  }

  /** Customary for a strap whose width is in thousandths of an inch, inches, feet or yards. */
  static StressUnits ofStrap(Section strap) {
    double thousandths = Measure.of(1, strap.width().getUnit()).in(ShopUnits.INCH) * 1000;
    return Math.abs(thousandths - Math.rint(thousandths)) < 1e-6 ? CUSTOMARY : METRIC;
  }

  /** What a mass presses down with, in the caller's system: pounds press in pounds-force. */
  static Measure<Force> weight(String name, Quantity<Mass> mass) {
    Measure<Mass> measure = Arguments.notNegativeMass(name, mass);
    if (measure.getValue() == 0) {
      throw new IllegalArgumentException(
          name + " must be more than zero, was " + measure + "; weigh it or reckon it by volume");
    }
    boolean customary =
        measure.getUnit().equals(ShopUnits.POUND) || measure.getUnit().equals(ShopUnits.OUNCE);
    return customary
        ? Measure.of(measure.in(ShopUnits.POUND), ShopUnits.POUND_FORCE)
        : Measure.of(measure.in(ShopUnits.KILOGRAM) * STANDARD_GRAVITY, ShopUnits.NEWTON);
  }

  private static <Q extends Quantity<Q>> boolean isOne(Measure<Q> given, Unit<Q> unit) {
    return given.getUnit().equals(unit) || given.withValue(1).isEquivalentTo(Measure.of(1, unit));
  }

  Unit<Length> length() {
    return length;
  }

  Measure<Length> length(double value) {
    return Measure.of(value, length);
  }

  Measure<Force> force(double value) {
    return Measure.of(value, force);
  }

  Measure<Pressure> pressure(double value) {
    return Measure.of(value, pressure);
  }

  /** Notes a given length. */
  double given(Notes n, String symbol, String meaning, Measure<Length> value) {
    return n.given(symbol, meaning, value.in(length));
  }

  /** Notes a given force as F. */
  double givenForce(Notes n, String meaning, Measure<Force> value) {
    return n.value("F", meaning, "", value.in(force), force);
  }

  /** Notes a given stress. */
  double givenStress(Notes n, String symbol, String meaning, Measure<Pressure> value) {
    return n.value(symbol, meaning, "", value.in(pressure), pressure);
  }

  Unit<Force> force() {
    return force;
  }

  Unit<Pressure> pressure() {
    return pressure;
  }

  double force(Notes n, String symbol, String meaning, String formula, double value) {
    return n.value(symbol, meaning, formula, value, force);
  }

  double pressure(Notes n, String symbol, String meaning, String formula, double value) {
    return n.value(symbol, meaning, formula, value, pressure);
  }

  double moment(Notes n, String symbol, String meaning, String formula, double value) {
    return n.value(symbol, meaning, formula, value, moment);
  }

  double perForce(Notes n, String symbol, String meaning, String formula, double value) {
    return n.value(symbol, meaning, formula, value, perForce);
  }

  double stressPerForce(Notes n, String symbol, String meaning, String formula, double value) {
    return n.value(symbol, meaning, formula, value, stressPerForce);
  }

  /** A calculation from one given, in units of stress. */
  @FunctionalInterface
  interface Calculation<T> {
    double calculate(Notes n, StressUnits units, T given);
  }

  /** A stress that follows from a force, which is checked. */
  static Measure<Pressure> stress(
      String name, Quantity<Force> given, Calculation<Measure<Force>> calculation) {
    Measure<Force> checked = Arguments.positiveForce(name, given);
    StressUnits units = ofForce(checked);
    return units.pressure(calculation.calculate(Notes.NONE, units, checked));
  }

  /** A force that follows from a bare strength, which is checked. */
  static Measure<Force> force(
      String name, Quantity<Pressure> given, Calculation<Measure<Pressure>> calculation) {
    Measure<Pressure> checked = Arguments.positivePressure(name, given);
    StressUnits units = ofPressure(checked);
    return units.force(calculation.calculate(Notes.NONE, units, checked));
  }

  /** The working of a force that follows from a bare strength. */
  static Working workingFrom(
      String title,
      String name,
      Quantity<Pressure> given,
      Calculation<Measure<Pressure>> calculation) {
    Measure<Pressure> checked = Arguments.positivePressure(name, given);
    StressUnits units = ofPressure(checked);
    return Notes.taken(title, units.length, n -> calculation.calculate(n, units, checked));
  }

  /** A force that follows from a strength and a safety factor. */
  static Measure<Force> force(PermissibleStress given, Calculation<PermissibleStress> calculation) {
    StressUnits units = ofPressure(Objects.requireNonNull(given, "permissible").strength());
    return units.force(calculation.calculate(Notes.NONE, units, given));
  }

  /** The working of a stress that follows from a force. */
  static Working working(
      String title, String name, Quantity<Force> given, Calculation<Measure<Force>> calculation) {
    Measure<Force> checked = Arguments.positiveForce(name, given);
    StressUnits units = ofForce(checked);
    return Notes.taken(title, units.length, n -> calculation.calculate(n, units, checked));
  }

  /** The working of a force that follows from a strength and a safety factor. */
  static Working working(
      String title, PermissibleStress given, Calculation<PermissibleStress> calculation) {
    StressUnits units = ofPressure(Objects.requireNonNull(given, "permissible").strength());
    return Notes.taken(title, units.length, n -> calculation.calculate(n, units, given));
  }
}
