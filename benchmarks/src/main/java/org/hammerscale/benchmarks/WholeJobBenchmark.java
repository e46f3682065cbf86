package org.hammerscale.benchmarks;

import javax.measure.quantity.Length;
import org.hammerscale.fastening.CountersunkHoles;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Hanging;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.ToolRack;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.spacing.ClosedStretch;
import org.hammerscale.spacing.HoleLayout;
import org.hammerscale.spacing.HoleRow;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.infra.Blackhole;

/**
 * A whole job as a sheet needs it: pair, layouts and slots on the rule, tools from the rack, holes
 * on the rule and sunk where they lie, heats.
 */
public class WholeJobBenchmark extends SteadyBenchmark {
  private Section section = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));
  private Section tip = Section.flat(Measures.inches("3/4"), Measures.inches("1/8"));
  private Bar strap = Bar.of(section, Material.MILD_STEEL);
  private Graduation<Length> rule = Graduation.SIXTEENTH;
  private ToolRack rack = ToolRack.every(Graduation.SIXTY_FOURTH);

  @Benchmark
  public void wholeJob(Blackhole hole) {
    Bore bore =
        Bore.forPin(Measures.inches(0.5))
            .clearing(Measures.inches(1 / 64d))
            .coated(Measures.inches(0.003));
    HingePair pair =
        HingePair.of(strap, bore)
            .knuckles(Knuckles.across(section.width()).withGap(Measures.inches(1 / 32d)))
            .opening(Measures.degrees(110), Hanging.FACE)
            .leaf(
                Leaf.SECOND,
                Plain.of(section, Measures.inches(9)),
                Taper.between(section, tip, Measures.inches(9)))
            .leaf(
                Leaf.FIRST,
                Plain.of(section, Measures.inches(5)),
                Taper.between(section, tip, Measures.inches(2)))
            .on(rule)
            .pair();
    Cooling bar = Cooling.from(Measures.fahrenheit(2000), strap);
    hole.consume(Heats.forWork(Measures.minutes(0.6), bar).count());
    for (Leaf leaf : Leaf.values()) {
      Heats taper = Heats.forWork(Measures.minutes(0.6), bar.withThinnest(tip));
      HeatPlan plan =
          HeatPlan.soaking(Measures.fahrenheit(2000), Measures.minutes(0.5)).inHeats(taper.count());
      MarkedBar marked = pair.leaf(leaf).layout(plan).on(rule);
      hole.consume(marked.cutLength());
      hole.consume(marked.marks());
      hole.consume(marked.trims());
      hole.consume(pair.slotsOf(leaf));
      holes(hole, pair, leaf);
    }
    Contraction work = Contraction.from(Measures.fahrenheit(2000), Material.MILD_STEEL);
    hole.consume(pair.drift(work).chosenFrom(rack, bore));
    hole.consume(pair.swage(work).chosenFrom(rack));
    hole.consume(pair.pin().length(pair.knuckles().width()));
  }

  private void holes(Blackhole hole, HingePair pair, Leaf leaf) {
    CountersunkHoles heads = CountersunkHoles.of(WoodScrew.number(10), pair.leaf(leaf));
    HoleRow row =
        HoleRow.along(pair.lengthFromPin(leaf))
            .holes(3)
            .startingFrom(pair.notchDepth().add(Measures.inches(0.385)))
            .endingBefore(Measures.inches("1 1/2"))
            .leastSpacing(Measures.inches(0.6));
    if (leaf == Leaf.SECOND) {
      row =
          row.holes(5)
              .missing(
                  ClosedStretch.seamAt(Measures.inches(4.5)).clear(Measures.inches(1)),
                  ClosedStretch.seamAt(Measures.inches(9.5)).clear(Measures.inches(1)),
                  ClosedStretch.seamAt(Measures.inches(14.5)).clear(Measures.inches(1)));
    }
    HoleLayout layout = row.nearestToEven().layout().on(rule);
    layout.positions().forEach(place -> hole.consume(heads.at(place)));
    hole.consume(heads.nearestTo(pair.lengthFromPin(leaf)));
  }
}
