package org.hammerscale.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Working;

/**
 * How a hot dimension shrinks, and how large it must be while hot: the smith's {@index shrinkage}.
 * Other names: {@index "thermal expansion"}, {@index contraction}. Every dimension of the piece, a
 * bore or a gap too, changes by the same part of its cold size: hot = cold (1 + e).
 *
 * <pre>{@code
 * Contraction shrinkage = Contraction.from(celsius(1150), Material.MILD_STEEL);
 * shrinkage.hot(millimetres(300))    // 305.04 mm  to be read hot, for 300 mm when cold
 * shrinkage.cold(millimetres(1000))  // 983.48 mm  what a metre measured hot comes to
 * Contraction dull = Contraction.from(fahrenheit(1652), Material.MILD_STEEL);
 * dull.cold(inches("1/2"))           // 0.4942 in  the bore that a cold drift of 1/2 in leaves
 * }</pre>
 *
 * <p>A drift that has grown warm itself leaves a wider bore.
 *
 * <p>Exact for the temperature given, as far as the published curve is; a heat judged by eye is
 * not, see {@link #coldByEye}. Carbon steel shrinks on itself near 750 °C: from 750 to 860 °C its
 * length stays. Source: EN 1993-1-2:2005, 3.4.1 and annex C.3, for steel from 20 to 1200 °C, and
 * carried on to the solidus with a caution; the mean linear expansion of other metals.
 */
public final class Contraction {
  /** How far the eye may be off, in kelvins. */
  private static final double BY_EYE = 100;

  private final HotMetal metal;
  private final Measure<Temperature> heat;
  private final double celsius;

  private Contraction(HotMetal metal, Measure<Temperature> heat) {
    this.metal = metal;
    this.heat = heat;
    this.celsius = metal.upToTheSolidus("heat", heat);
  }

  /**
   * What cooling from a heat to 20 °C does.
   *
   * @param heat the temperature of the hot piece, from 20 °C to the solidus; steel beyond 1200 °C,
   *     where its curve ends, goes on as the curve does, with a caution
   * @param material what it is made of
   * @return the contraction
   * @throws IllegalArgumentException if the temperature lies outside that range, or the expansion
   *     of the material is not known
   */
  public static Contraction from(Quantity<Temperature> heat, Material material) {
    Objects.requireNonNull(material, "material");
    return from(heat, HotMetal.of(material));
  }

  /**
   * The same for a steel of the caller's own.
   *
   * @param heat the temperature of the hot piece, from 20 °C to the solidus, or to the end of the
   *     curve if that is not known
   * @param metal what it is made of, and by which curve it grows
   * @return the contraction
   * @throws IllegalArgumentException if the temperature lies outside that range, or the expansion
   *     is not known
   */
  public static Contraction from(Quantity<Temperature> heat, HotMetal metal) {
    Objects.requireNonNull(metal, "metal");
    Contraction contraction = new Contraction(metal, Arguments.temperature("heat", heat));
    contraction.elongation();
    return contraction;
  }

  /** {@return the temperature of the hot piece} */
  public Measure<Temperature> heat() {
    return heat;
  }

  /** {@return how much longer it is hot than cold, e, as a part of the cold length} */
  public double elongation() {
    return metal.curve().elongation(Notes.NONE, celsius) / 1000;
  }

  /** {@return how much of the hot length is lost in cooling, e / (1 + e)} */
  public double shrinkage() {
    double e = elongation();
    return e / (1 + e);
  }

  /**
   * What a hot dimension measures when it is cold: hot / (1 + e). It gives the finished bore after
   * a drift, and the cold length between marks that were measured hot.
   *
   * @param hot the dimension as measured hot, not negative
   * @return the dimension at 20 °C, in the same unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Length> cold(Quantity<Length> hot) {
    Measure<Length> given = Arguments.notNegative("hot", hot);
    return given.withValue(cold(Notes.NONE, given, celsius));
  }

  /**
   * What a dimension must measure while hot to be right when cold: cold (1 + e). Set the caliper to
   * it, or choose the drift by it.
   *
   * @param cold the dimension wanted at 20 °C, not negative
   * @return the dimension at the heat, in the same unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Length> hot(Quantity<Length> cold) {
    Measure<Length> given = Arguments.notNegative("cold", cold);
    return given.withValue(hot(Notes.NONE, given, celsius));
  }

  /**
   * The cold dimension where the heat was judged by eye, which may be 100 °C off either way.
   *
   * @param hot the dimension as measured hot, not negative
   * @return the dimension at 20 °C, in the same unit, an estimate
   * @throws IllegalArgumentException if the length is negative
   */
  public Estimate<Length> coldByEye(Quantity<Length> hot) {
    Measure<Length> given = Arguments.notNegative("hot", hot);
    return byEye(given, t -> cold(Notes.NONE, given, t));
  }

