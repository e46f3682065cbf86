package org.hammerscale.fastening;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.piece.Piece;
import org.hammerscale.units.Measure;

/**
 * The countersunk holes of one leaf, each in the iron that lies where it is drilled: a tapered leaf
 * grows thinner towards its tip, so that a head which lies flush at the barrel comes out at the
 * back farther on. Part of the thickness t must be left under the cone of depth h: t − h ≥ s t,
 * with s a quarter unless told.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches("1 1/2"), inches("1/4"));
 * Taper drawn = Taper.between(strap, Section.flat(inches("3/4"), inches("1/8")), inches(9));
 * Piece leaf = Piece.of(Bar.of(strap, Material.MILD_STEEL), Plain.of(strap, inches(9)), drawn);
 * CountersunkHoles holes = CountersunkHoles.of(WoodScrew.number(12), leaf);
 * holes.at(inches(12)).land()          // 0.08222 in  under the head of one 12 in along
 * holes.fitsAt(inches(17))             // false
 * holes.nearestTo(inches(17)).get()    // 14.8935 in  the last place where it fits
 * }</pre>
 *
 * <p>Places are measured along the finished leaf from its {@linkplain Piece#withReferenceAfter
 * reference mark} towards the last end. Exact for the section that the leaf has there. How much
 * iron to leave, no published figure was found for: the quarter is our own judgement. Source: that
 * of the {@link Countersink}; common practice for the share. Other names: {@index "screw holes"}.
 */
public final class CountersunkHoles {
  private static final double QUARTER = 0.25;

  /** How finely a leaf is looked over for a place: in parts of its length. */
  private static final int STEPS = 256;

  private static final int HALVINGS = 40;

  private final CountersunkHead head;
  private final Piece leaf;
  private final double share;
  private final Measure<Length> reach;

  /** The least thickness: that of the head, or of the cone with what is left under it. */
  private final Measure<Length> least;

  private CountersunkHoles(CountersunkHead head, Piece leaf, double share) {
    this.head = head;
    this.leaf = leaf;
    this.share = share;
    Measure<Length> along = leaf.bar().section().width().withValue(0);
    for (int i = leaf.featuresBeforeReference(); i < leaf.features().size(); i++) {
      along = along.add(leaf.features().get(i).reach());
    }
    this.reach = along;
    Countersink any = head.countersinkIn(leaf.bar().section().thickness());
    Measure<Length> withLeft = any.depth().divide(1 - share);
    this.least = withLeft.isLessThan(any.headDepth()) ? any.headDepth() : withLeft;
  }

  /**
   * The holes for one head, a quarter of the iron left under each.
   *
   * @param head the head, the same in all of them
   * @param leaf the leaf, between its reference mark and its last end
   * @return the holes
   */
  public static CountersunkHoles of(CountersunkHead head, Piece leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return new CountersunkHoles(Objects.requireNonNull(head, "head"), leaf, QUARTER);
  }

  /**
   * The same with another part of the iron left.
   *
   * @param part s of the thickness, 0 to 0.9; 0 lets the cone come out as an edge at the back
   * @return the holes
   * @throws IllegalArgumentException if the part is out of range
   */
  public CountersunkHoles leaving(double part) {
    if (!(part >= 0 && part <= 0.9)) {
      throw new IllegalArgumentException(
          "part left must lie between 0 and 0.9 of the thickness, was "
              + part
              + "; give 0.25 to leave a quarter of the iron");
    }
    return new CountersunkHoles(head, leaf, part);
  }

  /** {@return the part s of the thickness that must be left under a head} */
  public double partLeft() {
    return share;
  }

  /**
   * The countersink at one place.
   *
   * @param fromReference how far along the finished leaf, from zero to its last end
   * @return the countersink in the iron there, with lengths in the section's unit
   * @throws IllegalArgumentException if less iron than asked would be left, the message naming the
   *     nearest place where the head fits; or the leaf does not reach so far
   */
  public Countersink at(Quantity<Length> fromReference) {
    Measure<Length> place = Arguments.notNegative("fromReference", fromReference);
    Countersink sink = head.countersinkIn(leaf.sectionAt(place).thickness());
    if (!fitsAt(place)) {
      throw new IllegalArgumentException(
          "fromReference must lie where the iron holds a head "
              + sink.headDepth()
              + " deep and "
              + sink.plate().multiply(share)
              + " is left under its cone, was "
              + place
              + ", where the iron is "
              + sink.plate()
              + " thick and "
              + sink.land()
              + " is left; "
              + advice(place));
    }
    return sink;
  }

  private String advice(Measure<Length> place) {
    return nearestTo(place)
        .map(fits -> "drill it at " + fits + ", or take a smaller screw")
        .orElse("take a smaller screw, since no place of this leaf is thick enough");
  }

  /**
   * Whether enough iron is left at one place.
   *
   * @param fromReference how far along the finished leaf, from zero to its last end
   * @return whether {@link #at} has an answer
   * @throws IllegalArgumentException if the leaf does not reach so far
   */
  public boolean fitsAt(Quantity<Length> fromReference) {
    Measure<Length> place = Arguments.notNegative("fromReference", fromReference);
    Measure<Length> there = leaf.sectionAt(place).thickness();
    return there.isGreaterThan(least) || there.isEquivalentTo(least);
  }

  /**
   * The place nearest to one wanted where enough iron is left. Of two as near it is the one towards
   * the reference mark. A leaf that swells and thins again within 1/256 of its length may hide a
   * place; between such steps it is found to the last digits.
   *
   * @param fromReference how far along the finished leaf, from zero to its last end
   * @return the place, in the unit wanted; empty if the head fits nowhere
   * @throws IllegalArgumentException if the leaf does not reach so far
   */
  public Optional<Measure<Length>> nearestTo(Quantity<Length> fromReference) {
    Measure<Length> wanted = Arguments.notNegative("fromReference", fromReference);
    if (fitsAt(wanted)) {
      return Optional.of(wanted);
    }
    double end = reach.in(wanted.getUnit());
    double step = end / STEPS;
    for (int i = 1; i <= STEPS; i++) {
      for (int towards = -1; towards <= 1; towards += 2) {
        double near = within(wanted.getValue() + towards * (i - 1) * step, end);
        double far = within(wanted.getValue() + towards * i * step, end);
        if (far != near && fitsAt(wanted.withValue(far))) {
          return Optional.of(boundary(wanted, near, far));
        }
      }
    }
    return Optional.empty();
  }

  private static double within(double place, double end) {
    return Math.max(0, Math.min(place, end));
  }

  /** The last place that fits on the way from one that does to one that does not. */
  private Measure<Length> boundary(Measure<Length> wanted, double fails, double fits) {
    double outside = fails;
    double inside = fits;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (outside + inside) / 2;
      if (fitsAt(wanted.withValue(middle))) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return wanted.withValue(inside);
  }

  /** Head and leaf. */
  @Override
  public String toString() {
    return "holes for a " + head + " in a " + leaf;
  }
}
