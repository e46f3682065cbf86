package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.Density;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * What a bar is made of: its density, and what else is known of it, each value with its own {@link
 * Source}. A value that is not known is refused, with the {@code with…} method that gives it.
 *
 * <pre>{@code
 * Material.COPPER.solidus()                                  // 1065 °C
 * Material.WROUGHT_IRON.yieldStrength()                      // 190 MPa (159 MPa to 221 MPa)
 * Material.NAVAL_BRASS.has(Material.Property.FORGING_RANGE)  // true
 * Material.COPPER.hardensBelow()                             // 375 °C
 * Material bell = Material.of("bell bronze", kilogramsPerCubicMetre(8700),
 *     Source.commonPractice("weighed in the shop"));
 * bell.has(Material.Property.SOLIDUS)                        // false
 * }</pre>
 *
 * <p>Two conventions for the weight of steel stand side by side in the trade, 0.1 % apart: 7850
 * kg/m³ in European standards (490.06 lb/ft³), and 489.6 lb/ft³ (3.4 lb a foot for each square
 * inch) in American bar tables. {@link #MILD_STEEL} follows the first; for the second, write
 *
 * <pre>{@code
 * Material.MILD_STEEL.withDensity(poundsPerCubicFoot(489.6))   // mild steel, 489.6 lb/ft³
 * }</pre>
 *
 * <p>The values are those of the sources, nominal or typical: bought metal and unknown scrap vary.
 * They serve to plan the fire and to check sizes, not to certify a design.
 */
public final class Material {
  /**
   * Wrought iron at 480 lb/ft³, 10 lb for a yard of inch-square bar, as the old bar tables have it.
   * That is 7689 kg/m³; data sheets give 7700 kg/m³, 0.14 % more. It splits when worked too cold.
   */
  public static final Material WROUGHT_IRON = Metals.wroughtIron();

  /** Low-carbon steel, such as S235, A36, 1018 and 1020, at the nominal 7850 kg/m³. */
  public static final Material MILD_STEEL = Metals.mildSteel();

  /** Medium-carbon steel, such as 1040, 1045 and C45. */
  public static final Material MEDIUM_CARBON_STEEL = Metals.mediumCarbonSteel();

  /** Austenitic stainless steel 304, 1.4301. */
  public static final Material STAINLESS_304 = Metals.stainless304();

  /** Tough-pitch copper, C11000. */
  public static final Material COPPER = Metals.copper();

  /** Naval brass, C46400. */
  public static final Material NAVAL_BRASS = Metals.navalBrass();

  /** Silicon bronze, C65500. */
  public static final Material SILICON_BRONZE = Metals.siliconBronze();

  /** Aluminium 6061. It shows no colour before it melts: measure its heat, do not look for it. */
  public static final Material ALUMINIUM_6061 = Metals.aluminium6061();

  /** What may be known of a material. */
  public enum Property {
    /** {@link Material#density}. */
    DENSITY("density", "Material.of"),
    /** {@link Material#forgingStart} and {@link Material#forgingFinish}. */
    FORGING_RANGE("forging range", "withForgingRange"),
    /** {@link Material#solidus}. */
    SOLIDUS("solidus", "withSolidus"),
    /** {@link Material#expansionPerKelvin}. */
    EXPANSION("expansion", "withExpansionPerKelvin"),
    /** {@link Material#specificHeatInJoulesPerKilogramKelvin}. */
    SPECIFIC_HEAT("specific heat", "withSpecificHeatInJoulesPerKilogramKelvin"),
    /** {@link Material#yieldStrength}. */
    YIELD_STRENGTH("yield strength", "withYieldStrength"),
    /** {@link Material#hardensBelow}. */
    COLD_WORK("bearing of cold work", "withColdWork");

    private final String words;
    private final String factory;

    Property(String words, String factory) {
      this.words = words;
      this.factory = factory;
    }

    /** The property in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  private final String name;
  private final Facts facts;

  private Material(String name, Facts facts) {
    this.name = name;
    this.facts = facts;
  }

  /**
   * A material of the caller's own; the {@code with…} methods tell more of it.
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
        Facts.of(Arguments.positiveDensity("density", density), source));
  }

  /**
   * This material by another convention of its density.
   *
   * @param newDensity mass per volume when cold, more than zero
   * @return the material
   * @throws IllegalArgumentException if the density is not more than zero
   */
  public Material withDensity(Quantity<Density> newDensity) {
    return with(
        facts.withDensity(
            Arguments.positiveDensity("density", newDensity),
            Source.commonPractice("density chosen by the caller")));
  }

  /**
   * This material with the range of temperature that it is forged in, as two points.
   *
   * @param start the hottest to work it at
   * @param finish the coldest to work it at, below the start
   * @param source where they come from
   * @return the material
   * @throws IllegalArgumentException if the two are swapped, or the start is not below the solidus
   */
  public Material withForgingRange(
      Quantity<Temperature> start, Quantity<Temperature> finish, Source source) {
    return withForgingRange(
        Estimate.exact(Arguments.temperature("start", start)),
        Estimate.exact(Arguments.temperature("finish", finish)),
        source);
  }

  /** The same where the source is not sure of the two points. */
  Material withForgingRange(
      Estimate<Temperature> start, Estimate<Temperature> finish, Source source) {
    return with(facts.withForging(new Facts.Range(start, finish), source));
  }

  /**
   * This material with the temperature at which it begins to melt.
   *
   * @param newSolidus the solidus, or the melting point of a pure metal; above the forging range
   * @param source where it comes from
   * @return the material
   * @throws IllegalArgumentException if the forging range reaches it
   */
  public Material withSolidus(Quantity<Temperature> newSolidus, Source source) {
    return with(facts.withSolidus(Arguments.temperature("solidus", newSolidus), source));
  }

  /**
   * This material with its linear expansion.
   *
   * @param perKelvin the part of its length that it grows by for each kelvin or degree Celsius,
   *     such as 11.7e-6 for steel; more than zero, less than 1e-3
   * @param source where it comes from, and the range of temperature that it is the mean of
   * @return the material
   * @throws IllegalArgumentException if the number is out of that range
   */
  public Material withExpansionPerKelvin(double perKelvin, Source source) {
    if (!(perKelvin > 0 && perKelvin < 1e-3)) {
      throw new IllegalArgumentException(
          "perKelvin must be more than zero and less than 0.001, was "
              + perKelvin
              + "; give the part of the length for each kelvin, such as 11.7e-6");
    }
    return with(facts.withExpansion(perKelvin, source));
  }

  /**
   * This material with its specific heat.
   *
   * @param joules the joules that heat one kilogram by one kelvin, such as 486 for steel; from 50
   *     to 5000
   * @param source where it comes from, and the temperature that it holds at
   * @return the material
   * @throws IllegalArgumentException if the number is out of that range
   */
  public Material withSpecificHeatInJoulesPerKilogramKelvin(double joules, Source source) {
    if (!(joules >= 50 && joules <= 5000)) {
      throw new IllegalArgumentException(
          "joules must lie between 50 and 5000, was "
              + joules
              + "; give joules per kilogram and kelvin, such as 486");
    }
    return with(facts.withSpecificHeat(joules, source));
  }

  /**
   * This material with its yield strength.
   *
   * @param strength the stress at which it begins to give for good, cold; more than zero; {@link
   *     Estimate#exact} for a single value
   * @param source where it comes from, and the condition that it holds in
   * @return the material
   * @throws IllegalArgumentException if the strength is not more than zero
   */
  public Material withYieldStrength(Estimate<Pressure> strength, Source source) {
    Objects.requireNonNull(strength, "strength");
    Arguments.positivePressure("strength", strength.low());
    return with(facts.withYield(strength, source));
  }

  /**
   * This material as one that may be worked below its forging range too, and cold, within reason:
   * it hardens under the hammer, but does not crack at once.
   *
   * @param hardensBelow the temperature below which it hardens, and to which it is heated to be
   *     soft again
   * @param source where that comes from
   * @return the material
   */
  public Material withColdWork(Quantity<Temperature> hardensBelow, Source source) {
    return with(facts.withColdWork(Arguments.temperature("hardensBelow", hardensBelow), source));
  }

  /** {@return what the smith calls it} */
  public String name() {
    return name;
  }

  /** {@return mass per volume when cold, nominal} */
  public Measure<Density> density() {
    return facts.density().value();
  }

  /**
   * The hottest that it should be worked at.
   *
   * @return the point; without spread where the source gives but one
   * @throws IllegalArgumentException if it is not known
   */
  public Estimate<Temperature> forgingStart() {
    return known(facts.forging(), Property.FORGING_RANGE).value().start();
  }

  /**
   * The coldest that it should be worked at: back into the fire below it.
   *
   * @return the point; without spread where the source gives but one
   * @throws IllegalArgumentException if it is not known
   */
  public Estimate<Temperature> forgingFinish() {
    return known(facts.forging(), Property.FORGING_RANGE).value().finish();
  }

  /**
   * Below what it hardens under the hammer, of a metal that may be worked cold within reason. Such
   * a metal does not crack at the end of its forging range; {@link Property#COLD_WORK} tells
   * whether it is one.
   *
   * @return the point, a round one
   * @throws IllegalArgumentException if it does not bear cold work, or that is not known
   */
  public Measure<Temperature> hardensBelow() {
    return known(facts.coldWork(), Property.COLD_WORK).value();
  }

  /**
   * The temperature at which it begins to melt; the melting point where the source gives only that.
   *
   * @return the point, nominal
   * @throws IllegalArgumentException if it is not known
   */
  public Measure<Temperature> solidus() {
    return known(facts.solidus(), Property.SOLIDUS).value();
  }

  /**
   * The part of its length that it grows by for each kelvin, a mean over the range that the source
   * names. It does not tell how much steel shrinks from forging heat: the coefficient rises with
   * heat, and steel changes its structure on the way.
   *
   * @return the coefficient in 1/K, a bare number since the unit API has no type for it
   * @throws IllegalArgumentException if it is not known
   */
  public double expansionPerKelvin() {
    return known(facts.expansion(), Property.EXPANSION).value();
  }

  /**
   * The heat that warms one kilogram by one kelvin, at the temperature that the source names.
   *
   * @return the specific heat in J/(kg K), a bare number since the unit API has no type for it
   * @throws IllegalArgumentException if it is not known
   */
  public double specificHeatInJoulesPerKilogramKelvin() {
    return known(facts.specificHeat(), Property.SPECIFIC_HEAT).value();
  }

  /**
   * The stress at which it begins to give for good, cold, in the soft or hot-worked condition that
   * the source names: what the fire leaves. The greater strength of drawn or hardened stock is lost
   * in the fire.
   *
   * @return the yield strength; without spread where the source gives but one value
   * @throws IllegalArgumentException if it is not known
   */
  public Estimate<Pressure> yieldStrength() {
    return known(facts.yield(), Property.YIELD_STRENGTH).value();
  }

  /**
   * Whether a property of it is known.
   *
   * @param property what to ask for
   * @return whether its value can be had
   */
  public boolean has(Property property) {
    Objects.requireNonNull(property, "property");
    return facts.find(property) != null;
  }

  /**
   * Where one of its values comes from, and under which condition it holds.
   *
   * @param property which value
   * @return its source
   * @throws IllegalArgumentException if it is not known
   */
  public Source source(Property property) {
    Objects.requireNonNull(property, "property");
    return known(facts.find(property), property).source();
  }

  private Material with(Facts changed) {
    return new Material(name, changed);
  }

  private <K extends Facts.Known<?>> K known(@Nullable K known, Property property) {
    if (known == null) {
      throw new IllegalArgumentException(
          "material must have a known "
              + property
              + ", was "
              + this
              + "; give it with "
              + property.factory);
    }
    return known;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Material material
        && name.equals(material.name)
        && facts.equals(material.facts);
  }

  @Override
  public int hashCode() {
    return Objects.hash(name, facts);
  }

  /** Name and density, such as {@code mild steel, 7850 kg/m³}. */
  @Override
  public String toString() {
    return name + ", " + density();
  }
}
