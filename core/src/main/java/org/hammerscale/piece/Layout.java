package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Subscripts;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * A piece laid out on its cold bar: what to cut off, and where the centre punch goes, measured from
 * one end. Lengths are in the unit of the bar's width. The errors of estimated features add up
 * along the bar as if they all went the same way.
 *
 * <p>Saw kerf is not counted, nor is scale, unless the piece is laid out with a {@linkplain
 * Piece#layout(org.hammerscale.scale.HeatPlan) plan of its heats}. Then each stretch that is forged
 * to another section than the bar's carries an allowance of its own, and the marks behind it move
 * by it: a thin tip needs more than a stout shoulder, so that one proportion for all marks would
 * put each in the wrong place. A plain or bent stretch of the bar's own section gets none, since
 * the fire makes it thinner, not shorter; nor does one that only swells or is pierced between two
 * such sections, nor one with an allowance for the hand, which holds it. The fire's error adds to
 * that of the work as independent of it.
 *
 * <p>A layout that a {@link TrialLog} has corrected takes what the trials took, fire and hand
 * together; {@link #scaleAllowance} and {@link #scaleLoss} stay as the plan of the heats foretells.
 *
 * <p>Source: conservation of volume; for scale {@link ScaleLoss}.
 */
public final class Layout {
  private static final double NINETEEN_IN_TWENTY = 0.95;

  private final Piece piece;
  private final List<Estimate<Length>> stocks;
  private final List<Mark> marks;
  private final @Nullable ScaleLoss loss;
  private final @Nullable TrialLog log;
  private final @Nullable Correction correction; // by the log

  private Layout(
      Piece piece,
      List<Estimate<Length>> stocks,
      List<Mark> marks,
      @Nullable ScaleLoss loss,
      @Nullable TrialLog log,
      @Nullable Correction correction) {
    this.piece = piece;
    this.stocks = stocks;
    this.marks = marks;
    this.loss = loss;
    this.log = log;
    this.correction = correction;
  }

  static Layout of(Piece piece) {
    List<Feature> features = piece.features();
    List<Estimate<Length>> stocks = new ArrayList<>(features.size());
    List<Mark> marks = new ArrayList<>(features.size());
    Estimate<Length> position = Estimate.exact(zero(piece.bar()));
    for (int i = 0; i < features.size(); i++) {
      Estimate<Length> stock = features.get(i).stock(piece.bar().section());
      position = position.addDependent(stock);
      stocks.add(stock);
      marks.add(
          new Mark(
              position, features.get(i), i + 1 < features.size() ? features.get(i + 1) : null));
    }
    return new Layout(piece, stocks, List.copyOf(marks), null, null, null);
  }

  /** This layout with the fire's allowance moving its marks. */
  Layout with(ScaleLoss fire) {
    List<Mark> moved = new ArrayList<>(marks.size());
    Estimate<Length> allowance = Estimate.exact(zero(piece.bar()));
    for (int i = 0; i < marks.size(); i++) {
      allowance = allowance.addDependent(fire.allowance(piece.features().get(i)));
      moved.add(marks.get(i).movedBy(allowance));
    }
    return new Layout(piece, stocks, List.copyOf(moved), fire, null, null);
  }

  /** This layout with its marks where a log of trials puts them. */
  Layout correctedBy(TrialLog trials) {
    Correction corrected = Correction.of(this, trials);
    List<Mark> moved = new ArrayList<>(marks.size());
    Measure<Length> shift = zero(piece.bar());
    Estimate<Length> taken = nothing();
    for (int i = 0; i < marks.size(); i++) {
      shift = shift.add(corrected.shift(i));
      taken = taken.addDependent(corrected.taken(i));
      moved.add(marks.get(i).at(marks.get(i).position().likely().add(shift), taken));
    }
    return new Layout(piece, stocks, List.copyOf(moved), loss, trials, corrected);
  }

  /**
   * This layout on the marks of a rule, with enough bar 19 times in 20.
   *
   * @param rule what the smith marks by
   * @return cut length, marks from the reference, and trims
   */
  public MarkedBar on(Graduation<Length> rule) {
    return on(rule, NINETEEN_IN_TWENTY);
  }

  /**
   * This layout on the marks of a rule.
   *
   * @param rule what the smith marks by
   * @param odds how often each side of the reference mark shall be long enough, 0.5 to 0.9999
   * @return cut length, marks from the reference, and trims
   * @throws IllegalArgumentException if the odds are out of range
   */
  public MarkedBar on(Graduation<Length> rule, double odds) {
    return MarkedBar.of(this, Objects.requireNonNull(rule, "rule"), odds);
  }

  /** {@return the piece that is laid out} */
  public Piece piece() {
    return piece;
  }

  /**
   * The length of bar it uses.
   *
   * @return the length, scale included if the heats are planned; exact if all its features are and
   *     no scale is counted
   */
  public Estimate<Length> cutLength() {
    return marks.get(marks.size() - 1).position();
  }

  /** {@return the marks in order from the measured end; the last one is the cut} */
  public List<Mark> marks() {
    return marks;
  }

  /**
   * The finished length over all: the reaches of the features added up.
   *
   * @return the length, in the unit of the bar's width
   */
  public Measure<Length> finishedLength() {
    Measure<Length> length = zero(piece.bar());
    for (Feature feature : piece.features()) {
      length = length.add(feature.reach());
    }
    return length;
  }

  /**
   * The part of the {@linkplain #cutLength cut length} that makes good what the fire takes from the
   * stretches that are forged to another section.
   *
   * @return the length of bar, in the unit of its width; exactly zero if no heats are planned
   */
  public Estimate<Length> scaleAllowance() {
    Estimate<Length> allowance = Estimate.exact(zero(piece.bar()));
    if (loss != null) {
      for (Feature feature : piece.features()) {
        allowance = allowance.addDependent(loss.allowance(feature));
      }
    }
    return allowance;
  }

  /**
   * The metal that the fire takes from the whole piece, from stretches that come out thinner too:
   * by this the finished piece is lighter than what was cut for it and not otherwise lost.
   *
   * @return the mass: pounds for a section in inches, else kilograms; exactly zero if no heats are
   *     planned
   */
  public Estimate<Mass> scaleLoss() {
    Estimate<Mass> mass = Estimate.exact(piece.bar().mass(zero(piece.bar())));
    if (loss != null) {
      for (Feature feature : piece.features()) {
        mass = mass.addDependent(loss.taken(feature));
      }
    }
    return mass;
  }

  /**
   * The mass of the bar to cut.
   *
   * @return the mass of the likely {@linkplain #cutLength cut length}, before the fire takes its
   *     scale
   */
  public Measure<Mass> mass() {
    return piece.bar().mass(cutLength().likely());
  }

  /**
   * What the features warn of, and where neighbours do not meet in section.
   *
   * @return the cautions, each once
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    List<Feature> features = piece.features();
    for (int i = 0; i < features.size(); i++) {
      features.get(i).cautions().stream()
          .filter(caution -> !cautions.contains(caution))
          .forEach(cautions::add);
      if (i > 0 && !features.get(i - 1).end().meets(features.get(i).start())) {
        cautions.add(step(features.get(i - 1), features.get(i)));
      }
    }
    if (loss != null) {
      cautions.addAll(loss.cautions());
      features.stream()
          .flatMap(feature -> loss.cautions(feature).stream())
          .filter(caution -> !cautions.contains(caution))
          .forEach(cautions::add);
    }
    if (log != null) {
      cautions.addAll(log.cautions());
    }
    return List.copyOf(cautions);
  }

  /** {@return how the cut length was added up} */
  public Working working() {
    Working working =
        Notes.taken("length of bar for the piece", unit(piece.bar()), this::sum)
            .withSource(
                Source.computed("conservation of volume: metal of a feature ÷ section of the bar"))
            .withCautions(cautions());
    return loss == null
        ? working
        : working.withSource(loss.law().source()).withSource(loss.plan().atmosphere().source());
  }

  private double sum(Notes n) {
    double total = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < stocks.size(); i++) {
      String symbol = "s" + Subscripts.of(i + 1);
      String meaning = "bar used by the " + piece.features().get(i).name();
      total += n.given(symbol, meaning, stocks.get(i).likely().in(unit(piece.bar())));
      formula.append(i == 0 ? "" : " + ").append(symbol);
    }
    if (loss != null) {
      total += allowances(n, loss);
      formula.append(" + a");
    }
    if (correction != null) {
      total += n.given("c", "correction by " + trials(), shift(correction));
      formula.append(" + c");
    }
    return n.length("C", "cut length", formula.toString(), total);
  }

  private double shift(Correction corrected) {
    Measure<Length> shift = zero(piece.bar());
    for (int i = 0; i < stocks.size(); i++) {
      shift = shift.add(corrected.shift(i));
    }
    return shift.in(unit(piece.bar()));
  }

  private String trials() {
    int count = log == null ? 0 : log.trials().size();
    return count + (count == 1 ? " trial" : " trials");
  }

  private double allowances(Notes n, ScaleLoss fire) {
    double total = 0;
    StringBuilder formula = new StringBuilder();
    for (int i = 0; i < stocks.size(); i++) {
      Feature feature = piece.features().get(i);
      double allowance = fire.allowance(feature).likely().in(unit(piece.bar()));
      if (allowance != 0) {
        String symbol = "a" + Subscripts.of(i + 1);
        total += n.given(symbol, "bar that the fire takes for the " + feature.name(), allowance);
        formula.append(formula.isEmpty() ? "" : " + ").append(symbol);
      }
    }
    return n.length(
        "a",
        "scale allowance, " + fire.plan(),
        formula.isEmpty() ? "0" : formula.toString(),
        total);
  }

  private static Caution step(Feature before, Feature after) {
    return Caution.limit(
        "the "
            + before.name()
            + " ends in "
            + before.end()
            + " but the "
            + after.name()
            + " begins with "
            + after.start()
            + ": put a taper or a shoulder between, or make the sections meet",
        Source.computed("conservation of volume counts no metal for a sudden step"));
  }

  /** The log that has corrected it; empty if it is the book's. */
  Optional<TrialLog> log() {
    return Optional.ofNullable(log);
  }

  /** What a log with trials has taught of an end. */
  Optional<EndTrials> learnedAt(PieceEnd end) {
    return log().flatMap(trials -> trials.learnedAt(end)).filter(each -> each.count() > 0);
  }

  /** By how much a log has moved what a feature takes. */
  Measure<Length> correctionOf(int index) {
    return correction == null ? zero(piece.bar()) : correction.shift(index);
  }

  /** What a feature takes of the bar, scale not counted but where a log has corrected it. */
  Estimate<Length> stock(int index) {
    return correction == null ? stocks.get(index) : correction.taken(index);
  }

  /** What the fire takes from a feature, as bar, unless a log has it counted already. */
  Estimate<Length> allowance(int index) {
    return loss == null || correction != null
        ? nothing()
        : loss.allowance(piece.features().get(index));
  }

  /** No length of bar. */
  Estimate<Length> nothing() {
    return Estimate.exact(zero(piece.bar()));
  }

  private static Measure<Length> zero(Bar bar) {
    return bar.section().width().withValue(0);
  }

  private static Unit<Length> unit(Bar bar) {
    return bar.section().width().getUnit();
  }

  /** Cut length and marks. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut ").append(cutLength()).append(", marks at ");
    for (int i = 0; i < marks.size(); i++) {
      text.append(i == 0 ? "" : ", ").append(marks.get(i).position().likely());
    }
    return text.toString();
  }
}
