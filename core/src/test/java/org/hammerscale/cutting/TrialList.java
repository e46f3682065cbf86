package org.hammerscale.cutting;

import static org.hammerscale.units.Measures.millimetres;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;

/** A small list by lot, and the best of all its plans by trying them all. */
final class TrialList {
  static final Bar ROUND = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);

  final int kerf;
  final int trim;
  final List<Integer> pieces = new ArrayList<>();

  /** Length, price, how many; an offcut has the price −1. */
  final List<int[]> stock = new ArrayList<>();

  private final List<Aim> aims;
  private final List<List<Integer>> bars = new ArrayList<>();
  private final List<int[]> taken = new ArrayList<>();
  private long[] best = new long[0];

  TrialList(Random random, List<Aim> aims) {
    this.aims = aims;
    kerf = random.nextInt(3) == 0 ? 0 : random.nextInt(5);
    trim = random.nextInt(3) == 0 ? 0 : random.nextInt(6);
    int lengths = 1 + random.nextInt(3);
    for (int n = 0; n < lengths; n++) {
      int most = random.nextInt(4) == 0 ? 1 + random.nextInt(2) : 6;
      stock.add(new int[] {30 + random.nextInt(71), random.nextInt(40), most});
    }
    int offcuts = random.nextInt(4);
    for (int n = 0; n < offcuts; n++) {
      stock.add(new int[] {10 + random.nextInt(60), -1, 1 + random.nextInt(2)});
    }
    int count = 1 + random.nextInt(6);
    while (pieces.size() < count) {
      int room = stock.get(random.nextInt(stock.size()))[0] - trim;
      int piece =
          switch (random.nextInt(6)) {
            case 0 -> room; // the whole bar
            case 1 -> room - random.nextInt(kerf + 2); // about a kerf less
            case 2 -> (room - kerf) / 2; // two to a bar
            case 3 -> pieces.isEmpty() ? room / 3 : pieces.get(0);
            default -> 1 + random.nextInt(room > 0 ? room : 1);
          };
      if (piece > 0) {
        pieces.add(piece);
      }
    }
  }

  CutList list() {
    CutList list =
        CutList.of(ROUND, Graduation.MILLIMETRE).kerf(millimetres(kerf)).endTrim(millimetres(trim));
    for (int piece : pieces) {
      list = list.pieces("piece", millimetres(piece), 1);
    }
    for (int[] bar : stock) {
      list =
          bar[1] < 0
              ? list.offcuts(millimetres(bar[0]), bar[2])
              : list.buying(millimetres(bar[0]), BigDecimal.valueOf(bar[1], 2), bar[2]);
    }
    return list;
  }

  /** What the best plan reaches in each aim; empty if there is none. */
  long[] best() {
    share(0);
    return best;
  }

  /** Puts a piece on each bar in turn, and on a bar of its own. */
  private void share(int piece) {
    if (piece == pieces.size()) {
      take(0);
      return;
    }
    for (List<Integer> bar : List.copyOf(bars)) {
      bar.add(pieces.get(piece));
      share(piece + 1);
      bar.remove(bar.size() - 1);
    }
    List<Integer> own = new ArrayList<>(List.of(pieces.get(piece)));
    bars.add(own);
    share(piece + 1);
    bars.remove(bars.size() - 1);
  }

  /** Takes each kind of stock for a bar in turn. */
  private void take(int bar) {
    if (bar == bars.size()) {
      weigh();
      return;
    }
    for (int[] kind : stock) {
      int rest = kind[0] - trim - bars.get(bar).stream().mapToInt(n -> n).sum();
      if (kind[2] > 0 && rest >= kerf * (bars.get(bar).size() - 1)) {
        kind[2]--;
        taken.add(kind);
        take(bar + 1);
        taken.remove(taken.size() - 1);
        kind[2]++;
      }
    }
  }

  private void weigh() {
    long money = 0;
    long length = 0;
    long leftover = 0;
    TreeSet<String> patterns = new TreeSet<>();
    for (int bar = 0; bar < bars.size(); bar++) {
      int[] kind = taken.get(bar);
      List<Integer> cut = bars.get(bar).stream().sorted().toList();
      money += Math.max(0, kind[1]);
      length += kind[1] < 0 ? 0 : kind[0];
      int rest = kind[0] - trim - cut.stream().mapToInt(n -> n).sum() - kerf * cut.size();
      leftover = Math.max(leftover, rest);
      patterns.add(kind[0] + " " + cut);
    }
    long[] reached = new long[aims.size()];
    for (Aim aim : aims) {
      reached[aims.indexOf(aim)] =
          switch (aim) {
            case LEAST_MONEY -> money;
            case LEAST_NEW_STOCK -> length;
            case FEWEST_BARS -> bars.size();
            case LONGEST_LEFTOVER -> -leftover;
            case FEWEST_PATTERNS -> patterns.size();
          };
    }
    if (best.length == 0 || Arrays.compare(reached, best) < 0) {
      best = reached;
    }
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("kerf " + kerf + ", trim " + trim + ", " + pieces);
    stock.forEach(kind -> text.append(' ').append(Arrays.toString(kind)));
    return text.append(" by ").append(aims).toString();
  }
}
