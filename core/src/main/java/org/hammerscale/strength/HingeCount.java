package org.hammerscale.strength;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * How many hinges a door is usually given: one for each 30 in of its height or part of it, two at
 * least.
 *
 * <pre>{@code
 * HingeCount.forHeight(inches(80)).hinges()         // 3
 * HingeCount.forHeight(millimetres(1500)).hinges()  // 2
 * HingeCount.forHeight(inches(80)).working().result()   // 3
 * }</pre>
 *
 * <p>Trade guidance, not a check of strength; the {@link DoorLoad} tells what each one bears.
 * Source: trade pages on door hardware.
 */
public final class HingeCount {
  private static final Source RULE =
      Source.commonPractice("one hinge for each 30 in of height or part of it, two at least");
  private static final Measure<Length> SHARE = Measures.inches(30);

  private final Measure<Length> height;

  private HingeCount(Measure<Length> height) {
    this.height = height;
  }

  /**
   * For a door.
   *
   * @param height its height, more than zero
   * @return the count
   * @throws IllegalArgumentException if the height is not more than zero
   */
  public static HingeCount forHeight(Quantity<Length> height) {
    return new HingeCount(Arguments.positive("height", height));
  }

  /** {@return the number of hinges} */
  public int hinges() {
    return (int) counted(Notes.NONE);
  }

  /** {@return how the number was found} */
  public Working working() {
    return Notes.taken("number of hinges", height.getUnit(), this::counted).withSource(RULE);
  }

  private double counted(Notes n) {
    Unit<Length> unit = height.getUnit();
    double h = n.given("h", "height of the door", height.in(unit));
    double s = n.given("s", "height for one hinge", SHARE.in(unit));
    // A height of 60 in that was given in metres may come out a rounding error above it.
    double parts = Math.ceil(h / s - 1e-9) * s / s;
    return parts < 2
        ? n.number("N", "hinges, two at least", "2", 2)
        : n.number("N", "hinges", "up(h, s) / s", parts);
  }

  /** The number and the height. */
  @Override
  public String toString() {
    return hinges() + " hinges for a door " + height + " high";
  }
}
