package org.hammerscale.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The means of the search against one another: what one proves no other may refute. */
class PackerTest {
  private static final long SEED = 20;

  private static Job job(Random random, int[] rooms) {
    int[] size = random.ints(1 + random.nextInt(5), 4, 60).distinct().sorted().toArray();
    int[] falling = IntStream.range(0, size.length).map(i -> size[size.length - 1 - i]).toArray();
    int[] count = random.ints(size.length, 1, 4).toArray();
    return new Job(0, falling, count, new Job.Stock[0], rooms);
  }

  @Test
  void certificatesAreNeverRefutedByTryingEveryWay() {
    Random random = new Random(SEED);
    int packed = 0;
    int refuted = 0;
    for (int n = 0; n < 3000; n++) {
      int[] rooms = {100, 60 + random.nextInt(30), 40};
      int[] bars = {1 + random.nextInt(3), random.nextInt(3), random.nextInt(2)};
      Job job = job(random, rooms);
      Work work = new Work(Long.MAX_VALUE, steps -> true);
      Completion all = new Completion(job, rooms, bars, List.of(), work, Long.MAX_VALUE);
      boolean fits = all.succeeds();
      assertFalse(all.gaveUp());
      Relaxation relaxed = new Relaxation(job, rooms, bars, work, Long.MAX_VALUE);
      if (fits) {
        packed++;
        assertTrue(relaxed.packsAll());
        assertEquals(job.pieces(), IntStream.range(0, all.used()).map(b -> sum(all, b)).sum());
      } else if (relaxed.certificate() != null) {
        refuted++;
      }
    }
    assertTrue(packed > 300 && refuted > 300, packed + " packed, " + refuted + " refuted");
  }

  private static int sum(Completion all, int bar) {
    return IntStream.of(all.pattern(bar)).sum();
  }

  /** Three pieces of more than half a bar: their length would fit two bars, they do not. */
  @Test
  void provesMoreThanThatTheMetalSuffices() {
    Job job = new Job(0, new int[] {51, 10}, new int[] {3, 4}, new Job.Stock[0], new int[] {100});
    Work work = new Work(Long.MAX_VALUE, steps -> true);
    Relaxation relaxed = new Relaxation(job, new int[] {100}, new int[] {2}, work, Long.MAX_VALUE);
    assertTrue(relaxed.certificate() != null);
    assertFalse(relaxed.packsAll());
  }
}
