package org.hammerscale.hinge;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Working;

/**
 * One knuckle of a divided barrel: whose it is, and where it lies across the leaf.
 *
 * <pre>{@code
 * Knuckle middle = Knuckles.across(inches(2)).withGap(inches("1/16")).all().get(1);
 * middle.leaf()                // second leaf
 * middle.start()               // 11/16 in
 * middle.length()              // 5/8 in
 * middle.end()                 // 1 5/16 in
 * middle.working().result()    // 5/8 in
 * middle.number()   // 2
 * }</pre>
 *
 * <p>Exact as geometry, in the unit of the leaf's width.
 */
public final class Knuckle {
  private final Knuckles knuckles;
  private final int number;
  private final Measure<Length> start;
  private final Measure<Length> length;

  Knuckle(Knuckles knuckles, int number, Measure<Length> start, Measure<Length> length) {
    this.knuckles = knuckles;
    this.number = number;
    this.start = start;
    this.length = length;
  }

  /** {@return its number, from 1 at the edge that is measured from} */
  public int number() {
    return number;
  }

  /** {@return the leaf it belongs to} */
  public Leaf leaf() {
    return number % 2 == 1 ? Leaf.FIRST : Leaf.SECOND;
  }

  /** {@return where it begins, measured across the leaf from its edge} */
  public Measure<Length> start() {
    return start;
  }

  /** {@return its length along the pin} */
  public Measure<Length> length() {
    return length;
  }

  /** {@return where it ends, measured across the leaf from the same edge} */
  public Measure<Length> end() {
    return start.add(length);
  }

  /** {@return how its length was found} */
  public Working working() {
    return knuckles.lengthWorking(number);
  }

  /** Number, leaf, length and place. */
  @Override
  public String toString() {
    return "knuckle " + number + ", " + leaf() + ": " + length + " at " + start;
  }
}
