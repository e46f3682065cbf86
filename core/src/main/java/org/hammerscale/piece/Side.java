package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
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
  private final int reference;
  private final int count; // how many features lie on this side
  private final List<Measure<Length>> reached; // what the innermost features likely take, by count
  private final Estimate<Length> taken;
  private final Estimate<Length> inner; // all but the outermost
  private final Measure<Length> length;

  private Side(Layout layout, PieceEnd end, Graduation<Length> rule, double odds) {
    this.layout = layout;
    this.end = end;
    this.rule = rule;
    this.reference = layout.piece().featuresBeforeReference();
    this.count = end == PieceEnd.FIRST ? reference : layout.piece().features().size() - reference;
    List<Measure<Length>> likely = new ArrayList<>(count + 1);
    likely.add(layout.nothing().likely());
    Estimate<Length> stock = layout.nothing();
    Estimate<Length> fire = layout.nothing();
    Estimate<Length> before = layout.nothing();
    for (int i = 0; i < count; i++) {
      before = together(stock, fire);
      stock = stock.addDependent(layout.stock(index(i)));
      fire = fire.addDependent(layout.allowance(index(i)));
      likely.add(stock.likely().add(fire.likely()));
    }
    this.reached = List.copyOf(likely);
    this.inner = before;
    this.taken = together(stock, fire);
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
    Measure<Length> enough = taken.bound(odds);
    if (count == 0 || !isTrimmed()) {
      return rule.nearest(taken.likely());
    }
    if (outermost().trimming() == Trimming.BEFORE_WORK) {
      // The strip is cut to its length cold, so that what the book cuts in front of it is no loss.
      Measure<Length> most =
          inner.bound(odds).add(outermost().mostToCut(layout.piece().bar().section()));
      Measure<Length> likely = taken.likely();
      return rule.upTo(most.isLessThan(likely) ? likely : most);
    }
    return rule.upTo(enough);
  }

  /** The mark between two features, by how many features stand before it. */
  Measure<Length> distanceOf(int before) {
    return rule.nearest(reached.get(Math.abs(before - reference)));
  }

  /** The hand's part and the fire's, which err apart. */
  private static Estimate<Length> together(Estimate<Length> stock, Estimate<Length> fire) {
    return fire.isExact() && fire.likely().getValue() == 0 ? stock : stock.addIndependent(fire);
  }

  /** What is cut off at this end; nothing if it is not trimmed or no feature lies there. */
  Optional<Trim> trim() {
    if (count == 0 || !isTrimmed()) {
      return Optional.empty();
    }
    Section bar = layout.piece().bar().section();
    Feature feature = outermost();
    Section free = end == PieceEnd.FIRST ? feature.start() : feature.end();
    Section section = free.area().getValue() > 0 ? free : bar;
    boolean before = feature.trimming() == Trimming.BEFORE_WORK;
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
    return Optional.of(new Trim(end, feature, before, section, kept, inBar, there));
  }

  private Measure<Length> rest(Measure<Length> used) {
    Measure<Length> rest = length.subtract(used);
    return rest.getValue() < 0 ? rest.withValue(0) : rest;
  }

  private Measure<Length> finished() {
    Measure<Length> reach = layout.nothing().likely();
    for (int i = 0; i < count; i++) {
      reach = reach.add(layout.piece().features().get(index(i)).reach());
    }
    return reach;
  }

  Optional<Caution> caution() {
    return isTrimmed() || taken.isExact()
        ? Optional.empty()
        : Optional.of(
            Caution.limit(
                "what hand and fire take more or less than likely shows at the "
                    + end
                    + ", which is not trimmed: trim it, or set the reference mark farther there",
                Source.computed("slack goes to a trimmed end")));
  }

  private boolean isTrimmed() {
    return layout.piece().isTrimmedAt(end);
  }

  private Feature outermost() {
    return layout.piece().features().get(index(count - 1));
  }

  /** The place in the piece of a feature counted outwards from the reference. */
  private int index(int outwards) {
    return end == PieceEnd.FIRST ? reference - 1 - outwards : reference + outwards;
  }
}
