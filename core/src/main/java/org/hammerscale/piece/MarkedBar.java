package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * A layout as it goes to the bench: on the marks of a rule, told from the reference mark, with
 * enough bar for given odds. What the rule and the odds add goes to the trimmed ends, so that no
 * stretch between two marks is cut short.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Feature eye = Barrel.around(inches("1/2"), strap.section());
 * Piece leaf = Piece.of(strap, eye, Plain.of(strap.section(), inches(9)), Taper.between(strap.section(), Section.flat(inches("3/4"), inches("1/8")), inches(6)));
 * MarkedBar bar = leaf.withReferenceAfter(1).trimmedAt(PieceEnd.FIRST, PieceEnd.LAST).layout().on(SIXTEENTH);
 * bar.cutLength()                             // 14 7/8 in
 * bar.reference()                             // 2 3/8 in  a full turn in front of the leaf
 * bar.trims().get(0).keptFromReference()      // 1 15/16 in  cut the strip to this, then roll it
 * bar.marks().get(1)                          // 9 in towards the last end: plain stretch | taper
 * }</pre>
 *
 * <p>Each side of the reference mark is enough with the odds asked for: a quantile of what its
 * features take together, {@linkplain org.hammerscale.units.Estimate#bound as their estimates
 * combine}. The mark between two stretches is the nearest of the rule, counted from the reference,
 * so that errors do not add up along the bar.
 */
public final class MarkedBar {
  private static final Source SHORT_HOLD =
      Source.commonPractice("what is left of the bar is held in the hand or the tongs");

  private final Layout layout;
  private final Graduation<Length> rule;
  private final double odds;
  private final Side front;
  private final Side behind;

  private MarkedBar(Layout layout, Graduation<Length> rule, double odds) {
    this.layout = layout;
    this.rule = rule;
    this.odds = odds;
    this.front = Side.of(layout, PieceEnd.FIRST, rule, odds);
    this.behind = Side.of(layout, PieceEnd.LAST, rule, odds);
  }

  static MarkedBar of(Layout layout, Graduation<Length> rule, double odds) {
    return new MarkedBar(layout, rule, odds);
  }

  /** {@return the layout before it was put on the rule} */
  public Layout layout() {
    return layout;
  }

  /** {@return what it is marked by} */
  public Graduation<Length> rule() {
    return rule;
  }

  /** {@return how often each side of the reference mark is long enough} */
  public double odds() {
    return odds;
  }

  /** {@return the length to cut off the bar, on a mark of the rule} */
  public Measure<Length> cutLength() {
    return front.length().add(behind.length());
  }

  /**
   * What rule, odds and trims add to the likely length.
   *
   * @return the length of bar, in its unit; negative where no end is trimmed and the rule rounds
   *     down
   */
  public Measure<Length> added() {
    return cutLength().subtract(layout.cutLength().likely());
  }

  /** {@return how far the reference mark lies from the first end of the cut bar, on the rule} */
  public Measure<Length> reference() {
    return front.length();
  }

  /** {@return the marks between features in order from the first end, the reference among them} */
  public List<BenchMark> marks() {
    List<Feature> features = layout.piece().features();
    int reference = layout.piece().featuresBeforeReference();
    List<Optional<Feature>> movers = movers();
    List<BenchMark> marks = new ArrayList<>(features.size());
    for (int before = 1; before < features.size(); before++) {
      Side side = before < reference ? front : behind;
      Measure<Length> distance = side.distanceOf(before);
      Measure<Length> along =
          side == front ? reference().subtract(distance) : reference().add(distance);
      marks.add(
          new BenchMark(
              side.end(), distance, along, layout.marks().get(before - 1), movers.get(before)));
    }
    return List.copyOf(marks);
  }

