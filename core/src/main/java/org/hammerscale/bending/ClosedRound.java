package org.hammerscale.bending;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Notes;

/** What rings and eyes share: a bar bent round a circle, told by its inside diameter. */
abstract class ClosedRound extends ClosedBar {
  private final Measure<Length> diameter;

  ClosedRound(Measure<Length> diameter, Section section, Joint joint) {
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

  /** {@return a circle} */
  @Override
  public final MeanLine meanLine() {
    return MeanLine.from(unit()).arc(meanDiameter().in(unit()) / 2, 2 * Math.PI).closed();
  }

  /** {@return its outside diameter; of an eye from where the straight bar ends to its top} */
  @Override
  public final Measure<Length> reach() {
    return outsideDiameter();
  }

  /** The inside diameter that a length of bar closes to. */
  final Measure<Length> diameterFrom(double meanLine) {
    return measure(meanLine / Math.PI - thickness());
  }

  @Override
  final double meanLine(Notes n) {
    double d = n.given("d", "inside diameter", diameter.in(unit()));
    double t = t(n);
    double m = n.length("m", "mean diameter", "d + t", d + t);
    return n.length("L", "circumference of the mean diameter", "π m", Math.PI * m);
  }

  @Override
  final Measure<Length> tightest() {
    return diameter;
  }

  /** How it is joined, its inside diameter and its bar. */
  @Override
  public final String toString() {
    return name() + ", " + diameter + " inside, of " + section();
  }
}
