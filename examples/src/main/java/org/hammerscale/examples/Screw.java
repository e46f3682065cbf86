package org.hammerscale.examples;

import org.hammerscale.fastening.CountersunkHead;
import org.hammerscale.fastening.MetricWoodScrew;
import org.hammerscale.fastening.WoodFastener;
import org.hammerscale.fastening.WoodScrew;
import org.hammerscale.units.Measures;

/** A screw of either series: its head as the iron feels it, its shank as the wood does. */
record Screw(CountersunkHead head, WoodFastener shank) {
  /** A gauge number such as {@code 10}, or a diameter such as {@code 5 mm}. */
  static Screw parse(String text) {
    if (text.matches("[0-9]{1,2}")) {
      WoodScrew inch = WoodScrew.number(Integer.parseInt(text));
      return new Screw(inch, inch);
    }
    MetricWoodScrew metric = MetricWoodScrew.din97(Measures.length(text));
    return new Screw(metric, metric);
  }

  @Override
  public String toString() {
    return head.toString();
  }
}
