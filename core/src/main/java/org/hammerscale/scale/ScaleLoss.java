package org.hammerscale.scale;

import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * What the fire takes from iron or steel as scale: the metal lost from each surface, and what that
 * makes of sizes, mass and share. Other names: {@index "fire scale"}, {@index "mill scale"},
 * {@index "hammer scale"}, {@index oxidation}, {@index burn-off}. Each heat whose scale is knocked
 * off takes as much as the first; scale that is kept grows as one, with the root of the time.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
 * HeatPlan plan = HeatPlan.soaking(celsius(1150), minutes(5)).in(Atmosphere.STILL_AIR);
 * ScaleLoss loss = ScaleLoss.of(strap, plan);
 * loss.perSurface()  // 0.134 mm (0.06701 mm to 0.268 mm)  off each face, in one heat
 * loss.thickness()  // 5.732 mm (5.464 mm to 5.866 mm)  what 6 mm is left with
 * loss.bore(millimetres(10))  // 10.27 mm (10.13 mm to 10.54 mm)  a hole grows
 * loss.share()  // 0.0554 (0.0277 to 0.1108)  of the strap's metal is gone
 * ScaleLoss.of(strap, plan.inHeats(3)).perSurface().likely()  // 0.4021 mm  three heats, three skins
 * }</pre>
 *
 * <p>Always an estimate. The likely value is that of {@link ScaleLaw#MI}, but no faster than the
 * air can feed it, which counts in heats of a few minutes. Round it go the factors of the fire
 * ({@link Atmosphere}), of the time and of the number of heats, which err apart: the squares of
 * their logarithms add. The spread also holds what the other published laws say of the same heat,
 * fed alike. A thin section loses the larger part of itself. Edges, which scale from two sides,
 * lose more than the faces told of here. The share is the first-order one: surface × depth.
 *
 * <p>It holds oxide alone: metal that burns off the surface. What stays in fillets, is trimmed off
 * or is cut too long for safety is the hand's, and so is all of the scale where an allowance for
 * the hand stands.
 *
 * <p>Source: the parabolic law of oxidation with the constants of {@link ScaleLaw}.
 */
public final class ScaleLoss {
  private final Bar bar;
  private final HeatPlan plan;
  private final ScaleLaw law;
  private final boolean fed; // grows no faster than still air brings oxygen
  private final Unit<Length> unit;
  private final Estimate<Length> perSurface;

  private ScaleLoss(Bar bar, HeatPlan plan, ScaleLaw law, boolean fed) {
    this.bar = bar;
    this.plan = plan;
    this.law = law;
    this.fed = fed;
    this.unit = bar.section().width().getUnit();
    this.perSurface = estimate();
  }

  /**
   * What a plan of heats takes from a bar.
   *
   * @param bar a bar of wrought iron or plain steel
   * @param plan the heats
   * @return the loss, by {@link ScaleLaw#MI} where the air can feed it
   * @throws IllegalArgumentException if the metal is neither iron nor plain steel
   */
  public static ScaleLoss of(Bar bar, HeatPlan plan) {
    Objects.requireNonNull(bar, "bar");
    ScaleCautions.checkIron(bar.material());
    return new ScaleLoss(bar, Objects.requireNonNull(plan, "plan"), ScaleLaw.MI, true);
  }

  /**
   * The same with its likely value by another law, still no faster than the air can feed it.
   *
   * @param other a law
   * @return the loss
   */
  public ScaleLoss by(ScaleLaw other) {
    return new ScaleLoss(bar, plan, Objects.requireNonNull(other, "other"), fed);
  }

  /**
   * The same as if oxygen were never short: the bare parabola of its law, as published tables print
   * it, and long stays in the fire come to.
   *
   * @return the loss
   */
  public ScaleLoss unfed() {
    return new ScaleLoss(bar, plan, law, false);
  }

  /**
   * The same bar by the same law in other heats, to compare.
   *
   * @param other the heats
   * @return the loss
   */
  public ScaleLoss during(HeatPlan other) {
    return new ScaleLoss(bar, Objects.requireNonNull(other, "other"), law, fed);
  }

  /** {@return the bar} */
  public Bar bar() {
    return bar;
  }

  /** {@return the heats} */
  public HeatPlan plan() {
    return plan;
  }

  boolean isFed() {
    return fed;
  }

  /** {@return the law that its likely value goes by} */
  public ScaleLaw law() {
    return law;
  }

  /**
   * The thickness of metal lost from each bare surface in all heats.
   *
   * @return the depth, in the unit of the section's width
   */
  public Estimate<Length> perSurface() {
    return perSurface;
  }

  /**
   * How thick the scale is at the end, if it were dense: of one heat, or of all if it is kept.
   *
   * @return the thickness, in the unit of the section's width
   */
  public Estimate<Length> scale() {
    double heats = plan.isScaleKept() ? 1 : plan.heats();
    return perSurface.multiply(1 / (law.metalPerScale() * heats));
  }

  /**
   * The part of the bar's mass that is lost: way round × depth ÷ area, at most all of it. The way
   * round is that of the outside, and of the inside of a tube.
   *
   * @return the part, a ratio from 0 to 1
   */
  public Estimate<Dimensionless> share() {
    return map(ShopUnits.ONE, x -> share(Notes.NONE, x));
  }

  /**
   * The mass lost from a length of the bar that is heated.
   *
   * @param length a length, not negative
   * @return the mass: pounds for a section in inches, else kilograms
   * @throws IllegalArgumentException if the length is negative
   */
  public Estimate<Mass> mass(Quantity<Length> length) {
    Measure<Mass> whole = bar.mass(length);
    return map(whole.getUnit(), x -> whole.getValue() * share(Notes.NONE, x));
  }

  /** {@return the bar's width after the fire, in its unit} */
  public Estimate<Length> width() {
    return less(bar.section().width(), 2 * ScaledSurface.acrossWidth(bar.section()));
  }

  /** {@return the bar's thickness after the fire, in the unit of its width} */
  public Estimate<Length> thickness() {
    return outside(bar.section().thickness());
  }

  /**
   * How thick a tube's wall is after the fire, which takes it from both sides.
   *
   * @return the wall, in the unit of the section's width
   * @throws IllegalArgumentException if the section is solid
   */
  public Estimate<Length> wall() {
    return outside(bar.section().wall());
  }

  /**
   * What a size between two outside faces becomes: less by twice the depth.
   *
   * @param size the size before the fire, not negative
   * @return the size after it, at least zero, in the unit of the bar's width
   * @throws IllegalArgumentException if the size is negative
   */
  public Estimate<Length> outside(Quantity<Length> size) {
    return less(Arguments.notNegative("size", size), 2);
  }

  /**
   * What a bore or a gap becomes: more by twice the depth.
   *
   * @param size the size before the fire, not negative
   * @return the size after it, in the unit of the bar's width
   * @throws IllegalArgumentException if the size is negative
   */
  public Estimate<Length> bore(Quantity<Length> size) {
    double before = Arguments.notNegative("size", size).in(unit);
    return map(unit, x -> before + 2 * x);
  }

  /**
   * The bar that must be added for a feature forged from it, so that its metal is still there after
   * the fire: depth × surface ÷ area of the bar. The surface is the mean of that of the bar it came
   * from and that of the finished stretch, so that a thin tip takes more. A stretch that begins and
   * ends in the bar's own section needs none: plain or bent, it comes out of the fire thinner, not
   * shorter. Nor does one whose losses {@linkplain Feature#holdsScale hold the scale} already, as
   * the allowances for the hand do.
   *
   * @param feature a feature forged from the bar
   * @return the length of bar, in the unit of its width; exactly zero where none is needed
   */
  public Estimate<Length> allowance(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    return feature.holdsScale() || ScaledSurface.keepsSection(bar, feature)
        ? Estimate.exact(bar.section().width().withValue(0))
        : perSurface.multiply(ScaledSurface.of(Notes.NONE, bar, feature) / area());
  }

  /**
   * The metal that the fire takes from a feature, whether bar must be added for it or not.
   *
   * @param feature a feature forged from the bar
   * @return the mass: pounds for a section in inches, else kilograms; at most all the metal in it
   */
  public Estimate<Mass> taken(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    Measure<Mass> stock = bar.mass(feature.stock(bar.section()).likely());
    double surface = ScaledSurface.of(Notes.NONE, bar, feature);
    double volume = feature.stock(bar.section()).likely().in(unit) * area();
    double ratio = volume == 0 ? 0 : surface / volume;
    return map(stock.getUnit(), x -> stock.getValue() * Math.min(1, x * ratio));
  }

  /** {@return what to know before trusting it} */
  public List<Caution> cautions() {
    return ScaleCautions.of(this);
  }

  /**
   * Where the fire takes so much of a feature that its size is in doubt.
   *
   * @param feature a feature forged from the bar
   * @return a caution if it likely loses more than a quarter of its thinner end; else none
   */
  public List<Caution> cautions(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    return ScaleCautions.of(this, feature);
  }

  /** {@return how the likely {@link #perSurface} was found} */
  public Working working() {
    return working("metal that the fire takes from each surface, " + plan, this::depth);
  }

  /** {@return how the likely {@link #share} was found} */
  public Working shareWorking() {
    return working(
        "part of the bar that the fire takes, " + bar.section(), n -> share(n, depth(n)));
  }

  /**
   * How the bar that must be added for a feature was found.
   *
   * @param feature a feature that does not begin and end in the bar's own section, nor holds the
   *     scale already
   * @return the working of the likely {@link #allowance}
   * @throws IllegalArgumentException if the feature needs no allowance
   */
  public Working allowanceWorking(Feature feature) {
    Objects.requireNonNull(feature, "feature");
    if (feature.holdsScale()) {
      throw new IllegalArgumentException(
          "feature must not hold the scale already to need an allowance, was "
              + feature.name()
              + " with an allowance for the hand; ask the feature without it");
    }
    if (ScaledSurface.keepsSection(bar, feature)) {
      throw new IllegalArgumentException(
          "feature must be forged to another section than the bar's to need an allowance, was "
              + feature.name()
              + "; it comes out thinner instead, see thickness()");
    }
    return working("bar that the fire takes for the " + feature.name(), n -> allowance(n, feature));
  }

  private Working working(String title, Notes.Calculation calculation) {
    return Notes.taken(title, unit, calculation)
        .withSource(law.source())
        .withSource(plan.atmosphere().source())
        .withCautions(cautions());
  }

  private double depth(Notes n) {
    double x = law.metal(n, plan.each());
    if (fed) {
      double supplied = OxygenSupply.metal(law, plan, plan.each());
      double v = n.number("v", "part of it that the air can feed", "", x == 0 ? 1 : supplied / x);
      x = n.value("y", "metal lost in one heat so fed", "v x", v * x, ShopUnits.MILLIMETRE);
    }
    String loss = fed ? "y" : "x";
    double c = n.number("c", "factor of the " + plan.atmosphere().name(), "", likelyFactor());
    double heats = n.number("N", "heats", "", plan.heats());
    double u = n.number("u", "millimetres in the unit of the section", "", millimetres());
    return plan.isScaleKept()
        ? n.length(
            "L", "metal lost, scale kept", "c √N " + loss + " / u", c * Math.sqrt(heats) * x / u)
        : n.length("L", "metal lost, scale knocked off", "c N " + loss + " / u", c * heats * x / u);
  }

  private double share(Notes n, double lost) {
    double p = n.given("p", "way round what is bare", ScaledSurface.perimeter(section(), unit));
    double a = n.givenArea("A", "area of the section", area());
    double s = p * lost / a;
    return s < 1
        ? n.number("S", "part of the mass", "p L / A", s)
        : n.number("S", "part of the mass: all of it", "1", 1);
  }

  private double allowance(Notes n, Feature feature) {
    double x = n.given("L", "metal lost from each surface", perSurface.likely().in(unit));
    double b = ScaledSurface.of(n, bar, feature);
    double a = n.givenArea("A", "area of the bar", area());
    double r = n.number("r", "surface over area", "b / A", b / a);
    return n.length("a", "bar to add", "L r", x * r);
  }

  private Section section() {
    return bar.section();
  }

  private double area() {
    return section().area().getValue();
  }

  private double likelyFactor() {
    return plan.atmosphere().factor().likely().in(ShopUnits.ONE);
  }

  private double millimetres() {
    return Measure.of(1, unit).in(ShopUnits.MILLIMETRE);
  }

  private Estimate<Length> estimate() {
    ScaleSpread spread = ScaleSpread.of(law, plan, fed);
    double likely = depth(Notes.NONE);
    return Estimate.of(
        Measure.of(Math.min(likely, spread.low() / millimetres()), unit),
        Measure.of(likely, unit),
        Measure.of(Math.max(likely, spread.high() / millimetres()), unit));
  }

  private Estimate<Length> less(Measure<Length> size, double depths) {
    double before = size.in(unit);
    return map(unit, x -> Math.max(0, before - depths * x));
  }

  private <Q extends Quantity<Q>> Estimate<Q> map(Unit<Q> to, DoubleUnaryOperator answer) {
    double atLow = answer.applyAsDouble(perSurface.low().in(unit));
    double likely = answer.applyAsDouble(perSurface.likely().in(unit));
    double atHigh = answer.applyAsDouble(perSurface.high().in(unit));
    return Estimate.of(
        Measure.of(Math.min(atLow, atHigh), to),
        Measure.of(likely, to),
        Measure.of(Math.max(atLow, atHigh), to));
  }

  /** Depth, and on a line of their own bar and heats. */
  @Override
  public String toString() {
    return "scale takes " + perSurface + " from each surface\n  of " + bar + "\n  in " + plan;
  }
}
