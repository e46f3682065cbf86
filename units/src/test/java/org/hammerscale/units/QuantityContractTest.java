package org.hammerscale.units;

import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.Measures.metres;
import static org.hammerscale.units.Measures.millimetres;
import static org.hammerscale.units.Measures.minutes;
import static org.hammerscale.units.QuantityContract.compare;
import static org.hammerscale.units.ShopUnits.CELSIUS;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.METRE;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.quantity.time.TimeUnitQuantity;

/** The contract, run against our measures and against those of the reference implementation. */
class QuantityContractTest {
  /** Ours. */
  @Nested
  class OfMeasures implements QuantityContract {
    @Override
    public <Q extends Quantity<Q>> Quantity<Q> quantity(double value, Unit<Q> unit) {
      return Measure.of(value, unit);
    }
  }

  /** The reference implementation's, which shows that the contract is not of our own making. */
  @Nested
  class OfIndriya implements QuantityContract {
    @Override
    public <Q extends Quantity<Q>> Quantity<Q> quantity(double value, Unit<Q> unit) {
      return Quantities.getQuantity(value, unit);
    }
  }

  /** Where ours differ from the reference implementation's, on purpose. */
  @Nested
  class Differences {
    private static Quantity<Length> indriya(Number value, Unit<Length> unit) {
      return Quantities.getQuantity(value, unit);
    }

    @Test
    void equivalenceIsSymmetric() {
      // Indriya compares in the unit of the left; whether its conversion hits the other number to
      // the last digit depends on which one that is.
      Unit<Length> inch = METRE.multiply(0.0254);
      assertNotEquals(
          indriya(1, inch).isEquivalentTo(indriya(25.4, MILLIMETRE)),
          indriya(25.4, MILLIMETRE).isEquivalentTo(indriya(1, inch)));

      assertTrue(Measure.of(1, inch).isEquivalentTo(millimetres(25.4)));
      assertTrue(millimetres(25.4).isEquivalentTo(Measure.of(1, inch)));
      assertTrue(inches(1).isEquivalentTo(millimetres(25.4)));
      assertTrue(millimetres(25.4).isEquivalentTo(inches(1)));
    }

    @Test
    void valuesAreDoublesWhateverWasGiven() {
      // Indriya keeps the number it was given, and narrows it where it can: 1.0 becomes an Integer.
      assertInstanceOf(Integer.class, indriya(1.0, METRE).getValue());
      assertInstanceOf(BigDecimal.class, indriya(new BigDecimal("0.1"), METRE).getValue());

      assertInstanceOf(Double.class, metres(1).getValue());
      assertInstanceOf(
          Double.class, Measure.from(indriya(new BigDecimal("0.1"), METRE)).getValue());
    }

    @Test
    void wholeNumbersAreNotEqualAcrossTheTwo() {
      // By the same narrowing a whole number of Indriya's is never equal to ours. Neither side
      // thinks that it is, which is what equals asks for; they are equivalent.
      assertNotEquals(metres(1), indriya(1.0, METRE));
      assertNotEquals(indriya(1.0, METRE), metres(1));
      assertTrue(metres(1).isEquivalentTo(indriya(1.0, METRE)));
    }

    @Test
    void temperatureArithmeticIsRefused() {
      // By the letter of JSR 385 both are turned into kelvins first: 900 °C − 20 °C is 606.85 °C.
      Quantity<?> difference =
          Quantities.getQuantity(900, CELSIUS).subtract(Quantities.getQuantity(20, CELSIUS));
      assertEquals(606.85, difference.getValue().doubleValue(), 1e-9);

      assertThrows(
          UnsupportedOperationException.class,
          () -> Measure.of(900, CELSIUS).subtract(Measure.of(20, CELSIUS)));
    }

    @Test
    void inchesPrintAsFractions() {
      assertEquals("1.5 in", indriya(1.5, INCH).toString());

      assertEquals("1 1/2 in", inches(1.5).toString());
    }

    @Test
    void timesOfTheJavaClockAreEqualOneWayOnly() {
      // TimeUnitQuantity compares its number by size with anybody's, even with Indriya's own
      // quantities that do not return the favour. Only they could mend that.
      Quantity<Time> half = TimeUnitQuantity.of(5.5, TimeUnit.MINUTES);
      Quantity<Time> exact = Quantities.getQuantity(new BigDecimal("5.5"), ShopUnits.MINUTE);
      assertTrue(half.equals(exact));
      assertFalse(exact.equals(half));

      Quantity<Time> clock = TimeUnitQuantity.of(5, TimeUnit.MINUTES);
      assertTrue(clock.equals(minutes(5)));
      assertFalse(minutes(5).equals(clock));
      assertEquals(0, compare(minutes(5), clock));
    }
  }
}
