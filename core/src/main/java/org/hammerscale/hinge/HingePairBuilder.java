package org.hammerscale.hinge;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Graduation;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.jspecify.annotations.Nullable;

/**
 * Asks for a {@link HingePair}, one demand after the other; what is not said stays usual: three
 * equal knuckles without gaps, a barrel rolled from one face and cut square, hung on the face with
 * the barrels proud, opening to a right angle, left hand. Each method gives back this builder.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * HingePairBuilder asked = HingePair.of(strap, Bore.forPin(inches("1/2")).clearing(inches("1/64")));
 * asked.leaves(Plain.of(strap.section(), inches(12))).opening(degrees(270), Hanging.JOINT);
 * asked.pair().notchDepth()                               // 0.5078 in  as deep as the opening needs
 * asked.on(SIXTEENTH).pair().notchDepth()                 // 9/16 in    on a mark, never less
 * asked.notchedBehindPin(inches("5/8")).pair().opening()  // 281.8°     deeper, so that it opens farther
 * asked.handed(Hand.RIGHT).pair().markedFrom(Leaf.FIRST)  // "far edge"  for a door hung on the right
 * }</pre>
 */
public final class HingePairBuilder {
  private static final Measure<Angle> RIGHT_ANGLE = Measures.degrees(90);

  final Bar strap;
  final Bore bore;
  Section rolled;
  Knuckles knuckles;
  boolean centred;
  BarrelEnd end = BarrelEnd.squareCut();
  Hanging hanging = Hanging.FACE;
  Measure<Angle> opening = RIGHT_ANGLE;
  @Nullable Boolean proud;
  Measure<Length> runningGap;
  @Nullable Measure<Length> notch;
  List<Feature> first = List.of();
  List<Feature> second = List.of();
  Hand hand = Hand.LEFT;

  @Nullable Graduation<Length> rule;

  HingePairBuilder(Bar strap, Bore bore) {
    this.strap = Objects.requireNonNull(strap, "strap");
    this.bore = Objects.requireNonNull(bore, "bore");
    this.rolled = strap.section();
    this.knuckles = Knuckles.across(rolled.width());
    this.runningGap = bore.diameter().withValue(0);
  }

  /**
   * The section that the barrel is rolled from, if the strap is first drawn narrower or thinner.
   *
   * @param section the section at the barrel
   * @return this builder
   */
  public HingePairBuilder rolledFrom(Section section) {
    rolled = Section.requireArea("section", section);
    return this;
  }

  /**
   * How the barrel is divided.
   *
   * @param divided the knuckles, across the width of the section at the barrel
   * @return this builder
   */
  public HingePairBuilder knuckles(Knuckles divided) {
    knuckles = Objects.requireNonNull(divided, "divided");
    return this;
  }

  /**
   * Joggles the leaves, so that the pin lies in the middle of their thickness.
   *
   * @return this builder
   */
  public HingePairBuilder centred() {
    centred = true;
    return this;
  }

  /**
   * How the rolled end meets the leaf.
   *
   * @param barrelEnd the end
   * @return this builder
   */
  public HingePairBuilder endedWith(BarrelEnd barrelEnd) {
    end = Objects.requireNonNull(barrelEnd, "barrelEnd");
    return this;
  }

  /**
   * How far the door shall open, and how it hangs.
   *
   * @param fromShut the angle that it turns through from shut, 0° to 360°
   * @param how how it hangs
   * @return this builder
   * @throws IllegalArgumentException if the angle is out of range
   */
  public HingePairBuilder opening(Quantity<Angle> fromShut, Hanging how) {
    Objects.requireNonNull(fromShut, "fromShut");
    opening = Arguments.angle("opening", fromShut, 360);
    hanging = Objects.requireNonNull(how, "how");
    return this;
  }

  /**
   * Sets the barrels proud of the faces on the side that the door opens toward: usual for straps on
   * the face of a door.
   *
   * @return this builder
   */
  public HingePairBuilder barrelsProud() {
    proud = true;
    return this;
  }

  /**
   * Sets the faces flush with the top of the barrels on the side that the door opens toward, the
   * barrels sunk behind: usual in the joint and round a corner.
   *
   * @return this builder
   */
  public HingePairBuilder facesFlush() {
    proud = false;
    return this;
  }

  /**
   * The gap to be kept between the floor of a notch and the other leaf.
   *
   * @param gap zero or more
   * @return this builder
   * @throws IllegalArgumentException if the gap is negative
   */
  public HingePairBuilder runningGap(Quantity<Length> gap) {
    runningGap = Arguments.notNegative("running gap", gap);
    return this;
  }

  /**
   * How deep the notches shall be, behind the pin; unless told, as deep as the opening needs.
   *
   * @param depth from the pin's centre to the floor of the notch, more than zero
   * @return this builder
   * @throws IllegalArgumentException if the depth is not more than zero
   */
  public HingePairBuilder notchedBehindPin(Quantity<Length> depth) {
    notch = Arguments.positive("depth of notch", depth);
    return this;
  }

  /**
   * How both leaves go on beyond their barrels.
   *
   * @param beyondBarrel the features from the barrel to the tip, at least one
   * @return this builder
   */
  public HingePairBuilder leaves(Feature... beyondBarrel) {
    Objects.requireNonNull(beyondBarrel, "beyondBarrel");
    return leaf(Leaf.FIRST, beyondBarrel).leaf(Leaf.SECOND, beyondBarrel);
  }

  /**
   * How one leaf goes on beyond its barrel.
   *
   * @param which the leaf; the first is the one on the post, the second hangs on it
   * @param beyondBarrel the features from the barrel to the tip, at least one
   * @return this builder
   */
  public HingePairBuilder leaf(Leaf which, Feature... beyondBarrel) {
    Objects.requireNonNull(beyondBarrel, "beyondBarrel");
    Objects.requireNonNull(which, "which");
    if (which == Leaf.FIRST) {
      first = List.of(beyondBarrel);
    } else {
      second = List.of(beyondBarrel);
    }
    return this;
  }

  /**
   * On which side the door hangs.
   *
   * @param side the hand
   * @return this builder
   */
  public HingePairBuilder handed(Hand side) {
    hand = Objects.requireNonNull(side, "side");
    return this;
  }

  /**
   * Puts the slots of both leaves and the depth of their notches on the marks of a rule: the slots
   * {@linkplain Knuckles#on together}, so that no joint closes, the notches up, so that the door
   * opens as wide as it must.
   *
   * @param marks what the smith marks by
   * @return this builder
   */
  public HingePairBuilder on(Graduation<Length> marks) {
    rule = Objects.requireNonNull(marks, "marks");
    return this;
  }

  /**
   * The pair that was asked for.
   *
   * @return the two leaves
   * @throws IllegalArgumentException if two demands are at odds; the message names both numbers
   */
  public HingePair pair() {
    return new HingePair(this);
  }

  /** What is asked for, in short. */
  @Override
  public String toString() {
    return "asked: " + rolled + ", pin " + bore.pin() + ", to open " + opening + " " + hanging;
  }
}
