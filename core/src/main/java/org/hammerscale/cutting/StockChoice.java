package org.hammerscale.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Which bars to take. A choice is how many new bars of each length and how many offcuts; the
 * longest offcuts, since each costs as much as any other: nothing, and one bar. Choices are tried
 * from the cheapest on, by the aims in their order; one that the certificates refute is skipped.
 */
final class StockChoice {
  private static final int MOST_CHOICES = 300_000;
  private static final int MOST_VISITED = 3_000_000;
  private static final int MOST_EQUAL = 300;

  private final Job job;
  private final List<Aim> aims;
  private final Packer packer;
  private final Work work;
  private final PriorityQueue<int[]> open;
  private final List<int[]> undecided = new ArrayList<>();
  private @Nullable Draft best;
  private long[] rivalCosts = new long[0];
  private boolean truncated;
  private int visited;

  /**
   * Ready to search.
   *
   * @param aims of the material, all three
   */
  StockChoice(Job job, List<Aim> aims, Packer packer, Work work) {
    this.job = job;
    this.aims = aims;
    this.packer = packer;
    this.work = work;
    Comparator<int[]> cheapest = this::compare;
    this.open = new PriorityQueue<>(cheapest.thenComparing(Arrays::compare));
  }

  /** The best plan; null if there is none, or none was found. */
  @Nullable Draft best() {
    take(FirstPlan.of(job, aims, work));
    openAll(new int[job.fresh.length + 1], 0);
    while (!open.isEmpty()) {
      int[] choice = open.element();
      if (!isPromising(choice) || work.isOver()) {
        break;
      }
      open.remove();
      if (raise(choice)) {
        open.add(choice);
      } else if (isPossible(choice)) {
        attempt(choice);
      }
    }
    return best;
  }

  private void attempt(int[] choice) {
    int[] stock = stock(choice);
    Packer.Outcome outcome = packer.pack(Draft.rooms(job, stock));
    if (outcome.isPacked()) {
      take(new Draft(job, stock, outcome.patterns));
      return;
    }
    if (outcome.verdict == Packer.Verdict.UNKNOWN) {
      undecided.add(choice.clone());
      if (outcome.patterns.length > 0) {
        take(FirstPlan.completed(job, aims, stock, outcome.patterns, work));
      }
    }
    int last = last();
    if (job.fresh.length > 0 && choice[last] < job.fresh[last].most) {
      choice[last]++;
      open.add(choice);
    }
  }

  private void take(@Nullable Draft draft) {
    if (draft != null && (best == null || draft.isBetterThan(best, aims))) {
      best = draft;
      rivalCosts = costs(draft);
    }
  }

  /** Whether it would be better than the best plan so far. */
  private boolean isPromising(int[] choice) {
    Draft rival = best;
    for (int i = 0; rival != null && i < aims.size(); i++) {
      int order = Long.compare(cost(choice, aims.get(i)), rivalCosts[i]);
      if (order != 0) {
        return order < 0;
      }
    }
    return rival == null;
  }

  /**
   * The least that a plan could reach in an aim if it were as good as the best in all earlier ones.
   */
  long bound(Aim aim, Draft plan) {
    long bound = plan.value(aim);
    if (truncated) {
      return Math.min(bound, byRate(aim));
    }
    List<int[]> choices = new ArrayList<>(undecided);
    choices.addAll(open);
    for (int[] choice : choices) {
      boolean rivals = true;
      for (Aim earlier : aims.subList(0, aims.indexOf(aim))) {
        rivals &= cost(choice, earlier) <= plan.value(earlier);
      }
      if (rivals) {
        bound = Math.min(bound, cost(choice, aim));
      }
    }
    return bound;
  }

  /** What the pieces cost if each took the bar that is cheapest for its share of the metal. */
  private long byRate(Aim aim) {
    Certificate lengths = packer.certificates().get(0);
    double missing = lengths.worth(job.count);
    for (int room : job.offcutRooms) {
      missing -= lengths.best(room);
    }
    double least = Double.POSITIVE_INFINITY;
    for (Job.Stock stock : job.fresh) {
      least = Math.min(least, (double) stock.cost(aim) / lengths.best(stock.room));
    }
    return (long) Math.ceil(Math.max(0, missing) * least * (1 - 1e-12));
  }

  /** Whether every choice was tried and none left in doubt. */
  boolean isExhausted() {
    return open.isEmpty() && undecided.isEmpty() && !truncated;
  }

  /** Choices that cost just what a plan costs: every one, unless there are very many. */
  List<int[]> asDearAs(Draft plan) {
    List<int[]> equal = new ArrayList<>();
    visited = 0;
    addEqual(new int[job.fresh.length + 1], 0, costs(plan), equal);
    return equal;
  }

  /** Whether {@link #asDearAs} left some out. */
  boolean leftSomeOut() {
    return visited > MOST_VISITED;
  }

