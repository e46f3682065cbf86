package org.hammerscale.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/** What the features on one side of the reference mark take of the bar, counted outwards. */
final class Taking {
  private final Piece piece;
  private final PieceEnd end;
  private final int reference;
  private final int count;
  private final List<Measure<Length>> reached;
  private final Estimate<Length> inner;
  private final Estimate<Length> all;

  private Taking(Layout layout, PieceEnd end) {
    this.piece = layout.piece();
    this.end = end;
    this.reference = piece.featuresBeforeReference();
    this.count = end == PieceEnd.FIRST ? reference : piece.features().size() - reference;
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
    this.all = together(stock, fire);
  }

  static Taking of(Layout layout, PieceEnd end) {
    return new Taking(layout, end);
  }

  /** How many features lie on this side. */
  int count() {
    return count;
  }

  /** What all of them take. */
  Estimate<Length> all() {
    return all;
  }

  /** What all but the outermost take. */
  Estimate<Length> inner() {
    return inner;
  }

  /** What the innermost of them likely take, by how many they are. */
  Measure<Length> reached(int features) {
    return reached.get(features);
  }

  /** The hand's part and the fire's, which err apart. */
  static Estimate<Length> together(Estimate<Length> stock, Estimate<Length> fire) {
    return fire.isExact() && fire.likely().getValue() == 0 ? stock : stock.addIndependent(fire);
  }

  boolean isTrimmed() {
    return count > 0 && piece.isTrimmedAt(end);
  }

  /** When what is too long is cut off; empty if the end is not trimmed. */
  Optional<Trimming> trimming() {
    return isTrimmed() ? Optional.of(outermost().trimming()) : Optional.empty();
  }

  Feature outermost() {
    return piece.features().get(index(count - 1));
  }

  /** The section that is cut off there: that of the finished end, of a point that of the bar. */
  Section section() {
    Section free = end == PieceEnd.FIRST ? outermost().start() : outermost().end();
    return free.area().getValue() > 0 ? free : piece.bar().section();
  }

  /** The place in the piece of a feature counted outwards from the reference. */
  int index(int outwards) {
    return end == PieceEnd.FIRST ? reference - 1 - outwards : reference + outwards;
  }
}
