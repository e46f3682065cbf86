package org.hammerscale.cutting;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The whole search: first the material, then the leftover, then the patterns. */
final class CutSearch {
  private final Job job;
  private final List<Aim> aims;
  private final Work work;
  private final Map<Aim, Long> bounds = new EnumMap<>(Aim.class);
  private @Nullable Draft plan;
  private boolean impossible;

  /**
   * Searches.
   *
   * @param aims all five, in rank
   */
  CutSearch(Job job, List<Aim> aims, Work work) {
    this.job = job;
    this.aims = aims;
    this.work = work;
    search();
  }

  /** The best plan found; null if there is none. */
  @Nullable Draft plan() {
    return plan;
  }

  /** Whether it is certain that there is no plan. */
  boolean isImpossible() {
    return impossible;
  }

  /** No plan that is as good in the earlier aims is better in this one. */
  long bound(Aim aim) {
    return bounds.getOrDefault(aim, 0L);
  }

  private void search() {
    List<Aim> material = aims.stream().filter(Aim::isOfMaterial).toList();
    Packer packer = new Packer(job, work);
    StockChoice choice = new StockChoice(job, material, packer, work);
    Draft best = choice.best();
    if (best == null) {
      impossible = choice.isExhausted();
      return;
    }
    material.forEach(aim -> bounds.put(aim, choice.bound(aim, best)));
    List<int[]> choices = choice.asDearAs(best);
    Leftover leftover = new Leftover(job, packer, work, best, choice, choices);
    bounds.put(Aim.LONGEST_LEFTOVER, leftover.bound());
    bounds.put(Aim.FEWEST_PATTERNS, fewest(best, choice, choices));
    plan = fewerPatterns(best, leftover.best());
  }

  private long fewest(Draft best, StockChoice choice, List<int[]> choices) {
    // Among choices left out there may be one whose bars are all alike.
    return choice.leftSomeOut() ? 1 : Repeats.bound(job, best.stock.length, choices);
  }

  private Draft fewerPatterns(Draft best, Draft leaving) {
    Draft better = leaving.isBetterThan(best, aims) ? leaving : best;
    Repeats repeats = new Repeats(job, work);
    better = repeats.improve(better, best.stock, Draft.rooms(job, best.stock), aims);
    int[] rooms = Draft.rooms(job, leaving.stock);
    int longest = 0;
    for (int bar = 0; bar < rooms.length; bar++) {
      if (left(leaving, bar) > left(leaving, longest)) {
        longest = bar;
      }
    }
    if (left(leaving, longest) > 0) {
      rooms[longest] -= job.kerf + left(leaving, longest);
    }
    return repeats.improve(better, leaving.stock, rooms, aims);
  }

  private int left(Draft draft, int bar) {
    return job.leftover(draft.room(bar), draft.patterns[bar]);
  }
}
