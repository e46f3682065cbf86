package org.hammerscale.units;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * A numbered series of thicknesses or diameters: {@index "sheet gauge"}, {@index "wire gauge"},
 * {@index "screw gauge"}, also written {@index gage}. The same number means another size in each,
 * so the series is always named.
 *
 * <pre>{@code
 * Gauge.MANUFACTURERS_STANDARD.size(16)          // 0.0598 in  16 gauge sheet
 * Gauge.IMPERIAL_WIRE.size("3/0")                // 0.372 in   British wire, above nought
 * Gauge.BIRMINGHAM_WIRE.nearest(millimetres(3))  // "11"       which number a calliper found
 * }</pre>
 */
public final class Gauge {
  /** Ounces per square foot of the numbers 7/0 to 38 in the Act of 1893. */
  private static final double[] SHEET_OUNCES = {
    320, 300, 280, 260, 240, 220, 200, 180, 170, 160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60,
    50, 45, 40, 36, 32, 28, 24, 22, 20, 18, 16, 14, 12, 11, 10, 9, 8, 7, 6.5, 6, 5.5, 5, 4.5, 4.25,
    4
  };

  private static final int SEVEN_NOUGHTS = -6;
  private static final int FIFTEEN_NOUGHTS = -14;

  /**
   * Manufacturers' Standard Gauge for steel sheet, numbers 3 to 38: the weight of the US Standard
   * Gauge ÷ 41.82 lb/ft² for an inch, to four decimals. The source was read for numbers 3, 4, 10,
   * 18 and 20; the other numbers are from memory of the weights.
   */
  public static final Gauge MANUFACTURERS_STANDARD =
      new Gauge(
          "Manufacturers' Standard Gauge for steel sheet",
          "weight in lb/ft² ÷ 41.82, to four decimals",
          series(3, 38, n -> Math.rint(ounces(n) / 16 / 41.82 * 1e4) / 1e4));

  /**
   * US Standard Gauge for sheet and plate iron and steel, numbers 7/0 to 38: 1/640 in for each
   * ounce per square foot of wrought iron.
   */
  public static final Gauge US_STANDARD =
      new Gauge(
          "US Standard Gauge for sheet and plate",
          "Act of Congress of 3 March 1893 (from memory): ounces per square foot ÷ 640",
          series(SEVEN_NOUGHTS, 38, n -> ounces(n) / 640));

  /** Birmingham wire gauge, or Stubs' iron wire gauge, numbers 5/0 to 36; 5/0 is from memory. */
  public static final Gauge BIRMINGHAM_WIRE =
      new Gauge(
          "Birmingham (Stubs' iron) wire gauge",
          "Holtzapffel's table, as reprinted in Building Construction, vol. 3",
          table(
              -4, 0.500, 0.454, 0.425, 0.380, 0.340, 0.300, 0.284, 0.259, 0.238, 0.220, 0.203,
              0.180, 0.165, 0.148, 0.134, 0.120, 0.109, 0.095, 0.083, 0.072, 0.065, 0.058, 0.049,
              0.042, 0.035, 0.032, 0.028, 0.025, 0.022, 0.020, 0.018, 0.016, 0.014, 0.013, 0.012,
              0.010, 0.009, 0.008, 0.007, 0.005, 0.004));

  /**
   * Birmingham gauge (B.G.) of 1914 for sheet and hoop iron, numbers 15/0 to 52; another series
   * than the older {@linkplain #BIRMINGHAM_WIRE wire gauge}. The source was read for numbers 3/0,
   * 1, 4, 6 to 12, 14, 15 and 19 to 22; the other numbers are from memory. Six numbers halve the
   * thickness; 5/0 is kept as it is printed, 0.005 in more than its neighbours would have it.
   */
  public static final Gauge BIRMINGHAM_SHEET =
      new Gauge(
          "Birmingham gauge for sheet and hoop",
          "Order in Council of 1914, as reprinted by sizes.com; many numbers from memory",
          table(
              FIFTEEN_NOUGHTS,
              1.0000,
              0.9583,
              0.9167,
              0.8750,
              0.8333,
              0.7917,
              0.7500,
              0.7083,
              0.6666,
              0.6250,
              0.5883,
              0.5416,
              0.5000,
              0.4452,
              0.3964,
              0.3532,
              0.3147,
              0.2804,
              0.2500,
              0.2225,
              0.1981,
              0.1764,
              0.1570,
              0.1398,
              0.1250,
              0.1113,
              0.0991,
              0.0882,
              0.0785,
              0.0699,
              0.0625,
              0.0556,
              0.0495,
              0.0440,
              0.0392,
              0.0349,
              0.03125,
              0.02782,
              0.02476,
              0.02204,
              0.01961,
              0.01745,
              0.015625,
              0.0139,
              0.0123,
              0.0110,
              0.0098,
              0.0087,
              0.0077,
              0.0069,
              0.0061,
              0.0054,
              0.0048,
              0.0043,
              0.00386,
              0.00343,
              0.00306,
              0.00272,
              0.00242,
              0.00215,
              0.00192,
              0.00170,
              0.00152,
              0.00135,
              0.00120,
              0.00107,
              0.00095));

