package org.hammerscale.forging;

import java.util.Arrays;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.apache.commons.math3.stat.StatUtils;
import org.hammerscale.internal.Arguments;
import org.hammerscale.internal.StudentT;
import org.hammerscale.stock.Feature;
import org.hammerscale.stock.Losses;
import org.hammerscale.units.Estimate;
import org.hammerscale.units.Measure;
import org.hammerscale.working.Source;

/**
 * What the hand takes: how much bar a stretch uses beyond what its geometry asks for, as finished
 * pieces show. It holds everything between the ideal and the bar that was cut: fillets and thick
 * corners, points that come out hollow, welds, what is trimmed off, lengths rounded up, and the
 * scale of the usual heats. So no scale is added for a stretch that has it ({@link
 * Feature#holdsScale}).
 *
 * <pre>{@code
 * Section bar = Section.round(inches("1/4"));
 * Feature point = HandAllowance.DRAWN.on(Taper.toPoint(bar, inches(3)));
 * point.stock(bar)                                     // 1.014 in (0.889 in to 1.157 in)  1 in by volume
 * HandAllowance.SET_DOWN.lengthFrom(inches("3 1/2"))   // 2.8807 in (2.381 in to 3.4861 in)  what 3 1/2 in by volume comes to
 * HandAllowance shop = HandAllowance.fromTrials(0.95, 0.93, 0.96);
 * shop.on(Taper.toPoint(bar, inches(3))).stock(bar)    // 1.0564 in (1.0003 in to 1.1157 in)  a shop's own three
 * }</pre>
 *
 * <p>Each kind of work has its own: {@link #BENT}, {@link #DRAWN}, {@link #SET_DOWN}, {@link
 * #UPSET}. They are fitted to whole pieces, so put it on every stretch of a piece, the plain ones
 * too. Nine of ten pieces lie between low and high: the prediction interval for one more piece
 * after n, e^(m ± t s √(1 + 1/n)), with m and s the mean and the standard deviation of the
 * logarithms of bar ÷ ideal, and Student's t for n − 1 degrees of freedom. A shop that writes down
 * its own pieces makes its own allowance with {@link #fromTrials}.
 *
 * <p>Source: pieces of which the stock and the finished sizes are printed, in Ilgen, <cite>Forge
 * Work</cite>, 1912, and Googerty, <cite>Practical Forging and Art Smithing</cite>, 1915. Each
 * stands beside its interval in {@code core/VALIDATION.md}, with the score of all.
 */
public final class HandAllowance {
  private static final double NINETEEN_OF_TWENTY = 0.95;

  /** A shop whose next piece may take so many times the likely bar, or less by it, is no guide. */
  private static final double WILD = 3;

  /** Nothing is lost: geometry alone. */
  public static final HandAllowance NONE =
      new HandAllowance(
          "no allowance for the hand", 1, 1, 1, Source.computed("volume is conserved"));

  /**
   * Bent and closed: eyes, rings, links, hooks, welded or not. Nine pieces took 0.93 to 1.06 of
   * their mean line. The books cut no more for a link that is welded than for an eye that is not,
   * so that a {@code WeldAllowance} beside it counts the weld twice.
   */
  public static final HandAllowance BENT =
      printed("allowance for bent work", 0.933, 1.016, 1.105, "nine bent pieces");

  /**
   * Drawn and left whole: points, tapers, blanks of which nothing is cut off afterwards. Seven
   * pieces took 0.94 to 1.10 of their volume: a printed taper is often hollow.
   */
  public static final HandAllowance DRAWN =
      printed("allowance for drawn work", 0.889, 1.014, 1.157, "seven drawn pieces");

  /**
   * Marked off on the bar and set down to a shoulder, or cut to its length afterwards: what is cut
   * off and what stays in the shoulder are in it. Six pieces took 1.10 to 1.40 of their volume.
   */
  public static final HandAllowance SET_DOWN =
      printed("allowance for set-down work", 1.004, 1.215, 1.470, "six pieces set down or trimmed");

