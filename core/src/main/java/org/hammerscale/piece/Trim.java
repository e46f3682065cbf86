package org.hammerscale.piece;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.stock.Trimming;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;

/**
 * What is cut off at one end of a piece: when, where, and how long the cut-off piece will be in the
 * section that it has there. What is a short bit of a wide bar is a long bit of a drawn-out tip.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Section tip = Section.flat(inches("3/4"), inches("1/8"));
 * Piece leaf = Piece.of(strap, Plain.of(strap.section(), inches(9)), Taper.between(strap.section(), tip, inches("8 7/8")));
 * Trim trim = leaf.layout().on(QUARTER).trims().get(0);
 * trim.inBar()      // 0.07292 in
 * trim.length()     // 0.2917 in
 * }</pre>
 */
public final class Trim {
  private final PieceEnd end;
  private final Feature feature;
  private final boolean before;
  private final Section section;
  private final Measure<Length> kept;
  private final Estimate<Length> inBar;
  private final Estimate<Length> length;

  Trim(
      PieceEnd end,
      Feature feature,
      boolean before,
      Section section,
      Measure<Length> kept,
      Estimate<Length> inBar,
      Estimate<Length> length) {
    this.end = end;
    this.feature = feature;
    this.before = before;
    this.section = section;
    this.kept = kept;
    this.inBar = inBar;
    this.length = length;
  }

  /** {@return the end that it is cut off} */
  public PieceEnd end() {
    return end;
  }

  /** {@return the feature that ends there} */
  public Feature feature() {
    return feature;
  }

  /**
   * {@return when: before its feature is worked, or after. A point has no section to cut, so that
   * what is too long is cut off before it is drawn}
   */
  public Trimming when() {
    return before ? Trimming.BEFORE_WORK : Trimming.AFTER_WORK;
  }

  /** {@return the section that the cut-off piece has: that of the bar, or of the finished end} */
  public Section section() {
    return section;
  }

  /**
   * Where to cut, measured from the reference mark: before the work along the cold bar, on a mark
   * of the rule; after it along the finished piece.
   *
   * @return the distance
   */
  public Measure<Length> keptFromReference() {
    return kept;
  }

  /** {@return how much of the bar it is, never less than nothing} */
  public Estimate<Length> inBar() {
    return inBar;
  }

  /** {@return how long the cut-off piece is in its own {@link #section}} */
  public Estimate<Length> length() {
    return length;
  }

  /** Where, when, how long and in which section. */
  @Override
  public String toString() {
    return "at the "
        + end
        + ", "
        + when()
        + ": "
        + length
        + " of "
        + section
        + ", "
        + kept
        + " from the reference mark";
  }
}
