package org.hammerscale.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Bar;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.Measures;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Caution;
import org.hammerscale.working.Source;

/**
 * A published {@index "rule of thumb"} for what scale takes of a forging, as a part of its mass.
 * Such rules stand beside {@link ScaleLoss} for comparison, and never enter it: they come from
 * works that heat thick pieces, and a thin strap loses several times as much of itself.
 *
 * <pre>{@code
 * ScaleRule rule = ScaleRule.forgingOf(kilograms(2));
 * rule  // forging under 5 kg: 7.5 % of net mass  the works' rule for a piece of this mass
 * rule.loss(kilograms(2), 1)  // 0.15 kg  in one heat
 * ScaleRule.FLAME_FURNACE.share(3)  // 0.0588 (0.04918 to 0.06841)  of the metal, in three heats
 * Bar strap = Bar.of(Section.flat(millimetres(25), millimetres(6)), Material.MILD_STEEL);
 * rule.cautions(strap, kilograms(2)).size()  // 1  it was not made for so thin a strap
 * }</pre>
 *
 * <p>A rule that states one number has no spread to give; it is a rule, not a measurement. Of a
 * range the middle is given as likely.
 *
 * <p>Source: each rule's own {@link #source}.
 */
public final class ScaleRule {
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
  private static final String NET = "net mass";
  private static final String HEATED = "heated mass";
  private static final String MATERIAL = "material";
  private static final Source TEXTBOOK =
      Source.read("textbook rule for costing forgings", "machine cost and work measurement");
  private static final Source HANDBOOK =
      Source.fromMemory("figures commonly quoted in handbooks", "");
  private static final Source RINGS =
      Source.read("Morales-Franco and others, corrosion congress, abstract", "AISI 4140 rings");

  /** 7.5 % of the net mass. */
  public static final ScaleRule FORGING_UNDER_5_KG =
      job("forging under 5 kg", 7.5, 7.5, NET, TEXTBOOK).forMasses(0, 5);

  /** 6 % of the net mass. */
  public static final ScaleRule FORGING_5_TO_12_5_KG =
      job("forging of 5 to 12.5 kg", 6, 6, NET, TEXTBOOK).forMasses(5, 12.5);

  /** 5 % of the net mass. */
  public static final ScaleRule FORGING_OVER_12_5_KG =
      job("forging over 12.5 kg", 5, 5, NET, TEXTBOOK).forMasses(12.5, NO_LIMIT);

  /** Slabs, blooms and billets: 1.5 to 3 % of what is reheated, each time. */
  public static final ScaleRule REHEATING_FURNACE =
      eachHeat(
          "reheating furnace",
          1.5,
          3,
          "reheated steel",
          Source.read("Abuluwefa, thesis, McGill University, 1992", "abstract"));

  /** 0.7 to 1.5 % of the mass, each time. */
  public static final ScaleRule MODERN_FURNACE =
      eachHeat(
          "reheating furnace, standard practice",
          0.7,
          1.5,
          "mass",
          Source.read("article of a furnace maker", "mass loss in reheating"));

  /** Up to 3 % of what goes in. */
  public static final ScaleRule HOT_FINISHED_TUBE =
      job(
          "hot finished tube, normalised",
          0,
          3,
          "feedstock",
          Source.read("Metals 14(12), 2024, article 1402", "abstract"));

  /** Rings as found: 4.5 %. */
  public static final ScaleRule RINGS_AS_FOUND =
      job("ring forging, as found", 4.5, 4.5, MATERIAL, RINGS);

  /** The same rings with gas to air at 1:10: 1.08 %. */
  public static final ScaleRule RINGS_TUNED =
      job("ring forging, gas to air tuned to 1:10", 1.08, 1.08, MATERIAL, RINGS);

  /** 2 to 6 % in the first heat and 1 to 3 % in each further one; weak authority. */
  public static final ScaleRule FIRST_HEAT_AND_REHEATS =
      new ScaleRule(
          "forging loss, first heat and reheats",
          new double[] {2, 6, 1, 3},
          HEATED,
          Source.read("answers to a student's question", "weak authority"),
          0,
          NO_LIMIT);

  /** Billets heated by induction: 0.5 to 1 % each time. */
  public static final ScaleRule INDUCTION = eachHeat("induction heating", 0.5, 1, HEATED, HANDBOOK);

  /** 2 to 3 % in the first heat and 1.5 to 2 % in each further one. */
  public static final ScaleRule FLAME_FURNACE =
      new ScaleRule("flame furnace", new double[] {2, 3, 1.5, 2}, HEATED, HANDBOOK, 0, NO_LIMIT);

  /** Lighter than this part of a rule's heaviest piece a forging is far from it. */
  private static final double FAR = 0.1;

  /** More surface than this many cubes of the same mass have is far from a forging. */
  private static final double THIN = 2;

  private final String name;
  private final double[] percents;
  private final String basis;
  private final Source source;
  private final double from;
  private final double to;

  /** Percents: low and high of the first heat, low and high of each further one. */
  private ScaleRule(
      String name, double[] percents, String basis, Source source, double from, double to) {
    this.name = name;
    this.percents = percents;
    this.basis = basis;
    this.source = source;
    this.from = from;
    this.to = to;
  }

  private static ScaleRule job(String name, double low, double high, String basis, Source source) {
    return new ScaleRule(name, new double[] {low, high, 0, 0}, basis, source, 0, NO_LIMIT);
  }

  private static ScaleRule eachHeat(
      String name, double low, double high, String basis, Source source) {
    return new ScaleRule(name, new double[] {low, high, low, high}, basis, source, 0, NO_LIMIT);
  }

