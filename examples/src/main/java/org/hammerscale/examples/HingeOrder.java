package org.hammerscale.examples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.forging.Taper;
import org.hammerscale.heat.Contraction;
import org.hammerscale.heat.Cooling;
import org.hammerscale.heat.Heats;
import org.hammerscale.hinge.Bore;
import org.hammerscale.hinge.Drift;
import org.hammerscale.hinge.HingePair;
import org.hammerscale.hinge.HingePairBuilder;
import org.hammerscale.hinge.Knuckles;
import org.hammerscale.hinge.Leaf;
import org.hammerscale.hinge.Pin;
import org.hammerscale.hinge.Swage;
import org.hammerscale.hinge.ToolChoice;
import org.hammerscale.hinge.ToolRack;
import org.hammerscale.piece.MarkedBar;
import org.hammerscale.piece.Piece;
import org.hammerscale.piece.Trial;
import org.hammerscale.piece.TrialBook;
import org.hammerscale.piece.TrialLog;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Plain;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.LengthFormat;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;

/** One job of an order: so many pairs of leaves, all alike, and what the fire does to them. */
final class HingeOrder {
  /** The door leaf is the first on a sheet. */
  static final List<Leaf> LEAVES = List.of(Leaf.SECOND, Leaf.FIRST);

  /**
   * How many pieces the book's likely length counts for once there are trials: few, since the book
   * errs by its shop and its fire, which are the same for all leaves of an order.
   */
  private static final double BOOK_WORTH = 0.1;

  /**
   * One leaf: its bar on the rule by the book and by the trials, how many are done, the heats of
   * each stretch of its taper, its holes.
   */
  private record Work(
      MarkedBar planned,
      MarkedBar bar,
      int done,
      int stretches,
      Optional<Heats> taperHeats,
      HolePlan holes) {}

  private final String name;
  private final int pairs;
  private final boolean learns;
  private final Graduation<Length> graduation;
  private final LengthFormat rule;
  private final HingePair pair;
  private final Measure<Length> gapAsked;
  private final Measure<Length> kerf;
  private final Optional<Measure<Length>> centres;
  private final Contraction contraction;
  private final WorkRate taperWork;
  private final Heats barrelHeats;
  private final List<String> trialFaults = new ArrayList<>();
  private final Map<Leaf, Work> leaves = new EnumMap<>(Leaf.class);
  private final Drift drift;
  private final ToolChoice driftChoice;
  private final Swage swage;
  private final ToolChoice swageChoice;

  private HingeOrder(OrderColumn job, HingePair pair, Section tip, Optional<TrialBook> trials) {
    this.name = job.name();
    this.learns = trials.isPresent();
    this.pairs = job.count(OrderItem.PAIRS);
    this.graduation = job.graduation();
    this.rule = LengthFormat.to(graduation);
    this.pair = pair;
    this.gapAsked = job.lengthOrZero(OrderItem.JOINT_GAP);
    this.centres = job.centres();
    this.taperWork = job.taperWork();
    this.kerf = job.lengthOrZero(OrderItem.KERF);
    Blame.on(OrderItem.KERF, () -> tongues(kerf));
    this.contraction =
        Blame.on(OrderItem.HEAT, () -> Contraction.from(job.heat(), pair.strap().material()));
    // The barrel cools as the bar does; at the taper the thin tip is cold first.
    Cooling bar = Blame.on(OrderItem.HEAT, () -> Cooling.from(job.heat(), pair.strap()));
    this.barrelHeats =
        Blame.on(OrderItem.HEAT, () -> Heats.forWork(job.minutes(OrderItem.BARREL_WORK), bar));
    for (Leaf leaf : Leaf.values()) {
      leaves.put(leaf, work(job, leaf, bar.withThinnest(tip), trials.orElseGet(TrialBook::empty)));
    }
    this.drift = pair.drift(contraction);
    this.swage = pair.swage(contraction);
    ToolRack rack = ToolRack.every(toolSteps());
    this.driftChoice = Blame.on(OrderItem.CLEARANCE, () -> drift.chosenFrom(rack, pair.bore()));
    this.swageChoice = swage.chosenFrom(rack);
  }

