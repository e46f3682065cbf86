package org.hammerscale.units;

import static org.hammerscale.units.Close.assertWithin;
import static org.hammerscale.units.Measures.inches;
import static org.hammerscale.units.ShopUnits.INCH;
import static org.hammerscale.units.ShopUnits.MILLIMETRE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import javax.measure.quantity.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Fractions and roundings against printed tables; the source stands beside each row. */
class FractionsValidationTest {
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "fractions.csv", useHeadersInDisplayName = true)
  void readsAndPrintsTheFractionsOfTheTables(
      String name,
      String fraction,
      String reduced,
      BigDecimal expected,
      String unit,
      BigDecimal tolerance) {
    Measure<Length> read = inches(fraction);

    assertEquals(reduced + " in", read.toString());
    assertEquals(read, inches(reduced));
    assertEquals(reduced + " in", LengthFormat.to(Graduation.SIXTY_FOURTH).format(read));
    if (unit.equals("in")) {
      // Binary fractions are exact in a double, to the last of the printed digits and beyond.
      assertWithin(expected, read.in(INCH), tolerance);
      assertEquals(reduced + " in", inches(expected.doubleValue()).toString());
    } else {
      // Decimal millimetres are not; the double nearest to the printed value it has to be.
      assertEquals(expected.doubleValue(), read.in(MILLIMETRE));
      assertEquals(read, Measures.millimetres(expected.doubleValue()).to(INCH));
    }
  }

  @ParameterizedTest(name = "{0} to {2}")
  @CsvFileSource(resources = "rounding.csv", useHeadersInDisplayName = true)
  void roundsTheLengthsOfWorkedExamples(
      String name,
      BigDecimal value,
      String step,
      String nearest,
      String up,
      double expected,
      double millimetres,
      String unit,
      BigDecimal remainder,
      BigDecimal tolerance) {
    Measure<Length> length = inches(value.doubleValue());
    Graduation<Length> rule = Graduation.of(inches(step));
    LengthFormat format = LengthFormat.to(rule);

    assertEquals(nearest + " in", format.format(length));
    assertEquals(inches(nearest), length.nearest(rule));
    assertEquals(expected, length.nearest(rule).in(INCH));
    assertEquals(inches(up), length.upTo(rule));
    assertEquals(up + " in", format.format(length.upTo(rule)));
    assertEquals(nearest + " in" + printed(remainder), format.withRemainder().format(length));
    assertWithin(remainder, length.subtract(length.nearest(rule)).in(INCH), tolerance);

    // The same length given in millimetres comes to the same mark.
    Measure<Length> metric = length.to(MILLIMETRE);
    assertEquals(nearest + " in", format.format(metric));
    assertEquals(millimetres, metric.nearest(rule).in(MILLIMETRE));
  }

  /** The remainder of the table, rounded to thousandths, with the sign set off by spaces. */
  private static String printed(BigDecimal remainder) {
    BigDecimal size = remainder.abs().setScale(3, RoundingMode.HALF_UP);
    if (size.signum() == 0) {
      return "";
    }
    String sign = remainder.signum() < 0 ? " − " : " + ";
    return sign + size.stripTrailingZeros().toPlainString();
  }
}
