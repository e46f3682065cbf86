package org.hammerscale.fastening;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * A countersunk wood screw by the old British number n: shank D = 0.066 in + 0.014 in × (n − 1),
 * head of 90° and twice the shank. The number is told by the head: its width in thirty-seconds of
 * an inch, less three. {@linkplain WoodScrew American numbers} agree with these only near 8.
 *
 * <pre>{@code
 * OldBritishWoodScrew eight = OldBritishWoodScrew.withHead(inches("11/32"));
 * eight.number()         // 8         an old screw, told by its head
 * eight.diameter()       // 0.164 in  its shank
 * eight.clearanceHole()  // 11/64 in  to drill in the strap
 * }</pre>
 *
 * <p>Rules of the trade for screws that were never as exact as the rules. The rule for the hole, (n
 * + 3)/64 in, does not pass the shanks of numbers 0 to 3: for these it is 1/64 in more.
 *
 * <p>Source: a British page on wood screws (read); the root is two thirds of the shank (USDA Wood
 * Handbook, ch. 8, read).
 */
public final class OldBritishWoodScrew extends NumberedScrew {
  private static final Source RULES =
      Source.read("furnituremaking.us, Wood Screws", "rules of the British gauge");
  private static final int LAST = 32;

  private OldBritishWoodScrew(int number) {
    super(number, LAST, "coach screw");
  }

  /**
   * The screw of an old British number.
   *
   * @param number from 0 to 32
   * @return the screw
   * @throws IllegalArgumentException if the number is out of range
   */
  public static OldBritishWoodScrew number(int number) {
    return new OldBritishWoodScrew(number);
  }

  /**
   * The screw in hand, told by its head: n is the width in thirty-seconds of an inch less three, to
   * the nearest whole.
   *
   * @param headDiameter measured across the head, from about 3/32 in to about 1 3/32 in
   * @return the screw
   * @throws IllegalArgumentException if no screw has such a head
   */
  public static OldBritishWoodScrew withHead(Quantity<Length> headDiameter) {
    Measure<Length> head = Arguments.positive("headDiameter", headDiameter);
    double number = Math.rint(head.in(ShopUnits.INCH) * 32 - 3 + 1e-9);
    if (!(number >= 0 && number <= LAST)) {
      throw new IllegalArgumentException(
          "headDiameter must be from 3/32 in to 1 3/32 in, was "
              + head
              + "; it is no wood screw of the old British numbers 0 to 32");
    }
    return new OldBritishWoodScrew((int) number);
  }

  /** {@return two thirds of the shank} */
  @Override
  public Measure<Length> rootDiameter() {
    return twoThirdsOfShank();
  }

  /** {@return twice the shank} */
  @Override
  public Measure<Length> headDiameter() {
    return diameter().multiply(2);
  }

  /** {@return 90°} */
  @Override
  public Measure<Angle> headAngle() {
    return Measures.degrees(90);
  }

  /**
   * The thread of a screw: 0.6 of its length.
   *
   * @param length of the screw, more than zero
   * @return 0.6 of it, in its unit; a rule, so measure the screw in hand
   * @throws IllegalArgumentException if the length is not more than zero
   */
  @Override
  public Measure<Length> threadLength(Quantity<Length> length) {
    return Arguments.positive("length", length).multiply(0.6);
  }

  @Override
  double shank(Notes n) {
    double k = n.value("n", "number", "", number(), ShopUnits.ONE);
    return n.length(
        "D", "diameter of the shank", "0.066 + 0.014 (n − 1)", (66 + 14 * (k - 1)) / 1e3);
  }

  @Override
  double hole(Notes n) {
    double k = n.value("n", "number", "", number(), ShopUnits.ONE);
    double rule = n.length("B", "hole in the iron by the rule", "(n + 3) / 64", (k + 3) / 64);
    if (rule >= shank(Notes.NONE)) {
      return rule;
    }
    return n.length("C", "the next drill, which passes the shank", "B + 1 / 64", rule + 1 / 64d);
  }

  @Override
  Source rule() {
    return RULES;
  }

  @Override
  String series() {
    return "old British ";
  }
}