  private ScaleRule forMasses(double least, double most) {
    return new ScaleRule(name, percents, basis, source, least, most);
  }

  /** {@return every rule} */
  public static List<ScaleRule> all() {
    return List.of(
        FORGING_UNDER_5_KG,
        FORGING_5_TO_12_5_KG,
        FORGING_OVER_12_5_KG,
        REHEATING_FURNACE,
        MODERN_FURNACE,
        HOT_FINISHED_TUBE,
        RINGS_AS_FOUND,
        RINGS_TUNED,
        FIRST_HEAT_AND_REHEATS,
        INDUCTION,
        FLAME_FURNACE);
  }

  /**
   * The costing rule for a forging of a mass.
   *
   * @param net the mass of the finished forging, not negative
   * @return one of the three
   * @throws IllegalArgumentException if the mass is negative
   */
  public static ScaleRule forgingOf(Quantity<Mass> net) {
    double mass = Arguments.notNegativeMass("net", net).in(ShopUnits.KILOGRAM);
    if (mass < FORGING_5_TO_12_5_KG.from) {
      return FORGING_UNDER_5_KG;
    }
    return mass <= FORGING_5_TO_12_5_KG.to ? FORGING_5_TO_12_5_KG : FORGING_OVER_12_5_KG;
  }

  /** {@return what it is for} */
  public String name() {
    return name;
  }

  /** {@return what it gives a part of, such as {@code net mass}} */
  public String basis() {
    return basis;
  }

  /** {@return where it was read} */
  public Source source() {
    return source;
  }

  /**
   * The part lost. Each further heat takes its part of what the heats before have left: 1 − (1 − a)
   * (1 − b)ⁿ⁻¹. Rules for the whole job do not ask how many heats it takes.
   *
   * @param heats how many heats, at least one
   * @return the part of the {@linkplain #basis basis}, a ratio
   * @throws IllegalArgumentException if there is no heat
   */
  public Estimate<Dimensionless> share(int heats) {
    if (heats < 1) {
      throw new IllegalArgumentException(
          "heats must be at least 1, was " + heats + "; count each stay in the fire");
    }
    double low = lost(percents[0], percents[2], heats);
    double high = lost(percents[1], percents[3], heats);
    return Estimate.of(ratio(low), ratio(low == high ? low : (low + high) / 2), ratio(high));
  }

  /** The part lost in a first heat and further ones, each a percentage of what is then there. */
  private static double lost(double first, double further, int heats) {
    double once = first / 100;
    return heats == 1 || further == 0
        ? once
        : 1 - (1 - once) * Math.pow(1 - further / 100, heats - 1);
  }

  /**
   * The mass lost.
   *
   * @param mass the mass that the rule gives a part of, see {@link #basis}; not negative
   * @param heats how many heats, at least one
   * @return the mass lost, in the same unit
   * @throws IllegalArgumentException if the mass is negative or there is no heat
   */
  public Estimate<Mass> loss(Quantity<Mass> mass, int heats) {
    Measure<Mass> whole = Arguments.notNegativeMass("mass", mass);
    Estimate<Dimensionless> share = share(heats);
    return Estimate.of(
        whole.multiply(share.low().in(ShopUnits.ONE)),
        whole.multiply(share.likely().in(ShopUnits.ONE)),
        whole.multiply(share.high().in(ShopUnits.ONE)));
  }

  /**
   * Whether a piece is far from those that the rule was made for.
   *
   * @param bar what it is forged from
   * @param mass its mass, not negative
   * @return cautions if its mass lies out of the rule's or far below, or its section is thin for
   *     its mass
   * @throws IllegalArgumentException if the mass is negative
   */
  public List<Caution> cautions(Bar bar, Quantity<Mass> mass) {
    Objects.requireNonNull(bar, "bar");
    Measure<Mass> piece = Arguments.notNegativeMass("mass", mass);
    double kilograms = piece.in(ShopUnits.KILOGRAM);
    List<Caution> cautions = new ArrayList<>();
    double least = from == 0 && to < NO_LIMIT ? FAR * to : from;
    if (kilograms < least || kilograms > to) {
      cautions.add(
          Caution.limit(
              "the rule is made for a "
                  + name
                  + (kilograms < least && from == 0
                      ? ", hardly for less than " + Measures.kilograms(least)
                      : "")
                  + ", was "
                  + piece
                  + "; reckon the scale of its section instead",
              source));
    }
    double side =
        Math.cbrt(kilograms / bar.material().density().in(ShopUnits.KILOGRAM_PER_CUBIC_METRE));
    double perVolume = ScaledSurface.perVolume(bar.section(), bar.section(), ShopUnits.METRE);
    if (perVolume * side > THIN * 6) {
      cautions.add(
          Caution.limit(
              "the rule does not know the section: "
                  + bar.section()
                  + " has "
                  + Math.round(perVolume * side / 6)
                  + " times the surface of a cube of its mass, and loses so much more of itself;"
                  + " reckon the scale of its section instead",
              source));
    }
    return List.copyOf(cautions);
  }

  private static Measure<Dimensionless> ratio(double value) {
    return Measure.of(value, ShopUnits.ONE);
  }

  /** Name, percents and basis. */
  @Override
  public String toString() {
    boolean further = percents[3] > 0 && percents[3] != percents[1];
    return name
        + ": "
        + percent(percents[0], percents[1])
        + (further ? ", then " + percent(percents[2], percents[3]) : "")
        + " of "
        + basis
        + (percents[3] > 0 && !further ? " in each heat" : "");
  }

  private static String percent(double low, double high) {
    return (low == high ? "" : ratio(low) + " to ") + ratio(high) + " %";
  }
}
