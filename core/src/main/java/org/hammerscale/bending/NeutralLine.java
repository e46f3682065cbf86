package org.hammerscale.bending;

import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;
import org.jspecify.annotations.Nullable;

/**
 * Which line in the thickness of a bent bar keeps its length: a rule for the bar that a {@link
 * Bend} uses. Other names: {@index "neutral axis"}, {@index "bend allowance"}, {@index K-factor}.
 *
 * <p>Hot bending keeps the section, and then the mean line keeps its length, whatever the radius:
 * that is {@link #MEAN_LINE}. The other rules are for cold sheet, which thins in the bend: they use
 * less bar, and {@link Bend#bentThickness} tells the thinning that they imply. On bar thicker than
 * 3/16 in they carry a caution.
 *
 * <pre>{@code
 * Section strap = Section.flat(inches(1), inches("1/4"));
 * NeutralLine.MEAN_LINE.fraction(inches("1/4"), strap)  // 0.5  hot: the middle, whatever the radius
 * NeutralLine.DIN_6935.fraction(inches("1/4"), strap)  // 0.325  cold: nearer the inside of a tight bend
 * NeutralLine.dinFactor(0.65)  // K-factor of 0.325  the same, from a DIN table's own factor
 * }</pre>
 */
public final class NeutralLine {
  /**
   * The middle of the thickness: ρ = R + t/2. For hot bending, where the section is kept.
   *
   * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 111; it is exact by Pappus' theorem for
   * any bend that keeps its section.
   */
  public static final NeutralLine MEAN_LINE =
      new NeutralLine(Rule.MEAN, 0.5, "mean line", BentBar.MEAN_LINE);

  /**
   * Cold bending of flat steel by DIN 6935: ρ = R + k t/2 with k = 0.65 + ½ lg(R/t) up to R = 5 t,
   * and 1 beyond. It is not defined for radii below about a twentieth of the thickness, where k
   * falls below zero. For bends of up to 15° (opening angle 165° and more) the standard neglects
   * the {@linkplain Bend#deduction deduction}.
   *
   * <p>Source: DIN 6935, its factor k read.
   */
  public static final NeutralLine DIN_6935 =
      new NeutralLine(
          Rule.DIN,
          0,
          "DIN 6935",
          Source.read(
              "DIN 6935, Cold bending of flat rolled steel", "factor k, as public pages quote it"));

  /**
   * Soft copper and soft brass, cold: (0.55 t + 1.57 R) × angle / 90°.
   *
   * <p>Source: <cite>Machinery's Handbook</cite>, 31st ed., p. 1421.
   */
  public static final NeutralLine HANDBOOK_SOFT_COPPER =
      handbook(0.55, "handbook allowance for soft copper and brass");

  /**
   * Soft steel, aluminium, half-hard copper and brass, cold: (0.64 t + 1.57 R) × angle / 90°.
   *
   * <p>Source: <cite>Machinery's Handbook</cite>, 31st ed., p. 1421.
   */
  public static final NeutralLine HANDBOOK_SOFT_STEEL =
      handbook(0.64, "handbook allowance for soft steel and aluminium");

  /**
   * Bronze, hard copper, cold-rolled and spring steel, cold: (0.71 t + 1.57 R) × angle / 90°.
   *
   * <p>Source: <cite>Machinery's Handbook</cite>, 31st ed., p. 1421.
   */
  public static final NeutralLine HANDBOOK_BRONZE =
      handbook(0.71, "handbook allowance for bronze and hard steel");

  private static final Measure<Length> THICKEST_SHEET = Measures.inches(3 / 16d);
  private static final double DIN_FULL_FROM = 5;

  private enum Rule {
    MEAN,
    FRACTION,
    DIN,
    HANDBOOK
  }

  private final Rule rule;
  private final double value;
  private final String name;
  private final Source source;

  private NeutralLine(Rule rule, double value, String name, Source source) {
    this.rule = rule;
    this.value = value;
    this.name = name;
    this.source = source;
  }

  private static NeutralLine handbook(double allowance, String name) {
    return new NeutralLine(
        Rule.HANDBOOK,
        allowance,
        name,
        Source.read("Machinery's Handbook, 31st ed.", "p. 1421, eq. 32 to 34"));
  }

