package org.hammerscale.stock;

import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.hammerscale.internal.Arguments;
import org.hammerscale.units.LinearDensity;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.jspecify.annotations.Nullable;

/**
 * Bar stock: a section of a material, in any length. What is left of a bar when its pieces are cut
 * off is the {@index offcut}, or {@index drop}.
 *
 * <pre>{@code
 * Bar strap = Bar.of(Section.flat(inches("1 1/2"), inches("1/4")), Material.MILD_STEEL);
 * strap.massPerLength()     // 1.276 lb/ft
 * strap.mass(inches(18))    // 1.914 lb
 * strap.lengthWeighing(pounds(1)).upTo(SIXTEENTH)                            // 9 7/16 in
 * strap.lengthHolding(volume(inches(2), area(inches(1), inches("3/4"))))     // 4 in
 * }</pre>
 */
public final class Bar {
  private final Section section;
  private final Material material;

  private Bar(Section section, Material material) {
    this.section = section;
    this.material = material;
  }

  /**
   * A bar.
   *
   * @param section its section
   * @param material what it is made of
   * @return the bar
   */
  public static Bar of(Section section, Material material) {
    return new Bar(
        Section.requireArea("section", section), Objects.requireNonNull(material, "material"));
  }

  /** {@return its section} */
  public Section section() {
    return section;
  }

  /** {@return what it is made of} */
  public Material material() {
    return material;
  }

  /**
   * Mass per length: area × density.
   *
   * @return the nominal mass per length: lb/ft for a section in inches, else kg/m; rolled bars
   *     differ from it by their mill tolerance
   */
  public Measure<LinearDensity> massPerLength() {
    return Measures.massPerLength(section.area(), material.density());
  }

  /**
   * The metal in a length of bar: length × area.
   *
   * @param length a length, not negative
   * @return the volume, exact, in the cube of the length's unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Volume> volume(Quantity<Length> length) {
    return Measures.volume(Arguments.notNegative("length", length), section.area());
  }

  /**
   * The mass of a length of bar: length × area × density.
   *
   * @param length a length, not negative
   * @return the nominal mass: pounds for a section in inches, else kilograms
   * @throws IllegalArgumentException if the length is negative
   */
  public Measure<Mass> mass(Quantity<Length> length) {
    Measure<Length> own = Arguments.notNegative("length", length).to(section.width().getUnit());
    return Measures.mass(volume(own), material.density());
  }

  /**
   * The length of bar that holds a volume of metal: volume ÷ area.
   *
   * @param volume a volume, not negative
   * @return the length, exact, in the unit of the section's width
   * @throws IllegalArgumentException if the volume is negative
   */
  public Measure<Length> lengthHolding(Quantity<Volume> volume) {
    Unit<Volume> cube = Measures.volume(section.width(), section.area()).getUnit();
    return Measures.length(Arguments.notNegativeVolume("volume", volume).to(cube), section.area());
  }

  /**
   * The length of bar that weighs a mass: mass ÷ (area × density).
   *
   * @param mass a mass, not negative
   * @return the nominal length, in the unit of the section's width
   * @throws IllegalArgumentException if the mass is negative
   */
  public Measure<Length> lengthWeighing(Quantity<Mass> mass) {
    double kilograms = Arguments.notNegativeMass("mass", mass).in(ShopUnits.KILOGRAM);
    double metres = kilograms / massPerLength().in(ShopUnits.KILOGRAM_PER_METRE);
    return Measures.metres(metres).to(section.width().getUnit());
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Bar bar && section.equals(bar.section) && material.equals(bar.material);
  }

  @Override
  public int hashCode() {
    return Objects.hash(section, material);
  }

  /** Section and material, such as {@code 1 1/2 in × 1/4 in flat, mild steel}. */
  @Override
  public String toString() {
    return section + ", " + material.name();
  }
}
