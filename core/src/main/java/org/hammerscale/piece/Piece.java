package org.hammerscale.piece;

import java.util.List;
import java.util.Objects;
import org.hammerscale.internal.Arguments;
import org.hammerscale.scale.HeatPlan;
import org.hammerscale.scale.ScaleLoss;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;

/**
 * One forged piece: a bar, and the features along it from the end that is measured from.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * Section tip = Section.flat(inches("3/4"), inches("1/8"));
 * Piece leaf = Piece.of(strap,
 *     Barrel.around(inches("1/2"), strap.section()),
 *     Plain.of(strap.section(), inches(9)),
 *     Taper.between(strap.section(), tip, inches(6)));
 * leaf.layout().cutLength()   // 14.4635 in (14.4635 in to 14.8562 in)
 * HeatPlan plan = HeatPlan.soaking(fahrenheit(2100), minutes(1)).inHeats(3);
 * leaf.layout(plan).scaleAllowance()   // 0.1889 in (0.06298 in to 1.06 in)
 * }</pre>
 */
public final class Piece {
  private static final int MOST = 1000;

  private final Bar bar;
  private final List<Feature> features;

  private Piece(Bar bar, List<Feature> features) {
    this.bar = bar;
    this.features = features;
  }

  /**
   * A piece.
   *
   * @param bar what it is forged from
   * @param features its features in order, 1 to 1000, from the marked end
   * @return the piece
   * @throws IllegalArgumentException if there is no feature, or there are too many
   */
  public static Piece of(Bar bar, Feature... features) {
    Objects.requireNonNull(features, "features");
    Objects.requireNonNull(bar, "bar");
    Arguments.count(
        "number of features", features.length, 1, MOST, "a straight cut is one Plain stretch");
    return new Piece(bar, List.of(features));
  }

  /** {@return what it is forged from} */
  public Bar bar() {
    return bar;
  }

  /** {@return its features in order from the marked end} */
  public List<Feature> features() {
    return features;
  }

  /**
   * Where its features lie on the cold bar.
   *
   * @return the layout, with the length to cut and the marks
   */
  public Layout layout() {
    return Layout.of(this);
  }

  /**
   * The same with what the fire takes: bar is added where a stretch is forged to another section.
   * Every stretch is taken to go through every heat of the plan; where only one end is heated, ask
   * {@link ScaleLoss#allowance} for that stretch by itself.
   *
   * @param plan the heats that the piece goes through
   * @return the layout, with the length to cut and the marks, scale counted
   * @throws IllegalArgumentException if the bar is neither iron nor plain steel
   */
  public Layout layout(HeatPlan plan) {
    return Layout.of(this).with(ScaleLoss.of(bar, plan));
  }

  /** The bar and the names of the features. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder("piece of ").append(bar).append(":");
    for (int i = 0; i < features.size(); i++) {
      text.append(i == 0 ? " " : ", ").append(features.get(i).name());
    }
    return text.toString();
  }
}
