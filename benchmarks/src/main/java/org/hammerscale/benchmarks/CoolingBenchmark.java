package org.hammerscale.benchmarks;

import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.heat.Cooling;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;

/** What it costs to integrate the cooling of a bar. */
public class CoolingBenchmark extends SteadyBenchmark {
  private Measure<Temperature> heat = Measures.celsius(1150);
  private Measure<Time> minute = Measures.minutes(1);
  private Section tip = Section.flat(Measures.millimetres(19), Measures.millimetres(3));
  private Bar bar =
      Bar.of(Section.flat(Measures.millimetres(25), Measures.millimetres(6)), Material.MILD_STEEL);

  @Benchmark
  public Estimate<Time> coolingWindow() {
    return Cooling.from(heat, bar).window();
  }

  /** The same where the bar and its tip must be compared first. */
  @Benchmark
  public Estimate<Time> coolingWindowOfTip() {
    return Cooling.from(heat, bar).withThinnest(tip).window();
  }

  /** Solves for the end of the integral, three times. */
  @Benchmark
  public Estimate<Temperature> temperatureAfterAMinute() {
    return Cooling.from(heat, bar).temperatureAfter(minute);
  }
}
