package org.hammerscale.benchmarks;

import static org.hammerscale.units.Measures.degrees;
import static org.hammerscale.units.Measures.inches;

import java.util.List;
import org.hammerscale.drawing.BarDrawing;
import org.hammerscale.drawing.HingeDrawing;
import org.hammerscale.drawing.LatchDrawing;
import org.hammerscale.drawing.LeafDrawing;
import org.hammerscale.drawing.Paper;
import org.hammerscale.drawing.PicketDrawing;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.forging.End;
import org.hammerscale.forging.Taper;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.latch.ThumbLatch;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.spacing.GuardCode;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.spacing.PicketLayout;
import org.hammerscale.spacing.PicketRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.openjdk.jmh.annotations.Benchmark;

/** What a drawing costs, from the answers to the text of its file: at most a millisecond. */
public class DrawingBenchmark extends SteadyBenchmark {
  private final Section strap = Section.flat(inches(1.5), inches(0.25));
  private final Section tip = Section.flat(inches(0.75), inches(0.125));
  private final HingePair pair =
      HingePair.of(
              Bar.of(strap, Material.MILD_STEEL),
              Bore.forPin(inches(0.5)).clearing(inches(1 / 64d)))
          .leaves(
              Plain.of(strap, inches(6)),
              Taper.between(strap, tip, inches(4)),
              End.penny(tip, inches(2)))
          .opening(degrees(270), Hanging.JOINT)
          .on(Graduation.SIXTEENTH)
          .pair();
  private final HoleLayout holes =
      HoleRow.along(inches(10))
          .holes(4)
          .startingFrom(inches(2))
          .endingBefore(inches(0.5))
          .layout()
          .on(Graduation.SIXTEENTH);
  private final ThumbLatch latch =
      ThumbLatch.through(inches(1.5), Bar.of(tip, Material.MILD_STEEL), inches(8)).latch();
  private final PicketLayout fence =
      PicketRow.across(inches(72))
          .of(inches(0.5))
          .stopping(GuardCode.IRC_SPHERE)
          .layout()
          .on(Graduation.SIXTEENTH);
  private final MarkedBar bar = pair.leaf(Leaf.FIRST).layout().on(Graduation.SIXTEENTH);

  @Benchmark
  public String leafDrawing() {
    return LeafDrawing.of(pair, Leaf.FIRST)
        .withHoles(holes, WoodScrew.number(12))
        .on(Graduation.SIXTEENTH)
        .drawing()
        .svg();
  }

  @Benchmark
  public List<String> leafOnSheets() {
    return LeafDrawing.of(pair, Leaf.FIRST)
        .withHoles(holes, WoodScrew.number(12))
        .on(Graduation.SIXTEENTH)
        .drawing()
        .sheets(Paper.LETTER);
  }

  @Benchmark
  public String barDrawing() {
    return BarDrawing.of(bar).drawing().svg();
  }

  @Benchmark
  public String jointDrawing() {
    return HingeDrawing.of(pair).on(Graduation.SIXTEENTH).drawing().svg();
  }

  @Benchmark
  public String latchDrawing() {
    return LatchDrawing.of(latch).on(Graduation.SIXTEENTH).drawing().svg();
  }

  @Benchmark
  public String picketDrawing() {
    return PicketDrawing.of(fence).drawing().svg();
  }
}
