package org.hammerscale.examples.order;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import javax.measure.quantity.Force;
import javax.measure.quantity.Mass;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;

/** A load as a smith weighs it: {@code 20 kg}, {@code 45 lb}; of what bears it in round figures. */
public final class LoadText {
  static final String ACCEPTED = "a load such as 20 kg or 45 lb";

  /** Standard gravity: the newtons that a kilogram weighs. */
  private static final double NEWTONS = 9.80665;

  private static final MathContext EXACT = new MathContext(9);

  private LoadText() {}

  /** What a mass weighs: in newtons, or in pounds-force if it is in pounds. */
  public static Measure<Force> weightOf(Measure<Mass> mass) {
    return mass.getUnit().equals(ShopUnits.POUND)
        ? Measures.poundsForce(mass.getValue())
        : Measures.newtons(mass.in(ShopUnits.KILOGRAM) * NEWTONS);
  }

  /** The mass that weighs so much, in kilograms, or in pounds for pounds-force. */
  public static Measure<Mass> massOf(Measure<Force> weight) {
    return weight.getUnit().equals(ShopUnits.POUND_FORCE)
        ? Measures.pounds(weight.getValue())
        : Measures.kilograms(weight.in(ShopUnits.NEWTON) / NEWTONS);
  }

  /** A load as it was asked. */
  public static String of(Measure<Force> load) {
    return told(load, exactly(load));
  }

  /** What may be borne, in a round figure and no more than it is. */
  public static String down(Measure<Force> load) {
    return told(load, round(load, RoundingMode.DOWN));
  }

  /** What has to be borne, in a round figure and no less than it is. */
  public static String up(Measure<Force> load) {
    return told(load, round(load, RoundingMode.UP));
  }

  /** Two figures, and no decimals but of less than one. */
  private static BigDecimal round(Measure<Force> load, RoundingMode mode) {
    BigDecimal exact = exactly(load);
    boolean oneFigure = exact.precision() - exact.scale() == 1;
    return exact.round(new MathContext(oneFigure ? 1 : 2, mode));
  }

  private static BigDecimal exactly(Measure<Force> load) {
    return BigDecimal.valueOf(massOf(load).getValue()).round(EXACT);
  }

  private static String told(Measure<Force> load, BigDecimal number) {
    String unit = load.getUnit().equals(ShopUnits.POUND_FORCE) ? " lb" : " kg";
    return number.stripTrailingZeros().toPlainString() + unit;
  }
}
