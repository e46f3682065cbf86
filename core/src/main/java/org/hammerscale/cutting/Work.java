package org.hammerscale.cutting;

import java.util.function.LongPredicate;

/** The work done, in steps of the search, its limit, and who is told of it. */
final class Work {
  private static final long TELL_EVERY = 200_000;

  private final long limit;
  private final LongPredicate goOn;
  private long done;
  private long toldAt = TELL_EVERY;
  private boolean stopped;

  Work(long limit, LongPredicate goOn) {
    this.limit = limit;
    this.goOn = goOn;
  }

  void add(long steps) {
    done += steps;
    if (done >= toldAt && !stopped) {
      toldAt = done + TELL_EVERY;
      stopped = !goOn.test(done);
    }
  }

  long done() {
    return done;
  }

  boolean isOver() {
    return stopped || done >= limit;
  }

  /** The same with a nearer end of its own, for one of several attempts. */
  boolean isOver(long end) {
    return isOver() || done >= end;
  }
}
