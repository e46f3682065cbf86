package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.Quantity;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Density;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * What a bar is made of.
 *
 * <p>Two conventions for the weight of steel stand side by side in the trade, 0.1 % apart: 7850
 * kg/m³ in European standards (490.06 lb/ft³), and 489.6 lb/ft³ (3.4 lb a foot for each square
 * inch) in American bar tables. {@link #MILD_STEEL} follows the first; for the second, write
 *
 * <pre>{@code
 * Material.MILD_STEEL.withDensity(poundsPerCubicFoot(489.6))   // mild steel, 489.6 lb/ft³
 * }</pre>
 */
public final class Material {
  /** Low-carbon steel at the nominal 7850 kg/m³. */
  public static final Material MILD_STEEL =
      new Material(
          "mild steel",
          Measures.kilogramsPerCubicMetre(7850),
          Source.read("EN 1993-1-2 and EN 1991-1-1", "nominal density of steel"));

  /** Wrought iron at 480 lb/ft³, 10 lb for a yard of inch-square bar. */
  public static final Material WROUGHT_IRON =
      new Material(
          "wrought iron",
          Measures.poundsPerCubicFoot(480),
          Source.read("Ilgen, Forge Work, 1912", "Formulas and Tables 1"));

  private final String name;
  private final Measure<Density> density;
  private final Source source;

  private Material(String name, Measure<Density> density, Source source) {
    this.name = name;
    this.density = density;
    this.source = source;
  }

  /**
   * A material of the caller's own.
   *
   * @param name what the smith calls it
   * @param density mass per volume when cold, more than zero
   * @param source where the density comes from
   * @return the material
   * @throws IllegalArgumentException if the name is blank or the density not more than zero
   */
  public static Material of(String name, Quantity<Density> density, Source source) {
    return new Material(
        Arguments.text("name", name),
        Arguments.positiveDensity("density", density),
        Objects.requireNonNull(source));
  }

  /**
   * This material by another convention of its density.
   *
   * @param newDensity mass per volume when cold, more than zero
   * @return the material
   * @throws IllegalArgumentException if the density is not more than zero
   */
  public Material withDensity(Quantity<Density> newDensity) {
    return of(name, newDensity, Source.commonPractice("density chosen by the caller"));
  }

  /** {@return what the smith calls it} */
  public String name() {
    return name;
  }

  /** {@return mass per volume when cold, nominal} */
  public Measure<Density> density() {
    return density;
  }

  /** {@return where the density comes from} */
  public Source source() {
    return source;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Material material
        && name.equals(material.name)
        && density.equals(material.density)
        && source.equals(material.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, density, source);
  }

  /** Name and density, such as {@code mild steel, 7850 kg/m³}. */
  @Override
  public String toString() {
    return name + ", " + density;
  }
}
