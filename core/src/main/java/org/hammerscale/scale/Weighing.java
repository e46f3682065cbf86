package org.hammerscale.scale;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * A length of bar weighed before and after its heats: what a shop's own fire takes, as a multiple
 * of what clean air would. f = (m₀ − m₁) / m₀ ÷ p x / A, with p the way round the bar, A its area
 * and x the metal that each surface would have lost in clean air. {@link Atmosphere#weighed} learns
 * from it. Other names: {@index calibration}, {@index "test piece"}.
 *
 * <pre>{@code
 * Bar rod = Bar.of(Section.round(millimetres(12)), Material.MILD_STEEL);
 * HeatPlan plan = HeatPlan.soaking(celsius(1150), minutes(2)).inHeats(5);
 * Weighing first = Weighing.of(rod, plan, kilograms(0.36), kilograms(0.321));
 * first.factor()                                      // 0.9023  a little less than clean air would take
 * Weighing second = Weighing.of(rod, plan, kilograms(0.355), kilograms(0.312));
 * Atmosphere mine = Atmosphere.FORGE_FIRE.weighed(first, second);
 * mine.factor()                                       // 0.9691 (0.6312 to 1.488)  the shop's own
 * ScaleLoss.of(rod, plan.in(mine)).perSurface()       // 0.3491 mm (0.2274 mm to 0.536 mm)
 * }</pre>
 *
 * <p>Heat the whole length as a piece is heated, strike off and brush away all scale, and weigh it
 * again; do not forge it, since that changes its surface. Some percent of loss are needed for a
 * scale that shows grams. The surface is that of the bar before the fire.
 *
 * <p>Source: surface × depth, as in {@link ScaleLoss#share}.
 */
public final class Weighing {
  /** More than any fire takes, of what clean air takes. */
  private static final double MOST_FACTOR = 1000;

  private final Bar bar;
  private final HeatPlan plan;
  private final Measure<Mass> before;
  private final Measure<Mass> after;
  private final Measure<Length> byLaw;

  private Weighing(
      Bar bar, HeatPlan plan, Measure<Mass> before, Measure<Mass> after, Measure<Length> byLaw) {
    this.byLaw = byLaw;
    this.bar = bar;
    this.plan = plan;
    this.before = before;
    this.after = after;
  }

  /**
   * A bar weighed before and after.
   *
   * @param bar the bar, of wrought iron or plain steel
   * @param plan the heats that it went through, and the fire it was in
   * @param before its mass before the first heat
   * @param after its mass after the last, scale off; not negative and less than before
   * @return the weighing
   * @throws IllegalArgumentException if a mass is out of range, the heats take nothing by the law
   *     of scale or a thousand times less than was weighed, or the metal is neither iron nor plain
   *     steel
   */
  public static Weighing of(Bar bar, HeatPlan plan, Quantity<Mass> before, Quantity<Mass> after) {
    Objects.requireNonNull(bar, "bar");
    Objects.requireNonNull(plan, "plan");
    Measure<Mass> first = Arguments.notNegativeMass("before", before);
    Measure<Mass> last = Arguments.notNegativeMass("after", after).to(first.getUnit());
    if (!last.isLessThan(first)) {
      throw new IllegalArgumentException(
          "after must be less than before, "
              + first
              + ", was "
              + last
              + "; strike and brush the scale off, then weigh again");
    }
    Measure<Length> byLaw = ScaleLoss.of(bar, plan).perSurface().likely();
    if (!(byLaw.getValue() > 0)) {
      throw new IllegalArgumentException(
          "plan must have heats that make scale, was " + plan + "; tell how long it was hot");
    }
    Weighing weighing = new Weighing(bar, plan, first, last, byLaw);
    double factor = weighing.factor(Notes.NONE);
    if (!(factor <= MOST_FACTOR)) { // as well if it is not finite
      throw new IllegalArgumentException(
          "plan must have heats that can take as much as was weighed, was "
              + plan
              + ", in which clean air takes less than a thousandth of it; tell how hot and how long"
              + " the fire was");
    }
    return weighing;
  }

  /** {@return the heats, and the fire they were in} */
  public HeatPlan plan() {
    return plan;
  }

  /** {@return the mass that the fire took, in the unit of the mass before} */
  public Measure<Mass> lost() {
    return before.subtract(after);
  }

  /** {@return the metal lost as a multiple of that in clean air, a ratio} */
  public Measure<Dimensionless> factor() {
    return Measure.of(factor(Notes.NONE), ShopUnits.ONE);
  }

  /** {@return how the {@link #factor} was found} */
  public Working working() {
    return Notes.taken(toString(), bar.section().width().getUnit(), this::factor)
        .withSource(ScaleLaw.MI.source());
  }

  private double factor(Notes n) {
    Unit<Length> unit = bar.section().width().getUnit();
    double m0 = n.value("m₀", "mass before", "", before.getValue(), before.getUnit());
    double m1 = n.value("m₁", "mass after", "", after.getValue(), before.getUnit());
    double c = plan.atmosphere().factor().likely().in(ShopUnits.ONE);
    double x = n.given("x", "metal that clean air takes off each surface", byLaw.in(unit) / c);
    double p = n.given("p", "way round the bar", ScaledSurface.perimeter(bar.section(), unit));
    double a = n.givenArea("A", "area of the bar", bar.section().area().getValue());
    double s = n.number("S", "part that clean air would take", "p x / A", p * x / a);
    return n.number("f", "times what clean air takes", "(m₀ − m₁) / m₀ / S", (m0 - m1) / m0 / s);
  }

  /** What was lost, and in which heats. */
  @Override
  public String toString() {
    return lost() + " of " + before + " lost in " + plan;
  }
}
