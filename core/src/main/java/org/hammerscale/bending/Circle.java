package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/** What rings and eyes share: a bar bent to a full circle. */
abstract class Circle extends ClosedBar {
  private final Measure<Length> diameter;

  Circle(Quantity<Length> diameter, Section section, Joint joint) {
    this(Arguments.positive("diameter", diameter), section, joint);
  }

  private Circle(Measure<Length> diameter, Section section, Joint joint) {
    super(section, diameter.getUnit(), joint);
    this.diameter = diameter;
  }

  /** {@return the inside diameter d} */
  public final Measure<Length> insideDiameter() {
    return diameter;
  }

  /** {@return the mean diameter d + t, exact} */
  public final Measure<Length> meanDiameter() {
    return diameter.add(section().thickness());
  }

  /** {@return the outside diameter d + 2 t, exact} */
  public final Measure<Length> outsideDiameter() {
    return meanDiameter().add(section().thickness());
  }

  /** {@return its outside diameter; of an eye, from where the straight bar ends to its top} */
  @Override
  public final Measure<Length> reach() {
    return outsideDiameter();
  }

  /** The inside diameter of the same form that uses up a length of bar: L / π − t. */
  final Measure<Length> diameterOf(Quantity<Length> length) {
    double t = thickness();
    return measure(meanLineOf(length, Math.PI * t) / Math.PI - t);
  }

  final double d(Notes n) {
    return n.given("d", "inside diameter", diameter.in(unit()));
  }

  @Override
  final double meanLine(Notes n) {
    double d = d(n);
    double t = t(n);
    double m = n.length("m", "mean diameter", "d + t", d + t);
    return n.length("L", "circumference of the mean diameter", "π m", Math.PI * m);
  }

  @Override
  final Measure<Length> tightest() {
    return diameter;
  }
}
