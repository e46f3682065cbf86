package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;

/** What links and ovals share: a closed bar that is longer one way, told by its inside sizes. */
abstract class ClosedOblong extends ClosedBar {
  private final Measure<Length> length;
  private final Measure<Length> width;

  ClosedOblong(Quantity<Length> length, Quantity<Length> width, Section section, Joint joint) {
    super(section, Arguments.positive("length", length).getUnit(), joint);
    this.length = Arguments.positive("length", length);
    this.width = Arguments.positive("width", width);
    Arguments.atLeast("length", this.length, "the width", this.width, "name the long way first");
  }

  /** {@return the inside length} */
  public final Measure<Length> insideLength() {
    return length;
  }

  /** {@return the inside width} */
  public final Measure<Length> insideWidth() {
    return width;
  }

  /** {@return the length over all, exact} */
  @Override
  public final Measure<Length> reach() {
    return length.add(section().thickness().multiply(2));
  }

  /** How it is joined, its inside sizes and its bar. */
  @Override
  public final String toString() {
    return name() + ", " + length + " × " + width + " inside, of " + section();
  }
}
