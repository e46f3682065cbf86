package org.hammerscale.benchmarks;

import org.hammerscale.latch.LatchCatch;
import org.hammerscale.latch.SlideBolt;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.piece.Piece;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.infra.Blackhole;

/**
 * A thumb latch and a slide bolt designed whole, the fit and the layout of every part: at most 20
 * µs; and pickets along a rail.
 */
public class LatchBenchmark extends SteadyBenchmark {
  private Bar flat =
      Bar.of(Section.flat(Measures.millimetres(20), Measures.millimetres(6)), Material.MILD_STEEL);
  private Bar rod = Bar.of(Section.round(Measures.millimetres(12)), Material.MILD_STEEL);

  @Benchmark
  public void thumbLatch(Blackhole hole) {
    ThumbLatch latch =
        ThumbLatch.through(Measures.millimetres(44), flat, Measures.millimetres(200))
            .thumbAt(Measures.millimetres(30), Measures.millimetres(8))
            .lifting(Measures.millimetres(60), Measures.millimetres(180))
            .into(
                LatchCatch.standing(Measures.millimetres(15)).under(Measures.millimetres(4)),
                Measures.millimetres(2))
            .allowing(Measures.millimetres(4), Measures.millimetres(6))
            .on(Graduation.MILLIMETRE)
            .latch();
    hole.consume(latch.lift());
    hole.consume(latch.thumbForce());
    for (Piece piece : latch.pieces()) {
      hole.consume(piece.layout());
    }
  }

  @Benchmark
  public void slideBolt(Blackhole hole) {
    SlideBolt bolt =
        SlideBolt.thrown(Measures.millimetres(40), rod)
            .across(Measures.millimetres(4))
            .stapledApart(Measures.millimetres(100))
            .allowing(Measures.millimetres(2), Measures.millimetres(3))
            .on(Graduation.MILLIMETRE)
            .bolt();
    hole.consume(bolt.leastEngagement());
    hole.consume(bolt.tilt());
    for (Piece piece : bolt.pieces()) {
      hole.consume(piece.layout());
    }
  }

  /** Five hundred pickets on a rule: at most a millisecond. */
  @Benchmark
  public PicketLayout pickets() {
    return PicketRow.across(Measures.millimetres(55_000))
        .of(Measures.millimetres(12))
        .pickets(500)
        .layout()
        .on(Graduation.MILLIMETRE);
  }

  @Benchmark
  public PicketLayout patternOfPickets() {
    return PicketRow.across(Measures.millimetres(55_000))
        .of(Measures.millimetres(12), Measures.millimetres(20), Measures.millimetres(12))
        .stopping(Measures.millimetres(100))
        .layout()
        .on(Graduation.MILLIMETRE);
  }
}
