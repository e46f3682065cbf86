package org.hammerscale.piece;

import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** One side of the reference mark: what its features take of the bar, outwards, on a rule. */
final class Side {
  private final Layout layout;
  private final PieceEnd end;
  private final Graduation<Length> rule;
  private final Taking taking;
  private final Measure<Length> length;

  private Side(Layout layout, PieceEnd end, Graduation<Length> rule, double odds) {
    this.layout = layout;
    this.end = end;
    this.rule = rule;
    this.taking = Taking.of(layout, end);
    this.length = length(odds);
  }

  static Side of(Layout layout, PieceEnd end, Graduation<Length> rule, double odds) {
    return new Side(layout, end, rule, odds);
  }

  PieceEnd end() {
    return end;
  }

  /** From the reference to this end of the cut bar, on a mark. */
  Measure<Length> length() {
    return length;
  }

  private Measure<Length> length(double odds) {
    Measure<Length> enough = taking.all().bound(odds); // refuses odds out of range in any case
    if (!taking.isTrimmed()) {
      return rule.nearest(taking.all().likely());
    }
    if (isCutBefore()) {
      // The strip is cut to its length cold, so that what the book cuts in front of it is no loss.
      Measure<Length> most =
          taking
              .inner()
              .bound(odds)
              .add(taking.outermost().mostToCut(layout.piece().bar().section()));
      Measure<Length> likely = taking.all().likely();
      return rule.upTo(most.isLessThan(likely) ? likely : most);
    }
    return rule.upTo(layout.learnedAt(end).map(log -> log.bound(odds)).orElse(enough));
  }

  private boolean isCutBefore() {
    return taking.trimming().filter(Trimming.BEFORE_WORK::equals).isPresent();
  }

  /** The mark between two features, by how many features stand before it. */
  Measure<Length> distanceOf(int before) {
    int reference = layout.piece().featuresBeforeReference();
    return rule.nearest(taking.reached(Math.abs(before - reference)));
  }

  /** What is cut off at this end; nothing if it is not trimmed or no feature lies there. */
  Optional<Trim> trim() {
    if (!taking.isTrimmed()) {
      return Optional.empty();
    }
    Section bar = layout.piece().bar().section();
    Section section = taking.section();
    Estimate<Length> taken = taking.all();
    boolean before = isCutBefore();
    Measure<Length> kept = before ? rule.nearest(taken.likely()) : finished();
    Estimate<Length> inBar =
        before
            ? Estimate.exact(length.subtract(kept))
            : Estimate.of(rest(taken.high()), rest(taken.likely()), length.subtract(taken.low()));
    Estimate<Length> there =
        Estimate.of(
            bar.lengthAs(section, inBar.low()),
            bar.lengthAs(section, inBar.likely()),
            bar.lengthAs(section, inBar.high()));
    return Optional.of(new Trim(end, taking.outermost(), before, section, kept, inBar, there));
  }

  private Measure<Length> rest(Measure<Length> used) {
    Measure<Length> rest = length.subtract(used);
    return rest.getValue() < 0 ? rest.withValue(0) : rest;
  }

  private Measure<Length> finished() {
    Measure<Length> reach = layout.nothing().likely();
    for (int i = 0; i < taking.count(); i++) {
      reach = reach.add(layout.piece().features().get(taking.index(i)).reach());
    }
    return reach;
  }

  Optional<Caution> caution() {
    return layout.piece().isTrimmedAt(end) || taking.all().isExact()
        ? Optional.empty()
        : Optional.of(
            Caution.limit(
                "what hand and fire take more or less than likely shows at the "
                    + end
                    + ", which is not trimmed: trim it, or set the reference mark farther there",
                Source.computed("slack goes to a trimmed end")));
  }
}