  /**
   * Jumped up: heads, rivets, collars. Four pieces took 1.03 to 1.32 of their volume; so few leave
   * a wide spread.
   */
  public static final HandAllowance UPSET =
      printed("allowance for upset work", 0.869, 1.142, 1.501, "four upset pieces");

  private final String name;
  private final double low; // bar used ÷ ideal
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

  private static HandAllowance printed(
      String name, double low, double likely, double high, String pieces) {
    return new HandAllowance(
        name,
        low,
        likely,
        high,
        Source.read(
            "Ilgen, Forge Work, 1912, and Googerty, Practical Forging and Art Smithing, 1915",
            "stock and finished sizes of " + pieces));
  }

  /**
   * The allowance that a shop's own pieces show.
   *
   * @param shares finished length ÷ ideal length of each piece, at least three, each from 0.01 to
   *     2, with a middle of at most 1
   * @return the allowance
   * @throws IllegalArgumentException if there are fewer, one is out of range, they come out longer
   *     than ideal in the middle, or scatter so much that the next could take three times the bar
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
   * @param finished what each of them measured, at least three, each more than zero and at most
   *     twice the ideal one
   * @return the allowance
   * @throws IllegalArgumentException as for the shares
   */
  @SafeVarargs
  public static HandAllowance fromTrials(Quantity<Length> ideal, Quantity<Length>... finished) {
    Objects.requireNonNull(finished, "finished");
    Measure<Length> whole = Arguments.positive("ideal", ideal);
    double[] shares = new double[finished.length];
    for (int i = 0; i < finished.length; i++) {
      Measure<Length> length = Arguments.positive("finished", finished[i]);
      if (length.isGreaterThan(whole.multiply(2))) {
        throw new IllegalArgumentException(
            "finished must be at most twice the ideal "
                + whole
                + ", was "
                + length
                + "; give the length that geometry gives first");
      }
      shares[i] = length.ratio(whole);
    }
    return fromTrials(shares);
  }

  private static HandAllowance fromTrials(String name, Source source, double... shares) {
    int n = shares.length;
    if (n < 3) {
      throw new IllegalArgumentException(
          "shares must be of at least three pieces, was " + n + "; forge some more");
    }
    double[] logs = new double[n];
    for (int i = 0; i < n; i++) {
      if (!(shares[i] >= 0.01 && shares[i] <= 2)) {
        throw new IllegalArgumentException(
            "shares must be from 0.01 to 2, was "
                + shares[i]
                + "; divide the finished length by the ideal one");
      }
      logs[i] = -Math.log(shares[i]);
    }
    double mean = StatUtils.mean(logs);
    if (mean < 0) {
      throw refused("have a middle of at most 1", shares, "measure the sections that geometry had");
    }
    double t = StudentT.quantile(n - 1, NINETEEN_OF_TWENTY);
    double reach = t * Math.sqrt(StatUtils.variance(logs) * (1 + 1d / n));
    if (reach > Math.log(WILD)) {
      throw refused("scatter less", shares, "look for the cause, or forge more pieces");
    }
    return new HandAllowance(
        name, Math.exp(mean - reach), Math.exp(mean), Math.exp(mean + reach), source);
  }

  private static IllegalArgumentException refused(String rule, double[] shares, String todo) {
    return new IllegalArgumentException(
        "shares must "
            + rule
            + ", was "
            + Arrays.toString(shares).replaceAll("[\\[\\]]", "")
            + "; "
            + todo);
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
    return Estimate.of(length.divide(high), length.divide(likely), length.divide(low));
  }

  /**
   * A feature with this allowance on it: it keeps what it keeps, and the hand takes the rest as
   * {@code trim and hand}, V (k − 1) for bar k times the ideal, in addition to what is lost
   * already. The low end may be negative, where a piece comes out of less bar than its geometry
   * asks for.
   *
   * @param feature a feature of that kind without an allowance of its own
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
        kept.low().multiply(low - 1),
        kept.likely().multiply(likely - 1),
        kept.high().multiply(high - 1));
  }

  /** Whether what the fire takes is in it: in all that finished pieces show. */
  boolean holdsScale() {
    return this != NONE;
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