  /** Imperial standard wire gauge, numbers 7/0 to 50. */
  public static final Gauge IMPERIAL_WIRE =
      new Gauge(
          "Imperial standard wire gauge",
          "Order in Council of 1883, as reprinted in Building Construction, vol. 3",
          table(
              SEVEN_NOUGHTS,
              0.500,
              0.464,
              0.432,
              0.400,
              0.372,
              0.348,
              0.324,
              0.300,
              0.276,
              0.252,
              0.232,
              0.212,
              0.192,
              0.176,
              0.160,
              0.144,
              0.128,
              0.116,
              0.104,
              0.092,
              0.080,
              0.072,
              0.064,
              0.056,
              0.048,
              0.040,
              0.036,
              0.032,
              0.028,
              0.024,
              0.022,
              0.020,
              0.018,
              0.0164,
              0.0148,
              0.0136,
              0.0124,
              0.0116,
              0.0108,
              0.0100,
              0.0092,
              0.0084,
              0.0076,
              0.0068,
              0.0060,
              0.0052,
              0.0048,
              0.0044,
              0.0040,
              0.0036,
              0.0032,
              0.0028,
              0.0024,
              0.0020,
              0.0016,
              0.0012,
              0.0010));

  /** American wire gauge, numbers 4/0 to 40: 0.005 in × 92 to the power (36 − n)/39. */
  public static final Gauge AMERICAN_WIRE =
      new Gauge(
          "American wire gauge",
          "ASTM B258: 0.005 in × 92^((36 − n)/39)",
          series(-3, 40, n -> 0.005 * Math.pow(92, (36 - n) / 39d)));

  /** Inch wood screws, numbers 0 to 24: shank diameter 0.060 in + 0.013 in for each number. */
  public static final Gauge WOOD_SCREW =
      new Gauge(
          "wood screw gauge",
          "ASME B18.6.1: 0.060 in + 0.013 in × n",
          series(0, 24, n -> (60 + 13 * n) / 1000d));

  private final String name;
  private final String source;
  private final Map<String, Measure<Length>> sizes;

  private Gauge(String name, String source, Map<String, Measure<Length>> sizes) {
    this.name = name;
    this.source = source;
    this.sizes = sizes;
  }

  /** {@return what the series is called} */
  public String name() {
    return name;
  }

  /** {@return where its sizes come from} */
  public String source() {
    return source;
  }

  /** {@return its numbers from the thickest to the thinnest, or from 0 up for screws} */
  public List<String> numbers() {
    return List.copyOf(sizes.keySet());
  }

  /**
   * The size of a number.
   *
   * @param number a number of the series; 0 is 1/0
   * @return the thickness or diameter, in inches
   * @throws IllegalArgumentException if the series has no such number
   */
  public Measure<Length> size(int number) {
    return size(Integer.toString(number));
  }

  /**
   * The size of a number as it is written.
   *
   * @param number such as {@code 16}, {@code 0} or {@code 3/0}
   * @return the thickness or diameter, in inches
   * @throws IllegalArgumentException if the series has no such number
   */
  public Measure<Length> size(String number) {
    Measure<Length> size =
        sizes.get(Objects.requireNonNull(number, "number").equals("1/0") ? "0" : number);
    if (size == null) {
      List<String> all = numbers();
      throw new IllegalArgumentException(
          "number must be one of the "
              + name
              + ", "
              + all.get(0)
              + " to "
              + all.get(all.size() - 1)
              + ", was "
              + number
              + "; write 3/0 for 000");
    }
    return size;
  }

  /**
   * The number whose size is nearest to a thickness. Of two equally near, the first in {@link
   * #numbers}.
   *
   * @param thickness a length no thinner than the thinnest size and no thicker than the thickest
   * @return the number as it is written
   * @throws IllegalArgumentException if the thickness lies outside the series
   */
  public String nearest(Quantity<Length> thickness) {
    Measure<Length> measure = Measure.from("thickness", thickness);
    double wanted =
        measure.scale().convert(measure.getValue(), UnitScales.of(ShopUnits.INCH), "thickness");
    double most = sizes.values().stream().mapToDouble(Gauge::inches).max().orElseThrow();
    double least = sizes.values().stream().mapToDouble(Gauge::inches).min().orElseThrow();
    double slack = 1e-9;
    if (!(wanted >= least * (1 - slack) && wanted <= most * (1 + slack))) {
      throw new IllegalArgumentException(
          "thickness must lie in the "
              + name
              + ", "
              + least
              + " in to "
              + most
              + " in, was "
              + measure
              + "; give the thickness itself");
    }
    String best = "";
    double bestOff = Double.POSITIVE_INFINITY;
    for (Map.Entry<String, Measure<Length>> entry : sizes.entrySet()) {
      double off = Math.abs(inches(entry.getValue()) - wanted);
      if (off < bestOff - 1e-12) { // a tie but for noise goes to the first
        best = entry.getKey();
        bestOff = off;
      }
    }
    return best;
  }

  private static double inches(Measure<Length> size) {
    return size.in(ShopUnits.INCH);
  }

  private static double ounces(int number) {
    return SHEET_OUNCES[number - SEVEN_NOUGHTS];
  }

  private static Map<String, Measure<Length>> table(int first, double... inches) {
    return series(first, first + inches.length - 1, n -> inches[n - first]);
  }

  /** Noughts are counted backwards: 0 is 0, −1 is 2/0, −2 is 3/0. */
  private static Map<String, Measure<Length>> series(
      int first, int last, IntToDoubleFunction inches) {
    Map<String, Measure<Length>> sizes = new LinkedHashMap<>();
    for (int n = first; n <= last; n++) {
      String number = n < 0 ? (1 - n) + "/0" : Integer.toString(n);
      sizes.put(number, Measures.inches(inches.applyAsDouble(n)));
    }
    return sizes;
  }

  /** The name and its range. */
  @Override
  public String toString() {
    List<String> all = numbers();
    return name + ", " + all.get(0) + " to " + all.get(all.size() - 1);
  }
}
