package org.hammerscale.benchmarks;

import java.util.concurrent.TimeUnit;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Piece;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What it costs to lay out a piece of ten features. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(
    value = 3,
    jvmArgs = {"-Xms512m", "-Xmx512m", "-XX:+UseSerialGC", "-XX:+AlwaysPreTouch"})
public class LayoutBenchmark {
  private Piece piece = tenFeatures();

  @Benchmark
  public Layout tenFeatureLayout() {
    return piece.layout();
  }

  private static Piece tenFeatures() {
    Section bar = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));
    Section neck = Section.flat(Measures.inches("3/4"), Measures.inches("3/16"));
    Feature[] features = new Feature[10];
    features[0] = Barrel.around(Measures.inches("1/2"), bar);
    for (int i = 1; i < 10; i += 3) {
      features[i] = Plain.of(bar, Measures.inches(2));
      features[i + 1] = Taper.between(bar, neck, Measures.inches(3));
      features[i + 2] = Taper.between(neck, bar, Measures.inches(3));
    }
    return Piece.of(Bar.of(bar, Material.MILD_STEEL), features);
  }
}
