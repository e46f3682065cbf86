package org.hammerscale.hinge;

import javax.measure.quantity.Length;
import org.hammerscale.units.Measure;

/**
 * A tool chosen from the rack: its size, what it leaves when the work is cold, and how far that is
 * from what was asked for.
 *
 * <pre>{@code
 * Contraction hot = Contraction.from(celsius(1100), Material.MILD_STEEL);
 * Bore bore = Bore.forPin(millimetres(14)).clearing(millimetres(0.5)).coated(millimetres(0.08));
 * ToolChoice drift = Drift.leaving(bore.diameter(), hot).chosenFrom(ToolRack.every(HALF_MILLIMETRE), bore);
 * drift.size()                                  // 15 mm
 * drift.leaves()                                // 14.77 mm
 * bore.clearanceLeftBy(drift.leaves())          // 0.4467 mm  of 0.5 asked for; 15.5 mm would leave 0.94
 * }</pre>
 */
public final class ToolChoice {
  private final Measure<Length> size;
  private final Measure<Length> leaves;
  private final Measure<Length> wanted;

  ToolChoice(Measure<Length> size, Measure<Length> leaves, Measure<Length> wanted) {
    this.size = size;
    this.leaves = leaves;
    this.wanted = wanted;
  }

  /** {@return the size of the tool, measured cold} */
  public Measure<Length> size() {
    return size;
  }

  /** {@return what the work measures when it is cold, exact for the heats given} */
  public Measure<Length> leaves() {
    return leaves;
  }

  /** {@return what it should measure} */
  public Measure<Length> wanted() {
    return wanted;
  }

  /** {@return what it measures more than it should; negative if less} */
  public Measure<Length> over() {
    return leaves.subtract(wanted);
  }

  /** Size and what it leaves. */
  @Override
  public String toString() {
    return size + ", leaves " + leaves;
  }
}
