package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.hammerscale.examples.order.Blame;
import org.hammerscale.examples.order.OrderColumn;
import org.hammerscale.examples.order.SetItem;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.piece.Layout;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialBook;
import org.hammerscale.piece.TrialLog;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.units.Measure;

/**
 * One leaf of a job: its bar on the rule by the book and by the trials, how many are done, the
 * heats of each stretch of its taper, its holes.
 */
final class LeafPlan {
  /**
   * How many pieces the book's likely length counts for once there are trials: few, since the book
   * errs by its shop and its fire, which are the same for all leaves of an order.
   */
  private static final double BOOK_WORTH = 0.1;

  private final String name;
  private final int count;
  private final boolean learns;
  private final MarkedBar planned;
  private final MarkedBar bar;
  private final int done;
  private final int stretches;
  private final Optional<Heats> taperHeats;
  private final HolePlan holes;
  private final List<String> trialFaults = new ArrayList<>();

  /**
   * A leaf.
   *
   * @param name what a file of trials calls it
   * @param thin how its tip cools
   * @param trials what finished pieces took; empty if no log is kept
   * @throws Blame if its values cannot be put together
   */
  LeafPlan(
      String name,
      OrderColumn job,
      HingePair pair,
      Leaf leaf,
      Cooling thin,
      Optional<TrialBook> trials) {
    this.name = name;
    this.count = job.count(HingeItem.PAIRS);
    this.learns = trials.isPresent();
    Measure<Length> taper =
        job.length(leaf == Leaf.FIRST ? HingeItem.POST_TAPER : HingeItem.DOOR_TAPER);
    this.stretches = WorkRate.stretches(taper);
    this.taperHeats =
        stretches > 0
            ? Optional.of(
                Blame.on(
                    SetItem.HEAT,
                    () ->
                        Heats.forWork(
                            job.as(WorkRate.class, HingeItem.TAPER_WORK)
                                .of(taper.divide(stretches)),
                            thin)))
            : Optional.empty();
    this.planned = planned(job, pair.leaf(leaf)).on(job.graduation());
    this.holes = Blame.on(HolePlan.holesOf(leaf), () -> HolePlan.of(job, pair, leaf));
    TrialLog log = log(trials.orElseGet(TrialBook::empty));
    this.done = log.trials().size();
    this.bar = done == 0 ? planned : log.layout().on(job.graduation());
  }

  /**
   * What is drawn thinner is what loses length to scale: the taper, each stretch in its own heats.
   */
  private Layout planned(OrderColumn job, Piece piece) {
    return taperHeats
        .map(
            drawn ->
                piece.layout(
                    HeatPlan.soaking(
                            job.measure(SetItem.HEAT, Temperature.class),
                            job.measure(HingeItem.TIME_AT_HEAT, Time.class))
                        .inHeats(drawn.count())))
        .orElseGet(piece::layout);
  }

  /** The trials of the leaf; what does not fit it is told and left out. */
  private TrialLog log(TrialBook trials) {
    TrialLog log = TrialLog.of(planned.layout()).withMeanWorth(BOOK_WORTH);
    for (Trial trial : trials.of(name)) {
      try {
        log = log.with(trial);
      } catch (IllegalArgumentException e) {
        trialFaults.add(name + ": " + e.getMessage());
      }
    }
    return log;
  }

  /** What it is called in a file of trials. */
  String name() {
    return name;
  }

  /** In how many stretches its taper is drawn; none if it has no taper. */
  int stretches() {
    return stretches;
  }

  /** The heats for each stretch of its taper; none if it has none. */
  Optional<Heats> taperHeats() {
    return taperHeats;
  }

  HolePlan holes() {
    return holes;
  }

  /** How many its trials say are done. */
  int done() {
    return done;
  }

  /** How many are still to be forged. */
  int left() {
    return Math.max(0, count - done);
  }

  /** Whether the first is to tell how the others are cut. */
  boolean isTrial() {
    return learns && done == 0;
  }

  /** How many to cut now: where a log is kept the first alone, then what is left. */
  int toCut() {
    return isTrial() ? 1 : left();
  }

  /** What the trials save of each that is left: less than nothing if they add to it. */
  Measure<Length> saved() {
    return planned.cutLength().subtract(bar.cutLength());
  }

  /** Trials that do not fit it. */
  List<String> trialFaults() {
    return Collections.unmodifiableList(trialFaults);
  }

  /** Its bar, on the rule, by its trials: enough 19 times in 20. */
  MarkedBar bar() {
    return bar;
  }
}