  /**
   * The hot dimension where the heat is judged by eye, which may be 100 °C off either way.
   *
   * @param cold the dimension wanted at 20 °C, not negative
   * @return the dimension at the heat, in the same unit, an estimate
   * @throws IllegalArgumentException if the length is negative
   */
  public Estimate<Length> hotByEye(Quantity<Length> cold) {
    Measure<Length> given = Arguments.notNegative("cold", cold);
    return byEye(given, t -> hot(Notes.NONE, given, t));
  }

  /** {@return a caution if a mean coefficient or a curve is stretched to this heat; else none} */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    if (metal.curve() instanceof MeanValueCurve) {
      cautions.add(
          Caution.limit(
              "the expansion of "
                  + metal.material().name()
                  + " is a mean near room temperature, stretched here to "
                  + heat
                  + "; it rises with heat, so expect a little more shrinkage: try one piece first",
              metal.source()));
    }
    double end = metal.curve().hottest();
    if (celsius > end + 1e-9) {
      cautions.add(
          Caution.limit(
              "the curve for "
                  + metal.curve().name()
                  + " ends at "
                  + Measures.celsius(end).to(heat.getUnit())
                  + ", below the heat of "
                  + heat
                  + "; it is carried on as it rises there",
              metal.source()));
    }
    return List.copyOf(cautions);
  }

  /**
   * How the cold dimension was found.
   *
   * @param hot the dimension as measured hot, not negative
   * @return the working of {@link #cold}
   * @throws IllegalArgumentException if the length is negative
   */
  public Working coldWorking(Quantity<Length> hot) {
    Measure<Length> given = Arguments.notNegative("hot", hot);
    return working("cold size of a hot dimension", given.getUnit(), n -> cold(n, given, celsius));
  }

  /**
   * How the hot dimension was found.
   *
   * @param cold the dimension wanted at 20 °C, not negative
   * @return the working of {@link #hot}
   * @throws IllegalArgumentException if the length is negative
   */
  public Working hotWorking(Quantity<Length> cold) {
    Measure<Length> given = Arguments.notNegative("cold", cold);
    return working("hot size of a cold dimension", given.getUnit(), n -> hot(n, given, celsius));
  }

  private Working working(String title, Unit<Length> unit, Notes.Calculation calculation) {
    return Notes.taken(title + ", " + metal.material().name() + " at " + heat, unit, calculation)
        .withSource(metal.source())
        .withCautions(cautions());
  }

  private double cold(Notes n, Measure<Length> dimension, double at) {
    double h = n.given("H", "dimension when hot", dimension.getValue());
    double e = elongation(n, at);
    return n.length("C", "dimension at 20 °C", "H / (1 + e / 1000)", h / (1 + e / 1000));
  }

  private double hot(Notes n, Measure<Length> dimension, double at) {
    double c = n.given("C", "dimension at 20 °C", dimension.getValue());
    double e = elongation(n, at);
    return n.length("H", "dimension when hot", "C (1 + e / 1000)", c * (1 + e / 1000));
  }

  private double elongation(Notes n, double at) {
    double t = n.value("θ", "heat", "", at, ShopUnits.CELSIUS);
    return metal.curve().elongation(n, t);
  }

  private Estimate<Length> byEye(Measure<Length> unit, DoubleUnaryOperator size) {
    double likely = size.applyAsDouble(celsius);
    double cooler = size.applyAsDouble(Math.max(celsius - BY_EYE, 20));
    double hotter = size.applyAsDouble(Math.min(celsius + BY_EYE, metal.hottest()));
    return Estimate.of(
        unit.withValue(Math.min(likely, Math.min(cooler, hotter))),
        unit.withValue(likely),
        unit.withValue(Math.max(likely, Math.max(cooler, hotter))));
  }

  /** Metal, heat and shrinkage. */
  @Override
  public String toString() {
    return metal.material().name()
        + " from "
        + heat
        + ": "
        + Measures.millimetres(1000 * shrinkage())
        + " shorter for each metre measured hot";
  }
}
