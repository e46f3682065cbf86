package org.hammerscale.units;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;

/**
 * A length by a third party, which knows neither our measures nor the reference implementation's
 * quantities: as bare as JSR 385 allows, equal by the rule of the reference implementation.
 */
@SuppressWarnings("ComparableType") // as JSR 385 wants it
final class OtherQuantity implements Quantity<Length>, Comparable<Quantity<Length>> {
  private final double value;
  private final Unit<Length> unit;

  OtherQuantity(double value, Unit<Length> unit) {
    this.value = value;
    this.unit = unit;
  }

  @Override
  public Number getValue() {
    return value;
  }

  @Override
  public Unit<Length> getUnit() {
    return unit;
  }

  @Override
  public Scale getScale() {
    return Scale.ABSOLUTE;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Quantity<?> quantity
        && unit.equals(quantity.getUnit())
        && getScale() == quantity.getScale()
        && getValue().equals(quantity.getValue());
  }

  @Override
  public int hashCode() {
    return Objects.hash(unit, getScale(), getValue());
  }

  @Override
  public String toString() {
    return value + " " + unit + " by a third party";
  }

  @Override
  public Quantity<Length> add(Quantity<Length> addend) {
    throw unasked();
  }

  @Override
  public Quantity<Length> subtract(Quantity<Length> subtrahend) {
    throw unasked();
  }

  @Override
  public Quantity<?> divide(Quantity<?> divisor) {
    throw unasked();
  }

  @Override
  public Quantity<Length> divide(Number divisor) {
    throw unasked();
  }

  @Override
  public Quantity<?> multiply(Quantity<?> multiplicand) {
    throw unasked();
  }

  @Override
  public Quantity<Length> multiply(Number multiplicand) {
    throw unasked();
  }

  @Override
  public Quantity<Length> to(Unit<Length> other) {
    throw unasked();
  }

  @Override
  public Quantity<?> inverse() {
    throw unasked();
  }

  @Override
  public Quantity<Length> negate() {
    throw unasked();
  }

  @Override
  public <T extends Quantity<T>> Quantity<T> asType(Class<T> type) {
    throw unasked();
  }

  @Override
  public boolean isEquivalentTo(Quantity<Length> that) {
    throw unasked();
  }

  @Override
  public int compareTo(Quantity<Length> that) {
    throw unasked();
  }

  /** Our code needs a number, a unit and a scale, and leaves all else to itself. */
  private static UnsupportedOperationException unasked() {
    return new UnsupportedOperationException("nobody should ask this of a foreign quantity");
  }
}