  private Work work(OrderColumn job, Leaf leaf, Cooling thin, TrialBook trials) {
    Piece piece = pair.leaf(leaf);
    Measure<Length> taper =
        job.lengthOrZero(leaf == Leaf.FIRST ? OrderItem.POST_TAPER : OrderItem.DOOR_TAPER);
    int stretches = WorkRate.stretches(taper);
    Optional<Heats> heats =
        stretches > 0
            ? Optional.of(
                Blame.on(
                    OrderItem.HEAT,
                    () -> Heats.forWork(taperWork.of(taper.divide(stretches)), thin)))
            : Optional.empty();
    // What is drawn thinner is what loses length to scale: the taper, each stretch in its own
    // heats.
    MarkedBar planned =
        heats
            .map(
                drawn ->
                    piece.layout(
                        HeatPlan.soaking(job.heat(), job.minutes(OrderItem.TIME_AT_HEAT))
                            .inHeats(drawn.count())))
            .orElseGet(piece::layout)
            .on(graduation);
    HolePlan holes = Blame.on(HolePlan.holesOf(leaf), () -> HolePlan.of(job, pair, leaf));
    TrialLog log = log(planned, leaf, trials);
    int done = log.trials().size();
    MarkedBar bar = done == 0 ? planned : log.layout().on(graduation);
    return new Work(planned, bar, done, stretches, heats, holes);
  }

  /** The trials of a leaf; what does not fit it is told and left out. */
  private TrialLog log(MarkedBar planned, Leaf leaf, TrialBook trials) {
    TrialLog log = TrialLog.of(planned.layout()).withMeanWorth(BOOK_WORTH);
    for (Trial trial : trials.of(pieceName(leaf))) {
      try {
        log = log.with(trial);
      } catch (IllegalArgumentException e) {
        trialFaults.add(pieceName(leaf) + ": " + e.getMessage());
      }
    }
    return log;
  }

  /** What is punched out beside the saw cuts; a saw that is too coarse is refused. */
  private List<Measure<Length>> tongues(Measure<Length> kerf) {
    List<Measure<Length>> tongues = new ArrayList<>();
    for (Leaf leaf : Leaf.values()) {
      pair.slotsOf(leaf).forEach(slot -> tongues.add(slot.tongue(kerf)));
    }
    return tongues;
  }

  /**
   * The job in a column of an order file.
   *
   * @param trials what finished pieces took; empty if no log is kept
   * @throws Blame if its values cannot be put together
   */
  static HingeOrder from(OrderColumn job, Optional<TrialBook> trials) {
    Section section =
        Section.flat(job.length(OrderItem.BAR_WIDTH), job.length(OrderItem.BAR_THICKNESS));
    Section tip = rectangle(job.length(OrderItem.TIP_WIDTH), job.length(OrderItem.TIP_THICKNESS));
    Bore bore =
        Bore.forPin(job.length(OrderItem.PIN))
            .clearing(job.lengthOrZero(OrderItem.CLEARANCE))
            .coated(job.lengthOrZero(OrderItem.COAT));
    Knuckles knuckles =
        Blame.on(
            OrderItem.JOINT_GAP,
            () ->
                Knuckles.across(section.width())
                    .into(job.count(OrderItem.KNUCKLES))
                    .withGap(job.lengthOrZero(OrderItem.JOINT_GAP)));
    HingePairBuilder asked =
        HingePair.of(Bar.of(section, Material.MILD_STEEL), bore)
            .knuckles(knuckles)
            .opening(job.opening(), job.hanging())
            .handed(job.hand())
            .leaf(Leaf.SECOND, leaf(section, tip, job, OrderItem.DOOR_LEAF, OrderItem.DOOR_TAPER))
            .leaf(Leaf.FIRST, leaf(section, tip, job, OrderItem.POST_LEAF, OrderItem.POST_TAPER));
    Blame.on(OrderItem.OPENING, asked::pair);
    Graduation<Length> marks = job.graduation();
    return new HingeOrder(job, Blame.on(OrderItem.GRADUATION, asked.on(marks)::pair), tip, trials);
  }

  private static Feature[] leaf(
      Section section, Section tip, OrderColumn job, OrderItem length, OrderItem tapered) {
    Measure<Length> whole = job.length(length);
    Measure<Length> taper = job.lengthOrZero(tapered);
    List<Feature> features = new ArrayList<>();
    if (taper.isLessThan(whole)) {
      features.add(Plain.of(section, whole.subtract(taper)));
    }
    if (taper.getValue() > 0) {
      features.add(Taper.between(section, tip, taper));
    }
    return features.toArray(new Feature[0]);
  }

