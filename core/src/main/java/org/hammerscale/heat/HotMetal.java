package org.hammerscale.heat;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Material;
import org.hammerscale.stock.Material.Property;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * A metal in the fire: what its temperature makes of its length, how much heat it holds and how
 * well it radiates. Steel follows the curves of EN 1993-1-2, 20 to 1200 °C; other metals their mean
 * expansion and specific heat.
 *
 * <pre>{@code
 * HotMetal steel = HotMetal.of(Material.MILD_STEEL);
 * steel.elongation(celsius(800))  // 0.011  a bar of a metre is 11 mm longer
 * steel.specificHeatInJoulesPerKilogramKelvin(celsius(735))  // 5000.0  far above cold steel: it lingers here
 * steel.emissivity()  // 0.8 (0.7 to 0.9)  how well it radiates: what a cooling time is least sure of
 * }</pre>
 *
 * <p>The standard is made for buildings on fire. It jumps at 600, 750, 800 and 900 °C (the length
 * even downward at 750 °C), and its heat of 735 °C is that of heating: below 800 °C on the way down
 * it is least to be trusted.
 *
 * <p>Source: EN 1993-1-2:2005, 3.4.1 and annex C.3.
 */
public final class HotMetal {
  private static final Set<String> CARBON_STEELS =
      names(Material.WROUGHT_IRON, Material.MILD_STEEL, Material.MEDIUM_CARBON_STEEL);
  private static final Set<String> AUSTENITIC_STEELS = names(Material.STAINLESS_304);

  private final Material material;
  private final HeatCurve curve;

  private HotMetal(Material material, HeatCurve curve) {
    this.material = Objects.requireNonNull(material, "material");
    this.curve = curve;
  }

  /**
   * A metal by its name: the library's irons and steels by the curves of the standard, any other by
   * the mean values that its {@link Material} holds.
   *
   * @param material what the bar is made of
   * @return the metal in the fire
   */
  public static HotMetal of(Material material) {
    Objects.requireNonNull(material, "material");
    if (CARBON_STEELS.contains(material.name())) {
      return carbonSteel(material);
    }
    return AUSTENITIC_STEELS.contains(material.name())
        ? austenitic(material)
        : new HotMetal(material, new MeanValueCurve(material));
  }

  /**
   * A plain carbon steel or wrought iron of the caller's own.
   *
   * @param material what the bar is made of
   * @return the metal in the fire, by the curves for carbon steel
   */
  public static HotMetal carbonSteel(Material material) {
    return new HotMetal(material, CarbonSteelCurve.CURVE);
  }

  /**
   * An austenitic stainless steel of the caller's own.
   *
   * @param material what the bar is made of
   * @return the metal in the fire, by the curves for austenitic stainless steel
   */
  public static HotMetal austenitic(Material material) {
    return new HotMetal(material, AusteniticCurve.CURVE);
  }

  /** {@return what it is made of} */
  public Material material() {
    return material;
  }

  /** {@return where its curves come from} */
  public Source source() {
    return curve.source();
  }

  /**
   * How much longer it is than at 20 °C, as a part of its cold length: ΔL/L.
   *
   * @param heat its temperature, from 20 °C to the end of its curve
   * @return the elongation, a plain ratio
   * @throws IllegalArgumentException if the temperature lies outside the curve, with the range
   */
  public double elongation(Quantity<Temperature> heat) {
    return curve.elongation(Notes.NONE, onCurve("heat", heat)) / 1000;
  }

  /**
   * The heat that warms one kilogram by one kelvin.
   *
   * @param heat its temperature, from 20 °C to the end of its curve
   * @return the specific heat in J/(kg K); at a jump that of the hotter side
   * @throws IllegalArgumentException if the temperature lies outside the curve, with the range
   */
  public double specificHeatInJoulesPerKilogramKelvin(Quantity<Temperature> heat) {
    return curve.specificHeat(onCurve("heat", heat));
  }

  /**
   * The heat that brings one kilogram from 20 °C to a temperature: the integral of the specific
   * heat, in closed form.
   *
   * @param heat its temperature, from 20 °C to the end of its curve
   * @return the heat in J/kg
   * @throws IllegalArgumentException if the temperature lies outside the curve, with the range
   */
  public double heatContentInJoulesPerKilogram(Quantity<Temperature> heat) {
    return curve.heatContent(onCurve("heat", heat));
  }

  /**
   * How well it conducts heat.
   *
   * @param heat its temperature, from 20 °C to the end of its curve
   * @return the conductivity in W/(m K)
   * @throws IllegalArgumentException if the temperature lies outside the curve, with the range, or
   *     the metal is not a steel
   */
  public double conductivityInWattsPerMetreKelvin(Quantity<Temperature> heat) {
    return curve.conductivity(onCurve("heat", heat));
  }

  /**
   * How well its scaled surface radiates, as a part of what a black body does: for iron and steel
   * 0.7 to 0.9.
   *
   * @return the emissivity
   * @throws IllegalArgumentException if no published value fits the metal
   */
  public Estimate<Dimensionless> emissivity() {
    return Emissivity.of(this).value();
  }

  /** {@return whether it follows the curves of plain carbon steel, as wrought iron does too} */
  public boolean isCarbonSteel() {
    return curve == CarbonSteelCurve.CURVE;
  }

  /** {@return whether it follows the curves of austenitic stainless steel} */
  public boolean isAustenitic() {
    return curve == AusteniticCurve.CURVE;
  }

  HeatCurve curve() {
    return curve;
  }

  /** A temperature in °C within the range of the curve. */
  double onCurve(String name, Quantity<Temperature> heat) {
    return within(name, heat, curve.hottest());
  }

  private double within(String name, Quantity<Temperature> heat, double hottest) {
    Measure<Temperature> point = Arguments.temperature(name, heat);
    double celsius = point.in(ShopUnits.CELSIUS);
    if (!(celsius >= 20 - 1e-9 && celsius <= hottest + 1e-9)) {
      throw new IllegalArgumentException(
          name
              + " must lie between "
              + Measures.celsius(20).to(point.getUnit())
              + " and "
              + Measures.celsius(hottest).to(point.getUnit())
              + " for "
              + curve.name()
              + ", was "
              + point
              + "; no value is published beyond");
    }
    return celsius;
  }

  /** A temperature in °C up to the solidus, where that lies beyond the curve. */
  double upToTheSolidus(String name, Quantity<Temperature> heat) {
    return within(name, heat, hottest());
  }

  /** The solidus in °C, or the end of the curve where that is hotter or the solidus not known. */
  double hottest() {
    return material.has(Property.SOLIDUS)
        ? Math.max(material.solidus().in(ShopUnits.CELSIUS), curve.hottest())
        : curve.hottest();
  }

  private static Set<String> names(Material... materials) {
    return Stream.of(materials).map(Material::name).collect(Collectors.toUnmodifiableSet());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof HotMetal metal
        && material.equals(metal.material)
        && curve.equals(metal.curve);
  }

  @Override
  public int hashCode() {
    return List.of(material, curve).hashCode();
  }

  /** Its name and its curve. */
  @Override
  public String toString() {
    return material.name()
        + " by the "
        + (curve instanceof MeanValueCurve ? "" : "curves for ")
        + curve.name();
  }
}
