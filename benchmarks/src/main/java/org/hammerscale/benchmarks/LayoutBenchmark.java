package org.hammerscale.benchmarks;

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

/** What it costs to lay out a piece of ten features. */
public class LayoutBenchmark extends SteadyBenchmark {
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
