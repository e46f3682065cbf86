package org.hammerscale.hinge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A barrel divided into knuckles that belong to the two leaves by turns, with a gap in each joint:
 * three of equal length unless it is told otherwise. Two make a {@index "staggered hinge"}, which
 * lifts off.
 *
 * <pre>{@code
 * Knuckles three = Knuckles.across(inches(2)).withGap(inches("1/32"));
 * three.length(1)                                      // 0.6458 in  each of three alike
 * three.on(SIXTEENTH).length(2)                        // 5/8 in     the middle one, on the marks of a rule
 * three.on(SIXTEENTH).playOver(three)                  // 1/32 in    what that adds to each joint
 * three.bearingEqually().all().get(1)                  // knuckle 2, second leaf: 31/32 in at 33/64 in
 * three.inRatios(2, 3, 2).bearingLength(Leaf.FIRST)    // 1.1071 in  of pin that the first leaf bears on
 * three.drop()                                         // 1/32 in    to allow for in the hanging
 * }</pre>
 *
 * <p>With the width w, n knuckles and the gap g, what they share is u = w − (n − 1) g, each taking
 * its part by the ratios. Lengths are exact as geometry, in the width's unit, measured across the
 * leaf from the edge where the first leaf's first knuckle lies. How wide a gap must be, no
 * published figure was found for: the caller says. Source: plane geometry.
 */
public final class Knuckles {
  private static final int MOST = 1000;
  private static final Source SHARED =
      Source.computed("knuckles and gaps together make up the width");

  private final Measure<Length> width;
  private final Measure<Length> gap;
  private final double[] ratios;
  private final Unit<Length> unit;

  private Knuckles(Measure<Length> width, Measure<Length> gap, double[] ratios) {
    this.width = width;
    this.gap = gap;
    this.ratios = ratios;
    this.unit = width.getUnit();
    if (!(shared(Notes.NONE) > 0)) {
      throw new IllegalArgumentException(
          "gap must be less than "
              + width.divide(ratios.length - 1)
              + " for "
              + ratios.length
              + " knuckles across "
              + width
              + ", was "
              + gap
              + "; close the gaps, or make fewer knuckles");
    }
  }

  /**
   * Three equal knuckles without gaps.
   *
   * @param width the width of the leaf at the barrel, more than zero
   * @return the knuckles
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Knuckles across(Quantity<Length> width) {
    Measure<Length> wide = Arguments.positive("width", width);
    return new Knuckles(wide, wide.withValue(0), equal(3));
  }

  /**
   * The same width divided equally.
   *
   * @param count how many knuckles both leaves have together, 2 to 1000
   * @return the knuckles, all of one length
   * @throws IllegalArgumentException if the count is out of range, or the gaps leave them no room
   */
  public Knuckles into(int count) {
    Arguments.count("count of knuckles", count, 2, MOST, "give each leaf one, or divide the hinge");
    return new Knuckles(width, gap, equal(count));
  }

