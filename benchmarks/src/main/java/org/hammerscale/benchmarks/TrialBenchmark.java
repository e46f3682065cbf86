package org.hammerscale.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import javax.measure.quantity.Length;
import org.hammerscale.piece.MatchedPair;
import org.hammerscale.piece.MatchedSet;
import org.hammerscale.piece.MatchedSize;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.PieceEnd;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialLog;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;

/** What it costs to plan the next piece by a long log, and to pair two lots of forty. */
public class TrialBenchmark extends SteadyBenchmark {
  private TrialLog log = log();
  private MatchedSet left = hands(1);
  private MatchedSet right = hands(2);

  /** The bound alone. */
  @Benchmark
  public Measure<Length> nextCutOf1000Trials() {
    return log.at(PieceEnd.LAST).bound(0.95);
  }

  /** The corrected layout, on the rule. */
  @Benchmark
  public Measure<Length> nextPieceOf1000Trials() {
    return log.layout().on(Graduation.SIXTEENTH).cutLength();
  }

  @Benchmark
  public List<MatchedPair> assignmentOf40() {
    return left.pairedWith(right);
  }

  private static TrialLog log() {
    Section flat = Section.flat(Measures.inches(1), Measures.inches("1/4"));
    Piece piece = Piece.of(Bar.of(flat, Material.MILD_STEEL), Plain.of(flat, Measures.inches(16)));
    Random random = new Random(1000);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      double off = random.nextDouble();
      trials.add(Trial.cut(Measures.inches(17)).off(PieceEnd.LAST, Measures.inches(off)));
    }
    return TrialLog.of(piece.layout()).with(trials);
  }

  private static MatchedSet hands(long seed) {
    Random random = new Random(seed);
    MatchedSet set =
        MatchedSet.by(
            MatchedSize.of("length", Measures.inches("1/16")),
            MatchedSize.of("flushness", Measures.inches("1/64")));
    for (int i = 0; i < 40; i++) {
      double length = 12 + random.nextGaussian() / 16;
      set = set.with("p" + i, Measures.inches(length), Measures.inches(random.nextDouble() / 32));
    }
    return set;
  }
}