  /**
   * The marks whose distance from the reference mark still holds when the features up to one have
   * been worked, in the {@linkplain Piece#order order of the work}.
   *
   * @param number of the feature last worked, from 1 at the first end
   * @return the marks that still hold, in order from the first end
   * @throws IllegalArgumentException if there is no such feature
   */
  public List<BenchMark> marksHoldingAfter(int number) {
    List<Integer> order = layout.piece().order();
    int last = order.indexOf(number);
    if (last < 0) {
      throw new IllegalArgumentException(
          "number must be from 1 to " + order.size() + ", was " + number + "; count the features");
    }
    Set<Integer> moved = new HashSet<>(order.subList(0, last + 1));
    moved.removeIf(each -> !layout.piece().changesLength(each));
    List<BenchMark> holding = new ArrayList<>();
    List<BenchMark> all = marks();
    int reference = layout.piece().featuresBeforeReference();
    int from = reference; // the outermost boundaries on either side that nothing has moved
    while (from > 0 && !moved.contains(from)) {
      from--;
    }
    int to = reference;
    while (to < order.size() && !moved.contains(to + 1)) {
      to++;
    }
    for (int before = Math.max(from, 1); before <= Math.min(to, all.size()); before++) {
      holding.add(all.get(before - 1));
    }
    return List.copyOf(holding);
  }

  /** {@return what is cut off at the trimmed ends, the first end first} */
  public List<Trim> trims() {
    List<Trim> trims = new ArrayList<>();
    front.trim().ifPresent(trims::add);
    behind.trim().ifPresent(trims::add);
    return List.copyOf(trims);
  }

  /**
   * What is left of the bar to hold while the piece is forged on its end, its last end foremost,
   * and cut off at its first afterwards.
   *
   * @param barLength the length of the bar it is forged on, at least the {@link #cutLength}
   * @return the length left, exact
   * @throws IllegalArgumentException if the bar is shorter
   */
  public Measure<Length> leftToHold(Quantity<Length> barLength) {
    Measure<Length> bar = Arguments.positive("barLength", barLength);
    Arguments.atLeast("barLength", bar, "the cut length", cutLength(), "take a longer bar");
    return bar.to(cutLength().getUnit()).subtract(cutLength());
  }

  /**
   * What to know before forging it on the end of a bar.
   *
   * @param barLength the length of the bar, at least the {@link #cutLength}
   * @param holding what the smith wants to hold, not negative
   * @return a caution if less is left; else none
   * @throws IllegalArgumentException if a length is out of range
   */
  public List<Caution> holdingCautions(Quantity<Length> barLength, Quantity<Length> holding) {
    Measure<Length> left = leftToHold(barLength);
    Measure<Length> wanted = Arguments.notNegative("holding", holding);
    return left.isLessThan(wanted)
        ? List.of(
            Caution.limit(
                left
                    + " of the bar is left to hold, less than "
                    + wanted
                    + ": cut the piece off first and hold it with tongs, or take a longer bar",
                SHORT_HOLD))
        : List.of();
  }

  /** {@return where slack has no trimmed end to go to; else none} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    front.caution().ifPresent(cautions::add);
    behind.caution().ifPresent(cautions::add);
    return List.copyOf(cautions);
  }

  /** Of each boundary the feature nearest to the reference, on the way to it, that moves it. */
  private List<Optional<Feature>> movers() {
    List<Feature> features = layout.piece().features();
    int reference = layout.piece().featuresBeforeReference();
    List<Optional<Feature>> movers =
        new ArrayList<>(Collections.nCopies(features.size() + 1, Optional.empty()));
    for (int before = reference + 1; before <= features.size(); before++) {
      movers.set(before, firstOf(movers.get(before - 1), before));
    }
    for (int before = reference - 1; before >= 0; before--) {
      movers.set(before, firstOf(movers.get(before + 1), before + 1));
    }
    return movers;
  }

  private Optional<Feature> firstOf(Optional<Feature> nearer, int number) {
    return nearer.isPresent() || !layout.piece().changesLength(number)
        ? nearer
        : Optional.of(layout.piece().features().get(number - 1));
  }

  /** Cut length and marks. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("cut ").append(cutLength());
    for (BenchMark mark : marks()) {
      text.append("; ").append(mark);
    }
    return text.toString();
  }
}
