package org.hammerscale.benchmarks;

import java.util.concurrent.TimeUnit;
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
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import tech.units.indriya.quantity.Quantities;

/**
 * What everyday handling of lengths costs: converting, multiplying, rounding, reading, printing.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(
    value = 3,
    jvmArgs = {"-Xms512m", "-Xmx512m", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class UnitsBenchmark {
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
