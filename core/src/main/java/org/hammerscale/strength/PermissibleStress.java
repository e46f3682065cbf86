package org.hammerscale.strength;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Material;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.hammerscale.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * The stress that a part may bear: the yield strength of its metal ÷ a safety factor that the
 * caller chooses. Other name: {@index "allowable stress"} (US).
 *
 * <pre>{@code
 * PermissibleStress steel = PermissibleStress.of(megapascals(235), 2);
 * steel.tension()                                             // 117.5 MPa  to compare a stress with
 * steel.shear()                                               // 67.84 MPa  to compare a shear with
 * PermissibleStress.of(Material.WROUGHT_IRON, 3).strength()   // 159 MPa    the low value of its range
 * }</pre>
 *
 * <p>The strength is that of the soft or hot-worked metal, which the fire leaves. A safety factor
 * has to cover what is not counted: slamming, wind, a child on the gate, wear, flaws. This is not a
 * certified design: local codes govern, and overhead and public-safety hardware belongs into the
 * hands of a licensed engineer.
 *
 * <p>Source: strength of materials; yield in shear after von Mises, 1/√3 of that in tension.
 */
public final class PermissibleStress {
  private static final double MOST_SAFETY = 100;
  private static final Source VON_MISES =
      Source.computed("a metal yields in shear at 1/√3 of its yield in tension (von Mises)");

  private final Measure<Pressure> strength;
  private final double safety;
  private final String basis;
  private final Source source;

  private PermissibleStress(
      Measure<Pressure> strength, double safety, String basis, Source source) {
    this.strength = strength;
    this.safety = safety;
    this.basis = basis;
    this.source = source;
    if (!(safety >= 1 && safety <= MOST_SAFETY)) {
      throw new IllegalArgumentException(
          "safety must lie between 1 and "
              + MOST_SAFETY
              + ", was "
              + safety
              + "; give the number that the yield strength is divided by");
    }
  }

  /**
   * From a yield strength of the caller's own.
   *
   * @param yieldStrength the stress at which the metal begins to give for good, cold; more than
   *     zero
   * @param safety the safety factor, 1 (none) to 100
   * @return the permissible stress
   * @throws IllegalArgumentException if an argument lies outside its range
   */
  public static PermissibleStress of(Quantity<Pressure> yieldStrength, double safety) {
    return new PermissibleStress(
        Arguments.positivePressure("yield strength", yieldStrength),
        safety,
        "yield strength given by the caller",
        Source.commonPractice("yield strength and safety factor chosen by the caller"));
  }

  /**
   * From the yield strength of a material; where its source gives a range, from the low value.
   *
   * @param material what the part is made of; its yield strength must be known
   * @param safety the safety factor, 1 (none) to 100
   * @return the permissible stress
   * @throws IllegalArgumentException if the yield strength is not known, or the factor lies outside
   *     its range
   */
  public static PermissibleStress of(Material material, double safety) {
    Objects.requireNonNull(material, "material");
    return new PermissibleStress(
        material.yieldStrength().low(),
        safety,
        (material.yieldStrength().isExact() ? "" : "low ") + "yield strength of " + material.name(),
        material.source(Material.Property.YIELD_STRENGTH));
  }

  /** {@return the yield strength that it rests on, before it is divided} */
  public Measure<Pressure> strength() {
    return strength;
  }

  /** {@return the safety factor, as the caller chose it} */
  public double safety() {
    return safety;
  }

  /**
   * The permissible stress in tension, compression and bending: strength ÷ safety.
   *
   * @return the stress, exact for that strength, in its unit
   */
  public Measure<Pressure> tension() {
    return strength.withValue(tension(Notes.NONE));
  }

  /**
   * The permissible stress in shear: strength ÷ (√3 × safety). It is compared with the peak in the
   * middle of the section.
   *
   * @return the stress, exact for that strength, in its unit
   */
  public Measure<Pressure> shear() {
    return strength.withValue(shear(Notes.NONE));
  }

  /** {@return where the strength comes from} */
  public Source source() {
    return source;
  }

  /** {@return that no design is certified by it, and what is not counted} */
  public List<Caution> cautions() {
    return LoadCautions.OF_STRENGTH;
  }

  /** {@return how the permissible stress in tension was found} */
  public Working working() {
    return Notes.taken("permissible stress", ShopUnits.MILLIMETRE, this::tension)
        .withSource(source)
        .withCautions(cautions());
  }

  /** {@return how the permissible stress in shear was found} */
  public Working shearWorking() {
    return Notes.taken("permissible stress in shear", ShopUnits.MILLIMETRE, this::shear)
        .withSource(source)
        .withSource(VON_MISES)
        .withCautions(cautions());
  }

  private double tension(Notes n) {
    double y = n.value("Y", basis, "", strength.getValue(), strength.getUnit());
    double s = n.number("s", "safety factor, chosen by the caller", "", safety);
    return n.value("σ", "permissible stress", "Y / s", y / s, strength.getUnit());
  }

  private double shear(Notes n) {
    double t = tension(n);
    String meaning = "permissible stress in shear";
    return n.value("τ", meaning, "σ / √3", t / Math.sqrt(3), strength.getUnit());
  }

  /** Notes the strength, the factor and the permissible stress σ, which is given back. */
  double noted(Notes n, StressUnits units) {
    double y = units.givenStress(n, "Y", basis, strength);
    double s = n.number("s", "safety factor, chosen by the caller", "", safety);
    return units.pressure(n, "σ", "permissible stress", "Y / s", y / s);
  }

  /** Strength and factor, each by equals. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof PermissibleStress stress
        && strength.equals(stress.strength)
        && safety == stress.safety
        && basis.equals(stress.basis)
        && source.equals(stress.source);
  }

  @Override
  public int hashCode() {
    return Objects.hash(strength, safety, basis, source);
  }

  /** The stress and what it rests on. */
  @Override
  public String toString() {
    return tension() + ": " + strength + ", " + basis + ", ÷ " + safety;
  }
}
