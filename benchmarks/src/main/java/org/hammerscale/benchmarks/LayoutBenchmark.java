package org.hammerscale.benchmarks;

import org.hammerscale.bending.Bend;
import org.hammerscale.bending.SquareCorner;
import org.hammerscale.bending.Twist;
import org.hammerscale.forging.Shoulder;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.Piece;
import org.hammerscale.punching.DriftedHole;
import org.hammerscale.punching.Hole;
import org.hammerscale.punching.PunchedHole;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;

/** What it costs to lay out a piece of ten different features. */
public class LayoutBenchmark extends SteadyBenchmark {
  private Piece piece = tenFeatures();

  @Benchmark
  public Layout tenFeatureLayout() {
    return piece.layout();
  }

  /** A latch bar that has something of every room. */
  private static Piece tenFeatures() {
    Section bar = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));
    Section tenon = Section.flat(Measures.inches("3/4"), Measures.inches("1/4"));
    Section tip = Section.flat(Measures.inches("1/2"), Measures.inches("1/8"));
    return Piece.of(
        Bar.of(bar, Material.WROUGHT_IRON),
        Barrel.around(Measures.inches("1/2"), bar),
        Plain.of(bar, Measures.inches(2)),
        DriftedHole.through(bar, Hole.round(Measures.inches("1/2"))),
        Twist.of(1, Measures.inches(8), bar),
        PunchedHole.through(bar, Hole.round(Measures.inches("3/8"))),
        Bend.of(Measures.degrees(90), Measures.inches("1/4"), bar),
        SquareCorner.of(bar),
        Shoulder.between(bar, tenon, Measures.inches(1)),
        Taper.between(tenon, tip, Measures.inches(6)),
        Taper.toPoint(tip, Measures.inches(1)));
  }
}
