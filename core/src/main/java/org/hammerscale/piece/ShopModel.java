package org.hammerscale.piece;

import java.util.Arrays;
import org.hammerscale.internal.StudentT;
import org.hammerscale.units.ShopUnits;
import org.hammerscale.working.Notes;

/**
 * What the next piece takes, from what the book says and what pieces have taken: outcomes of one
 * shop are normal, its mean and spread are unknown, and what is believed of them beforehand is
 * normal–inverse-gamma, the mean worth κ₀ pieces and the spread ν₀.
 *
 * <p>All lengths are in one unit.
 */
final class ShopModel {
  private final double book;
  private final double meanWorth;
  private final double spreadWorth;
  private final double spread;
  private final int count;
  private final double mean;
  private final double squares;

  private ShopModel(
      double book, double meanWorth, double spreadWorth, double spread, double[] sorted) {
    this.book = book;
    this.meanWorth = meanWorth;
    this.spreadWorth = spreadWorth;
    this.spread = spread;
    this.count = sorted.length;
    double about = 0; // from the book's value, so that near values lose no digits
    for (double each : sorted) {
      about += each - book;
    }
    this.mean = count == 0 ? book : book + about / count;
    double sum = 0;
    for (double each : sorted) {
      sum += (each - mean) * (each - mean);
    }
    this.squares = sum;
  }

  /**
   * The model of a shop.
   *
   * @param book μ₀, what the book says
   * @param meanWorth κ₀, how many pieces that is worth
   * @param spreadWorth ν₀, how many pieces the expected spread is worth
   * @param spread s₀, the expected standard deviation from piece to piece
   * @param taken what pieces took, in any order
   */
  static ShopModel of(
      double book, double meanWorth, double spreadWorth, double spread, double... taken) {
    double[] sorted = taken.clone();
    Arrays.sort(sorted); // rounding shall not depend on the order either
    return new ShopModel(book, meanWorth, spreadWorth, spread, sorted);
  }

  int count() {
    return count;
  }

  /** Of the trials alone. */
  double mean() {
    return mean;
  }

  /** What is enough for the next piece with odds p of one half or more. */
  double bound(Notes n, double p) {
    double freedom = spreadWorth + count;
    double t = StudentT.quantile(freedom, p);
    n.value("p", "odds that it is enough", "", p, ShopUnits.ONE);
    double k0 =
        n.value("κ₀", "pieces that the book's value is worth", "", meanWorth, ShopUnits.ONE);
    double v0 =
        n.value("ν₀", "pieces that the book's spread is worth", "", spreadWorth, ShopUnits.ONE);
    double s0 = n.given("s₀", "the book's spread from piece to piece", spread);
    double m0 = n.given("μ₀", "taken by the book", book);
    double pieces = n.value("n", "trials", "", count, ShopUnits.ONE);
    double y = n.given("ȳ", "mean of the trials", mean);
    double q = n.givenArea("q", "squares of the trials about their mean, added up", squares);
    double k = n.number("κ", "weight of the mean", "κ₀ + n", k0 + pieces);
    double v = n.number("ν", "degrees of freedom", "ν₀ + n", v0 + pieces);
    double m = n.length("μ", "expected", "μ₀ + n (ȳ − μ₀) / κ", m0 + pieces * (y - m0) / k);
    double s =
        n.area(
            "S",
            "squares in all",
            "ν₀ s₀² + q + κ₀ n (ȳ − μ₀)² / κ",
            v0 * (s0 * s0) + q + k0 * pieces * ((y - m0) * (y - m0)) / k);
    double quantile = n.value("t", "Student's quantile of p and ν", "", t, ShopUnits.ONE);
    return n.length(
        "B",
        "enough for the next piece",
        "μ + t √(S / ν × (1 + 1 / κ))",
        m + quantile * Math.sqrt(s / v * (1 + 1 / k)));
  }

  /** ȳ + t(n − 1, p) s √(1 + 1/n): for two trials at least. */
  double classicalBound(double p) {
    return mean + StudentT.quantile(count - 1, p) * classicalSpread() * Math.sqrt(1 + 1.0 / count);
  }

  private double classicalSpread() {
    return Math.sqrt(squares / (count - 1));
  }

  /** How often a value is enough for the next piece. */
  double odds(double value) {
    double deviation = spread() * Math.sqrt(1 + 1 / (meanWorth + count));
    double away = value - expected();
    return deviation > 0
        ? StudentT.probability(spreadWorth + count, away / deviation)
        : away < 0 ? 0 : 1;
  }

  /** What the next piece takes as likely as not. */
  double expected() {
    return book + count * (mean - book) / (meanWorth + count);
  }

  /** From piece to piece, all that is known taken together. */
  double spread() {
    double away = mean - book;
    double all =
        spreadWorth * (spread * spread)
            + squares
            + meanWorth * count * (away * away) / (meanWorth + count);
    return Math.sqrt(all / (spreadWorth + count));
  }

  /**
   * How often chance alone would put the mean of so many trials as far from the book's value, if
   * that were the shop's: on both sides, the spread taken from the trials and from what was
   * expected of it. One if there are no trials.
   */
  double chance() {
    double freedom = spreadWorth + count - 1;
    double deviation =
        Math.sqrt((spreadWorth * (spread * spread) + squares) / freedom / Math.max(count, 1));
    double away = Math.abs(mean - book);
    if (count == 0 || away == 0) {
      return 1;
    }
    return 2 * StudentT.probability(freedom, -away / deviation);
  }
}
