package org.hammerscale.units;

import static org.hammerscale.units.ShopUnits.CENTIMETRE;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.hammerscale.units.ShopUnits.SECOND;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Quantity;
import javax.measure.Quantity.Scale;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;

/**
 * What a caller may expect of any JSR 385 quantity, in our words. An implementation passes by
 * saying how one of its quantities is made.
 */
interface QuantityContract {
  <Q extends Quantity<Q>> Quantity<Q> quantity(double value, Unit<Q> unit);

  private static double number(Quantity<?> quantity) {
    return quantity.getValue().doubleValue();
  }

  /** Every quantity has to be comparable with every other of its kind. */
  @SuppressWarnings("unchecked")
  static <Q extends Quantity<Q>> int compare(Quantity<Q> first, Quantity<Q> second) {
    return Integer.signum(((Comparable<Quantity<Q>>) first).compareTo(second));
  }

  @Test
  default void isWhatItWasMadeOf() {
    Quantity<Length> length = quantity(2.5, METRE);
    assertEquals(2.5, number(length));
    assertEquals(METRE, length.getUnit());
    assertEquals(Scale.ABSOLUTE, length.getScale());
  }

  @Test
  default void addsAndSubtractsInTheUnitOfTheLeft() {
    Quantity<Length> sum = quantity(2.5, METRE).add(quantity(50, CENTIMETRE));
    assertEquals(3.0, number(sum));
    assertEquals(METRE, sum.getUnit());

    Quantity<Length> difference = quantity(75, CENTIMETRE).subtract(quantity(0.25, METRE));
    assertEquals(50.0, number(difference));
    assertEquals(CENTIMETRE, difference.getUnit());
  }

  @Test
  default void multipliesAndDividesByNumbers() {
    assertEquals(7.5, number(quantity(2.5, METRE).multiply(3)));
    assertEquals(METRE, quantity(2.5, METRE).multiply(3).getUnit());
    assertEquals(1.25, number(quantity(2.5, METRE).divide(2)));
    assertEquals(METRE, quantity(2.5, METRE).divide(2).getUnit());
    assertEquals(-2.5, number(quantity(2.5, METRE).negate()));
  }

  @Test
  default void multipliesTheUnitsToo() {
    Quantity<Area> area = quantity(2.5, METRE).multiply(quantity(4, METRE)).asType(Area.class);
    assertEquals(10.0, number(area.to(ShopUnits.SQUARE_METRE)));

    // In unlike units as well: 2.5 m by 4 cm is a tenth of a square metre.
    Quantity<Area> strip =
        quantity(2.5, METRE).multiply(quantity(4, CENTIMETRE)).asType(Area.class);
    assertEquals(0.1, number(strip.to(ShopUnits.SQUARE_METRE)), Math.ulp(0.1));
  }

  @Test
  default void dividesTheUnitsToo() {
    Quantity<?> speed = quantity(2.5, METRE).divide(quantity(2, SECOND));
    assertEquals(1.25, number(speed));
    assertEquals(METRE.divide(SECOND), speed.getUnit());
    assertEquals(0.25, number(quantity(4, SECOND).inverse()));
    assertEquals(SECOND.inverse(), quantity(4, SECOND).inverse().getUnit());
  }

  @Test
  default void convertsToAnyUnitOfItsKind() {
    assertEquals(2500.0, number(quantity(2.5, METRE).to(MILLIMETRE)));
    assertEquals(MILLIMETRE, quantity(2.5, METRE).to(MILLIMETRE).getUnit());
    assertEquals(quantity(2.5, METRE), quantity(2.5, METRE).to(METRE));
    assertEquals(2.5, number(quantity(2500, MILLIMETRE).toSystemUnit()));
    assertEquals(METRE, quantity(2500, MILLIMETRE).toSystemUnit().getUnit());
  }

  @Test
  default void goesUnderATypeOfItsDimensionOnly() {
    Quantity<?> speed = quantity(2.5, METRE).divide(quantity(2, SECOND));
    assertEquals(1.25, number(speed.asType(Speed.class)));
    assertThrows(ClassCastException.class, () -> speed.asType(Mass.class));
  }

  @Test
  default void leavesItsOperandsAlone() {
    Quantity<Length> left = quantity(2.5, METRE);
    Quantity<Length> right = quantity(50, CENTIMETRE);
    assertNotEquals(left, left.add(right));
    assertNotEquals(left, left.multiply(3));
    assertNotEquals(left, left.negate());
    assertEquals(quantity(2.5, METRE), left);
    assertEquals(quantity(50, CENTIMETRE), right);
  }

  @Test
  default void equalsStrictlyByUnitAndValue() {
    Quantity<Length> length = quantity(2.5, METRE);
    assertEquals(length, length);
    assertEquals(length, quantity(2.5, METRE));
    assertEquals(length.hashCode(), quantity(2.5, METRE).hashCode());
    assertNotEquals(length, quantity(2.25, METRE));
    assertNotEquals(length, quantity(250, CENTIMETRE));
    assertNotEquals(length, null);
    assertNotEquals(length, (Object) "2.5 m");
  }

  @Test
  default void comparesAndIsEquivalentAcrossUnits() {
    Quantity<Length> length = quantity(2.5, METRE);
    assertEquals(0, compare(length, quantity(250, CENTIMETRE)));
    assertEquals(0, compare(quantity(250, CENTIMETRE), length));
    assertEquals(1, compare(length, quantity(249, CENTIMETRE)));
    assertEquals(-1, compare(quantity(249, CENTIMETRE), length));
    assertTrue(length.isEquivalentTo(quantity(250, CENTIMETRE)));
    assertTrue(quantity(250, CENTIMETRE).isEquivalentTo(length));
    assertFalse(length.isEquivalentTo(quantity(249, CENTIMETRE)));
  }

  @Test
  default void refusesNull() {
    Quantity<Time> time = quantity(2.5, SECOND);
    assertThrows(NullPointerException.class, () -> time.add(null));
    assertThrows(NullPointerException.class, () -> time.subtract(null));
    assertThrows(NullPointerException.class, () -> time.to(null));
    assertThrows(NullPointerException.class, () -> time.isEquivalentTo(null));
  }

  @Test
  default void printsItsNumberAndUnit() {
    assertEquals("2.5 m", quantity(2.5, METRE).toString());
  }
}
