package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/** What links and ovals share: a closed form that is longer than wide. */
abstract class Oblong extends ClosedBar {
  private final Measure<Length> length;
  private final Measure<Length> width;

  Oblong(Quantity<Length> length, Quantity<Length> width, Section section, Joint joint) {
    this(Arguments.positive("length", length), Arguments.positive("width", width), section, joint);
  }

  private Oblong(Measure<Length> length, Measure<Length> width, Section section, Joint joint) {
    super(section, length.getUnit(), joint);
    Arguments.atLeast("length", length, "the width", width, "name the long way first");
    this.length = length;
    this.width = width;
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

  final double l(Notes n) {
    return n.given("l", "inside length", length.in(unit()));
  }

  final double v(Notes n) {
    return n.given("v", "inside width", width.in(unit()));
  }

  /** How it is joined, its inside sizes and its bar. */
  @Override
  public final String toString() {
    return name() + ", " + length + " × " + width + " inside, of " + section();
  }
}
