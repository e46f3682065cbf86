package org.hammerscale.spacing;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Measure;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of a leaf where no hole may have its centre: a {@index seam} between two boards with
 * the edge distance that the wood asks for, a {@index boss}, a spine, a decorative part. Its ends
 * are open: a hole may lie just on them. Places are measured from the pin centre.
 *
 * <p>A seam at x of width w forbids x − w/2 − a to x + w/2 + c, where a is kept on the pin's side
 * and c on the tip's, and either is at least half the hole and the shop's margin. The boards' edges
 * along a seam run with the grain, so it is the <em>edge</em> distance that counts, not the end
 * distance. It is greater towards the edge that the fastener is pulled to, the loaded one: of a
 * fastener pulled towards the pin, that is the seam on its pin side, so the loaded distance goes to
 * the <em>tip's</em> side of the seam.
 *
 * <pre>{@code
 * ClosedStretch seam = ClosedStretch.seamAt(millimetres(120)).wide(millimetres(2));
 * seam.clear(millimetres(15))  // seam at 120 mm, 104 mm to 136 mm  between these no hole is centred
 * seam.clearOnPinSide(millimetres(15)).clearOnTipSide(millimetres(35)).to()  // 156 mm  pulled towards the pin
 * ClosedStretch.between(millimetres(40), millimetres(55)).named("boss")  // boss, 40 mm to 55 mm  or any other place
 * }</pre>
 *
 * <p>Source: geometry; for the distances see the wood's own rule, such as EN 1995-1-1, table 8.2.
 */
public final class ClosedStretch {
  private final @Nullable String name;
  private final boolean seam;
  private final Measure<Length> low;
  private final Measure<Length> high;
  private final Measure<Length> pinSide;
  private final Measure<Length> tipSide;
  private final Measure<Length> halfHole;
  private final Measure<Length> margin;

  private ClosedStretch(
      @Nullable String name,
      boolean seam,
      Measure<Length> low,
      Measure<Length> high,
      Measure<Length> pinSide,
      Measure<Length> tipSide,
      Measure<Length> halfHole,
      Measure<Length> margin) {
    this.name = name;
    this.seam = seam;
    this.low = low;
    this.high = high;
    this.pinSide = pinSide;
    this.tipSide = tipSide;
    this.halfHole = halfHole;
    this.margin = margin;
  }

  /**
   * A tight seam between two boards, also called a joint, across the leaf.
   *
   * @param centre where its middle lies, from the pin centre
   * @return the seam, without width or clearance as yet
   */
  public static ClosedStretch seamAt(Quantity<Length> centre) {
    return plain(true, Arguments.length("centre", centre), Arguments.length("centre", centre));
  }

  /**
   * A stretch of the leaf, such as a boss or a decorative part.
   *
   * @param from its end nearer to the pin, from the pin centre
   * @param to its end nearer to the tip, from the pin centre; not before the other
   * @return the closed stretch
   * @throws IllegalArgumentException if the ends are swapped
   */
  public static ClosedStretch between(Quantity<Length> from, Quantity<Length> to) {
    Measure<Length> low = Arguments.length("from", from);
    Measure<Length> high = Arguments.length("to", to);
    if (high.isLessThan(low) && !high.isEquivalentTo(low)) {
      throw new IllegalArgumentException(
          "to must not lie before from at "
              + low
              + ", was "
              + high
              + "; name the pin's side first");
    }
    return plain(false, low, high.to(low.getUnit()));
  }

  private static ClosedStretch plain(boolean seam, Measure<Length> low, Measure<Length> high) {
    Measure<Length> none = low.withValue(0);
    return new ClosedStretch(null, seam, low, high, none, none, none, none);
  }

  /**
   * The same with a name, which answers and refusals use.
   *
   * @param newName what it is, such as {@code boss}
   * @return the closed stretch
   * @throws IllegalArgumentException if the name is blank
   */
  public ClosedStretch named(String newName) {
    Objects.requireNonNull(newName, "newName");
    String text = Arguments.text("name", newName);
    return new ClosedStretch(text, seam, low, high, pinSide, tipSide, halfHole, margin);
  }

  /**
   * The same widened about its middle: for a gap or a bead between the boards.
   *
   * @param width the whole width, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the width is negative
   */
  public ClosedStretch wide(Quantity<Length> width) {
    Measure<Length> half = Arguments.notNegative("width", width).divide(2);
    Measure<Length> middle = low.add(high).divide(2);
    return new ClosedStretch(
        name, seam, middle.subtract(half), middle.add(half), pinSide, tipSide, halfHole, margin);
  }

  /**
   * The same with a distance kept on either side, such as the wood's edge distance.
   *
   * @param distance from its edge to a hole's centre, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the distance is negative
   */
  public ClosedStretch clear(Quantity<Length> distance) {
    return clearOnPinSide(distance).clearOnTipSide(distance);
  }

  /**
   * The same with a distance kept by the holes between it and the pin.
   *
   * @param distance from its edge to a hole's centre, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the distance is negative
   */
  public ClosedStretch clearOnPinSide(Quantity<Length> distance) {
    Measure<Length> clear = Arguments.notNegative("distance", distance);
    return new ClosedStretch(name, seam, low, high, clear, tipSide, halfHole, margin);
  }

  /**
   * The same with a distance kept by the holes between it and the tip.
   *
   * @param distance from its edge to a hole's centre, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the distance is negative
   */
  public ClosedStretch clearOnTipSide(Quantity<Length> distance) {
    Measure<Length> clear = Arguments.notNegative("distance", distance);
    return new ClosedStretch(name, seam, low, high, pinSide, clear, halfHole, margin);
  }

  /**
   * The same for holes of a diameter, which may not cut into it: half the hole is kept clear at
   * least.
   *
   * @param diameter the hole in the iron, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the diameter is negative
   */
  public ClosedStretch forHole(Quantity<Length> diameter) {
    Measure<Length> half = Arguments.notNegative("diameter", diameter).divide(2);
    return new ClosedStretch(name, seam, low, high, pinSide, tipSide, half, margin);
  }

  /**
   * The same with a margin kept between it and the edge of the hole, for what drilling wanders.
   *
   * @param newMargin the margin, not negative
   * @return the closed stretch
   * @throws IllegalArgumentException if the margin is negative
   */
  public ClosedStretch withMargin(Quantity<Length> newMargin) {
    Objects.requireNonNull(newMargin, "newMargin");
    Measure<Length> more = Arguments.notNegative("margin", newMargin);
    return new ClosedStretch(name, seam, low, high, pinSide, tipSide, halfHole, more);
  }

  /** {@return its name, or what and where it is} */
  public String name() {
    if (name != null) {
      return name;
    }
    return seam
        ? "seam at " + low.add(high).divide(2)
        : "closed stretch from " + low + " to " + high;
  }

  /** {@return where it begins for a hole's centre, from the pin centre, exact} */
  public Measure<Length> from() {
    return low.subtract(kept(pinSide));
  }

  /** {@return where it ends for a hole's centre, from the pin centre, exact} */
  public Measure<Length> to() {
    return high.add(kept(tipSide));
  }

  private Measure<Length> kept(Measure<Length> side) {
    Measure<Length> hole = halfHole.add(margin);
    return side.isLessThan(hole) ? hole : side;
  }

  /** Name and stretch. */
  @Override
  public String toString() {
    return name() + ", " + from() + " to " + to();
  }
}
