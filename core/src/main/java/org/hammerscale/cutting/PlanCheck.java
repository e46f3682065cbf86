package org.hammerscale.cutting;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * Counts a finished plan anew, from its marks and in whole steps: it knows nothing of how the plan
 * was found.
 */
final class PlanCheck {
  private PlanCheck() {}

  static void check(Counting counting, List<CutBar> bars) {
    Map<String, Integer> pieces = new TreeMap<>();
    counting.wanted.forEach(
        w -> pieces.merge(w.name() + " " + counting.up(w), w.count(), Integer::sum));
    Map<Measure<Length>, Integer> offcuts = new TreeMap<>();
    counting.offcuts.forEach(offcut -> offcuts.merge(offcut, 1, Integer::sum));
    Map<Measure<Length>, Integer> fresh = new TreeMap<>();
    counting.offers.forEach(offer -> fresh.merge(offer.length(), offer.most(), Integer::sum));
    for (CutBar bar : bars) {
      int from = counting.trim;
      for (CutMark mark : bar.marks()) {
        verify(mark.startSteps == from, "a gap on " + bar);
        pieces.merge(
            mark.name() + " " + (mark.endSteps - mark.startSteps), -bar.count(), Integer::sum);
        from = mark.endSteps + counting.kerf;
      }
      verify(from - counting.kerf <= counting.down(bar.length()), "too much on " + bar);
      (bar.isOffcut() ? offcuts : fresh).merge(bar.length(), -bar.count(), Integer::sum);
    }
    verify(pieces.values().stream().allMatch(n -> n == 0), "pieces " + pieces);
    verify(offcuts.values().stream().allMatch(n -> n >= 0), "offcuts " + offcuts);
    verify(fresh.values().stream().allMatch(n -> n >= 0), "new bars " + fresh);
  }

  private static void verify(boolean right, String what) {
    if (!right) {
      throw new IllegalStateException("the plan does not add up: " + what + "; please report it");
    }
  }
}
