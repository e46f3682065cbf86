package org.hammerscale.forging;

import java.util.Arrays;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;
import org.hammerscale.internal.Arguments;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;

/**
 * What the hand takes: the share of its ideal length that a small piece, drawn to a shoulder or
 * trimmed at its end, comes out with. The rest stays in fillets and thick corners, is trimmed off,
 * or goes up as scale.
 *
 * <p>Published pieces reach 0.75 to 0.91 of the ideal. A shop that writes down its own makes its
 * own allowance with {@link #fromTrials}. Nine of ten pieces lie between low and high: the
 * prediction interval m ± t s √(1 + 1/n) for one more piece after n, with their mean m, standard
 * deviation s, and Student's t for n − 1 degrees of freedom.
 *
 * <pre>{@code
 * HandAllowance hand = HandAllowance.SMALL_WORK;
 * hand.lengthFrom(inches("3 1/2"))                   // 2.919 in (2.4131 in to 3.4249 in)  from 3 1/2 in by volume
 * Section bar = Section.round(inches("1/4"));
 * hand.on(Taper.toPoint(bar, inches(1))).stock(bar)  // 0.3997 in (0.3406 in to 0.4835 in)  rod for 1 in of point
 * }</pre>
 *
 * <p>Source: lengths of five pieces in Ilgen, <cite>Forge Work</cite>, 1912, ch. III; the shares
 * are computed from them.
 */
public final class HandAllowance {
  private static final double NINETEEN_OF_TWENTY = 0.95;

  /** Nothing is lost: geometry alone. */
  public static final HandAllowance NONE =
      new HandAllowance(
          "no allowance for the hand", 1, 1, 1, Source.computed("volume is conserved"));

  /**
   * Small shouldered, pointed or trimmed work in bar of about 1/4 to 1/2 in (6 to 12 mm): gate-hook
   * eye end 0.909, staple point 0.875, S-hook point 0.750, two stretches of a hasp 0.833 and 0.803.
   */
  public static final HandAllowance SMALL_WORK =
      fromTrials(
          "allowance for small hand work",
          Source.read(
              "Ilgen, Forge Work, 1912",
              "ch. III, five pieces that finish at 0.75 to 0.91 of the ideal length"),
          0.909,
          0.875,
          0.750,
          0.833,
          0.803);

  private final String name;
  private final double low;
  private final double likely;
  private final double high;
  private final Source source;

  private HandAllowance(String name, double low, double likely, double high, Source source) {
    this.name = name;
    this.low = low;
    this.likely = likely;
    this.high = high;
    this.source = source;
  }

  /**
   * The allowance that a shop's own pieces show.
   *
   * @param shares finished length ÷ ideal length of each piece, at least three, each from 0.01 to 1
   * @return the allowance
   * @throws IllegalArgumentException if there are fewer, one is out of range, or they scatter so
   *     much that the next could come to nothing
   */
  public static HandAllowance fromTrials(double... shares) {
    Objects.requireNonNull(shares, "shares");
    return fromTrials(
        "allowance of " + shares.length + " trial pieces",
        Source.commonPractice("lengths of " + shares.length + " trial pieces of the shop"),
        shares);
  }

  /**
   * The allowance that pieces of one length by volume show, by what they measured.
   *
   * @param ideal the length that geometry gives each of them, more than zero
   * @param finished what each of them measured, at least three, each more than zero and at most the
   *     ideal one
   * @return the allowance
   * @throws IllegalArgumentException if there are fewer, one is out of range, or they scatter so
   *     much that the next could come to nothing
   */
  @SafeVarargs
  public static HandAllowance fromTrials(Quantity<Length> ideal, Quantity<Length>... finished) {
    Objects.requireNonNull(finished, "finished");
    Measure<Length> whole = Arguments.positive("ideal", ideal);
    double[] shares = new double[finished.length];
    for (int i = 0; i < finished.length; i++) {
      Measure<Length> length = Arguments.positive("finished", finished[i]);
      if (length.isGreaterThan(whole) && !length.isEquivalentTo(whole)) {
        throw new IllegalArgumentException(
            "finished must be at most the ideal "
                + whole
                + ", was "
                + length
                + "; give the length that geometry gives first");
      }
      shares[i] = Math.min(1, length.ratio(whole));
    }
    return fromTrials(shares);
  }

  private static HandAllowance fromTrials(String name, Source source, double... shares) {
    if (shares.length < 3) {
      throw new IllegalArgumentException(
          "shares must be of at least three pieces, was " + shares.length + "; forge some more");
    }
    for (double share : shares) {
      if (!(share >= 0.01 && share <= 1)) {
        throw new IllegalArgumentException(
            "shares must be from 0.01 to 1, was "
                + share
                + "; divide the finished length by the ideal one");
      }
    }
    double mean = StatUtils.mean(shares);
    int n = shares.length;
    double t = new TDistribution(null, n - 1).inverseCumulativeProbability(NINETEEN_OF_TWENTY);
    double reach = t * Math.sqrt(StatUtils.variance(shares) * (1 + 1d / n));
    if (!(mean - reach > 0)) {
      throw new IllegalArgumentException(
          "shares must scatter less, was "
              + Arrays.toString(shares).replaceAll("[\\[\\]]", "")
              + "; look for the cause, or forge more pieces");
    }
    return new HandAllowance(name, mean - reach, mean, Math.min(1, mean + reach), source);
  }

  /**
   * The finished length that the hand makes of an ideal one.
   *
   * @param ideal the length by conservation of volume, not negative
   * @return the length to expect, in the same unit
   * @throws IllegalArgumentException if it is negative
   */
  public Estimate<Length> lengthFrom(Quantity<Length> ideal) {
    Measure<Length> length = Arguments.notNegative("ideal", ideal);
    return Estimate.of(length.multiply(low), length.multiply(likely), length.multiply(high));
  }

  /**
   * A feature with this allowance on it: it keeps what it keeps, and the hand takes the rest as
   * {@code trim and hand}, V (1 / k − 1) for a share k, in addition to what is lost already.
   *
   * @param feature a small shouldered, pointed or trimmed feature without an allowance of its own
   * @return the feature as an estimate
   */
  public Feature on(Feature feature) {
    return new ByHand(feature, this);
  }

  Losses addedTo(Losses losses, Estimate<Volume> kept) {
    return this == NONE ? losses : losses.and("trim and hand", taken(kept));
  }

  private Estimate<Volume> taken(Estimate<Volume> kept) {
    return Estimate.of(
        kept.low().multiply(1 / high - 1),
        kept.likely().multiply(1 / likely - 1),
        kept.high().multiply(1 / low - 1));
  }

  Source source() {
    return source;
  }

  /** Its name. */
  @Override
  public String toString() {
    return name;
  }
}
