package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithin;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Conversion factors against the tables of a standards body; the source stands in each row. */
class ConversionsValidationTest {
  private static final Map<String, Unit<?>> UNITS =
      Stream.of(
              ShopUnits.METRE,
              ShopUnits.CENTIMETRE,
              ShopUnits.MILLIMETRE,
              ShopUnits.INCH,
              ShopUnits.FOOT,
              ShopUnits.THOU,
              ShopUnits.SQUARE_METRE,
              ShopUnits.SQUARE_MILLIMETRE,
              ShopUnits.SQUARE_INCH,
              ShopUnits.CUBIC_METRE,
              ShopUnits.CUBIC_INCH,
              ShopUnits.KILOGRAM,
              ShopUnits.GRAM,
              ShopUnits.POUND,
              ShopUnits.OUNCE,
              ShopUnits.KILOGRAM_PER_CUBIC_METRE,
              ShopUnits.POUND_PER_CUBIC_FOOT,
              ShopUnits.KILOGRAM_PER_METRE,
              ShopUnits.POUND_PER_FOOT,
              ShopUnits.NEWTON,
              ShopUnits.POUND_FORCE,
              ShopUnits.PASCAL,
              ShopUnits.MEGAPASCAL,
              ShopUnits.PSI,
              ShopUnits.KSI,
              ShopUnits.SECOND,
              ShopUnits.MINUTE,
              ShopUnits.HOUR,
              ShopUnits.RADIAN,
              ShopUnits.DEGREE,
              ShopUnits.CELSIUS,
              ShopUnits.FAHRENHEIT)
          .collect(Collectors.toMap(ConversionsValidationTest::symbol, Function.identity()));

  private static String symbol(Unit<?> unit) {
    // Indriya prints degrees Celsius as one character, which nobody types.
    return unit == ShopUnits.CELSIUS ? "°C" : unit.toString();
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "conversions.csv", useHeadersInDisplayName = true)
  void convertsByTheFactorsOfTheStandard(
      String name,
      double value,
      String from,
      BigDecimal expected,
      String unit,
      BigDecimal tolerance) {
    double converted = converted(value, UNITS.get(from), UNITS.get(unit));
    if (tolerance.signum() == 0) {
      // Exact by definition: the very double that is written so.
      assertEquals(expected.doubleValue(), converted);
    } else {
      assertWithin(expected, converted, tolerance);
    }
  }

  @SuppressWarnings("unchecked") // the rows pair units of one kind, or the measure refuses
  private static <Q extends Quantity<Q>> double converted(
      double value, Unit<?> from, Unit<?> unit) {
    return Measure.of(value, (Unit<Q>) from).in((Unit<Q>) unit);
  }
}
