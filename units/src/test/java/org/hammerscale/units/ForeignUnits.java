package org.hammerscale.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.MILLI;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import systems.uom.common.USCustomary;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/** Inches as other people make them, and the numbers that they may put before them. */
final class ForeignUnits {
  /** Most of them are equivalent to one another, but not equal. */
  static final Map<String, Unit<Length>> INCHES =
      Map.of(
          "m·0.0254", Units.METRE.multiply(0.0254),
          "m·254/10000", Units.METRE.multiply(254).divide(10000),
          "m·127/5000", Units.METRE.multiply(RationalNumber.of(127, 5000)),
          "cm·2.54", CENTI(Units.METRE).multiply(2.54),
          "mm·25.4", MILLI(Units.METRE).multiply(25.4),
          "named",
              new TransformedUnit<>(
                  "in", Units.METRE, Units.METRE, MultiplyConverter.ofRational(254, 10000)),
          "US customary", USCustomary.INCH,
          "US foot/12", USCustomary.FOOT.divide(12),
          "yard/36", USCustomary.YARD.divide(36),
          "ours", ShopUnits.INCH);

  /** Ways to state so many sixty-fourths exactly; whole numbers only for whole inches. */
  static final Map<String, Function<Integer, Number>> NUMBERS =
      Map.of(
          "double", n -> n / 64.0,
          "float", n -> n / 64f,
          "decimal", n -> BigDecimal.valueOf(n).divide(BigDecimal.valueOf(64)),
          "rational", n -> RationalNumber.of(n, 64));

  static final Map<String, Function<Integer, Number>> WHOLE_NUMBERS =
      Map.of(
          "int", n -> n,
          "long", n -> (long) n,
          "short", n -> (short) (int) n,
          "big integer", BigInteger::valueOf);

  private ForeignUnits() {}

  static List<String> names() {
    return INCHES.keySet().stream().sorted().toList();
  }
}
