package org.hammerscale.forging;

import javax.measure.quantity.Length;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/** Whether bar that is upset stays straight: three published rules, with d its least thickness. */
final class Buckling {
  private static final double FREE = 3;
  private static final double IN_DIE = 1.5;
  private static final double BEYOND_DIE = 1.5;
  private static final double SLACK = 1 + 1e-9;
  private static final Source RULES =
      Source.read(
          "Forging Industry Association, Design Rules for Parts Made as Upset Forgings",
          "rules 1 to 3");

  private final Measure<Length> stock;
  private final Measure<Length> thickness;
  private final double wider;

  private Buckling(Measure<Length> stock, Measure<Length> thickness, double wider) {
    this.stock = stock;
    this.thickness = thickness;
    this.wider = wider;
  }

  /** The upset's widest section counts by the diameter of a round of its area. */
  static Buckling of(Section bar, Measure<Length> stock, Section widest) {
    return new Buckling(
        stock,
        bar.width().isLessThan(bar.thickness()) ? bar.width() : bar.thickness(),
        Math.sqrt(widest.area().ratio(bar.area())));
  }

  double slenderness() {
    return stock.ratio(thickness);
  }

  boolean standsFree() {
    return slenderness() <= FREE * SLACK;
  }

  boolean standsInDie() {
    return standsFree() || wider <= IN_DIE * SLACK;
  }

  Measure<Length> longestFree() {
    return thickness.multiply(FREE);
  }

  Measure<Length> longestBeyondDie() {
    return thickness.multiply(BEYOND_DIE);
  }

  /** One heat for each length that stands free. */
  double leastHeats() {
    return Math.max(1, Math.ceil(slenderness() / FREE - 1e-9));
  }

  Caution caution(String name) {
    String inDie = "upset it in a die with at most " + longestBeyondDie() + " standing out, or ";
    return Caution.limit(
        "the "
            + name
            + " takes "
            + stock
            + " of bar, more than three times its thickness ("
            + longestFree()
            + "): it buckles if struck in one go; "
            + (standsInDie() ? inDie : "")
            + "take a short heat at a time",
        RULES);
  }
}
