package org.hammerscale.benchmarks;

import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.hinge.Barrel;
import org.hammerscale.hinge.LeafProfile;
import org.hammerscale.hinge.Swing;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.openjdk.jmh.annotations.Benchmark;

/** How far a hinge opens: asked of a swing that is there, and of two leaves. */
public class SwingBenchmark extends SteadyBenchmark {
  private Section strap = Section.flat(Measures.inches("1 1/2"), Measures.inches("1/4"));
  private LeafProfile leaf = leaf("1/2");
  private LeafProfile other = leaf("7/16");
  private Swing equal = Swing.of(leaf);
  private Swing unequal = Swing.between(leaf, other);
  private Measure<Angle> wanted = Measures.degrees(120);

  private LeafProfile leaf(String bore) {
    return LeafProfile.tangent(Barrel.around(Measures.inches(bore), strap))
        .notchedBehindPin(Measures.inches("15/32"));
  }

  @Benchmark
  public Measure<Angle> swingLimit() {
    return equal.opening();
  }

  @Benchmark
  public Measure<Angle> swingLimitOfTwoLeaves() {
    return Swing.of(leaf).opening();
  }

  @Benchmark
  public Measure<Angle> swingLimitUnequal() {
    return unequal.opening();
  }

  @Benchmark
  public Measure<Length> leastNotch() {
    return equal.leastNotch(wanted);
  }
}
