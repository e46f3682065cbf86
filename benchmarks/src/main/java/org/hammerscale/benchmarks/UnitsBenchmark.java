package org.hammerscale.benchmarks;

import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import tech.units.indriya.quantity.Quantities;

/**
 * What everyday handling of lengths costs: converting, multiplying, rounding, reading, printing.
 */
public class UnitsBenchmark extends SteadyBenchmark {
  private Measure<Length> width = Measures.inches("1 1/2");
  private Measure<Length> thickness = Measures.inches("1/4");
  private Measure<Length> length = Measures.inches(42.47);
  // An inch that somebody else put together.
  private Unit<Length> otherInch = MetricPrefix.CENTI(ShopUnits.METRE).multiply(2.54);
  private Quantity<Length> foreign = Quantities.getQuantity(1.5, otherInch);
  private LengthFormat sixteenths = LengthFormat.to(Graduation.SIXTEENTH);
  private LengthFormat reader = LengthFormat.standard();
  private String feetAndInches = "3' 6 1/2\"";

  @Benchmark
  public Measure<Length> foreignInchToMillimetre() {
    return Measure.from(foreign).to(ShopUnits.MILLIMETRE);
  }

  @Benchmark
  public Measure<Area> productOfTwoLengths() {
    return Measures.area(width, thickness);
  }

  @Benchmark
  public Measure<Length> roundUpToSixteenth() {
    return length.upTo(Graduation.SIXTEENTH);
  }

  @Benchmark
  public Measure<Length> parseFeetAndInches() {
    return reader.parse(feetAndInches);
  }

  @Benchmark
  public String formatToSixteenth() {
    return sixteenths.format(length);
  }
}
