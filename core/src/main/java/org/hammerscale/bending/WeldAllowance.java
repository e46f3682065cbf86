package org.hammerscale.bending;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Section;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;
import org.hammerscale.working.Source;

/**
 * How much bar a forge weld takes beyond the finished length: what is upset, scarfed, scaled away
 * and dressed off. Other names: {@index "weld waste"}, {@index "scarf allowance"}, {@index "lap
 * allowance"}.
 *
 * <p>These are bench rules, from three eighths of the thickness to one and a half. Each gives its
 * own value as the likely one. Its low end is what finished rings and links show, since the hand
 * decides more than the rule: four in print took −0.09, 0.51 (reckoned), 0.58 and 0.78 thicknesses
 * over their mean line, so that nine of ten lie between half a thickness less than it and one and a
 * half more. What such pieces took, weld and hand together, tells {@code HandAllowance.BENT}: take
 * one or the other.
 *
 * <pre>{@code
 * Section bar = Section.round(inches("1/2"));
 * WeldAllowance.ONE_THICKNESS.on(bar, inches(10))  // 1/2 in (-1/4 in to 3/4 in)  the usual rule, and what welds took
 * WeldAllowance.LINK.on(bar, inches(10))  // 1 1/2 in (-0.4 in to 2 in)  a rule of the length, for links and rings
 * }</pre>
 */
public final class WeldAllowance {
  /** In thicknesses: m − t s √(1 + 1/n) of the four printed pieces is −0.54. */
  private static final double LEAST = -0.5;

  /** The greatest rule; m + t s √(1 + 1/n) of the same four is 1.43. */
  private static final double MOST = 1.5;

  /** Of the length: the same four took 0.99 to 1.04 times their mean line. */
  private static final double LEAST_OF_LENGTH = -0.04;

  private static final double GOOGERTYS = 0.375;

  /**
   * About one thickness, for upsetting and welding; the usual rule.
   *
   * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 109 (about one diameter for an eye).
   */
  public static final WeldAllowance ONE_THICKNESS =
      published(1, "one thickness", Source.read("Ilgen, Forge Work, 1912", "sec. 109"));

  /**
   * Three eighths of the thickness: 3/8 in on a ring of 1 in bar, the least that is published. The
   * source has this one size. Thicker bar is taken in proportion; for thinner, where so little
   * leaves no scarf, the 3/8 in stay, but no more than one thickness.
   *
   * <p>Source: Googerty, <cite>Hand-Forging and Wrought-Iron Ornamental Work</cite>, 1911, p. 69.
   */
  public static final WeldAllowance THREE_EIGHTHS =
      published(
          GOOGERTYS,
          "three eighths of the thickness",
          Source.read(
              "Googerty, Hand-Forging and Wrought-Iron Ornamental Work, 1911",
              "p. 69, for 1 in bar"));

  /**
   * 0.78 of the diameter: what a chain ring of 7/16 in round, cut 8 in long, leaves for its weld.
   *
   * <p>Source: Ilgen, <cite>Forge Work</cite>, 1912, sec. 81; the ratio is computed from its sizes.
   */
  public static final WeldAllowance CHAIN_RING =
      published(0.78, "0.78 of the thickness", Source.read("Ilgen, Forge Work, 1912", "sec. 81"));

  /** One to one and a half thicknesses, as is customary. Source: common practice. */
  public static final WeldAllowance CUSTOMARY =
      new WeldAllowance(
          false,
          LEAST,
          1.25,
          MOST,
          "one to one and a half thicknesses",
          Source.commonPractice("1 to 1 1/2 thicknesses for a forge weld"));

  /**
   * A tenth to a fifth of the finished length, as one page gives for forged links and rings.
   * Printed ones took far less.
   *
   * <p>Source: "How to forge iron chain link", mechinopedia.com, 2022.
   */
  public static final WeldAllowance LINK =
      new WeldAllowance(
          true,
          LEAST_OF_LENGTH,
          0.15,
          0.20,
          "a tenth to a fifth of the length",
          Source.read("How to forge iron chain link, mechinopedia.com, 2022", "10 to 20 %"));

  private final boolean ofLength;
  private final double low;
  private final double likely;
  private final double high;
  private final String words;
  private final Source source;

  private WeldAllowance(
      boolean ofLength, double low, double likely, double high, String words, Source source) {
    this.ofLength = ofLength;
    this.low = low;
    this.likely = likely;
    this.high = high;
    this.words = words;
    this.source = source;
  }

  private static WeldAllowance published(double likely, String words, Source source) {
    return new WeldAllowance(false, LEAST, likely, MOST, words, source);
  }

  /**
   * What a shop has measured on its own welds.
   *
   * @param low thicknesses that nineteen welds of twenty take at least, more than 0
   * @param likely thicknesses that half of them take, not less than low
   * @param high thicknesses that one weld of twenty exceeds, not less than likely
   * @return the allowance
   * @throws IllegalArgumentException unless 0 &lt; low ≤ likely ≤ high ≤ 10
   */
  public static WeldAllowance thicknesses(double low, double likely, double high) {
    String what = "give thicknesses, the least first";
    Arguments.number("high", high, 10, what);
    Arguments.number("likely", likely, high, what);
    Arguments.number("low", low, likely, what);
    return new WeldAllowance(
        false,
        low,
        likely,
        high,
        likely + " thicknesses",
        Source.commonPractice("measured in the shop"));
  }

  /** The same for a bar: of three eighths no less than its source has, up to one thickness. */
  WeldAllowance forBar(Section section) {
    if (this != THREE_EIGHTHS) {
      return this;
    }
    double inches = section.thickness().in(ShopUnits.INCH);
    double share = Math.max(GOOGERTYS, Math.min(1, GOOGERTYS / inches));
    return new WeldAllowance(ofLength, low, share, high, words, source);
  }

  /**
   * The bar that a weld takes.
   *
   * @param section the bar that is welded
   * @param finishedLength the length on the mean line without the weld, not negative
   * @return the allowance, in the finished length's unit
   * @throws IllegalArgumentException if the length is negative
   */
  public Estimate<Length> on(Section section, Quantity<Length> finishedLength) {
    Section.requireArea("section", section);
    Measure<Length> length = Arguments.notNegative("finished length", finishedLength);
    Measure<Length> base = ofLength ? length : section.thickness().to(length.getUnit());
    double share = forBar(section).likely;
    return Estimate.of(base.multiply(low), base.multiply(share), base.multiply(high));
  }

  /** {@return where the rule comes from} */
  public Source source() {
    return source;
  }

  /** The likely value; thickness t and length L must have been noted. */
  double likely(Notes n, double t, double length) {
    double f = n.number("f", ofLength ? "part of the length" : "thicknesses", "", likely);
    return ofLength
        ? n.length("w", "likely taken by the weld", "f L", f * length)
        : n.length("w", "likely taken by the weld", "f t", f * t);
  }

  /** The finished length that a bar of this length leaves. */
  double finished(double used, double t) {
    return ofLength ? used / (1 + likely) : used - likely * t;
  }

  /** The rule in words. */
  @Override
  public String toString() {
    return words;
  }
}