  /**
   * As many knuckles, divided so that both leaves bear on the same length of pin. Of three, the
   * middle one is as long as both outer ones.
   *
   * @return the knuckles, those of one leaf all of one length
   */
  public Knuckles bearingEqually() {
    double[] parts = new double[ratios.length];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = i % 2 == 0 ? parts.length / 2 : (parts.length + 1) / 2;
    }
    return new Knuckles(width, gap, parts);
  }

  /**
   * The same width divided in given ratios.
   *
   * @param parts the length of each knuckle in parts of any size, from the edge measured from; 2 to
   *     1000 of them, each more than zero
   * @return the knuckles, as many as there are parts
   * @throws IllegalArgumentException if their number is out of range, or one is not more than zero
   */
  public Knuckles inRatios(double... parts) {
    Objects.requireNonNull(parts, "parts");
    Knuckles divided = into(parts.length);
    for (double part : parts) {
      Arguments.number("part", part, 1e6, "give the parts that each knuckle takes, as 1, 2, 1");
    }
    return new Knuckles(width, divided.gap, parts.clone());
  }

  /**
   * The same knuckles with a gap in each joint.
   *
   * @param gap between the ends of two knuckles, not negative
   * @return the knuckles, shorter by their part of the gaps
   * @throws IllegalArgumentException if the gap is negative or leaves the knuckles no room
   */
  public Knuckles withGap(Quantity<Length> gap) {
    return new Knuckles(width, Arguments.notNegative("gap", gap).to(unit), ratios);
  }

  /**
   * The same knuckles with the edges of both leaves' slots on the marks of a rule, chosen together:
   * each joint is the least number of marks that is not less than the gap, all joints alike, and
   * each edge lies at the mark nearest to its place. {@link #playOver} tells what that costs.
   *
   * @param rule what the smith marks by
   * @return the knuckles, each within a mark of its part; only the far edge of the last lies where
   *     the strap ends
   * @throws IllegalArgumentException if a knuckle would be left less than a mark; the message names
   *     the coarsest usual rule that holds them all
   */
  public Knuckles on(Graduation<Length> rule) {
    return KnuckleMarks.of(this, Objects.requireNonNull(rule, "rule"));
  }

  /**
   * What each joint has more of than was asked for.
   *
   * @param wanted the division before it was put {@linkplain #on on a rule}
   * @return this gap less that one, exact, in this width's unit
   */
  public Measure<Length> playOver(Knuckles wanted) {
    return gap.subtract(Objects.requireNonNull(wanted, "wanted").gap);
  }

  /** {@return the width of the leaf at the barrel} */
  public Measure<Length> width() {
    return width;
  }

  /** {@return the gap in each joint} */
  public Measure<Length> gap() {
    return gap;
  }

  /** {@return how many knuckles both leaves have together} */
  public int count() {
    return ratios.length;
  }

  /**
   * How long a knuckle is: u q / Σ q.
   *
   * @param number which one, from 1 at the edge measured from
   * @return its length, exact, in the width's unit
   * @throws IllegalArgumentException if there is none of that number
   */
  public Measure<Length> length(int number) {
    return Measure.of(length(Notes.NONE, checked(number)), unit);
  }

  /** {@return all knuckles in order, with their places} */
  public List<Knuckle> all() {
    List<Knuckle> all = new ArrayList<>(count());
    Measure<Length> start = width.withValue(0);
    for (int number = 1; number <= count(); number++) {
      Measure<Length> length = length(number);
      all.add(new Knuckle(this, number, start, length));
      start = start.add(length).add(gap);
    }
    return List.copyOf(all);
  }

  /**
   * The knuckles of one leaf.
   *
   * @param leaf which one
   * @return its knuckles in order
   */
  public List<Knuckle> knucklesOf(Leaf leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return all().stream().filter(knuckle -> knuckle.leaf() == leaf).toList();
  }

  /**
   * What is cut out of one leaf: a slot for each knuckle of the other, or a notch at the edge.
   *
   * @param leaf which one
   * @return its slots and notches in order
   */
  public List<KnuckleSlot> slotsOf(Leaf leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return knucklesOf(leaf.other()).stream()
        .map(facing -> new KnuckleSlot(facing, gap, isAtAnEdge(facing)))
        .toList();
  }

  private boolean isAtAnEdge(Knuckle knuckle) {
    return knuckle.number() == 1 || knuckle.number() == count();
  }

  /**
   * The length of pin that one leaf bears on: its knuckles together.
   *
   * @param leaf which one
   * @return the length, exact, in the width's unit
   */
  public Measure<Length> bearingLength(Leaf leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return Measure.of(bearing(Notes.NONE, leaf), unit);
  }

  /**
   * How far the hung leaf drops when it is loaded: every joint below a knuckle of it closes at
   * once, and the one above opens to twice the gap. Allow for it in the hanging.
   *
   * @return the gap of one joint, exact
   */
  public Measure<Length> drop() {
    return gap;
  }

  /**
   * The tightest joint when the first leaf of this division is put on a pin with the second leaf of
   * another, their edges flush.
   *
   * @param other the division that the second leaf was cut by, of as many knuckles
   * @return the least gap, exact, in this width's unit; negative by as much as two knuckles overlap
   * @throws IllegalArgumentException if the counts differ
   */
  public Measure<Length> tightestJointWith(Knuckles other) {
    Objects.requireNonNull(other, "other");
    if (other.count() != count()) {
      throw new IllegalArgumentException(
          "count of knuckles must be the same for both leaves, was "
              + count()
              + " and "
              + other.count()
              + "; divide both alike");
    }
    List<Knuckle> mine = all();
    List<Knuckle> others = other.all();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 1; i < count(); i++) {
      Knuckle before = i % 2 == 1 ? mine.get(i - 1) : others.get(i - 1);
      Knuckle after = i % 2 == 1 ? others.get(i) : mine.get(i);
      least = Math.min(least, after.start().in(unit) - before.end().in(unit));
    }
    return Measure.of(least, unit);
  }

  /**
   * Whether the first leaf of this division goes together with the second leaf of another, their
   * edges flush: no two knuckles overlap.
   *
   * @param other the division that the second leaf was cut by
   * @return whether they interleave; false if the counts differ
   */
  public boolean interleavesWith(Knuckles other) {
    Objects.requireNonNull(other, "other");
    double rounding = 1e-12 * width.in(unit);
    return other.count() == count() && tightestJointWith(other).in(unit) >= -rounding;
  }

  /**
   * How the length of a knuckle was found.
   *
   * @param number which one, from 1 at the edge measured from
   * @return the working
   * @throws IllegalArgumentException if there is none of that number
   */
  public Working lengthWorking(int number) {
    int checked = checked(number);
    return Notes.taken("knuckle " + number + " of " + count(), unit, n -> length(n, checked))
        .withSource(SHARED);
  }

  /**
   * How the length of pin that one leaf bears on was found.
   *
   * @param leaf which one
   * @return the working
   */
  public Working bearingWorking(Leaf leaf) {
    Objects.requireNonNull(leaf, "leaf");
    return Notes.taken("pin that the " + leaf + " bears on", unit, n -> bearing(n, leaf))
        .withSource(SHARED);
  }

  /** The same width with lengths chosen for it. */
  Knuckles marked(double[] lengths, Measure<Length> joint) {
    return new Knuckles(width, joint.to(unit), lengths);
  }

  /** The part that a knuckle takes of what they share. */
  double share(int number) {
    return ratios[number - 1] / parts(1, 1);
  }

  private double shared(Notes n) {
    double w = n.given("w", "width of the leaf", width.in(unit));
    double count = n.number("n", "knuckles", "", count());
    double g = n.given("g", "gap in a joint", gap.in(unit));
    return n.length("u", "shared by the knuckles", "w − (n − 1) g", w - (count - 1) * g);
  }

  private double length(Notes n, int number) {
    double u = shared(n);
    double q = n.number("q", "parts of this knuckle", "", ratios[number - 1]);
    double all = n.number("Q", "parts of all knuckles", "", parts(1, 1));
    return n.length("l", "length of the knuckle", "u q / Q", u * q / all);
  }

  private double bearing(Notes n, Leaf leaf) {
    double u = shared(n);
    double q = n.number("q", "parts of its knuckles", "", parts(leaf == Leaf.FIRST ? 1 : 2, 2));
    double all = n.number("Q", "parts of all knuckles", "", parts(1, 1));
    return n.length("b", "its knuckles together", "u q / Q", u * q / all);
  }

  /** The parts of every knuckle from one on, or of every other one. */
  private double parts(int from, int step) {
    double sum = 0;
    for (int number = from; number <= count(); number += step) {
      sum += ratios[number - 1];
    }
    return sum;
  }

  private int checked(int number) {
    if (number < 1 || number > count()) {
      throw new IllegalArgumentException(
          "number of the knuckle must be from 1 to "
              + count()
              + ", was "
              + number
              + "; count from"
              + " the edge measured from");
    }
    return number;
  }

  private static double[] equal(int count) {
    double[] parts = new double[count];
    Arrays.fill(parts, 1);
    return parts;
  }

  /** How many, over what, and their gaps. */
  @Override
  public String toString() {
    return count() + " knuckles across " + width + ", gaps of " + gap;
  }
}