  private void addEqual(int[] choice, int at, long[] costs, List<int[]> equal) {
    if (at >= last()) {
      // What is missing of the new stock is made of the last length, what of the bars of offcuts.
      if (at == last()) {
        long length = costs[aims.indexOf(Aim.LEAST_NEW_STOCK)] - cost(choice, Aim.LEAST_NEW_STOCK);
        choice[at] = (int) Math.min(length / job.fresh[at].length, job.fresh[at].most);
      }
      long bars = costs[aims.indexOf(Aim.FEWEST_BARS)] - cost(choice, Aim.FEWEST_BARS);
      choice[job.fresh.length] = (int) Math.max(0, Math.min(bars, job.offcutRooms.length));
      if (Arrays.equals(costs(choice), costs)) {
        equal.add(choice.clone());
        visited += equal.size() >= MOST_EQUAL ? MOST_VISITED : 0;
      }
      visited++;
      choice[job.fresh.length] = 0;
      if (at == last()) {
        choice[at] = 0;
      }
      return;
    }
    while (choice[at] <= job.fresh[at].most && !exceeds(choice, costs) && !leftSomeOut()) {
      addEqual(choice, at + 1, costs, equal);
      choice[at]++;
    }
    choice[at] = 0;
  }

  private boolean exceeds(int[] choice, long[] costs) {
    for (int i = 0; i < costs.length; i++) {
      if (cost(choice, aims.get(i)) > costs[i]) {
        return true;
      }
    }
    return false;
  }

  /** The bars of a choice, longest new ones first. */
  int[] stock(int[] choice) {
    List<Integer> stock = new ArrayList<>();
    for (int t = 0; t < choice.length; t++) {
      for (int n = 0; n < choice[t]; n++) {
        stock.add(t < job.fresh.length ? t : -1 - n);
      }
    }
    return stock.stream().mapToInt(Integer::intValue).toArray();
  }

  private int last() {
    return job.fresh.length - 1;
  }

  /** All numbers of offcuts and of all new bars but the last, whose number follows from them. */
  private void openAll(int[] choice, int at) {
    if (at >= last()) {
      for (int offcuts = 0; offcuts <= job.offcutRooms.length && !truncated; offcuts++) {
        int[] opened = choice.clone();
        opened[job.fresh.length] = offcuts;
        raise(opened);
        if (isPromising(opened) && isPossible(opened)) {
          truncated = open.size() >= MOST_CHOICES;
          open.add(opened);
        }
      }
      truncated |= visited++ >= MOST_VISITED;
      return;
    }
    int most = Math.min(job.fresh[at].most, job.pieces());
    choice[at] = 0;
    while (choice[at] <= most && isPromising(choice) && !truncated) {
      openAll(choice, at + 1);
      choice[at]++;
    }
    choice[at] = 0;
  }

  /** Raises the number of the last new bars to what the certificates ask; false if it is that. */
  private boolean raise(int[] choice) {
    if (job.fresh.length == 0) {
      return false;
    }
    int last = last();
    int before = choice[last];
    for (Certificate certificate : packer.certificates()) {
      long missing = missing(certificate, choice);
      long each = certificate.best(job.fresh[last].room);
      if (missing > 0 && each > 0) {
        long more = choice[last] + (missing + each - 1) / each;
        choice[last] = (int) Math.min(more, job.fresh[last].most);
      }
    }
    return choice[last] > before;
  }

  private boolean isPossible(int[] choice) {
    for (Certificate certificate : packer.certificates()) {
      if (missing(certificate, choice) > 0) {
        return false;
      }
    }
    return true;
  }

  private long missing(Certificate certificate, int[] choice) {
    work.add(choice.length);
    long missing = certificate.worth(job.count);
    for (int t = 0; t < job.fresh.length; t++) {
      missing -= choice[t] * certificate.best(job.fresh[t].room);
    }
    for (int offcut = 0; offcut < choice[job.fresh.length]; offcut++) {
      missing -= certificate.best(job.offcutRooms[offcut]);
    }
    return missing;
  }

  private long cost(int[] choice, Aim aim) {
    long cost = aim == Aim.FEWEST_BARS ? choice[job.fresh.length] : 0;
    for (int t = 0; t < job.fresh.length; t++) {
      cost += choice[t] * job.fresh[t].cost(aim);
    }
    return cost;
  }

  private long[] costs(int[] choice) {
    return aims.stream().mapToLong(aim -> cost(choice, aim)).toArray();
  }

  private long[] costs(Draft draft) {
    return aims.stream().mapToLong(draft::value).toArray();
  }

  private int compare(int[] a, int[] b) {
    for (Aim aim : aims) {
      int order = Long.compare(cost(a, aim), cost(b, aim));
      if (order != 0) {
        return order;
      }
    }
    return 0;
  }
}
