package org.hammerscale.benchmarks;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.openjdk.jmh.annotations.Benchmark;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.quantity.Quantities;

/**
 * The developed length of a barrel, (bore + thickness) π, three ways: in bare doubles, with the
 * library's measures, and with the reference implementation's quantities. Compare within one run.
 */
public class BarrelBenchmark extends SteadyBenchmark {
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