  /**
   * A line at a given depth below the inside face: ρ = R + K t. This K, the one of American shops,
   * is a fraction of the <em>whole</em> thickness; for the German k see {@link #dinFactor}.
   *
   * @param k depth ÷ thickness, more than 0 and at most 1; usually 0.33 to 0.5
   * @return the rule
   * @throws IllegalArgumentException if k lies outside that range
   */
  public static NeutralLine kFactor(double k) {
    return new NeutralLine(
        Rule.FRACTION,
        Arguments.number("k", k, 1, "it is the depth of the line as a part of the thickness"),
        "K-factor of " + k,
        Source.commonPractice("bend allowance = angle × (R + K t)"));
  }

  /**
   * A line by the German k-factor, which is relative to <em>half</em> the thickness: ρ = R + k t/2.
   *
   * @param k depth ÷ half the thickness, more than 0 and at most 2; 1 is the mean line
   * @return the rule; its {@linkplain #kFactor K-factor} is k/2
   * @throws IllegalArgumentException if k lies outside that range
   */
  public static NeutralLine dinFactor(double k) {
    return kFactor(
        Arguments.number("k", k, 2, "it is the depth of the line as a part of half the thickness")
            / 2);
  }

  /**
   * How deep the line lies below the inside face, as a fraction of the thickness: the K-factor that
   * the rule comes to. The handbook's 1.57 is taken as π/2.
   *
   * @param insideRadius the inside radius of the bend, not negative
   * @param section the bar
   * @return the fraction of the thickness, 0.5 for the mean line
   * @throws IllegalArgumentException if the radius is negative, or too small for DIN 6935
   */
  public double fraction(Quantity<Length> insideRadius, Section section) {
    Section.requireArea("section", section);
    Measure<Length> radius = Arguments.notNegative("inside radius", insideRadius);
    return switch (rule) {
      case MEAN, FRACTION -> value;
      case HANDBOOK -> value * 2 / Math.PI;
      case DIN -> dinFactor(Notes.NONE, radius.ratio(section.thickness()), radius) / 2;
    };
  }

  /** {@return where the rule comes from} */
  public Source source() {
    return source;
  }

  /** The radius ρ of the line; R and t must have been noted. */
  double radius(Notes n, double r, double t, Measure<Length> radius) {
    String meaning = "radius of the line that keeps its length";
    return switch (rule) {
      case MEAN -> n.length("ρ", "radius of the middle of the thickness", "R + t / 2", r + t / 2);
      case FRACTION -> {
        double fraction = n.number("K", "depth of the neutral line ÷ thickness", "", value);
        yield n.length("ρ", meaning, "R + K t", r + fraction * t);
      }
      case DIN -> {
        double k = dinFactor(n, r / t, radius);
        yield n.length("ρ", meaning, "R + k t / 2", r + k * t / 2);
      }
      case HANDBOOK -> {
        double c = n.number("c", "thicknesses that the metal takes for 90°", "", value);
        double length = 2 * (c * t + 1.57 * r) / Math.PI;
        yield n.length("ρ", meaning, "2 (c t + 1.57 R) / π", length);
      }
    };
  }

  boolean keepsSection() {
    return rule == Rule.MEAN;
  }

  boolean neglectsDeductionOf(double degrees) {
    return rule == Rule.DIN && degrees <= 15;
  }

  List<Caution> cautions(Section section) {
    boolean cold = rule == Rule.DIN || rule == Rule.HANDBOOK;
    return cold && section.thickness().isGreaterThan(THICKEST_SHEET)
        ? List.of(
            Caution.limit(
                "the "
                    + name
                    + " is a rule for cold sheet up to about "
                    + THICKEST_SHEET
                    + ", the bar is "
                    + section.thickness()
                    + " thick: bent hot it keeps its mean line and needs more length",
                source))
        : List.of();
  }

  private static double dinFactor(Notes n, double ratio, Measure<Length> radius) {
    String meaning = "depth of the neutral line ÷ half the thickness";
    if (ratio > DIN_FULL_FROM) {
      return n.number("k", meaning, "", 1);
    }
    double k = 0.65 + Math.log10(ratio) / 2;
    if (!(k > 0)) {
      throw new IllegalArgumentException(
          "inside radius for this neutral line must be more than 0.0501 of the thickness for DIN 6935, was "
              + radius
              + "; use the mean line, or SquareCorner for a sharp one");
    }
    return n.number("k", meaning, "0.65 + lg(R / t) / 2", k);
  }

  /** Same rule, same factor. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof NeutralLine line && rule == line.rule && value == line.value;
  }

  @Override
  public int hashCode() {
    return Objects.hash(rule, value);
  }

  /** The name of the rule, such as {@code mean line}. */
  @Override
  public String toString() {
    return name;
  }
}