  private static Section rectangle(Measure<Length> width, Measure<Length> thickness) {
    return width.isLessThan(thickness)
        ? Section.onEdge(width, thickness)
        : Section.flat(width, thickness);
  }

  /** What the customer calls a leaf. */
  static String called(Leaf leaf) {
    return leaf == Leaf.FIRST ? "post leaf" : "door leaf";
  }

  String name() {
    return name;
  }

  int pairs() {
    return pairs;
  }

  Graduation<Length> graduation() {
    return graduation;
  }

  /** The rule as its readings are written. */
  LengthFormat rule() {
    return rule;
  }

  HingePair pair() {
    return pair;
  }

  /** The gap that the order asks for; that of the pair lies on the rule. */
  Measure<Length> gapAsked() {
    return gapAsked;
  }

  /** What the saw takes, of a slot and of a bar. */
  Measure<Length> kerf() {
    return kerf;
  }

  /** From one hinge of the door to the next. */
  Optional<Measure<Length>> centres() {
    return centres;
  }

  Contraction contraction() {
    return contraction;
  }

  WorkRate taperWork() {
    return taperWork;
  }

  Heats barrelHeats() {
    return barrelHeats;
  }

  /** In how many stretches the taper of a leaf is drawn; none if it has no taper. */
  int stretches(Leaf leaf) {
    return work(leaf).stretches;
  }

  /** The heats for each stretch of the taper of a leaf; none if it has none. */
  Optional<Heats> taperHeats(Leaf leaf) {
    return work(leaf).taperHeats;
  }

  HolePlan holes(Leaf leaf) {
    return work(leaf).holes;
  }

  /** What a leaf is called in a file of trials. */
  String pieceName(Leaf leaf) {
    return name + " " + called(leaf);
  }

  /** How many of a leaf its trials say are done. */
  int done(Leaf leaf) {
    return work(leaf).done;
  }

  /** How many of a leaf are still to be forged. */
  int left(Leaf leaf) {
    return Math.max(0, pairs - work(leaf).done);
  }

  /** Whether the first of a leaf is to tell how the others are cut. */
  boolean isTrial(Leaf leaf) {
    return learns && done(leaf) == 0;
  }

  /** How many of a leaf to cut now: where a log is kept the first alone, then what is left. */
  int toCut(Leaf leaf) {
    return isTrial(leaf) ? 1 : left(leaf);
  }

  /** How many pins to cut now: one with each door leaf. */
  int pinsToCut() {
    return toCut(Leaf.SECOND);
  }

  /** What the trials save of each leaf that is left: less than nothing if they add to it. */
  Measure<Length> saved(Leaf leaf) {
    return work(leaf).planned.cutLength().subtract(work(leaf).bar.cutLength());
  }

  /** Trials that do not fit their leaf. */
  List<String> trialFaults() {
    return Collections.unmodifiableList(trialFaults);
  }

  /** A leaf on its bar, on the rule, by its trials: enough 19 times in 20. */
  MarkedBar bar(Leaf leaf) {
    return work(leaf).bar;
  }

  private Work work(Leaf leaf) {
    return Objects.requireNonNull(leaves.get(leaf));
  }

  boolean isInches() {
    return pair.bore().pin().getUnit().equals(ShopUnits.INCH);
  }

  /** Tools come in sixty-fourths or half millimetres. */
  Graduation<Length> toolSteps() {
    return isInches() ? Graduation.SIXTY_FOURTH : Graduation.HALF_MILLIMETRE;
  }

  Drift drift() {
    return drift;
  }

  /** The drift as the shop has it: the size that leaves the clearance nearest to that asked for. */
  ToolChoice driftChoice() {
    return driftChoice;
  }

  Swage swage() {
    return swage;
  }

  /** The swage as the shop has it: the nearest size. */
  ToolChoice swageChoice() {
    return swageChoice;
  }

  /** The pin as it is cut: a head forged on one end beforehand, the other peened over low. */
  Pin pin() {
    return pair.pin().headed(Pin.Head.FORGED, Pin.Head.LOW_PEEN);
  }

  Estimate<Length> pinLength() {
    return pin().length(pair.knuckles().width());
  }

  /** The pin's length on the rule, enough for both heads. */
  Measure<Length> pinCut() {
    return pinLength().high().upTo(graduation);
  }

  /** The round bar that the pin is cut from. */
  Bar pinBar() {
    return Bar.of(Section.round(pair.bore().pin()), Material.MILD_STEEL);
  }
}
