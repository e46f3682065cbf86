package org.hammerscale.benchmarks;

import java.util.concurrent.TimeUnit;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Section;
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
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;

/**
 * The developed length of a barrel, (bore + thickness) π, three ways: in bare doubles, with the
 * library's measures, and with the reference implementation's quantities. Compare within one run;
 * the heap is fixed and touched beforehand, so that fresh pages do not drown the figures.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(
    value = 3,
    jvmArgs = {"-Xms512m", "-Xmx512m", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class BarrelBenchmark {
  // Not final, so that the compiler cannot fold them.
  private double bareBore = 0.5;
  private double bareThickness = 0.25;
  private Measure<Length> bore = Measures.inches("1/2");
  private Measure<Length> thickness = Measures.inches("1/4");
  private Measure<Length> metricThickness = Measures.millimetres(6.35);
  private Quantity<Length> foreignBore = Quantities.getQuantity(0.5, ShopUnits.INCH);
  private ComparableQuantity<Length> indriyaBore = Quantities.getQuantity(0.5, ShopUnits.INCH);
  private Quantity<Length> indriyaThickness = Quantities.getQuantity(0.25, ShopUnits.INCH);
  private Section strap = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));

  /** The floor: what the arithmetic itself costs. */
  @Benchmark
  public double bareDoubles() {
    return (bareBore + bareThickness) * Math.PI;
  }

  @Benchmark
  public Measure<Length> measure() {
    return bore.add(thickness).multiply(Math.PI);
  }

  @Benchmark
  public Measure<Length> measureInchAndMillimetre() {
    return bore.add(metricThickness).multiply(Math.PI);
  }

  @Benchmark
  public double measureReadOut() {
    return bore.add(thickness).multiply(Math.PI).in(ShopUnits.INCH);
  }

  @Benchmark
  public Measure<Length> measureFromIndriya() {
    return Measure.from(foreignBore).add(thickness).multiply(Math.PI);
  }

  /** The same through the type a smith would use, made anew each time. */
  @Benchmark
  public Measure<Length> barrel() {
    return Barrel.around(bore, strap).developedLength();
  }

  @Benchmark
  public Quantity<Length> indriya() {
    return indriyaBore.add(indriyaThickness).multiply(Math.PI);
  }
}
