package org.hammerscale.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Puts the names of the pieces on the bars of a draft, and bars that are cut alike together. */
final class Chalk {
  private final Counting counting;
  private final Draft draft;
  private final Map<Integer, Deque<String>> names = new TreeMap<>(Comparator.reverseOrder());

  Chalk(Counting counting, Draft draft) {
    this.counting = counting;
    this.draft = draft;
    for (CutList.Wanted piece : counting.wanted) {
      Deque<String> queue = names.computeIfAbsent(counting.up(piece), length -> new ArrayDeque<>());
      for (int n = 0; n < piece.count(); n++) {
        queue.add(piece.name());
      }
    }
  }

  /** Offcuts first, then new bars; long before short; of the same length, long pieces first. */
  List<CutBar> bars() {
    Integer[] order = new Integer[draft.stock.length];
    Arrays.setAll(order, bar -> bar);
    Arrays.sort(
        order,
        Comparator.<Integer>comparingInt(bar -> draft.stock[bar] < 0 ? 0 : 1)
            .thenComparingInt(bar -> Math.abs(draft.stock[bar]))
            .thenComparing((a, b) -> Arrays.compare(draft.patterns[b], draft.patterns[a])));
    List<CutBar> bars = new ArrayList<>();
    for (int bar : order) {
      CutBar next = bar(bar);
      int last = bars.size() - 1;
      if (last >= 0 && bars.get(last).isCutLike(next)) {
        bars.set(last, bars.get(last).oneMore());
      } else {
        bars.add(next);
      }
    }
    return List.copyOf(bars);
  }

  private CutBar bar(int bar) {
    int[] pattern = draft.patterns[bar];
    List<Integer> lengths = new ArrayList<>(names.keySet());
    List<CutMark> marks = new ArrayList<>();
    int at = counting.trim;
    for (int kind = 0; kind < pattern.length; kind++) {
      int length = lengths.get(kind);
      for (int n = 0; n < pattern[kind]; n++) {
        String name = names.getOrDefault(length, new ArrayDeque<>()).remove();
        marks.add(new CutMark(counting, name, at, at + length));
        at += length + counting.kerf;
      }
    }
    int stock = draft.stock[bar];
    return stock < 0
        ? new CutBar(counting, counting.offcuts.get(-1 - stock), true, 1, marks)
        : new CutBar(counting, counting.offers.get(stock).length(), false, 1, marks);
  }
}
