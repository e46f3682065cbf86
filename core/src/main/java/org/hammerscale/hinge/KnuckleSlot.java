package org.hammerscale.hinge;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;

/**
 * A slot cut into one leaf for a knuckle of the other and the gaps beside it; at the edge of the
 * leaf a notch, open to one side. Its depth is the barrel's, see {@link
 * BarrelClosing#slotFloorFromMark}.
 *
 * <pre>{@code
 * Knuckles knuckles = Knuckles.across(millimetres(60)).into(5).withGap(millimetres(0.5));
 * KnuckleSlot slot = knuckles.slotsOf(Leaf.FIRST).get(0);
 * slot.start()                    // 11.6 mm  across the leaf, from the edge that knuckles count from
 * slot.end()                      // 24.2 mm  the saw's other cut falls inside this line
 * slot.tongue(millimetres(1.2))   // 10.2 mm  left between the cuts, to punch out
 * knuckles.slotsOf(Leaf.SECOND).get(0).isEndNotch()   // true  the other leaf begins with a notch
 * }</pre>
 *
 * <p>The marking line is the edge of the slot, and the {@index kerf} falls inside it. Exact as
 * geometry.
 */
public final class KnuckleSlot {
  private static final Source BESIDE =
      Source.computed("a knuckle of the other leaf and the gaps beside it");
  private static final Source INSIDE = Source.computed("the saw's kerf falls inside the slot");

  private final Leaf leaf;
  private final Measure<Length> start;
  private final Measure<Length> knuckle;
  private final Measure<Length> gap;
  private final boolean endNotch;
  private final Unit<Length> unit;

  KnuckleSlot(Knuckle facing, Measure<Length> gap, boolean endNotch) {
    this.leaf = facing.leaf().other();
    this.start = facing.number() == 1 ? facing.start() : facing.start().subtract(gap);
    this.knuckle = facing.length();
    this.gap = gap;
    this.endNotch = endNotch;
    this.unit = knuckle.getUnit();
  }

  /** {@return the leaf that it is cut into} */
  public Leaf leaf() {
    return leaf;
  }

  /** {@return whether it is a notch at the edge of the leaf, with metal on one side only} */
  public boolean isEndNotch() {
    return endNotch;
  }

  /** {@return where it begins, measured across the leaf from the edge that knuckles count from} */
  public Measure<Length> start() {
    return start;
  }

  /**
   * How wide it is: l + 2 g; a notch at the edge l + g.
   *
   * @return the width, exact
   */
  public Measure<Length> width() {
    return Measure.of(width(Notes.NONE), unit);
  }

  /** {@return where it ends, measured across the leaf from the same edge} */
  public Measure<Length> end() {
    return start.add(width());
  }

  /**
   * What is left to punch or chisel out once its sides are sawn: b − 2 k between two cuts; b − k
   * beside the one cut of a notch.
   *
   * @param kerf the width of a saw cut, not negative
   * @return the width of the tongue, exact, in the slot's unit
   * @throws IllegalArgumentException if nothing is left to punch
   */
  public Measure<Length> tongue(Quantity<Length> kerf) {
    Measure<Length> sawn = Arguments.notNegative("kerf", kerf);
    Measure<Length> tongue = Measure.of(tongue(Notes.NONE, sawn), unit);
    if (!(tongue.getValue() > 0)) {
      throw new IllegalArgumentException(
          "kerf must leave a tongue in the slot of "
              + width()
              + ", was "
              + sawn
              + (endNotch ? "" : ", twice")
              + "; take a finer saw, or wider knuckles");
    }
    return tongue;
  }

  /** {@return how the width was found} */
  public Working working() {
    return Notes.taken(what() + " of the " + leaf, unit, this::width).withSource(BESIDE);
  }

  /**
   * How the tongue was found.
   *
   * @param kerf as for {@link #tongue}
   * @return the working
   * @throws IllegalArgumentException if nothing is left to punch
   */
  public Working tongueWorking(Quantity<Length> kerf) {
    tongue(kerf);
    Measure<Length> sawn = Arguments.notNegative("kerf", kerf);
    return Notes.taken("tongue to punch", unit, n -> tongue(n, sawn)).withSource(INSIDE);
  }

  private double width(Notes n) {
    double l = n.given("l", "knuckle of the other leaf", knuckle.in(unit));
    double g = n.given("g", "gap in a joint", gap.in(unit));
    return endNotch
        ? n.length("b", "width of the notch", "l + g", l + g)
        : n.length("b", "width of the slot", "l + 2 g", l + 2 * g);
  }

  private double tongue(Notes n, Measure<Length> sawn) {
    double b = width(n);
    double k = n.given("k", "saw's kerf", sawn.in(unit));
    return endNotch
        ? n.length("T", "tongue beside the cut", "b − k", b - k)
        : n.length("T", "tongue between the cuts", "b − 2 k", b - 2 * k);
  }

  private String what() {
    return endNotch ? "end notch" : "slot";
  }

  /** What it is, whose, and where. */
  @Override
  public String toString() {
    return what() + " of the " + leaf + ": " + width() + " at " + start;
  }
}
