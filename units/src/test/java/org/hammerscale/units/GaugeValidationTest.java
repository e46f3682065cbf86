package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithin;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;
import javax.measure.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Gauge sizes against published tables; the source stands beside each row. */
class GaugeValidationTest {
  private static final Map<String, Gauge> SERIES =
      Map.of(
          "Birmingham sheet", Gauge.BIRMINGHAM_SHEET,
          "Manufacturers' Standard", Gauge.MANUFACTURERS_STANDARD,
          "US Standard", Gauge.US_STANDARD,
          "Birmingham", Gauge.BIRMINGHAM_WIRE,
          "Imperial", Gauge.IMPERIAL_WIRE,
          "American", Gauge.AMERICAN_WIRE,
          "Wood screw", Gauge.WOOD_SCREW);

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "gauges.csv", useHeadersInDisplayName = true)
  void hasTheSizesOfTheTables(
      String name,
      String series,
      String number,
      BigDecimal expected,
      String unit,
      BigDecimal tolerance) {
    Gauge gauge = SERIES.get(series);
    Measure<Length> size = gauge.size(number);

    if (tolerance.signum() == 0) {
      assertEquals(expected.doubleValue(), size.in(INCH));
    } else {
      assertWithin(expected, size.in(INCH), tolerance);
    }
    assertEquals(number, gauge.nearest(size));
    assertEquals(number, gauge.nearest(size.to(MILLIMETRE)));
  }
}
