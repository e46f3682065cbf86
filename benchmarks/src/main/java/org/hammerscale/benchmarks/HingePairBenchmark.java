package org.hammerscale.benchmarks;

import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.infra.Blackhole;

/** A whole pair of leaves: both layouts, the slots, the swing and the tools. */
public class HingePairBenchmark extends SteadyBenchmark {
  private Section section = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));
  private Section tip = Section.flat(Measures.inches("3/4"), Measures.inches("1/8"));
  private Bar strap = Bar.of(section, Material.MILD_STEEL);
  private Contraction work = Contraction.from(Measures.celsius(1100), Material.MILD_STEEL);

  @Benchmark
  public void hingePair(Blackhole hole) {
    Bore bore =
        Bore.forPin(Measures.inches(0.5))
            .clearing(Measures.inches(1 / 64d))
            .coated(Measures.inches(0.003));
    HingePair pair =
        HingePair.of(strap, bore)
            .knuckles(Knuckles.across(section.width()).into(5).withGap(Measures.inches(1 / 32d)))
            .opening(Measures.degrees(110), Hanging.FACE)
            .facesFlush()
            .leaf(
                Leaf.SECOND,
                Plain.of(section, Measures.inches(9)),
                Taper.between(section, tip, Measures.inches(9)))
            .leaf(Leaf.FIRST, Plain.of(section, Measures.inches(7)))
            .pair();
    for (Leaf leaf : Leaf.values()) {
      hole.consume(pair.leaf(leaf).layout());
      hole.consume(pair.slotsOf(leaf));
    }
    hole.consume(pair.slotFloor());
    hole.consume(pair.opening());
    hole.consume(pair.drift(work).diameter());
    hole.consume(pair.swage(work).groove());
    hole.consume(pair.pin().length(pair.knuckles().width()));
  }
}
